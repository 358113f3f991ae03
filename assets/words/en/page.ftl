# The browser around the panels: files, links, what is kept.

page-open-file = Open a scenario file
page-not-opened = Not opened: { $why }.
page-file-too-large = this file is too large to hold a jump or kept jumps; open one saved by Turns Aloft
page-file-unreadable = the file could not be read; try again
page-not-saved = The file could not be saved; this browser does not allow downloads.
page-no-picture = The picture could not be made in this browser; save the jump as a file, or take a picture of the screen.
page-link-copied = The link is copied: paste it into a message.
page-link-offered = The link stands in the address bar: copy it from there.
page-link-of-file = This page was opened from a file, so its link opens on this device only. To give the jump away, save it as a file.
page-sheet-open = The sheet is open in a new tab: print it from there.
page-sheet-saved = The browser opens no tab: the sheet is saved as a file. Open that, and print it.
page-no-documents = What makes pictures and sheets could not be fetched. Open the page once with a network; then try again.
page-no-texts = The texts of that language could not be fetched. Open the page once with a network; then try again.
page-no-link = This browser does not let the page make a link; save the jump as a file.
page-keeps-nothing = This browser keeps nothing for this page. Only the page's address holds the jump. Save the jump as a file to keep it.
page-kept-jumps-aside = Not opened: { $why }. The old list is put aside in this browser, and a new list begins.
page-not-kept = This will be gone after a reload: { $why }.
page-not-kept-no-room = This will be gone after a reload: { $why }, and there is no room to put the old list aside. Save all as a file.
page-keeps-no-more = This browser has no more room for this page. The kept jumps as they are now will be gone after a reload. Save all as a file.
page-film-unplayable = This browser can't play this film. Save it as MP4 in H.264 in a video program, or open it in another browser.
page-film-times = This browser shows the pictures of this film at other times than its file says, so nothing can be measured in it. Save it as MP4 in a video program.
page-film-old-browser = This browser can't tell which picture of a film it shows. Use a current version of Firefox, Chrome, Edge or Safari.
page-film-not-fetched = The invented film can't be had at present. Check the network and try again.
page-film-unreachable = This browser can't go to single pictures of this film. Save it as MP4 in a video program, then open it.
