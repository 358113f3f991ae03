### A jump as the user says it: its numbers and their marks, its units, its files and links.

## What a number is called, alone and inside a sentence, and what it means.

key-takeoff-rate-rad-s = Take-off rate
key-takeoff-rate-rad-s-inline = take-off rate
key-takeoff-rate-rad-s-about = How fast the hips turn about the vertical as the ice is left.
key-arm-tuck = Arm tuck
key-arm-tuck-inline = arm tuck
key-arm-tuck-about = How far the arms come in: 0 stays as at take-off, 100 % is as tight as this body can get.
key-leg-tuck = Leg tuck
key-leg-tuck-inline = leg tuck
key-leg-tuck-about = How far the legs come together: 0 stays as at take-off, 100 % is as tight as this body can get.
key-hand-mass-kg = Added hand mass
key-hand-mass-kg-inline = added hand mass
key-hand-mass-kg-about = Mass held in each hand; a physics experiment, not allowed in competition.
key-jump-height-m = Jump height
key-jump-height-m-inline = jump height
key-jump-height-m-about = How far the centre of mass rises from take-off to the top.
key-stature-m = Stature
key-stature-m-inline = stature
key-stature-m-about = Height of the jumper; every length of the body scales with it.
key-body-mass-kg = Body mass
key-body-mass-kg-inline = body mass
key-body-mass-kg-about = Mass of the jumper without boots; every segment's mass scales with it.
key-boot-mass-kg = Boot mass
key-boot-mass-kg-inline = boot mass
key-boot-mass-kg-about = Mass of one boot with its blade.
key-takeoff-openness = Take-off openness
key-takeoff-openness-inline = take-off openness
key-takeoff-openness-about = How wide the arms and the free leg are as the ice is left.
key-lean-rad = Lean at take-off
key-lean-rad-inline = lean at take-off
key-lean-rad-about = Tilt of the body's long axis as the ice is left, towards the side it turns to.
key-pre-rotation-turns = Turned on the ice
key-pre-rotation-turns-inline = turned on the ice
key-pre-rotation-turns-about = Part already turned on the ice before leaving it; it counts towards the jump.
key-arm-asymmetry = Arm left out
key-arm-asymmetry-inline = arm left out
key-arm-asymmetry-about = Part of its way in that the trailing arm never makes.
key-close-delay-s = Close delay
key-close-delay-s-inline = close delay
key-close-delay-s-about = Time from take-off until the closing starts.
key-close-time-s = Close time
key-close-time-s-inline = close time
key-close-time-s-about = Time the arms and legs take to close.
key-arm-lag-s = Arm lag
key-arm-lag-s-inline = arm lag
key-arm-lag-s-about = How much later than the rest the trailing arm closes.
key-open-lead-s = Open lead
key-open-lead-s-inline = open lead
key-open-lead-s-about = How long before touch-down the opening begins.
key-open-time-s = Open time
key-open-time-s-inline = open time
key-open-time-s-about = Time the whole opening would take; touch-down may come first.

## What is uncertain of four inputs: three of the numbers above, and the ratio of inertia.

key-inertia-ratio-share = Inertia, open to tight
key-inertia-ratio-share-inline = open-to-tight ratio of inertia
half-width-jump-height-m-about = One picture of a 60-a-second video more or less in half a second of hang time is 2 cm of height.
half-width-takeoff-rate-rad-s-about = A heading read to 2° on two pictures a tenth of a second apart gives the rate to 0.5 rad/s, about 5 rpm; that it can be read so well is our assumption.
half-width-close-time-s-about = One picture of a 60-a-second video.
half-width-inertia-ratio-share-about = How many times the moment of inertia of the open body is that of the tight one: it says how much faster closing makes the jumper, and bodies differ in it. The usual half-width is what nine bodies from outside make of the turns: five measured people and four published tables, each given the jumper's stature and mass and flown through the same plan, for every starting point. They are all adults. Below 1.55 m it is half as wide again, which is our choice: no child's body was found to compare.

## Where the marks on a number come from.

reach-tuck = The whole range is within the body's reach; no published measure of tuck was found.
reach-close-delay = Closing can begin as the ice is left (common practice, no source).
reach-close-time = Arms and legs that close in less than 0.15 s are not known to us (from memory, no source).
reach-open-lead = A landing prepared for less than 0.05 s is not known to us (common practice, no source).
reach-hand-mass = Training gloves weigh a few hundred grams (common practice, no source). Beyond: the pull would exceed the median adult hand grip (Dodds et al. 2014), at this jump's peak.
reach-trampoline = Trampoline flights of about 1.7 s have been scored (press, secondary): the whole range is in reach.
reach-jump-height = 20 cm: girls of 10 to 16 off the ice, mean less two deviations (29.1 cm, 4.8 cm; Myklebust). 60 cm: 0.7 s quoted for four turns (press, 2003). Beyond 90 cm no jump from the feet alone is known to us (from memory).
reach-takeoff-rate = Marked by the peak that this body and plan make of it: up to 440 rpm has been seen, 500 rpm by nobody (common practice, no source).

## Units, as they stand behind a number.

unit-rpm = rpm
unit-turns-per-s = turns/s
unit-deg-per-s = deg/s
unit-rad-per-s = rad/s
unit-cm = cm
unit-m = m
unit-in = in
unit-kg = kg
unit-lb = lb
unit-s = s
unit-deg = deg
unit-rad = rad
unit-turns = turns
unit-percent = %

## The jumps of the sport.

jump-toe-loop = Toe loop
jump-salchow = Salchow
jump-loop = Loop
jump-flip = Flip
jump-lutz = Lutz
jump-axel = Axel
jump-off-ice = Off-ice turn
jump-free = Free
jump-free-in-words = Free jump
jump-off-ice-turns = { $turns ->
    [one] { $turns } turn off the ice
   *[other] { $turns } turns off the ice
}

## The starting points, as their files call them.

start-half-a-turn-short-name = Half a turn short
start-half-a-turn-short-note = An invented jumper. A double Salchow by a twelve-year-old who is high enough and leaves the ice fast enough, but closes late and not tight. The mass tables describe adults: for a child this is an estimate.
start-child-single-name = A child's single
start-child-single-note = An invented jumper. A single loop by a ten-year-old with arms that come in late and not far. The mass tables describe adults: for a child this is an estimate.
start-junior-double-name = Junior double
start-junior-double-note = An invented jumper. A double flip by a fourteen-year-old, landed. The mass tables describe adults: for a child this is an estimate.
start-senior-triple-name = Senior triple
start-senior-triple-note = An invented jumper. A triple toe loop by a small, strong adult, landed.
start-four-turns-name = Four turns
start-four-turns-note = An invented jumper. A quadruple toe loop, landed.
start-five-turn-attempt-name = Five-turn attempt
start-five-turn-attempt-note = An invented jumper. What five turns would ask for: everything tight almost at once and a rate beyond the highest seen, and the landing is still not safe from the call.
start-floor-turn-name = Floor turn in shoes
start-floor-turn-note = An invented jumper. A double turn practised on the floor, in shoes.
start-trampoline-name = Trampoline turn
start-trampoline-note = An invented jumper. About twice the time in the air of a jump on ice: four turns without haste. The landing estimate assumes the bed gives way.
start-weighted-hands-name = Weighted hands
start-weighted-hands-note = An invented jumper. The senior triple with half a kilogram in each hand and the same angular momentum: a physics experiment, not allowed in competition.
start-crooked-takeoff-name = Crooked take-off
start-crooked-takeoff-note = An invented jumper. The senior triple leaning in at take-off, one arm late and left out: the axis wobbles and turns are lost.

## A number that cannot be. The key stands as in the scenario file.

number-out-of-range = { $key } = { $value } is out of range: it goes from { $least } to { $most }
number-not-a-number = { $key } = { $value } is not a number: it goes from { $least } to { $most }
number-not-whole = { $key } = { $value } has to be a whole number from { $least } to { $most }
word-unknown = { $key } = { $value } is no such word: it is one of { $known }
text-not-a-text = { $key } = { $value } is not a text: write it in quotation marks
text-too-long = { $key } = { $value } is too long for a scenario: shorten it
key-unknown = { $key } = { $value }: no such key; the keys are { $known }
half-width-out-of-range = half-width of { $key } = { $value } is out of range: it goes from 0 to { $most }
half-width-not-a-number = half-width of { $key } = { $value } is not a number: it goes from 0 to { $most }
half-width-unknown = half-width of { $key } = { $value }: no such half-width; they are { $known }

## Why a scenario's file or a link was not opened, as part of a sentence.

file-too-large = this file is too large to be a scenario; open one saved by Turns Aloft
file-not-text = this file is not text in UTF-8; open one saved by Turns Aloft
file-utf-16 = this file is written in UTF-16; save it in UTF-8, then open it
file-not-json = this file is not a scenario, or a damaged one ({ $why }); open one saved by Turns Aloft
file-no-scenario = this file is not a Turns Aloft scenario; open one saved by Turns Aloft
file-newer = this scenario is of version { $version } and this Turns Aloft reads up to version { $known }; update Turns Aloft to open it
file-broken = this scenario is broken: { $why }; save it again or mend that entry
file-out-of-range = this scenario has a value that cannot be flown: { $why }
link-too-long = this link is too long to hold jumps; copy it again where it came from
link-damaged = this link is damaged or was cut short; copy the whole of it again where it came from
link-newer = this link was made by a newer Turns Aloft (its version is { $version }, this one reads up to { $known }); update Turns Aloft, or reload its page, to open it
link-out-of-range = this link has a value that cannot be flown: { $why }

## What the reader of JSON complains of. The English is the reader's own, letter for letter: by it
## the complaint is known.

json-at = { $what } at line { $line } column { $column }
json-list-unended = EOF while parsing a list
json-object-unended = EOF while parsing an object
json-string-unended = EOF while parsing a string
json-value-unended = EOF while parsing a value
json-no-colon = expected `:`
json-no-list-comma = expected `,` or `]`
json-no-object-comma = expected `,` or { $brace }
json-no-word = expected ident
json-no-value = expected value
json-no-quote = expected `"`
json-bad-escape = invalid escape
json-bad-number = invalid number
json-large-number = number out of range
json-bad-character = invalid unicode code point
json-control-character = control character (\u0000-\u001F) found while parsing a string
json-bad-key = key must be a string
json-lone-surrogate = lone leading surrogate in hex escape
json-trailing-comma = trailing comma
json-trailing-characters = trailing characters
json-escape-unended = unexpected end of hex escape
json-too-deep = recursion limit exceeded
json-missing-field = missing field `{ $name }`
json-duplicate-field = duplicate field `{ $name }`
json-unknown-field = unknown field `{ $name }`, expected { $known }
json-one-of = one of { $names }
json-either = { $one } or { $other }
json-bad-type = invalid type: { $found }, expected { $wanted }
json-bad-value = invalid value: { $found }, expected { $wanted }
json-found-string = string { $value }
json-found-integer = integer { $value }
json-found-number = floating point { $value }
json-found-boolean = boolean { $value }
json-null = null
json-sequence = sequence
json-map = map
json-a-sequence = a sequence
json-u64 = u64
json-struct = struct { $name }
