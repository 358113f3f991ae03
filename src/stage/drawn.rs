//! The meshes of a body's segments, as the user has chosen to have the jumper drawn.

use crate::mannequin::Mannequin;
use crate::mesh_builder::MeshBuilder;
use crate::sticks::stick;
use turns_aloft_appearance::{Figure, chosen};
use turns_aloft_physics::body::{Body, Segment};

/// What builds the mesh of a segment, in the segment's frame.
pub fn segment_meshes(body: &Body) -> impl Fn(Segment) -> MeshBuilder + '_ {
    let mannequin = Mannequin::new(body);
    let figure = chosen().figure;
    move |segment| match figure {
        Figure::Body => mannequin.segment(segment),
        Figure::Sticks => stick(body, segment),
    }
}
