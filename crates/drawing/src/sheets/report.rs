//! What a group hands in on paper: its rocket, its trials, its readings, its chart and its
//! conclusion, with the last result as a symbol and as a typed code.

mod readings;
mod trials;

use noseward_lesson::{Change, Notebook, Statement, Summary, SwingOutcome, Trial};
use noseward_stability::{Units, evaluate_measured};
use noseward_words as words;

use super::said::printed;
use crate::names::{group_name, statement_name};
use crate::paper::{Flow, Page, PaperSize};
use crate::qr::qr_scene;
use crate::rocket::{LabelStyle, Sheet, Told, rocket};
use crate::scene::Scene;
use crate::trial_chart::{ChartTrial, trial_chart};

pub use readings::point_as_read;

/// The sheet that the rocket is drawn on, in CSS pixels.
const ROCKET_PX: (f64, f64) = (580.0, 350.0);
/// How large the rocket and its symbol are at most, in millimetres.
const ROCKET_MM: (f64, f64) = (122.0, 72.0);
const SYMBOL_MM: f64 = 34.0;
/// The chart is made as wide as this, in CSS pixels, and then laid into the width of the page.
const CHART_PX: f64 = 920.0;
/// How high it may be, in millimetres.
const CHART_MM: f64 = 105.0;
/// A CSS pixel, in millimetres.
const PX_MM: f64 = 25.4 / 96.0;
/// From one line to write on to the next, in millimetres.
const LINE_MM: f64 = 9.0;

/// What two boxes beside each other take with a heading, in millimetres.
const BOXES_MM: f64 = 48.0;

/// What a report is made of.
#[derive(Clone, Copy, Debug)]
pub struct GroupReport<'a> {
    /// The group’s notebook.
    pub notebook: &'a Notebook,
    /// How lengths and masses are written.
    pub units: Units,
    /// The address of the page, for the symbol; without one the symbol holds the code alone.
    pub address: Option<&'a str>,
    /// The code of the rules that the trials are made under, if they are under any.
    pub rules: Option<&'a str>,
    /// The typed code of the result of the trial in hand, or else of the last one.
    pub code: Option<&'a str>,
    /// What a change is called, in two or three words.
    pub changed: fn(&Change) -> String,
}

/// The report of a group: two pages for usual notebooks. It tells what the notebook tells.
#[must_use]
pub fn report(size: PaperSize, of: &GroupReport<'_>) -> Vec<Page> {
    let notebook = of.notebook;
    let summaries = notebook.summaries();
    let mut flow =
        Flow::new(size, &words::paper_notebook_of(&group_name(notebook.group)));
    if let Some(rules) = of.rules {
        flow.small(&words::rules_under(rules));
    }
    if notebook.is_altered() {
        flow.paragraph(&words::compare_notebook_altered());
    }
    if let Some(trial) = notebook.in_hand().or(notebook.trials().last()) {
        last(&mut flow, of, trial);
    }
    trials::table(&mut flow, of, &summaries);
    readings::table(&mut flow, of);
    chart(&mut flow, of, &summaries);
    said(&mut flow, of);
    flow.pages()
}

/// The last rocket, the result of its trial to be read by a phone or typed, and room to sign.
fn last(flow: &mut Flow, of: &GroupReport<'_>, trial: &Trial) {
    let id = u32::from(trial.id());
    let scene = drawing(of, trial);
    let Some(code) = of.code else {
        if let Some(scene) = scene {
            captioned(flow, &words::paper_rocket_of(id.into()), &scene, ROCKET_MM);
        }
        flow.paragraph(&words::paper_initials());
        return;
    };
    flow.beside(&[2.0, 1.0], 4.0, &mut |flow, i| match (i, &scene) {
        (0, Some(scene)) => {
            captioned(flow, &words::paper_rocket_of(id.into()), scene, ROCKET_MM);
        }
        (0, None) => {}
        _ => {
            flow.small(&words::hand_in_result(id.into()));
            if let Some(symbol) = qr_scene(of.address, code) {
                flow.figure(&symbol, (SYMBOL_MM, SYMBOL_MM));
            }
            flow.code(code);
            flow.paragraph(&words::paper_initials());
        }
    });
}

/// The rocket of a trial, with its points as they were measured, or worked out if that is told.
fn drawing(of: &GroupReport<'_>, trial: &Trial) -> Option<Scene> {
    let design = trial.design();
    let points = trial.measured.points(design.length_mm());
    let telling = of.notebook.telling;
    let sheet = Sheet {
        width_px: ROCKET_PX.0,
        height_px: ROCKET_PX.1,
        units: of.units,
        labels: LabelStyle::Full,
        told: Told {
            mass: telling.tells_point(points.centre_of_mass.is_some()),
            pressure: telling.tells_point(points.centre_of_pressure.is_some()),
        },
    };
    rocket(design, &evaluate_measured(design, &points).figures?, &sheet)
}

/// A drawing below its caption, on one page.
fn captioned(flow: &mut Flow, caption: &str, scene: &Scene, most_mm: (f64, f64)) {
    let height = scene.height * PX_MM.min(Flow::WIDTH_MM / scene.width);
    flow.keep_mm(height.min(most_mm.1) + 14.0);
    flow.heading(3, caption);
    flow.figure(scene, most_mm);
}

/// A dot for every swing: separation across, outcome in rows.
fn chart(flow: &mut Flow, of: &GroupReport<'_>, summaries: &[Summary]) {
    let trials = of.notebook.trials();
    let seen: Vec<Vec<SwingOutcome>> =
        trials.iter().map(|trial| trial.swings().counted().collect()).collect();
    let both = summaries.iter().zip(&seen);
    let shown = both.filter(|(found, seen)| !seen.is_empty() && is_told(of, found));
    let dots: Vec<ChartTrial<'_>> =
        shown.filter_map(|(found, seen)| ChartTrial::of(found, seen)).collect();
    if let Some(scene) = trial_chart(&dots, of.units, CHART_PX) {
        captioned(flow, &words::charts_swings(), &scene, (Flow::WIDTH_MM, CHART_MM));
    }
}

/// Whether the points of a trial may be told: worked-out ones may have to wait for measured ones.
fn is_told(of: &GroupReport<'_>, found: &Summary) -> bool {
    of.notebook.telling.tells_point(found.is_measured())
}

/// Notes, plans and the conclusion in full, or room to write it.
fn said(flow: &mut Flow, of: &GroupReport<'_>) {
    let notebook = of.notebook;
    for trial in notebook.trials().iter().filter(|trial| !trial.note.is_empty()) {
        let id = u32::from(trial.id());
        flow.paragraph(&printed(&words::paper_note(id.into(), &trial.note)));
    }
    if !notebook.plans().is_empty() {
        flow.paragraph(&printed(&words::paper_plans(&notebook.plans().join("; "))));
    }
    // The heading stays with what stands below it.
    flow.keep_mm(BOXES_MM);
    flow.heading(2, &words::paper_found_out());
    for pair in Statement::ALL.chunks(2) {
        flow.beside(&[1.0, 1.0], 6.0, &mut |flow, i| {
            statement(flow, pair[i], notebook.conclusion.text(pair[i]));
        });
    }
    flow.caution(&words::paper_no_permission());
}

/// A box of the conclusion, or lines to write it on.
fn statement(flow: &mut Flow, of: Statement, text: &str) {
    if text.is_empty() {
        // Level with a heading beside it.
        flow.space(1.6);
        flow.ruled(&statement_name(of), 3, LINE_MM);
    } else {
        flow.heading(3, &statement_name(of));
        flow.paragraph(text);
    }
}

#[cfg(test)]
mod tests;
