//! Cuts the compiled module into the part that every visit loads and the parts that are
//! loaded when somebody needs them. All share one memory.

use crate::join::joined;
use anyhow::{Context, Result, anyhow, ensure};
use std::fs;
use std::io::ErrorKind;
use std::path::Path;
use wasm_encoder::{RawSection, Section};
use wasmparser::{Parser, Payload};

/// How the main part names the script that loads the others.
pub(crate) const LINK_NAME: &str = "./__wasm_split.js";
/// The part that is loaded before any other: every part needs it.
const CARRIER: &str = "notebook";
/// The style sheet of the places.
const SHEET: &str = "places.css";
/// That of those that only whoever leads opens.
const LEADERS_SHEET: &str = "sheet.css";
/// The parts that only whoever leads uses, as `Part::is_for_leaders` says in noseward-web. What
/// only they need is neither fetched nor kept where nobody opens one of them.
pub(crate) const FOR_LEADERS: [&str; 3] = ["setup", "class", "paper"];
/// What is smaller than this, in bytes, is carried: together they compress better, and a place
/// that loads them for nothing stays within its budget.
const SMALL: usize = 16_000;
/// The same of what joins the [`CARRIER`], which every place loads.
const SMALL_FOR_ALL: usize = 8_500;
/// The same of the file that only one part loads: what others share with it alone joins it.
const SMALL_PART: usize = 3_000;

/// What loads a part.
const LOAD_PART: &str = include_str!("../../../www/part.js");

/// A module in parts.
#[derive(Debug)]
pub(crate) struct Split {
    /// What every visit loads, still without bindings.
    pub(crate) main: Vec<u8>,
    /// The script that loads the parts; it stands behind that of the bindings, in the same
    /// file: two files would have to name each other, and each is named after its content.
    pub(crate) link: String,
    /// The files of the parts.
    pub(crate) files: Vec<PartFile>,
    /// The parts.
    pub(crate) parts: Vec<Part>,
}

/// A file that is loaded later.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct PartFile {
    /// The name by which the script asks for it.
    pub(crate) name: String,
    pub(crate) bytes: Vec<u8>,
}

/// What is loaded at once when somebody needs it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Part {
    /// As the module asks for it.
    pub(crate) name: String,
    /// The files, the [`CARRIER`]'s first.
    pub(crate) files: Vec<String>,
    /// Whether only whoever leads uses it.
    pub(crate) is_for_leaders: bool,
}

/// Cuts the module at `path`, which was linked with its relocations. The style sheet of the
/// places is loaded with every part, so that no place is seen without it, and that of the places
/// that only whoever leads opens with theirs.
pub(crate) fn split(path: &Path, sheet: &str, leaders_sheet: &str) -> Result<Split> {
    let module =
        fs::read(path).with_context(|| format!("{} cannot be read", path.display()))?;
    let folder = path.with_extension("parts");
    // What an earlier cut has left is of no part.
    fs::remove_dir_all(&folder).or_else(|error| match error.kind() {
        ErrorKind::NotFound => Ok(()),
        _ => Err(error),
    })?;
    let main = folder.join("main.wasm");
    let mut options = wasm_split_cli_support::Options::new(&module);
    options.output_dir = &folder;
    options.main_out_path = &main;
    options.link_name = LINK_NAME;
    options.main_module = "./noseward.js";
    let found = wasm_split_cli_support::transform(options)
        .map_err(|error| anyhow!("{} cannot be cut: {error:#}", path.display()))?;
    let mut files = Vec::new();
    for path in found.split_modules {
        let name = path.file_name().and_then(|name| name.to_str());
        let name = name.context("a part of the module has no name")?.to_owned();
        files.push(PartFile { name, bytes: fs::read(&path)? });
    }
    files.sort_by(|a, b| a.name.cmp(&b.name));
    let mut parts: Vec<Part> = found
        .prefetch_map
        .into_iter()
        .map(|(name, stems)| {
            let files = stems.into_iter().map(|stem| format!("{stem}.wasm")).collect();
            let is_for_leaders = FOR_LEADERS.contains(&name.as_str());
            Part { name, files, is_for_leaders }
        })
        .collect();
    parts.sort_by(|a, b| a.name.cmp(&b.name));
    let (mut files, mut parts) = carried(files, parts)?;
    files.push(PartFile { name: SHEET.into(), bytes: sheet.into() });
    files.push(PartFile { name: LEADERS_SHEET.into(), bytes: leaders_sheet.into() });
    for part in &mut parts {
        part.files.push(SHEET.into());
        if part.is_for_leaders {
            part.files.push(LEADERS_SHEET.into());
        }
    }
    Ok(Split { main: fs::read(main)?, link: link(&files, &parts)?, files, parts })
}

/// Joins each small file with a large one that every pupils' part loads which needs the small one,
/// and as few others of these as can be; the [`CARRIER`] is loaded by every part, and first. A
/// leaders' part that needs it too loads the large one whole, so that pupils' parts stay as they
/// are without it. What only whoever leads needs is in no file that pupils load.
fn carried(files: Vec<PartFile>, parts: Vec<Part>) -> Result<(Vec<PartFile>, Vec<Part>)> {
    let carrier = format!("split_{CARRIER}.wasm");
    let users = |name: &str| -> Vec<&Part> {
        let uses =
            |part: &&Part| name == carrier || part.files.iter().any(|file| file == name);
        parts.iter().filter(uses).collect()
    };
    let is_for_leaders = |users: &[&Part]| users.iter().all(|part| part.is_for_leaders);
    let (mut small, mut large) = (Vec::new(), Vec::new());
    for file in files {
        let most = if file.name.starts_with("split_") { SMALL_PART } else { SMALL };
        let size = joined(&[&file.bytes])?.len();
        if size < most && file.name != carrier {
            small.push((file, size));
        } else {
            large.push((file, Vec::new()));
        }
    }
    // Every place loads what the notebook does.
    let loads = |users: &[&Part]| {
        if users.iter().any(|part| part.name == CARRIER) {
            parts.len()
        } else {
            users.iter().filter(|part| !part.is_for_leaders).count()
        }
    };
    // Which leaders' parts load a file for what was joined with it.
    let mut besides: Vec<(String, String)> = Vec::new();
    // What the same pupils' parts load is one file, however large, whoever leads loads it too.
    let pupils = |name: &str| -> Vec<&str> {
        let users = users(name).into_iter().filter(|part| !part.is_for_leaders);
        users.map(|part| part.name.as_str()).collect()
    };
    let mut apart: Vec<(PartFile, Vec<Vec<u8>>)> = Vec::new();
    for (file, with) in large {
        let own = pupils(&file.name);
        let is_host = |(host, _): &&mut (PartFile, Vec<Vec<u8>>)| {
            !own.is_empty() && file.name != carrier && pupils(&host.name) == own
        };
        match apart.iter_mut().find(is_host) {
            Some((host, with)) => {
                let there = users(&host.name);
                let users = users(&file.name).into_iter();
                let more = users.filter(|part| !there.contains(part));
                besides.extend(more.map(|part| (part.name.clone(), host.name.clone())));
                with.push(file.bytes);
            }
            None => apart.push((file, with)),
        }
    }
    let mut large = apart;
    for (file, size) in small {
        let wanted = users(&file.name);
        let for_leaders = is_for_leaders(&wanted);
        let needs = |part: &&&Part| for_leaders || !part.is_for_leaders;
        let hosts = large.iter_mut().map(|(host, with)| (users(&host.name), host, with));
        let hosts = hosts.filter(|(users, host, _)| {
            (host.name != carrier || size < SMALL_FOR_ALL)
                && wanted.iter().filter(needs).all(|part| users.contains(part))
                && is_for_leaders(users) == for_leaders
        });
        match hosts.min_by_key(|(users, ..)| (loads(users), users.len())) {
            Some((users, host, with)) => {
                let more = wanted.iter().filter(|part| !users.contains(part));
                besides.extend(more.map(|part| (part.name.clone(), host.name.clone())));
                with.push(file.bytes);
            }
            None => large.push((file, Vec::new())),
        }
    }
    let mut files = Vec::new();
    for (PartFile { name, bytes }, with) in large {
        let modules: Vec<&[u8]> =
            [&bytes].into_iter().chain(&with).map(Vec::as_slice).collect();
        files.push(PartFile { name, bytes: joined(&modules)? });
    }
    let is_file = |name: &String| files.iter().any(|file| file.name == *name);
    ensure!(is_file(&carrier), "there is no part called {CARRIER}");
    let parts = parts.iter().map(|part| {
        let besides = besides.iter().filter(|(name, _)| *name == part.name);
        let all = part.files.iter().chain(besides.map(|(_, host)| host));
        let others = all.filter(|file| is_file(file) && **file != carrier);
        let mut files: Vec<String> = others.cloned().collect();
        files.sort();
        files.dedup();
        files.insert(0, carrier.clone());
        Part { files, ..part.clone() }
    });
    let parts = parts.collect();
    Ok((files, parts))
}

/// The script that loads the parts. It names each file once.
fn link(files: &[PartFile], parts: &[Part]) -> Result<String> {
    let mut script = LOAD_PART.to_owned();
    script += "const FILES = [\n";
    for PartFile { name, .. } in files {
        script += &format!("  \"./{name}\",\n");
    }
    script += "];\nconst parts = {\n";
    for Part { name, files: wanted, .. } in parts {
        let place = |wanted: &String| files.iter().position(|file| file.name == *wanted);
        let places: Option<Vec<usize>> = wanted.iter().map(place).collect();
        let places = places.with_context(|| format!("the part {name} lacks a file"))?;
        script += &format!("  __wasm_split_load_{name}: loader({places:?}),\n");
    }
    Ok(script + "};\n")
}

/// The script of the bindings with the loading of the parts in it. It names the script that
/// loads them once for each part.
pub(crate) fn with_link(glue: &str, link: &str) -> Result<String> {
    let lines: Vec<&str> =
        glue.lines().filter(|line| line.starts_with("import ")).collect();
    ensure!(!lines.is_empty(), "the script of the bindings imports nothing");
    let mut script = glue.to_owned();
    let mut parts = format!("\"{LINK_NAME}\": parts,");
    for line in lines {
        let name = line
            .strip_prefix("import * as ")
            .and_then(|rest| rest.split_once(" from "))
            .filter(|(_, from)| from.contains(LINK_NAME))
            .map(|(name, _)| name)
            .with_context(|| format!("the bindings import something else: {line}"))?;
        let used = format!("\"{LINK_NAME}\": {name},");
        ensure!(script.contains(&used), "the bindings do not hand on {LINK_NAME}");
        script = script.replace(&format!("{line}\n"), "").replace(&used, &parts);
        // Handed on once.
        parts.clear();
    }
    Ok(format!("{}\n{link}", script.trim_start()))
}

/// The module without names and other sections that a browser does not need.
pub(crate) fn without_custom_sections(module: &[u8]) -> Result<Vec<u8>> {
    /// Magic number and version.
    const HEAD: usize = 8;
    let mut kept = module.get(..HEAD).context("a part is too short")?.to_vec();
    for payload in Parser::new(0).parse_all(module) {
        let payload = payload?;
        let is_custom = matches!(payload, Payload::CustomSection(_));
        if let Some((id, range)) = payload.as_section().filter(|_| !is_custom) {
            let range = usize::try_from(range.start)?..usize::try_from(range.end)?;
            let section = module.get(range).context("a section ends too late")?;
            RawSection { id, data: section }.append_to(&mut kept);
        }
    }
    Ok(kept)
}

#[cfg(test)]
mod tests {
    use super::*;
    use wasm_encoder::{ConstExpr, DataSection, ImportSection, MemoryType, Module};

    /// A module with that much data.
    fn file(name: &str, size: usize) -> PartFile {
        let mut imports = ImportSection::new();
        let memory = MemoryType {
            minimum: 1,
            maximum: None,
            memory64: false,
            shared: false,
            page_size_log2: None,
        };
        imports.import("__wasm_split", "memory", memory);
        let mut data = DataSection::new();
        data.active(0, &ConstExpr::i32_const(0), vec![b'a'; size]);
        let mut module = Module::new();
        module.section(&imports).section(&data);
        PartFile { name: name.into(), bytes: module.finish() }
    }

    fn part(name: &str, files: &[&str]) -> Part {
        let files = files.iter().map(|&file| file.into()).collect();
        Part { name: name.into(), files, is_for_leaders: false }
    }

    #[test]
    fn what_is_small_travels_with_what_its_parts_load() {
        let files = [
            file("chunk_1.wasm", 10),
            file("chunk_2.wasm", SMALL),
            file("split_notebook.wasm", 20),
            file("split_swing.wasm", SMALL),
            file("chunk_3.wasm", 30),
        ];
        let parts = vec![
            part("notebook", &["chunk_1.wasm", "split_notebook.wasm"]),
            part(
                "swing",
                &["chunk_1.wasm", "chunk_2.wasm", "chunk_3.wasm", "split_swing.wasm"],
            ),
            part("why", &["chunk_2.wasm"]),
        ];
        let (found, parts) = carried(files.to_vec(), parts).unwrap();
        // One that two parts need, and one that the swing alone needs.
        for (place, modules) in [&[1][..], &[2, 0], &[3, 4]].into_iter().enumerate() {
            let of = |&module: &usize| files[module].bytes.as_slice();
            let modules: Vec<&[u8]> = modules.iter().map(of).collect();
            assert_eq!(found[place].bytes, joined(&modules).unwrap());
        }
        assert_eq!(found.len(), 3);
        assert_eq!(
            parts,
            [
                part("notebook", &["split_notebook.wasm"]),
                part(
                    "swing",
                    &["split_notebook.wasm", "chunk_2.wasm", "split_swing.wasm"]
                ),
                part("why", &["split_notebook.wasm", "chunk_2.wasm"]),
            ]
        );
        assert!(carried(vec![file("split_swing.wasm", 1)], Vec::new()).is_err());
    }

    #[test]
    fn what_the_notebook_loads_every_part_loads() {
        let files = [
            file("chunk_1.wasm", 10),
            file("chunk_2.wasm", SMALL),
            file("chunk_3.wasm", SMALL),
            file("split_notebook.wasm", SMALL),
        ];
        let all = ["chunk_1.wasm", "chunk_2.wasm", "chunk_3.wasm"];
        let parts = vec![
            part("notebook", &["chunk_2.wasm", "split_notebook.wasm"]),
            part("swing", &all),
            part("why", &["chunk_3.wasm"]),
            part("lead", &["chunk_3.wasm"]),
            part("measure", &[]),
        ];
        let (found, _) = carried(files.to_vec(), parts).unwrap();
        // With the second one five would load it, and not three.
        let with = [&files[2], &files[0]].map(|file| file.bytes.as_slice());
        assert_eq!(found[1].bytes, joined(&with).unwrap());
    }

    #[test]
    fn pupils_load_nothing_that_only_leaders_need() {
        let for_leaders =
            |name, files: &[&str]| Part { is_for_leaders: true, ..part(name, files) };
        let parts = vec![
            part("notebook", &["split_notebook.wasm"]),
            for_leaders("class", &["chunk_1.wasm", "chunk_2.wasm", "split_class.wasm"]),
            for_leaders("paper", &["chunk_1.wasm", "chunk_2.wasm", "chunk_3.wasm"]),
        ];
        let sizes = [("split_notebook", SMALL), ("chunk_1", 10), ("chunk_2", 20)];
        let large = [("split_class", SMALL), ("chunk_3", SMALL)];
        let files = sizes.into_iter().chain(large);
        let files =
            files.map(|(stem, size)| file(&format!("{stem}.wasm"), size)).collect();
        let (found, parts) = carried(files, parts).unwrap();
        let names: Vec<_> = found.iter().map(|file| file.name.as_str()).collect();
        // The first small file that both need is one of its own, and has the second with it.
        let expected =
            ["split_notebook.wasm", "split_class.wasm", "chunk_3.wasm", "chunk_1.wasm"];
        assert_eq!(names, expected);
        assert_eq!(parts[0].files, ["split_notebook.wasm"]);
        assert_eq!(
            parts[1].files,
            ["split_notebook.wasm", "chunk_1.wasm", "split_class.wasm"]
        );
    }

    #[test]
    fn the_link_stands_in_the_script_of_the_bindings() {
        let glue = "import * as import1 from \"./__wasm_split.js\"\n\
            import * as import2 from \"./__wasm_split.js\"\nfunction initSync() {}\n\
            const imports = {\n\"./__wasm_split.js\": import1,\n\"./__wasm_split.js\": import2,\n};\n";
        let files = [file("chunk_1.wasm", 0), file("split_notebook.wasm", 0)];
        let swing = part("swing", &["split_notebook.wasm", "chunk_1.wasm"]);
        let other = part("why", &["split_why.wasm"]);
        assert!(link(&files, &[other]).is_err());
        let link = link(&files, &[swing]).unwrap();
        let script = with_link(glue, &link).unwrap();
        let (before, after) = script.split_once(LOAD_PART).unwrap();
        assert_eq!(
            before,
            "function initSync() {}\nconst imports = {\n\"./__wasm_split.js\": parts,\n\n};\n\n"
        );
        assert_eq!(
            after,
            "const FILES = [\n  \"./chunk_1.wasm\",\n  \"./split_notebook.wasm\",\n];\n\
             const parts = {\n  __wasm_split_load_swing: loader([1, 0]),\n};\n"
        );
        let other = glue.replace("__wasm_split", "elsewhere");
        assert!(with_link(&other, "").is_err());
        assert!(with_link(&format!("{glue}import './x.js'\n"), "").is_err());
        assert!(with_link("", "").is_err());
    }

    #[test]
    fn a_silent_line_is_given_up_within_five_seconds() {
        let (_, rest) = LOAD_PART.split_once("const SILENCE_MS = ").unwrap();
        let silence: u32 = rest.split(';').next().unwrap().parse().unwrap();
        assert!(silence <= 5000, "{silence}");
    }

    #[test]
    fn only_custom_sections_go() {
        // A type section with no type, and a custom section called "a".
        let head = b"\0asm\x01\0\0\0";
        let types = [1, 1, 0];
        let custom = [0, 3, 1, b'a', 7];
        let module = [&head[..], &types, &custom].concat();
        let kept = without_custom_sections(&module).unwrap();
        assert_eq!(kept, [&head[..], &types].concat());
        assert_eq!(without_custom_sections(&kept).unwrap(), kept);
        assert!(without_custom_sections(b"\0asm").is_err());
    }
}
