//! The ways out of this computer: file, table, text, codes and symbols.

use maud::{Markup, PreEscaped, html};
use noseward_lesson::{Trial, TrialResult};
use noseward_link as link;
use noseward_words as words;

use super::share::code_rows;
use crate::app::State;
use crate::notebook::contents;
use crate::places::form::{button, measured, mm, more, plain_button};
use crate::places::labels::{self, number};

/// The code of one trial's result.
pub(crate) fn result_code(state: &State, id: u16) -> Option<String> {
    TrialResult::of(&state.desk.notebook, id).map(|result| link::result_code(&result))
}

/// One result in words, for whoever opened its code.
pub(crate) fn result_words(state: &State, result: &TrialResult) -> String {
    let (group, trial) = (labels::group(result.group), number(result.trial));
    let at = |mm: f64| measured(state, mm);
    let mut said = vec![match (result.mass, result.pressure, result.model) {
        (Some(mass), Some(pressure), _) => words::result_measured(
            &group,
            trial,
            &at(mass.middle_mm),
            &at(pressure.middle_mm),
            &at(pressure.middle_mm - mass.middle_mm),
        ),
        (_, _, Some(model)) => {
            let separation_mm = model.pressure_point_mm - model.mass_point_mm;
            words::result_worked_out(&group, trial, &mm(state, separation_mm))
        }
        _ => words::result_of(&group, trial),
    }];
    if let Some(predicted) = result.predicted {
        said.push(words::result_predicted(&labels::outcome(predicted.outcome)));
    }
    said.push(if result.outcomes.is_empty() {
        words::result_not_swung().into()
    } else {
        words::result_seen(&labels::outcomes(&result.outcomes))
    });
    if let Some(rules) = result.rules {
        said.push(words::rules_under(&link::rules_text(rules)));
    }
    if result.altered {
        said.push(words::result_altered().into());
    }
    said.join(" ")
}

pub(crate) fn out(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.is_blank() {
        return html! {};
    }
    let shows = state.desk.look.shows_symbols;
    html! {
        section class="card card--place" aria-labelledby="out-title" {
        h3 id="out-title" { (words::hand_in_notebook_of(&labels::group(notebook.group))) }
        @if let Some(rules) = notebook.rules() {
            p { (words::rules_under(&link::rules_text(rules))) }
        }
        div class="nb__row" {
            button type="button" class="button button--main" id="nb-save" data-action="nb-save"
                data-target="" { (words::hand_in_save()) }
            (plain_button("nb-copy-link", false, words::hand_in_copy_link()))
            (plain_button("print-notebook", false, words::hand_in_print()))
        }
        p class="nb__hint" { (words::hand_in_what_is_in_it()) }
        (more(
            "out-tables",
            &html! { (words::hand_in_tables()) },
            &html! {
                div class="nb__row" {
                    (plain_button("nb-csv-point", false, words::hand_in_table_point()))
                    (plain_button("nb-csv-comma", false, words::hand_in_table_comma()))
                    (plain_button("nb-copy-table", false, words::hand_in_copy_table_point()))
                    (plain_button("nb-copy-table-comma", false, words::hand_in_copy_table_comma()))
                    (plain_button("nb-text", false, words::hand_in_plain_text()))
                }
            },
        ))
        @if let Some(trial) = notebook.in_hand() { (result(state, trial)) }
        button type="button" class="button" id="nb-symbols" data-action="nb-symbols"
            aria-expanded=(if shows { "true" } else { "false" }) {
            @if shows { (words::hand_in_hide_symbols()) } @else { (words::hand_in_show_symbols()) }
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
                p { (words::hand_in_result(number(id))) }
                @if state.desk.look.shows_symbols {
                    @if let Some(symbol) = noseward_drawing::qr(None, &code) {
                        div class="share__symbol" { (PreEscaped(symbol)) }
                    }
                }
                (code_rows(&code, &words::hand_in_code_of(number(id))))
                (button("nb-copy-result", &id.to_string(), true, &html! { (words::hand_in_copy_code()) }))
            }
        }
    }
}

/// The parts of the whole notebook.
fn symbols(state: &State) -> Markup {
    let Some(parts) = link::notebook_parts(&contents(state)) else {
        return html! { p { (words::hand_in_too_large()) } };
    };
    html! {
        p class="nb__hint" { (words::hand_in_read_all()) }
        ol class="nb__symbols" {
            @for (i, part) in parts.iter().enumerate() {
                li {
                    p { (words::hand_in_part_of((i + 1).into(), parts.len().into())) }
                    @if let Some(symbol) = noseward_drawing::qr(None, part) {
                        div class="share__symbol" { (PreEscaped(symbol)) }
                    }
                    (code_rows(part, &words::hand_in_part((i + 1).into())))
                }
            }
        }
    }
}
