# Eine Unterrichtsstunde, wie sie auf der Seite gespielt wird.

lessons = Unterricht
lesson = Stunde
lesson-title-what-stays-the-same = Was gleich bleibt
lesson-title-higher-or-tighter = Höher oder enger?
lesson-title-can-anybody-do-five = Schafft jemand fünf?
lesson-title-arms-in = Arme ran!
lesson-not-fetched = Die Stunde konnte nicht geladen werden. Öffne die Seite einmal mit Netz und versuche es dann noch einmal.

## Was in sie einführt.

lesson-length = { $minutes } Minuten, { $steps } Schritte
lesson-how = In jedem Schritt sagst du zuerst voraus, was geschieht, und warum. Dann wird gesprungen, du schreibst auf, was du gesehen hast, und es wird erklärt.
lesson-who = Wer spielt
lesson-who-about = Ein Name oder zwei; darf leer bleiben
lesson-begin = Anfangen
lesson-go-on-where-left = Weiter, wo du warst
lesson-for-class = An der Tafel, für die Klasse
lesson-for-class-about = Nichts wird getippt: Die Klasse antwortet laut. Was stimmt, bleibt verborgen, bis Sie es zeigen.
lesson-anew = Von vorn anfangen, ohne die Antworten
lesson-plan = Plan für die Lehrkraft
lesson-minutes-of = { $minutes } min
lesson-fetch = Was bereitliegen soll
lesson-goes-wrong = Was oft schiefgeht
lesson-classroom-answers = Was in der Klasse oft gesagt wird
lesson-common-practice = Übliche Erfahrung, ohne Quelle.
lesson-classroom-answer = „{ $said }“ – { $reply }
lesson-curricula = In Lehrplänen
lesson-leave = Die Stunde verlassen
lesson-leave-about = Deine Antworten bleiben auf diesem Gerät.

## Ein Schritt.

lesson-place = Schritt { $place } von { $steps }
lesson-stage = Jetzt
lesson-question = Frage
lesson-stage-predict = Voraussagen
lesson-stage-fly = Springen
lesson-stage-observe = Beobachten
lesson-stage-explain = Erklären
lesson-withheld = Sage zuerst voraus, was geschieht. Dann wird gesprungen.
lesson-ask-number = Deine Voraussage: eine Zahl.
lesson-ask-choice = Deine Voraussage: Wähle eine aus.
lesson-ask-opinion = Was meinst du? Keine davon stimmt einfach.
lesson-ask-curve = Deine Voraussage: Zeichne die Kurve.
lesson-ask-words = Deine Antwort, in eigenen Worten.
lesson-type-number = Zum Eintippen berühren
lesson-words = Deine Antwort
lesson-curve-name = { $curve } in { $unit }
lesson-curve-by-sliders = Mit Reglern einstellen
lesson-curve-at = Bei { $time }
lesson-curve-again = Noch einmal zeichnen
lesson-class-predicts = Fragen Sie die Klasse: Was wird geschehen, und warum? Alle schreiben es auf oder heben die Hand, bevor es weitergeht.
lesson-reason = Warum denkst du das?
lesson-reason-about = Weil …
lesson-fly-it = Sieh zu. Du kannst es noch einmal abspielen und überall anhalten.
lesson-lead-it = Jetzt führst du. Probiere es ein paar Sekunden lang.
lesson-example-flown = Ein Körper mit genau diesen Trägheitsmomenten, und was daraus wird.
lesson-each = Sieh dir jeden an:
lesson-flight = Sprung { $number }
lesson-all-locked = In diesem Schritt sind alle Eingaben gesperrt.
lesson-rest-locked = Alle anderen Eingaben sind in diesem Schritt gesperrt.
lesson-observation = Was hast du gesehen?
lesson-observation-about = Ich habe gesehen …
lesson-hidden = Was stimmt, ist verborgen.
lesson-show = Zeigen
lesson-predicted = Deine Voraussage
lesson-happened = Was geschah
lesson-curves-compared = Gestrichelt: deine Voraussage. Durchgezogen: was geschah.
lesson-explanation = Erklärung
lesson-done = Das war der letzte Schritt.
lesson-to-fly = Jetzt springen
lesson-to-observe = Ich habe es gesehen
lesson-to-explain = Erklären
lesson-to-next = Nächster Schritt
lesson-back = Zurück
lesson-needs-prediction = Sage zuerst voraus, was geschieht.
lesson-needs-reason = Sage zuerst, warum.
lesson-needs-flight = Sieh es zuerst bis zum Ende an.
lesson-needs-observation = Schreibe zuerst auf, was du gesehen hast.

## Paper and tables.

lesson-sheets = Blätter zum Drucken
lesson-sheets-about = Sie öffnen sich in einem neuen Tab. Dort lassen sie sich drucken, auf A4 oder Letter.
lesson-sheet-pupil = Das Arbeitsblatt
lesson-sheet-answers = Das Lösungsblatt
lesson-sheet-plan = Der Plan
lesson-results = Meine Antworten auf Papier
lesson-answers-table = Meine Antworten als Tabelle
