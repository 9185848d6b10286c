//! The notebook in words, and back.

use super::*;
use crate::places::labels::in_languages;
use noseward_lesson::{
    Colour, Conclusion, Draft, Group, LeftOut, Level, Support, SwingOutcome, Swings,
    Telling,
};
use noseward_link::{Format, TABLE_END, open_table, to_table};
use noseward_stability::{Example, SwingSetup};

/// A notebook with something of everything.
fn full() -> Notebook {
    let mut notebook = Notebook::default();
    notebook.group = Group::new(Colour::Green, 7).unwrap();
    notebook.level = Level::Explain;
    notebook.support = Support::Questions;
    notebook.allows_two_changes = true;
    notebook.telling = Telling::Points;
    notebook.add_plan("3/4 of the ballast");
    for example in [Example::Tern, Example::Razorbill, Example::Puffin] {
        notebook.begin(&example.design().into()).unwrap();
    }
    for because in ["small fins", "1e5"] {
        let outcome = Some(SwingOutcome::Wobbling);
        notebook.trial_mut(3).unwrap().draft = Draft { outcome, because: because.into() };
        assert!(notebook.lock(3));
    }
    let setup = SwingSetup { string_m: 1.25, turns_per_s: 0.95, ..Default::default() };
    notebook.swing(&Swings::new(setup, [SwingOutcome::TailFirst]).unwrap());
    notebook.swing(&setup.into());
    let seen = [SwingOutcome::Steady, SwingOutcome::Slipped, SwingOutcome::NotSure];
    notebook.swing(&Swings::new(setup, seen).unwrap());
    let trial = notebook.trial_mut(3).unwrap();
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

#[test]
fn words_say_all_of_it() {
    let text = plain_text(&full());
    for part in [
        "Notebook of group Green 7\n\nLevel: Explain (about 12 to 14).\n",
        "Help with the conclusion: questions only.\nTwo changes at once: allowed.\n",
        "What is told when: the points after measuring, the verdict after predicting.\n",
        "In hand: trial 3.\n\nTrial 2: Razorbill\nCompared with trial 1.\n",
        "\n\nTrial 1 (deleted): Tern\nCompared with no other trial.\nPredicted: nothing yet.\n",
        "Swings: none yet.\n",
        "\n\nTrial 3: Puffin\nCompared with trial 2.\nPlan: bigger fins\n",
        "Predicted, before any swing: nose first after wobbling. Because: small fins\n",
        "Later, before any swing: nose first after wobbling. Because: 1e5\n",
        "Written and not locked: no outcome. Because: hm\nLength of the rocket: 412.5 mm.\n",
        "Length of the cut-out: 388 mm.\n",
        "Guess of the centre of mass: 200 mm from the nose.\n",
        "Readings of the centre of mass, from the nose: 201.5 mm, 203 mm, 251 mm.\n",
        "Reading 3 is left out. Because: the string slipped\n",
        "Readings of the centre of pressure (side-on), from the tail: 150.1 mm, none, 151 mm.",
        "Middle value: 202.3 mm from the nose, range 1.5 mm.\n",
        "Measured separation: 50.2 mm.\nComputed separation: ",
        "Taken back, as recorded by mistake: tail first.\n",
        "Swings, 2 of 3: nose first, steady; string slipped, do again; not sure.\n",
        "All together: ",
        "Swung on 1.25 m of string with an arm of 0.7 m, 0.95 turns a second, in air of 1.225 \
         kg/m³.\n",
        "Note: Windy; then not.\n  \"Steady\", said all.\n",
        "\n\nPlans\n- 3/4 of the ballast\n\nConclusion\nClaim: Fins help.\n",
        "Evidence: nothing yet.\n",
        "\n\nKeep what follows: with it this page opens the notebook again.\n--- noseward table",
        "\nKind of row [kind_of_row]\tGroup [group]\tTrial [trial]\t",
    ] {
        assert!(text.contains(part), "{part}\n{text}");
    }
    assert!(text.ends_with(&format!("\n{TABLE_END}\n")));
}

#[test]
fn a_reading_that_cannot_be_true_and_ranges_that_overlap_are_told() {
    let mut notebook = full();
    let trial = notebook.trial_mut(3).unwrap();
    trial.measured.mass.mm[0] = Some(20.1);
    trial.measured.pressure.from = End::Nose;
    trial.measured.pressure.mm = [Some(180.0), Some(191.0), Some(208.0)];
    let text = plain_text(&notebook);
    for part in [
        "Reading 1 does not count: it cannot be true of this rocket.\n",
        "mm; the readings of the two points overlap.\n",
    ] {
        assert!(text.contains(part), "{part}\n{text}");
    }
}

/// A table is the same file in every language but for its headings.
#[test]
fn what_is_handed_over_opens_again_in_every_language() {
    let mut notebook = full();
    // Lines of the block, written by somebody in a note, are not the block's.
    let lines = format!("{TABLE_END}\n--- noseward table ---\nkind_of_row,trial");
    notebook.conclusion = Conclusion {
        claim: lines.clone(),
        trust: format!("{TABLE_END}\n"),
        ..Conclusion::default()
    };
    notebook.trial_mut(2).unwrap().note = lines.clone();
    notebook.add_plan(&lines);
    let bare = Format::ALL.map(|format| to_table(&notebook, format, &|_| String::new()));
    let below = |table: &str| table.split_once("\r\n").unwrap().1.to_owned();
    in_languages(&|| {
        for (format, bare) in Format::ALL.into_iter().zip(&bare) {
            let table = to_table(&notebook, format, &called);
            assert_eq!(below(&table), below(bare));
            assert_eq!(open_table(&table).as_ref(), Ok(&notebook), "{table}");
        }
        let text = plain_text(&notebook);
        assert_eq!(open_table(&text).as_ref(), Ok(&notebook), "{text}");
        let quoted = text.replace('\n', "\r\n> ");
        assert_eq!(open_table(&format!("> {quoted}")).as_ref(), Ok(&notebook));
    });
}

#[test]
fn in_german_the_words_are_german_and_the_cells_are_not() {
    let texts = std::cell::RefCell::new(Vec::new());
    in_languages(&|| texts.borrow_mut().push(plain_text(&full())));
    let german = &texts.borrow()[1];
    for part in [
        "Heft der Gruppe Grün 7\n",
        "Vorhergesagt vor jedem Schwung: taumelnd, dann mit der Nase voran. Weil: small fins\n",
        "Messwerte für den Schwerpunkt, von der Nase aus: 201,5 mm, 203 mm, 251 mm.\n",
        "Geschleudert an 1,25 m Schnur mit 0,7 m Arm, 0,95 Umdrehungen je Sekunde, in Luft von",
        "\nArt der Zeile [kind_of_row]\tGruppe [group]\tVersuch [trial]\t",
        "\tGemessener Abstand (mm) [measured_separation_mm]\t",
        "\ntrial\tgreen 7\t3\t2\tbigger fins\t",
        "\t412.5\t388\t",
        "\twobbling\tsmall fins\t",
    ] {
        assert!(german.contains(part), "{part}\n{german}");
    }
}
