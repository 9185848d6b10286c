//! What DuckDB makes of files, by `merge.sql`.

use std::collections::BTreeSet;
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, ensure};
use noseward_lesson::Seen;

use crate::page::{Along, Counts, Refused};

/// What `run.py` left in a folder.
#[derive(Debug)]
pub struct Merged {
    folder: PathBuf,
}

impl Merged {
    /// Merges all files below a folder whose path fits a pattern, such as `*/*.csv`.
    ///
    /// # Errors
    ///
    /// When DuckDB cannot be started, or stops.
    pub fn of(
        files: &Path,
        pattern: &str,
        rules: Option<&str>,
        folder: &Path,
    ) -> Result<Self> {
        let python = env::var_os("NOSEWARD_DUCKDB")
            .context("there is no DuckDB; run: cargo run -- test many-schools")?;
        let mut command = Command::new(python);
        command
            .arg(Path::new(env!("CARGO_MANIFEST_DIR")).join("run.py"))
            .arg(files.join(pattern))
            .arg(folder)
            .args(rules);
        let output =
            command.stdin(Stdio::null()).output().context("python cannot start")?;
        ensure!(
            output.status.success(),
            "run.py stopped: {}",
            String::from_utf8_lossy(&output.stderr)
        );
        eprint!("{pattern}: {}", String::from_utf8_lossy(&output.stdout));
        Ok(Self { folder: folder.to_owned() })
    }

    /// What became of the rows.
    ///
    /// # Errors
    ///
    /// When there is no such table.
    pub fn counts(&self) -> Result<Counts> {
        let rows: Vec<[usize; 5]> = self.rows("counts")?;
        let [rows, results, older, doubled, refused] =
            *rows.first().context("there are no counts")?;
        Ok(Counts { rows, results, older, doubled, refused })
    }

    /// The rows that were not taken in, with their files by the end of their path.
    ///
    /// # Errors
    ///
    /// When there is no such table.
    pub fn refused(&self, files: &Path) -> Result<BTreeSet<Refused>> {
        type Row = (String, usize, String, String, String, String, String);
        let rows: Vec<Row> = self.rows("refused")?;
        let front = format!("{}/", files.display());
        let of = |(file, line, .., reason): Row| {
            let file = file.trim_start_matches(&front).to_owned();
            Refused { file, line, reason }
        };
        Ok(rows.into_iter().map(of).collect())
    }

    /// What the turning point is worked out of.
    ///
    /// # Errors
    ///
    /// When there is no such table.
    pub fn points(&self, along: Along) -> Result<Vec<Seen>> {
        let rows: Vec<(String, f64, u32, u32)> = self.rows("points")?;
        let of = |(name, separation, nose_first, otherwise): (String, f64, u32, u32)| {
            (name == along.name()).then_some(Seen { separation, nose_first, otherwise })
        };
        Ok(rows.into_iter().filter_map(of).collect())
    }

    /// What looks odd, by class, group and trial.
    ///
    /// # Errors
    ///
    /// When there is no such table.
    pub fn odd(&self) -> Result<Vec<[String; 4]>> {
        let mut rows: Vec<[String; 4]> = self.rows("odd")?;
        for [class, ..] in &mut rows {
            // What keeps a spreadsheet from reading the label as a date.
            *class = class.trim_start_matches('\'').to_owned();
        }
        Ok(rows)
    }

    /// All of it as the table of a class.
    ///
    /// # Errors
    ///
    /// When there is no such table.
    pub fn class_table(&self) -> Result<String> {
        Ok(fs::read_to_string(self.folder.join("class_table.csv"))?)
    }

    fn rows<T: serde::de::DeserializeOwned>(&self, table: &str) -> Result<Vec<T>> {
        let path = self.folder.join(table).with_extension("csv");
        let mut reader = csv::Reader::from_path(&path)?;
        let rows = reader.deserialize().collect::<Result<_, _>>();
        rows.with_context(|| format!("{} cannot be read", path.display()))
    }
}
