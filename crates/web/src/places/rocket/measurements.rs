//! The steps: what a person types, as cards.
//!
//! The short form shows the measurements that matter most; all measurements add the rest,
//! and the buttons that change the structure.

use maud::{Markup, html};
use noseward_drawing::Written;
use noseward_drawing::{Picture, part_name};
use noseward_stability::{
    Axis, COMMON_WEIGHTS, Component, Design, Field, FinField, Mass, Planform,
    SectionField, SectionKind, UnitSystem, WeightField, WeightGroup, limits,
};

use noseward_words::{self as words, CornerAxis, MoveOrCopy, Text};

use super::field::{self, FieldLook, Label};
use crate::app::{Addition, Choice, MassChoice, PlanformChoice, State};
use crate::places::materials;
use crate::shell::marked::said;
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
    regions.push(region(
        "add-fins",
        add_button(state, Addition::Fins, words::rocket_add_fins()),
    ));
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
            (field::words(state, Field::Name, words::rocket_name()))
            div class="steps__switches" {
                div class="switch" role="group" aria-label=(words::rocket_units()) {
                    button type="button" id="units:metric" data-action="metric"
                        aria-pressed=(pressed(metric)) { "mm, g" }
                    button type="button" id="units:inch" data-action="inch"
                        aria-pressed=(pressed(!metric)) { "in, oz" }
                }
                div class="switch" role="group" aria-label=(words::rocket_how_much()) {
                    button type="button" id="show:few" data-action="few"
                        aria-pressed=(pressed(!all)) { (words::rocket_main_ones()) }
                    button type="button" id="show:all" data-action="all"
                        aria-pressed=(pressed(all)) { (words::rocket_all_measurements()) }
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
                span class="card__number" aria-hidden="true" { (words::Number::from(number).to_string()) }
                h3 class="card__title" id=(format!("part:{id}")) tabindex="-1" { (title) }
                (buttons)
            }
            div class="card__fields" { (inside) }
        }
    }
}

fn part_button(action: &str, part: Component, does: MoveOrCopy, name: &str) -> Markup {
    html! {
        button type="button" class="button button--small" id=(format!("{action}:{part}"))
            data-action=(action) data-target=(part) {
            (said(words::rocket_part_button(does, name)))
        }
    }
}

/// Move, copy and remove, as far as they make sense.
fn part_buttons(state: &State, part: Component) -> Markup {
    let design = &state.design;
    let name = part_name(design, part);
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
                @if index > 0 { (part_button("up", part, MoveOrCopy::Up, &name)) }
                @if index + 1 < count { (part_button("down", part, MoveOrCopy::Down, &name)) }
                @if room { (part_button("copy", part, MoveOrCopy::Copy, &name)) }
            }
            (part_button("remove", part, MoveOrCopy::Remove, &name))
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
    let name =
        if is_bottle { words::rocket_bottle().into() } else { part_name(design, head) };
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
    html! { p class="card__note" { (said(words::rocket_soft_tip())) } }
}

fn cutting_caution() -> Markup {
    html! {
        p class="card__note" {
            (said(words::rocket_scissors()))
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
                words::rocket_front_end(),
                &[
                    (words::rocket_front_open().into(), !section.closed_front),
                    (words::rocket_front_closed().into(), section.closed_front),
                ],
            ))
        }
    };
    let name = part_name(&state.design, part);
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
        .map(|&k| (shape_words(k, trade).into(), k == kind))
        .collect();
    field::choice(state, Choice::Kind(i).field(), words::rocket_shape(), &entries)
}

/// What a shape looks like, and with the word of the trade where that is asked for.
fn shape_words(kind: SectionKind, trade: bool) -> &'static str {
    let (plain, with_trade) = match kind {
        SectionKind::Dome => (words::rocket_dome(), words::rocket_dome_trade()),
        SectionKind::Ellipsoid => (words::rocket_egg(), words::rocket_egg_trade()),
        SectionKind::Ogive => (words::rocket_ogive(), words::rocket_ogive_trade()),
        SectionKind::Paraboloid => {
            (words::rocket_paraboloid(), words::rocket_paraboloid_trade())
        }
        SectionKind::Cone => (words::rocket_cone(), words::rocket_cone_trade()),
        SectionKind::Tube => return words::rocket_tube().into(),
        SectionKind::StraightTaper => return words::rocket_straight_taper().into(),
        SectionKind::RoundedTaper => return words::rocket_rounded_taper().into(),
        SectionKind::Neck => return words::rocket_neck_shape().into(),
    };
    if trade { with_trade.as_str() } else { plain.as_str() }
}

fn length(state: &State, i: usize, in_bottle: bool) -> Markup {
    let kind = state.design.sections[i].kind;
    let (label, picture) = match kind {
        SectionKind::Tube if in_bottle => {
            (words::rocket_straight_part(), Picture::Straight)
        }
        SectionKind::Tube => (words::rocket_length(), Picture::Straight),
        SectionKind::StraightTaper | SectionKind::RoundedTaper if in_bottle => {
            (words::rocket_shoulder(), Picture::Shoulder)
        }
        SectionKind::StraightTaper | SectionKind::RoundedTaper => {
            (words::rocket_length(), Picture::Shoulder)
        }
        SectionKind::Neck if in_bottle => (words::rocket_neck(), Picture::NeckLength),
        SectionKind::Neck => (words::rocket_length(), Picture::NeckLength),
        _ => (words::rocket_length(), Picture::NoseLength),
    };
    let field = Field::Section(i, SectionField::Length);
    field::number(state, field, FieldLook::new(label, picture))
}

fn width(state: &State, i: usize) -> Markup {
    let kind = state.design.sections[i].kind;
    let (label, picture) = match kind {
        SectionKind::Neck => (words::rocket_width(), Picture::NeckWidth),
        SectionKind::StraightTaper | SectionKind::RoundedTaper => {
            (words::rocket_width_rear(), Picture::NeckWidth)
        }
        SectionKind::Tube => (words::rocket_width(), Picture::Width),
        _ => (words::rocket_width_base(), Picture::Width),
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
            words::rocket_weighs(),
        ),
        Component::Fins(i) => (
            state.design.fins[i].mass,
            Choice::Mass(part).field(),
            Field::Fins(i, FinField::WeighedMass),
            Field::Fins(i, FinField::SheetDensity),
            words::rocket_all_weigh(),
        ),
        Component::Weight(_) => return html! {},
    };
    let can_join = matches!(part, Component::Section(i) if i > 0);
    let chosen = MassChoice::of(mass);
    let entries: Vec<(String, bool)> = MassChoice::all()
        .into_iter()
        .filter(|&c| c != MassChoice::Joined || can_join || chosen == c)
        .map(|c| (c.name().into(), c == chosen))
        .collect();
    html! {
        @if !(only_weighed && chosen == MassChoice::Weighed) {
            (field::choice(state, choice_field, words::rocket_made_of(), &entries))
        }
        @match mass {
            Mass::WeighedG(_) => {
                (field::number(state, weighed, FieldLook::new(label, Picture::Scales)))
            }
            Mass::SheetGPerM2(_) => {
                (field::number(state, sheet, FieldLook::plain(words::rocket_square_metre())))
            }
            Mass::Material(_) | Mass::Joined => {}
        }
    }
}

fn fin_card(state: &State, i: usize, number: u32) -> Markup {
    let part = Component::Fins(i);
    let set = &state.design.fins[i];
    let number_of = |f, label: Text, trade, picture| {
        let look = FieldLook::new(label, picture).called(trade);
        field::number(state, Field::Fins(i, f), look)
    };
    let inside = html! {
        (number_of(FinField::Count, words::rocket_how_many(), None, Picture::FinCount))
        (number_of(FinField::Start, words::rocket_fin_start(), None, Picture::FinStart))
        @match &set.planform {
            Planform::FourSided { .. } => {
                (number_of(FinField::Root, words::rocket_fin_root(), Some(words::rocket_fin_root_trade()), Picture::FinRoot))
                (number_of(FinField::Tip, words::rocket_fin_tip(), Some(words::rocket_fin_tip_trade()), Picture::FinTip))
                (number_of(FinField::Span, words::rocket_fin_span(), Some(words::rocket_fin_span_trade()), Picture::FinSpan))
                (number_of(FinField::Sweep, words::rocket_fin_sweep(), Some(words::rocket_fin_sweep_trade()), Picture::FinSweep))
                @if !state.all_measurements { (field::slot(state, Field::Fins(i, FinField::Planform))) }
            }
            Planform::PointsMm(points) if state.all_measurements => {
                (corners(state, i, points.len()))
            }
            Planform::PointsMm(points) => {
                p class="card__note" {
                    (words::rocket_own_outline(points.len().into()))
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
                words::rocket_outline(),
                &[
                    (words::rocket_four_sided().into(), now == PlanformChoice::FourSided),
                    (words::rocket_by_corners().into(), now == PlanformChoice::Points),
                ],
            ))
            (field::number(state, Field::Fins(i, FinField::Roll), FieldLook::plain(words::rocket_turned_by())))
        }
    };
    let name = part_name(&state.design, part);
    let inside = html! { (inside) (cutting_caution()) };
    card(part, number, &name, &part_buttons(state, part), &inside)
}

fn corners(state: &State, set: usize, count: usize) -> Markup {
    let number = |k: usize, axis: Axis, label: CornerAxis| {
        let field = Field::Fins(set, FinField::Point(k, axis));
        let look = FieldLook {
            label: Label::Corner(label, k),
            ..FieldLook::plain(words::rocket_outline())
        };
        field::number(state, field, look)
    };
    html! {
        div class="corners" {
            p class="card__note" {
                (words::rocket_corners())
            }
            @for k in 0..count {
                div class="corners__row" {
                    (number(k, Axis::Along, CornerAxis::Along))
                    (number(k, Axis::Out, CornerAxis::Out))
                    @if count > limits::FIN_POINTS.0 {
                        button type="button" class="button button--small"
                            id=(format!("remove-corner:{set}:{k}"))
                            data-action="remove-corner" data-target=(format!("{set} {k}")) {
                            (said(words::rocket_corner_remove((k + 1).into())))
                        }
                    }
                }
            }
            @if count < limits::FIN_POINTS.1 {
                button type="button" class="button button--small"
                    id=(format!("add-corner:{set}")) data-action="add-corner"
                    data-target=(set) { (words::rocket_corner_add()) }
            }
        }
    }
}

fn weights_card(state: &State, number: u32) -> Markup {
    let weights = &state.design.weights;
    let names: Vec<String> =
        COMMON_WEIGHTS.iter().map(|w| materials::weight(w.kind)).collect();
    html! {
        section class="card" aria-labelledby="weights-title" {
            div class="card__head" {
                span class="card__number" aria-hidden="true" { (words::Number::from(number).to_string()) }
                h3 class="card__title" id="weights-title" tabindex="-1" { (words::rocket_weights()) }
            }
            @for (i, weight) in weights.iter().enumerate() {
                (weight_rows(state, i, &weight.label, &names))
            }
            p class="card__caution" {
                (said(words::rocket_taped()))
            }
            div class="card__foot" {
                (add_button(state, Addition::Weight, words::rocket_add_weight()))
            }
        }
    }
}

/// One weight; the names are those of the list of what it can be.
fn weight_rows(state: &State, i: usize, label: &str, names: &[String]) -> Markup {
    let part = Component::Weight(i);
    let known = names.iter().any(|name| name == label);
    let choice = Choice::WeightKind(i);
    let id = format!("choice:{}", choice.field());
    let mut groups: Vec<WeightGroup> = COMMON_WEIGHTS.iter().map(|w| w.group).collect();
    groups.dedup();
    let indexed = || COMMON_WEIGHTS.iter().enumerate();
    html! {
        div class="card__row" data-part=(part) {
            h4 class="card__subtitle" id=(format!("part:{part}")) tabindex="-1" {
                (part_name(&state.design, part))
            }
            (part_buttons(state, part))
            div class="card__fields" {
                div class="field field--choice" data-part=(part) {
                    label class="field__label" for=(id) { (words::rocket_what_it_is()) }
                    select class="field__select" id=(id) data-choice=(choice.field()) {
                        @if !known { option value="" selected { (label) } }
                        @for group in groups {
                            optgroup label=(materials::weight_group(group)) {
                                @for (k, w) in indexed().filter(|(_, w)| w.group == group) {
                                    option value=(k) selected[names[k] == label] {
                                        (names[k])
                                        @if let Some(g) = w.mass_g {
                                            ", " (state.units.mass(g))
                                        }
                                    }
                                }
                            }
                        }
                    }
                }
                @if state.all_measurements || !known || words::weight_other() == label {
                    (field::words(state, choice.field(), words::rocket_its_name()))
                }
                (field::number(
                    state,
                    Field::Weight(i, WeightField::Mass),
                    FieldLook::new(words::rocket_weighs(), Picture::Scales),
                ))
                (field::number(
                    state,
                    Field::Weight(i, WeightField::Position),
                    FieldLook::new(words::rocket_middle(), Picture::WeightPlace),
                ))
            }
        }
    }
}

fn measured_card(state: &State, number: u32) -> Markup {
    html! {
        section class="card" aria-labelledby="measured-title" {
            div class="card__head" {
                span class="card__number" aria-hidden="true" { (words::Number::from(number).to_string()) }
                h3 class="card__title" id="measured-title" tabindex="-1" {
                    (words::rocket_measured())
                }
            }
            p class="card__note" {
                (words::rocket_measured_note())
            }
            div class="card__fields" {
                (field::number(state, Field::TotalMass, FieldLook::new(words::rocket_whole_weighs(), Picture::Scales)))
            }
        }
    }
}

fn add_sections(state: &State) -> Markup {
    html! {
        div class="adders" {
            (add_button(state, Addition::Nose, words::rocket_add_nose()))
            @if state.all_measurements || state.design.sections.is_empty() {
                (add_button(state, Addition::Tube, words::rocket_add_tube()))
                (add_button(state, Addition::Taper, words::rocket_add_taper()))
                (add_button(state, Addition::Neck, words::rocket_add_neck()))
            }
        }
    }
}

fn add_button(state: &State, addition: Addition, words: Text) -> Markup {
    html! {
        @if addition.fits(&state.design) {
            button type="button" class="button button--add"
                id=(format!("add:{}", addition.key())) data-action="add"
                data-target=(addition.key()) { (words) }
        }
    }
}
