//! A PDF on a disk, and what the programs say of it.

use crate::picture::Picture;
use anyhow::{Context, Result, ensure};
use noseward_drawing::paper::{DocumentInfo, Page, pdf};
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

/// 25.4 mm are an inch, and so are 72 points.
pub const MM_PER_INCH: f64 = 25.4;
/// Points of a PDF in an inch.
pub const POINTS_PER_INCH: f64 = 72.0;

/// A PDF that was written.
#[derive(Debug)]
pub struct Document {
    path: PathBuf,
}

impl Document {
    /// Writes pages as a PDF of this name into the folder of the tests.
    ///
    /// # Errors
    ///
    /// When the disk refuses.
    pub fn write(name: &str, pages: &[Page], language: &str) -> Result<Self> {
        let title = &pages.first().context("a document has pages")?.scene.name;
        let folder =
            Path::new(env!("CARGO_MANIFEST_DIR")).join("../../target/paper-tests");
        fs::create_dir_all(&folder).context("there is no folder for the PDFs")?;
        let path = folder.join(format!("{name}.pdf"));
        fs::write(&path, pdf(pages, &DocumentInfo { title, language }))
            .with_context(|| format!("{} cannot be written", path.display()))?;
        Ok(Self { path })
    }

    /// Fails with what qpdf finds wrong.
    ///
    /// # Errors
    ///
    /// When there is anything.
    pub fn check(&self) -> Result<()> {
        self.ask("qpdf", &["--check"], &[]).map(drop)
    }

    /// What pdfinfo tells of the whole.
    ///
    /// # Errors
    ///
    /// When it reads it with complaints.
    pub fn info(&self) -> Result<String> {
        self.ask("pdfinfo", &[], &[])
    }

    /// The tree of headings, paragraphs, tables and figures with their words.
    ///
    /// # Errors
    ///
    /// When it reads it with complaints.
    pub fn structure(&self) -> Result<String> {
        self.ask("pdfinfo", &["-struct-text"], &[])
    }

    /// The objects of the file, without streams.
    ///
    /// # Errors
    ///
    /// When it is no PDF.
    pub fn objects(&self) -> Result<Vec<Value>> {
        let text = self.ask("qpdf", &["--json=2", "--json-key=qpdf"], &[])?;
        let all: Value = serde_json::from_str(&text).context("qpdf tells no JSON")?;
        let objects = all["qpdf"][1].as_object().context("qpdf tells no objects")?;
        Ok(objects.values().map(|object| object["value"].clone()).collect())
    }

    /// The words of a page, from 1, in the order in which they stand in the file.
    ///
    /// # Errors
    ///
    /// When the program reads it with complaints.
    pub fn text(&self, page: usize) -> Result<String> {
        let page = page.to_string();
        let before = ["-raw", "-enc", "UTF-8", "-f", &page, "-l", &page];
        self.ask("pdftotext", &before, &["-"])
    }

    /// A page, from 1, as poppler draws it with so many pixels an inch.
    ///
    /// # Errors
    ///
    /// When the program draws it with complaints.
    pub fn picture(&self, page: usize, per_inch: u32) -> Result<Picture> {
        let root = self.path.with_extension(format!("{page}-{per_inch}"));
        let (page, resolution) = (page.to_string(), per_inch.to_string());
        let root = root.to_str().context("the folder's name is no text")?;
        let before = ["-gray", "-singlefile", "-r", &resolution, "-f", &page];
        self.ask("pdftoppm", &before, &[root])?;
        let path = format!("{root}.pgm");
        let picture = Picture::read(&fs::read(&path)?, per_inch);
        fs::remove_file(&path)?;
        picture
    }

    fn ask(&self, program: &str, before: &[&str], after: &[&str]) -> Result<String> {
        let mut command = Command::new(program);
        command.args(before).arg(&self.path).args(after).stdin(Stdio::null());
        let output = command.output().with_context(|| {
            format!("{program} cannot be started; run: cargo run -- test paper")
        })?;
        let errors = String::from_utf8_lossy(&output.stderr);
        ensure!(
            output.status.success() && errors.is_empty(),
            "{program} {}: {}\n{errors}",
            self.path.display(),
            output.status
        );
        String::from_utf8(output.stdout).context("the program tells no text")
    }
}
