cli-report = dies als Fehler des Programms melden
cli-no-thread = ein Prozess lässt sich nicht starten: { $why }
cli-no-thread-do = andere Programme schließen und erneut versuchen
cli-planner-stopped = die Planung brach unerwartet ab
cli-planner-stopped-do = ein anderes --seed versuchen und dies als Fehler des Programms melden
cli-crew-no-plan = in { $seconds } s wurde kein Plan gefunden; eine Untergrenze der Kosten ist { $bound }
cli-mend-place = die genannte Stelle berichtigen
cli-lists-more = { $first }; lapwright check nennt { $count } weitere
cli-not-usable = { $name }: kein brauchbares Problem
cli-check-file = die Datei prüfen
cli-check-nothing = { $name }: nichts zu beanstanden
cli-check-findings =
    { $count ->
        [one] { $name }: 1 Befund
       *[other] { $name }: { $count } Befunde
    }
cli-check-suggest =
    { $count ->
        [one] { $name }: die Messwerte legen 1 Sache über den Lack nahe
       *[other] { $name }: die Messwerte legen { $count } Dinge über den Lack nahe
    }
cli-mend-or-other = die Datei berichtigen oder eine andere wählen
cli-import-no-panel = das Fahrzeug hat kein Teil „{ $panel }“
cli-import-no-rows = sie hat keine Zeilen
cli-import-line = Zeile { $line }: { $reason }
cli-import-none = { $name }: keine der { $count } Zeilen kann übernommen werden ({ $why })
cli-import-none-do = nichts wurde geschrieben; die Zeilen berichtigen, Teile heißen wie in `lapwright plan --json`
cli-nothing-written = nichts wurde geschrieben
cli-import-not-taken = { $name }:{ $line }: nicht übernommen: { $reason }
cli-import-summary = { $taken } hinzugefügt, { $count } nicht übernommen
cli-readings =
    { $count ->
        [one] 1 Messwert
       *[other] { $count } Messwerte
    }
cli-costs-customer = --costs gehört zum Kundenblatt
cli-costs-do = --costs weglassen
cli-no-day = der Auftrag hat keinen Tag, also lassen sich die Pflegezeiten nicht zählen
cli-no-day-do = den Datum der Arbeit unter Auftrag eintragen oder als `date` in der Datei
cli-no-order = keine gültige Reihenfolge: { $why }
cli-no-order-polishing = keine gültige Reihenfolge des Polierens: { $why }
cli-sheet-ending = „{ $file }“ hat keine Endung, in der dieses Blatt geschrieben werden kann
cli-ending-customer = den Namen auf .pdf oder .html enden lassen, oder .ics für die Pflegezeiten
cli-ending-crew = den Namen auf .pdf oder .html enden lassen, oder .csv für die Reihenfolge als Liste
cli-ending-record = den Namen auf .pdf oder .html enden lassen
cli-font-lacks = der Schrift der Blätter fehlen Zeichen: { $places }
cli-font-lacks-do = diese Texte in lateinischen, griechischen oder kyrillischen Buchstaben schreiben oder das Blatt als .html
cli-map-ending = „{ $file }“ hat keine Endung, in der eine Karte geschrieben werden kann
cli-map-ending-do = den Namen auf .svg oder .png enden lassen
cli-exists = „{ $file }“ gibt es schon
cli-exists-do = einen anderen Namen wählen, damit nichts überschrieben wird
cli-codes = die Kennungen sind { $codes }
cli-no-output = die Ausgabe lässt sich nicht schreiben: { $why }
cli-no-output-do = prüfen, wohin die Ausgabe geht
cli-see-help = lapwright --help zeigt die Befehle und ihre Optionen
cli-the-sample = das Muster
cli-plan-head-polishing = Polieren
cli-plan-column-panel = Teil
cli-plan-column-film = Schicht mind.
cli-plan-column-may-lose = Spielraum
cli-plan-column-level = Stufe
cli-plan-column-will-lose = wird abgetragen
cli-plan-not-read = nicht gemessen
cli-plan-will-lose = { $mean } µm, höchstens { $most } µm
cli-plan-head-open = Offene Punkte
cli-plan-head-coating = Versiegelung
cli-plan-air-right = Die Luft passt.
cli-plan-air-stop = Stopp: in dieser Luft nicht versiegeln.
cli-plan-air = Taupunkt { $dew } °C, Oberfläche { $margin } K darüber; { $from } bis { $to } nach dem Auftragen abwischen; { $ml } ml.
cli-plan-order-takes = Die Reihenfolge dauert { $time }; bewiesen: keine braucht weniger als { $share } % ihrer Kosten.
cli-plan-all-uncoated = Jedes Teil bleibt ohne Versiegelung.
cli-plan-head-cautions = Vorsicht
cli-plan-gauge = Messgerät
cli-plan-head-suggest = Was die Messwerte nahelegen (Grenzen sind Werkstattpraxis)
cli-plan-head-polishing-order = Reihenfolge des Polierens
cli-plan-day = Tag { $day }
cli-plan-at-one-place = { $step }, an einer Stelle
cli-plan-head-exposure = Hände und Ohren (angegebene Werte plus Unsicherheit; örtliche Regeln und die Blätter der Hersteller gehen vor)
cli-plan-no-machine = keine Maschine
cli-plan-exposure = { $worker } Vibration A(8) { $vibration } m/s², { $points } Punkte ({ $standing }); Lärm { $noise } ({ $noise_standing })
cli-plan-day-exposure = Tag { $day } { $exposure }
cli-plan-spread = An einem Tag würde jemand einen Auslösewert überschreiten, also verteilt sich die Arbeit auf { $days } Tage.
cli-plan-handed = { $panel } geht an { $worker }, damit niemand einen Auslösewert überschreitet.
cli-plan-head-materials = Material
cli-plan-sheets = { $count } Blatt
cli-plan-pads = { $count } Pads
cli-plan-towels = { $count } Tücher
cli-plan-polishing-takes =
    { $people ->
        [one] { $time } für { $people } Person; bewiesen: keine braucht weniger als { $share } % ihrer Kosten.
       *[other] { $time } für { $people } Personen; bewiesen: keine braucht weniger als { $share } % ihrer Kosten.
    }
cli-help = Eine leichte Lackkorrektur und die Versiegelung eines Fahrzeugs durch zwei Personen planen
cli-help-job = Der Auftrag, der im Fenster geöffnet wird; ohne Angabe das Muster. Ohne Bildschirm wird stattdessen sein Plan ausgegeben
cli-help-sample = Den Musterauftrag als Datei schreiben, um damit anzufangen
cli-help-plan = Den Polierplan und die Reihenfolge der Versiegelung ausgeben
cli-help-check = Aufträge, Fahrzeugvorlagen und Teamprobleme prüfen; nennt alle Befunde
cli-help-crew = Ein Teamproblem lösen; je Verbesserung eine Zeile auf stderr: Sekunden, Kosten, Grenze
cli-help-import = Messwerte aus einer CSV-Datei in einen Auftrag übernehmen; nennt jede Zeile, die nicht übernommen wird
cli-help-sheet = Das Kundenblatt, die Teamkarten oder das technische Protokoll schreiben
cli-help-map = Die Karte des Fahrzeugs als Bild schreiben
cli-help-explain = Einen Befund erklären: was er bedeutet und was zu tun ist
cli-help-sample-out = Die Datei, die geschrieben wird; es darf sie noch nicht geben
cli-help-job-or-sample = Der Auftrag; ohne Angabe das Muster
cli-help-json = Ein JSON-Objekt statt Text ausgeben
cli-help-plan-seconds = Wie lange nach einer besseren Reihenfolge gesucht wird
cli-help-plan-seed = Startwert der Suche; derselbe Wert sucht an denselben Stellen
cli-help-files = Die Dateien
cli-help-problem = Das Problem, Format crew-problem/1
cli-help-crew-seconds = Wie lange gesucht wird
cli-help-threads = Wie viele Prozesse suchen
cli-help-crew-seed = Startwert der Suche
cli-help-crew-plan = Den Plan hierhin schreiben statt ausgeben
cli-help-the-job = Der Auftrag
cli-help-readings = Die Messwerte: eine Kopfzeile mit panel, reading und thickness_um oder thickness_mil
cli-help-import-out = Die Datei, in die der Auftrag geschrieben wird; es darf dieselbe sein
cli-help-which = Welches
cli-help-sheet-out = Die Datei, die geschrieben wird: .pdf oder .html; für das Team auch .csv, für den Kunden auch .ics mit den Pflegezeiten
cli-help-paper = Papiergröße
cli-help-locale = Britische oder amerikanische Daten und Namen der Teile
cli-help-costs = Auf dem Kundenblatt sagen, was das Polieren zu den Preisen der Werkstatt kostet
cli-help-done = Wann am Tag des Auftrags das letzte Teil abgewischt ist; ab dann zählen die Pflegezeiten
cli-help-customer = Für den Kunden: was gefunden wurde, was getan wird, wie es zu pflegen ist
cli-help-crew-card = Eine Karte für jede Person im Team, mit ihrer eigenen Reihenfolge
cli-help-record = Alles, was ein späterer Besuch braucht
cli-help-a4 = 210 × 297 mm
cli-help-letter = 8,5 × 11 Zoll
cli-help-uk = Tag vor Monat; britische Namen der Teile, wo Englisch gesprochen wird
cli-help-us = Monat vor Tag; amerikanische Namen der Teile, wo Englisch gesprochen wird
cli-help-show = Was sie zeigt
cli-help-map-out = Die Datei, die geschrieben wird: .svg oder .png
cli-help-film = Dicke der Lackschicht
cli-help-defects = Was wo nicht stimmt
cli-help-polish = Wie stark jedes Teil bearbeitet wird
cli-help-order = Wer was in welcher Reihenfolge versiegelt
cli-help-code = Die Kennung eines Befunds, zum Beispiel template-gap
cli-bad-seconds = eine Zahl von 0 bis 86400 Sekunden angeben
cli-bad-time = eine Uhrzeit als Stunden und Minuten angeben, zum Beispiel 17:00
cli-help-language = Sprache der Ausgabe und der Blätter; ohne Angabe die des Systems
cli-bad-language = eine von { $tags } angeben
cli-job-before-command = „{ $job }“ steht vor dem Befehl; den Auftrag dahinter nennen
