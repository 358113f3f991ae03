# The turntable: what is wrong with a programme, a number or the readings of a bearing.

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
