use noseward_lesson::{
    BalancePoint, Draft, End, LeftOut, Record, Swings, Telling, TrialResult,
    example_class,
};
use noseward_lesson::{Level, SwingOutcome::*};
use noseward_link::result_code;
use noseward_stability::Example;

use super::*;
use crate::boxes::in_languages;
use crate::paper::inside::{sheet_is_sound, words_of};
use crate::qr::read_scene;
use crate::scene::Item;
use crate::written::Written;

const BECAUSE: &str = "there is more clay in its nose than there was before";
const FOUND: &str = "With more clay in the nose the centre of mass was nearer the nose, and our rocket \
    flew nose first. Without it the tail came round to the front. We saw that in four of six trials, \
    and the two others were close to the point where it turns round.";

/// Trials with everything in them that a group writes.
fn full(trials: u8) -> Notebook {
    let mut notebook = Notebook::default();
    notebook.level = Level::Explain;
    for i in 0..trials {
        let mut design = Example::Puffin.design();
        design.weights[0].mass_g = 5.0 + f64::from(i);
        let id = notebook.begin(&Record::from(design)).unwrap();
        let trial = notebook.trial_mut(id).unwrap();
        for (point, mm) in BalancePoint::ALL.into_iter().zip([150.0, 190.0]) {
            let readings = trial.measured.of_mut(point);
            readings.guess_mm = Some(160.0);
            readings.mm = [0.0, 2.0, 41.5].map(|more| Some(mm - f64::from(i) + more));
            let reason = "the ruler slipped".into();
            readings.left_out = (i == 2).then_some(LeftOut { reading: 2, reason });
            readings.from = if i == 3 { End::Tail } else { End::Nose };
        }
        trial.draft = Draft { outcome: Some(Steady), because: BECAUSE.into() };
        trial.note = if i == 3 { FOUND.into() } else { String::new() };
        notebook.lock(id);
        let seen = match i {
            1 => vec![Steady, Slipped, Wobbling, Steady],
            _ => vec![Steady; 3],
        };
        notebook.swing(&Swings::new(Default::default(), seen).unwrap());
    }
    notebook.add_plan("four fins in place of three");
    for of in Statement::ALL {
        *notebook.conclusion.text_mut(of) = FOUND.into();
    }
    notebook
}

fn changed(_: &Change) -> String {
    "mass of the weight".into()
}

fn code_of(notebook: &Notebook) -> Option<String> {
    let trial = notebook.in_hand().or(notebook.trials().last())?;
    TrialResult::of(notebook, trial.id()).map(|result| result_code(&result))
}

fn pages(notebook: &Notebook, size: PaperSize) -> Vec<Page> {
    let code = code_of(notebook);
    report(
        size,
        &GroupReport {
            notebook,
            units: Units::METRIC,
            address: Some("https://rockets.example/noseward/"),
            rules: Some("K7Q0"),
            code: code.as_deref(),
            changed,
        },
    )
}

#[test]
fn usual_notebooks_take_two_pages() {
    for notebook in example_class().iter().step_by(5) {
        sheet_is_sound(2, &|size| pages(notebook, size));
    }
    sheet_is_sound(2, &|size| pages(&Notebook::default(), size));
    for level in Level::ALL {
        // The table of the oldest has columns more, and so rows of more lines.
        let usual = if level == Level::Model { 3 } else { 4 };
        for (trials, most) in [(usual, 2), (6, 3)] {
            let mut notebook = full(trials);
            notebook.level = level;
            sheet_is_sound(most, &|size| pages(&notebook, size));
        }
    }
}

/// As much as there can be, in words without a blank.
#[test]
fn nothing_is_cut_off() {
    let mut notebook = full(6);
    *notebook.conclusion.text_mut(Statement::Claim) = "W".repeat(800);
    notebook.trial_mut(4).unwrap().note = "i".repeat(300);
    sheet_is_sound(4, &|size| pages(&notebook, size));
}

/// The symbol that is laid into the page.
fn symbol(pages: &[Page]) -> &Scene {
    let is_symbol = |name: &str| name == words::drawing_qr_link().as_str();
    let items = pages[0].scene.groups.iter().flat_map(|group| &group.items);
    let mut scenes = items.filter_map(|item| match item {
        Item::Placed { scene, .. } if is_symbol(&scene.name) => Some(scene),
        _ => None,
    });
    scenes.next().unwrap()
}

#[test]
fn the_last_result_is_read_from_paper() {
    let check = || {
        let notebook = full(6);
        let code = code_of(&notebook).unwrap();
        let pages = pages(&notebook, PaperSize::A4);
        let bare: String = code.split_whitespace().collect();
        let expected = format!("https://rockets.example/noseward/#{bare}");
        assert_eq!(read_scene(symbol(&pages)), expected);
        let said = words_of(&pages);
        for row in code.lines() {
            assert!(said.contains(row), "{row}");
        }
    };
    check();
    in_languages(&check);
}

/// A computed point that a group has still to find is not on its paper either.
#[test]
fn it_tells_what_the_notebook_tells() {
    let mut notebook = Notebook::default();
    notebook.begin(&Record::from(Example::Puffin.design())).unwrap();
    let worked_out = notebook.summaries()[0].computed_separation_mm().unwrap();
    let worked_out = words::compare_worked_out(&Units::METRIC.reading(worked_out));
    let says = |telling| {
        let mut notebook = notebook.clone();
        notebook.telling = telling;
        words_of(&pages(&notebook, PaperSize::A4))
    };
    assert!(says(Telling::All).contains(&worked_out));
    assert!(!says(Telling::Points).contains(&worked_out));
    let point = words::drawing_separation_in(words::WrittenIn::Millimetres);
    assert!(!says(Telling::Points).contains(&point));
}

#[test]
fn everything_that_was_written_is_there() {
    let said = words_of(&pages(&full(6), PaperSize::A4));
    for words in [
        "K7Q0",
        "Trial 4: With more clay",
        "four fins in place of three",
        &format!("nose first, steady, because “{BECAUSE}”"),
        "nose first, steady (2 of 3), no. 1, 4 nose first after wobbling (1 of 3), no. 3",
        "string slipped, do again (not counted)",
        "reading 3 left out: the ruler slipped",
        "(readings from the tail)",
        "mass of the weight",
        &format!("Evidence {FOUND}"),
    ] {
        let bare = |text: &str| text.split_whitespace().collect::<String>();
        assert!(bare(&said).contains(&bare(words)), "{words}: {said}");
    }
}
