//! Claim, evidence, reason and trust, with the group's own numbers beside.

use maud::{Markup, html};
use noseward_lesson::{BOX_CHARS, Level, Sentences, Statement, Support};

use super::{button, level, no_names, words};
use crate::app::State;
use crate::notebook::fields::Note;
use crate::views::Region;

/// The boxes that a level asks for.
fn asked(state: &State) -> &'static [Statement] {
    match level(state) {
        Level::Balance => &[Statement::Claim, Statement::Reason],
        Level::Measure | Level::Explain | Level::Model => &Statement::ALL,
    }
}

/// A box that is asked for, or that has something in it.
fn shown(state: &State) -> impl Iterator<Item = Statement> {
    let written = |of: Statement| !state.desk.notebook.conclusion.text(of).is_empty();
    Statement::ALL.into_iter().filter(move |of| asked(state).contains(of) || written(*of))
}

fn lead(of: Statement) -> &'static str {
    match of {
        Statement::Claim => "Claim: what did you find out?",
        Statement::Evidence => "Evidence: which numbers and swings show it?",
        Statement::Reason => "Reason: why is it so?",
        Statement::Trust => "Trust: how sure are you, and why?",
    }
}

pub(super) fn form(state: &State) -> Markup {
    html! {
        h3 { "What we found out" }
        @for of in shown(state) {
            @let label = match state.desk.notebook.support {
                Support::None => of.label(),
                Support::Questions | Support::Sentences => lead(of),
            };
            (words(state, Note::Statement(of), &html! { (label) (no_names()) }, 3, BOX_CHARS))
            div id=(output_id(of)) {}
        }
    }
}

fn output_id(of: Statement) -> &'static str {
    match of {
        Statement::Claim => "nb-help-claim",
        Statement::Evidence => "nb-help-evidence",
        Statement::Reason => "nb-help-reason",
        Statement::Trust => "nb-help-trust",
    }
}

pub(super) fn outputs(state: &State) -> Vec<Region> {
    // Looked through once for all boxes.
    let sentences = Sentences::of(&state.desk.notebook, state.units);
    let region = |of| Region {
        id: output_id(of),
        markup: help(state, &sentences, of).into_string(),
    };
    shown(state).map(region).collect()
}

/// A question, and sentences with the group's own numbers.
fn help(state: &State, sentences: &Sentences<'_>, of: Statement) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.support == Support::None {
        return html! {};
    }
    html! {
        p class="nb__hint" { (sentences.question(of)) }
        @if notebook.support == Support::Sentences {
            @let sentences = sentences.offered(of);
            @let place = Statement::ALL.iter().position(|other| *other == of).unwrap_or_default();
            @if !sentences.is_empty() {
                details class="nb__offered" id=(format!("{}-offered", output_id(of))) open[of == Statement::Claim] {
                    summary { "Sentences with your own numbers" }
                    ul class="list" {
                        @for (i, sentence) in sentences.iter().enumerate() {
                            li {
                                (sentence) " "
                                (button("nb-use", &format!("{place} {i}"), true,
                                    &html! { "Use it" span class="visually-hidden" { ": " (sentence) } }))
                            }
                        }
                    }
                }
            }
        }
    }
}

/// The data beside an empty page.
pub(super) fn data(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    html! {
        @if notebook.support == Support::None && !notebook.trials().is_empty() {
            p class="nb__hint" { "Your data are in the table and the charts above." }
        }
    }
}
