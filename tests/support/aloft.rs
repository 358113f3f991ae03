//! The command, run as a user runs it.

use std::process::{Command, Output};

pub fn aloft(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_aloft"))
        .args(arguments)
        .output()
        .expect("the command runs")
}
