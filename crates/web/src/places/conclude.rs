//! Claim, evidence, reason and trust, with the group's own numbers beside.

mod deeds;
mod message;
mod offered;
mod update;

pub(crate) use message::ConcludeMsg;
pub(crate) use update::update;

use maud::{Markup, html};
use noseward_drawing::statement_question;
use noseward_lesson::{BOX_CHARS, Level, Sentences, Statement, Support};
use noseward_words as words;

use super::form::{area, level, no_names, told_button};
use super::labels;
use crate::app::State;
use crate::notebook::NotebookField;
use crate::shell::{Region, region};

/// The place: a box for each statement, with help beside it.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    // Looked through once for all boxes.
    let sentences = Sentences::of(&state.desk.notebook);
    let mut regions = vec![region(
        "conclude-how",
        html! {
            p class="place__lead" {
                (words::conclude_no_names())
                @if state.desk.notebook.support == Support::None { " " (words::conclude_data()) }
            }
        },
    )];
    regions.extend(shown(state).map(|of| {
        let label = match state.desk.notebook.support {
            Support::None => labels::statement(of),
            Support::Questions | Support::Sentences => statement_question(of),
        };
        region(id(of), html! {
            section class="conclude__box" {
                (area(state, NotebookField::Statement(of), &html! { (label) (no_names()) }, 3, BOX_CHARS))
                div { (help(state, &sentences, of)) }
            }
        })
    }));
    regions
}

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

fn id(of: Statement) -> &'static str {
    match of {
        Statement::Claim => "conclude-claim",
        Statement::Evidence => "conclude-evidence",
        Statement::Reason => "conclude-reason",
        Statement::Trust => "conclude-trust",
    }
}

/// A question, and sentences with the group's own numbers.
fn help(state: &State, sentences: &Sentences<'_>, of: Statement) -> Markup {
    let notebook = &state.desk.notebook;
    if notebook.support == Support::None {
        return html! {};
    }
    html! {
        p class="nb__hint" { (offered::question(sentences.question(of), state.units)) }
        @if notebook.support == Support::Sentences {
            @let sentences = sentences.offered(of);
            @let place = Statement::ALL.iter().position(|other| *other == of).unwrap_or_default();
            @if !sentences.is_empty() {
                details class="nb__offered" id=(format!("{}-offered", id(of))) open[of == Statement::Claim] {
                    summary { (words::conclude_offered()) }
                    ul class="list" {
                        @for (i, sentence) in sentences.iter().enumerate() {
                            @let sentence = offered::sentence(sentence, state.units);
                            li {
                                (sentence) " "
                                (told_button("nb-use", &format!("{place} {i}"), words::conclude_use(&sentence)))
                            }
                        }
                    }
                }
            }
        }
    }
}
