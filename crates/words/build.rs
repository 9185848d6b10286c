//! Compiles `languages/` into the functions of this crate and the tables of the other
//! languages.

#[allow(dead_code, reason = "the crate itself uses the rest")]
#[path = "src/code.rs"]
mod code;
#[path = "compile/mod.rs"]
mod compile;
#[allow(dead_code, unreachable_pub, reason = "the crate itself uses the rest")]
#[path = "src/languages.rs"]
mod languages;
#[allow(dead_code, unreachable_pub, reason = "the crate itself uses the rest")]
#[path = "src/mark.rs"]
mod mark;

use std::path::Path;
use std::process::ExitCode;
use std::{env, error::Error, fs};

use compile::Source;

fn main() -> Result<ExitCode, Box<dyn Error>> {
    for watched in
        ["languages", "compile", "src/code.rs", "src/languages.rs", "src/mark.rs"]
    {
        println!("cargo::rerun-if-changed={watched}");
    }
    match compile::compile(&sources()?) {
        Ok(compiled) => {
            let out = env::var_os("OUT_DIR").ok_or("cargo sets OUT_DIR")?;
            let out = Path::new(&out);
            for (key, table) in compiled.tables {
                fs::write(out.join(format!("{key}.words")), table)?;
            }
            fs::write(out.join("sentences.rs"), compiled.rust)?;
            Ok(ExitCode::SUCCESS)
        }
        Err(faults) => {
            for fault in faults {
                println!("cargo::error=crates/words/{fault}");
            }
            Ok(ExitCode::FAILURE)
        }
    }
}

/// Every file of every language, in the order of their names.
fn sources() -> Result<Vec<Source>, Box<dyn Error>> {
    let mut sources = Vec::new();
    for folder in fs::read_dir("languages")? {
        let folder = folder?;
        for file in fs::read_dir(folder.path())? {
            let file = file?;
            let name =
                |entry: &fs::DirEntry| entry.file_name().to_string_lossy().into_owned();
            sources.push(Source {
                language: name(&folder),
                file: name(&file),
                text: fs::read_to_string(file.path())?,
            });
        }
    }
    sources.sort_by(|a, b| (&a.language, &a.file).cmp(&(&b.language, &b.file)));
    Ok(sources)
}
