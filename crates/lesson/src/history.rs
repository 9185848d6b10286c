//! Undo and redo, over all that a group makes.

use crate::Document;

/// Steps that are kept.
const MOST_STEPS: usize = 200;

/// The documents before and after the present one.
///
/// ```
/// use noseward_lesson::{Document, History};
///
/// let mut now = Document::default();
/// let mut history = History::new(now.clone());
/// now.record.design.name = "Tern".into();
/// assert!(history.follow(&now, None));
/// let before = history.undo().expect("there is one");
/// assert_eq!(before.record.design.name, "");
/// assert_eq!(history.redo(), Some(now));
/// ```
#[derive(Debug)]
pub struct History {
    before: Vec<Document>,
    now: Document,
    after: Vec<Document>,
    /// What is still one step while it goes on, such as typing in a field.
    open: Option<String>,
}

impl History {
    /// Nothing to undo, from this document on.
    #[must_use]
    pub fn new(now: Document) -> Self {
        Self { before: Vec::new(), now, after: Vec::new(), open: None }
    }

    /// The present document, as far as [`follow`](Self::follow) was told of it.
    #[must_use]
    pub fn now(&self) -> &Document {
        &self.now
    }

    /// Takes the document as it is after something was done. Where it differs from the one
    /// before, that is a step; what goes on under the same key is the same step. Returns
    /// whether it differs.
    pub fn follow(&mut self, now: &Document, key: Option<&str>) -> bool {
        if *now == self.now {
            return false;
        }
        self.after.clear();
        let before = std::mem::replace(&mut self.now, now.clone());
        if key.is_none() || self.open.as_deref() != key {
            self.open = key.map(str::to_owned);
            if self.before.len() == MOST_STEPS {
                self.before.remove(0);
            }
            self.before.push(before);
        }
        true
    }

    /// Takes the document as it is now without a step: it came from elsewhere. Where nothing
    /// did, the step that goes on does so.
    pub fn rebase(&mut self, now: Document) {
        if now != self.now {
            self.now = now;
            self.open = None;
        }
    }

    /// Puts a document before the present one, as if that had followed it.
    pub fn put_before(&mut self, before: Document) {
        self.after.clear();
        self.open = None;
        self.before.push(before);
    }

    /// Ends the step that goes on.
    pub fn seal(&mut self) {
        self.open = None;
    }

    /// The document one step back, in which [facts stay](Document::back_to); `None` where
    /// nothing would change. From now on it is the present one.
    pub fn undo(&mut self) -> Option<Document> {
        self.open = None;
        travel(&mut self.before, &mut self.now, &mut self.after)
    }

    /// Whether the last step brought nothing but facts, which [`undo`](Self::undo) passes over:
    /// whoever asks for it may mean that step. Then it is passed over from now on.
    pub fn pass_over_facts(&mut self) -> bool {
        let now = &self.now;
        let is_passed = |then: &Document| then != now && now.back_to(then) == *now;
        let are_facts = self.before.last().is_some_and(is_passed);
        while self.before.last().is_some_and(is_passed) {
            self.before.pop();
        }
        are_facts
    }

    /// The document one step forward again, likewise.
    pub fn redo(&mut self) -> Option<Document> {
        self.open = None;
        travel(&mut self.after, &mut self.now, &mut self.before)
    }

    /// The document that [`undo`](Self::undo) would give.
    #[must_use]
    pub fn undone(&self) -> Option<Document> {
        next(&self.before, &self.now)
    }

    /// The document that [`redo`](Self::redo) would give.
    #[must_use]
    pub fn redone(&self) -> Option<Document> {
        next(&self.after, &self.now)
    }
}

fn next(from: &[Document], now: &Document) -> Option<Document> {
    from.iter().rev().map(|then| now.back_to(then)).find(|shown| shown != now)
}

fn travel(
    from: &mut Vec<Document>,
    now: &mut Document,
    to: &mut Vec<Document>,
) -> Option<Document> {
    // A step in which nothing but facts came is no step back.
    while let Some(then) = from.pop() {
        let shown = now.back_to(&then);
        if shown != *now {
            to.push(std::mem::replace(now, shown.clone()));
            return Some(shown);
        }
    }
    None
}

#[cfg(test)]
mod tests;
