# Eine Unterrichtsstunde, die eine Lehrkraft auf der Seite selbst macht.

draft = Ihre Stunde
draft-make = Eine Stunde machen
draft-go-on = An Ihrer Stunde weiterarbeiten
draft-copy = Eine Kopie davon ändern
draft-copy-about = Die Kopie gehört Ihnen. Diese Stunde bleibt, wie sie ist.
draft-kept = Wird beim Schreiben auf diesem Gerät behalten.
draft-missing = Fehlt noch
draft-whole-lesson = Alle Schritte nacheinander
draft-replaced = Ihre bisherige Stunde ist durch diese ersetzt.
draft-discarded = Ihre Stunde ist gelöscht.
draft-step-removed = Schritt { $number } ist entfernt.

## Das Ganze.

draft-title-none = Noch ohne Titel
draft-title = Titel
draft-title-about = Wie die Stunde heißt
draft-for-whom = Für wen
draft-for-whom-about = Alter, Klasse oder Gruppe
draft-minutes = Minuten
draft-minutes-in-all = { $minutes } Minuten insgesamt
draft-minutes-range = Minuten sind hier eine ganze Zahl von 1 bis { $most }.
draft-doing = Was getan wird
draft-doing-about = Was in diesen Minuten geschieht
draft-steps = Schritte
draft-step = { $number }. { $title }
draft-step-untitled = Noch ohne Titel
draft-add-jump = Schritt mit dem jetzigen Sprung
draft-jump-at-hand = Der jetzige Sprung: { $name }
draft-add-question = Schritt, der nur fragt
draft-full = Eine Stunde hat Platz für { $most } Schritte.
draft-give = Ausprobieren und weitergeben
draft-unfinished = Sobald nichts mehr fehlt, können Sie die Stunde ausprobieren und einen Link schicken. Speichern geht auch unfertig.
draft-try = Ausprobieren wie in der Klasse
draft-back-from-try = Zurück zum Bearbeiten
draft-back-from-try-about = Ihre Antworten werden nicht behalten.
draft-save = Als Datei speichern
draft-link = Link dazu kopieren
draft-too-long-for-link = Die Stunde ist zu lang für einen Link: Geben Sie stattdessen die Datei weiter.
draft-code = QR-Code zeigen
draft-code-about = Wer das mit der Kamera eines Tablets aufnimmt, hat die Stunde.
draft-too-long-for-code = Die Stunde ist zu lang für einen QR-Code, den eine Kamera lesen kann: Schicken Sie den Link, oder geben Sie die Datei weiter.
draft-to-jump = Zurück zum Sprung
draft-to-jump-about = Ihre Stunde bleibt erhalten. Ändern Sie den Sprung; dann geht es im Menü der Sprünge mit Ihrer Stunde weiter.
draft-discard = Diese Stunde löschen

## Ein Schritt.

draft-all-steps = Alle Schritte
draft-flown = Was gesprungen wird
draft-flown-jump = Der Sprung „{ $name }“
draft-flown-turntable = Jemand auf einer Drehscheibe, wie in der kopierten Stunde
draft-flown-nothing = Nichts: Dieser Schritt fragt nur.
draft-flown-at-hand = Das ist der jetzige Sprung.
draft-take-jump = Den jetzigen Sprung nehmen
draft-asks = Was gefragt wird
draft-step-title = Titel des Schritts
draft-step-title-about = Ein, zwei Wörter
draft-question-about = Was wird geschehen?
draft-kind = Art der Antwort
draft-kind-number = Eine Zahl
draft-kind-change = Mehr oder weniger
draft-kind-curve = Eine Kurve
draft-kind-words = Eigene Worte
draft-kind-opinion = Eine Meinung
draft-kind-of-file = Diese Art von Antwort entsteht nur in einer Datei. Sie bleibt, wie sie ist, wenn Sie keine andere wählen.
draft-quantity = Größe, nach der gefragt wird
draft-input = Eingabe, die geändert wird
draft-in-jump = Im Sprung: { $value }
draft-changed-to = Geändert auf
draft-curve = Kurve, die gezeichnet wird
draft-more = Mehr
draft-the-same = Gleich viel
draft-less = Weniger
draft-option = Möglichkeit { $number }
draft-option-about = Was gewählt werden kann
draft-add-option = Möglichkeit hinzufügen
draft-remove-option = Letzte Möglichkeit entfernen
draft-reason = Nach dem Grund fragen
draft-free = Was geändert werden darf: { $count }
draft-free-about = Alle anderen Eingaben sind gesperrt.
draft-observes = Fragen, was zu sehen war
draft-observe = Worauf zu achten ist
draft-explanation = Was geschehen ist, und warum
draft-explanation-about = Steht nach dem Sprung da
draft-insert = Einen Wert einfügen
draft-insert-about = Ein Wert steht in geschweiften Klammern. Der Flug rechnet ihn aus.
draft-figure-changed = { $quantity }, mit geänderter Eingabe
draft-preview = So steht es dann da
draft-order = Platz in der Stunde
draft-earlier = Früher
draft-later = Später
draft-remove-step = Diesen Schritt entfernen

## Was fehlt oder nicht stimmt.

draft-no-title = Der Titel fehlt.
draft-for-nobody = Schreiben Sie, für wen die Stunde ist.
draft-no-plan = Ein Text des Plans fehlt.
draft-no-question = Die Frage fehlt.
draft-no-option = Eine Möglichkeit ist noch leer.
draft-nothing-to-observe = Schreiben Sie, worauf zu achten ist, oder fragen Sie nicht, was zu sehen war.
draft-no-explanation = Die Erklärung fehlt.
draft-nothing-changed = Die geänderte Eingabe hat denselben Wert wie im Sprung: Geben Sie einen anderen ein.
draft-wrong = So geht es noch nicht: { $why }.
