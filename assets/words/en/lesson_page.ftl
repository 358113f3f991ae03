# A lesson as it is played on the page.

lessons = Lessons
lesson = Lesson
lesson-title-what-stays-the-same = What stays the same
lesson-title-higher-or-tighter = Higher or tighter?
lesson-title-can-anybody-do-five = Can anybody do five?
lesson-title-arms-in = Arms in!
lesson-not-fetched = The lesson could not be fetched. Open the page once with a network; then try again.

## What introduces it.

lesson-length = { $minutes } minutes, { $steps } steps
lesson-how = In each step you first predict, and say why. Then it is flown, you write down what you saw, and it is explained.
lesson-who = Who plays
lesson-who-about = A name, or two; you may leave it out
lesson-begin = Begin
lesson-go-on-where-left = Go on where you were
lesson-for-class = On the board, for the class
lesson-for-class-about = Nothing is typed: the class answers aloud. What is right stays hidden until you show it.
lesson-anew = Begin again, without the answers
lesson-plan = Plan for the teacher
lesson-minutes-of = { $minutes } min
lesson-fetch = What to fetch
lesson-goes-wrong = What usually goes wrong
lesson-classroom-answers = What pupils commonly say
lesson-common-practice = Common practice, no source.
lesson-classroom-answer = “{ $said }” — { $reply }
lesson-curricula = In curricula
lesson-leave = Leave the lesson
lesson-leave-about = Your answers are kept on this device.

## A step.

lesson-place = Step { $place } of { $steps }
lesson-stage = Now
lesson-question = Question
lesson-stage-predict = Predict
lesson-stage-fly = Fly
lesson-stage-observe = Observe
lesson-stage-explain = Explain
lesson-withheld = Predict first. Then it is flown.
lesson-ask-number = Your prediction: a number.
lesson-ask-choice = Your prediction: choose one.
lesson-ask-opinion = What do you think? None of these is simply right.
lesson-ask-curve = Your prediction: draw the curve.
lesson-ask-words = Your answer, in your own words.
lesson-type-number = Tap to type
lesson-words = Your answer
lesson-curve-name = { $curve } in { $unit }
lesson-curve-by-sliders = Set it by sliders
lesson-curve-at = At { $time }
lesson-curve-again = Draw it again
lesson-class-predicts = Ask the class: what will happen, and why? Let them write it down or raise hands before you go on.
lesson-reason = Why do you think so?
lesson-reason-about = Because …
lesson-fly-it = Watch it. You can play it again, and stop it anywhere.
lesson-lead-it = Now you lead it. Try it for a few seconds.
lesson-example-flown = A body with just these moments of inertia, and what comes of it.
lesson-each = Fly each of them:
lesson-flight = Flight { $number }
lesson-all-locked = In this step all inputs are locked.
lesson-rest-locked = All other inputs are locked in this step.
lesson-observation = What did you see?
lesson-observation-about = I saw …
lesson-hidden = What is right is hidden.
lesson-show = Show it
lesson-predicted = You predicted
lesson-happened = What happened
lesson-curves-compared = Dashed: your prediction. Solid: what happened.
lesson-explanation = Explanation
lesson-done = That was the last step.
lesson-to-fly = Now fly it
lesson-to-observe = I have seen it
lesson-to-explain = Explain it
lesson-to-next = Next step
lesson-back = Back
lesson-needs-prediction = First give your prediction.
lesson-needs-reason = First say why.
lesson-needs-flight = Watch it to the end first.
lesson-needs-observation = First write down what you saw.

## Paper and tables.

lesson-sheets = Sheets of paper
lesson-sheets-about = They open in a new tab: print them from there, on A4 or Letter.
lesson-sheet-pupil = The pupil's sheet
lesson-sheet-answers = The answer sheet
lesson-sheet-plan = The plan
lesson-results = What I answered, on paper
lesson-answers-table = What I answered, as a table
