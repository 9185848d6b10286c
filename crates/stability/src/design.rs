//! What a person describes: millimetres, grams and degrees, as typed.

pub(crate) mod bottles;
pub(crate) mod common_weights;
pub(crate) mod component;
pub(crate) mod examples;
pub(crate) mod field;
pub mod limits;
pub(crate) mod materials;
pub(crate) mod names;
pub(crate) mod texts;
pub(crate) mod units;

use serde::{Deserialize, Serialize};

use field::Field;
use materials::Material;

/// A rocket as a person describes it.
///
/// A file, a link and the JavaScript call share this shape. Lengths are in millimetres,
/// masses in grams, angles in degrees; the unit stands in each field's name.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Design {
    /// What the rocket is called; may be empty.
    #[serde(default)]
    pub name: String,
    /// The body from nose to tail, 1 to 12 sections laid end to end.
    pub sections: Vec<Section>,
    /// Sets of equal fins, 0 to 4.
    #[serde(default)]
    pub fins: Vec<FinSet>,
    /// Weights on the axis, 0 to 12.
    #[serde(default)]
    pub weights: Vec<Weight>,
    /// What the finished rocket weighed.
    #[serde(default)]
    pub measured: Measured,
}

/// One stretch of the body.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Section {
    /// Its shape.
    pub kind: SectionKind,
    /// Its length along the axis.
    pub length_mm: f64,
    /// Its width where it is widest towards its neighbour: a nose at its base, a tube and
    /// a neck all along, a taper at its rear end. `None` follows the neighbour: for a
    /// nose the section behind it, for the others the section in front.
    #[serde(default)]
    pub diameter_mm: Option<f64>,
    /// Whether a tube has a floor at its front end, as a drinks bottle has.
    #[serde(default)]
    pub closed_front: bool,
    /// What it weighs, or what it is made of.
    pub mass: Mass,
}

/// The shape of a [`Section`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SectionKind {
    /// A nose with straight sides.
    Cone,
    /// A nose whose side is an arc of a circle that runs smoothly into the body.
    Ogive,
    /// A nose whose side is a quarter of an ellipse.
    Ellipsoid,
    /// A nose whose side is a parabola.
    Paraboloid,
    /// The rounded base of an upturned bottle: a cap cut off a sphere.
    Dome,
    /// A straight tube, such as the wall of a bottle.
    Tube,
    /// A change of width with straight sides; its front is as wide as what is ahead.
    StraightTaper,
    /// A change of width that leaves both ends smoothly, such as a bottle's shoulder.
    RoundedTaper,
    /// The neck of a bottle.
    Neck,
}

impl SectionKind {
    /// Every kind, in the order in which a list shows them.
    pub const ALL: [Self; 9] = [
        Self::Dome,
        Self::Ellipsoid,
        Self::Ogive,
        Self::Paraboloid,
        Self::Cone,
        Self::Tube,
        Self::StraightTaper,
        Self::RoundedTaper,
        Self::Neck,
    ];

    /// Whether it comes to a tip, so that it can only be the first section.
    #[must_use]
    pub fn is_nose(self) -> bool {
        matches!(
            self,
            Self::Cone | Self::Ogive | Self::Ellipsoid | Self::Paraboloid | Self::Dome
        )
    }

    /// Whether its width changes between two given ends.
    #[must_use]
    pub fn is_taper(self) -> bool {
        matches!(self, Self::StraightTaper | Self::RoundedTaper)
    }
}

/// How the mass of a section or a fin set is known.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mass {
    /// Weighed, in grams. For a fin set: all its fins together.
    WeighedG(f64),
    /// Cut from a sheet of the table.
    Material(Material),
    /// Cut from a sheet of this areal density.
    #[serde(rename = "sheet_g_per_m2")]
    SheetGPerM2(f64),
    /// Part of the weighed piece in front (the shoulder and neck of a bottle that was
    /// weighed whole). Only for sections.
    Joined,
}

/// A set of equal fins, spaced equally round the body.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FinSet {
    /// How many, 2 to 8.
    pub count: u32,
    /// Where the front of the root sits, from the nose tip.
    pub start_mm: f64,
    /// The angle by which the first fin is turned out of the plane of the drawing.
    #[serde(default)]
    pub roll_deg: f64,
    /// The outline of one fin.
    pub planform: Planform,
    /// What the fins weigh together, or what they are cut from.
    pub mass: Mass,
}

/// The outline of one fin. Distances run along the body from the front of the root
/// towards the tail, and outwards from the root.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Planform {
    /// Root and tip are parallel to the axis.
    #[serde(rename_all = "snake_case")]
    FourSided {
        /// Length of the edge along the body.
        root_mm: f64,
        /// Length of the outer edge; 0 for a triangle.
        tip_mm: f64,
        /// How far the fin stands out from the body.
        span_mm: f64,
        /// How far the front of the tip lies behind the front of the root.
        sweep_mm: f64,
    },
    /// Corners `[along, out]` in millimetres, 3 to 24, from the front of the root round
    /// the outside to the rear of the root.
    #[serde(rename = "own_outline_mm")]
    PointsMm(Vec<[f64; 2]>),
}

impl Planform {
    /// The corners `[along, out]` in millimetres, from the front of the root round the
    /// outside to the rear of the root: 3 to 24 of them for a design without faults.
    #[must_use]
    pub fn corners_mm(&self) -> Vec<[f64; 2]> {
        match self {
            &Self::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => vec![
                [0.0, 0.0],
                [sweep_mm, span_mm],
                [sweep_mm + tip_mm, span_mm],
                [root_mm, 0.0],
            ],
            Self::PointsMm(points) => points.clone(),
        }
    }

    /// How many corners these are.
    pub(crate) fn corner_count(&self) -> usize {
        match self {
            Self::FourSided { .. } => 4,
            Self::PointsMm(points) => points.len(),
        }
    }
}

/// A lump of mass on the axis.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Weight {
    /// What it is.
    #[serde(default)]
    pub label: String,
    /// What it weighs.
    pub mass_g: f64,
    /// Where its middle is, from the nose tip.
    pub position_mm: f64,
}

/// What was measured on the whole rocket, in place of what is computed. Where it hangs
/// level is no part of a description: see [`MeasuredPoints`](crate::MeasuredPoints).
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Measured {
    /// The whole rocket on the scales.
    #[serde(default)]
    pub total_mass_g: Option<f64>,
}

impl Design {
    /// The width of a section, its own or the neighbour's that it follows, in millimetres.
    /// `None` where nobody gives one.
    #[must_use]
    pub fn width_mm(&self, section: usize) -> Option<f64> {
        crate::outline::width_mm(self, section)
    }

    /// The length of the body, in millimetres.
    #[must_use]
    pub fn length_mm(&self) -> f64 {
        self.sections.iter().map(|section| section.length_mm).sum()
    }

    /// The same design with every number on the grid that links store: lengths to
    /// 0.1 mm, masses to 0.01 g, angles to 1 degree, areal densities to 1 g/m². Its texts
    /// are [cleaned](Self::cleaned).
    ///
    /// A number that is not finite stays as it is, for [`check`](crate::check()) to name.
    #[must_use]
    pub fn rounded(mut self) -> Self {
        for field in Field::numbers(&self) {
            if let (Some(value), Some(quantity)) = (field.get(&self), field.quantity()) {
                field.set(&mut self, Some(quantity.rounded(value)));
            }
        }
        self.cleaned()
    }

    /// The same design with names and labels that hold no control characters: no text of
    /// a design from outside can break a line, or turn the words round it about.
    ///
    /// Taken out are the control characters of Unicode (general category Cc), the marks
    /// that change the direction of writing (the property `Bidi_Control` of Unicode
    /// Standard Annex 9), and the byte order mark. A tab and each form of line break
    /// become one space.
    #[must_use]
    pub fn cleaned(mut self) -> Self {
        let labels = self.weights.iter_mut().map(|weight| &mut weight.label);
        for text in labels.chain([&mut self.name]) {
            texts::clean(text);
        }
        self
    }
}
