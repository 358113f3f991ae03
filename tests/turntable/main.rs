//! The turntable: worked examples, what a person on it does, friction, leading by hand, programmes.

mod derived;
mod drawn;
mod friction;
mod led;
mod person;
mod programme;
mod slowing;
mod textbook;
