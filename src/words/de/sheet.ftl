sheet-before-after = Vorher und nachher
sheet-panel = Teil
sheet-paint-before = Lack vorher
sheet-after = Nachher
sheet-polished-off = Abpoliert
sheet-gloss-units = Glanz, in Glanzeinheiten
sheet-about = etwa { $film }
sheet-too-little = zu wenig zum Messen
sheet-no-marks = Es wurden keine Makel vermerkt.
sheet-mark-where = { $mark }: { $panels }.
sheet-not-read = Die Dicke des Lacks wurde nicht gemessen, also wird nichts abpoliert.
sheet-read =
    { $count ->
        [one] Die Dicke des Lacks wurde einmal auf { $on } von { $all } lackierten Teilen gemessen. Was abpoliert werden darf, folgt aus der dünnsten Stelle, mit der dort zu rechnen ist.
       *[other] Die Dicke des Lacks wurde { $count }-mal auf { $on } von { $all } lackierten Teilen gemessen. Was abpoliert werden darf, folgt aus der dünnsten Stelle, mit der dort zu rechnen ist.
    }
sheet-read-on =
    { $count ->
        [one] Die Dicke des Lacks wurde einmal auf { $on } von { $all } lackierten Teilen gemessen ({ $date }). Was abpoliert werden darf, folgt aus der dünnsten Stelle, mit der dort zu rechnen ist.
       *[other] Die Dicke des Lacks wurde { $count }-mal auf { $on } von { $all } lackierten Teilen gemessen ({ $date }). Was abpoliert werden darf, folgt aus der dünnsten Stelle, mit der dort zu rechnen ist.
    }
sheet-blind = Diese Teile kann unser Messgerät wegen des Materials unter dem Lack nicht messen: { $panels }.
sheet-painted-before = Schon einmal neu lackiert: { $panels }.
sheet-consent = Ich habe dieses Blatt gelesen und bin mit der beschriebenen Arbeit einverstanden. Mir ist bekannt, dass Polieren ein wenig Klarlack für immer abträgt.
sheet-received = Ich habe das Fahrzeug angesehen und dieses Blatt erhalten.
sheet-coating-does = Eine Versiegelung erleichtert das Waschen und erhält den Glanz länger. Steinschlag, Dellen und Kratzer von Schlüsseln oder Bürsten verhindert sie nicht, und gewaschen werden muss weiterhin.
sheet-handed-over = Übergeben
sheet-your-consent = Einverständnis
sheet-title-picture-polish = Wie stark jedes Teil poliert wird
sheet-title-picture-found = Was gefunden wurde, und wo
sheet-title-done = Ihr Fahrzeug: was getan wurde
sheet-title = Ihr Fahrzeug: Befund und geplante Arbeit
sheet-vehicle = Fahrzeug
sheet-plate = Kennzeichen
sheet-for = Für
sheet-shop = Ausgeführt von
sheet-asked = Ihr Wunsch
sheet-date = Datum
sheet-found = Was wir fanden
sheet-was-done = Was getan wurde
sheet-will-be-done = Was getan wird
sheet-please-mind = Bitte beachten
sheet-short-gloss = Glanz
sheet-short-once = einmal
sheet-short-several = mehrstufig
sheet-short-sanded = geschliffen
sheet-left = Bleibt, wie es ist
sheet-gently = Sanft auf Glanz poliert
sheet-once = Einmal poliert
sheet-several = In mehreren Schritten poliert
sheet-sanded = Nass geschliffen, dann poliert
sheet-work = Arbeit
sheet-panels = Teile
sheet-cost-polishing = Kosten des Polierens
sheet-amount = Betrag
sheet-costs = Kosten
sheet-when = Wann
sheet-what = Was
sheet-look-after = Pflege
sheet-counted = Gezählt ab dem Moment, in dem das letzte Teil fertig ist.
sheet-name = Name
sheet-signature = Unterschrift
sheet-coated = Versiegelt
sheet-coated-layers = In { $count } Schichten versiegelt
sheet-all-panels = Alle Teile
sheet-all-but = Alle außer: { $panels }
sheet-supplies = Pads, Politur und Tücher
sheet-together = Zusammen
sheet-counted-from = Gezählt ab { $moment }, wenn das letzte Teil fertig ist. Wird es später, verschiebt sich alles.
sheet-until-hard = Bis zur vollen Härte: keine scharfen Reiniger, keine Waschbürsten, und Wasser abtrocknen, bevor es von selbst trocknet.
sheet-polishing-cannot = Polieren füllt keinen Steinschlag, bringt fehlenden Lack nicht zurück und macht schadhaften Lack nicht heil.
sheet-gauge-reads-all = Unser Messgerät misst alle Schichten über dem Metall zusammen. Wie viel davon Klarlack ist, nehmen wir vorsichtig an; gemessen wird es nicht.
sheet-wipers = Versiegeltes Glas: vor der Fahrt die Wischer probieren; rubbeln sie, bitte melden.
sheet-rules-first = Örtliche Regeln und das Blatt des Herstellers der Versiegelung gehen allem vor, was hier steht.
sheet-stays = Was bleibt, und warum
sheet-mark = Makel
sheet-where = Wo
sheet-why = Warum
sheet-why-missing = Lack fehlt; nur Ausbessern oder neuer Lack hilft.
sheet-why-broken = Der Lack selbst ist geschädigt; nur neuer Lack hilft.
sheet-why-proud = Es steht vor; auf Wunsch lässt es sich von Hand einebnen.
sheet-why-thin = Nicht poliert: zu wenig gesicherter Lack, oder keiner gemessen.
sheet-why-deep = Tiefer, als sich sicher auspolieren lässt; Lackieren würde helfen.
sheet-why-fades = Es wird schwächer; der Rest würde zu viel Klarlack kosten.
sheet-from-moment = Ab { $moment }
sheet-after-work = { $span } nach der Arbeit
sheet-days =
    { $count ->
        [one] 1 Tag
       *[other] { $count } Tage
    }
sheet-hours =
    { $count ->
        [one] 1 Stunde
       *[other] { $count } Stunden
    }
sheet-minutes =
    { $count ->
        [one] 1 Minute
       *[other] { $count } Minuten
    }
sheet-crew-cards = Teamkarten
sheet-nothing-planned = Für diese Person ist nichts geplant.
sheet-polishing = Polieren
sheet-coating = Versiegelung
sheet-times-guide = Zeiten sind ein Anhalt, in Minuten und Sekunden ab dem Beginn. Es zählt das Zeitfenster, nicht die Uhr.
sheet-watch-for = Aufpassen
sheet-product = Produkt
sheet-level = Abwischen
sheet-stop-air = Stopp
sheet-mind = Beachten
sheet-number = Nr.
sheet-from = Ab
sheet-steps = Schritte
sheet-does = { $person } { $does }
sheet-coating-of = Versiegelung: { $person }
sheet-window = { $from } bis { $to } nach dem Auftragen
sheet-quantity = Menge
sheet-in-all = { $amount } insgesamt
sheet-apply-panel = Auftragen: { $panel }
sheet-level-panel = Abwischen: { $panel }
sheet-panel-layer = { $panel }, Schicht { $layer }
sheet-stop = Station
sheet-step-local = { $step }, nur an einer Stelle
sheet-step-passes =
    { $count ->
        [one] { $step }, 1 Durchgang
       *[other] { $step }, { $count } Durchgänge
    }
sheet-list-unwritten = die Liste ließ sich nicht schreiben: { $why }
sheet-foot = { $title }. Auftragscode { $code }.
sheet-page = Seite { $number } von { $count }
sheet-code = Auftragscode { $code }
sheet-picture-film = Dicke der Lackschicht
sheet-picture-defects = Was gefunden wurde
sheet-picture-polish = Was poliert wird
sheet-picture-order = Reihenfolge der Versiegelung
sheet-picture-body = Das Fahrzeug
sheet-where-read = Wo gemessen wurde
sheet-where-works = Wo { $person } arbeitet, in welcher Reihenfolge
sheet-where-polishes = Wo { $person } poliert, in welcher Reihenfolge
sheet-unfolded = { $title }: das Fahrzeug flach ausgeklappt, vorn ist links.
sheet-marks =
    { $count ->
        [one] 1 Makel
       *[other] { $count } Makel
    }
sheet-no-pdf = das PDF ließ sich nicht erstellen: { $why }
sheet-no-font = die Schrift ist nicht lesbar
sheet-no-paper = das Papier hat keine Größe
sheet-no-picture = ein Bild von { $width } mal { $height } Bildpunkten geht nicht
sheet-both-sides = { $panel } (beide Seiten)
sheet-left-side = { $panel } links
sheet-right-side = { $panel } rechts
sheet-first-to-last = { $first } bis { $last }
sheet-lacks = unter „{ $place }“, in „{ $text }“: { $characters }
sheet-air = Luft
sheet-coldest = Kälteste Oberfläche
sheet-warmest = Wärmste Oberfläche
sheet-dew-point = Taupunkt
sheet-verdict = Ergebnis
sheet-to-mind = Zu beachten
sheet-layers = Schichten
sheet-window-here = Zeitfenster hier
sheet-window-label = Zeitfenster laut Etikett
sheet-window-patch = Zeitfenster auf Probestelle
sheet-next-layer = Nächste Schicht
sheet-high-spots = Highspots
sheet-makers-cautions = Hinweise des Herstellers
sheet-care-times = Pflegezeiten
sheet-order-coating = Reihenfolge der Versiegelung
sheet-to = Bis
sheet-who = Wer
sheet-layer = Schicht
sheet-air-now = { $temperature }, { $humidity } Luftfeuchte
sheet-dew-margin = { $dew }; die Oberfläche liegt { $margin } darüber
sheet-air-right = passend zum Versiegeln
sheet-bottles =
    { $count ->
        [one] { $amount } insgesamt, 1 Flasche zu { $each }
       *[other] { $amount } insgesamt, { $count } Flaschen zu { $each }
    }
sheet-level-window = { $from } bis { $to } nach dem Auftragen abwischen
sheet-window-at = { $from } bis { $to } bei { $temperature } und { $humidity } Luftfeuchte
sheet-after-time = nach { $time }
sheet-saved-for = { $time } lang zu retten
sheet-window-tried = { $from } bis { $to } bei { $air } Luft, { $humidity } Luftfeuchte, { $surface } Oberfläche; es zählt statt des Etiketts
sheet-record = Technisches Protokoll
sheet-job = Auftrag
sheet-job-code = Auftragscode
sheet-template = Fahrzeugvorlage
sheet-history = Vorgeschichte
sheet-customer = Kunde
sheet-wishes = Wünsche
sheet-goal = Ziel
sheet-crew = Team
sheet-gauge-surveys = Messgerät und Aufnahmen
sheet-gauge = Messgerät
sheet-lower-bounds = Untergrenzen
sheet-survey = Aufnahme
sheet-by = Von
sheet-gauge-checks = Prüfungen des Messgeräts
sheet-member = { $person } ({ $does }; { $experience })
sheet-goal-gloss = Nur Glanz
sheet-goal-share = { $share } der Fehler beseitigen
sheet-gauge-facts = { $principle }; Genauigkeit ±({ $fixed } + { $share }), Anzeigeschritte von { $step }
sheet-bounds = gelten für { $coverage } eines Teils mit { $confidence } Sicherheit
sheet-shim = Folie von { $film }
sheet-bare-plate = blanke Platte
sheet-check-passed = nach Messwert { $reading }: { $on } zeigte { $shown }, bestanden
sheet-check-failed = nach Messwert { $reading }: { $on } zeigte { $shown }, nicht bestanden
sheet-film-may-go = Lackschicht und was abgetragen werden darf
sheet-film-small = µm. Mittel und Untergrenze der Messwerte vor dem Polieren, Zahl der Messwerte, angenommener Klarlack, Spielraum und was ihn bestimmt.
sheet-readings = Messwerte
sheet-defects = Fehler
sheet-gloss = Glanz
sheet-visits = Frühere Besuche
sheet-facts-notes = Angaben und Notizen zu Teilen
sheet-suggest = Was die Messwerte nahelegen
sheet-mean = Mittel
sheet-at-least = Mindestens
sheet-clear = Klarlack
sheet-budget = Spielraum
sheet-decided = Bestimmt durch
sheet-place-readings = Ort auf der Karte, mm: Messwerte, µm
sheet-defect = Fehler
sheet-place = Ort, mm
sheet-size = Größe
sheet-count = Anzahl
sheet-depth = Tiefe
sheet-note = Notiz
sheet-angle = Winkel
sheet-visit = Besuch
sheet-went = Abgetragen
sheet-at-most = Höchstens
sheet-known-from = Bekannt durch
sheet-noted = Was vermerkt ist
sheet-to-do = Was zu tun ist
sheet-over-vehicle = Über das Fahrzeug: { $removal }
sheet-edge = { $spot }; Kante
sheet-depth-range = { $low } bis { $high }
sheet-pictures =
    { $count ->
        [one] 1 Bild
       *[other] { $count } Bilder
    }
sheet-uncoated = ohne Versiegelung
sheet-finish = Oberfläche: { $finish }
sheet-paint = Lack: { $history }
sheet-painted-on = lackiert am { $day }
sheet-on-before = vorher darauf: { $coating }
sheet-held = gehalten bei höchstens „{ $level }“
sheet-made-of = aus { $substrate }
sheet-history-unknown = nicht bekannt
sheet-history-original = nie poliert
sheet-history-again = neu lackiert
sheet-history-fresh =
    { $count ->
        [one] 1 Tag vorher neu lackiert
       *[other] { $count } Tage vorher neu lackiert
    }
sheet-history-polished = schon poliert, insgesamt { $film }
sheet-finish-clear-coat = Klarlack
sheet-finish-single-stage = Einschichtlack
sheet-finish-matte = matt
sheet-finish-film-covered = unter Folie
sheet-finish-wrapped = foliert
sheet-finish-bare = unlackiert
sheet-finish-glass = Glas
sheet-finish-lens = Lampenscheibe
sheet-test-spots = Probefelder
sheet-order-polishing = Reihenfolge des Polierens
sheet-hands-ears = Hände und Ohren
sheet-used-up = Beim Polieren verbraucht
sheet-polish-level = Stufe
sheet-takes-off = Abtrag, µm
sheet-time = Zeit
sheet-step = Schritt
sheet-passes = Durchgänge
sheet-took-off = Abgetragen
sheet-what-went = Was wegging
sheet-day = Tag
sheet-vibration = Vibration A(8), m/s²
sheet-points = Punkte
sheet-noise = Lärm LEX,8h, dB(A)
sheet-standing = Stand
sheet-area = Fläche
sheet-pads = Pads
sheet-sheets = Blätter
sheet-polish = Politur
sheet-towels = Tücher
sheet-local-step = an einer Stelle: { $step }, { $passes } ×
sheet-give-or-take = { $film } ± { $give }
sheet-share-of = { $share } der Fehler ({ $defect })
sheet-map-front = Vorn
sheet-map-left = Linke Seite
sheet-map-right = Rechte Seite
