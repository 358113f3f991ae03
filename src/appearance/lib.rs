//! The colours in both themes, and the named views of the 3D picture.

mod colours;
pub mod view;

pub use colours::{
    Choice, Colours, DAY, Figure, NIGHT, Rgb, Stage, Theme, choose, chosen, colours, show, shown,
};
