//! The pattern over the trials: two charts, each with its table, and two rockets on one
//! ruler.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{
    ChartTrial, SeriesTrial, pair, svg_document, trial_chart, trial_chart_words,
    trial_series, trial_series_words,
};
use noseward_lesson::{Level, Summary, SwingOutcome, Trial};
use noseward_words::{self as words, Text};

use super::list::is_told;
use crate::app::State;
use crate::places::form::{graph_px, heads, level, measured, mm, wide};
use crate::places::labels::{self, number};

/// Charts are drawn no wider than this, in pixels.
const WIDEST_PX: f64 = 720.0;
/// The height of two rockets side by side, in pixels.
const PAIR_PX: f64 = 420.0;

pub(crate) fn charts(state: &State, summaries: &[Summary]) -> Markup {
    html! {
        (side_by_side(state))
        (swings(state, summaries))
        @if level(state) > Level::Balance { (series(state, summaries)) }
    }
}

fn width_px(state: &State) -> f64 {
    // Some fonts are wider than expected.
    (graph_px(state) - 4.0).clamp(260.0, WIDEST_PX)
}

/// What the chart shows, from what was seen of each trial.
pub(crate) fn dots<'a>(
    state: &State,
    summaries: &[Summary],
    seen: &'a [Vec<SwingOutcome>],
) -> Vec<ChartTrial<'a>> {
    summaries
        .iter()
        .zip(seen)
        .filter(|(found, seen)| !seen.is_empty() && is_told(state, found))
        .filter_map(|(found, seen)| ChartTrial::of(found, seen))
        .collect()
}

/// A dot for every swing: separation across, outcome in rows.
fn swings(state: &State, summaries: &[Summary]) -> Markup {
    const HEADS: [Text; 3] = [
        words::compare_head_trial(),
        words::compare_head_separation(),
        words::charts_how(),
    ];
    let trials = state.desk.notebook.trials();
    let seen: Vec<Vec<SwingOutcome>> =
        trials.iter().map(|trial| trial.swings().counted().collect()).collect();
    let dots = dots(state, summaries, &seen);
    let Some(scene) = trial_chart(&dots, state.units, width_px(state)) else {
        return html! {};
    };
    html! {
        figure class="nb__chart" {
            figcaption { h3 { (words::charts_swings()) } p class="nb__hint" { (words::charts_swings_hint()) } }
            (PreEscaped(svg_document(&scene, Some("nb-chart-words"))))
            p id="nb-chart-words" { (trial_chart_words(&dots, state.units)) }
            details id="nb-chart-table" { summary { (words::charts_as_table()) }
                (wide(&words::charts_swings_table(), &html! { table class="table" {
                    thead { tr {
                        (heads(&HEADS))
                        @for i in 1..=3_u8 { th scope="col" { (words::charts_swing(i.into())) } }
                    } }
                    tbody {
                        @for dot in &dots {
                            tr {
                                th scope="row" { (dot.label) }
                                td { @if dot.measured { (measured(state, dot.separation_mm)) } @else { (mm(state, dot.separation_mm)) } }
                                td { @if dot.measured { (words::charts_is_measured()) } @else { (words::charts_is_worked_out()) } }
                                @for i in 0..3 { td { @if let Some(seen) = dot.outcomes.get(i) { (labels::outcome(*seen)) } } }
                            }
                        }
                    }
                } }))
            }
        }
    }
}

/// The measured separation with the least and the most that the readings allow.
fn separation_range_mm(found: &Summary) -> Option<(f64, f64, f64)> {
    let (mass, pressure) = (found.measured_mass?, found.measured_pressure?);
    Some((
        pressure.middle_mm - mass.middle_mm,
        pressure.least_mm - mass.most_mm,
        pressure.most_mm - mass.least_mm,
    ))
}

/// What the series shows.
pub(crate) fn points(state: &State, summaries: &[Summary]) -> Vec<SeriesTrial> {
    let point = |found: &Summary| SeriesTrial {
        label: found.id.to_string(),
        measured_mm: separation_range_mm(found),
        computed_mm: found.computed_separation_mm().filter(|_| is_told(state, found)),
    };
    summaries.iter().map(point).collect()
}

/// Separation over the trials, measured beside worked out.
fn series(state: &State, summaries: &[Summary]) -> Markup {
    const HEADS: [Text; 5] = [
        words::compare_head_trial(),
        words::charts_head_measured(),
        words::charts_head_from(),
        words::charts_head_to(),
        words::charts_head_worked_out(),
    ];
    let points = points(state, summaries);
    let Some(scene) = trial_series(&points, state.units, width_px(state)) else {
        return html! {};
    };
    html! {
        figure class="nb__chart" {
            figcaption { h3 { (words::charts_series()) } }
            (PreEscaped(svg_document(&scene, Some("nb-series-words"))))
            p id="nb-series-words" { (trial_series_words(&points, state.units)) }
            details id="nb-series-table" { summary { (words::charts_as_table()) }
                (wide(&words::charts_series_table(), &html! { table class="table" {
                    thead { tr { (heads(&HEADS)) } }
                    tbody {
                        @for point in &points {
                            tr {
                                th scope="row" { (point.label) }
                                @if let Some((middle, least, most)) = point.measured_mm {
                                    td { (measured(state, middle)) } td { (measured(state, least)) } td { (measured(state, most)) }
                                } @else { td {} td {} td {} }
                                td { @if let Some(value) = point.computed_mm { (mm(state, value)) } }
                            }
                        }
                    }
                } }))
            }
        }
    }
}

/// Two trials as drawings on one ruler.
fn side_by_side(state: &State) -> Markup {
    let notebook = &state.desk.notebook;
    let Some((left, right)) = state.desk.look.pair else { return html! {} };
    let find = |id| notebook.trial_or_deleted(id);
    let (Some(left), Some(right)) = (find(left), find(right)) else { return html! {} };
    let figures = (left.rocket().figures(), right.rocket().figures());
    let (Some(left_figures), Some(right_figures)) = figures else {
        return html! { p { (words::charts_no_pair()) } };
    };
    let caption = |trial: &Trial| words::compare_trial(number(trial.id()));
    let (left_caption, right_caption) = (caption(left), caption(right));
    let scene = pair(
        (left.design(), left_figures, &left_caption),
        (right.design(), right_figures, &right_caption),
        state.units,
        width_px(state),
        PAIR_PX,
    );
    html! {
        @if let Some(scene) = scene {
            figure class="nb__chart" id="nb-pair-figure" {
                figcaption {
                    h3 { (words::charts_pair(number(left.id()), number(right.id()))) }
                    p class="nb__hint" { (separations(state, [left, right])) }
                }
                (PreEscaped(svg_document(&scene, None)))
            }
        }
    }
}

/// What was measured of two trials that are drawn as computed.
fn separations(state: &State, trials: [&Trial; 2]) -> String {
    let found = trials.map(|trial| {
        let value = trial.measured.separation_mm(trial.design().length_mm())?;
        Some((number(trial.id()), measured(state, value)))
    });
    match found {
        [Some((left, a)), Some((right, b))] => {
            words::charts_pair_both(left, &a, right, &b)
        }
        [Some((trial, value)), None] | [None, Some((trial, value))] => {
            words::charts_pair_one(trial, &value)
        }
        [None, None] => words::charts_pair_neither().into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::Notebook;
    use noseward_stability::Example;

    /// From the nearest of the two points to the furthest.
    #[test]
    fn the_range_is_the_widest_that_the_readings_allow() {
        let mut notebook = Notebook::default();
        notebook.begin(&Example::Puffin.design().into()).unwrap();
        let readings = |mm: [f64; 3]| mm.map(Some);
        notebook.in_hand_mut().unwrap().measured.mass.mm =
            readings([140.0, 142.0, 145.0]);
        assert_eq!(separation_range_mm(&notebook.summaries()[0]), None);
        let trial = notebook.in_hand_mut().unwrap();
        trial.measured.pressure.mm = readings([200.0, 203.0, 206.0]);
        let found = separation_range_mm(&notebook.summaries()[0]);
        assert_eq!(found, Some((203.0 - 142.0, 200.0 - 145.0, 206.0 - 140.0)));
    }
}
