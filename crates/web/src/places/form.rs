//! What the forms of the places are made of.

use maud::{Markup, html};
use noseward_drawing::Written;
use noseward_lesson::Level;
use noseward_stability::{SwingField, UnitSystem, Units};
use noseward_words::{self as words, Mark, Marked, Number, Text};

use super::measure;
use crate::app::State;
use crate::notebook::{NotebookField, fault};
use crate::shell::magnification;
use crate::shell::marked::marked;

pub(crate) fn level(state: &State) -> Level {
    state.desk.notebook.level
}

/// A distance in words, to the digits of a ruler.
pub(crate) fn mm(state: &State, value: f64) -> String {
    state.units.reading(value)
}

/// A distance that was measured, to the digits that were typed.
pub(crate) fn measured(state: &State, value: f64) -> String {
    state.units.length(value)
}

/// A value of the setup with its unit, to the digits that matter.
pub(crate) fn setup_value(field: SwingField, value: f64, units: Units) -> String {
    match (field, units.system) {
        (SwingField::Turns, _) => words::swing_turns_a_second(Number::trimmed(value, 2)),
        (SwingField::AirDensity, _) => format!("{} kg/m³", Number::trimmed(value, 3)),
        (_, UnitSystem::Metric) => format!("{} m", Number::trimmed(value, 2)),
        (_, UnitSystem::Inch) => units.length(value * 1000.0),
    }
}

/// A sentence whose asides are only spoken, and whose values are quoted: a group’s own words.
pub(crate) fn told(sentence: Marked) -> Markup {
    marked(&sentence, &|mark, run| {
        html! {
            @if mark == Mark::Value { q { (run) } }
            @else { span class="visually-hidden" { (run) } }
        }
    })
}

/// The width that charts are made for, in pixels: for a projector they are shown larger.
pub(crate) fn graph_px(state: &State) -> f64 {
    state.graph_px / magnification(state)
}

/// A button of the notebook.
pub(crate) fn button(action: &str, target: &str, small: bool, label: &Markup) -> Markup {
    let id =
        if target.is_empty() { action.to_owned() } else { format!("{action}:{target}") };
    let class = if small { "button button--small" } else { "button" };
    html! {
        button type="button" class=(class) id=(id) data-action=(action) data-target=(target) {
            (label)
        }
    }
}

/// A button of the notebook that needs no target.
pub(crate) fn plain_button(action: &str, small: bool, label: Text) -> Markup {
    button(action, "", small, &html! { (label) })
}

/// A small button whose label is partly spoken only: see [`told`].
pub(crate) fn told_button(action: &str, target: &str, label: Marked) -> Markup {
    button(action, target, true, &told(label))
}

/// The heads of columns.
pub(crate) fn heads(heads: &[Text]) -> Markup {
    html! { @for head in heads { th scope="col" { (head) } } }
}

/// What is told on demand: a line, and what opens below it.
pub(crate) fn more(id: &str, line: &Markup, inside: &Markup) -> Markup {
    html! { details class="place__more" id=(id) { summary { (line) } (inside) } }
}

/// A list to choose from: values, words, and which is chosen.
pub(crate) fn choice(
    note: NotebookField,
    label: &Markup,
    entries: &[(String, String, bool)],
) -> Markup {
    let name = note.name();
    html! {
        span class="nb__choice" {
            label for=(name) { (label) }
            select class="field__select" id=(name) data-note=(name) {
                @for (value, label, chosen) in entries {
                    option value=(value) selected[*chosen] { (label) }
                }
            }
        }
    }
}

/// A length's field with the place for what is wrong in it.
pub(crate) fn number(state: &State, note: NotebookField, label: Marked) -> Markup {
    let name = note.name();
    let unit = state.units.length_unit();
    let described = match note {
        NotebookField::Reading(point, _) | NotebookField::Guess(point) => {
            measure::output_id(point)
        }
        _ => "nb-lengths",
    };
    html! {
        span class="nb__number" {
            label class="field__label" for=(name) { (told(label)) }
            span class="field__box" {
                input class="field__input" id=(name) type="text" inputmode="decimal"
                    autocomplete="off" spellcheck="false" maxlength="40" data-note=(name)
                    data-number="" value=(note.text(state)) aria-describedby=(described)
                    aria-invalid=[fault(state, note).map(|_| "true")];
                span class="field__unit" aria-hidden="true" { (unit) }
            }
        }
    }
}

/// The text of an area: a browser drops the first line break in it.
pub(crate) fn in_area(text: &str) -> String {
    format!("\n{text}")
}

/// Room for some lines of the group's own.
pub(crate) fn area(
    state: &State,
    note: NotebookField,
    label: &Markup,
    lines: usize,
    most: usize,
) -> Markup {
    let name = note.name();
    html! {
        div class="nb__words" {
            label for=(name) { (label) }
            textarea class="menu__text" id=(name) data-note=(name) rows=(lines)
                maxlength=(most) autocomplete="off" spellcheck="false" { (in_area(&note.text(state))) }
        }
    }
}

/// Beside every room for free text.
pub(crate) fn no_names() -> Markup {
    html! { span class="nb__hint" { " " (words::forms_no_names()) } }
}

/// What is wrong in some fields, as sentences.
pub(crate) fn faults(
    state: &State,
    notes: impl IntoIterator<Item = NotebookField>,
) -> Markup {
    let faults: Vec<String> =
        notes.into_iter().filter_map(|note| fault(state, note)).collect();
    html! { @for fault in faults { p class="field__words" { (fault) } } }
}

/// A table that may be wider than the window: it scrolls in a region of its own, and the
/// page does not.
pub(crate) fn wide(name: &str, table: &Markup) -> Markup {
    html! {
        p class="nb__hint nb__sideways" {
            (words::forms_sideways())
        }
        div class="nb__wide" tabindex="0" role="group" aria-label=(name) { (table) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn values_of_the_setup_are_in_the_units_of_the_reader() {
        let (metric, inch) = (Units::METRIC, Units::INCH);
        for (field, value, units, words) in [
            (SwingField::Arm, 1.0, metric, "1 m"),
            (SwingField::Arm, 1.0, inch, "39.37 in"),
            (SwingField::String, 0.85, metric, "0.85 m"),
            (SwingField::Turns, 0.3, inch, "0.3 turns a second"),
            (SwingField::Turns, 1.0, metric, "1 turn a second"),
            (SwingField::AirDensity, 1.225, metric, "1.225 kg/m³"),
        ] {
            assert_eq!(setup_value(field, value, units), words);
        }
    }
}
