window-sample = Muster
window-the-sample = das Muster
window-the-vehicle = das Fahrzeug
window-new-job = Neuer Auftrag
window-day-runs = in der Halle läuft ein Arbeitstag
window-none-here = hier lässt sich kein Fenster öffnen ({ $error }); das ist der Plan als Text
window-planner-not-started = der Planer ließ sich nicht starten: { $error }
window-job-as-it-was = der Auftrag ist unverändert
window-save-not-confirmed = gespeichert, aber das System hat nicht bestätigt, dass die Datei auf dem Datenträger ist
window-save-again = ein Stromausfall in den nächsten Sekunden könnte die alte Fassung zurückbringen; vor dem Ausschalten noch einmal speichern

window-workspace-job = Auftrag
window-workspace-survey = Aufnahme
window-workspace-correction = Korrektur
window-workspace-coating = Versiegelung
window-workspace-bay = Halle
window-workspace-handover = Übergabe
window-workspace-practice = Übung

window-rail-no-vehicle = noch kein Fahrzeug
window-rail-read = { $read }/{ $all } gemessen
window-rail-look-at-test-spot = Probefeld ansehen
window-rail-nothing-to-polish = nichts zu polieren
window-rail-panels = { $panels ->
    [one] { $panels } Teil
   *[other] { $panels } Teile
}
window-rail-panels-stay = { $panels ->
    [one] { $panels } Teil
   *[other] { $panels } Teile
}, { $stays ->
    [one] { $stays } bleibt
   *[other] { $stays } bleiben
}
window-rail-not-in-this-air = nicht bei dieser Luft
window-rail-no-order = keine Reihenfolge
window-rail-for-crew = { $time } fürs Team
window-rail-planning = wird geplant …
window-rail-done = { $done } von { $all } fertig
window-rail-coated = versiegelt
window-rail-polished = poliert
window-rail-not-begun = nicht begonnen
window-rail-for-apprentices = für Auszubildende
window-rail-written = geschrieben
window-rail-sheets-ready = Blätter sind bereit
window-rail-nothing-read = noch nichts gemessen

window-undo-what = Zurücknehmen: { $what }
window-redo-what = Wiederholen: { $what }
window-view = Ansicht
window-theme-light = Hell
window-theme-dark = Dunkel
window-theme-sunlight = Sonnenlicht

window-shape-point = Punkt
window-shape-line = Linie
window-shape-area = Fläche

window-open-job = Auftrag öffnen
window-save-job = Auftrag speichern
window-readings-from-file = Messwerte aus einer Datei
window-picture-of-defect = Bild des Fehlers
window-folder-of-jobs = Ordner der Aufträge
window-write-file = Datei schreiben
window-files-job = Auftrag
window-files-readings = Messwerte
window-files-picture = Bild
window-files-web-page = Webseite
window-files-list = Liste
window-files-calendar = Kalender
window-files-drawing = Zeichnung

window-save-first = „{ $name }“ zuerst speichern?
window-not-in-file = Es gibt Änderungen, die nicht in der Datei stehen.
window-do-not-save = Nicht speichern
window-show = Zeigen
window-add = Hinzufügen
window-look-through = Durchsehen
window-write = Schreiben
window-path-of-file = Pfad der Datei, zum Beispiel { $example }
window-example-job = mein.job.ron
window-example-readings = messwerte.csv
window-example-picture = kratzer.jpg
window-example-folder = auftraege
window-example-pdf = blatt.pdf
window-example-web-page = blatt.html
window-example-list = reihenfolge.csv
window-example-calendar = pflege.ics
window-example-drawing = karte.svg
window-example-map = karte.png
window-not-done = Das ging nicht
window-drop-vehicle-changes = Änderungen am Fahrzeug verwerfen?
window-job-keeps-vehicle = Sie sind nicht gespeichert. Der Auftrag behält sein Fahrzeug.
window-go-on-editing = Weiter bearbeiten
window-drop-changes = Änderungen verwerfen
window-save-own-vehicle = Als eigenes Fahrzeug speichern
window-vehicle-name = Name, zum Beispiel „Limousine mit zweiteiligen Türen“
window-no-vehicle-folder = Auf diesem Rechner gibt es keinen Ordner für eigene Fahrzeuge.
window-vehicle-kept-in = Es liegt dann in { $folder } und lässt sich für jeden Auftrag wählen. Dieser Auftrag wechselt dazu.

window-chart-bar =
    { $who } { $does }: { $panel }
    { $from } bis { $to }
window-chart-day = Tag { $day }
window-chart-empty = Zeitplan, leer
window-chart-of-polishing =
    { $people ->
        [one] Zeitplan für das Polieren: { $steps } Schritte für { $people } Person in { $time }
       *[other] Zeitplan für das Polieren: { $steps } Schritte für { $people } Personen in { $time }
    }
window-chart-of-coating =
    { $people ->
        [one] Zeitplan für die Versiegelung: { $steps } Schritte für { $people } Person in { $time }
       *[other] Zeitplan für die Versiegelung: { $steps } Schritte für { $people } Personen in { $time }
    }
window-nothing-to-polish = Nichts zu polieren.
window-planning-order = Die Reihenfolge wird geplant …
window-no-polishing-order = Noch keine Reihenfolge für das Polieren.
window-no-coating-order = Noch keine Reihenfolge für die Versiegelung.

window-vehicle-map = Fahrzeugkarte
window-front = vorn
window-fit = Einpassen
window-fit-does = Das ganze Fahrzeug zeigen (F)
window-zoom-in = Vergrößern
window-zoom-in-does = Das Gewählte so groß wie möglich zeigen (Z)
window-nothing-read = Noch nichts gemessen.
window-no-defects = Keine Fehler notiert.
window-no-order = Noch keine Reihenfolge.
window-no-panels = Keine Teile.
window-labels-left-out = { $count } kleine Teile zeigen ihre Werte beim Vergrößern oder Daraufzeigen.

window-allowed = erlaubt
window-planned = geplant
window-needed = nötig
window-budget = erlaubt { $allowed }, geplant { $mean } bis { $upper }, nötig { $needed }
window-type-number = Eine Zahl von { $least } bis { $most } { $unit } eingeben.
window-panel-facts = etwa { $area } m², { $substrate }
window-typed = „{ $text }“ ist getippt und nicht übernommen
window-typed-enter = Übernommen zählt es als nächster Messwert.
window-enter-it = Übernehmen
window-leave-it-out = Weglassen
