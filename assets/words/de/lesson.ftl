# Unterrichtsstunden: die Größen, nach denen gefragt wird, und was an einer Stunde oder an Antworten nicht stimmt.

## Größen; der Name sagt, wann, weil er allein steht.

quantity-turns = Drehungen insgesamt
quantity-air-turns = Drehungen in der Luft
quantity-turns-owed = Nötige Drehungen
quantity-turns-missing = Fehlende Drehungen
quantity-turns-low = Drehungen, unteres Ende des Bereichs
quantity-turns-high = Drehungen, oberes Ende des Bereichs
quantity-limits-passed = Überschrittene Grenzen dessen, was von Menschen gesehen wurde
quantity-hang-time-s = Flugzeit
quantity-jump-height-m = Sprunghöhe
quantity-takeoff-rate-rad-s = Drehrate beim Absprung
quantity-peak-rate-rad-s = Höchste Drehrate
quantity-mean-rate-rad-s = Mittlere Drehrate
quantity-touchdown-rate-rad-s = Drehrate beim Aufkommen
quantity-first-rate-rad-s = Drehrate am Anfang
quantity-last-rate-rad-s = Drehrate am Ende
quantity-inertia-takeoff-kg-m2 = Trägheitsmoment beim Absprung
quantity-inertia-least-kg-m2 = Kleinstes Trägheitsmoment
quantity-first-inertia-kg-m2 = Trägheitsmoment am Anfang
quantity-last-inertia-kg-m2 = Trägheitsmoment am Ende
quantity-angular-momentum-takeoff-kg-m2-s = Drehimpuls beim Absprung
quantity-angular-momentum-touchdown-kg-m2-s = Drehimpuls beim Aufkommen
quantity-first-angular-momentum-kg-m2-s = Drehimpuls am Anfang
quantity-last-angular-momentum-kg-m2-s = Drehimpuls am Ende
quantity-energy-takeoff-j = Drehenergie beim Absprung
quantity-energy-peak-j = Höchste Drehenergie
quantity-energy-touchdown-j = Drehenergie beim Aufkommen
quantity-first-energy-j = Drehenergie am Anfang
quantity-last-energy-j = Drehenergie am Ende
quantity-closing-work-j = Arbeit beim Schließen
quantity-opening-work-j = Arbeit beim Öffnen
quantity-muscle-work-j = Arbeit der Muskeln
quantity-tilt-peak-rad = Größte Neigung
quantity-rate-ratio = Wievielmal so schnell
quantity-inertia-ratio = Wievielmal so viel Trägheitsmoment am Anfang

## Was an der Datei einer Stunde oder von Antworten nicht stimmt.

lesson-too-large = Diese Datei ist zu groß für eine Unterrichtsstunde; bitte eine öffnen, die Turns Aloft gespeichert hat
lesson-not-json = Diese Datei ist keine Unterrichtsstunde oder eine beschädigte ({ $why })
lesson-none = Diese Datei ist keine Unterrichtsstunde; bitte eine öffnen, die eine ist
lesson-newer = Diese Stunde hat die Version { $version }, und dieses Turns Aloft liest bis Version { $known }; zum Öffnen bitte Turns Aloft aktualisieren
lesson-broken = Diese Stunde ist beschädigt: { $why }
lesson-step-broken = Schritt { $number } dieser Stunde ist beschädigt: { $why }
lesson-no-text = in `{ $key }` steht nichts oder ein Zeilenumbruch
lesson-long-text = der Text in `{ $key }` ist zu lang: { $most } Zeichen genügen
lesson-unknown-language = `{ $key }` hat einen Text in „{ $language }“; es gibt { $known }
lesson-too-many = in `{ $key }` stehen zu viele Einträge: { $most } genügen
lesson-too-few = in `{ $key }` stehen zu wenige Einträge: { $least } sind nötig
lesson-minutes = die Teile des Plans dauern zusammen { $parts } Minuten, die Stunde { $lesson }
lesson-not-one-of = es muss genau eines da sein von { $known }
lesson-unknown-start = es gibt keinen Ausgangspunkt „{ $value }“; es gibt { $known }
lesson-not-a-value = `{ $key }` ist weder eine Zahl noch ein Wort
lesson-not-rising = ein Rechenbeispiel braucht in `inertia` zwei Zeiten oder mehr, jede später als die davor
lesson-odd-name = „{ $value }“ taugt nicht als Name einer Variante: möglich sind kleine Buchstaben und _
lesson-unknown-free = „{ $value }“ kann hier nicht frei sein; es gibt { $known }
lesson-free-twice = `{ $key }` ist zweimal frei
lesson-nothing-set-up = `{ $key }` braucht etwas, das geflogen wird, in `setup`
lesson-no-quantity = `{ $key }` nennt mit „{ $value }“ keine Größe; es gibt { $known }
lesson-no-variant = `{ $key }` nennt mit „{ $value }“ keine Variante
lesson-no-brace = in `{ $key }` steht eine geschweifte Klammer allein
lesson-not-of-setup = was eingestellt ist, hat kein `{ $key }`, das vorher feststünde
lesson-unknown-curve = „{ $value }“ ist keine Kurve von dem, was eingestellt ist; es gibt { $known }
lesson-same-option = Möglichkeit { $number } steht für dasselbe wie eine andere
lesson-not-its-answer = die Vorhersage ist keine, nach der dieser Schritt fragt
lesson-fixed-example = ein Rechenbeispiel hat seine eigenen Zahlen, die sich nicht ändern
lesson-not-flown = es wird nichts geflogen, woraus die Antwort folgen würde
lesson-tie = die Möglichkeiten { $first } und { $second } kommen auf dasselbe hinaus, also ist keine richtig
lesson-none-rises = die Größe steigt, aber das sagt keine der Möglichkeiten
lesson-none-falls = die Größe fällt, aber das sagt keine der Möglichkeiten
lesson-none-stays = die Größe bleibt gleich, aber das sagt keine der Möglichkeiten
answers-too-large = Diese Datei ist zu groß für Antworten auf eine Stunde
answers-not-json = Diese Datei enthält keine Antworten auf eine Stunde oder beschädigte ({ $why })
answers-none = Diese Datei enthält keine Antworten auf eine Stunde
answers-newer = Diese Antworten haben die Version { $version }, und dieses Turns Aloft liest bis Version { $known }; zum Öffnen bitte Turns Aloft aktualisieren
answers-other-lesson = Diese Antworten gehören zu einer anderen Stunde oder zu einer anderen Fassung von dieser
answers-broken = Diese Antworten sind beschädigt: { $why }
answers-step-broken = Die Antwort zu Schritt { $number } ist beschädigt: { $why }

## Was vorhergesagt wurde und was geschah, als Tabelle.

lesson-table-step = Schritt
lesson-table-question = Frage
lesson-table-prediction = Vorhersage
# Über einer Spalte mit Zahlen: Sie sagt, welches Dezimalzeichen sie haben.
lesson-table-prediction-number = Vorhersage (Zahlen mit Dezimalkomma)
lesson-table-unit = Einheit
lesson-table-reason = Begründung
lesson-table-happened = Was geschah
lesson-table-off = Vorhersage um so viel höher (%)
lesson-table-right = Richtig
lesson-table-observation = Was zu sehen war
lesson-table-yes = ja
lesson-table-no = nein
# Ein Wert einer Kurve zu einer Zeit.
lesson-at-time = { $time } s: { $value }
