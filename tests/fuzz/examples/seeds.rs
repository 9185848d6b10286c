//! Writes the first inputs of each corpus: the shipped rockets and a bottle in every
//! spelling, notebooks, and inputs that are nearly right.
//!
//! ```sh
//! cargo run --manifest-path tests/fuzz/Cargo.toml --example seeds
//! ```

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};

use noseward_lesson::{Class, Conclusion, Record, TrialResult, example_class};
use noseward_link::{
    Format, NotebookFile, class_to_table, code, hash, notebook_hash, notebook_parts,
    open_file, open_notebook_file, result_code, to_file, to_notebook_file,
};
use noseward_stability::BottleSize;
use qrcodegen::{QrCode, QrCodeEcc};

fn main() -> Result<(), Box<dyn Error>> {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    let write = |target: &str, name: &str, bytes: &[u8]| {
        let folder = here.join("corpus").join(target);
        fs::create_dir_all(&folder)?;
        fs::write(folder.join(name), bytes)
    };
    for (name, record) in records(here)? {
        let (link, code, file) = (hash(&record), code(&record), to_file(&record));
        write("link", &name, link.as_bytes())?;
        write("code", &name, code.as_bytes())?;
        write("file", &name, file.as_bytes())?;
        write("text", &format!("{name}-link"), format!("See:\nx#{link}.").as_bytes())?;
        write("text", &format!("{name}-cut"), &link.as_bytes()[..link.len() * 3 / 4])?;
        write("text", &format!("{name}-code"), format!("Hi,\n{code}\n").as_bytes())?;
        let payload = noseward_fuzz::payload(&link).ok_or("no link")?;
        let payload: Vec<u8> = [0].into_iter().chain(payload).collect();
        write("link", &format!("{name}-payload"), &payload)?;
        write("code", &format!("{name}-payload"), &payload)?;
    }
    for (name, bytes) in notebooks(here)? {
        write("notebook", &name, &bytes)?;
    }
    for (name, text) in classes() {
        write("class", name, text.as_bytes())?;
    }
    for (name, bytes) in pictures()? {
        write("picture", &name, &bytes)?;
    }
    write("text", "formula", b"=1+1")?;
    write("text", "number", b" -3,5")?;
    write("text", "newer", b"r2.AAAA R2AA AAAA AAAA")?;
    Ok(())
}

/// Results of the invented class as codes and as a table.
fn classes() -> [(&'static str, String); 3] {
    let (mut class, mut codes) = (Class::default(), String::new());
    for notebook in example_class().iter().take(2) {
        for trial in notebook.trials() {
            let Some(result) = TrialResult::of(notebook, trial.id()) else { continue };
            codes += &format!("{}\n", result_code(&result));
            let _ = class.add(&class.label.clone(), result, true);
        }
    }
    let table = class_to_table(&class, Format::Tabs, false, &|_| String::new());
    let damaged = table.replacen('1', "x", 40);
    [("codes", codes), ("table", table), ("damaged", damaged)]
}

/// Inputs with their names.
type Inputs = Vec<(String, Vec<u8>)>;

/// The shipped notebook, whole and without words, and an empty one, in every spelling.
fn notebooks(here: &Path) -> Result<Inputs, Box<dyn Error>> {
    let shipped = here.join("../../crates/link/tests/links/shipped/notebook.json");
    let shipped = open_notebook_file(&fs::read_to_string(shipped)?);
    let shipped = shipped.map_err(|error| format!("{error:?}"))?;
    let mut bare = shipped.clone();
    bare.notebook.conclusion = Conclusion::default();
    bare.notebook.delete(1);
    bare.rocket = None;
    let mut inputs = Vec::new();
    for (name, file) in
        [("shipped", shipped), ("bare", bare), ("empty", NotebookFile::default())]
    {
        let mut add = |what: &str, bytes: &[u8]| {
            inputs.push((format!("{name}-{what}"), bytes.to_vec()));
        };
        let payload = |first: u8, link: &str| -> Result<Vec<u8>, Box<dyn Error>> {
            let payload = noseward_fuzz::payload(link).ok_or("no link")?;
            Ok([first].into_iter().chain(payload).collect())
        };
        let link = notebook_hash(&file).ok_or("too long for a link")?;
        let parts = notebook_parts(&file).ok_or("too long for parts")?;
        add("link", link.as_bytes());
        add("payload", &payload(0, &link)?);
        add("parts-payload", &payload(1, &link)?);
        add("parts", parts.join("\nand\n").as_bytes());
        if name != "shipped" {
            // The whole one is longer than what a corpus takes.
            add("file", to_notebook_file(&file).as_bytes());
        }
        for trial in file.notebook.trials() {
            let id = trial.id();
            let result = TrialResult::of(&file.notebook, id).ok_or("no trial")?;
            add(&format!("result-{id}"), result_code(&result).as_bytes());
        }
    }
    inputs.push(("result-payload".into(), [&[2, 4, 4, 1], &[0; 27][..]].concat()));
    inputs.push(("newer".into(), b"N2AB CDEF GHJK MNPQ n2.AAAAAAAAAAAA".to_vec()));
    Ok(inputs)
}

/// Symbols as pictures, a module a grey value, which the target makes four times as large: a
/// small one, one with version information, light on dark, half of one, and two.
fn pictures() -> Result<Inputs, Box<dyn Error>> {
    const QUIET: i32 = 4;
    let picture =
        |text: &str, across: i32, dark: u8| -> Result<Vec<u8>, Box<dyn Error>> {
            let symbol = QrCode::encode_text(text, QrCodeEcc::Low)?;
            let size = symbol.size() + 2 * QUIET;
            let mut bytes = vec![u8::try_from(across * size / 2)?, 3];
            for y in 0..size {
                for x in 0..across * size / 2 {
                    let is_dark = symbol.get_module(x % size - QUIET, y - QUIET);
                    bytes.push(if is_dark { dark } else { 255 - dark });
                }
            }
            Ok(bytes)
        };
    Ok(vec![
        ("small".into(), picture("R1", 2, 20)?),
        ("version".into(), picture(&"NOSEWARD ".repeat(20), 2, 20)?),
        ("light".into(), picture("½ é", 2, 235)?),
        ("half".into(), picture("R1", 1, 20)?),
        ("two".into(), picture("N1", 4, 20)?),
    ])
}

fn records(here: &Path) -> Result<Vec<(String, Record)>, Box<dyn Error>> {
    let mut records = vec![
        ("bottle".into(), BottleSize::Ml500.design().into()),
        ("empty".into(), Record::default()),
    ];
    let shipped: PathBuf = here.join("../../crates/link/tests/links/shipped");
    for entry in fs::read_dir(shipped)? {
        let path = entry?.path();
        let is_file = path.extension().is_some_and(|end| end == "json");
        if !is_file || path.ends_with("notebook.json") {
            continue;
        }
        let name = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let record = open_file(&fs::read_to_string(path)?);
        records.push((name, record.map_err(|error| format!("{error:?}"))?));
    }
    Ok(records)
}
