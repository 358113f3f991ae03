//! What the panels ask of the page.

/// A command that needs the browser; `page` carries it out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PageCommand {
    Open,
    /// Asks for a film, to measure an attempt in it.
    OpenFilm,
    /// Opens the invented film that comes with the page.
    ExampleFilm,
    /// Saves the present jump as a file.
    Save,
    /// Saves the attempt at hand as a file: its marks, and no film.
    SaveAttempt,
    /// Saves the run on the turntable as CSV.
    SaveRun,
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
    /// Saves all kept jumps as one file.
    SaveAll,
}
