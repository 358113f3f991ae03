//! The letters on the screen as they are drawn: how large, where, and what is drawn over them.

use egui::epaint::{ClippedShape, TextShape};
use egui::{Order, Pos2, Rect, Shape};

use crate::harness::Page;

/// Least font size, CSS pixels. Common practice, no source.
const LEAST_PX: f32 = 13.0;

/// What is cut by less than this, in points, is only the soft edge of a letter.
const EDGE: f32 = 1.0;

/// A lower clip rectangle is not of something that scrolls.
const LEAST_SCROLLED: f32 = 40.0;

/// One line of a text.
struct Row {
    text: String,
    /// All lines of the text, whole if it ends with an ellipsis.
    whole: String,
    /// Its least font size, CSS pixels.
    size_px: f32,
    letters: Rect,
    clip: Rect,
    elided: bool,
    /// Position in the order of drawing.
    order: usize,
}

/// An opaque rectangle, which hides what was drawn before it and is the ground of what is drawn on
/// it.
struct Ground {
    /// As far as it is not clipped.
    rect: Rect,
    order: usize,
}

/// What the last frame has drawn.
#[derive(Default)]
struct Drawn {
    rows: Vec<Row>,
    grounds: Vec<Ground>,
    count: usize,
}

impl Drawn {
    fn add(&mut self, shape: &Shape, clip: Rect, zoom: f32) {
        self.count += 1;
        match shape {
            Shape::Vec(shapes) => {
                for shape in shapes {
                    self.add(shape, clip, zoom);
                }
            }
            Shape::Rect(rect) if rect.fill.is_opaque() && rect.blur_width == 0.0 => {
                self.grounds.push(Ground {
                    rect: rect.rect.intersect(clip),
                    order: self.count,
                });
            }
            Shape::Text(text) => self.add_rows(text, clip, zoom),
            _ => (),
        }
    }

    fn add_rows(&mut self, TextShape { pos, galley, .. }: &TextShape, clip: Rect, zoom: f32) {
        let sizes = galley.job.sections.iter().map(|it| it.format.font_id.size);
        let size_px = zoom * sizes.fold(f32::INFINITY, f32::min);
        for row in &galley.rows {
            let text: String = row.glyphs.iter().map(|glyph| glyph.chr).collect();
            let own = row.visuals.mesh_bounds;
            if !text.trim().is_empty() && own.is_positive() {
                self.rows.push(Row {
                    text,
                    whole: galley.text().to_owned(),
                    size_px,
                    letters: own.translate(pos.to_vec2() + row.pos.to_vec2()),
                    clip,
                    elided: galley.elided,
                    order: self.count,
                });
            }
        }
    }
}

/// Whether more than an edge of each is in the other.
fn overlap(a: Rect, b: Rect) -> bool {
    let common = a.intersect(b);
    common.width() > EDGE && common.height() > EDGE
}

/// What is left of `parts` outside of `hole`.
fn without(parts: Vec<Rect>, hole: Rect) -> Vec<Rect> {
    let cut = |part: Rect| {
        let common = part.intersect(hole);
        if !common.is_positive() {
            return vec![part];
        }
        let (above, rest) = part.split_top_bottom_at_y(common.top());
        let (middle, below) = rest.split_top_bottom_at_y(common.bottom());
        let (left, rest) = middle.split_left_right_at_x(common.left());
        let (_, right) = rest.split_left_right_at_x(common.right());
        vec![above, below, left, right]
    };
    let all = parts.into_iter().flat_map(cut);
    all.filter(|part| part.is_positive()).collect()
}

/// What is wrong with the letters of the last frame. Texts with the user's own `names` may end with an
/// ellipsis.
pub fn faults(page: &Page, names: &[&str]) -> Vec<String> {
    let screen = page.ctx.viewport_rect();
    // An open menu or an explanation may hide what is below it.
    let layers = page.ctx.memory(|memory| memory.areas().visible_layer_ids());
    let covered = layers.iter().any(|layer| layer.order > Order::Background);
    let mut drawn = Drawn::default();
    for ClippedShape { clip_rect, shape } in &page.output().shapes {
        drawn.add(shape, *clip_rect, page.ctx.zoom_factor());
    }
    assert!(drawn.rows.len() > 7, "{} lines of text", drawn.rows.len());
    let clips = page.output().shapes.iter().map(|shape| shape.clip_rect);
    let scrolled: Vec<Rect> = clips
        .filter(|clip| clip.height() >= LEAST_SCROLLED && !clip.contains_rect(screen))
        .collect();
    let mut said = Vec::new();
    let mut visible = Vec::new();
    for row in &drawn.rows {
        let own = row.letters;
        let mut fault = |what: &str| said.push(format!("{what}: {:?} at {own:?}", row.text));
        if row.size_px < LEAST_PX - 0.01 {
            fault(&format!("only {} px", row.size_px));
        }
        if row.elided && !names.iter().any(|name| row.whole.contains(name)) {
            fault("ends with an ellipsis");
        }
        let room = row.clip.intersect(screen);
        let scrolls = |edge: fn(&Rect) -> f32| {
            let here = edge(&row.clip);
            scrolled.iter().any(|clip| (edge(clip) - here).abs() < EDGE)
        };
        let is_cut = own.top() < room.top() - EDGE && !scrolls(|clip| clip.top())
            || own.bottom() > room.bottom() + EDGE && !scrolls(|clip| clip.bottom());
        let is_beside = own.bottom() > room.top() && own.top() < room.bottom();
        if is_beside && (own.left() < room.left() - EDGE || own.right() > room.right() + EDGE) {
            fault("cut at a side");
        }
        if is_cut {
            fault("cut above or below");
        }
        if own.intersects(room)
            && let Some(ground) = ground(&drawn, row, own.intersect(room).center())
            && !ground.expand(EDGE).contains_rect(own.intersect(room))
        {
            fault(&format!("runs out of its ground {ground:?}"));
        }
        let mut parts = vec![own.intersect(room)];
        parts.retain(|part| part.is_positive());
        for over in drawn.grounds.iter().filter(|over| over.order > row.order) {
            if !covered && parts.iter().any(|&part| overlap(part, over.rect)) {
                fault(&format!("has {:?} drawn over it", over.rect));
            }
            parts = without(parts, over.rect);
        }
        visible.push(parts);
    }
    for (i, one) in drawn.rows.iter().enumerate() {
        for (j, other) in drawn.rows.iter().enumerate().skip(i + 1) {
            let meet = |a: &Rect| visible[j].iter().any(|&b| overlap(*a, b));
            if visible[i].iter().any(meet) {
                said.push(format!(
                    "over one another: {:?} at {:?} and {:?} at {:?}",
                    one.text, one.letters, other.text, other.letters
                ));
            }
        }
    }
    said
}

/// The rectangle that a line of text stands on, if that is higher than the line: the last one that was
/// drawn before it at the `middle` of what is seen of it.
fn ground(drawn: &Drawn, row: &Row, middle: Pos2) -> Option<Rect> {
    let below = drawn
        .grounds
        .iter()
        .take_while(|ground| ground.order < row.order);
    let rects = below.map(|ground| ground.rect);
    rects
        .filter(|rect| rect.contains(middle) && rect.height() > row.letters.height())
        .last()
}
