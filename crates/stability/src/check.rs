//! All faults of a design, each with the field it belongs to.

mod numbers;
mod parts;
mod slips;

use serde::{Serialize, Serializer, ser::SerializeStruct};

use crate::design::field::Field;
use crate::design::{Design, limits};
use crate::report::Figures;

/// One fault of a design.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fault {
    /// The field that has to change.
    pub field: Field,
    /// What is wrong.
    pub problem: Problem,
}

/// Whether a fault stops the computation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Severity {
    /// Nothing can be worked out until it is mended.
    Stop,
    /// The figures stand, but the value looks like a slip, or needs a word.
    Ask,
}

/// What is wrong. Lengths are in millimetres, masses in grams, bounds in the unit of the
/// field.
#[derive(Clone, Copy, Debug, PartialEq)]
#[expect(missing_docs, reason = "their names say it, and `problems.ftl` in sentences")]
pub enum Problem {
    // Stops.
    NotANumber,
    OutOfBounds { least: f64, most: f64 },
    NoSections,
    TooManySections,
    TooManyFinSets,
    TooManyWeights,
    NameTooLong,
    TextTooLong,
    NoseNotFirst,
    TaperFirst,
    WidthMissing,
    OgiveTooShort { least_mm: f64 },
    DomeTooLong { most_mm: f64 },
    NeckTooWide { bottle_mm: f64 },
    BottleTooNarrow { neck_mm: f64 },
    JoinedToNothing,
    FinJoined,
    NothingWeighed,
    FinOffBody { length_mm: f64 },
    TooFewPoints,
    TooManyPoints,
    FinCrossesItself,
    FinTouchesNothing,
    WeightOutside { length_mm: f64 },
    // Questions.
    CentimetresForMillimetres { typed_mm: f64 },
    KilogramsForGrams { typed_g: f64 },
    FinOverhangs { by_mm: f64 },
    TwoFins,
    ManyFins,
    SlenderFins,
    SameFinsTwice,
    FinsInWake,
    MassDiffers { computed_g: f64, measured_g: f64 },
}

impl Fault {
    /// Whether it stops the computation.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self.problem {
            Problem::CentimetresForMillimetres { .. }
            | Problem::KilogramsForGrams { .. }
            | Problem::FinOverhangs { .. }
            | Problem::TwoFins
            | Problem::ManyFins
            | Problem::SlenderFins
            | Problem::SameFinsTwice
            | Problem::FinsInWake
            | Problem::MassDiffers { .. }
            // No name is worth a drawing that stands still.
            | Problem::NameTooLong
            | Problem::TextTooLong => Severity::Ask,
            _ => Severity::Stop,
        }
    }
}

impl Problem {
    /// The key by which other programs know it: it stays when the words change.
    #[must_use]
    pub fn code(&self) -> &'static str {
        match self {
            Self::NotANumber => "not_a_number",
            Self::OutOfBounds { .. } => "out_of_bounds",
            Self::NoSections => "no_sections",
            Self::TooManySections => "too_many_sections",
            Self::TooManyFinSets => "too_many_fin_sets",
            Self::TooManyWeights => "too_many_weights",
            Self::NameTooLong => "name_too_long",
            Self::TextTooLong => "text_too_long",
            Self::NoseNotFirst => "nose_not_first",
            Self::TaperFirst => "taper_first",
            Self::WidthMissing => "width_missing",
            Self::OgiveTooShort { .. } => "ogive_too_short",
            Self::DomeTooLong { .. } => "dome_too_long",
            Self::NeckTooWide { .. } => "neck_too_wide",
            Self::BottleTooNarrow { .. } => "bottle_too_narrow",
            Self::JoinedToNothing => "joined_to_nothing",
            Self::FinJoined => "fin_joined",
            Self::NothingWeighed => "nothing_weighed",
            Self::FinOffBody { .. } => "fin_off_body",
            Self::TooFewPoints => "too_few_points",
            Self::TooManyPoints => "too_many_points",
            Self::FinCrossesItself => "fin_crosses_itself",
            Self::FinTouchesNothing => "fin_touches_nothing",
            Self::WeightOutside { .. } => "weight_outside",
            Self::CentimetresForMillimetres { .. } => "centimetres_for_millimetres",
            Self::KilogramsForGrams { .. } => "kilograms_for_grams",
            Self::FinOverhangs { .. } => "fin_overhangs",
            Self::TwoFins => "two_fins",
            Self::ManyFins => "many_fins",
            Self::SlenderFins => "slender_fins",
            Self::SameFinsTwice => "same_fins_twice",
            Self::FinsInWake => "fins_in_wake",
            Self::MassDiffers { .. } => "mass_differs",
        }
    }

    /// Its numbers by their names. A name ends in its unit; one without is in the unit of
    /// the field, or counts.
    #[must_use]
    pub fn values(&self) -> ProblemValues {
        #[expect(clippy::cast_precision_loss, reason = "a few dozen at most")]
        let count = |name, most: usize| vec![(name, most as f64)];
        ProblemValues(match *self {
            Self::OutOfBounds { least, most } => vec![("least", least), ("most", most)],
            Self::TooManySections => count("most", limits::SECTIONS),
            Self::TooManyFinSets => count("most", limits::FIN_SETS),
            Self::TooManyWeights => count("most", limits::WEIGHTS),
            Self::NameTooLong => count("most", limits::LABEL_CHARS),
            Self::TooFewPoints => count("least", limits::FIN_POINTS.0),
            Self::TooManyPoints => count("most", limits::FIN_POINTS.1),
            Self::OgiveTooShort { least_mm } => vec![("least_mm", least_mm)],
            Self::DomeTooLong { most_mm } => vec![("most_mm", most_mm)],
            Self::NeckTooWide { bottle_mm } => vec![("bottle_mm", bottle_mm)],
            Self::BottleTooNarrow { neck_mm } => vec![("neck_mm", neck_mm)],
            Self::FinOffBody { length_mm } | Self::WeightOutside { length_mm } => {
                vec![("length_mm", length_mm)]
            }
            Self::CentimetresForMillimetres { typed_mm } => vec![("typed_mm", typed_mm)],
            Self::KilogramsForGrams { typed_g } => vec![("typed_g", typed_g)],
            Self::FinOverhangs { by_mm } => vec![("by_mm", by_mm)],
            Self::MassDiffers { computed_g, measured_g } => {
                vec![("computed_g", computed_g), ("measured_g", measured_g)]
            }
            _ => Vec::new(),
        })
    }
}

/// The numbers of a [`Problem`], each with its name.
#[derive(Clone, Debug, PartialEq)]
pub struct ProblemValues(pub Vec<(&'static str, f64)>);

impl Serialize for ProblemValues {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().copied())
    }
}

impl Serialize for Fault {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut fault = serializer.serialize_struct("Fault", 4)?;
        fault.serialize_field("field", &self.field)?;
        fault.serialize_field("severity", &self.severity())?;
        fault.serialize_field("code", self.problem.code())?;
        fault.serialize_field("values", &self.problem.values())?;
        fault.end()
    }
}

/// Every fault that shows in the description itself, in the order of the design.
///
/// ```
/// use noseward_stability::{Example, Problem, check};
///
/// let mut design = Example::Puffin.design();
/// design.weights[0].position_mm = 900.0;
/// let faults = check(&design);
/// assert!(matches!(faults[0].problem, Problem::WeightOutside { .. }));
/// assert_eq!(faults[0].field.to_string(), "/weights/0/position_mm");
/// ```
#[must_use]
pub fn check(design: &Design) -> Vec<Fault> {
    let mut found = Findings::default();
    numbers::check(design, &mut found);
    // What follows from a number that cannot stand is not worth a sentence.
    let numbers_stand = !found.0.iter().any(|fault| {
        matches!(fault.problem, Problem::NotANumber | Problem::OutOfBounds { .. })
    });
    if numbers_stand && !numbers::is_too_large(design) {
        parts::check(design, &mut found);
        slips::check(design, &mut found);
    }
    found.0
}

/// Faults in the order of the design, one for each field: one sentence is enough.
#[derive(Debug, Default)]
struct Findings(Vec<Fault>);

impl Findings {
    /// Adds a fault, unless its field has one already that is as severe.
    fn push(&mut self, field: Field, problem: Problem) {
        let fault = Fault { field, problem };
        match self.0.binary_search_by_key(&field, |known| known.field) {
            Ok(i) if fault.severity() < self.0[i].severity() => self.0[i] = fault,
            Ok(_) => {}
            Err(i) => self.0.insert(i, fault),
        }
    }
}

/// Share by which a measured mass may differ from the computed one before it is asked
/// about. Our judgement: materials vary by a tenth, glue and tape add as much.
const MASS_DIFFERENCE: f64 = 0.25;

/// Questions that need the figures: measured against computed.
pub(crate) fn compare_with_measured(design: &Design, figures: &Figures) -> Vec<Fault> {
    let mut faults = Vec::new();
    let computed_g = figures.computed_mass.mass_kg * 1000.0;
    if let Some(measured_g) = design.measured.total_mass_g
        && (measured_g - computed_g).abs() > MASS_DIFFERENCE * computed_g
    {
        faults.push(Fault {
            field: Field::TotalMass,
            problem: Problem::MassDiffers { computed_g, measured_g },
        });
    }
    faults
}
