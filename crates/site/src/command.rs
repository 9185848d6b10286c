//! Running other programs: `cargo` above all.

use anyhow::{Context, Result, ensure};
use std::env;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// A call of the `cargo` that runs us, in the workspace's folder.
///
/// `cargo run` describes the running package in the environment. An inner cargo
/// that inherited those names would see other inputs than a cargo called by hand
/// and compile again what is already there, so they are taken out.
pub(crate) fn cargo(root: &Path) -> Command {
    let mut command =
        Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(root);
    forget_package(&mut command);
    command
}

/// Takes the description of the running package out of a command's environment.
pub(crate) fn forget_package(command: &mut Command) {
    for (name, _) in env::vars_os() {
        if name.to_str().is_some_and(describes_package) {
            command.env_remove(name);
        }
    }
}

fn describes_package(name: &str) -> bool {
    name.starts_with("CARGO_PKG_")
        || name.starts_with("CARGO_MANIFEST_")
        || name.starts_with("CARGO_BIN_")
        || matches!(name, "CARGO_CRATE_NAME" | "CARGO_PRIMARY_PACKAGE" | "OUT_DIR")
}

/// Shows a command, runs it with its output going where ours goes, and fails with
/// `remedy` unless it succeeds.
pub(crate) fn run(command: &mut Command, remedy: &str) -> Result<()> {
    let shown = shown(command);
    println!("$ {shown}");
    let status = command
        .status()
        .with_context(|| format!("`{shown}` cannot be started; {remedy}"))?;
    ensure!(status.success(), "`{shown}` ended with {status}; {remedy}");
    Ok(())
}

/// The standard output of a command that succeeds, without the white space around.
pub(crate) fn output(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).output().ok()?;
    let text = String::from_utf8(output.stdout).ok()?;
    output.status.success().then(|| text.trim().to_owned())
}

/// The first of some programs that lies on the search path.
pub(crate) fn find_program(names: &[&str]) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    let folders: Vec<PathBuf> = env::split_paths(&path).collect();
    names.iter().find_map(|name| {
        let file = format!("{name}{}", env::consts::EXE_SUFFIX);
        folders.iter().map(|folder| folder.join(&file)).find(|path| path.is_file())
    })
}

pub(crate) fn shown(command: &Command) -> String {
    let program = Path::new(command.get_program());
    let name = program.file_stem().unwrap_or(command.get_program());
    let mut words = vec![name.to_string_lossy().into_owned()];
    words.extend(command.get_args().map(|word| word.to_string_lossy().into_owned()));
    words.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_cargo_run_sets_is_forgotten_and_what_a_person_sets_is_kept() {
        for name in ["CARGO_PKG_NAME", "CARGO_MANIFEST_DIR", "CARGO_PRIMARY_PACKAGE"] {
            assert!(describes_package(name), "{name}");
        }
        for name in ["CARGO", "CARGO_HOME", "CARGO_TARGET_DIR", "RUSTUP_TOOLCHAIN"] {
            assert!(!describes_package(name), "{name}");
        }
    }

    #[test]
    fn a_command_is_shown_without_the_folder_of_its_program() {
        let mut command = Command::new("/some/where/cargo");
        command.args(["fmt", "--check"]);
        assert_eq!(shown(&command), "cargo fmt --check");
    }

    #[test]
    fn the_message_of_a_failure_names_the_command_and_the_remedy() {
        let error = run(Command::new("no-such-program").arg("word"), "mend it");
        let error = error.unwrap_err().to_string();
        assert!(error.contains("`no-such-program word`"), "{error}");
        assert!(error.ends_with("; mend it"), "{error}");
    }
}
