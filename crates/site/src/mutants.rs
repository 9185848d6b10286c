//! Which changes to the code no test would notice: cargo-mutants over the crates whose
//! tests are native. It takes hours and judges nothing, so it is no part of `test`. What
//! makes a change cheap to try stands in `.cargo/mutants.toml`.

use crate::checks::heading;
use crate::command::{forget_package, shown};
use crate::tool::Tool;
use anyhow::{Context, Result, bail, ensure};
use std::fs;
use std::path::Path;
use std::process::Command;

const MUTANTS: Tool = Tool {
    name: "cargo-mutants",
    version: "27.1.0",
    // Without its own name it is cargo, and has no version.
    ask: &["mutants", "--version"],
    remedy: "it changes the code and runs the tests: this once, a network is needed",
    settings: &[],
};

/// Code whose changes are tried together.
struct Tried {
    name: &'static str,
    /// What is changed, in the words of cargo-mutants.
    arguments: &'static [&'static str],
}

const TRIED: [Tried; 4] = [
    Tried { name: "drawing", arguments: &["--package", "noseward-drawing"] },
    Tried { name: "lesson", arguments: &["--package", "noseward-lesson"] },
    Tried { name: "link", arguments: &["--package", "noseward-link"] },
    // Of the page its notebook.
    Tried {
        name: "notebook",
        arguments: &["--package", "noseward-web", "--file", "crates/web/src/notebook/**"],
    },
];

/// What these ends mean: all caught; some missed; some ran out of time. Any other: the code
/// did not pass its tests as it is.
const ENDS: [i32; 3] = [0, 2, 3];

/// Tries changes in what is named, or in all of the above: every one, or with a part such
/// as 0/20 every twentieth, from the first on.
pub(crate) fn run_all(root: &Path, arguments: &[&str]) -> Result<()> {
    let (tried, part) = wanted(arguments)?;
    let program = MUTANTS.prepare(root)?;
    for tried in tried {
        heading(tried.name);
        try_in(root, &program, tried, part)?;
    }
    Ok(())
}

/// What is tried, and the part of it.
fn wanted<'a>(arguments: &[&'a str]) -> Result<(Vec<&'static Tried>, Option<&'a str>)> {
    let (name, part) = match *arguments {
        [] => (None, None),
        [part] if part.contains('/') => (None, Some(part)),
        [name] => (Some(name), None),
        [name, part] => (Some(name), Some(part)),
        _ => bail!("one name and one part such as 0/20 at most"),
    };
    let tried: Vec<_> =
        TRIED.iter().filter(|tried| name.is_none_or(|name| tried.name == name)).collect();
    let names = TRIED.map(|tried| tried.name).join(", ");
    ensure!(!tried.is_empty(), "what can be tried is {names}");
    Ok((tried, part))
}

fn try_in(root: &Path, program: &Path, tried: &Tried, part: Option<&str>) -> Result<()> {
    let folder = root.join("target/mutants");
    // The program makes the last folder of a path only.
    fs::create_dir_all(&folder)
        .with_context(|| format!("{} cannot be made", folder.display()))?;
    let mut command = Command::new(program);
    command.current_dir(root).arg("mutants");
    command.arg("--output").arg(folder.join(tried.name));
    if let Some(part) = part {
        command.args(["--shard", part]);
    }
    command.args(tried.arguments);
    // Apart from what is built of the code as it is: cargo tells the two by their times only.
    command.env("CARGO_TARGET_DIR", folder.join("build"));
    // A picture that differs is no new picture, and how a failure can be put most simply
    // is of no interest here.
    command.env("INSTA_UPDATE", "no").env("PROPTEST_MAX_SHRINK_ITERS", "0");
    forget_package(&mut command);
    let shown = shown(&command);
    println!("$ {shown}");
    let status =
        command.status().with_context(|| format!("`{shown}` cannot be started"))?;
    ensure!(
        status.code().is_some_and(|code| ENDS.contains(&code)),
        "`{shown}` ended with {status}; the tests have to pass before anything is changed"
    );
    let name = tried.name;
    println!("What no test noticed: target/mutants/{name}/mutants.out/missed.txt.");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn names(arguments: &[&str]) -> Vec<&'static str> {
        wanted(arguments).unwrap().0.iter().map(|tried| tried.name).collect()
    }

    #[test]
    fn a_name_and_a_part_are_both_free_to_be_left_out() {
        assert_eq!(names(&[]).len(), TRIED.len());
        assert_eq!(names(&["link"]), ["link"]);
        assert_eq!(names(&["0/20"]).len(), TRIED.len());
        assert_eq!(names(&["link", "0/20"]), ["link"]);
        assert_eq!(wanted(&["link"]).unwrap().1, None);
        for arguments in [&["0/20"][..], &["link", "0/20"]] {
            assert_eq!(wanted(arguments).unwrap().1, Some("0/20"));
        }
    }

    #[test]
    fn what_is_not_there_is_refused_with_what_is() {
        let error = wanted(&["links"]).err().unwrap().to_string();
        assert!(error.contains("drawing, lesson, link, notebook"), "{error}");
        assert!(wanted(&["link", "0/20", "more"]).is_err());
    }
}
