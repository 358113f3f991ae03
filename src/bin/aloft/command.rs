//! The subcommands, and how results and errors are printed.

use std::io::{self, Write as _};
use std::process::ExitCode;

use clap::{Parser, Subcommand};

use crate::budget;
use crate::chosen::{Chosen, earlier_body, unknown_start};
use crate::compare::Compare;
use crate::fly::Fly;
use crate::goal::GoalArguments;
use crate::lesson::LessonArguments;
use crate::link::Link;
use crate::map::Map;
use crate::measure::Measure;
use crate::output::{printed, written};
use crate::picture::PictureArguments;
use crate::sheet::SheetArguments;
use crate::steps::Steps;
use crate::turn_try::TurnTryArguments;
use crate::turntable::TurntableArguments;
use turns_aloft::scenario::export::Export;
use turns_aloft::scenario::starts;

/// How many turns a body completes before it comes down.
#[derive(Parser)]
#[command(version)]
struct Command {
    #[command(subcommand)]
    task: Task,
}

#[derive(Subcommand)]
enum Task {
    /// List the starting points, or print one as a scenario file.
    Starts {
        name: Option<String>,
    },
    /// Fly a starting point or a scenario file and print every readout as JSON.
    Fly(Fly),
    /// Print the exact body, joint motion and start of a flight as JSON, to compute it again by
    /// other means.
    Export(Chosen),
    /// Print the turns at landing over any two numbers as CSV, every value by a flight of its own.
    Map(Map),
    /// Print where the turns went, from the ideal flight to the actual one, as JSON.
    Budget(Chosen),
    /// Print which inputs of two attempts differ and what each is worth in turns, as JSON.
    Compare(Compare),
    /// Print a jump as a link: the text to put behind the page's address.
    Link(Link),
    /// Print a jump as a still picture, as SVG.
    Picture(PictureArguments),
    /// Print what would give a jump the turns it lacks, each lever alone and together, as JSON.
    #[command(alias = "reach")]
    Goal(GoalArguments),
    /// Print what the marks of a real attempt say of its jump, each number with its range, as JSON.
    Measure(Measure),
    /// Print what a small step of each lever gives, the most turns first, as JSON.
    Steps(Steps),
    /// Print whether a jump lands five turns, or fewer, and which limits seen in people it passes, as JSON.
    Try(TurnTryArguments),
    Turntable(TurntableArguments),
    /// Check a lesson and print its answer sheet, worked out by its flights, as JSON.
    Lesson(LessonArguments),
    /// Print a sheet of a lesson or of a jump as a page of HTML, to be printed from a browser.
    Sheet(SheetArguments),
}

pub fn main() -> ExitCode {
    let answered = match Command::try_parse() {
        Ok(command) => run(command).and_then(|text| {
            let mut out = io::stdout().lock();
            written("the answer", out.write_all(text.as_bytes()))?;
            written("the answer", out.flush())
        }),
        // Errors in the arguments are printed by clap; its help text is printed like a result.
        Err(said) if said.use_stderr() => said.exit(),
        Err(help) => written(
            "the answer",
            help.print().and_then(|()| io::stdout().flush()),
        ),
    };
    match answered {
        Ok(()) => {
            if let Some(sentence) = earlier_body() {
                report(&sentence);
            }
            ExitCode::SUCCESS
        }
        Err(why) => {
            report(&why);
            ExitCode::from(2)
        }
    }
}

/// Prints one line to standard error, without control characters. If that fails, only the exit
/// status tells.
fn report(what: &str) {
    let line = what.replace(char::is_control, " ");
    let _ = writeln!(io::stderr(), "aloft: {line}");
}

fn run(command: Command) -> Result<String, String> {
    match command.task {
        Task::Starts { name: None } => Ok(list()),
        Task::Starts { name: Some(name) } => starts::named(&name)
            .map(|start| start.scenario.to_file())
            .ok_or_else(|| unknown_start(&name)),
        Task::Fly(fly) => fly.run(),
        Task::Map(map) => map.run(),
        Task::Export(chosen) => printed(&Export::new(&chosen.scenario()?.fly())),
        Task::Budget(chosen) => budget::run(&chosen),
        Task::Compare(compare) => compare.run(),
        Task::Link(link) => link.run(),
        Task::Picture(picture) => picture.run(),
        Task::Goal(goal) => goal.run(),
        Task::Measure(measure) => measure.run(),
        Task::Steps(steps) => steps.run(),
        Task::Try(tried) => tried.run(),
        Task::Turntable(turntable) => turntable.run(),
        Task::Lesson(lesson) => lesson.run(),
        Task::Sheet(sheet) => sheet.run(),
    }
}

fn list() -> String {
    starts::all()
        .iter()
        .map(|start| format!("{:20} {}\n", start.name, start.scenario.note))
        .collect()
}
