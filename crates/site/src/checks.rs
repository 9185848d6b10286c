//! The checks, in the order in which they stop soonest.

use crate::browsers::Browsers;
use crate::command::{cargo, run};
use crate::toolchain::{self, TARGET, Toolchain};
use crate::{
    axe, bundle, fuzz, many_schools, paper, reproducible, serve, sizes, spreadsheet,
    supply,
};
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

const PAGE_TESTS: &str = "noseward-page-tests";

/// Runs every check.
pub(crate) fn everything(root: &Path) -> Result<()> {
    heading("prepare");
    let toolchain = toolchain::find()?;
    toolchain::add_components(root)?;
    let tools = PageTools::prepare(root)?;
    let office = spreadsheet::prepare()?;
    paper::prepare()?;
    let duckdb = many_schools::prepare(root)?;
    code(root, toolchain)?;
    let unchecked = beyond_code(root)?;
    tables(root, &office)?;
    sheets(root)?;
    merged(root, &duckdb)?;
    built_page(root, &tools, &[])?;
    reproducible(root, toolchain)?;
    println!("{}", supply::summary("All checks passed.", unchecked));
    Ok(())
}

/// Runs the checks that need neither the built page, a browser nor any other program.
pub(crate) fn unit(root: &Path) -> Result<()> {
    heading("prepare");
    let toolchain = toolchain::find()?;
    toolchain::add_components(root)?;
    code(root, toolchain)?;
    let unchecked = beyond_code(root)?;
    println!("{}", supply::summary("All checks passed that need no page.", unchecked));
    Ok(())
}

/// Builds the page, weighs it and tests it in a browser; `filter` goes to
/// `cargo test`.
pub(crate) fn page(root: &Path, filter: &[&str]) -> Result<()> {
    heading("prepare");
    let tools = PageTools::prepare(root)?;
    built_page(root, &tools, filter)?;
    println!("\nAll checks of the page passed.");
    Ok(())
}

/// Has a spreadsheet program open and save tables.
pub(crate) fn spreadsheet(root: &Path) -> Result<()> {
    heading("prepare");
    let office = spreadsheet::prepare()?;
    tables(root, &office)?;
    println!("\nAll tables come back from a spreadsheet.");
    Ok(())
}

fn tables(root: &Path, office: &Path) -> Result<()> {
    heading("spreadsheet");
    spreadsheet::check(root, office)
}

/// Has other programs read and draw sheets of paper.
pub(crate) fn paper(root: &Path) -> Result<()> {
    heading("prepare");
    paper::prepare()?;
    sheets(root)?;
    println!("\nOther programs read and draw all sheets as they are meant.");
    Ok(())
}

fn sheets(root: &Path) -> Result<()> {
    heading("paper");
    paper::check(root)
}

/// Has DuckDB merge the results of many schools.
pub(crate) fn many_schools(root: &Path) -> Result<()> {
    heading("prepare");
    let duckdb = many_schools::prepare(root)?;
    merged(root, &duckdb)?;
    println!("\nDuckDB merges results as the page does.");
    Ok(())
}

fn merged(root: &Path, duckdb: &Path) -> Result<()> {
    heading("many schools");
    many_schools::check(root, duckdb)
}

/// Builds the page, and once more elsewhere.
pub(crate) fn twice(root: &Path) -> Result<()> {
    heading("build");
    bundle::build(root, &[])?;
    reproducible(root, toolchain::find()?)?;
    println!("\nBoth builds are the same.");
    Ok(())
}

fn reproducible(root: &Path, toolchain: Toolchain) -> Result<()> {
    heading("the same page once more, elsewhere and from nothing");
    reproducible::check(root, toolchain)
}

/// What the page tests need beside Rust.
#[derive(Debug)]
pub(crate) struct PageTools {
    browsers: Browsers,
    axe: PathBuf,
}

impl PageTools {
    /// Finds the tools, and brings what is missing.
    pub(crate) fn prepare(root: &Path) -> Result<Self> {
        Ok(Self { browsers: Browsers::prepare(root)?, axe: axe::prepare(root)? })
    }
}

/// `cargo test` of the page tests, told where the page and the tools are.
pub(crate) fn page_tests(root: &Path, tools: &PageTools) -> Result<Command> {
    let mut command = cargo(root);
    command
        // All of what fails is worth knowing: the page takes a while to build.
        .args(["test", "--locked", "--no-fail-fast", "--package", PAGE_TESTS])
        .env("NOSEWARD_PAGE", serve::in_background(root)?)
        .envs(tools.browsers.environment().iter().map(|(name, path)| (name, path)))
        .env("NOSEWARD_AXE", &tools.axe);
    Ok(command)
}

/// Prints the name of the step that follows.
pub(crate) fn heading(step: &str) {
    println!("\n=== {step} ===");
}

fn code(root: &Path, toolchain: Toolchain) -> Result<()> {
    heading("format");
    run(cargo(root).args(["fmt", "--all", "--check"]), "run: cargo fmt --all")?;

    heading("lints");
    let remedy = "mend what it names above";
    let warnings = ["--", "--deny", "warnings"];
    let clippy = ["clippy", "--locked"];
    run(
        cargo(root).args(clippy).args(["--workspace", "--all-targets"]).args(warnings),
        remedy,
    )?;
    match toolchain {
        Toolchain::Active => {
            let page = ["--package", "noseward-web", "--target", TARGET];
            for parts in [&[][..], &["--features", "parts"]] {
                let mut command = cargo(root);
                run(command.args(clippy).args(page).args(parts).args(warnings), remedy)?;
            }
        }
        Toolchain::Debian => {
            println!("(not for {TARGET}: Debian's toolchain for it has no clippy)");
        }
    }

    heading("unit, reference and documentation tests");
    run(
        cargo(root)
            .args(["test", "--locked", "--workspace"])
            .args(["--exclude", PAGE_TESTS, "--exclude", spreadsheet::TESTS])
            .args(["--exclude", many_schools::TESTS, "--exclude", paper::TESTS])
            // A drawing that differs from the kept one fails and writes nothing.
            .env("INSTA_UPDATE", "no")
            .env_remove("INSTA_FORCE_PASS"),
        "a failed test is named above",
    )?;

    heading("documentation");
    run(
        cargo(root)
            .args(["doc", "--locked", "--workspace", "--no-deps"])
            .env("RUSTDOCFLAGS", "--deny warnings"),
        remedy,
    )
}

/// Whether what the project is built from is fit for it.
pub(crate) fn supply(root: &Path) -> Result<()> {
    let unchecked = supply::check(root)?;
    println!(
        "{}",
        supply::summary(
            "Licences, versions and sources are as they should be.",
            unchecked
        )
    );
    Ok(())
}

fn beyond_code(root: &Path) -> Result<supply::Unchecked> {
    heading("supply chain");
    let unchecked = supply::check(root)?;

    heading("fuzz targets");
    fuzz::run_all(root)?;
    Ok(unchecked)
}

fn built_page(root: &Path, tools: &PageTools, filter: &[&str]) -> Result<()> {
    heading("build");
    let files = bundle::build(root, &[])?;

    heading("sizes");
    sizes::check(&files)?;

    heading("page tests");
    run(
        page_tests(root, tools)?.args(test_arguments(filter, tools.browsers.skipped())),
        "a failed test is named above; pictures and logs are in target/page-tests/",
    )
}

/// The filter, and at most two browsers at once: more only wait for each other. Tests
/// with one of the `skipped` in their name are left out.
fn test_arguments<'a>(filter: &[&'a str], skipped: &[&'a str]) -> Vec<&'a str> {
    let mut arguments = filter.to_vec();
    if !filter.contains(&"--") {
        arguments.push("--");
    }
    arguments.push("--test-threads=2");
    arguments.extend(skipped.iter().flat_map(|name| ["--skip", name]));
    arguments
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_filter_stands_before_the_options_of_the_test_program() {
        assert_eq!(test_arguments(&[], &[]), ["--", "--test-threads=2"]);
        assert_eq!(test_arguments(&["link"], &[]), ["link", "--", "--test-threads=2"]);
        let own = ["link", "--", "--nocapture"];
        assert_eq!(
            test_arguments(&own, &["webkit"]),
            ["link", "--", "--nocapture", "--test-threads=2", "--skip", "webkit"]
        );
    }
}
