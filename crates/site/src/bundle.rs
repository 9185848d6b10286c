//! Builds dist/: compiles, binds, assembles, writes.

use crate::assemble::{File, Sources, assemble, style_paths};
use crate::{bindings, compile, dist, toolchain};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};

/// Builds the page into dist/ and gives its files.
///
/// Everything is made in memory first: a build that fails leaves dist/ as it was.
pub(crate) fn build(root: &Path) -> Result<Vec<File>> {
    let module = compile::compile(root, toolchain::find()?)?;
    let bindings = bindings::make(&module)?;
    let files = assemble(&read_sources(&root.join("www"))?, &bindings)?;
    let folder = folder(root);
    dist::write(&folder, &files)?;
    println!("the page is in {}", folder.display());
    Ok(files)
}

/// The folder that holds the finished page.
pub(crate) fn folder(root: &Path) -> PathBuf {
    root.join("dist")
}

fn read_sources(www: &Path) -> Result<Sources> {
    let read = |name: &str| {
        let path = www.join(name);
        fs::read_to_string(&path).with_context(|| {
            format!("{} cannot be read; the page is made from it", path.display())
        })
    };
    let index = read("index.html")?;
    let styles = style_paths(&index)?.into_iter().map(read).collect::<Result<_>>()?;
    let icon = read("icon.svg")?.into_bytes();
    Ok(Sources { styles, boot: read("boot.js")?, icon, index })
}
