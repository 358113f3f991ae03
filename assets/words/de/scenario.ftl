### Ein Sprung, wie man ihn sagt: seine Zahlen und ihre Marken, seine Einheiten, Dateien und Links.

## Wie eine Zahl heißt, allein und im Satz, und was sie bedeutet.

key-takeoff-rate-rad-s = Drehrate beim Absprung
key-takeoff-rate-rad-s-inline = Drehrate beim Absprung
key-takeoff-rate-rad-s-about = Wie schnell sich die Hüfte beim Absprung um die Senkrechte dreht.
key-arm-tuck = Arme angelegt
key-arm-tuck-inline = Arme angelegt
key-arm-tuck-about = Wie weit die Arme herankommen: 0 bleibt wie beim Absprung, 100 % ist so eng, wie es dieser Körper kann.
key-leg-tuck = Beine angelegt
key-leg-tuck-inline = Beine angelegt
key-leg-tuck-about = Wie weit die Beine zusammenkommen: 0 bleibt wie beim Absprung, 100 % ist so eng, wie es dieser Körper kann.
key-hand-mass-kg = Masse an den Händen
key-hand-mass-kg-inline = Masse an den Händen
key-hand-mass-kg-about = Zusätzliche Masse in jeder Hand. Ein physikalisches Experiment, im Wettkampf nicht erlaubt.
key-jump-height-m = Sprunghöhe
key-jump-height-m-inline = Sprunghöhe
key-jump-height-m-about = Wie weit der Schwerpunkt vom Absprung bis zum höchsten Punkt steigt.
key-stature-m = Körpergröße
key-stature-m-inline = Körpergröße
key-stature-m-about = Größe der Person. Alle Längen des Körpers ändern sich mit ihr.
key-body-mass-kg = Körpermasse
key-body-mass-kg-inline = Körpermasse
key-body-mass-kg-about = Masse der Person ohne Schlittschuhe. Die Masse jedes Körperteils ändert sich mit ihr.
key-boot-mass-kg = Masse je Schlittschuh
key-boot-mass-kg-inline = Masse je Schlittschuh
key-boot-mass-kg-about = Masse eines Schlittschuhs mit seiner Kufe.
key-takeoff-openness = Offen beim Absprung
key-takeoff-openness-inline = Offen beim Absprung
key-takeoff-openness-about = Wie weit Arme und Spielbein beim Absprung ausgebreitet sind.
key-lean-rad = Neigung beim Absprung
key-lean-rad-inline = Neigung beim Absprung
key-lean-rad-about = Wie weit die Längsachse des Körpers beim Absprung geneigt ist, zu der Seite hin, zu der gedreht wird.
key-pre-rotation-turns = Vor dem Absprung gedreht
key-pre-rotation-turns-inline = vor dem Absprung gedreht
key-pre-rotation-turns-about = Was sich der Körper dreht, solange der Fuß noch auf dem Untergrund steht. Es zählt zum Sprung.
key-arm-asymmetry = Ein Arm bleibt draußen
key-arm-asymmetry-inline = Ein Arm bleibt draußen
key-arm-asymmetry-about = Wie viel seines Weges nach innen ein Arm nicht zurücklegt.
key-close-delay-s = Schließbeginn
key-close-delay-s-inline = Schließbeginn
key-close-delay-s-about = Zeit vom Absprung bis zum Beginn des Schließens.
key-close-time-s = Schließzeit
key-close-time-s-inline = Schließzeit
key-close-time-s-about = Zeit, die Arme und Beine zum Schließen brauchen.
key-arm-lag-s = Verspätung eines Arms
key-arm-lag-s-inline = Verspätung eines Arms
key-arm-lag-s-about = Wie viel später als alles andere ein Arm schließt.
key-open-lead-s = Öffnen vor der Landung
key-open-lead-s-inline = Öffnen vor der Landung
key-open-lead-s-about = Wie lange vor dem Aufkommen das Öffnen beginnt.
key-open-time-s = Öffnungszeit
key-open-time-s-inline = Öffnungszeit
key-open-time-s-about = Zeit, die das ganze Öffnen bräuchte. Das Aufkommen kann früher sein.

## Was an vier Eingaben unsicher ist: an drei der Zahlen oben und am Verhältnis der Trägheit.

key-inertia-ratio-share = Trägheit, offen zu eng
key-inertia-ratio-share-inline = Verhältnis der Trägheit von offen zu eng
half-width-jump-height-m-about = In einem Video mit 60 Bildern in der Sekunde macht ein Bild mehr oder weniger bei einer halben Sekunde Flugzeit 2 cm Höhe aus.
half-width-hang-time-s-about = Die Unsicherheit der Sprunghöhe, als Zeit in der Luft. Beides ist dasselbe und lässt sich so oder so einstellen. Eine Stoppuhr in der Hand gibt die Flugzeit auf etwa 0,05 s genau (übliche Praxis, ohne Quelle). Ein Video mit 30 Bildern in der Sekunde gibt sie auf 0,027 s, eines mit 60 auf 0,013 s, weil Absprung und Landung je zwischen zwei Bildern liegen.
half-width-takeoff-rate-rad-s-about = Eine Richtung, auf zwei Bildern im Abstand von einer Zehntelsekunde auf 2° genau abgelesen, gibt die Rate auf 0,5 rad/s genau, etwa 5 U/min. Dass sie sich so gut ablesen lässt, ist unsere Annahme.
half-width-close-time-s-about = Ein Bild eines Videos mit 60 Bildern in der Sekunde.
half-width-inertia-ratio-share-about = Wie viele Male so groß das Trägheitsmoment des offenen Körpers ist wie das des engen. Davon hängt ab, wie viel schneller das Schließen die Drehung macht, und darin unterscheiden sich Körper. Der übliche Wert kommt von neun Körpern von außen: fünf vermessenen Menschen und vier veröffentlichten Tabellen. Jeder bekam Größe und Masse der Person und flog in jedem Ausgangspunkt. Es sind alles Erwachsene. Unter 1,55 m ist der Wert um die Hälfte größer. Das haben wir so gewählt, weil kein Kinderkörper gefunden wurde.

## Woher die Marken an einer Zahl kommen.

marks-tuck = Die Form des Körpers erlaubt den ganzen Bereich. Ein veröffentlichtes Maß für das Anlegen wurde nicht gefunden. Die Marke zeigt, wo ein Gelenk in diesem Sprung beim Schließen oder Halten die Kraft erreicht, die bei Menschen gemessen wurde. Alles andere bleibt wie jetzt.
marks-close-delay = Das Schließen kann gleich beim Absprung beginnen (übliche Praxis, ohne Quelle).
marks-close-delay-not-known = Für jemanden dieser Größe nicht bekannt. Erwachsene können gleich beim Absprung mit dem Schließen beginnen (übliche Praxis, ohne Quelle).
marks-close-time = Eine Messung, wie schnell Menschen schließen, wurde nicht gefunden. Die Marke zeigt, wo ein Gelenk in diesem Sprung beim Schließen die Kraft erreicht, die bei Menschen gemessen wurde. Alles andere bleibt wie jetzt.
marks-open-time = Eine Messung, wie schnell Menschen öffnen, wurde nicht gefunden. Die Marke zeigt, wo ein Gelenk in diesem Sprung beim Öffnen die Kraft erreicht, die bei Menschen gemessen wurde. Alles andere bleibt wie jetzt.
marks-effort-not-known = Für jemanden dieser Größe nicht bekannt: Eine Messung an Schultern und Hüften von Kindern wurde nicht gefunden. Schraffiert ist, was mehr als das 1,4-Fache der Kraft der stärksten gemessenen Erwachsenen desselben Geschlechts bräuchte. Alles andere bleibt wie jetzt.
marks-open-lead = Eine Landung, die weniger als 0,05 s lang vorbereitet wird, ist uns nicht bekannt (übliche Praxis, ohne Quelle).
marks-open-lead-not-known = Für jemanden dieser Größe nicht bekannt: Ein gemessenes Öffnen bei einem Kind wurde nicht gefunden.
marks-hand-mass = Trainingshandschuhe wiegen einige Hundert Gramm (übliche Praxis, ohne Quelle). Jenseits dieser Marke bräuchte das Gewicht in diesem Sprung mehr als die Griffkraft Erwachsener im Median (Dodds et al. 2014).
marks-hand-mass-not-known = Für jemanden dieser Größe nicht bekannt: Eine Messung der Griffkraft von Kindern wurde nicht gefunden. Jenseits der Marke bräuchte das Gewicht in diesem Sprung mehr als die Griffkraft Erwachsener desselben Geschlechts im Median (Dodds et al. 2014).
marks-trampoline = Auf dem Trampolin wurden schon Flüge von etwa 1,7 s gewertet (Presse, aus zweiter Hand): Der ganze Bereich ist erreichbar.
marks-trampoline-not-known = Für jemanden dieser Größe nicht bekannt: Die Trampolinflüge, die gefunden wurden, sind die von Erwachsenen.
marks-jump-height-girl = Mädchen unter 1,55 m: bis 38,7 cm, Mittelwert und zwei Standardabweichungen von 19 Eisläuferinnen von 10 bis 16 Jahren abseits des Eises (29,1 cm, 4,8 cm; Myklebust & Kjellstadli). Über 90 cm ist uns kein Sprung allein aus den Füßen bekannt (aus dem Gedächtnis).
marks-jump-height-boy = Jungen unter 1,55 m: bis 39,9 cm, der größte Jahresmittelwert von Jungen von 12 bis 15 Jahren (30,8 bis 39,9 cm; Tian et al. 2023, Zusammenfassung); einzelne springen höher. Über 90 cm ist uns kein Sprung allein aus den Füßen bekannt (aus dem Gedächtnis).
marks-jump-height-woman = Frauen: bis 43,5 cm, Mittelwert und zwei Standardabweichungen von Doppelaxeln, die Frauen abseits des Eises standen (38,3 cm, 2,6 cm; Kongressbeitrag ECSS 985). Über 90 cm ist uns kein Sprung allein aus den Füßen bekannt (aus dem Gedächtnis).
marks-jump-height-man = Männer: bis 60 cm, aus 0,7 s, die für vier Drehungen genannt wurden (Presse, aus zweiter Hand, 2003). Über 90 cm ist uns kein Sprung allein aus den Füßen bekannt (aus dem Gedächtnis).
marks-jump-height-not-known = Für jemanden dieser Größe nicht bekannt: Eine Messung an Menschen unter 1,25 m wurde nicht gefunden. Über 60 cm wurde niemand gesehen, gleich welcher Größe: 0,7 s, für vier Drehungen genannt (Presse, aus zweiter Hand, 2003).
marks-takeoff-rate = Die Marken richten sich nach der höchsten Drehrate dieses Sprungs. Bei Menschen wurden bis 440 U/min gesehen. 500 U/min wurden nie gesehen (übliche Praxis, ohne Quelle).
marks-takeoff-rate-not-known = Für jemanden dieser Größe nicht bekannt. Die Marke richtet sich nach der höchsten Drehrate dieses Sprungs. Über 440 U/min wurde niemand gesehen, auch Erwachsene nicht (übliche Praxis, ohne Quelle).
seen-peak-rate = Übliche Praxis, ohne Quelle. Pirouetten auf dem Eis mit 342 U/min sind belegt. 500 U/min wurden nie gesehen.
seen-peak-rate-not-known = Das gilt für Erwachsene (übliche Praxis, ohne Quelle). Wie schnell sich Kinder dieser Größe drehen, ist nicht bekannt.

## Wie stark Gelenke gemessen wurden.

strength-shoulder-woman = Schulter von Frauen: die meisten etwa 0,85, die stärksten etwa 1,4 N m/kg (Harbo et al. 2012, aus zweiter Hand; das obere Ende abgeleitet, eine Streuung wurde nicht gefunden).
strength-shoulder-man = Schulter von Männern: die meisten etwa 1,1, die stärksten 1,85 N m/kg (Harbo et al. 2012 und die gemessenen Kurven eines Turners, beides aus zweiter Hand).
strength-elbow-woman = Ellenbogen von Frauen: die meisten etwa 0,55, die stärksten etwa 0,95 N m/kg (Harbo et al. 2012, aus zweiter Hand; Gentil et al., trainierte Frauen, mit 60 kg abgeleitet).
strength-elbow-man = Ellenbogen von Männern: die meisten etwa 0,75, die stärksten etwa 1,3 N m/kg (Lategan & Kruger 2003; Falk et al. 2009; Kurven eines Turners, aus zweiter Hand).
strength-hip-woman = Hüfte von Frauen: die meisten etwa 2,8, die stärksten etwa 4,5 N m/kg (Anderson et al. 2007, aus zweiter Hand; Spitzensprinterinnen, Li 2016, Zusammenfassung).
strength-hip-man = Hüfte von Männern: die meisten etwa 2,75, die stärksten etwa 4,5 N m/kg (Anderson et al. 2007 und Harbo et al. 2012, aus zweiter Hand).
strength-knee-woman = Knie von Frauen: die meisten etwa 2,5, die stärksten 3,75 N m/kg (Sarabon et al. 2021; trainierte Frauen, doi 10.1016/j.asmr.2023.100861; Zusammenfassungen).
strength-knee-man = Knie von Männern: die meisten etwa 3,1, die stärksten etwa 4,2 N m/kg (Sarabon et al. 2021, Zusammenfassung; Anderson et al. 2007, aus zweiter Hand; Eisläufer einer Nationalmannschaft haben 2,8, Wang & Liu).
strength-spine-woman = Rumpf von Frauen: die meisten etwa 2,6, die stärksten etwa 4,0 N m/kg (junge Sportler beider Geschlechter, Mueller et al. 2014; die Zahl einer erwachsenen Frau wurde nicht gefunden; die Maschinen unterscheiden sich stark).
strength-spine-man = Rumpf von Männern: die meisten etwa 3,5, die stärksten etwa 6,4 N m/kg (Spitzenruderer, Sportverletz Sportschaden 1994;8:134; nach Training, Pollock et al. 1989, mit 70 kg abgeleitet; die Maschinen unterscheiden sich stark).
strength-elbow-child = Ellenbogen von Kindern: die meisten etwa 0,63, die stärksten etwa 1,0 N m/kg (15 Jungen von 10 Jahren, Falk et al. 2009, mit der mittleren Masse abgeleitet; eine Studie).
strength-knee-child = Knie von Kindern: die meisten etwa 2,3, die stärksten etwa 3,2 N m/kg (abgeleitet: Männer mal Verhältnis von Jungen zu Männern, Sarabon et al. 2021 und Dotan et al. 2013).
strength-spine-child = Rumpf von Kindern: die meisten etwa 2,8, die stärksten etwa 4,0 N m/kg (377 Sportler von 13 Jahren, Mueller et al. 2014, Zusammenfassung).
strength-not-known = Für jemanden dieser Größe nicht bekannt: Die Kraft von Kindern wurde für dieses Gelenk nicht gefunden. Die Zahl ist die der stärksten gemessenen Erwachsenen desselben Geschlechts.

## Einheiten, wie sie hinter einer Zahl stehen.

unit-rpm = U/min
unit-turns-per-s = U/s
unit-deg-per-s = °/s
unit-rad-per-s = rad/s
unit-cm = cm
unit-m = m
unit-in = Zoll
unit-kg = kg
unit-lb = lb
unit-s = s
unit-deg = °
unit-rad = rad
unit-turns = Drehungen
unit-percent = %

## Die Sprünge des Sports.

jump-toe-loop = Toeloop
jump-salchow = Salchow
jump-loop = Rittberger
jump-flip = Flip
jump-lutz = Lutz
jump-axel = Axel
jump-off-ice = Drehung ohne Eis
jump-free = Frei
jump-free-in-words = Freier Sprung
jump-off-ice-turns = { $turns ->
    [one] { $turns } Drehung ohne Eis
   *[other] { $turns } Drehungen ohne Eis
}

## Wie ein Sprung heißt, der keinen eigenen Namen hat.

name-unnamed = Neuer Sprung ({ $jump })
name-begun-from = Begonnen mit „{ $name }“.
# Etwas, das an einem Sprung anders ist, hinter seinem Namen: „Arme anlegen 70 %“.
name-difference = { $what } { $value }
name-differences = { $count ->
    [one] eine Änderung
   *[other] { $count } Änderungen
}
name-and-differences = { $told }, { $count } weitere

## Die Ausgangspunkte; in ihren Dateien heißen sie englisch.

start-half-a-turn-short-name = Eine halbe Drehung zu wenig
start-half-a-turn-short-note = Eine erfundene Person. Ein doppelter Salchow mit zwölf Jahren: hoch genug und beim Absprung schnell genug, aber spät und nicht eng geschlossen. Die Massentabellen beschreiben Erwachsene: Für ein Kind ist das eine Schätzung.
start-child-single-name = Einfachsprung eines Kindes
start-child-single-note = Eine erfundene Person. Ein einfacher Rittberger mit zehn Jahren; die Arme kommen spät und nicht weit heran. Die Massentabellen beschreiben Erwachsene: Für ein Kind ist das eine Schätzung.
start-junior-double-name = Doppelsprung der Junioren
start-junior-double-note = Eine erfundene Person. Ein doppelter Flip mit vierzehn Jahren, gelandet. Die Massentabellen beschreiben Erwachsene: Für ein Kind ist das eine Schätzung.
start-senior-triple-name = Dreifachsprung der Senioren
start-senior-triple-note = Eine erfundene Person. Ein dreifacher Toeloop, klein, kräftig und erwachsen, gelandet.
start-four-turns-name = Vier Drehungen
start-four-turns-note = Eine erfundene Person. Ein vierfacher Toeloop, gelandet. Er verlangt von den Hüften mehr, als man an Hüften gemessen hat; Beine, die einander halten, was hier nicht mitzählt, nähmen einen Teil davon ab.
start-five-turn-attempt-name = Versuch mit fünf Drehungen
start-five-turn-attempt-note = Eine erfundene Person. Was fünf Drehungen verlangen würden: alles fast sofort eng, eine Drehrate über der höchsten, die gesehen wurde, und Hüften, stärker als alle gemessenen. Das hat noch niemand gezeigt; und selbst dann fehlt ein wenig, was die Regel durchgehen lässt.
start-floor-turn-name = Auf dem Boden, in Schuhen
start-floor-turn-note = Eine erfundene Person. Eine doppelte Drehung, auf dem Boden geübt, in Schuhen.
start-trampoline-name = Auf dem Trampolin
start-trampoline-note = Eine erfundene Person. Etwa doppelt so lange in der Luft wie bei einem Sprung auf dem Eis: vier Drehungen ohne Eile. Die geschätzte Landebelastung setzt voraus, dass das Tuch nachgibt.
start-weighted-hands-name = Gewichte in den Händen
start-weighted-hands-note = Eine erfundene Person. Der Dreifachsprung der Senioren mit einem halben Kilogramm in jeder Hand und demselben Drehimpuls: ein physikalisches Experiment, im Wettkampf nicht erlaubt.
start-crooked-takeoff-name = Schiefer Absprung
start-crooked-takeoff-note = Eine erfundene Person. Der Dreifachsprung der Senioren, beim Absprung geneigt, ein Arm spät und zum Teil draußen: Die Achse taumelt, und Drehungen gehen verloren.

## Eine Zahl, die nicht sein kann. Der Schlüssel steht wie in der Datei.

number-out-of-range = { $key } = { $value } geht nicht: möglich ist { $least } bis { $most }
number-not-a-number = { $key } = { $value } ist keine Zahl: möglich ist { $least } bis { $most }
number-not-whole = { $key } = { $value } geht nicht: möglich ist eine ganze Zahl von { $least } bis { $most }
word-unknown = { $key } = { $value } gibt es nicht: möglich ist { $known }
text-not-a-text = { $key } = { $value } ist kein Text: bitte in Anführungszeichen setzen
text-too-long = { $key } = { $value } ist zu lang für einen Sprung: bitte kürzen
key-unknown = { $key } = { $value }: diesen Schlüssel gibt es nicht; es gibt { $known }
number-no-part = { $key } = { $value } geht nicht: das spielt keine Rolle in einem Sprung, der von Hand geführt wurde. { $led } = { $none } nimmt die Hand weg
led-not-set = { $key } = { $value } geht nicht: möglich ist nur { $key } = { $none }, das nimmt die Hand weg
knots-count = { $led } hat { $count } Knoten: möglich sind 1 bis { $most }
knots-out-of-range = { $led }, Knoten { $place }: { $key } = { $value } geht nicht: möglich ist 0 bis { $most }
knots-out-of-order = { $led }, Knoten { $place }: time_s = { $value } muss später sein als im Knoten davor
half-width-out-of-range = Halbbreite von { $key } = { $value } geht nicht: möglich ist 0 bis { $most }
half-width-not-a-number = Halbbreite von { $key } = { $value } ist keine Zahl: möglich ist 0 bis { $most }
half-width-unknown = Halbbreite von { $key } = { $value }: diese Halbbreite gibt es nicht; es gibt { $known }
half-width-hang-time = Halbbreite von { $key } = { $value } geht nicht: möglich ist 0 bis { $most }
hang-time-not-a-number = { $key } = { $value } ist keine Zahl: Sekunden angeben
hang-time-out-of-range = { $key } = { $value } geht nicht: mit diesem Körper und dieser Bewegung dauern die möglichen Höhen { $least } bis { $most }
hang-time-not-flown = { $key } = { $value }: keine Höhe ergibt genau das, weil ein Fuß unterwegs den Untergrund berührt; am nächsten liegt { $nearest }

## Warum die Datei eines Sprungs oder ein Link nicht geöffnet wurde, als Teil eines Satzes.

file-too-large = Diese Datei ist zu groß für einen Sprung; bitte eine öffnen, die Turns Aloft gespeichert hat
file-not-text = Diese Datei ist kein Text in UTF-8; bitte eine öffnen, die Turns Aloft gespeichert hat
file-utf-16 = Diese Datei ist in UTF-16 geschrieben; bitte in UTF-8 speichern und dann öffnen
file-not-json = Diese Datei ist kein Sprung oder ein beschädigter ({ $why }); bitte eine öffnen, die Turns Aloft gespeichert hat
file-no-scenario = Diese Datei ist kein Sprung von Turns Aloft; bitte eine öffnen, die Turns Aloft gespeichert hat
file-newer = Dieser Sprung hat die Version { $version }, und dieses Turns Aloft liest bis Version { $known }; zum Öffnen bitte Turns Aloft aktualisieren
file-broken = Dieser Sprung ist beschädigt: { $why }; bitte noch einmal speichern oder diesen Eintrag verbessern
file-out-of-range = Dieser Sprung hat einen Wert, der nicht geflogen werden kann: { $why }
link-too-long = Dieser Link ist zu lang für Sprünge; bitte dort, wo er herkommt, noch einmal kopieren
link-damaged = Dieser Link ist beschädigt oder wurde abgeschnitten; bitte dort, wo er herkommt, noch einmal ganz kopieren
link-newer = Dieser Link kommt von einem neueren Turns Aloft (er hat die Version { $version }, dieses hier liest bis { $known }); zum Öffnen bitte Turns Aloft aktualisieren oder seine Seite neu laden
link-out-of-range = Dieser Link hat einen Wert, der nicht geflogen werden kann: { $why }

## Was in einer Datei falsch ist, als Teil eines Satzes.

fault-at = { $what }, Zeile { $line }, Spalte { $column }
fault-ends-early = sie hört mittendrin auf
fault-malformed = sie ist nicht so geschrieben, wie es JSON ist
fault-missing = der Eintrag `{ $key }` fehlt
fault-twice = der Eintrag `{ $key }` steht zweimal da
fault-unknown = der Eintrag `{ $key }` ist unbekannt, es gibt { $known }
fault-no-object = der Eintrag `{ $key }` ist kein Objekt
fault-no-list = der Eintrag `{ $key }` ist keine Liste
fault-no-whole-number = der Eintrag `{ $key }` ist keine ganze Zahl
fault-no-number = der Eintrag `{ $key }` ist keine Zahl
fault-no-text = der Eintrag `{ $key }` ist kein Text

## Warum die Datei eines Versuchs nicht geöffnet wurde, als Teil eines Satzes.

attempt-too-large = Diese Datei ist zu groß für einen Versuch; bitte eine öffnen, die Turns Aloft gespeichert hat
attempt-not-json = Diese Datei ist kein Versuch oder ein beschädigter ({ $why }); bitte eine öffnen, die Turns Aloft gespeichert hat
attempt-none = Diese Datei ist kein Versuch von Turns Aloft; bitte eine öffnen, die Turns Aloft gespeichert hat
attempt-newer = Dieser Versuch hat die Version { $version }, und dieses Turns Aloft liest bis Version { $known }; zum Öffnen bitte Turns Aloft aktualisieren
attempt-broken = Dieser Versuch ist beschädigt: { $why }; bitte noch einmal speichern oder diesen Eintrag verbessern
attempt-jump = Der Sprung dieses Versuchs lässt sich nicht öffnen: { $why }
attempt-not-measured = In diesem Versuch muss stehen, wie er gemessen wurde, in genau einem von { $known }
attempt-out-of-range = { $key } = { $value } geht nicht: möglich ist { $least } bis { $most }
attempt-too-many = In `{ $key }` stehen zu viele Einträge: { $most } genügen
attempt-unknown-point = „{ $value }“ ist nichts, was im Bild markiert wird; es gibt { $known }
