edit-undo = Zurücknehmen
edit-redo = Wiederholen
edit-nothing-to-undo = Nichts zurückzunehmen
edit-nothing-to-redo = Nichts zu wiederholen
edit-undo-what = { $what } (Strg+Z)
edit-redo-what = { $what } (Strg+Umschalt+Z)
edit-editing = { $vehicle } wird bearbeitet
edit-not-saved-yet = Der Auftrag behält sein Fahrzeug, bis das gespeichert ist.
edit-changes = Bisherige Änderungen
edit-no-changes = Noch keine. Jede lässt sich zurücknehmen.
edit-save-as = Speichern als …

edit-vehicle = Fahrzeug bearbeiten
edit-choose-panel = Ein Teil auf der Karte wählen. Mit der Umschalttaste kommt durch Klicken ein weiteres dazu.
edit-what-can-be-done = Ein Teil lässt sich in zwei trennen, mit dem benachbarten verbinden, von der Arbeit ausnehmen oder als aus anderem Material angeben. Unter der Karte lassen sich Standplätze verschieben.
edit-panels = { $count ->
    [one] { $count } Teil
   *[other] { $count } Teile
}
edit-and-more = { $names } und { $count } weitere
edit-panel-facts = etwa { $area } m², { $substrate }
edit-cut = In zwei trennen
edit-no-cut-on-centreline = Es liegt über der Mittellinie, wo ein Schnitt nicht auf beiden Seiten gleich wäre.
edit-cut-begins = Klicken, wo der Schnitt beginnt, auf dem Teil oder daneben.
edit-cut-ends = Jetzt klicken, wo er endet.
edit-do-not-cut = Nicht trennen
edit-draw-cut = Schnitt zeichnen …
edit-across = Quer
edit-across-does = Durch die Mitte, in einen vorderen und einen hinteren Teil
edit-along = Längs
edit-along-does = Durch die Mitte, in einen inneren und einen äußeren Teil
edit-join-neighbour = Mit benachbartem Teil verbinden
edit-choose = wählen …
edit-neighbour = Benachbartes Teil
edit-join-two = Die zwei verbinden
edit-join-as = Verbinden als { $panel }
edit-what-it-is = Was es ist
edit-in-work = In der Arbeit
edit-takes-part = dabei
edit-not-alike = nicht alle gleich
edit-made-of = Material
edit-worked-from = Bearbeitet von
edit-stance-number = Standplatz { $number }
edit-stance = Standplatz { $number }
edit-behind-front = Hinter der Front
edit-from-centreline = Von der Mittellinie

edit-stances = Standplätze
edit-stances-how = Eine Zahl ziehen oder mit den Pfeiltasten schieben. Die andere Seite folgt ebenso.
edit-stance-of = Standplatz { $number }: { $panels }
edit-stance-unused = von hier aus wird nichts bearbeitet

edit-stance-moved = Standplatz { $number } verschoben, der gegenüber ebenso
edit-part = { $panel } (etwa { $area } m²)
edit-cut-in-two = { $panel }: jetzt zwei Teile, { $parts }; die andere Seite ebenso
edit-joined = { $a } und { $b } sind jetzt ein Teil: { $panel }
edit-changed = { $who }: { $what }
edit-takes-part-in-work = gehört zur Arbeit
edit-worked-from-stance = von Standplatz { $number } aus bearbeitet
edit-far-from-stance = { $what }, der entlang des Fahrzeugs weit weg liegt
edit-save-not-confirmed = das Fahrzeug ist gespeichert, aber das System hat nicht bestätigt, dass die Datei auf dem Datenträger ist
edit-look-again = vor dem Ausschalten nachsehen, ob es noch in der Liste der Fahrzeuge steht

edit-no-panel = { $panel } gibt es nicht
edit-no-stance = diesen Standplatz gibt es nicht
edit-no-shared-seam = { $a } und { $b } haben keine gemeinsame Fuge, die wegfallen kann
edit-line-cuts-nothing = die Linie trennt { $panel } nicht in zwei
edit-across-centreline = { $panel } liegt über der Mittellinie und lässt sich nicht trennen
edit-would-leave-fault = dann bliebe ein Fehler: { $place }: { $cause }
edit-would-leave-some-fault = dann bliebe ein Fehler
edit-new-part = das neue Teil
edit-words-for-panel = Teil, Teile, Teilen, Teils
edit-words-for-stance = Standplatz

edit-save-over = Änderungen an „{ $name }“ speichern?
edit-save-over-means = Jeder Auftrag mit diesem Fahrzeug ändert sich mit. Nur in diesem Auftrag gehen Messwerte zu den Teilen, auf denen sie liegen.
edit-before-kept-as = Was vorher da war, bleibt als { $file } erhalten. Frühere Schritte dieses Auftrags lassen sich danach nicht mehr zurücknehmen.
edit-save-changes = Änderungen speichern
edit-own-vehicles = Eigene Fahrzeuge
edit-used-by-job = in diesem Auftrag
edit-delete = Löschen …
edit-delete-which = „{ $name }“ löschen?
edit-delete-means = Ein Auftrag, der es braucht, lässt sich ohne es nicht öffnen.
edit-deleted-kept-as = Die Datei bleibt als { $file } erhalten; wieder in { $name }.ron umbenannt, ist es zurück.
edit-keep-it = Behalten
edit-delete-it = Löschen
