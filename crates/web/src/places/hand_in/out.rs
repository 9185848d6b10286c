//! The ways out of this computer: file, table, text, codes and symbols.

use maud::{Markup, PreEscaped, html};
use noseward_lesson::Trial;
use noseward_link::{self as link, ResultCode};

use super::share::code_rows;
use crate::app::State;
use crate::notebook::contents;
use crate::places::form::{button, measured, mm, more};

/// The code of one trial's result.
pub(crate) fn result_code(state: &State, id: u16) -> Option<String> {
    let notebook = &state.desk.notebook;
    let changes = u8::try_from(notebook.changes_of(notebook.trial(id)?).len()).ok();
    let result = link::result_of(notebook, id, changes)?;
    Some(link::result_code(&result))
}

/// One result in words, for whoever opened its code.
pub(crate) fn result_words(state: &State, result: &ResultCode) -> String {
    let mut words =
        format!("This is the result of {}, trial {}: ", result.group, result.trial);
    let at = |mm: f64| measured(state, mm);
    match (result.mass, result.pressure, result.model) {
        (Some(mass), Some(pressure), _) => {
            words += &format!(
                "centre of mass {}, centre of pressure {}, separation {} (measured). ",
                at(mass.middle_mm),
                at(pressure.middle_mm),
                at(pressure.middle_mm - mass.middle_mm)
            );
        }
        (_, _, Some(model)) => {
            words += &format!(
                "separation {} (worked out). ",
                mm(state, model.pressure_point_mm - model.mass_point_mm)
            );
        }
        _ => {}
    }
    if let Some(predicted) = result.predicted {
        words += &format!("Predicted: {}. ", predicted.outcome.label());
    }
    let seen: Vec<&str> = result.outcomes.iter().map(|outcome| outcome.label()).collect();
    if seen.is_empty() {
        words += "Not swung.";
    } else {
        words += &format!("Seen: {}.", seen.join("; "));
    }
    if result.altered {
        words += " Something in it was changed by hand, outside of the page.";
    }
    words
}

pub(crate) fn out(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.is_blank() {
        return html! {};
    }
    let words = |text: &str| html! { (text) };
    let shows = state.desk.look.shows_symbols;
    html! {
        section class="card card--place" aria-labelledby="out-title" {
        h3 id="out-title" { "The notebook of " (notebook.group) ", with the rocket" }
        div class="nb__row" {
            button type="button" class="button button--main" id="nb-save" data-action="nb-save"
                data-target="" { "Save the notebook as a file" }
            (button("nb-copy-link", "", false, &words("Copy a link to all of it")))
            (button("print-notebook", "", false, &words("Print the notebook")))
        }
        p class="nb__hint" {
            "File and link open again under “a link, code or file”. They hold the group’s colour and number, and "
            "what you wrote."
        }
        (more(
            "out-tables",
            &words("For a spreadsheet, or as plain text"),
            &html! {
                div class="nb__row" {
                    (button("nb-csv-point", "", false, &words("Table as a file, 12.5 with a point")))
                    (button("nb-csv-comma", "", false, &words("Table as a file, 12,5 with a comma")))
                    (button("nb-copy-table", "", false, &words("Copy the table, with points")))
                    (button("nb-copy-table-comma", "", false, &words("Copy the table, with commas")))
                    (button("nb-text", "", false, &words("Plain text")))
                }
            },
        ))
        @if let Some(trial) = notebook.in_hand() { (result(state, trial)) }
        button type="button" class="button" id="nb-symbols" data-action="nb-symbols"
            aria-expanded=(if shows { "true" } else { "false" }) {
            @if shows { "Hide the QR symbols" } @else { "QR symbols, and the whole notebook as codes" }
        }
        @if shows { (symbols(state)) }
        }
    }
}

/// The short code of the trial in hand; its symbol, which takes longer to work out than all
/// the rest, where somebody asked for symbols.
fn result(state: &State, trial: &Trial) -> Markup {
    let id = trial.id();
    html! {
        @if let Some(code) = result_code(state, id) {
            div class="nb__result" {
                p { "The result of trial " (id) " as a short code: numbers and the group’s label, no words" }
                @if state.desk.look.shows_symbols {
                    @if let Some(symbol) = noseward_drawing::qr(None, &code) {
                        div class="share__symbol" { (PreEscaped(symbol)) }
                    }
                }
                (code_rows(&code, &format!("The code of trial {id}")))
                (button("nb-copy-result", &id.to_string(), true, &html! { "Copy this code" }))
            }
        }
    }
}

/// The parts of the whole notebook.
fn symbols(state: &State) -> Markup {
    let Some(parts) = link::notebook_parts(&contents(state)) else {
        return html! { p { "This notebook is too large for symbols. Save it as a file." } };
    };
    html! {
        p class="nb__hint" {
            "Read all of them with a phone, in any order, and paste the texts under “a link, code or file”; or type them. "
            "The page says which are missing."
        }
        ol class="nb__symbols" {
            @for (i, part) in parts.iter().enumerate() {
                li {
                    p { "Part " (i + 1) " of " (parts.len()) }
                    @if let Some(symbol) = noseward_drawing::qr(None, part) {
                        div class="share__symbol" { (PreEscaped(symbol)) }
                    }
                    (code_rows(part, &format!("Part {}", i + 1)))
                }
            }
        }
    }
}
