//! The notebook on paper: the last rocket, what was guessed, measured and seen in every
//! trial, the notes, and the conclusion in full, or room to write it.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::sheets::point_as_read;
use noseward_drawing::{LabelStyle, Sheet, Told, Written, rocket, svg_document};
use noseward_lesson::{BalancePoint, REPEATS, Statement, Trial};
use noseward_stability::evaluate_measured;
use noseward_words::{self as words, Text};

use super::compare::{charts, list};
use super::form::{heads, measured, told};
use super::labels::{self, number};
use crate::app::State;

/// The open notebook: the trials, the charts, the readings and the conclusion.
pub(crate) fn notebook(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let summaries = notebook.summaries();
    html! {
        h2 { (words::paper_notebook_of(&labels::group(notebook.group))) }
        @if let Some(trial) = notebook.in_hand().or(notebook.trials().last()) { (drawing(state, trial)) }
        (list::list(state, &summaries))
        (charts::charts(state, &summaries))
        @if notebook.trials().iter().any(|trial| BalancePoint::ALL.iter().any(|point| is_read(trial, *point))) {
            (readings(state, notebook.trials()))
        }
        @if notebook.trials().iter().any(|trial| !trial.swings().outcomes().is_empty()) {
            (swings(notebook.trials()))
        }
        @for trial in notebook.trials().iter().filter(|trial| !trial.note.is_empty()) {
            p { (told(words::paper_note(number(trial.id()), &trial.note))) }
        }
        @if !notebook.plans().is_empty() {
            p { (told(words::paper_plans(&notebook.plans().join("; ")))) }
        }
        h3 { (words::paper_found_out()) }
        @for of in Statement::ALL {
            div class="nb__written" {
                p { strong { (labels::statement(of)) } }
                @let text = notebook.conclusion.text(of);
                @if text.is_empty() { p class="nb__lines" {} } @else { p class="nb__text" { (text) } }
            }
        }
        p { (words::paper_initials()) }
        p { (words::paper_no_permission()) }
    }
}

/// The rocket of a trial, with its points as they were measured, or worked out if that is
/// told.
fn drawing(state: &State, trial: &Trial) -> Markup {
    let design = trial.design();
    let points = trial.measured.points(design.length_mm());
    let telling = state.desk.notebook.telling;
    let sheet = Sheet {
        width_px: 640.0,
        height_px: 400.0,
        units: state.units,
        labels: LabelStyle::Full,
        told: Told {
            mass: telling.tells_point(points.centre_of_mass.is_some()),
            pressure: telling.tells_point(points.centre_of_pressure.is_some()),
        },
    };
    // The rocket on the page is worked out with its readings already.
    let is_on_page = state.trial_in_hand().is_some_and(|here| here.id() == trial.id());
    let figures = if is_on_page {
        state.report.figures.clone()
    } else {
        evaluate_measured(design, &points).figures
    };
    let scene = figures.and_then(|figures| rocket(design, &figures, &sheet));
    html! {
        @if let Some(scene) = scene {
            figure class="nb__chart" {
                figcaption { (words::paper_rocket_of(number(trial.id()))) }
                (PreEscaped(svg_document(&scene, None)))
            }
        }
    }
}

/// Every swing of every trial, in the order in which they were seen.
fn swings(trials: &[Trial]) -> Markup {
    const HEADS: [Text; 2] = [words::compare_head_trial(), words::paper_head_swings()];
    let outcomes = |trial: &Trial| labels::outcomes(trial.swings().outcomes());
    html! {
        table class="table nb__table" {
            caption { (words::paper_swings()) }
            thead { tr { (heads(&HEADS)) } }
            tbody {
                @for trial in trials.iter().filter(|trial| !trial.swings().outcomes().is_empty()) {
                    tr { th scope="row" { (trial.id()) } td { (outcomes(trial)) } }
                }
            }
        }
    }
}

/// Whether a point was guessed or read.
fn is_read(trial: &Trial, point: BalancePoint) -> bool {
    let readings = trial.measured.of(point);
    readings.any() || readings.guess_mm.is_some()
}

fn readings(state: &State, trials: &[Trial]) -> Markup {
    /// Before the readings, which have numbers.
    const BEFORE: [Text; 3] = [
        words::compare_head_trial(),
        words::paper_head_point(),
        words::paper_head_guess(),
    ];
    const BEHIND: [Text; 2] = [words::paper_head_middle(), words::paper_head_range()];
    html! {
        table class="table nb__table" {
            caption { (words::paper_readings()) }
            thead { tr {
                (heads(&BEFORE))
                @for i in 1..=REPEATS { th scope="col" { (i) } }
                (heads(&BEHIND))
            } }
            tbody {
                @for trial in trials {
                    @for point in BalancePoint::ALL { (row(state, trial, point)) }
                }
            }
        }
    }
}

fn row(state: &State, trial: &Trial, point: BalancePoint) -> Markup {
    let readings = trial.measured.of(point);
    if !is_read(trial, point) {
        return html! {};
    }
    let length_mm = trial.design().length_mm();
    let middle = trial.measured.middle(point, length_mm);
    html! {
        tr {
            th scope="row" { (trial.id()) }
            td { (point_as_read(trial, point)) }
            td { @if let Some(guess) = readings.guess_mm { (state.units.length(guess)) } }
            @for reading in readings.mm {
                td { @if let Some(value) = reading { (state.units.length(value)) } }
            }
            td { @if let Some(middle) = middle { (measured(state, middle.middle_mm)) } }
            td { @if let Some(middle) = middle { (measured(state, middle.range_mm())) } }
        }
    }
}
