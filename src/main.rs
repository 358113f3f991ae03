//! The page.

fn main() {
    turns_aloft::page::run();
}
