# Das Standbild eines Sprungs, zum Senden oder Drucken.

picture-invented = erfunden
picture-turns = Drehungen
picture-of = von { $turns }
picture-rate = Drehrate, größte zuletzt
picture-inertia = Trägheit, kleinste zuletzt
picture-open-it = Öffnet diesen Sprung
picture-of-named = { $name }: { $turns } von { $owed } Drehungen, { $missing }.
picture-of-free = { $name }: { $turns } Drehungen.
