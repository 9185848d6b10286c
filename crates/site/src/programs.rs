//! Browsers and other programs that the tests need, on the search path.

use crate::command::find_program;
use crate::debian;
use anyhow::{Context, Result, bail};
use std::path::PathBuf;

/// Programs a person may have under one of several names, and Debian in a package.
#[derive(Debug)]
pub(crate) struct Programs<'a> {
    /// For each program its names, in the order in which they are looked for.
    pub(crate) names: &'a [&'a [&'a str]],
    /// Debian's packages with them.
    pub(crate) packages: &'a [&'a str],
    /// What to do where no package can be installed.
    pub(crate) remedy: &'static str,
}

impl Programs<'_> {
    /// The places of the programs, after installing them if one is missing.
    pub(crate) fn prepare(&self) -> Result<Vec<PathBuf>> {
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
