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
group-energy = Angular momentum and energy
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
unit-n-m-s = N m s
unit-n-m-per-kg = N m/kg
unit-w = W
unit-degrees = °

## Readings: the name of each and what it means, by its published key.

reading-turns = Turns in all
reading-turns-about = Turns in the air, and the part turned before take-off.
reading-air-turns = Turns in the air
reading-air-turns-about = How far the hips turned about the vertical from take-off to touch-down.
reading-pre-rotation-turns = Turned before take-off
reading-pre-rotation-turns-about = Turned while the foot was still on the ground. It counts towards the jump.
reading-turns-owed = Turns needed
reading-turns-owed-about = The turns in the jump's name. An Axel needs half a turn more, because it takes off forwards.
reading-shortfall-deg = Missing
reading-shortfall-deg-about = Rotation still missing at touch-down, in degrees: 360 are a whole turn.
reading-over-rotated-deg = Over-rotated by
reading-over-rotated-deg-about = How far the jump turns past what is needed, if that is more than a quarter turn (common practice, no source: the sport's published rule has no call for it).
reading-landing-facing-deg = Landing faces
reading-landing-facing-deg-about = Where the hips point at touch-down, in degrees past (positive) or before the right direction. Within 45° the landing faces the right way, from 135° on the wrong way round, and sideways in between. These limits are our own.
reading-call = Call
reading-call-about = By the sport's rule a quarter turn missing is q, more than a quarter is <, and a half or more is <<. The rule gives q the single value 90°. The range of q here, { $from }° to 90°, is our own. The rule has no call for turning too far. Here more than a quarter turn too far is called over-rotated (common practice, no source).
reading-phase = Phase
reading-phase-about = What the body does at the time shown. After touch-down a landing is shown, which is not computed.
reading-hang-time-s = Hang time
reading-hang-time-s-about = Time from take-off until a foot touches the ground. Bent legs at landing make it longer.
reading-jump-height-m = Jump height
reading-jump-height-m-about = How far the centre of mass rises from take-off to the top.
reading-cm-height-now-m = Centre of mass now
reading-cm-height-now-m-about = Height of the body's centre of mass above the ground, at the time shown.
reading-rate-now-rad-s = Now
reading-rate-now-rad-s-about = How fast the hips turn about the vertical, at the time shown.
reading-takeoff-rate-rad-s = At take-off
reading-takeoff-rate-rad-s-about = How fast the hips turn at take-off.
reading-peak-rate-rad-s = Peak
reading-peak-rate-rad-s-about = The fastest of the flight. The highest seen in people are about 430 to 440 rpm (common practice, no source).
reading-mean-rate-rad-s = Mean
reading-mean-rate-rad-s-about = Turns in the air divided by hang time. The mean, not the peak, decides how many turns there are.
reading-touchdown-rate-rad-s = At touch-down
reading-touchdown-rate-rad-s-about = What the landing has to stop.
reading-inertia-now-kg-m2 = Now
reading-inertia-now-kg-m2-about = How hard it is to turn the body about its axis. Mass far from the axis counts more: twice as far counts four times.
reading-inertia-takeoff-kg-m2 = At take-off
reading-inertia-takeoff-kg-m2-about = Open arms and the free leg make it large at take-off.
reading-inertia-least-kg-m2 = Tightest
reading-inertia-least-kg-m2-about = The smallest of the flight. The mass tables behind it describe adults: for a child it is an estimate.
reading-angular-momentum-kg-m2-s = Angular momentum
reading-angular-momentum-kg-m2-s-about = Take-off sets it, and it stays the same all through the flight: in the air only the air itself could change it. That would be 0.1 to 1 % (an estimate), and it is left out here.
reading-energy-now-j = Energy now
reading-energy-now-j-about = Energy of the turning, arms and legs included, at the time shown.
reading-energy-takeoff-j = Energy at take-off
reading-energy-takeoff-j-about = Energy of the turning at take-off.
reading-closing-work-j = Work of closing
reading-closing-work-j-about = Net work of the joints from take-off until the opening begins. Muscles pull arms and legs in against the turning. That takes work, and makes the turning faster.
reading-opening-work-j = Work of opening
reading-opening-work-j-about = Net work of the joints from the beginning of the opening to touch-down. It is negative where the body lets the turning push arms and legs out. It is positive where they are thrown out.
reading-energy-touchdown-j = Energy at touch-down
reading-energy-touchdown-j-about = Energy of the turning at touch-down, arms and legs included: the energy at take-off, with the work of closing and of opening.
reading-hand-force-left-now-n = Left now
reading-hand-force-right-now-n = Right now
reading-hand-force-now-about = Force of the forearm on this hand and what it holds. It keeps the hand on its circle, and moves it in and out.
reading-hand-force-peak-n = Largest
reading-hand-force-peak-n-about = The larger of both hands over the flight. Fast closing and fast turning both make it grow.
reading-hand-force-peak-n-about-rate = The larger of both hands over the flight. Fast closing and fast turning both make it grow. With the heavier hands the take-off rate stays the same here.
reading-hand-force-peak-n-about-momentum = The larger of both hands over the flight. Fast closing and fast turning both make it grow. With the heavier hands the angular momentum stays the same here.
reading-hand-force-peak-n-about-energy = The larger of both hands over the flight. Fast closing and fast turning both make it grow. With the heavier hands the energy at take-off stays the same here.
reading-grip-force-peak-n = Grip, largest
reading-grip-force-peak-n-about = What the fingers have to hold at most: the force on the weight alone, without the hand's own mass.
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
reading-torque-peaks-about = Largest net torque while closing ({ $closing_joint }, { $closing_time }), then while opening ({ $opening_joint }, { $opening_time }). It is what muscles, ligaments and bones give together, not the force of one muscle.
reading-torque-closing-peak-n-m = Largest, closing
reading-torque-closing-peak-n-m-about = The largest net torque of any of these joints from take-off until the opening begins. It is what muscles, ligaments and bones give together, not the force of one muscle.
reading-torque-opening-peak-n-m = Largest, opening
reading-torque-opening-peak-n-m-about = The same from the beginning of the opening to touch-down. The landing itself is not in it.
reading-joint-power-peak-w = Power, largest
reading-joint-power-peak-w-about = Net torque times joint rate, all joints together, at the moment when muscles work hardest against the turning.
reading-joint-power-least-w = Power, least
reading-joint-power-least-w-about = The same at the moment when the turning pulls the body open most. Below zero the muscles brake, and take energy out.
reading-tilt-now-rad = Tilt now
reading-tilt-now-rad-about = Angle between the body's long axis and the vertical, at the time shown.
reading-tilt-peak-rad = Largest tilt
reading-tilt-peak-rad-about = A tilted body wobbles about the vertical and turns more slowly.
reading-tilt-touchdown-rad = Tilt at touch-down
reading-tilt-touchdown-rad-about = How far from upright the body comes down.
reading-landing-load-bw = Landing load, estimate
reading-landing-load-bw-value = { $low } to { $high } body weights
reading-landing-load-bw-about = An estimate, not a measurement, of the largest force when the fall is stopped within { $from } to { $to } s by a half-sine push (assumed). No safe number of jumps is known. What is too much is for the coach and a clinician to say.
reading-landing-angular-momentum-kg-m2-s = Turning to be stopped
reading-landing-angular-momentum-kg-m2-s-about = Angular momentum about the vertical at touch-down. It is the same as at take-off. The landing has to stop it, besides the fall.
reading-landing-torque-n-m = Stopping torque, estimate
reading-landing-torque-n-m-about = An estimate, not a measurement: the mean torque that would stop the turning in the same time as the fall, { $from } to { $to } s (assumed). In skating it is less, because part of the turning goes on in the curve of the landing edge (common practice, no source).

from-to = { $from } to { $to }
in-turns = { $turns } turns
either-or = { $first } or { $last }

## Missing rotation, and the call.

shortfall-short = { $degrees }° short
shortfall-too-far = { $degrees }° too far
shortfall-none = all there
shortfall-both-short = { $from }° to { $to }° short
shortfall-both-too-far = { $from }° to { $to }° too far
shortfall-either = { $from }° too far to { $to }° short
call-may-be = may be { $calls }
# Where the others have their sign.
call-full-in-short = full
call-over-rotated-in-short = too far
call-none = no call for this
call-none-over-rotated = over-rotated, no call for this
call-none-may-be-over-rotated = may be over-rotated, no call for this
call-over-rotated = over-rotated
call-full = full rotation
call-full-let-pass = counts as full below { $from }°
call-full-let-pass-in-short = full below { $from }°
call-quarter = on the quarter (q)
call-under = under-rotated (<)
call-downgraded = downgraded (<<)
over-rotated = { $degrees }°
over-rotated-whole-turns = { $turns ->
    [one] { $degrees }°, a whole turn more
   *[other] { $degrees }°, { $turns } whole turns more
}
# Which way a landing faces.
facing-as-owed = the right way, { $degrees }°
facing-sideways = sideways, { $degrees }°
facing-opposite = the wrong way round, { $degrees }°

## What the phase of the flight is called, alone and in the picture's sentence.

phase-on-the-ground = on the ground
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
beyond-seen-meaning = The mechanics are right all the same. Whether a person can do it is another question.
beyond-seen-in-short = beyond what has been seen
respect-value = { $what } { $value }
respect-peak-rate = peak rate
respect-jump-height = jump height
respect-closing = { $joint } in closing
respect-opening = { $joint } in opening
strength-spine = spine
strength-meaning = These are net torques: what muscles, ligaments and bones give together, for each kilogram of body mass. Machines measure one joint at a time, in its strongest direction. Holding against a pull, people have been measured at up to 1.4 times as much. That is counted here. Arms and legs that hold each other, as crossed legs and clasped hands do, take a part. That is not counted.
reading-beyond-seen = Beyond what has been seen

picture = The figure, { $phase }, { $time } after take-off, { $turns } turns so far.

## What an uncertain input alone makes of the turns.

range-by-jump-height = By jump height
range-by-takeoff-rate = By take-off rate
range-by-close-time = By closing time
range-by-inertia-ratio = By inertia, open to tight
range-by-about = How much { $what } ± { $half_width } alone changes the turns. { $source }
range-change = ± { $turns } turns

## Why.

why-ideal = The most turns that this take-off could give: as tight as this body gets all the time from take-off to touch-down, upright, with the same angular momentum and the same time in the air.
why-ice = Turned while the foot was still on the ground. It counts towards the jump.
why-turns = The ideal, less what was lost, plus what was turned before take-off.
why-order = The causes are taken away one after the other, from the top down. In another order the parts would be a little different. The sum would be the same.
why-back = Pale: it cannot go further this way. Shown is what a step back would do.
why-not-possible = not possible
why-no-part = led by hand
why-closing-about = The body turns more slowly until arms and legs are in. Here they were in { $time } s after take-off.
why-tightness-about = What stays far from the axis makes the turning slower. Here the arms came in { $arms } % and the legs { $legs } % of their way.
why-opening-about = Opening for the landing makes the turning slower again. Here it began { $time } s before touch-down.
why-tilt-about = A body that leans, or one arm that is late or stays out, makes the body wobble. Here it leaned up to { $tilt } degrees.
why-owed-all-there = { $owed } turns needed: all there
why-owed-missing = { $owed } turns needed: { $turns } missing
why-owed-more = { $owed } turns needed: { $turns } more than that
why-owed-over-rotated = { $owed } turns needed: over-rotated, { $turns } more than that
why-back-wins = back gives { $turns }
why-back-costs = back takes { $turns }
why-loads = Landing load, an estimate, in body weights: { $now } now; { $then }.
why-load-then = { $what }, { $load }
why-load-with-it = with it
why-line-sentence = What cost most
why-line-sentence-about = The largest loss, and one change that would make it smaller.
why-line-ideal = Best possible
why-line-closing = Lost by closing
why-line-tightness = Lost by not getting tighter
why-line-opening = Lost by opening
why-line-tilt = Lost by tilt and asymmetry
why-line-owed = Compared with the turns needed
why-line-owed-about = The turns needed and the turns in all.
why-line-gain-about = Turns that this small step gives, with everything else as now.
why-line-caution = Please note
why-line-caution-about = What to know before trying it.
why-beyond-seen = Beyond what has been seen: { $what } { $value }. { $source }
why-gain-beyond-seen = { $gain }. { $beyond }

## Goal.

goal-season = How much one season of training may change each of these. It is used to weigh them against each other. Our assumption (common practice, no source).
goal-limits = How little and how much this jumper can do. Until you set it, the change of one season from now is taken.
goal-verdict-already = is there already
goal-verdict-within-reach = this jumper can reach it
goal-verdict-within-measured = seen in people
goal-verdict-at-edge = at the limit of what was measured in people
goal-verdict-not-known = not known for a jumper of this size
goal-verdict-beyond-measured = more than ever seen in people
goal-verdict-cannot-alone = not enough alone
goal-verdict-no-part = led by hand
goal-size-not-known = not known: what jumpers of this size can do here

goal-has-target = This jump has { $turns } turns. You asked for { $target }: they are there.
goal-has-target-over-rotated = This jump has { $turns } turns. You asked for { $target }: they are there, but it is over-rotated by { $degrees }°.
goal-question = You asked for { $target } turns, { $missing } more than now. What would give them?
goal-and-beyond = { $said } { $beyond }
goal-and-let-pass = { $question } It counts as full already, because the rule lets less than { $from }° pass.
goal-most = { $turns } turns at most, at { $at }
goal-basis-jumper = This jumper: { $what } { $range }. { $source }
goal-basis-seen = Seen in people: { $what } { $range }. { $source }
goal-basis-admissible = Can be set: { $what } { $range }. { $source }
goal-landing = Landing load, an estimate: now { $low } to { $high } times the body's weight, then { $then_low } to { $then_high }.
goal-hang-time = { $from } to { $to } in the air
goal-effort = Together this is the work of { $seasons } seasons.
goal-effort-less = Together this is the work of { $seasons } seasons. The easiest single change takes { $single }.
goal-limit-unknown = not known
goal-limit-season = { $range } (a season)
goal-season-held = stays
goal-line-target = Turns asked for
goal-line-combination = Several together

## Weights in the hands, by what stays the same.

weights = Weights
weights-keeps-rate = take-off rate stays the same
weights-keeps-energy = rotational energy stays the same
weights-keeps-momentum = angular momentum stays the same
weights-turns = { $turns } turns ({ $gain })
weights-more = { $mass } more in each hand
weights-held = { $mass } in each hand, compared with empty hands:
weights-needed = { $mass } in each hand
weights-cannot = not enough: { $turns } turns at most, at { $at }
weights-no-technique = Weights are no technique. What they would give depends on what stays the same at take-off.
reading-turns-keeping-rate = Same take-off rate
reading-turns-keeping-energy = Same energy
reading-turns-keeping-momentum = Same angular momentum
weights-known = About weights
weights-known-about = What was seen in people, and what to know before trying weights.

## Map.

map-hands-keep-rate = With heavier hands the take-off rate stays the same here.
map-hands-keep-momentum = With heavier hands the angular momentum stays the same here.
map-hands-keep-energy = With heavier hands the rotational energy stays the same here.
map-no-part = This jump was led by hand, and the hand has taken the place of a number on this map. Along it the turns are the same.
map-line-across = Across
map-line-upwards = Upwards
map-span = { $what } from { $from } to { $to }
map-line-here-about = Turns of this jump.
map-line-flown = Flown
map-line-flown-about = The points of the map. Each is a flight of its own.
map-all-flown = { $nodes } x { $nodes } flown
map-flown = { $flown } of { $nodes } flown
map-line-needed = { $turns } turns, all else as now
map-line-needed-about = Where the line of so many turns runs near this jump.
map-and = { $one } and { $other }

## Compare.

compare-order = The inputs are changed one after the other, in this order. In another order the parts would be a little different. The sum is the whole difference.

compare-line-sentence = Compared
compare-line-turns = Turns of both
compare-line-turns-about = Turns in all, of the other jump and of this one.
compare-line-beyond-seen = { $reference }: beyond what has been seen
compare-turns = { $from } to { $to }: { $turns }
compare-difference = { $from } to { $to }: { $turns } turns
compare-line-kept = Kept jump { $number }
compare-line-kept-about = A jump kept on this device.
compare-kept-came-to = { $name }: { $turns } turns, { $call }
compare-kept-beyond-seen = { $said }, beyond what has been seen
compare-as-opened = { $name }, as opened
compare-before-try = Before the change
compare-nothing-differs = This jump and “{ $reference }” are the same.
compare-as-much = This jump turns as much as “{ $reference }”
compare-more = This jump turns { $turns } more than “{ $reference }”
compare-less = This jump turns { $turns } less than “{ $reference }”
# $said is one of the last three.
compare-no-largest = { $said }.
compare-cancels = { $said }. The differences cancel out. The largest is { $what } ({ $turns }).
compare-all-by = { $said }. All of it comes from { $what }.
compare-most-by = { $said }. Most of it comes from { $what } ({ $turns }).
compare-largest = { $said }. The largest part comes from { $what } ({ $turns }).

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
word-hands-keep = With heavier hands stays the same
word-hands-keep-inline = what stays the same with heavier hands
word-hands-keep-rate = rate
word-hands-keep-momentum = angular momentum
word-hands-keep-energy = energy
word-led = Arms and legs
word-led-inline = how arms and legs move
word-led-by-hand = led by hand
word-led-as-planned = as planned

## What is said when something was not done.

not-opened = Not opened: { $why }.
not-kept = Not kept: { $why }.
not-renamed = Not renamed: { $why }.
not-noted = Not noted: { $why }.
not-deleted = Not deleted: { $why }.
not-brought-back = Not brought back: { $why }.
last-visit-jump-only = The jump of the last visit is here. The rest of that visit could not be read.
last-visit-unreadable = Your last visit could not be read. Here is the usual start.
changed-jump-kept = The jump that you changed is kept: see “{ $name }” under Compare.
changed-jump-left = Set aside: “{ $name }”.
jump-kept = Kept on this device as “{ $name }”.
collection-empty = There is no jump in this file.
collection-added = { $jumps ->
    [one] One jump of this file is among the kept ones now.
   *[other] { $jumps } jumps of this file are among the kept ones now.
}
earlier-body = { $jumps ->
    [one] This jump was saved with an earlier model of the body. Its turns are computed again and may be different.
   *[other] These jumps were saved with an earlier model of the body. Their turns are computed again and may be different.
}
earlier-body-kept = The model of the body has become more exact since your last visit. The turns of your jumps are computed again and may be different.

## Why something was not done to the kept jumps, as part of a sentence.

kept-no-name = a kept jump needs a name; give it one
kept-long-name = the name of a jump has at most { $most } characters; shorten it
kept-too-many = no more than { $most } jumps are kept; save them as a file, then delete some
kept-too-large = a kept jump may take { $each } kB and all of them { $all } MB; shorten notes or delete some
kept-gone = this jump is no longer kept; choose another
kept-nothing-deleted = no jump was deleted since the page was opened

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
number-likely = { $what } { $value } is out of range, { $least } to { $most }: did you mean { $meant }? It stays as it was.
hang-time-set-about = Time in the air, from take-off until a foot touches the ground. When you type it, the jump height is set to the one that stays in the air for so long, with this body and motion. It is found by flights. It is near the height of a ball thrown for the same time, but not the same: the legs are bent in another way at landing than at take-off.
value-and-hang-time = { $value }, { $time } in the air
rate-with-weights = with empty hands; { $flown } with what they hold
input-locked = Locked, so not changed: { $what }.

# What was done, behind "Undo: " and "Redo: ".
change-several-inputs = several inputs
change-name-or-note = name or note
change-tried = tried change
change-reset-all = reset everything
change-opened = opened jump
change-reference = jump compared with

## The jump of an attempt that was measured.

measured-by-watch = by stop-watch
# What a jump is called that was found from an attempt: the jump that it was meant to be, and the file that it was measured in.
measured-name = { $jump }, { $by }
fitted-input-about = The marks leave this range: 95 % of what is possible lies in it. It is an estimate.

## Tables for spreadsheets

table-saved = Saved as a table for a spreadsheet: decimal point, columns separated by commas.
table-time = Time
table-turns-at-landing = Turns at landing
