//! The turntable: a person who stands or sits on a turning platform or a swivel chair, or spins on the
//! ice, and moves arms, legs and trunk. One degree of freedom, the angle about the bearing.
//!
//! The axis is the bearing's: vertical, through a fixed point. What turns on it has a moment of inertia I
//! about that axis and, as its parts move, an angular momentum l of their own against the turning frame:
//! L = I w + l. Only friction and pushes change L. All of it goes by one interface, [`OnBearing`]: a person
//! whose limbs are led by hand ([`Turntable`]) or move by a programme ([`planned`]), and the bodies of worked
//! examples, of which nothing but the inertia is given ([`Given`]).
//!
//! Left out: air; the lift of the arms, which gravity gives back; and balance: the person stays upright over
//! the axis whatever the limbs do, as a bearing holds it. Rates and turns are positive anticlockwise seen from
//! above.

pub mod about_axis;
pub mod calibrate;
pub mod export;
pub mod friction;
pub mod given;
pub mod led;
pub mod person;
pub mod planned;
pub mod position;
pub mod programme;
pub mod run;
pub mod run_curve;
pub mod setup;
pub mod slowing;
pub mod stand;
pub mod turning;
pub mod turntable;

pub use about_axis::{AboutAxis, OnBearing};
pub use friction::Friction;
pub use given::Given;
pub use person::Person;
pub use position::Position;
pub use programme::Programme;
pub use run::{Run, Sample};
pub use run_curve::RunCurve;
pub use setup::Setup;
pub use stand::Stand;
pub use turning::Turning;
pub use turntable::Turntable;
