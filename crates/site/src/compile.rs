//! Compiles the page's crate to WebAssembly.

use crate::command::{cargo, forget_package, run};
use crate::toolchain::{TARGET, Toolchain};
use anyhow::Result;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Compiles `noseward-web` for the browser and gives the path of the module.
///
/// The target folder is our own, so that neither the editor's cargo nor the one
/// that runs us waits for this one or throws its work away.
pub(crate) fn compile(root: &Path, toolchain: Toolchain) -> Result<PathBuf> {
    let (mut command, folder) = match toolchain {
        Toolchain::Active => (cargo(root), "web"),
        Toolchain::Debian => (debian_cargo(root), "web-debian"),
    };
    let folder = root.join("target").join(folder);
    command
        .args(["build", "--locked", "--release", "--package", "noseward-web"])
        .args(["--target", TARGET, "--target-dir"])
        .arg(&folder);
    if toolchain == Toolchain::Debian {
        command.arg("-Zbuild-std=std,panic_abort");
    }
    run(&mut command, "mend what the compiler names above")?;
    Ok(folder.join(TARGET).join("release").join("noseward_web.wasm"))
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
