//! What the command says where it refuses something: one line, and nothing printed.

use crate::command::aloft;

#[track_caller]
pub fn refused(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    assert_eq!(output.stdout, b"", "{arguments:?}");
    let said = String::from_utf8(output.stderr).expect("it says text");
    assert_eq!(said.lines().count(), 1, "{said}");
    said
}
