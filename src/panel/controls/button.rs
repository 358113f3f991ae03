//! A button with a frame and a text or sign on it, filled while it is on.

use egui::{
    Align2, Color32, CornerRadius, Painter, Rect, Response, Sense, Stroke, StrokeKind, Ui, vec2,
};

use crate::controls::accessibility;
use crate::controls::areas::{button_area_if, toggle_area};
use crate::fitted::fitted;
use crate::style::{self, ACCENT, CARD, LINE, ON_ACCENT, TEXT, TOUCH_SIZE};

/// Least distance of a button's text from its sides.
const EDGE: f32 = 4.0;

/// Draws a sign into a rectangle, in a colour.
type Sign<'a> = Box<dyn FnOnce(&Painter, Rect, Color32) + 'a>;

pub struct Button<'a> {
    name: &'a str,
    accessible_name: &'a str,
    /// What more there is to say of it, for AccessKit.
    about: Option<&'a str>,
    /// Its toggle state for AccessKit; none for a button that is not a toggle.
    on: Option<bool>,
    filled: bool,
    enabled: bool,
    content: Content<'a>,
}

enum Content<'a> {
    Text(&'a str),
    Sign(Sign<'a>),
}

impl<'a> Button<'a> {
    /// A button with the text `label`, in a font size that fits.
    pub fn labelled(name: &'a str, label: &'a str) -> Self {
        Self {
            name,
            accessible_name: label,
            about: None,
            on: None,
            filled: false,
            enabled: true,
            content: Content::Text(label),
        }
    }

    /// A button whose content is drawn.
    pub fn drawn(
        name: &'a str,
        accessible_name: &'a str,
        draw: impl FnOnce(&Painter, Rect, Color32) + 'a,
    ) -> Self {
        Self {
            name,
            accessible_name,
            about: None,
            on: None,
            filled: false,
            enabled: true,
            content: Content::Sign(Box::new(draw)),
        }
    }

    /// Sets an accessible name that says more than the text on the button.
    pub fn accessible_name(mut self, accessible_name: &'a str) -> Self {
        self.accessible_name = accessible_name;
        self
    }

    /// Sets what is read out after its name.
    pub fn about(mut self, about: &'a str) -> Self {
        self.about = Some(about);
        self
    }

    /// One of several to choose from: filled while it is the chosen one.
    pub fn chosen(mut self, chosen: bool) -> Self {
        self.filled = chosen;
        self.on = chosen.then_some(true);
        self
    }

    /// A button that is on or off.
    pub fn toggle(mut self, on: bool) -> Self {
        self.filled = on;
        self.on = Some(on);
        self
    }

    /// Filled without being on.
    pub fn filled(mut self, filled: bool) -> Self {
        self.filled = filled;
        self
    }

    /// Disabled, and drawn pale, unless `enabled`.
    pub fn enabled(mut self, enabled: bool) -> Self {
        self.enabled = enabled;
        self
    }

    pub fn show(self, ui: &Ui, rect: Rect) -> Response {
        let response = match self.on {
            Some(on) => toggle_area(ui, self.name, rect, self.accessible_name, on),
            None => button_area_if(ui, self.name, rect, self.accessible_name, self.enabled),
        };
        if let Some(about) = self.about {
            accessibility::describe(ui, &response, about);
        }
        let (fill, colour) = if self.filled {
            (ACCENT.get(), ON_ACCENT.get())
        } else {
            (CARD.get(), TEXT.get())
        };
        let colour = if self.enabled {
            colour
        } else {
            colour.gamma_multiply(style::FADED)
        };
        let edge = if self.enabled && response.hovered() {
            ACCENT.get()
        } else {
            LINE.get()
        };
        let painter = ui.painter();
        painter.rect(
            rect,
            CornerRadius::same(style::CORNER_RADIUS),
            fill,
            Stroke::new(1.0, edge),
            StrokeKind::Inside,
        );
        match self.content {
            Content::Text(label) => {
                let (font, room) = (style::text(16.0), rect.width() - 2.0 * EDGE);
                let middle = Align2::CENTER_CENTER;
                fitted(painter, middle, label, font, colour, room).draw(painter, rect.center());
            }
            Content::Sign(draw) => draw(painter, rect, colour),
        }
        response
    }

    /// Shows it in a row of its own, as wide as the `Ui`.
    pub fn show_in_row(self, ui: &mut Ui) -> Response {
        let size = vec2(ui.available_width(), TOUCH_SIZE);
        let (rect, _) = ui.allocate_exact_size(size, Sense::hover());
        self.show(ui, rect)
    }
}
