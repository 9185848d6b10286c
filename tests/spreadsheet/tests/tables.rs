//! A notebook goes through a spreadsheet program and comes back.

use noseward_lesson::{
    BECAUSE_CHARS, BalancePoint, Colour, Draft, End, Group, LeftOut, Level, Notebook,
    Statement, Support, SwingOutcome, Swings, Telling, Trial,
};
use noseward_link::{Format, open_table, to_table};
use noseward_spreadsheet_tests::{Convention, Spreadsheet};
use noseward_stability::{Example, SwingSetup};
use std::path::Path;

/// What programs like to change.
const TEXTS: [&str; 40] = [
    "=1+1",
    "=SUM(A1:A9)",
    "+49",
    "-3",
    "@x",
    "'",
    "''",
    "'=1+1",
    "'quoted'",
    "1-2",
    "3/4",
    "1/2/3",
    "3.4.2026",
    "5. März",
    "5. Mai 2026",
    "5 March 2026",
    "March 5, 2026",
    "12:30",
    "12:30:15 PM",
    "00123",
    "12345678901234567890",
    "1e5",
    "1E234567",
    "12,5",
    "12.5",
    "1.234",
    "1,234",
    "50 %",
    "€ 5",
    "$5.00",
    "5 €",
    "TRUE",
    "falsch",
    "#N/A",
    "#REF!",
    "  two spaces, in front and behind  ",
    "two\nlines; \"quoted\", and\n\n'more'",
    "\"",
    "صاروخ ١٢",
    "🚀 👩\u{200d}🚀 ½",
];

/// A notebook with each of the texts in several places, and numbers on their grid.
fn notebook() -> Notebook {
    let mut notebook = Notebook::default();
    notebook.group = Group::new(Colour::Green, 12).expect("a group");
    notebook.level = Level::Explain;
    notebook.support = Support::None;
    notebook.allows_two_changes = true;
    notebook.telling = Telling::Verdict;
    for text in &TEXTS[..12] {
        notebook.add_plan(text);
    }
    for (i, text) in TEXTS.into_iter().enumerate().take(30) {
        begin(&mut notebook, i, text);
    }
    // All of them in the boxes of the conclusion.
    for (of, texts) in Statement::ALL.into_iter().zip(TEXTS.chunks(10)) {
        *notebook.conclusion.text_mut(of) = texts.join("\n");
    }
    for id in [3, 7] {
        assert!(notebook.delete(id));
    }
    notebook
}

fn begin(notebook: &mut Notebook, i: usize, text: &str) {
    let other = TEXTS[TEXTS.len() - 1 - i];
    let mut design = Example::ALL[i % Example::ALL.len()].design();
    design.name = text.into();
    let id = notebook.begin(&design.into()).expect("room");
    let outcome = Some(SwingOutcome::TailFirst);
    let long = "Because the fins are 4 mm longer. ".repeat(8);
    for because in [text, other, long.trim(), "small fins"] {
        assert!(because.len() <= BECAUSE_CHARS);
        let because = because.into();
        notebook.trial_mut(id).expect("a trial").draft = Draft { outcome, because };
        assert!(notebook.lock(id));
    }
    let setup = SwingSetup {
        string_m: 1.25,
        turns_per_s: 0.95,
        air_density_kg_m3: 1.205,
        ..SwingSetup::default()
    };
    let outcomes = &SwingOutcome::ALL[..1 + i % 3];
    let swings = Swings::new(setup, outcomes.iter().copied()).expect("up to three");
    notebook.swing(&swings);
    let trial = notebook.trial_mut(id).expect("a trial");
    trial.plan = text.replace('\n', " ");
    trial.note = other.into();
    trial.draft.because = text.into();
    let tenths =
        |tenths: usize| Some(f64::from(u32::try_from(tenths + i).expect("few")) / 10.0);
    trial.measured.rocket_length_mm = tenths(125);
    trial.measured.cutout_length_mm = tenths(10_000);
    for point in BalancePoint::ALL {
        let readings = trial.measured.of_mut(point);
        readings.from = if i.is_multiple_of(2) { End::Nose } else { End::Tail };
        readings.guess_mm = Some(3.1);
        readings.mm = [tenths(2012), None, Some(12.1)];
        readings.left_out = Some(LeftOut { reading: i % 3, reason: other.into() });
    }
}

/// Headings in some language; those of numbers begin with one.
fn called(key: &str) -> String {
    match key {
        "kind_of_row" => "نوع الصف".into(),
        "swing_1" => "1. Schwung; März".into(),
        key => format!("Größe, „{key}“ (mm)"),
    }
}

/// A program for tables of a form.
fn program(name: &str, format: Format) -> Spreadsheet {
    let (convention, separator) = match format {
        Format::PointComma => (Convention::Point, ','),
        Format::CommaSemicolon => (Convention::Comma, ';'),
        Format::Tabs => (Convention::Point, '\t'),
        Format::TabsComma => (Convention::Comma, '\t'),
    };
    let folder =
        Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}-{format:?}"));
    Spreadsheet::new(&folder, convention, separator).expect("a folder")
}

#[test]
fn a_saved_table_opens_as_the_same_notebook() {
    let notebook = notebook();
    assert!(!notebook.trials().iter().any(Trial::is_altered));
    for format in Format::ALL {
        let program = program("saved", format);
        // Some put quotation marks round every text.
        let quotes_all = matches!(format, Format::CommaSemicolon | Format::TabsComma);
        let table = to_table(&notebook, format, &called);
        let saved = program.saved_again(&table, quotes_all).expect("a table");
        assert_eq!(open_table(&saved).as_ref(), Ok(&notebook), "{format:?}");
        for heading in ["نوع الصف [kind_of_row]", "1. Schwung; März [swing_1]"] {
            assert!(saved.contains(heading), "{format:?}: {heading}");
        }
    }
}

#[test]
fn numbers_are_numbers_and_texts_are_texts() {
    let notebook = notebook();
    for format in [Format::PointComma, Format::CommaSemicolon] {
        let program = program("cells", format);
        let table = to_table(&notebook, format, &called);
        let document = program.document(&table).expect("a document");
        for number in ["12.5", "201.2", "1000", "1.25", "0.95", "1205"] {
            let cell = format!("office:value-type=\"float\" office:value=\"{number}\"");
            assert!(document.contains(&cell), "{format:?}: {number} is no number");
        }
        assert!(document.contains("<text:p>&apos;=1+1</text:p>"), "{format:?}");
        for made in ["table:formula", "office:date-value", "office:boolean-value"] {
            assert!(!document.contains(made), "{format:?}: {made}");
        }
    }
}

/// The tests above would see it: the program does make something of such texts.
#[test]
fn without_its_apostrophe_a_text_is_taken_for_something_else() {
    for (format, table) in [
        (Format::PointComma, "a,b\n=1+1,3/4/2026\n"),
        (Format::CommaSemicolon, "a;b\n=1+1;3.4.2026\n"),
    ] {
        let program = program("bare", format);
        let document = program.document(table).expect("a document");
        assert!(document.contains("table:formula"), "{format:?}");
        assert!(document.contains("office:date-value"), "{format:?}");
        let saved = program.saved_again(table, false).expect("a table");
        let cell = saved.lines().nth(1).and_then(|line| line.split([',', ';']).next());
        assert_eq!(cell, Some("2"), "{format:?}: {saved}");
    }
}
