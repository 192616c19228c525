survey-before-after = Vorher und nachher
survey-few-pairs = Weniger als zwei Stellen wurden vorher und nachher gemessen, also ist die Änderung nicht bekannt.
survey-counts-visit = Zählt für diesen Besuch
survey-one-pair = Ein Teil wurde vorher und nachher gemessen; ab zweien lässt sich ein Mittel über das Fahrzeug angeben.
survey-at-most = höchstens { $film }
survey-taken-measured = Gezählt wie gemessen. Beide Male muss mit demselben Gerät gemessen sein.
survey-taken-planned = Gezählt wie geplant, weil die Messwerte es nicht zeigen. Beide Male muss mit demselben Gerät gemessen sein.
survey-thinner = Über { $count } Teile ist die Lackschicht im Mittel { $mean } µm dünner, mit 95 % Sicherheit zwischen { $low } und { $high } µm.
survey-more-panels = { $change } Das zeigt keinen Abtrag; etwa { $count } Teile würden es.
survey-not-measurable = { $change } Ein so kleiner Abtrag ist mit diesem Gerät nicht messbar: Es bräuchte mehr als { $most } Teile.
survey-back-to-panel = Zurück zum Teil
survey-depth = Tiefe
survey-note = Notiz
survey-anything-else = Sonstiges
survey-pictures = Bilder
survey-add-picture = Bild hinzufügen …
survey-add-picture-hint = Oder auf das Fenster ziehen; eine Kopie bleibt beim Auftrag, ohne Ort und Zeit
survey-taking-in = Das Bild wird übernommen …
survey-remove-defect = Diesen Fehler entfernen
survey-kind = Art
survey-how-many = Wie viele
survey-size-across = Durchmesser
survey-length = Länge
survey-nail-not-tried = nicht probiert
survey-nail-catches = hakt
survey-nail-slides = gleitet darüber
survey-fingernail = Fingernagel
survey-least = Mindestens
survey-most = Höchstens
survey-use-it = Übernehmen
survey-picture-gone = Das Bild liegt nicht im Ordner beim Auftrag.
survey-remove = Entfernen
survey-class-visible = gerade sichtbar
survey-class-small = kleiner als 0,5 mm
survey-class-middle = 0,5 bis 5 mm
survey-class-large = größer als 5 mm
survey-drawn-point = Ein Punkt auf der Karte. Größenklasse { $number }, { $class } (nach ISO 4628-1).
survey-drawn-line = Eine Linie auf der Karte. Größenklasse { $number }, { $class } (nach ISO 4628-1).
survey-drawn-area = Eine Fläche auf der Karte. Größenklasse { $number }, { $class } (nach ISO 4628-1).
survey-usual-depth = Üblich für diese Art: { $low } bis { $high }
survey-our-estimate = { $what } (unsere Schätzung).
survey-picture = Bild { $number }
survey-remove-picture = Bild { $number } entfernen
survey-open-defect = Diesen Fehler öffnen
survey-new-defect = Neuer Fehler
survey-draw = Auf der Karte zeichnen (D)
survey-escape = Esc-Taste
survey-click-where = Auf der Karte dorthin klicken, wo er ist.
survey-drag-line = Auf der Karte von einem Ende zum anderen ziehen.
survey-drag-area = Auf der Karte rundherum ziehen.
survey-letter-kind = Ein Buchstabe nimmt die nächste Art, die damit beginnt.
survey-quantity-none = keine
survey-quantity-very-few = sehr wenige
survey-quantity-few = wenige
survey-quantity-moderate = mäßig
survey-quantity-considerable = erheblich
survey-quantity-dense = dicht
survey-in-short = { $quantity }, { $size }
survey-in-short-long = { $quantity }, { $size } lang
survey-with-pictures =
    { $count ->
        [one] { $defect }, 1 Bild
       *[other] { $defect }, { $count } Bilder
    }
survey-at-least = mindestens { $film }
survey-mean = Mittel { $film }
survey-plot =
    { $count ->
        [one] 1 Messwert von { $low } bis { $high } µm, Mittel { $mean } µm, mindestens { $least } µm
       *[other] { $count } Messwerte von { $low } bis { $high } µm, Mittel { $mean } µm, mindestens { $least } µm
    }
survey-skip-hint = Diese Stelle auf später verschieben
survey-repeat-hint = Diese Stelle neu messen; wo noch kein Messwert ist, die davor
survey-skipped-hint = Zurück zur ersten ausgelassenen Stelle
survey-panel-read = Dieses Teil hat seine Messwerte.
survey-all-read = Jedes Teil, das das Gerät messen kann, hat seine Messwerte.
survey-all-or-skipped = Jede Stelle ist gemessen oder ausgelassen.
survey-keypad = Tasten
survey-keypad-hint = Große Tasten auf dem Bildschirm, für Handschuhe
survey-unit-hint = Was das Gerät zeigt; der Auftrag behält Mikrometer
survey-readings = Messwerte
survey-doubtful = Die mit ? entstanden mit einem Gerät, das danach seine Prüfung nicht bestand; sie zählen nicht.
survey-edge = Kante
survey-edge-hint = An einer Kante oder Sicke gemessen
survey-remove-reading = Diesen Messwert entfernen
survey-skip = Auslassen (S)
survey-repeat = Neu messen (R)
survey-skipped = { $count } ausgelassen (B)
survey-spot-of = Stelle { $number } von { $all }
survey-spots-read = { $count } von { $all } Stellen gemessen
survey-field = Stelle { $number } von { $all }, Messwert { $reading } von { $of }, in { $unit }
survey-reading-of = Messwert { $reading } von { $of }, Enter
survey-spot-none = Diese Stelle hat noch keinen Messwert
survey-spot-so-far = Diese Stelle bisher { $values }
survey-spot = Stelle { $number }
survey-not-read = Noch nicht gemessen.
survey-three-mean = Mittel
survey-three-least = mindestens
survey-three-may-go = darf weg
survey-not-read-why = Nicht gemessen: { $why }.
survey-read-undecided = Im Mittel { $film } gemessen, aber nichts wird damit entschieden.
survey-gauge = Messgerät
survey-principle = Prinzip
survey-accuracy-fixed = Genauigkeit, fester Teil ±
survey-accuracy-share = und vom Messwert ±
survey-smallest-step = Kleinster Anzeigeschritt
survey-gauges-read = Diese Geräte messen alles über dem Metall. Der Klarlack wird daraus als Bereich angenommen.
survey-check-of-gauge = Prüfung des Messgeräts
survey-certified = Sollwert, 0 für die blanke Platte
survey-gauge-shows = Gerät zeigt
survey-note-check = Prüfung vermerken
survey-remove-check = Eine irrtümlich vermerkte Prüfung entfernen
survey-gauge-doubtful =
    { $count ->
        [one] 1 Messwert zählt nicht, weil das Gerät nicht bestand. Er bleibt, wo er ist; die Stelle neu messen.
       *[other] { $count } Messwerte zählen nicht, weil das Gerät nicht bestand. Sie bleiben, wo sie sind; die Stellen neu messen.
    }
survey-gauge-unchecked = Noch nicht geprüft. Vor dem ersten und nach dem letzten Messwert auf blanker Platte und Folie prüfen.
survey-gauge-failed = Das Gerät bestand nicht. Vor dem nächsten Messwert auf derselben Folie erneut prüfen.
survey-gauge-passed-last = Bestanden, auch nach dem letzten Messwert.
survey-gauge-passed = Bisher bestanden. Nach dem letzten Messwert erneut prüfen.
survey-check-before = vor dem ersten Messwert
survey-check-after = nach Messwert { $number }
survey-bare-plate = blanke Platte
survey-check-good = { $on } zeigte { $shown }: gut
survey-check-fails = { $on } zeigte { $shown }: nicht bestanden
survey-check-allowed = { $when }, ±{ $allowed } erlaubt
survey-gloss = Glanz
survey-angle = Winkel
survey-gloss-reading = Glanzmesswert
survey-gloss-at = { $gloss } bei { $angle }°, { $stage }
survey-gloss-compare = Auf einem Teil, an einer Stelle, in einer Richtung vergleichen. 100 ist poliertes Glas, nicht vollkommener Lack: Vollkommener Klarlack zeigt bei 20° etwa 82 bis 90.
survey-visits = Frühere Besuche
survey-visits-left = Noch mögliche Besuche beim Höchstwert
survey-add-to-panel = Diesem Teil hinzufügen
survey-visits-none = Keine vermerkt. Klarlack, der weg ist, kommt nicht wieder; was frühere Besuche abtrugen, zählt also.
survey-add-visit = Früheren Besuch hinzufügen
survey-add-to-all = Jedem lackierten Teil hinzufügen
survey-next-visit-hint = Ein neuer Auftrag desselben Fahrzeugs; was dieser Besuch abträgt, steht dann in seiner Liste
survey-next-visit = Nächster Besuch dieses Fahrzeugs
survey-visit-name = Tag oder Name des Besuchs
survey-probably-went = Wahrscheinlich weg
survey-at-most-went = Höchstens weg
survey-known-from = Bekannt durch
survey-visits-most = Frühere Besuche, insgesamt höchstens { $film }
survey-visit = { $went }, höchstens { $most }, { $source }
survey-most-film = höchstens { $film }
survey-visit-panels =
    { $count ->
        [one] auf 1 Teil, { $source }
       *[other] auf { $count } Teilen, { $source }
    }
survey-defects = Fehler
survey-paint = Lack
survey-survey = Aufnahme
survey-how-to = Einen Messwert eingeben und Enter drücken. Die nächste Stelle leuchtet von selbst auf, einmal um das Fahrzeug; oder ein Teil auf der Karte wählen.
survey-pad-back = Zurück
survey-pad-back-name = Ziffer oder Messwert zurück
survey-pad-skip = Auslassen
survey-pad-skip-name = Diese Stelle auslassen
survey-pad-again = Nochmal
survey-pad-again-name = Diese Stelle neu messen
survey-pad-sign = Dezimalzeichen
survey-pad-take = Messwert übernehmen
survey-on-it = Schon darauf
survey-hardness = Härte
survey-is-coated = wird versiegelt
survey-finish = Lackart
survey-history = Vorgeschichte
survey-painted-on = Lackiert am
survey-taken-before = Früher abgetragen
survey-day-of-work = Datum der Arbeit
survey-is-today = Heute
survey-under-paint = Unter dem Lack
survey-finish-clear = Klarlack
survey-finish-single = Einschichtlack
survey-finish-matte = matt
survey-finish-film = unter Schutzfolie
survey-finish-wrapped = foliert
survey-history-unknown = nicht bekannt
survey-history-factory = Werkslack
survey-history-again = neu lackiert
survey-history-fresh = frisch lackiert
survey-history-polished = schon poliert
survey-hardness-usual = üblich oder nicht bekannt
survey-hardness-soft = weich, leicht verkratzt
survey-hardness-hard = hart, langsam zu korrigieren
survey-give-days = Beide Tage angeben, damit das Alter bekannt ist; bis dahin gilt der Lack als ganz frisch.
survey-as-usual-of = wie üblich: { $substrate }
survey-as-usual = wie üblich
survey-differ = verschieden
survey-days-old =
    { $count ->
        [one] 1 Tag alt; gilt { $limit } Tage als frisch.
       *[other] { $count } Tage alt; gilt { $limit } Tage als frisch.
    }
survey-go-hint = Zu diesem Teil gehen
survey-borders-practice = Die Grenzen zwischen dünn, üblich, nachlackiert und gespachtelt sind Werkstattpraxis: Sie deuten an, sie beweisen nichts.
survey-open-points = Offene Punkte ({ $count })
survey-go-to = Gehe zu { $panel }
survey-place-cause = { $place }, { $cause }
survey-how-sure = Wie sicher
survey-share-of-panel = Anteil des Teils
survey-sure-of-that = Sicherheit
survey-borders = Grenzen der Schicht, Werkstattpraxis
survey-to-defaults = Zurück zu den Vorgaben
survey-border-no-cut = Zu dünn zum Abtragen, unter
survey-border-finest = Nur feinste Politur, unter
survey-border-thin = Dünn, unter
survey-border-refinished = Nachlackiert, über
survey-border-several = Mehrmals, über
survey-border-filler = Spachtel, über
survey-border-uneven = Ungleich, Stellen differieren um
survey-border-mirror = Andere Seite weicht ab um
survey-at-least-means = „Mindestens“ heißt: { $meaning }. Wenige Stellen machen die Zahl vorsichtig.
survey-borders-source = 70 bis 200 µm werden auf Fachseiten wiederholt, ohne dass eine Messung dahintersteht, 300 und 1000 µm sind übliche Praxis; die beiden Unterschiede sind unsere Schätzung. Was der Fahrzeughersteller sagt, geht vor.
survey-same-on-each = Derselbe Fehler auf jedem
survey-add-many = Fehler zu Teilen hinzufügen
survey-paint-each = Lack von jedem
survey-chosen = { $count } Teile gewählt
survey-add-to = { $count } Teilen hinzufügen
survey-details = Einzelheiten
survey-struck = Durchgestrichene Messwerte zählen nicht: Das Gerät bestand danach seine Prüfung nicht.
survey-thin-thick = Dünnste bis dickste Stelle
survey-range = Spannweite
survey-sd = Standardabweichung
survey-uncertainty = Standardunsicherheit
survey-dof = Effektive Freiheitsgrade
survey-uncertainty-of = Standardunsicherheit des Mittels, aus Gerät, Anzeige und Streuung zwischen den Stellen (JCGM 100).
survey-basis-bound = Sie kommt aus der Streuung der Stellen; mehr Stellen bringen sie näher ans Mittel.
survey-basis-assumed = Bei weniger als drei Stellen wird eine Streuung angenommen; mehr Stellen messen, um sie zu kennen.
survey-basis-one = Sie gilt nur an dieser Stelle.
survey-show-large = Groß auf der Karte zeigen
survey-at-spots =
    { $spots ->
        [one] { $count } an 1 Stelle
       *[other] { $count } an { $spots } Stellen
    }
survey-from-to = { $low } bis { $high } µm
survey-very-many = sehr viele
survey-at-least-basis = Mindestens { $film }: { $sure }. { $basis }
survey-spot-edge = Stelle { $number }, Kante
survey-spot-spread = Mittel { $mean }, Streuung { $sd }, Unsicherheit { $uncertainty }
survey-spot-figures = Mittel { $mean }, Unsicherheit { $uncertainty }
survey-spot-again = Stelle { $number } erneut
survey-go-to-spot = Zur Stelle { $number }
survey-day-of-survey = Tag der Aufnahme
survey-held-by = Gemessen von
survey-drop = Diese Aufnahme verwerfen
survey-measure-after = Nach dem Polieren erneut messen
survey-measure-after-hint = An denselben Stellen, mit demselben Gerät
survey-anew-hint = Die neuesten Messwerte eines Teils zählen; die früheren bleiben im Auftrag
survey-anew = Das Fahrzeug neu messen
survey-number-stage = Aufnahme { $number }, { $stage }
survey-number = Aufnahme { $number }
survey-reading-count =
    { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    }
survey-cannot-read = dieses Teil ist mit diesem Gerät nicht messbar
survey-wants-no-more = dieses Teil braucht keine Messwerte mehr; ein anderes wählen, oder R drücken, um die letzte Stelle neu zu messen
survey-every-read = jede Stelle ist gemessen oder ausgelassen
survey-not-taken = Nicht übernommen: { $why }.
survey-measure-again = Diese Stelle neu messen.
survey-hardly-paint = { $film } übernommen. Das ist kaum Lack: Zeigt das Gerät { $unit }?
survey-more-than-filler = { $film } übernommen. Das ist mehr als Spachtel: Zeigt das Gerät { $unit }?
survey-photo-no-defect = ein Bild gehört zu einem Fehler, und keiner ist geöffnet
survey-photo-no-defect-do = in der Aufnahme einen Fehler eines Teils öffnen, dann das Bild hinzufügen
survey-photo-again = noch einmal versuchen
survey-photo-other = ein anderes Bild wählen; JPEG und PNG sind lesbar
survey-photo-defect-gone = den Fehler zu diesem Bild gibt es nicht mehr
survey-photo-defect-gone-do = das Bild einem anderen hinzufügen
survey-photo-unopened = das Bild kann nicht geöffnet werden: { $why }
survey-import-changed = das Fahrzeug wird gerade geändert
survey-import-changed-do = zuerst seine Änderungen speichern oder verwerfen
survey-import-one-step = Ein Schritt, den Zurücknehmen rückgängig macht.
survey-import-none = Keine Zeile kann übernommen werden.
survey-import-panel = Teil
survey-import-readings = Messwerte
survey-import-mean = Mittel
survey-import-no-panel = Kein Teil dieses Fahrzeugs heißt
survey-import-left-out = bleibt weg
survey-import-from-file = Messwerte aus Datei …
survey-import-from-file-hint = Eine CSV-Datei mit den Spalten panel, reading und thickness_um oder thickness_mil
survey-pasted = Zwischenablage
survey-import-from = Messwerte aus „{ $file }“
survey-import-read-as = Erkannt: { $what }.
survey-import-add =
    { $count ->
        [one] 1 Messwert hinzufügen
       *[other] { $count } Messwerte hinzufügen
    }
survey-import-to =
    { $count ->
        [one] Kommt zu 1 Teil hinzu
       *[other] Kommt zu { $count } Teilen hinzu
    }
survey-import-name-rows =
    { $count ->
        [one] „{ $name }“, 1 Zeile
       *[other] „{ $name }“, { $count } Zeilen
    }
survey-import-is = ist { $panel }
survey-import-not-taken =
    { $count ->
        [one] Nicht übernommen: 1 Zeile
       *[other] Nicht übernommen: { $count } Zeilen
    }
survey-import-line = Zeile { $line }: { $why }.
survey-import-more = und { $count } weitere
