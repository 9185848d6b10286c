//! What the command that runs the tests says about this machine.

use anyhow::{Context, Result};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

/// The address of the page, with a `/` at its end.
pub(crate) fn page_address() -> Result<String> {
    required("NOSEWARD_PAGE")
}

/// The script of axe-core.
pub(crate) fn axe_script() -> Result<String> {
    let path = required("NOSEWARD_AXE")?;
    fs::read_to_string(&path).with_context(|| format!("{path} cannot be read"))
}

/// A program by the name of its setting, or else by its own name on the search path.
pub(crate) fn program(setting: &str, name: &str) -> String {
    env::var(setting).unwrap_or_else(|_| name.to_owned())
}

/// Chromium, unless its driver is to look for it.
pub(crate) fn chromium() -> Option<String> {
    env::var("NOSEWARD_CHROMIUM").ok()
}

/// Firefox, unless its driver is to look for it.
pub(crate) fn firefox() -> Option<String> {
    env::var("NOSEWARD_FIREFOX").ok()
}

/// The folder for pictures, logs and profiles.
pub(crate) fn output_folder() -> Result<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../target/page-tests");
    fs::create_dir_all(&folder)
        .with_context(|| format!("{} cannot be made", folder.display()))?;
    folder.canonicalize().context("target/page-tests has no full path")
}

fn required(name: &str) -> Result<String> {
    env::var(name).with_context(|| {
        format!("{name} is not set; start the page tests by: cargo run -- test page")
    })
}
