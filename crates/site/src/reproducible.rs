//! The same sources give the same page, byte for byte, wherever they lie.

use crate::assemble::File;
use crate::bundle;
use crate::edition::Edition;
use crate::toolchain::Toolchain;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// Builds the tracked sources once more, in another folder and from nothing, and compares
/// every file with those that lie in dist/.
pub(crate) fn check(root: &Path, toolchain: Toolchain) -> Result<()> {
    let Some(tracked) = tracked(root)? else {
        println!("(not checked: these sources are in no git repository)");
        return Ok(());
    };
    let copy = root.join("target").join("build again, elsewhere");
    if copy.exists() {
        fs::remove_dir_all(&copy)
            .with_context(|| format!("{} cannot be emptied", copy.display()))?;
    }
    for path in tracked {
        copy_file(&root.join(&path), &copy.join(&path))?;
    }
    // The copy has no history, and so no date of its own.
    let mut again =
        bundle::make(&copy, toolchain, &Edition::of(root, toolchain)?, Vec::new())?;
    again.sort_by(|a, b| a.name.cmp(&b.name));
    let files = read(&bundle::folder(root))?;
    compare(&files, &again)?;
    fs::remove_dir_all(&copy)
        .with_context(|| format!("{} cannot be removed", copy.display()))?;
    println!("built again elsewhere: {} files, all the same", files.len());
    Ok(())
}

/// The files of a folder by name.
fn read(folder: &Path) -> Result<Vec<File>> {
    let failed = || format!("{} cannot be read", folder.display());
    let mut files = Vec::new();
    for entry in fs::read_dir(folder).with_context(failed)? {
        let path = entry.with_context(failed)?.path();
        let name = path.file_name().and_then(|name| name.to_str());
        let bytes = fs::read(&path).with_context(failed)?;
        files.push(File::beside(name.with_context(failed)?, bytes));
    }
    files.sort_by(|a, b| a.name.cmp(&b.name));
    Ok(files)
}

/// The files that git knows, as they are now.
fn tracked(root: &Path) -> Result<Option<Vec<PathBuf>>> {
    if !root.join(".git").exists() {
        return Ok(None);
    }
    let mut git = Command::new("git");
    let listed = git.current_dir(root).args(["ls-files", "-z"]).output();
    let listed = listed.context("`git ls-files` cannot be started; install git")?;
    ensure!(
        listed.status.success(),
        "`git ls-files` failed: {}",
        String::from_utf8_lossy(&listed.stderr)
    );
    let names = String::from_utf8(listed.stdout).context("a name in git is no text")?;
    let paths = names.split_terminator('\0').map(PathBuf::from);
    // A file that was deleted and not yet committed is no part of the sources.
    Ok(Some(paths.filter(|path| root.join(path).exists()).collect()))
}

fn copy_file(from: &Path, to: &Path) -> Result<()> {
    let folder = to.parent().context("a file lies in a folder")?;
    fs::create_dir_all(folder)
        .and_then(|()| fs::copy(from, to))
        .with_context(|| format!("{} cannot be copied", from.display()))?;
    Ok(())
}

fn compare(first: &[File], again: &[File]) -> Result<()> {
    let names = |files: &[File]| -> Vec<String> {
        files.iter().map(|file| file.name.clone()).collect()
    };
    // A difference in a file named after its content shows in its name.
    ensure!(
        names(first) == names(again),
        "the same sources gave other files in another folder: {:?}, then {:?}; a path, a \
         date or an order of this machine gets into one of them",
        names(first),
        names(again)
    );
    for (first, again) in first.iter().zip(again) {
        let place = first.bytes.iter().zip(&again.bytes).position(|(a, b)| a != b);
        ensure!(
            first.bytes == again.bytes,
            "the same sources gave another {} in another folder, from byte {} on",
            first.name,
            place.unwrap_or_else(|| first.bytes.len().min(again.bytes.len()))
        );
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_difference_is_named() {
        let files = |texts: &[(&str, &str)]| -> Vec<File> {
            let file = |(name, text): &(&str, &str)| File::visited(name, *text);
            texts.iter().map(file).collect()
        };
        let first = files(&[("a", "same"), ("b", "12345")]);
        compare(&first, &files(&[("a", "same"), ("b", "12345")])).unwrap();
        for (other, words) in [
            (
                files(&[("a", "same"), ("b", "12045")]),
                "another b in another folder, from byte 2",
            ),
            (files(&[("a", "same"), ("b", "1234")]), "from byte 4"),
            (files(&[("a", "same"), ("c", "12345")]), "\"c\""),
            (files(&[("a", "same")]), "other files"),
        ] {
            let error = compare(&first, &other).unwrap_err().to_string();
            assert!(error.contains(words), "{error}");
        }
    }
}
