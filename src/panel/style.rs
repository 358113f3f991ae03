//! The style of the panels: fonts, spacing, and the theme's colours in egui's type.

use std::sync::Arc;

use egui::{
    Color32, Context, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, Painter,
    Stroke, TextStyle, Vec2, Visuals,
};

use turns_aloft_appearance::{Colours, Rgb, Theme, colours, shown};

/// A colour of the current theme, looked up each time something is color32 with it.
#[derive(Clone, Copy)]
pub struct ThemeColour(fn(&Colours) -> Rgb);

impl ThemeColour {
    pub fn get(self) -> Color32 {
        color32((self.0)(colours()))
    }
}

/// Background of the page.
pub const BACKGROUND: ThemeColour = ThemeColour(|colours| colours.background);
/// Cards.
pub const CARD: ThemeColour = ThemeColour(|colours| colours.card);
/// Fields on a card.
const RAISED: ThemeColour = ThemeColour(|colours| colours.raised);
/// Lines and tracks.
pub const LINE: ThemeColour = ThemeColour(|colours| colours.line);
/// Text.
pub const TEXT: ThemeColour = ThemeColour(|colours| colours.text);
/// Less important text.
pub const WEAK_TEXT: ThemeColour = ThemeColour(|colours| colours.weak_text);
/// Controls that are on, and what is reached.
pub const ACCENT: ThemeColour = ThemeColour(|colours| colours.accent);
/// Text on the accent colour.
pub const ON_ACCENT: ThemeColour = ThemeColour(|colours| colours.on_accent);
/// What is missing, or beyond what has been seen.
pub const WARNING: ThemeColour = ThemeColour(|colours| colours.warning);
/// The playhead and what has been turned so far.
pub const PLAYHEAD: ThemeColour = ThemeColour(|colours| colours.playhead);
/// The reference attempt.
pub const REFERENCE: ThemeColour = ThemeColour(|colours| colours.reference);
/// What has been seen in people.
pub const SEEN: ThemeColour = ThemeColour(|colours| colours.seen);
/// The curve of the moment of inertia.
pub const INERTIA: ThemeColour = ThemeColour(|colours| colours.inertia);

/// The curves of the joint torques, in the order of the groups.
pub fn torques() -> [Color32; 5] {
    colours().torques.map(color32)
}

/// Spans of the flight behind the charts.
pub const CLOSING: ThemeColour = ThemeColour(|colours| colours.closing);
pub const TIGHT: ThemeColour = ThemeColour(|colours| colours.tight);
pub const OPENING: ThemeColour = ThemeColour(|colours| colours.opening);

/// From few turns to many on the map.
pub fn map() -> [Color32; 4] {
    colours().map.map(color32)
}

const fn color32(Rgb(r, g, b): Rgb) -> Color32 {
    Color32::from_rgb(r, g, b)
}

/// Least side of a touch target.
pub const TOUCH_SIZE: f32 = 44.0;
/// Distance between elements that belong together, and between others.
pub const GAP: f32 = 6.0;
pub const WIDE_GAP: f32 = 14.0;
pub const CORNER_RADIUS: u8 = 10;

/// Opacity of what is disabled or out of date.
pub const FADED: f32 = 0.45;

const BOLD: &str = "bold";

/// The font of text.
pub fn text(size: f32) -> FontId {
    FontId::new(size, FontFamily::Proportional)
}

/// The heavier font of figures and headings.
pub fn bold(size: f32) -> FontId {
    FontId::new(size, FontFamily::Name(BOLD.into()))
}

/// Least font size, CSS pixels.
const LEAST_PX: f32 = 13.0;

/// The font size, at most `size`, at which a line of bold text is no wider than `width`; but not so
/// small that it cannot be read.
pub fn fitting(painter: &Painter, line: &str, size: f32, width: f32) -> f32 {
    fitting_in(painter, line, bold(size), width)
}

/// The same for text of usual weight.
pub fn fitting_text(painter: &Painter, line: &str, size: f32, width: f32) -> f32 {
    fitting_in(painter, line, text(size), width)
}

/// The same for any font.
pub fn fitting_in(painter: &Painter, line: &str, font: FontId, width: f32) -> f32 {
    let size = font.size;
    let needed = painter
        .layout_no_wrap(line.to_owned(), font, TEXT.get())
        .size()
        .x;
    // In half points, because the font atlas has separate glyphs for every font size.
    let most = size * (width / needed).min(1.0);
    if most < size {
        let least = LEAST_PX / painter.ctx().zoom_factor();
        ((2.0 * most).floor() / 2.0).max(least.min(size))
    } else {
        size
    }
}

/// Sets fonts, colours and spacing of a context.
pub fn theme(ctx: &Context) {
    ctx.set_fonts(fonts());
    ctx.options_mut(|options| {
        // A long press is still a click, and two slow taps are still a double click, also for a
        // gloved or hesitant finger.
        options.input_options.max_click_duration = f64::INFINITY;
        options.input_options.max_double_click_delay = 0.8;
        // A finger's tap wanders by this much at most; beyond, the direction of its swipe is known.
        options.input_options.max_click_dist = 8.0;
    });
    ctx.set_theme(match shown() {
        Theme::Day => egui::Theme::Light,
        Theme::Night => egui::Theme::Dark,
    });
    ctx.all_styles_mut(|style| {
        style.visuals = visuals();
        style.spacing.item_spacing = Vec2::new(GAP, GAP);
        style.spacing.button_padding = Vec2::new(12.0, 8.0);
        style.spacing.interact_size = Vec2::splat(TOUCH_SIZE);
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
    let mut v = match shown() {
        Theme::Day => Visuals::light(),
        Theme::Night => Visuals::dark(),
    };
    // Glyphs are placed on whole pixels: sharper, and each is rasterised once instead of up to four
    // times.
    v.text_options.subpixel_binning = false;
    v.override_text_color = Some(TEXT.get());
    v.panel_fill = BACKGROUND.get();
    v.window_fill = CARD.get();
    v.window_stroke = Stroke::new(1.0, LINE.get());
    v.window_corner_radius = CornerRadius::same(CORNER_RADIUS);
    v.menu_corner_radius = CornerRadius::same(CORNER_RADIUS);
    v.extreme_bg_color = RAISED.get();
    v.selection.bg_fill = ACCENT.get();
    v.selection.stroke = Stroke::new(1.0, ON_ACCENT.get());
    for (widget, fill) in [
        (&mut v.widgets.noninteractive, CARD.get()),
        (&mut v.widgets.inactive, CARD.get()),
        (&mut v.widgets.hovered, RAISED.get()),
        (&mut v.widgets.active, TIGHT.get()),
        (&mut v.widgets.open, TIGHT.get()),
    ] {
        widget.bg_fill = fill;
        widget.weak_bg_fill = fill;
        widget.bg_stroke = Stroke::new(1.0, LINE.get());
        widget.fg_stroke = Stroke::new(1.5, TEXT.get());
        widget.corner_radius = CornerRadius::same(CORNER_RADIUS);
        widget.expansion = 0.0;
    }
    v
}
