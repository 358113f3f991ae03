# Leiste, Regler, Kurven und was die Antworten rahmt.

## Die Leiste

panel-open = Öffnen
panel-share = Teilen
panel-keep = Merken
panel-keep-it = Diesen Sprung merken
panel-begin = Einen neuen Sprung beginnen
panel-undo = Rückgängig
panel-undo-what = Rückgängig: { $what }
panel-redo = Wiederherstellen
panel-redo-what = Wiederherstellen: { $what }
panel-settings = Einstellungen
panel-save = Als Datei speichern
panel-save-picture = Als Bild speichern
panel-save-table = Den Flug als Tabelle speichern
panel-sheet = Blatt für das Training
panel-send-picture = Ein Bild davon senden
panel-send-link-to-it = Einen Link dazu senden
panel-send-link-to-both = Einen Link zu beiden senden
panel-link-to-it = Link dazu kopieren
panel-link-to-both = Link zu beiden kopieren
panel-jumps = Sprünge. Offen: { $name }
panel-new-jump = Neuer Sprung
panel-open-file = Datei öffnen
panel-starts-invented = Ausgangspunkte, alle erfunden
panel-changed = { $name } (geändert)
panel-language = Sprache
panel-greeting = Einen Regler ziehen und die Drehungen beobachten.
panel-greeting-away = Diese Zeile schließen
panel-light = Farben
panel-light-device = Wie das Gerät
panel-light-day = Hell
panel-light-night = Dunkel
panel-type = Schriftgröße
panel-type-usual = Normal
panel-type-large = Groß
panel-figure = Figur
panel-figure-body = Körper
panel-figure-sticks = Striche
panel-unit-of-rate = Drehrate
panel-unit-of-length = Längen
panel-unit-of-mass = Massen

## Die Antwort

panel-turns = Drehungen
panel-turns-count = { $turns } Drehungen
panel-turns-of = von { $owed }
panel-turns-of-short = von { $owed }, { $short }
# $call: one call; or several, any of which it may be.
panel-call-is = { $jump }: { $call }
panel-call-may-be = { $jump }, möglich: { $call }
panel-uncertainty = Unsicherheit
panel-uncertainty-inputs = Unsicherheit der Eingaben
panel-uncertainty-meaning = Von jeder Eingabe wird angenommen, dass sie in 95 von 100 Fällen innerhalb ihres ± liegt. Die Eingaben hängen nicht voneinander ab. Dann liegen die Drehungen in 95 von 100 Fällen in ihrem Bereich.
panel-nothing-uncertain = Alle Eingaben gelten als genau.
panel-matters-most = Das meiste davon kommt von: { $what }.
panel-back-to-usual = Zurück zu den üblichen Werten

## Der Sprung

panel-meaning = Was bedeutet: { $what }?
panel-typed = { $what } als Zahl
panel-seen = bei Menschen gesehen
panel-out-of-reach = nicht erreichbar
panel-reset-all = Alles zurücksetzen
panel-charts = Kurven über den Flug
panel-readouts = Alle Werte
panel-which-jump = Name und Sprung
panel-name = Name des Sprungs
panel-name-own = Ein eigener Name
panel-note = Notiz
panel-note-own = Eine eigene Notiz
panel-turns-short = Drehungen
panel-off-ice-short = Ohne Eis
panel-set-up = Sprung zeigen
panel-turns-in-name = Drehungen im Namen (ein Axel braucht eine halbe mehr)
panel-hands-keep = Mit schwereren Händen bleibt beim Absprung gleich
panel-hands-keep-rate = Drehrate
panel-hands-keep-momentum = Drehimpuls
panel-hands-keep-energy = Energie
panel-the-jumper = Wer springt
panel-table = Massentabelle von Erwachsenen; für ein Kind eine Schätzung
panel-table-female = Weiblich
panel-table-male = Männlich
panel-ground = Springt auf
panel-ground-ice = Eis
panel-ground-floor = Boden
panel-ground-trampoline = Trampolin
panel-turning = Dreht sich, von oben gesehen
panel-turning-anticlockwise = Gegen Uhrzeiger
panel-turning-clockwise = Im Uhrzeigersinn
panel-motion = Absprung, Schließen, Öffnen
panel-at-take-off = Beim Absprung
panel-closing = Schließen
panel-opening = Öffnen
panel-simulation = Eine Simulation, kein Rat.

## Das Bild und die Kurven

panel-view-front = Vorn
panel-view-side = Seite
panel-view-above = Oben
panel-landing-shown = Landung nur gezeigt, nicht berechnet
panel-dismiss = Mitteilung schließen
panel-bring-back = Zurückholen
panel-play = Abspielen
panel-pause = Anhalten
panel-picture-back = Ein Bild zurück
panel-picture-on = Ein Bild weiter
panel-repeat = Wiederholen
panel-speed = Tempo { $speed }
panel-time-on-charts = Zeit, auf den Kurven
panel-time-in-flight = Zeit im Flug
panel-curves = Kurven
panel-curves-choose = Kurven auswählen
panel-curves-full = Für mehr Kurven ist hier kein Platz. Eine weitere tritt an die Stelle der untersten.
panel-curve-rate = Drehrate
panel-curve-inertia = Trägheitsmoment
panel-curve-momentum = Drehimpuls
panel-curve-energy = Drehenergie
panel-curve-turns = Drehungen bisher
panel-curve-height = Schwerpunkt
panel-curve-torque = Größtes Moment
panel-equation = L = I · ω
panel-equation-about = L ist der Drehimpuls, I das Trägheitsmoment, ω die Drehrate der Hüfte. Solange sich Arme und Beine bewegen oder der Körper geneigt ist, kommt durch ihre eigene Bewegung ein kleiner Rest dazu. L bleibt in der Luft gleich.
panel-equation-rest = Arme, Beine, Neigung
panel-torques-note = Nettomomente der Gelenke: was Muskeln, Bänder und Knochen zusammen aufbringen. Es ist nicht die Kraft eines Muskels.
panel-torques-up-to = höchstens { $torque }
panel-torque-now = { $joints } { $torque }
panel-this-jump = Dieser Sprung
panel-span-closing = Schließen
panel-span-tight = eng
panel-span-opening = Öffnen
panel-take-off = Absprung
panel-down-at = unten nach { $time } s

## Warum

panel-where-turns-went = Wo Drehungen verloren gingen
panel-ideal = Bestenfalls
panel-turned-before-take-off = Vor dem Absprung gedreht
panel-turns-in-all = Drehungen insgesamt
panel-try-step = Ausprobieren: { $step }, { $gain }
panel-what-matters-most = Welche Änderung am meisten bringt
panel-steps-hint = Drehungen je kleinem Schritt: antippen
panel-try-it = Probieren
panel-go-back = Zurück

## Ziel

panel-target-full = Volle Drehungen
panel-target-not-called = Kein q, < oder <<
panel-turns-wanted = Drehungen als Ziel
# Neben „Zurück“.
panel-go-back-to = zum Sprung davor
panel-one-change = Eine Änderung allein
panel-no-single-change = Keine einzelne Änderung reicht.
panel-several = Mehrere kleine Änderungen
panel-no-mix = Es wurde keine Mischung gefunden, die so viele Drehungen bringt.
panel-being-worked-out = Wird berechnet…
panel-cannot-alone = Reicht allein nicht
panel-together = Zusammen
panel-weights-needed = Gewichte: keine Technik
panel-try-change = Probieren: { $what }, { $change }
panel-verdict = { $what }: { $verdict }. Warum?
panel-verdict-why = warum?
panel-verdict-close = weniger
panel-limits = Grenzen dieser Person
panel-limits-of = Grenzen, { $what }: { $limit }
panel-least = Mindestens
panel-most = Höchstens
panel-forget-limits = Diese Grenzen vergessen
panel-season = Was eine Saison ändern mag
panel-season-held = 0 heißt: Das bleibt bei „Mehrere kleine Änderungen“, wie es ist.
panel-step-less = { $what }, { $value }: weniger
panel-step-more = { $what }, { $value }: mehr

## Karte

panel-map-across = Quer: { $lever }
panel-map-upwards = Aufwärts: { $lever }
panel-map-point = Auf der Karte: { $lever }
panel-map-quarter = je eine Vierteldrehung
panel-map-whole = ganze Drehungen
panel-map-owed = { $turns } nötige Drehungen
panel-map-line-owed = { $turns } nötig
panel-map-edge = Grenze des bei Menschen Gesehenen
panel-map-not-seen = bei Menschen nicht gesehen
panel-map-not-known = Für jemanden dieser Größe ist nicht alles bekannt. Dort zeigt der Rand, was überhaupt niemand gezeigt hat.
panel-map-also-beyond = Die Grenze gilt für Drehrate, Sprunghöhe und die zwei Größen der Karte. Auch was dieser Sprung von den Gelenken verlangt, ist mehr als je bei Menschen gesehen: { $what }.
panel-map-use = Auf die Karte tippen: Der Sprung und seine Regler gehen dorthin. Den Punkt halten und bewegen für kleine Änderungen.
panel-map-save = Die Karte als Tabelle speichern
panel-landing-load = Landebelastung jetzt, eine Schätzung: das { $low }- bis { $high }-Fache des Körpergewichts.

## Vergleich

panel-compare-none = Diesen Sprung mit einem anderen vergleichen.
panel-compare-how = Dann sind beide Sprünge zugleich zu sehen, und wie viele Drehungen jeder Unterschied ausmacht. Diesen Sprung merken, ändern und vergleichen. Oder unten einen anderen wählen.
panel-compare-with = Vergleichen mit
panel-compare-with-one = Vergleichen mit { $name }
panel-compare-with-result = Vergleichen mit { $name }, { $result }
panel-reference-nothing = Nichts
panel-reference-as-opened = Wie geöffnet
panel-reference-before-try = Vor der Änderung: { $was }
panel-figures-over = Übereinander
panel-figures-beside = Nebeneinander
panel-reference-linked = „{ $name }“ kam mit dem Link.
panel-from-to = { $from } gegen { $to }
panel-starts = Ausgangspunkte
panel-kept-jumps = Gemerkte Sprünge
panel-kept-none = Noch keine. „Merken“ ganz oben merkt den jetzigen Sprung. Gemerkte Sprünge bleiben auf diesem Gerät. Nichts wird irgendwohin gesendet.
panel-kept-open = Öffnen
panel-kept-open-it = Öffnen: { $name }
panel-kept-rename = Umbenennen
panel-kept-rename-it = Umbenennen: { $name }
panel-kept-name = Name
panel-kept-delete = Löschen
panel-kept-delete-it = Löschen: { $name }
panel-kept-up = Höher
panel-kept-up-it = Höher: { $name }
panel-kept-down = Tiefer
panel-kept-down-it = Tiefer: { $name }
panel-kept-deleted = „{ $name }“ ist gelöscht.
panel-kept-undo = Zurück
panel-kept-undo-it = Zurückholen: „{ $name }“ ist gelöscht.
panel-save-all = Alle als Datei speichern
panel-save-all-about = „Öffnen“ ganz oben öffnet eine solche Datei wieder.

## Hilfe

help-title = Hilfe
help-close = Schließen
help-about = Diese Seite zeigt einen Sprung mit Drehungen. Sie sagt, wie viele Drehungen der Körper bis zur Landung schafft, und warum. Jeder Flug ist nach den Gesetzen der Mechanik berechnet.
help-use = Einen Regler ziehen: Der Sprung wird neu geflogen. Auf ein „?“ tippen: Da steht, was eine Zahl bedeutet. Auf den Kurven ziehen: So geht es durch den Flug. Nichts wird irgendwohin gesendet.
help-questions = Fünf Fragen
help-jump = Wie viele Drehungen hat dieser Sprung? Hier werden Körper, Absprung und Bewegung eingestellt.
help-why = Wo gingen Drehungen verloren, und welche kleine Änderung bringt am meisten?
help-goal = Was würde die fehlenden Drehungen bringen?
help-map = Wie viele Drehungen sind es mit anderen Werten von zwei Eingaben?
help-compare = Was ist bei einem anderen Sprung anders?
help-estimated = Was geschätzt ist
help-estimated-about = Der Flug ist berechnet, ohne die Luft. Geschätzt sind: die Landebelastung, was Menschen können, und alles mit dem Vermerk „übliche Praxis“. „Unsicherheit“ zeigt, wie genau die Drehungen sind.
help-who-decides = Wer über das Springen entscheidet

## Measuring a real attempt.

measure-menu = Einen echten Versuch messen
measure-by-watch = Mit der Stoppuhr
measure-in-film = In einem Film
measure-leave = Messen beenden
measure-no-film = Hier ist der geöffnete Film zu sehen. Er bleibt auf diesem Gerät.
measure-film = Der Film
measure-film-unreadable = Was der Film über seine Bilder sagt, ist nicht lesbar. Bitte einen anderen wählen.
measure-film-choose = Einen Film des Sprungs öffnen.
# $name is the name of a film's file.
measure-film-again = Die Markierungen sind da. Weiter geht es mit dem Film „{ $name }“.
measure-open-film = Film öffnen
# Which mark is asked for, of how many.
measure-step = { $step } von { $of }
measure-take-off = Letztes Bild am Boden
measure-take-off-about = Zum letzten Bild gehen, in dem noch ein Fuß am Boden ist.
measure-landing = Letztes Bild in der Luft
measure-landing-about = Zum letzten Bild gehen, in dem beide Füße noch in der Luft sind.
measure-head = Scheitel
measure-feet = Unterer Fuß
measure-hips = Mitte der Hüften
measure-background = Ein fester Punkt
measure-point-about = Im Film antippen oder das Kreuz dorthin bringen.
measure-background-about = Wenn sich die Kamera bewegt: einen Punkt im Hintergrund antippen, der stillsteht, denselben in mehreren Bildern.
measure-facing = Wohin die Hüften zeigen
measure-facing-about = Die Figur drehen, bis ihre Hüften so zeigen wie im Film. Dazu über den Film wischen oder den Regler nehmen.
measure-turn-figure = Figur drehen
# An angle.
measure-degrees = { $degrees }°
measure-posture = Arme und Beine
measure-posture-about = Die Figur so weit schließen, wie der Körper hier geschlossen ist.
measure-arms = Arme angelegt
measure-legs = Beine angelegt
measure-mark-picture = Dieses Bild markieren
measure-it-fits = Passt
measure-cross-right = Kreuz, von links
measure-cross-down = Kreuz, von oben
measure-pixels = { $pixels } Pixel
measure-mark-cross = Beim Kreuz markieren
measure-turn-round = Sprung andersherum drehen
measure-take-back = Zurücknehmen
measure-skip = Auslassen
measure-all-marked = Alle Markierungen sind da.
measure-more-marks = Jede weitere Markierung macht die Antwort sicherer. Zu einem Bild gehen und wählen, was darin markiert wird.
measure-marked = Markiert
# A mark and its time in the film.
measure-marked-at = { $what }: { $time } s
measure-slow-motion = Zeitlupe
# How many times slower than life a film plays.
measure-times-slower = { $times } ×
measure-slow-motion-about = Wie viel Mal langsamer als in Wirklichkeit der Film läuft: 1 × ist keine Zeitlupe.
measure-ten-back = Zehn Bilder zurück
measure-ten-on = Zehn Bilder weiter
measure-times-larger = { $times }×
measure-look-closer = Näher heran
measure-time-line = Bild des Films
# A picture of the film, how many there are, and its time.
measure-frame = { $frame } von { $of } · { $time } s
measure-watch = Was die Stoppuhr sagt
measure-watch-half-width = Genau auf
measure-watch-about = Eine Stoppuhr in der Hand ist auf etwa 0,05 s genau, oder schlechter (unsere Schätzung: keine Messung dazu gefunden).
measure-landed = Wohin zeigte die Landung?
measure-as-owed = wie sie soll
measure-quarter-short = ein Viertel zu wenig
measure-half-short = eine halbe Drehung zu wenig
measure-quarter-far = ein Viertel zu weit
measure-half-far = eine halbe Drehung zu weit
measure-counted = Gezählte Drehungen
measure-counted-about = Mit denen vor dem Absprung, auf eine Vierteldrehung genau.
measure-not-counted = nicht gezählt
measure-cautions = Vor dem Filmen
measure-working = Wird berechnet …
# The least and the most time.
measure-hang-time = In der Luft: { $low } bis { $high } s.
measure-ask-why = Warum?
measure-with-change = Auch mit der besten Änderung zeigen
measure-on = Zurück zu den Markierungen
measure-sensor = Ein Sensor am Rumpf
measure-trace-again = Um zu verschieben, was gefunden wurde, bitte die Datei des Sensors noch einmal öffnen.
# The largest rate.
measure-trace-peak = bis { $rate }
measure-flight-from = Flug von
measure-flight-to = Flug bis
measure-rest-from = In Ruhe von
measure-rest-to = In Ruhe bis
measure-columns = Spalten der Datei
measure-column-time = Zeit
measure-column-gyroscope = Gyroskop
measure-column-accelerometer = Beschleunigung
# A column without a name.
measure-column-number = Spalte { $number }
# What a column is and its name.
measure-column = { $what }: { $column }
measure-by-sensor = Mit einem Sensor
measure-example-film = Mit einem erfundenen Film probieren
measure-example-film-about = Eine gezeichnete Figur versucht einen doppelten Salchow: 60 Bilder in der Sekunde, und die Kamera bewegt sich.
measure-example-film-name = erfundener Versuch.mp4
measure-save = Markierungen als Datei sichern
measure-line-asked = Zu markieren
measure-line-answer = Was die Markierungen sagen

## The five-turn try.
in-your-hands-menu = In deinen Händen
try-title = Der Fünf-Drehungen-Versuch
try-about = So viele Drehungen wie möglich und so wenige überschrittene Grenzen von Menschen wie möglich. Nicht, wie oft jemand springt.
try-step = { $turns }
try-passed-count = Überschrittene Grenzen: { $count }
try-passed-one = • { $what }
try-card = Die Karte als Bild speichern
try-leave = Versuch beenden
try-by-hand = Diesen Versuch von Hand fliegen
# $turns: die versucht werden.
try-step-by-hand = Der Fünf-Drehungen-Versuch: { $turns } Drehungen
try-count = Für den Versuch zählen
try-back = Zurück zum Versuch
try-better = Besser als dein Sprung davor.
try-as-good = So gut wie dein Sprung davor.
try-worse = Nicht so gut wie dein Sprung davor.
