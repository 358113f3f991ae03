//! The flights of work.rs and the fits of fits.rs for the browser: a module without imports, which in_browser.py loads.

mod fits;
mod work;

use std::cell::RefCell;

use fits::Fits;
use work::{Call, Work};

/// The same starting point as in `web/bench`.
const START: &str = "four-turns";

thread_local! {
    static FITS: Fits = Fits::new();
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

/// Fits so many times: all that the marks say, or with `first` the likeliest jump after a mark was moved;
/// returns the sum of the turns.
// SAFETY: nothing else in the module has this name.
#[unsafe(no_mangle)]
pub extern "C" fn fit(first: u32, calls: u32) -> f64 {
    let turns = |fits: &Fits| match first {
        0 => fits.whole().best.air_turns,
        _ => fits.first(),
    };
    FITS.with(|fits| (0..calls).map(|_| turns(fits)).sum())
}
