common-cancel = Abbrechen
common-close = Schließen
common-save = Speichern
common-open = Öffnen
common-delete = Löschen
common-done = Fertig
common-back = Zurück
common-next = Weiter
common-yes = Ja
common-no = Nein
common-none = keine
common-left = links
common-right = rechts
common-listed = { $most } und { $last }
common-not-reviewed = nicht durchgesehen
common-panels =
    { $count ->
        [one] 1 Teil
       *[other] { $count } Teile
    }
