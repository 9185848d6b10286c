//! Programs that others wrote read and draw the project's PDFs.

use crate::command::{cargo, run};
use crate::programs::Programs;
use anyhow::Result;
use std::path::Path;

/// The package of the tests.
pub(crate) const TESTS: &str = "noseward-paper-tests";

const PROGRAMS: Programs<'static> = Programs {
    names: &[&["pdfinfo"], &["pdftotext"], &["pdftoppm"], &["qpdf"]],
    packages: &["poppler-utils", "qpdf"],
    remedy: "the paper tests need the programs `pdfinfo`, `pdftotext` and `pdftoppm` of \
             poppler, and `qpdf`, on the search path; install both",
};

/// Finds poppler and qpdf; installs them on Debian.
pub(crate) fn prepare() -> Result<()> {
    PROGRAMS.prepare().map(drop)
}

/// Runs the tests.
pub(crate) fn check(root: &Path) -> Result<()> {
    run(
        cargo(root).args(["test", "--locked", "--package", TESTS]),
        "a failed test is named above; the PDFs are in target/paper-tests/",
    )
}
