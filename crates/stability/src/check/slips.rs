//! Numbers that look like a slip of the unit. These only ask.

use super::{Findings, Problem};
use crate::design::field::{Field, FinField, Quantity, SectionField, WeightField};
use crate::design::{Design, Planform, SectionKind};
use crate::outline::width_mm;

/// A bottle or tube narrower than this is asked about: thinner than a finger.
const NARROW_MM: f64 = 12.0;
/// A length shorter than this share of the body's width is asked about, if ten times as
/// much would be an ordinary length.
const SHORT_SHARE: f64 = 0.35;
/// A part heavier than this is asked about: more than a full half-litre bottle.
const HEAVY_G: f64 = 600.0;
/// A mass below this, typed where grams are meant, may be kilograms.
const LIGHT_G: f64 = 0.1;

pub(super) fn check(design: &Design, found: &mut Findings) {
    let widths = (0..design.sections.len()).filter_map(|i| width_mm(design, i));
    let widest_mm = widths.fold(0.0, f64::max);
    let mut ask = |field: Field, problem| found.push(field, problem);
    let length_mm = design.length_mm();
    let tiny = widest_mm < NARROW_MM;
    let short = |mm: f64| mm > 0.0 && mm < 25.0 && (tiny || mm < SHORT_SHARE * widest_mm);
    let centimetres = |typed_mm| Problem::CentimetresForMillimetres { typed_mm };

    for (i, section) in design.sections.iter().enumerate() {
        let narrow = |mm: f64| mm < NARROW_MM;
        if let Some(mm) = section.diameter_mm.filter(|&mm| narrow(mm)) {
            ask(Field::Section(i, SectionField::Diameter), centimetres(mm));
        }
        let long_by_nature = matches!(
            section.kind,
            SectionKind::Cone
                | SectionKind::Ogive
                | SectionKind::Ellipsoid
                | SectionKind::Paraboloid
                | SectionKind::Tube
        );
        if long_by_nature && short(section.length_mm) {
            let field = Field::Section(i, SectionField::Length);
            ask(field, centimetres(section.length_mm));
        }
    }
    for (i, set) in design.fins.iter().enumerate() {
        if let Planform::FourSided { root_mm, span_mm, .. } = set.planform {
            if short(root_mm) {
                ask(Field::Fins(i, FinField::Root), centimetres(root_mm));
            }
            if short(span_mm) && span_mm < 12.0 {
                ask(Field::Fins(i, FinField::Span), centimetres(span_mm));
            }
        }
        let start_mm = set.start_mm;
        if start_mm > 0.0 && start_mm < 40.0 && near_nose(start_mm, length_mm) {
            ask(Field::Fins(i, FinField::Start), centimetres(start_mm));
        }
    }
    for (i, weight) in design.weights.iter().enumerate() {
        let mm = weight.position_mm;
        if mm > 0.0 && mm < 8.0 && near_nose(mm, length_mm) {
            ask(Field::Weight(i, WeightField::Position), centimetres(mm));
        }
    }
    for field in Field::numbers(design) {
        let Some(typed_g) = field.get(design) else { continue };
        let slip = typed_g > HEAVY_G || (typed_g > 0.0 && typed_g < LIGHT_G);
        if field.quantity() == Some(Quantity::Mass) && slip {
            ask(field, Problem::KilogramsForGrams { typed_g });
        }
    }
}

/// Whether a place lies in the first part of the rocket, and ten times as far still on
/// it.
fn near_nose(mm: f64, length_mm: f64) -> bool {
    mm < 0.15 * length_mm && 10.0 * mm <= length_mm
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{BottleSize, Example, Mass, Severity, evaluate};

    /// Slips as a class makes them: each is asked about at its field, none blocks.
    #[test]
    fn slips_are_asked_about_and_block_nothing() {
        type Change = fn(&mut Design);
        let slips: [(&str, Change); 14] = [
            ("/sections/0/length_mm", |d| {
                d.fins.clear();
                d.sections[0].kind = SectionKind::Cone;
                d.sections[0].length_mm = 12.0;
            }),
            ("/sections/1/length_mm", |d| {
                d.fins.clear();
                d.sections[1].length_mm = 12.5;
            }),
            ("/sections/3/diameter_mm", |d| d.sections[3].diameter_mm = Some(2.8)),
            ("/sections/1/diameter_mm", |d| {
                d.sections[1].diameter_mm = Some(6.5);
                d.sections[2].diameter_mm = Some(5.0);
                d.sections[3].diameter_mm = Some(5.0);
            }),
            ("/fins/0/planform/four_sided/root_mm", |d| {
                let root = Field::Fins(0, FinField::Root);
                root.set(d, Some(11.0));
            }),
            ("/fins/0/planform/four_sided/span_mm", |d| {
                Field::Fins(0, FinField::Span).set(d, Some(5.5));
            }),
            ("/sections/1/mass/weighed_g", |d| {
                d.sections[1].mass = Mass::WeighedG(0.022);
            }),
            ("/weights/0/mass_g", |d| d.weights[0].mass_g = 0.02),
            ("/weights/0/mass_g", |d| d.weights[0].mass_g = 2000.0),
            ("/measured/total_mass_g", |d| d.measured.total_mass_g = Some(0.65)),
            ("/fins/0/start_mm", |d| d.fins[0].start_mm = 310.0),
            ("/fins/0/start_mm", |d| d.fins[0].start_mm = 21.5),
            ("/weights/0/position_mm", |d| d.weights[0].position_mm = 4.5),
            ("/sections/1/length_mm", |d| {
                d.fins.clear();
                d.sections[1].diameter_mm = Some(6.5);
                d.sections[2].diameter_mm = Some(2.8);
                d.sections[3].diameter_mm = Some(2.8);
                d.sections[1].length_mm = 19.5;
            }),
        ];
        for (field, slip) in slips {
            let mut design = Example::Puffin.design();
            slip(&mut design);
            let report = evaluate(&design);
            let asked = report.faults.iter().any(|fault| {
                fault.field.to_string() == field && fault.severity() == Severity::Ask
            });
            assert!(asked, "{field}: {:?}", report.faults);
            assert!(report.figures.is_some(), "{field}: {:?}", report.faults);
        }
    }

    #[test]
    fn ordinary_rockets_are_not_asked_about() {
        let examples = Example::ALL.map(Example::design);
        let bottles = BottleSize::ALL.map(BottleSize::design);
        for design in examples.iter().chain(&bottles) {
            assert_eq!(evaluate(design).faults, [], "{}", design.name);
        }
    }
}
