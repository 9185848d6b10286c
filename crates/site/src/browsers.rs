//! The browsers of the page tests, one for each engine, and what drives them.

mod chromium;
mod firefox;
mod webkit;

use anyhow::Result;
use std::path::{Path, PathBuf};

/// A name under which the page tests look for a program, and where it is.
type Told = (&'static str, PathBuf);

/// Every browser of the page tests.
#[derive(Debug)]
pub(crate) struct Browsers {
    told: Vec<Told>,
    skipped: Vec<&'static str>,
}

impl Browsers {
    /// Finds the browsers and their drivers; installs on Debian what is missing.
    pub(crate) fn prepare(root: &Path) -> Result<Self> {
        let mut told = chromium::prepare()?;
        told.extend(firefox::prepare(root)?);
        let mut skipped = Vec::new();
        if webkit::is_for_this_system() {
            told.extend(webkit::prepare()?);
        } else {
            println!("(WebKitGTK runs on Linux alone: its tests are left out here)");
            skipped.push("webkit");
        }
        Ok(Self { told, skipped })
    }

    /// What the page tests are told about the programs.
    pub(crate) fn environment(&self) -> &[Told] {
        &self.told
    }

    /// Parts of the names of tests that cannot run on this system.
    pub(crate) fn skipped(&self) -> &[&'static str] {
        &self.skipped
    }
}
