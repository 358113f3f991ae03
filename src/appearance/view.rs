//! The named views of the 3D picture, which the panels offer and the camera moves to.

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    Front,
    /// From high up, where the dial is easiest to read.
    Above,
    /// Straight down the vertical axis.
    AlongAxis,
}
