//! Which parts of the page are here.

use super::{Effect, State};
use crate::part::Part;

/// Whether the code of a part is loaded.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Code {
    #[default]
    NotAsked,
    Loading,
    Failed,
    Here,
}

/// The code of each part.
#[derive(Clone, Debug, Default)]
pub(crate) struct Loading([Code; Part::COUNT]);

impl Loading {
    /// All of it, as in tests, where nothing is to be loaded.
    #[cfg(test)]
    pub(crate) fn all(code: Code) -> Self {
        Self([code; Part::COUNT])
    }

    pub(crate) fn of(&self, part: Part) -> Code {
        self.0[part as usize]
    }

    pub(super) fn set(&mut self, part: Part, code: Code) {
        self.0[part as usize] = code;
    }

    pub(crate) fn is_here(&self, part: Part) -> bool {
        self.of(part) == Code::Here
    }

    /// Whether all that is fetched ahead is here.
    pub(crate) fn is_complete(&self) -> bool {
        Part::AHEAD.into_iter().all(|part| self.is_here(part))
    }

    /// The part that is fetched when nothing else is to be done: one at a time, so that what
    /// somebody asks for meanwhile does not wait for long.
    fn next(&self) -> Option<Part> {
        let is_busy = self.0.contains(&Code::Loading);
        let mut left = Part::AHEAD.into_iter();
        left.find(|part| self.of(*part) == Code::NotAsked).filter(|_| !is_busy)
    }
}

/// Has a part loaded, if it is not.
pub(super) fn load(state: &mut State, part: Part) -> Vec<Effect> {
    match state.parts.of(part) {
        Code::NotAsked | Code::Failed => {
            state.parts.set(part, Code::Loading);
            vec![Effect::Load(part), Effect::Redraw]
        }
        Code::Loading | Code::Here => Vec::new(),
    }
}

/// Fetches the next part, where nobody waits for one.
pub(super) fn prefetch(state: &mut State) -> Vec<Effect> {
    state.parts.next().map_or_else(Vec::new, |part| load(state, part))
}
