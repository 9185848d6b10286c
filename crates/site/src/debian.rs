//! Installing packages on Debian and its relatives.

use crate::command::{find_program, output, run};
use anyhow::{Result, ensure};
use std::path::Path;
use std::process::Command;

/// Whether this machine runs Debian or a relative of it.
pub(crate) fn is_here() -> bool {
    Path::new("/etc/debian_version").exists() && find_program(&["apt-get"]).is_some()
}

/// Installs packages, as root or through `sudo`; asks nothing.
pub(crate) fn install(packages: &[&str]) -> Result<()> {
    let root = output(Command::new("id").arg("-u")).as_deref() == Some("0");
    ensure!(
        root || find_program(&["sudo"]).is_some(),
        "only root can install packages; as root: apt-get install {}",
        packages.join(" ")
    );
    // The lists may be missing or old. An update that fails for one source of
    // several is no reason to stop: the installation decides.
    let remedy = "trying to install all the same";
    if let Err(error) = run(apt(root).arg("update"), remedy) {
        eprintln!("{error:#}");
    }
    let remedy = "without a password only root may do this: run it by hand";
    run(
        apt(root).args(["install", "--yes", "--no-install-recommends"]).args(packages),
        remedy,
    )
}

fn apt(root: bool) -> Command {
    let mut command = Command::new(if root { "env" } else { "sudo" });
    if !root {
        command.args(["-n", "env"]);
    }
    command.args(["DEBIAN_FRONTEND=noninteractive", "apt-get"]);
    command
}
