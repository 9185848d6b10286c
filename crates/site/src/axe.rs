//! Brings axe-core, the accessibility checks of the page tests.
//!
//! It comes from the npm registry into target/, in one exact version whose content
//! is checked, and stays there: later runs need no network.

use crate::command::{find_program, run};
use crate::debian;
use crate::names::digest;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

const PACKAGE: &str = "axe-core@4.14.1";
const ARCHIVE: &str = "axe-core-4.14.1.tgz";
const ARCHIVE_SHA256: &str =
    "e6b0ce02b84d892e2e33e403485e7f3d6c29e2be6df65daf44d89ba564139745";
/// The script inside the archive.
const SCRIPT: &str = "package/axe.min.js";

/// Gives the path of the script, after bringing it if it is missing.
pub(crate) fn prepare(root: &Path) -> Result<PathBuf> {
    let folder = root.join("target").join("axe");
    fs::create_dir_all(&folder)
        .with_context(|| format!("{} cannot be made", folder.display()))?;
    let archive = folder.join(ARCHIVE);
    if check(&archive).is_err() {
        download(&folder)?;
        check(&archive)?;
    }
    run(
        Command::new("tar").current_dir(&folder).args(["-xzf", ARCHIVE, SCRIPT]),
        "tar is needed to unpack it",
    )?;
    Ok(folder.join(SCRIPT))
}

fn check(archive: &Path) -> Result<()> {
    let bytes = fs::read(archive)
        .with_context(|| format!("{} is not there", archive.display()))?;
    let found = digest(&bytes);
    ensure!(
        found == ARCHIVE_SHA256,
        "{} has the SHA-256 {found}, and {PACKAGE} is known by {ARCHIVE_SHA256}; \
         do not use it, and find out where it comes from",
        archive.display()
    );
    Ok(())
}

fn download(folder: &Path) -> Result<()> {
    if find_program(&["npm"]).is_none() && debian::is_here() {
        debian::install(&["npm"])?;
    }
    run(
        Command::new("npm").current_dir(folder).args(["pack", "--silent", PACKAGE]),
        "it brings the accessibility checks: npm and, this once, a network are needed",
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_changed_archive_is_refused() {
        let this_file = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/axe.rs");
        let error = check(&this_file).unwrap_err().to_string();
        assert!(error.contains(ARCHIVE_SHA256), "{error}");
    }

    #[test]
    fn package_and_archive_name_one_version() {
        assert_eq!(ARCHIVE, format!("{}.tgz", PACKAGE.replace('@', "-")));
    }
}
