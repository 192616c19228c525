correction-price-point = { $wanted } %: { $time }, { $gone }
correction-price = Precio de la exigencia: { $points }
correction-time = Tiempo
correction-clear-taken-off = Barniz quitado

correction-gloss-only = Solo brillo
correction-goal-share = Parte de los defectos que debe desaparecer
correction-machine-time = Tiempo a máquina
correction-taken-off-mean = Remoción media
correction-defects-go = Defectos que desaparecen
correction-more-costs = Lo que costaría más. Ningún panel pierde nunca más que su margen, se pida lo que se pida.

correction-whole-vehicle = Vehículo entero
correction-title = Corrección
correction-nothing-read = Aún no se ha leído ningún panel, así que no se puede quitar nada. Leer antes la capa de pintura.
correction-test-spot = Zona de prueba
correction-shop-steps = Pasos del taller
correction-rules = Lo que se puede quitar

correction-finish-differs =
    { $seams ->
        [one] Acabado distinto en { $seams } junta
       *[other] Acabado distinto en { $seams } juntas
    }
correction-looks-different = Se verá distinto de «{ $panel }»: { $cause }.
correction-open-points = Puntos pendientes
correction-seam-advice = Trabajar menos el mejor y más el otro donde lo permita su margen, o avisar al cliente.
correction-beside = Al lado

correction-pad-speed = La boina corre a { $speed } m/s de media. Con la misma fuerza la remoción crece con esta velocidad (ley de Preston).
correction-add-step = Añadir paso
correction-back-to-start = Volver al juego inicial
correction-start-estimates = Las cifras del juego inicial son nuestras estimaciones. La vibración y el ruido están en la ficha del fabricante; la remoción la da una zona de prueba.
correction-copy = Copiar
correction-up = Subir
correction-down = Bajar
correction-remove = Quitar
correction-new-step = Paso nuevo
correction-step-name = Nombre del paso
correction-kind-sand = lijado al agua
correction-kind-cut = corte, deja marcas
correction-kind-polish = pulido, deja brillo
correction-kind-finish = acabado
correction-kind = Tipo
correction-pass-removal = Remoción por pasada
correction-pass-spread = puede ser más en un
correction-marks-left = Deja marcas de hasta
correction-clears-to = Quita defectos de hasta
correction-pass-time = Tiempo por 1 m² y pasada
correction-setup = Preparación, por panel
correction-passes-fewest = Pasadas, mínimo
correction-passes-most = Pasadas, máximo
correction-machine = Máquina
correction-orbit = Diámetro de órbita
correction-turns = Vueltas por minuto
correction-pad-across = Diámetro de boina
correction-pad = Boina
correction-abrasive = Abrasivo
correction-vibration-declared = Vibración declarada
correction-vibration-k = su incertidumbre K
correction-noise-declared = Ruido en el oído
correction-clean-pad-after = Boina limpia cada
correction-polish-per-area = Pulimento por 1 m²
correction-zero-is-usual = 0 deja boinas y pulimento a las cifras habituales del taller.

correction-from-to = { $low } a { $high }
correction-step =
    { $step }, { $passes ->
        [one] { $passes } pasada
       *[other] { $passes } pasadas
    }
correction-at-defect = Antes, en un defecto: { $steps }

correction-ultraviolet = Con { $gone } menos llega al color hasta { $factor } veces más luz ultravioleta (ley de Beer-Lambert, absorbancia { $absorbance }, de memoria).
correction-spot =
    Punto { $number }{ $edge ->
        [yes] , borde
       *[no] {""}
    }
correction-may-go = Se puede quitar
correction-will-go = Se quitará
correction-steps = Pasos
correction-why = Por qué
correction-mind = Atención
correction-what-stays = Lo que queda
correction-as-planned = según el plan
correction-at-most = Como máximo
correction-limits = Límites
correction-at-spots = En los puntos
correction-nothing = nada
correction-spots-alone = Solo con las lecturas del punto. El plan respeta el margen de todo el panel; tapar con cinta lo que esté por debajo.

correction-group-life = Vida de la pintura
correction-group-life-source = Nuestras estimaciones en torno a lo que repiten las páginas del oficio; una convención, no una ley natural.
correction-group-clear = Barniz que se supone
correction-group-clear-source = Los medidores de este tipo no ven el barniz; se toma como una parte de la capa.
correction-group-film = Capa fina y gruesa
correction-group-film-source = Práctica del oficio para la capa entera sobre metal.
correction-group-places = Lugares especiales
correction-group-places-source = Nuestras estimaciones. Con sensores, las indicaciones del fabricante del vehículo van primero.
correction-rule-visit = Máximo en una visita
correction-rule-life = Máximo en su vida
correction-rule-life-share = y de su barniz
correction-rule-keep = Barniz que se conserva
correction-rule-unknown = Gastado, sin historia
correction-rule-clear-least = Al menos, de la capa
correction-rule-clear-least-cap = pero no más de
correction-rule-clear-most = Como máximo, de la capa
correction-rule-clear-most-cap = y no más de
correction-rule-no-cut = No quitar por debajo de
correction-rule-finest-only = Solo lo más fino bajo
correction-rule-there-at-most = ahí como máximo
correction-rule-thin = Nada fuerte bajo
correction-rule-painted-again-above = Repintado por encima de
correction-rule-filler = Masilla por encima de
correction-rule-painted-again = Repintado, máximo
correction-rule-fresh = Aún endureciendo, máximo
correction-rule-narrow = Panel estrecho, máximo
correction-rule-sensor = Sobre un sensor, máximo
correction-rule-hardening = Tarda en endurecer
correction-days = días
correction-back-to-defaults = Volver a los valores iniciales

correction-next =
    A continuación: { $step }, { $passes ->
        [one] { $passes } pasada
       *[other] { $passes } pasadas
    }.
correction-enough = «{ $step }» basta para el objetivo; no hace falta probar un paso más fuerte.
correction-test = Prueba { $number }
correction-step-gone = «{ $step }» ya no está en la lista de pasos, así que este resultado no cuenta.
correction-pass-now = { $mean }, hasta { $most }
correction-pass-was = era { $mean }
correction-deepest = Mayor profundidad, { $defect }
correction-test-how = Un lugar de dos palmos, delimitado con cinta, primero el paso más suave. Parar en el primero que baste.
correction-paint-soft = blanda
correction-paint-usual = normal o no se sabe
correction-paint-hard = dura
correction-this-paint = Esta pintura es
correction-enter-result = Escribir un resultado
correction-enter-another = Escribir otro resultado
correction-none-reaches = Ningún paso del taller alcanza el objetivo en la zona de prueba. Bajar el objetivo o avisar al cliente.
correction-test-step = Paso
correction-passes = Pasadas
correction-went = Defectos que se fueron
correction-went-of = de estos
correction-finish-not-judged = sin juzgar
correction-finish-can-stay = puede quedarse
correction-finish-needs-finer = necesita paso más fino
correction-finish = Acabado
correction-removed = Quitado
correction-basis-gauge = con el medidor
correction-basis-estimated = estimado
correction-known = Se sabe
correction-give-or-take = ±
correction-pass-takes = Una pasada quita, en esta pintura

correction-column-panel = Panel
correction-column-film = Capa mín.
correction-column-may-go = Puede
correction-column-needed = Debe
correction-column-will-go = Se quitará
correction-column-level = Nivel
correction-column-time = Dura
correction-column-stays = Queda
correction-not-read = sin leer
correction-in-sentence-panel = panel
correction-in-sentence-film = capa mínima
correction-in-sentence-may-go = permitido
correction-in-sentence-needed = necesario
correction-in-sentence-will-go = se quitará
correction-in-sentence-level = nivel
correction-in-sentence-time = tiempo
correction-in-sentence-stays = quedan
correction-sort =
    Ordenar por: { $column }{ $order ->
        [rising] , ascendente
        [falling] , descendente
       *[none] {""}
    }
correction-table = Paneles y lo que se hace en ellos

correction-day = Día { $number }, { $time }
correction-machine-on = máquina en marcha { $time }
correction-vibration-points = { $vibration } m/s², { $points } puntos
correction-handed = { $panel } a { $who }
correction-handed-over = Repartido para que nadie alcance un valor de acción: { $moves }.
correction-handed-costs = Eso cuesta { $time }.
correction-day-begins = «{ $panel }, { $verb }» ({ $at })
correction-spread =
    En un solo día { $who } llegaría a { $points } puntos, y a partir de 100 hay que actuar. Repartido en { $days ->
        [one] { $days } día
       *[other] { $days } días
    } todas las personas quedan por debajo; un día nuevo empieza con { $starts }.
correction-osha = En Estados Unidos (29 CFR 1910.95), en un día: dosis de ruido como máximo { $dose } %; a partir del 50 % toca un programa de conservación auditiva, se permite el 100 %. OSHA no fija valor para la vibración.
correction-exposure-basis = Máquinas según lo declarado, a más K, el tiempo que funcionan de verdad. Acción desde 2,5, límite 5 m/s² (Directiva 2002/44/CE); 80 y 85, límite 87 dB(A) (2003/10/CE). Las normas locales y las fichas de los fabricantes van primero.
correction-hands-and-ears = Manos y oídos
correction-vibration = Vibración
correction-noise = Ruido
correction-no-machine = sin máquina
correction-below-action = por debajo del valor de acción
correction-action-reached = valor de acción alcanzado
correction-over-limit = por encima del límite
correction-all-below = En un solo día todas las personas quedan por debajo de los valores de acción.

correction-people =
    { $people ->
        [one] Una persona puliendo
       *[other] { $people } personas puliendo
    }
correction-could-save = Ningún otro orden podría ahorrar más del { $most } %; está demostrado.

correction-row =
    { $at } { $who } { $does }{ $local ->
        [yes] , solo un lugar
       *[no] {""}
    }
correction-nothing-polished = No se pule nada.
correction-planning = Planificando…
correction-no-order = No hay orden.
correction-out-of-date = Anticuado: se está buscando un orden nuevo.
correction-looking = Buscando aún uno mejor…
correction-takes = Tarda
correction-walking-leads = Andar y tender cables
correction-walking = Andar
correction-alone = Una persona sola
correction-is-best = Ningún otro orden de este trabajo es mejor; está demostrado.
correction-who-and-when = Quién y cuándo

correction-stops =
    { $who }, { $stops ->
        [one] { $stops } parada
       *[other] { $stops } paradas
    }, { $time }
correction-stop = { $panel }: { $verbs }

correction-uses-sheets =
    { $area }: { $sheets ->
        [one] { $sheets } hoja
       *[other] { $sheets } hojas
    }, { $towels ->
        [one] { $towels } paño
       *[other] { $towels } paños
    }
correction-uses-pads =
    { $area }: { $pads ->
        [one] { $pads } boina
       *[other] { $pads } boinas
    }, { $polish } de pulimento, { $towels ->
        [one] { $towels } paño
       *[other] { $towels } paños
    }
correction-leads-cost = Con cables cada cambio de lado cuenta { $seconds } s para llevar el cable al otro lado, así que cada persona tiende a quedarse en un lado. No se sabe dónde están los enchufes.
correction-nothing-used = No se pule nada, así que no se gasta nada.
correction-shop-uses = Cuánto gasta este taller (práctica del oficio y nuestras estimaciones para empezar)
correction-pad-serves = Una boina sirve para
correction-polish-for-area = Pulimento por metro cuadrado
correction-towel-serves = Un paño sirve para
correction-sandpaper-for-area = Lija por metro cuadrado
correction-sheets = hojas
correction-on-leads = Las máquinas llevan cable
correction-back-to-usual = Volver a las cantidades habituales
correction-people-time = Tiempo de todo el equipo
correction-cost-labour = Mano de obra
correction-cost-pads = Boinas y lija
correction-cost-polish = Pulimento
correction-cost-towels = Paños
correction-cost-total = Coste del pulido
correction-no-prices = Aún sin precios: escribir lo que paga el taller para ver lo que cuesta el pulido.
correction-currency = Moneda
correction-price-hour = Una hora de una persona
correction-price-pad = Una boina, cada vez
correction-price-sheet = Una hoja de lija
correction-price-litre = Un litro de pulimento
correction-price-towel = Un paño, cada vez
correction-prices-private = Se guarda con el trabajo. En ninguna hoja para el cliente.

correction-parts-water = 1 parte por { $parts } partes de agua
correction-parts-in-all = 1 parte en { $parts } partes de la mezcla
correction-mixture = { $concentrate } y { $water } de agua, { $share } %
correction-ratio-hint = «1:10» se escribe para las dos cosas: preguntar o leer la etiqueta. 1 US fl oz en 2 US gal es 1 parte por 256 de agua, el lavado sin aclarado habitual para boinas y paños (práctica del oficio).
correction-mixture-wanted = Mezcla deseada
correction-one-part-to = 1 parte por
correction-parts = partes
correction-what-to-mind = A tener en cuenta ({ $count })
correction-local-rules = Las normas locales y las fichas de los fabricantes van primero.
correction-materials = Materiales
correction-cost = Coste, solo para el taller
correction-dilution = Dilución
