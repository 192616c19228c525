scene-overlay-film = Capa
scene-overlay-defects = Defectos
scene-overlay-polish = Pulido
scene-overlay-order = Orden
scene-overlay-body = Carrocería

scene-film = capa { $mean } µm, al menos { $lower } µm
scene-no-reading = sin lectura, { $reason }
scene-no-reading-counts = sin lectura válida, { $reason }
scene-unread = sin medir
scene-defects = { $count ->
    [0] sin defectos
    [one] { $count } defecto
   *[other] { $count } defectos
}
scene-stop = { $who } { $does }, como número { $number }

scene-film-ramp = Capa media, de { $low } µm o menos a { $high } µm o más; ≥ es al menos
scene-spot-mean = Punto, media en µm
scene-spot-suspect = No cuenta, falló el medidor
scene-not-read = Pintado, sin medir
scene-defect-fine = Fino, sale puliendo
scene-defect-deep = Profundo, quizá solo se atenúe
scene-defect-on-top = En la superficie, se limpia
scene-defect-broken = A través del barniz, requiere pintura
scene-budget-used = Margen usado como máximo
scene-left-uncoated = Queda sin recubrir
scene-not-polished = Sin pulir
scene-first-to-last = Del primero al último
scene-who-does = { $who } { $does }
scene-does-here = { $who } { $does } aquí
scene-stops-of = Paradas de { $who }
scene-at-panels = { $time } en paneles

scene-sands = lija
scene-cuts = corta
scene-polishes = pule
scene-finishes = acaba

scene-made-of = { $substrate }, unos { $area } m²
scene-painted-usual = Pintado, { $substrate } donde no dice nada
scene-glass = Vidrio
scene-lamp = Faro
scene-trim = Moldura sin pintar
scene-left-out = Omitido

scene-not-in-exercise = no forma parte de este ejercicio
scene-to-do = aún sin hacer
scene-is-wet = húmedo
scene-wet-window = húmedo, { $window }
scene-wet = Húmedo
scene-level = Nivelado
scene-out-of-exercise = Fuera de este ejercicio
scene-nothing-done = Aún nada hecho

scene-is-done = hecho
scene-done = Hecho
scene-wet-left = húmedo, quedan { $time } para nivelarlo
scene-wet-time-left = Húmedo, tiempo para nivelar
scene-one-is-now = { $who }: 1 = ahora
scene-one-is-next = { $who }: 1 = después
scene-role-apply = Aplicar
scene-role-level = Nivelar
scene-role-sand = Lijar
scene-role-cut = Cortar
scene-role-polish = Pulir
scene-role-finish = Acabar
scene-in-short = { $does } { $panel }
scene-said = { $done }, { $next }
scene-said-applied = { $panel }: aplicado
scene-said-level = { $panel }: nivelado
scene-said-sanded = { $panel }: lijado
scene-said-cut = { $panel }: cortado
scene-said-polished = { $panel }: pulido
scene-said-finished = { $panel }: acabado
scene-said-done = { $panel }: hecho
scene-said-next = sigue { $what }
scene-said-nothing-left = nada más para mí
scene-hold-first = primero, { $does }: { $panel }
scene-hold-early = { $seconds } s antes de tiempo
scene-hold-wet = { $panel }: aún húmedo
scene-hold-near = { $who } trabaja demasiado cerca
scene-late = { $panel }: unos { $time } tarde. Nivelarlo primero; donde arrastre, humedecerlo con el aplicador usado y nivelar enseguida.
scene-odd-taps = { $count ->
    [one] Una pulsación no cuenta: { $cause }.
   *[other] { $count } pulsaciones no cuentan. La primera: { $cause }.
}

scene-look-here = A mirar desde aquí
scene-look-later = A mirar después
scene-high-spot = Exceso
scene-stance-at-left = { $place }, izquierda
scene-stance-at-right = { $place }, derecha
scene-stance-front = Frente
scene-stance-wing = Aleta
scene-stance-door-front = Puerta delantera
scene-stance-b-pillar = Pilar B
scene-stance-door-rear = Puerta trasera
scene-stance-door-side = Puerta lateral
scene-stance-rear-quarter = Aleta trasera
scene-stance-rear = Trasera
scene-stance-load = Carga
scene-stance-load-rear = Carga trasera
scene-stance-bed = Caja
scene-stance-bay = Tramo
