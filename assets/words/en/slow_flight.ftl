# A jump flown slowly by hand.

## The button.

slow-fly-by-hand = Fly it by hand

## Before the take-off and in the air.

slow-how = Hold a finger in the middle: arms and legs come in. Slide outwards or lift it: they go out.
slow-open-again = Open again before you land.
slow-take-off = Leave the ground
slow-speed = Speed
slow-pad = How far in
slow-pad-middle = in
slow-pad-edge = out
# What a keyboard does; read out.
slow-pad-about = End pulls arms and legs all the way in, Home lets them out.
slow-percent = { $percent } % in
slow-stop = Stop
slow-ready = About to leave the ground. Your hand leads arms and legs.
slow-in-air = In the air.
slow-phase-in-air = in the air
slow-line-state = By hand
slow-turns-so-far = Turns so far
slow-rate = Rate
slow-in = Arms and legs
slow-time-left = Time left
# $time is in seconds as they pass for who leads, not in those of the flight.
slow-lands-in = lands in { $time } s

## After the landing.

# $call: such as "full" or "a quarter short".
slow-landed = Landed: { $turns } turns, { $call }.
slow-landed-free = Landed: { $turns } turns.
slow-before = Before
slow-by-hand = By hand
slow-both = before { $before }, by hand { $flown }
slow-budget-about = Turns of the jump as it was before, and of the one flown by hand.
slow-ghost = The pale figure is the jump as it was before.
slow-again = Again
slow-take = Take this jump
slow-leave = Back to the jump as it was
slow-turns = { $turns } turns
slow-open-now = Open now
# $owed: the turns that the jump's name asks for.
slow-of = turns of { $owed }: { $call }
# In place of the sliders that the hand has taken the place of.
slow-led = This jump was led by hand: how far in arms and legs come, and when, is what the hand did. There are no sliders for it.
slow-as-planned = Fly it as planned
