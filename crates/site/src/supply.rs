//! Holds what the project is built from to `deny.toml`: licences, double versions,
//! sources, and published security advisories.
//!
//! cargo-deny does it.

use crate::command::{find_program, output, run};
use crate::tool::Tool;
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

const CARGO_DENY: Tool = Tool {
    name: "cargo-deny",
    version: "0.20.2",
    ask: &["--version"],
    remedy: "it checks licences and sources: this once, a network is needed",
    // Its own profile takes several times as long, and it only reads texts.
    settings: &[
        ("CARGO_PROFILE_RELEASE_LTO", "off"),
        ("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16"),
        ("CARGO_PROFILE_RELEASE_OPT_LEVEL", "1"),
    ],
};

/// The workspaces with a lock file, by their manifests.
const MANIFESTS: [&str; 2] = ["Cargo.toml", "tests/fuzz/Cargo.toml"];

/// An exception that nothing needs any more has to go from `deny.toml`. The targets of
/// the fuzzer need some that the rest does not, and the other way round.
const STALE: [&str; 3] =
    ["unmatched-skip", "unnecessary-skip", "license-not-encountered"];
const STALE_OR_NOT_HERE: [&str; 4] = [
    "unmatched-skip",
    "unnecessary-skip",
    "license-not-encountered",
    "license-exception-not-encountered",
];

/// Something that could not be checked here.
pub(crate) type Unchecked = Option<&'static str>;

/// What is told of the database of advisories where it cannot be reached.
const NO_ADVISORIES: &str = "security advisories. Their database \
    (https://github.com/RustSec/advisory-db) cannot be reached from here, or git is missing.";

/// Checks every lock file. The database of advisories comes from outside: where it
/// cannot be reached, that is given back, and the rest still counts.
pub(crate) fn check(root: &Path) -> Result<Unchecked> {
    let program = prepare(root)?;
    let mut checks = vec!["bans", "licenses", "sources"];
    let unchecked = if has_advisories(root, &program) {
        checks.push("advisories");
        None
    } else {
        Some(NO_ADVISORIES)
    };
    MANIFESTS.iter().try_for_each(|manifest| {
        let mut command = Command::new(&program);
        command.current_dir(root).args(["--locked", "--manifest-path", manifest]).args([
            "--config",
            "deny.toml",
            "check",
            "--hide-inclusion-graph",
        ]);
        if *manifest == "Cargo.toml" {
            command.args(STALE.iter().flat_map(|code| ["--deny", code]));
            command.args(["--allow", "license-exception-not-encountered"]);
        } else {
            command.args(STALE_OR_NOT_HERE.iter().flat_map(|code| ["--allow", code]));
        }
        run(
            command.args(&checks),
            "each error above names the crate and the rule; the rules are in deny.toml",
        )
    })?;
    Ok(unchecked)
}

/// What stands at the very end of a run, since nobody reads its middle.
pub(crate) fn summary(passed: &str, unchecked: Unchecked) -> String {
    match unchecked {
        None => format!("\n{passed}"),
        Some(what) => {
            let line = "!".repeat(80);
            format!("\n{passed}\n\n{line}\nNOT CHECKED: {what}\n{line}")
        }
    }
}

/// Gives the program: one that lies on the search path in the right version will do.
fn prepare(root: &Path) -> Result<PathBuf> {
    match find_program(&[CARGO_DENY.name]).filter(|found| CARGO_DENY.is_at(found)) {
        Some(program) => Ok(program),
        None => CARGO_DENY.prepare(root),
    }
}

/// Fetches the advisories; whether that worked.
fn has_advisories(root: &Path, program: &Path) -> bool {
    let mut command = Command::new(program);
    command.current_dir(root).args(["--config", "deny.toml", "fetch", "db"]);
    // Never ask for a name or a password.
    output(command.env("GIT_TERMINAL_PROMPT", "0")).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;
    use std::fs;

    #[test]
    fn what_was_not_checked_stands_last() {
        assert_eq!(summary("All passed.", None), "\nAll passed.");
        let told = summary("All passed.", Some(NO_ADVISORIES));
        let (passed, rest) = told.split_once("NOT CHECKED: ").unwrap();
        assert!(passed.contains("All passed."), "{told}");
        assert!(rest.starts_with("security advisories"), "{told}");
    }

    #[test]
    fn every_lock_file_is_checked() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        for manifest in MANIFESTS {
            assert!(root.join(manifest).with_file_name("Cargo.lock").is_file());
        }
    }

    /// Each package of a lock file, with its version.
    fn packages(lock: &Path) -> BTreeSet<(String, String)> {
        let text = fs::read_to_string(lock).unwrap();
        let value = |line: Option<&str>, key: &str| {
            let line = line?.strip_prefix(key)?.strip_prefix(" = ")?;
            Some(line.trim_matches('"').to_owned())
        };
        text.split("[[package]]")
            .filter_map(|part| {
                let mut lines = part.trim_start().lines();
                Some((value(lines.next(), "name")?, value(lines.next(), "version")?))
            })
            .collect()
    }

    #[test]
    fn the_fuzzer_tests_the_versions_that_ship() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let shipped = packages(&root.join("Cargo.lock"));
        let fuzzed = packages(&root.join("tests/fuzz/Cargo.lock"));
        assert!(fuzzed.len() > 20 && shipped.len() > 100);
        let is_shipped = |name: &str| shipped.iter().any(|(known, _)| known == name);
        for package in fuzzed.iter().filter(|(name, _)| is_shipped(name)) {
            assert!(
                shipped.contains(package),
                "{package:?} is another version than in Cargo.lock: bring \
                 tests/fuzz/Cargo.lock to it with cargo update --precise"
            );
        }
    }
}
