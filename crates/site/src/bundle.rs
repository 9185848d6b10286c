//! Builds dist/: compiles, binds, assembles, writes.

use crate::assemble::{File, ICONS, Sources, assemble, style_paths};
use crate::bindings::Bindings;
use crate::compile::Shape;
use crate::edition::Edition;
use crate::toolchain::Toolchain;
use crate::{bindings, compile, dist, licences, page_words, toolchain};
use anyhow::{Context, Result, anyhow};
use noseward_words::TABLES;
use std::fs;
use std::path::{Path, PathBuf};

/// Builds the page into dist/ and gives its files.
///
/// Everything is made in memory first: a build that fails leaves dist/ as it was.
///
/// # Errors
///
/// When a language for the single file is none, and when anything fails.
pub(crate) fn build(root: &Path, languages: &[&str]) -> Result<Vec<File>> {
    let languages = in_single_file(languages)?;
    let toolchain = toolchain::find()?;
    let edition = Edition::of(root, toolchain)?;
    let files = make(root, toolchain, &edition, languages)?;
    let folder = folder(root);
    dist::write(&folder, &files)?;
    println!("the page is in {}", folder.display());
    Ok(files)
}

/// The files of dist/, made from the sources under `root`.
pub(crate) fn make(
    root: &Path,
    toolchain: Toolchain,
    edition: &Edition,
    languages: Vec<&'static str>,
) -> Result<Vec<File>> {
    let whole = compile::compile(root, toolchain, Shape::Whole)?;
    let whole = shorter(bindings::make(&whole)?);
    let in_parts = compile::compile(root, toolchain, Shape::InParts)?;
    let sources = read_sources(&root.join("www"), languages)?;
    let in_parts = bindings::make_in_parts(
        &in_parts,
        &sources.place_styles,
        &sources.leader_styles,
    )?;
    let in_parts = shorter(in_parts);
    let parts = in_parts.later.iter().map(|file| &file.bytes);
    for module in parts.chain([&whole.module, &in_parts.module]) {
        compile::check_no_machine_path(module, root, toolchain)?;
    }
    let licences = licences::collect(root, toolchain)?;
    assemble(&sources, &in_parts, &whole, &licences, edition)
}

/// The style sheets in a folder of `www/styles`, by their names under `www`, in the order of the
/// alphabet.
fn sheets_in(www: &Path, folder: &str) -> Result<Vec<String>> {
    let path = www.join("styles").join(folder);
    let failed = || format!("{} cannot be read", path.display());
    let mut names = Vec::new();
    for entry in fs::read_dir(&path).with_context(failed)? {
        let name = entry.with_context(failed)?.file_name();
        names.push(format!("styles/{folder}/{}", name.to_str().with_context(failed)?));
    }
    names.sort();
    Ok(names)
}

/// The bindings with their script as it is served.
fn shorter(bindings: Bindings) -> Bindings {
    Bindings { glue: script(&bindings.glue), ..bindings }
}

/// A script without comments and spaces that only readers need. The service worker keeps its
/// own: it is no part of a first visit.
fn script(text: &str) -> String {
    minifier::js::minify(text).to_string()
}

/// The same of a style sheet.
fn sheet(text: &str) -> Result<String> {
    let shorter = minifier::css::minify(text).map_err(|error| anyhow!("{error}"));
    Ok(shorter.context("a style sheet is none")?.to_string())
}

/// The folder that holds the finished page.
pub(crate) fn folder(root: &Path) -> PathBuf {
    root.join("dist")
}

/// The languages that the single file is to have, by their keys.
fn in_single_file(names: &[&str]) -> Result<Vec<&'static str>> {
    let known = || TABLES.iter().map(|(key, _)| *key);
    let find = |name: &&str| {
        let found = known().find(|key| key == name);
        let all = known().collect::<Vec<_>>().join(", ");
        found.with_context(|| format!("there is no language {name}; there are {all}"))
    };
    names.iter().map(find).collect()
}

fn read_sources(www: &Path, languages: Vec<&'static str>) -> Result<Sources> {
    let bytes = |name: &str| {
        let path = www.join(name);
        fs::read(&path).with_context(|| {
            format!("{} cannot be read; the page is made from it", path.display())
        })
    };
    let read = |name: &str| {
        String::from_utf8(bytes(name)?).with_context(|| format!("www/{name} is no text"))
    };
    let index = read("index.html")?;
    let styles = style_paths(&index)?.into_iter().map(|path| sheet(&read(path)?));
    let styles = styles.collect::<Result<_>>()?;
    let styles_in = |folder: &str| {
        let sheets = sheets_in(www, folder)?;
        let sheets = sheets.iter().map(|name| sheet(&read(name)?));
        Ok::<_, anyhow::Error>(sheets.collect::<Result<Vec<String>>>()?.concat())
    };
    let read_script = |name: &str| Ok::<_, anyhow::Error>(script(&read(name)?));
    let icon = |name: &str| bytes(&format!("icons/{name}"));
    Ok(Sources {
        styles,
        place_styles: styles_in("places")?,
        leader_styles: styles_in("leaders")?,
        boot: format!("{}\n{}", read_script("boot.js")?, read_script("keep.js")?),
        offline: read_script("offline.js")?,
        unpack: read_script("unpack.js")?,
        rescue: read_script("rescue.js")?,
        worker: page_words::fill_worker(&read("sw.js")?)?,
        manifest: read("noseward.webmanifest")?,
        icon: bytes("icon.svg")?,
        icons: ICONS.into_iter().map(icon).collect::<Result<_>>()?,
        tables: TABLES.iter().map(|(key, bytes)| (*key, bytes.to_vec())).collect(),
        single_languages: languages,
        index: page_words::fill(&index)?,
    })
}
