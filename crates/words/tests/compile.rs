//! Runs the tests beside what the build compiles sentences with.

#[allow(dead_code, reason = "the crate itself uses the rest")]
#[path = "../src/code.rs"]
mod code;
#[path = "../compile/mod.rs"]
mod compile;
#[allow(dead_code, unreachable_pub, reason = "the crate itself uses the rest")]
#[path = "../src/languages.rs"]
mod languages;
#[allow(dead_code, unreachable_pub, reason = "the crate itself uses the rest")]
#[path = "../src/mark.rs"]
mod mark;
