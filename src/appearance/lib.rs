//! How things look: the colours in both lights, and the named views of the picture.

mod colours;
pub mod view;

pub use colours::{
    Choice, Colours, DAY, Ink, Light, NIGHT, Stage, choose, chosen, colours, show, shown,
};
