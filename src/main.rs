//! The page.

fn main() {
    #[cfg(target_arch = "wasm32")]
    construct();
    turns_aloft::page::run();
}

/// Runs the constructors of statics, as they are before `main` elsewhere. A linker for WebAssembly that
/// finds nobody doing so has every function called from JavaScript run them all once more: dozens of
/// times a frame.
#[cfg(target_arch = "wasm32")]
fn construct() {
    unsafe extern "C" {
        fn __wasm_call_ctors();
    }
    // SAFETY: called once, before anything else.
    unsafe { __wasm_call_ctors() }
}
