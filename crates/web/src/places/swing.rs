//! Swing: the test card by card, what was seen, and what the rocket should do on its string.

mod message;
mod model;
mod update;

pub(crate) use message::SwingMsg;
pub(crate) use model::{
    CARDS, SPACE_CARD, SetupField, SwingResult, SwingState, arrive, slice,
};
pub(crate) use update::update;

use std::f64::consts::PI;

use maud::{Markup, PreEscaped, html};
use noseward_drawing::{
    Group, Picture, Scene, SwingCurve, Written, listed, picture, start_strip,
    svg_document, svg_group, swing_circle, swing_cursor, swing_graph, swing_rocket,
    swing_turning,
};
use noseward_lesson::{COUNTED, MOST_TAKEN_BACK, SwingOutcome, Swings, Trial};
use noseward_stability::{
    About, Outcome, Settles, Settling, Shares, Space, SwingField, When, fixed,
};
use noseward_words::{self as words, ComesTo, Motion, Number, Spin, StringEnding, Text};

use super::form::{graph_px, more, setup_value};
use super::labels;
use crate::app::{Place, State};
use crate::shell::marked::{marked, said};
use crate::shell::strip::drawn;
use crate::shell::{Region, link_to, pressed, region};

/// Width and height of the rocket seen along the string, in pixels.
const ALONG_PX: f64 = 220.0;
/// Stills that stand for the motion.
const STILLS: usize = 6;
const STILL_PX: f64 = 134.0;

/// The place: the card of the test that is due, what was seen, the room that it needs, and
/// what the rocket should do.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    vec![
        region(
            "swing-caution",
            html! { p class="governing" { (said(words::swing_caution())) } },
        ),
        region("swing-cards", cards(state)),
        region("swing-record", record(state)),
        region(
            "swing-room",
            more(
                "swing-part-room",
                &html! { (words::swing_room()) },
                &html! {
                    div class="swing__fields" {
                        (field(state, SetupField::Setup(SwingField::String), words::swing_string(), "m"))
                        (field(state, SetupField::Setup(SwingField::Turns), words::swing_turns(), "/s"))
                        (field(state, SetupField::Setup(SwingField::Arm), words::swing_arm(), "m"))
                    }
                    (space(state))
                },
            ),
        ),
        region(
            "swing-model",
            more(
                "swing-part-model",
                &html! { (words::swing_model()) },
                &html! {
                    @if state.tells_outcome() { (model(state)) }
                    @else { p { (words::swing_hidden()) } }
                },
            ),
        ),
    ]
}

/// A field of the swing test, with what is wrong in it.
fn field(state: &State, of: SetupField, label: Text, unit: &str) -> Markup {
    let (id, fault) = (of.id(), state.setup_fault(of));
    let fault_id = format!("swing-fault-{}", of.name());
    html! {
        div class="field" {
            label class="field__label" for=(id) { (label) }
            span class="field__box" {
                input class="field__input" id=(id) data-swing=(of.name()) inputmode="decimal"
                    autocomplete="off" value=(state.setup_text(of))
                    aria-describedby=(fault_id) aria-invalid=[fault.is_some().then_some("true")];
                span class="field__unit" { (unit) }
            }
            div class="field__fault" id=(fault_id) {
                @if let Some(fault) = fault { span class="field__words" { (fault) } }
            }
        }
    }
}

/// What was worked out: in words, as a strip of all starts, as motion and as a graph.
fn model(state: &State) -> Markup {
    html! {
        div class="swing__fields" {
            (field(state, SetupField::Start, words::swing_start(), "°"))
            (field(state, SetupField::Setup(SwingField::AirDensity), words::swing_density(), "kg/m³"))
        }
        label for="swing-slider" { (words::swing_slider()) }
        input class="swing__slider" id="swing-slider" type="range" min="0" max="180" step="5"
            value=(fixed(state.swing.start_deg, 0));
        div id="swing-strip" { (strip(state)) }
        div id="swing-words" aria-live="polite" { (in_words(state)) }
        (pictures(state))
        (stills(state))
        @if let Some(known) = &state.swing.known {
            div id="swing-graph" { (PreEscaped(svg_document(&graph(state, known), Some("swing-words")))) }
        }
        div id="swing-before" { (before(state)) }
    }
}

/// The pictures at the present time: the circle from above, and the rocket along the string.
fn pictures(state: &State) -> Markup {
    let (Some(known), Some((design, figures))) = (&state.swing.known, drawn(state))
    else {
        return html! {};
    };
    let now = Now::of(state, known);
    let setup = known.swing.setup();
    let circle =
        swing_circle(&now.space, setup, now.place_rad, now.angle_rad, now.circle_px);
    let along = swing_rocket(design, figures, now.angle_rad, ALONG_PX);
    html! {
        div class="swing__pictures" {
            div id="swing-circle" { (PreEscaped(svg_document(&circle, None))) }
            div id="swing-along" {
                @if let Some(along) = along { (PreEscaped(svg_document(&along, None))) }
            }
        }
        p class="swing__time" id="swing-time" { (time(state)) }
        div class="swing__player" { (player(state)) }
    }
}

/// What moves in the pictures: the id of each, the group, and its content.
pub(crate) fn moving(state: &State) -> Vec<(&'static str, &'static str, String)> {
    if !state.tells_outcome() {
        return Vec::new();
    }
    let (Some(known), Some((design, figures))) = (&state.swing.known, drawn(state))
    else {
        return Vec::new();
    };
    let now = Now::of(state, known);
    let setup = known.swing.setup();
    let turning =
        swing_turning(&now.space, setup, now.place_rad, now.angle_rad, now.circle_px);
    let cursor = swing_cursor(
        Some(state.swing.motion.time_s),
        state.swing.end_s(),
        wide_px(state),
    );
    let mut moving = vec![
        ("swing-circle", now.circle_px, turning),
        ("swing-graph", wide_px(state), cursor),
    ];
    let along = swing_rocket(design, figures, now.angle_rad, ALONG_PX);
    let along = along.into_iter().flat_map(|scene| scene.groups);
    moving.extend(along.map(|group| ("swing-along", ALONG_PX, group)));
    moving
        .into_iter()
        .map(|(id, wide_px, group): (_, _, Group)| {
            (id, group.key, svg_group(&group, wide_px))
        })
        .collect()
}

/// Where rocket and string are at the present time.
struct Now {
    space: Space,
    circle_px: f64,
    place_rad: f64,
    angle_rad: f64,
}

impl Now {
    fn of(state: &State, known: &SwingResult) -> Self {
        let time_s = state.swing.motion.time_s;
        Self {
            space: known.space,
            circle_px: (graph_px(state) * 0.55).clamp(260.0, 420.0),
            place_rad: time_s * known.swing.setup().spin_rad_per_s(),
            angle_rad: angle_at(known, time_s),
        }
    }
}

fn wide_px(state: &State) -> f64 {
    graph_px(state).max(280.0)
}

/// The angle between nose and path at a time, in radians.
fn angle_at(known: &SwingResult, time_s: f64) -> f64 {
    let samples = &known.trajectory.samples;
    let next = samples.partition_point(|sample| sample.time_s < time_s);
    samples.get(next).or(samples.last()).map_or(0.0, |sample| sample.angle_rad)
}

fn graph(state: &State, known: &SwingResult) -> Scene {
    let mut curves = vec![SwingCurve {
        samples: &known.trajectory.samples,
        dashed: false,
        label: words::swing_this_rocket().as_str(),
    }];
    if let Some(before) = &known.before {
        curves.push(SwingCurve {
            samples: &before.samples,
            dashed: true,
            label: words::swing_before_change().as_str(),
        });
    }
    let cursor_s = Some(state.swing.motion.time_s);
    swing_graph(&curves, known.settling.rest_rad, cursor_s, wide_px(state))
}

fn strip(state: &State) -> Markup {
    html! {
        @if let Some(known) = &state.swing.known {
            @if known.starts.is_done() {
                @let start_rad = state.swing.start_deg.to_radians();
                @let ranges = known.starts.ranges();
                (PreEscaped(svg_document(
                    &start_strip(&ranges, start_rad, wide_px(state)), None)))
            } @else {
                p { (words::swing_trying()) }
            }
        }
    }
}

/// What it comes to, in words: the result is never told by motion or picture alone.
fn in_words(state: &State) -> Markup {
    let Some(known) = &state.swing.known else {
        return html! {
            p {
                @if state.report.figures.is_none() {
                    (words::swing_nothing_yet())
                } @else if SetupField::ALL.iter().any(|f| state.setup_fault(*f).is_some()) {
                    (words::swing_number_first())
                } @else if state.swing_limit().is_some() {
                    strong { (words::swing_limit()) }
                } @else {
                    (words::swing_wait())
                }
            }
        };
    };
    html! {
        @if let Some(open) = too_close(known) { p { strong { (open) } } }
        p { strong { (settles(&known.settling, known.swing.watched_s())) } }
        (share_words(known.swing.outcome(), &known.shares))
        @if known.starts.is_done() {
            @for range in known.starts.ranges().iter().filter(|r| r.is_tail_first_trap()) {
                p {
                    (said(words::swing_trap(
                        degrees(range.from_rad),
                        degrees(range.to_rad),
                    )))
                }
            }
        }
    }
}

fn degrees(rad: f64) -> Number {
    Number::fixed(rad.to_degrees(), 0)
}

/// Where what is not known exactly decides what the string shows.
fn too_close(known: &SwingResult) -> Option<String> {
    const ENDINGS: [StringEnding; 4] = [
        StringEnding::FromAnyStart,
        StringEnding::OnceItIs,
        StringEnding::Across,
        StringEnding::TailFirst,
    ];
    let verdict = known.draws.verdict().filter(|verdict| verdict.is_too_close())?;
    let tries =
        ENDINGS.into_iter().zip(verdict.shares).filter(|(_, share)| *share >= 0.025).map(
            |(ending, share)| words::swing_tries(Number::fixed(share * 20.0, 0), ending),
        );
    Some(words::swing_too_close(&listed(tries)))
}

fn settles(settling: &Settling, watched_s: f64) -> String {
    let about = |about: About| Number::trimmed(about.value(), 1);
    let (motion, angle_rad) = match settling.comes_to {
        Settles::NoseFirst if settling.when.is_some_and(When::is_from_the_start) => {
            (Motion::AtOnce, 0.0)
        }
        Settles::NoseFirst => (Motion::NoseFirst, 0.0),
        Settles::TailFirst => (Motion::TailFirst, 0.0),
        Settles::Across { angle_rad } => (Motion::Across, angle_rad),
        Settles::StillSwinging { about_rad: Some(rad) } => (Motion::StillSwinging, rad),
        Settles::StillSwinging { about_rad: None } => (Motion::TurningOver, 0.0),
    };
    // What still swings has no such time: it does so as long as it is watched.
    let told = words::swing_settles(
        degrees(settling.start_rad),
        motion,
        degrees(angle_rad),
        about(settling.when.map_or(About::of(watched_s), When::seconds)),
        about(settling.when.map_or(About::of(0.0), When::turns)),
    );
    if settling.when.is_none() {
        return told;
    }
    match settling.remaining_rad.filter(|rad| rad.to_degrees() >= 0.5) {
        Some(rad) => format!("{told} {}", words::swing_remains(degrees(rad))),
        None => told,
    }
}

/// What turns it back: where it is the spin, the swing proves little.
fn share_words(on_string: Outcome, shares: &Shares) -> Markup {
    let holds = on_string.holds_nose_first();
    let share = shares.spin_share_at_small_angles;
    let spin = if shares.spin_alone_holds {
        Spin::HoldsAlone
    } else if shares.string_flatters {
        Spin::Flatters
    } else if shares.air_stiffness_n_m < 0.0 && !holds {
        Spin::TooWeak
    } else if share.is_none() {
        return html! {};
    } else if shares.spin_does_most {
        Spin::DoesMost
    } else if holds {
        Spin::DoesPart
    } else {
        return html! {};
    };
    let part = Number::fixed(share.unwrap_or_default() * 100.0, 0);
    html! { p { (said(words::swing_spin(spin, part))) } }
}

/// Centimetres hide behind one decimal: whole and half metres have at most that.
fn half_metres(m: f64) -> Number {
    Number::trimmed(m, 1)
}

/// The room it takes.
fn space(state: &State) -> Markup {
    let asks = html! {
        p class="card__caution" {
            strong {
                @if state.swing_limit().is_some() { (words::swing_limit()) }
                @else { (words::swing_ask()) }
            }
        }
    };
    let Some(known) = &state.swing.known else { return asks };
    let space = known.space;
    let Space { speed_m_per_s, pull_n, .. } = space;
    let clear_across = half_metres(space.clear_across_m());
    html! {
        (asks)
        p { (said(words::swing_clear(half_metres(space.clear_m), clear_across))) }
        p class="swing__small" { (words::swing_holds_for(half_metres(space.about_m))) }
        dl class="swing__figures" {
            div {
                dt { (words::swing_sweep()) }
                dd { (words::swing_sweep_value(Number::fixed(space.swept_told_m(), 1))) }
            }
            div {
                dt { (words::swing_how_fast()) }
                dd { (Number::fixed(speed_m_per_s, 0).to_string()) " m/s" }
            }
            div {
                dt { (words::swing_pull()) }
                dd {
                    (words::swing_pull_value(
                        Number::fixed(pull_n, 1),
                        &hung_weight(space.hung_kg()),
                    ))
                }
            }
        }
        @if !known.smaller.is_empty() {
            table class="table" {
                caption { (words::swing_less_room()) }
                thead { tr {
                    th scope="col" { (words::swing_string()) }
                    th scope="col" { (words::swing_turns_column()) }
                    th scope="col" { (words::swing_nobody_within()) }
                } }
                tbody {
                    @for row in &known.smaller {
                        tr {
                            td { (setup_value(SwingField::String, row.setup.string_m, state.units)) }
                            td { (setup_value(SwingField::Turns, row.setup.turns_per_s, state.units)) }
                            td { (half_metres(row.clear_m).to_string()) " m" }
                        }
                    }
                }
            }
        }
    }
}

/// A mass that hangs: grams, from a kilogram on kilograms.
fn hung_weight(kg: f64) -> String {
    if kg < 1.0 {
        format!("{} g", Number::fixed(kg * 1000.0, 0))
    } else {
        format!("{} kg", Number::fixed(kg, 1))
    }
}

/// Play, pause, step and speed; none that moves where the reader asks for stillness.
fn player(state: &State) -> Markup {
    let motion = &state.swing.motion;
    html! {
        @if state.swing.known.is_some() {
            @if !state.swing.still {
                @let (action, label) = if motion.playing {
                    ("swing-pause", words::swing_pause())
                } else {
                    ("swing-play", words::swing_play())
                };
                button type="button" class="button" id="swing-play" data-action=(action) {
                    (label)
                }
                " "
            }
            button type="button" class="button" id="swing-step" data-action="swing-step" {
                (words::swing_step())
            } " "
            button type="button" class="button" id="swing-rewind" data-action="swing-rewind" {
                (words::swing_rewind())
            }
            @if !state.swing.still {
                span class="switch" role="group" aria-label=(words::swing_speed()) {
                    @for (percent, label) in [
                        (25, words::swing_quarter().as_str()),
                        (50, "½"),
                        (100, words::swing_full().as_str()),
                    ] {
                        @let chosen = (motion.speed * 100.0 - f64::from(percent)).abs() < 1.0;
                        button type="button" id=(format!("swing-speed:{percent}"))
                            data-action="swing-speed" data-target=(percent)
                            aria-pressed=(pressed(chosen)) { (label) }
                    }
                }
            }
        }
    }
}

/// The time and the angle of the moving pictures.
pub(crate) fn time(state: &State) -> String {
    let Some(known) = &state.swing.known else { return String::new() };
    let time_s = state.swing.motion.time_s;
    let off = off_path(angle_at(known, time_s));
    words::swing_time(Number::fixed(time_s, 2), degrees(off))
}

/// How far the nose is off its path, in radians: whole turns and the side do not matter to
/// the words.
fn off_path(angle_rad: f64) -> f64 {
    let turned = angle_rad.abs() % (2.0 * PI);
    if turned > PI { 2.0 * PI - turned } else { turned }
}

/// Stills for whoever asks for stillness, each with its words.
fn stills(state: &State) -> Markup {
    let (Some(known), Some((design, figures))) = (&state.swing.known, drawn(state))
    else {
        return html! {};
    };
    if !state.swing.still {
        return html! {};
    }
    let end_s = known.trajectory.samples.last().map_or(0.0, |last| last.time_s);
    let shown_s =
        known.settling.when.map_or(end_s, |when| (1.3 * when.on_axis_s()).min(end_s));
    html! {
        ol class="stills" {
            @for k in 0..STILLS {
                @let time_s = shown_s * count(k) / count(STILLS - 1);
                @let angle_rad = angle_at(known, time_s);
                @if let Some(scene) = swing_rocket(design, figures, angle_rad, STILL_PX) {
                    li {
                        (PreEscaped(svg_document(&scene, None)))
                        (words::swing_still(
                            &Number::fixed(time_s, 1).to_string(),
                            &degrees(off_path(angle_rad)).to_string(),
                        ))
                    }
                }
            }
        }
    }
}

fn count(n: usize) -> f64 {
    // A handful.
    f64::from(u32::try_from(n).unwrap_or(u32::MAX))
}

/// What was seen of a rocket.
fn seen(swings: &Swings) -> String {
    let counted: Vec<_> = swings.counted().collect();
    let said = match counted.len() {
        0 => words::swing_none_seen(COUNTED.into()),
        count => {
            words::swing_seen(count.into(), COUNTED.into(), &labels::outcomes(&counted))
        }
    };
    match swings.outcomes().len() - counted.len() {
        0 => said,
        slipped => format!("{said} {}", words::swing_slipped(slipped.into())),
    }
}

/// The rocket it is compared with.
fn before(state: &State) -> Markup {
    html! {
        @if let Some(previous) = &state.swing.previous {
            @let name = &previous.design.name;
            @let apart = state.units.reading(previous.figures.separation_m * 1000.0);
            @let dashed = if name.is_empty() {
                words::swing_dashed_nameless(&apart)
            } else {
                words::swing_dashed(name, &apart)
            };
            p { (said(dashed)) " " (seen(&previous.swings)) }
        }
        button type="button" class="button button--small" id="swing-compare"
            data-action="swing-compare" { (words::swing_compare()) }
        " "
        button type="button" class="button button--small" id="print-swing"
            data-action="print-swing" { (words::swing_print()) }
    }
}

/// A card in words: its title, and what is done.
fn card(state: &State, card: usize) -> (Text, Markup) {
    let space = state.swing.known.as_ref().map(|known| known.space);
    match card {
        0 => (
            words::swing_hang_title(),
            html! { p { (words::swing_hang()) } p { (words::swing_hang_measure()) } },
        ),
        1 => (words::swing_tape_title(), html! { p { (words::swing_tape()) } }),
        2 => (words::swing_eyes_title(), html! { p { (words::swing_eyes()) } }),
        3 => (
            words::swing_tug_title(),
            html! {
                p {
                    @if let Some(space) = space {
                        (words::swing_tug_pull(Number::fixed(space.pull_n, 1)))
                    } @else { (words::swing_tug()) }
                }
            },
        ),
        SPACE_CARD => (
            words::swing_space_title(),
            html! {
                p {
                    (words::swing_space())
                    @if let Some(space) = space {
                        @let across = half_metres(space.clear_across_m());
                        " " (said(words::swing_space_line(half_metres(space.clear_m), across)))
                    }
                }
            },
        ),
        5 => (
            words::swing_one_title(),
            html! { p { (said(words::swing_one())) } p { (words::swing_one_count()) } },
        ),
        _ => (words::swing_slow_title(), html! { p { (words::swing_slow()) } }),
    }
}

/// What can be done on a card on the screen.
fn controls(state: &State, card: usize) -> Markup {
    let checked = state.is_space_checked();
    let action = if checked { "space-open" } else { "space-checked" };
    html! {
        @if card == 0 {
            (link_to(Place::Measure, "type-hanging", &html! { (words::swing_type_measured()) }))
        } @else if card == SPACE_CARD {
            p id="space-who" { (words::swing_space_who()) }
            button type="button" class="button" id="space-checked" data-action=(action)
                aria-pressed=(pressed(checked)) { (words::swing_space_checked()) }
        }
    }
}

fn number(n: usize) -> String {
    Number::from(n).to_string()
}

/// The cards one at a time, and all of them for paper.
fn cards(state: &State) -> Markup {
    // Where the check of the space has fallen, so has what comes after it.
    let held = !state.is_space_checked() && !state.swings.is_done();
    let now = if held { state.swing.card.min(SPACE_CARD) } else { state.swing.card };
    let (title, inside) = card(state, now);
    html! {
        div class="card card--test" id="swing-card" tabindex="-1" {
            @if state.swing_limit().is_some() {
                p class="card__caution" { strong { (words::swing_limit()) } }
            }
            h3 {
                (title)
                span class="swing__small" {
                    " " (words::swing_card_of(&number(now + 1), &number(CARDS)))
                }
            }
            @if now == 0 {
                span aria-hidden="true" {
                    (PreEscaped(svg_document(&picture(Picture::HangingPoint), None)))
                }
            }
            (inside)
            (controls(state, now))
            div class="card__steps" {
                @if now > 0 {
                    button type="button" class="button" id="swing-card:back"
                        data-action="swing-card" data-target=(now - 1) { (words::swing_back()) } " "
                }
                @if now + 1 < CARDS {
                    @let waits = now == SPACE_CARD && !state.is_space_checked();
                    button type="button" class="button button--main" id="swing-card:next"
                        data-action="swing-card" data-target=(now + 1)
                        aria-disabled=[waits.then_some("true")]
                        aria-describedby=[waits.then_some("space-who")] { (words::swing_next()) }
                }
            }
        }
    }
}

/// The test on paper: every card, the room, and a table to write into.
pub(crate) fn paper(state: &State) -> Markup {
    html! {
        h2 { (words::swing_test()) }
        div { (rocket_line(state)) }
        (space(state))
        ol {
            @for (title, inside) in (0..CARDS).map(|i| card(state, i)) {
                li { strong { (words::swing_paper_title(&title)) } " " (inside) }
            }
        }
        div {
            p { (words::swing_initials()) }
            p { (words::swing_no_permission()) }
            table class="table paper__table" {
                caption { (words::swing_what()) " " (outcomes()) }
                thead { tr {
                    @for swing in 1..=3_u8 {
                        th scope="col" { (words::swing_number(swing.into())) }
                    }
                } }
                @let mut seen = state.swings.counted();
                tbody { tr {
                    @for _ in 0..3 { td { @if let Some(one) = seen.next() { (labels::outcome(one)) } } }
                } }
            }
        }
    }
}

/// Which rocket a sheet is about.
fn rocket_line(state: &State) -> Markup {
    let setup = &state.swings.setup;
    html! {
        @if let Some((design, figures)) = drawn(state) {
            @let name = match design.name.as_str() {
                "" => words::swing_sheet_nameless().as_str(),
                name => name,
            };
            p {
                (said(words::swing_sheet(
                    name,
                    &state.units.reading(figures.length_m * 1000.0),
                    Number::fixed(figures.mass.mass_kg * 1000.0, 0),
                    &state.units.reading(figures.separation_m * 1000.0),
                    &setup_value(SwingField::String, setup.string_m, state.units),
                    &setup_value(SwingField::Turns, setup.turns_per_s, state.units),
                )))
            }
        }
    }
}

/// The words to choose from, for paper.
fn outcomes() -> String {
    SwingOutcome::ALL.map(|one| labels::outcome(one).as_str()).join(" / ")
}

/// What was seen.
fn record(state: &State) -> Markup {
    let swings = &state.swings;
    let counted = swings.counted().count();
    let waits = !state.is_predicted();
    let trial = state.trial_in_hand().filter(|_| !waits);
    let taken_back = trial.map_or(&[][..], Trial::taken_back);
    let may_take_back = trial.is_some_and(Trial::may_take_back);
    html! {
        section class="card card--place swing__record" id="swing-record-card" tabindex="-1" aria-labelledby="swing-record-title" {
        h3 id="swing-record-title" { (words::swing_what()) }
        // Above the buttons: what stands below them is out of sight on a low screen.
        p role="status" id="swings-said" {
            @if counted >= COUNTED {
                (words::swing_all_recorded()) " " (expected(state))
            } @else if swings.is_full() {
                (words::swing_list_full())
            } @else {
                (words::swing_recorded(counted.into(), COUNTED.into()))
            }
        }
        @if waits {
            p id="swing-waits" {
                (words::swing_predict_first()) " "
                (link_to(
                    Place::Predict,
                    "swing-to-predict",
                    &html! { (words::swing_predict()) },
                ))
            }
        }
        p class="card__caution" { (words::swing_record_caution()) }
        @if state.swing_limit().is_some() {
            p class="card__caution" id="swing-why-not" { strong { (words::swing_limit()) } }
        } @else if !state.is_space_checked() && !state.swings.is_done() {
            p id="swing-why-not" {
                (marked(&words::swing_check_first(), &|_, run| html! {
                    button type="button" class="button button--small" id="to-space"
                        data-action="swing-card" data-target=(SPACE_CARD) { (run) }
                }))
            }
        }
        @let why_not = if waits { Some("swing-waits") }
            else { (!state.is_space_checked() && !swings.is_done()).then_some("swing-why-not") };
        div class="outcomes" {
            @for (i, outcome) in SwingOutcome::ALL.into_iter().enumerate() {
                button type="button" class="button" id=(format!("swung:{i}"))
                    data-action="swung" data-target=(i)
                    aria-disabled=(if state.may_swing() { "false" } else { "true" })
                    aria-describedby=[why_not] {
                    (labels::outcome(outcome))
                }
            }
        }
        @if state.may_swing() {
            p class="nb__hint" { (words::swing_quick_presses()) }
        }
        @if !swings.outcomes().is_empty() {
            ol class="list list--numbers" id="swings-seen" {
                @for outcome in swings.outcomes() {
                    li {
                        @let label = labels::outcome(*outcome);
                        @if outcome.counts() { (label) } @else { (words::swing_not_counted(&label)) }
                    }
                }
            }
        }
        @if !taken_back.is_empty() {
            p class="nb__hint" id="swings-taken-back" {
                (words::swing_taken_back(&labels::outcomes(taken_back)))
                @if taken_back.len() == MOST_TAKEN_BACK { " " (words::swing_none_more()) }
            }
        }
        @if !swings.outcomes().is_empty() {
            div class="share__buttons" {
                @if may_take_back {
                    button type="button" class="button button--small" id="swung-wrong"
                        data-action="swung-wrong" { (words::swing_was_slip()) }
                }
                button type="button" class="button button--small" id="nb-once-more"
                    data-action="nb-once-more" data-target="" { (words::swing_once_more()) }
            }
        }
        }
    }
}

/// What the page had worked out, beside what was seen: what was seen leads.
fn expected(state: &State) -> String {
    let Some(known) = &state.swing.known else { return String::new() };
    if too_close(known).is_some() {
        return words::swing_open().into();
    }
    let (what, fits): (_, &[SwingOutcome]) = match known.settling.comes_to {
        Settles::NoseFirst => {
            (ComesTo::NoseFirst, &[SwingOutcome::Steady, SwingOutcome::Wobbling])
        }
        Settles::TailFirst => (ComesTo::TailFirst, &[SwingOutcome::TailFirst]),
        Settles::Across { .. } => (ComesTo::Across, &[SwingOutcome::Sideways]),
        Settles::StillSwinging { .. } => {
            (ComesTo::StillSwinging, &[SwingOutcome::Wobbling, SwingOutcome::Sideways])
        }
    };
    let seen: Vec<SwingOutcome> = state
        .swings
        .counted()
        .filter(|outcome| *outcome != SwingOutcome::NotSure)
        .collect();
    let as_seen = seen.iter().filter(|outcome| fits.contains(outcome)).count();
    if 2 * as_seen < seen.len() {
        words::swing_differs(&labels::outcomes(&seen), what)
    } else {
        words::swing_expected(what)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use SwingOutcome::{NotSure, Slipped, Steady, TailFirst, Wobbling};

    #[test]
    fn what_was_seen_of_a_rocket_is_told_in_one_line() {
        for (outcomes, words) in [
            (&[][..], "0 of 3"),
            (&[Slipped, Slipped], "0 of 3 (2 slipped, not counted)"),
            (&[Wobbling], "1 of 3: nose first after wobbling"),
            (
                &[Steady, Slipped, TailFirst],
                "2 of 3: nose first, steady; tail first (1 slipped, not counted)",
            ),
            (
                &[Steady, Steady, NotSure],
                "3 of 3: nose first, steady; nose first, steady; not sure",
            ),
        ] {
            let mut swings = Swings::default();
            assert!(outcomes.iter().all(|outcome| swings.add(*outcome)));
            assert_eq!(seen(&swings), words);
        }
    }
}
