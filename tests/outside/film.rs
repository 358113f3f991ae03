//! Prints what is read out of films' files, a line of JSON for each.

use std::fs::File;

use serde_json::json;

#[path = "../support/film.rs"]
mod support;

fn main() {
    for path in std::env::args_os().skip(1) {
        let file = File::open(&path).expect("a film's file");
        let (read, pieces, bytes) = support::read(file);
        let said = match read {
            Err(fault) => {
                json!({ "fault": format!("{fault:?}"), "pieces": pieces, "bytes": bytes })
            }
            Ok(times) => {
                let edit = times.edit();
                let in_edit: Vec<bool> = (0..times.frames()).map(|i| times.is_in_edit(i)).collect();
                let middles: Vec<f64> = (0..times.frames()).map(|i| times.middle_s(i)).collect();
                json!({
                    "codec": times.codec().name(),
                    "width": times.size_px()[0],
                    "height": times.size_px()[1],
                    "starts_s": times.starts_s(),
                    "middles_s": middles,
                    "end_s": times.end_s(),
                    "keys": times.keys(),
                    "offset_s": edit.offset_s,
                    "in_edit": in_edit,
                    "stored_rate_hz": times.stored_rate_hz(),
                    "capture_rate_hz": times.capture_rate_hz(),
                    "slow_motion": times.slow_motion(),
                    "pieces": pieces,
                    "bytes": bytes,
                })
            }
        };
        println!("{said}");
    }
}
