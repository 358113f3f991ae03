//! The look of the panels, in one place: colours, type, spacing.
//!
//! Calm rink light: white cards on pale ice, navy ink. The hues that carry meaning stay apart for
//! colour-blind eyes (after Okabe & Ito's palette) and have a contrast of at least 4.5:1 where they
//! are text.

use std::sync::Arc;

use bevy_egui::egui::{
    Color32, Context, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, Stroke,
    TextStyle, Theme, Ui, Vec2, Visuals,
};

/// Ground of the page.
pub const ICE: Color32 = Color32::from_rgb(0xE6, 0xEE, 0xF4);
/// Cards.
pub const SNOW: Color32 = Color32::from_rgb(0xFB, 0xFD, 0xFE);
/// Lines and tracks.
pub const FROST: Color32 = Color32::from_rgb(0xC3, 0xD2, 0xDE);
/// Text.
pub const INK: Color32 = Color32::from_rgb(0x12, 0x26, 0x3A);
/// Second text.
pub const SLATE: Color32 = Color32::from_rgb(0x4A, 0x5F, 0x73);
/// What can be touched; what is right.
pub const TEAL: Color32 = Color32::from_rgb(0x00, 0x6B, 0x5F);
/// What is short or out of reach.
pub const VERMILION: Color32 = Color32::from_rgb(0xB5, 0x45, 0x00);
/// The playhead and what has been turned so far.
pub const AMBER: Color32 = Color32::from_rgb(0xE6, 0x9F, 0x00);
/// The attempt beside the present one (reddish purple, after Okabe & Ito, dark enough for text).
pub const BESIDE: Color32 = Color32::from_rgb(0x96, 0x48, 0x7A);
/// Where people have been seen.
pub const SEEN: Color32 = Color32::from_rgb(0x7F, 0xBF, 0xB4);

/// Spans of the flight behind the charts.
pub const CLOSING: Color32 = Color32::from_rgb(0xF6, 0xE3, 0xB5);
pub const TIGHT: Color32 = Color32::from_rgb(0xCF, 0xE6, 0xE1);
pub const OPENING: Color32 = Color32::from_rgb(0xD9, 0xDF, 0xF2);

/// From few turns to many on the map: ever darker, from yellow to blue, which all eyes tell apart,
/// and never so dark that ink could not be read on it.
pub const MAP: [Color32; 4] = [
    Color32::from_rgb(0xF8, 0xF3, 0xDC),
    Color32::from_rgb(0xC4, 0xDF, 0xCF),
    Color32::from_rgb(0x8E, 0xBB, 0xD6),
    Color32::from_rgb(0x5E, 0x8D, 0xBD),
];

/// Smallest side of anything that is touched.
pub const TOUCH: f32 = 44.0;
/// Distance between things that belong together, and between things that do not.
pub const NEAR: f32 = 6.0;
pub const APART: f32 = 14.0;
pub const ROUND: u8 = 10;

const BOLD: &str = "bold";

/// Text of this size.
pub fn text(size: f32) -> FontId {
    FontId::new(size, FontFamily::Proportional)
}

/// Heavier text of this size, for figures and headings.
pub fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name(BOLD.into()))
}

/// The size, at most `size`, at which a line of heavier text is no wider than `width`.
pub fn fitting(ui: &Ui, line: &str, size: f32, width: f32) -> f32 {
    fitting_in(ui, line, bold(size), width)
}

/// The same of text.
pub fn fitting_text(ui: &Ui, line: &str, size: f32, width: f32) -> f32 {
    fitting_in(ui, line, text(size), width)
}

fn fitting_in(ui: &Ui, line: &str, font: FontId, width: f32) -> f32 {
    let size = font.size;
    let needed = ui
        .painter()
        .layout_no_wrap(line.to_owned(), font, INK)
        .size()
        .x;
    size * (width / needed).min(1.0)
}

/// Dresses a context that has just been made.
pub fn dress(ctx: &Context) {
    ctx.set_fonts(fonts());
    ctx.options_mut(|options| {
        // A gloved or hesitant finger stays down for long: it is still a tap, and two slow taps
        // are still a double one.
        options.input_options.max_click_duration = f64::INFINITY;
        options.input_options.max_double_click_delay = 0.8;
    });
    ctx.set_theme(Theme::Light);
    ctx.all_styles_mut(|style| {
        style.visuals = visuals();
        style.spacing.item_spacing = Vec2::new(NEAR, NEAR);
        style.spacing.button_padding = Vec2::new(12.0, 8.0);
        style.spacing.interact_size = Vec2::splat(TOUCH);
        style.spacing.menu_margin = Margin::same(6);
        style.text_styles = [
            (TextStyle::Small, text(14.0)),
            (TextStyle::Body, text(16.0)),
            (TextStyle::Button, text(16.0)),
            (TextStyle::Monospace, text(16.0)),
            (TextStyle::Heading, bold(19.0)),
        ]
        .into();
    });
}

fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    let mut add = |name: &str, bytes: &'static [u8], families: &[FontFamily]| {
        fonts
            .font_data
            .insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
        for family in families {
            fonts.families.insert(family.clone(), vec![name.to_owned()]);
        }
    };
    add(
        "barlow-500",
        include_bytes!("../../assets/fonts/barlow-500.ttf"),
        &[FontFamily::Proportional, FontFamily::Monospace],
    );
    add(
        "barlow-600",
        include_bytes!("../../assets/fonts/barlow-600.ttf"),
        &[FontFamily::Name(BOLD.into())],
    );
    fonts
}

fn visuals() -> Visuals {
    let mut v = Visuals::light();
    v.override_text_color = Some(INK);
    v.panel_fill = ICE;
    v.window_fill = SNOW;
    v.window_stroke = Stroke::new(1.0, FROST);
    v.window_corner_radius = CornerRadius::same(ROUND);
    v.menu_corner_radius = CornerRadius::same(ROUND);
    v.extreme_bg_color = Color32::WHITE;
    v.selection.bg_fill = TEAL;
    v.selection.stroke = Stroke::new(1.0, Color32::WHITE);
    for (widget, fill) in [
        (&mut v.widgets.noninteractive, SNOW),
        (&mut v.widgets.inactive, SNOW),
        (&mut v.widgets.hovered, Color32::WHITE),
        (&mut v.widgets.active, TIGHT),
        (&mut v.widgets.open, TIGHT),
    ] {
        widget.bg_fill = fill;
        widget.weak_bg_fill = fill;
        widget.bg_stroke = Stroke::new(1.0, FROST);
        widget.fg_stroke = Stroke::new(1.5, INK);
        widget.corner_radius = CornerRadius::same(ROUND);
        widget.expansion = 0.0;
    }
    v
}
