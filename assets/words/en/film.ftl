### Films that are opened to be measured.

## Why the frames of a film can't be found.

film-empty = This file is empty; copy the film again from where it was taken.
film-cut-off = A part of this film is missing; copy the whole file again from where it was taken.
film-damaged = This film is damaged: what its file says about the frames can't be right. Copy it again, or save it as MP4 in a video program.
film-no-film-track = There are no pictures in this file, only sound or nothing; open a film.
film-still-picture = This is a single picture; open a film of the whole jump.
film-unknown-container = This file is not a film in MP4, MOV or WebM; save it as MP4 in a video program, then open it.
film-no-key-frame = No frame of this film can be shown by itself (it has no key frames); save it as MP4 in a video program, then open it.
film-times-not-ascending = The clock of this film stands still or runs backwards, so nothing can be timed with it; copy it again from where it was taken.
film-too-many-frames = This film has more than { $most } frames; cut it down to the jump, then open it.
film-tables-too-large = What this file says about its frames is too large to be read; cut the film down to the jump, then open it.
film-several-edits = This film is put together from several pieces or changes its speed, and browsers show such films differently; save it as one film in a video program, then open it.

## What to do where the browser does not play a film.

film-not-played = This browser does not play films in { $codec }; save the film as MP4 in H.264, or open it in another browser.
