//! The messages of a language, read by Fluent's own parser.

use std::collections::{BTreeMap, BTreeSet};

use fluent_syntax::ast::{
    CallArguments, Entry, Expression, InlineExpression, Pattern, PatternElement,
};
use fluent_syntax::parser::parse;

use turns_aloft::words::Language;

/// What there is to know of one message.
#[derive(Debug, Default)]
pub struct Message {
    /// The names of its values, wherever in it they stand.
    pub values: BTreeSet<String>,
    /// The values that choose between its variants.
    pub chosen_by: BTreeSet<String>,
    pub attributes: BTreeSet<String>,
    /// Other messages and terms that it uses.
    pub refers_to: BTreeSet<String>,
    /// The whole text, where there is nothing else in it.
    pub plain: Option<String>,
}

/// Those of all files; a message that stands twice is a fault.
pub fn all_messages(language: Language) -> Result<BTreeMap<String, Message>, String> {
    let mut all = BTreeMap::new();
    for source in language.sources() {
        let file = parse(source).map_err(|(_, faults)| format!("{faults:?}"))?;
        for entry in file.body {
            match entry {
                Entry::Message(message) => {
                    let id = message.id.name.to_owned();
                    let mut read = Message::default();
                    for attribute in &message.attributes {
                        read.attributes.insert(attribute.id.name.to_owned());
                        read.read(&attribute.value);
                    }
                    let value = message.value.ok_or(format!("{id} says nothing"))?;
                    read.read(&value);
                    read.plain = plain(&value);
                    if all.insert(id.clone(), read).is_some() {
                        return Err(format!("{id} stands twice"));
                    }
                }
                Entry::Junk { content } => return Err(content.to_owned()),
                Entry::Term(term) => return Err(format!("{} is a term", term.id.name)),
                _ => {}
            }
        }
    }
    Ok(all)
}

fn plain(pattern: &Pattern<&str>) -> Option<String> {
    let texts: Option<Vec<&str>> = pattern
        .elements
        .iter()
        .map(|element| match element {
            PatternElement::TextElement { value } => Some(*value),
            PatternElement::Placeable { .. } => None,
        })
        .collect();
    texts.map(|texts| texts.concat())
}

impl Message {
    fn read(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            if let PatternElement::Placeable { expression } = element {
                self.read_expression(expression);
            }
        }
    }

    fn read_expression(&mut self, expression: &Expression<&str>) {
        match expression {
            Expression::Inline(inline) => self.read_inline(inline),
            Expression::Select { selector, variants } => {
                if let InlineExpression::VariableReference { id } = selector {
                    self.chosen_by.insert(id.name.to_owned());
                }
                self.read_inline(selector);
                for variant in variants {
                    self.read(&variant.value);
                }
            }
        }
    }

    fn read_inline(&mut self, inline: &InlineExpression<&str>) {
        match inline {
            InlineExpression::VariableReference { id } => {
                self.values.insert(id.name.to_owned());
            }
            InlineExpression::MessageReference { id, .. } => {
                self.refers_to.insert(id.name.to_owned());
            }
            InlineExpression::TermReference { id, arguments, .. } => {
                self.refers_to.insert(id.name.to_owned());
                self.read_arguments(arguments.as_ref());
            }
            InlineExpression::FunctionReference { arguments, .. } => {
                self.read_arguments(Some(arguments));
            }
            InlineExpression::Placeable { expression } => self.read_expression(expression),
            InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
        }
    }

    fn read_arguments(&mut self, arguments: Option<&CallArguments<&str>>) {
        for argument in arguments.into_iter().flat_map(|all| &all.positional) {
            self.read_inline(argument);
        }
        for argument in arguments.into_iter().flat_map(|all| &all.named) {
            self.read_inline(&argument.value);
        }
    }
}
