//! Where the film lies on the page, and how closely it is looked at.

/// A place in the picture of the film, in its own pixels from the upper left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FilmPoint {
    pub x_px: f64,
    pub y_px: f64,
}

/// A place on the page, in CSS pixels from the upper left corner: of the window outside of this
/// package, of the room for the film inside of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PagePoint {
    pub x_px: f64,
    pub y_px: f64,
}

/// Width and height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Size {
    pub width_px: f64,
    pub height_px: f64,
}

/// How many times larger than the whole film it can be looked at.
const CLOSEST: f64 = 16.0;

/// From film to room: a scale and a shift.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    film: Size,
    room: Size,
    scale: f64,
    x_px: f64,
    y_px: f64,
}

impl View {
    /// The whole film, as large as there is room, in the middle of it.
    pub fn fitting(film: Size, room: Size) -> Self {
        let scale = (room.width_px / film.width_px).min(room.height_px / film.height_px);
        let mut view = Self {
            film,
            room,
            // A room without any size is one that isn't shown.
            scale: if scale > 0.0 { scale } else { 1.0 },
            x_px: 0.0,
            y_px: 0.0,
        };
        view.keep_in_room();
        view
    }

    pub const fn scale(&self) -> f64 {
        self.scale
    }

    pub const fn shift(&self) -> PagePoint {
        PagePoint {
            x_px: self.x_px,
            y_px: self.y_px,
        }
    }

    /// Whether less than the whole film is in sight.
    pub fn is_close(&self) -> bool {
        self.scale > self.fitted().scale * 1.001
    }

    pub fn fitted(&self) -> Self {
        Self::fitting(self.film, self.room)
    }

    /// The same, with the middle of the room on the same place of the film, in another room.
    #[must_use]
    pub fn in_room(&self, room: Size) -> Self {
        let closer = self.scale / self.fitted().scale;
        let middle = self.to_film(middle_of(self.room));
        let mut view = Self::fitting(self.film, room);
        view.scale *= closer;
        let there = view.to_room(middle);
        let here = middle_of(room);
        view.moved(here.x_px - there.x_px, here.y_px - there.y_px)
    }

    /// The same, `factor` times closer, with the film unmoved at `about`.
    #[must_use]
    pub fn closer(&self, factor: f64, about: PagePoint) -> Self {
        let fitted = self.fitted().scale;
        let still = self.to_film(about);
        let mut view = *self;
        view.scale = (self.scale * factor).clamp(fitted, fitted * CLOSEST);
        let there = view.to_room(still);
        view.moved(about.x_px - there.x_px, about.y_px - there.y_px)
    }

    /// The same, with a place of the film in the middle of the room.
    #[must_use]
    pub fn centred(&self, at: FilmPoint) -> Self {
        let (there, middle) = (self.to_room(at), middle_of(self.room));
        self.moved(middle.x_px - there.x_px, middle.y_px - there.y_px)
    }

    /// The same, with the film dragged to the right and down.
    #[must_use]
    pub fn moved(&self, right_px: f64, down_px: f64) -> Self {
        let mut view = *self;
        view.x_px += right_px;
        view.y_px += down_px;
        view.keep_in_room();
        view
    }

    pub fn to_room(self, place: FilmPoint) -> PagePoint {
        PagePoint {
            x_px: self.scale * place.x_px + self.x_px,
            y_px: self.scale * place.y_px + self.y_px,
        }
    }

    pub fn to_film(self, place: PagePoint) -> FilmPoint {
        FilmPoint {
            x_px: (place.x_px - self.x_px) / self.scale,
            y_px: (place.y_px - self.y_px) / self.scale,
        }
    }

    /// Film that is larger than the room fills it; other film is in its middle.
    fn keep_in_room(&mut self) {
        let kept = |shift: f64, film: f64, room: f64| {
            if film <= room {
                (room - film) / 2.0
            } else {
                shift.clamp(room - film, 0.0)
            }
        };
        let (film, room, scale) = (self.film, self.room, self.scale);
        self.x_px = kept(self.x_px, film.width_px * scale, room.width_px);
        self.y_px = kept(self.y_px, film.height_px * scale, room.height_px);
    }
}

fn middle_of(room: Size) -> PagePoint {
    PagePoint {
        x_px: room.width_px / 2.0,
        y_px: room.height_px / 2.0,
    }
}
