//! One thing that changed, in words.

use noseward_drawing::{Written, listed, part_name};
use noseward_lesson::{Change, ChangedPart, Difference, PartDifference as Of};
use noseward_stability::{
    Design, Mass, Planform, Quantity, SectionKind, SwingField, Units, capital,
};
use noseward_words::{self as words, Aspect, Came, FinSize, FinValue, Front, Number};

use crate::places::form::setup_value;
use crate::places::materials::material;

/// The change with its old and new values, and what moved with it, between two rockets.
pub(crate) fn sentence(change: &Change, designs: [&Design; 2], units: Units) -> String {
    let said = match change.difference() {
        Difference::Swing(field, from, to) => {
            let [from, to] = [from, to].map(|value| setup_value(field, value, units));
            words::change_swing(swing_value(field), &from, &to)
        }
        Difference::Part(of, what) => of_part(&card(change, of, designs), what, units),
    };
    let along = listed(change.moved_with_it().map(|part| part_name(designs[1], part)));
    if along.is_empty() {
        said
    } else {
        format!("{said} {}", words::change_along(&along))
    }
}

/// The change in two or three words.
pub(crate) fn label(change: &Change) -> String {
    let (of, what) = match change.difference() {
        Difference::Swing(field, ..) => return words::changed_swing(swing_value(field)),
        Difference::Part(of, what) => (changed_part(of), what),
    };
    match what {
        Of::Section { is_new, .. }
        | Of::Fins { is_new, .. }
        | Of::Weight { is_new, .. } => {
            if is_new {
                words::changed_added(of)
            } else {
                words::changed_removed(of)
            }
        }
        Of::Shape(..) | Of::Planform(..) => words::changed_shape(of),
        Of::Length(..) => words::changed_length(of),
        Of::Width(..) => words::changed_width(of),
        Of::Mass(..) => words::changed_mass(of),
        Of::ClosedFront(..) => words::changed_front(of),
        Of::Number(..) => words::changed_fin_number().into(),
        Of::Place(..) | Of::Middle(..) => words::changed_place(of),
    }
}

/// A part as an argument of a sentence.
pub(crate) fn changed_part(of: ChangedPart) -> words::ChangedPart {
    match of {
        ChangedPart::Nose => words::ChangedPart::Nose,
        ChangedPart::Body => words::ChangedPart::Body,
        ChangedPart::Taper => words::ChangedPart::Taper,
        ChangedPart::Neck => words::ChangedPart::Neck,
        ChangedPart::Bottle => words::ChangedPart::Bottle,
        ChangedPart::Fins => words::ChangedPart::Fins,
        ChangedPart::Weight => words::ChangedPart::Weight,
    }
}

fn swing_value(field: SwingField) -> words::SwingValue {
    match field {
        SwingField::String => words::SwingValue::String,
        SwingField::Arm => words::SwingValue::Arm,
        SwingField::Turns => words::SwingValue::Turns,
        SwingField::AirDensity => words::SwingValue::Density,
    }
}

/// What the part is called in the rocket that has it.
fn card(change: &Change, of: ChangedPart, [before, after]: [&Design; 2]) -> String {
    if of == ChangedPart::Bottle {
        return words::rocket_bottle().into();
    }
    let design = if change.is_removed() { before } else { after };
    change.part.map(|part| capital(&part_name(design, part))).unwrap_or_default()
}

fn of_part(card: &str, what: Of<'_>, units: Units) -> String {
    let length = |mm| units.length(mm);
    let came = |is_new| if is_new { Came::Added } else { Came::Removed };
    let (aspect, from, to) = match what {
        Of::Section { section, is_new } => {
            let (came, long) = (came(is_new), length(section.length_mm));
            let mass = mass(section.mass, units);
            return if section.kind.is_nose() {
                words::change_nose(card, came, &shape(section.kind), &long, &mass)
            } else {
                words::change_section(card, came, &long, &mass)
            };
        }
        Of::Fins { set, is_new } => {
            let (sizes, mass) = (sizes(&set.planform, units), mass(set.mass, units));
            return words::change_fins(
                card,
                came(is_new),
                set.count.into(),
                &sizes,
                &mass,
            );
        }
        Of::Weight { weight, is_new } => {
            let (came, name) = (came(is_new), weight.label.trim());
            let (mass, place) = (units.mass(weight.mass_g), length(weight.position_mm));
            return if name.is_empty() {
                words::change_nameless_weight(came, &mass, &place)
            } else {
                words::change_weight(came, name, &mass, &place)
            };
        }
        Of::Place(a, b) => {
            let turned = |degrees| format!("{}°", Quantity::Angle.number(degrees, units));
            return fin_values(
                card,
                [
                    differing(FinValue::Start, a.start_mm, b.start_mm, length),
                    differing(FinValue::Turned, a.roll_deg, b.roll_deg, turned),
                ],
            );
        }
        Of::Planform(a, b) => return planforms(card, a, b, units),
        Of::ClosedFront(_, closed) => {
            let front = if closed { Front::Closed } else { Front::Opened };
            return words::change_front(card, front);
        }
        Of::Shape(a, b) => (Aspect::Shape, shape(a), shape(b)),
        Of::Length(a, b) => (Aspect::Length, length(a), length(b)),
        Of::Width(a, b) => {
            let [a, b] = [a, b]
                .map(|mm| mm.map_or_else(|| words::change_not_known().into(), length));
            (Aspect::Width, a, b)
        }
        Of::Mass(a, b) => {
            let weighed = [a, b].map(|mass| matches!(mass, Mass::WeighedG(_)));
            let is_material = weighed == [false; 2];
            let aspect = if is_material { Aspect::Material } else { Aspect::Mass };
            (aspect, mass(a, units), mass(b, units))
        }
        Of::Number(a, b) => (Aspect::Number, a.to_string(), b.to_string()),
        Of::Middle(a, b) => (Aspect::Middle, length(a), length(b)),
    };
    words::change_value(card, aspect, &from, &to)
}

/// The sides of a four-sided fin; of another one how far it reaches.
fn sizes(planform: &Planform, units: Units) -> String {
    let size = |(of, mm)| words::change_fin_size(of, &units.length(mm));
    match planform {
        &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => {
            let sides = [
                (FinSize::Root, root_mm),
                (FinSize::Tip, tip_mm),
                (FinSize::Span, span_mm),
                (FinSize::Sweep, sweep_mm),
            ];
            listed(sides.into_iter().map(size))
        }
        Planform::PointsMm(points) => {
            let most = |axis: usize| points.iter().map(|p| p[axis]).fold(0.0, f64::max);
            let sides = [(FinSize::Length, most(0)), (FinSize::Span, most(1))];
            listed(sides.into_iter().map(size))
        }
    }
}

/// How a four-sided fin, or the corners of another one, changed.
fn planforms(card: &str, a: &Planform, b: &Planform, units: Units) -> String {
    let (aspect, from, to) = match (a, b) {
        (Planform::PointsMm(a), Planform::PointsMm(b)) if a.len() == b.len() => {
            let moved = a.iter().zip(b).filter(|(a, b)| a != b).count();
            return words::change_corners_moved(card, moved.into(), a.len().into());
        }
        (Planform::PointsMm(a), Planform::PointsMm(b)) => {
            (Aspect::Corners, a.len().to_string(), b.len().to_string())
        }
        (
            &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm },
            &Planform::FourSided {
                root_mm: root,
                tip_mm: tip,
                span_mm: span,
                sweep_mm: sweep,
            },
        ) => {
            let length = |mm| units.length(mm);
            return fin_values(
                card,
                [
                    differing(FinValue::Root, root_mm, root, length),
                    differing(FinValue::Tip, tip_mm, tip, length),
                    differing(FinValue::Span, span_mm, span, length),
                    differing(FinValue::Sweep, sweep_mm, sweep, length),
                ],
            );
        }
        _ => (Aspect::Outline, outline(a), outline(b)),
    };
    words::change_value(card, aspect, &from, &to)
}

fn fin_values<const N: usize>(card: &str, values: [Option<String>; N]) -> String {
    words::change_fin_values(card, &listed(values.into_iter().flatten()))
}

/// "root 70 mm → 90 mm"; `None` where both are the same.
fn differing(
    value: FinValue,
    a: f64,
    b: f64,
    written: impl Fn(f64) -> String,
) -> Option<String> {
    (a != b).then(|| words::change_fin_value(value, &written(a), &written(b)))
}

fn outline(planform: &Planform) -> String {
    match planform {
        Planform::FourSided { .. } => words::rocket_four_sided().into(),
        Planform::PointsMm(points) => words::change_corners(points.len().into()),
    }
}

fn mass(mass: Mass, units: Units) -> String {
    match mass {
        Mass::WeighedG(g) => units.mass(g),
        Mass::Material(of) => material(of).into(),
        Mass::SheetGPerM2(density) => words::change_sheet(Number::trimmed(density, 0)),
        Mass::Joined => words::rocket_weighed_with().into(),
    }
}

fn shape(kind: SectionKind) -> String {
    words::change_shape(match kind {
        SectionKind::Cone => words::SectionShape::Cone,
        SectionKind::Ogive => words::SectionShape::Ogive,
        SectionKind::Ellipsoid => words::SectionShape::Ellipsoid,
        SectionKind::Paraboloid => words::SectionShape::Paraboloid,
        SectionKind::Dome => words::SectionShape::Dome,
        SectionKind::Tube => words::SectionShape::Tube,
        SectionKind::StraightTaper => words::SectionShape::StraightTaper,
        SectionKind::RoundedTaper => words::SectionShape::RoundedTaper,
        SectionKind::Neck => words::SectionShape::Neck,
    })
}

#[cfg(test)]
mod tests;
