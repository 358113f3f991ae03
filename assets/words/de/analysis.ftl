### Fragen, die mit vielen Flügen beantwortet werden: wohin die Drehungen gingen, was ein Schritt bringt, wie weit ein Hebel reicht.

## Was neben einem Vorschlag stehen muss, der jemandem schaden kann.

caution-no-safe-number = Eine unbedenkliche Zahl von Sprüngen ist nicht bekannt. Die meisten Verletzungen im Einzellauf kommen von Überlastung.
caution-adults = Die Massentabellen beschreiben Erwachsene: Für ein Kind ist das eine Schätzung.
caution-hands = Gewichte in den Händen sind ein physikalisches Experiment oder eine Trainingshilfe unter Aufsicht. Die Regeln des Sports verbieten sie im Wettkampf.
caution-later = Wer später öffnet, hat weniger Zeit, sich auf die Landung vorzubereiten, und muss mehr Drehung abfangen (übliche Praxis, ohne Quelle). Die Landebelastung hier rechnet nur den Fall.
caution-ask = Wie oft, wie hoch und ob mit Gewichten: Das entscheiden Trainerin oder Trainer, die Regeln des Sports und zugelassene Ärztinnen und Ärzte.

## Was man bei Menschen mit Gewichten beobachtet hat.

weights-observed = Beobachtet wurde: Dreizehn Läuferinnen und Läufer trainierten eine Woche lang mit Gewichtshandschuhen. Mit den Handschuhen hielten sie die Handgelenke danach 13,6 % und 12,1 % weiter von der Achse als in den beiden Reihen von Sprüngen, mit denen verglichen wurde. Bei Sprüngen, die sie schon gut konnten, hob das die Wirkung der Handschuhe auf. Ohne die Handschuhe fand sich nach dieser Woche keine Änderung (Ridge et al. 2022, Sports Biomechanics, Kurzfassung). Die Drehungen hier lassen die Arme, wo sie sind. Menschen tun das nicht.

## Was ein kleiner Schritt an jedem Hebel ist.

step-jump-height-m = { $step } höher
step-takeoff-rate-rad-s = { $step } schneller beim Absprung
step-arm-tuck = Hände { $step } näher an der Achse
step-leg-tuck = Beine { $step } enger
step-close-delay-s = Schließen beginnt { $step } früher
step-close-time-s = Schließen dauert { $step } kürzer
step-open-lead-s = Öffnen beginnt { $step } später

## Wodurch ein Sprung Drehungen verlieren kann.

cause-closing = Schließen
cause-tightness = Enge
cause-opening = Öffnen
cause-tilt = Neigung und Ungleichheit

## Der größte Verlust, und was eine Änderung daran ändern würde.

why-nothing-lost = In der Luft hat nichts einen großen Teil der Drehungen gekostet.
why-closing-cost = Das Schließen kostete { $turns } Drehungen
why-tightness-cost = Dass es nicht enger wurde, kostete { $turns } Drehungen
why-opening-cost = Das Öffnen kostete { $turns } Drehungen
why-tilt-cost = Neigung und Ungleichheit kosteten { $turns } Drehungen
# Where the jump has all turns that its name owes; no change is told of then.
why-all-there = Alle Drehungen sind da. { $cost }.
why-cost-and-change = { $cost }: { $change }
why-cost-at-best = { $cost }, eine bessere Einstellung wurde aber nicht gefunden.
why-cost-led = { $cost }: { $advice }.
why-led-closing = nächstes Mal Arme und Beine früher heranführen und dort halten
why-led-tightness = nächstes Mal Arme und Beine ganz heranführen
why-led-opening = nächstes Mal Arme und Beine später loslassen, aber rechtzeitig zur Landung
# $turns ist eine der letzten drei dieser Gruppe.
why-close-time = Es dauerte { $from } s. Mit { $to } s hätte dieser Sprung { $turns }.
why-close-delay = Es begann { $from } s nach dem Absprung. Mit Beginn bei { $to } s hätte dieser Sprung { $turns }.
why-arm-lag = Ein Arm kam { $from } s zu spät. Mit { $to } s hätte dieser Sprung { $turns }.
why-arm-tuck = Die Arme kamen zu { $from } % heran. Mit { $to } % hätte dieser Sprung { $turns }.
why-leg-tuck = Die Beine schlossen zu { $from } %. Mit { $to } % hätte dieser Sprung { $turns }.
why-open-lead = Es begann { $from } s vor dem Aufkommen. Mit Beginn { $to } s davor hätte dieser Sprung { $turns }.
why-lean = Der Körper war beim Absprung um { $from } Grad geneigt. Aufrecht und mit derselben Drehrate beim Absprung hätte dieser Sprung { $turns }.
why-arm-asymmetry = Ein Arm blieb zu { $from } % draußen. Mit beiden Armen am Körper hätte dieser Sprung { $turns }.
why-as-many-turns = genauso viele Drehungen
why-turns-more = { $turns } Drehungen mehr
why-turns-fewer = { $turns } Drehungen weniger

## Worauf ein Urteil über einen Wert beruht.

limit-already = Der Sprung hat diese Drehungen schon jetzt.
limit-flown = Über den ganzen einstellbaren Bereich geflogen. Angegeben sind die meisten Drehungen darin.
limit-no-part = Dieser Sprung wurde von Hand geführt. Was hier eingestellt ist, spielt darin keine Rolle.
limit-own = Die Grenzen, die für diese Person eingestellt sind.
limit-season = Als erreichbar gilt die Änderung einer Saison von jetzt an. Das ist unsere Annahme (übliche Praxis, ohne Quelle). Eigene Grenzen ersetzen sie.
limit-season-not-known = Als erreichbar gilt die Änderung einer Saison von jetzt an. Das ist unsere Annahme (übliche Praxis, ohne Quelle). Was dort gesehen wurde, ist für jemanden dieser Größe nicht bekannt. Eigene Grenzen ersetzen sie.
season-source = Unsere Annahme, übliche Praxis, ohne Quelle.

## Eine Einstellung, die nicht sein kann. Der Schlüssel steht wie in der Datei.

lever-unknown = { $key } ist kein Hebel; es gibt { $known }
season-out-of-range = Saison von { $key } = { $value } geht nicht: möglich ist 0 bis { $most }
limits-out-of-range = Grenzen von { $key } = { $lower }:{ $higher } gehen nicht: erst die untere, dann die obere, von { $least } bis { $most }
axis-unknown = { $key }: diese Zahl gibt es nicht; es gibt { $known }
axis-one-value = { $key } von { $from } bis { $to }: bitte zwei verschiedene Werte angeben
axis-nodes = { $nodes } Knoten von { $key } gehen nicht: möglich sind { $least } bis { $most }
axis-twice = { $key } auf beiden Achsen: bitte zwei verschiedene Zahlen angeben
axis-no-part = { $key } spielt keine Rolle in einem Sprung, der von Hand geführt wurde: die Drehungen sind überall gleich

## Was die Markierungen eines echten Versuchs sagen und was sie offenlassen.

measured-turns = { $turns } Drehungen insgesamt; 95 % dessen, was möglich ist, liegen zwischen { $low } und { $high }.
caution-consent = Wer Minderjährige filmt, braucht ihre Einwilligung und die der Eltern. Auch die Regeln der Halle gelten.
caution-film-stays = Ein Film bleibt auf diesem Gerät.
caution-no-verdict = Das ist eine Schätzung. Sie sagt nichts über die Gesundheit, und sie ist kein Urteil eines Preisgerichts.
## What the marks of an attempt say of its jump.

cause-closing-inline = das Schließen
cause-tightness-inline = die fehlende Enge
cause-opening-inline = das Öffnen
cause-tilt-inline = Neigung und Ungleichheit
unfit-no-marks = Noch ist nichts markiert.
unfit-disorder = Absprung und Landung stehen in der falschen Reihenfolge. Die Landung muss nach dem Absprung markiert sein.
# A hang time, and the least and the most that can be flown.
unfit-hang-time = Ein Sprung von { $time } s lässt sich mit diesem Körper nicht fliegen, nur { $least } bis { $most } s. Bitte beide Markierungen und die Zeitlupe prüfen.
# A cause of lost turns, at the beginning, and a range with its unit.
fit-cost-most = { $what } kostete am meisten: { $turns }.
# Two causes of lost turns, and a range with its unit for each.
fit-cannot-tell = Aus diesen Markierungen ist nicht zu sagen, was am meisten kostete: { $first } ({ $first_turns }) oder { $other } ({ $other_turns }).
# The time in the film.
fit-further-facing = Eine weitere Markierung sagt am meisten: wohin die Hüften bei { $time } s zeigen.
fit-further-arms = Eine weitere Markierung sagt am meisten: wie weit die Arme bei { $time } s angelegt sind.
fit-further-legs = Eine weitere Markierung sagt am meisten: wie weit die Beine bei { $time } s angelegt sind.
fit-further-contacts = Ein Film mit mehr Bildern in der Sekunde sagt am meisten.
# A range of turns and how likely it is.
fit-turns-clockwise = Die Hüften sind so markiert, wie sie sich bei einer Drehung im Uhrzeigersinn drehen. Dieser Sprung ist gegen den Uhrzeigersinn eingestellt.
fit-turns-anticlockwise = Die Hüften sind so markiert, wie sie sich bei einer Drehung gegen den Uhrzeigersinn drehen. Dieser Sprung ist im Uhrzeigersinn eingestellt.
fit-second-answer = Es können auch { $turns } Drehungen gewesen sein (etwa { $percent } %). Mehr Markierungen der Hüften sagen es.
# A cause of lost turns and the range of what it cost.
why-loss-range = { $what }: { $range }
# What is said of the largest loss of one jump.
fit-likeliest = Für den wahrscheinlichsten Sprung: { $sentence }
# Ein Versuch mit so vielen Drehungen.
try-full = { $owed } Drehungen: voll, { $turns } gedreht.
try-short = { $owed } Drehungen: nicht voll. { $turns } gedreht, { $degrees } Grad fehlen.
try-over = { $owed } Drehungen: nicht voll. { $turns } gedreht, { $degrees } Grad zu weit.
try-facing = { $owed } Drehungen: nicht voll. { $turns } gedreht, aber die Hüfte steht { $degrees } Grad neben der Landung.
try-none-passed = Keine bei Menschen gesehene Grenze wurde überschritten.
try-passed = Überschrittene Grenzen: { $count }. { $what }.
try-limit-most = { $what }, gesehen bis { $limit }
try-limit-least = { $what }, gesehen ab { $limit }
try-unknown = Nicht bekannt: { $what }.
five-turns-listed = Sprünge mit fünf Drehungen stehen seit 2024 in den Regeln (ISU Communication 2656, nach einer Sekundärquelle).
five-turns-peak = Die höchsten gesehenen Drehraten sind 430 bis 440 U/min. Für fünf Drehungen wären etwa 500 U/min nötig (übliche Praxis, ohne Quelle).
