//! Cuts the compiled module into the part that every visit loads and the parts that are
//! loaded when somebody needs them. All share one memory.

use anyhow::{Context, Result, anyhow, ensure};
use std::fs;
use std::path::Path;
use wasm_encoder::{RawSection, Section};
use wasmparser::{Parser, Payload};

/// How the main part names the script that loads the others.
pub(crate) const LINK_NAME: &str = "./__wasm_split.js";
/// How that script takes the main part's functions from the bindings.
const LINK_IMPORT: &str = "import { initSync } from \"./noseward.js\";";

/// How the script fetches and starts a part, as it comes, and as it is here: a server may
/// not know the type of a module, and a line may fall silent.
const FETCHED: &str = "= fetch(new URL(";
const FETCHED_HERE: &str = "= fetchPart(new URL(";
const STREAMED: &str = "WebAssembly.instantiateStreaming(src, imports)";
const STARTED_HERE: &str = "WebAssembly.instantiate(await src, imports)";
/// What `fetchPart` is.
const FETCH_PART: &str = include_str!("../../../www/part.js");

/// A module in parts.
#[derive(Debug)]
pub(crate) struct Split {
    /// What every visit loads, still without bindings.
    pub(crate) main: Vec<u8>,
    /// The script that loads the parts; it stands behind that of the bindings.
    pub(crate) link: String,
    /// The parts.
    pub(crate) parts: Vec<Part>,
}

/// A part that is loaded later.
#[derive(Debug)]
pub(crate) struct Part {
    /// The name by which the script asks for it.
    pub(crate) name: String,
    /// The part.
    pub(crate) bytes: Vec<u8>,
}

/// Cuts the module at `path`, which was linked with its relocations.
pub(crate) fn split(path: &Path) -> Result<Split> {
    let module =
        fs::read(path).with_context(|| format!("{} cannot be read", path.display()))?;
    let folder = path.with_extension("parts");
    let main = folder.join("main.wasm");
    let mut options = wasm_split_cli_support::Options::new(&module);
    options.output_dir = &folder;
    options.main_out_path = &main;
    options.link_name = LINK_NAME;
    options.main_module = "./noseward.js";
    let found = wasm_split_cli_support::transform(options)
        .map_err(|error| anyhow!("{} cannot be cut: {error:#}", path.display()))?;
    let mut parts = Vec::new();
    for path in found.split_modules {
        let name = path.file_name().and_then(|name| name.to_str());
        let name = name.context("a part of the module has no name")?.to_owned();
        parts.push(Part { name, bytes: without_custom_sections(&fs::read(&path)?)? });
    }
    parts.sort_by(|a, b| a.name.cmp(&b.name));
    let link = fs::read_to_string(folder.join(LINK_NAME))?;
    Ok(Split { main: fs::read(main)?, link: inlined(&link)?, parts })
}

/// The script as it stands behind that of the bindings, in the same file: two files would
/// have to name each other, and each is named after its content.
fn inlined(link: &str) -> Result<String> {
    ensure!(
        link.contains(LINK_IMPORT) && !link.replace(LINK_IMPORT, "").contains("import "),
        "the script that loads the parts imports something else than {LINK_IMPORT}"
    );
    let names: Vec<&str> = link
        .split("export const ")
        .skip(1)
        .filter_map(|rest| rest.split(' ').next())
        .collect();
    ensure!(!names.is_empty(), "the script that loads the parts loads none");
    ensure!(
        [FETCHED, STREAMED].iter().all(|call| link.matches(call).count() == names.len()),
        "the script that loads the parts does not load each of them by {FETCHED} and \
         {STREAMED}"
    );
    let body = link
        .replace(LINK_IMPORT, "")
        .replace("export const ", "const ")
        .replace(FETCHED, FETCHED_HERE)
        .replace(STREAMED, STARTED_HERE);
    Ok(format!("{FETCH_PART}{body}const parts = {{ {} }};\n", names.join(", ")))
}

/// The script of the bindings with the loading of the parts in it.
pub(crate) fn with_link(glue: &str, link: &str) -> Result<String> {
    let lines = glue.lines().filter(|line| line.starts_with("import "));
    let lines: Vec<&str> = lines.collect();
    let &[line] = lines.as_slice() else {
        return Err(anyhow!(
            "the script of the bindings imports {} scripts, and one loads the parts",
            lines.len()
        ));
    };
    let name = line
        .strip_prefix("import * as ")
        .and_then(|rest| rest.split_once(" from "))
        .filter(|(_, from)| from.contains(LINK_NAME))
        .map(|(name, _)| name)
        .with_context(|| format!("the bindings import something else: {line}"))?;
    let used = format!("\"{LINK_NAME}\": {name}");
    ensure!(glue.contains(&used), "the bindings do not hand on {LINK_NAME}");
    let glue = glue.replace(line, "").replace(&used, &format!("\"{LINK_NAME}\": parts"));
    Ok(format!("{}\n{link}", glue.trim_start()))
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

    const LINK: &str = "import { initSync } from \"./noseward.js\";\n\
        export const __wasm_split_load_a = x(() => { const src = fetch(new URL('a'));\n\
        return WebAssembly.instantiateStreaming(src, imports); });\n";

    #[test]
    fn the_link_stands_in_the_script_of_the_bindings() {
        let glue = "import * as import1 from \"./__wasm_split.js\"\nfunction initSync() {}\n\
            const imports = { \"./__wasm_split.js\": import1 };\n";
        let script = with_link(glue, &inlined(LINK).unwrap()).unwrap();
        let (before, after) = script.split_once(FETCH_PART).unwrap();
        assert_eq!(
            before,
            "function initSync() {}\nconst imports = { \"./__wasm_split.js\": parts };\n\n"
        );
        assert_eq!(
            after,
            "\nconst __wasm_split_load_a = x(() => { const src = fetchPart(new URL('a'));\n\
             return WebAssembly.instantiate(await src, imports); });\n\
             const parts = { __wasm_split_load_a };\n"
        );
        let other = glue.replace("__wasm_split", "elsewhere");
        assert!(with_link(&other, "").is_err());
        assert!(with_link(&format!("{glue}import './x.js'\n"), "").is_err());
        assert!(with_link("", "").is_err());
    }

    #[test]
    fn a_link_that_imports_more_or_loads_nothing_is_refused() {
        assert!(inlined(&format!("import 'x';\n{LINK}")).is_err());
        assert!(inlined("import { initSync } from \"./noseward.js\";\n").is_err());
        assert!(inlined("").is_err());
        for call in [FETCHED, STREAMED] {
            assert!(inlined(&LINK.replace(call, "other()")).is_err(), "{call}");
        }
    }

    #[test]
    fn a_silent_line_is_given_up_within_five_seconds() {
        let (_, rest) = FETCH_PART.split_once("const SILENCE_MS = ").unwrap();
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
