//! Tables there and back.

use noseward_lesson::{
    BECAUSE_CHARS, BOX_CHARS, BalancePoint, Colour, Conclusion, DeletedParts, Draft, End,
    Group, LeftOut, Level, MOST_OUTCOMES, NOTE_CHARS, Notebook, NotebookParts,
    PLAN_CHARS, REASON_CHARS, Record, Seal, SetUp, Statement, Support, SwingOutcome,
    Swings, Telling, Trial, TrialParts,
};
use noseward_stability::{Example, SwingSetup, cleaned_lines};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use super::*;
use crate::{NotebookFile, to_notebook_file};

/// With bare keys.
fn to_table(notebook: &Notebook, format: Format) -> String {
    super::to_table(notebook, format, &|_| String::new())
}

/// What a column might be called: with all that stands between cells, and with brackets.
fn called(key: &str) -> String {
    format!("Größe, „{key}“; [mm] \"طول\"")
}

/// A text with the notebook in it.
fn in_text(notebook: &Notebook) -> String {
    format!("All of it\n\nPlans\n{}", table_in_text(notebook, &called))
}

/// A notebook with something in every column.
fn full() -> Notebook {
    let set_up = SetUp {
        level: Level::Explain,
        support: Support::Questions,
        allows_two_changes: true,
        telling: Telling::Points,
        ..SetUp::default()
    };
    let group = Group::new(Colour::Green, 7).expect("a group");
    let mut notebook = Notebook::of_set_up(group, &set_up);
    notebook.add_plan("3/4 of the ballast");
    for example in [Example::Tern, Example::Razorbill, Example::Puffin] {
        notebook.begin(&example.design().into()).expect("room");
    }
    let swings = [SwingOutcome::Steady, SwingOutcome::Slipped, SwingOutcome::NotSure];
    for (id, because) in [(2, "small fins"), (2, "1e5"), (3, "=1+1")] {
        let draft =
            Draft { outcome: Some(SwingOutcome::Wobbling), because: because.into() };
        notebook.trial_mut(id).expect("a trial").draft = draft;
        assert!(notebook.lock(id));
    }
    let setup = SwingSetup { string_m: 1.25, turns_per_s: 0.95, ..Default::default() };
    for slip in [SwingOutcome::TailFirst, SwingOutcome::Steady, SwingOutcome::Wobbling] {
        notebook.swing(&Swings::new(setup, [slip]).expect("one swing"));
        notebook.swing(&setup.into());
    }
    notebook.swing(&Swings::new(setup, swings).expect("three swings"));
    let trial = notebook.trial_mut(3).expect("a trial");
    trial.plan = "bigger fins".into();
    trial.note = "Windy; then not.\n\"Steady\", said all.".into();
    trial.draft.because = "hm".into();
    trial.measured.rocket_length_mm = Some(412.5);
    trial.measured.cutout_length_mm = Some(388.0);
    trial.measured.mass.guess_mm = Some(200.0);
    trial.measured.mass.mm = [Some(201.5), Some(203.0), Some(251.0)];
    trial.measured.mass.left_out =
        Some(LeftOut { reading: 2, reason: "the string slipped".into() });
    trial.measured.pressure.from = End::Tail;
    trial.measured.pressure.mm = [Some(150.1), None, Some(151.0)];
    notebook.delete(1);
    notebook.conclusion.claim = "Fins help.".into();
    notebook
}

/// What would be lost on the page or in a spreadsheet.
fn text(most: usize) -> impl Strategy<Value = String> {
    let awkward = select(vec![
        "=1+1",
        "+49",
        "-3",
        "@x",
        "'",
        "''=1",
        "'=",
        "1-2",
        "3/4",
        "00123",
        "1e5",
        "TRUE",
        "#N/A",
        "a;b",
        "a,b",
        "\"q\" w",
        "\"",
        "x\ny",
        "1\n",
        "\n",
        " ",
        "  lead",
        "صاروخ ١٢",
        "🚀 👩\u{200d}🚀",
        "12:30",
        "5. März",
        "a\tb",
        BEGIN,
        TABLE_END,
        "x\n--- end of noseward table ---\ny",
        "x\n--- noseward table ---",
    ]);
    prop_oneof![
        2 => Just(String::new()),
        3 => awkward.prop_map(str::to_owned),
        3 => "['=+@\"#;, \n\t0-9a-z.-]{0,12}",
        2 => "\\PC{0,40}",
    ]
    .prop_map(move |text| cleaned_lines(&text, most))
}

fn mm() -> impl Strategy<Value = Option<f64>> {
    option::of((-20_000..20_000).prop_map(|tenths| f64::from(tenths) / 10.0))
}

fn outcome() -> impl Strategy<Value = SwingOutcome> {
    select(SwingOutcome::ALL.to_vec())
}

fn record() -> impl Strategy<Value = Record> {
    let name = prop_oneof![text(30), "\\PC{90,120}"];
    let setup = (30..300, 0..100, 6..60, 160..280);
    (select(Example::ALL.to_vec()), name, vec(outcome(), 0..MOST_OUTCOMES), setup)
        .prop_map(|(example, name, outcomes, (string, arm, turns, air))| {
            let mut record = Record::from(example.design());
            record.design.name = name;
            record.swings.setup = SwingSetup {
                string_m: f64::from(string) / 100.0,
                arm_m: f64::from(arm) / 100.0,
                turns_per_s: f64::from(turns) / 20.0,
                air_density_kg_m3: f64::from(air) / 200.0,
            };
            for outcome in outcomes {
                record.swings.add(outcome);
            }
            record
        })
}

fn draft() -> impl Strategy<Value = Draft> {
    (option::of(outcome()), text(BECAUSE_CHARS))
        .prop_map(|(outcome, because)| Draft { outcome, because })
}

fn measured() -> impl Strategy<Value = noseward_lesson::Measurements> {
    let left_out = option::of((0..3_usize, text(REASON_CHARS)));
    let readings = (any::<bool>(), mm(), [mm(), mm(), mm()], left_out).prop_map(|all| {
        let (from_tail, guess_mm, mm, left_out) = all;
        noseward_lesson::Readings {
            from: if from_tail { End::Tail } else { End::Nose },
            guess_mm,
            mm,
            left_out: left_out.map(|(reading, reason)| LeftOut { reading, reason }),
        }
    });
    (mm(), mm(), vec(readings, 2)).prop_map(|(rocket, cutout, mut readings)| {
        noseward_lesson::Measurements {
            rocket_length_mm: rocket,
            cutout_length_mm: cutout,
            pressure: readings.remove(1),
            mass: readings.remove(0),
        }
    })
}

/// What happens to one trial.
type Story =
    (Record, Vec<Draft>, Draft, noseward_lesson::Measurements, String, String, u8);

fn story() -> impl Strategy<Value = Story> {
    let locked = vec(draft(), 0..8);
    (record(), locked, draft(), measured(), text(PLAN_CHARS), text(NOTE_CHARS), 0..8_u8)
}

fn notebook() -> impl Strategy<Value = Notebook> {
    let settings = (
        select(Colour::ALL.to_vec()),
        1..=40_u8,
        select(Level::ALL.to_vec()),
        select(Support::ALL.to_vec()),
        any::<bool>(),
        select(Telling::ALL.to_vec()),
    );
    let boxes = [(); 4].map(|()| text(BOX_CHARS));
    (settings, vec(story(), 0..5), vec(text(PLAN_CHARS), 0..4), boxes).prop_map(
        |((colour, number, level, support, two, telling), stories, plans, boxes)| {
            let mut notebook = Notebook::default();
            notebook.group = Group::new(colour, number).expect("a group");
            notebook.level = level;
            notebook.support = support;
            notebook.allows_two_changes = two;
            notebook.telling = telling;
            for plan in plans {
                notebook.add_plan(&plan);
            }
            for story in stories {
                live(&mut notebook, story);
            }
            for (of, text) in Statement::ALL.into_iter().zip(boxes) {
                *notebook.conclusion.text_mut(of) = text;
            }
            notebook
        },
    )
}

fn live(notebook: &mut Notebook, story: Story) {
    let (record, locked, draft, measured, plan, note, fate) = story;
    let id = notebook.begin(&record).expect("room");
    for draft in locked {
        notebook.trial_mut(id).expect("a trial").draft = draft;
        notebook.lock(id);
    }
    let trial = notebook.trial_mut(id).expect("a trial");
    (trial.draft, trial.measured, trial.plan, trial.note) = (draft, measured, plan, note);
    match fate {
        0 | 1 => {
            notebook.delete(id);
        }
        2 => notebook.compare(id, None),
        3 => {
            notebook.shift(id, true);
        }
        _ => {}
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        failure_persistence: None,
        cases: 64,
        ..ProptestConfig::default()
    })]

    #[test]
    fn every_notebook_comes_back(notebook in notebook()) {
        for format in Format::ALL {
            let table = to_table(&notebook, format);
            prop_assert!(looks_like_table(&table));
            prop_assert_eq!(open_table(&table), Ok(notebook.clone()));
            let table = super::to_table(&notebook, format, &called);
            prop_assert!(looks_like_table(&table));
            prop_assert_eq!(open_table(&table), Ok(notebook.clone()));
        }
        let words = in_text(&notebook);
        prop_assert!(looks_like_table(&words));
        prop_assert_eq!(open_table(&words), Ok(notebook.clone()));
        let mailed = format!("Hello,\r\n\r\n{}\r\nBye.\r\n", words.replace('\n', "\r\n"));
        prop_assert_eq!(open_table(&mailed), Ok(notebook.clone()));
    }

    /// Whatever somebody writes into a cell is refused, or kept from then on.
    #[test]
    fn a_changed_cell_is_kept_or_refused(
        row in 1..7_usize,
        column in 0..74_usize,
        value in prop_oneof![
            text(40),
            "[0-9]{1,5}[.,]?[0-9]{0,3}",
            select(vec!["yes", "no", "TAIL", "not sure", "Blue 3", "3", "?", "-0", "é"])
                .prop_map(str::to_owned),
        ],
    ) {
        let mut cells = cells(&to_table(&full(), Format::PointComma));
        cells[row][column] = value;
        kept_or_refused(&table(&cells))?;
    }

    /// The same of a slip of the hand anywhere in the file.
    #[test]
    fn a_changed_file_is_kept_or_refused(
        place in any::<proptest::sample::Index>(),
        taken in 0..4_usize,
        put in "[,;\"\n\r\t'x0]{0,2}",
    ) {
        let table = to_table(&full(), Format::CommaSemicolon);
        let place = place.index(table.len() - 4);
        prop_assume!(table.is_char_boundary(place) && table.is_char_boundary(place + taken));
        let slipped = [&table[..place], &put, &table[place + taken..]].concat();
        kept_or_refused(&slipped)?;
    }

    #[test]
    fn no_text_is_too_much(text in "[,;\t\"\r\n'a-c0-3.-]{0,60}") {
        let heading = "kind_of_row,trial,group,note,rocket\n";
        let _ = open_table(&text);
        if let Ok(notebook) = open_table(&format!("{heading}{text}")) {
            prop_assert!(notebook.trials().is_empty(), "no rocket, no trial");
        }
    }
}

fn kept_or_refused(table: &str) -> Result<(), TestCaseError> {
    match open_table(table) {
        Ok(notebook) => {
            for format in Format::ALL {
                // A number that is none is not equal to itself.
                let again = open_table(&to_table(&notebook, format));
                let (again, first) = (format!("{again:?}"), format!("{notebook:?}"));
                prop_assert_eq!(again, format!("Ok({first})"));
            }
        }
        Err(LinkError { at, .. }) => {
            let is_table = matches!(at, At::Table | At::TableRow(_) | At::Cell { .. });
            prop_assert!(is_table, "{at:?}");
        }
    }
    Ok(())
}

/// The rows of a table, cell by cell.
fn cells(table: &str) -> Vec<Vec<String>> {
    let table = table.trim_start_matches('\u{feff}');
    let mut reader =
        csv::ReaderBuilder::new().has_headers(false).from_reader(table.as_bytes());
    let rows = reader.records().map(|row| row.expect("a row of as many cells"));
    rows.map(|row| row.iter().map(str::to_owned).collect()).collect()
}

fn table(cells: &[Vec<String>]) -> String {
    let mut writer = csv::WriterBuilder::new().flexible(true).from_writer(Vec::new());
    for row in cells {
        writer.write_record(row).expect("memory has room");
    }
    let bytes = writer.into_inner().expect("memory has room");
    String::from_utf8(bytes).expect("text")
}

fn place(cells: &[Vec<String>], heading: &str) -> usize {
    let found = cells[0].iter().position(|found| found == heading);
    found.unwrap_or_else(|| panic!("no column {heading}"))
}

/// The full notebook with one cell of the row of trial 3 changed.
fn changed(heading: &str, value: &str) -> Result<Notebook, LinkError> {
    let mut cells = cells(&to_table(&full(), Format::PointComma));
    let (column, number) = (place(&cells, heading), place(&cells, "trial"));
    let row = cells.iter_mut().find(|row| row[number] == "3").expect("trial 3");
    row[column] = value.into();
    open_table(&table(&cells))
}

#[test]
fn the_full_notebook_comes_back_and_has_every_column() {
    let notebook = full();
    let cells = cells(&to_table(&notebook, Format::PointComma));
    for (i, heading) in cells[0].iter().enumerate() {
        let is_filled = cells[1..].iter().any(|row| !row[i].is_empty());
        // Nobody predicted more often, swung more often, or changed what was locked.
        let may_be_empty = (2..=6)
            .any(|i| heading.starts_with(&format!("prediction_{i}_")))
            || heading == "prediction_1_swings_seen"
            || ["swing_4", "swing_5", "swing_6", "altered"].contains(&heading.as_str())
            || ["evidence", "reason", "trust", "draft_outcome"]
                .contains(&heading.as_str())
            || heading.starts_with("centre_of_pressure_")
            || heading == "centre_of_mass_from";
        assert!(is_filled || may_be_empty, "{heading}");
    }
    let kinds: Vec<_> = cells.iter().map(|row| row[0].as_str()).collect();
    assert_eq!(
        kinds,
        ["kind_of_row", "trial", "trial", "deleted", "plan", "conclusion", "notebook"]
    );
    for format in Format::ALL {
        assert_eq!(open_table(&to_table(&notebook, format)), Ok(notebook.clone()));
    }
}

/// Headings differ from language to language, and nothing else.
#[test]
fn a_heading_is_words_and_a_key() {
    let notebook = full();
    for format in Format::ALL {
        let bare = to_table(&notebook, format);
        let named = super::to_table(&notebook, format, &called);
        let below = |table: &str| table.split_once("\r\n").unwrap().1.to_owned();
        assert_eq!(below(&named), below(&bare));
    }
    let some = super::to_table(&notebook, Format::PointComma, &|key| match key {
        "trial" => "Versuch".into(),
        "note" => "Länge, [mm]".into(),
        _ => String::new(),
    });
    let some = cells(&some);
    assert_eq!(
        some[0][..4],
        ["kind_of_row", "group", "Versuch [trial]", "compared_with"]
    );
    assert!(some[0].contains(&"Länge, [mm] [note]".into()));
    // Whoever writes one by hand needs no words, or other ones.
    let link = crate::hash(&Example::Tern.design().into());
    let by_hand = format!(
        "Nummer [ TRIAL ];kind_of_row;Sonstiges;Rakete [rocket]\n4;trial;;{link}"
    );
    assert_eq!(open_table(&by_hand).unwrap().trials()[0].id(), 4);
    // A key counts once, whatever it is called.
    let twice = format!("Nummer [trial];{}", by_hand.replace("\n", "\n4;"));
    let columns = LinkErrorKind::TwoColumns { column: "trial".into() }.at(At::Table);
    assert_eq!(open_table(&twice), Err(columns));
}

#[test]
fn each_form_has_its_marks() {
    let notebook = full();
    for (format, front, length) in [
        (Format::PointComma, "\u{feff}kind_of_row,group", ",412.5,388,"),
        (Format::CommaSemicolon, "\u{feff}kind_of_row;group", ";412,5;388;"),
        (Format::Tabs, "kind_of_row\tgroup", "\t412.5\t388\t"),
        (Format::TabsComma, "kind_of_row\tgroup", "\t412,5\t388\t"),
    ] {
        let table = to_table(&notebook, format);
        assert!(table.starts_with(front), "{table}");
        assert!(table.contains(length), "{table}");
        assert!(table.ends_with("\r\n"));
    }
}

#[test]
fn what_a_spreadsheet_would_convert_stands_behind_a_mark() {
    let cells = cells(&to_table(&full(), Format::PointComma));
    let column = |heading| {
        let at = place(&cells, heading);
        cells[1..].iter().map(|row| row[at].as_str()).collect::<Vec<_>>()
    };
    assert!(column("plan").contains(&"'3/4 of the ballast"));
    assert!(column("prediction_1_because").contains(&"'=1+1"));
    assert!(column("prediction_2_because").contains(&"'1e5"));
    for seal in column("seal") {
        assert!(seal.is_empty() || seal.len() == 9 && seal.starts_with('s'), "{seal}");
    }
    assert!(column("rocket")[0].starts_with("#r1."));
}

#[test]
fn people_find_what_the_readings_come_to() {
    let notebook = full();
    let cells = cells(&to_table(&notebook, Format::PointComma));
    let cell = |heading| cells[2][place(&cells, heading)].clone();
    assert_eq!(cell("trial"), "3");
    assert_eq!(cell("centre_of_mass_middle_mm"), "202.3");
    assert_eq!(cell("centre_of_mass_range_mm"), "1.5");
    // Twice 388 mm less the reading, on a rocket of 412.5 mm: 252.9 and 252 mm.
    assert_eq!(cell("centre_of_pressure_middle_mm"), "252.4");
    assert_eq!(cell("measured_separation_mm"), "50.2");
    assert_eq!(cell("all_swings"), "mixed");
    let figures = noseward_stability::evaluate(&Example::Puffin.design()).figures;
    let mm = figures.expect("no fault").separation_m * 1000.0;
    assert_eq!(cell("computed_separation_mm"), number::written(mm, 1, '.'));
    // None of them is read.
    let mut other = cells.clone();
    for heading in ["measured_separation_mm", "all_swings", "rocket_name"] {
        other[2][place(&cells, heading)] = "anything".into();
    }
    assert_eq!(open_table(&table(&other)), Ok(notebook));
}

#[test]
fn what_is_changed_by_hand_is_seen() {
    let mut other = Example::Puffin.design();
    other.sections[0].closed_front = !other.sections[0].closed_front;
    let other_rocket = format!("#{}", crate::hash(&other.into()));
    for (heading, value) in [
        ("prediction_1_because", "big fins"),
        ("prediction_1_outcome", "tail first"),
        ("prediction_1_swings_seen", "2"),
        ("prediction_2_outcome", "not sure"),
        ("seal", ""),
        ("seal", "s00000000"),
        ("trial", "9"),
        ("altered", "yes"),
        ("swing_3", "steady"),
        ("swing_1", ""),
        ("string_m", "1.5"),
        ("rocket", &other_rocket),
    ] {
        let notebook = changed(heading, value).unwrap();
        let altered: Vec<bool> =
            notebook.trials().iter().map(Trial::is_altered).collect();
        assert_eq!(altered, [false, true], "{heading}");
        // It stays so, whatever is written next.
        for format in Format::ALL {
            assert_eq!(open_table(&to_table(&notebook, format)), Ok(notebook.clone()));
        }
    }
    for (heading, value) in [
        ("note", "Windy."),
        ("plan", "other"),
        ("centre_of_mass_reading_1_mm", "300,5"),
        ("compared_with", ""),
        ("centre_of_mass_from", "TAIL"),
    ] {
        let notebook = changed(heading, value).unwrap();
        assert_ne!(notebook, full(), "{heading}");
        assert!(!notebook.trials().iter().any(Trial::is_altered), "{heading}");
    }
}

/// An empty cell is the usual value, and so is its key.
#[test]
fn what_is_told_when_stands_in_a_cell() {
    // A set-up would fix it.
    let mut free = full();
    free.lift_set_up();
    let mut rows = cells(&to_table(&free, Format::PointComma));
    let column = place(&rows, "telling");
    assert_eq!(rows[6][column], "points");
    for (cell, telling, written) in [
        ("", Telling::All, ""),
        ("all", Telling::All, ""),
        ("Verdict", Telling::Verdict, "verdict"),
    ] {
        rows[6][column] = cell.into();
        let notebook = open_table(&table(&rows)).unwrap();
        let mut expected = free.clone();
        expected.telling = telling;
        assert_eq!(notebook, expected, "{cell}");
        let again = cells(&to_table(&notebook, Format::PointComma));
        assert_eq!(again[6][column], written, "{cell}");
    }
    rows[6][column] = "later".into();
    let choices = vec!["all", "verdict", "points"];
    let kind = LinkErrorKind::Choice { found: "later".into(), choices };
    assert_eq!(open_table(&table(&rows)).unwrap_err().kind, kind);
}

#[test]
fn columns_may_come_in_any_order_and_some_may_be_missing() {
    let notebook = full();
    let mut cells = cells(&to_table(&notebook, Format::PointComma));
    for row in &mut cells {
        row.reverse();
        row.insert(3, "a remark".into());
        row.extend([String::new(), " ".into()]);
    }
    cells[0][0] = cells[0][0].to_ascii_uppercase();
    cells.push(vec![String::new(); 4]);
    let text = table(&cells);
    assert_eq!(open_table(&text), Ok(notebook.clone()));
    let unix = text.replace("\r\n", "\n");
    assert_eq!(open_table(&unix).as_ref(), Ok(&notebook));
    // Below other words, and quoted, too.
    let mailed = format!("Hello,\n{unix}");
    for sent in [&mailed, &mailed.replace('\n', "\n> ")] {
        assert!(looks_like_table(sent), "{sent}");
        assert_eq!(open_table(sent).as_ref(), Ok(&notebook), "{sent}");
    }

    let link = crate::hash(&Example::Tern.design().into());
    let small = format!("trial;kind_of_row;rocket\n4;trial;#{link}\n;;\n");
    let opened = open_table(&small).unwrap();
    assert_eq!(opened.trials().len(), 1);
    assert_eq!(opened.trials()[0].id(), 4);
    assert_eq!(opened.trials()[0].design(), &Example::Tern.design());
    assert_eq!(opened.group, Group::default());
}

#[test]
fn a_link_with_swings_brings_them() {
    let mut record = Record::from(Example::Tern.design());
    record.swings.add(SwingOutcome::Steady);
    let link = crate::hash(&record);
    let row = format!("kind_of_row,trial,rocket,swing_1\ntrial,1,{link},");
    assert_eq!(open_table(&row).unwrap().trials()[0].record(), record);
    let opened = open_table(&format!("{row}tail first")).unwrap();
    assert_eq!(opened.trials()[0].swings().outcomes(), [SwingOutcome::TailFirst]);
}

#[test]
fn a_rocket_that_a_link_has_no_room_for_stays_whole() {
    let mut notebook = Notebook::default();
    let mut design = Example::Tern.design();
    design.name = "Seabird ".repeat(20);
    design.sections[0].length_mm = 40_000.0;
    notebook.begin(&design.into()).unwrap();
    let mut unread = Example::Tern.design();
    unread.sections[0].length_mm = f64::NAN;
    notebook.begin(&unread.into()).unwrap();
    let opened = open_table(&to_table(&notebook, Format::Tabs)).unwrap();
    assert_eq!(opened.trials()[0], notebook.trials()[0]);
    assert!(opened.trials()[1].design().sections[0].length_mm.is_nan());
}

#[test]
fn a_fault_names_its_row_its_column_and_what_stands_there() {
    use LinkErrorKind as Kind;
    let kinds = ["trial", "deleted", "plan", "conclusion", "notebook"];
    let predicted = ["steady", "wobbling", "sideways", "tail_first", "not_sure"];
    let seen = ["steady", "wobbling", "sideways", "tail_first", "slipped", "not_sure"];
    let choice = |choices: &[&'static str]| {
        let choices = choices.to_vec();
        move |found| Kind::Choice { found, choices: choices.clone() }
    };
    let count = |least, most| move |found| Kind::Count { found, least, most };
    type Fault<'a> = &'a dyn Fn(String) -> Kind;
    let empty: Fault<'_> = &|_| Kind::Empty;
    let nothing = Kind::Nothing.at(At::File);
    let cut = Kind::CutShort.at(At::Link);
    let faults: [(&str, &str, Fault<'_>); 22] = [
        ("kind_of_row", "trail", &choice(&kinds)),
        ("kind_of_row", "", empty),
        ("trial", "", empty),
        ("trial", "2", &|_| Kind::Taken { id: 2 }),
        ("trial", "0", &count(1, 65_534)),
        ("trial", "2.5", &count(1, 65_534)),
        ("group", "Pink 4", &|found| Kind::NotAGroup { found }),
        ("group", "blue 3", &|found| Kind::OtherGroup { found }),
        ("rocket", "", empty),
        ("rocket", "Puffin", &|_| Kind::NotARocket { error: Box::new(nothing.clone()) }),
        ("rocket", "#r1.AAAA", &|_| Kind::NotARocket { error: Box::new(cut.clone()) }),
        ("rocket_length_mm", "12. Mai", &|found| Kind::NotANumber { found }),
        ("rocket_length_mm", "1,234", &|found| Kind::Ambiguous { found }),
        ("centre_of_mass_left_out", "4", &count(1, 3)),
        ("centre_of_mass_left_out", "", empty),
        ("centre_of_mass_from", "middle", &choice(&["nose", "tail"])),
        ("prediction_1_outcome", "slipped", &choice(&predicted)),
        ("prediction_1_outcome", "", empty),
        ("swing_6", "fell", &choice(&seen)),
        ("seal", "s123", &|found| Kind::NotASeal { found }),
        ("altered", "maybe", &choice(&["no", "yes"])),
        ("level", "balance", &|found| Kind::Misplaced { found, kind: "trial" }),
    ];
    for (column, value, kind) in faults {
        let at = At::Cell { row: 3, column: column.into() };
        assert_eq!(changed(column, value), Err(kind(value.into()).at(at)));
    }
    let long = "x".repeat(NOTE_CHARS + 1);
    let error = LinkErrorKind::TooLong { chars: 501, most: 500 };
    let at = At::Cell { row: 3, column: "note".into() };
    assert_eq!(changed("note", &long), Err(error.at(at)));
}

#[test]
fn nothing_is_left_out() {
    let whole = cells(&to_table(&full(), Format::PointComma));
    let with = |row: Vec<String>| {
        let mut cells = whole.clone();
        cells.push(row);
        open_table(&table(&cells))
    };
    // What somebody worked out below the table.
    let mut mean = vec![String::new(); whole[0].len()];
    mean[12] = "203.5".into();
    let at = At::Cell { row: 8, column: "kind_of_row".into() };
    assert_eq!(with(mean), Err(LinkErrorKind::Empty.at(at)));
    let again = LinkErrorKind::TwoRows { kind: "notebook" }.at(At::TableRow(8));
    assert_eq!(with(whole[6].clone()), Err(again));
    let mut wide = whole[5].clone();
    wide.push("x".into());
    assert_eq!(with(wide), Err(LinkErrorKind::TooManyCells.at(At::TableRow(8))));

    let mut twice = whole.clone();
    twice[0][1] = twice[0][2].clone();
    let columns = LinkErrorKind::TwoColumns { column: "trial".into() }.at(At::Table);
    assert_eq!(open_table(&table(&twice)), Err(columns));
    let mut newer = whole.clone();
    let version = place(&whole, "version");
    newer[6][version] = "2".into();
    assert_eq!(
        open_table(&table(&newer)),
        Err(LinkErrorKind::Newer { version: 2 }.at(At::Table))
    );
    let plans = format!("kind_of_row,plan,group\n{}", "plan,a,\n".repeat(13));
    let kind = open_table(&plans).unwrap_err().kind;
    assert!(matches!(kind, LinkErrorKind::Notebook(_)), "{kind:?}");
}

/// What a mail program does to a text, or somebody who copies it by hand.
#[test]
fn a_table_that_came_by_mail_opens_or_says_what_is_missing() {
    let notebook = full();
    let bare = Format::ALL.map(|format| to_table(&notebook, format));
    let texts = Format::ALL.map(|format| super::to_table(&notebook, format, &called));
    for text in bare.into_iter().chain(texts).chain([in_text(&notebook)]) {
        let quoted = |mark: &str| {
            let lines = text
                .trim_matches('\u{feff}')
                .lines()
                .map(|line| format!("{mark}{line}").trim_end().to_owned());
            format!("Blue wrote:\n{}\n", lines.collect::<Vec<_>>().join("\n"))
        };
        for sent in [
            quoted("> "),
            quoted(">"),
            quoted("> > "),
            format!("Hello,\n\n{text}"),
            format!("\u{feff}\r\nHello\r\n{text}"),
        ] {
            assert!(looks_like_table(&sent), "{sent}");
            assert_eq!(open_table(&sent).as_ref(), Ok(&notebook), "{sent}");
        }
    }
    // The rest of a row that was broken without a mark is not dropped in silence.
    let words = in_text(&notebook).replace('\n', "\n> ");
    let broken = format!("> {words}").replace("\tFins help.", "\t\nFins help.");
    assert!(looks_like_table(&broken));
    let error = open_table(&broken).unwrap_err();
    assert!(matches!(error.at, At::Cell { .. }), "{error:?}\n{broken}");
    let table = to_table(&notebook, Format::Tabs);
    let (_, rows) = table.split_once('\n').unwrap();
    let spaced = |table: &str| table.replace('\t', "    ");
    let named = super::to_table(&notebook, Format::Tabs, &called);
    let few = ["kind_of_row  trial  rocket", "kind_of_row  plan  group"];
    for text in [rows, &spaced(&table), &spaced(&named), few[0], few[1]] {
        assert!(looks_like_table(text), "{text}");
        assert_eq!(open_table(text), Err(LinkErrorKind::Nothing.at(At::Table)), "{text}");
    }
}

#[test]
fn other_texts_are_no_table() {
    let json = to_notebook_file(&NotebookFile { notebook: full(), rocket: None });
    let link = crate::hash(&Example::Tern.design().into());
    for text in ["", "\n", "trial", "kind_of_row", "a,b,c\n1,2,3", &json, &link] {
        assert!(!looks_like_table(text), "{text}");
        assert_eq!(open_table(text), Err(LinkErrorKind::Nothing.at(At::Table)), "{text}");
    }
    let large = " ".repeat(TABLE_BYTES + 1);
    assert!(!looks_like_table(&large));
    let error = open_table(&large).unwrap_err();
    let too_large = LinkErrorKind::TooLarge { bytes: TABLE_BYTES + 1 };
    assert_eq!(error, too_large.at(At::Table));
    let words = in_text(&full());
    let cut = &words[..words.len() - 10];
    assert!(looks_like_table(cut));
    assert_eq!(open_table(cut), Err(LinkErrorKind::CutShort.at(At::Table)));
}

#[test]
fn the_largest_notebook_fits() {
    let mut notebook = Notebook::default();
    let long = |chars: usize| "ش".repeat(chars);
    for _ in 0..noseward_lesson::MOST_TRIALS {
        let id = notebook.begin(&Example::Razorbill.design().into()).unwrap();
        for i in 0..noseward_lesson::MOST_VERSIONS {
            let because = format!("{i}{}", long(BECAUSE_CHARS - 1));
            let outcome = Some(SwingOutcome::Wobbling);
            notebook.trial_mut(id).unwrap().draft = Draft { outcome, because };
            assert!(notebook.lock(id));
        }
        let trial = notebook.trial_mut(id).unwrap();
        trial.note = long(NOTE_CHARS);
        trial.plan = long(PLAN_CHARS);
        trial.draft.because = long(BECAUSE_CHARS);
        for point in BalancePoint::ALL {
            trial.measured.of_mut(point).left_out =
                Some(LeftOut { reading: 0, reason: long(REASON_CHARS) });
        }
    }
    let table = to_table(&notebook, Format::PointComma);
    assert!(table.len() < TABLE_BYTES / 2, "{}", table.len());
    assert_eq!(open_table(&table), Ok(notebook));
}

/// A line of the block, written by somebody in a note, is not the block's.
#[test]
fn a_note_may_hold_the_lines_themselves() {
    let mut notebook = full();
    notebook.conclusion = Conclusion {
        claim: format!("x\n{BEGIN}\n{TABLE_END}\ny"),
        trust: format!("{TABLE_END}\n"),
        ..Conclusion::default()
    };
    notebook.trial_mut(2).unwrap().note = format!("{BEGIN}\n{BEGIN}");
    assert_eq!(open_table(&in_text(&notebook)), Ok(notebook));
}

/// A row that is taken out, and a seal with what it covers.
#[test]
fn a_trial_that_is_taken_out_is_seen() {
    let whole = cells(&to_table(&full(), Format::PointComma));
    let opened = |change: &dyn Fn(&mut Vec<Vec<String>>)| {
        let mut cells = whole.clone();
        change(&mut cells);
        open_table(&table(&cells)).unwrap()
    };
    assert!(!opened(&|_| {}).is_altered());
    // Spreadsheets sort rows.
    assert!(!opened(&|cells| cells.swap(1, 2)).is_altered());
    let seal = place(&whole, "seal");
    let predicted = place(&whole, "prediction_1_outcome");
    let place_of_deleted = place(&whole, "place");
    type Change<'a> = &'a dyn Fn(&mut Vec<Vec<String>>);
    let changes: [Change<'_>; 6] = [
        &|cells| drop(cells.remove(1)),
        &|cells| drop(cells.remove(3)),
        &|cells| drop(cells.remove(6)),
        &|cells| cells[6][seal].clear(),
        &|cells| {
            cells[3][0] = "trial".into();
            cells[3][place_of_deleted].clear();
        },
        &|cells| {
            let mut again = cells[1].clone();
            for cell in &mut again[predicted..] {
                cell.clear();
            }
            cells[1] = again;
        },
    ];
    for (i, change) in changes.into_iter().enumerate() {
        let notebook = opened(&|cells| change(cells));
        assert!(notebook.is_altered(), "{i}");
        for format in Format::ALL {
            assert_eq!(open_table(&to_table(&notebook, format)), Ok(notebook.clone()));
        }
    }
}

/// Once written, a table opens for ever: keys and numbers alone, no words of the page.
#[test]
fn tables_once_written_stay_readable() {
    let text = "kind_of_row;group;trial;rocket;prediction_1_outcome;prediction_1_because;seal\n\
        trial;blue 4;3;#ROCKET;wobbling;small fins;s32bc09c1\n";
    let design = noseward_stability::Design { name: "Tern".into(), ..Default::default() };
    let link = crate::hash(&design.into());
    let opened = open_table(&text.replace("ROCKET", &link)).unwrap();
    let trial = &opened.trials()[0];
    assert_eq!(trial.predictions().first().unwrap().outcome, SwingOutcome::Wobbling);
    assert_eq!(opened.group, Group::new(Colour::Blue, 4).unwrap());
    // The trial is as it was sealed; without a row of the notebook nobody knows of others.
    assert_eq!(trial.seal(), Some(Seal(0x32bc_09c1)));
    assert!(!trial.is_altered() && opened.is_altered());
}

/// An altered trial, deleted too, stays one.
#[test]
fn altered_trials_come_back_as_such() {
    let trial = |id| TrialParts {
        id,
        design: Example::Tern.design(),
        predictions: full().trials()[0].predictions().clone(),
        ..TrialParts::default()
    };
    let parts = NotebookParts {
        trials: vec![trial(1)],
        deleted: vec![DeletedParts { place: 1, trial: trial(2) }],
        ..NotebookParts::default()
    };
    let notebook = Notebook::try_from(parts).unwrap();
    assert!(notebook.trials()[0].is_altered() && notebook.is_altered());
    for format in Format::ALL {
        assert_eq!(open_table(&to_table(&notebook, format)), Ok(notebook.clone()));
    }
}
