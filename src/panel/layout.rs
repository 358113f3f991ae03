//! The layout of the panels on a screen of a given size.

use egui::{Rect, Vec2, pos2, vec2};

use crate::style::GAP;
use turns_aloft_session::Question;

/// The areas of the screen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Layout {
    pub bar: Rect,
    /// The 3D picture.
    pub stage: Rect,
    /// Playback, and the charts where they fit, below the picture.
    pub timeline: Rect,
    /// The turns, the questions and the answer; scrolls below the questions.
    pub column: Rect,
    /// A separate column for turns and sliders, if there is room for two columns.
    pub controls: Option<Rect>,
    /// Whether the turns are shown in full above what scrolls; otherwise in a line or two.
    pub tall: bool,
    /// Whether there is too little width for all labels.
    pub narrow: bool,
}

/// In a lower column only the answer and the questions stay in sight while the rest scrolls.
pub const LOW_COLUMN: f32 = 350.0;

impl Layout {
    /// Whether warnings stay in sight with the answer.
    pub fn warnings_stay(&self) -> bool {
        self.column.height() >= LOW_COLUMN
    }

    /// Whether the charts are below the picture; otherwise they scroll with the controls.
    pub fn charts_under_stage(&self) -> bool {
        self.timeline.height() > 1.5 * TIME_LINE
    }

    /// Whether the bar has room for undo and redo; otherwise they are on the picture.
    pub fn undo_in_bar(&self) -> bool {
        self.bar.width() > 700.0
    }

    /// Whether the bar has room for words on its buttons; otherwise they have signs.
    pub fn words_in_bar(&self) -> bool {
        self.bar.width() > 900.0
    }

    /// Whether the bar has room for all buttons; otherwise a jump is begun from the menu of jumps only.
    pub fn begin_in_bar(&self) -> bool {
        self.bar.width() > 360.0
    }
}

/// The smallest screen, in points, that everything has room on.
const SMALLEST: Vec2 = vec2(278.0, 336.0);

/// The size of a point, CSS pixels, when `wanted` is asked for: smaller on a small screen, but not below
/// 1.
pub fn zoom(wanted: f32, screen_px: Vec2) -> f32 {
    let most = (screen_px / SMALLEST).min_elem();
    wanted.min(most).max(1.0)
}

/// The middle of the picture that nothing lies `over`: the figure's whole flight is fitted into it. Of
/// the ways to avoid each of them, beside, below or above it, those that leave most room.
pub fn figure_area(stage: Rect, over: &[Rect]) -> Rect {
    let Some((first, others)) = over.split_first() else {
        return stage;
    };
    let middle = stage.center();
    let aside = if middle.x < first.center().x {
        first.left() - GAP - middle.x
    } else {
        middle.x - first.right() - GAP
    };
    let narrower = Rect::from_x_y_ranges(
        middle.x - aside.max(0.0)..=middle.x + aside.max(0.0),
        stage.y_range(),
    );
    let below = split_top(stage, first.bottom() + GAP - stage.top()).1;
    let above = split_top(stage, first.top() - GAP - stage.top()).0;
    let ways = [stage.intersect(narrower), below, above];
    let areas = ways.map(|way| figure_area(way, others));
    let side = |area: &Rect| area.size().min_elem();
    areas.into_iter().fold(Rect::NOTHING, |best, area| {
        if side(&area) > side(&best) {
            area
        } else {
            best
        }
    })
}

/// Greatest width of a column of text.
const READABLE: f32 = 680.0;

/// The middle of an area, no wider than text is read well.
pub fn readable(area: Rect) -> Rect {
    let width = area.width().min(READABLE);
    Rect::from_center_size(area.center(), Vec2::new(width, area.height()))
}

const BAR: f32 = 56.0;

/// Height of playback and a time line without charts.
const TIME_LINE: f32 = 110.0;

/// Height of a line of text in place of the time line.
const TEXT_LINE: f32 = 52.0;

/// Least height of the picture: the buttons of the views are one below the other on it.
const LEAST_STAGE: f32 = 158.0;

impl Layout {
    /// On a small screen there are no charts beside answers that need the room, and while a jump is set
    /// up its inputs have the room of most else.
    pub fn of(screen: Rect, question: Question, setting_up: bool) -> Self {
        let (bar, rest) = split_top(screen, BAR);
        if screen.width() > screen.height() {
            Self::wide(bar, rest, setting_up)
        } else {
            let charts = matches!(question, Question::Jump | Question::Compare);
            Self::tall(bar, rest, charts && !setting_up, setting_up)
        }
    }

    /// The same with nothing beside what scrolls.
    pub fn in_one_column(self) -> Self {
        let beside = self.controls.unwrap_or(self.column);
        Self {
            column: self.column.union(beside),
            controls: None,
            ..self
        }
    }

    /// The same with only a line of text where the time line is: picture or column have its room.
    pub fn without_timeline(self) -> Self {
        let mut layout = self;
        let line = TEXT_LINE.min(self.timeline.height());
        if self.column.left() >= self.timeline.right() {
            layout.timeline = self.timeline.with_min_y(self.timeline.bottom() - line);
            layout.stage = self.stage.with_max_y(layout.timeline.top());
        } else {
            layout.timeline = self.timeline.with_max_y(self.timeline.top() + line);
            layout.column = self.column.with_min_y(layout.timeline.bottom());
        }
        layout
    }

    /// While an attempt is measured in a film: the film in place of the picture, as large as it can be, and
    /// below it only what goes through it.
    pub fn measuring(screen: Rect) -> Self {
        let (bar, rest) = split_top(screen, BAR);
        let (stage, timeline, column) = if screen.width() > screen.height() {
            let side = (0.3 * rest.width()).clamp(300.0, 400.0);
            let (left, column) = split_left(rest, rest.width() - side);
            let (stage, timeline) = split_top(left, left.height() - TIME_LINE);
            (stage, timeline, column)
        } else {
            let (stage, below) = split_top(rest, 0.42 * rest.height());
            let (timeline, column) = split_top(below, TIME_LINE);
            (stage, timeline, column)
        };
        Self {
            bar,
            stage,
            timeline,
            column,
            controls: None,
            tall: false,
            narrow: rest.width() < 600.0,
        }
    }

    /// While a jump is flown by hand: the picture in the film's place, and the pad in the column.
    pub fn by_hand(screen: Rect) -> Self {
        Self::measuring(screen)
    }

    /// Picture left, controls right.
    fn wide(bar: Rect, rest: Rect, setting_up: bool) -> Self {
        let side = if setting_up {
            (0.45 * rest.width()).clamp(300.0, 480.0)
        } else {
            (0.34 * rest.width()).clamp(300.0, 430.0)
        };
        let stage_width = rest.width() - side;
        let (left, column) = split_left(rest, stage_width);
        let timeline_height = if rest.height() < 480.0 {
            TIME_LINE
        } else {
            (0.36 * rest.height()).clamp(240.0, 340.0)
        };
        let (stage, timeline) = split_top(left, left.height() - timeline_height);
        Self {
            bar,
            stage,
            timeline,
            column,
            controls: None,
            tall: column.height() > 560.0 && !setting_up,
            narrow: rest.width() < 900.0,
        }
    }

    /// Picture on top; below it one column, or two where they fit.
    fn tall(bar: Rect, rest: Rect, charts: bool, setting_up: bool) -> Self {
        let narrow = rest.width() < 600.0;
        let stage_height = if narrow && setting_up {
            LEAST_STAGE
        } else {
            (0.34 * rest.height()).max(LEAST_STAGE)
        };
        let timeline_height = if narrow && setting_up {
            0.0
        } else if narrow || !charts {
            TIME_LINE
        } else {
            (0.26 * rest.height()).max(200.0)
        };
        let (stage, below) = split_top(rest, stage_height);
        let (timeline, below) = split_top(below, timeline_height);
        let (controls, column) = if narrow {
            (None, below)
        } else {
            let (left, right) = split_left(below, 0.5 * below.width());
            (Some(left), right)
        };
        Self {
            bar,
            stage,
            timeline,
            column,
            controls,
            tall: !narrow,
            narrow,
        }
    }
}

fn split_top(rect: Rect, height: f32) -> (Rect, Rect) {
    let height = height.clamp(0.0, rect.height());
    (
        Rect::from_min_size(rect.min, vec2(rect.width(), height)),
        Rect::from_min_max(pos2(rect.left(), rect.top() + height), rect.max),
    )
}

fn split_left(rect: Rect, width: f32) -> (Rect, Rect) {
    let width = width.clamp(0.0, rect.width());
    (
        Rect::from_min_size(rect.min, Vec2::new(width, rect.height())),
        Rect::from_min_max(pos2(rect.left() + width, rect.top()), rect.max),
    )
}
