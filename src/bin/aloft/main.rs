//! The command: flies the same scenario files as the page.

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
mod lesson;
#[cfg(not(target_arch = "wasm32"))]
mod link;
#[cfg(not(target_arch = "wasm32"))]
mod map;
#[cfg(not(target_arch = "wasm32"))]
mod measure;
#[cfg(not(target_arch = "wasm32"))]
mod output;
#[cfg(not(target_arch = "wasm32"))]
mod picture;
#[cfg(not(target_arch = "wasm32"))]
mod sheet;
#[cfg(not(target_arch = "wasm32"))]
mod steps;
#[cfg(not(target_arch = "wasm32"))]
mod turn_try;
#[cfg(not(target_arch = "wasm32"))]
mod turntable;

#[cfg(not(target_arch = "wasm32"))]
fn main() -> std::process::ExitCode {
    command::main()
}

/// There is no command in the browser; the target only has to compile.
#[cfg(target_arch = "wasm32")]
fn main() {}
