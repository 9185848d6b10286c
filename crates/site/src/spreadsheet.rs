//! A real spreadsheet program opens and saves the tables of a notebook.

use crate::command::{cargo, run};
use crate::programs::Programs;
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};

/// The package of the tests.
pub(crate) const TESTS: &str = "noseward-spreadsheet-tests";

const PROGRAMS: Programs<'static> = Programs {
    names: &[&["soffice", "libreoffice"]],
    packages: &["libreoffice-calc-nogui"],
    remedy: "the spreadsheet tests need the program `soffice` (or `libreoffice`) on the \
             search path; install LibreOffice with Calc",
};

/// Finds LibreOffice; installs it on Debian.
pub(crate) fn prepare() -> Result<PathBuf> {
    PROGRAMS.prepare()?.pop().context(PROGRAMS.remedy)
}

/// Runs the tests with this program.
pub(crate) fn check(root: &Path, program: &Path) -> Result<()> {
    run(
        cargo(root)
            .args(["test", "--locked", "--package", TESTS])
            .env("NOSEWARD_SOFFICE", program),
        "a failed test is named above; what the program made is in target/tmp/",
    )
}
