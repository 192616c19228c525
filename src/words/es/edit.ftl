edit-undo = Deshacer
edit-redo = Rehacer
edit-nothing-to-undo = Nada que deshacer
edit-nothing-to-redo = Nada que rehacer
edit-undo-what = { $what } (Ctrl+Z)
edit-redo-what = { $what } (Ctrl+Mayús+Z)
edit-editing = Editando { $vehicle }
edit-not-saved-yet = El trabajo conserva su vehículo hasta que esto se guarde.
edit-changes = Cambios hasta ahora
edit-no-changes = Ninguno aún. Cada uno se puede deshacer.
edit-save-as = Guardar como…

edit-vehicle = Editar vehículo
edit-choose-panel = Elegir un panel en el mapa. Con Mayús, un clic añade otro.
edit-what-can-be-done = Un panel se puede cortar en dos, unir con el vecino, dejar fuera del trabajo o declarar de otro material. Debajo del mapa se pueden mover los puestos.
edit-panels = { $count ->
    [one] { $count } panel
   *[other] { $count } paneles
}
edit-and-more = { $names } y { $count } más
edit-panel-facts = unos { $area } m², { $substrate }
edit-cut = Cortar en dos
edit-no-cut-on-centreline = Cruza la línea central, donde un corte no sería igual en ambos lados.
edit-cut-begins = Hacer clic donde empieza el corte, en el panel o al lado.
edit-cut-ends = Ahora, hacer clic donde termina.
edit-do-not-cut = No cortar
edit-draw-cut = Dibujar el corte…
edit-across = A lo ancho
edit-across-does = Por el medio, en una parte delantera y una trasera
edit-along = A lo largo
edit-along-does = Por el medio, en una parte interior y una exterior
edit-join-neighbour = Unir con un vecino
edit-choose = elegir…
edit-neighbour = Vecino
edit-join-two = Unir los dos
edit-join-as = Unir como { $panel }
edit-what-it-is = Qué es
edit-in-work = En el trabajo
edit-takes-part = participa
edit-not-alike = no todos iguales
edit-made-of = Material
edit-worked-from = Se trabaja desde
edit-stance-number = puesto { $number }
edit-stance = Puesto { $number }
edit-behind-front = Detrás del frente
edit-from-centreline = Desde la línea central

edit-stances = Puestos
edit-stances-how = Arrastrar un número o empujarlo con las flechas. El otro lado se mueve igual.
edit-stance-of = Puesto { $number }: { $panels }
edit-stance-unused = desde aquí no se trabaja nada

edit-stance-moved = Puesto { $number } movido, y el de enfrente igual
edit-part = { $panel } (unos { $area } m²)
edit-cut-in-two = { $panel }: ahora son dos paneles, { $parts }; el otro lado igual
edit-joined = { $a } y { $b } son ahora un solo panel: { $panel }
edit-changed = { $who }: { $what }
edit-takes-part-in-work = participa en el trabajo
edit-worked-from-stance = se trabaja desde el puesto { $number }
edit-far-from-stance = { $what }, que queda lejos a lo largo del vehículo
edit-save-not-confirmed = el vehículo está guardado, pero el sistema no confirmó que el archivo esté en el disco
edit-look-again = antes de apagar, comprobar que sigue en la lista de vehículos

edit-no-panel = no existe { $panel }
edit-no-stance = no existe ese puesto
edit-no-shared-seam = { $a } y { $b } no comparten una junta que se pueda quitar
edit-line-cuts-nothing = la línea no corta { $panel } en dos
edit-across-centreline = { $panel } cruza la línea central y no se puede cortar
edit-would-leave-fault = eso dejaría un fallo: { $place }: { $cause }
edit-would-leave-some-fault = eso dejaría un fallo
edit-new-part = la parte nueva
edit-words-for-panel = panel, paneles
edit-words-for-stance = puesto

edit-save-over = ¿Guardar los cambios de «{ $name }»?
edit-save-over-means = Todo trabajo que use este vehículo cambia con él. Solo en este trabajo las lecturas pasan a los paneles donde están.
edit-before-kept-as = Lo que había antes se conserva como { $file }. Los pasos anteriores de este trabajo ya no se podrán deshacer.
edit-save-changes = Guardar los cambios
edit-own-vehicles = Vehículos propios
edit-used-by-job = en uso en este trabajo
edit-delete = Eliminar…
edit-delete-which = ¿Eliminar «{ $name }»?
edit-delete-means = Un trabajo que lo use no se puede abrir sin él.
edit-deleted-kept-as = El archivo se conserva como { $file }; con el nombre { $name }.ron, vuelve a estar.
edit-keep-it = Conservar
edit-delete-it = Eliminar
