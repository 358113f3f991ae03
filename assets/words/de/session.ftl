### Was gerade geschieht: jede Anzeige, jede Antwort, und was gesagt wird, wenn etwas nicht geht.

## Die Fragen; kurz, sie stehen nebeneinander.

question-jump = Sprung
question-why = Warum
question-goal = Ziel
question-map = Karte
question-compare = Vergleich

## Anzeigen, die zusammengehören.

group-turns = Drehungen
group-uncertainty = Unsicherheit
group-time = Zeit und Höhe
group-rate = Drehrate
group-inertia = Trägheitsmoment
group-energy = Drehimpuls und Energie
group-hands = Kraft an den Händen
group-efforts = Was es dem Körper abverlangt
group-axis = Achse
group-landing = Landung
group-answer = Antwort

## Einheiten, die niemand wählt.

unit-kg-m2 = kg m²
unit-kg-m2-per-s = kg m²/s
unit-j = J
unit-n = N
unit-n-m = N m
unit-n-m-s = N m s
unit-n-m-per-kg = N m/kg
unit-w = W
unit-degrees = °

## Anzeigen: wie jede heißt und was sie bedeutet, nach ihrem veröffentlichten Schlüssel.

reading-turns = Drehungen insgesamt
reading-turns-about = Drehungen in der Luft und dazu, was schon vor dem Absprung gedreht wurde.
reading-air-turns = Drehungen in der Luft
reading-air-turns-about = Wie weit sich die Hüfte vom Absprung bis zum Aufkommen um die Senkrechte gedreht hat.
reading-pre-rotation-turns = Vor dem Absprung gedreht
reading-pre-rotation-turns-about = Gedreht, solange der Fuß noch auf dem Untergrund stand. Es zählt zum Sprung.
reading-turns-owed = Nötige Drehungen
reading-turns-owed-about = Die Drehungen im Namen des Sprungs. Ein Axel braucht eine halbe Drehung mehr, weil er vorwärts abspringt.
reading-shortfall-deg = Fehlende Drehung
reading-shortfall-deg-about = Drehung, die beim Aufkommen noch fehlt, in Grad: 360 sind eine ganze Drehung.
reading-over-rotated-deg = Überrotiert um
reading-over-rotated-deg-about = Wie weit der Sprung über das Nötige hinaus dreht, wenn es mehr als eine Vierteldrehung ist (übliche Praxis, ohne Quelle: Die veröffentlichte Regel des Sports kennt dafür keine Wertung).
reading-landing-facing-deg = Landung zeigt
reading-landing-facing-deg-about = Wohin die Hüfte beim Aufkommen zeigt, in Grad hinter (positiv) oder vor der richtigen Richtung. Bis 45° zeigt die Landung richtig herum, ab 135° falsch herum, dazwischen zur Seite. Diese Grenzen sind unsere eigenen.
reading-call = Wertung
reading-call-about = Nach der Regel des Sports ist eine fehlende Vierteldrehung q, mehr als ein Viertel <, eine halbe oder mehr <<. Die Regel gibt q nur den einen Wert 90°. Die Spanne von q hier, { $from }° bis 90°, ist unsere eigene. Für zu weit Gedrehtes kennt die Regel keine Wertung. Mehr als eine Vierteldrehung zu weit heißt hier überrotiert (übliche Praxis, ohne Quelle).
reading-phase = Phase
reading-phase-about = Was der Körper im gezeigten Augenblick tut. Nach dem Aufsetzen wird eine Landung gezeigt, die nicht berechnet ist.
reading-hang-time-s = Flugzeit
reading-hang-time-s-about = Zeit vom Absprung, bis ein Fuß den Untergrund berührt. Gebeugte Beine bei der Landung verlängern sie.
reading-jump-height-m = Sprunghöhe
reading-jump-height-m-about = Wie weit der Schwerpunkt vom Absprung bis zum höchsten Punkt steigt.
reading-cm-height-now-m = Schwerpunkt jetzt
reading-cm-height-now-m-about = Höhe des Körperschwerpunkts über dem Untergrund, im gezeigten Augenblick.
reading-rate-now-rad-s = Jetzt
reading-rate-now-rad-s-about = Wie schnell sich die Hüfte im gezeigten Augenblick um die Senkrechte dreht.
reading-takeoff-rate-rad-s = Beim Absprung
reading-takeoff-rate-rad-s-about = Wie schnell sich die Hüfte beim Absprung dreht.
reading-peak-rate-rad-s = Höchste
reading-peak-rate-rad-s-about = Die schnellste des Flugs. Die höchsten, die bei Menschen gesehen wurden, sind etwa 430 bis 440 U/min (übliche Praxis, ohne Quelle).
reading-mean-rate-rad-s = Mittlere
reading-mean-rate-rad-s-about = Drehungen in der Luft geteilt durch die Flugzeit. Die mittlere Drehrate, nicht die höchste, entscheidet, wie viele Drehungen es werden.
reading-touchdown-rate-rad-s = Beim Aufkommen
reading-touchdown-rate-rad-s-about = Was die Landung abfangen muss.
reading-inertia-now-kg-m2 = Jetzt
reading-inertia-now-kg-m2-about = Wie schwer sich der Körper um seine Achse drehen lässt. Masse weit von der Achse zählt mehr: doppelt so weit zählt vierfach.
reading-inertia-takeoff-kg-m2 = Beim Absprung
reading-inertia-takeoff-kg-m2-about = Offene Arme und das Spielbein machen es beim Absprung groß.
reading-inertia-least-kg-m2 = Am engsten
reading-inertia-least-kg-m2-about = Das kleinste des Flugs. Die Massentabellen dahinter beschreiben Erwachsene: Für ein Kind ist es eine Schätzung.
reading-angular-momentum-kg-m2-s = Drehimpuls
reading-angular-momentum-kg-m2-s-about = Der Absprung legt ihn fest, und er bleibt im ganzen Flug gleich: In der Luft könnte ihn nur die Luft selbst ändern. Das wären 0,1 bis 1 % (eine Schätzung), und das ist hier weggelassen.
reading-energy-now-j = Energie jetzt
reading-energy-now-j-about = Energie der Drehung, mit Armen und Beinen, im gezeigten Augenblick.
reading-energy-takeoff-j = Energie beim Absprung
reading-energy-takeoff-j-about = Energie der Drehung beim Absprung.
reading-closing-work-j = Arbeit beim Schließen
reading-closing-work-j-about = Was die Gelenke vom Absprung bis zum Beginn des Öffnens zusammen leisten. Muskeln ziehen Arme und Beine gegen die Drehung heran. Das kostet Arbeit und macht die Drehung schneller.
reading-opening-work-j = Arbeit beim Öffnen
reading-opening-work-j-about = Was die Gelenke vom Beginn des Öffnens bis zum Aufkommen zusammen leisten. Es ist negativ, wo der Körper sich Arme und Beine von der Drehung nach außen drücken lässt. Es ist positiv, wo er sie hinauswirft.
reading-energy-touchdown-j = Energie beim Aufkommen
reading-energy-touchdown-j-about = Energie der Drehung beim Aufkommen, mit Armen und Beinen: die vom Absprung, dazu die Arbeit beim Schließen und beim Öffnen.
reading-hand-force-left-now-n = Links jetzt
reading-hand-force-right-now-n = Rechts jetzt
reading-hand-force-now-about = Kraft des Unterarms auf diese Hand und das, was sie hält. Sie hält die Hand auf ihrem Kreis und bewegt sie nach innen und außen.
reading-hand-force-peak-n = Größte
reading-hand-force-peak-n-about = Die größere von beiden Händen im ganzen Flug. Schnelles Schließen und schnelles Drehen lassen sie wachsen.
reading-hand-force-peak-n-about-rate = Die größere von beiden Händen im ganzen Flug. Schnelles Schließen und schnelles Drehen lassen sie wachsen. Mit den schwereren Händen bleibt hier die Drehrate beim Absprung gleich.
reading-hand-force-peak-n-about-momentum = Die größere von beiden Händen im ganzen Flug. Schnelles Schließen und schnelles Drehen lassen sie wachsen. Mit den schwereren Händen bleibt hier der Drehimpuls gleich.
reading-hand-force-peak-n-about-energy = Die größere von beiden Händen im ganzen Flug. Schnelles Schließen und schnelles Drehen lassen sie wachsen. Mit den schwereren Händen bleibt hier die Energie beim Absprung gleich.
reading-grip-force-peak-n = Griff, größte Kraft
reading-grip-force-peak-n-about = Was die Finger höchstens halten müssen: die Kraft auf das Gewicht allein, ohne die Masse der Hand selbst.
joint-shoulders = Schultern
joint-elbows = Ellenbogen
joint-hips = Hüften
joint-knees = Knie
joint-spine = Wirbelsäule
joint-shoulder = Schulter
joint-elbow = Ellenbogen
joint-hip = Hüfte
joint-knee = Knie
joint-waist = Taille
joint-chest = Brust
joint-left = { $joint } links
joint-right = { $joint } rechts
reading-torque-at = { $torque }, { $joint }
reading-torque-peaks = { $closing } / { $opening } { $unit }
reading-torque-peaks-about = Größtes Nettomoment beim Schließen ({ $closing_joint }, { $closing_time }), dann beim Öffnen ({ $opening_joint }, { $opening_time }). Das bringen Muskeln, Bänder und Knochen zusammen auf. Es ist nicht die Kraft eines Muskels.
reading-torque-closing-peak-n-m = Größtes, Schließen
reading-torque-closing-peak-n-m-about = Das größte Nettomoment aller dieser Gelenke vom Absprung bis zum Beginn des Öffnens. Das bringen Muskeln, Bänder und Knochen zusammen auf. Es ist nicht die Kraft eines Muskels.
reading-torque-opening-peak-n-m = Größtes, Öffnen
reading-torque-opening-peak-n-m-about = Dasselbe vom Beginn des Öffnens bis zum Aufkommen. Die Landung selbst steckt nicht darin.
reading-joint-power-peak-w = Leistung, größte
reading-joint-power-peak-w-about = Nettomoment mal Winkelgeschwindigkeit des Gelenks, alle Gelenke zusammen, in dem Augenblick, in dem die Muskeln am stärksten gegen die Drehung arbeiten.
reading-joint-power-least-w = Leistung, kleinste
reading-joint-power-least-w-about = Dasselbe in dem Augenblick, in dem die Drehung den Körper am stärksten öffnet. Unter null bremsen die Muskeln und nehmen Energie heraus.
reading-tilt-now-rad = Neigung jetzt
reading-tilt-now-rad-about = Winkel zwischen der Längsachse des Körpers und der Senkrechten, im gezeigten Augenblick.
reading-tilt-peak-rad = Größte Neigung
reading-tilt-peak-rad-about = Ein geneigter Körper taumelt um die Senkrechte und dreht sich langsamer.
reading-tilt-touchdown-rad = Neigung beim Aufkommen
reading-tilt-touchdown-rad-about = Wie weit der Körper beim Aufkommen von der Senkrechten abweicht.
reading-landing-load-bw = Landebelastung, Schätzung
reading-landing-load-bw-value = { $low } bis { $high } Körpergewichte
reading-landing-load-bw-about = Eine Schätzung, keine Messung, der größten Kraft, wenn der Fall in { $from } bis { $to } s durch einen Stoß in Form einer halben Sinuswelle gebremst wird (angenommen). Eine unbedenkliche Zahl von Sprüngen ist nicht bekannt. Was zu viel ist, sagen Trainerin oder Trainer und Ärztin oder Arzt.
reading-landing-angular-momentum-kg-m2-s = Noch zu bremsende Drehung
reading-landing-angular-momentum-kg-m2-s-about = Drehimpuls um die Senkrechte beim Aufkommen. Er ist so groß wie beim Absprung. Die Landung muss ihn abfangen, und dazu den Fall.
reading-landing-torque-n-m = Bremsmoment, Schätzung
reading-landing-torque-n-m-about = Eine Schätzung, keine Messung: das mittlere Drehmoment, das die Drehung in derselben Zeit anhielte wie den Fall, in { $from } bis { $to } s (angenommen). Beim Eislaufen ist es kleiner, weil ein Teil der Drehung in der Auslaufkante weitergeht (übliche Praxis, ohne Quelle).

from-to = { $from } bis { $to }
in-turns = { $turns } Drehungen
either-or = { $first } oder { $last }

## Fehlende Drehung und die Wertung.

shortfall-short = es fehlen { $degrees }°
shortfall-too-far = { $degrees }° zu weit
shortfall-none = es fehlt nichts
shortfall-both-short = es fehlen { $from }° bis { $to }°
shortfall-both-too-far = { $from }° bis { $to }° zu weit
shortfall-either = { $from }° zu weit bis { $to }° zu wenig
call-may-be = vielleicht { $calls }
# Wo die anderen ihr Zeichen haben.
call-full-in-short = voll
call-over-rotated-in-short = zu weit
call-none = dafür keine Wertung
call-none-over-rotated = überrotiert, dafür keine Wertung
call-none-may-be-over-rotated = vielleicht überrotiert, dafür keine Wertung
call-over-rotated = überrotiert
call-full = voll gedreht
call-full-let-pass = gilt unter { $from }° als voll
call-full-let-pass-in-short = unter { $from }° voll
call-quarter = auf dem Viertel (q)
call-under = unterrotiert (<)
call-downgraded = herabgestuft (<<)
over-rotated = { $degrees }°
over-rotated-whole-turns = { $turns ->
    [one] { $degrees }°, eine ganze Drehung mehr
   *[other] { $degrees }°, { $turns } ganze Drehungen mehr
}
# Wohin eine Landung zeigt.
facing-as-owed = richtig herum, { $degrees }°
facing-sideways = zur Seite, { $degrees }°
facing-opposite = falsch herum, { $degrees }°

## Wie die Phase des Flugs heißt, allein und im Satz über das Bild.

phase-on-the-ground = noch am Boden
phase-landed = gelandet
phase-opening = beim Öffnen
phase-still-open = noch offen
phase-closing = beim Schließen
phase-held-tight = eng gehalten

## Das Ergebnis und das Bild in einem Satz, zum Vorlesen.

summary-of-named = { $turns } Drehungen von { $owed }: { $missing }, { $call }.
summary-of-over-rotated = { $turns } Drehungen von { $owed }: überrotiert um { $over }; die Landung zeigt { $facing }.
summary-of-free = { $turns } Drehungen.

## Was jenseits dessen ist, was bei Menschen gesehen wurde.

beyond-seen = Jenseits des Gesehenen: { $what }
beyond-seen-sentence = Jenseits dessen, was gesehen wurde: { $what }.
beyond-seen-with-it = Damit ist der Sprung jenseits dessen, was gesehen wurde: { $what }.
beyond-seen-up-to = Bei Menschen gesehen: { $what } bis { $limit }. { $source }
beyond-seen-meaning = Die Mechanik stimmt trotzdem. Ob es ein Mensch kann, ist eine andere Frage.
beyond-seen-in-short = jenseits des Gesehenen
respect-value = { $what } { $value }
respect-peak-rate = höchste Drehrate
respect-jump-height = Sprunghöhe
respect-closing = { $joint } beim Schließen
respect-opening = { $joint } beim Öffnen
strength-spine = Wirbelsäule
strength-meaning = Das sind Nettodrehmomente: was Muskeln, Bänder und Knochen zusammen geben, je Kilogramm Körpermasse. Maschinen messen ein Gelenk für sich, in seiner stärksten Richtung. Gegen einen Zug gehalten wurde bis zum 1,4-Fachen gemessen. Das ist hier eingerechnet. Glieder, die einander halten, wie gekreuzte Beine und verschränkte Hände, nehmen einen Teil davon ab. Das zählt hier nicht mit.
reading-beyond-seen = Jenseits des Gesehenen

picture = Die Figur, { $phase }, { $time } nach dem Absprung, bisher { $turns } Drehungen.

## Was eine unsichere Eingabe allein an den Drehungen ausmacht.

range-by-jump-height = Durch die Sprunghöhe
range-by-takeoff-rate = Durch die Drehrate
range-by-close-time = Durch die Schließzeit
range-by-inertia-ratio = Durch die Trägheit, offen zu eng
range-by-about = { $what } ± { $half_width }: wie viel das allein an den Drehungen ändert. { $source }
range-change = ± { $turns } Drehungen

## Warum.

why-ideal = Die meisten Drehungen, die dieser Absprung geben könnte: vom Absprung bis zum Aufkommen so eng, wie es dieser Körper kann, aufrecht, mit demselben Drehimpuls und derselben Zeit in der Luft.
why-ice = Gedreht, solange der Fuß noch auf dem Untergrund stand. Es zählt zum Sprung.
why-turns = Das Ideal, weniger das, was verloren ging, und dazu, was vor dem Absprung gedreht wurde.
why-order = Die Ursachen werden nacheinander weggenommen, von oben nach unten. In einer anderen Reihenfolge wären die Teile etwas anders. Die Summe wäre dieselbe.
why-back = Blass: Weiter geht es hier nicht. Gezeigt ist, was ein Schritt zurück bewirken würde.
why-not-possible = nicht möglich
why-no-part = von Hand geführt
why-closing-about = Bis Arme und Beine angelegt sind, dreht sich der Körper langsamer. Hier waren sie { $time } s nach dem Absprung angelegt.
why-tightness-about = Was weit von der Achse weg bleibt, macht die Drehung langsamer. Hier kamen die Arme { $arms } % und die Beine { $legs } % ihres Weges heran.
why-opening-about = Das Öffnen für die Landung macht die Drehung wieder langsamer. Hier begann es { $time } s vor dem Aufkommen.
why-tilt-about = Ist der Körper geneigt oder kommt ein Arm zu spät oder bleibt draußen, dann taumelt der Körper. Hier war er um bis zu { $tilt } Grad geneigt.
why-owed-all-there = Nötige Drehungen: { $owed }, alle da
why-owed-missing = Nötige Drehungen: { $owed }, es fehlen { $turns }
why-owed-more = Nötige Drehungen: { $owed }, { $turns } mehr gedreht
why-owed-over-rotated = Nötige Drehungen: { $owed }, überrotiert, { $turns } mehr gedreht
why-back-wins = zurück bringt { $turns }
why-back-costs = zurück kostet { $turns }
why-loads = Landebelastung, eine Schätzung, in Körpergewichten: jetzt { $now }; { $then }.
why-load-then = { $what }: { $load }
why-load-with-it = damit
why-line-sentence = Was am meisten kostete
why-line-sentence-about = Der größte Verlust, und eine Änderung, die ihn kleiner machen würde.
why-line-ideal = Bestenfalls
why-line-closing = Beim Schließen verloren
why-line-tightness = Verloren, weil es nicht enger wurde
why-line-opening = Beim Öffnen verloren
why-line-tilt = Durch Neigung und Ungleichheit verloren
why-line-owed = Verglichen mit den nötigen Drehungen
why-line-owed-about = Die nötigen Drehungen und die Drehungen insgesamt.
why-line-gain-about = Drehungen, die dieser kleine Schritt bringt, alles andere wie jetzt.
why-line-caution = Bitte beachten
why-line-caution-about = Was man wissen muss, bevor man es versucht.
why-beyond-seen = Jenseits dessen, was gesehen wurde: { $what } { $value }. { $source }
why-gain-beyond-seen = { $gain }. { $beyond }

## Ziel

goal-season = Wie viel das Training einer Saison an jedem davon ändern mag. Damit werden sie gegeneinander abgewogen. Unsere Annahme (übliche Praxis, ohne Quelle).
goal-limits = Wie wenig und wie viel diese Person kann. Solange nichts eingestellt ist, gilt die Änderung einer Saison von jetzt an.
goal-verdict-already = ist schon jetzt da
goal-verdict-within-reach = für diese Person erreichbar
goal-verdict-within-measured = bei Menschen gesehen
goal-verdict-at-edge = an der Grenze des bei Menschen Gemessenen
goal-verdict-not-known = für diese Körpergröße nicht bekannt
goal-verdict-beyond-measured = mehr als je bei Menschen gesehen
goal-verdict-cannot-alone = reicht allein nicht
goal-verdict-no-part = von Hand geführt
goal-size-not-known = nicht bekannt: was Menschen dieser Größe hier können
goal-has-target = Dieser Sprung hat { $turns } Drehungen. Gewünscht sind { $target }: Sie sind da.
goal-has-target-over-rotated = Dieser Sprung hat { $turns } Drehungen. Gewünscht sind { $target }: Sie sind da, aber er ist um { $degrees }° überrotiert.
goal-question = Gewünscht sind { $target } Drehungen, { $missing } mehr als jetzt. Was würde sie bringen?
goal-and-beyond = { $said } { $beyond }
goal-and-let-pass = { $question } Als voll gilt er schon jetzt, denn die Regel lässt weniger als { $from }° durchgehen.
goal-most = höchstens { $turns } Drehungen, bei { $at }
goal-basis-jumper = Diese Person: { $what } { $range }. { $source }
goal-basis-seen = Bei Menschen gesehen: { $what } { $range }. { $source }
goal-basis-admissible = Einstellbar: { $what } { $range }. { $source }
goal-landing = Landebelastung, eine Schätzung: jetzt das { $low }- bis { $high }-Fache des Körpergewichts, dann das { $then_low }- bis { $then_high }-Fache.
goal-hang-time = { $from } auf { $to } in der Luft
goal-effort = Zusammen ist das die Arbeit von { $seasons } Saisons.
goal-effort-less = Zusammen ist das die Arbeit von { $seasons } Saisons. Die leichteste einzelne Änderung braucht { $single }.
goal-limit-unknown = nicht bekannt
goal-limit-season = { $range } (eine Saison)
goal-season-held = bleibt
goal-line-target = Gewünschte Drehungen
goal-line-combination = Mehreres zusammen

## Gewichte in den Händen, je nachdem, was gleich bleibt.

weights = Gewichte
weights-keeps-rate = Drehrate beim Absprung bleibt gleich
weights-keeps-energy = Drehenergie bleibt gleich
weights-keeps-momentum = Drehimpuls bleibt gleich
weights-turns = { $turns } Drehungen ({ $gain })
weights-more = { $mass } mehr in jeder Hand
weights-held = { $mass } in jeder Hand, verglichen mit leeren Händen:
weights-needed = { $mass } in jeder Hand
weights-cannot = reicht nicht: höchstens { $turns } Drehungen, bei { $at }
weights-no-technique = Gewichte sind keine Technik. Was sie bringen, hängt davon ab, was beim Absprung gleich bleibt.
reading-turns-keeping-rate = Gleiche Drehrate
reading-turns-keeping-energy = Gleiche Energie
reading-turns-keeping-momentum = Gleicher Drehimpuls
weights-known = Über Gewichte
weights-known-about = Was man bei Menschen beobachtet hat, und was man wissen muss, bevor man Gewichte versucht.

## Karte.

map-hands-keep-rate = Mit schwereren Händen bleibt hier die Drehrate beim Absprung gleich.
map-hands-keep-momentum = Mit schwereren Händen bleibt hier der Drehimpuls gleich.
map-hands-keep-energy = Mit schwereren Händen bleibt hier die Drehenergie gleich.
map-no-part = Dieser Sprung wurde von Hand geführt, und die Hand ersetzt eine Zahl auf dieser Karte. Entlang dieser Zahl sind die Drehungen gleich.
map-line-across = Quer
map-line-upwards = Aufwärts
map-span = { $what } von { $from } bis { $to }
map-line-here-about = Drehungen dieses Sprungs.
map-line-flown = Geflogen
map-line-flown-about = Die Punkte der Karte. Jeder ist ein eigener Flug.
map-all-flown = { $nodes } x { $nodes } geflogen
map-flown = { $flown } von { $nodes } geflogen
map-line-needed = Drehungen gleich { $turns }, alles andere wie jetzt
map-line-needed-about = Wo die Linie so vieler Drehungen an diesem Sprung vorbeiläuft.
map-and = { $one } und { $other }

## Vergleich.

compare-order = Die Eingaben werden nacheinander geändert, in dieser Reihenfolge. In einer anderen wären die Teile etwas anders. Die Summe ist der ganze Unterschied.
compare-line-sentence = Verglichen
compare-line-turns = Drehungen von beiden
compare-line-turns-about = Drehungen insgesamt, vom anderen Sprung und von diesem.
compare-line-beyond-seen = { $reference }: jenseits des Gesehenen
compare-turns = von { $from } auf { $to }: { $turns }
compare-difference = von { $from } auf { $to }: { $turns } Drehungen
compare-line-kept = Gemerkter Sprung { $number }
compare-line-kept-about = Ein Sprung, der auf diesem Gerät gemerkt ist.
compare-kept-came-to = { $name }: { $turns } Drehungen, { $call }
compare-kept-beyond-seen = { $said }, jenseits des Gesehenen
compare-as-opened = { $name }, wie geöffnet
compare-before-try = Vor der Änderung
compare-nothing-differs = Dieser Sprung und „{ $reference }“ sind gleich.
compare-as-much = Dieser Sprung dreht genauso viel wie „{ $reference }“
compare-more = Dieser Sprung dreht { $turns } mehr als „{ $reference }“
compare-less = Dieser Sprung dreht { $turns } weniger als „{ $reference }“
# $said ist einer der letzten drei.
compare-no-largest = { $said }.
compare-cancels = { $said }. Die Unterschiede heben sich auf. Der größte ist: { $what } ({ $turns }).
compare-all-by = { $said }. Das kommt alles davon: { $what }.
compare-most-by = { $said }. Das meiste kommt davon: { $what } ({ $turns }).
compare-largest = { $said }. Der größte Teil kommt davon: { $what } ({ $turns }).

## Was keine Zahl eines Sprungs ist: wie es heißt, allein und im Satz, und was es sein kann.

word-jump = Sprung
word-jump-inline = Sprung
word-jump-turns = Drehungen im Namen
word-jump-turns-inline = Drehungen im Namen
word-table = Massentabelle
word-table-inline = Massentabelle
word-table-female = weiblich
word-table-male = männlich
word-ground = Springt auf
word-ground-inline = Untergrund
word-ground-ice = Eis
word-ground-floor = Boden
word-ground-trampoline = Trampolin
word-turning = Dreht sich, von oben gesehen
word-turning-inline = Drehsinn
word-turning-anticlockwise = gegen den Uhrzeigersinn
word-turning-clockwise = im Uhrzeigersinn
word-hands-keep = Mit schwereren Händen bleibt gleich
word-hands-keep-inline = was mit schwereren Händen gleich bleibt
word-hands-keep-rate = Drehrate
word-hands-keep-momentum = Drehimpuls
word-hands-keep-energy = Energie
word-led = Arme und Beine
word-led-inline = wie sich Arme und Beine bewegen
word-led-by-hand = von Hand geführt
word-led-as-planned = wie geplant

## Was gesagt wird, wenn etwas nicht getan wurde.

not-opened = Nicht geöffnet: { $why }.
not-kept = Nicht gemerkt: { $why }.
not-renamed = Nicht umbenannt: { $why }.
not-noted = Nicht notiert: { $why }.
not-deleted = Nicht gelöscht: { $why }.
not-brought-back = Nicht zurückgeholt: { $why }.
last-visit-jump-only = Der Sprung des letzten Besuchs ist hier. Was sonst von ihm aufgehoben war, ließ sich nicht lesen.
last-visit-unreadable = Der letzte Besuch ließ sich nicht lesen. Hier ist der übliche Anfang.
changed-jump-kept = Der geänderte Sprung ist gemerkt: siehe „{ $name }“ unter Vergleich.
changed-jump-left = Weggelegt: „{ $name }“.
jump-kept = Auf diesem Gerät gemerkt als „{ $name }“.
collection-empty = In dieser Datei ist kein Sprung.
collection-added = { $jumps ->
    [one] Ein Sprung aus dieser Datei ist jetzt unter den gemerkten.
   *[other] { $jumps } Sprünge aus dieser Datei sind jetzt unter den gemerkten.
}
earlier-body = { $jumps ->
    [one] Dieser Sprung wurde mit einem früheren Körpermodell gespeichert. Seine Drehungen sind neu berechnet und können anders sein.
   *[other] Diese Sprünge wurden mit einem früheren Körpermodell gespeichert. Ihre Drehungen sind neu berechnet und können anders sein.
}
earlier-body-kept = Seit dem letzten Besuch ist das Körpermodell genauer geworden. Die Drehungen der Sprünge sind neu berechnet und können anders sein.

## Warum etwas mit den gemerkten Sprüngen nicht getan wurde, als Teil eines Satzes.

kept-no-name = Ein gemerkter Sprung braucht einen Namen; bitte einen geben
kept-long-name = Der Name eines Sprungs hat höchstens { $most } Zeichen; bitte kürzen
kept-too-many = Mehr als { $most } Sprünge werden nicht gemerkt; bitte als Datei speichern und dann einige löschen
kept-too-large = Ein gemerkter Sprung darf { $each } kB groß sein und alle zusammen { $all } MB; bitte Notizen kürzen oder einige löschen
kept-gone = Dieser Sprung ist nicht mehr gemerkt; bitte einen anderen wählen
kept-nothing-deleted = Seit die Seite geöffnet wurde, ist kein Sprung gelöscht worden

## Warum die Datei einer Sammlung nicht geöffnet wurde, als Teil eines Satzes.

collection-too-large = Diese Datei ist zu groß für eine Sammlung von Sprüngen; bitte eine öffnen, die Turns Aloft gespeichert hat
collection-not-json = Diese Datei ist keine Sammlung von Sprüngen oder eine beschädigte ({ $why }); bitte eine öffnen, die Turns Aloft gespeichert hat
collection-none = Diese Datei ist keine Sammlung von Sprüngen von Turns Aloft; bitte eine öffnen, die Turns Aloft gespeichert hat
collection-newer = Diese Sammlung hat die Version { $version }, und dieses Turns Aloft liest bis Version { $known }; zum Öffnen bitte Turns Aloft aktualisieren
collection-broken = Diese Sammlung ist beschädigt: { $why }; bitte noch einmal speichern oder diesen Eintrag verbessern
collection-jump = Sprung { $number } dieser Sammlung ({ $name }) kann nicht gemerkt werden: { $why }
collection-jump-unnamed = ohne Namen

## Warum sich nicht lesen ließ, was der Browser aufgehoben hat, als Teil eines Satzes.

kept-newer = Die Sprünge auf diesem Gerät hat ein neueres Turns Aloft gemerkt; zum Aktualisieren bitte seine Seite neu laden, sie sind noch da
kept-broken = Die auf diesem Gerät gemerkten Sprünge lassen sich nicht lesen ({ $why })
kept-too-long = mehr, als je gemerkt wurde
kept-no-version = sie haben keine bekannte Version
kept-too-often = mehr, als je gemerkt wurden
kept-odd-name = ein Name, der nie vergeben wurde
kept-twice = ein Sprung, der sich von einem anderen nicht unterscheiden lässt

## Was gesagt wird, wenn eine Zahl nicht sein kann.

number-needed = { $what }: hier braucht es eine Zahl; der Wert bleibt, wie er war.
number-held = { $what }: möglich ist { $least } bis { $most }; jetzt steht es auf { $held }.
number-likely = { $what } { $value } geht nicht, möglich ist { $least } bis { $most }: waren { $meant } gemeint? Der Wert bleibt, wie er war.
hang-time-set-about = Zeit in der Luft, vom Absprung, bis ein Fuß den Untergrund berührt. Eingetippt setzt sie die Sprunghöhe auf die, die mit diesem Körper und dieser Bewegung so lange in der Luft ist. Gefunden wird sie durch Flüge. Sie liegt nahe bei der Höhe eines so lange geworfenen Balls, aber nicht genau dort: Die Beine sind beim Aufkommen anders gebeugt als beim Absprung.
value-and-hang-time = { $value }, { $time } in der Luft
rate-with-weights = ohne Gewicht; mit Gewicht { $flown }
input-locked = Gesperrt, darum nicht geändert: { $what }.

# Was getan wurde, hinter „Rückgängig: “ und „Wiederherstellen: “.
change-several-inputs = mehrere Eingaben
change-name-or-note = Name oder Notiz
change-tried = ausprobierte Änderung
change-reset-all = alles zurückgesetzt
change-opened = geöffneter Sprung
change-reference = verglichener Sprung

## The jump of an attempt that was measured.

measured-by-watch = mit der Stoppuhr
# What a jump is called that was found from an attempt: the jump that it was meant to be, and the file that it was measured in.
measured-name = { $jump }, { $by }
fitted-input-about = Diesen Bereich lassen die Markierungen offen: 95 % dessen, was möglich ist, liegen darin. Das ist eine Schätzung.

## Tables for spreadsheets

table-saved = Als Tabelle für ein Rechenblatt gespeichert: Dezimalkomma, Spalten durch Strichpunkte getrennt.
table-time = Zeit
table-turns-at-landing = Drehungen bei der Landung
