//! What the panels ask of the page.

use turns_aloft_session::Saved;

/// A command that needs the browser; `page` carries it out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PageCommand {
    Open,
    /// Asks for a film, to measure an attempt in it.
    OpenFilm,
    /// Fetches one of the lessons that come with the page, by its place, and opens it.
    Lesson(usize),
    /// Opens the invented film that comes with the page.
    ExampleFilm,
    Save(Saved),
    /// Opens a sheet of paper, to be printed by the browser.
    Sheet(Sheet),
    /// Asks whether the device's motion sensor may be read, and reads it.
    UseSensor,
    /// Saves a still picture of the present jump.
    Picture,
    /// Opens the device's sheet for sharing with that picture.
    SendPicture,
    /// Puts the present jump, and the reference attempt, into the page's address, and copies it.
    Link,
    /// Opens the device's sheet for sharing with that address.
    SendLink,
}

/// A sheet of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sheet {
    /// Of the lesson in sight.
    Pupil,
    Answers,
    Plan,
    Results,
    /// Of the jump at hand.
    Coach,
}
