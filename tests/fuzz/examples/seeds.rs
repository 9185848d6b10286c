//! Writes the first inputs of each corpus: the examples, one of them swung, and bottles
//! in every spelling, the shipped files, and inputs that are nearly right.
//!
//! ```sh
//! cargo run --manifest-path tests/fuzz/Cargo.toml --example seeds
//! ```

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};

use noseward_lesson::{Record, SwingOutcome};
use noseward_link::{code, hash, open_file, to_file};
use noseward_stability::{BottleSize, Example};

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
        let (version, payload) = noseward_fuzz::payload(&link).ok_or("no link")?;
        let first = if version == 1 { 0 } else { version };
        let payload: Vec<u8> = [first].into_iter().chain(payload).collect();
        write("link", &format!("{name}-payload"), &payload)?;
        write("code", &format!("{name}-payload"), &payload)?;
    }
    write("text", "formula", b"=1+1")?;
    write("text", "number", b" -3,5")?;
    write("text", "newer", b"r3.AAAA R3AA AAAA AAAA")?;
    Ok(())
}

fn records(here: &Path) -> Result<Vec<(String, Record)>, Box<dyn Error>> {
    let examples = Example::ALL.map(Example::design);
    let mut records: Vec<_> = examples
        .into_iter()
        .map(|design| (design.name.clone(), Record::from(design)))
        .collect();
    records.push(("bottle".into(), BottleSize::Ml500.design().into()));
    records.push(("empty".into(), Record::default()));
    let mut swung = Record::from(Example::Tern.design());
    for outcome in [SwingOutcome::Slipped, SwingOutcome::Steady, SwingOutcome::Wobbling] {
        swung.swings.add(outcome);
    }
    records.push(("swung".into(), swung));
    let shipped: PathBuf = here.join("../../crates/link/tests/links/shipped");
    for entry in fs::read_dir(shipped)? {
        let path = entry?.path();
        let name = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        records.push((format!("shipped-{name}"), open_file(&fs::read_to_string(path)?)?));
    }
    Ok(records)
}
