### What the user is doing: every readout, every answer, and what is said when something goes wrong.

## The questions; short, they stand side by side.

question-jump = Jump
question-why = Why
question-win = Win
question-map = Map
question-compare = Compare

## Readings that belong together.

group-turns = Turns
group-how-sure = How sure
group-time = Time and height
group-rate = Turning rate
group-inertia = Moment of inertia
group-energy = Momentum and energy
group-hands = Pull at the hands
group-axis = Axis
group-landing = Landing
group-answer = Answer

## Units that nobody chooses.

unit-kg-m2 = kg m²
unit-kg-m2-per-s = kg m²/s
unit-j = J
unit-n = N
unit-degrees = °

## The call.

call-none = not called
call-full = full rotation
call-quarter = on the quarter (q)
call-under = under-rotated (<)
call-downgraded = downgraded (<<)

## Why.

why-ideal = What this take-off could give: as tight as this body gets from the first instant to touch-down, upright, with the same angular momentum and the same time in the air.
why-ice = Turned before leaving the ice; it counts towards the jump.
why-turns = The ideal, less what was lost, with what was turned on the ice.
why-order = Each cause is taken away in turn, from the top down. Another order would share the same whole out a little differently.
why-back = Pale: no further than this; what a step back would do.
why-not-possible = not possible
why-beyond-seen = Beyond what has been seen: { $what } { $value }. { $source }

## Win.

win-season = What a season's training might bring of each, to weigh them against each other: our assumption, common practice, no source.
win-limits = How far this jumper gets, from the least to the most. Until you set it, one season's change from now is taken.
win-verdict-already = has them as it is
win-verdict-within-reach = within this jumper's reach
win-verdict-within-measured = people have been seen there
win-verdict-beyond-measured = beyond anything seen
win-verdict-cannot-alone = cannot do it alone

## Compare.

compare-order = Changed one at a time, in this order: what each is worth depends on it. Together they are the whole difference.

## What is said when a number cannot be.

number-needed = { $what } needs a number; it stays as it was.
number-held = { $what } goes from { $least } to { $most }; it is held at { $held }.
