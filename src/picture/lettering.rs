//! Lines of text: how wide they are, and where they break.

use skrifa::instance::{LocationRef, Size};
use skrifa::{FontRef, MetadataProvider as _};
use svg::node::element::Text;

use crate::fonts::{BOLD, FAMILY, USUAL};
use turns_aloft_appearance::Rgb;

/// A size of type, px, and its weight.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Type {
    pub size_px: f32,
    pub bold: bool,
}

impl Type {
    pub const fn usual(size_px: f32) -> Self {
        Self {
            size_px,
            bold: false,
        }
    }

    pub const fn bold(size_px: f32) -> Self {
        Self {
            size_px,
            bold: true,
        }
    }

    /// Width of a line, px. A letter that the font does not have counts as wide as the type is high: another
    /// font draws it.
    pub fn width_px(self, line: &str) -> f32 {
        let bytes = if self.bold { BOLD } else { USUAL };
        let Ok(font) = FontRef::new(bytes) else {
            return self.size_px * line.chars().count() as f32;
        };
        let (letters, widths) = (
            font.charmap(),
            font.glyph_metrics(Size::new(self.size_px), LocationRef::default()),
        );
        line.chars()
            .map(|letter| {
                letters
                    .map(letter)
                    .and_then(|glyph| widths.advance_width(glyph))
                    .unwrap_or(self.size_px)
            })
            .sum()
    }

    /// The largest size up to this one in which a line is no wider than `width_px`.
    pub fn fitting(self, line: &str, width_px: f32) -> Self {
        let needed_px = self.width_px(line);
        Self {
            size_px: self.size_px * (width_px / needed_px).min(1.0),
            ..self
        }
    }

    /// The lines of a text that are no wider than `width_px`; a word that is wider alone is broken.
    pub fn wrapped(self, text: &str, width_px: f32) -> Vec<String> {
        let mut lines = vec![String::new()];
        for word in text.split_whitespace() {
            let last = lines.len() - 1;
            let longer = if lines[last].is_empty() {
                word.to_owned()
            } else {
                format!("{} {word}", lines[last])
            };
            if self.width_px(&longer) <= width_px {
                lines[last] = longer;
                continue;
            }
            if !lines[last].is_empty() {
                lines.push(String::new());
            }
            for letter in word.chars() {
                let last = lines.len() - 1;
                let longer = format!("{}{letter}", lines[last]);
                if self.width_px(&longer) <= width_px || lines[last].is_empty() {
                    lines[last] = longer;
                } else {
                    lines.push(letter.to_string());
                }
            }
        }
        lines
    }

    /// One line, its baseline beginning at `at_px`.
    pub fn line(self, line: impl Into<String>, at_px: [f32; 2], colour: Rgb) -> Text {
        Text::new(line)
            .set("x", at_px[0])
            .set("y", at_px[1])
            .set("font-family", FAMILY)
            .set("font-size", self.size_px)
            .set("font-weight", if self.bold { 600 } else { 500 })
            .set("fill", colour.hex())
    }
}
