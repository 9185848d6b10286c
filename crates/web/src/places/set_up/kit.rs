//! The kit list, and the timings.

use maud::{Markup, html};
use noseward_drawing::names::lesson as names;
use noseward_lesson::{Plan, TimedStep};
use noseward_words::{self as words, Number};

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
                    @let (thing, swap) = names::kit(row.kit);
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
            (one_of(SetUpField::Plan, words::plan_label(), &Plan::ALL, form.plan, |plan| names::plan(plan).into()))
        }
        (plan_table(form))
        p class="governing" { (words::set_up_governing()) }
    }
}

fn number(count: u16) -> String {
    Number::from(u32::from(count)).to_string()
}

/// The steps with the minute at which each begins in its lesson, and the sum.
fn plan_table(form: &Form) -> Markup {
    let plan = form.plan;
    let lessons = plan.lessons();
    let each = plan.swing_minutes(form.set_up.groups());
    html! {
        table class="table nb__table" {
            caption { (names::plan(plan)) }
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
                    tr { td { (number(from)) } td { (number(minutes)) } td { (names::plan_step(step)) } }
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
