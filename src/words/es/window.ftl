window-sample = muestra
window-the-sample = la muestra
window-the-vehicle = el vehículo
window-new-job = Trabajo nuevo
window-day-runs = hay una jornada en marcha en el taller
window-none-here = aquí no se puede abrir ninguna ventana ({ $error }); este es el plan como texto
window-planner-not-started = no se pudo iniciar el planificador: { $error }
window-job-as-it-was = el trabajo sigue como estaba
window-save-not-confirmed = guardado, pero el sistema no confirmó que el archivo esté en el disco
window-save-again = un corte de luz en los próximos segundos podría devolver la versión anterior; guardar otra vez antes de apagar

window-workspace-job = Trabajo
window-workspace-survey = Inspección
window-workspace-correction = Corrección
window-workspace-coating = Recubrimiento
window-workspace-bay = Taller
window-workspace-handover = Entrega
window-workspace-practice = Práctica

window-rail-no-vehicle = aún sin vehículo
window-rail-read = { $read } de { $all } medidos
window-rail-look-at-test-spot = ver zona de prueba
window-rail-nothing-to-polish = nada que pulir
window-rail-panels = { $panels ->
    [one] { $panels } panel
   *[other] { $panels } paneles
}
window-rail-panels-stay = { $panels } pan., { $stays ->
    [one] { $stays } sigue
   *[other] { $stays } siguen
}
window-rail-not-in-this-air = no con este aire
window-rail-no-order = sin orden
window-rail-for-crew = { $time } en equipo
window-rail-planning = planificando…
window-rail-done = { $done } de { $all } hechos
window-rail-coated = recubierto
window-rail-polished = pulido
window-rail-not-begun = sin empezar
window-rail-for-apprentices = para aprendices
window-rail-written = escrito
window-rail-sheets-ready = hojas listas
window-rail-nothing-read = aún sin lecturas

window-undo-what = Deshacer: { $what }
window-redo-what = Rehacer: { $what }
window-view = Vista
window-theme-light = Claro
window-theme-dark = Oscuro
window-theme-sunlight = Luz de sol

window-shape-point = Punto
window-shape-line = Línea
window-shape-area = Área

window-open-job = Abrir un trabajo
window-save-job = Guardar el trabajo
window-readings-from-file = Lecturas de un archivo
window-picture-of-defect = Una imagen del defecto
window-folder-of-jobs = La carpeta de los trabajos
window-write-file = Escribir un archivo
window-files-job = Trabajo
window-files-readings = Lecturas
window-files-picture = Imagen
window-files-web-page = Página web
window-files-list = Lista
window-files-calendar = Calendario
window-files-drawing = Dibujo

window-save-first = ¿Guardar antes «{ $name }»?
window-not-in-file = Hay cambios que no están en el archivo.
window-do-not-save = No guardar
window-show = Mostrar
window-add = Añadir
window-look-through = Revisar
window-write = Escribir
window-path-of-file = Ruta del archivo, por ejemplo { $example }
window-example-job = mi.job.ron
window-example-readings = lecturas.csv
window-example-picture = aranazo.jpg
window-example-folder = trabajos
window-example-pdf = hoja.pdf
window-example-web-page = hoja.html
window-example-list = orden.csv
window-example-calendar = cuidado.ics
window-example-drawing = mapa.svg
window-example-map = mapa.png
window-not-done = Eso no se pudo hacer
window-drop-vehicle-changes = ¿Descartar los cambios del vehículo?
window-job-keeps-vehicle = No están guardados. El trabajo conserva el vehículo que tiene.
window-go-on-editing = Seguir editando
window-drop-changes = Descartar los cambios
window-save-own-vehicle = Guardar como vehículo propio
window-vehicle-name = Nombre, por ejemplo «Berlina con puertas de dos piezas»
window-no-vehicle-folder = En este ordenador no hay carpeta para vehículos propios.
window-vehicle-kept-in = Se guarda en { $folder } y se puede elegir en cualquier trabajo. Este trabajo pasa a usarlo.

window-chart-bar =
    { $who } { $does }: { $panel }
    { $from } a { $to }
window-chart-day = día { $day }
window-chart-empty = Gráfico de tiempos, vacío
window-chart-of-polishing =
    { $people ->
        [one] Gráfico de tiempos del pulido: { $steps } pasos para { $people } persona en { $time }
       *[other] Gráfico de tiempos del pulido: { $steps } pasos para { $people } personas en { $time }
    }
window-chart-of-coating =
    { $people ->
        [one] Gráfico de tiempos del recubrimiento: { $steps } pasos para { $people } persona en { $time }
       *[other] Gráfico de tiempos del recubrimiento: { $steps } pasos para { $people } personas en { $time }
    }
window-nothing-to-polish = Nada que pulir.
window-planning-order = Planificando el orden…
window-no-polishing-order = Aún no hay orden de pulido.
window-no-coating-order = Aún no hay orden de recubrimiento.

window-vehicle-map = Mapa del vehículo
window-front = frente
window-fit = Ajustar
window-fit-does = Mostrar todo el vehículo (F)
window-zoom-in = Ampliar
window-zoom-in-does = Mostrar lo elegido lo más grande posible (Z)
window-nothing-read = Aún no hay lecturas.
window-no-defects = Sin defectos anotados.
window-no-order = Aún no hay orden.
window-no-panels = Sin paneles.
window-labels-left-out = { $count } paneles pequeños muestran lo suyo al ampliar o al señalarlos.

window-allowed = permitido
window-planned = previsto
window-needed = necesario
window-budget = permitido { $allowed }, previsto { $mean } a { $upper }, necesario { $needed }
window-type-number = Escribir un número de { $least } a { $most } { $unit }.
window-panel-facts = unos { $area } m², { $substrate }
window-typed = «{ $text }» está escrito y no introducido
window-typed-enter = Introducido, cuenta como la lectura siguiente.
window-enter-it = Introducirlo
window-leave-it-out = Dejarlo fuera
