//! An attempt marked in a film.
//!
//! Times are real seconds on the film's own clock: what the player says, divided by how many times
//! slower than life it plays.

use serde::Serialize;

/// How far off a facing is that was read by eye, rad, standard deviation: 15 degrees. A value of our own:
/// no published error was found. Reading two frames twice gives a better one.
pub const USUAL_FACING_SIGMA_RAD: f64 = std::f64::consts::PI / 12.0;

/// How far off the arms or legs of a posture are that were read by eye, on their scale from 0 to 1, standard
/// deviation. A value of our own: no published error was found.
pub const USUAL_POSTURE_SIGMA: f64 = 0.12;

#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Film {
    /// Name of the film's file, by which it is asked for again. The film itself is not kept.
    pub file_name: String,
    /// Width and height of the picture.
    pub size_px: [f64; 2],
    /// From one frame to the next, in real seconds.
    pub frame_s: f64,
    /// How many times slower than life the film plays: 1 for none, 8 for 240 frames a second played as 30.
    pub slow_motion: f64,
    pub contacts: Contacts,
    pub facings: Vec<Facing>,
    pub postures: Vec<PostureMark>,
    pub points: Vec<Point>,
}

/// Between which frames the ice was left and met again: frame times.
#[derive(Debug, Clone, Copy, Default, PartialEq, Serialize)]
pub struct Contacts {
    #[serde(skip_serializing_if = "Option::is_none")]
    pub last_on_ice_s: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub first_in_air_s: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub last_in_air_s: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub first_on_ice_s: Option<f64>,
}

/// Which way the front of the hips points, seen from above, as the camera sees it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Facing {
    pub t_s: f64,
    /// 0 towards the camera, positive anticlockwise seen from above: a quarter turn is to the right of the
    /// picture.
    pub angle_rad: f64,
    /// Standard deviation of its error.
    pub sigma_rad: f64,
}

/// How far in arms and legs are: 0 as at take-off (or landing), 1 as tight as this body can get.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PostureMark {
    pub t_s: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub arms: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub legs: Option<f64>,
    /// Standard deviation of the error of either.
    pub sigma: f64,
}

/// Something in the picture.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Point {
    pub of: PointOf,
    pub t_s: f64,
    /// From the left and from the top.
    pub at_px: [f64; 2],
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PointOf {
    /// Top of the head.
    Head,
    /// Lowest point of the lower blade.
    Feet,
    /// Half-way between the hip joints.
    Hips,
    /// A point that stands still beside the ice.
    Background,
}

impl PointOf {
    pub const ALL: [Self; 4] = [Self::Head, Self::Feet, Self::Hips, Self::Background];

    /// Its name in files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Head => "head",
            Self::Feet => "feet",
            Self::Hips => "hips",
            Self::Background => "background",
        }
    }

    /// The one with this name.
    pub fn named(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|it| it.key() == key)
    }
}

impl Film {
    /// A film in which nothing is marked yet.
    pub fn unmarked(file_name: String, size_px: [f64; 2], frame_s: f64, slow_motion: f64) -> Self {
        Self {
            file_name,
            size_px,
            frame_s,
            slow_motion,
            contacts: Contacts::default(),
            facings: Vec::new(),
            postures: Vec::new(),
            points: Vec::new(),
        }
    }

    /// The marks of a film whose frames are at other times: it plays so many times slower than life.
    pub fn play_slower_than_life(&mut self, slow_motion: f64) {
        let faster = self.slow_motion / slow_motion;
        self.slow_motion = slow_motion;
        self.frame_s *= faster;
        self.contacts.each().for_each(|t_s| *t_s *= faster);
        let facings = self.facings.iter_mut().map(|mark| &mut mark.t_s);
        let postures = self.postures.iter_mut().map(|mark| &mut mark.t_s);
        let points = self.points.iter_mut().map(|mark| &mut mark.t_s);
        for t_s in facings.chain(postures).chain(points) {
            *t_s *= faster;
        }
    }
}

impl Contacts {
    fn each(&mut self) -> impl Iterator<Item = &mut f64> {
        [
            &mut self.last_on_ice_s,
            &mut self.first_in_air_s,
            &mut self.last_in_air_s,
            &mut self.first_on_ice_s,
        ]
        .into_iter()
        .flatten()
    }
}
