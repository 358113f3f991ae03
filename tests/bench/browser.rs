//! The flights of work.rs for the browser: a module without imports, which in_browser.py loads.

mod work;

use std::cell::RefCell;

use work::{Call, Work};

/// The same starting point as in `web/bench`.
const START: &str = "four-turns";

thread_local! {
    static WORK: RefCell<Work> = RefCell::new(Work::new(START).expect("a starting point"));
}

/// Makes `calls` calls of the kind with index `which` in `Call::ALL`; returns the sum of the turns.
///
/// # Panics
/// If there is no such index.
// SAFETY: nothing else in the module has this name.
#[unsafe(no_mangle)]
pub extern "C" fn fly(which: u32, calls: u32) -> f64 {
    let call = Call::ALL[which as usize];
    WORK.with_borrow_mut(|work| (0..calls).map(|_| work.call(call)).sum())
}
