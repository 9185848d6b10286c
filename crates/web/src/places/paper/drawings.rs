//! Drawings alone, for other programs.

use noseward_drawing::paper::{Flow, Page, PaperSize};
use noseward_drawing::{
    AirSheet, Item, LabelStyle, Scene, Sheet, air_graph, cut_out_outline, rocket,
    trial_chart, trial_series,
};
use noseward_lesson::{Level, SwingOutcome};
use noseward_words::{self as words, Text};

use crate::app::State;
use crate::places::compare::charts::{dots, points};
use crate::places::form::level;

/// How large drawings are made, in CSS pixels.
const SIZE_PX: (f64, f64) = (720.0, 560.0);

/// What is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Drawing {
    Rocket,
    Outline,
    /// The separations of the open notebook and what was seen.
    Chart,
    /// The separations of the open notebook, one trial after the other.
    Series,
    /// The air from every side.
    Air,
}

impl Drawing {
    pub(super) const fn name(self) -> Text {
        match self {
            Self::Rocket => words::paper_place_rocket(),
            Self::Outline => words::paper_place_outline_drawn(),
            Self::Chart => words::charts_swings(),
            Self::Series => words::charts_series(),
            Self::Air => words::paper_place_air(),
        }
    }

    /// As it is on paper; `None` where there is nothing to draw yet.
    pub(super) fn scene(self, state: &State) -> Option<Scene> {
        let (units, (width_px, height_px)) = (state.units, SIZE_PX);
        let figures = state.report.figures.as_ref();
        let summaries = || state.desk.notebook.summaries();
        match self {
            Self::Rocket => {
                let (labels, told) = (LabelStyle::Full, state.points_told());
                let sheet = Sheet { width_px, height_px, units, labels, told };
                let mut scene = rocket(&state.design, figures?, &sheet)?;
                for group in &mut scene.groups {
                    still(&mut group.items);
                }
                Some(scene)
            }
            Self::Outline => cut_out_outline(&state.design),
            Self::Chart => {
                let summaries = summaries();
                let trials = state.desk.notebook.trials().iter();
                let seen: Vec<Vec<SwingOutcome>> =
                    trials.map(|trial| trial.swings().counted().collect()).collect();
                trial_chart(&dots(state, &summaries, &seen), units, width_px)
            }
            Self::Series if level(state) == Level::Balance => None,
            Self::Series => trial_series(&points(state, &summaries()), units, width_px),
            Self::Air => {
                let angle_rad = state.angle_deg.to_radians();
                Some(air_graph(figures?, &AirSheet { width_px, units, angle_rad }))
            }
        }
    }

    /// On a page, with its name above it.
    pub(super) fn pages(self, state: &State, size: PaperSize) -> Option<Vec<Page>> {
        let scene = self.scene(state)?;
        let mut flow = Flow::new(size, self.name().as_str());
        flow.small(words::paper_place_no_size().as_str());
        let most_mm = (Flow::WIDTH_MM, flow.room_mm());
        flow.figure(&scene, most_mm);
        Some(flow.pages())
    }
}

/// Without what a hand takes hold of.
fn still(items: &mut Vec<Item>) {
    items.retain(|item| !matches!(item, Item::Grip { .. }));
    for item in items {
        if let Item::Part { hint, items, .. } = item {
            *hint = None;
            still(items);
        }
    }
}
