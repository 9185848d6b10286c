//! Drives a real spreadsheet program: LibreOffice Calc, without a window.
//!
//! `cargo run -- test spreadsheet` finds the program and runs the tests of this package.

use anyhow::{Context, Result, ensure};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::sync::{Mutex, PoisonError};

/// One start after another: where several start at once on a machine that has not run the
/// program before, one of them sometimes ends with an "Unspecified Application Error".
static STARTING: Mutex<()> = Mutex::new(());

/// Where numbers have a point, or a comma.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Convention {
    /// As in English.
    Point,
    /// As in German.
    Comma,
}

impl Convention {
    /// The program's number of the language.
    fn language(self) -> u16 {
        match self {
            Self::Point => 1033,
            Self::Comma => 1031,
        }
    }

    fn locale(self) -> &'static str {
        match self {
            Self::Point => "en-US",
            Self::Comma => "de-DE",
        }
    }
}

/// A spreadsheet program that has never been used before, with a folder of its own.
#[derive(Debug)]
pub struct Spreadsheet {
    folder: PathBuf,
    convention: Convention,
    /// What stands between cells, in the files that it opens and saves.
    separator: char,
}

impl Spreadsheet {
    /// A program that works in `folder`, which is emptied.
    ///
    /// # Errors
    ///
    /// When the folder cannot be emptied or written to.
    pub fn new(folder: &Path, convention: Convention, separator: char) -> Result<Self> {
        if folder.exists() {
            fs::remove_dir_all(folder).context("the folder cannot be emptied")?;
        }
        let settings = folder.join("profile/user");
        fs::create_dir_all(&settings).context("the folder cannot be made")?;
        let locale = convention.locale();
        let settings_text = format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n\
             <oor:items xmlns:oor=\"http://openoffice.org/2001/registry\">\n\
             <item oor:path=\"/org.openoffice.Setup/L10N\">\
             <prop oor:name=\"ooSetupSystemLocale\" oor:op=\"fuse\">\
             <value>{locale}</value></prop></item>\n</oor:items>\n"
        );
        fs::write(settings.join("registrymodifications.xcu"), settings_text)?;
        Ok(Self { folder: folder.to_owned(), convention, separator })
    }

    /// The table after the program has opened it, kept it as a workbook, opened that, and
    /// saved it as a table again, with quotation marks at every text or only where needed.
    ///
    /// # Errors
    ///
    /// When the program cannot be started, or makes no file.
    pub fn saved_again(&self, table: &str, quotes_all: bool) -> Result<String> {
        let table = self.write(table)?;
        let workbook = self.convert(&table, "xlsx", "workbook", Some(&self.opening()))?;
        let saving = format!(
            "csv:Text - txt - csv (StarCalc):{},{quotes_all},true,false",
            self.common()
        );
        let saved = self.convert(&workbook, &saving, "saved", None)?;
        read(&saved)
    }

    /// What the program makes of the table, as its own XML.
    ///
    /// # Errors
    ///
    /// When the program cannot be started, or makes no file.
    pub fn document(&self, table: &str) -> Result<String> {
        let table = self.write(table)?;
        read(&self.convert(&table, "fods", "document", Some(&self.opening()))?)
    }

    fn write(&self, table: &str) -> Result<PathBuf> {
        let path = self.folder.join("table.csv");
        fs::write(&path, table).context("the table cannot be written")?;
        Ok(path)
    }

    /// Separator, quotation mark, UTF-8, first line, formats of columns, language.
    ///
    /// Source: LibreOffice Help, "CSV filter parameters",
    /// <https://help.libreoffice.org/latest/en-US/text/shared/guide/csv_params.html>.
    fn common(&self) -> String {
        format!("{},34,76,1,,{}", u32::from(self.separator), self.convention.language())
    }

    /// Texts in quotation marks are looked at too, and dates and the like are found: a
    /// person who agrees to everything can do no worse.
    fn opening(&self) -> String {
        format!("CSV:{},false,true", self.common())
    }

    fn convert(
        &self,
        from: &Path,
        to: &str,
        folder: &str,
        filter: Option<&str>,
    ) -> Result<PathBuf> {
        let program = env::var("NOSEWARD_SOFFICE").unwrap_or_else(|_| "soffice".into());
        let profile = address(&self.folder.join("profile"));
        let folder = self.folder.join(folder);
        let mut command = Command::new(&program);
        command.arg(format!("-env:UserInstallation={profile}")).arg("--headless");
        command.args(filter.map(|filter| format!("--infilter={filter}")));
        command.args(["--convert-to", to, "--outdir"]).arg(&folder).arg(from);
        let mut run = || -> Result<Output> {
            let _turn = STARTING.lock().unwrap_or_else(PoisonError::into_inner);
            command.stdin(Stdio::null()).output().with_context(|| {
                format!("{program} cannot be started; run: cargo run -- test spreadsheet")
            })
        };
        let end = to.split(':').next().unwrap_or(to);
        let name = from.with_extension(end);
        let made = folder.join(name.file_name().context("a file has a name")?);
        // It ends well even where it made nothing; where it fell over, it gets another start.
        let mut output = run()?;
        if !made.exists() {
            output = run()?;
        }
        ensure!(
            made.exists(),
            "{program} made no {end}: {}{}",
            String::from_utf8_lossy(&output.stdout),
            String::from_utf8_lossy(&output.stderr)
        );
        Ok(made)
    }
}

fn read(path: &Path) -> Result<String> {
    fs::read_to_string(path).context("the program made no text")
}

/// A path as an address.
fn address(path: &Path) -> String {
    let path = path.to_string_lossy().replace('\\', "/");
    let path = path.replace('%', "%25").replace(' ', "%20");
    format!("file:///{}", path.trim_start_matches('/'))
}
