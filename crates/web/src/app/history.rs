//! Undo and redo.

use noseward_lesson::Record;
use noseward_stability::Field;

/// Steps that are kept. A record is a few kilobytes.
const MOST_STEPS: usize = 200;

/// Whose rocket it was: the place of the open notebook, and the trial in hand.
pub(crate) type Owner = (u32, Option<u16>);

/// A record that was on the page.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Step {
    pub(crate) record: Record,
    pub(crate) owner: Owner,
}

/// The records before and after the present one.
#[derive(Debug, Default)]
pub(crate) struct History {
    before: Vec<Step>,
    after: Vec<Step>,
    /// The field whose typing is still one step.
    open: Option<Field>,
}

impl History {
    /// Keeps the record as it was before a change. Typing in one field is one step until
    /// the field is left.
    pub(crate) fn record(&mut self, before: Step, field: Option<Field>) {
        self.after.clear();
        if field.is_some() && self.open == field {
            return;
        }
        self.open = field;
        if self.before.len() == MOST_STEPS {
            self.before.remove(0);
        }
        self.before.push(before);
    }

    /// Ends the step that is being typed.
    pub(crate) fn seal(&mut self) {
        self.open = None;
    }

    /// The record one step back, in exchange for the present one.
    pub(crate) fn undo(&mut self, now: Step) -> Option<Step> {
        let back = self.before.pop()?;
        self.open = None;
        self.after.push(now);
        Some(back)
    }

    /// The record one step forward, in exchange for the present one.
    pub(crate) fn redo(&mut self, now: Step) -> Option<Step> {
        let forward = self.after.pop()?;
        self.open = None;
        self.before.push(now);
        Some(forward)
    }

    pub(crate) fn can_undo(&self) -> bool {
        !self.before.is_empty()
    }

    pub(crate) fn can_redo(&self) -> bool {
        !self.after.is_empty()
    }
}
