# Die Seite selbst, bevor ihr Modul da ist und wo es nicht kommt. web/finish.py schreibt dies in die
# Seite, darum steht jedes auf einer Zeile: Text, und Werte in { $Klammern }.

about = Wie viele Drehungen schafft ein Sprung bis zur Landung, und warum? Ein Eiskunstlaufsprung, nach den Gesetzen der Mechanik geflogen, im Browser.
stage = Der Sprung und seine Bedienung, gezeichnet. Der Abschnitt namens Werte sagt dieselben Zahlen als Text.
controls = Bedienung
readout = Werte
loading = Der Simulator wird geladen…
loading-part = Der Simulator wird geladen: { $done } von { $whole } MB
loading-so-far = Der Simulator wird geladen: bisher { $done } MB
loaded = Geladen. Es geht gleich los…
not-started = Der Simulator konnte nicht gestartet werden; bitte die Verbindung prüfen und die Seite neu laden.
stopped = Der Simulator ist wegen eines Fehlers stehen geblieben. Zum Weitermachen die Seite neu laden.
interrupted = Dieses Gerät hat das Zeichnen angehalten. Der Sprung ist gemerkt. Er kommt wieder, sobald das Zeichnen möglich ist.
interrupted-again = Jetzt versuchen
no-graphics = Der Sprung kann hier nicht gezeichnet werden
no-graphics-about = Das Bild braucht WebGL 2, und dieser Browser hat es nicht. Eine aktuelle Version von Firefox, Chrome, Edge oder Safari mit eingeschalteter Hardwarebeschleunigung hat es. Die Zahlen des Sprungs stehen unten.
no-script = Turns Aloft berechnet den Sprung im Browser und braucht JavaScript, das ausgeschaltet ist. Bitte für diese Seite einschalten und neu laden.
update-ready = Eine neue Version ist bereit; sie öffnet sich mit dem nächsten Neuladen.
update-reload = Jetzt neu laden
update-later = Später
