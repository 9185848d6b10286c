//! Every spelling as it was shipped: of rockets and of a notebook.
//!
//! What stands in `shipped/` must open for ever, and is still written. The records stand in
//! files of their own, so that no change of an example can reach them.
//!
//! Nothing has been shipped yet. Until then they may be made anew:
//!
//! ```sh
//! NOSEWARD_MAKE_SHIPPED=1 cargo test -p noseward-link --test links shipped
//! ```

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::Once;

use noseward_lesson::{End, Record, SwingOutcome, Swings, Telling};
use noseward_link::{
    NotebookFile, Opened, QrSegments, code, hash, notebook_hash, notebook_parts,
    open_code, open_file, open_hash, open_notebook_file, open_notebook_hash,
    open_result_code, result_code, to_file, to_notebook_file,
};
use noseward_stability::{
    Design, Example, FinSet, Mass, Material, Measured, Planform, Section, SectionKind,
    SwingField, SwingSetup, Weight,
};

use crate::notebooks::{self, result_of};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/links/shipped")
}

fn read(name: &str) -> String {
    fs::read_to_string(folder().join(name)).unwrap_or_else(|e| panic!("{name}: {e}"))
}

fn write(name: &str, text: &str) {
    fs::write(folder().join(name), text).unwrap_or_else(|e| panic!("{name}: {e}"));
}

/// Rockets by name: the examples, each alone and some swung, and one of everything.
fn rockets() -> Vec<(String, Record)> {
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
    let mut rockets: Vec<(String, Record)> = Example::ALL
        .map(|example| {
            let design = example.design();
            (design.name.to_ascii_lowercase(), design.into())
        })
        .into();
    rockets.push(("everything".into(), everything().into()));
    let bound = |end: fn((f64, f64)) -> f64| {
        let mut setup = SwingSetup::default();
        for field in SwingField::ALL {
            field.set(&mut setup, end(field.bounds()));
        }
        setup
    };
    for (name, setup, outcomes) in [
        ("puffin", SwingSetup::default(), &[Steady, Slipped, Wobbling][..]),
        ("tern", bound(|(least, _)| least), &[TailFirst, NotSure]),
        ("everything", bound(|(_, most)| most), &[Slipped, Sideways, Slipped]),
    ] {
        let (_, record) = rockets.iter().find(|(known, _)| known == name).expect("known");
        let swings = Swings::new(setup, outcomes.iter().copied()).expect("room");
        let record = Record { design: record.design.clone(), swings }.rounded();
        rockets.push((format!("{name}-swung"), record));
    }
    rockets
}

/// Every kind, every material, every form of mass and outline, and texts of any script.
fn everything() -> Design {
    let masses = Material::ALL.map(Mass::Material).into_iter().chain([
        Mass::WeighedG(22.5),
        Mass::SheetGPerM2(120.0),
        Mass::Joined,
    ]);
    let kinds = SectionKind::ALL.into_iter().chain([SectionKind::Tube; 3]);
    let sections = kinds.zip(masses.clone()).enumerate().map(|(i, (kind, mass))| {
        let tenths = f64::from(u32::try_from(i).expect("few")) / 10.0;
        Section {
            kind,
            length_mm: 40.0 + tenths,
            diameter_mm: (i % 3 > 0).then_some(65.0 - tenths),
            closed_front: kind == SectionKind::Tube,
            mass,
        }
    });
    let outlines = [
        Planform::FourSided { root_mm: 45.0, tip_mm: 0.0, span_mm: 25.5, sweep_mm: -3.0 },
        Planform::PointsMm(vec![[0.0, 0.0], [-10.1, 30.0], [40.0, 31.4], [35.0, 0.0]]),
    ];
    let sets = outlines.into_iter().cycle().take(4).zip(masses.skip(9));
    let fins = sets.zip(2..).map(|((planform, mass), count)| FinSet {
        count,
        start_mm: 200.0,
        roll_deg: if count == 3 { -45.0 } else { 0.0 },
        planform,
        mass,
    });
    let weights = ["modelling clay", "Gewicht für Älpler", "🚀 ½ صاروخ", ""];
    Design {
        name: "Everything, ½ é 🚀".into(),
        sections: sections.collect(),
        fins: fins.collect(),
        weights: weights
            .into_iter()
            .zip(1..)
            .map(|(label, i)| Weight {
                label: label.into(),
                mass_g: 0.01 * f64::from(i),
                position_mm: 2000.0 / f64::from(i),
            })
            .collect(),
        measured: Measured { total_mass_g: Some(650.25) },
    }
    .rounded()
}

/// Link and code of a rocket, one below the other.
fn spelled(record: &Record) -> String {
    format!("{}\n\n{}\n", hash(record), code(record))
}

/// Link and parts of a notebook, and the results of its trials.
fn spelled_notebook(file: &NotebookFile) -> String {
    let mut blocks = vec![notebook_hash(file).expect("short enough")];
    blocks.extend(notebook_parts(file).expect("short enough"));
    for trial in file.notebook.trials() {
        let result = result_of(&file.notebook, trial.id()).expect("a trial");
        blocks.push(result_code(&result));
    }
    blocks.join("\n\n") + "\n"
}

/// Written anew where somebody asks for it; the other tests then read what is there.
fn make() {
    static ONCE: Once = Once::new();
    if std::env::var_os("NOSEWARD_MAKE_SHIPPED").is_some() {
        ONCE.call_once(make_all);
    }
}

fn make_all() {
    for (name, record) in rockets() {
        write(&format!("{name}.json"), &to_file(&record));
        write(&format!("{name}.txt"), &spelled(&record));
    }
    let file = notebooks::everything();
    write("notebook.json", &to_notebook_file(&file));
    write("notebook.txt", &spelled_notebook(&file));
}

/// The names of the rockets in the folder.
fn names() -> Vec<String> {
    make();
    let files = fs::read_dir(folder()).expect("a folder");
    let mut names: Vec<String> = files
        .filter_map(|file| {
            let name = file.expect("a file").file_name();
            Some(name.to_str()?.strip_suffix(".json")?.to_owned())
        })
        .filter(|name| name != "notebook")
        .collect();
    names.sort_unstable();
    names
}

#[test]
fn rockets_open_and_are_still_written() {
    let names = names();
    assert_eq!(names.len(), 8, "{names:?}");
    for name in names {
        let file = read(&format!("{name}.json"));
        let record = open_file(&file).unwrap();
        assert_eq!(to_file(&record), file, "{name}");
        assert_eq!(record.has_swings(), name.ends_with("-swung"), "{name}");
        let texts = read(&format!("{name}.txt"));
        let (link, typed) = texts.split_once("\n\n").unwrap();
        assert_eq!(open_hash(link), Opened::Record(record.clone()), "{name}");
        assert_eq!(open_code(typed), Ok(record.clone()), "{name}");
        assert_eq!(spelled(&record), texts, "{name}");
    }
}

#[test]
fn everything_is_in_some_file() {
    make();
    let files = ["everything.json", "puffin-swung.json", "tern-swung.json"].map(read);
    let swung = read("everything-swung.json");
    let key = |value: serde_json::Value| value.as_str().unwrap().to_owned();
    let kinds = SectionKind::ALL.map(|kind| serde_json::to_value(kind).unwrap());
    let materials = Material::ALL.map(|sheet| serde_json::to_value(sheet).unwrap());
    let masses = ["weighed_g", "sheet_g_per_m2", "joined"].map(Into::into);
    let outlines = ["four_sided", "own_outline_mm"].map(Into::into);
    for key in kinds.into_iter().chain(materials).chain(masses).chain(outlines).map(key) {
        assert!(files[0].contains(&format!("\"{key}\"")), "{key}");
    }
    let outcomes = SwingOutcome::ALL.map(|seen| serde_json::to_value(seen).unwrap());
    for key in outcomes.map(key) {
        let key = format!("\"{key}\"");
        assert!(files.iter().chain([&swung]).any(|file| file.contains(&key)), "{key}");
    }
}

#[test]
fn a_notebook_opens_and_is_still_written() {
    make();
    let text = read("notebook.json");
    let file = open_notebook_file(&text).unwrap();
    assert_eq!(to_notebook_file(&file), text);
    let texts = read("notebook.txt");
    let mut blocks = texts.trim_end().split("\n\n");
    assert_eq!(open_notebook_hash(blocks.next().unwrap()), Some(Ok(file.clone())));
    let (parts, results): (Vec<_>, Vec<_>) =
        blocks.partition(|block| block.starts_with('N'));
    let mut collected = QrSegments::default();
    assert!(collected.add(&parts.join("\n")).unwrap().is_whole());
    assert_eq!(collected.notebook(), Some(Ok(file.clone())));
    assert_eq!(parts, notebook_parts(&file).unwrap());
    assert_eq!(notebook_hash(&file), texts.split("\n\n").next().map(str::to_owned));
    // What the model says of a rocket may change with the model; a code that was written
    // stays what it is.
    assert_eq!(results.len(), file.notebook.trials().len());
    for (text, trial) in results.into_iter().zip(file.notebook.trials()) {
        let result = open_result_code(text).unwrap();
        assert_eq!(result_code(&result), text.trim_end());
        let mut now = result_of(&file.notebook, trial.id()).unwrap();
        now.model = result.model;
        assert_eq!(now, result);
    }
}

#[test]
fn the_notebook_holds_something_of_everything() {
    make();
    let file = open_notebook_file(&read("notebook.json")).unwrap();
    let notebook = &file.notebook;
    assert!(!notebook.is_altered());
    assert!(notebook.trials().iter().all(|trial| !trial.is_altered()));
    assert_eq!((notebook.trials().len(), notebook.deleted().len()), (3, 1));
    assert!(notebook.plans().len() > 1 && file.rocket.is_some());
    assert_ne!(notebook.telling, Telling::All);
    let first = &notebook.trials()[0];
    assert!(!first.predictions().later().is_empty());
    assert!(first.measured.mass.left_out.is_some());
    assert_eq!(first.measured.pressure.from, End::Tail);
}
