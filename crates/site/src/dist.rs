//! Writes the finished files to dist/.

use crate::assemble::File;
use crate::names::is_hashed;
use anyhow::{Context, Result};
use std::fs;
use std::path::Path;

/// Makes `folder` hold exactly `files`.
///
/// A visitor never meets half a build: files with hashed names come first, then
/// those with lasting names take the place of the old ones in one step each, and
/// only then the files of the last build go.
pub(crate) fn write(folder: &Path, files: &[File]) -> Result<()> {
    fs::create_dir_all(folder)
        .with_context(|| format!("{} cannot be made", folder.display()))?;
    let (hashed, lasting): (Vec<&File>, Vec<&File>) =
        files.iter().partition(|file| is_hashed(&file.name));
    for file in hashed.into_iter().chain(lasting) {
        put(folder, file).with_context(|| {
            format!("{} cannot be written", folder.join(&file.name).display())
        })?;
    }
    remove_others(folder, files)
        .with_context(|| format!("{} cannot be tidied", folder.display()))
}

fn put(folder: &Path, file: &File) -> Result<()> {
    let unfinished = folder.join(format!("{}.unfinished", file.name));
    fs::write(&unfinished, &file.bytes)?;
    fs::rename(&unfinished, folder.join(&file.name))?;
    Ok(())
}

fn remove_others(folder: &Path, files: &[File]) -> Result<()> {
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let kept = files.iter().any(|file| entry.file_name() == file.name.as_str());
        if kept {
            continue;
        }
        if entry.file_type()?.is_dir() {
            fs::remove_dir_all(entry.path())?;
        } else {
            fs::remove_file(entry.path())?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(name: &str, content: &str) -> File {
        File::visited(name, content)
    }

    #[test]
    fn the_folder_holds_the_last_build_and_nothing_else() {
        let folder = std::env::temp_dir()
            .join(format!("noseward-dist-test-{}", std::process::id()));
        write(&folder, &[file("index.html", "1"), file("old.js", "1")]).unwrap();
        fs::create_dir(folder.join("stray")).unwrap();
        write(&folder, &[file("index.html", "2"), file("new.js", "2")]).unwrap();
        let mut names: Vec<_> = fs::read_dir(&folder)
            .unwrap()
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        assert_eq!(names, ["index.html", "new.js"]);
        assert_eq!(fs::read_to_string(folder.join("index.html")).unwrap(), "2");
        fs::remove_dir_all(folder).unwrap();
    }
}
