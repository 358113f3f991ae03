//! Pages of HTML: what they have in common, and how texts get into them.

use std::fmt::{Display, Write as _};

use turns_aloft_picture::code_svg;
use turns_aloft_words::{language, text};

/// How a sheet looks; the page's content security policy names it by its hash (`web/finish.py`). The browser's own paper is taken; nothing is coloured that has to be read.
const STYLE: &str = include_str!("../../assets/sheet.css");

/// A page that is put together.
pub struct Page {
    title: String,
    body: String,
}

impl Page {
    pub fn new(title: &str) -> Self {
        Self {
            title: title.to_owned(),
            body: String::new(),
        }
    }

    /// Title and what stands below it, with the code of an address beside them, where there is one.
    pub fn header(&mut self, above: &str, below: &str, code: Option<String>) {
        let title = escaped(&self.title);
        self.html(format_args!(
            "<header><div><p class=\"weak\">{}</p><h1>{title}</h1>{below}</div>{}</header>",
            escaped(above),
            code.unwrap_or_default()
        ));
    }

    /// A section with its heading; what is in it is HTML already.
    pub fn section(&mut self, heading: &str, content: &str) {
        self.html(format_args!(
            "<section><h2>{}</h2>{content}</section>",
            escaped(heading)
        ));
    }

    pub fn html(&mut self, html: impl Display) {
        write!(self.body, "{html}").expect("writing to a string does not fail");
    }

    /// What stands at the end of every sheet, and the whole page.
    pub fn finished(mut self) -> String {
        self.html(format_args!(
            "<footer><p>Turns Aloft. {} {}</p></footer>",
            escaped(text("panel-simulation")),
            escaped(text("sheet-invented"))
        ));
        format!(
            "<!doctype html>\n<html lang=\"{}\">\n<head><meta charset=\"utf-8\">\
             <meta name=\"viewport\" content=\"width=device-width\">\
             <title>{}</title><style>{STYLE}</style></head>\n<body><main>{}</main></body>\n</html>\n",
            language().tag(),
            escaped(&self.title),
            self.body
        )
    }
}

/// A text as HTML shows it.
pub fn escaped(text: &str) -> String {
    let mut html = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => html.push_str("&amp;"),
            '<' => html.push_str("&lt;"),
            '>' => html.push_str("&gt;"),
            '"' => html.push_str("&quot;"),
            letter => html.push(letter),
        }
    }
    html
}

/// A paragraph of text.
pub fn paragraph(text: &str) -> String {
    format!("<p>{}</p>", escaped(text))
}

/// A name before a text.
pub fn named(name: &str, text: &str) -> String {
    format!("<p><b>{}:</b> {}</p>", escaped(name), escaped(text))
}

/// A list of texts; nothing where there is none.
pub fn list<T: AsRef<str>>(texts: impl IntoIterator<Item = T>) -> String {
    let items: String = texts
        .into_iter()
        .map(|it| format!("<li>{}</li>", escaped(it.as_ref())))
        .collect();
    if items.is_empty() {
        items
    } else {
        format!("<ul>{items}</ul>")
    }
}

/// Lines to write on.
pub fn lines(count: usize) -> String {
    "<div class=\"line\"></div>".repeat(count)
}

/// A table with a heading; cells are HTML already.
pub fn table(heading: &[&str], rows: impl IntoIterator<Item = Vec<String>>) -> String {
    classed_table("", heading, rows)
}

/// The same, with a class by which it looks otherwise.
pub fn classed_table(
    class: &str,
    heading: &[&str],
    rows: impl IntoIterator<Item = Vec<String>>,
) -> String {
    let heads: String = heading
        .iter()
        .map(|it| format!("<th scope=\"col\">{}</th>", escaped(it)))
        .collect();
    let rows: String = rows
        .into_iter()
        .map(|cells| {
            let cells: String = cells
                .iter()
                .map(|cell| format!("<td>{cell}</td>"))
                .collect();
            format!("<tr>{cells}</tr>")
        })
        .collect();
    format!("<table class=\"{class}\"><thead><tr>{heads}</tr></thead><tbody>{rows}</tbody></table>")
}

/// The code of an address, where there is one and it is short enough.
pub fn code(address: Option<&str>) -> Option<String> {
    code_svg(address?, text("sheet-open-it"))
}
