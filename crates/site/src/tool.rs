//! Programs from crates.io that a check needs, each in one exact version. They are built
//! into target/tools and stay there: later runs need no network.

use crate::command::{cargo, output, run};
use anyhow::{Result, ensure};
use std::env;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A program of crates.io.
pub(crate) struct Tool {
    /// The name of the package, which is that of the program.
    pub(crate) name: &'static str,
    pub(crate) version: &'static str,
    /// What it is told to say its version.
    pub(crate) ask: &'static [&'static str],
    /// What it is for and what building it needs, should that fail.
    pub(crate) remedy: &'static str,
    /// Names and values for cargo's environment.
    pub(crate) settings: &'static [(&'static str, &'static str)],
}

impl Tool {
    /// Gives the program, after building it if it is missing.
    pub(crate) fn prepare(&self, root: &Path) -> Result<PathBuf> {
        let package = format!("{}@{}", self.name, self.version);
        let folder =
            root.join("target/tools").join(format!("{}-{}", self.name, self.version));
        let file = format!("{}{}", self.name, env::consts::EXE_SUFFIX);
        let program = folder.join("bin").join(file);
        if !self.is_at(&program) {
            run(
                cargo(root)
                    .args(["install", "--locked", "--force", &package, "--root"])
                    .arg(&folder)
                    .envs(self.settings.iter().copied()),
                self.remedy,
            )?;
            ensure!(self.is_at(&program), "{} is not {package}", program.display());
        }
        Ok(program)
    }

    /// Whether a program is this one, in this version.
    pub(crate) fn is_at(&self, program: &Path) -> bool {
        output(Command::new(program).args(self.ask))
            .is_some_and(|text| self.is_said_by(&text))
    }

    /// The version is the second word of what a program says; more may stand behind it.
    fn is_said_by(&self, text: &str) -> bool {
        text.split_whitespace().take(2).eq([self.name, self.version])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_one_version_will_do() {
        let tool = Tool {
            name: "geckodriver",
            version: "0.37.1",
            ask: &["--version"],
            remedy: "",
            settings: &[],
        };
        assert!(tool.is_said_by("geckodriver 0.37.1\n\nThe source code of this"));
        assert!(tool.is_said_by("geckodriver 0.37.1 (0a1b2c3d)"));
        assert!(!tool.is_said_by("geckodriver 0.37.19"));
        assert!(!tool.is_said_by("geckodriver"));
        assert!(!tool.is_at(Path::new("no/such/geckodriver")));
    }
}
