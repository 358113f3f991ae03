//! Every text shown to people, by the name of its message.
//!
//! The messages are in `assets/words/<language>/`, in the format of Project Fluent. Numbers in them
//! are formatted by [`decimal`] with the language's decimal sign.

#[doc(hidden)]
pub use fluent_bundle;

use std::cell::Cell;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use serde::{Deserialize, Serialize, Serializer};
use unic_langid::LanguageIdentifier;

/// A language in which every message is written.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum Language {
    #[default]
    #[serde(rename = "en")]
    English,
    #[serde(rename = "de")]
    German,
}

/// The files of one language. The page fetches them, put together, and has none of them in its module.
#[cfg(not(target_arch = "wasm32"))]
macro_rules! messages {
    ($language:literal) => {
        [
            include_str!(concat!("../../assets/words/", $language, "/scenario.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/analysis.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/trace.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/turntable.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/overlay.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/film.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/session.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/picture.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/panel.ftl")),
            include_str!(concat!(
                "../../assets/words/",
                $language,
                "/slow_flight.ftl"
            )),
            include_str!(concat!("../../assets/words/", $language, "/lesson.ftl")),
            include_str!(concat!(
                "../../assets/words/",
                $language,
                "/lesson_page.ftl"
            )),
            include_str!(concat!("../../assets/words/", $language, "/sheet.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/page.ftl")),
        ]
    };
}

type Bundle = FluentBundle<FluentResource>;

static BUNDLES: [OnceLock<Bundle>; 2] = [OnceLock::new(), OnceLock::new()];

thread_local! {
    /// Per thread: the page has one thread, and parallel tests one each.
    static LANGUAGE: Cell<Language> = const { Cell::new(Language::English) };
}

impl Language {
    pub const ALL: [Self; 2] = [Self::English, Self::German];

    /// Its tag (BCP 47).
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// Its name in the language itself.
    pub const fn name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::German => "Deutsch",
        }
    }

    /// The language of the first preferred tag ("de-CH", "en") that has messages, else English.
    pub fn of_tags<'a>(preferred: impl IntoIterator<Item = &'a str>) -> Self {
        let of = |tag: &str| {
            let tag: LanguageIdentifier = tag.parse().ok()?;
            Self::ALL
                .into_iter()
                .find(|language| language.tag() == tag.language.as_str())
        };
        preferred.into_iter().find_map(of).unwrap_or_default()
    }

    /// The contents of its message files.
    #[cfg(not(target_arch = "wasm32"))]
    pub const fn sources(self) -> [&'static str; 14] {
        match self {
            Self::English => messages!("en"),
            Self::German => messages!("de"),
        }
    }

    const fn decimal_sign(self) -> &'static str {
        match self {
            Self::English => ".",
            Self::German => ",",
        }
    }

    /// Between the columns of a table for a spreadsheet: a comma may already be the decimal sign.
    const fn column_separator(self) -> &'static str {
        match self {
            Self::English => ",",
            Self::German => ";",
        }
    }
}

/// The current language.
pub fn language() -> Language {
    LANGUAGE.get()
}

/// Sets the current language.
pub fn set_language(language: Language) {
    LANGUAGE.set(language);
}

/// Why messages can't be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Faulty(pub String);

/// The messages of a language, in the format of Project Fluent.
///
/// # Errors
/// If they are not in that format, or one of them stands twice.
fn bundle<'a>(
    language: Language,
    sources: impl IntoIterator<Item = &'a str>,
) -> Result<Bundle, Faulty> {
    let tag = language.tag().parse().expect("a language tag");
    let mut bundle = FluentBundle::new_concurrent(vec![tag]);
    // Both languages are written from left to right.
    bundle.set_use_isolating(false);
    for source in sources {
        let resource = FluentResource::try_new(source.to_owned());
        let resource = resource.map_err(|(_, faults)| Faulty(format!("{faults:?}")))?;
        let added = bundle.add_resource(resource);
        added.map_err(|twice| Faulty(format!("{twice:?}")))?;
    }
    Ok(bundle)
}

/// Takes the messages of a language, once; those of later calls are of no account.
///
/// # Errors
/// What is wrong with them.
pub fn provide(language: Language, messages: &str) -> Result<(), Faulty> {
    let bundle = bundle(language, [messages])?;
    BUNDLES[language as usize].set(bundle).ok();
    Ok(())
}

/// Whether there are messages in a language.
pub fn has(language: Language) -> bool {
    messages_of(language).is_some()
}

#[cfg(target_arch = "wasm32")]
fn messages_of(language: Language) -> Option<&'static Bundle> {
    BUNDLES[language as usize].get()
}

#[cfg(not(target_arch = "wasm32"))]
fn messages_of(language: Language) -> Option<&'static Bundle> {
    let embedded = || bundle(language, language.sources()).expect("tests have read them");
    Some(BUNDLES[language as usize].get_or_init(embedded))
}

/// The messages of the current language; until those are there, of another one.
fn messages() -> Option<&'static Bundle> {
    let others = Language::ALL.into_iter().find_map(messages_of);
    messages_of(language()).or(others)
}

/// A message without values, by its name. Stored instead of its text, so that it is shown in the
/// language current at that time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Message(pub &'static str);

impl Message {
    pub fn text(self) -> &'static str {
        text(self.0)
    }
}

impl Serialize for Message {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.text())
    }
}

/// A message without values.
///
/// Returns the name where there is no such message; tests check that this never happens.
pub fn text(name: &'static str) -> &'static str {
    let Some(bundle) = messages() else {
        return name;
    };
    let pattern = bundle.get_message(name).and_then(|message| message.value());
    match pattern.map(|pattern| bundle.format_pattern(pattern, None, &mut Vec::new())) {
        Some(std::borrow::Cow::Borrowed(text)) => text,
        _ => name,
    }
}

/// Formats a message with values; called through `say!`.
pub fn format(name: &str, values: &FluentArgs<'_>) -> String {
    let Some(bundle) = messages() else {
        return name.to_owned();
    };
    let pattern = bundle.get_message(name).and_then(|message| message.value());
    pattern.map_or_else(
        || name.to_owned(),
        |pattern| {
            bundle
                .format_pattern(pattern, Some(values), &mut Vec::new())
                .into_owned()
        },
    )
}

/// A message with its values: `say!("turns-missing", turns = decimal(missing, 2))`.
///
/// Integers can be passed as they are and select a plural form; other numbers go through
/// [`decimal`].
#[macro_export]
macro_rules! say {
    ($name:literal $(, $key:ident = $value:expr)+ $(,)?) => {{
        let mut values = $crate::fluent_bundle::FluentArgs::new();
        $(values.set(stringify!($key), $value);)+
        $crate::format($name, &values)
    }};
}

/// Formats a number with this many decimals and the current language's decimal sign.
pub fn decimal(value: f64, decimals: usize) -> String {
    with_decimal_sign(format!("{value:.decimals$}"))
}

/// Replaces the decimal point of a formatted number by the current language's decimal sign.
pub fn with_decimal_sign(number: String) -> String {
    match language().decimal_sign() {
        "." => number,
        sign => number.replace('.', sign),
    }
}

/// What separates the columns of a table for a spreadsheet.
pub fn column_separator() -> &'static str {
    language().column_separator()
}

/// Parses a typed number: decimal point or comma in any language, and hyphen or minus sign. None if
/// it is not a finite number.
pub fn number(typed: &str) -> Option<f64> {
    let point = typed.trim().replace(',', ".").replace('−', "-");
    point.parse().ok().filter(|value: &f64| value.is_finite())
}
