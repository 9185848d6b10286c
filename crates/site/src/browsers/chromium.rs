//! Chromium.

use super::Told;
use crate::programs::Programs;
use anyhow::Result;

const PROGRAMS: Programs<'static> = Programs {
    names: &[&["chromium", "chromium-browser", "google-chrome"], &["chromedriver"]],
    packages: &["chromium", "chromium-driver"],
    remedy: "the page tests need the programs `chromium` (or `google-chrome`) and \
             `chromedriver` of the same version on the search path; install both",
};

/// Finds Chromium and its driver; installs them on Debian.
pub(super) fn prepare() -> Result<Vec<Told>> {
    let names = ["NOSEWARD_CHROMIUM", "NOSEWARD_CHROMEDRIVER"];
    Ok(names.into_iter().zip(PROGRAMS.prepare()?).collect())
}
