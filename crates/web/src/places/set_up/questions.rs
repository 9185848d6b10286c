//! What the questions of a class come to, in words.

use maud::{Markup, html};
use noseward_drawing::{listed, names::lesson as names};
use noseward_lesson::ClassQuestion;
use noseward_words as words;

use crate::shell::marked::said;

/// What a question changes, keeps, expects and takes.
pub(super) fn told(question: &ClassQuestion) -> Markup {
    let kept = listed(question.kept().iter().map(|one| names::kept(*one).to_string()));
    html! {
        @if let Some(change) = names::question_change(question) {
            p { (said(words::set_up_change())) " " (change) }
        }
        p { (said(words::set_up_keep())) " " (kept) "." }
        @if let Some(expected) = question.expected() {
            p { (said(words::set_up_expect())) " " (names::expected(expected)) }
        }
        p class="nb__hint" { (words::set_up_minutes(u32::from(question.minutes()).into())) }
    }
}
