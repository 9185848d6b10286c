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
pub(crate) struct Loading([Code; Part::ALL.len()]);

impl Loading {
    /// All of it, as in tests, where nothing is to be loaded.
    #[cfg(test)]
    pub(crate) fn all(code: Code) -> Self {
        Self([code; Part::ALL.len()])
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

    /// Whether all that is wanted is here.
    fn is_complete(&self, is_wanted: impl Fn(Part) -> bool) -> bool {
        Part::ALL
            .into_iter()
            .filter(|part| is_wanted(*part))
            .all(|part| self.is_here(part))
    }

    /// The part of those that are wanted that is fetched when nothing else is to be done: one
    /// at a time, so that what somebody asks for meanwhile does not wait for long.
    fn next(&self, is_wanted: impl Fn(Part) -> bool) -> Option<Part> {
        let is_busy = self.0.contains(&Code::Loading);
        let mut left = Part::ALL.into_iter().filter(|part| is_wanted(*part));
        left.find(|part| self.of(*part) == Code::NotAsked).filter(|_| !is_busy)
    }
}

impl State {
    /// Whether all that is fetched ahead on this computer is here.
    pub(crate) fn has_all_parts(&self) -> bool {
        self.parts.is_complete(|part| self.wants(part))
    }

    fn wants(&self, part: Part) -> bool {
        self.leads || !part.is_for_leaders()
    }
}

/// Notes who uses this computer, now that a part is asked for; what only they use is fetched
/// ahead from now on.
pub(super) fn note_use(state: &mut State, part: Part) -> Vec<Effect> {
    if state.leads || !part.is_for_leaders() {
        return Vec::new();
    }
    state.leads = true;
    vec![Effect::KeepView]
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
    let next = state.parts.next(|part| state.wants(part));
    next.map_or_else(Vec::new, |part| load(state, part))
}

#[cfg(test)]
mod tests {
    use super::super::Opening;
    use super::*;

    #[test]
    fn only_what_is_wanted_is_fetched_ahead() {
        let mut parts = Loading::all(Code::Here);
        assert!(parts.is_complete(|_| true));
        parts.set(Part::Why, Code::NotAsked);
        parts.set(Part::Files, Code::NotAsked);
        let is_wanted = |part| part != Part::Why;
        assert_eq!(parts.next(|_| true), Some(Part::Why));
        assert_eq!(parts.next(is_wanted), Some(Part::Files));
        assert!(!parts.is_complete(is_wanted));
        parts.set(Part::Files, Code::Here);
        assert_eq!(parts.next(is_wanted), None);
        assert!(parts.is_complete(is_wanted) && !parts.is_complete(|_| true));
        // Somebody waits for it now.
        parts.set(Part::Why, Code::Loading);
        parts.set(Part::Files, Code::NotAsked);
        assert_eq!(parts.next(is_wanted), None);
    }

    #[test]
    fn what_only_leaders_use_is_fetched_ahead_once_one_of_it_was_opened() {
        for part in Part::ALL {
            let mut state = State::new(&Opening::default());
            let is_for_leaders = part.is_for_leaders();
            assert_eq!(state.wants(part), !is_for_leaders, "{part:?}");
            let effects = note_use(&mut state, part);
            assert_eq!(effects.contains(&Effect::KeepView), is_for_leaders);
            assert_eq!(state.leads, is_for_leaders);
            assert!(state.wants(part));
            assert!(note_use(&mut state, part).is_empty());
        }
        let leads = State::new(&Opening { leads: true, ..Opening::default() });
        assert!(Part::ALL.into_iter().all(|part| leads.wants(part)));
    }
}
