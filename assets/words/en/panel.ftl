# The panels: bar, sliders, charts, the answers' own frames.

## The bar

panel-open = Open
panel-share = Share
panel-keep = Keep
panel-keep-it = Keep this jump
panel-begin = Begin a new jump
panel-undo = Undo
panel-undo-what = Undo: { $what }
panel-redo = Redo
panel-redo-what = Redo: { $what }
panel-settings = Settings
panel-save = Save it as a file
panel-save-picture = Save it as a picture
panel-save-table = Save the flight as a table
panel-sheet = Sheet for the coach
panel-send-picture = Send a picture of it
panel-send-link-to-it = Send a link to it
panel-send-link-to-both = Send a link to both
panel-link-to-it = Copy a link to it
panel-link-to-both = Copy a link to both
panel-jumps = Jumps. Open: { $name }
panel-new-jump = New jump
panel-open-file = Open a file
panel-starts-invented = Starting points, all invented
panel-changed = { $name } (changed)
panel-language = Language
panel-greeting = Drag a slider and watch the turns change.
panel-greeting-away = Close this line
panel-light = Colours
panel-light-device = As the device
panel-light-day = Light
panel-light-night = Dark
panel-type = Text size
panel-type-usual = Usual
panel-type-large = Large
panel-figure = Figure
panel-figure-body = Body
panel-figure-sticks = Sticks
panel-unit-of-rate = Turning rate
panel-unit-of-length = Lengths
panel-unit-of-mass = Masses

## The answer

panel-turns = turns
panel-turns-count = { $turns } turns
panel-turns-of = of { $owed }
panel-turns-of-short = of { $owed }, { $short }
# $call: one call; or several, any of which it may be.
panel-call-is = { $jump } is { $call }
panel-call-may-be = { $jump } may be { $call }
panel-uncertainty = Uncertainty
panel-uncertainty-inputs = Uncertainty of the inputs
panel-uncertainty-meaning = Each input is taken to lie within its ± in 95 of 100 cases. The inputs do not depend on each other. The turns then lie within their range in 95 of 100 cases.
panel-nothing-uncertain = Every input is taken as exact.
panel-matters-most = Most of the range comes from { $what }.
panel-back-to-usual = Back to the usual values

## The jump

panel-meaning = What is meant by { $what }
panel-typed = { $what } as a number
panel-seen = seen in people
panel-out-of-reach = out of reach
panel-reset-all = Reset everything
panel-charts = Charts over the flight
panel-readouts = All readouts
panel-which-jump = Name and jump
panel-name = Name of the jump
panel-name-own = A name of your own
panel-note = Note
panel-note-own = A note of your own
panel-turns-short = Turns
panel-off-ice-short = Off ice
panel-set-up = Show the jump
panel-turns-in-name = Turns in the name (an Axel needs half a turn more)
panel-hands-keep = With heavier hands this stays the same at take-off
panel-hands-keep-rate = rate
panel-hands-keep-momentum = angular momentum
panel-hands-keep-energy = energy
panel-the-jumper = The jumper
panel-table = Mass table of adults; an estimate for a child
panel-table-female = Female
panel-table-male = Male
panel-ground = Jumps on
panel-ground-ice = Ice
panel-ground-floor = Floor
panel-ground-trampoline = Trampoline
panel-turning = Turns, seen from above
panel-turning-anticlockwise = Anticlockwise
panel-turning-clockwise = Clockwise
panel-motion = Take-off, closing, opening
panel-at-take-off = At take-off
panel-closing = Closing
panel-opening = Opening
panel-simulation = A simulation, not advice.

## The picture and the charts

panel-view-front = Front
panel-view-side = Side
panel-view-above = Above
panel-landing-shown = Landing shown, not computed
panel-dismiss = Close the message
panel-bring-back = Bring it back
panel-play = Play
panel-pause = Pause
panel-picture-back = One frame back
panel-picture-on = One frame on
panel-repeat = Repeat
panel-speed = Speed { $speed }
panel-time-on-charts = Time, on the charts
panel-time-in-flight = Time in the flight
panel-curves = Curves
panel-curves-choose = Choose the curves
panel-curves-full = There is room for no more curves here. A further one takes the place of the lowest.
panel-curve-rate = Turning rate
panel-curve-inertia = Moment of inertia
panel-curve-momentum = Angular momentum
panel-curve-energy = Energy of turning
panel-curve-turns = Turns so far
panel-curve-height = Centre of mass
panel-curve-torque = Largest torque
panel-equation = L = I · ω
panel-equation-about = L is the angular momentum, I the moment of inertia, ω the turning rate of the hips. While arms and legs move, or while the body leans, their own motion adds a small rest. L stays the same in the air.
panel-equation-rest = arms, legs, lean
panel-torques-note = Net joint torques: what muscles, ligaments and bones give together. It is not the force of one muscle.
panel-torques-up-to = { $torque } at most
panel-torque-now = { $joints } { $torque }
panel-this-jump = This jump
panel-span-closing = closing
panel-span-tight = tight
panel-span-opening = opening
panel-take-off = take-off
panel-down-at = down at { $time } s

## Why

panel-where-turns-went = Where the turns were lost
panel-ideal = Best possible
panel-turned-before-take-off = Turned before take-off
panel-turns-in-all = Turns in all
panel-try-step = Try: { $step }, { $gain }
panel-what-matters-most = Which change gives most
panel-steps-hint = Turns from one small step: tap to try
panel-try-it = Try it
panel-go-back = Go back

## Goal

panel-target-full = Full turns
panel-target-not-called = No q, < or <<
panel-turns-wanted = Turns wanted
# Beside "Go back".
panel-go-back-to = to the jump before
panel-one-change = One change alone
panel-no-single-change = No single change is enough.
panel-several = Several small changes
panel-no-mix = No mix of these was found that gives so many turns.
panel-being-worked-out = Computing…
panel-cannot-alone = Not enough alone
panel-together = Together
panel-weights-needed = Weights: no technique
panel-try-change = Try it: { $what }, { $change }
panel-verdict = { $what }: { $verdict }. Why?
panel-verdict-why = why?
panel-verdict-close = less
panel-limits = This jumper's limits
panel-limits-of = Limits of { $what }: { $limit }
panel-least = Least
panel-most = Most
panel-forget-limits = Forget these limits
panel-season = What one season may change
panel-season-held = 0 means: this stays as it is in “Several small changes”.
panel-step-less = { $what }, { $value }: less
panel-step-more = { $what }, { $value }: more

## Map

panel-map-across = Across: { $lever }
panel-map-upwards = Upwards: { $lever }
panel-map-point = On the map: { $lever }
panel-map-quarter = a quarter turn each
panel-map-whole = whole turns
panel-map-owed = { $turns } turns needed
panel-map-line-owed = { $turns } needed
panel-map-edge = edge of what is seen in people
panel-map-not-seen = not seen in people
panel-map-not-known = Not everything is known for a jumper of this size. There the edge shows what nobody of any size has been seen to do.
panel-map-also-beyond = The edge is that of turning rate, jump height and the two inputs of the map. What this jump asks of the joints is also more than ever seen in people: { $what }.
panel-map-use = Touch the map: the jump and its sliders go there. Hold the point and move it for small changes.
panel-map-save = Save the map as a table
panel-landing-load = Landing load now, an estimate: { $low } to { $high } body weights.

## Compare

panel-compare-none = Compare this jump with another one.
panel-compare-how = You see both jumps at once, and how many turns each difference makes. Keep this jump, change it, and compare. Or choose another jump below.
panel-compare-with = Compare with
panel-compare-with-one = Compare with { $name }
panel-compare-with-result = Compare with { $name }, { $result }
panel-reference-nothing = Nothing
panel-reference-as-opened = As it was opened
panel-reference-before-try = Before the change: { $was }
panel-figures-over = Over one another
panel-figures-beside = Side by side
panel-reference-linked = “{ $name }” came with the link.
panel-from-to = { $from } to { $to }
panel-starts = Starting points
panel-kept-jumps = Kept jumps
panel-kept-none = No kept jumps yet. “Keep” at the top keeps the present jump. Kept jumps stay on this device. Nothing is sent anywhere.
panel-kept-open = Open
panel-kept-open-it = Open: { $name }
panel-kept-rename = Rename
panel-kept-rename-it = Rename: { $name }
panel-kept-name = Name
panel-kept-delete = Delete
panel-kept-delete-it = Delete: { $name }
panel-kept-up = Up
panel-kept-up-it = Up: { $name }
panel-kept-down = Down
panel-kept-down-it = Down: { $name }
panel-kept-deleted = “{ $name }” is deleted.
panel-kept-undo = Undo
panel-kept-undo-it = Undo: “{ $name }” is deleted.
panel-save-all = Save all as a file
panel-save-all-about = “Open” at the top opens such a file again.

## Help

help-title = Help
help-close = Close
help-about = This page shows a jump with turns. It tells how many turns the body makes before it lands, and why. Every flight is computed by the laws of mechanics.
help-use = Drag a slider, and the jump is flown again. Touch a “?” to read what a number means. Drag on the charts to move through the flight. Nothing is sent anywhere.
help-questions = Five questions
help-jump = how many turns does this jump have? Set the body, the take-off and the movement here.
help-why = where were turns lost, and which small change gives most?
help-goal = what would give the turns that are missing?
help-map = how many turns are there with other values of two inputs?
help-compare = what is different in another jump?
help-estimated = What is estimated
help-estimated-about = The flight is computed, without the air. Estimates are: the landing load, what people are able to do, and everything marked “common practice”. “Uncertainty” shows how exact the turns are.
help-who-decides = Who decides about jumping

## Measuring a real attempt.

measure-menu = Measure a real attempt
measure-by-watch = With a stop-watch
measure-in-film = In a film
measure-leave = Leave measuring
measure-no-film = The film that you open is shown here. It stays on this device.
measure-film = The film
measure-film-unreadable = What the film says of its pictures can't be read. Choose another one.
measure-film-choose = Open a film of the jump.
# $name is the name of a film's file.
measure-film-again = Your marks are here. Open the film “{ $name }” to go on.
measure-open-film = Open a film
# Which mark is asked for, of how many.
measure-step = { $step } of { $of }
measure-take-off = Last picture on the ground
measure-take-off-about = Go to the last picture in which a foot is still on the ground.
measure-landing = Last picture in the air
measure-landing-about = Go to the last picture in which both feet are still in the air.
measure-head = Top of the head
measure-feet = Lower foot
measure-hips = Middle of the hips
measure-background = A fixed point
measure-point-about = Touch it in the film, or bring the cross there.
measure-background-about = Where the camera moves: touch a point in the background that stands still, the same one in several pictures.
measure-facing = Which way the hips face
measure-facing-about = Turn the figure until its hips face like those in the film. Swipe over the film or use the slider.
measure-turn-figure = Turn the figure
# An angle.
measure-degrees = { $degrees }°
measure-posture = Arms and legs
measure-posture-about = Close the figure as far as the jumper is closed here.
measure-arms = Arms in
measure-legs = Legs in
measure-mark-picture = Mark this picture
measure-it-fits = It fits
measure-cross-right = Cross, from the left
measure-cross-down = Cross, from the top
measure-pixels = { $pixels } pixels
measure-mark-cross = Mark the cross
measure-turn-round = Turn the jump round
measure-take-back = Take back
measure-skip = Skip
measure-all-marked = All marks are there.
measure-more-marks = Each further mark makes the answer surer. Go to a picture and choose what to mark in it.
measure-marked = Marked
# A mark and its time in the film.
measure-marked-at = { $what }: { $time } s
measure-slow-motion = Slow motion
# How many times slower than life a film plays.
measure-times-slower = { $times } ×
measure-slow-motion-about = How many times slower than life the film plays: 1 × is none.
measure-ten-back = Ten pictures back
measure-ten-on = Ten pictures on
measure-times-larger = { $times }×
measure-look-closer = Look closer
measure-time-line = Picture of the film
# A picture of the film, how many there are, and its time.
measure-frame = { $frame } of { $of } · { $time } s
measure-watch = What the stop-watch says
measure-watch-half-width = Right to
measure-watch-about = A stop-watch in the hand is right to about 0.05 s, or worse (our estimate: no measurement of it was found).
measure-landed = How did the landing face?
measure-as-owed = as it should
measure-quarter-short = a quarter short
measure-half-short = half a turn short
measure-quarter-far = a quarter too far
measure-half-far = half a turn too far
measure-counted = Turns counted
measure-counted-about = With those before take-off; to a quarter turn.
measure-not-counted = not counted
measure-cautions = Before you film
measure-working = Working it out …
# The least and the most time.
measure-hang-time = In the air for { $low } to { $high } s.
measure-ask-why = Ask why
measure-with-change = Show it with the best change as well
measure-on = Back to the marks
measure-sensor = A sensor on the trunk
measure-trace-again = Open the file of the sensor again to move what was found in it.
# The largest rate.
measure-trace-peak = to { $rate }
measure-flight-from = Flight from
measure-flight-to = Flight to
measure-rest-from = At rest from
measure-rest-to = At rest to
measure-columns = Columns of the file
measure-column-time = Time
measure-column-gyroscope = Gyroscope
measure-column-accelerometer = Accelerometer
# A column without a name.
measure-column-number = column { $number }
# What a column is and its name.
measure-column = { $what }: { $column }
measure-by-sensor = With a sensor
measure-example-film = Try it with an invented film
measure-example-film-about = A drawn skater tries a double Salchow: 60 pictures a second, and the camera moves.
measure-example-film-name = invented attempt.mp4
measure-save = Save the marks as a file
measure-line-asked = To be marked
measure-line-answer = What the marks say

## The five-turn try.
in-your-hands-menu = In your own hands
try-title = The five-turn try
try-about = As many turns as you can, with as few limits of people passed as you can. Not how often anybody jumps.
try-step = { $turns }
try-passed-count = Limits passed: { $count }
try-passed-one = • { $what }
try-card = Save the card as a picture
try-leave = End the try
try-by-hand = Fly this try by hand
# $turns: those that are tried.
try-step-by-hand = The five-turn try: { $turns } turns
try-count = Count this for the try
try-back = Back to the try
try-better = Better than your jump before.
try-as-good = As good as your jump before.
try-worse = Not as good as your jump before.
