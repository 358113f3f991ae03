//! Every text that a person reads, by the name of its message.
//!
//! The messages stand in `assets/words/<language>/`, in the format of Project Fluent; what is a
//! number in them comes from [`decimal`], whose sign follows the language.

#[doc(hidden)]
pub use fluent_bundle;

use std::cell::Cell;
use std::sync::LazyLock;

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

/// The files of one language, in this order everywhere.
macro_rules! messages {
    ($language:literal) => {
        [
            include_str!(concat!("../../assets/words/", $language, "/scenario.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/analysis.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/session.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/panel.ftl")),
            include_str!(concat!("../../assets/words/", $language, "/page.ftl")),
        ]
    };
}

type Bundle = FluentBundle<FluentResource>;

static BUNDLES: LazyLock<[Bundle; 2]> = LazyLock::new(|| Language::ALL.map(bundle));

thread_local! {
    /// The page has one thread; tests that run beside each other have one each.
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

    /// The first of the wished-for tags ("de-CH", "en") that is written here, else English.
    pub fn of_tags<'a>(wished: impl IntoIterator<Item = &'a str>) -> Self {
        let of = |tag: &str| {
            let tag: LanguageIdentifier = tag.parse().ok()?;
            Self::ALL
                .into_iter()
                .find(|language| language.tag() == tag.language.as_str())
        };
        wished.into_iter().find_map(of).unwrap_or_default()
    }

    /// The texts of its files of messages.
    pub const fn sources(self) -> [&'static str; 5] {
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
}

/// The language spoken now.
pub fn language() -> Language {
    LANGUAGE.get()
}

/// Speaks another language from now on.
pub fn set_language(language: Language) {
    LANGUAGE.set(language);
}

fn bundle(language: Language) -> Bundle {
    let tag = language.tag().parse().expect("a language tag");
    let mut bundle = FluentBundle::new_concurrent(vec![tag]);
    // Both languages are written from left to right.
    bundle.set_use_isolating(false);
    for source in language.sources() {
        let resource = FluentResource::try_new(source.to_owned())
            .unwrap_or_else(|(_, faults)| panic!("{} messages: {faults:?}", language.tag()));
        bundle
            .add_resource(resource)
            .unwrap_or_else(|twice| panic!("{} messages: {twice:?}", language.tag()));
    }
    bundle
}

/// A message without values, by its name. Whoever keeps it says it in the language that is spoken
/// when it is read.
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
/// A name without a message gives the name; tests hold that there is none.
pub fn text(name: &'static str) -> &'static str {
    text_in(language(), name)
}

fn text_in(language: Language, name: &'static str) -> &'static str {
    let bundle = &BUNDLES[language as usize];
    let pattern = bundle.get_message(name).and_then(|message| message.value());
    match pattern.map(|pattern| bundle.format_pattern(pattern, None, &mut Vec::new())) {
        Some(std::borrow::Cow::Borrowed(text)) => text,
        _ => name,
    }
}

/// A message with its values; `say!` is the way to write it.
pub fn format(name: &str, values: &FluentArgs<'_>) -> String {
    let bundle = &BUNDLES[language() as usize];
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
/// Whole numbers may be given as such and choose a plural; others go through [`decimal`].
#[macro_export]
macro_rules! say {
    ($name:literal $(, $key:ident = $value:expr)+ $(,)?) => {{
        let mut values = $crate::fluent_bundle::FluentArgs::new();
        $(values.set(stringify!($key), $value);)+
        $crate::format($name, &values)
    }};
}

/// A number with so many decimals and the language's decimal sign.
pub fn decimal(value: f64, decimals: usize) -> String {
    with_decimal_sign(format!("{value:.decimals$}"))
}

/// The language's decimal sign in a number as a program writes it.
pub fn with_decimal_sign(number: String) -> String {
    match language().decimal_sign() {
        "." => number,
        sign => number.replace('.', sign),
    }
}

/// A number as somebody types it, with a point or a comma whatever is spoken, and with the minus
/// sign of print.
pub fn number(typed: &str) -> Option<f64> {
    let point = typed.trim().replace(',', ".").replace('−', "-");
    point.parse().ok().filter(|value: &f64| value.is_finite())
}
