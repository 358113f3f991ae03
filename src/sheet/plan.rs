//! The plan for the teacher.

use crate::answers::cautions;
use crate::html::{Page, code, escaped, list, paragraph, table};
use turns_aloft_lesson::{Lesson, Said};
use turns_aloft_words::{say, text};

/// The sheet in the language spoken; `address` opens the lesson.
pub fn plan(lesson: &Lesson, address: Option<&str>) -> String {
    let mut page = Page::new(lesson.title.text());
    let whom = format!(
        "{} {}",
        lesson.for_whom.text(),
        say!("sheet-minutes", minutes = lesson.minutes)
    );
    page.header(text("sheet-plan"), &paragraph(&whom), code(address));
    let plan = &lesson.plan;
    let mut from = 0;
    let rows = plan.parts.iter().map(|part| {
        let until = from + part.minutes;
        let row = vec![format!("{from}–{until}"), escaped(part.doing.text())];
        from = until;
        row
    });
    let parts = table(&[text("sheet-minute"), text("sheet-doing")], rows);
    page.section(text("sheet-course"), &parts);
    let said = |texts: &[Said]| list(texts.iter().map(Said::text));
    for (heading, texts) in [
        (text("sheet-fetch"), &plan.fetch),
        (text("sheet-goes-wrong"), &plan.goes_wrong),
    ] {
        if !texts.is_empty() {
            page.section(heading, &said(texts));
        }
    }
    if !plan.classroom_answers.is_empty() {
        let rows = plan.classroom_answers.iter();
        let rows = rows.map(|it| vec![escaped(it.said.text()), escaped(it.reply.text())]);
        let answers = table(&[text("sheet-said"), text("sheet-reply")], rows);
        page.section(text("sheet-classroom-answers"), &answers);
    }
    if !plan.curricula.is_empty() {
        page.section(text("sheet-curricula"), &said(&plan.curricula));
    }
    let cautions = cautions(lesson);
    if !cautions.is_empty() {
        page.section(text("sheet-cautions"), &list(cautions));
    }
    page.finished()
}
