//! Pages of HTML: what they have in common, and how texts get into them.

use std::fmt::{Display, Write as _};

use turns_aloft_picture::code_svg;
use turns_aloft_words::{language, text};

/// How a sheet looks. The browser's own paper is taken; nothing is coloured that has to be read.
const STYLE: &str = "\
@page{margin:11mm}\
*{box-sizing:border-box}\
html{font:10.2pt/1.32 system-ui,'Segoe UI',Helvetica,Arial,sans-serif;color:#000;background:#fff}\
body{max-width:190mm;margin:0 auto;padding:6mm 4mm}\
@media print{body{padding:0;max-width:none}}\
h1{font-size:17pt;margin:0 0 1mm}\
h2{font-size:11.5pt;margin:0 0 1mm;padding:.5mm 1.6mm;background:#e4e4e4;print-color-adjust:exact;-webkit-print-color-adjust:exact}\
p,ul,ol,dl,figure{margin:0 0 1.2mm}\
ul,ol{padding-left:5mm}\
header{display:flex;gap:6mm;justify-content:space-between;align-items:flex-start;margin-bottom:3mm}\
header svg{width:26mm;height:26mm;flex:none}\
section{break-inside:avoid;margin:0 0 3.6mm}\
.weak{color:#333}\
.line{border-bottom:.25mm solid #000;height:7mm}\
.line+p{margin-top:1.8mm}\
.fill{display:inline-block;border-bottom:.25mm solid #000;min-width:32mm}\
.wide{min-width:60mm}\
.options{list-style:none;padding:0;display:flex;flex-wrap:wrap;gap:.4mm 6mm}\
.options li::before{content:'';display:inline-block;width:3.2mm;height:3.2mm;border:.35mm solid #000;margin-right:2mm;vertical-align:-.3mm}\
.options li.right::before{border-width:1.6mm}\
.right{font-weight:700}\
.pictures{display:flex;gap:8mm;list-style:none;padding:0}\
.pictures li{text-align:center;flex:0 1 34mm}\
.pictures svg{height:30mm;width:auto;max-width:100%;display:block;margin:0 auto}\
.pictures svg.sign{height:18mm;margin:2mm auto}\
table{border-collapse:collapse;width:100%;margin:0 0 1.2mm}\
th,td{border:.25mm solid #000;padding:.8mm 1.6mm;text-align:left;vertical-align:top}\
th{font-weight:600}\
td:empty{height:7mm}\
.needed th:nth-child(1){width:27%}\
.needed th:nth-child(2){width:37%}\
.chart svg{width:100%;max-width:150mm;height:auto;display:block}\
.strip svg{width:100%;height:auto;max-height:58mm}\
.turns{font-size:34pt;font-weight:700;line-height:1;margin:0}\
footer{border-top:.3mm solid #000;padding-top:1mm;font-size:8.6pt}\
";

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
