# Der Drehteller: was an einem Programm, einer Zahl oder den Messwerten eines Lagers nicht stimmt.

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
