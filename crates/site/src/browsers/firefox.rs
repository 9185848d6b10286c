//! Firefox. Its driver comes from crates.io, in one exact version, and is kept in
//! target/tools: later runs need no network.

use super::{Programs, Told};
use crate::command::{cargo, output, run};
use anyhow::{Result, ensure};
use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

const FIREFOX: Programs<'static> = Programs {
    names: &[&["firefox-esr", "firefox"]],
    packages: &["firefox-esr"],
    remedy: "the page tests need the program `firefox` (or `firefox-esr`) on the \
             search path; install Firefox",
};

const DRIVER_VERSION: &str = "0.37.1";

/// Finds Firefox and its driver; installs Firefox on Debian, builds the driver
/// anywhere.
pub(super) fn prepare(root: &Path) -> Result<Vec<Told>> {
    let mut told: Vec<Told> =
        FIREFOX.prepare()?.into_iter().map(|path| ("NOSEWARD_FIREFOX", path)).collect();
    told.push(("NOSEWARD_GECKODRIVER", driver(root)?));
    Ok(told)
}

fn driver(root: &Path) -> Result<PathBuf> {
    let folder = root.join("target").join("tools");
    let path = folder.join("bin").join(format!("geckodriver{}", env::consts::EXE_SUFFIX));
    if !is_ours(&path) {
        let package = format!("geckodriver@{DRIVER_VERSION}");
        run(
            cargo(root)
                .args(["install", "--locked", "--force", "--root"])
                .args([folder.as_os_str(), package.as_ref()]),
            "it drives Firefox: a C compiler and, this once, a network are needed",
        )?;
        ensure!(is_ours(&path), "{} is not geckodriver {DRIVER_VERSION}", path.display());
    }
    Ok(path)
}

fn is_ours(path: &Path) -> bool {
    output(Command::new(path).arg("--version")).is_some_and(|text| has_version(&text))
}

/// The version is the second word of the first line; a build from Mozilla's own tree
/// says more behind it.
fn has_version(text: &str) -> bool {
    text.split_whitespace().take(2).eq(["geckodriver", DRIVER_VERSION])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_one_version_will_do() {
        let said = format!("geckodriver {DRIVER_VERSION}\n\nThe source code of this");
        assert!(has_version(&said));
        assert!(has_version(&format!("geckodriver {DRIVER_VERSION} (0a1b2c3d)")));
        assert!(!has_version(&format!("geckodriver {DRIVER_VERSION}9")));
        assert!(!has_version("geckodriver"));
        assert!(!is_ours(Path::new("no/such/geckodriver")));
    }
}
