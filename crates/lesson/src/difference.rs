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
    use crate::{Group, Record, SwingOutcome};
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
}
