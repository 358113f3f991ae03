//! What is drawn over the film: the figure that is turned and closed until it fits, then the fitted jump in
//! every frame of its flight, and the points that have been marked.

use std::sync::Arc;

use crate::session::Session;
use crate::state::measuring::Measuring;
use crate::state::measuring::mark::Mark;
use turns_aloft_analysis::budget::Budget;
use turns_aloft_attempt::Attempt;
use turns_aloft_attempt::film::Film;
use turns_aloft_fit::sample::Sample;
use turns_aloft_overlay::{Camera, Fall, LineOfSight, RateCheck};
use turns_aloft_physics::body::Segment;
use turns_aloft_physics::flight::Flight;
use turns_aloft_physics::flight::Pose;
use turns_aloft_physics::plan::Plan;
use turns_aloft_physics::posture::STILL;
use turns_aloft_scenario::Scenario;
use turns_aloft_scenario::fly::Jump;

/// A line through points of the film's picture, or with a radius a circle about one.
#[derive(Debug, Clone, PartialEq)]
pub struct FigureLine {
    pub through_px: Vec<[f64; 2]>,
    pub radius_px: Option<f64>,
    pub of: LineOf,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LineOf {
    /// Below the others, so that they are seen on any film.
    Outline,
    /// The figure that the user turns and closes.
    Turned,
    /// The jump that the marks say.
    Fitted,
    /// The same attempt with the change that would win most.
    Proposed,
    /// A marked point, and the cross that the next one is marked with.
    Mark,
}

/// What the overlays are made of: where it is the same, so are they.
#[derive(Debug, Clone, PartialEq)]
pub struct OverlayState {
    attempt: Attempt,
    asked: Option<Mark>,
    /// While the user turns or closes the figure: the frame, and how it is turned and closed.
    figure: Option<(usize, f64, [f64; 2])>,
    /// While a point is asked for: the frame, and where the cross is.
    cross: Option<(usize, [f64; 2])>,
    /// Which fit it is, by where it lies.
    fit: Option<usize>,
    proposes: bool,
}

/// How long a figure is seen before and after its flight, s.
const AROUND_S: f64 = 0.1;

/// Radius of a marked point, px on a film 1,000 px wide.
const MARK_PX: f64 = 9.0;

/// Length of the arrow to where the hips face, m.
const ARROW_M: f64 = 0.35;

impl Session {
    pub fn overlay_state(&self) -> Option<OverlayState> {
        let measuring = self.measuring.as_ref().filter(|it| it.film.is_some())?;
        let asked = self.asked_mark();
        let adjusts = matches!(asked, Some(Mark::Facing(_) | Mark::Posture(_)));
        Some(OverlayState {
            attempt: measuring.attempt.clone(),
            asked,
            figure: adjusts.then_some((measuring.frame, measuring.facing_rad, measuring.posture)),
            cross: matches!(asked, Some(Mark::Point(..)))
                .then_some((measuring.frame, measuring.cross_px)),
            fit: self.last_fit().map(|fit| Arc::as_ptr(fit) as usize),
            proposes: measuring.proposes,
        })
    }

    /// Shows the figure of the attempt with the change that would win most beside it, or not.
    pub fn show_proposed(&mut self, proposes: bool) {
        if let Some(measuring) = &mut self.measuring {
            measuring.proposes = proposes;
        }
    }

    /// What the fall in the marks says of the film's slow motion; none where too little is marked.
    pub fn rate_check(&self) -> Option<RateCheck> {
        let (measuring, (best, jump)) = (self.measuring.as_ref()?, self.first_fit()?);
        let marks = measuring.marks()?;
        let flight = &jump.flight;
        let sight = LineOfSight::of_facing(flight, best.first_facing_rad, best.drift_rad);
        let during_s = [best.takeoff_s, best.landing_s];
        let fall = Fall::of_marks(&marks.points, flight, during_s, sight)?;
        Some(fall.check(1.0 / marks.frame_s))
    }

    /// What is drawn over each frame that anything is drawn over.
    pub fn overlays(&self) -> Vec<(usize, Vec<FigureLine>)> {
        let Some(measuring) = &self.measuring else {
            return Vec::new();
        };
        let (Some(film), Some(marks)) = (&measuring.film, measuring.marks()) else {
            return Vec::new();
        };
        let figures = self.figures(measuring, marks);
        let radius_px = MARK_PX * film.size_px[0] / 1000.0;
        let asks_for_point = matches!(self.asked_mark(), Some(Mark::Point(..)));
        let frames = 0..film.times_s.len();
        let of_frame = frames.filter_map(|frame| {
            let t_s = film.times_s[frame] / marks.slow_motion;
            let mut lines: Vec<FigureLine> = figures
                .iter()
                .filter(|figure| figure.is_seen(frame, t_s))
                .flat_map(|figure| figure.lines(t_s))
                .collect();
            let points = marks.points.iter();
            let in_frame = points.filter(|it| measuring.frame_at(it.t_s) == Some(frame));
            lines.extend(in_frame.flat_map(|point| circle(point.at_px, radius_px)));
            if asks_for_point && frame == measuring.frame {
                lines.extend(cross(measuring.cross_px, 2.0 * radius_px));
            }
            (!lines.is_empty()).then_some((frame, lines))
        });
        of_frame.collect()
    }

    fn figures(&self, measuring: &Measuring, marks: &Film) -> Vec<Figure> {
        let asked = self.asked_mark();
        if let Some(Mark::Facing(_) | Mark::Posture(_)) = asked {
            let figure = self.turned_figure(measuring, marks, asked);
            return figure.into_iter().collect();
        }
        let Some((best, jump)) = self.first_fit() else {
            return Vec::new();
        };
        let fitted = Figure::of_sample(best, jump, marks, LineOf::Fitted);
        let proposed = (measuring.proposes)
            .then(|| proposed(best, jump))
            .flatten()
            .and_then(|jump| Figure::of_sample(best, &jump, marks, LineOf::Proposed));
        proposed.into_iter().chain(fitted).collect()
    }

    /// The figure that the user turns and closes: at the place in the flight that the frame has.
    fn turned_figure(
        &self,
        measuring: &Measuring,
        marks: &Film,
        asked: Option<Mark>,
    ) -> Option<Figure> {
        let (t_s, takeoff_s) = (measuring.frame_s()?, measuring.takeoff_s()?);
        let flight = match self.first_fit() {
            Some((_, jump)) => Arc::clone(&jump.flight),
            None => Arc::clone(self.flight()),
        };
        let turned_rad = self.scenario().turning.sign() * flight.at(t_s - takeoff_s).turned_rad;
        let sight = LineOfSight::of_facing(&flight, measuring.facing_rad - turned_rad, 0.0);
        let posture = matches!(asked, Some(Mark::Posture(_))).then_some(measuring.posture);
        Some(Figure {
            camera: Camera::fit(&marks.points, &flight, takeoff_s, sight).ok()?,
            closed: posture.map(|[arms, legs]| closed(self.scenario(), arms, legs)),
            flight,
            takeoff_s,
            frame: Some(measuring.frame),
            of: LineOf::Turned,
        })
    }
}

/// The attempt with the change that would win most.
fn proposed(best: &Sample, jump: &Jump) -> Option<Jump> {
    let change = Budget::new(&best.scenario, jump).one_change?;
    let mut then = best.scenario.clone();
    change.parameter.hold(&mut then, change.to);
    Some(then.fly_as(best.body, Some(jump)))
}

/// The plan of a body that has closed arms and legs so far.
fn closed(scenario: &Scenario, arms: f64, legs: f64) -> Plan {
    let closed = Scenario {
        arm_tuck: arms,
        leg_tuck: legs,
        arm_asymmetry: 0.0,
        arm_lag_s: 0.0,
        led: None,
        ..scenario.clone()
    };
    Plan::new(closed.plan_spec())
}

/// A figure over the film.
struct Figure {
    flight: Arc<Flight>,
    /// On the film's clock.
    takeoff_s: f64,
    camera: Camera,
    /// Whose posture it has in place of the flight's.
    closed: Option<Plan>,
    /// The one frame that it is seen in; none of all that its flight is in.
    frame: Option<usize>,
    of: LineOf,
}

impl Figure {
    fn of_sample(sample: &Sample, jump: &Jump, marks: &Film, of: LineOf) -> Option<Self> {
        let flight = Arc::clone(&jump.flight);
        let sight = LineOfSight::of_facing(&flight, sample.first_facing_rad, sample.drift_rad);
        Some(Self {
            camera: Camera::fit(&marks.points, &flight, sample.takeoff_s, sight).ok()?,
            flight,
            takeoff_s: sample.takeoff_s,
            closed: None,
            frame: None,
            of,
        })
    }

    fn is_seen(&self, frame: usize, t_s: f64) -> bool {
        let since_s = t_s - self.takeoff_s;
        let in_flight = -AROUND_S..=self.flight.touchdown_s + AROUND_S;
        self.frame
            .map_or(in_flight.contains(&since_s), |own| own == frame)
    }

    fn pose(&self, since_s: f64) -> Pose {
        let Some(plan) = &self.closed else {
            return self.flight.pose_at(since_s);
        };
        let table = &self.flight.table;
        // Long after it has closed, and before it opens.
        let (posture, _) = plan.at(f64::MAX, f64::INFINITY);
        let sample = self.flight.at(since_s);
        Pose::new(&table.body, &table.tree, (&posture, &STILL), sample, 0.0)
    }

    /// The body as sticks from joint to joint, and an arrow to where the hips face.
    fn lines(&self, t_s: f64) -> Vec<FigureLine> {
        use Segment::{
            Head, LeftFoot, LeftForearm, LeftHand, LeftShank, LeftThigh, LeftUpperArm, LowerTrunk,
            RightFoot, RightForearm, RightHand, RightShank, RightThigh, RightUpperArm, UpperTrunk,
        };
        let pose = self.pose(t_s - self.takeoff_s);
        let body = &self.flight.table.body;
        let joint =
            |parent: Segment, segment: Segment| pose.point_m(parent, body.link(segment).joint_m);
        let end = |segment: Segment| pose.point_m(segment, body.link(segment).end_m);
        let leg = |thigh, shank, foot| {
            let toe = body.sole_m.map(|sole_m| pose.point_m(foot, sole_m));
            let mut line = vec![
                joint(LowerTrunk, thigh),
                joint(thigh, shank),
                joint(shank, foot),
            ];
            line.extend(toe);
            line
        };
        let arm = |upper, forearm, hand| {
            vec![
                joint(UpperTrunk, upper),
                joint(upper, forearm),
                joint(forearm, hand),
                end(hand),
            ]
        };
        let hips = [LeftThigh, RightThigh].map(|thigh| joint(LowerTrunk, thigh));
        let shoulders = [LeftUpperArm, RightUpperArm].map(|arm| joint(UpperTrunk, arm));
        let middle = 0.5 * (hips[0] + hips[1]);
        let ahead = pose.orientation(LowerTrunk) * glam::DVec3::X;
        let trunk = vec![hips[0], hips[1], shoulders[1], shoulders[0], hips[0]];
        let lines_m = [
            leg(LeftThigh, LeftShank, LeftFoot),
            leg(RightThigh, RightShank, RightFoot),
            arm(LeftUpperArm, LeftForearm, LeftHand),
            arm(RightUpperArm, RightForearm, RightHand),
            trunk,
            vec![joint(UpperTrunk, Head), end(Head)],
            vec![middle, middle + ARROW_M * ahead],
        ];
        let through = |line: Vec<glam::DVec3>| -> Vec<[f64; 2]> {
            (line
                .into_iter()
                .map(|point_m| self.camera.project(point_m, t_s)))
            .collect()
        };
        let through: Vec<Vec<[f64; 2]>> = lines_m.into_iter().map(through).collect();
        // All outlines first: none covers another line of the figure.
        let line = |of| {
            move |through_px: &Vec<[f64; 2]>| FigureLine {
                through_px: through_px.clone(),
                radius_px: None,
                of,
            }
        };
        let outlines = through.iter().map(line(LineOf::Outline));
        outlines.chain(through.iter().map(line(self.of))).collect()
    }
}

fn circle(at_px: [f64; 2], radius_px: f64) -> [FigureLine; 2] {
    [LineOf::Outline, LineOf::Mark].map(|of| FigureLine {
        through_px: vec![at_px],
        radius_px: Some(radius_px),
        of,
    })
}

/// Open in the middle, so that what is to be marked is seen.
fn cross([x_px, y_px]: [f64; 2], arm_px: f64) -> impl Iterator<Item = FigureLine> {
    let arms = [[1.0, 0.0], [-1.0, 0.0], [0.0, 1.0], [0.0, -1.0]];
    let line = move |of: LineOf| {
        arms.into_iter().map(move |[to_x, to_y]| FigureLine {
            through_px: [0.3, 1.0]
                .map(|part| [x_px + part * arm_px * to_x, y_px + part * arm_px * to_y])
                .to_vec(),
            radius_px: None,
            of,
        })
    };
    line(LineOf::Outline).chain(line(LineOf::Mark))
}
