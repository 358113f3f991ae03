# Der Drehteller: seine Seite, und was an einem Programm, einer Zahl oder den Messwerten eines Lagers nicht stimmt.

turntable-empty = Das Programm ist leer: Seine erste Zeile nennt die Spalten time_s und hand_distance_m.
turntable-not-text = Das ist kein Text in UTF-8: Speichere das Programm als CSV-Datei in UTF-8.
turntable-too-large = Das Programm ist zu groß: höchstens { $most } MB.
turntable-no-column = Die erste Zeile nennt keine Spalte { $column }: Nötig sind time_s und hand_distance_m.
turntable-twice-column = Die erste Zeile nennt die Spalte { $column } zweimal.
turntable-not-a-number = In Zeile { $line } steht „{ $written }“ in der Spalte { $column }; dort ist eine Zahl nötig.
turntable-too-short = Das Programm hat weniger als zwei Stellungen.
turntable-out-of-order = Die Zeit in Zeile { $line } ist nicht später als in der Zeile davor.
turntable-too-long = Das Programm ist zu lang: höchstens { $most } s.
turntable-reach = Zeile { $line } verlangt Hände { $asked } m von der Achse: Diese Person reicht von { $least } bis { $most } m.
turntable-legs = Zeile { $line } verlangt legs = { $asked }: Möglich ist 0 (innen) bis 1 (außen).
turntable-legs-stand = Zeile { $line } bewegt die Beine, aber diese Person steht auf beiden: Lass legs bei 0.
turntable-twist = Zeile { $line } verlangt twist_rad = { $asked }: Der Rumpf dreht sich von { $least } bis { $most } rad.
turntable-too-fast-arms = Auf dem Weg zu Zeile { $line } würde ein Armgelenk mit { $rate } rad/s drehen, höchstens { $most }: Lass mehr Zeit.
turntable-too-fast-legs = Auf dem Weg zu Zeile { $line } würde ein Beingelenk mit { $rate } rad/s drehen, höchstens { $most }: Lass mehr Zeit.
turntable-too-fast-trunk = Auf dem Weg zu Zeile { $line } würde sich der Rumpf mit { $rate } rad/s verdrehen, höchstens { $most }: Lass mehr Zeit.
turntable-unknown-key = { $key } gibt es nicht; die Namen sind { $known }.
turntable-unknown-word = { $key } = { $value } ist nicht bekannt; möglich ist { $known }.
turntable-no-number = { $key } = { $value } ist keine Zahl; möglich ist { $least } bis { $most }.
turntable-out-of-range = { $key } = { $value } ist außerhalb des Bereichs: möglich ist { $least } bis { $most }.
turntable-readings-no-numbers = Ein Messwert ist keine Zahl, oder das Trägheitsmoment liegt nicht über null.
turntable-readings-out-of-order = Jeder Messwert muss später sein als der davor.
turntable-readings-not-slower = Jede Drehrate muss kleiner sein als die davor, in derselben Richtung.
turntable-readings-at-rest = Beim letzten Messwert steht es schon still: Miss die Drehrate, solange es sich noch dreht.
turntable-readings-harder-at-end = Es wird am Ende stärker langsamer, als Reibung dieser Art es tut: Miss noch einmal, ohne Bewegung und ohne Stoß.
turntable-readings-harder-at-beginning = Es wird am Anfang stärker langsamer, als Reibung dieser Art es tut: Miss noch einmal, ohne Bewegung und ohne Stoß.

# Die Seite.
turntable-enter = Auf einem Drehteller
turntable-leave = Drehteller verlassen
turntable-rate = Drehrate am Anfang
turntable-hips-forward = Hüfte vor der Achse
turntable-bearing-inertia = Trägheit von Sitz oder Teller
turntable-friction-torque = Reibung bei jeder Drehrate
turntable-friction-viscous = Reibung für jedes rad/s
turntable-rate-to-set = Einzustellende Drehrate
turntable-rate-before = Drehrate vorher
turntable-rate-after = Drehrate nachher
turntable-rate-third = Dritte Drehrate
turntable-time-between = Zeit dazwischen
turntable-time-to-third = Zeit bis zur dritten
turntable-at-rest = in Ruhe
turntable-anticlockwise = gegen den Uhrzeigersinn, von oben gesehen
turntable-clockwise = im Uhrzeigersinn, von oben gesehen
turntable-on-platform = Auf einer Scheibe stehen
turntable-on-platform-sitting = Auf einer Scheibe sitzen
turntable-on-chair = Auf einem Drehstuhl sitzen
turntable-on-ground-ice = Auf dem Eis drehen
turntable-turns = Drehungen
turntable-work = Arbeit der Muskeln
turntable-heat = Durch Reibung verloren
turntable-pushed = Durch Stöße hineingesteckt
turntable-hands = Hände von der Achse
turntable-time = Zeit
turntable-what = Worauf es sich dreht
# Was ab und zu vorgelesen wird: Drehrate und Richtung, Trägheitsmoment, Drehimpuls.
turntable-summary = { $rate }, { $sense }; Trägheitsmoment { $inertia }, Drehimpuls { $momentum }.
# Worauf jemand steht oder sitzt, Drehrate und Richtung, wie weit außen die Hände sind.
turntable-picture = { $stand }: { $rate }, { $sense }, die Hände { $hands } von der Achse.
turntable-energy-about = Die Arme werden gegen die Kraft herangezogen, die sie nach außen treibt: Diese Arbeit lässt die Drehenergie wachsen.
turntable-push-left = Nach links anstoßen
turntable-push-right = Nach rechts anstoßen
turntable-set-rate = So schnell drehen
turntable-legs-slider = Beine
turntable-legs-out = { $percent } % außen
turntable-twist-slider = Schultern gegen die Hüfte
turntable-who-and-what = Wer, und worauf
turntable-with-friction = Mit Reibung
turntable-without-friction = Ohne Reibung
turntable-new-run = Jede Änderung hier beginnt einen neuen Lauf, in derselben Haltung.
turntable-predict = Was wird der Drehimpuls tun?
turntable-falls = Er sinkt
turntable-stays = Er bleibt gleich
turntable-rises = Er steigt
# Was vermutet wurde, und nach wie vielen Sekunden die Antwort da ist.
turntable-predicted = Deine Vermutung: „{ $expected }“. Stoß an, und beweg die Arme heran und hinaus: { $seconds } s nach dem letzten Stoß siehst du es.
# Was daraus wurde, ein oder zwei Sätze.
turntable-as-predicted = Wie vermutet. { $came }
turntable-not-as-predicted = Deine Vermutung war „{ $expected }“. { $came }
turntable-momentum-fell = Er sank von { $from } auf { $to }, weil die Reibung bremst. Arme, die herankommen, erhöhen die Drehrate, nicht den Drehimpuls.
turntable-momentum-stayed = Er blieb bei { $at }: Ohne Reibung nimmt ihn nichts weg. Arme, die herankommen, erhöhen die Drehrate, nicht den Drehimpuls.
turntable-momentum-nearly-stayed = Er blieb bei { $at }, auf ein Hundertstel genau: So wenig Reibung braucht länger. Arme, die herankommen, erhöhen die Drehrate, nicht den Drehimpuls.
turntable-momentum-rose = Er stieg von { $from } auf { $to }: Während Arme oder Rumpf schwangen, drehte sich der Sitz andersherum, und die Reibung schob ihn weiter.
turntable-predict-again = Neue Vermutung
turntable-own-chair = Dein eigener Stuhl
turntable-own-chair-about = Dreh dich auf deinem Stuhl, halte still, und lass zwei Drehraten und die Zeit dazwischen messen; eine dritte trennt beide Teile der Reibung. Halte die Figur so, wie du gesessen hast: Ihr Trägheitsmoment wird verwendet.
turntable-even = bei jeder Drehrate gleich
turntable-grows = wächst mit der Drehrate
turntable-both = von beidem (drei Drehraten)
turntable-calibrate = Diese Reibung übernehmen
# Die beiden Teile der Reibung.
turntable-calibrated = Die Reibung ist jetzt { $torque }, und { $viscous } mehr mit der Drehrate.
turntable-too-much-friction = Das ist mehr Reibung, als sich einstellen lässt ({ $most }): Prüfe Drehraten und Zeit.
turntable-sensor = Sensor auf dem Stuhl
turntable-sensor-about = Setz dich auf den Stuhl, halte das Gerät ruhig an die Brust, und lass dich von jemandem sanft drehen. Die Drehrate erscheint als dünne Linie über der der Figur; nichts verlässt das Gerät. Die Datei eines anderen Sensors tut dasselbe.
turntable-use-sensor = Sensor dieses Geräts verwenden
turntable-stop-sensor = Aufnahme beenden
turntable-lay-file = Sensordatei darüberlegen
turntable-turn-as-measured = Drehen und langsamer werden wie gemessen
turntable-as-measured-about = Halte die Figur so, wie du gesessen hast: Ihr Trägheitsmoment wird für die Reibung verwendet.
turntable-drop-measured = Gemessene Drehrate wegnehmen
turntable-sensor-waits = Vom Sensor ist noch nichts gekommen; vielleicht hat dieses Gerät keinen.
turntable-measured-now = Gerade gemessen: { $rate }
turntable-measured = { $time } lang gemessen, höchstens { $rate }
turntable-about-vertical = Um die Senkrechte, wie der Beschleunigungssensor sie zeigt. Die Richtung ist die der Figur: Browser sind sich darin nicht einig.
turntable-about-any-axis = Um die Achse, um die sich das Gerät gerade drehte: Ohne Schwerkraft von einem Beschleunigungssensor ist die Senkrechte nicht bekannt. Die Richtung ist die der Figur.
turntable-no-slowing = Es gibt keinen Abschnitt von { $seconds } s, in dem es nur langsamer wird: Dreh dich, halte still, und lass es auslaufen.
turntable-sensor-missing = Dieser Browser lässt keine Seite einen Bewegungssensor lesen. Nimm ihn auf andere Weise auf, und leg die Datei über den Lauf.
turntable-sensor-refused = Die Seite durfte den Bewegungssensor nicht lesen. Erlaube es in den Browser-Einstellungen für diese Seite, und versuch es noch einmal.
turntable-sensor-touch = Berühr den Bildschirm noch einmal: Erst dann fragt der Browser, ob der Sensor gelesen werden darf.
turntable-sensor-full = Die Aufnahme dauert { $minutes } Minuten, länger geht es nicht.
turntable-again = Nochmal
turntable-keep = Merken
turntable-keep-about = Diesen Lauf als gestrichelte Linie unter die nächsten legen
turntable-drop-about = Den gemerkten Lauf wegnehmen
turntable-save = CSV
turntable-save-about = Diesen Lauf als CSV-Datei speichern
turntable-time-line = Zeit des Laufs
turntable-charts = Kurven des Laufs
turntable-hint = Hier ziehen: Arme heran und hinaus. An den Füßen wischen: anstoßen.
turntable-hour-over = Der Lauf dauert eine Stunde, länger geht es nicht. Speichere ihn, geh zurück, oder beginne noch einmal.
turntable-cautions = Bevor du dich drehst
turntable-caution-room = Lass rundum Platz, und hab jemanden zum Helfen neben dir. Stürze geschehen beim Absteigen.
turntable-caution-slow = Dreh dich langsam, und hör beim ersten Schwindel auf. Warte, bis er vorbei ist, bevor du aufstehst.
turntable-caution-weights = Gewichte halten Erwachsene, oder jemand passt dabei auf.
turntable-caution-source = Das ist allgemeine Praxis; eine Quelle dafür gibt es nicht.
