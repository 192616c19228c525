sheet-before-after = Antes y después
sheet-panel = Panel
sheet-paint-before = Pintura antes
sheet-after = Después
sheet-polished-off = Quitado
sheet-gloss-units = Brillo, en unidades de brillo
sheet-about = unos { $film }
sheet-too-little = demasiado poco para leerlo
sheet-no-marks = No se anotaron marcas.
sheet-mark-where = { $mark }: { $panels }
sheet-not-read = No se midió el espesor de la pintura, así que no se quita nada al pulir.
sheet-read =
    { $count ->
        [one] El espesor de la pintura se midió una vez en { $on } de { $all } paneles pintados. Lo que se puede quitar depende de lo más fino que cabe esperar allí.
       *[other] El espesor de la pintura se midió { $count } veces en { $on } de { $all } paneles pintados. Lo que se puede quitar depende de lo más fino que cabe esperar allí.
    }
sheet-read-on =
    { $count ->
        [one] El espesor de la pintura se midió una vez en { $on } de { $all } paneles pintados ({ $date }). Lo que se puede quitar depende de lo más fino que cabe esperar allí.
       *[other] El espesor de la pintura se midió { $count } veces en { $on } de { $all } paneles pintados ({ $date }). Lo que se puede quitar depende de lo más fino que cabe esperar allí.
    }
sheet-blind = Nuestro medidor no puede medir estos paneles, por el material que hay bajo la pintura: { $panels }
sheet-painted-before = Repintado en algún momento anterior: { $panels }
sheet-consent = He leído esta hoja y estoy de acuerdo con el trabajo descrito. Sé que el pulido quita para siempre un poco de barniz.
sheet-received = He mirado el vehículo y recibido esta hoja.
sheet-coating-does = Un recubrimiento facilita el lavado y conserva más tiempo el brillo. No evita picotazos, abolladuras ni arañazos de llaves y cepillos, y hay que seguir lavando.
sheet-handed-over = Entregado
sheet-your-consent = Su conformidad
sheet-title-picture-polish = Cuánto se pule cada panel
sheet-title-picture-found = Qué se encontró, y dónde
sheet-title-done = Su vehículo: lo que se hizo
sheet-title = Su vehículo: lo que encontramos y lo que haremos
sheet-vehicle = Vehículo
sheet-plate = Matrícula
sheet-for = Para
sheet-shop = Trabajo de
sheet-asked = Usted pidió
sheet-date = Fecha
sheet-found = Lo que encontramos
sheet-was-done = Lo que se hizo
sheet-will-be-done = Lo que se hará
sheet-please-mind = Tenga en cuenta
sheet-short-gloss = brillo
sheet-short-once = una vez
sheet-short-several = varios pasos
sheet-short-sanded = lijado
sheet-left = Se deja como está
sheet-gently = Pulido suave para dar brillo
sheet-once = Pulido una vez
sheet-several = Pulido en varios pasos
sheet-sanded = Lijado al agua y pulido
sheet-work = Trabajo
sheet-panels = Paneles
sheet-cost-polishing = Coste del pulido
sheet-amount = Importe
sheet-costs = Costes
sheet-when = Cuándo
sheet-what = Qué
sheet-look-after = Cuidados
sheet-counted = Contado desde que se termina el último panel.
sheet-name = Nombre
sheet-signature = Firma
sheet-coated = Recubierto
sheet-coated-layers = Recubierto en { $count } capas
sheet-all-panels = Todos los paneles
sheet-all-but = Todos menos: { $panels }
sheet-supplies = Boinas, pulimento y paños
sheet-together = Total
sheet-counted-from = Contado desde { $moment }, cuando se termina el último panel. Si se retrasa, todo se mueve.
sheet-until-hard = Hasta que esté del todo duro: ni limpiadores fuertes ni cepillos de lavado, y secar el agua antes de que se seque sola.
sheet-polishing-cannot = El pulido no rellena picotazos, no devuelve la pintura que falta ni repara la pintura que se degrada.
sheet-gauge-reads-all = Nuestro medidor lee juntas todas las capas sobre el metal. Cuánto de eso es barniz lo suponemos, con cautela; no lo medimos.
sheet-wipers = Cristal recubierto: pruebe los limpiaparabrisas antes de conducir; si vibran, díganoslo.
sheet-rules-first = Las normas locales y la hoja del fabricante del recubrimiento van antes que todo lo dicho aquí.
sheet-stays = Qué se queda, y por qué
sheet-mark = Marca
sheet-where = Dónde
sheet-why = Por qué
sheet-why-missing = Falta pintura; solo ayuda retocar o repintar.
sheet-why-broken = La propia pintura está dañada; solo ayuda repintar.
sheet-why-proud = Sobresale; se puede nivelar a mano si lo pide.
sheet-why-thin = No se pule: hay poca pintura segura, o no se midió.
sheet-why-deep = Más profundo de lo que se puede pulir con seguridad; ayudaría pintar.
sheet-why-fades = Se atenúa; el resto costaría demasiado barniz.
sheet-from-moment = Desde { $moment }
sheet-after-work = { $span } después del trabajo
sheet-days =
    { $count ->
        [one] 1 día
       *[other] { $count } días
    }
sheet-hours =
    { $count ->
        [one] 1 hora
       *[other] { $count } horas
    }
sheet-minutes =
    { $count ->
        [one] 1 minuto
       *[other] { $count } minutos
    }
sheet-crew-cards = Fichas del equipo
sheet-nothing-planned = No hay nada planificado para esta persona.
sheet-polishing = Pulido
sheet-coating = Recubrimiento
sheet-times-guide = Los tiempos son una guía, en minutos y segundos desde el inicio. Cuenta la ventana, no el reloj.
sheet-watch-for = Atención a
sheet-product = Producto
sheet-level = Nivelar
sheet-stop-air = Alto
sheet-mind = Atención
sheet-number = N.º
sheet-from = Desde
sheet-steps = Pasos
sheet-does = { $person } { $does }
sheet-coating-of = Recubrimiento: { $person }
sheet-window = de { $from } a { $to } tras aplicar
sheet-quantity = Cantidad
sheet-in-all = { $amount } en total
sheet-apply-panel = Aplicar: { $panel }
sheet-level-panel = Nivelar: { $panel }
sheet-panel-layer = { $panel }, capa { $layer }
sheet-stop = Parada
sheet-step-local = { $step }, solo en un lugar
sheet-step-passes =
    { $count ->
        [one] { $step }, 1 pasada
       *[other] { $step }, { $count } pasadas
    }
sheet-list-unwritten = no se pudo escribir la lista: { $why }
sheet-foot = { $title }. Código de trabajo { $code }.
sheet-page = Página { $number } de { $count }
sheet-code = Código de trabajo { $code }
sheet-picture-film = Espesor de la pintura
sheet-picture-defects = Qué se encontró
sheet-picture-polish = Qué se pulirá
sheet-picture-order = Orden del recubrimiento
sheet-picture-body = El vehículo
sheet-where-read = Dónde se midió
sheet-where-works = Dónde trabaja { $person }, y en qué orden
sheet-where-polishes = Dónde pule { $person }, y en qué orden
sheet-unfolded = { $title }: el vehículo desplegado en plano, el frente a la izquierda.
sheet-marks =
    { $count ->
        [one] 1 marca
       *[other] { $count } marcas
    }
sheet-no-pdf = no se pudo crear el PDF: { $why }
sheet-no-font = no se puede leer la letra
sheet-no-paper = el papel no tiene tamaño
sheet-no-picture = no se puede hacer una imagen de { $width } por { $height } píxeles
sheet-both-sides = { $panel } (ambos lados)
sheet-left-side = { $panel } izq.
sheet-right-side = { $panel } der.
sheet-first-to-last = { $first } a { $last }
sheet-lacks = bajo «{ $place }», en «{ $text }»: { $characters }
sheet-air = Aire
sheet-coldest = Superficie más fría
sheet-warmest = Superficie más cálida
sheet-dew-point = Punto de rocío
sheet-verdict = Resultado
sheet-to-mind = A tener en cuenta
sheet-layers = Capas
sheet-window-here = Ventana aquí
sheet-window-label = Ventana de la etiqueta
sheet-window-patch = Ventana probada en una zona
sheet-next-layer = Capa siguiente
sheet-high-spots = Excesos
sheet-makers-cautions = Precauciones del fabricante
sheet-care-times = Tiempos de cuidado
sheet-order-coating = Orden del recubrimiento
sheet-to = Hasta
sheet-who = Quién
sheet-layer = Capa
sheet-air-now = { $temperature }, { $humidity } de humedad
sheet-dew-margin = { $dew }; la superficie está { $margin } por encima
sheet-air-right = adecuado para recubrir
sheet-bottles =
    { $count ->
        [one] { $amount } en total, 1 frasco de { $each }
       *[other] { $amount } en total, { $count } frascos de { $each }
    }
sheet-level-window = nivelar de { $from } a { $to } tras aplicar
sheet-window-at = de { $from } a { $to } con { $temperature } y { $humidity } de humedad
sheet-after-time = tras { $time }
sheet-saved-for = se pueden salvar durante { $time }
sheet-window-tried = de { $from } a { $to } con aire a { $air }, { $humidity } de humedad, superficie a { $surface }; cuenta en lugar de la etiqueta
sheet-record = Registro técnico
sheet-job = Trabajo
sheet-job-code = Código de trabajo
sheet-template = Plantilla de vehículo
sheet-history = Historial
sheet-customer = Cliente
sheet-wishes = Deseos
sheet-goal = Objetivo
sheet-crew = Equipo
sheet-gauge-surveys = Medidor e inspecciones
sheet-gauge = Medidor
sheet-lower-bounds = Límites inferiores
sheet-survey = Inspección
sheet-by = Por
sheet-gauge-checks = Comprobaciones del medidor
sheet-member = { $person } ({ $does }; { $experience })
sheet-goal-gloss = Solo brillo
sheet-goal-share = quitar el { $share } de los defectos
sheet-gauge-facts = { $principle }; exactitud ±({ $fixed } + { $share }), pasos de lectura de { $step }
sheet-bounds = valen para el { $coverage } de un panel con { $confidence } de confianza
sheet-shim = galga de { $film }
sheet-bare-plate = placa desnuda
sheet-check-passed = tras la lectura { $reading }: { $on } mostró { $shown }, superada
sheet-check-failed = tras la lectura { $reading }: { $on } mostró { $shown }, fallida
sheet-film-may-go = Capa de pintura y qué se puede quitar
sheet-film-small = µm. Media y límite inferior de las lecturas antes de pulir, número de lecturas, barniz supuesto, margen y qué lo decide.
sheet-readings = Lecturas
sheet-defects = Defectos
sheet-gloss = Brillo
sheet-visits = Visitas anteriores
sheet-facts-notes = Datos y notas de paneles
sheet-suggest = Lo que sugieren las lecturas
sheet-mean = Media
sheet-at-least = Mínimo
sheet-clear = Barniz
sheet-budget = Margen
sheet-decided = Decidido por
sheet-place-readings = Lugar en el mapa, mm: lecturas, µm
sheet-defect = Defecto
sheet-place = Lugar, mm
sheet-size = Tamaño
sheet-count = Número
sheet-depth = Profundidad
sheet-note = Nota
sheet-angle = Ángulo
sheet-visit = Visita
sheet-went = Quitado
sheet-at-most = Máximo
sheet-known-from = Se sabe por
sheet-noted = Qué está anotado
sheet-to-do = Qué hacer
sheet-over-vehicle = En todo el vehículo: { $removal }
sheet-edge = { $spot }; borde
sheet-depth-range = { $low } a { $high }
sheet-pictures =
    { $count ->
        [one] 1 foto
       *[other] { $count } fotos
    }
sheet-uncoated = sin recubrir
sheet-finish = acabado: { $finish }
sheet-paint = pintura: { $history }
sheet-painted-on = pintado el { $day }
sheet-on-before = antes llevaba: { $coating }
sheet-held = limitado a { $level } como máximo
sheet-made-of = de { $substrate }
sheet-history-unknown = no se sabe
sheet-history-original = nunca pulida
sheet-history-again = repintada
sheet-history-fresh =
    { $count ->
        [one] repintada 1 día antes
       *[other] repintada { $count } días antes
    }
sheet-history-polished = pulida antes, { $film } en total
sheet-finish-clear-coat = barniz
sheet-finish-single-stage = monocapa
sheet-finish-matte = mate
sheet-finish-film-covered = bajo lámina
sheet-finish-wrapped = vinilado
sheet-finish-bare = sin pintar
sheet-finish-glass = cristal
sheet-finish-lens = tulipa
sheet-test-spots = Zonas de prueba
sheet-order-polishing = Orden del pulido
sheet-hands-ears = Manos y oídos
sheet-used-up = Gastado en el pulido
sheet-polish-level = Nivel
sheet-takes-off = Quita, µm
sheet-time = Tiempo
sheet-step = Paso
sheet-passes = Pasadas
sheet-took-off = Quitado
sheet-what-went = Qué se fue
sheet-day = Día
sheet-vibration = Vibración A(8), m/s²
sheet-points = Puntos
sheet-noise = Ruido LEX,8h, dB(A)
sheet-standing = Situación
sheet-area = Área
sheet-pads = Boinas
sheet-sheets = Hojas
sheet-polish = Pulimento
sheet-towels = Paños
sheet-local-step = en un lugar: { $step }, { $passes } ×
sheet-give-or-take = { $film } ± { $give }
sheet-share-of = { $share } de { $defect }
sheet-map-front = Delante
sheet-map-left = Lado izquierdo
sheet-map-right = Lado derecho
