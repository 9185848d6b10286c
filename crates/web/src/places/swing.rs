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
    Group, Picture, Scene, SwingCurve, picture, start_strip, svg_document, svg_group,
    swing_circle, swing_cursor, swing_graph, swing_rocket, swing_turning,
};
use noseward_lesson::{COUNTED, MOST_TAKEN_BACK, SwingOutcome, Trial};
use noseward_stability::{
    About, Outcome, Settles, Settling, Shares, Space, SwingField, When, fixed, trimmed,
};

use super::form::{graph_px, more};
use crate::app::{Place, State};
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
            html! {
                p class="governing" {
                    strong { "Ask the adult before you swing." }
                    " Hall or outside. Empty: no water, no air pumped in. Eye protection on, then \
                     tug the string hard. One person swings; everyone else outside the marked \
                     line. Anybody shouts Stop: it stops. Local rules, your school’s own risk \
                     assessment and a qualified person decide. This page does not."
                }
            },
        ),
        region("swing-cards", cards(state)),
        region("swing-record", record(state)),
        region(
            "swing-room",
            more(
                "swing-part-room",
                &html! { "String, turns, and the room they need" },
                &html! {
                    div class="swing__fields" {
                        (field(state, SetupField::Setup(SwingField::String), "String", "m"))
                        (field(state, SetupField::Setup(SwingField::Turns), "Turns a second", "/s"))
                        (field(state, SetupField::Setup(SwingField::Arm), "Arm, shoulder to hand", "m"))
                    }
                    (space(state))
                },
            ),
        ),
        region(
            "swing-model",
            more(
                "swing-part-model",
                &html! { "What it should do on its string, worked out" },
                &html! {
                    @if state.tells_outcome() { (model(state)) }
                    @else { p { "Hidden until you have predicted." } }
                },
            ),
        ),
    ]
}

/// A field of the swing test, with what is wrong in it.
fn field(state: &State, of: SetupField, label: &str, unit: &str) -> Markup {
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
            (field(state, SetupField::Start, "Nose starts at", "°"))
            (field(state, SetupField::Setup(SwingField::AirDensity), "One cubic metre of air weighs", "kg/m³"))
        }
        label for="swing-slider" { "Where the nose starts: 0° ahead, 180° behind" }
        input class="swing__slider" id="swing-slider" type="range" min="0" max="180" step="5"
            value=(fixed(state.swing.start_deg, 0));
        div id="swing-strip" { (strip(state)) }
        div id="swing-words" aria-live="polite" { (words(state)) }
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
    let mut moving = vec![("swing-circle", turning), ("swing-graph", cursor)];
    let along = swing_rocket(design, figures, now.angle_rad, ALONG_PX);
    moving.extend(along.into_iter().flat_map(|s| s.groups).map(|g| ("swing-along", g)));
    moving
        .into_iter()
        .map(|(id, group): (_, Group)| (id, group.key, svg_group(&group)))
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
        label: "this rocket",
    }];
    if let Some(before) = &known.before {
        curves.push(SwingCurve {
            samples: &before.samples,
            dashed: true,
            label: "before the change",
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
                p { "Every start is being tried…" }
            }
        }
    }
}

/// What it comes to, in words: the result is never told by motion or picture alone.
fn words(state: &State) -> Markup {
    let Some(known) = &state.swing.known else {
        return html! {
            p {
                @if state.report.figures.is_none() {
                    "Nothing to swing yet. First put right what is listed under the drawing."
                } @else if SetupField::ALL.iter().any(|f| state.setup_fault(*f).is_some()) {
                    "Nothing to swing yet. First put the number above right."
                } @else if let Some(limit) = state.swing_limit() {
                    strong { (limit.sentence()) }
                } @else {
                    "Being worked out…"
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
                p { strong { "A tail-first trap. " } "Started between "
                    (degrees(range.from_rad)) " and " (degrees(range.to_rad))
                    ", it flies with its tail ahead." }
            }
        }
    }
}

fn degrees(rad: f64) -> String {
    format!("{}°", fixed(rad.to_degrees(), 0))
}

/// Where what is not known exactly decides what the string shows.
fn too_close(known: &SwingResult) -> Option<String> {
    const NAMES: [&str; 4] = [
        "turns nose-first from any start",
        "stays nose-first once it is",
        "settles across its path",
        "turns tail-first",
    ];
    let verdict = known.draws.verdict().filter(|verdict| verdict.is_too_close())?;
    let told: Vec<String> = NAMES
        .iter()
        .zip(verdict.shares)
        .filter(|(_, share)| *share >= 0.025)
        .map(|(name, share)| format!("in about {} it {name}", fixed(share * 20.0, 0)))
        .collect();
    Some(format!(
        "Too close to call on the string. Of 20 tries with your readings, {}.",
        told.join(", ")
    ))
}

fn settles(settling: &Settling, watched_s: f64) -> String {
    let start = degrees(settling.start_rad);
    let when = settling.when.map_or(String::new(), |when| {
        let (seconds, turns) = (when.seconds(), when.turns());
        let word = if turns.is_one() { "turn" } else { "turns" };
        format!("in about {seconds} s ({turns} {word})")
    });
    let remains = settling.remaining_rad.filter(|rad| rad.to_degrees() >= 0.5);
    let remains = remains.map_or(String::new(), |rad| {
        format!(" It still swings by {} at the end.", degrees(rad))
    });
    match settling.comes_to {
        Settles::NoseFirst if settling.when.is_some_and(When::is_from_the_start) => {
            format!("Started at {start}, it is nose-first at once.{remains}")
        }
        Settles::NoseFirst => {
            format!("Started at {start}, it comes round nose-first {when}.{remains}")
        }
        Settles::TailFirst => {
            format!("Started at {start}, it settles tail first {when}.{remains}")
        }
        Settles::Across { angle_rad } => format!(
            "Started at {start}, it settles across its path, turned by {}, {when}.{remains}",
            degrees(angle_rad)
        ),
        Settles::StillSwinging { about_rad: Some(about_rad) } => format!(
            "Started at {start}, after about {} s it is still swinging round {}.",
            About::of(watched_s),
            degrees(about_rad)
        ),
        Settles::StillSwinging { about_rad: None } => format!(
            "Started at {start}, after about {} s it is still turning over.",
            About::of(watched_s)
        ),
    }
}

/// What turns it back: where it is the spin, the swing proves little.
fn share_words(on_string: Outcome, shares: &Shares) -> Markup {
    let share = shares.spin_share_at_small_angles;
    let part = share.map(|share| format!("{} %", fixed(share * 100.0, 0)));
    html! {
        @if shares.spin_alone_holds {
            p { strong { "This swing proves little. " }
                "The spin of the swing itself pulls this rocket along its path. The air "
                "alone would not hold it nose-first, and nothing swings it round in flight." }
        } @else if shares.string_flatters {
            p { strong { "On the string it does better than it would in flight. " }
                "The spin of the swing holds it better than the air alone would." }
        } @else if shares.air_stiffness_n_m < 0.0 && !on_string.holds_nose_first() {
            p { "Near nose-first the air turns this rocket away, and the spin of the swing "
                "is too weak to hold it." }
        } @else if shares.spin_does_most {
            p { strong { "This swing proves little. " }
                "When the nose is nearly in front, the string does " (part.unwrap_or_default())
                " of the turning and the air the rest. In flight nothing swings it round." }
        } @else if let (Some(part), true) = (part, on_string.holds_nose_first()) {
            p { "When the nose is nearly in front, the string does " (part)
                " of the turning and the air the rest." }
        }
    }
}

fn metres(m: f64) -> String {
    format!("{} m", fixed(m, 1))
}

/// Centimetres hide behind one decimal: whole and half metres have at most that.
fn half_metres(m: f64) -> String {
    format!("{} m", trimmed(m, 1))
}

/// The room it takes.
fn space(state: &State) -> Markup {
    let asks = html! {
        p class="card__caution" {
            strong {
                @if let Some(limit) = state.swing_limit() { (limit.sentence()) }
                @else { "Ask the adult before you swing." }
            }
        }
    };
    let Some(known) = &state.swing.known else { return asks };
    let space = known.space;
    let Space { speed_m_per_s, pull_n, .. } = space;
    html! {
        (asks)
        p {
            "Nobody stands within " strong { (half_metres(space.clear_m)) }
            " of the swinger. That is " (half_metres(space.clear_across_m()))
            " across. Too small? Then not here."
        }
        p class="swing__small" {
            "It holds for letting go up to 20° upwards from the shoulder, without drag. "
            "Steeper flies further. With this rocket’s own drag it is about "
            (half_metres(space.about_m)) ". Worked out, not a permission."
        }
        dl class="swing__figures" {
            div { dt { "String and rocket sweep" } dd { (metres(space.swept_told_m())) " from the swinger" } }
            div { dt { "Speed" } dd { (format!("{} m/s", fixed(speed_m_per_s, 0))) } }
            div { dt { "Pull in the string" } dd { (format!("{} N", fixed(pull_n, 1)))
                ", like " (hung_weight(space.hung_kg())) " hung on it" } }
        }
        @if !known.smaller.is_empty() {
            table class="table" {
                caption { "Less room: shorter string, slower turns" }
                thead { tr {
                    th scope="col" { "String" } th scope="col" { "Turns" }
                    th scope="col" { "Nobody within" }
                } }
                tbody {
                    @for row in &known.smaller {
                        tr {
                            td { (SwingField::String.written(row.setup.string_m, state.units)) }
                            td { (SwingField::Turns.written(row.setup.turns_per_s, state.units)) }
                            td { (half_metres(row.clear_m)) }
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
        format!("{} g", fixed(kg * 1000.0, 0))
    } else {
        format!("{} kg", fixed(kg, 1))
    }
}

/// Play, pause, step and speed; none that moves where the reader asks for stillness.
fn player(state: &State) -> Markup {
    let motion = &state.swing.motion;
    html! {
        @if state.swing.known.is_some() {
            @if !state.swing.still {
                @let (action, label) = if motion.playing {
                    ("swing-pause", "Pause")
                } else {
                    ("swing-play", "Play")
                };
                button type="button" class="button" id="swing-play" data-action=(action) {
                    (label)
                }
                " "
            }
            button type="button" class="button" id="swing-step" data-action="swing-step" {
                "Step"
            } " "
            button type="button" class="button" id="swing-rewind" data-action="swing-rewind" {
                "Back to the start"
            }
            @if !state.swing.still {
                span class="switch" role="group" aria-label="Speed" {
                    @for (percent, label) in [(25, "¼ speed"), (50, "½"), (100, "full")] {
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
    format!("{} s: nose {} off its path", fixed(time_s, 2), degrees(off))
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
                        (format!("{} s: {}", fixed(time_s, 1), degrees(off_path(angle_rad))))
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

/// The rocket it is compared with.
fn before(state: &State) -> Markup {
    html! {
        @if let Some(previous) = &state.swing.previous {
            @let name = &previous.design.name;
            p {
                "Dashed: " strong { @if name.is_empty() { "the rocket" } @else { (name) } }
                " before the change, "
                (state.units.reading(previous.figures.separation_m * 1000.0)) " apart. "
                (previous.swings.summary())
            }
        }
        button type="button" class="button button--small" id="swing-compare"
            data-action="swing-compare" { "Compare changes with the rocket as it is now" }
        " "
        button type="button" class="button button--small" id="print-swing"
            data-action="print-swing" { "Print the swing test" }
    }
}

/// A card in words: its title, and what is done.
fn card(state: &State, card: usize) -> (&'static str, Markup) {
    let space = state.swing.known.as_ref().map(|known| known.space);
    match card {
        0 => (
            "Find the hanging point",
            html! {
                p { "Loop the string round the empty rocket: no water, no air pumped in. Slide "
                    "it until the rocket hangs level: nose and tail the same height above the "
                    "table. Hang it low; keep feet and faces clear." }
                p { "Measure from the nose tip to the string, three times." }
            },
        ),
        1 => (
            "Tape it",
            html! { p { "Tape the string on both sides, so that it cannot slide. Never wind it "
            "round fingers." } },
        ),
        2 => (
            "Cover your eyes",
            html! { p { "Eye protection on: the swinger and everybody who watches." } },
        ),
        3 => (
            "Tug it",
            html! {
                p { "Tug the string hard, three times. Knot, string and tape must hold"
                    @if let Some(space) = space {
                        ": the swing will pull with about " (format!("{} N", fixed(space.pull_n, 1))) }
                    "." }
            },
        ),
        SPACE_CARD => (
            "Check the space, with the adult",
            html! {
                p { "A hall, or outside. Look up as well: lamps, wires, branches."
                    @if let Some(space) = space {
                        " Mark a line " strong { (half_metres(space.clear_m)) } " from the "
                        "swinger, all the way round: nobody stands inside it. That is "
                        (half_metres(space.clear_across_m())) " across. Too small? Then not "
                        "here. Steeper flies further." } }
            },
        ),
        5 => (
            "One person swings",
            html! {
                p { strong { "Ask the adult before you swing. " } "One person swings, level, over the head. Everyone else is outside the "
                    "marked line. Anybody shouts Stop: it stops." }
                p { "The same string and the same speed each time: count the turns in ten "
                    "seconds." }
            },
        ),
        _ => (
            "Let it slow",
            html! {
                p { "Watch the nose for five turns. Then arm up until it hangs still; nobody "
                    "walks in before. Don’t grab it. Say what you saw." }
            },
        ),
    }
}

/// What can be done on a card on the screen.
fn controls(state: &State, card: usize) -> Markup {
    let checked = state.is_space_checked();
    let action = if checked { "space-open" } else { "space-checked" };
    html! {
        @if card == 0 {
            (link_to(Place::Measure, "type-hanging", &html! { "Type what you measured" }))
        } @else if card == SPACE_CARD {
            p id="space-who" {
                "The adult in charge looks at the space and presses this, before every set of "
                "three swings."
            }
            button type="button" class="button" id="space-checked" data-action=(action)
                aria-pressed=(pressed(checked)) { "Space checked" }
        }
    }
}

/// The cards one at a time, and all of them for paper.
fn cards(state: &State) -> Markup {
    // Where the check of the space has fallen, so has what comes after it.
    let held = !state.is_space_checked() && !state.swings.is_done();
    let now = if held { state.swing.card.min(SPACE_CARD) } else { state.swing.card };
    let (title, inside) = card(state, now);
    html! {
        div class="card card--test" id="swing-card" tabindex="-1" {
            @if let Some(limit) = state.swing_limit() {
                p class="card__caution" { strong { (limit.sentence()) } }
            }
            h3 { (title) span class="swing__small" { " " (now + 1) " of " (CARDS) } }
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
                        data-action="swing-card" data-target=(now - 1) { "Back" } " "
                }
                @if now + 1 < CARDS {
                    @let waits = now == SPACE_CARD && !state.is_space_checked();
                    button type="button" class="button button--main" id="swing-card:next"
                        data-action="swing-card" data-target=(now + 1)
                        aria-disabled=[waits.then_some("true")]
                        aria-describedby=[waits.then_some("space-who")] { "Next" }
                }
            }
        }
    }
}

/// The test on paper: every card, the room, and a table to write into.
pub(crate) fn paper(state: &State) -> Markup {
    html! {
        h2 { "Swing test" }
        div { (rocket_line(state)) }
        (space(state))
        ol {
            @for other in (0..CARDS).map(|i| card(state, i)) {
                li { strong { (other.0) ". " } (other.1) }
            }
        }
        div {
            p { "Space checked, adult’s initials: __________ (before every three swings)" }
            p { "This is not permission to launch. Local rules, your school’s own risk "
                "assessment and a qualified person decide. This page does not." }
            table class="table paper__table" {
                caption { "What did it do? " (outcomes()) }
                thead { tr {
                    @for swing in ["Swing 1", "Swing 2", "Swing 3"] { th scope="col" { (swing) } }
                } }
                @let mut seen = state.swings.counted();
                tbody { tr {
                    @for _ in 0..3 { td { (seen.next().map_or("", SwingOutcome::label)) } }
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
            p {
                strong {
                    @if design.name.is_empty() { "Rocket: ______________" }
                    @else { (design.name) }
                }
                ", " (state.units.reading(figures.length_m * 1000.0)) " long, "
                (format!("{} g", fixed(figures.mass.mass_kg * 1000.0, 0))) ", "
                (state.units.reading(figures.separation_m * 1000.0)) " apart. String "
                (SwingField::String.written(setup.string_m, state.units)) ", "
                (SwingField::Turns.written(setup.turns_per_s, state.units))
                ". Group: ______________"
            }
        }
    }
}

/// The words to choose from, for paper.
fn outcomes() -> String {
    SwingOutcome::ALL.map(SwingOutcome::label).join(" / ")
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
        h3 id="swing-record-title" { "What did it do?" }
        // Above the buttons: what stands below them is out of sight on a low screen.
        p role="status" id="swings-said" {
            @if counted >= COUNTED {
                "Three swings recorded. " (expected(state))
            } @else if swings.is_full() {
                "The list is full: take one back, or begin another trial."
            } @else {
                (counted) " of " (COUNTED) " swings recorded."
            }
        }
        @if waits {
            p id="swing-waits" {
                "First predict, and lock it: only then is a swing a test. "
                (link_to(Place::Predict, "swing-to-predict", &html! { "Predict" }))
            }
        }
        p class="card__caution" {
            "Eye protection on. Nobody inside the marked line. Anybody shouts Stop: it stops."
        }
        @if let Some(limit) = state.swing_limit() {
            p class="card__caution" id="swing-why-not" { strong { (limit.sentence()) } }
        } @else if !state.is_space_checked() && !state.swings.is_done() {
            p id="swing-why-not" {
                "First the space has to be checked: "
                button type="button" class="button button--small" id="to-space"
                    data-action="swing-card" data-target=(SPACE_CARD) { "to that card" }
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
                    (outcome.label())
                }
            }
        }
        @if state.may_swing() {
            p class="nb__hint" { "Two quick presses of the same one count once." }
        }
        @if !swings.outcomes().is_empty() {
            ol class="list list--numbers" id="swings-seen" {
                @for outcome in swings.outcomes() {
                    li { (outcome.label())
                        @if !outcome.counts() { " (not counted)" } }
                }
            }
        }
        @if !taken_back.is_empty() {
            p class="nb__hint" id="swings-taken-back" {
                "Taken back, and kept on record: "
                (SwingOutcome::list(taken_back)) "."
                @if taken_back.len() == MOST_TAKEN_BACK {
                    " No more can be taken back in this trial: begin another one instead."
                }
            }
        }
        @if !swings.outcomes().is_empty() {
            div class="share__buttons" {
                @if may_take_back {
                    button type="button" class="button button--small" id="swung-wrong"
                        data-action="swung-wrong" { "That was a slip: take the last one back" }
                }
                button type="button" class="button button--small" id="nb-once-more"
                    data-action="nb-once-more" data-target="" { "Another trial with the same rocket" }
            }
        }
        }
    }
}

/// What the page had worked out, beside what was seen: what was seen leads.
fn expected(state: &State) -> String {
    let Some(known) = &state.swing.known else { return String::new() };
    if too_close(known).is_some() {
        return "Worked out here: too close to call. What you saw counts.".into();
    }
    let (what, fits): (_, &[SwingOutcome]) = match known.settling.comes_to {
        Settles::NoseFirst => {
            ("nose first", &[SwingOutcome::Steady, SwingOutcome::Wobbling])
        }
        Settles::TailFirst => ("tail first", &[SwingOutcome::TailFirst]),
        Settles::Across { .. } => ("across its path", &[SwingOutcome::Sideways]),
        Settles::StillSwinging { .. } => {
            ("still swinging", &[SwingOutcome::Wobbling, SwingOutcome::Sideways])
        }
    };
    let seen: Vec<SwingOutcome> = state
        .swings
        .counted()
        .filter(|outcome| *outcome != SwingOutcome::NotSure)
        .collect();
    let as_seen = seen.iter().filter(|outcome| fits.contains(outcome)).count();
    if 2 * as_seen < seen.len() {
        let words: Vec<&str> = seen.iter().map(|outcome| outcome.label()).collect();
        format!(
            "You saw: {}. Worked out here: {what}. What you saw counts. What could be the \
             reason?",
            words.join("; ")
        )
    } else {
        format!("Worked out here: {what}.")
    }
}
