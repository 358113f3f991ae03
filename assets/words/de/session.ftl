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
unit-n-m-per-kg = N m/kg
unit-w = W
unit-degrees = °

## Anzeigen: wie jede heißt und was sie bedeutet, nach ihrem veröffentlichten Schlüssel.

reading-turns = Drehungen insgesamt
reading-turns-about = Drehungen in der Luft und dazu, was schon auf dem Eis gedreht wurde.
reading-air-turns = Drehungen in der Luft
reading-air-turns-about = Wie weit sich die Hüfte vom Absprung bis zum Aufkommen um die Senkrechte gedreht hat.
reading-pre-rotation-turns = Auf dem Eis gedreht
reading-pre-rotation-turns-about = Vor dem Absprung gedreht; es zählt zum Sprung.
reading-turns-owed = Verlangte Drehungen
reading-turns-owed-about = Was der Name des Sprungs verlangt; ein Axel verlangt eine halbe Drehung mehr, weil er vorwärts abspringt.
reading-shortfall-deg = Fehlende Drehung
reading-shortfall-deg-about = Drehung, die beim Aufkommen noch fehlt, in Grad: 360 sind eine ganze Drehung.
reading-over-rotated-deg = Überrotiert um
reading-over-rotated-deg-about = Um mehr als eine Vierteldrehung weiter gedreht als verlangt (übliche Praxis, ohne Quelle: die veröffentlichte Regel des Sports kennt dafür keine Wertung).
reading-landing-facing-deg = Landung zeigt
reading-landing-facing-deg-about = Wohin die Hüfte beim Aufkommen zeigt, in Grad hinter (positiv) oder vor der Richtung, in die die Landung zeigen muss: bis 45° zeigt sie, wohin sie muss, ab 135° andersherum, dazwischen zur Seite; diese Grenzen sind unsere eigenen.
reading-call = Wertung
reading-call-about = Nach der Regel des Sports ist eine fehlende Vierteldrehung q, mehr als ein Viertel <, eine halbe oder mehr <<; die Regel gibt q nur den einen Wert 90°, und die Spanne hier, { $from }° bis 90°, ist unsere eigene. Für zu weit Gedrehtes kennt die Regel keine Wertung; mehr als eine Vierteldrehung zu weit heißt hier überrotiert (übliche Praxis, ohne Quelle).
reading-phase = Phase
reading-phase-about = Was der Körper im gezeigten Augenblick tut.
reading-hang-time-s = Flugzeit
reading-hang-time-s-about = Zeit vom Absprung bis zur ersten Berührung des Eises; gebeugte Beine bei der Landung verlängern sie.
reading-jump-height-m = Sprunghöhe
reading-jump-height-m-about = Wie weit der Schwerpunkt vom Absprung bis zum höchsten Punkt steigt.
reading-cm-height-now-m = Schwerpunkt jetzt
reading-cm-height-now-m-about = Höhe des Körperschwerpunkts über dem Eis im gezeigten Augenblick.
reading-rate-now-rad-s = Jetzt
reading-rate-now-rad-s-about = Wie schnell sich die Hüfte im gezeigten Augenblick um die Senkrechte dreht.
reading-takeoff-rate-rad-s = Beim Absprung
reading-takeoff-rate-rad-s-about = Wie schnell sich die Hüfte dreht, wenn der Fuß das Eis verlässt.
reading-peak-rate-rad-s = Höchste
reading-peak-rate-rad-s-about = Die schnellste des Flugs; die höchsten, die gesehen wurden, sind etwa 430 bis 440 U/min (übliche Praxis, ohne Quelle).
reading-mean-rate-rad-s = Mittlere
reading-mean-rate-rad-s-about = Drehungen in der Luft geteilt durch die Flugzeit: Die mittlere Drehrate, nicht die höchste, entscheidet, wie viele Drehungen es werden.
reading-touchdown-rate-rad-s = Beim Aufkommen
reading-touchdown-rate-rad-s-about = Was die Landung noch abfangen muss.
reading-inertia-now-kg-m2 = Jetzt
reading-inertia-now-kg-m2-about = Wie schwer sich der Körper um seine Achse drehen lässt: Masse weit draußen zählt mit dem Quadrat ihres Abstands.
reading-inertia-takeoff-kg-m2 = Beim Absprung
reading-inertia-takeoff-kg-m2-about = Offene Arme und das Spielbein machen es groß, wenn der Fuß das Eis verlässt.
reading-inertia-least-kg-m2 = Am engsten
reading-inertia-least-kg-m2-about = Das kleinste des Flugs; die Massentabellen dahinter beschreiben Erwachsene, für ein Kind ist es also eine Schätzung.
reading-angular-momentum-kg-m2-s = Drehimpuls
reading-angular-momentum-kg-m2-s-about = Steht fest, wenn der Fuß das Eis verlässt, und bleibt im ganzen Flug gleich, denn in der Luft kann nichts den Körper drehen als die Luft selbst; sie nähme geschätzt 0,1 bis 1 % weg und ist weggelassen.
reading-energy-now-j = Energie jetzt
reading-energy-now-j-about = Energie der Drehung, mit Armen und Beinen, im gezeigten Augenblick.
reading-energy-takeoff-j = Energie beim Absprung
reading-energy-takeoff-j-about = Energie der Drehung, wenn der Fuß das Eis verlässt.
reading-closing-work-j = Arbeit beim Schließen
reading-closing-work-j-about = Was die Gelenke vom Absprung bis zum Beginn des Öffnens unterm Strich leisten: die Arbeit der Muskeln, die Arme und Beine gegen die Drehung heranziehen und sie damit schneller machen.
reading-opening-work-j = Arbeit beim Öffnen
reading-opening-work-j-about = Was die Gelenke von da bis zum Aufkommen unterm Strich leisten: negativ, wo der Körper sich Arme und Beine von der Drehung nach außen drücken lässt, positiv, wo er sie hinauswirft; was sie wieder abbremst, zählt dagegen.
reading-energy-touchdown-j = Energie beim Aufkommen
reading-energy-touchdown-j-about = Energie der Drehung, mit Armen und Beinen, wenn der Fuß auf das Eis trifft: die vom Absprung, dazu die Arbeit beim Schließen und beim Öffnen.
reading-hand-force-left-now-n = Links jetzt
reading-hand-force-right-now-n = Rechts jetzt
reading-hand-force-now-about = Kraft des Unterarms auf diese Hand samt dem, was sie hält: Sie hält die Hand auf ihrem Kreis und schwingt sie nach innen und außen.
reading-hand-force-peak-n = Größte
reading-hand-force-peak-n-about = Die größere von beiden Händen im ganzen Flug; schnelles Schließen und schnelles Drehen lassen sie wachsen.
reading-hand-force-peak-n-about-rate = Die größere von beiden Händen im ganzen Flug; schnelles Schließen und schnelles Drehen lassen sie wachsen; die schwereren Hände behalten hier die Drehrate beim Absprung.
reading-hand-force-peak-n-about-momentum = Die größere von beiden Händen im ganzen Flug; schnelles Schließen und schnelles Drehen lassen sie wachsen; die schwereren Hände behalten hier den Drehimpuls.
reading-hand-force-peak-n-about-energy = Die größere von beiden Händen im ganzen Flug; schnelles Schließen und schnelles Drehen lassen sie wachsen; die schwereren Hände behalten hier die Energie des Absprungs.
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
reading-torque-peaks-about = Größtes Nettomoment beim Schließen ({ $closing_joint }, { $closing_time }), dann beim Öffnen ({ $opening_joint }, { $opening_time }): was Muskeln, Bänder und Knochen zusammen aufbringen, nicht die Kraft eines Muskels.
reading-torque-closing-peak-n-m = Größtes, Schließen
reading-torque-closing-peak-n-m-about = Das größte Nettomoment aller dieser Gelenke vom Absprung bis zum Beginn des Öffnens: was Muskeln, Bänder und Knochen zusammen aufbringen, nicht die Kraft eines Muskels.
reading-torque-opening-peak-n-m = Größtes, Öffnen
reading-torque-opening-peak-n-m-about = Dasselbe vom Beginn des Öffnens bis zum Aufsetzen; wie der Körper auf dem Eis ankommt, steckt nicht darin.
reading-joint-power-peak-w = Leistung, größte
reading-joint-power-peak-w-about = Nettomoment mal Winkelgeschwindigkeit des Gelenks, alle Gelenke zusammen, dort, wo sich die Muskeln am stärksten gegen die Drehung verkürzen.
reading-joint-power-least-w = Leistung, kleinste
reading-joint-power-least-w-about = Dasselbe dort, wo die Drehung den Körper am stärksten öffnet: Unter null geben die Muskeln nach und nehmen Energie heraus.
reading-tilt-now-rad = Neigung jetzt
reading-tilt-now-rad-about = Winkel zwischen der Längsachse des Körpers und der Senkrechten im gezeigten Augenblick.
reading-tilt-peak-rad = Größte Neigung
reading-tilt-peak-rad-about = Ein geneigter Körper taumelt um den aufrechten Drehimpuls und dreht sich langsamer.
reading-tilt-touchdown-rad = Neigung beim Aufkommen
reading-tilt-touchdown-rad-about = Wie schief der Körper herunterkommt.
reading-landing-load-bw = Landebelastung, Schätzung
reading-landing-load-bw-value = { $low } bis { $high } Körpergewichte
reading-landing-load-bw-about = Eine Schätzung, keine Messung, der größten Kraft, wenn ein Stoß in Form einer halben Sinuswelle den Fall in { $from } bis { $to } s bremst (angenommen); eine unbedenkliche Zahl von Sprüngen ist nicht bekannt, und was zu viel ist, sagen Trainerin oder Trainer und Ärztin oder Arzt.
reading-landing-angular-momentum-kg-m2-s = Noch zu bremsende Drehung
reading-landing-angular-momentum-kg-m2-s-about = Drehimpuls um die Senkrechte, wenn der Fuß auf das Eis trifft, noch der ganze vom Absprung: was die Landung außer dem Fall auffangen muss, bei der Drehrate beim Aufkommen.
reading-landing-torque-n-m = Bremsmoment, Schätzung
reading-landing-torque-n-m-about = Eine Schätzung, keine Messung: das mittlere Drehmoment, das die Drehung in derselben Zeit anhielte wie den Fall, in { $from } bis { $to } s (angenommen); beim Eislaufen ist es kleiner, weil ein Teil der Drehung in der Auslaufkante weitergeht (übliche Praxis, ohne Quelle).

from-to = { $from } bis { $to }
in-turns = { $turns } Drehungen
either-or = { $first } oder { $last }

## Fehlende Drehung und die Wertung.

shortfall-short = es fehlen { $degrees }°
shortfall-too-far = { $degrees }° zu weit
shortfall-both-short = es fehlen { $from }° bis { $to }°
shortfall-both-too-far = { $from }° bis { $to }° zu weit
shortfall-either = { $from }° zu weit bis { $to }° zu wenig
call-may-be = vielleicht { $calls }
# Wo die anderen ihr Zeichen haben.
call-full-in-short = voll
call-over-rotated-in-short = zu weit
call-none = ohne Wertung
call-none-over-rotated = überrotiert, ohne Wertung
call-none-may-be-over-rotated = vielleicht überrotiert, ohne Wertung
call-over-rotated = überrotiert
call-full = voll gedreht
call-quarter = auf dem Viertel (q)
call-under = unterrotiert (<)
call-downgraded = herabgestuft (<<)
over-rotated = { $degrees }°
over-rotated-whole-turns = { $turns ->
    [one] { $degrees }°, eine ganze Drehung mehr
   *[other] { $degrees }°, { $turns } ganze Drehungen mehr
}
# Wohin eine Landung zeigt.
facing-as-owed = wohin sie muss, { $degrees }°
facing-sideways = zur Seite, { $degrees }°
facing-opposite = andersherum, { $degrees }°

## Wie die Phase des Flugs heißt, allein und im Satz über das Bild.

phase-on-the-ice = auf dem Eis
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
beyond-seen-meaning = Die Mechanik stimmt trotzdem; ob es jemand kann, ist eine andere Frage.
beyond-seen-in-short = jenseits des Gesehenen
respect-value = { $what } { $value }
respect-peak-rate = höchste Drehrate
respect-jump-height = Sprunghöhe
respect-closing = { $joint } beim Schließen
respect-opening = { $joint } beim Öffnen
strength-spine = Wirbelsäule
strength-meaning = Das sind Nettodrehmomente, was Muskeln, Bänder und Knochen zusammen geben, je Kilogramm Körpermasse. Maschinen messen ein Gelenk für sich, in seiner stärksten Richtung; gegen einen Zug gehalten wurde bis zum 1,4-Fachen gemessen, und das ist hier eingerechnet. Glieder, die einander halten, wie gekreuzte Beine und verschränkte Hände, nehmen einen Teil davon ab, der hier nicht mitzählt.
reading-beyond-seen = Jenseits des Gesehenen

picture = Der Springer, { $phase }, { $time } nach dem Absprung, bisher { $turns } Drehungen.

## Was eine unsichere Eingabe allein an den Drehungen ausmacht.

range-by-jump-height = Durch die Sprunghöhe
range-by-takeoff-rate = Durch die Drehrate
range-by-close-time = Durch die Schließzeit
range-by-inertia-ratio = Durch die Trägheit, offen zu eng
range-by-about = { $what } ± { $half_width }: was das allein an den Drehungen ausmacht. { $source }
range-change = ± { $turns } Drehungen

## Warum.

why-ideal = Was dieser Absprung hergeben könnte: vom ersten Augenblick bis zum Aufkommen so eng, wie es dieser Körper kann, aufrecht, mit demselben Drehimpuls und derselben Zeit in der Luft.
why-ice = Vor dem Absprung auf dem Eis gedreht; es zählt zum Sprung.
why-turns = Das Ideal, weniger das, was verloren ging, und dazu, was auf dem Eis gedreht wurde.
why-order = Die Ursachen werden nacheinander weggenommen, von oben nach unten. Eine andere Reihenfolge würde dasselbe Ganze etwas anders aufteilen.
why-back = Blass: weiter als hier geht es nicht; was ein Schritt zurück bewirken würde.
why-not-possible = nicht möglich
why-closing-about = Bis Arme und Beine angelegt sind, dreht sich der Körper langsamer; hier waren sie { $time } s nach dem Absprung angelegt.
why-tightness-about = Was weit von der Achse weg bleibt, bremst die Drehung; hier kamen die Arme { $arms } % und die Beine { $legs } % ihres Weges heran.
why-opening-about = Das Öffnen für die Landung bremst die Drehung wieder; hier begann es { $time } s vor dem Aufkommen.
why-tilt-about = Eine geneigte Achse oder ein Arm, der zu spät kommt oder draußen bleibt, lässt den Körper taumeln; hier war sie um bis zu { $tilt } Grad geneigt.
why-owed-all-there = Verlangte Drehungen: { $owed }, alle da
why-owed-missing = Verlangte Drehungen: { $owed }, es fehlen { $turns }
why-owed-more = Verlangte Drehungen: { $owed }, { $turns } mehr gedreht
why-owed-over-rotated = Verlangte Drehungen: { $owed }, überrotiert, { $turns } mehr gedreht
why-back-wins = zurück bringt { $turns }
why-back-costs = zurück kostet { $turns }
why-loads = Landebelastung, eine Schätzung, in Körpergewichten: jetzt { $now }; { $then }.
why-load-then = { $what }: { $load }
why-load-with-it = damit
why-line-sentence = Was am meisten kostete
why-line-sentence-about = Der größte Verlust, und die eine Änderung, die dagegen zu versuchen ist.
why-line-ideal = Ideal
why-line-closing = Beim Schließen verloren
why-line-tightness = Verloren, weil es nicht enger wurde
why-line-opening = Beim Öffnen verloren
why-line-tilt = Durch Neigung und Ungleichheit verloren
why-line-owed = Gegenüber dem Verlangten
why-line-owed-about = Die verlangten Drehungen neben den Drehungen insgesamt.
why-line-gain-about = Drehungen, die dieser kleine Schritt allein bringt.
why-line-caution = Vorsicht
why-line-caution-about = Was man wissen muss, bevor man es versucht.
why-beyond-seen = Jenseits dessen, was gesehen wurde: { $what } { $value }. { $source }
why-gain-beyond-seen = { $gain }. { $beyond }

## Gewinn.

goal-season = Was das Training einer Saison an jedem Hebel bringen könnte, um sie gegeneinander abzuwägen: unsere Annahme, übliche Praxis, ohne Quelle.
goal-limits = Was der Springer erreichen kann, vom Kleinsten bis zum Größten. Solange nichts eingestellt ist, gilt die Änderung einer Saison von jetzt an.
goal-verdict-already = hat sie schon jetzt
goal-verdict-within-reach = kann der Springer erreichen
goal-verdict-within-measured = bei Menschen schon gesehen
goal-verdict-at-edge = am Rand des Gemessenen
goal-verdict-not-known = für diese Körpergröße nicht bekannt
goal-verdict-beyond-measured = jenseits von allem, was gesehen wurde
goal-verdict-cannot-alone = reicht allein nicht
goal-size-not-known = was Springer dieser Größe hier können, ist nicht bekannt
goal-has-target = Dieser Sprung hat { $turns } Drehungen: die gewünschten { $target } sind da.
goal-has-target-over-rotated = Dieser Sprung hat { $turns } Drehungen: die gewünschten { $target } sind da, aber er ist um { $degrees }° überrotiert.
goal-question = { $target } Drehungen gewünscht, { $missing } mehr als jetzt. Was würde sie bringen?
goal-most = höchstens { $turns } Drehungen, bei { $at }
goal-basis-jumper = Dieser Springer: { $what } { $range }. { $source }
goal-basis-seen = Bei Menschen gesehen: { $what } { $range }. { $source }
goal-basis-admissible = Einstellbar: { $what } { $range }. { $source }
goal-landing = Landebelastung, eine Schätzung: jetzt das { $low }- bis { $high }-Fache des Körpergewichts, dann das { $then_low }- bis { $then_high }-Fache.
goal-effort = Zusammen die Arbeit von { $seasons } Saisons.
goal-effort-less = Zusammen die Arbeit von { $seasons } Saisons; der leichteste Hebel allein braucht { $single }.
goal-limit-unknown = nicht bekannt
goal-limit-season = { $range } (eine Saison)
goal-season-held = bleibt
goal-line-target = Gewünschte Drehungen
goal-line-combination = Mehreres zusammen

## Gewichte in den Händen, je nachdem, was der Springer behält.

weights = Gewichte
weights-keeps-rate = behält die Drehrate beim Absprung
weights-keeps-energy = behält die Drehenergie
weights-keeps-momentum = behält den Drehimpuls
weights-turns = { $turns } Drehungen ({ $gain })
weights-more = { $mass } mehr in jeder Hand
weights-held = { $mass } in jeder Hand, gegen leere Hände:
weights-needed = { $mass } in jeder Hand
weights-cannot = reicht nicht: höchstens { $turns } Drehungen, bei { $at }
weights-no-technique = Gewichte sind keine Technik: Was sie brächten, hängt an der Annahme, was der Springer behält.
reading-turns-keeping-rate = Drehrate behalten
reading-turns-keeping-energy = Energie behalten
reading-turns-keeping-momentum = Drehimpuls behalten
weights-known = Was zu Gewichten zu wissen ist
weights-known-about = Was man bei Menschen beobachtet hat, und was man wissen muss, bevor man Gewichte versucht.

## Karte.

map-hands-keep-rate = Hier wird angenommen, dass der Springer mit schwereren Händen die Drehrate beim Absprung behält.
map-hands-keep-momentum = Hier wird angenommen, dass der Springer mit schwereren Händen den Drehimpuls behält.
map-hands-keep-energy = Hier wird angenommen, dass der Springer mit schwereren Händen die Drehenergie behält.
map-line-across = Quer
map-line-upwards = Aufwärts
map-span = { $what } von { $from } bis { $to }
map-line-here-about = Drehungen des jetzigen Sprungs.
map-line-flown = Geflogen
map-line-flown-about = Die Knoten der Karte, jeder ein eigener Flug.
map-all-flown = { $nodes } x { $nodes } geflogen
map-flown = { $flown } von { $nodes } geflogen
map-line-needed = Drehungen gleich { $turns }, alles andere wie jetzt
map-line-needed-about = Wo die Linie so vieler Drehungen am jetzigen Sprung vorbeiläuft.
map-and = { $one } und { $other }

## Vergleich.

compare-order = Eines nach dem anderen geändert, in dieser Reihenfolge: Was jedes wert ist, hängt von ihr ab. Zusammen sind sie der ganze Unterschied.
compare-line-sentence = Verglichen
compare-line-turns = Drehungen von beiden
compare-line-turns-about = Drehungen insgesamt des Versuchs daneben und des jetzigen.
compare-line-beyond-seen = { $reference }: jenseits des Gesehenen
compare-turns = von { $from } auf { $to }: { $turns }
compare-difference = von { $from } auf { $to }: { $turns } Drehungen
compare-line-kept = Gemerkter Sprung { $number }
compare-line-kept-about = Ein Sprung, der auf diesem Gerät gemerkt ist.
compare-kept-came-to = { $name }: { $turns } Drehungen, { $call }
compare-kept-beyond-seen = { $said }, jenseits des Gesehenen
compare-as-opened = { $name }, wie geöffnet
compare-before-try = Vor der Änderung
compare-nothing-differs = Dieser Sprung und „{ $reference }“ sind gleich: Nichts unterscheidet sie.
compare-as-much = Dieser Sprung dreht genauso viel wie „{ $reference }“
compare-more = Dieser Sprung dreht { $turns } mehr als „{ $reference }“
compare-less = Dieser Sprung dreht { $turns } weniger als „{ $reference }“
# $said ist einer der letzten drei.
compare-no-largest = { $said }.
compare-cancels = { $said }; die Unterschiede heben sich auf, der größte: { $what } ({ $turns }).
compare-all-by = { $said }, alles davon durch: { $what }.
compare-most-by = { $said }; das meiste davon durch: { $what } ({ $turns }).
compare-largest = { $said }; der größte Teil: { $what } ({ $turns }).

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
word-hands-keep = Schwerere Hände behalten
word-hands-keep-inline = was schwerere Hände behalten
word-hands-keep-rate = Drehrate
word-hands-keep-momentum = Drehimpuls
word-hands-keep-energy = Energie

## Was gesagt wird, wenn etwas nicht getan wurde.

not-opened = Nicht geöffnet: { $why }.
not-kept = Nicht gemerkt: { $why }.
not-renamed = Nicht umbenannt: { $why }.
not-noted = Nicht notiert: { $why }.
not-deleted = Nicht gelöscht: { $why }.
not-brought-back = Nicht zurückgeholt: { $why }.
last-visit-jump-only = Der Sprung des letzten Besuchs ist hier; was sonst aufgehoben war, ließ sich nicht lesen.
last-visit-unreadable = Was vom letzten Besuch aufgehoben war, ließ sich nicht lesen; hier ist der übliche Anfang.
changed-jump-kept = Der geänderte Sprung ist gemerkt: siehe „{ $name }“ unter Vergleich.
changed-jump-left = Weggelegt: „{ $name }“.
jump-kept = Auf diesem Gerät gemerkt als „{ $name }“.
collection-empty = In dieser Datei ist kein Sprung.
collection-added = { $jumps ->
    [one] Ein Sprung aus dieser Datei ist jetzt unter den gemerkten.
   *[other] { $jumps } Sprünge aus dieser Datei sind jetzt unter den gemerkten.
}
earlier-body = { $jumps ->
    [one] Dieser Sprung wurde gespeichert, bevor das Körpermodell genauer wurde: Seine Drehungen sind neu berechnet und können von den früheren abweichen.
   *[other] Diese Sprünge wurden gespeichert, bevor das Körpermodell genauer wurde: Ihre Drehungen sind neu berechnet und können von den früheren abweichen.
}
earlier-body-kept = Seit dem letzten Besuch ist das Körpermodell genauer geworden: Die Drehungen der Sprünge sind neu berechnet und können von den früheren abweichen.

## Warum etwas mit den gemerkten Sprüngen nicht getan wurde, als Teil eines Satzes.

kept-no-name = Ein gemerkter Sprung braucht einen Namen; bitte einen geben
kept-long-name = Der Name eines Sprungs hat höchstens { $most } Zeichen; bitte kürzen
kept-too-many = Mehr als { $most } Sprünge werden nicht gemerkt; bitte als Datei speichern und dann einige löschen
kept-too-large = Ein gemerkter Sprung darf { $each } kB groß sein und alle zusammen { $all } MB; bitte Notizen kürzen oder einige löschen
kept-gone = Dieser Sprung ist nicht mehr gemerkt; bitte einen anderen wählen
kept-nothing-deleted = Seit die Seite geöffnet wurde, ist kein Sprung gelöscht worden, der sich zurückholen ließe

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
input-locked = Gesperrt, darum nicht geändert: { $what }.

# Was getan wurde, hinter „Rückgängig: “ und „Wiederherstellen: “.
change-several-inputs = mehrere Eingaben
change-name-or-note = Name oder Notiz
change-tried = ausprobierte Änderung
change-reset-all = alles zurückgestellt
change-opened = geöffneter Sprung
change-reference = verglichener Sprung
