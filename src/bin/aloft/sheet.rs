//! `aloft sheet`.

use clap::{Args, Subcommand};

use crate::chosen::{Chosen, bytes_of};
use crate::lesson::open;
use turns_aloft::describe::Sentence;
use turns_aloft::lesson::progress_file::LARGEST_BYTES;
use turns_aloft::lesson::{Lesson, Progress};
use turns_aloft::picture::Picture;
use turns_aloft::scenario::Scenario;
use turns_aloft::scenario::reading::text_of;
use turns_aloft::scenario::units::Units;
use turns_aloft::sheet::{answers, coach, plan, pupil, results};
use turns_aloft::words::{Language, set_language};

#[derive(Args)]
pub struct SheetArguments {
    #[command(subcommand)]
    sheet: Sheet,
    /// The page's address, for a QR code.
    #[arg(long, value_name = "URL", global = true)]
    address: Option<String>,
    /// The language of the sheet: en or de.
    #[arg(long, value_name = "TAG", default_value = "en", global = true)]
    language: String,
}

#[derive(Subcommand)]
enum Sheet {
    /// The worksheet of a lesson: questions, empty charts, a table to fill in.
    Pupil { lesson: String },
    /// The answers of a lesson, worked out by its flights.
    Answers { lesson: String },
    /// The plan of a lesson for the teacher.
    Plan { lesson: String },
    /// What a pupil has answered to a lesson.
    Results { lesson: String, answers: String },
    /// A jump for the coach: what happened, what would win the missing turns, cautions.
    Coach(Chosen),
}

impl SheetArguments {
    pub fn run(&self) -> Result<String, String> {
        let spoken = Language::ALL
            .into_iter()
            .find(|it| it.tag() == self.language);
        let known = Language::ALL.map(Language::tag).join(", ");
        let unknown = || format!("--language {}: there are {known}", self.language);
        let spoken = spoken.ok_or_else(unknown)?;
        let sheet = self.read()?;
        // What is wrong is said in English; the sheet is in the language that was asked for.
        set_language(spoken);
        let html = sheet.html(self.address.as_deref());
        set_language(Language::English);
        html
    }

    fn read(&self) -> Result<ReadSheet, String> {
        Ok(match &self.sheet {
            Sheet::Pupil { lesson } => ReadSheet::Pupil(open(lesson)?),
            Sheet::Answers { lesson } => ReadSheet::Answers(open(lesson)?),
            Sheet::Plan { lesson } => ReadSheet::Plan(open(lesson)?),
            Sheet::Results { lesson, answers } => {
                let lesson = open(lesson)?;
                let progress = progress(answers, &lesson)?;
                ReadSheet::Results(lesson, progress)
            }
            Sheet::Coach(chosen) => ReadSheet::Coach(Box::new(chosen.scenario()?)),
        })
    }
}

/// A sheet with all that it is of.
enum ReadSheet {
    Pupil(Lesson),
    Answers(Lesson),
    Plan(Lesson),
    Results(Lesson, Progress),
    Coach(Box<Scenario>),
}

impl ReadSheet {
    fn html(&self, address: Option<&str>) -> Result<String, String> {
        let units = Units::default();
        Ok(match self {
            Self::Pupil(lesson) => pupil(lesson, &units, address),
            Self::Answers(lesson) => {
                let sheet = answers(lesson, &units, address);
                sheet.map_err(|why| {
                    set_language(Language::English);
                    why.sentence()
                })?
            }
            Self::Plan(lesson) => plan(lesson, address),
            Self::Results(lesson, progress) => results(lesson, progress, &units),
            Self::Coach(scenario) => of_jump(scenario, &units, address),
        })
    }
}

fn progress(name: &str, lesson: &Lesson) -> Result<Progress, String> {
    let unread = |why| format!("{name} cannot be read: {why}");
    let bytes = bytes_of(name, LARGEST_BYTES).map_err(unread)?;
    let text = text_of(bytes).map_err(|why| format!("{name}: {}", why.sentence()))?;
    let progress = Progress::open_file(&text, lesson);
    progress.map_err(|why| format!("{name}: {}", why.sentence()))
}

fn of_jump(scenario: &Scenario, units: &Units, address: Option<&str>) -> String {
    let jump = scenario.fly();
    coach(&Picture {
        scenario,
        jump: &jump,
        units,
        tried: None,
        address,
    })
}
