# Ein Sprung, der langsam von Hand geflogen wird.

## Der Knopf.

slow-fly-by-hand = Selbst fliegen

## Vor dem Absprung und in der Luft.

slow-how = Einen Finger in die Mitte halten: Arme und Beine gehen heran. Nach außen schieben oder loslassen: Sie gehen auf.
slow-open-again = Vor der Landung wieder öffnen.
slow-take-off = Abspringen
slow-speed = Tempo
slow-pad = Wie weit heran
slow-pad-middle = heran
slow-pad-edge = auf
# Was die Tastatur tut; wird vorgelesen.
slow-pad-about = „Ende“ zieht Arme und Beine ganz heran, „Pos1“ lässt sie los.
slow-percent = { $percent } % heran
slow-stop = Abbrechen
slow-ready = Kurz vor dem Absprung. Die Hand führt Arme und Beine.
slow-in-air = In der Luft.
slow-phase-in-air = in der Luft
slow-line-state = Von Hand
slow-turns-so-far = Drehungen bisher
slow-rate = Drehzahl
slow-in = Arme und Beine
slow-time-left = Restzeit
# $time is in seconds as they pass for who leads, not in those of the flight.
slow-lands-in = Landung in { $time } s

## Nach der Landung.

# $call: such as "full" or "a quarter short".
slow-landed = Gelandet: { $turns } Drehungen, { $call }.
slow-landed-free = Gelandet: { $turns } Drehungen.
slow-before = Vorher
slow-by-hand = Von Hand
slow-both = vorher { $before }, von Hand { $flown }
slow-budget-about = Drehungen des Sprungs, wie er vorher war, und des von Hand geflogenen.
slow-ghost = Die blasse Figur ist der Sprung, wie er vorher war.
slow-again = Noch einmal
slow-take = Diesen Sprung übernehmen
slow-leave = Zurück zum Sprung, wie er war
slow-turns = { $turns } Drehungen
slow-open-now = Jetzt öffnen
# $owed: the turns that the jump's name asks for.
slow-of = Drehungen von { $owed }: { $call }
# In place of the sliders that the hand has taken the place of.
slow-led = Dieser Sprung wurde von Hand geführt: Wie weit und wann Arme und Beine herankommen, ist das, was die Hand tat. Dafür gibt es keine Regler.
slow-as-planned = Wie geplant fliegen
