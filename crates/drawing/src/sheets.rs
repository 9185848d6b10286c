//! The sheets of the place Paper: what a class writes on, cuts apart and hangs up.

mod record;
mod said;

pub use record::record;
