### What the user is doing: every readout, every answer, and what is said when something goes wrong.

## The questions; short, they stand side by side.

question-jump = Jump
question-why = Why
question-goal = Goal
question-map = Map
question-compare = Compare

## Readings that belong together.

group-turns = Turns
group-uncertainty = Uncertainty
group-time = Time and height
group-rate = Turning rate
group-inertia = Moment of inertia
group-energy = Momentum and energy
group-hands = Force on the hands
group-efforts = What it asks of the body
group-axis = Axis
group-landing = Landing
group-answer = Answer

## Units that nobody chooses.

unit-kg-m2 = kg m²
unit-kg-m2-per-s = kg m²/s
unit-j = J
unit-n = N
unit-n-m = N m
unit-n-m-per-kg = N m/kg
unit-w = W
unit-degrees = °

## Readings: the name of each and what it means, by its published key.

reading-turns = Turns in all
reading-turns-about = Turns in the air plus the part already turned on the ice before leaving it.
reading-air-turns = Turns in the air
reading-air-turns-about = How far the hips turned about the vertical from take-off to touch-down.
reading-pre-rotation-turns = Turned on the ice
reading-pre-rotation-turns-about = Turned before leaving the ice; it counts towards the jump.
reading-turns-owed = Turns owed
reading-turns-owed-about = What the jump's name asks for; an Axel owes half a turn more because it takes off forwards.
reading-shortfall-deg = Missing
reading-shortfall-deg-about = Rotation still missing at touch-down, in degrees: 360 are a whole turn.
reading-over-rotated-deg = Over-rotated by
reading-over-rotated-deg-about = Turned beyond what is owed by more than a quarter turn (common practice, no source: the sport's published rule has no call for it).
reading-landing-facing-deg = Landing faces
reading-landing-facing-deg-about = Where the hips point at touch-down, in degrees past (positive) or before what the landing has to face: within 45° it faces as it has to, from 135° on the opposite way, sideways between; these limits are our own.
reading-call = Call
reading-call-about = By the sport's rule a quarter turn missing is q, more than a quarter <, a half or more <<; the rule gives q the single value 90°, and its band here, { $from }° to 90°, is our own. The rule has no call for turning too far; more than a quarter turn too far is said to be over-rotated (common practice, no source).
reading-phase = Phase
reading-phase-about = What the body is doing at the playhead.
reading-hang-time-s = Hang time
reading-hang-time-s-about = Time from take-off to the first touch of the ice; bent legs at landing make it longer.
reading-jump-height-m = Jump height
reading-jump-height-m-about = How far the centre of mass rises from take-off to the top.
reading-cm-height-now-m = Centre of mass now
reading-cm-height-now-m-about = Height of the body's centre of mass over the ice at the playhead.
reading-rate-now-rad-s = Now
reading-rate-now-rad-s-about = How fast the hips turn about the vertical at the playhead.
reading-takeoff-rate-rad-s = At take-off
reading-takeoff-rate-rad-s-about = How fast the hips turn as the ice is left.
reading-peak-rate-rad-s = Peak
reading-peak-rate-rad-s-about = The fastest of the flight; the highest peaks seen are about 430 to 440 rpm (common practice, no source).
reading-mean-rate-rad-s = Mean
reading-mean-rate-rad-s-about = Turns in the air over hang time: this, not the peak, decides how many turns there are.
reading-touchdown-rate-rad-s = At touch-down
reading-touchdown-rate-rad-s-about = What the landing still has to stop.
reading-inertia-now-kg-m2 = Now
reading-inertia-now-kg-m2-about = How hard the body is to turn about its axis: mass far out counts by the square of its distance.
reading-inertia-takeoff-kg-m2 = At take-off
reading-inertia-takeoff-kg-m2-about = Open arms and a free leg make it large as the ice is left.
reading-inertia-least-kg-m2 = Tightest
reading-inertia-least-kg-m2-about = The smallest of the flight; the mass tables behind it describe adults, so it is an estimate for a child.
reading-angular-momentum-kg-m2-s = Angular momentum
reading-angular-momentum-kg-m2-s-about = Fixed as the ice is left and the same all through the flight, because nothing in the air can turn the body but the air itself, which would take 0.1 to 1 % by estimate and is left out.
reading-energy-now-j = Energy now
reading-energy-now-j-about = Energy of the turning, limbs included, at the playhead.
reading-energy-takeoff-j = Energy at take-off
reading-energy-takeoff-j-about = Energy of the turning as the ice is left.
reading-closing-work-j = Work of closing
reading-closing-work-j-about = Net work of the joints from take-off until the opening begins: what muscles do by pulling arms and legs in against the turning, which they pay for and which makes the turning faster.
reading-opening-work-j = Work of opening
reading-opening-work-j-about = Net work of the joints from there to touch-down: negative where the body lets the turning push arms and legs out, positive where they are thrown out; stopping them again counts against it.
reading-energy-touchdown-j = Energy at touch-down
reading-energy-touchdown-j-about = Energy of the turning, limbs included, as the ice is met: that of take-off, with the work of closing and of opening.
reading-hand-force-left-now-n = Left now
reading-hand-force-right-now-n = Right now
reading-hand-force-now-about = Force of the forearm on this hand with what it holds: it keeps the hand on its circle and swings it in and out.
reading-hand-force-peak-n = Largest
reading-hand-force-peak-n-about = The larger of both hands over the flight; fast closing and fast turning both make it grow.
reading-hand-force-peak-n-about-rate = The larger of both hands over the flight; fast closing and fast turning both make it grow; the heavier hands here keep the take-off rate.
reading-hand-force-peak-n-about-momentum = The larger of both hands over the flight; fast closing and fast turning both make it grow; the heavier hands here keep the angular momentum.
reading-hand-force-peak-n-about-energy = The larger of both hands over the flight; fast closing and fast turning both make it grow; the heavier hands here keep the energy of take-off.
reading-grip-force-peak-n = Grip, largest
reading-grip-force-peak-n-about = What the fingers must hold at most: the force on the weight alone, without the hand's own mass.
joint-shoulders = Shoulders
joint-elbows = Elbows
joint-hips = Hips
joint-knees = Knees
joint-spine = Spine
joint-shoulder = shoulder
joint-elbow = elbow
joint-hip = hip
joint-knee = knee
joint-waist = waist
joint-chest = chest
joint-left = left { $joint }
joint-right = right { $joint }
reading-torque-at = { $torque }, { $joint }
reading-torque-peaks = { $closing } / { $opening } { $unit }
reading-torque-peaks-about = Largest net torque while closing ({ $closing_joint }, { $closing_time }), then while opening ({ $opening_joint }, { $opening_time }): what muscles, ligaments and bone give together, not the force of one muscle.
reading-torque-closing-peak-n-m = Largest, closing
reading-torque-closing-peak-n-m-about = The largest net torque of any of these joints from take-off until the opening begins: what muscles, ligaments and bone give together, not the force of one muscle.
reading-torque-opening-peak-n-m = Largest, opening
reading-torque-opening-peak-n-m-about = The same from the beginning of the opening to touch-down; how the ice is met is not in it.
reading-joint-power-peak-w = Power, largest
reading-joint-power-peak-w-about = Net torque times joint rate, all joints together, where muscles shorten most against the turning.
reading-joint-power-least-w = Power, least
reading-joint-power-least-w-about = The same where the turning pulls the body open the most: below zero, muscles give way and take energy out.
reading-tilt-now-rad = Tilt now
reading-tilt-now-rad-about = Angle between the body's long axis and the vertical at the playhead.
reading-tilt-peak-rad = Largest tilt
reading-tilt-peak-rad-about = A tilted body wobbles about the upright angular momentum and turns more slowly.
reading-tilt-touchdown-rad = Tilt at touch-down
reading-tilt-touchdown-rad-about = How crooked the body comes down.
reading-landing-load-bw = Landing load, estimate
reading-landing-load-bw-value = { $low } to { $high } body weights
reading-landing-load-bw-about = An estimate, not a measurement, of the peak when a half-sine push stops the fall within { $from } to { $to } s (assumed); no safe number of jumps is known, and what is too much is for the coach and a clinician to say.
reading-landing-angular-momentum-kg-m2-s = Turning left to stop
reading-landing-angular-momentum-kg-m2-s-about = Angular momentum about the vertical as the ice is met, all of that of take-off: what the landing has to take up besides the fall, at the turning rate of touch-down.
reading-landing-torque-n-m = Stopping torque, estimate
reading-landing-torque-n-m-about = An estimate, not a measurement: the mean torque that would stop the turning in the same time as the fall, { $from } to { $to } s (assumed); in skating it is less, because part of the turning goes on in the edge that is glided out of (common practice, no source).

from-to = { $from } to { $to }
in-turns = { $turns } turns
either-or = { $first } or { $last }

## Missing rotation, and the call.

shortfall-short = { $degrees }° short
shortfall-too-far = { $degrees }° too far
shortfall-both-short = { $from }° to { $to }° short
shortfall-both-too-far = { $from }° to { $to }° too far
shortfall-either = { $from }° too far to { $to }° short
call-may-be = may be { $calls }
# Where the others have their sign.
call-full-in-short = full
call-over-rotated-in-short = too far
call-none = not called
call-none-over-rotated = over-rotated, not called
call-none-may-be-over-rotated = may be over-rotated, not called
call-over-rotated = over-rotated
call-full = full rotation
call-quarter = on the quarter (q)
call-under = under-rotated (<)
call-downgraded = downgraded (<<)
over-rotated = { $degrees }°
over-rotated-whole-turns = { $turns ->
    [one] { $degrees }°, a whole turn more
   *[other] { $degrees }°, { $turns } whole turns more
}
# Which way a landing faces.
facing-as-owed = as it has to, { $degrees }°
facing-sideways = sideways, { $degrees }°
facing-opposite = the opposite way, { $degrees }°

## What the phase of the flight is called, alone and in the picture's sentence.

phase-on-the-ice = on the ice
phase-landed = landed
phase-opening = opening
phase-still-open = still open
phase-closing = closing
phase-held-tight = held tight

## The result and the picture in one sentence, to be read out.

summary-of-named = { $turns } turns of { $owed }: { $missing }, { $call }.
summary-of-over-rotated = { $turns } turns of { $owed }: over-rotated by { $over }; the landing faces { $facing }.
summary-of-free = { $turns } turns.

## What is beyond what has been seen of people.

beyond-seen = Beyond what has been seen: { $what }
beyond-seen-sentence = Beyond what has been seen: { $what }.
beyond-seen-with-it = With it the jump is beyond what has been seen: { $what }.
beyond-seen-up-to = Seen in people: { $what } up to { $limit }. { $source }
beyond-seen-meaning = The mechanics are right all the same; whether anybody can do it is another question.
beyond-seen-in-short = beyond what has been seen
respect-value = { $what } { $value }
respect-peak-rate = peak rate
respect-jump-height = jump height
respect-closing = { $joint } in closing
respect-opening = { $joint } in opening
strength-spine = spine
strength-meaning = These are net torques, what muscles, ligaments and bone give together, for each kilogram of body mass. Machines measure one joint at a time, in its strongest direction; held against a pull people have been measured at up to 1.4 times as much, which is counted here. Limbs that hold each other, as crossed legs and clasped hands do, take a part that is not counted.
reading-beyond-seen = Beyond what has been seen

picture = The jumper, { $phase }, { $time } after take-off, { $turns } turns so far.

## What an uncertain input alone makes of the turns.

range-by-jump-height = By jump height
range-by-takeoff-rate = By take-off rate
range-by-close-time = By close time
range-by-inertia-ratio = By inertia, open to tight
range-by-about = What { $what } ± { $half_width } alone makes of the turns. { $source }
range-change = ± { $turns } turns

## Why.

why-ideal = What this take-off could give: as tight as this body gets from the first instant to touch-down, upright, with the same angular momentum and the same time in the air.
why-ice = Turned before leaving the ice; it counts towards the jump.
why-turns = The ideal, less what was lost, with what was turned on the ice.
why-order = Each cause is taken away in turn, from the top down. Another order would share the same whole out a little differently.
why-back = Pale: no further than this; what a step back would do.
why-not-possible = not possible
why-closing-about = Until arms and legs are in, the body turns more slowly; here they were in { $time } s after take-off.
why-tightness-about = What stays far from the axis slows the turning; here the arms came in { $arms } % and the legs { $legs } % of their way.
why-opening-about = Opening for the landing slows the turning again; here it began { $time } s before touch-down.
why-tilt-about = An axis that leans, or an arm late or left out, lets the body wobble; here it leaned up to { $tilt } degrees.
why-owed-all-there = { $owed } turns owed: all there
why-owed-missing = { $owed } turns owed: { $turns } missing
why-owed-more = { $owed } turns owed: { $turns } more than that
why-owed-over-rotated = { $owed } turns owed: over-rotated, { $turns } more than that
why-back-wins = back wins { $turns }
why-back-costs = back costs { $turns }
why-loads = Landing load, an estimate, in body weights: { $now } now; { $then }.
why-load-then = { $what }, { $load }
why-load-with-it = with it
why-line-sentence = What cost most
why-line-sentence-about = The largest loss, and the one change to try against it.
why-line-ideal = Ideal
why-line-closing = Lost by closing
why-line-tightness = Lost by not getting tighter
why-line-opening = Lost by opening
why-line-tilt = Lost by tilt and asymmetry
why-line-owed = Against what is owed
why-line-owed-about = The turns owed beside the turns in all.
why-line-gain-about = Turns that this small step alone gives.
why-line-caution = To be known
why-line-caution-about = What has to be known before it is tried.
why-beyond-seen = Beyond what has been seen: { $what } { $value }. { $source }
why-gain-beyond-seen = { $gain }. { $beyond }

## Goal.

goal-season = What a season's training might bring of each, to weigh them against each other: our assumption, common practice, no source.
goal-limits = How far this jumper gets, from the least to the most. Until you set it, one season's change from now is taken.
goal-verdict-already = has them as it is
goal-verdict-within-reach = within this jumper's reach
goal-verdict-within-measured = people have been seen there
goal-verdict-at-edge = at the edge of what has been measured
goal-verdict-not-known = not known for a jumper of this size
goal-verdict-beyond-measured = beyond anything seen
goal-verdict-cannot-alone = cannot do it alone
goal-size-not-known = what jumpers of this size can do here is not known

goal-has-target = This jump has { $turns } turns: the { $target } asked for are there.
goal-has-target-over-rotated = This jump has { $turns } turns: the { $target } asked for are there, but it is over-rotated by { $degrees }°.
goal-question = { $target } turns asked for, { $missing } more than now. What would win them?
goal-most = { $turns } turns at most, at { $at }
goal-basis-jumper = This jumper: { $what } { $range }. { $source }
goal-basis-seen = Seen in people: { $what } { $range }. { $source }
goal-basis-admissible = Can be set: { $what } { $range }. { $source }
goal-landing = Landing load, an estimate: now { $low } to { $high } times the body's weight, then { $then_low } to { $then_high }.
goal-effort = Together { $seasons } seasons' work.
goal-effort-less = Together { $seasons } seasons' work; the easiest lever alone takes { $single }.
goal-limit-unknown = not known
goal-limit-season = { $range } (a season)
goal-season-held = held
goal-line-target = Turns asked for
goal-line-combination = Several together

## Weights in the hands, by what the jumper keeps.

weights = Weights
weights-keeps-rate = keeps the take-off rate
weights-keeps-energy = keeps the rotational energy
weights-keeps-momentum = keeps the angular momentum
weights-turns = { $turns } turns ({ $gain })
weights-more = { $mass } more in each hand
weights-held = { $mass } in each hand, against bare hands:
weights-needed = { $mass } in each hand
weights-cannot = cannot: { $turns } turns at most, at { $at }
weights-no-technique = Weights are no technique: what they would give hangs on what is taken to be kept.
reading-turns-keeping-rate = Rate kept
reading-turns-keeping-energy = Energy kept
reading-turns-keeping-momentum = Momentum kept
weights-known = To be known of weights
weights-known-about = What has been observed of people, and what has to be known before weights are tried.

## Map.

map-hands-keep-rate = With heavier hands the jumper is taken to keep the take-off rate here.
map-hands-keep-momentum = With heavier hands the jumper is taken to keep the angular momentum here.
map-hands-keep-energy = With heavier hands the jumper is taken to keep the rotational energy here.
map-line-across = Across
map-line-upwards = Upwards
map-span = { $what } from { $from } to { $to }
map-line-here-about = Turns of the jump at hand.
map-line-flown = Flown
map-line-flown-about = The map's nodes, each a flight of its own.
map-all-flown = { $nodes } x { $nodes } flown
map-flown = { $flown } of { $nodes } flown
map-line-needed = { $turns } turns, all else as now
map-line-needed-about = Where the line of so many turns passes the jump at hand.
map-and = { $one } and { $other }

## Compare.

compare-order = Changed one at a time, in this order: what each is worth depends on it. Together they are the whole difference.

compare-line-sentence = Compared
compare-line-turns = Turns of both
compare-line-turns-about = Turns in all of the attempt beside and of the present one.
compare-line-beyond-seen = { $reference }: beyond what has been seen
compare-turns = { $from } to { $to }: { $turns }
compare-difference = { $from } to { $to }: { $turns } turns
compare-line-kept = Kept jump { $number }
compare-line-kept-about = A jump kept on this device.
compare-kept-came-to = { $name }: { $turns } turns, { $call }
compare-kept-beyond-seen = { $said }, beyond what has been seen
compare-as-opened = { $name }, as opened
compare-before-try = Before the change
compare-nothing-differs = This jump and “{ $reference }” are the same: nothing differs.
compare-as-much = This jump turns as much as “{ $reference }”
compare-more = This jump turns { $turns } more than “{ $reference }”
compare-less = This jump turns { $turns } less than “{ $reference }”
# $said is one of the last three.
compare-no-largest = { $said }.
compare-cancels = { $said }; the differences cancel out, the largest is { $what } ({ $turns }).
compare-all-by = { $said }, all of it by { $what }.
compare-most-by = { $said }; most of it by { $what } ({ $turns }).
compare-largest = { $said }; the largest part is { $what } ({ $turns }).

## What is no number of a jump: its name, alone and inside a sentence, and what it can be.

word-jump = Jump
word-jump-inline = jump
word-jump-turns = Turns in the name
word-jump-turns-inline = turns in the name
word-table = Mass table
word-table-inline = mass table
word-table-female = female
word-table-male = male
word-ground = Jumps on
word-ground-inline = jumps on
word-ground-ice = ice
word-ground-floor = floor
word-ground-trampoline = trampoline
word-turning = Turns, seen from above
word-turning-inline = turns, seen from above
word-turning-anticlockwise = anticlockwise
word-turning-clockwise = clockwise
word-hands-keep = Heavier hands keep
word-hands-keep-inline = heavier hands keep
word-hands-keep-rate = rate
word-hands-keep-momentum = momentum
word-hands-keep-energy = energy

## What is said when something was not done.

not-opened = Not opened: { $why }.
not-kept = Not kept: { $why }.
not-renamed = Not renamed: { $why }.
not-noted = Not noted: { $why }.
not-deleted = Not deleted: { $why }.
not-brought-back = Not brought back: { $why }.
last-visit-jump-only = The jump of the last visit is here; what else was kept of it could not be read.
last-visit-unreadable = What was kept of the last visit could not be read; here is the usual start.
changed-jump-kept = The jump you had changed is kept: see “{ $name }” under Compare.
changed-jump-left = Set aside: “{ $name }”.
jump-kept = Kept on this device as “{ $name }”.
collection-empty = There is no jump in this file.
collection-added = { $jumps ->
    [one] One jump of this file is among the kept ones now.
   *[other] { $jumps } jumps of this file are among the kept ones now.
}
earlier-body = { $jumps ->
    [one] This jump was saved before the body was refined: its turns are computed anew and may differ from before.
   *[other] These jumps were saved before the body was refined: their turns are computed anew and may differ from before.
}
earlier-body-kept = The body has been refined since your last visit: the turns of your jumps are computed anew and may differ from before.

## Why something was not done to the kept jumps, as part of a sentence.

kept-no-name = a kept jump needs a name; give it one
kept-long-name = the name of a jump has at most { $most } characters; shorten it
kept-too-many = no more than { $most } jumps are kept; save them as a file, then delete some
kept-too-large = a kept jump may take { $each } kB and all of them { $all } MB; shorten notes or delete some
kept-gone = this jump is no longer kept; choose another
kept-nothing-deleted = there is no deleted jump to bring back since the page was opened

## Why a collection's file was not opened, as part of a sentence.

collection-too-large = this file is too large to be a collection of jumps; open one saved by Turns Aloft
collection-not-json = this file is not a collection of jumps, or a damaged one ({ $why }); open one saved by Turns Aloft
collection-none = this file is not a Turns Aloft collection of jumps; open one saved by Turns Aloft
collection-newer = this collection is of version { $version } and this Turns Aloft reads up to version { $known }; update Turns Aloft to open it
collection-broken = this collection is broken: { $why }; save it again or mend that entry
collection-jump = jump { $number } of this collection ({ $name }) cannot be kept: { $why }
collection-jump-unnamed = without a name

## Why what the browser has kept could not be read, as part of a sentence.

kept-newer = the jumps kept on this device were kept by a newer Turns Aloft; reload its page to update it, they are still there
kept-broken = the jumps kept on this device cannot be read ({ $why })
kept-too-long = more than was ever kept
kept-no-version = they are of no known version
kept-too-often = more than were ever kept
kept-odd-name = a name that was never given
kept-twice = a jump that cannot be told from another

## What is said when a number cannot be.

number-needed = { $what } needs a number; it stays as it was.
number-held = { $what } goes from { $least } to { $most }; it is held at { $held }.
input-locked = Locked, so not changed: { $what }.

# What was done, behind "Undo: " and "Redo: ".
change-several-inputs = several inputs
change-name-or-note = name or note
change-tried = tried change
change-reset-all = put everything back
change-opened = opened jump
change-reference = jump compared with
