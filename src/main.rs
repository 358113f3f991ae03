//! The page.

fn main() {
    #[cfg(target_arch = "wasm32")]
    construct();
    turns_aloft::page::run();
}

/// Runs the constructors of statics, which on other targets run before `main`. If the module does
/// not call them itself, the WebAssembly linker makes every function exported to JavaScript run
/// them at each call: dozens of times a frame.
#[cfg(target_arch = "wasm32")]
fn construct() {
    unsafe extern "C" {
        fn __wasm_call_ctors();
    }
    // SAFETY: called once, before anything else.
    unsafe { __wasm_call_ctors() }
}
