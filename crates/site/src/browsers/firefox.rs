//! Firefox, and its driver from crates.io.

use super::Told;
use crate::programs::Programs;
use crate::tool::Tool;
use anyhow::Result;
use std::path::Path;

const FIREFOX: Programs<'static> = Programs {
    names: &[&["firefox-esr", "firefox"]],
    packages: &["firefox-esr"],
    remedy: "the page tests need the program `firefox` (or `firefox-esr`) on the \
             search path; install Firefox",
};

const DRIVER: Tool = Tool {
    name: "geckodriver",
    version: "0.37.1",
    ask: &["--version"],
    remedy: "it drives Firefox: a C compiler and, this once, a network are needed",
    settings: &[],
};

/// Finds Firefox and its driver; installs Firefox on Debian, builds the driver
/// anywhere.
pub(super) fn prepare(root: &Path) -> Result<Vec<Told>> {
    let mut told: Vec<Told> =
        FIREFOX.prepare()?.into_iter().map(|path| ("NOSEWARD_FIREFOX", path)).collect();
    told.push(("NOSEWARD_GECKODRIVER", DRIVER.prepare(root)?));
    Ok(told)
}
