//! All faults of a design, each with the field it belongs to.

mod numbers;
mod parts;
mod slips;

use std::fmt;

use serde::{Serialize, Serializer, ser::SerializeStruct};

use crate::design::field::Field;
use crate::design::units::{Units, trimmed};
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

/// What is wrong. Lengths are in millimetres, masses in grams.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
#[expect(missing_docs, reason = "`sentence` says what each means, in the words used")]
pub enum Problem {
    // Stops.
    NotANumber,
    OutOfBounds { field: Field, least: f64, most: f64 },
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
    /// What is wrong and how to mend it, in a pupil's words and in the units given.
    #[must_use]
    pub fn sentence(&self, units: Units) -> String {
        let length = |mm: f64| units.length(mm);
        let mass = |g: f64| units.scale_reading(g);
        match *self {
            Self::NotANumber => "This needs a number.".into(),
            Self::OutOfBounds { field, least, most } => {
                let quantity = field.quantity();
                let write = |value: f64| match quantity {
                    Some(q) => format!("{} {}", q.number(value, units), q.unit(units)),
                    None => trimmed(value, 3),
                };
                format!(
                    "Use a number from {} to {}.",
                    write(least).trim_end(),
                    write(most).trim_end()
                )
            }
            Self::NoSections => {
                "There is no body yet. Add a nose, a tube or a bottle.".into()
            }
            Self::TooManySections => format!(
                "That is more body sections than fit. Keep {} or fewer.",
                limits::SECTIONS
            ),
            Self::TooManyFinSets => format!(
                "That is more sets of fins than fit. Keep {} or fewer.",
                limits::FIN_SETS
            ),
            Self::TooManyWeights => format!(
                "That is more weights than fit. Keep {} or fewer.",
                limits::WEIGHTS
            ),
            Self::NameTooLong => {
                format!(
                    "Use {} letters or fewer: a link cuts longer names short.",
                    limits::LABEL_CHARS
                )
            }
            Self::TextTooLong => {
                "All names together are too long for a code or a symbol. Make some shorter."
                    .into()
            }
            Self::NoseNotFirst => {
                "A nose can only come first. Move it up, or choose a tube or taper."
                    .into()
            }
            Self::TaperFirst => {
                "A taper starts as wide as the section in front. Put a nose or a tube \
                 in front of it."
                    .into()
            }
            Self::WidthMissing => "How wide is it? Type its width.".into(),
            Self::OgiveTooShort { least_mm } => format!(
                "An ogive this short would bulge. Make it at least {} long, or choose \
                 the ellipsoid.",
                length(least_mm)
            ),
            Self::DomeTooLong { most_mm } => format!(
                "A dome is at most half a ball. Make it {} or shorter, or choose the \
                 ellipsoid.",
                length(most_mm)
            ),
            Self::NeckTooWide { bottle_mm } => format!(
                "A neck is narrower than its bottle, which is {} wide here.",
                length(bottle_mm)
            ),
            Self::BottleTooNarrow { neck_mm } => format!(
                "A bottle is wider than its neck, which is {} wide here.",
                length(neck_mm)
            ),
            Self::JoinedToNothing => {
                "There is nothing in front that it could be weighed with. Weigh it, or \
                 choose a material."
                    .into()
            }
            Self::FinJoined => "Weigh the fins, or choose a material.".into(),
            Self::NothingWeighed => {
                "Nothing weighs anything yet. Type what the parts weigh.".into()
            }
            Self::FinOffBody { length_mm } => format!(
                "The fins start off the body. It ends {} from the nose tip.",
                length(length_mm)
            ),
            Self::TooFewPoints => {
                format!("A fin needs {} corners or more.", limits::FIN_POINTS.0)
            }
            Self::TooManyPoints => {
                format!("Use {} corners or fewer.", limits::FIN_POINTS.1)
            }
            Self::FinCrossesItself => {
                "The edges of this fin cross, or it has no area. Go round its corners in \
                 order: front of the root, outside, rear of the root."
                    .into()
            }
            Self::FinTouchesNothing => {
                "This fin does not touch the body. Measure its corners from the place where \
                 its front meets the body."
                    .into()
            }
            Self::SameFinsTwice => {
                "These fins are in the same place as another set. Is it one set, typed \
                 twice? If not, turn one of them."
                    .into()
            }
            Self::FinsInWake => {
                "These fins fly in the wake of those in front, and may push much less than \
                 worked out here."
                    .into()
            }
            Self::WeightOutside { length_mm } => format!(
                "This weight is outside the rocket, which ends {} from the nose tip.",
                length(length_mm)
            ),
            Self::CentimetresForMillimetres { typed_mm } => format!(
                "Only {}? If you measured in centimetres, type {}.",
                length(typed_mm),
                length(typed_mm * 10.0)
            ),
            Self::KilogramsForGrams { typed_g } => {
                format!(
                    "Does it really weigh {}? Type grams, not kilograms.",
                    mass(typed_g)
                )
            }
            Self::FinOverhangs { by_mm } => format!(
                "The fins reach {} behind the end of the body. Is that right?",
                length(by_mm)
            ),
            Self::TwoFins => {
                "Two fins steady the rocket in one plane only. Three or more do it all \
                 round."
                    .into()
            }
            Self::ManyFins => {
                "With more than four fins, each shades its neighbours.".into()
            }
            Self::SlenderFins => {
                "Long, narrow fins lose their grip on the air early. At large angles they \
                 push less than worked out here."
                    .into()
            }
            Self::MassDiffers { computed_g, measured_g } => format!(
                "The scales say {}, the parts add up to {}. Is a part missing, or wet?",
                mass(measured_g),
                mass(computed_g)
            ),
        }
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.field, self.problem.sentence(Units::METRIC))
    }
}

impl Serialize for Fault {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut fault = serializer.serialize_struct("Fault", 3)?;
        fault.serialize_field("field", &self.field)?;
        fault.serialize_field("severity", &self.severity())?;
        fault.serialize_field("sentence", &self.problem.sentence(Units::METRIC))?;
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
