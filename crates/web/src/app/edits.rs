//! Changes of a design's structure.

use noseward_stability::{
    Body, COMMON_WEIGHTS, Component, Design, Example, Field, FinField, FinSet, Mass,
    Material, Planform, Report, Section, SectionField, SectionKind, Weight, WeightField,
    WeightKind, limits,
};
use noseward_words as words;

use crate::places::materials;

/// A part that can be added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Addition {
    Nose,
    Tube,
    Taper,
    Neck,
    Fins,
    Weight,
}

impl Addition {
    pub(crate) const ALL: [Self; 6] =
        [Self::Nose, Self::Tube, Self::Taper, Self::Neck, Self::Fins, Self::Weight];

    /// Its name in the markup.
    pub(crate) fn key(self) -> &'static str {
        match self {
            Self::Nose => "nose",
            Self::Tube => "tube",
            Self::Taper => "taper",
            Self::Neck => "neck",
            Self::Fins => "fins",
            Self::Weight => "weight",
        }
    }

    pub(crate) fn parse(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|a| a.key() == key)
    }

    /// Whether one more fits.
    pub(crate) fn fits(self, design: &Design) -> bool {
        match self {
            Self::Nose => {
                design.sections.len() < limits::SECTIONS
                    && design.sections.first().is_none_or(|s| !s.kind.is_nose())
            }
            Self::Tube | Self::Neck => design.sections.len() < limits::SECTIONS,
            Self::Taper => {
                !design.sections.is_empty() && design.sections.len() < limits::SECTIONS
            }
            Self::Fins => {
                !design.sections.is_empty() && design.fins.len() < limits::FIN_SETS
            }
            Self::Weight => {
                !design.sections.is_empty() && design.weights.len() < limits::WEIGHTS
            }
        }
    }
}

/// A list that one thing is chosen from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Choice {
    /// The shape of a section.
    Kind(usize),
    /// Whether a tube has a floor.
    ClosedFront(usize),
    /// How the mass of a part is known.
    Mass(Component),
    /// Four-sided or free corners.
    Planform(usize),
    /// What a weight is.
    WeightKind(usize),
}

impl Choice {
    /// Its name in the markup: the field that it changes.
    pub(crate) fn field(self) -> Field {
        match self {
            Self::Kind(i) => Field::Section(i, SectionField::Kind),
            Self::ClosedFront(i) => Field::Section(i, SectionField::ClosedFront),
            Self::Mass(Component::Fins(i)) => Field::Fins(i, FinField::Mass),
            Self::Mass(Component::Section(i) | Component::Weight(i)) => {
                Field::Section(i, SectionField::Mass)
            }
            Self::Planform(i) => Field::Fins(i, FinField::Planform),
            Self::WeightKind(i) => Field::Weight(i, WeightField::Label),
        }
    }

    pub(crate) fn from_field(field: Field) -> Option<Self> {
        Some(match field {
            Field::Section(i, SectionField::Kind) => Self::Kind(i),
            Field::Section(i, SectionField::ClosedFront) => Self::ClosedFront(i),
            Field::Section(i, SectionField::Mass) => Self::Mass(Component::Section(i)),
            Field::Fins(i, FinField::Mass) => Self::Mass(Component::Fins(i)),
            Field::Fins(i, FinField::Planform) => Self::Planform(i),
            Field::Weight(i, WeightField::Label) => Self::WeightKind(i),
            _ => return None,
        })
    }
}

/// One entry of the list of masses.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum MassChoice {
    Weighed,
    Of(Material),
    Sheet,
    Joined,
}

impl MassChoice {
    /// Every entry; `Joined` only makes sense for a section behind another.
    pub(crate) fn all() -> Vec<Self> {
        let materials = Material::ALL.into_iter().map(Self::Of);
        let mut all = vec![Self::Weighed];
        all.extend(materials);
        all.extend([Self::Sheet, Self::Joined]);
        all
    }

    pub(crate) fn of(mass: Mass) -> Self {
        match mass {
            Mass::WeighedG(_) => Self::Weighed,
            Mass::Material(material) => Self::Of(material),
            Mass::SheetGPerM2(_) => Self::Sheet,
            Mass::Joined => Self::Joined,
        }
    }

    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Weighed => words::rocket_weighed().into(),
            Self::Of(material) => materials::material(material).into(),
            Self::Sheet => words::rocket_another_sheet().into(),
            Self::Joined => words::rocket_weighed_with().into(),
        }
    }

    /// The mass for this entry. What was known about the part fills in a first value.
    fn mass(self, computed_g: Option<f64>) -> Mass {
        match self {
            Self::Weighed => {
                Mass::WeighedG(computed_g.map_or(10.0, |g| (g * 10.0).round() / 10.0))
            }
            Self::Of(material) => Mass::Material(material),
            Self::Sheet => Mass::SheetGPerM2(250.0),
            Self::Joined => Mass::Joined,
        }
    }
}

/// The two kinds of fin outline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum PlanformChoice {
    FourSided,
    Points,
}

impl PlanformChoice {
    pub(crate) fn of(planform: &Planform) -> Self {
        match planform {
            Planform::FourSided { .. } => Self::FourSided,
            Planform::PointsMm(_) => Self::Points,
        }
    }
}

/// Applies a choice: the value is the place of the entry in its list. Returns whether
/// there is such an entry.
pub(crate) fn choose(
    design: &mut Design,
    report: &Report,
    choice: Choice,
    value: &str,
) -> bool {
    let Ok(index) = value.parse::<usize>() else { return false };
    apply(design, report, choice, index).is_some()
}

fn apply(
    design: &mut Design,
    report: &Report,
    choice: Choice,
    index: usize,
) -> Option<()> {
    match choice {
        Choice::Kind(i) => {
            let kind = *SectionKind::ALL.get(index)?;
            let section = design.sections.get_mut(i)?;
            section.kind = kind;
            section.closed_front &= kind == SectionKind::Tube;
        }
        Choice::ClosedFront(i) => {
            let section = design.sections.get_mut(i)?;
            section.closed_front = index == 1 && section.kind == SectionKind::Tube;
        }
        Choice::Mass(part) => {
            let choice = *MassChoice::all().get(index)?;
            let figures = report.figures.as_ref();
            let known = figures.and_then(|f| f.parts.iter().find(|p| p.part == part));
            let mass = choice.mass(known.map(|p| p.mass.mass_kg * 1000.0));
            match part {
                Component::Section(i) => design.sections.get_mut(i)?.mass = mass,
                Component::Fins(i) => design.fins.get_mut(i)?.mass = mass,
                Component::Weight(_) => return None,
            }
        }
        Choice::Planform(i) => {
            let set = design.fins.get_mut(i)?;
            set.planform = match (index, &set.planform) {
                (0, Planform::PointsMm(points)) => four_sided_like(points),
                (1, four @ Planform::FourSided { .. }) => {
                    Planform::PointsMm(four.corners_mm())
                }
                _ => set.planform.clone(),
            };
        }
        Choice::WeightKind(i) => {
            let common = COMMON_WEIGHTS.get(index)?;
            let weight = design.weights.get_mut(i)?;
            weight.label = materials::weight(common.kind);
            if let Some(g) = common.mass_g {
                weight.mass_g = g;
            }
        }
    }
    Some(())
}

/// The rocket of an example, with its label in the language in use.
pub(crate) fn example(example: Example) -> Design {
    let mut design = example.design();
    if let Some(kind) = example.weight() {
        design.weights.iter_mut().for_each(|w| w.label = materials::weight(kind));
    }
    design
}

/// A four-sided fin about as large as the free one.
fn four_sided_like(points: &[[f64; 2]]) -> Planform {
    let most = |axis: usize| points.iter().map(|p| p[axis]).fold(1.0, f64::max);
    let span_mm = most(1);
    let outer: Vec<f64> =
        points.iter().filter(|p| p[1] > span_mm - 0.05).map(|p| p[0]).collect();
    let from = outer.iter().copied().fold(f64::INFINITY, f64::min);
    let to = outer.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let root_mm = points
        .iter()
        .filter(|p| p[1] < 0.05)
        .map(|p| p[0])
        .fold(f64::NEG_INFINITY, f64::max);
    Planform::FourSided {
        root_mm: if root_mm > 0.0 { root_mm } else { most(0) },
        tip_mm: if to >= from { to - from } else { 0.0 },
        span_mm,
        sweep_mm: if from.is_finite() { from } else { 0.0 },
    }
}

/// Adds a part with sizes that fit the rocket. Returns it.
pub(crate) fn add(design: &mut Design, addition: Addition) -> Component {
    let length_mm = design.length_mm();
    let width_mm = Body::new(design).map_or(65.0, |body| body.width_m() * 1000.0);
    let section = |kind, length_mm, diameter_mm, mass| Section {
        kind,
        length_mm,
        diameter_mm,
        closed_front: false,
        mass,
    };
    let card = Mass::Material(Material::Card220);
    match addition {
        Addition::Nose => {
            let long = (width_mm * 1.5).round();
            let own_width = design.sections.is_empty().then_some(width_mm);
            design.sections.insert(0, section(SectionKind::Cone, long, own_width, card));
            shift(design, 0.0, long);
            Component::Section(0)
        }
        Addition::Tube => {
            let own_width = design.sections.is_empty().then_some(width_mm);
            design.sections.push(section(SectionKind::Tube, 100.0, own_width, card));
            Component::Section(design.sections.len() - 1)
        }
        Addition::Taper => {
            let narrower = Some((width_mm / 2.0).round().max(10.0));
            design.sections.push(section(
                SectionKind::RoundedTaper,
                50.0,
                narrower,
                card,
            ));
            Component::Section(design.sections.len() - 1)
        }
        Addition::Neck => {
            let neck = Some(28.0_f64.min(width_mm));
            let mass = if design.sections.is_empty() { card } else { Mass::Joined };
            design.sections.push(section(SectionKind::Neck, 21.0, neck, mass));
            Component::Section(design.sections.len() - 1)
        }
        Addition::Fins => {
            let root_mm = (length_mm * 0.3).round().max(20.0);
            let span_mm = (width_mm * 0.8).round().max(15.0);
            design.fins.push(FinSet {
                count: 4,
                start_mm: (length_mm - root_mm).round().max(0.0),
                roll_deg: 0.0,
                planform: Planform::FourSided {
                    root_mm,
                    tip_mm: (root_mm * 0.6).round(),
                    span_mm,
                    sweep_mm: (root_mm * 0.4).round(),
                },
                mass: Mass::Material(Material::Card300),
            });
            Component::Fins(design.fins.len() - 1)
        }
        Addition::Weight => {
            design.weights.push(Weight {
                label: materials::weight(WeightKind::Clay),
                mass_g: 10.0,
                position_mm: (length_mm * 0.15).round(),
            });
            Component::Weight(design.weights.len() - 1)
        }
    }
}

/// Copies a part, next to itself. Returns the copy; `None` when there is no room.
pub(crate) fn copy(design: &mut Design, part: Component) -> Option<Component> {
    match part {
        Component::Section(i) => {
            let mut section = design.sections.get(i)?.clone();
            if design.sections.len() >= limits::SECTIONS || section.kind.is_nose() {
                return None;
            }
            section.closed_front = false;
            let rear_mm: f64 = design.sections[..=i].iter().map(|s| s.length_mm).sum();
            let length_mm = section.length_mm;
            design.sections.insert(i + 1, section);
            shift(design, rear_mm, length_mm);
            Some(Component::Section(i + 1))
        }
        Component::Fins(i) => {
            let set = design.fins.get(i)?.clone();
            (design.fins.len() < limits::FIN_SETS).then(|| {
                design.fins.insert(i + 1, set);
                Component::Fins(i + 1)
            })
        }
        Component::Weight(i) => {
            let weight = design.weights.get(i)?.clone();
            (design.weights.len() < limits::WEIGHTS).then(|| {
                design.weights.insert(i + 1, weight);
                Component::Weight(i + 1)
            })
        }
    }
}

/// Removes a part. Returns the part that the eye goes to next.
pub(crate) fn remove(design: &mut Design, part: Component) -> Option<Component> {
    match part {
        Component::Section(i) => {
            let section = design.sections.get(i)?.clone();
            let front_mm: f64 = design.sections[..i].iter().map(|s| s.length_mm).sum();
            // What was weighed with it is now the head of the weighed piece.
            if let Some(next) = design.sections.get_mut(i + 1)
                && next.mass == Mass::Joined
                && section.mass != Mass::Joined
            {
                next.mass = section.mass;
            }
            design.sections.remove(i);
            shift(design, front_mm + section.length_mm, -section.length_mm);
            Some(Component::Section(i.min(design.sections.len().saturating_sub(1))))
        }
        Component::Fins(i) => {
            design.fins.get(i)?;
            design.fins.remove(i);
            Some(Component::Fins(i.min(design.fins.len().saturating_sub(1))))
        }
        Component::Weight(i) => {
            design.weights.get(i)?;
            design.weights.remove(i);
            Some(Component::Weight(i.min(design.weights.len().saturating_sub(1))))
        }
    }
}

/// Swaps a part with its neighbour behind (`later`) or in front. Returns its new place.
pub(crate) fn swap(
    design: &mut Design,
    part: Component,
    later: bool,
) -> Option<Component> {
    let to = |i: usize, len: usize| {
        let j = if later { i + 1 } else { i.checked_sub(1)? };
        (j < len).then_some(j)
    };
    match part {
        Component::Section(i) => {
            let j = to(i, design.sections.len())?;
            design.sections.swap(i, j);
            Some(Component::Section(j))
        }
        Component::Fins(i) => {
            let j = to(i, design.fins.len())?;
            design.fins.swap(i, j);
            Some(Component::Fins(j))
        }
        Component::Weight(i) => {
            let j = to(i, design.weights.len())?;
            design.weights.swap(i, j);
            Some(Component::Weight(j))
        }
    }
}

/// Adds a corner to a fin of an own outline, halfway along its longest edge off the body.
pub(crate) fn add_corner(design: &mut Design, set: usize) -> bool {
    let Some(FinSet { planform: Planform::PointsMm(points), .. }) =
        design.fins.get_mut(set)
    else {
        return false;
    };
    if points.len() >= limits::FIN_POINTS.1 {
        return false;
    }
    let length2 = |w: &[[f64; 2]]| {
        let (dx, dy) = (w[1][0] - w[0][0], w[1][1] - w[0][1]);
        dx * dx + dy * dy
    };
    let longest = points
        .windows(2)
        .enumerate()
        .max_by(|(_, a), (_, b)| length2(a).total_cmp(&length2(b)));
    let (at, middle) = match longest {
        Some((i, w)) => {
            let mean = |axis: usize| f64::midpoint(w[0][axis], w[1][axis]);
            (i + 1, [mean(0), mean(1)])
        }
        None => (points.len(), [0.0, 0.0]),
    };
    points.insert(at, middle);
    true
}

/// Removes a corner of a fin of an own outline, as long as enough are left.
pub(crate) fn remove_corner(design: &mut Design, set: usize, corner: usize) -> bool {
    let Some(FinSet { planform: Planform::PointsMm(points), .. }) =
        design.fins.get_mut(set)
    else {
        return false;
    };
    if points.len() <= limits::FIN_POINTS.0 || corner >= points.len() {
        return false;
    }
    points.remove(corner);
    true
}

/// What an empty field stands for, so that arrow keys have somewhere to start.
pub(crate) fn stand_in(design: &Design, report: &Report, field: Field) -> Option<f64> {
    let round = |value: f64| value.round();
    match field {
        Field::Section(i, SectionField::Diameter) => {
            let body = Body::new(design)?;
            let stretch = body.stretches().get(i)?;
            Some(round(stretch.profile.rear_radius_m() * 2000.0))
        }
        Field::TotalMass => {
            let figures = report.figures.as_ref();
            figures.map(|f| round(f.computed_mass.mass_kg * 1000.0))
        }
        _ => None,
    }
}

/// The field that says where a part is along the ruler, for parts that can be moved.
pub(crate) fn place_field(part: Component) -> Option<Field> {
    match part {
        Component::Section(_) => None,
        Component::Fins(i) => Some(Field::Fins(i, FinField::Start)),
        Component::Weight(i) => Some(Field::Weight(i, WeightField::Position)),
    }
}

/// Everything that sits on the body at or behind a place moves with it.
fn shift(design: &mut Design, behind_mm: f64, by_mm: f64) {
    for set in design.fins.iter_mut().filter(|set| set.start_mm >= behind_mm) {
        set.start_mm = (set.start_mm + by_mm).max(0.0);
    }
    for weight in design.weights.iter_mut().filter(|w| w.position_mm >= behind_mm) {
        weight.position_mm = (weight.position_mm + by_mm).max(0.0);
    }
}
