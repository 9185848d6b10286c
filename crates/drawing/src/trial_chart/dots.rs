//! Which dot stands on which: every swing keeps its place along the axis.

use noseward_lesson::SwingOutcome;

use super::{ChartTrial, range_mm};
use crate::area::Area;
use crate::plot::{Scale, Stack};
use crate::width::bold_px;

const LEAST_RADIUS: f64 = 9.0;
/// Between a dot and the edges of its row.
const INSET: f64 = 5.0;

/// One swing in its row.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Placed<'a> {
    pub(super) trial: &'a ChartTrial<'a>,
    /// How many dots' heights above the bottom of the row.
    pub(super) level: u32,
    /// From where to where its trial's range goes, where it carries it.
    pub(super) range_px: Option<(f64, f64)>,
}

/// The radius for which every label has room in its dot, in pixels.
pub(super) fn radius_px(trials: &[&ChartTrial<'_>]) -> f64 {
    let widest = trials.iter().map(|trial| bold_px(&trial.label)).fold(0.0, f64::max);
    (widest / 2.0 + 3.0).max(LEAST_RADIUS)
}

/// The swings that ended in an outcome, each as low as it finds room, trial after trial.
/// What was seen most often stands highest.
pub(super) fn place<'a>(
    trials: &[&'a ChartTrial<'a>],
    outcome: SwingOutcome,
    scale: &Scale,
    radius: f64,
) -> Vec<Placed<'a>> {
    let mut placed = Vec::new();
    let mut stack = Stack::default();
    for &trial in trials {
        let x = scale.px(trial.separation_mm);
        let mut range_px = range_mm(trial)
            .map(|(least, most)| (scale.px(least), scale.px(most)))
            .filter(|&(from, to)| from < x - radius - 3.0 || to > x + radius + 3.0);
        for _ in trial.outcomes.iter().filter(|&&seen| seen == outcome) {
            let (from, to) = range_px.unwrap_or((x, x));
            let span = ((x - radius).min(from), (x + radius).max(to));
            let level = stack.put(span);
            placed.push(Placed { trial, level, range_px: range_px.take() });
        }
    }
    placed
}

/// How high a row with these dots is; one without is as high as one dot needs.
pub(super) fn height_px(placed: &[Placed<'_>], radius: f64) -> f64 {
    let highest = placed.iter().map(|one| one.level).max().unwrap_or(0);
    2.0 * INSET + 2.0 * radius + f64::from(highest) * pitch(radius)
}

/// Where the middle of a dot on some level is.
pub(super) fn y(level: u32, row: &Area, radius: f64) -> f64 {
    row.bottom - INSET - radius - f64::from(level) * pitch(radius)
}

fn pitch(radius: f64) -> f64 {
    2.0 * radius + Stack::APART
}
