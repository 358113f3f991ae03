//! What the command prints, when it goes well.

use crate::command::aloft;

#[track_caller]
pub fn printed(arguments: &[&str]) -> String {
    let output = aloft(arguments);
    let why = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{arguments:?}: {why}");
    String::from_utf8(output.stdout).expect("it prints text")
}
