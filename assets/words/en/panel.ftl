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
panel-settings = Language and units
panel-save = Save it as a file
panel-link-to-it = Copy a link to it
panel-link-to-both = Copy a link to both
panel-jumps = Jumps. Open: { $name }
panel-new-jump = New jump
panel-open-file = Open a file
panel-starts-invented = Starting points, all invented
panel-changed = { $name } (changed)
panel-language = Language
panel-greeting = Pull a slider and watch the turns.
panel-greeting-away = Put this line away
panel-light = Light
panel-light-device = Device
panel-light-day = Day
panel-light-night = Night
panel-type = Type
panel-type-usual = Usual
panel-type-large = Large
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
panel-uncertainty-meaning = Each input is taken to lie within its ± in 95 of 100 cases, whatever the others do; so do the turns within their range.
panel-nothing-uncertain = Nothing is taken to be uncertain.
panel-matters-most = The { $what } matters most.
panel-back-to-usual = Back to the usual

## The jump

panel-meaning = What is meant by { $what }
panel-typed = { $what } as a number
panel-seen = seen in people
panel-out-of-reach = out of reach
panel-reset-all = Put everything back
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
panel-turns-in-name = Turns in the name (an Axel owes half a turn more)
panel-hands-keep = With heavier hands the jumper keeps the
panel-hands-keep-rate = rate
panel-hands-keep-momentum = momentum
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
panel-leaving-the-ice = Leaving the ice
panel-closing = Closing
panel-opening = Opening
panel-simulation = A simulation, not advice.

## The picture and the charts

panel-view-front = Front
panel-view-above = Above
panel-view-axis = Axis
panel-dismiss = Put the message away
panel-bring-back = Bring it back
panel-play = Play
panel-pause = Pause
panel-picture-back = One picture back
panel-picture-on = One picture on
panel-repeat = Repeat
panel-speed = Speed { $speed }
panel-time-on-charts = Time, on the charts
panel-time-in-flight = Time in the flight
panel-curve-rate = Turning rate
panel-curve-inertia = Moment of inertia
panel-curve-turns = Turns so far
panel-torques-note = Net joint torques: what muscles, ligaments and bone give together, not the force of one muscle.
panel-torques-up-to = { $torque } at most
panel-torque-now = { $joints } { $torque }
panel-this-jump = This jump
panel-span-closing = closing
panel-span-tight = tight
panel-span-opening = opening
panel-take-off = take-off
panel-down-at = down at { $time } s

## Why

panel-where-turns-went = Where the turns went
panel-ideal = Ideal
panel-turned-on-ice = Turned on the ice
panel-turns-in-all = Turns in all
panel-try-step = Try: { $step }, { $gain }
panel-what-matters-most = What matters most
panel-steps-hint = Turns that one small step gives: tap to try
panel-try-it = Try it
panel-go-back = Go back

## Goal

panel-target-full = Full turns
panel-target-not-called = Not called
panel-turns-wanted = Turns wanted
# Beside "Go back".
panel-go-back-to = to the jump before
panel-one-change = One change alone
panel-no-single-change = No single change does it.
panel-several = A little of several
panel-no-mix = No mix of these was found that gives the turns.
panel-being-worked-out = Being worked out…
panel-cannot-alone = Cannot do it alone
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
panel-season = What a season may bring
panel-season-held = 0 holds a lever as it is: it takes no part in a little of several.
panel-step-less = { $what }, { $value }: less
panel-step-more = { $what }, { $value }: more

## Map

panel-map-across = Across: { $lever }
panel-map-upwards = Upwards: { $lever }
panel-map-point = On the map: { $lever }
panel-map-quarter = a quarter turn each
panel-map-whole = whole turns
panel-map-owed = { $turns } turns owed
panel-map-line-owed = { $turns } owed
panel-map-edge = edge of what is seen in people
panel-map-not-seen = not seen in people
panel-map-not-known = Not everything is known for a jumper of this size: the edge then is where nobody at all has been seen.
panel-map-use = Touch the map and the jump goes there, the sliders with it. Hold the point and move it for small changes.
panel-landing-load = Landing load now, an estimate: { $low } to { $high } body weights.

## Compare

panel-compare-none = Lay another attempt beside this jump.
panel-compare-how = Then you see both at once, and what each difference is worth in turns. Keep this jump, change it and compare; or choose another one below.
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
panel-kept-none = None yet. “Keep” at the top keeps the jump at hand. Kept jumps stay on this device, and nothing is sent anywhere.
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
