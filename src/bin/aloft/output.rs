//! What the command writes.

use std::io::{self, ErrorKind};

use serde::Serialize;

/// As JSON.
pub fn printed(what: &impl Serialize) -> Result<String, String> {
    let json = serde_json::to_string_pretty(what).map_err(|why| why.to_string())?;
    Ok(format!("{json}\n"))
}

/// Whether it has been written, or why not.
pub fn written(what: &str, outcome: io::Result<()>) -> Result<(), String> {
    match outcome {
        // A reader that stops early, such as `head`, is no fault.
        Err(why) if why.kind() != ErrorKind::BrokenPipe => {
            Err(format!("{what} cannot be written: {why}"))
        }
        Ok(()) | Err(_) => Ok(()),
    }
}
