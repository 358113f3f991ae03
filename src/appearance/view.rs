//! The named views of the 3D picture: panels offer them, the camera goes there.

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    Front,
    /// From high up, where the dial is read best.
    Above,
    /// Straight down the axis of the turning.
    AlongAxis,
}
