//! Formats results, and reports errors of writing them.

use std::io::{self, ErrorKind};

use serde::Serialize;

/// Formats as JSON.
pub fn printed(what: &impl Serialize) -> Result<String, String> {
    let json = serde_json::to_string_pretty(what).map_err(|why| why.to_string())?;
    Ok(format!("{json}\n"))
}

/// Turns an error of writing `what` into a sentence.
pub fn written(what: &str, outcome: io::Result<()>) -> Result<(), String> {
    match outcome {
        // A reader that stops early, such as `head`, is not an error.
        Err(why) if why.kind() != ErrorKind::BrokenPipe => {
            Err(format!("{what} cannot be written: {why}"))
        }
        Ok(()) | Err(_) => Ok(()),
    }
}
