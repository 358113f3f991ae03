# The browser around the panels: files, links, what is kept.

page-open-file = Open a scenario file
page-not-opened = Not opened: { $why }.
page-file-too-large = this file is too large to hold a jump or kept jumps; open one saved by Turns Aloft
page-file-unreadable = the file could not be read; try again
page-not-saved = The file could not be saved; this browser does not allow downloads.
page-no-picture = The picture could not be made in this browser; save the jump as a file, or take a picture of the screen.
page-link-copied = The link is copied: paste it into a message.
page-link-offered = The link stands in the address bar: copy it from there.
page-no-link = This browser does not let the page make a link; save the jump as a file.
page-keeps-nothing = This browser keeps nothing for this page: only its address holds the jump. Save the jump as a file to keep it.
page-kept-jumps-aside = Not opened: { $why }; what was there is put aside in this browser, and the list begins anew.
page-not-kept = Not kept over a reload: { $why }.
page-not-kept-no-room = Not kept over a reload: { $why }, and there is no room to put aside what is there; save all as a file.
page-keeps-no-more = This browser keeps no more for this page: the kept jumps as they are now will not be there after a reload; save all as a file.
