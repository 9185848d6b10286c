//! What the rules of a set-up say to a group.

use noseward_lesson::{BrokenRule, Changeable};
use noseward_link::rules_text;
use noseward_stability::SwingField;
use noseward_words::{self as words, RuleSetting};

use super::update::say;
use crate::app::{Effect, State};
use crate::places::form::setup_value;

/// The name of the rules of the open notebook, such as `K7QX`.
pub(crate) fn rules_name(state: &State) -> Option<String> {
    state.desk.notebook.rules().map(rules_text)
}

/// Tells that the set-up of the open notebook fixes a setting; `None` where it is free.
pub(crate) fn fixed(state: &mut State, setting: RuleSetting) -> Option<Vec<Effect>> {
    let rules = rules_name(state)?;
    state.typing = None;
    Some(say(state, true, words::rules_fixed(setting, &rules)))
}

/// Tells which rule would be broken, and the way out.
pub(crate) fn told_broken(state: &mut State, broken: BrokenRule) -> Vec<Effect> {
    let Some(rules) = rules_name(state) else { return Vec::new() };
    let units = state.units;
    let said = match broken {
        BrokenRule::Changed(what) => words::rules_changed(changeable(what), &rules),
        BrokenRule::SeveralChanges(count) => words::rules_several(count.into(), &rules),
        BrokenRule::AddedMass(g) => {
            let most = format!("{} {}", units.mass_number(g), units.mass_unit());
            words::rules_added(&words::as_typed(&most), &rules)
        }
        BrokenRule::String(m) => {
            words::rules_string(&setup_value(SwingField::String, m, units), &rules)
        }
        BrokenRule::Turns(turns) => {
            words::rules_turns(&setup_value(SwingField::Turns, turns, units), &rules)
        }
    };
    say(state, true, said)
}

/// The rule that recording a swing now would break.
pub(crate) fn broken_by_swing(state: &State) -> Option<BrokenRule> {
    let trial = state.trial_in_hand()?;
    state.desk.notebook.broken_by_swing(trial, &state.swings.setup)
}

fn changeable(what: Changeable) -> words::Changeable {
    use words::Changeable as Said;
    match what {
        Changeable::Nose => Said::Nose,
        Changeable::Body => Said::Body,
        Changeable::Materials => Said::Materials,
        Changeable::FinNumber => Said::FinNumber,
        Changeable::FinShape => Said::FinShape,
        Changeable::FinPlace => Said::FinPlace,
        Changeable::AddedMass => Said::AddedMass,
        Changeable::MassPlace => Said::MassPlace,
        Changeable::Swinging => Said::Swinging,
    }
}
