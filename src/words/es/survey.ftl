survey-before-after = Antes y después
survey-few-pairs = Menos de dos puntos se leyeron antes y después, así que no se conoce el cambio.
survey-counts-visit = Cuenta para esta visita
survey-one-pair = Un panel se leyó antes y después; con dos o más se puede dar una media del vehículo.
survey-at-most = como máximo { $film }
survey-taken-measured = Según lo medido. Las lecturas tienen que ser del mismo medidor.
survey-taken-planned = Según lo planificado, porque las lecturas no lo muestran. Las lecturas tienen que ser del mismo medidor.
survey-thinner = En { $count } paneles la capa es de media { $mean } µm más fina, con un 95 % de confianza entre { $low } y { $high } µm.
survey-more-panels = { $change } Eso no demuestra una remoción; unos { $count } paneles sí.
survey-not-measurable = { $change } Una remoción tan pequeña no se puede medir con este medidor: harían falta más de { $most } paneles.
survey-back-to-panel = Volver al panel
survey-depth = Profundidad
survey-note = Nota
survey-anything-else = Otra cosa
survey-pictures = Fotos
survey-add-picture = Añadir foto…
survey-add-picture-hint = O soltarla en la ventana; una copia queda junto al trabajo, sin lugar ni hora
survey-taking-in = Incorporando la foto…
survey-remove-defect = Quitar este defecto
survey-kind = Tipo
survey-how-many = Cuántos
survey-size-across = Tamaño
survey-length = Longitud
survey-nail-not-tried = sin probar
survey-nail-catches = engancha
survey-nail-slides = resbala
survey-fingernail = Uña
survey-least = Mínima
survey-most = Máxima
survey-use-it = Usarla
survey-picture-gone = La foto no está en la carpeta junto al trabajo.
survey-remove = Quitar
survey-class-visible = apenas visible
survey-class-small = menor de 0,5 mm
survey-class-middle = de 0,5 a 5 mm
survey-class-large = mayor de 5 mm
survey-drawn-point = Un punto en el mapa. Clase de tamaño { $number }, { $class } (según ISO 4628-1).
survey-drawn-line = Una línea en el mapa. Clase de tamaño { $number }, { $class } (según ISO 4628-1).
survey-drawn-area = Un área en el mapa. Clase de tamaño { $number }, { $class } (según ISO 4628-1).
survey-usual-depth = Habitual en este tipo: de { $low } a { $high }
survey-our-estimate = { $what } (estimación nuestra).
survey-picture = Foto { $number }
survey-remove-picture = Quitar foto { $number }
survey-open-defect = Abrir este defecto
survey-new-defect = Nuevo defecto
survey-draw = Dibujar en el mapa (D)
survey-escape = Tecla Escape
survey-click-where = Pulsar en el mapa donde está.
survey-drag-line = Arrastrar en el mapa de un extremo al otro.
survey-drag-area = Arrastrar en el mapa a su alrededor.
survey-letter-kind = Una letra toma el siguiente tipo que empieza por ella.
survey-quantity-none = ninguno
survey-quantity-very-few = muy pocos
survey-quantity-few = pocos
survey-quantity-moderate = moderado
survey-quantity-considerable = considerable
survey-quantity-dense = denso
survey-in-short = { $quantity }, { $size }
survey-in-short-long = { $quantity }, { $size } de largo
survey-with-pictures =
    { $count ->
        [one] { $defect }, 1 foto
       *[other] { $defect }, { $count } fotos
    }
survey-at-least = mínimo { $film }
survey-mean = media { $film }
survey-plot =
    { $count ->
        [one] 1 lectura de { $low } a { $high } µm, media { $mean } µm, mínimo { $least } µm
       *[other] { $count } lecturas de { $low } a { $high } µm, media { $mean } µm, mínimo { $least } µm
    }
survey-skip-hint = Dejar este punto para después
survey-repeat-hint = Medir este punto otra vez; si aún no tiene lectura, el anterior
survey-skipped-hint = Volver al primer punto omitido
survey-panel-read = Este panel tiene sus lecturas.
survey-all-read = Todos los paneles que el medidor puede leer tienen sus lecturas.
survey-all-or-skipped = Todos los puntos están leídos u omitidos.
survey-keypad = Teclado
survey-keypad-hint = Teclas grandes en la pantalla, para guantes
survey-unit-hint = Lo que muestra el medidor; el trabajo guarda micrómetros
survey-readings = Lecturas
survey-doubtful = Las que llevan ? se tomaron con un medidor que luego falló su comprobación; no cuentan.
survey-edge = borde
survey-edge-hint = Tomada en un borde o una línea de carrocería
survey-remove-reading = Quitar esta lectura
survey-skip = Omitir (S)
survey-repeat = Repetir (R)
survey-skipped =
    { $count ->
        [one] 1 omitido (B)
       *[other] { $count } omitidos (B)
    }
survey-spot-of = Punto { $number } de { $all }
survey-spots-read = { $count } de { $all } puntos leídos
survey-field = Punto { $number } de { $all }, lectura { $reading } de { $of }, en { $unit }
survey-reading-of = lectura { $reading } de { $of }, Enter
survey-spot-none = Este punto aún no tiene lectura
survey-spot-so-far = Este punto hasta ahora { $values }
survey-spot = Punto { $number }
survey-not-read = Aún sin leer.
survey-three-mean = media
survey-three-least = mínimo
survey-three-may-go = puede irse
survey-not-read-why = Sin leer: { $why }.
survey-read-undecided = Leído { $film } de media, pero nada se decide con ello.
survey-gauge = Medidor
survey-principle = Principio
survey-accuracy-fixed = Exactitud, parte fija ±
survey-accuracy-share = y de la lectura ±
survey-smallest-step = Paso mínimo mostrado
survey-gauges-read = Estos medidores leen todo lo que hay sobre el metal. El barniz se supone a partir de ello, como un intervalo.
survey-check-of-gauge = Comprobación del medidor
survey-certified = Certificado, 0 para la placa desnuda
survey-gauge-shows = El medidor muestra
survey-note-check = Anotar comprobación
survey-remove-check = Quitar una comprobación anotada por error
survey-gauge-doubtful =
    { $count ->
        [one] 1 lectura no cuenta, porque el medidor falló. Se queda donde está; leer de nuevo ese punto.
       *[other] { $count } lecturas no cuentan, porque el medidor falló. Se quedan donde están; leer de nuevo esos puntos.
    }
survey-gauge-unchecked = Aún sin comprobar. Comprobar sobre la placa desnuda y una galga antes de la primera lectura y después de la última.
survey-gauge-failed = El medidor falló. Comprobarlo otra vez con la misma galga antes de la siguiente lectura.
survey-gauge-passed-last = Superada, también tras la última lectura.
survey-gauge-passed = Superada hasta ahora. Comprobar otra vez tras la última lectura.
survey-check-before = antes de la primera lectura
survey-check-after = tras la lectura { $number }
survey-bare-plate = placa desnuda
survey-check-good = { $on } mostró { $shown }: bien
survey-check-fails = { $on } mostró { $shown }: falla
survey-check-allowed = { $when }, se permite ±{ $allowed }
survey-gloss = Brillo
survey-angle = Ángulo
survey-gloss-reading = Lectura de brillo
survey-gloss-at = { $gloss } a { $angle }°, { $stage }
survey-gloss-compare = Comparar en un panel, en un punto, en una dirección. 100 es un vidrio pulido, no pintura perfecta: un barniz perfecto muestra unos 82 a 90 a 20°.
survey-visits = Visitas anteriores
survey-visits-left = Visitas que quedan con el tope de una
survey-add-to-panel = Añadir a este panel
survey-visits-none = Ninguna anotada. El barniz que se fue no vuelve, así que cuenta lo que quitaron visitas anteriores.
survey-add-visit = Añadir una visita anterior
survey-add-to-all = Añadir a todos los paneles pintados
survey-next-visit-hint = Un trabajo nuevo del mismo vehículo; lo que quita esta visita consta en su lista
survey-next-visit = Próxima visita de este vehículo
survey-visit-name = Día o nombre de la visita
survey-probably-went = Probablemente se fue
survey-at-most-went = Como máximo se fue
survey-known-from = Se sabe por
survey-visits-most = Visitas anteriores, como máximo { $film } en total
survey-visit = { $went }, como máximo { $most }, { $source }
survey-most-film = como máximo { $film }
survey-visit-panels =
    { $count ->
        [one] en 1 panel, { $source }
       *[other] en { $count } paneles, { $source }
    }
survey-defects = Defectos
survey-paint = Pintura
survey-survey = Inspección
survey-how-to = Escribir una lectura y pulsar Enter. El siguiente punto se enciende solo, una vuelta al vehículo; o elegir un panel en el mapa.
survey-pad-back = Atrás
survey-pad-back-name = Quitar cifra o lectura
survey-pad-skip = Omitir
survey-pad-skip-name = Omitir este punto
survey-pad-again = Otra vez
survey-pad-again-name = Medir este punto otra vez
survey-pad-sign = Signo decimal
survey-pad-take = Tomar la lectura
survey-on-it = Ya lleva
survey-hardness = Dureza
survey-is-coated = se recubre
survey-finish = Acabado
survey-history = Historial
survey-painted-on = Pintado el
survey-taken-before = Quitado antes
survey-day-of-work = Día del trabajo
survey-is-today = Es hoy
survey-under-paint = Bajo la pintura
survey-finish-clear = barniz
survey-finish-single = monocapa
survey-finish-matte = mate
survey-finish-film = bajo lámina protectora
survey-finish-wrapped = vinilado
survey-history-unknown = no se sabe
survey-history-factory = pintura de fábrica
survey-history-again = repintado
survey-history-fresh = recién pintado
survey-history-polished = pulido antes
survey-hardness-usual = habitual o no se sabe
survey-hardness-soft = blanda, se marca fácil
survey-hardness-hard = dura, lenta de corregir
survey-give-days = Indicar ambos días para conocer su edad; hasta entonces cuenta como muy reciente.
survey-as-usual-of = como siempre: { $substrate }
survey-as-usual = como siempre
survey-differ = difieren
survey-days-old =
    { $count ->
        [one] 1 día de edad; cuenta como reciente durante { $limit } días.
       *[other] { $count } días de edad; cuenta como reciente durante { $limit } días.
    }
survey-go-hint = Ir a este panel
survey-borders-practice = Los límites entre fina, habitual, repintada y con masilla son práctica del oficio: indican, no demuestran nada.
survey-open-points = Puntos pendientes ({ $count })
survey-go-to = Ir a { $panel }
survey-place-cause = { $place }, { $cause }
survey-how-sure = Con qué certeza
survey-share-of-panel = Parte del panel
survey-sure-of-that = Certeza de ello
survey-borders = Límites de la capa, práctica del oficio
survey-to-defaults = Volver a los valores iniciales
survey-border-no-cut = Demasiado fina para cortar, menos de
survey-border-finest = Solo pulimento más fino, menos de
survey-border-thin = Fina, menos de
survey-border-refinished = Repintada, más de
survey-border-several = Varias veces, más de
survey-border-filler = Masilla, más de
survey-border-uneven = Desigual, los puntos difieren en
survey-border-mirror = El panel simétrico difiere en
survey-at-least-means = «Mínimo» significa: { $meaning }. Con pocos puntos es un número prudente.
survey-borders-source = De 70 a 200 µm se repiten en páginas del oficio sin una medición detrás, 300 y 1000 µm son práctica común; las dos diferencias son estimación nuestra. Primero va lo que diga el fabricante del vehículo.
survey-same-on-each = El mismo defecto en cada uno
survey-add-many = añadir defecto a paneles
survey-paint-each = Pintura de cada uno
survey-chosen = { $count } paneles elegidos
survey-add-to = Añadir a { $count } paneles
survey-details = Detalles
survey-struck = Las lecturas tachadas no cuentan: el medidor falló su comprobación después de ellas.
survey-thin-thick = Del punto más fino al más grueso
survey-range = Rango
survey-sd = Desviación típica
survey-uncertainty = Incertidumbre típica
survey-dof = Grados de libertad efectivos
survey-uncertainty-of = Incertidumbre típica de la media, con medidor, pantalla y dispersión entre puntos combinados (JCGM 100).
survey-basis-bound = Viene de la dispersión de los puntos; más puntos la acercan a la media.
survey-basis-assumed = Con menos de tres puntos se supone una dispersión; leer más puntos para conocerla.
survey-basis-one = Vale solo en este lugar.
survey-show-large = Mostrarlo grande en el mapa
survey-at-spots =
    { $spots ->
        [one] { $count } en 1 punto
       *[other] { $count } en { $spots } puntos
    }
survey-from-to = de { $low } a { $high } µm
survey-very-many = muchísimos
survey-at-least-basis = Mínimo { $film }: { $sure }. { $basis }
survey-spot-edge = Punto { $number }, borde
survey-spot-spread = media { $mean }, dispersión { $sd }, incertidumbre { $uncertainty }
survey-spot-figures = media { $mean }, incertidumbre { $uncertainty }
survey-spot-again = Punto { $number } otra vez
survey-go-to-spot = Ir al punto { $number }
survey-day-of-survey = Día de la inspección
survey-held-by = Medidor en manos de
survey-drop = Descartar esta inspección
survey-measure-after = Medir otra vez tras pulir
survey-measure-after-hint = En los mismos puntos, con el mismo medidor
survey-anew-hint = Cuentan las últimas lecturas de un panel; las anteriores quedan en el trabajo
survey-anew = Leer el vehículo de nuevo
survey-number-stage = Inspección { $number }, { $stage }
survey-number = Inspección { $number }
survey-reading-count =
    { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    }
survey-cannot-read = este panel no se puede leer con este medidor
survey-wants-no-more = este panel no necesita más lecturas; elegir otro, o pulsar R para leer otra vez su último punto
survey-every-read = todos los puntos están leídos u omitidos
survey-not-taken = No se tomó: { $why }.
survey-measure-again = Medir este punto otra vez.
survey-hardly-paint = Se tomó { $film }. Eso apenas es pintura: ¿el medidor muestra { $unit }?
survey-more-than-filler = Se tomó { $film }. Eso es más que masilla: ¿el medidor muestra { $unit }?
survey-photo-no-defect = una foto pertenece a un defecto, y no hay ninguno abierto
survey-photo-no-defect-do = abrir en la inspección un defecto de un panel y añadir la foto
survey-photo-again = intentarlo de nuevo
survey-photo-other = elegir otra foto; se pueden leer JPEG y PNG
survey-photo-defect-gone = el defecto de la foto ya no está
survey-photo-defect-gone-do = añadir la foto a otro
survey-photo-unopened = no se puede abrir la foto: { $why }
survey-import-changed = se está cambiando el vehículo
survey-import-changed-do = primero guardar o descartar sus cambios
survey-import-one-step = Un solo paso, que se puede deshacer.
survey-import-none = No se puede tomar ninguna fila.
survey-import-panel = Panel
survey-import-readings = Lecturas
survey-import-mean = Media
survey-import-no-panel = Ningún panel de este vehículo se llama
survey-import-left-out = se deja fuera
survey-import-from-file = Lecturas de un archivo…
survey-import-from-file-hint = Un archivo CSV con las columnas panel, reading y thickness_um o thickness_mil
survey-pasted = portapapeles
survey-import-from = Lecturas de «{ $file }»
survey-import-read-as = Reconocido: { $what }.
survey-import-add =
    { $count ->
        [one] Añadir 1 lectura
       *[other] Añadir { $count } lecturas
    }
survey-import-to =
    { $count ->
        [one] Se añadirán a 1 panel
       *[other] Se añadirán a { $count } paneles
    }
survey-import-name-rows =
    { $count ->
        [one] «{ $name }», 1 fila
       *[other] «{ $name }», { $count } filas
    }
survey-import-is = es { $panel }
survey-import-not-taken =
    { $count ->
        [one] No tomadas: 1 fila
       *[other] No tomadas: { $count } filas
    }
survey-import-line = Línea { $line }: { $why }.
survey-import-more = y { $count } más
