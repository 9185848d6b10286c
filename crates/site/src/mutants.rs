//! Which changes to the code no test would notice: cargo-mutants over the crates whose
//! tests are native. It takes hours and judges nothing, so it is no part of `test`.

use crate::checks::heading;
use crate::command::{forget_package, shown};
use crate::tool::Tool;
use anyhow::{Context, Result, ensure};
use std::path::Path;
use std::process::Command;

const MUTANTS: Tool = Tool {
    name: "cargo-mutants",
    version: "27.1.0",
    remedy: "it changes the code and runs the tests: this once, a network is needed",
    settings: &[],
};

/// What is tried when nothing is named: crates, and of the page its notebook.
const TRIED: [(&str, &[&str]); 4] = [
    ("noseward-drawing", &[]),
    ("noseward-lesson", &[]),
    ("noseward-link", &[]),
    ("noseward-web", &["--file", "crates/web/src/notebook/**"]),
];

/// What these ends mean: all caught; some missed; some ran out of time; and the code did not
/// pass its tests as it is.
const ENDS: [i32; 3] = [0, 2, 3];

/// Tries every change in the crates above, or in what the arguments name.
pub(crate) fn run_all(root: &Path, arguments: &[&str]) -> Result<()> {
    let program = MUTANTS.prepare(root)?;
    if !arguments.is_empty() {
        return try_in(root, &program, arguments);
    }
    for (package, files) in TRIED {
        heading(package);
        let mut named = vec!["--package", package];
        named.extend(files);
        try_in(root, &program, &named)?;
    }
    Ok(())
}

fn try_in(root: &Path, program: &Path, named: &[&str]) -> Result<()> {
    let mut command = Command::new(program);
    command
        .current_dir(root)
        .arg("mutants")
        .args(named)
        .args(["--no-shuffle", "--output"]);
    command.arg(root.join("target/mutants"));
    forget_package(&mut command);
    let shown = shown(&command);
    println!("$ {shown}");
    let status =
        command.status().with_context(|| format!("`{shown}` cannot be started"))?;
    ensure!(
        status.code().is_some_and(|code| ENDS.contains(&code)),
        "`{shown}` ended with {status}; the tests have to pass before anything is changed"
    );
    println!("What no test noticed stands in target/mutants/mutants.out/missed.txt.");
    Ok(())
}
