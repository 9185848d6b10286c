//! What a message does where a lesson is set up.

use noseward_link::{rules_text, set_up_code, set_up_hash};
use noseward_words as words;

use super::model::SetUpField;
use super::{SetUpMsg, address_of, for_all, room};
use crate::app::{Effect, State};
use crate::notebook::say;

/// What typing into a field of the form does.
pub(crate) fn typed(state: &mut State, name: &str, text: &str) -> Vec<Effect> {
    let Some(field) = SetUpField::parse(name) else { return Vec::new() };
    state.notice.take_if(|notice| notice.is_passing());
    state.typing = Some((name.to_owned(), text.to_owned()));
    state.form_mut().typed(field, text);
    state.form_changed();
    let is_wrong = state.form().drafts.iter().any(|(of, _)| *of == SetUpField::Open);
    if field == SetUpField::Open && !is_wrong && !text.trim().is_empty() {
        state.typing = None;
        let mut effects = say(state, false, words::set_up_opened());
        effects.push(Effect::KeepView);
        return effects;
    }
    vec![Effect::Redraw, Effect::KeepView]
}

/// What a message does.
pub(crate) fn update(state: &mut State, msg: SetUpMsg) -> Vec<Effect> {
    let rocket = state.design.clone();
    let form = state.form_mut();
    match msg {
        SetUpMsg::May(one) => form.toggle(one),
        SetUpMsg::Shows(place) => {
            form.set_up.places = form.set_up.places.toggled(place);
        }
        SetUpMsg::TwoChanges => {
            form.set_up.allows_two_changes = !form.set_up.allows_two_changes;
        }
        SetUpMsg::TakeRocket => form.set_up.rocket = Some(rocket.rounded()),
        SetUpMsg::TakeRoom(which) => {
            if let Some(setup) = room::offered(form, which) {
                let limits = &mut form.set_up.limits;
                limits.string_m = setup.string_m;
                limits.turns_per_s = setup.turns_per_s;
                form.drafts.clear();
            }
        }
        SetUpMsg::Back => {
            if let Some(before) = form.before.take() {
                form.set_up = *before;
                form.drafts.clear();
            }
        }
        SetUpMsg::CopyLink => return copy(state),
        SetUpMsg::Save => return save(state),
    }
    state.form_changed();
    vec![Effect::Redraw, Effect::KeepView]
}

fn copy(state: &mut State) -> Vec<Effect> {
    let link = for_all(&state.form());
    match address_of(state, &link) {
        Some(text) => vec![Effect::Copy { text, is_link: false }, Effect::KeepView],
        None => vec![Effect::Redraw],
    }
}

/// The link and the code as a text file, which opens again.
fn save(state: &mut State) -> Vec<Effect> {
    let link = for_all(&state.form());
    let Some(hash) = set_up_hash(&link) else { return vec![Effect::Redraw] };
    let code = set_up_code(&link);
    let rules = rules_text(link.set_up.rules());
    let name = format!("noseward-set-up-{}.txt", rules.to_ascii_lowercase());
    let address = state.address.as_deref().unwrap_or_default();
    let text = format!("{address}#{hash}\n\n{code}\n");
    let mut effects = say(state, false, words::set_up_saved(&name));
    effects.insert(0, Effect::Download { name, text });
    effects.push(Effect::KeepView);
    effects
}
