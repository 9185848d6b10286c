//! Writes the JavaScript that loads the module and calls it.

use crate::split::{self, Part, PartFile};
use anyhow::{Context, Result, ensure};
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
    Ok(Bindings {
        glue: output.js().to_owned(),
        types: types.to_owned(),
        module: split::without_custom_sections(&output.wasm_mut().emit_wasm())?,
        later: Vec::new(),
        parts: Vec::new(),
    })
}
