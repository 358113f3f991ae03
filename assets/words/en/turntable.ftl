# The turntable: its page, and what is wrong with a programme, a number or the readings of a bearing.

turntable-empty = The programme is empty: its first line names the columns time_s and hand_distance_m.
turntable-not-text = This is no text in UTF-8: save the programme as a CSV file in UTF-8.
turntable-too-large = The programme is too large: { $most } MB at most.
turntable-no-column = The first line names no column { $column }: time_s and hand_distance_m are needed.
turntable-twice-column = The first line names the column { $column } twice.
turntable-not-a-number = Line { $line } has “{ $written }” in the column { $column }, where a number is needed.
turntable-too-short = The programme has fewer than two positions.
turntable-out-of-order = The time in line { $line } is not later than in the line before.
turntable-too-long = The programme is too long: { $most } s at most.
turntable-reach = Line { $line } asks for hands { $asked } m from the axis: this person reaches { $least } to { $most } m.
turntable-legs = Line { $line } asks for legs = { $asked }: it goes from 0 (in) to 1 (out).
turntable-legs-stand = Line { $line } moves the legs, but this person stands on both: leave legs at 0.
turntable-twist = Line { $line } asks for twist_rad = { $asked }: the trunk twists from { $least } to { $most } rad.
turntable-too-fast-arms = On the way to line { $line } a joint of the arms would turn at { $rate } rad/s, { $most } at most: take more time.
turntable-too-fast-legs = On the way to line { $line } a joint of the legs would turn at { $rate } rad/s, { $most } at most: take more time.
turntable-too-fast-trunk = On the way to line { $line } the trunk would twist at { $rate } rad/s, { $most } at most: take more time.
turntable-unknown-key = There is no { $key }; the keys are { $known }.
turntable-unknown-word = { $key } = { $value } is not known; it is one of { $known }.
turntable-no-number = { $key } = { $value } is not a number; it goes from { $least } to { $most }.
turntable-out-of-range = { $key } = { $value } is out of range: it goes from { $least } to { $most }.
turntable-readings-no-numbers = A reading is no number, or the moment of inertia is not above zero.
turntable-readings-out-of-order = Each reading has to be later than the one before.
turntable-readings-not-slower = Each rate has to be lower than the one before, in the same direction.
turntable-readings-at-rest = At the last reading it has already stopped: read the rate while it still turns.
turntable-readings-harder-at-end = It slows down more at the end than friction of this kind does: read again, without moving or pushing.
turntable-readings-harder-at-beginning = It slows down more at the beginning than friction of this kind does: read again, without moving or pushing.

# The page.
turntable-enter = On a turntable
turntable-leave = Leave the turntable
turntable-rate = Turning rate at first
turntable-hips-forward = Hips in front of the axis
turntable-bearing-inertia = Inertia of seat or platform
turntable-friction-torque = Friction at every rate
turntable-friction-viscous = Friction for each rad/s
turntable-rate-to-set = Rate to set
turntable-rate-before = Rate before
turntable-rate-after = Rate after
turntable-rate-third = Third rate
turntable-time-between = Time between them
turntable-time-to-third = Time to the third
turntable-at-rest = at rest
turntable-anticlockwise = anticlockwise, seen from above
turntable-clockwise = clockwise, seen from above
turntable-on-platform = Stand on a platform
turntable-on-platform-sitting = Sit on a platform
turntable-on-chair = Sit on a swivel chair
turntable-on-ground-ice = Spin on ice
turntable-turns = Turns
turntable-work = Work of the muscles
turntable-heat = Lost to friction
turntable-pushed = Brought in by pushes
turntable-hands = Hands from the axis
turntable-time = Time
turntable-what = What it turns on
# What is read aloud now and then: the rate and which way round, the moment of inertia, the angular momentum.
turntable-summary = { $rate }, { $sense }; moment of inertia { $inertia }, angular momentum { $momentum }.
# What somebody stands or sits on, the rate and which way round, how far out the hands are.
turntable-picture = { $stand }: { $rate }, { $sense }, the hands { $hands } from the axis.
turntable-energy-about = The arms are pulled in against the force that draws them outwards: that work makes the energy of turning grow.
turntable-push-left = Push to the left
turntable-push-right = Push to the right
turntable-set-rate = Turn at this rate
turntable-legs-slider = Legs
turntable-legs-out = { $percent } % out
turntable-twist-slider = Shoulders against the hips
turntable-who-and-what = Who, and on what
turntable-with-friction = With friction
turntable-without-friction = Without friction
turntable-new-run = Each change here begins a new run, in the same position.
turntable-predict = What will the angular momentum do?
turntable-falls = It falls
turntable-stays = It stays the same
turntable-rises = It rises
# What was guessed, and after how many seconds the answer is there.
turntable-predicted = Your guess: “{ $expected }”. Push, and move the arms in and out: { $seconds } s after the last push you will see.
# What became of it, a sentence or two.
turntable-as-predicted = As you guessed. { $came }
turntable-not-as-predicted = Your guess was “{ $expected }”. { $came }
turntable-momentum-fell = It fell from { $from } to { $to }, because friction brakes. Arms that come in raise the rate, not the angular momentum.
turntable-momentum-stayed = It stayed at { $at }: without friction nothing takes it away. Arms that come in raise the rate, not the angular momentum.
turntable-momentum-nearly-stayed = It stayed at { $at } to one part in a hundred: so little friction takes longer. Arms that come in raise the rate, not the angular momentum.
turntable-momentum-rose = It rose from { $from } to { $to }: while arms or trunk swung, the seat turned the other way, and friction pushed it on.
turntable-predict-again = Another guess
turntable-own-chair = Your own chair
turntable-own-chair-about = Turn on your chair, hold still, and have two rates taken, and the time between them; a third one tells both parts of the friction. Hold the figure as you sat: its moment of inertia is used.
turntable-even = the same at every rate
turntable-grows = grows with the rate
turntable-both = some of both (three rates)
turntable-calibrate = Take over this friction
# The two parts of the friction.
turntable-calibrated = The friction now is { $torque }, and { $viscous } more with the rate.
turntable-too-much-friction = That is more friction than can be set ({ $most }): check rates and time.
turntable-sensor = A sensor on a real chair
turntable-sensor-about = Sit on the chair, hold the device still against your chest, and have a helper turn you gently. The rate is drawn as a thin line over the figure’s; nothing leaves the device. A file of another sensor does the same.
turntable-use-sensor = Use this device’s sensor
turntable-stop-sensor = Stop recording
turntable-lay-file = Lay a sensor file over it
turntable-turn-as-measured = Turn and slow down as measured
turntable-as-measured-about = Hold the figure as you sat: its moment of inertia is used for the friction.
turntable-drop-measured = Take the measured rate away
turntable-sensor-waits = Nothing has come from the sensor yet; this device may have none.
turntable-measured-now = Measured now: { $rate }
turntable-measured = Measured for { $time }, { $rate } at most
turntable-about-vertical = About the vertical, as the accelerometer has it. Which way round is taken from the figure: browsers disagree about it.
turntable-about-any-axis = About whatever axis the device turned: without gravity from an accelerometer the vertical is not known. Which way round is taken from the figure.
turntable-no-slowing = There is no stretch of { $seconds } s in which it only slows down: turn, hold still, and let it run out.
turntable-sensor-missing = This browser lets no page read a motion sensor. Record it in another way, and lay the file over the run.
turntable-sensor-refused = The page was not allowed to read the motion sensor. Allow it in the browser’s settings for this page, and try again.
turntable-sensor-touch = Touch the screen once more: only then does the browser ask whether the sensor may be read.
turntable-sensor-full = The recording has lasted { $minutes } minutes, which is the longest there is.
turntable-again = Again
turntable-keep = Keep
turntable-keep-about = Lay this run under the next ones, as a dashed line
turntable-drop-about = Take the kept run away
turntable-save = CSV
turntable-save-about = Save this run as a CSV file
turntable-time-line = Time of the run
turntable-charts = Curves of the run
turntable-hint = Drag here: arms in and out. Flick at the feet: push.
turntable-hour-over = The run has lasted an hour, which is the longest there is. Save it, go back, or begin again.
turntable-cautions = Before you turn
turntable-caution-room = Leave room all round, and have a helper beside you. Falls happen when getting off.
turntable-caution-slow = Keep the rate low, and stop at the first dizziness. Wait until it has gone before standing up.
turntable-caution-weights = Weights are held by adults, or under supervision.
turntable-caution-source = This is common practice; there is no source for it.
