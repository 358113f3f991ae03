//! Pictures and sheets of paper, made on request: a request is text, so that another module can make them.

mod made;
mod request;

pub use made::made;
pub use request::{Document, Request};
