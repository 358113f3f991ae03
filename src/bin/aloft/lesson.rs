//! `aloft lesson`.

use std::fmt::Write as _;

use clap::Args;

use crate::chosen::bytes_of;
use crate::output::printed;
use turns_aloft::describe::Sentence;
use turns_aloft::describe::report::lesson::LessonReport;
use turns_aloft::lesson::Lesson;
use turns_aloft::lesson::fault::Unreadable;
use turns_aloft::lesson::file::LARGEST_BYTES;
use turns_aloft::lesson::names::NAMES;
use turns_aloft::scenario::reading::text_of;
use turns_aloft::scenario::units::Units;

#[derive(Args)]
pub struct LessonArguments {
    /// A lesson file, or the name of a lesson that comes with the program.
    #[arg(required_unless_present = "list")]
    lesson: Option<String>,
    /// List the lessons that come with the program.
    #[arg(long, conflicts_with = "lesson")]
    list: bool,
}

/// The lessons that come with the program, in the order of their names.
const FILES: [&str; NAMES.len()] = [
    include_str!("../../../assets/lessons/what-stays-the-same.lesson.json"),
    include_str!("../../../assets/lessons/higher-or-tighter.lesson.json"),
    include_str!("../../../assets/lessons/can-anybody-do-five.lesson.json"),
    include_str!("../../../assets/lessons/arms-in.lesson.json"),
];

impl LessonArguments {
    pub fn run(&self) -> Result<String, String> {
        let Some(name) = &self.lesson else {
            return list();
        };
        let said = |why: String| format!("{name}: {why}");
        let lesson = open(name)?;
        let sheet = LessonReport::new(&lesson, &Units::default());
        printed(&sheet.map_err(|why| said(why.sentence()))?)
    }
}

/// Opens a lesson by its name, else a lesson file by its path.
pub fn open(name: &str) -> Result<Lesson, String> {
    let said = |why: Unreadable| format!("{name}: {}", why.sentence());
    if let Some(place) = NAMES.iter().position(|known| *known == name) {
        return Lesson::open_file(FILES[place]).map_err(said);
    }
    let bytes = bytes_of(name, LARGEST_BYTES).map_err(|why| match why.kind() {
        std::io::ErrorKind::NotFound => format!(
            "{name} is no lesson; they are {}, and there is no such file",
            NAMES.join(", ")
        ),
        _ => format!("{name} cannot be read: {why}"),
    })?;
    if bytes.len() > LARGEST_BYTES {
        return Err(said(Unreadable::TooLarge));
    }
    let text = text_of(bytes).map_err(|why| said(Unreadable::NotText(why)))?;
    Lesson::open_file(&text).map_err(said)
}

fn list() -> Result<String, String> {
    let mut lines = String::new();
    for name in NAMES {
        let lesson = open(name)?;
        let (title, whom) = (lesson.title.text(), lesson.for_whom.text());
        writeln!(lines, "{name:22} {title} ({} min; {whom})", lesson.minutes)
            .expect("writing to a string does not fail");
    }
    Ok(lines)
}
