//! Writes the JavaScript that loads the module and calls it.

use crate::split::{self, Part, PartFile};
use anyhow::{Context, Result, ensure};
use std::collections::BTreeMap;
use std::path::Path;
use wasm_bindgen_cli_support::Bindgen;

/// The name under which the glue looks for the module, before the module is named
/// after its content.
pub(crate) const MODULE_NAME: &str = "noseward_bg.wasm";

/// What becomes of a compiled module.
#[derive(Debug)]
pub(crate) struct Bindings {
    /// The script that loads the module; refers to it as [`MODULE_NAME`].
    pub(crate) glue: String,
    /// The TypeScript declarations of what the script exports.
    pub(crate) types: String,
    /// The module.
    pub(crate) module: Vec<u8>,
    /// The files that the module loads later, by the names that the script knows.
    pub(crate) later: Vec<PartFile>,
    /// Which of them a part needs.
    pub(crate) parts: Vec<Part>,
}

/// Makes the bindings of the compiled module at `path`, which is whole.
pub(crate) fn make(path: &Path) -> Result<Bindings> {
    let mut output = Bindgen::new();
    finish(output.input_path(path), path)
}

/// Makes the bindings of the compiled module at `path`, cut into parts, with the style sheet
/// of the places.
pub(crate) fn make_in_parts(path: &Path, sheet: &str) -> Result<Bindings> {
    let split = split::split(path, sheet)?;
    let mut output = Bindgen::new();
    output.input_bytes("noseward", split.main);
    // The parts use what the linker named, and by its names.
    output.keep_lld_exports(true).demangle(false);
    let bindings = finish(&mut output, path)?;
    let glue = split::with_link(&bindings.glue, &split.link)?;
    Ok(Bindings { glue, later: split.files, parts: split.parts, ..bindings })
}

fn finish(bindgen: &mut Bindgen, path: &Path) -> Result<Bindings> {
    let mut output = bindgen
        .out_name("noseward")
        .web(true)?
        .typescript(true)
        // So that `await init()` is all a program has to say.
        .omit_default_module_path(false)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate_output()
        .with_context(|| format!("no bindings can be made for {}", path.display()))?;
    ensure!(
        output.snippets().values().all(Vec::is_empty)
            && output.local_modules().is_empty()
            && output.npm_dependencies().is_empty(),
        "a dependency of noseward-web brings JavaScript of its own, which dist/ has no \
         place for; do without it: {:?} {:?} {:?}",
        output.snippets(),
        output.local_modules(),
        output.npm_dependencies()
    );
    let types = output.ts().context("the bindings came without declarations")?;
    let types = types.to_owned();
    let numbers = numbers(output.js());
    let glue = numbered(output.js().as_bytes(), &numbers);
    let module = split::without_custom_sections(&output.wasm_mut().emit_wasm())?;
    Ok(Bindings {
        glue: String::from_utf8(glue)?,
        types,
        module: numbered(&module, &numbers),
        later: Vec::new(),
        parts: Vec::new(),
    })
}

/// Digits of the hash at the end of each name that the script and the module share. It keeps
/// versions of one library apart.
const HASH: usize = 16;

/// A number as long as the hash, for each hash in the script.
///
/// Some two hundred hashes of eight bytes, which do not become smaller on their way, stand in
/// either file.
fn numbers(glue: &str) -> BTreeMap<[u8; HASH], String> {
    let mut numbers = BTreeMap::new();
    for (_, hash) in hashes(glue.as_bytes()) {
        let next = numbers.len();
        numbers.entry(hash).or_insert_with(|| format!("{next:0HASH$}"));
    }
    numbers
}

/// The same bytes with numbers in the place of hashes. Nothing changes its place, so a module
/// stays one.
fn numbered(bytes: &[u8], numbers: &BTreeMap<[u8; HASH], String>) -> Vec<u8> {
    let mut numbered = bytes.to_vec();
    for (at, hash) in hashes(bytes) {
        if let Some(number) = numbers.get(&hash) {
            numbered[at..at + HASH].copy_from_slice(number.as_bytes());
        }
    }
    numbered
}

/// Whatever could be a hash at the end of a name, and where it begins.
fn hashes(bytes: &[u8]) -> impl Iterator<Item = (usize, [u8; HASH])> {
    let is_digit = |byte: &u8| matches!(byte, b'0'..=b'9' | b'a'..=b'f');
    let found = bytes.windows(HASH + 1).zip(1..);
    found.filter_map(move |(window, at)| {
        let hash = window.strip_prefix(b"_")?;
        hash.iter().all(is_digit).then(|| hash.try_into().ok().map(|hash| (at, hash)))?
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_have_numbers_in_either_file() {
        let glue = "a: { __wbg_now_f50c7ae6ec1ca87c: 1, __wbg_log_00000000000000aa: 2, \
                    __wbg_set_f50c7ae6ec1ca87c: 3, short_f50c7ae6 }";
        let module = b"\0asm\x1A__wbg_now_f50c7ae6ec1ca87c\0\x02_0123456789abcdef";
        let numbers = numbers(glue);
        let text = |bytes: &[u8]| String::from_utf8(numbered(bytes, &numbers)).unwrap();
        assert_eq!(
            text(glue.as_bytes()),
            "a: { __wbg_now_0000000000000000: 1, __wbg_log_0000000000000001: 2, \
             __wbg_set_0000000000000000: 3, short_f50c7ae6 }"
        );
        // What the script does not name stays as it is.
        assert_eq!(
            text(module).as_bytes(),
            b"\0asm\x1A__wbg_now_0000000000000000\0\x02_0123456789abcdef"
        );
    }
}
