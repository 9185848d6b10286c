//! The browser of the page tests.

use crate::command::find_program;
use crate::debian;
use anyhow::{Result, bail};
use std::path::PathBuf;

/// A browser and the program that drives it.
#[derive(Debug)]
pub(crate) struct Chromium {
    /// The browser.
    pub(crate) browser: PathBuf,
    /// Its driver, of the same version.
    pub(crate) driver: PathBuf,
}

/// Finds Chromium and its driver; installs them on Debian.
pub(crate) fn find() -> Result<Chromium> {
    if let Some(found) = on_path() {
        return Ok(found);
    }
    if debian::is_here() {
        debian::install(&["chromium", "chromium-driver"])?;
        if let Some(found) = on_path() {
            return Ok(found);
        }
    }
    bail!(
        "the page tests need the programs `chromium` (or `google-chrome`) and \
         `chromedriver` of the same version on the search path; install both"
    )
}

fn on_path() -> Option<Chromium> {
    let browser = find_program(&["chromium", "chromium-browser", "google-chrome"])?;
    let driver = find_program(&["chromedriver"])?;
    Some(Chromium { browser, driver })
}
