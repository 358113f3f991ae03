//! The film that an attempt is measured in: opened, and gone through frame by frame.

use crate::session::Session;
use crate::state::measuring::Measuring;
use crate::state::measuring::mark::Mark;
use crate::state::measuring::open_film::OpenFilm;
use turns_aloft_attempt::Measured;
use turns_aloft_attempt::film::{Film, PointOf};

/// How many times larger the film can be seen without fingers.
const CLOSER: [f64; 3] = [1.0, 2.0, 4.0];

impl Session {
    /// Whether it is measured in a film, which then is in place of the picture.
    pub fn is_measuring_in_film(&self) -> bool {
        (self.measuring.as_ref()).is_some_and(|measuring| measuring.marks().is_some())
    }

    /// Begins with a film that is still to be opened.
    pub fn measure_in_film(&mut self) {
        let unopened = Film::unmarked(String::new(), [0.0, 0.0], 0.0, 1.0);
        self.begin_measuring(Measured::Film(unopened));
    }

    /// Says why a film cannot be shown; its marks stay.
    pub fn film_refused(&mut self, why: String) {
        if let Some(measuring) = &mut self.measuring {
            measuring.film = None;
        }
        self.say(why);
    }

    /// Takes up a film that the page has opened: the marks of the same film stay.
    pub fn film_opened(&mut self, film: OpenFilm) {
        let same = |marks: &&Film| marks.file_name == film.file_name;
        let known = self.measuring.as_ref().and_then(Measuring::marks);
        if known.filter(same).is_none() {
            let OpenFilm {
                size_px,
                slow_motion,
                ..
            } = film;
            let frame_s = film.frame_s() / slow_motion;
            let name = film.file_name.clone();
            let unmarked = Film::unmarked(name, size_px, frame_s, slow_motion);
            self.begin_measuring(Measured::Film(unmarked));
        }
        if let Some(measuring) = &mut self.measuring {
            measuring.film = Some(film);
            measuring.frame = 0;
        }
        self.show_asked_frame();
    }

    /// Shows the film larger, or as a whole again after the largest.
    pub fn look_closer(&mut self) {
        if let Some(measuring) = &mut self.measuring {
            let place = CLOSER.iter().position(|&times| times == measuring.closer);
            measuring.closer = CLOSER[place.map_or(0, |place| (place + 1) % CLOSER.len())];
        }
    }

    /// What of the film is looked at when it is seen larger, px from its left and top: the cross that marks a
    /// point, else where the jumper was marked last before this frame, else its middle.
    pub fn looked_at_px(&self) -> Option<[f64; 2]> {
        let measuring = self.measuring.as_ref()?;
        let film = measuring.film.as_ref()?;
        if let Some(Mark::Point(..)) = self.asked_mark() {
            return Some(measuring.cross_px);
        }
        let frame_s = measuring.frame_s()?;
        let points = &measuring.marks()?.points;
        let of_jumper = points
            .iter()
            .filter(|point| point.of != PointOf::Background);
        let before = of_jumper.clone().filter(|point| point.t_s <= frame_s);
        let last = before.max_by(|one, other| one.t_s.total_cmp(&other.t_s));
        let middle_px = film.size_px.map(|length| 0.5 * length);
        Some(
            last.or(of_jumper.clone().next())
                .map_or(middle_px, |it| it.at_px),
        )
    }

    /// Shows a frame of the film, held inside it.
    pub fn show_frame(&mut self, frame: usize) {
        if let Some(measuring) = &mut self.measuring
            && let Some(film) = &measuring.film
        {
            measuring.frame = frame.min(film.times_s.len() - 1);
        }
    }

    pub fn is_film_playing(&self) -> bool {
        self.measuring.as_ref().is_some_and(Measuring::is_playing)
    }

    /// Plays the film, from its beginning where it is at its end; or stops it.
    pub fn play_or_pause_film(&mut self) {
        let Some(measuring) = &mut self.measuring else {
            return;
        };
        measuring.playing = !measuring.playing;
        let last = measuring.film.as_ref().map(|film| film.times_s.len() - 1);
        if measuring.playing && Some(measuring.frame) == last {
            measuring.frame = 0;
        }
    }

    /// What the page says of a film that plays: the frame to be seen, and none at its end.
    pub fn film_played(&mut self, frame: usize, ended: bool) {
        self.show_frame(frame);
        if let Some(measuring) = &mut self.measuring {
            measuring.playing &= !ended;
        }
    }

    /// Shows a frame so many further on, or back.
    pub fn step_frames(&mut self, by: isize) {
        if let Some(measuring) = &mut self.measuring {
            measuring.playing = false;
            let frame = measuring.frame;
            self.show_frame(frame.saturating_add_signed(by));
        }
    }
}
