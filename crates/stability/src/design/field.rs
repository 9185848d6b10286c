//! The name of every value that a person can type or choose, and the way to it.

use std::fmt;
use std::str::FromStr;

use serde::{Serialize, Serializer};

use super::component::Component;
use super::units::{UnitSystem, Units};
use super::{Design, Mass, Planform, limits};

/// One value of a [`Design`], by its place.
///
/// Its text form is the JSON pointer (RFC 6901) of the value in the design, for example
/// `/fins/0/planform/four_sided/root_mm`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Field {
    /// The rocket's name.
    Name,
    /// The list of sections as a whole.
    Sections,
    /// The list of fin sets as a whole.
    FinSets,
    /// The list of weights as a whole.
    Weights,
    /// A value of a section.
    Section(usize, SectionField),
    /// A value of a fin set.
    Fins(usize, FinField),
    /// A value of a weight.
    Weight(usize, WeightField),
    /// What the whole rocket weighed; may be empty.
    TotalMass,
}

/// A value of a section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SectionField {
    /// Its shape (a choice).
    Kind,
    /// Its length.
    Length,
    /// Its width; may be empty.
    Diameter,
    /// Whether it is closed at the front (a choice).
    ClosedFront,
    /// How its mass is known (a choice).
    Mass,
    /// Its weighed mass.
    WeighedMass,
    /// The areal density of its sheet.
    SheetDensity,
}

/// A value of a fin set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FinField {
    /// How many fins.
    Count,
    /// Where the root starts.
    Start,
    /// How far the first fin is turned.
    Roll,
    /// The kind of outline (a choice).
    Planform,
    /// Root length of a four-sided fin.
    Root,
    /// Tip length of a four-sided fin.
    Tip,
    /// Span of a four-sided fin.
    Span,
    /// Sweep of a four-sided fin.
    Sweep,
    /// A coordinate of a corner.
    Point(usize, Axis),
    /// How the mass is known (a choice).
    Mass,
    /// The weighed mass of all fins together.
    WeighedMass,
    /// The areal density of the sheet.
    SheetDensity,
}

/// Which coordinate of a fin's corner.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Axis {
    /// Along the body, towards the tail.
    Along,
    /// Away from the body.
    Out,
}

/// A value of a weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WeightField {
    /// What it is.
    Label,
    /// What it weighs.
    Mass,
    /// Where it is.
    Position,
}
/// What a number counts or measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// A whole number.
    Count,
    /// Millimetres.
    Length,
    /// Grams.
    Mass,
    /// Degrees.
    Angle,
    /// Grams per square metre.
    ArealDensity,
}

impl Quantity {
    /// How many steps of the stored grid make one unit: lengths are kept to 0.1 mm,
    /// masses to 0.01 g, the others to whole units.
    #[must_use]
    pub fn steps_per_unit(self) -> f64 {
        match self {
            Self::Length => 10.0,
            Self::Mass => 100.0,
            Self::Count | Self::Angle | Self::ArealDensity => 1.0,
        }
    }

    /// The nearest value on the stored grid. A number far out of all bounds, or not
    /// finite, stays as it is.
    #[must_use]
    pub fn rounded(self, value: f64) -> f64 {
        if value.is_nan() || value.abs() >= 1e12 {
            return value;
        }
        let steps = self.steps_per_unit();
        // Adding zero turns a negative zero into a plain one.
        (value * steps).round() / steps + 0.0
    }

    /// A value of this quantity as a person would type it, without its unit.
    #[must_use]
    pub fn number(self, value: f64, units: Units) -> String {
        match self {
            Self::Length => units.length_number(value),
            Self::Mass => units.mass_number(value),
            Self::Count | Self::Angle | Self::ArealDensity => {
                super::units::trimmed(value, 0)
            }
        }
    }

    /// The short name of the unit; empty for a count.
    #[must_use]
    pub fn unit(self, units: Units) -> &'static str {
        match self {
            Self::Count => "",
            Self::Length => units.length_unit(),
            Self::Mass => units.mass_unit(),
            Self::Angle => "°",
            Self::ArealDensity => "g/m²",
        }
    }

    /// How much one press of an arrow key changes a value: 1 mm or 1/16 in, 1 g or
    /// 0.1 oz, 1 degree.
    #[must_use]
    pub fn key_step(self, units: Units) -> f64 {
        match (self, units.system) {
            (Self::Length, UnitSystem::Inch) => units.mm_per_unit() / 16.0,
            (Self::Mass, UnitSystem::Inch) => units.g_per_unit() / 10.0,
            (Self::ArealDensity, _) => 10.0,
            _ => 1.0,
        }
    }
}

/// A text that is not the JSON pointer of any [`Field`].
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("“{0}” is not the place of a value in a design")]
pub struct ParseFieldError(pub String);

impl Field {
    /// Every number that the design holds now, empty optional ones included, in the order
    /// of the design.
    #[must_use]
    pub fn numbers(design: &Design) -> Vec<Self> {
        let mut fields = Vec::new();
        for (i, section) in design.sections.iter().enumerate() {
            fields.push(Self::Section(i, SectionField::Length));
            fields.push(Self::Section(i, SectionField::Diameter));
            match section.mass {
                Mass::WeighedG(_) => {
                    fields.push(Self::Section(i, SectionField::WeighedMass));
                }
                Mass::SheetGPerM2(_) => {
                    fields.push(Self::Section(i, SectionField::SheetDensity));
                }
                Mass::Material(_) | Mass::Joined => {}
            }
        }
        for (i, set) in design.fins.iter().enumerate() {
            let mut push = |field| fields.push(Self::Fins(i, field));
            push(FinField::Count);
            push(FinField::Start);
            push(FinField::Roll);
            match &set.planform {
                Planform::FourSided { .. } => {
                    push(FinField::Root);
                    push(FinField::Tip);
                    push(FinField::Span);
                    push(FinField::Sweep);
                }
                Planform::PointsMm(points) => {
                    for k in 0..points.len() {
                        push(FinField::Point(k, Axis::Along));
                        push(FinField::Point(k, Axis::Out));
                    }
                }
            }
            match set.mass {
                Mass::WeighedG(_) => push(FinField::WeighedMass),
                Mass::SheetGPerM2(_) => push(FinField::SheetDensity),
                Mass::Material(_) | Mass::Joined => {}
            }
        }
        for i in 0..design.weights.len() {
            fields.push(Self::Weight(i, WeightField::Mass));
            fields.push(Self::Weight(i, WeightField::Position));
        }
        fields.push(Self::TotalMass);
        fields
    }

    /// The part that the field belongs to, if it belongs to one.
    #[must_use]
    pub fn part(self) -> Option<Component> {
        match self {
            Self::Section(i, _) => Some(Component::Section(i)),
            Self::Fins(i, _) => Some(Component::Fins(i)),
            Self::Weight(i, _) => Some(Component::Weight(i)),
            Self::Name
            | Self::Sections
            | Self::FinSets
            | Self::Weights
            | Self::TotalMass => None,
        }
    }

    /// What the field measures; `None` when it is not a number.
    #[must_use]
    pub fn quantity(self) -> Option<Quantity> {
        match self {
            Self::Section(_, field) => match field {
                SectionField::Length | SectionField::Diameter => Some(Quantity::Length),
                SectionField::WeighedMass => Some(Quantity::Mass),
                SectionField::SheetDensity => Some(Quantity::ArealDensity),
                SectionField::Kind | SectionField::ClosedFront | SectionField::Mass => {
                    None
                }
            },
            Self::Fins(_, field) => match field {
                FinField::Count => Some(Quantity::Count),
                FinField::Roll => Some(Quantity::Angle),
                FinField::WeighedMass => Some(Quantity::Mass),
                FinField::SheetDensity => Some(Quantity::ArealDensity),
                FinField::Start
                | FinField::Root
                | FinField::Tip
                | FinField::Span
                | FinField::Sweep
                | FinField::Point(..) => Some(Quantity::Length),
                FinField::Planform | FinField::Mass => None,
            },
            Self::Weight(_, WeightField::Mass) | Self::TotalMass => Some(Quantity::Mass),
            Self::Weight(_, WeightField::Position) => Some(Quantity::Length),
            Self::Weight(_, WeightField::Label)
            | Self::Name
            | Self::Sections
            | Self::FinSets
            | Self::Weights => None,
        }
    }

    /// The least and the most that the number may be, in millimetres, grams, degrees or
    /// grams per square metre. Meaningless for a field that is not a number.
    #[must_use]
    pub fn bounds(self) -> (f64, f64) {
        match self {
            Self::Section(_, SectionField::Length) => (1.0, limits::LENGTH_MM),
            Self::Section(_, SectionField::Diameter) => limits::DIAMETER_MM,
            Self::Section(_, SectionField::SheetDensity)
            | Self::Fins(_, FinField::SheetDensity) => limits::SHEET_G_PER_M2,
            Self::Fins(_, FinField::Count) => {
                (f64::from(limits::FIN_COUNT.0), f64::from(limits::FIN_COUNT.1))
            }
            Self::Fins(_, FinField::Roll) => (-360.0, 360.0),
            Self::Fins(_, FinField::Root | FinField::Span) => (1.0, limits::FIN_REACH_MM),
            Self::Fins(_, FinField::Tip | FinField::Point(_, Axis::Out)) => {
                (0.0, limits::FIN_REACH_MM)
            }
            Self::Fins(_, FinField::Sweep | FinField::Point(_, Axis::Along)) => {
                (-limits::FIN_REACH_MM, limits::FIN_REACH_MM)
            }
            Self::Fins(_, FinField::Start) | Self::Weight(_, WeightField::Position) => {
                (0.0, limits::LENGTH_MM)
            }
            Self::TotalMass => (0.1, limits::MASS_G),
            _ => (0.0, limits::MASS_G),
        }
    }

    /// Whether the number may be left empty.
    #[must_use]
    pub fn is_optional(self) -> bool {
        matches!(self, Self::Section(_, SectionField::Diameter) | Self::TotalMass)
    }

    /// The number that the design holds here, in millimetres, grams, degrees or grams per
    /// square metre. `None` when it is empty, absent or not a number.
    #[must_use]
    pub fn get(self, design: &Design) -> Option<f64> {
        match self {
            Self::Section(i, field) => {
                let section = design.sections.get(i)?;
                match field {
                    SectionField::Length => Some(section.length_mm),
                    SectionField::Diameter => section.diameter_mm,
                    SectionField::WeighedMass => weighed(section.mass),
                    SectionField::SheetDensity => sheet(section.mass),
                    SectionField::Kind
                    | SectionField::ClosedFront
                    | SectionField::Mass => None,
                }
            }
            Self::Fins(i, field) => {
                let set = design.fins.get(i)?;
                match (field, &set.planform) {
                    (FinField::Count, _) => Some(f64::from(set.count)),
                    (FinField::Start, _) => Some(set.start_mm),
                    (FinField::Roll, _) => Some(set.roll_deg),
                    (FinField::WeighedMass, _) => weighed(set.mass),
                    (FinField::SheetDensity, _) => sheet(set.mass),
                    (FinField::Root, &Planform::FourSided { root_mm, .. }) => {
                        Some(root_mm)
                    }
                    (FinField::Tip, &Planform::FourSided { tip_mm, .. }) => Some(tip_mm),
                    (FinField::Span, &Planform::FourSided { span_mm, .. }) => {
                        Some(span_mm)
                    }
                    (FinField::Sweep, &Planform::FourSided { sweep_mm, .. }) => {
                        Some(sweep_mm)
                    }
                    (FinField::Point(k, axis), Planform::PointsMm(points)) => {
                        points.get(k).map(|point| point[axis as usize])
                    }
                    _ => None,
                }
            }
            Self::Weight(i, field) => {
                let weight = design.weights.get(i)?;
                match field {
                    WeightField::Mass => Some(weight.mass_g),
                    WeightField::Position => Some(weight.position_mm),
                    WeightField::Label => None,
                }
            }
            Self::TotalMass => design.measured.total_mass_g,
            Self::Name | Self::Sections | Self::FinSets | Self::Weights => None,
        }
    }

    /// Puts a number here, as it is: [`check`](crate::check()) says whether it makes
    /// sense. Returns whether the design has such a place and may hold the value there;
    /// `None` is refused where a number must stand.
    pub fn set(self, design: &mut Design, value: Option<f64>) -> bool {
        if let Some(place) = self.optional_mut(design) {
            *place = value;
            return true;
        }
        let Some(value) = value else { return false };
        if let Self::Fins(i, FinField::Count) = self {
            return match (design.fins.get_mut(i), whole(value)) {
                (Some(set), Some(count)) => {
                    set.count = count;
                    true
                }
                _ => false,
            };
        }
        match self.number_mut(design) {
            Some(place) => {
                *place = value;
                true
            }
            None => false,
        }
    }

    fn optional_mut(self, design: &mut Design) -> Option<&mut Option<f64>> {
        match self {
            Self::Section(i, SectionField::Diameter) => {
                design.sections.get_mut(i).map(|s| &mut s.diameter_mm)
            }
            Self::TotalMass => Some(&mut design.measured.total_mass_g),
            _ => None,
        }
    }

    fn number_mut(self, design: &mut Design) -> Option<&mut f64> {
        match self {
            Self::Section(i, field) => {
                let section = design.sections.get_mut(i)?;
                match (field, &mut section.mass) {
                    (SectionField::Length, _) => Some(&mut section.length_mm),
                    (SectionField::WeighedMass, Mass::WeighedG(g)) => Some(g),
                    (SectionField::SheetDensity, Mass::SheetGPerM2(d)) => Some(d),
                    _ => None,
                }
            }
            Self::Fins(i, field) => {
                let set = design.fins.get_mut(i)?;
                match (field, &mut set.planform, &mut set.mass) {
                    (FinField::Start, _, _) => Some(&mut set.start_mm),
                    (FinField::Roll, _, _) => Some(&mut set.roll_deg),
                    (FinField::WeighedMass, _, Mass::WeighedG(g)) => Some(g),
                    (FinField::SheetDensity, _, Mass::SheetGPerM2(d)) => Some(d),
                    (FinField::Root, Planform::FourSided { root_mm, .. }, _) => {
                        Some(root_mm)
                    }
                    (FinField::Tip, Planform::FourSided { tip_mm, .. }, _) => {
                        Some(tip_mm)
                    }
                    (FinField::Span, Planform::FourSided { span_mm, .. }, _) => {
                        Some(span_mm)
                    }
                    (FinField::Sweep, Planform::FourSided { sweep_mm, .. }, _) => {
                        Some(sweep_mm)
                    }
                    (FinField::Point(k, axis), Planform::PointsMm(points), _) => {
                        points.get_mut(k).map(|point| &mut point[axis as usize])
                    }
                    _ => None,
                }
            }
            Self::Weight(i, field) => {
                let weight = design.weights.get_mut(i)?;
                match field {
                    WeightField::Mass => Some(&mut weight.mass_g),
                    WeightField::Position => Some(&mut weight.position_mm),
                    WeightField::Label => None,
                }
            }
            _ => None,
        }
    }
}

fn weighed(mass: Mass) -> Option<f64> {
    if let Mass::WeighedG(g) = mass { Some(g) } else { None }
}

fn sheet(mass: Mass) -> Option<f64> {
    if let Mass::SheetGPerM2(d) = mass { Some(d) } else { None }
}

/// The value as a count, if it is a whole number that fits.
fn whole(value: f64) -> Option<u32> {
    let fits = value.fract() == 0.0 && (0.0..=f64::from(u32::MAX)).contains(&value);
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "just checked"
    )]
    fits.then_some(value as u32)
}

impl fmt::Display for Field {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Name => f.write_str("/name"),
            Self::Sections => f.write_str("/sections"),
            Self::FinSets => f.write_str("/fins"),
            Self::Weights => f.write_str("/weights"),
            Self::Section(i, field) => write!(f, "/sections/{i}/{}", field.path()),
            Self::Fins(i, FinField::Point(k, axis)) => {
                write!(f, "/fins/{i}/planform/own_outline_mm/{k}/{}", *axis as usize)
            }
            Self::Fins(i, field) => write!(f, "/fins/{i}/{}", field.path()),
            Self::Weight(i, field) => write!(f, "/weights/{i}/{}", field.path()),
            Self::TotalMass => write!(f, "/measured/total_mass_g"),
        }
    }
}

impl FromStr for Field {
    type Err = ParseFieldError;

    fn from_str(text: &str) -> Result<Self, ParseFieldError> {
        parse(text).ok_or_else(|| ParseFieldError(text.to_owned()))
    }
}

impl Serialize for Field {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

fn parse(text: &str) -> Option<Field> {
    match text {
        "/name" => return Some(Field::Name),
        "/sections" => return Some(Field::Sections),
        "/fins" => return Some(Field::FinSets),
        "/weights" => return Some(Field::Weights),
        "/measured/total_mass_g" => return Some(Field::TotalMass),
        _ => {}
    }
    let (list, rest) = text.strip_prefix('/')?.split_once('/')?;
    let (index, rest) = rest.split_once('/')?;
    let index = index.parse().ok()?;
    match list {
        "sections" => find(&SectionField::ALL, SectionField::path, rest)
            .map(|field| Field::Section(index, field)),
        "weights" => find(&WeightField::ALL, WeightField::path, rest)
            .map(|field| Field::Weight(index, field)),
        "fins" => {
            let field = match rest.strip_prefix("planform/own_outline_mm/") {
                Some(point) => {
                    let (k, axis) = point.split_once('/')?;
                    let axis = match axis {
                        "0" => Axis::Along,
                        "1" => Axis::Out,
                        _ => return None,
                    };
                    FinField::Point(k.parse().ok()?, axis)
                }
                None => find(&FinField::ALL, FinField::path, rest)?,
            };
            Some(Field::Fins(index, field))
        }
        _ => None,
    }
}

/// The one of `all` whose path is `path`.
fn find<T: Copy>(all: &[T], path_of: fn(T) -> &'static str, path: &str) -> Option<T> {
    all.iter().copied().find(|&field| path_of(field) == path)
}

impl SectionField {
    const ALL: [Self; 7] = [
        Self::Kind,
        Self::Length,
        Self::Diameter,
        Self::ClosedFront,
        Self::Mass,
        Self::WeighedMass,
        Self::SheetDensity,
    ];

    fn path(self) -> &'static str {
        match self {
            Self::Kind => "kind",
            Self::Length => "length_mm",
            Self::Diameter => "diameter_mm",
            Self::ClosedFront => "closed_front",
            Self::Mass => "mass",
            Self::WeighedMass => "mass/weighed_g",
            Self::SheetDensity => "mass/sheet_g_per_m2",
        }
    }
}

impl FinField {
    /// All but the corners, which carry numbers.
    const ALL: [Self; 11] = [
        Self::Count,
        Self::Start,
        Self::Roll,
        Self::Planform,
        Self::Root,
        Self::Tip,
        Self::Span,
        Self::Sweep,
        Self::Mass,
        Self::WeighedMass,
        Self::SheetDensity,
    ];

    fn path(self) -> &'static str {
        match self {
            Self::Count => "count",
            Self::Start => "start_mm",
            Self::Roll => "roll_deg",
            Self::Planform => "planform",
            Self::Root => "planform/four_sided/root_mm",
            Self::Tip => "planform/four_sided/tip_mm",
            Self::Span => "planform/four_sided/span_mm",
            Self::Sweep => "planform/four_sided/sweep_mm",
            Self::Point(..) => "planform/own_outline_mm",
            Self::Mass => "mass",
            Self::WeighedMass => "mass/weighed_g",
            Self::SheetDensity => "mass/sheet_g_per_m2",
        }
    }
}

impl WeightField {
    const ALL: [Self; 3] = [Self::Label, Self::Mass, Self::Position];

    fn path(self) -> &'static str {
        match self {
            Self::Label => "label",
            Self::Mass => "mass_g",
            Self::Position => "position_mm",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Example;

    /// The text form really is the place in the JSON of the same design.
    #[test]
    fn text_form_is_the_json_pointer_of_the_number() {
        let mut designs: Vec<Design> = Example::ALL.map(Example::design).into();
        designs[0].fins[0].planform =
            Planform::PointsMm(vec![[0.0, 0.0], [9.0, 4.0], [20.0, 0.0]]);
        designs[1].sections[0].mass = Mass::SheetGPerM2(120.0);
        designs[2].fins[0].mass = Mass::SheetGPerM2(500.0);
        designs[3].measured.total_mass_g = Some(80.0);
        for design in designs {
            let json = serde_json::to_value(&design).unwrap();
            for field in Field::numbers(&design) {
                let pointer = field.to_string();
                assert_eq!(pointer.parse(), Ok(field));
                let there = json.pointer(&pointer).expect(&pointer);
                assert_eq!(there.as_f64(), field.get(&design), "{pointer}");
            }
        }
    }

    #[test]
    fn what_is_set_is_what_is_got() {
        let mut design = Example::Puffin.design();
        for field in Field::numbers(&design) {
            let (least, most) = field.bounds();
            for value in [least, most] {
                assert!(field.set(&mut design, Some(value)), "{field}");
                assert_eq!(field.get(&design), Some(value), "{field}");
            }
            assert_eq!(field.set(&mut design, None), field.is_optional(), "{field}");
        }
    }

    #[test]
    fn a_place_that_is_not_there_is_refused() {
        let mut design = Example::Puffin.design();
        let before = design.clone();
        for field in [
            Field::Section(99, SectionField::Length),
            Field::Fins(7, FinField::Count),
            Field::Fins(0, FinField::Point(0, Axis::Along)),
            Field::Weight(0, WeightField::Label),
            Field::Name,
        ] {
            assert!(!field.set(&mut design, Some(1.0)), "{field}");
        }
        assert!(!Field::Fins(0, FinField::Count).set(&mut design, Some(3.5)));
        assert_eq!(design, before);
        for text in ["", "/", "/fins", "/fins/0", "/fins/0/colour", "/sections/-1/mass"] {
            if text != "/fins" {
                assert!(text.parse::<Field>().is_err(), "{text}");
            }
        }
    }

    #[test]
    fn the_stored_grid_is_stable() {
        for (quantity, value, rounded) in [
            (Quantity::Length, 12.34, 12.3),
            (Quantity::Mass, 2.268, 2.27),
            (Quantity::Angle, -0.4, 0.0),
        ] {
            assert_eq!(quantity.rounded(value), rounded);
            assert_eq!(quantity.rounded(rounded), rounded);
        }
        assert!(Quantity::Angle.rounded(-0.4).is_sign_positive());
        assert_eq!(Quantity::Mass.rounded(1e307), 1e307);
    }
}
