//! A film in the browser: any local file that the browser plays, never loaded whole, whose frame on the
//! screen is the frame that was asked for.
//!
//! A `<video>` element knows times, not frames, and neither its clock nor what it says of a frame is
//! the same in all engines. So the frames' times come from the file (`turns_aloft_film`), the element's
//! clock is set once by what it shows (`opening`), and a frame is shown by going to the middle of its
//! interval and waiting until it is on the screen (`showing`).

mod bytes;
mod clock;
mod core;
mod fault;
mod frame_callback;
mod gestures;
mod inbox;
mod listeners;
mod opening;
mod overlay;
mod player;
mod playing;
mod screen;
mod showing;
mod source;
mod timer;
mod view;
mod watcher;
mod whole_track;

pub use fault::PlayerFault;
pub use overlay::{Overlay, Stroke};
pub use player::Player;
pub use view::{FilmPoint, PagePoint};
pub use watcher::{Event, Watcher};
