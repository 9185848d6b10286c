//! What undo and redo did, in words.

use noseward_lesson::{Document, Done, InTrial, TrialDeed};
use noseward_stability::Units;
use noseward_words::{self as words, TrialDeed as Deed};

use super::changed;
use crate::places::labels::{number, point_in, statement_in};

/// That redo made the step from an earlier document to a later one, or undo took it back;
/// `None` where nothing differs.
pub(crate) fn told(
    earlier: &Document,
    later: &Document,
    is_redo: bool,
    units: Units,
) -> Option<String> {
    let done = later.done_since(earlier)?;
    let designs = [earlier, later].map(|document| &document.record.design);
    let (trial, what): (_, String) = match done {
        Done::Changed(change) => (None, changed::sentence(&change, designs, units)),
        Done::AnotherRocket if !designs[1].name.is_empty() => {
            (None, words::done_another_named(&designs[1].name))
        }
        Done::Trial(id, deed) => (None, words::done_trial(number(id), trial_deed(deed))),
        Done::Written(statement) => (None, words::done_written(statement_in(statement))),
        Done::Within(trial, what) => (trial, within(what)),
        Done::AnotherRocket => (None, words::done_another().into()),
        Done::Name => (None, words::done_name().into()),
        Done::WeighedOrNamed => (None, words::done_weighed().into()),
        Done::Swung => (None, words::done_swung().into()),
        Done::Order => (None, words::done_order().into()),
        Done::Plans => (None, words::done_plans().into()),
        Done::Group => (None, words::done_group().into()),
        Done::InHand => (None, words::done_in_hand().into()),
        Done::Settings => (None, words::done_settings().into()),
    };
    Some(match (trial.map(number), is_redo) {
        (None, true) => words::app_done_again(&what),
        (None, false) => words::app_undone(&what),
        (Some(trial), true) => words::app_done_again_in(trial, &what),
        (Some(trial), false) => words::app_undone_in(trial, &what),
    })
}

fn trial_deed(deed: TrialDeed) -> Deed {
    match deed {
        TrialDeed::Begun => Deed::Begun,
        TrialDeed::BroughtBack => Deed::BroughtBack,
        TrialDeed::Deleted => Deed::Deleted,
        TrialDeed::TakenBack => Deed::TakenBack,
    }
}

fn within(what: InTrial) -> String {
    let text = match what {
        InTrial::Reading(point, place) => {
            return words::done_reading((place + 1).into(), point_in(point));
        }
        InTrial::Guess(point) => return words::done_guess(point_in(point)),
        InTrial::HowRead(point) => return words::done_how_read(point_in(point)),
        InTrial::Lengths => words::done_lengths(),
        InTrial::Choice => words::done_choice(),
        InTrial::Reason => words::done_reason(),
        InTrial::Note => words::done_note(),
        InTrial::Compared => words::done_compared(),
        InTrial::Other => words::done_other(),
    };
    text.into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{End, Notebook, Record, Statement, SwingOutcome};
    use noseward_stability::Example;

    fn document() -> Document {
        let record = Record::from(Example::Puffin.design()).rounded();
        let mut document = Document { record, notebook: Notebook::default() };
        document.notebook.begin(&document.record).unwrap();
        document
    }

    #[test]
    fn each_thing_that_is_done_has_its_words() {
        type Edit = fn(&mut Document);
        let edits: [(Edit, &str); 12] = [
            (|d| d.record.design.name = "Kittiwake".into(), "the rocket’s name."),
            (|d| d.record.design.fins[0].count = 3, "Fins: number 4 → 3."),
            (
                |d| d.record.design.measured.total_mass_g = Some(300.0),
                "what the whole rocket weighs, or a name.",
            ),
            (|d| d.record = Example::Gannet.design().into(), "another rocket, Gannet."),
            (
                |d| {
                    d.record = Example::Gannet.design().into();
                    d.record.design.name.clear();
                },
                "another rocket.",
            ),
            (|d| d.record.swings.setup.string_m = 1.5, "how the rocket is swung."),
            (|d| assert!(d.notebook.begin(&d.record).is_ok()), "trial 2 begun."),
            (|d| assert!(d.notebook.delete(1)), "trial 1 deleted."),
            (
                |d| d.notebook.in_hand_mut().unwrap().measured.mass.mm[1] = Some(140.0),
                "reading 2 of the centre of mass.",
            ),
            (|d| d.notebook.in_hand_mut().unwrap().note = "it shook".into(), "the note."),
            (
                |d| *d.notebook.conclusion.text_mut(Statement::Claim) = "so".into(),
                "the claim.",
            ),
            (|d| assert!(d.notebook.add_plan("more fins")), "the plans."),
        ];
        let before = document();
        assert_eq!(told(&before, &before, true, Units::METRIC), None);
        for (edit, words) in edits {
            let mut after = before.clone();
            edit(&mut after);
            let told = |is_redo| told(&before, &after, is_redo, Units::METRIC).unwrap();
            assert_eq!(told(false), format!("Undone: {words}"));
            assert_eq!(told(true), format!("Done again: {words}"));
        }
    }

    #[test]
    fn among_several_trials_it_is_said_in_which() {
        type Edit = fn(&mut noseward_lesson::Trial);
        let edits: [(Edit, &str); 7] = [
            (|t| t.plan = "long fins".into(), "something of it."),
            (|t| t.draft.because = "long fins".into(), "the reason."),
            (|t| t.draft.outcome = Some(SwingOutcome::Steady), "the choice."),
            (|t| t.measured.mass.from = End::Tail, "how the centre of mass was read."),
            (|t| t.measured.rocket_length_mm = Some(400.0), "the lengths."),
            (
                |t| t.measured.pressure.guess_mm = Some(200.0),
                "the guess of the centre of pressure (side-on).",
            ),
            (
                |t| t.measured.pressure.mm[2] = Some(200.0),
                "reading 3 of the centre of pressure (side-on).",
            ),
        ];
        let mut before = document();
        before.notebook.begin(&before.record).unwrap();
        for (edit, words) in edits {
            let mut after = before.clone();
            edit(after.notebook.in_hand_mut().unwrap());
            let told = |is_redo| told(&before, &after, is_redo, Units::METRIC).unwrap();
            assert_eq!(told(false), format!("Undone in trial 2: {words}"));
            assert_eq!(told(true), format!("Done again in trial 2: {words}"));
        }
        let mut after = before.clone();
        after.notebook.delete(1);
        let told = |a, b| told(a, b, false, Units::METRIC).unwrap();
        assert_eq!(told(&after, &before), "Undone: trial 1 brought back.");
        assert_eq!(within(InTrial::Compared), "what it is compared with.");
    }
}
