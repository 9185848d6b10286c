//! The questions of a class in words, and what may be changed.

use maud::{Markup, html};
use noseward_lesson::{Amount, Changeable, ClassQuestion, End, Kept};
use noseward_words::{self as words, MassGoes, PressureGoes, SeparationIs, Text};

use crate::shell::marked::{listed, said};

/// The question.
pub(crate) fn name(question: &ClassQuestion) -> Text {
    match question {
        ClassQuestion::NoseMass => words::question_nose_mass(),
        ClassQuestion::MassPlace => words::question_mass_place(),
        ClassQuestion::FinSize => words::question_fin_size(),
        ClassQuestion::FinNumber => words::question_fin_number(),
        ClassQuestion::FinShape => words::question_fin_shape(),
        ClassQuestion::FinPlace => words::question_fin_place(),
        ClassQuestion::BodyLength => words::question_body_length(),
        ClassQuestion::NoseLength => words::question_nose_length(),
        ClassQuestion::TailMass => words::question_tail_mass(),
        ClassQuestion::StringLength => words::question_string_length(),
        ClassQuestion::Own(_) => words::set_up_own(),
    }
}

/// What is changed.
fn change(question: &ClassQuestion) -> Option<Text> {
    Some(match question {
        ClassQuestion::NoseMass => words::question_change_nose_mass(),
        ClassQuestion::MassPlace => words::question_change_mass_place(),
        ClassQuestion::FinSize => words::question_change_fin_size(),
        ClassQuestion::FinNumber => words::question_change_fin_number(),
        ClassQuestion::FinShape => words::question_change_fin_shape(),
        ClassQuestion::FinPlace => words::question_change_fin_place(),
        ClassQuestion::BodyLength => words::question_change_body_length(),
        ClassQuestion::NoseLength => words::question_change_nose_length(),
        ClassQuestion::TailMass => words::question_change_tail_mass(),
        ClassQuestion::StringLength => words::question_change_string_length(),
        ClassQuestion::Own(_) => return None,
    })
}

fn kept(kept: Kept) -> Text {
    match kept {
        Kept::Bottle => words::kept_bottle(),
        Kept::Nose => words::kept_nose(),
        Kept::Fins => words::kept_fins(),
        Kept::AddedMass => words::kept_added_mass(),
        Kept::MassPlace => words::kept_mass_place(),
        Kept::StringAndTurns => words::kept_string_and_turns(),
        Kept::WhoSwings => words::kept_who_swings(),
        Kept::WayOfLettingGo => words::kept_letting_go(),
    }
}

/// What is expected.
fn expected(question: &ClassQuestion) -> Option<String> {
    let expected = question.expected()?;
    let mass = match expected.mass {
        Some(End::Nose) => MassGoes::Nose,
        Some(End::Tail) => MassGoes::Tail,
        None => MassGoes::Stays,
    };
    let pressure = match expected.pressure {
        Some(End::Nose) => PressureGoes::Nose,
        Some(End::Tail) => PressureGoes::Tail,
        None => PressureGoes::Stays,
    };
    let separation = match expected.separation {
        Some(Amount::More) => SeparationIs::More,
        Some(Amount::Less) => SeparationIs::Less,
        None => SeparationIs::Stays,
    };
    Some(words::expected(mass, pressure, separation))
}

/// What a question changes, keeps, expects and takes.
pub(super) fn told(question: &ClassQuestion) -> Markup {
    let kept = listed(question.kept().iter().map(|one| kept(*one).to_string()));
    html! {
        @if let Some(change) = change(question) {
            p { (said(words::set_up_change())) " " (change) }
        }
        p { (said(words::set_up_keep())) " " (kept) "." }
        @if let Some(expected) = expected(question) {
            p { (said(words::set_up_expect())) " " (expected) }
        }
        p class="nb__hint" { (words::set_up_minutes(u32::from(question.minutes()).into())) }
    }
}

/// Something that may be changed.
pub(super) fn changeable(one: Changeable) -> Text {
    match one {
        Changeable::Nose => words::changeable_nose(),
        Changeable::Body => words::changeable_body(),
        Changeable::Materials => words::changeable_materials(),
        Changeable::FinNumber => words::changeable_fin_number(),
        Changeable::FinShape => words::changeable_fin_shape(),
        Changeable::FinPlace => words::changeable_fin_place(),
        Changeable::AddedMass => words::changeable_added_mass(),
        Changeable::MassPlace => words::changeable_mass_place(),
        Changeable::Swinging => words::changeable_swinging(),
    }
}
