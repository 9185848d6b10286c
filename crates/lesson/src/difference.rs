//! What one step in a document did, in a few words, for undo and redo.

use noseward_stability::Units;

use crate::changes::changes;
use crate::{BalancePoint, Document, Notebook, REPEATS, Statement, Trial};

/// More changes than this at once are another rocket.
const MOST_CHANGES: usize = 3;

impl Document {
    /// What was done from an earlier document to this one, as the first thing that differs:
    /// "Fins: span 60 mm → 80 mm", "reading 2 of the centre of mass". `None` where nothing
    /// differs.
    #[must_use]
    pub fn done_since(&self, before: &Self, units: Units) -> Option<String> {
        of_rocket(before, self, units)
            .or_else(|| of_notebook(&before.notebook, &self.notebook))
            .or_else(|| {
                let is_same = before.record == self.record;
                (!is_same).then(|| "how the rocket is swung".to_owned())
            })
    }
}

fn of_rocket(before: &Document, now: &Document, units: Units) -> Option<String> {
    let (old, new) = (&before.record.design, &now.record.design);
    if old == new {
        return None;
    }
    let found = changes(&before.record, &now.record);
    Some(match found.as_slice() {
        [] if old.name != new.name => "the rocket’s name".to_owned(),
        [] => "what the whole rocket weighs, or a name".to_owned(),
        [first, ..] if found.len() <= MOST_CHANGES => {
            first.sentence(units).trim_end_matches('.').to_owned()
        }
        _ if new.name.is_empty() => "another rocket".to_owned(),
        _ => format!("another rocket, {}", new.name),
    })
}

fn of_notebook(before: &Notebook, now: &Notebook) -> Option<String> {
    if before == now {
        return None;
    }
    let ids = |notebook: &Notebook| -> Vec<u16> {
        notebook.trials().iter().map(Trial::id).collect()
    };
    let (old, new) = (ids(before), ids(now));
    let deleted = |id: &u16| now.deleted().iter().any(|one| one.trial.id() == *id);
    if let Some(id) = new.iter().find(|id| !old.contains(id)) {
        let back = before.deleted().iter().any(|one| one.trial.id() == *id);
        return Some(format!(
            "trial {id} {}",
            if back { "brought back" } else { "begun" }
        ));
    }
    if let Some(id) = old.iter().find(|id| !new.contains(id)) {
        let how = if deleted(id) { "deleted" } else { "taken back" };
        return Some(format!("trial {id} {how}"));
    }
    let of_a_trial = now.trials().iter().find_map(|trial| {
        let words = of_trial(before.trial(trial.id())?, trial)?;
        Some(if new.len() == 1 {
            words
        } else {
            format!("{words}, trial {}", trial.id())
        })
    });
    if of_a_trial.is_some() {
        return of_a_trial;
    }
    let written = Statement::ALL
        .into_iter()
        .find(|of| before.conclusion.text(*of) != now.conclusion.text(*of));
    let words = match written {
        Some(of) => format!("the {}", of.label().to_ascii_lowercase()),
        None if old != new => "the order of the trials".into(),
        None if before.plans() != now.plans() => "the plans".into(),
        None if before.group != now.group => "the group’s label".into(),
        None if before.in_hand().map(Trial::id) != now.in_hand().map(Trial::id) => {
            "which trial is in hand".into()
        }
        None => "the settings".into(),
    };
    Some(words)
}

fn of_trial(before: &Trial, now: &Trial) -> Option<String> {
    if before == now {
        return None;
    }
    for point in BalancePoint::ALL {
        let (old, new) = (before.measured.of(point), now.measured.of(point));
        let name = point.label();
        if let Some(i) = (0..REPEATS).find(|i| old.mm[*i] != new.mm[*i]) {
            return Some(format!("reading {} of the {name}", i + 1));
        }
        if old.guess_mm != new.guess_mm {
            return Some(format!("the guess of the {name}"));
        }
        if old != new {
            return Some(format!("how the {name} was read"));
        }
    }
    Some(
        match () {
            () if before.measured != now.measured => "the lengths",
            () if before.draft.outcome != now.draft.outcome => "the choice",
            () if before.draft != now.draft => "the reason",
            () if before.note != now.note => "the note",
            () if before.compared_with() != now.compared_with() => {
                "what it is compared with"
            }
            () => "something of it",
        }
        .to_owned(),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{End, Group, Record, SwingOutcome};
    use noseward_stability::Example;

    #[test]
    fn each_thing_that_is_done_has_its_words() {
        type Deed = fn(&mut Document);
        let trial = |document: &mut Document| document.notebook.in_hand().unwrap().id();
        let deeds: [(Deed, &str); 13] = [
            (|d| d.record.design.name = "Kittiwake".into(), "the rocket’s name"),
            (|d| d.record.design.fins[0].start_mm += 5.0, "Fins"),
            (|d| d.record = Example::Gannet.design().into(), "another rocket, Gannet"),
            (|d| d.record.swings.setup.string_m = 1.5, "how the rocket is swung"),
            (|d| assert!(d.notebook.begin(&d.record).is_ok()), "trial 2 begun"),
            (|d| assert!(d.notebook.delete(1)), "trial 1 deleted"),
            (
                |d| d.notebook.in_hand_mut().unwrap().measured.mass.mm[1] = Some(140.0),
                "reading 2 of the centre of mass",
            ),
            (
                |d| {
                    let trial = d.notebook.in_hand_mut().unwrap();
                    trial.measured.pressure.guess_mm = Some(200.0);
                },
                "the guess of the centre of pressure (side-on)",
            ),
            (
                |d| {
                    let trial = d.notebook.in_hand_mut().unwrap();
                    trial.draft.outcome = Some(SwingOutcome::Steady);
                },
                "the choice",
            ),
            (|d| d.notebook.in_hand_mut().unwrap().note = "it shook".into(), "the note"),
            (
                |d| *d.notebook.conclusion.text_mut(Statement::Claim) = "so".into(),
                "the claim",
            ),
            (|d| assert!(d.notebook.add_plan("more fins")), "the plans"),
            (
                |d| d.notebook.group = Group::new(d.notebook.group.colour, 9).unwrap(),
                "the group’s label",
            ),
        ];
        let record = Record::from(Example::Puffin.design()).rounded();
        let mut before = Document { record, notebook: Notebook::default() };
        before.notebook.begin(&before.record).unwrap();
        assert_eq!(trial(&mut before), 1);
        assert_eq!(before.done_since(&before, Units::METRIC), None);
        for (deed, words) in deeds {
            let mut after = before.clone();
            deed(&mut after);
            let told = after.done_since(&before, Units::METRIC).expect("it was done");
            assert!(told.starts_with(words), "{told} for {words}");
            assert!(
                before.done_since(&after, Units::METRIC).is_some(),
                "and back: {words}"
            );
        }
    }

    /// Among three trials, of which the second is in hand and the third is deleted.
    #[test]
    fn there_and_back_the_words_tell_which_trial() {
        type Deed = fn(&mut Notebook);
        fn same(deed: Deed, words: &'static str) -> (Deed, &'static str, &'static str) {
            (deed, words, words)
        }
        let deeds: [(Deed, &str, &str); 11] = [
            (|n| assert!(n.delete(1)), "trial 1 deleted", "trial 1 brought back"),
            (|n| assert!(n.restore(3)), "trial 3 brought back", "trial 3 deleted"),
            (
                |n| assert!(n.begin(&Record::default()).is_ok()),
                "trial 4 begun",
                "trial 4 taken back",
            ),
            same(|n| assert!(n.shift(1, false)), "the order of the trials"),
            same(|n| assert!(n.take_in_hand(1).is_some()), "which trial is in hand"),
            same(|n| n.allows_two_changes = true, "the settings"),
            same(|n| n.compare(2, None), "what it is compared with, trial 2"),
            same(
                |n| n.in_hand_mut().unwrap().plan = "long fins".into(),
                "something of it, trial 2",
            ),
            same(
                |n| n.in_hand_mut().unwrap().draft.because = "long fins".into(),
                "the reason, trial 2",
            ),
            same(
                |n| n.in_hand_mut().unwrap().measured.mass.from = End::Tail,
                "how the centre of mass was read, trial 2",
            ),
            same(
                |n| n.in_hand_mut().unwrap().measured.rocket_length_mm = Some(400.0),
                "the lengths, trial 2",
            ),
        ];
        let mut before = Document::default();
        for _ in 0..3 {
            before.notebook.begin(&before.record).unwrap();
        }
        assert!(before.notebook.delete(3));
        before.notebook.take_in_hand(2);
        for (deed, there, back) in deeds {
            let mut after = before.clone();
            deed(&mut after.notebook);
            let told = |now: &Document, old| now.done_since(old, Units::METRIC).unwrap();
            assert_eq!((&*told(&after, &before), &*told(&before, &after)), (there, back));
        }
    }

    #[test]
    fn more_than_three_changes_are_another_rocket() {
        let record = Record::from(Example::Puffin.design()).rounded();
        let before = Document { record, notebook: Notebook::default() };
        let told = |now: &Document| now.done_since(&before, Units::METRIC).unwrap();
        let mut after = before.clone();
        let design = &mut after.record.design;
        design.measured.total_mass_g = Some(300.0);
        assert_eq!(told(&after), "what the whole rocket weighs, or a name");
        let design = &mut after.record.design;
        design.fins[0].count = 3;
        design.fins[0].start_mm += 5.0;
        design.weights[0].mass_g += 1.0;
        assert_eq!(told(&after), "Fins: number 4 → 3");
        after.record.design.weights[0].position_mm += 1.0;
        assert_eq!(told(&after), "another rocket, Puffin");
        after.record.design.name.clear();
        assert_eq!(told(&after), "another rocket");
    }
}
