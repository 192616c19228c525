cli-report = comunicarlo como fallo del programa
cli-no-thread = no se puede iniciar un proceso: { $why }
cli-no-thread-do = cerrar otros programas e intentarlo de nuevo
cli-planner-stopped = la planificación se detuvo de improviso
cli-planner-stopped-do = probar otro --seed y comunicarlo como fallo del programa
cli-crew-no-plan = no se halló ningún plan en { $seconds } s; un límite inferior del coste es { $bound }
cli-mend-place = corregir el lugar indicado
cli-lists-more = { $first }; lapwright check enumera { $count } más
cli-not-usable = { $name }: no es un problema utilizable
cli-check-file = revisar el archivo
cli-check-nothing = { $name }: nada que objetar
cli-check-findings =
    { $count ->
        [one] { $name }: 1 hallazgo
       *[other] { $name }: { $count } hallazgos
    }
cli-check-suggest =
    { $count ->
        [one] { $name }: las lecturas sugieren 1 cosa sobre la pintura
       *[other] { $name }: las lecturas sugieren { $count } cosas sobre la pintura
    }
cli-mend-or-other = corregir el archivo o elegir otro
cli-import-no-panel = el vehículo no tiene ningún panel «{ $panel }»
cli-import-no-rows = no tiene filas
cli-import-line = línea { $line }: { $reason }
cli-import-none = { $name }: ninguna de sus { $count } filas se puede tomar ({ $why })
cli-import-none-do = no se escribió nada; corregir las filas, los paneles se llaman como en `lapwright plan --json`
cli-nothing-written = no se escribió nada
cli-import-not-taken = { $name }:{ $line }: no tomada: { $reason }
cli-import-summary = { $taken } añadidas, { $count } no tomadas
cli-readings =
    { $count ->
        [one] 1 lectura
       *[other] { $count } lecturas
    }
cli-costs-customer = --costs es para la hoja del cliente
cli-costs-do = quitar --costs
cli-no-day = el trabajo no tiene día, así que no hay desde cuándo contar los cuidados
cli-no-day-do = escribir el día en Trabajo, o como `date` en el archivo
cli-no-order = ningún orden válido: { $why }
cli-no-order-polishing = ningún orden de pulido válido: { $why }
cli-sheet-ending = «{ $file }» no tiene una terminación en la que se pueda escribir esta hoja
cli-ending-customer = que el nombre termine en .pdf o .html, o .ics para los cuidados
cli-ending-crew = que el nombre termine en .pdf o .html, o .csv para el orden como lista
cli-ending-record = que el nombre termine en .pdf o .html
cli-font-lacks = a la letra de las hojas le faltan caracteres: { $places }
cli-font-lacks-do = escribir estos textos en letras latinas, griegas o cirílicas, o escribir la hoja como .html
cli-map-ending = «{ $file }» no tiene una terminación en la que se pueda escribir un mapa
cli-map-ending-do = que el nombre termine en .svg o .png
cli-exists = «{ $file }» ya existe
cli-exists-do = elegir otro nombre, para no sobrescribir nada
cli-codes = los códigos son { $codes }
cli-no-output = no se puede escribir la salida: { $why }
cli-no-output-do = comprobar adónde va la salida
cli-see-help = lapwright --help muestra los comandos y sus opciones
cli-the-sample = la muestra
cli-plan-head-polishing = Pulido
cli-plan-column-panel = panel
cli-plan-column-film = capa mínima
cli-plan-column-may-lose = margen
cli-plan-column-level = nivel
cli-plan-column-will-lose = se quitará
cli-plan-not-read = sin leer
cli-plan-will-lose = { $mean } µm, como máximo { $most } µm
cli-plan-head-open = Puntos abiertos
cli-plan-head-coating = Recubrimiento
cli-plan-air-right = El aire es adecuado.
cli-plan-air-stop = Alto: no recubrir con este aire.
cli-plan-air = Punto de rocío { $dew } °C, superficie { $margin } K por encima; nivelar de { $from } a { $to } tras aplicar; { $ml } ml.
cli-plan-order-takes = El orden tarda { $time }; demostrado: ninguno cuesta menos del { $share } % del suyo.
cli-plan-all-uncoated = Todos los paneles quedan sin recubrir.
cli-plan-head-cautions = Precauciones
cli-plan-gauge = Medidor
cli-plan-head-suggest = Lo que sugieren las lecturas (los límites son práctica del oficio)
cli-plan-head-polishing-order = Orden del pulido
cli-plan-day = Día { $day }
cli-plan-at-one-place = { $step }, en un lugar
cli-plan-head-exposure = Manos y oídos (valores declarados más su incertidumbre; primero van las normas locales y las hojas de los fabricantes)
cli-plan-no-machine = sin máquina
cli-plan-exposure = { $worker } vibración A(8) { $vibration } m/s², { $points } puntos ({ $standing }); ruido { $noise } ({ $noise_standing })
cli-plan-day-exposure = día { $day } { $exposure }
cli-plan-spread = En un día alguien superaría un valor de acción, así que el trabajo se reparte en { $days } días.
cli-plan-handed = { $panel } pasa a { $worker }, para que nadie supere un valor de acción.
cli-plan-head-materials = Materiales
cli-plan-sheets = { $count } hojas
cli-plan-pads = { $count } boinas
cli-plan-towels = { $count } paños
cli-plan-polishing-takes =
    { $people ->
        [one] { $time } para { $people } persona; demostrado: ninguno cuesta menos del { $share } % del suyo.
       *[other] { $time } para { $people } personas; demostrado: ninguno cuesta menos del { $share } % del suyo.
    }
cli-help = Planificar una corrección ligera de pintura y el recubrimiento de un vehículo entre dos personas
cli-help-job = El trabajo que se abre en la ventana; sin él, la muestra. Donde no hay pantalla, se imprime su plan
cli-help-sample = Escribir el trabajo de muestra como archivo para empezar
cli-help-plan = Imprimir el plan de pulido y el orden del recubrimiento
cli-help-check = Revisar trabajos, plantillas de vehículo y problemas de equipo; enumera todos los hallazgos
cli-help-crew = Resolver un problema de equipo; una línea por mejora en stderr: segundos, coste, límite
cli-help-import = Añadir a un trabajo lecturas de un archivo CSV; enumera cada fila que no se toma
cli-help-sheet = Escribir la hoja del cliente, las fichas del equipo o el registro técnico
cli-help-map = Escribir el mapa del vehículo como imagen
cli-help-explain = Explicar un hallazgo: qué significa y qué hacer
cli-help-sample-out = El archivo que se escribe; aún no debe existir
cli-help-job-or-sample = El trabajo; sin él, la muestra
cli-help-json = Imprimir un objeto JSON en vez de texto
cli-help-plan-seconds = Cuánto tiempo buscar un orden mejor
cli-help-plan-seed = Semilla de la búsqueda; la misma semilla busca en los mismos lugares
cli-help-files = Los archivos
cli-help-problem = El problema, formato crew-problem/1
cli-help-crew-seconds = Cuánto tiempo buscar
cli-help-threads = Cuántos procesos buscan
cli-help-crew-seed = Semilla de la búsqueda
cli-help-crew-plan = Escribir aquí el plan en vez de imprimirlo
cli-help-the-job = El trabajo
cli-help-readings = Las lecturas: una cabecera con panel, reading y thickness_um o thickness_mil
cli-help-import-out = El archivo donde se escribe el trabajo; puede ser el mismo
cli-help-which = Cuál
cli-help-sheet-out = El archivo que se escribe: .pdf o .html; para el equipo también .csv, para el cliente también .ics con los cuidados
cli-help-paper = Tamaño del papel
cli-help-locale = Fechas y nombres de paneles británicos o estadounidenses
cli-help-costs = Decir en la hoja del cliente lo que cuesta el pulido a los precios del taller
cli-help-done = Cuándo estará nivelado el último panel el día del trabajo; desde entonces cuentan los cuidados
cli-help-customer = Para el cliente: qué se encontró, qué se hará, cómo cuidarlo
cli-help-crew-card = Una ficha para cada persona del equipo, con su propio orden
cli-help-record = Todo lo que necesita una visita posterior
cli-help-a4 = 210 × 297 mm
cli-help-letter = 8,5 × 11 pulgadas
cli-help-uk = Día antes del mes; nombres británicos de los paneles, donde se habla inglés
cli-help-us = Mes antes del día; nombres estadounidenses de los paneles, donde se habla inglés
cli-help-show = Qué muestra
cli-help-map-out = El archivo que se escribe: .svg o .png
cli-help-film = Espesor de la capa de pintura
cli-help-defects = Qué está mal, y dónde
cli-help-polish = Cuánto se trabajará cada panel
cli-help-order = Quién recubre qué, en qué orden
cli-help-code = El código de un hallazgo, por ejemplo template-gap
cli-bad-seconds = indicar un número de segundos de 0 a 86400
cli-bad-time = indicar una hora como horas y minutos, por ejemplo 17:00
cli-help-language = Idioma de lo que se imprime y de las hojas; sin él, el del sistema
cli-bad-language = indicar una de { $tags }
cli-job-before-command = «{ $job }» está antes del comando; nombrar el trabajo detrás
