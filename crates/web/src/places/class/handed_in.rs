//! Where results come in, what became of them, and what waits to be mended.

use maud::{Markup, html};
use noseward_words as words;

use super::model::{CLASS_FILES, ClassDesk, ClassField, Refused, Tally, Where};
use super::{button, count, grid, keeping, more, plain_button, symbols, why_not};
use crate::app::State;

/// Of a list, as many are shown at once.
const SHOWN: usize = 50;
/// Characters of a text that can be mended here; a longer one is mended in its file.
const MENDED_HERE: usize = 4000;

pub(super) fn handed_in(state: &State, desk: &ClassDesk) -> Markup {
    html! {
        section class="card card--place" aria-labelledby="class-in" {
            h3 id="class-in" { (words::class_in()) }
            label for=(ClassField::Pasted.name()) { (words::class_paste()) }
            textarea class="menu__text" id=(ClassField::Pasted.name()) data-note=(ClassField::Pasted.name())
                rows="4" autocomplete="off" spellcheck="false" { "\n" (desk.pasted) }
            div class="nb__row" {
                button type="button" class="button button--main" id="cl-gather" data-action="cl-gather" { (words::class_take_in()) }
                label class="button class__files" for=(CLASS_FILES) {
                    (words::class_files())
                    input class="visually-hidden" type="file" id=(CLASS_FILES) multiple accept="image/*,.json,.csv,.tsv,.txt,text/plain,text/csv,application/json";
                }
                (symbols::camera(&desk.symbols))
                @if desk.class.is_empty() { (plain_button("cl-example", false, words::class_example())) }
            }
            (symbols::reader(&desk.symbols))
            (progress(state, desk))
            (became(desk))
        }
        (more("class-grid", &html! { (words::class_grid()) }, &grid::grid(state, desk)))
        (refused(desk))
        (keeping(state, desk))
    }
}

/// How far it is.
fn progress(state: &State, desk: &ClassDesk) -> Markup {
    let (done, of) = desk.tally.files;
    html! {
        div id="class-progress" role="status" {
            @if state.class.is_busy {
                p {
                    (words::class_busy(count(done).into(), count(of).into(), count(desk.class.entries().len()).into())) " "
                    (plain_button("cl-stop", true, words::class_stop()))
                }
            }
        }
    }
}

/// What became of what was taken in last.
fn became(desk: &ClassDesk) -> Markup {
    let Tally { new, notebooks, doubled, newer, words: passed, stopped, .. } =
        &desk.tally;
    let list = |id: &str, line: String, all: &[Where]| {
        html! { @if !all.is_empty() { (more(id, &html! { (line) }, &places(all))) } }
    };
    html! {
        @if *stopped { p { (words::class_stopped()) } }
        @if desk.before.is_some() {
            p role="status" {
                @if *new > 0 || *notebooks > 0 { (words::class_new((*new).into(), (*notebooks).into())) " " }
                (plain_button("cl-undo", true, words::class_undo()))
            }
        }
        (list("class-doubled", words::class_doubled(count(doubled.len()).into()), doubled))
        (list("class-newer", words::class_newer(count(newer.len()).into()), newer))
        (list("class-words", words::class_words(count(passed.len()).into()), passed))
    }
}

fn places(all: &[Where]) -> Markup {
    html! {
        ul class="class__where" {
            @for at in all.iter().take(SHOWN) { li { (place(at)) ": " (front(&at.what)) } }
            @if all.len() > SHOWN { li { (words::class_and_more(count(all.len() - SHOWN).into())) } }
        }
    }
}

/// The file and the line.
fn place(at: &Where) -> String {
    match (at.source.as_str(), count(at.line).into()) {
        ("", _) if at.line == 0 => words::class_invented_one().into(),
        ("", line) => words::class_at_line(line),
        (source, line) => words::class_in_file(source, line),
    }
}

/// The beginning of a text.
fn front(text: &str) -> String {
    text.chars().take(80).collect()
}

/// What was not taken in.
fn refused(desk: &ClassDesk) -> Markup {
    let all = &desk.refused;
    let can_be_taken = all.iter().filter(|refused| refused.why.can_be_taken()).count();
    html! {
        @if !all.is_empty() {
            section class="card card--place" aria-labelledby="class-refused" {
                h3 id="class-refused" { (words::class_refused(count(all.len()).into())) }
                @if can_be_taken > 1 {
                    p { (plain_button("cl-take-all", true, words::class_take_all())) }
                }
                ol class="class__refused" {
                    @for (refused, i) in all.iter().zip(0..).take(SHOWN) { (one(refused, i)) }
                }
                @if all.len() > SHOWN { p { (words::class_and_more(count(all.len() - SHOWN).into())) } }
            }
        }
    }
}

fn one(Refused { at, why }: &Refused, i: usize) -> Markup {
    let (name, target) = (ClassField::Mend(i).name(), i.to_string());
    html! {
        li {
            p { b { (place(at)) } ": " (why_not::said(why)) }
            @if why_not::can_be_mended(why) && at.what.len() <= MENDED_HERE {
                label class="visually-hidden" for=(name) { (words::class_mend()) }
                textarea class="menu__text" id=(name) data-note=(name) rows="2" autocomplete="off"
                    spellcheck="false" { "\n" (at.what) }
            } @else if !at.what.is_empty() { p class="nb__hint" dir="ltr" { (front(&at.what)) } }
            div class="nb__row" {
                @if why_not::can_be_mended(why) {
                    (button("cl-again", &target, true, &html! { (words::class_again()) }))
                }
                @if why.can_be_taken() {
                    (button("cl-take", &target, true, &html! { (words::class_take()) }))
                }
                (button("cl-leave-out", &target, true, &html! { (words::class_leave_out()) }))
            }
        }
    }
}
