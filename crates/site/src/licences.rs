//! The licence texts of everything that is compiled into the page.
//!
//! Each crate's own files are taken where it brings them; where it brings none, the usual
//! text of its licence with the authors that its manifest names.

use crate::compile::cargo_of;
use crate::toolchain::{TARGET, Toolchain};
use anyhow::{Context, Result, ensure};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// The package of the page.
const PAGE: &str = "noseward-web";

/// The licences that we take, the one we would rather take first, each with what the
/// names of files with its text hold. `deny.toml` says which there may be.
const LICENCES: [(&str, &str); 8] = [
    ("MIT", "MIT"),
    ("Zlib", "ZLIB"),
    ("ISC", "ISC"),
    ("BSD-2-Clause", "BSD"),
    ("BSD-3-Clause", "BSD"),
    ("Unicode-3.0", "UNICODE"),
    ("BSL-1.0", "BOOST"),
    ("Apache-2.0", "APACHE"),
];

/// The usual texts, for crates that bring none.
const USUAL: [(&str, &str); 2] = [
    ("MIT", include_str!("../licences/MIT.txt")),
    ("BSD-2-Clause", include_str!("../licences/BSD-2-Clause.txt")),
];
const HOLDERS: &str = "{holders}";

/// What the compiler puts into every module. Names and licences are those of
/// `COPYRIGHT-library.html` of Rust 1.95.
const RUST: &str =
    "The Rust standard library, with dlmalloc, hashbrown and compiler-builtins";
const RUST_HOLDERS: &str = "The Rust Project Developers (see https://thanks.rust-lang.org); \
    for dlmalloc 2014 Alex Crichton; for hashbrown 2016 Amanieu d'Antras";
const UNICODE: &str = "The Unicode tables in the Rust standard library";
const UNICODE_TEXT: &str = include_str!("../licences/Unicode-3.0.txt");

#[derive(Debug, Deserialize)]
struct Metadata {
    packages: Vec<Package>,
    resolve: Resolve,
}

#[derive(Debug, Deserialize)]
struct Package {
    id: String,
    name: String,
    version: String,
    license: Option<String>,
    source: Option<String>,
    manifest_path: String,
    authors: Vec<String>,
    targets: Vec<Target>,
}

#[derive(Debug, Deserialize)]
struct Target {
    kind: Vec<String>,
}

#[derive(Debug, Deserialize)]
struct Resolve {
    nodes: Vec<Node>,
}

#[derive(Debug, Deserialize)]
struct Node {
    id: String,
    deps: Vec<Dependency>,
}

#[derive(Debug, Deserialize)]
struct Dependency {
    pkg: String,
    dep_kinds: Vec<Kind>,
}

#[derive(Debug, Deserialize)]
struct Kind {
    /// Nothing for what is compiled in.
    kind: Option<String>,
}

/// All texts, each once, under the names of what they are for.
pub(crate) fn collect(root: &Path, toolchain: Toolchain) -> Result<String> {
    let mut command = cargo_of(root, toolchain);
    command.args(["metadata", "--format-version", "1", "--locked"]);
    command.args(["--filter-platform", TARGET]);
    let output = command.output().context("`cargo metadata` cannot be started")?;
    ensure!(
        output.status.success(),
        "`cargo metadata` does not say what the page is made of: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    let metadata: Metadata = serde_json::from_slice(&output.stdout)
        .context("the answer of `cargo metadata` cannot be read")?;
    let mut texts = BTreeMap::from([
        (trimmed(UNICODE_TEXT), BTreeSet::from([UNICODE.to_owned()])),
        (usual("MIT", RUST_HOLDERS).context("MIT")?, BTreeSet::from([RUST.to_owned()])),
    ]);
    for package in compiled_in(&metadata)? {
        for text in texts_of(package)? {
            let name = format!("{} {}", package.name, package.version);
            texts.entry(text).or_default().insert(name);
        }
    }
    let own = fs::read_to_string(root.join("LICENSE")).context("LICENSE")?;
    Ok(document(&trimmed(&own), &texts))
}

/// What is compiled into the page beside our own crates. Macros are not: they run in the
/// compiler.
fn compiled_in(metadata: &Metadata) -> Result<Vec<&Package>> {
    let package = |id: &str| metadata.packages.iter().find(|package| package.id == id);
    let page = metadata.packages.iter().find(|package| package.name == PAGE);
    let page = page.with_context(|| format!("there is no package {PAGE}"))?;
    let mut waiting = vec![page.id.as_str()];
    let mut seen = BTreeSet::new();
    let mut found = Vec::new();
    while let Some(id) = waiting.pop() {
        let package = package(id).with_context(|| format!("{id} is not described"))?;
        let mut kinds = package.targets.iter().flat_map(|target| &target.kind);
        if kinds.any(|kind| kind == "proc-macro") || !seen.insert(id) {
            continue;
        }
        // Our own crates come from no registry.
        if package.source.is_some() {
            found.push(package);
        }
        let node = metadata.resolve.nodes.iter().find(|node| node.id == id);
        for dependency in &node.with_context(|| format!("{id} is not resolved"))?.deps {
            if dependency.dep_kinds.iter().any(|kind| kind.kind.is_none()) {
                waiting.push(&dependency.pkg);
            }
        }
    }
    Ok(found)
}

/// The licences that we take of those that an expression of SPDX offers.
fn elected(expression: &str) -> Result<Vec<&'static str>> {
    expression
        .split(" AND ")
        .map(|part| {
            let offers: Vec<&str> = part
                .trim_matches(['(', ')', ' '])
                .split(" OR ")
                .flat_map(|offer| offer.split('/'))
                .map(str::trim)
                .collect();
            let mut known = LICENCES.iter().map(|(name, _)| *name);
            known.find(|name| offers.contains(name)).with_context(|| {
                format!("none of the licences {part:?} is known to licences.rs")
            })
        })
        .collect()
}

/// The texts that go with a package.
fn texts_of(package: &Package) -> Result<Vec<String>> {
    let who = format!("{} {}", package.name, package.version);
    let expression = package.license.as_deref();
    let expression = expression.with_context(|| format!("{who} names no licence"))?;
    let files = files(Path::new(&package.manifest_path))?;
    let elected = elected(expression).context(who.clone())?;
    let mut texts = Vec::new();
    for licence in &elected {
        texts.push(text(licence, elected.len() > 1, &files, &package.holders()).with_context(
            || {
                format!(
                    "{who} brings no text of its licence {licence}, and there is none in \
                     crates/site/licences/"
                )
            },
        )?);
    }
    // Of whom it is, and what has to be told besides.
    let told = files.iter().filter(|(name, _)| name.starts_with("NOTICE"));
    texts.extend(told.map(|(_, text)| text.clone()));
    Ok(texts)
}

/// The text of a licence among the files of a crate, or else the usual one.
fn text(
    licence: &str,
    one_of_several: bool,
    files: &[(String, String)],
    holders: &str,
) -> Option<String> {
    let (_, part) = LICENCES.iter().find(|(name, _)| *name == licence)?;
    let (named, plain): (Vec<_>, Vec<_>) = files
        .iter()
        .filter(|(name, _)| !name.starts_with("NOTICE"))
        .partition(|(name, _)| LICENCES.iter().any(|(_, part)| name.contains(part)));
    let own = named.into_iter().find(|(name, _)| name.contains(part));
    // A file that names no licence speaks for the only one.
    let plain = plain.into_iter().find(|_| !one_of_several);
    own.or(plain).map(|(_, text)| text.clone()).or_else(|| usual(licence, holders))
}

fn usual(licence: &str, holders: &str) -> Option<String> {
    let (_, text) = USUAL.iter().find(|(name, _)| *name == licence)?;
    Some(trimmed(&text.replace(HOLDERS, holders)))
}

impl Package {
    /// Whose it is, without addresses.
    fn holders(&self) -> String {
        let name =
            |author: &String| author.split('<').next().unwrap_or("").trim().to_owned();
        let names: Vec<String> =
            self.authors.iter().map(name).filter(|name| !name.is_empty()).collect();
        if names.is_empty() {
            format!("the authors of {}", self.name)
        } else {
            names.join(", ")
        }
    }
}

/// The files of a crate that hold licences or notices, by names in capitals.
fn files(manifest: &Path) -> Result<Vec<(String, String)>> {
    let folder = manifest.parent().context("a manifest lies in a folder")?;
    let mut files = Vec::new();
    for folder in [folder.to_owned(), folder.join("LICENSES")] {
        let Ok(entries) = fs::read_dir(&folder) else { continue };
        for entry in entries {
            let path = entry?.path();
            let name =
                path.file_name().unwrap_or_default().to_string_lossy().to_uppercase();
            let of_licences = folder.ends_with("LICENSES");
            let speaks = ["LICENSE", "LICENCE", "NOTICE"];
            if path.is_file()
                && (of_licences || speaks.iter().any(|start| name.starts_with(start)))
            {
                let text = fs::read(&path)
                    .with_context(|| format!("{} cannot be read", path.display()))?;
                files.push((name, trimmed(&String::from_utf8_lossy(&text))));
            }
        }
    }
    files.sort();
    Ok(files)
}

/// Without what differs between machines and editors.
fn trimmed(text: &str) -> String {
    let lines: Vec<&str> =
        text.trim_start_matches('\u{feff}').lines().map(str::trim_end).collect();
    lines.join("\n").trim_matches('\n').to_owned()
}

/// The first and the last words of what many crates share, in the midst of what is theirs.
const SHARED: [(&str, &str); 2] = [
    ("Permission is hereby granted, free of charge", "DEALINGS IN THE SOFTWARE."),
    ("TERMS AND CONDITIONS FOR USE", "END OF TERMS AND CONDITIONS"),
];

/// What of a text many crates share, and what stands around it.
fn divided(text: &str) -> (&str, String) {
    let shared = SHARED.iter().find_map(|(first, last)| {
        let start = text.find(first)?;
        let end = start + text[start..].find(last)? + last.len();
        // Texts of several licences are left as they are.
        let once = text.matches(first).count() == 1;
        once.then(|| (&text[start..end], format!("{}{}", &text[..start], &text[end..])))
    });
    let (shared, own) = shared.unwrap_or((text, String::new()));
    (shared, own.trim_matches('\n').to_owned())
}

/// Texts that differ in their line breaks alone are told once.
fn document(own: &str, texts: &BTreeMap<String, BTreeSet<String>>) -> String {
    /// Whose a text is: what stands around it, with the names.
    type Whose = BTreeMap<String, BTreeSet<String>>;
    let mut sections: BTreeMap<String, (&str, Whose)> = BTreeMap::new();
    for (text, names) in texts {
        let (shared, own) = divided(text);
        let words: Vec<&str> = shared.split_whitespace().collect();
        let section = sections.entry(words.join(" ").to_lowercase());
        let (_, whose) = section.or_insert_with(|| (shared, Whose::new()));
        whose.entry(own).or_default().extend(names.iter().cloned());
    }
    let rule = "=".repeat(80);
    let mut all = format!("Noseward\n\n{own}\n\n{rule}\nIt is made with what follows.\n");
    for (shared, whose) in sections.values() {
        all += &format!("\n{rule}\n");
        for (own, names) in whose {
            let names: Vec<&str> = names.iter().map(String::as_str).collect();
            all += &format!("{}\n\n", names.join("\n"));
            if !own.is_empty() {
                all += &format!("{own}\n\n");
            }
        }
        all += &format!("{shared}\n");
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_the_licences_that_are_offered_one_is_taken() {
        for (expression, wanted) in [
            ("MIT", &["MIT"][..]),
            ("Apache-2.0 OR MIT", &["MIT"]),
            ("Unlicense/MIT", &["MIT"]),
            ("Apache-2.0", &["Apache-2.0"]),
            ("Apache-2.0 OR BSL-1.0", &["BSL-1.0"]),
            ("(MIT OR Apache-2.0) AND Unicode-3.0", &["MIT", "Unicode-3.0"]),
        ] {
            assert_eq!(elected(expression).unwrap(), wanted, "{expression}");
        }
        for expression in ["GPL-3.0-only", "MIT AND GPL-3.0-only", "", "MITX"] {
            assert!(elected(expression).is_err(), "{expression}");
        }
    }

    #[test]
    fn what_crates_share_is_told_once_and_what_is_theirs_each_time() {
        let mit = |holder: &str| usual("MIT", holder).unwrap();
        let wrapped = mit("the third").replace(' ', "\n").replacen('\n', " ", 3);
        let names = |name: &str| BTreeSet::from([name.to_owned()]);
        let texts = BTreeMap::from([
            (mit("the first"), names("one")),
            (format!("Title\n\n{}", mit("the second")), names("two")),
            (wrapped, names("three")),
            (format!("{}\n\n{}", mit("the fourth"), mit("the fifth")), names("four")),
            ("Something else.".to_owned(), names("five")),
        ]);
        let all = document("Ours.", &texts);
        for part in [
            "Ours.",
            "one\n\nCopyright (c) the first\n",
            "two\n\nTitle\n\nCopyright (c) the second\n",
            "three\n\nCopyright (c) the third\n",
            "four\n\nCopyright (c) the fourth\n",
            "Copyright (c) the fifth\n",
            "five\n\nSomething else.\n",
        ] {
            assert!(all.contains(part), "{part} is not in {all}");
        }
        // Once for three, and twice in the text of the fourth.
        assert_eq!(all.matches("Permission is hereby granted").count(), 3, "{all}");
    }

    fn file(name: &str) -> (String, String) {
        (name.to_owned(), format!("text of {name}"))
    }

    #[test]
    fn a_text_of_its_own_goes_before_the_usual_one() {
        let both = [file("LICENSE-APACHE"), file("LICENSE-MIT"), file("NOTICE")];
        let found = text("MIT", false, &both, "whoever").unwrap();
        assert_eq!(found, "text of LICENSE-MIT");
        let plain = [file("LICENSE.TXT"), file("NOTICE")];
        assert_eq!(text("MIT", false, &plain, "whoever").unwrap(), "text of LICENSE.TXT");
        let usual = text("MIT", true, &plain, "whoever").unwrap();
        assert!(usual.starts_with("Copyright (c) whoever\n"), "{usual}");
        let other = [file("LICENSE-APACHE")];
        assert!(text("MIT", false, &other, "whoever").unwrap().contains("whoever"));
        assert_eq!(text("Apache-2.0", false, &[file("LICENSE-MIT")], "whoever"), None);
    }

    #[test]
    fn every_crate_of_the_page_has_its_text() {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let all = collect(&root, Toolchain::Active).unwrap();
        assert_eq!(all, collect(&root, Toolchain::Active).unwrap());
        for name in ["\nlibm ", "\nserde_json ", "\nqrcodegen ", "\nmaud ", RUST, UNICODE]
        {
            assert!(all.contains(name), "{name}");
        }
        // Compiled for this machine only, or run by the compiler.
        for name in ["\naxum ", "\nsyn ", "\nproptest ", "\nnoseward-link "] {
            assert!(!all.contains(name), "{name}");
        }
        assert!(!all.contains(HOLDERS) && !all.contains('\r'));
        let names: Vec<&str> = all.lines().filter(|l| l.starts_with("serde ")).collect();
        assert_eq!(names.len(), 1, "each stands once");
    }
}
