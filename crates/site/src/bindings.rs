//! Writes the JavaScript that loads the module and calls it.

use crate::rewrite::{Names, rewritten};
use crate::split::{self, Part, PartFile};
use anyhow::{Context, Result, ensure};
use std::path::Path;
use wasm_bindgen_cli_support::Bindgen;
use wasmparser::{Parser, Payload};

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
pub(crate) fn make_in_parts(
    path: &Path,
    sheet: &str,
    leaders_sheet: &str,
) -> Result<Bindings> {
    let split = split::split(path, sheet, leaders_sheet)?;
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
    let glue = output.js().to_owned();
    let module = split::without_custom_sections(&output.wasm_mut().emit_wasm())?;
    let names = names(&module)?;
    let is_taken = |short: &String| words(&glue).any(|word| word == short);
    ensure!(!names.values().any(is_taken), "the bindings use a short name themselves");
    Ok(Bindings {
        glue: renamed(&glue, &names),
        types: renamed(&types, &names),
        module: rewritten(&module, &names)?,
        later: Vec::new(),
        parts: Vec::new(),
    })
}

/// Short names for what the script and the module share under names that end in a hash: some
/// two hundred, each in either file, of which eight bytes do not become smaller on their way.
fn names(module: &[u8]) -> Result<Names> {
    let mut long = Vec::new();
    for payload in Parser::new(0).parse_all(module) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    long.push(import?.name.to_owned());
                }
            }
            Payload::ExportSection(exports) => {
                for export in exports {
                    long.push(export?.name.to_owned());
                }
            }
            _ => {}
        }
    }
    let short = (0..).map(|number: u32| format!("_{number}"));
    Ok(long.into_iter().filter(|name| ends_in_hash(name)).zip(short).collect())
}

/// Whether a name ends as those of the bindings do, or as the linker's.
fn ends_in_hash(name: &str) -> bool {
    const DIGITS: usize = 16;
    let name = name.strip_suffix('E').unwrap_or(name);
    let hash = name.len().checked_sub(DIGITS).and_then(|start| name.get(start..));
    hash.is_some_and(|hash| hash.bytes().all(|byte| byte.is_ascii_hexdigit()))
}

/// The script with other names.
fn renamed(script: &str, names: &Names) -> String {
    let pieces = script.split_inclusive(is_apart).map(|piece| {
        let word = piece.trim_end_matches(is_apart);
        names
            .get(word)
            .map_or_else(|| piece.to_owned(), |short| piece.replace(word, short))
    });
    pieces.collect()
}

/// Whatever could be a name in a script.
fn words(script: &str) -> impl Iterator<Item = &str> {
    script.split(is_apart)
}

/// Whether a letter is none of a name.
fn is_apart(letter: char) -> bool {
    !letter.is_ascii_alphanumeric() && letter != '_'
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_short_in_either_file() {
        let name = |long: &str, short: &str| (long.to_owned(), short.to_owned());
        let names = Names::from([
            name("__wbg_now_f50c7ae6ec1ca87c", "_0"),
            name("_ZN6invoke17he64d4031a4e5b68eE", "_1"),
        ]);
        let glue = "a: { __wbg_now_f50c7ae6ec1ca87c: 1, other__wbg_now_f50c7ae6ec1ca87c: 2,\n\
                    __wbg_now_f50c7ae6ec1ca87c0, wasm._ZN6invoke17he64d4031a4e5b68eE(é) }";
        assert_eq!(
            renamed(glue, &names),
            "a: { _0: 1, other__wbg_now_f50c7ae6ec1ca87c: 2,\n\
             __wbg_now_f50c7ae6ec1ca87c0, wasm._1(é) }"
        );
        assert_eq!(renamed("x._1", &Names::from([name("_1", "_2")])), "x._2");
        for name in names.keys() {
            assert!(ends_in_hash(name), "{name}");
        }
        for name in ["__wbindgen_malloc", "memory", "é_wbg_now_50c7ae6ec1ca87c", ""] {
            assert!(!ends_in_hash(name), "{name}");
        }
    }
}
