correction-price-point = { $wanted } %: { $time }, { $gone }
correction-price = Preis des Anspruchs: { $points }
correction-time = Zeit
correction-clear-taken-off = Klarlack weg

correction-gloss-only = Nur Glanz
correction-goal-share = Anteil der Fehler, der verschwinden soll
correction-machine-time = Zeit an der Maschine
correction-taken-off-mean = Abtrag im Mittel
correction-defects-go = Fehler, die verschwinden
correction-more-costs = Was mehr kosten würde. Kein Teil verliert je mehr als seinen Spielraum, was auch verlangt wird.

correction-whole-vehicle = Ganzes Fahrzeug
correction-title = Korrektur
correction-nothing-read = Noch ist kein Teil gemessen, also darf nichts abgetragen werden. Zuerst die Lackschicht messen.
correction-test-spot = Probefeld
correction-shop-steps = Schritte des Betriebs
correction-rules = Was abgetragen werden darf

correction-finish-differs =
    { $seams ->
        [one] Unterschied an { $seams } Fuge
       *[other] Unterschied an { $seams } Fugen
    }
correction-looks-different = Wird anders aussehen als „{ $panel }“: { $cause }.
correction-open-points = Offene Punkte
correction-seam-advice = Das bessere weniger bearbeiten, das andere mehr, wo der Spielraum es erlaubt, oder es dem Kunden sagen.
correction-beside = Daneben

correction-pad-speed = Das Pad läuft im Mittel mit { $speed } m/s. Bei gleicher Kraft wächst der Abtrag mit dieser Geschwindigkeit (Preston-Gesetz).
correction-add-step = Schritt hinzufügen
correction-back-to-start = Zurück zur Grundausstattung
correction-start-estimates = Die Zahlen der Grundausstattung sind unsere Schätzungen. Vibration und Lärm nennt das Datenblatt des Herstellers, den Abtrag zeigt ein Probefeld.
correction-copy = Kopieren
correction-up = Hoch
correction-down = Runter
correction-remove = Entfernen
correction-new-step = Neuer Schritt
correction-step-name = Name des Schritts
correction-kind-sand = Nassschliff
correction-kind-cut = Vorpolieren, lässt Spuren
correction-kind-polish = Polieren, lässt Glanz
correction-kind-finish = Feinpolieren
correction-kind = Art
correction-pass-removal = Abtrag je Durchgang
correction-pass-spread = kann mehr sein um
correction-marks-left = Lässt Spuren so tief wie
correction-clears-to = Nimmt Fehler weg bis
correction-pass-time = Zeit für 1 m² und Durchgang
correction-setup = Vorbereitung je Teil
correction-passes-fewest = Durchgänge, mindestens
correction-passes-most = Durchgänge, höchstens
correction-machine = Maschine
correction-orbit = Hub
correction-turns = Umdrehungen je Minute
correction-pad-across = Pad-Durchmesser
correction-pad = Pad
correction-abrasive = Schleifmittel
correction-vibration-declared = Angegebene Vibration
correction-vibration-k = ihre Unsicherheit K
correction-noise-declared = Lärm am Ohr
correction-clean-pad-after = Sauberes Pad nach
correction-polish-per-area = Politur für 1 m²
correction-zero-is-usual = 0 überlässt Pads und Politur den üblichen Zahlen des Betriebs.

correction-from-to = { $low } bis { $high }
correction-step =
    { $step }, { $passes ->
        [one] { $passes } Durchgang
       *[other] { $passes } Durchgänge
    }
correction-at-defect = Vorher an einem Fehler: { $steps }

correction-ultraviolet = Sind { $gone } abgetragen, erreicht bis zu { $factor }-mal so viel ultraviolettes Licht die Farbe (Lambert-Beersches Gesetz, Absorbanz { $absorbance }, aus dem Gedächtnis).
correction-spot =
    Messstelle { $number }{ $edge ->
        [yes] , Kante
       *[no] {""}
    }
correction-may-go = Darf weg
correction-will-go = Geht weg
correction-steps = Schritte
correction-why = Warum
correction-mind = Achtung
correction-what-stays = Was bleibt
correction-as-planned = wie geplant
correction-at-most = Höchstens
correction-limits = Grenzen
correction-at-spots = An den Messstellen
correction-nothing = nichts
correction-spots-alone = Aus den Messwerten der Stelle allein. Der Plan hält sich an den Spielraum des ganzen Teils; abkleben, was darunter liegt.

correction-group-life = Lebensdauer des Lacks
correction-group-life-source = Unsere Schätzungen nach dem, was in Fachseiten wiederkehrt; eine Übereinkunft, kein Naturgesetz.
correction-group-clear = Angenommener Klarlack
correction-group-clear-source = Messgeräte dieser Art sehen den Klarlack nicht; er wird als Anteil der Lackschicht angenommen.
correction-group-film = Dünne und dicke Lackschicht
correction-group-film-source = Werkstattpraxis für die ganze Lackschicht auf Metall.
correction-group-places = Besondere Stellen
correction-group-places-source = Unsere Schätzungen. Bei Sensoren gehen die Vorgaben des Fahrzeugherstellers vor.
correction-rule-visit = Höchstens je Besuch
correction-rule-life = Höchstens insgesamt
correction-rule-life-share = und von seinem Klarlack
correction-rule-keep = Klarlack, der bleibt
correction-rule-unknown = Verbraucht, wenn unbekannt
correction-rule-clear-least = Mindestens, von der Schicht
correction-rule-clear-least-cap = aber nicht mehr als
correction-rule-clear-most = Höchstens, von der Schicht
correction-rule-clear-most-cap = und nicht mehr als
correction-rule-no-cut = Kein Abtrag unter
correction-rule-finest-only = Nur feinste Politur unter
correction-rule-there-at-most = dort höchstens
correction-rule-thin = Nichts Starkes unter
correction-rule-painted-again-above = Nachlackiert über
correction-rule-filler = Spachtel über
correction-rule-painted-again = Nachlackiert, höchstens
correction-rule-fresh = Härtet noch, höchstens
correction-rule-narrow = Schmales Teil, höchstens
correction-rule-sensor = Über Sensor, höchstens
correction-rule-hardening = Aushärtung dauert
correction-days = Tage
correction-back-to-defaults = Zurück zu den Vorgaben

correction-next =
    Als Nächstes: { $step }, { $passes ->
        [one] { $passes } Durchgang
       *[other] { $passes } Durchgänge
    }.
correction-enough = „{ $step }“ genügt für das Ziel; ein härterer Schritt muss nicht versucht werden.
correction-test = Versuch { $number }
correction-step-gone = „{ $step }“ steht nicht mehr in der Liste der Schritte, deshalb zählt dieses Ergebnis nicht.
correction-pass-now = { $mean }, bis zu { $most }
correction-pass-was = war { $mean }
correction-deepest = Größte Tiefe, { $defect }
correction-test-how = Eine Stelle von zwei Handbreit, abgeklebt, der sanfteste Schritt zuerst. Beim ersten aufhören, der genügt.
correction-paint-soft = weich
correction-paint-usual = üblich oder unbekannt
correction-paint-hard = hart
correction-this-paint = Dieser Lack ist
correction-enter-result = Ergebnis eingeben
correction-enter-another = Weiteres Ergebnis eingeben
correction-none-reaches = Kein Schritt des Betriebs erreicht am Probefeld das Ziel. Das Ziel senken oder es dem Kunden sagen.
correction-test-step = Schritt
correction-passes = Durchgänge
correction-went = Fehler, die weg sind
correction-went-of = und zwar
correction-finish-not-judged = nicht beurteilt
correction-finish-can-stay = kann bleiben
correction-finish-needs-finer = braucht feineren Schritt
correction-finish = Glanz danach
correction-removed = Abgetragen
correction-basis-gauge = mit dem Messgerät
correction-basis-estimated = geschätzt
correction-known = Bekannt
correction-give-or-take = ±
correction-pass-takes = Abtrag je Durchgang auf diesem Lack

correction-column-panel = Teil
correction-column-film = Mind.
correction-column-may-go = Darf
correction-column-needed = Nötig
correction-column-will-go = Geht weg
correction-column-level = Stufe
correction-column-time = Zeit
correction-column-stays = Bleibt
correction-not-read = ungemessen
correction-in-sentence-panel = Teil
correction-in-sentence-film = dünnste Schicht
correction-in-sentence-may-go = darf weg
correction-in-sentence-needed = nötig
correction-in-sentence-will-go = geht weg
correction-in-sentence-level = Stufe
correction-in-sentence-time = Zeit
correction-in-sentence-stays = bleibt
correction-sort =
    Sortieren nach: { $column }{ $order ->
        [rising] , aufsteigend
        [falling] , absteigend
       *[none] {""}
    }
correction-table = Teile und was mit ihnen geschieht

correction-day = Tag { $number }, { $time }
correction-machine-on = Maschine läuft { $time }
correction-vibration-points = { $vibration } m/s², { $points } Punkte
correction-handed = { $panel } an { $who }
correction-handed-over = Abgegeben, damit niemand einen Auslösewert erreicht: { $moves }.
correction-handed-costs = Das kostet { $time }.
correction-day-begins = „{ $panel }, { $verb }“ ({ $at })
correction-spread =
    An einem Tag käme { $who } auf { $points } Punkte, und ab 100 ist zu handeln. Auf { $days ->
        [one] { $days } Tag
       *[other] { $days } Tage
    } verteilt bleiben alle darunter; ein neuer Tag beginnt mit { $starts }.
correction-osha = In den Vereinigten Staaten (29 CFR 1910.95), an einem Tag: Lärmdosis höchstens { $dose } %; ab 50 % ist ein Programm zum Gehörschutz fällig, 100 % sind erlaubt. Für Vibration setzt die OSHA keinen Wert.
correction-exposure-basis = Maschinen wie angegeben, a plus K, so lange sie wirklich laufen. Auslösewert 2,5, Grenzwert 5 m/s² (Richtlinie 2002/44/EG); 80 und 85, Grenzwert 87 dB(A) (2003/10/EG). Örtliche Vorschriften und die Datenblätter der Hersteller gehen vor.
correction-hands-and-ears = Hände und Ohren
correction-vibration = Vibration
correction-noise = Lärm
correction-no-machine = keine Maschine
correction-below-action = unter dem Auslösewert
correction-action-reached = Auslösewert erreicht
correction-over-limit = über dem Grenzwert
correction-all-below = An einem Tag bleiben alle unter den Auslösewerten.

correction-people =
    { $people ->
        [one] Eine Person poliert
       *[other] { $people } Personen polieren
    }
correction-could-save = Keine andere Reihenfolge könnte mehr als { $most } % sparen; das ist bewiesen.

correction-row =
    { $at } { $who } { $does }{ $local ->
        [yes] , nur eine Stelle
       *[no] {""}
    }
correction-nothing-polished = Es wird nichts poliert.
correction-planning = Plan wird gesucht …
correction-no-order = Es gibt keine Reihenfolge.
correction-out-of-date = Veraltet: Eine neue Reihenfolge wird gesucht.
correction-looking = Eine bessere wird noch gesucht …
correction-takes = Dauert
correction-walking-leads = Wege und Kabel legen
correction-walking = Wege
correction-alone = Eine Person allein
correction-is-best = Keine andere Reihenfolge dieser Arbeit ist besser; das ist bewiesen.
correction-who-and-when = Wer und wann

correction-stops =
    { $who }, { $stops ->
        [one] { $stops } Station
       *[other] { $stops } Stationen
    }, { $time }
correction-stop = { $panel }: { $verbs }

correction-uses-sheets =
    { $area }: { $sheets } Blatt, { $towels ->
        [one] { $towels } Tuch
       *[other] { $towels } Tücher
    }
correction-uses-pads =
    { $area }: { $pads ->
        [one] { $pads } Pad
       *[other] { $pads } Pads
    }, { $polish } Politur, { $towels ->
        [one] { $towels } Tuch
       *[other] { $towels } Tücher
    }
correction-leads-cost = Mit Kabeln zählt jeder Seitenwechsel { $seconds } s für das Herumlegen des Kabels, also bleibt jede Person eher auf einer Seite. Wo die Steckdosen sind, ist nicht bekannt.
correction-nothing-used = Es wird nichts poliert, also nichts verbraucht.
correction-shop-uses = Was dieser Betrieb verbraucht (Werkstattpraxis und unsere Schätzungen für den Anfang)
correction-pad-serves = Ein Pad reicht für
correction-polish-for-area = Politur für einen Quadratmeter
correction-towel-serves = Ein Tuch reicht für
correction-sandpaper-for-area = Schleifpapier je Quadratmeter
correction-sheets = Blatt
correction-on-leads = Maschinen haben Kabel
correction-back-to-usual = Zurück zu den üblichen Mengen
correction-people-time = Zeit aller zusammen
correction-cost-labour = Arbeitszeit
correction-cost-pads = Pads und Schleifpapier
correction-cost-polish = Politur
correction-cost-towels = Tücher
correction-cost-total = Polieren kostet
correction-no-prices = Noch keine Preise: eingeben, was der Betrieb zahlt, um die Kosten des Polierens zu sehen.
correction-currency = Währung
correction-price-hour = Eine Stunde einer Person
correction-price-pad = Ein Pad, jedes Mal
correction-price-sheet = Ein Blatt Schleifpapier
correction-price-litre = Ein Liter Politur
correction-price-towel = Ein Tuch, jedes Mal
correction-prices-private = Mit dem Auftrag gespeichert. Auf keinem Blatt für den Kunden.

correction-parts-water = 1 Teil auf { $parts } Teile Wasser
correction-parts-in-all = 1 Teil in { $parts } Teilen der Mischung
correction-mixture = { $concentrate } und { $water } Wasser, { $share } %
correction-ratio-hint = „1:10“ wird für beides geschrieben: nachfragen oder das Etikett lesen. 1 US fl oz auf 2 US gal ist 1 Teil auf 256 Teile Wasser, die übliche Wäsche ohne Nachspülen für Pads und Tücher (Werkstattpraxis).
correction-mixture-wanted = Gewünschte Mischung
correction-one-part-to = 1 Teil auf
correction-parts = Teile
correction-what-to-mind = Was zu beachten ist ({ $count })
correction-local-rules = Örtliche Vorschriften und die Datenblätter der Hersteller gehen vor.
correction-materials = Material
correction-cost = Kosten, nur für den Betrieb
correction-dilution = Verdünnung
