//! What a film's file says about its frames, read from a few pieces of it: pictures are never read.
//!
//! MP4 and MOV (ISO/IEC 14496-12, QuickTime File Format) and WebM (Matroska, RFC 9559). Files come from
//! anybody: none makes this panic, hang, or take more than the limits of `limits.rs`.

mod chunks;
mod codec;
mod fault;
pub mod limits;
mod mp4;
mod reading;
mod samples;
mod times;
mod webm;

pub use codec::{Codec, Played};
pub use fault::FilmFault;
pub use reading::{Progress, Reading};
pub use times::{Edit, FilmTimes};
