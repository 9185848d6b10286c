//! The kit list, and the timings.

use maud::{Markup, html};
use noseward_lesson::{Kit, Plan, PlanStep, TimedStep};
use noseward_words::{self as words, Number, Text};

use super::model::{Form, SetUpField};
use super::one_of;

/// The kit list for the groups, with spares and swaps, and the steps of the lesson.
pub(super) fn kit_and_plan(form: &Form) -> Markup {
    let set_up = &form.set_up;
    html! {
        table class="table nb__table" {
            caption { (words::kit_title(set_up.groups().into(), u32::from(set_up.pupils).into())) }
            thead { tr {
                th scope="col" { (words::kit_thing()) }
                th scope="col" { (words::kit_count()) }
                th scope="col" { (words::kit_spares()) }
                th scope="col" { (words::kit_swap()) }
            } }
            tbody {
                @for row in set_up.kit() {
                    @let (thing, swap) = of_kit(row.kit);
                    tr {
                        th scope="row" { (thing) }
                        td { (number(row.count)) }
                        td { (number(row.spares)) }
                        td { (swap) }
                    }
                }
            }
        }
        div class="nb__row" {
            (one_of(SetUpField::Plan, words::plan_label(), &Plan::ALL, form.plan, |plan| plan_name(plan).into()))
        }
        (plan_table(form))
        p class="governing" { (words::set_up_governing()) }
    }
}

fn number(count: u16) -> String {
    Number::from(u32::from(count)).to_string()
}

fn plan_name(plan: Plan) -> Text {
    match plan {
        Plan::Hour => words::plan_hour(),
        Plan::TwoHours => words::plan_two_hours(),
        Plan::HalfDay => words::plan_half_day(),
    }
}

/// The steps with the minute at which each begins in its lesson, and the sum.
fn plan_table(form: &Form) -> Markup {
    let plan = form.plan;
    let lessons = plan.lessons();
    let swing = plan.steps().iter().find(|(step, _)| *step == PlanStep::Swing);
    let groups = f64::from(form.set_up.groups());
    let each = swing.map_or(0.0, |(_, minutes)| f64::from(*minutes) / groups);
    html! {
        table class="table nb__table" {
            caption { (plan_name(plan)) }
            thead { tr {
                th scope="col" { (words::plan_from()) }
                th scope="col" { (words::plan_minutes()) }
                th scope="col" { (words::plan_step()) }
            } }
            tbody {
                @for TimedStep { lesson, from, step, minutes } in plan.timed() {
                    @if lessons.len() > 1 && from == 0 {
                        tr { th colspan="3" { (words::plan_lesson(u32::from(lesson).into())) } }
                    }
                    tr { td { (number(from)) } td { (number(minutes)) } td { (step_name(step)) } }
                }
                tr {
                    th scope="row" { (words::plan_all()) }
                    td { (number(lessons.iter().sum())) }
                    td {}
                }
            }
        }
        p { (words::plan_each(Number::trimmed(each, 1))) @if each < 2.0 { " " (words::plan_short()) } }
    }
}

fn step_name(step: PlanStep) -> Text {
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

/// A thing, and what does instead.
fn of_kit(kit: Kit) -> (Text, Text) {
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
