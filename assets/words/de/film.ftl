### Filme, die zum Messen geöffnet werden.

## Warum sich die Bilder eines Films nicht finden lassen.

film-empty = Diese Datei ist leer; bitte den Film noch einmal von dort kopieren, wo er aufgenommen wurde.
film-cut-off = Von diesem Film fehlt ein Teil; bitte die ganze Datei noch einmal von dort kopieren, wo er aufgenommen wurde.
film-damaged = Dieser Film ist beschädigt: was seine Datei über die Bilder sagt, kann nicht stimmen. Bitte noch einmal kopieren oder mit einem Videoprogramm als MP4 speichern.
film-no-film-track = In dieser Datei sind keine Bilder, nur Ton oder gar nichts; bitte einen Film öffnen.
film-still-picture = Das ist ein einzelnes Bild; bitte einen Film vom ganzen Sprung öffnen.
film-unknown-container = Diese Datei ist kein Film in MP4, MOV oder WebM; bitte mit einem Videoprogramm als MP4 speichern und dann öffnen.
film-no-key-frame = Kein Bild dieses Films lässt sich für sich allein zeigen (Schlüsselbilder fehlen); bitte mit einem Videoprogramm als MP4 speichern und dann öffnen.
film-times-not-ascending = Die Uhr dieses Films steht oder läuft rückwärts, also lässt sich mit ihm keine Zeit messen; bitte noch einmal von dort kopieren, wo er aufgenommen wurde.
film-too-many-frames = Dieser Film hat mehr als { $most } Bilder; bitte auf den Sprung zuschneiden und dann öffnen.
film-tables-too-large = Was diese Datei über ihre Bilder sagt, ist zu groß zum Lesen; bitte den Film auf den Sprung zuschneiden und dann öffnen.
film-several-edits = Dieser Film ist aus mehreren Stücken zusammengesetzt oder wechselt sein Tempo, und Browser zeigen solche Filme verschieden; bitte mit einem Videoprogramm als einen Film speichern und dann öffnen.

## Was zu tun ist, wenn der Browser einen Film nicht abspielt.

film-not-played = Dieser Browser spielt keine Filme in { $codec } ab; bitte den Film als MP4 in H.264 speichern oder in einem anderen Browser öffnen.
