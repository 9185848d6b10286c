//! What a message does on the swing bench.

use noseward_lesson::Trial;
use noseward_stability::trimmed;
use noseward_words as words;

use super::SwingMsg;
use super::model::{SPACE_CARD, STARTS_IN_SLICE, STEP_S, SWINGS_IN_SLICE, SetupField};
use crate::app::{Draft, Effect, State, Unreadable};
use crate::notebook::{broken_by_swing, say, told_broken};

/// What a message does.
pub(crate) fn update(state: &mut State, msg: SwingMsg) -> Vec<Effect> {
    let redraw = vec![Effect::Redraw];
    match msg {
        SwingMsg::Typed(field, text) => typed_into(state, field, &text),
        SwingMsg::Left(field) => {
            state.typing.take_if(|(typing, _)| *typing == field.id());
            redraw
        }
        SwingMsg::Start(degrees) => {
            let text = words::as_typed(&trimmed(degrees, 3));
            let effects = typed_into(state, SetupField::Start, &text);
            state.typing = None;
            effects
        }
        SwingMsg::Play(playing) => {
            let ended = state.swing.motion.time_s >= state.swing.end_s();
            let motion = &mut state.swing.motion;
            motion.playing = playing && !state.swing.still;
            if !motion.playing {
                return redraw;
            }
            if ended {
                motion.time_s = 0.0;
            }
            vec![Effect::Redraw, Effect::Animate]
        }
        SwingMsg::Step => {
            let end_s = state.swing.end_s();
            let motion = &mut state.swing.motion;
            motion.playing = false;
            motion.time_s = if motion.time_s >= end_s {
                0.0
            } else {
                (motion.time_s + STEP_S).min(end_s)
            };
            redraw
        }
        SwingMsg::Rewind => {
            state.swing.motion.playing = false;
            state.swing.motion.time_s = 0.0;
            redraw
        }
        SwingMsg::Speed(speed) => {
            state.swing.motion.speed = speed;
            redraw
        }
        SwingMsg::Tick(passed_s) => {
            if !state.swing.motion.playing {
                return Vec::new();
            }
            let end_s = state.swing.end_s();
            let motion = &mut state.swing.motion;
            motion.time_s = (motion.time_s + passed_s * motion.speed).min(end_s);
            if motion.time_s >= end_s {
                motion.playing = false;
                return redraw;
            }
            vec![Effect::DrawMotion, Effect::Animate]
        }
        SwingMsg::At(time_s) => {
            let end_s = state.swing.end_s();
            state.swing.motion.playing = false;
            state.swing.motion.time_s = time_s.clamp(0.0, end_s);
            vec![Effect::DrawMotion, Effect::Redraw]
        }
        SwingMsg::Card(card) => {
            let waits = card > SPACE_CARD && !state.is_space_checked();
            state.swing.card = if waits { SPACE_CARD } else { card };
            vec![Effect::Redraw, Effect::Focus("swing-card".into())]
        }
        SwingMsg::SpaceChecked(true) if state.space_needed().is_none() => {
            say(state, true, words::swing_space_unknown())
        }
        SwingMsg::SpaceChecked(checked) => {
            state.swing.checked = state.space_needed().filter(|_| checked);
            redraw
        }
        SwingMsg::Swung(outcome) => {
            if let Some(broken) = broken_by_swing(state) {
                return told_broken(state, broken);
            }
            if !state.may_swing() || !state.swings.add(outcome) {
                return redraw;
            }
            if state.swings.is_done() {
                // The next three swings want another look.
                state.swing.checked = None;
            }
            state.swings_into_trial();
            vec![Effect::Redraw, Effect::Keep]
        }
        // What was seen before a prediction stays on record.
        SwingMsg::TakeBack if !state.is_predicted() || !may_take_back(state) => redraw,
        SwingMsg::TakeBack => {
            state.swings.remove_last();
            state.swings_into_trial();
            vec![Effect::Redraw, Effect::Keep, Effect::Focus("swing-record-card".into())]
        }
        SwingMsg::Compare => {
            state.swing.previous = state.previous(&state.design, state.swings.clone());
            state.forget_swing();
            vec![Effect::Slice, Effect::Redraw]
        }
    }
}

fn may_take_back(state: &State) -> bool {
    state.desk.notebook.in_hand().is_some_and(Trial::may_take_back)
}

fn typed_into(state: &mut State, field: SetupField, text: &str) -> Vec<Effect> {
    state.typing = Some((field.id(), text.to_owned()));
    let read = field.read(text, state).and_then(|value| match field {
        SetupField::Start if !(0.0..=180.0).contains(&value) => {
            Err(Unreadable::NotANumber)
        }
        _ => Ok(value),
    });
    state.swing.drafts.retain(|(drafted, _)| *drafted != field);
    match read {
        Ok(value) => match field {
            SetupField::Setup(field) => {
                let before = state.swings.setup;
                field.set(&mut state.swings.setup, value);
                let design = state.design.clone();
                state.leave_behind(&design, before);
                state.hold_to_trial();
            }
            SetupField::Start => state.swing.start_deg = value,
        },
        Err(why) => {
            state.swing.drafts.push((field, Draft { text: text.to_owned(), why }));
        }
    }
    state.forget_swing();
    let mut effects = vec![Effect::Slice, Effect::Redraw];
    if field != SetupField::Start {
        effects.push(Effect::Keep);
    }
    effects
}

impl State {
    /// Tries a few starts more. Returns what is to be done next.
    pub(crate) fn try_starts(&mut self) -> Vec<Effect> {
        let Some(known) = &mut self.swing.known else { return Vec::new() };
        if !known.starts.is_done() {
            known.starts.run(STARTS_IN_SLICE);
            let done = known.starts.is_done();
            return if done {
                vec![Effect::Redraw, Effect::Slice]
            } else {
                vec![Effect::Slice]
            };
        }
        if known.draws.is_done() {
            return Vec::new();
        }
        known.draws.run(SWINGS_IN_SLICE);
        if known.draws.is_done() { vec![Effect::Redraw] } else { vec![Effect::Slice] }
    }
}
