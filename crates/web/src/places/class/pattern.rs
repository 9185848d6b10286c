//! What the trials of all groups come to: the chart, and what it says in words.

use std::rc::Rc;

use maud::{Markup, html};
use noseward_lesson::{
    Agreement, Band, Class, Entry, NextTrial, NoTurningPoint, NoseFirst, Odd, Reach,
    Score, Seen, TrialResult, TurningPoint, WhyThere, agreement, count_predictions,
    next_trial_after, odd, turning_point,
};
use noseward_words::{self as words, Number, Text};

use super::model::{Along, ClassDesk, PatternView};
use super::take_in::name_of;
use super::{chart, count, more, plain_button, timer};
use crate::app::State;
use crate::places::form::{measured, mm};
use crate::places::labels;
use crate::shell::pressed;

/// Readings that look odd which are told, at most.
const ODD_TOLD: usize = 40;
/// Beyond what was tried, as a share of it, a class can build too.
const BEYOND: f64 = 0.25;

/// What is asked of a class, worked out once for chart and words.
#[derive(Debug)]
pub(super) struct Pattern {
    /// Each trial that counts and has a separation, with that.
    pub(super) points: Vec<(f64, usize)>,
    /// Trials that count and have none.
    without: usize,
    pub(super) found: Result<TurningPoint, NoTurningPoint>,
    next: Option<NextTrial>,
}

impl Pattern {
    fn of(class: &Class, along: Along) -> Self {
        let (mut points, mut without) = (Vec::new(), 0);
        for (i, entry) in class.counting() {
            match separation(&entry.result, along) {
                Some(x) => points.push((x, i)),
                None => without += 1,
            }
        }
        let seen: Vec<Seen> = points
            .iter()
            .filter_map(|&(x, i)| {
                Some((x, class.entries()[i].result.nose_first()?).into())
            })
            .collect();
        let found = turning_point(&seen);
        let next =
            reach(&points).and_then(|reach| next_trial_after(&found, &seen, reach));
        Self { points, without, found, next }
    }
}

impl ClassDesk {
    /// The pattern, worked out anew only after something of it has changed.
    pub(super) fn worked_out(&self) -> Rc<Pattern> {
        let along = self.pattern.along;
        let mut known = self.known.borrow_mut();
        match &*known {
            Some((of, pattern)) if *of == along => Rc::clone(pattern),
            _ => {
                let pattern = Rc::new(Pattern::of(&self.class, along));
                *known = Some((along, Rc::clone(&pattern)));
                pattern
            }
        }
    }
}

/// The separation of a trial, in millimetres or in body widths.
fn separation(result: &TrialResult, along: Along) -> Option<f64> {
    let mm = if along.computed {
        result.computed_separation_mm()
    } else {
        result.measured_separation_mm()
    }?;
    if !along.in_widths {
        return Some(mm);
    }
    let width_mm = result.model?.body_width_mm;
    (width_mm > 0.0).then(|| mm / width_mm)
}

/// What the class can build, going by what it built.
fn reach(points: &[(f64, usize)]) -> Option<Reach> {
    let least = points.iter().map(|(x, _)| *x).reduce(f64::min)?;
    let most = points.iter().map(|(x, _)| *x).reduce(f64::max)?;
    let beyond = BEYOND * (most - least);
    Some(Reach { least: least - beyond, most: most + beyond })
}

/// A separation in words.
pub(super) fn told(state: &State, along: Along, x: f64) -> String {
    if along.in_widths { words::class_widths(Number::fixed(x, 2)) } else { mm(state, x) }
}

pub(super) fn pattern(state: &State, desk: &ClassDesk) -> Markup {
    if desk.class.counting().next().is_none() {
        return html! { p { (words::class_nothing_yet()) } };
    }
    let pattern = desk.worked_out();
    let PatternView { board, .. } = desk.pattern;
    html! {
        div class={ "class__pattern" @if board { " class__board" } } {
            (controls(desk))
            div class="class__says" role="status" {
                @for sentence in says(state, desk.pattern.along, &pattern.found) { p { (sentence) } }
            }
            div class="nb__chart class__chart" { (chart::chart(state, desk, &pattern)) }
            @if pattern.without > 0 {
                p class="nb__hint" { (words::class_without(count(pattern.without).into())) }
            }
        }
        @if !board {
            (settle(state, desk.pattern.along, pattern.next))
            (also(state, desk))
            (odd_readings(state, desk))
        }
    }
}

fn controls(desk: &ClassDesk) -> Markup {
    let PatternView { along, names, board } = desk.pattern;
    let toggle = |id: &str, on: bool, label: Text| {
        html! {
            button type="button" class="button button--small" id=(id) data-action=(id)
                aria-pressed=(pressed(on)) { (label) }
        }
    };
    html! {
        div class="nb__row class__controls" role="group" aria-label=(words::class_along().as_str()) {
            @if !board {
                (toggle("cl-measured", !along.computed, words::class_measured()))
                (toggle("cl-computed", along.computed, words::class_computed()))
                (toggle("cl-lengths", !along.in_widths, words::class_in_lengths()))
                (toggle("cl-widths", along.in_widths, words::class_in_widths()))
            }
            @if board { (timer::timer(desk)) }
            (toggle("cl-names", names, words::class_names()))
            (plain_button("cl-board", true, if board { words::class_board_leave() } else { words::class_board() }))
        }
    }
}

/// What the chart says, in sentences.
pub(super) fn says(
    state: &State,
    along: Along,
    found: &Result<TurningPoint, NoTurningPoint>,
) -> Vec<String> {
    let told = |x: f64| told(state, along, x);
    match found {
        Ok(found) => {
            let turns = match found.nose_first {
                NoseFirst::Above => words::class_turns(&told(found.at)),
                NoseFirst::Below => words::class_turns_below(&told(found.at)),
            };
            let band = match found.band {
                Band::Between { least, most } => {
                    words::class_band(&told(least), &told(most))
                }
                Band::Unbounded => words::class_band_open().into(),
            };
            vec![turns, band]
        }
        Err(why) => vec![match *why {
            NoTurningPoint::TooFew { trials, least } => {
                words::class_too_few(whole(trials), whole(least))
            }
            NoTurningPoint::OneSided { nose_first: true, least, most } => {
                words::class_all_nose_first(&told(least), &told(most))
            }
            NoTurningPoint::OneSided { nose_first: false, least, most } => {
                words::class_none_nose_first(&told(least), &told(most))
            }
            NoTurningPoint::SameSeparation { separation } => {
                words::class_same(&told(separation))
            }
            NoTurningPoint::Parted(gap) => match gap.nose_first {
                NoseFirst::Above => words::class_parted(&told(gap.from), &told(gap.to)),
                NoseFirst::Below => {
                    words::class_parted_below(&told(gap.from), &told(gap.to))
                }
            },
            NoTurningPoint::Level => words::class_level().into(),
        }],
    }
}

fn whole(many: u64) -> Number {
    u32::try_from(many).unwrap_or(u32::MAX).into()
}

/// The trial that would tell most.
fn settle(state: &State, along: Along, next: Option<NextTrial>) -> Markup {
    let told = |x: f64| told(state, along, x);
    html! {
        @if let Some(next) = next {
            section class="card card--place" aria-labelledby="class-settle" {
                h3 id="class-settle" { (words::class_settle()) }
                p {
                    @match next.why {
                        WhyThere::Narrows { share } => (words::class_next_narrows(&told(next.at), Number::fixed(100.0 * share, 0))),
                        WhyThere::InGap(_) => (words::class_next_gap(&told(next.at))),
                        WhyThere::Untried(reach) => (words::class_next_untried(&told(next.at), &told(reach.least), &told(reach.most))),
                    }
                }
            }
        }
    }
}

/// Predictions, fair tests, and how well what was measured agrees with what was worked out.
fn also(state: &State, desk: &ClassDesk) -> Markup {
    let lines = figures(state, desk);
    html! {
        section class="card card--place" aria-labelledby="class-also" {
            h3 id="class-also" { (words::class_also()) }
            ul { @for line in lines { li { (line) } } }
            (chart::agreement(state, &pairs(desk)))
        }
    }
}

/// The same in sentences.
pub(super) fn figures(state: &State, desk: &ClassDesk) -> Vec<String> {
    let results = || desk.class.counting().map(|(_, entry)| &entry.result);
    let counts = count_predictions(results());
    let score = |Score { right, of }: Score, said: fn(Number, Number) -> String| {
        (of > 0).then(|| said(right.into(), of.into()))
    };
    let fair: Vec<bool> = results().filter_map(TrialResult::is_fair).collect();
    let are_fair = count(fair.iter().filter(|fair| **fair).count());
    let mut lines: Vec<String> = [
        score(counts.before, words::class_before),
        score(counts.after_swings, words::class_after),
        (counts.unjudged > 0).then(|| words::class_unjudged(counts.unjudged.into())),
        Some(words::class_fair(are_fair.into(), count(fair.len()).into())),
    ]
    .into_iter()
    .flatten()
    .collect();
    if let Some(Agreement { count: of, mean_difference, limits, other_sign }) =
        agreement(&pairs(desk))
    {
        let signed = |value: f64| measured(state, value);
        lines.push(words::class_agreement(&signed(mean_difference), count(of).into()));
        if let Some(limits) = limits {
            lines.push(words::class_limits(&signed(limits.least), &signed(limits.most)));
        }
        if other_sign > 0 {
            lines.push(words::class_other_sign(count(other_sign).into()));
        }
    }
    lines
}

/// The separation measured and worked out, of each trial that has both, in millimetres.
fn pairs(desk: &ClassDesk) -> Vec<(f64, f64)> {
    let both = |entry: &Entry| {
        let result = &entry.result;
        Some((result.measured_separation_mm()?, result.computed_separation_mm()?))
    };
    desk.class.counting().filter_map(|(_, entry)| both(entry)).collect()
}

/// What to ask groups about.
fn odd_readings(state: &State, desk: &ClassDesk) -> Markup {
    let all: Vec<(String, Odd)> = desk
        .class
        .counting()
        .flat_map(|(_, entry)| {
            odd(&entry.result).into_iter().map(|odd| (name_of(entry), odd))
        })
        .collect();
    html! {
        @if !all.is_empty() {
            (more("class-odd", &html! { (words::class_odd(count(all.len()).into())) }, &html! {
                ul {
                    @for (whose, odd) in all.iter().take(ODD_TOLD) { li { b { (whose) } ": " (odd_said(state, odd)) } }
                    @if all.len() > ODD_TOLD { li { (words::class_and_more(count(all.len() - ODD_TOLD).into())) } }
                }
            }))
        }
    }
}

fn odd_said(state: &State, odd: &Odd) -> String {
    let at = |value: f64| measured(state, value);
    match *odd {
        Odd::Outside { point, middle_mm, length_mm } => words::class_odd_outside(
            labels::point_in(point),
            &at(middle_mm),
            &mm(state, length_mm),
        ),
        Odd::WideRange { point, range_mm, .. } => {
            words::class_odd_range(labels::point_in(point), &at(range_mm))
        }
        Odd::LongerThanRocket { separation_mm, length_mm } => {
            words::class_odd_longer(&at(separation_mm), &mm(state, length_mm))
        }
        Odd::AllEqual { .. } => words::class_odd_equal().into(),
        Odd::SameSlip { mass_mm, pressure_mm } => {
            words::class_odd_slip(&mm(state, mass_mm), &mm(state, pressure_mm))
        }
        Odd::OtherOutcome { separation_mm, nose_first: true } => {
            words::class_odd_nose(&at(separation_mm))
        }
        Odd::OtherOutcome { separation_mm, nose_first: false } => {
            words::class_odd_not_nose(&at(separation_mm))
        }
    }
}
