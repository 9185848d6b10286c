//! The steps: what a person types, as cards.
//!
//! The short form shows the measurements that matter most; all measurements add the rest,
//! and the buttons that change the structure.

use maud::{Markup, html};
use noseward_drawing::Picture;
use noseward_stability::{
    Axis, COMMON_WEIGHTS, Component, Design, Field, FinField, Mass, Planform,
    SectionField, SectionKind, UnitSystem, WeightField, capital, limits,
};

use super::field::{self, FieldLook};
use crate::app::{Addition, Choice, MassChoice, PlanformChoice, State};
use crate::shell::{Region, pressed, region};

/// All cards.
pub(crate) fn steps(state: &State) -> Vec<Region> {
    let design = &state.design;
    let pieces = pieces(design);
    // The bottle is in everybody's hand first; the nose goes onto it.
    let is_nose = |piece: &Piece| design.sections[piece.from].kind.is_nose();
    let body = pieces.iter().filter(|piece| !is_nose(piece));
    let noses = pieces.iter().filter(|piece| is_nose(piece));
    let mut number = 0;
    let mut next = || {
        number += 1;
        number
    };
    let mut regions = vec![region("rocket-top", top(state))];
    let card_of = |i: usize, markup: Markup| {
        region(format!("card-{}", Component::Section(i)), markup)
    };
    if state.all_measurements {
        for i in 0..design.sections.len() {
            regions.push(card_of(i, section_card(state, i, next())));
        }
    } else {
        for piece in body.chain(noses) {
            regions.push(card_of(piece.from, piece_card(state, piece, next())));
        }
    }
    regions.push(region("add-sections", add_sections(state)));
    for i in 0..design.fins.len() {
        let id = format!("card-{}", Component::Fins(i));
        regions.push(region(id, fin_card(state, i, next())));
    }
    regions.push(region("add-fins", add_button(state, Addition::Fins, "Add fins")));
    regions.push(region("card-weights", weights_card(state, next())));
    regions.push(region("card-measured", measured_card(state, next())));
    regions
}

/// Whether a field has a place among the measurements that are shown.
pub(crate) fn is_shown(state: &State, field: Field) -> bool {
    if state.all_measurements {
        return true;
    }
    match field {
        Field::Section(i, field) => match field {
            SectionField::Length | SectionField::WeighedMass | SectionField::Mass => true,
            SectionField::Diameter => {
                state.design.sections.get(i).is_some_and(|s| shows_width(s.kind))
            }
            SectionField::Kind => {
                state.design.sections.get(i).is_some_and(|s| s.kind.is_nose())
            }
            SectionField::ClosedFront | SectionField::SheetDensity => false,
        },
        Field::Fins(_, FinField::Roll | FinField::Point(..) | FinField::Planform) => {
            false
        }
        Field::Fins(_, FinField::SheetDensity) => false,
        _ => true,
    }
}

/// Sections that were weighed as one piece.
struct Piece {
    from: usize,
    to: usize,
}

fn pieces(design: &Design) -> Vec<Piece> {
    let mut pieces: Vec<Piece> = Vec::new();
    for (i, section) in design.sections.iter().enumerate() {
        match pieces.last_mut() {
            Some(piece) if section.mass == Mass::Joined => piece.to = i + 1,
            _ => pieces.push(Piece { from: i, to: i + 1 }),
        }
    }
    pieces
}

/// Whether a section is part of a bottle: of a weighed piece that begins with a tube.
pub(crate) fn is_bottle(design: &Design, section: usize) -> bool {
    pieces(design).iter().any(|piece| {
        (piece.from..piece.to).contains(&section)
            && piece.to - piece.from > 1
            && design.sections[piece.from].kind == SectionKind::Tube
    })
}

fn top(state: &State) -> Markup {
    let all = state.all_measurements;
    let metric = state.units.system == UnitSystem::Metric;
    html! {
        div class="steps__top" {
            (field::words(state, Field::Name, "Rocket’s name (not yours)"))
            div class="steps__switches" {
                div class="switch" role="group" aria-label="Units" {
                    button type="button" id="units:metric" data-action="metric"
                        aria-pressed=(pressed(metric)) { "mm, g" }
                    button type="button" id="units:inch" data-action="inch"
                        aria-pressed=(pressed(!metric)) { "in, oz" }
                }
                div class="switch" role="group" aria-label="How much to show" {
                    button type="button" id="show:few" data-action="few"
                        aria-pressed=(pressed(!all)) { "Main ones" }
                    button type="button" id="show:all" data-action="all"
                        aria-pressed=(pressed(all)) { "All measurements" }
                }
            }
        }
    }
}

fn card(
    id: Component,
    number: u32,
    title: &str,
    buttons: &Markup,
    inside: &Markup,
) -> Markup {
    html! {
        section class="card" data-part=(id) aria-labelledby=(format!("part:{id}")) {
            div class="card__head" {
                span class="card__number" aria-hidden="true" { (number) }
                h3 class="card__title" id=(format!("part:{id}")) tabindex="-1" { (title) }
                (buttons)
            }
            div class="card__fields" { (inside) }
        }
    }
}

fn part_button(action: &str, part: Component, name: &str, words: &str) -> Markup {
    html! {
        button type="button" class="button button--small" id=(format!("{action}:{part}"))
            data-action=(action) data-target=(part) {
            (words) span class="visually-hidden" { " " (name) }
        }
    }
}

/// Move, copy and remove, as far as they make sense.
fn part_buttons(state: &State, part: Component) -> Markup {
    let design = &state.design;
    let name = part.name(design);
    let (index, count, room) = match part {
        Component::Section(i) => {
            let nose = design.sections[i].kind.is_nose();
            (i, design.sections.len(), design.sections.len() < limits::SECTIONS && !nose)
        }
        Component::Fins(i) => {
            (i, design.fins.len(), design.fins.len() < limits::FIN_SETS)
        }
        Component::Weight(i) => {
            (i, design.weights.len(), design.weights.len() < limits::WEIGHTS)
        }
    };
    html! {
        div class="card__buttons" {
            @if state.all_measurements {
                @if index > 0 { (part_button("up", part, &name, "Up")) }
                @if index + 1 < count { (part_button("down", part, &name, "Down")) }
                @if room { (part_button("copy", part, &name, "Copy")) }
            }
            (part_button("remove", part, &name, "Remove"))
        }
    }
}

fn shows_width(kind: SectionKind) -> bool {
    kind == SectionKind::Tube
}

/// A weighed piece in the short form.
fn piece_card(state: &State, piece: &Piece, number: u32) -> Markup {
    let design = &state.design;
    let is_bottle = is_bottle(design, piece.from);
    let head = Component::Section(piece.from);
    let name = if is_bottle { "Bottle".to_owned() } else { head.name(design) };
    let inside = html! {
        @for i in piece.from..piece.to {
            @let section = &design.sections[i];
            @if section.kind.is_nose() { (shape_choice(state, i)) }
            @if shows_width(section.kind) { (width(state, i)) }
            (length(state, i, is_bottle))
        }
        (mass_fields(state, head, is_bottle))
        @if design.sections[piece.from].kind.is_nose() { (nose_caution()) }
        @if is_bottle { (cutting_caution()) }
    };
    let buttons = if is_bottle {
        html! {}
    } else {
        part_buttons(state, head)
    };
    card(head, number, &name, &buttons, &inside)
}

fn nose_caution() -> Markup {
    html! { p class="card__note" { strong { "Make the tip soft and round." } } }
}

fn cutting_caution() -> Markup {
    html! {
        p class="card__note" {
            strong { "Scissors for card only. " }
            "An adult cuts bottles, plastic, foam, balsa. Tape over edges."
        }
    }
}

/// One section with all its measurements.
fn section_card(state: &State, i: usize, number: u32) -> Markup {
    let part = Component::Section(i);
    let section = &state.design.sections[i];
    let inside = html! {
        (shape_choice(state, i))
        (length(state, i, false))
        (width(state, i))
        (mass_fields(state, part, false))
        @if section.kind == SectionKind::Tube {
            (field::choice(
                state,
                Choice::ClosedFront(i).field(),
                "Front end",
                &[
                    ("open".into(), !section.closed_front),
                    ("closed (a bottle’s base)".into(), section.closed_front),
                ],
            ))
        }
    };
    let name = part.name(&state.design);
    card(part, number, &name, &part_buttons(state, part), &inside)
}

/// The shape of a section. In the short form a nose stays a nose: those come first in the
/// list, so that an entry's place in it is the same.
fn shape_choice(state: &State, i: usize) -> Markup {
    let kind = state.design.sections[i].kind;
    let all = state.all_measurements;
    let trade = field::says_trade_words(state);
    let entries: Vec<(String, bool)> = SectionKind::ALL
        .iter()
        .filter(|k| all || k.is_nose())
        .map(|&k| (shape_words(k, trade).to_owned(), k == kind))
        .collect();
    field::choice(state, Choice::Kind(i).field(), "Shape", &entries)
}

/// What a shape looks like, and with the word of the trade where that is asked for.
fn shape_words(kind: SectionKind, trade: bool) -> &'static str {
    let (plain, with_trade) = match kind {
        SectionKind::Dome => ("bottle base", "nose: bottle base (dome)"),
        SectionKind::Ellipsoid => ("egg", "nose: egg (ellipsoid)"),
        SectionKind::Ogive => ("pointed arch", "nose: pointed arch (ogive)"),
        SectionKind::Paraboloid => ("rounded arch", "nose: rounded arch (paraboloid)"),
        SectionKind::Cone => ("straight to a point", "nose: straight to a point (cone)"),
        SectionKind::Tube
        | SectionKind::StraightTaper
        | SectionKind::RoundedTaper
        | SectionKind::Neck => return kind.name(),
    };
    if trade { with_trade } else { plain }
}

fn length(state: &State, i: usize, in_bottle: bool) -> Markup {
    let kind = state.design.sections[i].kind;
    let (label, picture) = match kind {
        SectionKind::Tube if in_bottle => ("Straight part", Picture::Straight),
        SectionKind::Tube => ("Length", Picture::Straight),
        SectionKind::StraightTaper | SectionKind::RoundedTaper if in_bottle => {
            ("Shoulder", Picture::Shoulder)
        }
        SectionKind::StraightTaper | SectionKind::RoundedTaper => {
            ("Length", Picture::Shoulder)
        }
        SectionKind::Neck if in_bottle => ("Neck", Picture::NeckLength),
        SectionKind::Neck => ("Length", Picture::NeckLength),
        _ => ("Length", Picture::NoseLength),
    };
    let field = Field::Section(i, SectionField::Length);
    field::number(state, field, FieldLook::new(label, picture))
}

fn width(state: &State, i: usize) -> Markup {
    let kind = state.design.sections[i].kind;
    let (label, picture) = match kind {
        SectionKind::Neck => ("Width", Picture::NeckWidth),
        SectionKind::StraightTaper | SectionKind::RoundedTaper => {
            ("Width at its rear end", Picture::NeckWidth)
        }
        SectionKind::Tube => ("Width", Picture::Width),
        _ => ("Width at its base", Picture::Width),
    };
    let field = Field::Section(i, SectionField::Diameter);
    let stand_in = crate::app::stand_in(&state.design, &state.report, field);
    field::number(state, field, FieldLook::new(label, picture).standing_in(stand_in))
}

/// How the mass is known, and the number that goes with it. In the short form a weighed
/// bottle is just weighed.
fn mass_fields(state: &State, part: Component, only_weighed: bool) -> Markup {
    let (mass, choice_field, weighed, sheet, label) = match part {
        Component::Section(i) => (
            state.design.sections[i].mass,
            Choice::Mass(part).field(),
            Field::Section(i, SectionField::WeighedMass),
            Field::Section(i, SectionField::SheetDensity),
            "Weighs",
        ),
        Component::Fins(i) => (
            state.design.fins[i].mass,
            Choice::Mass(part).field(),
            Field::Fins(i, FinField::WeighedMass),
            Field::Fins(i, FinField::SheetDensity),
            "All together weigh",
        ),
        Component::Weight(_) => return html! {},
    };
    let can_join = matches!(part, Component::Section(i) if i > 0);
    let chosen = MassChoice::of(mass);
    let entries: Vec<(String, bool)> = MassChoice::all()
        .into_iter()
        .filter(|&c| c != MassChoice::Joined || can_join || chosen == c)
        .map(|c| (c.name().to_owned(), c == chosen))
        .collect();
    html! {
        @if !(only_weighed && chosen == MassChoice::Weighed) {
            (field::choice(state, choice_field, "Made of", &entries))
        }
        @match mass {
            Mass::WeighedG(_) => {
                (field::number(state, weighed, FieldLook::new(label, Picture::Scales)))
            }
            Mass::SheetGPerM2(_) => {
                (field::number(state, sheet, FieldLook::plain("One square metre weighs")))
            }
            Mass::Material(_) | Mass::Joined => {}
        }
    }
}

fn fin_card(state: &State, i: usize, number: u32) -> Markup {
    let part = Component::Fins(i);
    let set = &state.design.fins[i];
    let number_of = |f, label: &str, picture| {
        let (_, trade) = fin_words(f);
        field::number(
            state,
            Field::Fins(i, f),
            FieldLook::new(label, picture).called(trade),
        )
    };
    let side = |f, picture| number_of(f, &capital(fin_words(f).0), picture);
    let inside = html! {
        (number_of(FinField::Count, "How many", Picture::FinCount))
        (number_of(FinField::Start, "Start, from nose tip", Picture::FinStart))
        @match &set.planform {
            Planform::FourSided { .. } => {
                (side(FinField::Root, Picture::FinRoot))
                (side(FinField::Tip, Picture::FinTip))
                (side(FinField::Span, Picture::FinSpan))
                (side(FinField::Sweep, Picture::FinSweep))
                @if !state.all_measurements { (field::slot(state, Field::Fins(i, FinField::Planform))) }
            }
            Planform::PointsMm(points) if state.all_measurements => {
                (corners(state, i, points.len()))
            }
            Planform::PointsMm(points) => {
                p class="card__note" {
                    "Own outline with " (points.len()) " corners: see all measurements."
                }
                (field::slot(state, Field::Fins(i, FinField::Planform)))
            }
        }
        (mass_fields(state, part, false))
        @if state.all_measurements {
            @let now = PlanformChoice::of(&set.planform);
            (field::choice(
                state,
                Choice::Planform(i).field(),
                "Outline",
                &[
                    ("four-sided".into(), now == PlanformChoice::FourSided),
                    ("own outline, by corners".into(), now == PlanformChoice::Points),
                ],
            ))
            (field::number(state, Field::Fins(i, FinField::Roll), FieldLook::plain("Turned by")))
        }
    };
    let name = part.name(&state.design);
    let inside = html! { (inside) (cutting_caution()) };
    card(part, number, &name, &part_buttons(state, part), &inside)
}

/// What a side of a fin is called beside its picture, and what the trade calls it.
fn fin_words(side: FinField) -> (&'static str, &'static str) {
    match side {
        FinField::Root => ("along the body", "root"),
        FinField::Tip => ("outer edge", "tip"),
        FinField::Span => ("out from the body", "span"),
        FinField::Sweep => ("slants back by", "sweep"),
        _ => ("", ""),
    }
}

fn corners(state: &State, set: usize, count: usize) -> Markup {
    let number = |k: usize, axis: Axis, label: &str| {
        let field = Field::Fins(set, FinField::Point(k, axis));
        field::number(state, field, FieldLook::plain(label))
    };
    html! {
        div class="corners" {
            p class="card__note" {
                "Corners in order: the front one on the body, round the outside, the rear \
                 one on the body."
            }
            @for k in 0..count {
                div class="corners__row" {
                    (number(k, Axis::Along, &format!("Corner {}, along", k + 1)))
                    (number(k, Axis::Out, &format!("Corner {}, out", k + 1)))
                    @if count > limits::FIN_POINTS.0 {
                        button type="button" class="button button--small"
                            id=(format!("remove-corner:{set}:{k}"))
                            data-action="remove-corner" data-target=(format!("{set} {k}")) {
                            "Remove" span class="visually-hidden" { " corner " (k + 1) }
                        }
                    }
                }
            }
            @if count < limits::FIN_POINTS.1 {
                button type="button" class="button button--small"
                    id=(format!("add-corner:{set}")) data-action="add-corner"
                    data-target=(set) { "Add a corner" }
            }
        }
    }
}

fn weights_card(state: &State, number: u32) -> Markup {
    let weights = &state.design.weights;
    html! {
        section class="card" aria-labelledby="weights-title" {
            div class="card__head" {
                span class="card__number" aria-hidden="true" { (number) }
                h3 class="card__title" id="weights-title" tabindex="-1" { "Weights" }
            }
            @for (i, weight) in weights.iter().enumerate() {
                (weight_rows(state, i, &weight.label))
            }
            p class="card__caution" {
                strong { "Inside, taped: " } "a weight must not come loose. Nothing hard or \
                 sharp on the outside."
            }
            div class="card__foot" {
                (add_button(state, Addition::Weight, "Add a weight"))
            }
        }
    }
}

fn weight_rows(state: &State, i: usize, label: &str) -> Markup {
    let part = Component::Weight(i);
    let known = COMMON_WEIGHTS.iter().any(|w| w.name == label);
    let choice = Choice::WeightKind(i);
    let id = format!("choice:{}", choice.field());
    let mut groups: Vec<&str> = COMMON_WEIGHTS.iter().map(|w| w.group).collect();
    groups.dedup();
    let indexed = || COMMON_WEIGHTS.iter().enumerate();
    html! {
        div class="card__row" data-part=(part) {
            h4 class="card__subtitle" id=(format!("part:{part}")) tabindex="-1" {
                (part.name(&state.design))
            }
            (part_buttons(state, part))
            div class="card__fields" {
                div class="field field--choice" data-part=(part) {
                    label class="field__label" for=(id) { "What it is" }
                    select class="field__select" id=(id) data-choice=(choice.field()) {
                        @if !known { option value="" selected { (label) } }
                        @for group in groups {
                            optgroup label=(group) {
                                @for (k, w) in indexed().filter(|(_, w)| w.group == group) {
                                    option value=(k) selected[w.name == label] {
                                        (w.name)
                                        @if let Some(g) = w.mass_g {
                                            ", " (state.units.mass(g))
                                        }
                                    }
                                }
                            }
                        }
                    }
                }
                @if state.all_measurements || !known || label == "other" {
                    (field::words(state, choice.field(), "Its name"))
                }
                (field::number(
                    state,
                    Field::Weight(i, WeightField::Mass),
                    FieldLook::new("Weighs", Picture::Scales),
                ))
                (field::number(
                    state,
                    Field::Weight(i, WeightField::Position),
                    FieldLook::new("Middle, from nose tip", Picture::WeightPlace),
                ))
            }
        }
    }
}

fn measured_card(state: &State, number: u32) -> Markup {
    html! {
        section class="card" aria-labelledby="measured-title" {
            div class="card__head" {
                span class="card__number" aria-hidden="true" { (number) }
                h3 class="card__title" id="measured-title" tabindex="-1" {
                    "Measured on the finished rocket"
                }
            }
            p class="card__note" {
                "Leave this empty until it is built. What you measure takes the place of \
                 what is worked out. Where it hangs level, and where its cut-out balances, \
                 goes under Measure."
            }
            div class="card__fields" {
                (field::number(state, Field::TotalMass, FieldLook::new("Whole rocket weighs", Picture::Scales)))
            }
        }
    }
}

fn add_sections(state: &State) -> Markup {
    html! {
        div class="adders" {
            (add_button(state, Addition::Nose, "Add a nose"))
            @if state.all_measurements || state.design.sections.is_empty() {
                (add_button(state, Addition::Tube, "Add a tube"))
                (add_button(state, Addition::Taper, "Add a taper"))
                (add_button(state, Addition::Neck, "Add a neck"))
            }
        }
    }
}

fn add_button(state: &State, addition: Addition, words: &str) -> Markup {
    html! {
        @if addition.fits(&state.design) {
            button type="button" class="button button--add"
                id=(format!("add:{}", addition.key())) data-action="add"
                data-target=(addition.key()) { (words) }
        }
    }
}
