//! Finds a Rust toolchain that can compile the page.

use crate::command::{cargo, output, run};
use crate::debian;
use anyhow::{Result, bail, ensure};
use std::env;
use std::fs;
use std::path::Path;
use std::process::Command;

/// The target of the page.
pub(crate) const TARGET: &str = "wasm32-unknown-unknown";

/// The packages of a Debian toolchain, which brings the sources of the standard
/// library in place of a compiled one.
const DEBIAN_PACKAGES: [&str; 4] = ["rustc-web", "cargo-web", "rust-web-src", "lld"];

/// What those packages put in place.
const DEBIAN_FILES: [&str; 4] = [
    "/usr/bin/rustc",
    "/usr/bin/cargo",
    "/usr/bin/wasm-ld",
    "/usr/lib/rustlib/src/rust/library/std/Cargo.toml",
];

/// The oldest compiler the workspace asks for.
const OLDEST: &str = env!("CARGO_PKG_RUST_VERSION");

/// A toolchain that can compile for [`TARGET`].
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Toolchain {
    /// The toolchain that runs us: it has the target's standard library.
    Active,
    /// Debian's: the standard library is compiled along.
    Debian,
}

/// Finds a toolchain, and installs what is missing.
///
/// In this order: the active toolchain, the active toolchain after `rustup target
/// add`, the packages of Debian. `NOSEWARD_TOOLCHAIN=debian` goes straight to the
/// last of them.
pub(crate) fn find() -> Result<Toolchain> {
    if let Some(choice) = env::var_os("NOSEWARD_TOOLCHAIN").filter(|c| !c.is_empty()) {
        ensure!(
            choice == "debian",
            "NOSEWARD_TOOLCHAIN is {choice:?}; the only value it takes is \"debian\""
        );
        debian_toolchain()?;
        return Ok(Toolchain::Debian);
    }
    if active_has_target() {
        return Ok(Toolchain::Active);
    }
    let added =
        run(Command::new("rustup").args(["target", "add", TARGET]), "trying without it");
    match added {
        Ok(()) if active_has_target() => return Ok(Toolchain::Active),
        Ok(()) => eprintln!("rustup added the target to another toolchain than ours"),
        Err(error) => eprintln!("{error:#}"),
    }
    if !debian::is_here() {
        bail!(
            "no Rust toolchain on this machine can compile for {TARGET}; \
             with a network, run: rustup target add {TARGET}"
        );
    }
    debian_toolchain()?;
    Ok(Toolchain::Debian)
}

/// Brings the parts of the active toolchain that the checks need.
pub(crate) fn add_components(root: &Path) -> Result<()> {
    let has = |part: &str| output(cargo(root).args([part, "--version"]));
    let missing: Vec<&str> = [("fmt", "rustfmt"), ("clippy", "clippy")]
        .into_iter()
        .filter(|(part, _)| has(part).is_none())
        .map(|(_, component)| component)
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    run(
        Command::new("rustup").args(["component", "add"]).args(&missing),
        "the checks need rustfmt and clippy: install them beside your Rust",
    )
}

fn active_has_target() -> bool {
    let rustc = env::var_os("RUSTC").unwrap_or_else(|| "rustc".into());
    let mut command = Command::new(rustc);
    command.args(["--print", "target-libdir", "--target", TARGET]);
    output(&mut command).is_some_and(|folder| has_core(Path::new(&folder)))
}

/// The compiler names the folder whether or not anything is in it.
fn has_core(folder: &Path) -> bool {
    fs::read_dir(folder).is_ok_and(|entries| {
        entries
            .flatten()
            .any(|entry| entry.file_name().to_string_lossy().starts_with("libcore-"))
    })
}

fn debian_toolchain() -> Result<()> {
    let complete = || DEBIAN_FILES.iter().all(|file| Path::new(file).exists());
    if !complete() {
        ensure!(
            debian::is_here(),
            "this is no Debian, so there is no Debian toolchain; \
             unset NOSEWARD_TOOLCHAIN, and run: rustup target add {TARGET}"
        );
        debian::install(&DEBIAN_PACKAGES)?;
        ensure!(
            complete(),
            "the packages {DEBIAN_PACKAGES:?} are installed, but one of the files \
             {DEBIAN_FILES:?} is missing"
        );
    }
    let version = output(Command::new("/usr/bin/rustc").arg("--version"));
    let version = version.as_deref().and_then(|text| text.split(' ').nth(1));
    let Some(version) = version else {
        bail!("/usr/bin/rustc does not say its version; reinstall rustc-web");
    };
    ensure!(
        is_at_least(version, OLDEST),
        "Debian's Rust is {version}, and the page needs {OLDEST}; take rustc-web from \
         the security updates of your Debian (apt-get update && apt-get upgrade), or \
         run: rustup target add {TARGET}"
    );
    Ok(())
}

fn is_at_least(version: &str, oldest: &str) -> bool {
    numbers(version) >= numbers(oldest)
}

fn numbers(version: &str) -> [u32; 2] {
    let mut parts = version.split('.').map(|part| part.parse().unwrap_or(0));
    [parts.next().unwrap_or(0), parts.next().unwrap_or(0)]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn versions_are_compared_as_numbers() {
        assert!(is_at_least("1.95.0", "1.95"));
        assert!(is_at_least("1.100.0", "1.95"));
        assert!(!is_at_least("1.85.0", "1.95"));
        assert!(!is_at_least("nonsense", "1.95"));
    }

    #[test]
    fn a_folder_that_is_not_there_holds_no_library() {
        assert!(!has_core(Path::new("no/such/folder")));
    }
}
