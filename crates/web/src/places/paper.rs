//! Sheets to print, true to size: chosen on one side, seen as they will be on the other.

mod drawings;
mod message;
mod model;
mod sheets;
mod update;

pub(crate) use message::PaperMsg;
pub(crate) use model::{PaperDesk, Picture};
pub(crate) use update::{make, open, painted, update};

use maud::{Markup, PreEscaped, html};
use noseward_drawing::paper::{Page, PaperSize, has_all_letters};
use noseward_drawing::svg_document;
use noseward_words::{self as words, Text};

use super::form::plain_button;
use super::sheet_of_paper;
use crate::app::State;
use crate::shell::{Region, pressed, region};
#[cfg(test)]
pub(crate) use drawings::Drawing;
use sheets::Group;
pub(crate) use sheets::Sheet;

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    let Some(desk) = state.paper.as_deref() else { return Vec::new() };
    vec![region(
        "paper-place",
        html! {
            div class="pages" {
                div class="pages__choice" {
                    p class="place__lead" { (words::paper_place_lead()) }
                    (sizes(desk))
                    @for group in Group::ALL { (choice(desk, group)) }
                }
                (preview(state, desk))
            }
        },
    )]
}

/// Every page as it is printed by the browser.
pub(crate) fn on_paper(state: &State) -> Vec<Region> {
    let Some(desk) = state.paper.as_deref() else { return Vec::new() };
    let size = match desk.size() {
        PaperSize::A4 => "a4",
        PaperSize::Letter => "letter",
    };
    sheet_of_paper(html! {
        div class={ "leaves leaves--" (size) } {
            @for page in desk.pages() { div class="leaf" { (drawn(page)) } }
        }
    })
}

fn drawn(page: &Page) -> PreEscaped<String> {
    PreEscaped(svg_document(&page.scene, None))
}

fn sizes(desk: &PaperDesk) -> Markup {
    let one = |size: PaperSize, key: &str, name: Text| {
        html! {
            button type="button" class="button button--small" id={ "pp-size:" (key) }
                data-action="pp-size" data-target=(key)
                aria-pressed=(pressed(desk.size() == size)) { (name) }
        }
    };
    html! {
        div class="nb__row" role="group" aria-label=(words::paper_place_size().as_str()) {
            (one(PaperSize::A4, "a4", words::paper_place_a4()))
            (one(PaperSize::Letter, "letter", words::paper_place_letter()))
        }
    }
}

/// The sheets of a group.
fn choice(desk: &PaperDesk, group: Group) -> Markup {
    let id = format!("pages-{}", group as usize);
    html! {
        section class="card card--place" aria-labelledby=(id) {
            h3 id=(id) { (group.name()) }
            div class="pages__list" {
                @for (sheet, i) in Sheet::all().zip(0_usize..).filter(|(sheet, _)| sheet.group() == group) {
                    button type="button" class="pages__sheet" id={ "pp-sheet:" (i) }
                        data-action="pp-sheet" data-target=(i)
                        aria-pressed=(pressed(desk.sheet == sheet)) { (sheet.name()) }
                }
            }
        }
    }
}

/// What is printed, and the ways to paper.
fn preview(state: &State, desk: &PaperDesk) -> Markup {
    html! {
        section class="pages__preview card card--place" aria-labelledby="pages-preview" {
            h3 id="pages-preview" { (desk.sheet.name()) }
            @if let Some(why) = desk.sheet.waits_for(state, desk) { (why) }
            @else if !desk.pages().is_empty() || desk.is_busy() {
                (ways(state, desk))
                @if let Some(scene) = desk.sheet.drawing(state) {
                    div class="leaf leaf--drawn" { (PreEscaped(svg_document(&scene, None))) }
                } @else {
                    (leafed(desk))
                }
            } @else {
                p {
                    (if state.design.sections.is_empty() { words::paper_place_no_rocket() }
                     else { words::paper_place_nothing() })
                }
            }
        }
    }
}

/// The ways to paper.
fn ways(state: &State, desk: &PaperDesk) -> Markup {
    let has_pdf = has_all_letters(desk.pages());
    html! {
        @if let Some(made) = desk.made.as_ref().filter(|made| !made.is_whole()) {
            p role="status" { (words::paper_place_making(made.done().into(), made.of.into())) }
        } @else {
            div class="nb__row" {
                @if has_pdf {
                    button type="button" class="button button--main" id="pp-save"
                        data-action="pp-save" { (words::paper_place_save()) }
                    (plain_button("pp-open", false, words::paper_place_open()))
                }
                (plain_button("pp-print", false, words::paper_place_print()))
                (plain_button("pp-svg", false, words::paper_place_svg()))
                (plain_button("pp-png", false, words::paper_place_png()))
                @if desk.sheet.outline(state).is_some() {
                    (plain_button("pp-outline", false, words::paper_place_outline()))
                }
                @if desk.sheet.has_table() {
                    (plain_button("pp-table", false, words::paper_place_table()))
                }
            }
        }
        p class="nb__hint" {
            (if desk.sheet.is_drawing() { words::paper_place_no_size() }
             else if has_pdf { words::paper_place_scale() }
             else { words::paper_place_no_pdf() })
        }
    }
}

/// The page that is looked at, and the ways to the others.
fn leafed(desk: &PaperDesk) -> Markup {
    let (pages, at) = (desk.pages(), desk.at());
    html! {
        @if pages.len() > 1 {
            div class="nb__row pages__leaf" {
                (plain_button("pp-before", true, words::paper_place_before()))
                span { (words::paper_place_page((at + 1).into(), pages.len().into())) }
                (plain_button("pp-behind", true, words::paper_place_next()))
            }
        }
        @if let Some(page) = pages.get(at) { div class="leaf leaf--seen" { (drawn(page)) } }
    }
}
