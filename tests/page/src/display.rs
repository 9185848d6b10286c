//! A screen in memory, for a browser that cannot do without one.

use crate::settings;
use anyhow::{Context, Result, ensure};
use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};

/// A running Xvfb; ended when dropped.
#[derive(Debug)]
pub(crate) struct Display {
    child: Child,
    /// What programs find in `DISPLAY`.
    pub(crate) name: String,
}

impl Drop for Display {
    fn drop(&mut self) {
        // Either fails only if it has ended by itself.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

impl Display {
    /// Starts a screen of its own, so that no two windows ask for one focus.
    pub(crate) fn start() -> Result<Self> {
        let program = settings::program("NOSEWARD_XVFB", "Xvfb");
        let child = Command::new(&program)
            // It finds a free number and writes it on its output.
            .args(["-displayfd", "1", "-screen", "0", "1600x1200x24"])
            .args(["-nolisten", "tcp"])
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .with_context(|| {
                format!("{program} cannot be started; run: cargo run -- test page")
            })?;
        let mut display = Self { child, name: String::new() };
        let mut number = String::new();
        if let Some(output) = display.child.stdout.take() {
            BufReader::new(output).read_line(&mut number)?;
        }
        let number = number.trim();
        ensure!(
            !number.is_empty(),
            "{program} opens no display; run it by hand to see why"
        );
        display.name = format!(":{number}");
        Ok(display)
    }
}
