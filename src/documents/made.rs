//! Makes what is asked for: the same from the same request.

use turns_aloft_analysis::turn_try::TurnTry;
use turns_aloft_describe::Sentence;
use turns_aloft_lesson::{Lesson, Progress};
use turns_aloft_picture::{Picture, to_svg};
use turns_aloft_scenario::Scenario;
use turns_aloft_sheet::{answers, coach, plan, pupil, results};
use turns_aloft_words::{Language, set_language};

use crate::request::{Document, Request};

/// The document, as text.
///
/// # Errors
/// One sentence, in the language of the request.
pub fn made(request: &str) -> Result<String, String> {
    let request: Request = serde_json::from_str(request).map_err(|why| why.to_string())?;
    let tags = [request.language.as_str()];
    set_language(Language::of_tags(tags));
    match request.document {
        Document::Picture | Document::Coach => of_jump(&request),
        _ => of_lesson(&request),
    }
}

fn of_jump(request: &Request) -> Result<String, String> {
    let opened = Scenario::open_file(&request.jump).map_err(|why| why.sentence())?;
    let scenario = opened.read;
    let jump = scenario.fly();
    let is_try = request.is_try && request.document == Document::Picture;
    let tried = is_try.then(|| TurnTry::new(&scenario, &jump, scenario.jump_turns));
    let picture = Picture {
        scenario: &scenario,
        jump: &jump,
        units: &request.units,
        tried: tried.as_ref(),
        address: request.address.as_deref(),
    };
    Ok(match request.document {
        Document::Picture => to_svg(&picture),
        _ => coach(&picture),
    })
}

fn of_lesson(request: &Request) -> Result<String, String> {
    let [lesson, answered] = request.lesson.as_ref().ok_or("there is no lesson")?;
    let lesson = Lesson::open_file(lesson).map_err(|why| why.sentence())?;
    let (units, address) = (&request.units, request.address.as_deref());
    match request.document {
        Document::Answers => answers(&lesson, units, address).map_err(|why| why.sentence()),
        Document::Plan => Ok(plan(&lesson, address)),
        Document::Results => {
            let progress = Progress::open_file(answered, &lesson).map_err(|why| why.sentence())?;
            Ok(results(&lesson, &progress, units))
        }
        _ => Ok(pupil(&lesson, units, address)),
    }
}
