//! The measurements: of the physics natively, and of the page in a browser.

use crate::bundle;
use crate::checks::{PageTools, heading, page_tests};
use crate::command::{cargo, run};
use anyhow::Result;
use std::path::Path;

/// Runs the native benchmarks, then those of the page.
pub(crate) fn run_all(root: &Path) -> Result<()> {
    heading("native");
    run(
        cargo(root).args([
            "bench",
            "--locked",
            "--package",
            "noseward-stability",
            "--package",
            "noseward-link",
        ]),
        "mend what it names above",
    )?;

    heading("build");
    let tools = PageTools::prepare(root)?;
    bundle::build(root, &[])?;

    heading("page");
    // One at a time, or they would measure each other.
    run(
        page_tests(root, &tools)?.args([
            "--test",
            "bench",
            "--",
            "--ignored",
            "--nocapture",
            "--test-threads=1",
        ]),
        "mend what it names above",
    )
}
