# Der Browser um die Seite: Dateien, Links, was gemerkt wird.

page-open-file = Eine Datei mit einem Sprung öffnen
page-not-opened = Nicht geöffnet: { $why }.
page-file-too-large = diese Datei ist zu groß, um einen Sprung oder gemerkte Sprünge zu enthalten; bitte eine öffnen, die Turns Aloft gespeichert hat
page-file-unreadable = die Datei konnte nicht gelesen werden; bitte noch einmal versuchen
page-not-saved = Die Datei konnte nicht gespeichert werden; dieser Browser erlaubt keine Downloads.
page-no-picture = Das Bild konnte in diesem Browser nicht gemacht werden; den Sprung als Datei sichern oder ein Bildschirmfoto machen.
page-link-copied = Der Link ist kopiert: in eine Nachricht einfügen.
page-link-offered = Der Link steht in der Adresszeile: von dort kopieren.
page-link-of-file = Diese Seite wurde aus einer Datei geöffnet, ihr Link führt also nur auf diesem Gerät zum Ziel. Zum Weitergeben speichere den Sprung als Datei.
page-sheet-open = Das Blatt ist in einem neuen Tab offen. Dort lässt es sich drucken.
page-sheet-saved = Der Browser öffnet keinen Tab. Das Blatt ist als Datei gespeichert: Öffne sie und drucke sie.
page-no-documents = Was Bilder und Blätter macht, konnte nicht geladen werden. Öffne die Seite einmal mit Netz und versuche es dann noch einmal.
page-no-texts = Die Texte dieser Sprache konnten nicht geladen werden. Öffne die Seite einmal mit Netz und versuche es dann noch einmal.
page-no-link = Dieser Browser lässt die Seite keinen Link anlegen; bitte den Sprung als Datei speichern.
page-keeps-nothing = Dieser Browser merkt sich nichts für diese Seite. Nur in ihrer Adresse steht der Sprung. Um ihn zu behalten, bitte als Datei speichern.
page-kept-jumps-aside = Nicht geöffnet: { $why }. Die alte Liste liegt in diesem Browser beiseite, und eine neue beginnt.
page-not-kept = Nach einem Neuladen ist das nicht mehr da: { $why }.
page-not-kept-no-room = Nach einem Neuladen ist das nicht mehr da: { $why }, und für die alte Liste ist kein Platz. Bitte alle als Datei speichern.
page-keeps-no-more = Dieser Browser hat keinen Platz mehr für diese Seite. Die gemerkten Sprünge, wie sie jetzt sind, werden nach einem Neuladen nicht da sein. Bitte alle als Datei speichern.
page-film-unplayable = Dieser Browser kann den Film nicht abspielen. Bitte in einem Videoprogramm als MP4 in H.264 sichern, oder in einem anderen Browser öffnen.
page-film-times = Dieser Browser zeigt die Bilder des Films zu anderen Zeiten, als in der Datei steht, also lässt sich darin nichts messen. Bitte in einem Videoprogramm als MP4 sichern.
page-film-old-browser = Dieser Browser kann nicht sagen, welches Bild eines Films er zeigt. Bitte eine aktuelle Version von Firefox, Chrome, Edge oder Safari nehmen.
page-film-not-fetched = Der erfundene Film ist gerade nicht zu haben. Bitte das Netz prüfen und noch einmal versuchen.
page-film-unreachable = Dieser Browser kann in diesem Film nicht zu einzelnen Bildern gehen. Bitte in einem Videoprogramm als MP4 sichern und dann öffnen.
