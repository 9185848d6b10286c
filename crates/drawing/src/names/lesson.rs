//! What the choices of a set-up are called, in the language in use.

use noseward_lesson::{
    Amount, Changeable, ClassQuestion, Criterion, End, Expected, Kept, Kit, LessonPlace,
    Plan, PlanStep,
};
use noseward_words::{self as words, MassGoes, PressureGoes, SeparationIs, Text};

/// A question.
#[must_use]
pub fn question(question: &ClassQuestion) -> String {
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
        ClassQuestion::Own(own) => return own.clone(),
    }
    .into()
}

/// What is changed for it.
#[must_use]
pub fn question_change(question: &ClassQuestion) -> Option<Text> {
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

/// What is kept the same.
#[must_use]
pub fn kept(kept: Kept) -> Text {
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

/// Where a point goes.
pub(crate) fn goes(end: Option<End>) -> MassGoes {
    match end {
        Some(End::Nose) => MassGoes::Nose,
        Some(End::Tail) => MassGoes::Tail,
        None => MassGoes::Stays,
    }
}

/// What becomes of a separation.
pub(crate) fn becomes(amount: Option<Amount>) -> SeparationIs {
    match amount {
        Some(Amount::More) => SeparationIs::More,
        Some(Amount::Less) => SeparationIs::Less,
        None => SeparationIs::Stays,
    }
}

/// What is expected.
#[must_use]
pub fn expected(expected: Expected) -> String {
    let pressure = match expected.pressure {
        Some(End::Nose) => PressureGoes::Nose,
        Some(End::Tail) => PressureGoes::Tail,
        None => PressureGoes::Stays,
    };
    words::expected(goes(expected.mass), pressure, becomes(expected.separation))
}

/// Something that may be changed.
#[must_use]
pub fn changeable(one: Changeable) -> Text {
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

/// How long there is.
#[must_use]
pub fn plan(plan: Plan) -> Text {
    match plan {
        Plan::Hour => words::plan_hour(),
        Plan::TwoHours => words::plan_two_hours(),
        Plan::HalfDay => words::plan_half_day(),
    }
}

/// A step of a lesson.
#[must_use]
pub fn plan_step(step: PlanStep) -> Text {
    match step {
        PlanStep::Hook => words::plan_hook(),
        PlanStep::Open => words::plan_open(),
        PlanStep::Build => words::plan_build(),
        PlanStep::Measure => words::plan_measure(),
        PlanStep::Predict => words::plan_predict(),
        PlanStep::Swing => words::plan_swing(),
        PlanStep::Break => words::plan_break(),
        PlanStep::Change => words::plan_change(),
        PlanStep::Compare => words::plan_compare(),
        PlanStep::Conclude => words::plan_conclude(),
    }
}

/// A thing of the kit, and what does instead.
#[must_use]
pub fn kit(kit: Kit) -> (Text, Text) {
    match kit {
        Kit::Bottle => (words::kit_bottle(), words::kit_bottle_swap()),
        Kit::Card => (words::kit_card(), words::kit_card_swap()),
        Kit::Tape => (words::kit_tape(), words::kit_tape_swap()),
        Kit::Clay => (words::kit_clay(), words::kit_clay_swap()),
        Kit::String => (words::kit_string(), words::kit_string_swap()),
        Kit::Ruler => (words::kit_ruler(), words::kit_ruler_swap()),
        Kit::Scissors => (words::kit_scissors(), words::kit_scissors_swap()),
        Kit::Computer => (words::kit_computer(), words::kit_computer_swap()),
        Kit::Scales => (words::kit_scales(), words::kit_scales_swap()),
        Kit::HolePunch => (words::kit_hole_punch(), words::kit_hole_punch_swap()),
        Kit::Markers => (words::kit_markers(), words::kit_markers_swap()),
        Kit::EyeProtection => {
            (words::kit_eye_protection(), words::kit_eye_protection_swap())
        }
        Kit::Stopwatch => (words::kit_stopwatch(), words::kit_stopwatch_swap()),
    }
}

/// A place of the page.
#[must_use]
pub fn place(place: LessonPlace) -> Text {
    match place {
        LessonPlace::Rocket => words::places_rocket(),
        LessonPlace::Measure => words::places_measure(),
        LessonPlace::Predict => words::places_predict(),
        LessonPlace::Swing => words::places_swing(),
        LessonPlace::Compare => words::places_compare(),
        LessonPlace::Conclude => words::places_conclude(),
        LessonPlace::HandIn => words::places_hand_in(),
        LessonPlace::Why => words::places_why(),
        LessonPlace::Words => words::places_words(),
    }
}

/// A statement that whoever marks finds in a notebook.
#[must_use]
pub fn criterion(criterion: Criterion) -> Text {
    match criterion {
        Criterion::Answers => words::marking_answers(),
        Criterion::FitsData => words::marking_fits(),
        Criterion::NamesNumbers => words::marking_numbers(),
        Criterion::NamesPoints => words::marking_points(),
        Criterion::SaysWhichWay => words::marking_which_way(),
        Criterion::OneChange => words::marking_one_change(),
        Criterion::PredictedFirst => words::marking_predicted(),
        Criterion::Repeated => words::marking_repeated(),
        Criterion::SaysHowSure => words::marking_how_sure(),
        Criterion::NextStep => words::marking_next_step(),
    }
}
