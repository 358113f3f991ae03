//! The saved form of an attempt: what is written is read back, and what is wrong is said in one sentence.

use serde_json::{Value, json};

use turns_aloft::attempt::film::{
    Contacts, Facing, Film, Point, PointOf, PostureMark, USUAL_FACING_SIGMA_RAD,
};
use turns_aloft::attempt::sensor::{Sensor, Turned};
use turns_aloft::attempt::stop_watch::{StopWatch, USUAL_HALF_WIDTH_S};
use turns_aloft::attempt::{Attempt, Measured};
use turns_aloft::describe::Sentence;
use turns_aloft::scenario::starts;

fn film() -> Film {
    Film {
        file_name: "loop.mp4".to_owned(),
        size_px: [1920.0, 1080.0],
        frame_s: 1.0 / 240.0,
        slow_motion: 8.0,
        contacts: Contacts {
            last_on_ice_s: Some(1.0),
            first_in_air_s: Some(1.0 + 1.0 / 240.0),
            last_in_air_s: None,
            first_on_ice_s: Some(1.5),
        },
        facings: vec![Facing {
            t_s: 1.1,
            angle_rad: -0.3,
            sigma_rad: 0.2,
        }],
        postures: vec![PostureMark {
            t_s: 1.2,
            arms: Some(0.8),
            legs: None,
            sigma: 0.1,
        }],
        points: vec![Point {
            of: PointOf::Hips,
            t_s: 1.2,
            at_px: [812.5, 440.25],
        }],
    }
}

fn attempts() -> [Attempt; 3] {
    let watch = StopWatch {
        hang_time_s: 0.52,
        half_width_s: 0.05,
        turns_counted: Some(2.75),
        landing_facing_rad: None,
    };
    let sensor = Sensor {
        file_name: "trace.csv".to_owned(),
        takeoff_s: 4.1,
        takeoff_sigma_s: 0.01,
        landing_s: 4.6,
        landing_sigma_s: 0.01,
        turned: vec![Turned {
            t_s: 4.2,
            angle_rad: 1.1,
            sigma_rad: 0.02,
        }],
        scale_sigma: 0.005,
    };
    [
        Measured::StopWatch(watch),
        Measured::Film(film()),
        Measured::Sensor(sensor),
    ]
    .map(|measured| Attempt {
        scenario: starts::all()[0].scenario.clone(),
        measured,
    })
}

/// A good file of a film with one thing changed.
fn changed(change: impl FnOnce(&mut Value)) -> String {
    let mut value: Value = serde_json::from_str(&attempts()[1].to_file()).expect("it is JSON");
    change(&mut value);
    value.to_string()
}

#[track_caller]
fn assert_says(text: &str, words: &[&str]) {
    let why = Attempt::open_file(text)
        .expect_err("it is refused")
        .sentence();
    assert!(!why.trim().is_empty() && !why.contains('\n'), "{why:?}");
    for word in words {
        assert!(why.contains(word), "{why:?} does not say {word:?}");
    }
}

#[test]
fn what_is_written_is_read_back() {
    for attempt in attempts() {
        let text = attempt.to_file();
        assert!(Attempt::is_in(&text));
        let opened = Attempt::open_file(&text).expect("it is read back");
        assert_eq!(opened.read, attempt);
        assert!(!opened.earlier_body);
        assert!(attempt.file_name().ends_with(".attempt.json"));
    }
    assert!(!Attempt::is_in(&starts::all()[0].scenario.to_file()));
}

#[test]
fn what_may_be_left_out_has_its_usual_value() {
    let opened = Attempt::open_file(&changed(|value| {
        value["film"]["facings"] = json!([{"t_s": 1.0, "angle_rad": 0.5}]);
        value["film"]["contacts"] = json!({"last_on_ice_s": null});
    }));
    let Measured::Film(film) = opened.expect("it is read").read.measured else {
        panic!("it is a film");
    };
    assert_eq!(film.facings[0].sigma_rad, USUAL_FACING_SIGMA_RAD);
    assert_eq!(film.contacts, Contacts::default());
    let opened = Attempt::open_file(&changed(|value| {
        let file = value.as_object_mut().expect("an object");
        file.remove("film");
        file.insert("stop_watch".to_owned(), json!({"hang_time_s": 0.5}));
    }));
    let Measured::StopWatch(watch) = opened.expect("it is read").read.measured else {
        panic!("it is a stop-watch");
    };
    assert_eq!(watch.half_width_s, USUAL_HALF_WIDTH_S);
}

#[test]
fn what_is_wrong_is_said() {
    assert_says("", &["not an attempt", "ends before"]);
    assert_says("{", &["line 1"]);
    assert_says("[]", &["not an attempt"]);
    assert_says(&starts::all()[0].scenario.to_file(), &["not an attempt"]);
    assert_says(&"x".repeat(300_001), &["too large"]);
    assert_says(
        &changed(|it| it["turns_aloft_attempt"] = 2.into()),
        &["version 2", "update"],
    );
    assert_says(
        &changed(|it| it["jump"]["scenario"]["arm_tuck"] = 2.into()),
        &["jump of this attempt", "arm_tuck", "2"],
    );
    assert_says(
        &changed(|it| it["film"]["colour"] = 1.into()),
        &["unknown", "colour"],
    );
    assert_says(
        &changed(|it| it["film"]["facings"][0]["angle_rad"] = "left".into()),
        &["angle_rad", "no number"],
    );
    assert_says(
        &changed(|it| it["film"]["postures"][0]["arms"] = 1.5.into()),
        &["arms", "1.5", "0", "1"],
    );
    assert_says(
        &changed(|it| it["film"]["size_px"] = json!([1])),
        &["size_px", "list"],
    );
    assert_says(
        &changed(|it| it["film"]["file_name"] = json!(1)),
        &["file_name", "no text"],
    );
    assert_says(
        &changed(|it| it["film"]["points"][0]["of"] = "elbow".into()),
        &["elbow", "hips"],
    );
    assert_says(
        &changed(|it| it["film"]["facings"] = json!(vec![json!({}); 501])),
        &["facings", "500"],
    );
    assert_says(
        &changed(|it| {
            it.as_object_mut().expect("an object").remove("film");
        }),
        &["stop_watch", "film", "sensor"],
    );
    assert_says(
        &changed(|it| it["stop_watch"] = json!({"hang_time_s": 0.5})),
        &["exactly one"],
    );
    let twice = attempts()[1]
        .to_file()
        .replacen("\"t_s\"", "\"t_s\": 1.0, \"t_s\"", 1);
    assert_says(&twice, &["duplicate", "t_s"]);
}

/// All times of a film go with how much slower than life it plays.
#[test]
fn times_follow_the_slow_motion() {
    let mut film = film();
    film.play_slower_than_life(4.0);
    assert_eq!(film.slow_motion, 4.0);
    assert_eq!(film.frame_s, 1.0 / 120.0);
    assert_eq!(film.contacts.first_on_ice_s, Some(3.0));
    assert_eq!(film.facings[0].t_s, 2.2);
    assert_eq!(film.postures[0].t_s, 2.4);
    assert_eq!(film.points[0].t_s, 2.4);
}
