# A lesson that a teacher makes on the page.

draft = Your lesson
draft-make = Make a lesson
draft-go-on = Go on with your lesson
draft-copy = Change a copy of it
draft-copy-about = The copy is yours. This lesson stays as it is.
draft-kept = Kept on this device as you write.
draft-missing = Still missing
draft-whole-lesson = All steps, one after the other
draft-replaced = The lesson that you were making has given way to this one.
draft-discarded = Your lesson is deleted.
draft-step-removed = Step { $number } is removed.

## The whole.

draft-title-none = No title yet
draft-title = Title
draft-title-about = What the lesson is called
draft-for-whom = For whom
draft-for-whom-about = Age, class, or group
draft-minutes = Minutes
draft-minutes-in-all = { $minutes } minutes in all
draft-minutes-range = Minutes are a whole number from 1 to { $most } here.
draft-doing = What is done
draft-doing-about = What happens in these minutes
draft-steps = Steps
draft-step = { $number }. { $title }
draft-step-untitled = No title yet
draft-add-jump = Add a step with the jump at hand
draft-jump-at-hand = The jump at hand: { $name }
draft-add-question = Add a step that only asks
draft-full = A lesson has room for { $most } steps.
draft-give = Try it, give it away
draft-unfinished = Once nothing is missing any more, you can try the lesson and send a link. An unfinished one can be saved.
draft-try = Try it as a pupil
draft-back-from-try = Back to making the lesson
draft-back-from-try-about = What you answered is not kept.
draft-save = Save as a file
draft-link = Copy a link to it
draft-too-long-for-link = The lesson is too long for a link: give the file instead.
draft-code = Show a QR code
draft-code-about = Who scans this with the camera of a tablet has the lesson.
draft-too-long-for-code = The lesson is too long for a QR code that a camera can read: send the link, or give the file.
draft-to-jump = Back to the jump
draft-to-jump-about = Your lesson is kept. Change the jump, then go on with your lesson from the menu of jumps.
draft-discard = Delete this lesson

## A step.

draft-all-steps = All steps
draft-flown = What is flown
draft-flown-jump = The jump “{ $name }”
draft-flown-turntable = Somebody on a turntable, as in the lesson that you copied
draft-flown-nothing = Nothing: this step only asks.
draft-flown-at-hand = That is the jump at hand.
draft-take-jump = Take the jump at hand
draft-asks = What is asked
draft-step-title = Title of the step
draft-step-title-about = A word or two
draft-question-about = What will happen?
draft-kind = Kind of answer
draft-kind-number = A number
draft-kind-change = More or less
draft-kind-curve = A curve
draft-kind-words = Own words
draft-kind-opinion = An opinion
draft-kind-of-file = This answer is of a kind that is only made in a file. It stays as it is unless you choose another.
draft-quantity = Quantity that is asked for
draft-input = Input that is changed
draft-in-jump = In the jump: { $value }
draft-changed-to = Changed to
draft-curve = Curve that is drawn
draft-more = More
draft-the-same = The same
draft-less = Less
draft-option = Option { $number }
draft-option-about = What can be chosen
draft-add-option = Add an option
draft-remove-option = Remove the last option
draft-reason = Ask for a reason
draft-free = What the pupil may change: { $count }
draft-free-about = All other inputs are locked.
draft-observes = Ask what was seen
draft-observe = What to watch for
draft-explanation = What happened, and why
draft-explanation-about = Shown after the flight
draft-insert = Insert a figure
draft-insert-about = A figure stands in braces. The flight works it out.
draft-figure-changed = { $quantity }, with the input changed
draft-preview = As the pupil reads it
draft-order = Place in the lesson
draft-earlier = Earlier
draft-later = Later
draft-remove-step = Remove this step

## What is missing or wrong.

draft-no-title = The title is missing.
draft-for-nobody = Say for whom the lesson is.
draft-no-plan = A text of the plan is missing.
draft-no-question = The question is missing.
draft-no-option = An option says nothing yet.
draft-nothing-to-observe = Say what to watch for, or do not ask what was seen.
draft-no-explanation = The explanation is missing.
draft-nothing-changed = The changed input has the same value as in the jump: change it to another one.
draft-wrong = This does not work yet: { $why }.
