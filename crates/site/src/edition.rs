//! Which edition of the page a build is: version, date, build.

use crate::assemble::File;
use crate::command::output;
use crate::compile::compiler;
use crate::names::{digest, is_hashed};
use crate::toolchain::Toolchain;
use anyhow::{Context, Result};
use jiff::Timestamp;
use std::env;
use std::ffi::OsString;
use std::path::Path;
use std::process::Command;

/// Stands for the build in files whose build is not known yet, since it follows from
/// their content.
pub(crate) const BUILD_MARK: &str = "{{build}}";
/// The same for the words that a person reads.
const SHORT_BUILD_MARK: &str = "{{short-build}}";

/// Characters of a build: as many as in the name of a file.
const DIGITS: usize = 16;
/// Characters that a person reads and tells another.
const SHORT_DIGITS: usize = 8;

/// What of an edition is known before its files are.
#[derive(Debug)]
pub(crate) struct Edition {
    version: String,
    /// A day in universal time.
    date: Option<Timestamp>,
    /// The compiler and its version: another may make other bytes of the same sources.
    compiler: String,
}

impl Edition {
    /// An edition with this version, from a moment in seconds since 1970, made by a
    /// compiler.
    pub(crate) fn new(
        version: &str,
        seconds: Option<i64>,
        compiler: &str,
    ) -> Result<Self> {
        let date = seconds.map(Timestamp::from_second).transpose();
        let date = date.with_context(|| {
            format!("{seconds:?} seconds after 1970 is no date of an edition")
        })?;
        Ok(Self { version: version.to_owned(), date, compiler: compiler.to_owned() })
    }

    /// The edition of the sources under `root`, as this toolchain makes it.
    ///
    /// Its date is `SOURCE_DATE_EPOCH` if that is set, otherwise that of the last commit;
    /// never the clock's, so that the same sources give the same page.
    pub(crate) fn of(root: &Path, toolchain: Toolchain) -> Result<Self> {
        Self::new(
            env!("CARGO_PKG_VERSION"),
            seconds(env::var_os("SOURCE_DATE_EPOCH"), || last_commit(root))?,
            &compiler(toolchain)?,
        )
    }

    /// Version, date, build and compiler; the build is still its mark.
    pub(crate) fn words(&self) -> String {
        let date = match &self.date {
            Some(date) => date.strftime("%Y-%m-%d").to_string(),
            None => "undated".to_owned(),
        };
        let Self { version, compiler, .. } = self;
        format!("{version}, {date}, {SHORT_BUILD_MARK}, {compiler}")
    }
}

fn seconds(
    chosen: Option<OsString>,
    committed: impl FnOnce() -> Option<String>,
) -> Result<Option<i64>> {
    let chosen = chosen.filter(|chosen| !chosen.is_empty());
    if let Some(chosen) = chosen {
        let number = chosen.to_str().and_then(|text| text.parse().ok());
        return number.map(Some).with_context(|| {
            format!(
                "SOURCE_DATE_EPOCH is {chosen:?}; give whole seconds since 1970, or unset it"
            )
        });
    }
    Ok(committed().and_then(|text| text.parse().ok()))
}

fn last_commit(root: &Path) -> Option<String> {
    output(Command::new("git").current_dir(root).args(["log", "-1", "--format=%ct"]))
}

/// Puts the build in the place of its marks and gives it: a digest over all names and
/// contents.
pub(crate) fn fill_build(files: &mut [File]) -> String {
    let mut all = Vec::new();
    for file in &*files {
        for part in [file.name.as_bytes(), &file.bytes] {
            all.extend(part.len().to_le_bytes());
            all.extend(part);
        }
    }
    let build = digest(&all)[..DIGITS].to_owned();
    for file in files {
        // A file named after its content stays as it is.
        if !is_hashed(&file.name)
            && let Ok(text) = std::str::from_utf8(&file.bytes)
            && (text.contains(BUILD_MARK) || text.contains(SHORT_BUILD_MARK))
        {
            file.bytes = text
                .replace(BUILD_MARK, &build)
                .replace(SHORT_BUILD_MARK, &build[..SHORT_DIGITS])
                .into_bytes();
        }
    }
    build
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_words_name_version_date_and_build() {
        let words =
            |seconds| Edition::new("0.1.0", seconds, "rustc 1.95.0").unwrap().words();
        // 25 November 2026, noon.
        assert_eq!(
            words(Some(1_795_608_000)),
            "0.1.0, 2026-11-25, {{short-build}}, rustc 1.95.0"
        );
        assert_eq!(words(Some(0)), "0.1.0, 1970-01-01, {{short-build}}, rustc 1.95.0");
        assert_eq!(words(None), "0.1.0, undated, {{short-build}}, rustc 1.95.0");
        assert!(Edition::new("0.1.0", Some(i64::MAX), "").is_err());
    }

    #[test]
    fn the_chosen_date_goes_before_that_of_the_commit() {
        let committed = || Some("1".to_owned());
        assert_eq!(seconds(Some("2".into()), committed).unwrap(), Some(2));
        assert_eq!(seconds(Some("".into()), committed).unwrap(), Some(1));
        assert_eq!(seconds(None, committed).unwrap(), Some(1));
        assert_eq!(seconds(None, || None).unwrap(), None);
        let error = seconds(Some("today".into()), committed).unwrap_err().to_string();
        assert!(
            error.contains("SOURCE_DATE_EPOCH") && error.contains("today"),
            "{error}"
        );
    }

    #[test]
    fn the_build_follows_every_name_and_content() {
        let build = |files: &[(&str, &str)]| {
            let mut files: Vec<File> =
                files.iter().map(|(name, text)| File::visited(name, *text)).collect();
            fill_build(&mut files)
        };
        let first = build(&[("a", "bc"), ("d", "")]);
        assert_eq!(first, build(&[("a", "bc"), ("d", "")]));
        for other in [[("ab", "c"), ("d", "")], [("a", "bd"), ("d", "")]] {
            assert_ne!(first, build(&other));
        }
        let mut marked = [File::visited("a", "{{build}} {{short-build}}")];
        let build = fill_build(&mut marked);
        assert_eq!(marked[0].bytes, format!("{build} {}", &build[..8]).into_bytes());
    }
}
