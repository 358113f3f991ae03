//! What is typed on the page of a lesson.

use std::borrow::Cow;

use crate::controls::{NumberEdit, TextEdit};

pub struct Edits<'a> {
    pub numbers: &'a mut NumberEdit,
    pub texts: &'a mut TextEdit,
    /// The key of the number that is explained.
    pub about: &'a mut Option<Cow<'static, str>>,
}
