//! Where whoever leads sets a lesson up: a form in short cards, and beside it the link, its
//! code and its symbol, which change with it. It is a working set-up from the beginning.

mod aside;
mod kit;
mod message;
mod model;
mod questions;
mod room;
mod update;

pub(crate) use message::SetUpMsg;
#[cfg(test)]
pub(crate) use model::is_field;
pub(crate) use model::{FIELD, SetUpState};
pub(crate) use update::{typed, update};

use maud::{Markup, html};
use noseward_drawing::names::lesson as names;
use noseward_lesson::{
    Changeable, ClassQuestion, Colour, Group, Labels, LessonPlace, Level, OWN_CHARS,
    Plan, SetUp, Support, Telling,
};
use noseward_link::{SetUpLink, rules_text, set_up_hash};
use noseward_stability::{UnitSystem, trimmed};
use noseward_words::{self as words, Text};

use super::form::{button, more, plain_button};
use super::labels;
use crate::app::{Place, State};
use crate::shell::marked::said;
use crate::shell::{Region, pressed, region};
use model::{Form, SetUpField, rockets};

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let form = &*state.form();
    vec![region(
        "set-up",
        html! {
            div class="set-up" {
                div class="set-up__form" {
                    p class="place__lead" { (words::set_up_lead()) }
                    (class_card(form))
                    (question_card(form))
                    (rules_card(form))
                    (hall_card(form))
                    (page_card(state, form))
                    (places_card(form))
                    (more("set-up-kit", &html! { (words::set_up_kit_card()) }, &kit::kit_and_plan(form)))
                    (more("set-up-open", &html! { (words::set_up_open_card()) }, &open_card(form)))
                }
                (aside::aside(state, form))
            }
        },
    )]
}

/// How a lesson is set up in the form, and how long there is for it.
pub(crate) fn of_form(state: &State) -> (SetUp, Plan) {
    let form = state.form();
    (form.set_up.clone(), form.plan)
}

/// The link of the form that hands out labels.
fn for_all(form: &Form) -> SetUpLink {
    SetUpLink { set_up: form.set_up.clone(), group: None }
}

/// What one opens; `None` where the rocket is too long for a link.
fn address_of(state: &State, link: &SetUpLink) -> Option<String> {
    let hash = set_up_hash(link)?;
    Some(format!("{}#{hash}", state.address.as_deref().unwrap_or_default()))
}

fn card(id: &str, title: Text, inside: &Markup) -> Markup {
    html! {
        section class="card card--place" aria-labelledby=(id) {
            h3 id=(id) { (title) }
            (inside)
        }
    }
}

/// A list to choose from: values, words, and which is chosen.
fn choice(field: SetUpField, label: Text, entries: &[(String, String, bool)]) -> Markup {
    html! {
        span class="nb__choice" {
            label for=(field.name()) { (label) }
            select class="field__select" id=(field.name()) data-note=(field.name()) {
                @for (value, label, chosen) in entries {
                    option value=(value) selected[*chosen] { (label) }
                }
            }
        }
    }
}

/// The same of all there is of something.
fn one_of<T: Copy + PartialEq>(
    field: SetUpField,
    label: Text,
    all: &[T],
    now: T,
    called: impl Fn(T) -> String,
) -> Markup {
    let entries: Vec<_> = all
        .iter()
        .zip(0_usize..)
        .map(|(one, i)| (i.to_string(), called(*one), *one == now))
        .collect();
    choice(field, label, &entries)
}

/// A number's field, with what is wrong in it.
fn number(form: &Form, field: SetUpField, label: Text, unit: &str) -> Markup {
    let wrong = form.drafts.iter().any(|(known, _)| *known == field);
    let bounds = field.bounds(&form.set_up).filter(|_| wrong);
    let fault = format!("{}-fault", field.name());
    html! {
        span class="nb__number" {
            label class="field__label" for=(field.name()) { (label) }
            span class="field__box" {
                input class="field__input" id=(field.name()) type="text" inputmode="decimal"
                    autocomplete="off" spellcheck="false" maxlength="12" data-note=(field.name())
                    value=(form.text_of(field)) aria-describedby=(fault)
                    aria-invalid=[wrong.then_some("true")];
                @if !unit.is_empty() { span class="field__unit" { (unit) } }
            }
        }
        span id=(fault) class="set-up__fault" {
            @if let Some((least, most)) = bounds {
                @let [least, most] = [least, most].map(|value| words::as_typed(&trimmed(value, 2)));
                span class="field__words" { (words::set_up_bounds(&least, &most)) }
            }
        }
    }
}

/// A button that stays pressed.
fn toggle(action: &str, target: &str, on: bool, label: Text) -> Markup {
    html! {
        button type="button" class="button button--small" id={ (action) ":" (target) }
            data-action=(action) data-target=(target) aria-pressed=(pressed(on)) { (label) }
    }
}

fn class_card(form: &Form) -> Markup {
    let set_up = &form.set_up;
    let rocket = set_up.rocket.as_ref();
    let mut listed: Vec<_> = rockets()
        .into_iter()
        .zip(0_usize..)
        .map(|((name, design), i)| (i.to_string(), name, rocket == Some(&design)))
        .collect();
    if let Some(own) = rocket.filter(|_| listed.iter().all(|(.., chosen)| !chosen)) {
        let name = match own.name.as_str() {
            "" => words::set_up_rocket_nameless().into(),
            name => words::set_up_rocket_this(name),
        };
        listed.push((String::new(), name, true));
    }
    card(
        "set-up-class",
        words::set_up_class(),
        &html! {
            div class="nb__row" {
                (number(form, SetUpField::Pupils, words::set_up_pupils(), ""))
                (number(form, SetUpField::Size, words::set_up_size(), ""))
                b { (words::set_up_groups(set_up.groups().into())) }
            }
            div class="nb__row" { (choice(SetUpField::Labels, words::set_up_labels(), &label_choices(set_up))) }
            div class="nb__row" {
                (choice(SetUpField::Rocket, words::set_up_rocket(), &listed))
                (plain_button("su-rocket", true, words::set_up_rocket_take()))
            }
        },
    )
}

fn label_choices(set_up: &SetUp) -> Vec<(String, String, bool)> {
    let colours = (
        "0".to_owned(),
        words::set_up_labels_colours().into(),
        set_up.labels == Labels::Colours,
    );
    let numbers = Colour::ALL.into_iter().zip(1_usize..).map(|(colour, i)| {
        let [first, second] = [1, 2].map(|number| {
            Group::new(colour, number).map(labels::group).unwrap_or_default()
        });
        let said = words::set_up_labels_numbers(&first, &second);
        (i.to_string(), said, set_up.labels == Labels::Numbers(colour))
    });
    std::iter::once(colours).chain(numbers).collect()
}

fn question_card(form: &Form) -> Markup {
    let question = &form.set_up.question;
    let is_own = matches!(question, ClassQuestion::Own(_));
    let mut listed: Vec<_> = ClassQuestion::MENU
        .iter()
        .zip(0_usize..)
        .map(|(one, i)| (i.to_string(), names::question(one), one == question))
        .collect();
    listed.push(("own".into(), words::set_up_own().into(), is_own));
    card(
        "set-up-question",
        words::set_up_question_card(),
        &html! {
            div class="nb__row" { (choice(SetUpField::Question, words::set_up_question_card(), &listed)) }
            @if is_own {
                span class="nb__number" {
                    label for=(SetUpField::Own.name()) { (words::set_up_own_label()) }
                    input class="menu__text set-up__own" id=(SetUpField::Own.name()) type="text"
                        maxlength=(OWN_CHARS) data-note=(SetUpField::Own.name())
                        autocomplete="off" value=(form.text_of(SetUpField::Own));
                }
            } @else { (questions::told(question)) }
        },
    )
}

fn rules_card(form: &Form) -> Markup {
    let set_up = &form.set_up;
    let rules = rules_text(set_up.rules());
    card(
        "set-up-rules",
        words::set_up_rules_card(),
        &html! {
            p class="nb__hint" id="set-up-may" { (words::set_up_may_change()) }
            div class="nb__row" role="group" aria-labelledby="set-up-may" {
                @for (one, i) in Changeable::ALL.into_iter().zip(0_usize..) {
                    (toggle("su-may", &i.to_string(), set_up.changeable.has(one), names::changeable(one)))
                }
            }
            div class="nb__row" {
                (toggle("su-two", "", set_up.allows_two_changes, words::set_up_two()))
                (number(form, SetUpField::Added, words::set_up_added(), "g"))
                span class="nb__hint" { (words::set_up_added_hint()) }
            }
            p { (said(words::set_up_code_of_rules(&rules))) }
        },
    )
}

fn hall_card(form: &Form) -> Markup {
    card(
        "set-up-hall",
        words::set_up_hall_card(),
        &html! {
            div class="nb__row" {
                (number(form, SetUpField::Hall, words::set_up_hall(), "m"))
                (number(form, SetUpField::String, words::set_up_string(), "m"))
                (number(form, SetUpField::Turns, words::set_up_turns(), ""))
            }
            (room::room(form))
            p class="governing" { (words::set_up_governing()) }
        },
    )
}

fn page_card(state: &State, form: &Form) -> Markup {
    let set_up = &form.set_up;
    let any =
        (String::new(), words::set_up_language_any().into(), set_up.language.is_empty());
    let mut languages = vec![any];
    languages.extend(state.speech.offered().into_iter().map(|(choice, _)| {
        (choice.key.into(), choice.name.into(), choice.key == set_up.language)
    }));
    let units = [UnitSystem::Metric, UnitSystem::Inch];
    let called = |system| match system {
        UnitSystem::Metric => words::set_up_units_metric().into(),
        UnitSystem::Inch => words::set_up_units_inch().into(),
    };
    card(
        "set-up-page",
        words::set_up_page_card(),
        &html! {
            div class="nb__row" {
                (choice(SetUpField::Language, words::set_up_language(), &languages))
                (one_of(SetUpField::Units, words::set_up_units(), &units, set_up.units, called))
                (one_of(SetUpField::Level, words::lead_detail(), &Level::ALL, set_up.level, |l| labels::level(l).into()))
                (one_of(SetUpField::Help, words::lead_help(), &Support::ALL, set_up.support, |s| labels::support(s).into()))
                (one_of(SetUpField::Telling, words::lead_telling(), &Telling::ALL, set_up.telling, telling))
            }
            p class="nb__hint" { (labels::telling(set_up.telling)) }
        },
    )
}

/// What is told when, in few words.
fn telling(telling: Telling) -> String {
    match telling {
        Telling::All => words::set_up_telling_all(),
        Telling::Verdict => words::set_up_telling_verdict(),
        Telling::Points => words::set_up_telling_points(),
    }
    .into()
}

fn places_card(form: &Form) -> Markup {
    card(
        "set-up-places",
        words::set_up_places_card(),
        &html! {
            div class="nb__row" role="group" aria-labelledby="set-up-places" {
                @for ((of_lesson, place), i) in LessonPlace::ALL.into_iter().zip(Place::all()).zip(0_usize..) {
                    (toggle("su-shows", &i.to_string(), form.set_up.places.has(of_lesson), place.name()))
                }
            }
            p class="nb__hint" { (words::set_up_places_hint()) }
        },
    )
}

fn open_card(form: &Form) -> Markup {
    let wrong = form.drafts.iter().any(|(known, _)| *known == SetUpField::Open);
    html! {
        label for=(SetUpField::Open.name()) { (words::set_up_open()) }
        textarea class="menu__text" id=(SetUpField::Open.name()) data-note=(SetUpField::Open.name())
            rows="2" autocomplete="off" spellcheck="false" { "\n" (form.text_of(SetUpField::Open)) }
        @if wrong { p class="field__words" { (words::set_up_open_wrong()) } }
        @if form.before.is_some() {
            p { (button("su-back", "", true, &html! { (words::set_up_back()) })) }
        }
    }
}
