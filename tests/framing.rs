//! The camera's framing keeps the whole jump in the picture. The stage itself is built for the
//! browser only; this part of it is plain geometry and is tested here.

#[allow(dead_code, reason = "the stage uses all of it")]
#[path = "../src/stage/framing.rs"]
mod framing;
