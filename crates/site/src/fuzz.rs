//! Runs the fuzz targets of `tests/fuzz`, each for a fixed number of inputs.
//!
//! They are compiled as cargo-fuzz does without a sanitizer, so that a stable compiler
//! will do and no tool has to be installed; `cargo fuzz` takes the same folder.

use crate::command::{cargo, find_program, output, run};
use crate::debian;
use anyhow::{Context, Result, bail, ensure};
use std::env;
use std::fs;
use std::path::Path;
use std::process::Command;

/// Each target with its inputs, the committed corpus included: about two minutes in all. A
/// notebook goes through every spelling, which takes many times as long as a rocket, and so does a
/// picture.
const TARGETS: [(&str, u32); 7] = [
    ("link", 200_000),
    ("code", 200_000),
    ("file", 200_000),
    ("text", 200_000),
    ("notebook", 40_000),
    ("class", 10_000),
    ("picture", 3_000),
];

/// No input needs a tenth of it: a text is 1 MiB at most.
const MEGABYTES: u32 = 512;

/// What makes the compiler count which branches an input takes.
const FLAGS: [&str; 6] = [
    "-Cpasses=sancov-module",
    "-Cllvm-args=-sanitizer-coverage-level=4",
    "-Cllvm-args=-sanitizer-coverage-inline-8bit-counters",
    "-Cllvm-args=-sanitizer-coverage-pc-table",
    "-Cllvm-args=-sanitizer-coverage-trace-compares",
    "-Cllvm-args=-simplifycfg-branch-fold-threshold=0",
];

/// Checks the code of the targets, replays their corpora and tries new inputs.
pub(crate) fn run_all(root: &Path) -> Result<()> {
    find_compiler()?;
    let manifest = ["--manifest-path", "tests/fuzz/Cargo.toml"];
    let folder = ["--target-dir", "target/fuzz"];
    let remedy = "mend what it names above";
    run(cargo(root).arg("fmt").args(manifest).arg("--check"), "run cargo fmt on it")?;
    run(
        cargo(root)
            .args(["clippy", "--locked", "--all-targets"])
            .args(manifest)
            .args(folder)
            .args(["--", "--deny", "warnings"]),
        remedy,
    )?;
    run(
        cargo(root).args(["test", "--locked"]).args(manifest).args(folder),
        "a failed test is named above",
    )?;

    let host = host()?;
    // Naming the target keeps the flags away from build scripts.
    run(
        cargo(root)
            .args(["build", "--locked", "--release", "--bins", "--target", &host])
            .args(manifest)
            .args(folder)
            .env("CARGO_ENCODED_RUSTFLAGS", FLAGS.join("\u{1f}")),
        remedy,
    )?;
    let programs = root.join("target/fuzz").join(host).join("release");
    TARGETS
        .iter()
        .try_for_each(|&(target, runs)| replay_and_try(root, &programs, target, runs))
}

/// One target. Its new inputs stay in `target/`, and go into the corpus by hand only.
fn replay_and_try(root: &Path, programs: &Path, target: &str, runs: u32) -> Result<()> {
    let found = format!("target/fuzz/found/{target}");
    let folder = root.join(&found);
    if folder.exists() {
        fs::remove_dir_all(&folder)
            .with_context(|| format!("{found} cannot be emptied"))?;
    }
    fs::create_dir_all(&folder).with_context(|| format!("{found} cannot be made"))?;
    let output = Command::new(programs.join(target))
        .current_dir(root)
        .args([
            found,
            format!("tests/fuzz/corpus/{target}"),
            format!("-runs={runs}"),
            format!("-rss_limit_mb={MEGABYTES}"),
            format!("-artifact_prefix=target/fuzz/{target}-"),
            "-seed=1".into(),
            "-timeout=60".into(),
        ])
        .output()
        .with_context(|| format!("the fuzz target {target} cannot be started"))?;
    let said = String::from_utf8_lossy(&output.stderr);
    if !output.status.success() {
        eprintln!("{said}");
        bail!(
            "the fuzz target {target} ended with {}; the input is in the file named above: \
             give it to {} to see it again, mend the fault, and put the input into \
             tests/fuzz/corpus/{target}",
            output.status,
            programs.join(target).display()
        );
    }
    let done = said.lines().find(|line| line.starts_with("Done "));
    println!("{target}: {}", done.context("libFuzzer does not say how many it ran")?);
    Ok(())
}

/// libFuzzer is compiled along, and is written in C++.
fn find_compiler() -> Result<()> {
    let is_here = || {
        env::var_os("CXX").is_some() || find_program(&["c++", "g++", "clang++"]).is_some()
    };
    if !is_here() && debian::is_here() {
        debian::install(&["g++"])?;
    }
    ensure!(
        is_here(),
        "the fuzz targets need a C++ compiler: install one, such as g++, or name it in CXX"
    );
    Ok(())
}

/// The name of this machine's target, as the compiler gives it.
fn host() -> Result<String> {
    let rustc = env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let about =
        output(Command::new(rustc).arg("-vV")).context("rustc does not answer")?;
    let line = about.lines().find_map(|line| line.strip_prefix("host: "));
    Ok(line.context("rustc does not name its host")?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_target_is_run_and_has_a_corpus() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let fuzz = root.join("tests/fuzz");
        for (target, _) in TARGETS {
            let corpus = fs::read_dir(fuzz.join("corpus").join(target)).unwrap();
            assert!(corpus.count() > 0, "{target}");
        }
        let sources = fs::read_dir(fuzz.join("targets")).unwrap();
        assert_eq!(sources.count(), TARGETS.len());
    }

    /// It is part of every copy of the project.
    #[test]
    fn the_corpora_stay_small() {
        let corpus =
            Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/fuzz/corpus");
        let folders =
            TARGETS.map(|(target, _)| fs::read_dir(corpus.join(target)).unwrap());
        let sizes: Vec<u64> = folders
            .into_iter()
            .flatten()
            .map(|file| file.unwrap().metadata().unwrap().len())
            .collect();
        assert!(sizes.len() < 440, "{} files", sizes.len());
        assert!(sizes.iter().sum::<u64>() < 300_000, "{sizes:?}");
    }

    #[test]
    fn this_machine_has_a_name() {
        assert!(host().unwrap().contains(env::consts::ARCH));
    }
}
