//! Room to string: what the swing needs, and what fits into a hall.

use maud::{Markup, html};
use noseward_lesson::SetUp;
use noseward_stability::{
    Figures, HallFit, NoHallFit, SmallerSpace, Swing, SwingField, SwingSetup, Units,
    trimmed,
};
use noseward_words as words;

use super::model::Form;
use crate::places::form::{button, setup_value};

/// The longest string and the fastest turns of a set-up.
fn setup_of(set_up: &SetUp) -> SwingSetup {
    SwingSetup {
        string_m: set_up.limits.string_m,
        turns_per_s: set_up.limits.turns_per_s,
        ..SwingSetup::default()
    }
}

fn figures(form: &Form) -> Option<&Figures> {
    form.rocket.as_ref()?.figures()
}

/// How else it may be swung in the hall: at the same turns, with the longest string, fastest.
fn offers(fit: &HallFit) -> [Option<SmallerSpace>; 3] {
    [fit.same_turns, Some(fit.longest_string), Some(fit.fastest_turns)]
}

fn fit_of(form: &Form) -> Option<Result<HallFit, NoHallFit>> {
    let set_up = &form.set_up;
    Some(HallFit::new(figures(form)?, &setup_of(set_up), set_up.hall_m?))
}

/// One of the ways that are offered.
pub(super) fn offered(form: &Form, which: usize) -> Option<SwingSetup> {
    let fit = fit_of(form)?.ok()?;
    offers(&fit).get(which).copied().flatten().map(|space| space.setup)
}

fn metres(value: f64) -> String {
    format!("{} m", words::as_typed(&trimmed(value, 1)))
}

/// What the swing needs, and whether the hall has it.
pub(super) fn room(form: &Form) -> Markup {
    let set_up = &form.set_up;
    let setup = setup_of(set_up);
    let of = |field: SwingField, setup: &SwingSetup| {
        setup_value(field, field.get(setup), Units { system: set_up.units })
    };
    let both = |setup: &SwingSetup| {
        (of(SwingField::String, setup), of(SwingField::Turns, setup))
    };
    let swing = figures(form).and_then(|figures| Swing::new(figures, &setup));
    let across_m = swing.map(|swing| swing.space().clear_across_m());
    let hall = set_up.hall_m.map(metres);
    let fits = across_m.zip(set_up.hall_m).map(|(needs, has)| needs <= has);
    html! {
        @if let Some(across_m) = across_m {
            @let (string, turns) = both(&setup);
            p {
                (words::set_up_room_needed(&string, &turns, &metres(across_m))) " "
                @match (&hall, fits) {
                    (Some(hall), Some(true)) => (words::set_up_room_fits(hall)),
                    (Some(hall), _) => b { (words::set_up_room_none(hall)) },
                    (None, _) => (words::set_up_room_ask()),
                }
            }
        }
        @if fits == Some(false) {
            @match fit_of(form) {
                Some(Ok(fit)) => (offered_ways(&fit, &both)),
                Some(Err(NoHallFit::TooNarrow { least_across_m })) => {
                    p class="field__words" { (words::set_up_room_narrow(&metres(least_across_m))) }
                },
                Some(Err(NoHallFit::PullsTooHard { .. })) => {
                    p class="field__words" { (words::set_up_room_pull()) }
                },
                _ => {},
            }
        }
    }
}

/// Each way that fits, with a button that takes it.
fn offered_ways(fit: &HallFit, both: &dyn Fn(&SwingSetup) -> (String, String)) -> Markup {
    html! {
        ul class="set-up__ways" {
            @for (way, i) in offers(fit).into_iter().zip(0_usize..) {
                @if let Some(way) = way {
                    @let (string, turns) = both(&way.setup);
                    li {
                        @match i {
                            0 => (words::set_up_room_same(&string, &turns)),
                            1 => (words::set_up_room_longest(&string, &turns)),
                            _ => (words::set_up_room_fastest(&string, &turns)),
                        }
                        " "
                        (button("su-room", &i.to_string(), true, &html! { (words::set_up_room_take(&string, &turns)) }))
                    }
                }
            }
        }
    }
}
