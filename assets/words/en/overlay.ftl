# The figure laid over a film, and gravity in its marks.

overlay-no-pair = Mark the head and the feet in one frame of the flight: they tell how large the jumper is in the picture.
overlay-rate-right = The marks fall as gravity makes them fall, so the rate of slow motion is right.
overlay-rate-other = The marks do not fall as gravity makes them fall: the film was probably taken at { $rate } frames a second.
overlay-rate-none = The marks do not fall as gravity makes them fall, at none of the usual rates: look at the marks and the stature again.
overlay-rate-cannot-tell = The marks do not tell whether the rate of slow motion is right: mark the hips in more frames.
