//! How a moving body turns: its inertia and momentum, the integration of its attitude, the loads on its joints.

pub mod attitude;
pub mod centroidal;
pub mod composite;
pub mod gravity;
pub mod integrate;
pub mod inverse;
pub mod mass_properties;
pub mod subtree_mass;
pub mod tree;
