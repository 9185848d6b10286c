//! Parts that do not fit together.

use super::{Findings, Problem};
use crate::design::field::{Field, FinField, SectionField, WeightField};
use crate::design::{Design, FinSet, Mass, Planform, SectionKind, limits};
use crate::outline::fin::Fin;
use crate::outline::{Body, width_mm};
use crate::pressure::fin_sets::crowds;

/// How much a fin may reach behind the body before it is asked about, as a share of its
/// own reach. Our judgement: fins often stand a little proud of the neck.
const OVERHANG: f64 = 0.5;

/// A pair of fins of a higher aspect ratio than this stalls early: Eiffel's plates of
/// aspect ratio 3 and more push up to twice less past 15 degrees than the model says
/// (La Résistance de l'air et l'aviation, 1910, p. 48).
const SLENDER: f64 = 3.0;
/// Width of a half-litre bottle, in millimetres; from memory.
const USUAL_BOTTLE_MM: f64 = 65.0;
/// Width of a bottle's neck, in millimetres: the usual 28 mm finish.
const USUAL_NECK_MM: f64 = 28.0;
/// A fin this far off the body, in metres, is still glued to it.
const GLUE_M: f64 = 1e-3;
/// Fins this close together, in millimetres and degrees, are in the same place.
const SAME_FINS: f64 = 1.0;
/// Places this close are the same: sums of lengths miss by the last bit.
const SAME_PLACE_MM: f64 = 1e-6;

pub(super) fn check(design: &Design, found: &mut Findings) {
    let mut push = |field, problem| found.push(field, problem);
    let length_mm = design.length_mm();
    for (i, section) in design.sections.iter().enumerate() {
        let field = |f| Field::Section(i, f);
        if section.kind.is_nose() && i > 0 {
            push(field(SectionField::Kind), Problem::NoseNotFirst);
        }
        if section.kind.is_taper() && i == 0 {
            push(field(SectionField::Kind), Problem::TaperFirst);
        }
        let Some(width) = width_mm(design, i) else {
            push(field(SectionField::Diameter), Problem::WidthMissing);
            continue;
        };
        if section.kind == SectionKind::Ogive && section.length_mm < width / 2.0 {
            let problem = Problem::OgiveTooShort { least_mm: width / 2.0 };
            push(field(SectionField::Length), problem);
        }
        if section.kind == SectionKind::Dome && section.length_mm > width / 2.0 {
            let problem = Problem::DomeTooLong { most_mm: width / 2.0 };
            push(field(SectionField::Length), problem);
        }
        if section.kind == SectionKind::Neck {
            let ahead = &design.sections[..i];
            let bottle =
                ahead.iter().enumerate().rev().find(|(_, s)| {
                    matches!(s.kind, SectionKind::Tube | SectionKind::Dome)
                });
            let bottle = bottle.and_then(|(j, _)| Some((j, width_mm(design, j)?)));
            if let Some((j, bottle_mm)) = bottle.filter(|&(_, mm)| width > mm) {
                // The one that is further from usual is the slip.
                if USUAL_BOTTLE_MM / bottle_mm > width / USUAL_NECK_MM {
                    let problem = Problem::BottleTooNarrow { neck_mm: width };
                    push(Field::Section(j, SectionField::Diameter), problem);
                } else {
                    let problem = Problem::NeckTooWide { bottle_mm };
                    push(field(SectionField::Diameter), problem);
                }
            }
        }
        if section.mass == Mass::Joined && i == 0 {
            push(field(SectionField::Mass), Problem::JoinedToNothing);
        }
    }
    let body = Body::new(design);
    for (i, set) in design.fins.iter().enumerate() {
        let field = |f| Field::Fins(i, f);
        if set.mass == Mass::Joined {
            push(field(FinField::Mass), Problem::FinJoined);
        }
        let fin = Fin::new(&set.planform);
        if set.planform.corner_count() < limits::FIN_POINTS.0 {
            push(field(FinField::Planform), Problem::TooFewPoints);
        } else if !fin.is_simple() {
            push(field(FinField::Planform), Problem::FinCrossesItself);
        } else if set.start_mm < length_mm - SAME_PLACE_MM
            && let Some(body) = &body
            && !fin.touches(body, set.start_mm / 1000.0, GLUE_M)
        {
            push(field(FinField::Planform), Problem::FinTouchesNothing);
        }
        let reach_mm = fin.reach_m() * 1000.0;
        let by_mm = set.start_mm + reach_mm - length_mm;
        if set.start_mm >= length_mm - SAME_PLACE_MM {
            push(field(FinField::Start), Problem::FinOffBody { length_mm });
        } else if by_mm > OVERHANG * reach_mm {
            push(field(FinField::Start), Problem::FinOverhangs { by_mm });
        }
        if fin.strips().is_some_and(|s| 2.0 * s.span * s.span > SLENDER * s.area) {
            let place = match set.planform {
                Planform::FourSided { .. } => FinField::Span,
                Planform::PointsMm(_) => FinField::Planform,
            };
            push(field(place), Problem::SlenderFins);
        }
        if set.count == 2 {
            push(field(FinField::Count), Problem::TwoFins);
        } else if set.count > 4 {
            push(field(FinField::Count), Problem::ManyFins);
        }
    }
    for (i, crowd) in crowds(design).into_iter().enumerate() {
        let set = &design.fins[i];
        if design.fins[..i].iter().any(|other| in_same_place(set, other)) {
            push(Field::Fins(i, FinField::Roll), Problem::SameFinsTwice);
        }
        if crowd.is_in_wake() {
            push(Field::Fins(i, FinField::Start), Problem::FinsInWake);
        }
    }
    for (i, weight) in design.weights.iter().enumerate() {
        if weight.position_mm > length_mm + SAME_PLACE_MM {
            let field = Field::Weight(i, WeightField::Position);
            push(field, Problem::WeightOutside { length_mm });
        }
    }
    if !design.sections.is_empty() && !weighs_anything(design) {
        let field = match design.sections[0].mass {
            Mass::WeighedG(_) => SectionField::WeighedMass,
            _ => SectionField::Mass,
        };
        push(Field::Section(0, field), Problem::NothingWeighed);
    }
}

/// Whether two sets of fins are the same fins in the same place.
fn in_same_place(a: &FinSet, b: &FinSet) -> bool {
    let between_deg = 360.0 / f64::from(a.count.max(1));
    let turned_deg = (a.roll_deg - b.roll_deg).rem_euclid(between_deg);
    a.count == b.count
        && a.planform == b.planform
        && (a.start_mm - b.start_mm).abs() < SAME_FINS
        && turned_deg.min(between_deg - turned_deg) < SAME_FINS
}

fn weighs_anything(design: &Design) -> bool {
    let weighs = |mass: Mass| match mass {
        Mass::WeighedG(g) => g > 0.0,
        Mass::Material(_) => true,
        Mass::SheetGPerM2(density) => density > 0.0,
        Mass::Joined => false,
    };
    design.sections.iter().any(|s| weighs(s.mass))
        || design.fins.iter().any(|f| weighs(f.mass))
        || design.weights.iter().any(|w| w.mass_g > 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Example, Severity, check};

    /// The one fault of a changed Puffin, with whether it stops.
    fn fault(change: impl Fn(&mut Design)) -> (String, Severity) {
        let mut design = Example::Puffin.design();
        change(&mut design);
        let faults = check(&design);
        assert_eq!(faults.len(), 1, "{faults:?}");
        (faults[0].field.to_string(), faults[0].severity())
    }

    #[test]
    fn each_misfit_is_named_at_its_field() {
        let stop = |field: &str| (field.to_owned(), Severity::Stop);
        let ask = |field: &str| (field.to_owned(), Severity::Ask);
        assert_eq!(
            fault(|d| d.fins[0].start_mm = 400.0),
            stop("/fins/0/start_mm"),
            "a fin that starts off the body"
        );
        assert_eq!(
            fault(|d| d.fins[0].start_mm = 320.0),
            ask("/fins/0/start_mm"),
            "a fin mostly behind the body"
        );
        assert_eq!(
            fault(|d| d.sections[3].diameter_mm = Some(70.0)),
            stop("/sections/3/diameter_mm"),
            "a neck wider than its bottle"
        );
        assert_eq!(
            fault(|d| d.sections[1].diameter_mm = Some(20.0)),
            stop("/sections/1/diameter_mm"),
            "a bottle narrower than its neck"
        );
        assert_eq!(
            fault(|d| d.weights[0].position_mm = 330.0),
            stop("/weights/0/position_mm"),
            "a weight outside the rocket"
        );
        assert_eq!(
            fault(|d| {
                d.sections[0].kind = SectionKind::Ogive;
                d.sections[0].length_mm = 30.0;
                d.fins[0].start_mm = 120.0;
            }),
            stop("/sections/0/length_mm"),
            "an ogive shorter than half its width"
        );
        assert_eq!(
            fault(|d| d.sections[0].kind = SectionKind::Dome),
            stop("/sections/0/length_mm"),
            "a dome longer than half its width"
        );
        assert_eq!(
            fault(|d| d.sections[2].kind = SectionKind::Cone),
            stop("/sections/2/kind"),
            "a nose in the middle"
        );
        assert_eq!(
            fault(|d| d.sections[0].mass = Mass::Joined),
            stop("/sections/0/mass")
        );
        assert_eq!(fault(|d| d.fins[0].mass = Mass::Joined), stop("/fins/0/mass"));
        assert_eq!(fault(|d| d.fins[0].count = 2), ask("/fins/0/count"));
        assert_eq!(fault(|d| d.fins[0].count = 6), ask("/fins/0/count"));
        assert_eq!(
            fault(|d| d.fins[0].planform = Planform::FourSided {
                root_mm: 40.0,
                tip_mm: 40.0,
                span_mm: 70.0,
                sweep_mm: 0.0,
            }),
            ask("/fins/0/planform/four_sided/span_mm"),
            "fins that stall early"
        );
        let off_the_body = vec![[0.0, 30.0], [20.0, 60.0], [80.0, 60.0], [100.0, 30.0]];
        assert_eq!(
            fault(|d| d.fins[0].planform = Planform::PointsMm(off_the_body.clone())),
            stop("/fins/0/planform"),
            "a fin that touches nothing"
        );
        assert_eq!(
            fault(|d| {
                let mut again = d.fins[0].clone();
                again.roll_deg = 90.0;
                d.fins.push(again);
            }),
            ask("/fins/1/roll_deg"),
            "the same fins twice"
        );
        assert_eq!(
            fault(|d| {
                let mut ahead = d.fins[0].clone();
                ahead.start_mm = 105.0;
                d.fins.push(ahead);
            }),
            ask("/fins/0/start_mm"),
            "fins behind fins"
        );
        for points in [
            vec![[0.0, 0.0], [50.0, 0.0]],
            vec![[0.0, 0.0]; 25],
            vec![[0.0, 0.0], [50.0, 30.0], [0.0, 30.0], [50.0, 0.0]],
        ] {
            let found =
                fault(|d| d.fins[0].planform = Planform::PointsMm(points.clone()));
            assert_eq!(found, stop("/fins/0/planform"));
        }
    }

    #[test]
    fn a_rocket_that_weighs_nothing_is_named() {
        let mut design = Example::Puffin.design();
        design.fins.clear();
        design.weights.clear();
        design.sections[0].mass = Mass::WeighedG(0.0);
        design.sections[1].mass = Mass::WeighedG(0.0);
        let faults = check(&design);
        assert_eq!(faults.len(), 1);
        assert_eq!(faults[0].problem, Problem::NothingWeighed);
    }

    #[test]
    fn all_faults_are_listed_not_just_the_first() {
        let mut design = Example::Puffin.design();
        design.weights[0].position_mm = 900.0;
        design.fins[0].start_mm = 700.0;
        design.sections[0].length_mm = f64::NAN;
        design.name = "a very long name for a rocket indeed".into();
        let fields: Vec<_> = check(&design).iter().map(|f| f.field.to_string()).collect();
        assert!(fields.contains(&"/name".to_owned()));
        assert!(fields.contains(&"/sections/0/length_mm".to_owned()));
        design.sections[0].length_mm = 120.0;
        let fields: Vec<_> = check(&design).iter().map(|f| f.field.to_string()).collect();
        assert_eq!(fields, ["/name", "/fins/0/start_mm", "/weights/0/position_mm"]);
    }
}
