### A jump as the user says it: its numbers and their marks, its units, its files and links.

## What a number is called, alone and inside a sentence, and what it means.

key-takeoff-rate-rad-s = Take-off rate
key-takeoff-rate-rad-s-inline = take-off rate
key-takeoff-rate-rad-s-about = How fast the hips turn about the vertical at take-off.
key-arm-tuck = Arm tuck
key-arm-tuck-inline = arm tuck
key-arm-tuck-about = How far the arms come in: 0 stays as at take-off, 100 % is as tight as this body can get.
key-leg-tuck = Leg tuck
key-leg-tuck-inline = leg tuck
key-leg-tuck-about = How far the legs come together: 0 stays as at take-off, 100 % is as tight as this body can get.
key-hand-mass-kg = Added hand mass
key-hand-mass-kg-inline = added hand mass
key-hand-mass-kg-about = Mass held in each hand. It is a physics experiment, not allowed in competition.
key-jump-height-m = Jump height
key-jump-height-m-inline = jump height
key-jump-height-m-about = How far the centre of mass rises from take-off to the top.
key-stature-m = Stature
key-stature-m-inline = stature
key-stature-m-about = Height of the jumper. Every length of the body changes with it.
key-body-mass-kg = Body mass
key-body-mass-kg-inline = body mass
key-body-mass-kg-about = Mass of the jumper without boots. The mass of every part of the body changes with it.
key-boot-mass-kg = Boot mass
key-boot-mass-kg-inline = boot mass
key-boot-mass-kg-about = Mass of one boot with its blade.
key-takeoff-openness = Take-off openness
key-takeoff-openness-inline = take-off openness
key-takeoff-openness-about = How wide the arms and the free leg are at take-off.
key-lean-rad = Lean at take-off
key-lean-rad-inline = lean at take-off
key-lean-rad-about = How far the body's long axis leans at take-off, to the side that it turns to.
key-pre-rotation-turns = Turned before take-off
key-pre-rotation-turns-inline = turned before take-off
key-pre-rotation-turns-about = The part that the body turns while the foot is still on the ground. It counts towards the jump.
key-arm-asymmetry = One arm left out
key-arm-asymmetry-inline = one arm left out
key-arm-asymmetry-about = How much of its way in one arm does not go.
key-close-delay-s = Start of closing
key-close-delay-s-inline = start of closing
key-close-delay-s-about = Time from take-off until the closing starts.
key-close-time-s = Closing time
key-close-time-s-inline = closing time
key-close-time-s-about = Time the arms and legs take to close.
key-arm-lag-s = Lag of one arm
key-arm-lag-s-inline = lag of one arm
key-arm-lag-s-about = How much later than the rest one arm closes.
key-open-lead-s = Opening before landing
key-open-lead-s-inline = opening before landing
key-open-lead-s-about = How long before touch-down the opening begins.
key-open-time-s = Opening time
key-open-time-s-inline = opening time
key-open-time-s-about = Time that the whole opening would take. Touch-down may come first.

## What is uncertain of four inputs: three of the numbers above, and the ratio of inertia.

key-inertia-ratio-share = Inertia, open to tight
key-inertia-ratio-share-inline = open-to-tight ratio of inertia
half-width-jump-height-m-about = In a video with 60 frames a second, one frame more or less in half a second of hang time is 2 cm of height.
half-width-hang-time-s-about = The uncertainty of the jump height, as time in the air. They are one and the same, and you can set either. A stop-watch in the hand gives a hang time to about 0.05 s (common practice, no source). A video with 30 frames a second gives it to 0.027 s, one with 60 to 0.013 s, because take-off and landing each lie between two frames.
half-width-takeoff-rate-rad-s-about = A direction read to 2° on two frames a tenth of a second apart gives the rate to 0.5 rad/s, about 5 rpm. That it can be read so well is our assumption.
half-width-close-time-s-about = One frame of a video with 60 frames a second.
half-width-inertia-ratio-share-about = How many times larger the moment of inertia is with the body open than with it tight. This says how much faster closing makes the turning, and bodies differ in it. The usual value comes from nine bodies from outside: five measured people and four published tables. Each was given the jumper's stature and mass and flown in every starting point. They are all adults. Below 1.55 m the value is half as large again. That is our choice, because no child's body was found.

## Where the marks on a number come from.

marks-tuck = The body's shape allows the whole range. No published measure of tuck was found. The mark shows where a joint in this jump reaches the strength measured in people, while closing or held tight. Everything else stays as now.
marks-close-delay = Closing can begin right at take-off (common practice, no source).
marks-close-delay-not-known = Not known for a jumper of this size. Grown jumpers can begin to close right at take-off (common practice, no source).
marks-close-time = No measurement was found of how fast people close. The mark shows where a joint in this jump reaches the strength measured in people, while closing. Everything else stays as now.
marks-open-time = No measurement was found of how fast people open. The mark shows where a joint in this jump reaches the strength measured in people, while opening. Everything else stays as now.
marks-effort-not-known = Not known for a jumper of this size: no measurement of children's shoulders and hips was found. Hatched is what would need more than 1.4 times the strength of the strongest grown people of the same sex that were measured. Everything else stays as now.
marks-open-lead = We know of no landing that was prepared for less than 0.05 s (common practice, no source).
marks-open-lead-not-known = Not known for a jumper of this size: no measured opening of a child was found.
marks-hand-mass = Training gloves weigh a few hundred grams (common practice, no source). Beyond that mark, holding the weight in this jump would take more than the grip of the median adult (Dodds et al. 2014).
marks-hand-mass-not-known = Not known for a jumper of this size: no measurement of children's grip was found. Beyond the mark, holding the weight in this jump would take more than the grip of the median adult of the same sex (Dodds et al. 2014).
marks-trampoline = Trampoline flights of about 1.7 s have been scored (press, secondary): the whole range is in reach.
marks-trampoline-not-known = Not known for a jumper of this size: the trampoline flights that were found are those of grown jumpers.
marks-jump-height-girl = Girls below 1.55 m: up to 38.7 cm, the mean and two deviations of 19 girls of 10 to 16 who skate, off the ice (29.1 cm, 4.8 cm; Myklebust & Kjellstadli). Beyond 90 cm no jump from the feet alone is known to us (from memory).
marks-jump-height-boy = Boys below 1.55 m: up to 39.9 cm, the largest yearly mean of boys of 12 to 15 (30.8 to 39.9 cm; Tian et al. 2023, abstract); single boys jump higher. Beyond 90 cm no jump from the feet alone is known to us (from memory).
marks-jump-height-woman = Women: up to 43.5 cm, the mean and two deviations of double Axels landed off the ice by women (38.3 cm, 2.6 cm; congress abstract ECSS 985). Beyond 90 cm no jump from the feet alone is known to us (from memory).
marks-jump-height-man = Men: up to 60 cm, from 0.7 s quoted for four turns (press, secondary, 2003). Beyond 90 cm no jump from the feet alone is known to us (from memory).
marks-jump-height-not-known = Not known for a jumper of this size: no measurement below 1.25 m was found. Nobody of any size has been seen above 60 cm: 0.7 s quoted for four turns (press, secondary, 2003).
marks-takeoff-rate = The marks go by the fastest turning rate of this jump. People have been seen at up to 440 rpm. Nobody has been seen at 500 rpm (common practice, no source).
marks-takeoff-rate-not-known = Not known for a jumper of this size. The mark goes by the fastest turning rate of this jump. Nobody, grown people included, has been seen at more than 440 rpm (common practice, no source).
seen-peak-rate = Common practice, no source. Spins on the ice at 342 rpm are on record. Nobody has been seen at 500 rpm.
seen-peak-rate-not-known = This is for grown people (common practice, no source). How fast children of this size turn is not known.

## How strong joints have been measured to be.

strength-shoulder-woman = Shoulder of women: most about 0.85, the strongest about 1.4 N m/kg (Harbo et al. 2012, secondary; the upper end derived, no deviation was found).
strength-shoulder-man = Shoulder of men: most about 1.1, the strongest 1.85 N m/kg (Harbo et al. 2012 and a gymnast's measured curves, both secondary).
strength-elbow-woman = Elbow of women: most about 0.55, the strongest about 0.95 N m/kg (Harbo et al. 2012, secondary; Gentil et al., trained women, derived with 60 kg).
strength-elbow-man = Elbow of men: most about 0.75, the strongest about 1.3 N m/kg (Lategan & Kruger 2003; Falk et al. 2009; a gymnast's curves, secondary).
strength-hip-woman = Hip of women: most about 2.8, the strongest about 4.5 N m/kg (Anderson et al. 2007, secondary; elite sprinters, Li 2016, abstract).
strength-hip-man = Hip of men: most about 2.75, the strongest about 4.5 N m/kg (Anderson et al. 2007 and Harbo et al. 2012, secondary).
strength-knee-woman = Knee of women: most about 2.5, the strongest 3.75 N m/kg (Sarabon et al. 2021; trained women, doi 10.1016/j.asmr.2023.100861; abstracts).
strength-knee-man = Knee of men: most about 3.1, the strongest about 4.2 N m/kg (Sarabon et al. 2021, abstract; Anderson et al. 2007, secondary; skaters of a national team have 2.8, Wang & Liu).
strength-spine-woman = Trunk of women: most about 2.6, the strongest about 4.0 N m/kg (young athletes of both sexes, Mueller et al. 2014; no grown woman's figure was found; machines differ much).
strength-spine-man = Trunk of men: most about 3.5, the strongest about 6.4 N m/kg (elite rowers, Sportverletz Sportschaden 1994;8:134; after training, Pollock et al. 1989, derived with 70 kg; machines differ much).
strength-elbow-child = Elbow of children: most about 0.63, the strongest about 1.0 N m/kg (15 boys of 10, Falk et al. 2009, derived with the median mass; one study).
strength-knee-child = Knee of children: most about 2.3, the strongest about 3.2 N m/kg (derived: men's by the ratio of boys to men, Sarabon et al. 2021 and Dotan et al. 2013).
strength-spine-child = Trunk of children: most about 2.8, the strongest about 4.0 N m/kg (377 athletes of 13, Mueller et al. 2014, abstract).
strength-not-known = Not known for a jumper of this size: no child's strength was found for this joint. The figure is that of the strongest grown people of the same sex that were measured.

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

## What a jump is called that has no name of its own.

name-unnamed = New jump ({ $jump })
name-begun-from = Begun from “{ $name }”.
# One thing that is different in a jump, behind its name: "arm tuck 70 %".
name-difference = { $what } { $value }
name-differences = { $count ->
    [one] one change
   *[other] { $count } changes
}
name-and-differences = { $told }, { $count } more

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
start-four-turns-note = An invented jumper. A quadruple toe loop, landed. It asks more of the hips than hips have been measured to give; legs that hold each other, which is not counted, would take a part.
start-five-turn-attempt-name = Five-turn attempt
start-five-turn-attempt-note = An invented jumper. What five turns would ask for: everything tight almost at once, a rate beyond the highest seen and hips stronger than any measured. Nobody has been seen to do that; and even so a little is missing, which the rule lets pass.
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
number-no-part = { $key } = { $value } cannot be set: it has no part in a jump that was led by hand. { $led } = { $none } takes the hand away
led-not-set = { $key } = { $value } cannot be set: only { $key } = { $none } can, which takes the hand away
knots-count = { $led } has { $count } knots: there have to be 1 to { $most }
knots-out-of-range = { $led }, knot { $place }: { $key } = { $value } is out of range: it goes from 0 to { $most }
knots-out-of-order = { $led }, knot { $place }: time_s = { $value } has to be later than in the knot before
half-width-out-of-range = half-width of { $key } = { $value } is out of range: it goes from 0 to { $most }
half-width-not-a-number = half-width of { $key } = { $value } is not a number: it goes from 0 to { $most }
half-width-unknown = half-width of { $key } = { $value }: no such half-width; they are { $known }
half-width-hang-time = half-width of { $key } = { $value }: it goes from 0 to { $most }
hang-time-not-a-number = { $key } = { $value } is not a number: give seconds
hang-time-out-of-range = { $key } = { $value } is out of range: with this body and motion the heights that can be set are in the air from { $least } to { $most }
hang-time-not-flown = { $key } = { $value }: no height gives just that, since a foot meets the ground on the way; the nearest is { $nearest }

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

## What is wrong in a file, as part of a sentence.

fault-at = { $what } at line { $line } column { $column }
fault-ends-early = it ends before it is complete,
fault-malformed = it is not written as JSON is,
fault-missing = missing field `{ $key }`
fault-twice = duplicate field `{ $key }`
fault-unknown = unknown field `{ $key }`, there are { $known }
fault-no-object = field `{ $key }` is no object
fault-no-list = field `{ $key }` is no list
fault-no-whole-number = field `{ $key }` is no whole number
fault-no-number = field `{ $key }` is no number
fault-no-text = field `{ $key }` is no text

## Why the file of an attempt was not opened, as part of a sentence.

attempt-too-large = this file is too large to be an attempt; open one saved by Turns Aloft
attempt-not-json = this file is not an attempt, or a damaged one ({ $why }); open one saved by Turns Aloft
attempt-none = this file is not an attempt saved by Turns Aloft; open one that is
attempt-newer = this attempt is of version { $version } and this Turns Aloft reads up to version { $known }; update Turns Aloft to open it
attempt-broken = this attempt is broken: { $why }; save it again or mend that entry
attempt-jump = the jump of this attempt cannot be opened: { $why }
attempt-not-measured = this attempt has to say how it was measured, in exactly one of { $known }
attempt-out-of-range = { $key } = { $value } is out of range: it goes from { $least } to { $most }
attempt-too-many = there are too many entries in `{ $key }`: { $most } are enough
attempt-unknown-point = "{ $value }" is nothing that is marked in the picture; there are { $known }
