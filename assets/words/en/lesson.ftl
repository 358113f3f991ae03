# Lessons: the quantities that they ask for, and what is wrong with a lesson or with the answers to one.

## Quantities; a name says when, since it stands alone.

quantity-turns = Turns in all
quantity-air-turns = Turns in the air
quantity-turns-owed = Turns needed
quantity-turns-missing = Turns missing
quantity-turns-low = Turns, lower end of the range
quantity-turns-high = Turns, upper end of the range
quantity-limits-passed = Limits passed that people have been seen to keep
quantity-hang-time-s = Hang time
quantity-jump-height-m = Jump height
quantity-takeoff-rate-rad-s = Turning rate at take-off
quantity-peak-rate-rad-s = Highest turning rate
quantity-mean-rate-rad-s = Mean turning rate
quantity-touchdown-rate-rad-s = Turning rate at touch-down
quantity-first-rate-rad-s = Turning rate at first
quantity-last-rate-rad-s = Turning rate in the end
quantity-inertia-takeoff-kg-m2 = Moment of inertia at take-off
quantity-inertia-least-kg-m2 = Least moment of inertia
quantity-first-inertia-kg-m2 = Moment of inertia at first
quantity-last-inertia-kg-m2 = Moment of inertia in the end
quantity-angular-momentum-takeoff-kg-m2-s = Angular momentum at take-off
quantity-angular-momentum-touchdown-kg-m2-s = Angular momentum at touch-down
quantity-first-angular-momentum-kg-m2-s = Angular momentum at first
quantity-last-angular-momentum-kg-m2-s = Angular momentum in the end
quantity-energy-takeoff-j = Energy of turning at take-off
quantity-energy-peak-j = Highest energy of turning
quantity-energy-touchdown-j = Energy of turning at touch-down
quantity-first-energy-j = Energy of turning at first
quantity-last-energy-j = Energy of turning in the end
quantity-closing-work-j = Work of closing
quantity-opening-work-j = Work of opening
quantity-muscle-work-j = Work of the muscles
quantity-tilt-peak-rad = Largest tilt
quantity-rate-ratio = How many times as fast
quantity-inertia-ratio = How many times as much moment of inertia at first

## What is wrong in the file of a lesson, or in that of the answers to one, as part of a sentence.

lesson-too-large = this file is too large to be a lesson; open one saved by Turns Aloft
lesson-not-json = this file is not a lesson, or a damaged one ({ $why })
lesson-none = this file is not a lesson; open one that is
lesson-newer = this lesson is of version { $version } and this Turns Aloft reads up to version { $known }; update Turns Aloft to open it
lesson-broken = this lesson is broken: { $why }
lesson-step-broken = step { $number } of this lesson is broken: { $why }
lesson-no-text = `{ $key }` says nothing, or has a line break in it
lesson-long-text = the text in `{ $key }` is too long: { $most } characters are enough
lesson-unknown-language = `{ $key }` has a text in "{ $language }"; there are { $known }
lesson-too-many = there are too many entries in `{ $key }`: { $most } are enough
lesson-too-few = there are too few entries in `{ $key }`: { $least } are needed
lesson-minutes = the parts of the plan take { $parts } minutes in all, the lesson { $lesson }
lesson-not-one-of = there has to be exactly one of { $known }
lesson-unknown-start = there is no starting point "{ $value }"; there are { $known }
lesson-not-a-value = `{ $key }` is set to what is neither a number nor a word
lesson-not-rising = a worked example needs two times of `inertia` or more, each later than the one before
lesson-odd-name = "{ $value }" is no name for a variant: write it with small letters and _
lesson-unknown-free = "{ $value }" is nothing that can be free here; there are { $known }
lesson-free-twice = `{ $key }` is free twice
lesson-nothing-set-up = `{ $key }` needs something to be flown, in `setup`
lesson-no-quantity = `{ $key }` names no quantity with "{ $value }"; there are { $known }
lesson-no-variant = `{ $key }` names no variant with "{ $value }"
lesson-no-brace = a brace in `{ $key }` stands alone
lesson-not-of-setup = what is set up has no `{ $key }` that could be known before
lesson-unknown-curve = "{ $value }" is no curve of what is set up; there are { $known }
lesson-same-option = option { $number } stands for the same as another one
lesson-not-its-answer = the prediction is none that this step asks for
lesson-fixed-example = a worked example has its own numbers, which do not change
lesson-not-flown = nothing is flown that the answer would follow from
lesson-tie = options { $first } and { $second } come to the same, so that neither is right
lesson-none-rises = the quantity rises, which none of the options says
lesson-none-falls = the quantity falls, which none of the options says
lesson-none-stays = the quantity stays the same, which none of the options says
answers-too-large = this file is too large to be the answers to a lesson
answers-not-json = this file is no answers to a lesson, or damaged ones ({ $why })
answers-none = this file is no answers to a lesson
answers-newer = these answers are of version { $version } and this Turns Aloft reads up to version { $known }; update Turns Aloft to open them
answers-other-lesson = these are answers to another lesson, or to another version of this one
answers-broken = these answers are broken: { $why }
answers-step-broken = the answer to step { $number } is broken: { $why }

## What was predicted and what happened, as a table.

lesson-table-step = Step
lesson-table-question = Question
lesson-table-prediction = Prediction
# At the head of a column of numbers: it says which decimal sign they have.
lesson-table-prediction-number = Prediction (numbers with a decimal point)
lesson-table-unit = Unit
lesson-table-reason = Reason
lesson-table-happened = What happened
lesson-table-off = Prediction more by (%)
lesson-table-right = Right
lesson-table-observation = What was seen
lesson-table-yes = yes
lesson-table-no = no
# A value of a curve at a time.
lesson-at-time = { $time } s: { $value }
