# The page itself, before its module has come and where it does not come. web/finish.py writes these
# into the page, so each stands on one line: text, and values in { $braces }.

about = How many turns a jumper completes before coming down, and why: a figure-skating jump flown from the laws of mechanics, in the browser.
stage = The jump and its controls, drawn. The section named Readout says the same numbers as text.
controls = Controls
readout = Readout
loading = Loading the simulator…
loading-part = Loading the simulator: { $done } of { $whole } MB
loading-so-far = Loading the simulator: { $done } MB so far
loaded = Loaded. Setting up the ice…
not-started = The simulator could not be started; check the connection, then reload the page.
stopped = The simulator has stopped because of a fault of its own; reload the page to go on.
interrupted = This device has interrupted the drawing; your jump is kept, and comes back when it can be drawn again.
interrupted-again = Try now
no-graphics = The jump can't be drawn here
no-graphics-about = This browser offers no WebGL 2, which the picture needs. A current version of Firefox, Chrome, Edge or Safari with hardware acceleration switched on has it. The numbers of the present jump are below all the same.
no-script = Turns Aloft computes the jump in your browser and needs JavaScript, which is switched off. Switch it on for this page and reload.
update-ready = A new version is ready; it opens with the next reload.
update-reload = Reload now
update-later = Later
