### Questions answered by many flights: where the turns went, what a step gives, how far a lever goes.

## What has to stand beside a proposal that can hurt somebody.

caution-no-safe-number = No safe number of jumps is known. Most injuries in singles skating come from too much training (overuse).
caution-adults = The mass tables describe adults: for a child this is an estimate.
caution-hands = Weights in the hands are a physics experiment, or a training aid for use with a coach. The sport's rules forbid them in competition.
caution-later = Opening later leaves less time to get ready for the landing, and more turning to stop (common practice, no source). The landing load here counts the fall alone.
caution-ask = How often, how high, and whether with weights: that is decided by the coach, the rules of the sport and licensed doctors.

## What people have been observed to do with weights.

weights-observed = What was seen: thirteen skaters trained with weighted gloves for a week. With the gloves on they then held their wrists 13.6 % and 12.1 % farther from the axis than in the two sets of jumps compared. In jumps that they could do well already, this cancelled the effect of the gloves. Without the gloves no change was found after that week (Ridge et al. 2022, Sports Biomechanics, abstract). The turns here keep the arms where they are. People do not.

## What a small step of each lever is.

step-jump-height-m = { $step } higher
step-takeoff-rate-rad-s = { $step } faster at take-off
step-arm-tuck = hands { $step } nearer to the axis
step-leg-tuck = legs { $step } tighter
step-close-delay-s = closing begins { $step } earlier
step-close-time-s = closing takes { $step } less
step-open-lead-s = opening begins { $step } later

## What a jump can lose turns by.

cause-closing = Closing
cause-tightness = Tightness
cause-opening = Opening
cause-tilt = Tilt and asymmetry

## The largest loss, and what one change would do about it.

why-nothing-lost = Nothing in the air took a large part of the turns away.
why-closing-cost = Closing cost { $turns } turns
why-tightness-cost = Not getting tighter cost { $turns } turns
why-opening-cost = Opening cost { $turns } turns
why-tilt-cost = Tilt and asymmetry cost { $turns } turns
# Where the jump has all turns that its name owes; no change is told of then.
why-all-there = All turns are there. { $cost }.
why-cost-and-change = { $cost }: { $change }
why-cost-at-best = { $cost }, but no better setting was found.
why-cost-led = { $cost }: { $advice }.
why-led-closing = lead arms and legs in sooner next time, and keep them in
why-led-tightness = lead arms and legs all the way in next time
why-led-opening = let arms and legs out later next time, but in time to land
# $turns is one of the last three of this group.
why-close-time = it took { $from } s. With { $to } s this jump would have { $turns }.
why-close-delay = it began { $from } s after take-off. With a beginning at { $to } s this jump would have { $turns }.
why-arm-lag = one arm came in { $from } s late. With { $to } s this jump would have { $turns }.
why-arm-tuck = the arms came in { $from } %. With { $to } % this jump would have { $turns }.
why-leg-tuck = the legs closed { $from } %. With { $to } % this jump would have { $turns }.
why-open-lead = it began { $from } s before touch-down. With a beginning { $to } s before it, this jump would have { $turns }.
why-lean = the body leaned { $from } degrees at take-off. Upright, and with the same take-off rate, this jump would have { $turns }.
why-arm-asymmetry = one arm stayed out by { $from } %. With both arms in, this jump would have { $turns }.
why-as-many-turns = just as many turns
why-turns-more = { $turns } turns more
why-turns-fewer = { $turns } turns fewer

## What a verdict on a value rests on.

limit-already = The jump has these turns as it is.
limit-flown = Flown over the whole range that can be set. The most turns in it are given.
limit-no-part = This jump was led by hand. What is set here has no part in it.
limit-own = The limits that were set for this jumper.
limit-season = Taken as reachable: the change of one season from now. This is our assumption (common practice, no source). You can set your own limits in its place.
limit-season-not-known = Taken as reachable: the change of one season from now. This is our assumption (common practice, no source). It is not known what jumpers of this size can do here. You can set your own limits in its place.
season-source = Our assumption, common practice, no source.

## A setting that cannot be. The key stands as in the scenario file.

lever-unknown = { $key } is no lever; they are { $known }
season-out-of-range = season of { $key } = { $value } is out of range: it goes from 0 to { $most }
limits-out-of-range = limits of { $key } = { $lower }:{ $higher } are out of range: the lower, then the higher, from { $least } to { $most }
axis-unknown = { $key }: no such number; they are { $known }
axis-one-value = { $key } from { $from } to { $to }: give two different values
axis-nodes = { $nodes } nodes of { $key } are out of range: they go from { $least } to { $most }
axis-twice = { $key } on both axes: give two different numbers
axis-no-part = { $key } has no part in a jump that was led by hand: the turns are the same all along it

## What the marks of a real attempt say, and what they leave open.

measured-turns = { $turns } turns in all; 95 % of what is possible lies from { $low } to { $high }.
caution-consent = Whoever films minors needs consent: theirs and that of their parents. The rules of the hall count as well.
caution-film-stays = A film stays on this device.
caution-no-verdict = This is an estimate. It judges nobody's health, and it is no verdict of a panel.
## What the marks of an attempt say of its jump.

cause-closing-inline = closing
cause-tightness-inline = not getting tighter
cause-opening-inline = opening
cause-tilt-inline = tilt and asymmetry
unfit-no-marks = Nothing is marked yet.
unfit-disorder = Take-off and landing are in the wrong order. Mark the landing after the take-off.
# A hang time, and the least and the most that can be flown.
unfit-hang-time = A jump of { $time } s can't be flown with this body: { $least } to { $most } s can. Check both marks and the slow motion.
# A cause of lost turns, at the beginning, and a range with its unit.
fit-cost-most = { $what } cost most: { $turns }.
# Two causes of lost turns, and a range with its unit for each.
fit-cannot-tell = These marks can't tell what cost most: { $first } ({ $first_turns }) or { $other } ({ $other_turns }).
# The time in the film.
fit-further-facing = One more mark would tell most: which way the hips face at { $time } s.
fit-further-arms = One more mark would tell most: how far the arms are in at { $time } s.
fit-further-legs = One more mark would tell most: how far the legs are in at { $time } s.
fit-further-contacts = A film with more pictures a second would tell most.
# A range of turns and how likely it is.
fit-turns-clockwise = The hips were marked as those of a jump that turns clockwise. This one is set to turn anticlockwise.
fit-turns-anticlockwise = The hips were marked as those of a jump that turns anticlockwise. This one is set to turn clockwise.
fit-second-answer = It may also have been { $turns } turns (about { $percent } %). More marks of the hips tell.
# A cause of lost turns and the range of what it cost.
why-loss-range = { $what }: { $range }
# What is said of the largest loss of one jump.
fit-likeliest = Of the likeliest jump: { $sentence }
# A try at so many turns.
try-full = { $owed } turns: full, with { $turns } turned.
try-short = { $owed } turns: not full. { $turns } turned, { $degrees } degrees missing.
try-over = { $owed } turns: not full. { $turns } turned, { $degrees } degrees too far.
try-facing = { $owed } turns: not full. { $turns } turned, but the hips face { $degrees } degrees away from the landing.
try-none-passed = No limit seen in people was passed.
try-passed = Limits passed: { $count }. { $what }.
try-limit-most = { $what }, seen up to { $limit }
try-limit-least = { $what }, seen down to { $limit }
try-unknown = Not known: { $what }.
five-turns-listed = Jumps of five turns are listed in the rules since 2024 (ISU Communication 2656, by a secondary source).
five-turns-peak = The highest peak rates seen are 430 to 440 rpm. Five turns would need about 500 rpm (common practice, no source).
