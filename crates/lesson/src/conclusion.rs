//! What a group concludes, in its own words.

use noseward_stability::cleaned_lines;
use serde::{Deserialize, Serialize};

/// The most characters of one box.
pub const BOX_CHARS: usize = 800;

/// Claim, evidence, reason and trust: four boxes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Conclusion {
    /// What the group says is so.
    pub claim: String,
    /// What it saw and measured.
    pub evidence: String,
    /// Why that shows it.
    pub reason: String,
    /// How far it can be trusted.
    pub trust: String,
}

/// One of the four boxes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "the fields of `Conclusion` say what each is")]
pub enum Statement {
    Claim,
    Evidence,
    Reason,
    Trust,
}

impl Statement {
    /// All four, in the order in which they are written.
    pub const ALL: [Self; 4] = [Self::Claim, Self::Evidence, Self::Reason, Self::Trust];
}

impl Conclusion {
    /// What stands in a box.
    #[must_use]
    pub fn text(&self, of: Statement) -> &str {
        match of {
            Statement::Claim => &self.claim,
            Statement::Evidence => &self.evidence,
            Statement::Reason => &self.reason,
            Statement::Trust => &self.trust,
        }
    }

    /// What stands in a box, to be changed.
    pub fn text_mut(&mut self, of: Statement) -> &mut String {
        match of {
            Statement::Claim => &mut self.claim,
            Statement::Evidence => &mut self.evidence,
            Statement::Reason => &mut self.reason,
            Statement::Trust => &mut self.trust,
        }
    }

    /// The same with texts as they are kept.
    pub(crate) fn cleaned(mut self) -> Self {
        for of in Statement::ALL {
            let text = self.text_mut(of);
            *text = cleaned_lines(text, BOX_CHARS);
        }
        self
    }
}
