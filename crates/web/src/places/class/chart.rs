//! The pictures of a class, from its trials.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{
    ClassChart, ClassTrial, SeparationUnit, agreement_chart, class_chart, svg_document,
};

use super::model::ClassDesk;
use super::pattern::Pattern;
use crate::app::State;
use crate::places::form::graph_px;
use crate::places::labels;

/// How much larger than everything else the big screen shows the chart: as much as the window
/// has room for, so that letters are a 200th to a 280th of 8 m high on a screen 2 m wide.
const BOARD: (f64, f64) = (1.6, 2.2);
/// The height of a chart with all that stands round it, and what stands above it, in pixels.
const BOARD_CHART_PX: f64 = 300.0;
const BOARD_ABOVE_PX: f64 = 110.0;
/// The height for which charts are made, in pixels.
const HEIGHT_PX: f64 = 420.0;
/// The width of a chart on paper, in pixels.
const PAPER_PX: f64 = 680.0;
/// The width of the picture of agreement, in pixels, and its height as a share of that.
const AGREEMENT_PX: f64 = 640.0;
const AGREEMENT_SHARE: f64 = 0.45;

/// Separation and outcome of every trial.
pub(super) fn chart(state: &State, desk: &ClassDesk, pattern: &Pattern) -> Markup {
    let view = desk.pattern;
    let on_paper = state.printing.is_some();
    let board = view.board && !on_paper;
    let trials: Vec<ClassTrial> = pattern
        .points
        .iter()
        .map(|&(x, i)| (x, &desk.class.entries()[i]))
        .map(|(x, entry)| ClassTrial {
            separation: x,
            nose_first: entry.result.nose_first(),
            label: if view.names {
                labels::group(entry.result.group)
            } else {
                String::new()
            },
            marked: entry.marked && !board,
        })
        .collect();
    let unit = if view.along.in_widths {
        SeparationUnit::BodyWidths
    } else {
        SeparationUnit::Length(state.units)
    };
    let (width_px, height_px) = if board {
        let (width, height) = state.computer.window_px;
        let room = (f64::from(height) - BOARD_ABOVE_PX) / BOARD_CHART_PX;
        (f64::from(width) / room.clamp(BOARD.0, BOARD.1), BOARD_CHART_PX)
    } else {
        (if on_paper { PAPER_PX } else { graph_px(state) }, HEIGHT_PX)
    };
    let body_width =
        if view.along.in_widths { Some(1.0) } else { median_width_mm(desk, pattern) };
    let scene = class_chart(&ClassChart {
        trials: &trials,
        unit,
        measured: !view.along.computed,
        body_width,
        found: Some(&pattern.found),
        invented: desk.class.is_example(),
        width_px: width_px.max(300.0),
        height_px,
    });
    html! { (PreEscaped(svg_document(&scene, None))) }
}

/// The middle of the rockets' widths, in millimetres.
fn median_width_mm(desk: &ClassDesk, pattern: &Pattern) -> Option<f64> {
    let of = |&(_, i): &(f64, usize)| {
        Some(desk.class.entries()[i].result.model?.body_width_mm)
    };
    let mut widths: Vec<f64> = pattern.points.iter().filter_map(of).collect();
    widths.sort_by(f64::total_cmp);
    widths.get(widths.len() / 2).copied()
}

/// How what was measured agrees with what was worked out.
pub(super) fn agreement(state: &State, pairs: &[(f64, f64)]) -> Markup {
    let width_px = graph_px(state).clamp(300.0, AGREEMENT_PX);
    let scene = agreement_chart(pairs, state.units, width_px, width_px * AGREEMENT_SHARE);
    html! {
        @if let Some(scene) = scene {
            div class="nb__chart" { (PreEscaped(svg_document(&scene, None))) }
        }
    }
}
