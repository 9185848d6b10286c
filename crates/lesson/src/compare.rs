//! What was measured beside what was worked out.

use noseward_stability::{Design, Units};

use crate::{BalancePoint, End, Measurements, ReadingStats, Rocket};

/// A value as measured and as worked out, in millimetres from the nose tip; for the
/// separation in millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Beside {
    /// What the readings come to, if there are any.
    pub measured: Option<ReadingStats>,
    /// What the description comes to.
    pub computed_mm: f64,
}

/// The two points and the separation, measured and worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Comparison {
    /// The centre of mass.
    pub mass: Beside,
    /// The centre of pressure (side-on).
    pub pressure: Beside,
    /// The separation, positive where the centre of mass is nearer the nose. Its least and
    /// most are those that the readings of the two points leave open.
    pub separation: Beside,
}

/// Less than this apart, in millimetres, measured and computed agree however small the
/// range is. Our judgement: a string, or the edge that a card lies on, is as wide.
pub const AGREE_MM: f64 = 5.0;
/// The scales may differ by this share from the parts together before it is said. Our
/// judgement.
const MASS_SHARE: f64 = 0.05;

impl Beside {
    /// Measured less computed, in millimetres: positive where the measured one is nearer
    /// the tail. `None` where nothing was measured.
    #[must_use]
    pub fn difference_mm(&self) -> Option<f64> {
        self.measured.map(|measured| measured.middle_mm - self.computed_mm)
    }

    /// The same, less the computed value as it is written in some units: the three numbers
    /// add up on a page.
    #[must_use]
    pub fn difference_as_read_mm(&self, units: Units) -> Option<f64> {
        let computed_mm = units.as_read(self.computed_mm);
        self.measured.map(|measured| measured.middle_mm - computed_mm)
    }

    /// Whether they differ by no more than 5 mm or the range of the readings, whichever is
    /// more; `None` where nothing was measured.
    #[must_use]
    pub fn agrees(&self) -> Option<bool> {
        let allowed_mm = self.measured?.range_mm().max(AGREE_MM);
        Some(self.difference_mm()?.abs() <= allowed_mm)
    }
}

impl Comparison {
    /// Of one point.
    #[must_use]
    pub fn of(&self, point: BalancePoint) -> &Beside {
        match point {
            BalancePoint::Mass => &self.mass,
            BalancePoint::Pressure => &self.pressure,
        }
    }
}

/// Measured beside computed; `None` when the figures of the rocket cannot be worked out.
///
/// The computed values are those of the parts, in the view of the drawing.
#[must_use]
pub fn compare(rocket: &Rocket, measured: &Measurements) -> Option<Comparison> {
    let figures = rocket.figures()?;
    let length_mm = rocket.design().length_mm();
    let beside = |point, computed_m: f64| Beside {
        measured: measured.middle(point, length_mm),
        computed_mm: computed_m * 1000.0,
    };
    let mass = beside(BalancePoint::Mass, figures.computed_mass.centre_m);
    let pressure = beside(BalancePoint::Pressure, figures.centre_of_pressure_side_on_m);
    let between = |(mass, pressure): (ReadingStats, ReadingStats)| ReadingStats {
        middle_mm: pressure.middle_mm - mass.middle_mm,
        least_mm: pressure.least_mm - mass.most_mm,
        most_mm: pressure.most_mm - mass.least_mm,
        count: mass.count.min(pressure.count),
    };
    let separation = Beside {
        measured: mass.measured.zip(pressure.measured).map(between),
        computed_mm: pressure.computed_mm - mass.computed_mm,
    };
    Some(Comparison { mass, pressure, separation })
}

/// Something to say about measured and computed. The causes are questions.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Explanation {
    /// They agree.
    Agree {
        /// The point.
        point: BalancePoint,
        /// How far apart they are all the same, in millimetres.
        apart_mm: f64,
    },
    /// They differ.
    Differ {
        /// The point.
        point: BalancePoint,
        /// How far apart they are, in millimetres.
        apart_mm: f64,
        /// The end that the measured one is nearer to.
        nearer: End,
    },
    /// But the readings differ as much among themselves.
    CannotTell {
        /// By how much, in millimetres.
        range_mm: f64,
    },
    /// It may have been read from the other end.
    OtherEnd,
    /// The tail may be heavier than described.
    TailHeavier,
    /// The tail may be lighter than described, or the nose heavier.
    TailLighter,
    /// A part may be missing.
    PartMissing {
        /// What the scales say, in grams.
        scales_g: f64,
        /// What the parts add up to, in grams.
        parts_g: f64,
    },
    /// The rocket was not weighed.
    NotWeighed,
    /// The card may not be the same all over.
    Card,
    /// The cut-out may not be flat, or its fins not right.
    CutOut,
    /// The cut-out was not measured.
    CutOutLength,
    /// An odd number of fins looks different from each side.
    OddFins,
}

/// What there is to say about measured and computed: that they agree, or how far they are
/// apart and what to look at. Empty where nothing was measured, or the figures cannot be
/// worked out.
///
/// How far they are apart is as it is read in these units.
#[must_use]
pub fn explanations(
    rocket: &Rocket,
    measured: &Measurements,
    units: Units,
) -> Vec<Explanation> {
    let mut said = Vec::new();
    let Some(comparison) = compare(rocket, measured) else { return said };
    let design = rocket.design();
    let length_mm = measured.rocket_mm(design.length_mm());
    for point in BalancePoint::ALL {
        let beside = comparison.of(point);
        let (Some(agrees), Some(off_mm)) = (beside.agrees(), beside.difference_mm())
        else {
            continue;
        };
        let apart_mm = beside.difference_as_read_mm(units).unwrap_or(off_mm).abs();
        let range_mm = beside.measured.map_or(0.0, |measured| measured.range_mm());
        if off_mm.abs() <= AGREE_MM && range_mm <= 2.0 * AGREE_MM {
            said.push(Explanation::Agree { point, apart_mm });
            continue;
        }
        let nearer = if off_mm > 0.0 { End::Tail } else { End::Nose };
        said.push(Explanation::Differ { point, apart_mm, nearer });
        if agrees {
            said.push(Explanation::CannotTell { range_mm });
            continue;
        }
        let from_other_end_mm = length_mm - beside.computed_mm;
        let mirrored = beside.measured.is_some_and(|measured| {
            (measured.middle_mm - from_other_end_mm).abs() <= AGREE_MM
        });
        if mirrored {
            said.push(Explanation::OtherEnd);
        }
        match point {
            BalancePoint::Mass => mass_causes(rocket, off_mm, &mut said),
            BalancePoint::Pressure => pressure_causes(design, measured, &mut said),
        }
    }
    said
}

fn mass_causes(rocket: &Rocket, off_mm: f64, said: &mut Vec<Explanation>) {
    said.push(if off_mm > 0.0 {
        Explanation::TailHeavier
    } else {
        Explanation::TailLighter
    });
    let computed = rocket.figures().map(|f| f.computed_mass.mass_kg * 1000.0);
    match (rocket.design().measured.total_mass_g, computed) {
        (Some(scales_g), Some(parts_g)) => {
            if (scales_g - parts_g).abs() > MASS_SHARE * parts_g {
                said.push(Explanation::PartMissing { scales_g, parts_g });
            }
        }
        _ => said.push(Explanation::NotWeighed),
    }
}

fn pressure_causes(
    design: &Design,
    measured: &Measurements,
    said: &mut Vec<Explanation>,
) {
    said.extend([Explanation::Card, Explanation::CutOut]);
    if measured.cutout_length_mm.is_none() {
        said.push(Explanation::CutOutLength);
    }
    if design.fins.iter().any(|set| set.count % 2 == 1) {
        said.push(Explanation::OddFins);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Example, evaluate};

    fn measured(mass: [f64; 3], pressure: [f64; 3]) -> Measurements {
        let mut measured = Measurements::default();
        measured.mass.mm = mass.map(Some);
        measured.pressure.mm = pressure.map(Some);
        measured
    }

    /// The rocket, and what its points are by computation.
    fn tern() -> (Design, f64, f64) {
        let design = Example::Tern.design();
        let comparison =
            compare(&design.clone().into(), &Measurements::default()).unwrap();
        let (mass, pressure) = (comparison.mass, comparison.pressure);
        assert_eq!((mass.agrees(), mass.measured), (None, None));
        (design, mass.computed_mm, pressure.computed_mm)
    }

    fn said(design: &Design, mass_mm: f64, pressure_mm: f64) -> Vec<Explanation> {
        let three = |mm: f64| [mm - 1.0, mm, mm + 2.0];
        let measured = measured(three(mass_mm), three(pressure_mm));
        explanations(&design.clone().into(), &measured, Units::METRIC)
    }

    #[test]
    fn the_separation_is_between_the_points_with_its_range() {
        let (design, mass_mm, pressure_mm) = tern();
        let measured = measured([150.0, 152.0, 151.0], [170.0, 168.0, 175.0]);
        let separation = compare(&design.clone().into(), &measured).unwrap().separation;
        assert!((separation.computed_mm - (pressure_mm - mass_mm)).abs() < 1e-9);
        let middle = separation.measured.unwrap();
        assert_eq!(
            (middle.middle_mm, middle.least_mm, middle.most_mm),
            (19.0, 16.0, 25.0)
        );
        let (worst, measured_mm) = (middle.range_mm(), measured.separation_mm(236.0));
        assert_eq!((worst, measured_mm), (9.0, Some(19.0)));
    }

    #[test]
    fn close_ones_agree() {
        let (design, mass, pressure) = tern();
        let text = said(&design, mass.round() + 4.0, pressure.round() - 4.0);
        let agree = |point| Explanation::Agree { point, apart_mm: 4.0 };
        assert_eq!(text, BalancePoint::ALL.map(agree));
        let three = measured([mass - 4.0, mass, mass + 5.0], [pressure; 3]);
        let text = explanations(&design.clone().into(), &three, Units::METRIC);
        let point = BalancePoint::Mass;
        assert!(matches!(text[0], Explanation::Agree { point: of, .. } if of == point));
        // A wide range leaves more open.
        let wide = measured([mass - 20.0, mass + 12.0, mass + 14.0], [pressure; 3]);
        assert_eq!(
            compare(&design.clone().into(), &wide).unwrap().mass.agrees(),
            Some(true)
        );
        assert_eq!(
            explanations(&Design::default().into(), &wide, Units::METRIC).len(),
            0
        );
        let nothing = Measurements::default();
        assert_eq!(
            explanations(&design.clone().into(), &nothing, Units::METRIC).len(),
            0
        );
    }

    #[test]
    fn a_heavier_tail_or_a_lighter_one() {
        let (mut design, mass, pressure) = tern();
        let back = said(&design, mass.round() + 20.5, pressure);
        let point = BalancePoint::Mass;
        let differ = |apart_mm, nearer| Explanation::Differ { point, apart_mm, nearer };
        assert_eq!(back[0], differ(20.5, End::Tail));
        assert!(back.contains(&Explanation::TailHeavier), "{back:?}");
        assert!(back.contains(&Explanation::NotWeighed), "{back:?}");
        assert!(!back.contains(&Explanation::OtherEnd), "{back:?}");
        let forward = said(&design, mass.round() - 20.0, pressure);
        assert_eq!(forward[0], differ(20.0, End::Nose));
        assert!(forward.contains(&Explanation::TailLighter), "{forward:?}");
        let scales_of = |said: Vec<Explanation>| {
            said.into_iter().find_map(|said| match said {
                Explanation::PartMissing { scales_g, .. } => Some(scales_g),
                _ => None,
            })
        };
        design.measured.total_mass_g = Some(60.0);
        let weighed = said(&design, mass - 20.0, pressure);
        assert_eq!(scales_of(weighed), Some(60.0));
        let parts_g = evaluate(&design).figures.unwrap().computed_mass.mass_kg * 1000.0;
        design.measured.total_mass_g = Some(1.03 * parts_g);
        let weighed = said(&design, mass - 20.0, pressure);
        assert!(!weighed.contains(&Explanation::NotWeighed), "{weighed:?}");
        assert_eq!(scales_of(weighed), None);
        design.measured.total_mass_g = Some(0.9 * parts_g);
        let weighed = said(&design, mass - 20.0, pressure);
        assert_eq!(scales_of(weighed), Some(0.9 * parts_g));
    }

    #[test]
    fn a_card_that_is_not_the_rocket() {
        let (mut design, mass, pressure) = tern();
        let text = said(&design, mass, pressure + 15.0);
        use Explanation::{Card, CutOut, CutOutLength, OddFins};
        for cause in [Card, CutOut, CutOutLength, OddFins] {
            assert!(text.contains(&cause), "{cause:?}: {text:?}");
        }
        design.fins[0].count = 4;
        let three = compare(&design.clone().into(), &Measurements::default()).unwrap();
        let text =
            said(&design, three.mass.computed_mm, three.pressure.computed_mm + 15.0);
        assert!(!text.contains(&OddFins), "{text:?}");
    }

    #[test]
    fn all_read_from_the_other_end() {
        let (design, mass, pressure) = tern();
        let length = design.length_mm();
        let text = said(&design, length - mass, pressure);
        assert!(text.contains(&Explanation::OtherEnd), "{text:?}");
    }
}
