//! What a class hands in, gathered from texts of every kind; its table, there and back.

use noseward_lesson::{
    Added, Class, ClassLabel, Colour, Entry, Group, PointResult, Refusal, ResultModel,
    ResultPrediction, RulesCode, SwingOutcome, TrialResult, Work, example_class,
};
use noseward_link::{
    At, ClassRow, ClassRows, Format, Found, Gathering, HandedIn, LinkError,
    LinkErrorKind, class_to_table, code, compact, hash, notebook_hash, notebook_parts,
    open_result_code, result_code, to_notebook_file, to_table,
};
use noseward_stability::Example;
use proptest::prelude::*;
use proptest::sample::select;
use proptest::{collection, option};

use crate::notebooks::{everything, ordinary};

fn found(text: &str) -> Vec<Found> {
    Gathering::new("", text).collect()
}

fn group(number: u8) -> Group {
    Group::new(Colour::Gold, number).expect("a group")
}

fn finished(number: u8, trial: u16) -> TrialResult {
    TrialResult {
        outcomes: vec![SwingOutcome::Steady; 3],
        mass: PointResult::of([Some(200.0 + f64::from(number)), Some(203.5), None]),
        ..TrialResult::empty(group(number), trial)
    }
}

/// Takes everything in that can be: results, and what is told of all else.
fn gathered(class: &mut Class, text: &str) -> (Vec<Added>, Vec<Found>) {
    let (mut added, mut told) = (Vec::new(), Vec::new());
    for one in found(text) {
        match &one.what {
            Ok(HandedIn::Result(result)) => {
                let label = ClassLabel::default();
                match class.add(&label, (**result).clone(), false) {
                    Ok(done) => added.push(done),
                    Err(_) => told.push(one),
                }
            }
            _ => told.push(one),
        }
    }
    (added, told)
}

/// Thirty lines, three of them twice and two damaged: 25 results, and five explained.
#[test]
fn of_thirty_lines_none_vanishes() {
    let mut lines: Vec<String> =
        (1..=27).map(|i| compact(&result_code(&finished(i, 1)))).collect();
    for i in [3, 10, 20] {
        lines.insert(i + 4, lines[i].clone());
    }
    assert_eq!(lines.len(), 30);
    let other = if lines[0].as_bytes()[30] == b'A' { "B" } else { "A" };
    lines[0].replace_range(30..31, other);
    lines[28].truncate(41);
    let mut class = Class::default();
    let (added, told) = gathered(&mut class, &lines.join("\n"));
    assert_eq!(class.entries().len(), 25);
    assert_eq!(added.iter().filter(|&&added| added == Added::Doubled).count(), 3);
    assert_eq!(told.iter().map(|one| one.line).collect::<Vec<_>>(), [1, 29]);
    let why = told.into_iter().map(|one| one.what.unwrap_err().kind);
    let why: Vec<_> = why.collect();
    assert_eq!(why[0], LinkErrorKind::Rows { rows: vec![2] });
    assert_eq!(why[1], LinkErrorKind::EndsEarly { row: 3 });
}

/// Codes in their three rows, with words before, between and behind.
#[test]
fn words_are_told_apart_from_what_was_damaged() {
    let codes = [1, 2].map(|i| result_code(&finished(i, 1)));
    let text = format!(
        "Hello, here is ours:\n{}\nand Blue 2: {}\n\nthanks!\nXX{}\n",
        codes[0],
        codes[1],
        compact(&codes[0]),
    );
    let what: Vec<_> = found(&text).into_iter().map(|one| (one.line, one.what)).collect();
    assert_eq!(what.len(), 5, "{what:?}");
    assert!(matches!(what[0], (1, Ok(HandedIn::Words))));
    assert!(matches!(&what[1], (2, Ok(HandedIn::Result(r))) if r.group == group(1)));
    assert!(matches!(&what[2], (5, Ok(HandedIn::Result(r))) if r.group == group(2)));
    assert!(matches!(what[3], (9, Ok(HandedIn::Words))));
    let nothing = LinkErrorKind::Nothing;
    assert!(matches!(&what[4], (10, Err(e)) if e.kind == nothing), "{:?}", what[4]);
}

/// A trial is known again when it comes once more by another way: from the notebook, by its
/// code, from a table.
#[test]
fn a_trial_is_the_same_on_every_way_here() {
    let label = ClassLabel::default();
    for notebook in [ordinary(), everything()].map(|file| file.notebook) {
        let mut class = Class::default();
        let results =
            || notebook.trials().iter().map(|t| TrialResult::of(&notebook, t.id()));
        for result in results().flatten() {
            let code = open_result_code(&result_code(&result)).unwrap();
            assert_eq!(class.add(&label, result, true), Ok(Added::New));
            assert_eq!(class.add(&label, code, true), Ok(Added::Doubled));
        }
        let table = class_to_table(&class, Format::PointComma, false, &|_| String::new());
        for (_, _, row) in ClassRows::open(&table).unwrap().unwrap() {
            if let ClassRow::Result(entry) = row.unwrap() {
                assert_eq!(class.add(&label, entry.result, true), Ok(Added::Doubled));
            }
        }
        assert!(class.entries().iter().any(|entry| entry.result.mass.is_some()));
    }
}

/// Headings that cannot be read are told of, in front and between files; a row that only
/// speaks of them is a row.
#[test]
fn headings_are_told_from_rows_and_never_passed_over() {
    let mut class = Class::default();
    let what_changed = "kind_of_row".to_owned();
    let result = TrialResult { what_changed, ..finished(1, 1) };
    class.add(&ClassLabel::default(), result, false).unwrap();
    let text = class_to_table(&class, Format::PointComma, false, &|_| String::new());
    assert_eq!(opened(&text), class);
    let twice = text.replacen("hidden", "marked", 1);
    let two_columns = LinkErrorKind::TwoColumns { column: "marked".into() };
    let errors = |text: &str| -> Vec<_> {
        found(text).into_iter().filter_map(|one| one.what.err()).collect()
    };
    assert_eq!(errors(&twice), [LinkError { kind: two_columns.clone(), at: At::Table }]);
    let between = text.clone() + twice.trim_start_matches('\u{feff}');
    assert_eq!(errors(&between), [LinkError { kind: two_columns, at: At::Table }]);
}

/// A code whose first row was damaged is told of, also right behind the rows of another.
#[test]
fn a_damaged_code_is_no_further_row_of_the_one_before() {
    let [first, second] = [1, 2].map(|i| result_code(&finished(i, 1)));
    let text = format!("{first}\nXX{}", &second[2..]);
    let found: Vec<_> =
        found(&text).into_iter().map(|one| (one.line, one.text)).collect();
    assert_eq!(found[0], (1, first));
    assert_eq!(found[1].0, 4, "{found:?}");
}

#[test]
fn every_route_leads_to_the_same_notebook() {
    let file = ordinary();
    let named = |key: &str| key.to_owned();
    let texts = [
        notebook_hash(&file).expect("short"),
        format!("Our link: https://x.test/?at=swing#{}", notebook_hash(&file).unwrap()),
        notebook_parts(&file).expect("short").join("\n"),
        to_notebook_file(&file),
        to_table(&file.notebook, Format::PointComma, &named),
        to_table(&file.notebook, Format::CommaSemicolon, &named),
    ];
    for text in texts {
        let found = found(&text);
        let begins: Vec<_> = found.iter().map(|one| (one.line, &one.text)).collect();
        assert_eq!(found.len(), 1, "{begins:#?}");
        let Ok(HandedIn::Notebook(notebook)) = &found[0].what else {
            panic!("{:?}", found[0])
        };
        assert_eq!(**notebook, file.notebook);
    }
    let mut parts = notebook_parts(&file).unwrap();
    let (of, _) = (parts.len(), parts.pop());
    let found = found(&parts.join("\n\n"));
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].what, Ok(HandedIn::Part { here: of - 1, of }));
}

#[test]
fn tables_one_behind_the_other_are_all_read() {
    let named = |_: &str| String::new();
    let both = [ordinary(), everything()].map(|file| file.notebook);
    let tables = both.each_ref().map(|n| to_table(n, Format::PointComma, &named));
    let notebooks: Vec<_> = found(&tables.concat())
        .into_iter()
        .map(|one| match one.what {
            Ok(HandedIn::Notebook(notebook)) => *notebook,
            what => panic!("{what:?}"),
        })
        .collect();
    assert_eq!(notebooks, both);
    // A line behind them may be the rest of a row: it is named, and the table with it.
    let found_behind = found(&(tables.concat() + "hello"));
    assert!(matches!(found_behind[0].what, Ok(HandedIn::Notebook(_))));
    let Err(error) = &found_behind[1].what else { panic!("{found_behind:?}") };
    assert!(matches!(&error.at, At::Cell { column, .. } if column == "kind_of_row"));
    let rocket = hash(&Example::Tern.design().into());
    let code = code(&Example::Tern.design().into());
    for text in [rocket, code] {
        assert_eq!(found(&text)[0].what, Ok(HandedIn::Rocket));
    }
}

fn full() -> Class {
    let mut class = Class::default();
    class.label = ClassLabel::new("7B").expect("a label");
    class.rules = RulesCode::new(0x1_2345);
    class.delete_by = Some((2027, 1, 31));
    let model = ResultModel {
        length_mm: 412.0,
        body_width_mm: 65.0,
        mass_g: 80.5,
        mass_point_mm: 201.3,
        pressure_point_mm: 268.0,
    };
    let outcome = SwingOutcome::Wobbling;
    for number in [1, 2] {
        let result = TrialResult {
            rules: class.rules,
            compared_with: Some(1),
            changes: Some(1),
            what_changed: "=10 g more, in the nose; \"clay\"".into(),
            model: Some(model),
            predicted: Some(ResultPrediction { outcome, swings_seen: 2 }),
            allows_two_changes: true,
            swung_first: true,
            altered: true,
            ..finished(number, 2)
        };
        class.add(&class.label.clone(), result.clone(), false).expect("room");
        let newer = TrialResult { altered: false, ..result };
        class.add(&class.label.clone(), newer, false).expect("room");
    }
    let example = TrialResult { example: true, ..finished(3, 1) };
    class.add(&ClassLabel::default(), example, false).expect("room");
    let mut entry = class.entry_mut(1).expect("there");
    (entry.hidden, entry.marked) = (true, true);
    entry = class.entry_mut(0).expect("there");
    entry.marked = true;
    let notebook = ordinary().notebook;
    let work =
        Work { class: class.label.clone(), notebook, statements: 5, example: false };
    class.add_work(work).expect("room");
    let notebook = example_class().remove(0);
    let work = Work { notebook, statements: 512, example: true, ..Work::default() };
    class.add_work(work).expect("room");
    class
}

/// A class from its table.
fn opened(text: &str) -> Class {
    let mut class = Class::default();
    let mut others = Vec::new();
    for (row, text, read) in ClassRows::open(text).expect("a table").expect("headings") {
        match read.unwrap_or_else(|error| panic!("{row}: {error:?} {text}")) {
            ClassRow::Class(said) => class = said,
            row => others.push(row),
        }
    }
    class.take_rows(others);
    class
}

trait TakeRows {
    fn take_rows(&mut self, rows: Vec<ClassRow>);
}

impl TakeRows for Class {
    fn take_rows(&mut self, rows: Vec<ClassRow>) {
        for row in rows {
            match row {
                ClassRow::Result(entry) | ClassRow::Older(entry) => {
                    let Entry { class, result, hidden, marked, .. } = entry;
                    let (group, trial) = (result.group, result.trial);
                    self.add(&class, result, true).expect("taken in");
                    let at = self.entries().iter().position(|entry| {
                        (entry.result.group, entry.result.trial) == (group, trial)
                    });
                    let entry = at.and_then(|at| self.entry_mut(at)).expect("there");
                    (entry.hidden, entry.marked) = (hidden, marked);
                }
                ClassRow::Work(work) => {
                    self.add_work(work).expect("room");
                }
                ClassRow::Class(_) => {}
            }
        }
    }
}

#[test]
fn a_class_comes_back_from_its_table() {
    let class = full();
    for format in Format::ALL {
        let text = class_to_table(&class, format, true, &|key| format!("W, „{key}“;"));
        assert_eq!(opened(&text), class, "{text}");
        let without = class_to_table(&class, format, false, &|_| String::new());
        assert!(!without.contains("n1."));
        let opened = opened(&without);
        assert_eq!(opened.entries(), class.entries());
        assert!(opened.works().is_empty());
    }
    // What starts like a formula cannot run.
    let text = class_to_table(&class, Format::PointComma, false, &|_| String::new());
    assert!(text.contains("\"'=10 g more"), "{text}");
}

#[test]
fn a_row_that_cannot_be_read_names_its_cell_and_the_others_stay() {
    let class = full();
    let text = class_to_table(&class, Format::PointComma, false, &|_| String::new());
    let damaged = text.replacen("gold 1", "pink 1", 1).replacen("28T5", "!!", 2);
    let rows: Vec<_> = ClassRows::open(&damaged).unwrap().unwrap().collect();
    let faults: Vec<_> =
        rows.iter().filter_map(|(_, _, row)| row.clone().err()).collect();
    assert_eq!(rows.len() - faults.len(), rows.len() - 2, "{faults:?}");
    let at = |row, column: &str| At::Cell { row, column: column.into() };
    assert_eq!(faults[0].at, at(2, "group"));
    assert_eq!(faults[1].at, at(3, "rules"));
    let mut class = Class::default();
    class.rules = RulesCode::new(1);
    let (label, result) = (ClassLabel::default(), finished(1, 1));
    let refusal = class.add(&label, result, false);
    assert!(matches!(refusal, Err(Refusal::OtherRules { found: None, .. })));
}

fn mm() -> impl Strategy<Value = Option<f64>> {
    option::of((0_i32..30_000).prop_map(|tenths| f64::from(tenths) / 10.0))
}

prop_compose! {
    fn any_result()(
        (number, trial, with, changes) in
            (1_u8..40, 1_u16..500, option::of(1_u16..9), option::of(0_u8..9)),
        what_changed in "['=+@0-9a-c \"é;,]{0,12}",
        rules in option::of(0_u32..1 << 20),
        (a, b, c) in (mm(), mm(), mm()),
        model in option::of(1_i32..9000),
        predicted in option::of((select(vec![SwingOutcome::Steady, SwingOutcome::NotSure]), 0_u8..6)),
        outcomes in collection::vec(select(SwingOutcome::ALL.to_vec()), 0..4),
        (x, y, z, w) in (any::<bool>(), any::<bool>(), any::<bool>(), any::<bool>()),
    ) -> TrialResult {
        let tenth = |tenths: i32| f64::from(tenths) / 10.0;
        TrialResult {
            rules: rules.and_then(RulesCode::new),
            compared_with: with,
            changes,
            what_changed: noseward_stability::cleaned_lines(&what_changed, 300),
            model: model.map(|t| ResultModel {
                length_mm: tenth(t), body_width_mm: tenth(t + 1), mass_g: tenth(t + 2),
                mass_point_mm: tenth(t + 3), pressure_point_mm: tenth(t - 3),
            }),
            mass: PointResult::of([a, b, c]),
            pressure: b.map(|middle_mm| PointResult {
                readings_mm: [None; 3], middle_mm, range_mm: 0.5, count: 2,
            }),
            predicted: predicted.map(|(outcome, swings_seen)| {
                ResultPrediction { outcome, swings_seen }
            }),
            outcomes: outcomes.into_iter().take(3).collect(),
            allows_two_changes: x, swung_first: y, altered: z, example: w,
            ..TrialResult::empty(Group::new(Colour::Grey, number).expect("a group"), trial)
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(96) })]

    #[test]
    fn any_class_comes_back(results in collection::vec(any_result(), 0..8)) {
        let mut class = Class::default();
        for result in results {
            let _ = class.add(&ClassLabel::new("x-1").unwrap(), result, true);
        }
        for format in Format::ALL {
            let text = class_to_table(&class, format, true, &|_| String::new());
            let back = opened(&text);
            prop_assert_eq!(back.entries(), class.entries(), "{}", text);
        }
    }

    /// Whatever is pasted: every line that is not blank is told of.
    #[test]
    fn nothing_is_passed_over(lines in collection::vec("[ -~]{0,40}|T1[0-9A-Z]{58}|#r1\\.[a-z0-9]{20}", 0..12)) {
        let text = lines.join("\n");
        let all: String = found(&text).into_iter().map(|one| one.text).collect();
        let bare = |text: &str| text.chars().filter(|c| !c.is_whitespace()).collect::<String>();
        prop_assert_eq!(bare(&all).len() >= bare(&text).len(), true, "{:?} {:?}", text, all);
    }
}
