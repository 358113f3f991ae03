//! Every text that is drawn can be read: at every size of screen, in both languages, in usual and
//! large type, in every state that the panels can be in.

use std::collections::BTreeSet;

use egui::{Event, Modifiers, MouseWheelUnit, Pos2, TouchPhase, pos2, vec2};

use crate::harness::{
    LANGUAGES, PHONE_ON_ITS_SIDE, Page, SIZES, SMALL_PHONE, press_target, settle, show, targets,
};
use crate::letters::faults;
use crate::{measure, slow_flight};
use turns_aloft::appearance;
use turns_aloft::describe::Label;
use turns_aloft::scenario::starts;
use turns_aloft::session::compare::Which;
use turns_aloft::session::measuring::Mark;
use turns_aloft::session::turntable::Tendency;
use turns_aloft::session::{Question, Session};
use turns_aloft::turntable::Stand;
use turns_aloft::words::{Language, set_language};

/// Names that somebody may give a jump.
const LONG: &str = "Anneliese-Katharina, second attempt after the long summer break in the north";
const UNBROKEN: &str = "Donaudampfschifffahrtsgesellschaftskapitänsanwärterinnensprungversuch";

/// Buttons that open a menu, and the question under which they are found.
const MENUS: [(&str, Question); 5] = [
    ("starts", Question::Jump),
    ("Units", Question::Why),
    ("Share", Question::Compare),
    ("map:x", Question::Map),
    ("map:y", Question::Map),
];

/// A page that is led through its states, and what was wrong in them.
struct Walk {
    page: Page,
    size: [f32; 2],
    /// Number of this walk; it shifts what is looked at in turns.
    turn: usize,
    state: String,
    /// The sections that were opened; they stay open.
    unfolded: BTreeSet<String>,
    found: BTreeSet<String>,
}

impl Walk {
    fn new(turn: usize, size: [f32; 2], language: Language, large: bool) -> Self {
        let mut choice = appearance::chosen();
        choice.large = large;
        appearance::choose(choice);
        set_language(language);
        let mut session = Session::default();
        session.reduce_motion();
        let mut page = show(size, session);
        // A change of zoom applies from the next frame on.
        settle(&mut page);
        let size_of_type = if large { "large" } else { "usual" };
        Self {
            page,
            size,
            turn,
            state: format!("{language:?} {size:?} {size_of_type}"),
            unfolded: BTreeSet::new(),
            found: BTreeSet::new(),
        }
    }

    fn session(&mut self) -> &mut Session {
        &mut self.page.state_mut().session
    }

    fn look(&mut self, state: &str) {
        // A jump that was measured is called after its film's file.
        let measured = self.page.state().session.scenario().name.clone();
        let mut names: Vec<&str> = vec![LONG, UNBROKEN, &measured];
        // The bar of the smallest layout has no room for the whole name of any jump.
        if self.page.ctx.viewport_rect().width() < 330.0 {
            names.extend(starts::all().iter().map(|start| -> &str { start.label() }));
        }
        for fault in faults(&self.page, &names) {
            self.found
                .insert(format!("{} {state}: {fault}", self.state));
        }
    }

    /// Looks at all of what scrolls, then scrolls back.
    fn look_through(&mut self, state: &str) {
        self.look(state);
        for x in [0.25, 0.85] {
            let at = pos2(x * self.size[0], 0.95 * self.size[1]);
            let mut before = String::new();
            loop {
                self.scroll(at, -0.3 * self.size[1]);
                let now = format!("{:?}", targets());
                if now == before {
                    break;
                }
                before = now;
                self.look(state);
            }
            self.scroll(at, 1e6);
        }
    }

    fn scroll(&mut self, at: Pos2, by: f32) {
        let zoom = self.page.ctx.zoom_factor();
        self.page.event(Event::PointerMoved(at / zoom));
        self.page.step();
        for (phase, by) in [(TouchPhase::Start, 0.0), (TouchPhase::Move, by)] {
            self.page.event(Event::MouseWheel {
                unit: MouseWheelUnit::Point,
                delta: vec2(0.0, by / zoom),
                phase,
                modifiers: Modifiers::NONE,
            });
        }
        self.page.step();
        self.page.event(Event::MouseWheel {
            unit: MouseWheelUnit::Point,
            delta: vec2(0.0, 0.0),
            phase: TouchPhase::End,
            modifiers: Modifiers::NONE,
        });
        self.page.event(Event::PointerGone);
        self.page.step();
    }

    fn ask(&mut self, question: Question) {
        self.session().ask(question);
        settle(&mut self.page);
    }

    /// A starting point; another one each time.
    fn open_one(&mut self) {
        self.turn += 1;
        let all = starts::all();
        let start = &all[self.turn % all.len()];
        self.session().open(start.scenario.clone());
        settle(&mut self.page);
    }

    fn questions(&mut self) {
        for question in Question::ALL {
            self.open_one();
            self.ask(question);
            self.look_through(&format!("{question:?}"));
            self.session().show_range(true);
            settle(&mut self.page);
            self.look(&format!("{question:?} with the range"));
            self.session().show_range(false);
            if let Some(beyond) = targets()
                .contains_key("beyond seen")
                .then_some("beyond seen")
            {
                press_target(&mut self.page, beyond);
                self.look(&format!("{question:?} what has been seen"));
                press_target(&mut self.page, beyond);
            }
        }
    }

    /// The labels on the charts move with the playhead.
    fn moments(&mut self) {
        const PARTS: [f64; 6] = [0.0, 0.12, 0.35, 0.5, 0.81, 1.0];
        for (i, start) in starts::all().iter().enumerate() {
            let turn = self.turn + i;
            self.session().open(start.scenario.clone());
            self.ask([Question::Jump, Question::Compare][turn % 2]);
            for step in 0..3 {
                let part = PARTS[(turn + 2 * step) % PARTS.len()];
                let session = self.session();
                session.scrub(part * session.end_s());
                self.page.run_steps(2);
                self.look(&format!("{} at {part}", start.name));
            }
            self.session().play_or_pause();
            self.page.run_steps(2);
            self.look(&format!("{} playing", start.name));
            self.session().play_or_pause();
        }
    }

    /// All sections open, and one explanation after the other.
    fn unfolded(&mut self) {
        for question in Question::ALL {
            self.open_one();
            self.ask(question);
            self.session().show_range(true);
            settle(&mut self.page);
            let kinds = ["fold:", "limits:", "verdict:", "why:"];
            let is_closed = |name: &String, unfolded: &BTreeSet<String>| {
                kinds.iter().any(|kind| name.starts_with(kind)) && !unfolded.contains(name)
            };
            // An open section may have sections of its own.
            while let Some(name) = targets()
                .into_keys()
                .find(|name| is_closed(name, &self.unfolded))
            {
                let is_open = name == "fold:All readouts" || name == "fold:Charts over the flight";
                if !is_open {
                    press_target(&mut self.page, &name);
                }
                self.unfolded.insert(name);
            }
            self.look_through(&format!("{question:?} unfolded"));
            let explained: Vec<String> = targets()
                .into_keys()
                .filter(|name| name.starts_with("about:"))
                .collect();
            for name in explained.into_iter().skip(self.turn % 5).step_by(5) {
                press_target(&mut self.page, &name);
                self.look(&format!("{question:?} {name}"));
            }
            self.session().show_range(false);
        }
    }

    fn menus(&mut self) {
        for (button, question) in MENUS {
            self.open_one();
            self.ask(question);
            let before = targets().len();
            press_target(&mut self.page, button);
            // It appears gradually.
            self.page.run_steps(10);
            assert!(targets().len() > before, "{button} opens");
            self.look(&format!("the menu {button}"));
            self.page.key_press(egui::Key::Escape);
            settle(&mut self.page);
        }
    }

    fn tried(&mut self) {
        self.session().open(starts::all()[0].scenario.clone());
        self.ask(Question::Why);
        press_target(&mut self.page, "try it");
        for question in Question::ALL {
            self.ask(question);
            self.look(&format!("{question:?} tried"));
        }
    }

    /// Jumps of the user's own, kept, one deleted, one the reference.
    fn kept(&mut self) {
        for (i, name) in [LONG, UNBROKEN, "3T"].into_iter().enumerate() {
            self.open_one();
            self.session()
                .change(|scenario| scenario.name = name.into());
            self.session().keep_jump();
            self.ask(Question::ALL[i]);
            self.look(&format!("named {name:?}"));
        }
        self.ask(Question::Compare);
        let ids: Vec<_> = self
            .session()
            .library()
            .collection()
            .entries()
            .iter()
            .map(|entry| entry.id)
            .collect();
        self.session().delete_kept(ids[0]);
        for id in &ids[1..] {
            self.session().set_reference(Which::Kept(*id));
            settle(&mut self.page);
            self.look_through("kept");
        }
        press_target(&mut self.page, "kept Rename");
        self.look("renaming");
        self.session().clear_reference();
        settle(&mut self.page);
    }

    /// An attempt while it is measured: by a stop-watch, before a film is open, at each kind of mark, with all
    /// marked, and the jump that was found.
    fn measured(&mut self) {
        self.session().measure_by_stop_watch();
        self.work_out();
        self.look_through("stop-watch");
        self.session().measure_in_film();
        settle(&mut self.page);
        self.look_through("no film");
        self.session().film_opened(measure::film());
        let mut seen = Vec::new();
        while let Some(mark) = self.session().asked_mark() {
            let kind = std::mem::discriminant(&mark);
            if !seen.contains(&kind) {
                seen.push(kind);
                self.work_out();
                self.look_through(&format!("asked for {mark:?}"));
            }
            match mark {
                Mark::TakeOff => self.session().show_frame(60),
                Mark::Landing => self.session().show_frame(175),
                Mark::Point(..) => self.session().mark_point([600.0, 300.0]),
                Mark::Facing(_) | Mark::Posture(_) => {}
            }
            self.session().mark_frame();
        }
        self.work_out();
        self.look_through("all marked");
        self.session().open_fitted();
        self.work_out();
        self.look_through("measured");
        self.ask(Question::Jump);
        self.look_through("measured");
        self.session().show_range(false);
    }

    /// A jump that is flown by hand: before the take-off, in the air with arms and legs out and in, and landed.
    fn flown_by_hand(&mut self) {
        self.open_one();
        self.session().fly_by_hand();
        settle(&mut self.page);
        self.look_through("about to be flown by hand");
        self.session().take_off();
        self.session().lead(1.0);
        for _ in 0..40 {
            self.session().advance(0.1);
            settle(&mut self.page);
            if self.session().moves() {
                self.look("flown by hand");
            }
        }
        slow_flight::land(&mut self.page);
        self.look_through("flown by hand and landed");
        self.session().stop_flying_by_hand();
        settle(&mut self.page);
    }

    /// The five-turn try, with limits passed.
    fn turn_try(&mut self) {
        self.session().begin_try();
        self.session().set_try_step(5);
        self.session()
            .change(|scenario| scenario.takeoff_rate_rad_s *= 1.9);
        settle(&mut self.page);
        self.look_through("tried");
        self.session().fly_by_hand();
        settle(&mut self.page);
        self.look("a try about to be flown by hand");
        self.session().take_off();
        slow_flight::land(&mut self.page);
        self.look_through("a try flown by hand");
        self.session().stop_flying_by_hand();
        self.session().leave_try();
        self.session().undo();
        settle(&mut self.page);
    }

    /// Somebody on a turntable: at rest and after a fast run with another one under it, everything open.
    fn on_a_turntable(&mut self) {
        self.session().begin_turntable();
        settle(&mut self.page);
        for fold in [
            "fold:Who, and on what",
            "fold:Your own chair",
            "fold:A sensor on a real chair",
        ] {
            press_target(&mut self.page, fold);
        }
        press_target(&mut self.page, "slowing:both");
        self.look_through("on a turntable");
        self.session().predict_momentum(Some(Tendency::Rises));
        self.session().sensor_started();
        settle(&mut self.page);
        self.look_through("on a turntable, waiting for its sensor");
        for i in 0..900 {
            let t_s = f64::from(i) / 60.0;
            let acceleration = Some([0.0, 0.0, 9.81]);
            self.session()
                .sensor_read(t_s, [0.0, 0.0, 30.0 - t_s], acceleration);
        }
        settle(&mut self.page);
        self.look_through("on a turntable, recording");
        self.session().stop_sensor();
        for stand in Stand::ALL {
            self.session().set_stand(stand);
            self.session().push_turntable(-20.0);
            for _ in 0..400 {
                self.session().advance_turntable(0.2);
            }
            self.session().keep_or_drop_run();
            settle(&mut self.page);
            self.look_through(&format!("on a turntable, {stand:?}"));
        }
        self.session().leave_turntable();
        settle(&mut self.page);
    }

    fn work_out(&mut self) {
        self.session().poll(|| true);
        settle(&mut self.page);
    }

    /// What lies on the picture: the greeting, and a notice.
    fn on_the_picture(&mut self) {
        self.look("greeted");
        self.session().say(format!("{LONG}. {LONG}."));
        settle(&mut self.page);
        self.look("with a notice");
        self.session().dismiss();
        settle(&mut self.page);
    }
}

/// Leads a page through all states, in both languages and both sizes of type.
fn everything_can_be_read(size: [f32; 2]) {
    let mut found = BTreeSet::new();
    for (i, language) in LANGUAGES.into_iter().enumerate() {
        for large in [false, true] {
            let mut walk = Walk::new(7 * i + usize::from(large), size, language, large);
            walk.on_the_picture();
            walk.questions();
            walk.moments();
            walk.menus();
            walk.unfolded();
            walk.tried();
            walk.kept();
            walk.measured();
            walk.flown_by_hand();
            walk.turn_try();
            walk.on_a_turntable();
            found.append(&mut walk.found);
        }
    }
    let all: Vec<String> = found.into_iter().collect();
    assert!(all.is_empty(), "{} faults:\n{}", all.len(), all.join("\n"));
}

#[test]
fn everything_can_be_read_on_a_large_tablet() {
    everything_can_be_read(SIZES[0]);
}

#[test]
fn everything_can_be_read_on_a_tablet() {
    everything_can_be_read(SIZES[1]);
}

#[test]
fn everything_can_be_read_on_an_upright_tablet() {
    everything_can_be_read(SIZES[2]);
}

#[test]
fn everything_can_be_read_on_a_phone() {
    everything_can_be_read(SIZES[3]);
}

#[test]
fn everything_can_be_read_on_a_small_phone() {
    everything_can_be_read(SMALL_PHONE);
}

#[test]
fn everything_can_be_read_on_a_phone_on_its_side() {
    everything_can_be_read(PHONE_ON_ITS_SIDE);
}
