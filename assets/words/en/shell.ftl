# The page itself, before its module has come and where it does not come. web/finish.py writes these
# into the page, so each stands on one line: text, and values in { $braces }.

about = How many turns does a jump have before it lands, and why? A figure-skating jump flown by the laws of mechanics, in the browser.
stage = The jump and its controls, drawn. The section named Readout says the same numbers as text.
controls = Controls
readout = Readout
loading = Loading the simulator…
loading-part = Loading the simulator: { $done } of { $whole } MB
loading-so-far = Loading the simulator: { $done } MB so far
loaded = Loaded. Starting…
not-started = The simulator could not be started; check the connection, then reload the page.
stopped = The simulator stopped because of an error. Reload the page to go on.
interrupted = This device has stopped the drawing. Your jump is kept. It comes back when drawing is possible again.
interrupted-again = Try now
no-graphics = The jump can't be drawn here
no-graphics-about = The picture needs WebGL 2, and this browser does not have it. Use a current version of Firefox, Chrome, Edge or Safari, with hardware acceleration switched on. The numbers of the jump are below.
no-script = Turns Aloft computes the jump in your browser and needs JavaScript, which is switched off. Switch it on for this page and reload.
update-ready = A new version is ready; it opens with the next reload.
update-reload = Reload now
update-later = Later
