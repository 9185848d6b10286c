//! Compiles the page's crate to WebAssembly.

use crate::command::{cargo, forget_package, output, run};
use crate::toolchain::{TARGET, Toolchain};
use anyhow::{Context, Result, ensure};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// How the module is to come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Shape {
    /// In one piece.
    Whole,
    /// To be cut into parts, some of which load later.
    InParts,
}

/// Compiles `noseward-web` for the browser and gives the path of the module.
///
/// The target folder is our own, so that neither the editor's cargo nor the one
/// that runs us waits for this one or throws its work away.
pub(crate) fn compile(
    root: &Path,
    toolchain: Toolchain,
    shape: Shape,
) -> Result<PathBuf> {
    let mut command = cargo_of(root, toolchain);
    let folder = match toolchain {
        Toolchain::Active => "web",
        Toolchain::Debian => "web-debian",
    };
    let folder = root.join("target").join(folder);
    let mut flags: Vec<String> = machine_paths(root, toolchain)?
        .iter()
        .map(|(path, name)| format!("--remap-path-prefix={path}={name}"))
        .collect();
    // For both shapes, so that what they share is compiled once.
    flags.push("-Clink-args=--emit-relocs".to_owned());
    command
        // Separated as cargo wants it, so that a path may hold spaces.
        .env("CARGO_ENCODED_RUSTFLAGS", flags.join("\u{1f}"))
        .args(["build", "--locked", "--release", "--package", "noseward-web"])
        .args(["--target", TARGET, "--target-dir"])
        .arg(&folder);
    if shape == Shape::InParts {
        command.args(["--features", "parts"]);
    }
    if toolchain == Toolchain::Debian {
        command.arg("-Zbuild-std=std,panic_abort");
    }
    run(&mut command, "mend what the compiler names above")?;
    Ok(folder.join(TARGET).join("release").join("noseward_web.wasm"))
}

/// The `cargo` of a toolchain.
pub(crate) fn cargo_of(root: &Path, toolchain: Toolchain) -> Command {
    match toolchain {
        Toolchain::Active => cargo(root),
        Toolchain::Debian => debian_cargo(root),
    }
}

/// The compiler of a toolchain and its version, such as `rustc 1.95.0`.
pub(crate) fn compiler(toolchain: Toolchain) -> Result<String> {
    let version = output(rustc(toolchain).arg("--version"))
        .context("the compiler does not say its version (rustc --version)")?;
    Ok(version.split_whitespace().take(2).collect::<Vec<_>>().join(" "))
}

fn rustc(toolchain: Toolchain) -> Command {
    match toolchain {
        Toolchain::Active => {
            Command::new(env::var_os("RUSTC").unwrap_or_else(|| "rustc".into()))
        }
        Toolchain::Debian => {
            let mut rustc = Command::new("/usr/bin/rustc");
            rustc.env_remove("LD_LIBRARY_PATH");
            rustc
        }
    }
}

/// Debian's cargo with Debian's compiler and linker, whatever else is installed.
fn debian_cargo(root: &Path) -> Command {
    let mut command = Command::new("/usr/bin/cargo");
    command
        .current_dir(root)
        .env("RUSTC", "/usr/bin/rustc")
        // Building the standard library is an unstable option of cargo.
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", "/usr/bin/wasm-ld")
        // The libraries of the toolchain that runs us are not for this compiler.
        .env_remove("LD_LIBRARY_PATH");
    forget_package(&mut command);
    command
}

/// Folders of this machine, which the compiler would write into the module for messages,
/// and what it writes in their place. Of two that fit, the compiler takes the last. They
/// are long and the others relative, so that a folder `/app` is not found in `src/app/`.
fn machine_paths(
    root: &Path,
    toolchain: Toolchain,
) -> Result<Vec<(String, &'static str)>> {
    let text = |path: &Path| {
        let text = path.to_str().map(str::to_owned);
        text.with_context(|| format!("the path {} is no text", path.display()))
    };
    let mut rustc = rustc(toolchain);
    let sysroot = output(rustc.args(["--print", "sysroot"]))
        .context("the compiler does not say where it lies (rustc --print sysroot)")?;
    let registry = cargo_home()?.join("registry");
    let mut paths = vec![
        (format!("{sysroot}/lib/rustlib/src/rust/"), "rustc/"),
        (format!("{}/crates/", text(root)?), "noseward/"),
        (format!("{}/", text(&registry)?), "cargo/"),
    ];
    // The last that fits counts. A registry's folder has a name with a hash, which every file of
    // the module would carry.
    for folder in fs::read_dir(registry.join("src")).into_iter().flatten().flatten() {
        paths.push((format!("{}/", text(&folder.path())?), "cargo/"));
    }
    Ok(paths)
}

fn cargo_home() -> Result<PathBuf> {
    if let Some(home) = env::var_os("CARGO_HOME").filter(|home| !home.is_empty()) {
        return Ok(PathBuf::from(home));
    }
    let home = env::home_dir().context("there is no home folder; set CARGO_HOME")?;
    Ok(home.join(".cargo"))
}

/// Fails when a folder of this machine stands in the module: another machine would then
/// make another module, and every visitor could read it.
pub(crate) fn check_no_machine_path(
    module: &[u8],
    root: &Path,
    toolchain: Toolchain,
) -> Result<()> {
    for (path, _) in machine_paths(root, toolchain)? {
        ensure!(
            !contains(module, path.as_bytes()),
            "the module contains the path {path} of this machine; see `machine_paths` in \
             crates/site/src/compile.rs"
        );
    }
    Ok(())
}

fn contains(bytes: &[u8], part: &[u8]) -> bool {
    bytes.windows(part.len()).any(|window| window == part)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_path_of_this_machine_is_found_in_a_module() {
        let root = Path::new("/some/where/noseward");
        let check =
            |module: &[u8]| check_no_machine_path(module, root, Toolchain::Active);
        check(b"\0asm noseward/web/src/lib.rs").unwrap();
        let error = check(b"\0asm /some/where/noseward/crates/web").unwrap_err();
        assert!(error.to_string().contains("/some/where/noseward"), "{error}");
        let registry = cargo_home().unwrap().join("registry/src");
        assert!(check(registry.to_str().unwrap().as_bytes()).is_err());
    }
}
