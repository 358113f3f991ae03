//! Tables for a spreadsheet, read back as it reads them: as UTF-8, with the language's separator and
//! decimal sign (RFC 4180 for quotes and line ends).

use turns_aloft::describe::spreadsheet::Spreadsheet;
use turns_aloft::session::{Question, Saved, Session};
use turns_aloft::words::{Language, set_language};

/// Heading and rows.
fn read(text: &str, separator: u8) -> (Vec<String>, Vec<Vec<String>>) {
    let text = text
        .strip_prefix('\u{feff}')
        .expect("it says that it is UTF-8");
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(separator)
        .from_reader(text.as_bytes());
    let heading = reader.headers().expect("a heading");
    let heading = heading.iter().map(str::to_owned).collect();
    let row = |row: Result<csv::StringRecord, csv::Error>| {
        let row = row.expect("as many cells as in the heading");
        row.iter().map(str::to_owned).collect()
    };
    (heading, reader.records().map(row).collect())
}

fn numbers(row: &[String], sign: &str) -> Vec<f64> {
    let other = if sign == "." { "," } else { "." };
    let number = |cell: &String| {
        assert!(!cell.contains(other), "{cell}");
        cell.replace(sign, ".").parse().expect("a number")
    };
    row.iter().map(number).collect()
}

#[test]
fn a_flight_has_all_its_curves_in_the_units_shown() {
    for (language, separator, sign) in [
        (Language::English, b',', "."),
        (Language::German, b';', ","),
    ] {
        set_language(language);
        let session = Session::default();
        let [name, table] = session.file_of(Saved::FlightTable).expect("a flight");
        assert!(name.ends_with(".csv"), "{name}");
        assert!(table.lines().count() == table.matches("\r\n").count());
        let (heading, rows) = read(&table, separator);
        let rows: Vec<Vec<f64>> = rows.iter().map(|row| numbers(row, sign)).collect();
        assert_eq!(heading.len(), 8);
        assert!(
            heading.iter().all(|cell| cell.ends_with(')')),
            "{heading:?}"
        );
        assert!(heading[2].contains("kg m²"), "{heading:?}");

        let jump = session.jump();
        let [first, last] = [&rows[0], &rows[rows.len() - 1]];
        assert_eq!(first[0], 0.0);
        let close = |one: f64, other: f64| (one - other).abs() <= 1e-6 * (1.0 + other.abs());
        assert!(close(last[0], jump.flight.touchdown_s));
        assert!(close(last[5], jump.turns));
        let inertia = jump.readout.inertia_takeoff_kg_m2;
        assert!(close(first[2], inertia), "{} {inertia}", first[2]);
        // Turns a minute, as the page begins.
        let rate = jump.readout.takeoff_rate_rad_s * 60.0 / std::f64::consts::TAU;
        assert!(
            heading[1].contains("rpm") || heading[1].contains("/min"),
            "{heading:?}"
        );
        assert!(close(first[1], rate), "{} {rate}", first[1]);
        // Times go on, a hundredth of a second each but the last.
        let steps = rows.windows(2).map(|two| two[1][0] - two[0][0]);
        assert!(steps.take(rows.len() - 2).all(|step| close(step, 0.01)));
    }
    set_language(Language::English);
}

#[test]
fn a_map_has_the_turns_of_every_place_flown() {
    let mut session = Session::default();
    session.ask(Question::Map);
    session.poll(|| true);
    let [_, table] = session.file_of(Saved::MapTable).expect("a map");
    let (heading, rows) = read(&table, b',');
    assert_eq!(heading.len(), 3);
    assert_eq!(rows.len(), 61 * 61);
    // A place of the map, flown by itself.
    let place = numbers(&rows[61 * 17 + 40], ".");
    session.put_on_map([40.0 / 60.0, 17.0 / 60.0]);
    assert!((session.jump().turns - place[2]).abs() < 1e-5, "{place:?}");
}

#[test]
fn nothing_is_saved_of_what_there_is_not() {
    let session = Session::default();
    for saved in [Saved::RunTable, Saved::MapTable, Saved::Attempt] {
        assert_eq!(session.file_of(saved), None);
    }
}

/// OWASP, "CSV Injection": a cell that begins with one of these is a formula to a spreadsheet.
#[test]
fn a_text_is_never_a_formula_and_always_one_cell() {
    let cells = [
        "=1+2",
        "+1",
        "-1",
        "@SUM(1)",
        "say \"hallo\", then; go\non",
        "plain",
    ];
    let mut table = Spreadsheet::with_heading(["a", "b", "c", "d", "e", "f"]);
    table.texts(cells);
    let (_, rows) = read(&table.into_csv(), b',');
    let begins = [
        "'=",
        "'+",
        "'-",
        "'@",
        "say \"hallo\", then; go\non",
        "plain",
    ];
    assert_eq!(rows.len(), 1);
    for (cell, begin) in rows[0].iter().zip(begins) {
        assert!(cell.starts_with(begin), "{cell}");
    }
}
