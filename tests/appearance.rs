//! The colours, held to what others have published about contrast and colour-blindness.

use turns_aloft::appearance::{Colours, DAY, NIGHT, Rgb};

const BOTH: [(&str, &Colours); 2] = [("day", &DAY), ("night", &NIGHT)];

/// sRGB to linear, IEC 61966-2-1.
fn linear(byte: u8) -> f64 {
    let c = f64::from(byte) / 255.0;
    if c <= 0.040_45 {
        c / 12.92
    } else {
        libm::pow((c + 0.055) / 1.055, 2.4)
    }
}

fn rgb(Rgb(r, g, b): Rgb) -> [f64; 3] {
    [r, g, b].map(linear)
}

/// W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio".
fn contrast(a: Rgb, b: Rgb) -> f64 {
    let luminance = |colour| {
        let [r, g, b] = rgb(colour);
        0.2126 * r + 0.7152 * g + 0.0722 * b
    };
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// How dichromats see: Machado, Oliveira and Fernandes, "A Physiologically-based Model for
/// Simulation of Color Vision Deficiency", IEEE TVCG 15 (2009), severity 1.0; the numbers are from
/// memory.
const SIGHTS: [(&str, [[f64; 3]; 3]); 4] = [
    (
        "all colours",
        [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]],
    ),
    (
        "protanopia",
        [
            [0.152_286, 1.052_583, -0.204_868],
            [0.114_503, 0.786_281, 0.099_216],
            [-0.003_882, -0.048_116, 1.051_998],
        ],
    ),
    (
        "deuteranopia",
        [
            [0.367_322, 0.860_646, -0.227_968],
            [0.280_085, 0.672_501, 0.047_413],
            [-0.011_820, 0.042_940, 0.968_881],
        ],
    ),
    (
        "tritanopia",
        [
            [1.255_528, -0.076_749, -0.178_779],
            [-0.078_411, 0.930_809, 0.147_602],
            [0.004_733, 0.691_367, 0.303_900],
        ],
    ),
];

/// CIELAB (CIE 15:2004) of a colour seen so, white point D65.
fn lab(colour: Rgb, sight: &[[f64; 3]; 3]) -> [f64; 3] {
    let seen = sight.map(|row| {
        row.iter()
            .zip(rgb(colour))
            .map(|(m, c)| m * c)
            .sum::<f64>()
            .clamp(0.0, 1.0)
    });
    let [r, g, b] = seen;
    let xyz = [
        (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505,
        0.2126 * r + 0.7152 * g + 0.0722 * b,
        (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089,
    ];
    let [x, y, z] = xyz.map(|t: f64| {
        if t > (6.0f64 / 29.0).powi(3) {
            t.cbrt()
        } else {
            t / (3.0 * (6.0f64 / 29.0).powi(2)) + 4.0 / 29.0
        }
    });
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

fn difference(a: Rgb, b: Rgb, sight: &[[f64; 3]; 3]) -> f64 {
    let (a, b) = (lab(a, sight), lab(b, sight));
    a.iter()
        .zip(b)
        .map(|(a, b)| (a - b).powi(2))
        .sum::<f64>()
        .sqrt()
}

#[test]
fn contrast_of_known_colours() {
    // WCAG 2.2: 21 between black and white; #777777 on white is the known near miss of 4.5.
    let white = Rgb(255, 255, 255);
    assert!((contrast(Rgb(0, 0, 0), white) - 21.0).abs() < 1e-9);
    assert!((contrast(Rgb(0x77, 0x77, 0x77), white) - 4.48).abs() < 0.01);
}

/// WCAG 2.2, 1.4.3: text has 4.5 to 1.
#[test]
fn text_can_be_read() {
    let mut faults = Vec::new();
    for (name, c) in BOTH {
        let mut pairs = vec![("on what is touched", c.on_accent, c.accent)];
        for (where_, ground) in [
            ("ground", c.background),
            ("card", c.card),
            ("raised", c.raised),
        ] {
            pairs.extend([
                (where_, c.text, ground),
                (where_, c.weak_text, ground),
                (where_, c.accent, ground),
                (where_, c.warning, ground),
                (where_, c.reference, ground),
            ]);
        }
        for ground in [c.closing, c.tight, c.opening] {
            pairs.push(("a span of the flight", c.text, ground));
        }
        for ground in c.map {
            pairs.push(("the map", c.text, ground));
        }
        for (what, text, ground) in pairs {
            let ratio = contrast(text, ground);
            if ratio < 4.5 {
                faults.push(format!(
                    "{name}, {what}: {text:?} on {ground:?}: {ratio:.2}"
                ));
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// WCAG 2.2, 1.4.11: what has to be seen to understand a picture has 3 to 1 against its ground.
#[test]
fn figures_and_curves_stand_out() {
    let mut faults = Vec::new();
    for (name, c) in BOTH {
        let s = &c.stage;
        let mut pairs = vec![(s.suit, s.air), (s.long_axis, s.air), (s.momentum, s.air)];
        for ground in [s.ice, s.floor, s.bed] {
            pairs.extend([s.suit, s.mark, s.reference_mark].map(|drawn| (drawn, ground)));
        }
        for span in [c.card, c.closing, c.tight, c.opening] {
            pairs.extend([(c.inertia, span), (c.reference, span), (c.accent, span)]);
            pairs.extend(c.torques.map(|torque| (torque, span)));
        }
        for (colour, ground) in pairs {
            let ratio = contrast(colour, ground);
            if ratio < 3.0 {
                faults.push(format!("{name}: {colour:?} on {ground:?}: {ratio:.2}"));
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// What differs in meaning differs by more than ten times the just noticeable difference of 2.3
/// (Mahy, Van Eycken and Oosterlinck 1994; from memory) for all eyes. The attempt beside is always told by more
/// than its colour: dashes, a name, a shape seen through.
#[test]
fn meanings_stay_apart_for_all_eyes() {
    let mut faults = Vec::new();
    for (name, c) in BOTH {
        let s = &c.stage;
        let mut pairs = vec![
            (c.accent, c.warning),
            (c.warning, c.text),
            (c.reference, c.text),
            (c.map[0], c.map[2]),
            (c.map[1], c.map[3]),
            (s.left_side, s.suit),
            (s.momentum, s.long_axis),
            (s.owed, s.short),
            (s.turned, s.track),
            (s.reference, s.suit),
        ];
        for (i, torque) in c.torques.iter().enumerate() {
            pairs.extend(c.torques[..i].iter().map(|other| (*other, *torque)));
        }
        for (a, b) in pairs {
            for (sight, matrix) in &SIGHTS {
                let apart = difference(a, b, matrix);
                if apart < 23.0 {
                    faults.push(format!("{name}, {sight}: {a:?}, {b:?}: {apart:.1}"));
                }
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// The page around the picture, too, has its colours from here.
#[test]
fn the_styles_have_the_same_colours() {
    let styles = std::fs::read_to_string("web/style.css").unwrap();
    let night = styles.find("data-light=\"night\"").unwrap();
    let (day, night) = styles.split_at(night);
    for (part, c) in [(day, &DAY), (night, &NIGHT)] {
        for (name, Rgb(r, g, b)) in [
            ("background", c.background),
            ("card", c.card),
            ("line", c.line),
            ("text", c.text),
            ("accent", c.accent),
        ] {
            let line = format!("--{name}: #{r:02X}{g:02X}{b:02X};");
            assert!(part.contains(&line), "{line}");
        }
    }
}

/// No text of the page around the picture is smaller than 13 px, the least of the panels; a browser's
/// usual text has 16 px to the rem.
#[test]
fn the_styles_have_no_small_text() {
    const LEAST_PX: f64 = 13.0;
    const REM_PX: f64 = 16.0;
    let styles = std::fs::read_to_string("web/style.css").unwrap();
    let sizes: Vec<&str> = styles
        .lines()
        .filter_map(|line| line.trim().split_once(": "))
        .filter(|(name, value)| matches!(*name, "font" | "font-size") && *value != "inherit;")
        .map(|(_, value)| value.split(['/', ';']).next().unwrap_or_default())
        .collect();
    assert!(sizes.len() >= 3, "{sizes:?}");
    for size in sizes {
        let rem = size.strip_suffix("rem").expect("a size in rem");
        let px = REM_PX * rem.parse::<f64>().expect("a number");
        assert!(px >= LEAST_PX, "{size}");
    }
}
