# Wie ein Messgerät misst.
measure-magnetic-induction = magnetinduktiv
measure-eddy-current = Wirbelstrom
measure-induction-and-eddy-current = magnetinduktiv und Wirbelstrom
measure-ultrasonic = Ultraschall
# Warum ein Messgerät auf einem Teil nichts misst, als Ende eines Satzes.
measure-no-glass = auf Glas ist kein Lack, der zu messen wäre
measure-magnetic-on-aluminium = ein magnetinduktives Messgerät misst nur auf Stahl; auf Aluminium ist ein Wirbelstromgerät nötig
measure-magnetic-on-no-metal = ein magnetinduktives Messgerät misst nur auf Stahl; auf diesem Teil ist ein Ultraschallgerät nötig
measure-eddy-on-steel = ein Wirbelstromgerät ist nicht für Stahl gedacht; ein magnetinduktives Messgerät ist nötig
measure-eddy-on-carbon = Kohlefaser leitet Strom, deshalb sagt eine Wirbelstrommessung dort nichts aus
measure-no-metal = dieses Messgerät braucht Metall unter dem Lack; auf diesem Teil ist ein Ultraschallgerät nötig

measure-band-no-cut = zu dünn für jeden Abtrag
measure-band-finest-only = sehr dünn
measure-band-thin = dünn
measure-band-normal = normal
measure-band-refinished = wahrscheinlich nachlackiert
measure-band-several = wahrscheinlich mehrmals nachlackiert
measure-band-filler = vermutlich Spachtel
measure-bands-do-not-rise = die Grenzen der Schichtbereiche steigen nicht an
measure-film-mean = Die Lackschicht ist im Mittel { $um } µm dick; { $meaning } (Werkstattpraxis).
measure-film-thickest = Die Lackschicht ist an der dicksten Stelle { $um } µm dick; { $meaning } (Werkstattpraxis).
measure-film-thinnest = Die Lackschicht ist an der dünnsten Stelle { $um } µm dick; { $meaning } (Werkstattpraxis).
measure-film-uneven = Die Messstellen liegen { $um } µm auseinander; ein Stück des Teils kann nachlackiert oder dünn gerieben sein.
measure-means-no-cut = das ist zu dünn, um irgendetwas abzutragen
measure-means-finest-only = das ist sehr dünn, nur die feinste Politur ist sicher
measure-means-thin = das ist dünn, hier nichts Starkes verwenden
measure-means-normal = das ist für eine Werkslackierung üblich
measure-means-refinished = das deutet auf eine Nachlackierung
measure-means-several = das deutet auf mehrere Nachlackierungen
measure-means-filler = das deutet auf Spachtel unter dem Lack

measure-stands-out = Messstelle { $spot } liegt zu weit von den anderen weg, um dazuzugehören
measure-stands-out-do = diese Stelle noch einmal messen; kommt dasselbe heraus, den Messwert behalten
measure-filler = { $um } µm an der dicksten Stelle deuten auf Spachtel
measure-filler-do = dieses Teil nicht polieren; von innen ansehen oder den Besitzer fragen
measure-refinished = { $um } µm an der dicksten Stelle deuten auf eine Nachlackierung
measure-refinished-do = als nachlackiert vermerken oder noch einmal messen; die Schichten sind nicht bekannt
measure-thin = die Lackschicht ist vielleicht nur { $film } dick, also { $band }
measure-thin-do = beim feinsten Schritt bleiben, oder mehr Stellen messen, um die Grenze enger zu fassen
measure-uneven = die Messstellen liegen { $um } µm auseinander
measure-uneven-do = zwischen der dicksten und der dünnsten Stelle messen, um zu finden, wo es sich ändert
measure-thicker-than-mirror = { $um } µm dicker als das Teil auf der anderen Seite
measure-thinner-than-mirror = { $um } µm dünner als das Teil auf der anderen Seite
measure-mirror-do = Farbton und Struktur beider vergleichen; eines ist wahrscheinlich nachlackiert oder dünn gerieben

measure-mirror-thicker = Die Lackschicht ist { $um } µm dicker als beim Teil auf der anderen Seite (±{ $within } µm); eines der beiden ist wahrscheinlich nachlackiert oder dünn gerieben.
measure-mirror-thinner = Die Lackschicht ist { $um } µm dünner als beim Teil auf der anderen Seite (±{ $within } µm); eines der beiden ist wahrscheinlich nachlackiert oder dünn gerieben.
measure-mirror-alike-thicker = Das Teil auf der anderen Seite ist gleich: { $um } µm dicker, ±{ $within } µm.
measure-mirror-alike-thinner = Das Teil auf der anderen Seite ist gleich: { $um } µm dünner, ±{ $within } µm.

measure-interval = { $mean } µm, mit 95 % Sicherheit zwischen { $low } und { $high } µm
measure-removed = Abgetragen: { $interval }.
measure-removal-not-shown = Der Unterschied beträgt { $interval }; das zeigt keinen Abtrag. Etwa { $pairs } Stellen, vorher und nachher gemessen, würden genügen.
measure-removal-too-small = Der Unterschied beträgt { $interval }; ein so kleiner Abtrag ist mit diesem Messgerät nicht messbar.
measure-promise = mit { $confidence } % Sicherheit sind mindestens { $coverage } % des Teils dicker als dieser Wert

measure-gloss-60-first = Zuerst bei 60° messen; das zeigt, welcher Winkel der richtige ist.
measure-gloss-use-20 = Über 70 bei 60°, also sagt 20° mehr.
measure-gloss-use-85 = Unter 10 bei 60°, also sagt 85° mehr.
measure-gloss-stay-60 = 10 bis 70 bei 60°, also ist 60° der richtige Winkel.
measure-gloss-higher = { $before } vorher, { $after } nachher bei { $degrees }°: glänzender als vorher.
measure-gloss-lower = { $before } vorher, { $after } nachher bei { $degrees }°: matter als vorher.
measure-gloss-alike = { $before } vorher, { $after } nachher bei { $degrees }°: weniger als zwei Einheiten auseinander, also ist keine Änderung gezeigt.
