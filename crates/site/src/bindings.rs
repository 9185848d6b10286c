//! Writes the JavaScript that loads the module and calls it.

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
}

/// Makes the bindings of the compiled module at `path`.
pub(crate) fn make(path: &Path) -> Result<Bindings> {
    let mut output = Bindgen::new()
        .input_path(path)
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
        module: output.wasm_mut().emit_wasm(),
    })
}
