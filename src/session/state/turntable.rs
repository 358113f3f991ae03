//! Somebody on a turntable, led by hand: the run as far as it has come, the time shown of it, and the run
//! that is laid under it.

use crate::state::measured_rate::MeasuredRate;
use crate::state::prediction::Prediction;
use crate::state::slowing::Slowing;
use turns_aloft_physics::posture::Posture;
use turns_aloft_scenario::units::RateUnit;
use turns_aloft_turntable::calibrate::CalibrationFault;
use turns_aloft_turntable::setup::Refused;
use turns_aloft_turntable::{Friction, Position, Run, Sample, Setup, Turntable};

/// The rate that is set by the button at first: 30 rpm, which is gentle on a platform (our choice).
const RATE_TO_SET_RAD_S: f64 = 30.0 * RateUnit::Rpm.unit().si;

/// Between two announcements of the rate at least, s, and by which part, or rad/s, it has to have changed.
const ANNOUNCED_EVERY_S: f64 = 1.0;
const ANNOUNCED_PART: f64 = 0.1;
const ANNOUNCED_RAD_S: f64 = 0.1;

#[derive(Debug, Clone)]
pub struct OnTurntable {
    turntable: Turntable,
    /// Where arms, legs and trunk were when the run began.
    first: Position,
    /// Where they are led.
    led: Position,
    running: bool,
    /// An earlier time that is shown, s; none shows how far the run has come.
    shown_s: Option<f64>,
    /// The run that is laid under this one.
    kept: Option<Run>,
    /// A run that was worked out before and is played back: nobody leads it.
    played_back: Option<Run>,
    /// What the button sets.
    pub(crate) rate_to_set_rad_s: f64,
    /// The friction that there is when it is not left out.
    friction: Friction,
    pub(crate) slowing: Slowing,
    /// What the angular momentum is expected to do.
    pub(crate) prediction: Option<Prediction>,
    /// The rate of a real chair, laid over the model's.
    pub(crate) measured: Option<MeasuredRate>,
    announced: Sample,
}

impl OnTurntable {
    pub(crate) fn new(setup: &Setup, position: &Position) -> Result<Self, Refused> {
        let turntable = Turntable::new(setup, position)?;
        let begun = turntable.readout();
        Ok(Self {
            turntable,
            first: begun.position,
            led: begun.position,
            running: true,
            shown_s: None,
            kept: None,
            played_back: None,
            rate_to_set_rad_s: RATE_TO_SET_RAD_S,
            friction: setup.friction,
            slowing: Slowing::default(),
            prediction: None,
            measured: None,
            announced: begun,
        })
    }

    /// At rest, the arms out and the legs in.
    pub(crate) fn begun(setup: &Setup) -> Result<Self, Refused> {
        let out = Position {
            hand_distance_m: f64::INFINITY,
            legs: 0.0,
            twist_rad: 0.0,
        };
        Self::new(setup, &out)
    }

    pub const fn setup(&self) -> &Setup {
        &self.turntable.person().setup
    }

    pub const fn turntable(&self) -> &Turntable {
        &self.turntable
    }

    pub const fn run(&self) -> &Run {
        match &self.played_back {
            Some(run) => run,
            None => self.turntable.run(),
        }
    }

    /// Plays back a run from its beginning: with a sample at least.
    pub(crate) fn play_back(&mut self, run: Run) {
        self.played_back = Some(run);
        (self.running, self.shown_s) = (true, Some(0.0));
    }

    /// Whether a run that was worked out before is in sight, which nobody leads.
    pub const fn is_played_back(&self) -> bool {
        self.played_back.is_some()
    }

    /// Whether it has been played back to its end.
    pub(crate) fn has_played(&self) -> bool {
        self.is_played_back() && self.shown_s.is_some_and(|t_s| t_s >= self.end_s())
    }

    /// The run that is laid under this one.
    pub const fn kept(&self) -> Option<&Run> {
        self.kept.as_ref()
    }

    /// Where arms, legs and trunk are led.
    pub const fn led(&self) -> &Position {
        &self.led
    }

    /// Where they are led from, when something is done.
    pub(crate) fn shown_or_led(&self) -> Position {
        match self.shown_s {
            Some(_) => self.shown().position,
            None => self.led,
        }
    }

    /// Nearest and farthest that the hands come, m.
    pub const fn reach_m(&self) -> [f64; 2] {
        self.turntable.person().reach_m()
    }

    pub const fn rate_to_set_rad_s(&self) -> f64 {
        self.rate_to_set_rad_s
    }

    pub const fn slowing(&self) -> &Slowing {
        &self.slowing
    }

    pub const fn prediction(&self) -> Option<&Prediction> {
        self.prediction.as_ref()
    }

    /// The rate of a real chair, laid over the model's.
    pub const fn measured(&self) -> Option<&MeasuredRate> {
        self.measured.as_ref()
    }

    /// Whether a sensor is being recorded.
    pub fn is_recording(&self) -> bool {
        self.measured
            .as_ref()
            .is_some_and(MeasuredRate::is_recording)
    }

    pub fn is_without_friction(&self) -> bool {
        self.setup().friction == Friction::NONE
    }

    /// The way round that what is measured is taken to turn, as a sign: that of the model.
    pub fn sense(&self) -> f64 {
        if self.turntable.readout().momentum_kg_m2_s < 0.0 {
            -1.0
        } else {
            1.0
        }
    }

    /// Whether time goes on.
    pub const fn is_running(&self) -> bool {
        self.running && (self.shown_s.is_none() || self.played_back.is_some())
    }

    /// Whether the next picture is another one.
    pub fn moves(&self) -> bool {
        if self.is_played_back() {
            return self.running;
        }
        let turns = self.is_running() && !self.turntable.is_still() && !self.turntable.is_full();
        // A sensor from which nothing comes changes no picture.
        turns
            || self
                .measured()
                .is_some_and(|it| it.is_recording() && !it.is_empty())
    }

    /// How far the run has come, s.
    pub fn end_s(&self) -> f64 {
        self.now().t_s
    }

    /// All that is read where the run has come to.
    pub fn now(&self) -> Sample {
        let of_run = self.played_back.as_ref().and_then(|run| run.samples.last());
        of_run.copied().unwrap_or_else(|| self.turntable.readout())
    }

    /// All that is read at the time shown.
    pub fn shown(&self) -> Sample {
        let now = self.now();
        (self.shown_s)
            .filter(|t_s| *t_s < now.t_s)
            .and_then(|t_s| self.run().at(t_s))
            .unwrap_or(now)
    }

    /// How every joint stands at the time shown.
    pub fn posture(&self) -> Posture {
        match self.shown_s {
            Some(_) => self.turntable.posture_in(&self.shown()),
            None => self.turntable.posture(),
        }
    }

    /// What was last announced of the run.
    pub const fn announced(&self) -> &Sample {
        &self.announced
    }

    pub(crate) fn advance(&mut self, passed_s: f64) {
        if !self.is_running() {
            return;
        }
        if self.is_played_back() {
            let t_s = self.shown().t_s + passed_s;
            self.running = t_s < self.end_s();
            self.shown_s = Some(t_s.min(self.end_s()));
        } else {
            self.turntable.step(passed_s);
        }
        self.announce();
        self.watch();
    }

    /// What became of a prediction is announced at once.
    fn watch(&mut self) {
        if let Some(prediction) = &mut self.prediction {
            let (now, is_still) = (self.turntable.readout(), self.turntable.is_still());
            if prediction.watch(&now, is_still) {
                self.announced = now;
            }
        }
    }

    /// What is watched of the angular momentum begins anew.
    fn watch_anew(&mut self) {
        if let Some(prediction) = &mut self.prediction {
            prediction.pushed();
        }
    }

    /// What is read aloud changes in steps: after a second at the earliest, and by a tenth at least; and when
    /// nothing moves any more.
    fn announce(&mut self) {
        let now = self.shown();
        let last = &self.announced;
        let apart_rad_s = (now.rate_rad_s - last.rate_rad_s).abs();
        let least_rad_s = (ANNOUNCED_PART * last.rate_rad_s.abs()).max(ANNOUNCED_RAD_S);
        let due = now.t_s >= last.t_s + ANNOUNCED_EVERY_S && apart_rad_s >= least_rad_s;
        if due || !self.moves() {
            self.announced = now;
        }
    }

    /// From now on they go there. Whatever is done goes on from the time that is shown.
    pub(crate) fn lead(&mut self, position: Position) {
        if self.is_played_back() {
            return;
        }
        self.go_on();
        self.led = position;
        self.turntable.lead(&position);
    }

    /// A push that makes it turn faster by this, as it is held now.
    pub(crate) fn push(&mut self, by_rad_s: f64) {
        if self.is_played_back() {
            return;
        }
        self.go_on();
        let inertia_kg_m2 = self.turntable.readout().inertia_kg_m2;
        self.turntable.push(inertia_kg_m2 * by_rad_s);
        self.watch_anew();
    }

    pub(crate) fn set_rate(&mut self) {
        if self.is_played_back() {
            return;
        }
        self.go_on();
        self.turntable.set_rate(self.rate_to_set_rad_s);
        self.watch_anew();
    }

    pub(crate) fn play_or_pause(&mut self) {
        if self.is_running() {
            self.running = false;
        } else {
            self.go_on();
        }
        self.announce();
    }

    /// Shows an earlier time, and stops there; what came later is kept until something is done.
    pub(crate) fn show(&mut self, t_s: f64) {
        self.running = false;
        let end_s = self.end_s();
        let is_earlier = t_s < end_s || self.is_played_back();
        self.shown_s = is_earlier.then_some(t_s.clamp(0.0, end_s));
        self.announce();
    }

    /// From the time shown, to which it is wound back: what came later is forgotten.
    fn go_on(&mut self) {
        self.running = true;
        if self.is_played_back() {
            if self.has_played() {
                self.shown_s = Some(0.0);
            }
            return;
        }
        if let Some(t_s) = self.shown_s.take() {
            self.turntable.wind_back(t_s);
            self.watch_anew();
            self.led = self.turntable.readout().position;
            self.turntable.lead(&self.led);
        }
    }

    /// The same from the beginning.
    pub(crate) fn again(&mut self) -> Result<(), Refused> {
        if self.is_played_back() {
            (self.running, self.shown_s) = (true, Some(0.0));
            return Ok(());
        }
        let (setup, first) = (*self.setup(), self.first);
        self.begin(&setup, &first)
    }

    /// A new run of somebody else, or on something else, with arms, legs and trunk as they are led.
    pub(crate) fn set_up(&mut self, setup: &Setup) -> Result<(), Refused> {
        let led = self.led;
        self.begin(setup, &led)
    }

    fn begin(&mut self, setup: &Setup, position: &Position) -> Result<(), Refused> {
        let begun = Self::new(setup, position)?;
        self.turntable = begun.turntable;
        (self.first, self.led) = (begun.first, begun.led);
        (self.running, self.shown_s) = (true, None);
        self.watch_anew();
        self.announced = begun.announced;
        Ok(())
    }

    /// Lays this run under the next ones, or takes away the one that is.
    pub(crate) fn keep_or_drop_run(&mut self) {
        self.kept = match self.kept {
            Some(_) => None,
            None => Some(self.run().clone()),
        };
    }

    /// The friction that there is with it or without it.
    pub(crate) fn friction(&mut self, without: bool) -> Friction {
        if without {
            if !self.is_without_friction() {
                self.friction = self.setup().friction;
            }
            return Friction::NONE;
        }
        if self.friction == Friction::NONE {
            return self.setup().stand.friction();
        }
        self.friction
    }

    /// The friction of which somebody slows down like that who is held as now.
    pub(crate) fn calibrated(&self) -> Result<Friction, CalibrationFault> {
        self.slowing.friction(self.shown().inertia_kg_m2)
    }
}
