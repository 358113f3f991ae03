//! How the rows of the tables of numbers are told: each by the names of its messages.

/// Gives a row its texts in the language spoken, from its messages `label`, `inline` and `about`.
macro_rules! named {
    ($Row:ty) => {
        impl $Row {
            pub fn label(&self) -> &'static str {
                self.label.text()
            }

            /// The label inside a sentence.
            pub fn inline(&self) -> &'static str {
                self.inline.text()
            }

            /// What it is, or where the usual one comes from, in a sentence or two.
            pub fn about(&self) -> &'static str {
                self.about.text()
            }
        }
    };
}
pub(crate) use named;
