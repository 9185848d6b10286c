//! The pattern over the trials: two charts, each with its table, and two rockets on one
//! ruler.

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{
    ChartTrial, SeriesTrial, pair, svg_document, trial_chart, trial_chart_words,
    trial_series, trial_series_words,
};
use noseward_lesson::{Level, Summary, SwingOutcome, Trial};

use super::list::is_told;
use crate::app::State;
use crate::places::form::{graph_px, level, measured, mm, wide};

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

/// A dot for every swing: separation across, outcome in rows.
fn swings(state: &State, summaries: &[Summary]) -> Markup {
    let trials = state.desk.notebook.trials();
    let seen: Vec<Vec<SwingOutcome>> =
        trials.iter().map(|trial| trial.swings().counted().collect()).collect();
    let dots: Vec<ChartTrial<'_>> = summaries
        .iter()
        .zip(&seen)
        .filter(|(found, seen)| !seen.is_empty() && is_told(state, found))
        .filter_map(|(found, seen)| {
            Some(ChartTrial {
                label: found.id.to_string(),
                separation_mm: found.separation_mm()?,
                calibre_mm: found.body_width_mm?,
                measured: found.is_measured(),
                range_mm: None,
                outcomes: seen,
            })
        })
        .collect();
    let Some(scene) = trial_chart(&dots, state.units, width_px(state)) else {
        return html! {};
    };
    html! {
        figure class="nb__chart" {
            figcaption { h3 { "Separation and what we saw" } p class="nb__hint" { "Each dot is one swing. Pick one: what does it tell? Now look at all: is there a pattern? One to two body widths is a habit, not a permission." } }
            (PreEscaped(svg_document(&scene, Some("nb-chart-words"))))
            p id="nb-chart-words" { (trial_chart_words(&dots, state.units)) }
            details id="nb-chart-table" { summary { "The same as a table" }
                (wide("Separation and swings", &html! { table class="table" {
                    thead { tr { th scope="col" { "Trial" } th scope="col" { "Separation" } th scope="col" { "How" } @for i in 1..=3 { th scope="col" { "Swing " (i) } } } }
                    tbody {
                        @for dot in &dots {
                            tr {
                                th scope="row" { (dot.label) }
                                td { @if dot.measured { (measured(state, dot.separation_mm)) } @else { (mm(state, dot.separation_mm)) } }
                                td { @if dot.measured { "measured" } @else { "worked out" } }
                                @for i in 0..3 { td { (dot.outcomes.get(i).map_or("", |o| o.label())) } }
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

/// Separation over the trials, measured beside worked out.
fn series(state: &State, summaries: &[Summary]) -> Markup {
    let points: Vec<SeriesTrial> = summaries
        .iter()
        .map(|found| SeriesTrial {
            label: found.id.to_string(),
            measured_mm: separation_range_mm(found),
            computed_mm: found.computed_separation_mm().filter(|_| is_told(state, found)),
        })
        .collect();
    let Some(scene) = trial_series(&points, state.units, width_px(state)) else {
        return html! {};
    };
    html! {
        figure class="nb__chart" {
            figcaption { h3 { "Separation over the trials" } }
            (PreEscaped(svg_document(&scene, Some("nb-series-words"))))
            p id="nb-series-words" { (trial_series_words(&points, state.units)) }
            details id="nb-series-table" { summary { "The same as a table" }
                (wide("Separation of each trial", &html! { table class="table" {
                    thead { tr { th scope="col" { "Trial" } th scope="col" { "Measured" } th scope="col" { "From" } th scope="col" { "To" } th scope="col" { "Worked out" } } }
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
        return html! { p { "One of the two rockets cannot be drawn." } };
    };
    let caption = |trial: &Trial| format!("Trial {}", trial.id());
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
                    h3 { (left_caption) " and " (right_caption) ", side by side" }
                    p class="nb__hint" { "Both as worked out" (separations(state, [left, right])) "." }
                }
                (PreEscaped(svg_document(&scene, None)))
            }
        }
    }
}

/// What was measured of two trials that are drawn as computed.
fn separations(state: &State, trials: [&Trial; 2]) -> String {
    let mut words = String::new();
    for trial in trials {
        let length = trial.design().length_mm();
        if let Some(value) = trial.measured.separation_mm(length) {
            words +=
                &format!("; trial {} measured: {}", trial.id(), measured(state, value));
        }
    }
    words
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
