scene-overlay-film = Lackschicht
scene-overlay-defects = Fehler
scene-overlay-polish = Polieren
scene-overlay-order = Reihenfolge
scene-overlay-body = Karosserie

scene-film = Lackschicht { $mean } µm, mindestens { $lower } µm
scene-no-reading = kein Messwert, { $reason }
scene-no-reading-counts = kein gültiger Messwert, { $reason }
scene-unread = nicht gemessen
scene-defects = { $count ->
    [0] keine Fehler
    [one] { $count } Fehler
   *[other] { $count } Fehler
}
scene-stop = { $who } { $does }, als Nummer { $number }

scene-film-ramp = Mittlere Lackschicht, { $low } µm oder weniger bis { $high } µm oder mehr; ≥ heißt mindestens
scene-spot-mean = Messstelle, Mittel in µm
scene-spot-suspect = Zählt nicht, Messgerät fehlerhaft
scene-not-read = Lackiert, nicht gemessen
scene-defect-fine = Fein, polierbar
scene-defect-deep = Tief, wird evtl. nur schwächer
scene-defect-on-top = Auf der Oberfläche, geht ab
scene-defect-broken = Durch den Klarlack, braucht Lack
scene-budget-used = Spielraum, höchstens genutzt
scene-left-uncoated = Bleibt unversiegelt
scene-not-polished = Nicht poliert
scene-first-to-last = Vom ersten zum letzten
scene-who-does = { $who } { $does }
scene-does-here = { $who } { $does } hier
scene-stops-of = Stationen von { $who }
scene-at-panels = { $time } an Teilen

scene-sands = schleift
scene-cuts = poliert grob
scene-polishes = poliert
scene-finishes = poliert fein

scene-made-of = { $substrate }, etwa { $area } m²
scene-painted-usual = Lackiert, { $substrate }, wo nichts steht
scene-glass = Glas
scene-lamp = Leuchte
scene-trim = Unlackierte Zierteile
scene-left-out = Ausgelassen

scene-not-in-exercise = nicht Teil dieser Übung
scene-to-do = noch nichts gemacht
scene-is-wet = nass
scene-wet-window = nass, { $window }
scene-wet = Nass
scene-level = Abgewischt
scene-out-of-exercise = Nicht in dieser Übung
scene-nothing-done = Noch nichts gemacht

scene-is-done = fertig
scene-done = Fertig
scene-wet-left = nass, noch { $time } zum Abwischen
scene-wet-time-left = Nass, Restzeit zum Abwischen
scene-one-is-now = { $who }: 1 = jetzt
scene-one-is-next = { $who }: 1 = danach
scene-role-apply = Auftragen
scene-role-level = Abwischen
scene-role-sand = Schleifen
scene-role-cut = Grob polieren
scene-role-polish = Polieren
scene-role-finish = Fein polieren
scene-in-short = { $panel } { $does }
scene-said = { $done }, { $next }
scene-said-applied = { $panel } ist beschichtet
scene-said-level = { $panel } ist abgewischt
scene-said-sanded = { $panel } ist geschliffen
scene-said-cut = { $panel } ist grob poliert
scene-said-polished = { $panel } ist poliert
scene-said-finished = { $panel } ist fein poliert
scene-said-done = { $panel } ist fertig
scene-said-next = als Nächstes { $what }
scene-said-nothing-left = für mich nichts mehr
scene-hold-first = { $does } kommt zuerst: { $panel }
scene-hold-early = { $seconds } s zu früh
scene-hold-wet = { $panel } ist noch nass
scene-hold-near = { $who } arbeitet zu nah
scene-late = { $panel } kommt etwa { $time } zu spät. Zuerst dort abwischen; wo es zieht, mit dem benutzten Auftragschwamm anfeuchten und sofort abwischen.
scene-odd-taps = { $count ->
    [one] Eine Eingabe zählt nicht: { $cause }.
   *[other] { $count } Eingaben zählen nicht. Die erste: { $cause }.
}

scene-look-here = Von hier aus anzusehen
scene-look-later = Später anzusehen
scene-high-spot = Highspot
scene-stance-at-left = { $place } links
scene-stance-at-right = { $place } rechts
scene-stance-front = Front
scene-stance-wing = Kotflügel
scene-stance-door-front = Tür vorn
scene-stance-b-pillar = B-Säule
scene-stance-door-rear = Tür hinten
scene-stance-door-side = Seitentür
scene-stance-rear-quarter = Seitenteil hinten
scene-stance-rear = Heck
scene-stance-load = Laderaum
scene-stance-load-rear = Laderaum hinten
scene-stance-bed = Ladefläche
scene-stance-bay = Feld
