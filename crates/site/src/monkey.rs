//! Many runs of the tests that press and type without aim. Each check of the page has a
//! few; here somebody chooses how many, and with which seed they begin.

use crate::bundle;
use crate::checks::{PageTools, heading, page_tests};
use crate::command::run;
use anyhow::{Context, Result};
use std::path::Path;

/// Runs when none are asked for: some minutes.
const RUNS: u32 = 40;

/// Builds the page and lets the monkey loose on it: `arguments` are the number of runs and
/// the first seed.
pub(crate) fn run_all(root: &Path, arguments: &[&str]) -> Result<()> {
    let number = |place: usize, otherwise: u32| match arguments.get(place) {
        Some(text) => text.parse().with_context(|| {
            format!("`{text}` is no whole number: monkey [runs] [seed]")
        }),
        None => Ok(otherwise),
    };
    let (runs, seed) = (number(0, RUNS)?, number(1, 1)?);
    heading("build");
    let tools = PageTools::prepare(root)?;
    bundle::build(root, &[])?;

    heading("monkey");
    run(
        page_tests(root, &tools)?
            .env("NOSEWARD_RUNS", runs.to_string())
            .env("NOSEWARD_SEED", seed.to_string())
            .args(["--test", "monkey", "--", "--nocapture", "--test-threads=2"]),
        "the seed that failed is named above: cargo run -- monkey 1 SEED tells it again",
    )
}
