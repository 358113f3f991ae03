//! The figure laid over a film: a distant camera found from marks that a pinhole camera took, and gravity
//! in the marks of flights and of a real hop.

use glam::DVec3;
use rand::{RngExt, SeedableRng, rngs::StdRng};
use rand_distr::StandardNormal;

use turns_aloft::attempt::film::{Point, PointOf};
use turns_aloft::overlay::fall::Height;
use turns_aloft::overlay::{Camera, Fall, LineOfSight, NoCamera, RateCheck};
use turns_aloft::physics::body::Segment;
use turns_aloft::physics::flight::Flight;
use turns_aloft::physics::rotation::heading_rad;
use turns_aloft::scenario::starts;

/// When the film's flight begins.
const TAKEOFF_S: f64 = 2.4;

/// A camera as one is held beside the rink: so far away, so high, turned after the jumper. By the pinhole
/// formula, so that what is nearer is larger.
struct Pinhole {
    /// From the jumper's take-off to the camera, seen from above, from the world's X.
    azimuth_rad: f64,
    distance_m: f64,
    height_m: f64,
    /// Pixels for a slope of one.
    focal_px: f64,
    roll_rad: f64,
    /// How fast it turns after the jumper.
    pan_rad_s: f64,
    /// How fast the jumper travels to the right of the picture.
    travel_m_s: f64,
}

const CAMERA: Pinhole = Pinhole {
    azimuth_rad: 0.9,
    distance_m: 12.0,
    height_m: 1.3,
    focal_px: 2400.0,
    roll_rad: 0.05,
    pan_rad_s: 0.12,
    travel_m_s: 2.5,
};

impl Pinhole {
    fn outwards(&self) -> DVec3 {
        let (sin, cos) = libm::sincos(self.azimuth_rad);
        DVec3::new(cos, 0.0, -sin)
    }

    /// A point of the world so long after take-off.
    fn seen_px(&self, world_m: DVec3, since_s: f64) -> [f64; 2] {
        let eye_m = self.outwards() * self.distance_m + DVec3::Y * self.height_m;
        let (sin, cos) = libm::sincos(self.azimuth_rad - self.pan_rad_s * (since_s - 0.3));
        let ahead = -DVec3::new(cos, 0.0, -sin);
        let right = ahead.cross(DVec3::Y);
        let from_eye = world_m - eye_m;
        let depth = from_eye.dot(ahead);
        let [x, up] = [right.dot(from_eye), from_eye.y].map(|m| self.focal_px * m / depth);
        let (sin, cos) = libm::sincos(self.roll_rad);
        [960.0 + cos * x + sin * up, 540.0 + sin * x - cos * up]
    }

    /// The jumper's own travel, which a flight leaves out.
    fn travelled_m(&self, since_s: f64) -> DVec3 {
        (-self.outwards()).cross(DVec3::Y) * self.travel_m_s * since_s
    }

    fn figure_px(&self, flight: &Flight, of: PointOf, since_s: f64) -> [f64; 2] {
        self.seen_px(
            place_m(flight, of, since_s) + self.travelled_m(since_s),
            since_s,
        )
    }

    /// As a fit of the facings would find it.
    fn sight(&self, flight: &Flight) -> LineOfSight {
        let heading = heading_rad(flight.takeoff().orientation());
        let end = self.outwards() * self.distance_m - self.travelled_m(flight.touchdown_s);
        let turned = libm::atan2(-end.z, end.x) - self.azimuth_rad;
        LineOfSight::of_facing(flight, heading - self.azimuth_rad, -turned)
    }
}

/// Head, feet and hips by the joints of the flown body.
fn place_m(flight: &Flight, of: PointOf, since_s: f64) -> DVec3 {
    let (pose, body) = (flight.pose_at(since_s), &flight.table.body);
    match of {
        PointOf::Head => pose.point_m(Segment::Head, body.link(Segment::Head).end_m),
        PointOf::Hips => {
            let joints = [Segment::LeftThigh, Segment::RightThigh]
                .map(|thigh| pose.point_m(thigh, DVec3::ZERO));
            (joints[0] + joints[1]) / 2.0
        }
        _ => {
            let feet = [Segment::LeftFoot, Segment::RightFoot];
            let soles = feet
                .iter()
                .flat_map(|&foot| body.sole_m.map(|end_m| pose.point_m(foot, end_m)));
            soles
                .min_by(|one, other| one.y.total_cmp(&other.y))
                .expect("two feet")
        }
    }
}

const FIGURE: [PointOf; 3] = [PointOf::Head, PointOf::Feet, PointOf::Hips];

/// Marks of so many frames, each off by so much of stature.
fn marks(flight: &Flight, frames: usize, sigma: f64, seed: u64) -> Vec<Point> {
    let mut random = StdRng::seed_from_u64(seed);
    let off_px = sigma * flight.table.body.spec.stature_m * CAMERA.focal_px / CAMERA.distance_m;
    let mut points = Vec::new();
    for i in 0..frames {
        let since_s = flight.touchdown_s * i as f64 / (frames - 1) as f64;
        for of in FIGURE {
            let [x, y] = CAMERA.figure_px(flight, of, since_s);
            let mut off = || off_px * random.sample::<f64, _>(StandardNormal);
            points.push(Point {
                of,
                t_s: TAKEOFF_S + since_s,
                at_px: [x + off(), y + off()],
            });
        }
        let behind = CAMERA.outwards() * -15.0 + DVec3::Y * 2.0;
        points.push(Point {
            of: PointOf::Background,
            t_s: TAKEOFF_S + since_s,
            at_px: CAMERA.seen_px(behind, since_s),
        });
    }
    points
}

/// The worst miss of head, feet and hips over the whole flight, as a share of stature.
fn missed(camera: &Camera, flight: &Flight) -> f64 {
    let stature_px = flight.table.body.spec.stature_m * camera.scale_px_m();
    let times = (0..=60).map(|i| flight.touchdown_s * f64::from(i) / 60.0);
    let misses = times.flat_map(|since_s| {
        FIGURE.map(|of| {
            let at = camera.project(place_m(flight, of, since_s), TAKEOFF_S + since_s);
            let truly = CAMERA.figure_px(flight, of, since_s);
            (at[0] - truly[0]).hypot(at[1] - truly[1]) / stature_px
        })
    });
    misses.fold(0.0, f64::max)
}

#[test]
fn a_moving_camera_is_found_to_within_3_percent_of_stature() {
    for (seed, start) in starts::all().iter().enumerate() {
        let flight = start.scenario.fly().flight;
        let points = marks(&flight, 5, 0.01, seed as u64);
        let camera =
            Camera::fit(&points, &flight, TAKEOFF_S, CAMERA.sight(&flight)).expect("a camera");
        let missed = missed(&camera, &flight);
        assert!(missed < 0.03, "{}: {missed}", start.name);
        let scale = camera.scale_px_m() / (CAMERA.focal_px / CAMERA.distance_m);
        assert!((scale - 1.0).abs() < 0.03, "{}: {scale}", start.name);
        assert!(
            (camera.roll_rad() - CAMERA.roll_rad).abs() < 0.02,
            "{}",
            start.name
        );
    }
}

#[test]
fn without_its_marks_the_background_is_missed() {
    let flight = starts::all()[0].scenario.fly().flight;
    let mut points = marks(&flight, 5, 0.0, 0);
    let sight = CAMERA.sight(&flight);
    let with = Camera::fit(&points, &flight, TAKEOFF_S, sight).expect("a camera");
    // A camera that jerks: its turning is then no part of the travel.
    for point in &mut points {
        let since_s = point.t_s - TAKEOFF_S;
        point.at_px[0] += 150.0 * libm::sin(12.0 * since_s);
    }
    let jerked = Camera::fit(&points, &flight, TAKEOFF_S, sight).expect("a camera");
    assert!((jerked.missed_px - with.missed_px).abs() < 1.0);
    points.retain(|point| point.of != PointOf::Background);
    let blind = Camera::fit(&points, &flight, TAKEOFF_S, sight).expect("a camera");
    assert!(
        blind.missed_px > 5.0 * jerked.missed_px,
        "{} {}",
        blind.missed_px,
        jerked.missed_px
    );
}

#[test]
fn two_marks_in_one_frame_are_enough_and_one_is_not() {
    let flight = starts::all()[0].scenario.fly().flight;
    let points = marks(&flight, 5, 0.0, 0);
    let sight = CAMERA.sight(&flight);
    let fit = |points: &[Point]| Camera::fit(points, &flight, TAKEOFF_S, sight);
    let scale =
        fit(&points[..2]).expect("a camera").scale_px_m() / (CAMERA.focal_px / CAMERA.distance_m);
    assert!((scale - 1.0).abs() < 0.05, "{scale}");
    assert_eq!(fit(&points[..1]), Err(NoCamera::NoPair));
    assert_eq!(fit(&[]), Err(NoCamera::NoPair));
}

/// The same marks in a film that is taken for another number of frames a second.
fn taken_for(points: &[Point], truly: f64, taken: f64) -> Vec<Point> {
    let slower = truly / taken;
    points
        .iter()
        .map(|point| Point {
            t_s: TAKEOFF_S + slower * (point.t_s - TAKEOFF_S),
            ..*point
        })
        .collect()
}

#[test]
fn gravity_is_found_in_the_marks_and_a_wrong_rate_told() {
    let (mut told, mut inside, mut all) = (0, 0, 0);
    for (seed, start) in starts::all().iter().enumerate() {
        let flight = start.scenario.fly().flight;
        let points = marks(&flight, 7, 0.015, 100 + seed as u64);
        let sight = CAMERA.sight(&flight);
        for (truly, taken) in [
            (240.0, 240.0),
            (240.0, 30.0),
            (60.0, 30.0),
            (30.0, 60.0),
            (120.0, 240.0),
        ] {
            let slower = truly / taken;
            let seen = taken_for(&points, truly, taken);
            let ends_s = [TAKEOFF_S, TAKEOFF_S + slower * flight.touchdown_s];
            let fall = Fall::of_marks(&seen, &flight, ends_s, sight).expect("enough marks");
            let g = fall.g_m_s2 * slower * slower;
            let sigma = fall.sigma_m_s2 * slower * slower;
            all += 1;
            inside += usize::from((g - 9.81).abs() < 2.0 * sigma);
            // Standard gravity within the error that is claimed.
            assert!(
                (g - 9.81).abs() < 3.5 * sigma,
                "{}: {g} {sigma}",
                start.name
            );
            match fall.check(taken) {
                RateCheck::Right => assert_eq!(truly, taken, "{}", start.name),
                RateCheck::Other { frames_a_second } => {
                    assert_eq!(frames_a_second, truly, "{}", start.name)
                }
                RateCheck::None => panic!("{}: {g} {sigma}", start.name),
                RateCheck::CannotTell => continue,
            }
            told += 1;
        }
    }
    println!("gravity: {inside} of {all} within two sigma, {told} told");
    assert!(inside * 10 > all * 9, "{inside} of {all}");
    assert!(told * 10 > all * 7, "{told} of {all}");
}

#[test]
fn few_marks_tell_nothing_of_the_rate() {
    let flight = starts::all()[0].scenario.fly().flight;
    let points = marks(&flight, 3, 0.03, 1);
    let ends_s = [TAKEOFF_S, TAKEOFF_S + flight.touchdown_s];
    let sight = CAMERA.sight(&flight);
    assert_eq!(Fall::of_marks(&points[..8], &flight, ends_s, sight), None);
    let weak = Fall {
        g_m_s2: 9.0,
        sigma_m_s2: 4.0,
    };
    assert_eq!(weak.check(60.0), RateCheck::CannotTell);
    let odd = Fall {
        g_m_s2: 20.0,
        sigma_m_s2: 1.0,
    };
    assert_eq!(odd.check(60.0), RateCheck::None);
}

/// The hips of a real hop (`tests/data/README.md`): heights of the root in units of 1/0.45 inch, 120 frames
/// a second. Frames 26 to 50 are around its top; contacts are not labelled.
fn hop(frames_a_second: f64) -> Vec<Height> {
    let file = include_str!("data/cmu_83_65_root_excerpt.csv");
    let mut reader = csv::Reader::from_reader(file.as_bytes());
    let rows = reader
        .deserialize::<[f64; 7]>()
        .map(|row| row.expect("numbers"));
    let around = rows.filter(|row| (26.0..=50.0).contains(&row[0]));
    around
        .map(|row| Height {
            t_s: row[0] / frames_a_second,
            height_m: row[2] * 0.0254 / 0.45,
            kind: 0,
        })
        .collect()
}

/// Hips are not the centre of mass, which legs and arms move against them: most windows of this hop fall with
/// 8.3 to 9.5 m/s2, where standard gravity is 9.807.
#[test]
fn a_real_hop_falls_with_gravity() {
    let fall = Fall::of(&hop(120.0), 0.01).expect("enough heights");
    println!("hop: {} +- {}", fall.g_m_s2, fall.sigma_m_s2);
    assert!((8.3..9.81 * 1.05).contains(&fall.g_m_s2), "{fall:?}");
    assert_eq!(fall.check(120.0), RateCheck::Right);
    for taken in [30.0, 60.0, 240.0] {
        let fall = Fall::of(&hop(taken), 0.01).expect("enough heights");
        assert_eq!(
            fall.check(taken),
            RateCheck::Other {
                frames_a_second: 120.0
            },
            "{taken} {fall:?}"
        );
    }
}
