//! The command beside the page: flies the very same scenario files.

#[cfg(not(target_arch = "wasm32"))]
mod budget;
#[cfg(not(target_arch = "wasm32"))]
mod chosen;
#[cfg(not(target_arch = "wasm32"))]
mod command;
#[cfg(not(target_arch = "wasm32"))]
mod compare;
#[cfg(not(target_arch = "wasm32"))]
mod fly;
#[cfg(not(target_arch = "wasm32"))]
mod goal;
#[cfg(not(target_arch = "wasm32"))]
mod link;
#[cfg(not(target_arch = "wasm32"))]
mod map;
#[cfg(not(target_arch = "wasm32"))]
mod output;
#[cfg(not(target_arch = "wasm32"))]
mod steps;

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    command::main()
}

/// The page is the browser's; the command has no business there.
#[cfg(target_arch = "wasm32")]
fn main() {}
