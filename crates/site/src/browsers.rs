//! The browsers of the page tests, one for each engine, and what drives them.

mod chromium;
mod firefox;
mod webkit;

use crate::command::find_program;
use crate::debian;
use anyhow::{Context, Result, bail};
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

/// Programs a person may have under one of several names, and Debian in a package.
struct Programs<'a> {
    /// For each program its names, in the order in which they are looked for.
    names: &'a [&'a [&'a str]],
    packages: &'a [&'a str],
    /// What to do where no package can be installed.
    remedy: &'static str,
}

impl Programs<'_> {
    /// The places of the programs, after installing them if one is missing.
    fn prepare(&self) -> Result<Vec<PathBuf>> {
        if let Some(found) = self.on_path() {
            return Ok(found);
        }
        if debian::is_here() {
            debian::install(self.packages).context(self.remedy)?;
            if let Some(found) = self.on_path() {
                return Ok(found);
            }
        }
        bail!("{}", self.remedy)
    }

    fn on_path(&self) -> Option<Vec<PathBuf>> {
        self.names.iter().map(|names| find_program(names)).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn programs_are_found_only_together() {
        let find = |names| Programs { names, packages: &[], remedy: "" }.on_path();
        assert_eq!(find(&[&["no-such-program", "cargo"]]).unwrap().len(), 1);
        assert!(find(&[&["cargo"], &["no-such-program"]]).is_none());
    }
}
