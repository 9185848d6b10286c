//! DuckDB merges the results of many schools, as the page would.
//!
//! It comes from `PyPI` into target/, in one exact version whose content is checked, and stays
//! there: later runs need no network.

use crate::command::{cargo, find_program, output, run};
use crate::debian;
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};
use std::process::Command;

/// The package of the tests.
pub(crate) const TESTS: &str = "noseward-many-schools-tests";

/// The version in `requirements.txt`.
const VERSION: &str = "2.0.1";
const REQUIREMENTS: &str = "tests/many-schools/requirements.txt";
const REMEDY: &str = "it brings DuckDB: Python 3.10 or newer with `venv` and, this once, a \
                      network are needed";

/// Gives the Python that has DuckDB, after bringing it if it is missing.
pub(crate) fn prepare(root: &Path) -> Result<PathBuf> {
    let folder = root.join("target/tools").join(format!("duckdb-{VERSION}"));
    let python =
        folder.join(if cfg!(windows) { "Scripts/python.exe" } else { "bin/python" });
    if !is_at(&python) {
        make_environment(&folder)?;
        run(
            Command::new(&python)
                .current_dir(root)
                .args(["-m", "pip", "install", "--quiet", "--require-hashes"])
                .args(["--only-binary", ":all:", "--requirement", REQUIREMENTS]),
            REMEDY,
        )?;
    }
    Ok(python)
}

/// Whether a Python has DuckDB in this version.
fn is_at(python: &Path) -> bool {
    let ask = "import duckdb; print(duckdb.__version__)";
    output(Command::new(python).args(["-c", ask])).as_deref() == Some(VERSION)
}

fn make_environment(folder: &Path) -> Result<()> {
    let make = || {
        let python = find_program(&["python3", "python"]).context(REMEDY)?;
        run(Command::new(python).args(["-m", "venv", "--clear"]).arg(folder), REMEDY)
    };
    let made = make();
    // Debian has Python without what makes environments.
    if made.is_err() && debian::is_here() {
        debian::install(&["python3-venv"]).context(REMEDY)?;
        return make();
    }
    made
}

/// Runs the tests with this Python.
pub(crate) fn check(root: &Path, python: &Path) -> Result<()> {
    run(
        cargo(root)
            .args(["test", "--locked", "--package", TESTS])
            .env("NOSEWARD_DUCKDB", python)
            .args(["--", "--nocapture"]),
        "a failed test is named above; the files and what was made of them are in target/tmp/",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_version_is_named_and_its_content_known() {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..").join(REQUIREMENTS);
        let text = std::fs::read_to_string(path).unwrap();
        let mut named = text.lines().filter(|line| line.contains("=="));
        assert_eq!(named.next(), Some(format!("duckdb=={VERSION} \\").as_str()));
        assert_eq!(named.next(), None);
        assert!(text.contains("--hash=sha256:"));
    }

    #[test]
    fn another_python_will_not_do() {
        assert!(!is_at(Path::new("no/such/python")));
    }
}
