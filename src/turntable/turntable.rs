//! A turntable in somebody's own hands: led and pushed while it turns.
//!
//! It goes on in steps of [`STEP_S`], whatever the time between two pictures, so the same leading gives the
//! same run to the last bit. What was led is kept, so that the run can be wound back.

use turns_aloft_physics::posture::{JointRates, Posture};

use crate::about_axis::{AboutAxis, OnBearing};
use crate::led::{Led, Limit};
use crate::person::Person;
use crate::position::{Coordinates, Limbs, Position};
use crate::run::{LONGEST_S, Run, STEP_S, Sample};
use crate::setup::{FASTEST_RAD_S, Refused, Setup};
use crate::turning::Turning;

/// A person who turns on a bearing, as far as the run has come.
#[derive(Debug, Clone)]
pub struct Turntable {
    person: Person,
    limits: [Limit; 3],
    now: Now,
    /// Time that has passed and is less than a step, s.
    owed_s: f64,
    /// All that was led, each with the steps that were taken before.
    record: Vec<(u64, Lead)>,
    /// The run once a second, before anything is led then.
    marks: Vec<Now>,
    run: Run,
}

/// The state: all that the next step depends on.
#[derive(Debug, Clone, Copy)]
struct Now {
    /// So many have been taken.
    steps: u64,
    turning: Turning,
    led: [Led; 3],
    target: Coordinates,
}

/// What somebody does to a turntable.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Lead {
    Target(Coordinates),
    /// kg m²/s.
    Push(f64),
}

/// Steps from one sample to the next: 50 samples a second.
pub const SAMPLE_STEPS: u64 = 10;

/// Steps from one mark to the next.
const MARK_STEPS: u64 = 500;

/// The longest time that is made up for in one call, s: a page that was hidden goes on where it was.
const LONGEST_CALL_S: f64 = 0.25;

/// What is nearer than this to where it is led, rad, and slower than this, rad/s, is there.
const STILL: f64 = 1e-9;

impl Turntable {
    /// Turns at the rate of the setup and holds this position, or the nearest to it.
    pub fn new(setup: &Setup, position: &Position) -> Result<Self, Refused> {
        let person = Person::new(setup)?;
        let target = person.coordinates(position);
        let at = person.about_axis(&target, &[0.0; 3]);
        let now = Now {
            steps: 0,
            turning: Turning::at_rate(0.0, &at, setup.rate_rad_s),
            led: target.map(Led::at_rest),
            target,
        };
        let limits = Limbs::ALL.map(|limbs| {
            // Limbs that have no way to go are not led.
            let turn_rad = person.turn_rad(limbs).max(1e-3);
            Limit {
                rate: limbs.fastest_rad_s() / turn_rad,
                acceleration: limbs.hardest_rad_s2() / turn_rad,
            }
        });
        let mut turntable = Self {
            person,
            limits,
            now,
            owed_s: 0.0,
            record: Vec::new(),
            marks: vec![now],
            run: Run::default(),
        };
        turntable.run.samples.push(turntable.readout());
        Ok(turntable)
    }

    /// From now on arms, legs and trunk go to this position, or to the nearest to it, no faster than their
    /// joints can. A number that is none changes nothing.
    pub fn lead(&mut self, position: &Position) {
        let Position {
            hand_distance_m,
            legs,
            twist_rad,
        } = *position;
        if [hand_distance_m, legs, twist_rad]
            .iter()
            .any(|number| number.is_nan())
        {
            return;
        }
        let target = self.person.coordinates(position);
        if target != self.now.target {
            self.done(Lead::Target(target));
        }
    }

    /// A push by hand, at once: so much angular momentum, kg m²/s, as far as it turns no faster than
    /// [`FASTEST_RAD_S`].
    pub fn push(&mut self, momentum_kg_m2_s: f64) {
        let at = self.now.about_axis(&self.person);
        let [least, most] = [-FASTEST_RAD_S, FASTEST_RAD_S]
            .map(|rate_rad_s| at.momentum_kg_m2_s(rate_rad_s) - self.now.turning.momentum_kg_m2_s);
        // Turning faster than that already, it is not pushed further, nor held back.
        let push = momentum_kg_m2_s.clamp(least.min(0.0), most.max(0.0));
        if push != 0.0 && !push.is_nan() {
            self.done(Lead::Push(push));
        }
    }

    /// Turns at this rate from now on, rad/s, as if pushed.
    pub fn set_rate(&mut self, rate_rad_s: f64) {
        let at = self.now.about_axis(&self.person);
        let wanted = at.momentum_kg_m2_s(rate_rad_s.clamp(-FASTEST_RAD_S, FASTEST_RAD_S));
        self.push(wanted - self.now.turning.momentum_kg_m2_s);
    }

    /// Goes on by the time since the last call, s; after an hour it does not.
    pub fn step(&mut self, passed_s: f64) {
        if passed_s > 0.0 {
            self.owed_s += passed_s.min(LONGEST_CALL_S);
        }
        while self.owed_s >= STEP_S && !self.is_full() {
            self.owed_s -= STEP_S;
            self.now = self.now.next(&self.person, &self.limits);
            if self.now.steps.is_multiple_of(SAMPLE_STEPS) {
                self.run.samples.push(self.readout());
            }
            if self.now.steps.is_multiple_of(MARK_STEPS) {
                self.marks.push(self.now);
            }
        }
    }

    /// Back to an earlier time, s: the run is as it was then, and what was led later is forgotten.
    pub fn wind_back(&mut self, t_s: f64) {
        let steps = (t_s.max(0.0) / STEP_S).round() as u64;
        if t_s.is_nan() || steps >= self.now.steps {
            return;
        }
        self.marks.truncate((steps / MARK_STEPS) as usize + 1);
        self.run
            .samples
            .truncate((steps / SAMPLE_STEPS) as usize + 1);
        self.now = self.marks[self.marks.len() - 1];
        self.owed_s = 0.0;
        self.record.retain(|(before, _)| *before < steps);
        let first = self
            .record
            .partition_point(|(before, _)| *before < self.now.steps);
        let mut again = self.record[first..].iter().peekable();
        while self.now.steps < steps {
            while let Some((_, lead)) = again.next_if(|(before, _)| *before == self.now.steps) {
                self.now.take(lead, &self.person);
            }
            self.now = self.now.next(&self.person, &self.limits);
        }
    }

    /// All that is read now.
    pub fn readout(&self) -> Sample {
        let at = self.now.about_axis(&self.person);
        let position = self.person.position(&self.now.coordinates());
        Sample::of(&self.now.turning, &at, position)
    }

    /// How every joint stands now; the pelvis is upright, turned by the readout's `turned_rad`.
    pub fn posture(&self) -> Posture {
        self.person.posture(&self.now.coordinates())
    }

    /// How every joint turns now, rad/s.
    pub fn joint_rates(&self) -> JointRates {
        self.person.joint_rates(&self.now.led.map(|led| led.rate))
    }

    /// How every joint stood at a sample.
    pub fn posture_in(&self, sample: &Sample) -> Posture {
        self.person
            .posture(&self.person.coordinates(&sample.position))
    }

    pub const fn person(&self) -> &Person {
        &self.person
    }

    /// Everything recorded so far.
    pub const fn run(&self) -> &Run {
        &self.run
    }

    /// Whether nothing turns and nothing moves: the next picture is the same.
    pub fn is_still(&self) -> bool {
        let there =
            |(led, target): (&Led, &f64)| (led.at - target).abs() < STILL && led.rate.abs() < STILL;
        let at = self.now.about_axis(&self.person);
        let at_rest = self.now.turning.rate_rad_s(&at).abs() < STILL;
        at_rest && self.now.led.iter().zip(&self.now.target).all(there)
    }

    /// Whether an hour is over: it goes on no further.
    pub fn is_full(&self) -> bool {
        self.now.steps as f64 * STEP_S >= LONGEST_S
    }

    fn done(&mut self, lead: Lead) {
        self.now.take(&lead, &self.person);
        self.record.push((self.now.steps, lead));
    }
}

impl Now {
    fn coordinates(&self) -> Coordinates {
        self.led.map(|led| led.at)
    }

    fn about_axis(&self, person: &Person) -> AboutAxis {
        person.about_axis(&self.coordinates(), &self.led.map(|led| led.rate))
    }

    fn take(&mut self, lead: &Lead, person: &Person) {
        match *lead {
            Lead::Target(target) => self.target = target,
            Lead::Push(momentum_kg_m2_s) => {
                let at = self.about_axis(person);
                self.turning = self.turning.pushed(&at, momentum_kg_m2_s);
            }
        }
    }

    fn next(&self, person: &Person, limits: &[Limit; 3]) -> Self {
        let accelerations =
            std::array::from_fn(|i| self.led[i].acceleration(self.target[i], &limits[i], STEP_S));
        let step = LedStep {
            person,
            from_s: self.turning.t_s,
            led: self.led,
            accelerations,
        };
        let mut turning = self.turning.advanced(&step, &person.setup.friction, STEP_S);
        let steps = self.steps + 1;
        // Not summed up, so that an hour is an hour.
        turning.t_s = steps as f64 * STEP_S;
        Self {
            steps,
            turning,
            led: step.led_after(STEP_S),
            target: self.target,
        }
    }
}

/// A step in which every coordinate moves at an even acceleration.
struct LedStep<'a> {
    person: &'a Person,
    from_s: f64,
    led: [Led; 3],
    accelerations: [f64; 3],
}

impl LedStep<'_> {
    fn led_after(&self, time_s: f64) -> [Led; 3] {
        std::array::from_fn(|i| self.led[i].after(self.accelerations[i], time_s))
    }
}

impl OnBearing for LedStep<'_> {
    fn at(&self, t_s: f64) -> AboutAxis {
        let led = self.led_after(t_s - self.from_s);
        self.person
            .about_axis(&led.map(|led| led.at), &led.map(|led| led.rate))
    }
}
