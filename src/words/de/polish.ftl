# Wie viel Klarlack da ist.
polish-clear-is-assumed = angenommen
polish-clear-is-measured = gemessen
polish-clear-assumed = { $low } bis { $high } Klarlack, angenommen: Das Messgerät misst alles über dem Untergrund und kann den Klarlack nicht für sich sehen
polish-clear-measured = { $low } bis { $high } Klarlack, gemessen

polish-refused = Nicht poliert: { $reason }.
polish-refused-unread = Nicht poliert: Die Lackschicht ist nicht bekannt ({ $reason }), und blind wird nichts abgetragen.
polish-unread = hier wurde noch nichts gemessen
polish-refused-filler = Nicht poliert: { $thickest } an der dicksten Stelle deuten auf Spachtel, und niemand kann wissen, was dort hält.
polish-refused-rule = Nicht poliert: Es darf nichts abgetragen werden, wegen der Regel „{ $rule }“.
polish-no-limit = keine Grenze bekannt
polish-not-matte = Mattlack wird nicht poliert; jede geriebene Stelle wird glänzend und lässt sich nicht wieder mattieren
polish-not-film = Schutzfolie wird nicht wie Lack poliert; was darunter liegt, ist nicht zu erreichen und nicht zu messen
polish-not-wrap = Folierung wird nicht poliert
polish-not-bare = auf einer blanken Oberfläche ist kein Klarlack
polish-not-glass = Glas wird nicht mit dem Lack poliert; es wird nur gereinigt und versiegelt
polish-not-lens = beim Polieren verliert eine Streuscheibe ihre Hartbeschichtung, die dann zu erneuern ist; sie wird nur gereinigt und versiegelt

polish-mind = Achtung: { $caution }.
polish-single-stage = Einschichtlack hat keinen Klarlack; Farbe am Pad ist der Lack selbst, deshalb beim feinsten Schritt bleiben, der genügt
polish-mind-edge-nothing = Achtung: An der dünnen Kante darf nichts abgetragen werden; abkleben.
polish-mind-edge = Achtung: An der dünnen Kante dürfen nur { $most } abgetragen werden; abkleben, wo die Schritte mehr nehmen.
polish-mind-radar = Achtung: Das Radar hinter diesem Teil ist auf die Schichtdicke ab Werk eingestellt; die Vorgaben des Fahrzeugherstellers gehen vor.
polish-mind-parking-sensors = Achtung: In diesem Teil sitzen Parksensoren; die Vorgaben des Fahrzeugherstellers gehen vor.
polish-mind-camera = Achtung: Hier blickt eine Kamera hinaus; die Vorgaben des Fahrzeugherstellers gehen vor.
polish-mind-fresh =
    Achtung: { $days ->
        [one] vor { $days } Tag lackiert
       *[other] vor { $days } Tagen lackiert
    }; starke Lösemittel können den Lack anlösen.

# Regeln, die den Abtrag begrenzen.
polish-limit-keep =
    mindestens { $least } { $coat ->
        [topcoat] Decklack
       *[clear] Klarlack
    } behalten
polish-limit-share =
    höchstens { $share } % { $coat ->
        [topcoat] des Decklacks
       *[clear] des Klarlacks
    } über die ganze Lebensdauer{ $unknown ->
        [none] {""}
       *[other] , davon { $unknown } % als verbraucht gerechnet, weil die Vorgeschichte unbekannt ist
    }{ $before ->
        [none] {""}
       *[other] , davon { $before } schon früher verbraucht
    }
polish-limit-life =
    höchstens { $most } über die ganze Lebensdauer des Lacks{ $unknown ->
        [none] {""}
       *[other] , davon { $unknown } % als verbraucht gerechnet, weil die Vorgeschichte unbekannt ist
    }{ $before ->
        [none] {""}
       *[other] , davon { $before } schon früher verbraucht
    }
polish-limit-visit = Höchstwert für einen Besuch
polish-limit-no-cut = Lackschicht womöglich unter { $under }, zu dünn für jeden Abtrag
polish-limit-finest-only = Lackschicht womöglich unter { $under }, nur feinste Politur
polish-limit-thin = Lackschicht womöglich unter { $under }, nichts Starkes
polish-limit-refinished = Lackschicht über { $over }, wahrscheinlich nachlackiert
polish-limit-painted-again = nachlackiert, Schichten nicht bekannt
polish-limit-fresh =
    { $days ->
        [one] vor { $days } Tag lackiert, härtet noch
       *[other] vor { $days } Tagen lackiert, härtet noch
    }
polish-limit-narrow = schmales Teil, meist Kanten
polish-limit-sensor = ein Sensor blickt hindurch

polish-source-shop = Regel des Betriebs; die Vorgabe ist unsere Schätzung, eine Übereinkunft
polish-source-bands = Regel des Betriebs; Werkstattpraxis für die ganze Lackschicht
polish-source-history = was von früherer Arbeit festgehalten ist
polish-source-film = untere Grenze der Messwerte; der Klarlack ist aus der Lackschicht angenommen
polish-source-clear = untere Grenze des gemessenen Klarlacks

polish-note-took-more = Der Versuch mit „{ $step }“ trug { $took } ab, viel mehr als nach den anderen Ergebnissen und den Zahlen des Betriebs zu erwarten; noch einmal versuchen.
polish-note-took-less = Der Versuch mit „{ $step }“ trug { $took } ab, viel weniger als nach den anderen Ergebnissen und den Zahlen des Betriebs zu erwarten; noch einmal versuchen.
polish-note-no-gloss = „{ $step }“ hinterließ keinen Glanz, der bleiben kann; ein feinerer Schritt muss folgen.
polish-note-sights-apart = Widerspruch ({ $defect }): „{ $gentler }“ nahm mehr weg als „{ $deeper }“, obwohl es weniger tief reichte; beide Stellen noch einmal ansehen.
polish-note-finish-twice = Widerspruch: Der Glanz nach „{ $step }“ wurde zweierlei beurteilt; noch einmal versuchen.
polish-note-finishes-apart = Widerspruch: Nach „{ $stays }“ kann der Glanz bleiben, nach dem sanfteren „{ $coarse }“ nicht; beide Stellen mit Entfetter abwischen und noch einmal ansehen.

polish-customer-left = Dieses Teil bleibt, wie es ist.
polish-customer-gloss = Dieses Teil wird sanft auf Glanz poliert.
polish-customer-once = Dieses Teil wird einmal poliert.
polish-customer-several = Dieses Teil wird in mehreren Schritten poliert, von grob nach fein.
polish-customer-sanded = Dieses Teil wird nass geschliffen und dann poliert, bis es wieder klar ist.
polish-customer-takes =
    Das kostet höchstens { $share } % { $coat ->
        [paint] des Lacks
       *[clear] des Klarlacks
    }.

polish-fate-gone = ganz weg danach: { $defects }
polish-fate-less = weniger zu sehen danach: { $defects }
polish-fate-stays = bleibt: { $defects }
polish-fate-cleaned = wird vorher abgereinigt: { $defects }
polish-fate-levelled = wird auf Wunsch von Hand eingeebnet: { $defects }
polish-fate-touch-up = bleibt, bis es ausgebessert wird: { $defects }
polish-fate-painted = hier hilft nur neuer Lack: { $defects }

polish-defect-swirl = Wirbelkratzer
polish-defect-wash-mark = Waschkratzer
polish-defect-haze = Schleier
polish-defect-hologram = Hologramme
polish-defect-sand-scratch = Schleifspuren
polish-defect-deep-scratch = tiefer Kratzer
polish-defect-water-spot = Wasserflecken
polish-defect-etching = Verätzung
polish-defect-bird-etching = Verätzung durch Vogelkot
polish-defect-oxidation = Oxidation
polish-defect-orange-peel = Orangenhaut
polish-defect-overspray = Sprühnebel
polish-defect-tar = Teer
polish-defect-rail-dust = Flugrost
polish-defect-stone-chip = Steinschlag
polish-defect-clear-failure = Klarlackablösung
polish-defect-solvent-pop = Kocher
polish-defect-crater = Krater
polish-defect-nib = Staubeinschluss
polish-defect-run = Läufer

polish-helps-polish = Polieren nimmt es weg
polish-helps-reduce = Polieren mildert es und nimmt es weg, wo genug Klarlack abgetragen werden darf
polish-helps-decontaminate = es liegt auf dem Lack und geht vor dem Polieren mit der Dekontamination ab
polish-helps-refinish = nur neuer Lack hilft
polish-helps-touch-up = hier fehlt Lack; Ausbessern oder Nachlackieren hilft, Polieren nicht
polish-helps-level-locally = es steht vor und wird von Hand nur an seiner Stelle eingeebnet

polish-drive-not-said = keine Angabe
polish-drive-hand = von Hand
polish-drive-orbital = Exzentermaschine
polish-drive-rotary = Rotationsmaschine

polish-removal-measured = gemessen
polish-removal-planned = geplant
polish-removal-told = angegeben oder geschätzt

polish-level-leave = Belassen
polish-level-gloss = Glanz
polish-level-one-step = Einstufig
polish-level-two-step = Zweistufig
polish-level-sand-and-polish = Schleifen und polieren

polish-verb-sand = schleifen
polish-verb-cut = vorpolieren
polish-verb-polish = polieren
polish-verb-finish = feinpolieren
polish-kind-sanding = Schleifen
polish-kind-cutting = Vorpolieren
polish-kind-polishing = Polieren
polish-kind-finishing = Feinpolieren

polish-seam-levels = eines ist als „{ $one }“ geplant, das andere als „{ $other }“
polish-seam-share = auf einer Seite der Fuge verschwinden { $more } Prozentpunkte mehr Fehler
polish-seam-advice = das bessere weniger bearbeiten, das andere mehr, wo der Spielraum es erlaubt, oder es dem Kunden sagen

polish-advice-vibration = Die Vibration beträgt { $now } über den Tag, ab { $action } ist zu handeln: Maschinenarbeit teilen oder mit dieser Maschine je Person unter { $until } bleiben. Örtliche Vorschriften und die Angaben des Herstellers gehen vor.
polish-advice-noise = Der Lärm beträgt { $now } über den Tag; ab 80 dB(A) ist Gehörschutz anzubieten, ab 85 zu tragen.

polish-start-wet-2500 = Nassschliff von Hand, P2500
polish-start-wet-3000 = Nassschliff von Hand, P3000
polish-start-cutting = Schleifpolitur, hartes Pad
polish-start-medium = Mittlere Politur, mittleres Pad
polish-start-fine = Feine Politur, weiches Pad
polish-start-block = Schleifklotz
polish-start-firm = hart
polish-start-middle = mittel
polish-start-soft = weich
polish-start-paper-2500 = P2500, nass
polish-start-paper-3000 = P3000, nass
polish-start-cutting-polish = Schleifpolitur
polish-start-medium-polish = mittlere Politur
polish-start-fine-polish = feine Politur

polish-why-left-by-hand = Bleibt, wie es ist, so von Hand gewählt; { $allowed } dürfen abgetragen werden.
polish-why-left = Bleibt, wie es ist: { $allowed } dürfen abgetragen werden, und schon der sanfteste Schritt könnte mehr nehmen.
polish-why-takes =
    Trägt etwa { $mean } ab, höchstens { $most }; { $allowed } dürfen abgetragen werden{ $rule ->
        [none] {""}
       *[other] {" "}({ $rule })
    }.
polish-done-step =
    { $step } ({ $passes ->
        [one] { $passes } Durchgang
       *[other] { $passes } Durchgänge
    })
polish-then = , dann{" "}
polish-done =
    { $level }: { $steps }{ $places ->
        [0] {""}
        [one] , vorher zusätzliche Arbeit an einer Stelle
       *[other] , vorher zusätzliche Arbeit an { $places } Stellen
    }; { $time }.
polish-brings-gloss = Hier ist nichts zu korrigieren, deshalb wird nur auf Glanz poliert.
polish-brings-gloss-as-chosen = Nur auf Glanz, wie gewählt; etwa { $gone } % der Fehler verschwinden dabei.
polish-brings-enough =
    Etwa { $gone } % der Fehler verschwinden, gewünscht waren { $wanted } %; { $sure ->
        [yes] schneller geht es nicht
       *[no] mit weniger Schritten oder Durchgängen zur Auswahl findet sich vielleicht ein besserer Weg
    }.
polish-brings-held = Etwa { $gone } % der Fehler verschwinden; gewünscht waren { $wanted } %, aber die Stufe ist von Hand auf „{ $level }“ begrenzt.
polish-brings-less =
    Etwa { $gone } % der Fehler verschwinden; gewünscht waren { $wanted } %{ $sure ->
        [yes] , aber diese Schritte und dieser Spielraum erlauben nicht mehr
       *[no] ; mit weniger Schritten oder Durchgängen zur Auswahl findet sich vielleicht ein besserer Weg
    }.

polish-stays-helps = { $defect }: { $helps }.
polish-stays-refused =
    { $defect }: { $gone ->
        [none] bleibt
       *[other] etwa { $gone } % verschwinden, der Rest bleibt
    }, weil dieses Teil nicht poliert wird.
polish-stays-deep =
    { $defect }: { $gone ->
        [none] bleibt
       *[other] etwa { $gone } % verschwinden, der Rest bleibt
    }; kann { $depth } tief sein, und nur { $allowed } dürfen abgetragen werden; { $help ->
        [paint] so tiefe Verätzung braucht neuen Lack
       *[touch-up] Ausbessern oder Nachlackieren würde mehr helfen
    }.
polish-stays-goal =
    { $defect }: { $gone ->
        [none] bleibt
       *[other] etwa { $gone } % verschwinden, der Rest bleibt
    }; alles wegzunehmen ist für das Ziel nicht nötig, oder diese Schritte können es nicht innerhalb des Spielraums.
