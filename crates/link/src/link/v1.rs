//! Version 1 of the payload. It stands for ever: what is here is never changed, only
//! mended where it cannot read what it wrote.
//!
//! The structs mirror the tables of `FORMATS.md`; the order of their fields, and of the
//! variants of the enums, is the format.

mod codes;
mod corners;
mod numbers;

use noseward_stability::{
    Design, FinSet, Mass, Measured, Planform, Section, Weight, limits,
};
use postcard::{Error, take_from_bytes};
use serde::{Deserialize, Serialize};

use super::Damage;
use super::missing::Missing;
pub(crate) use numbers::Steps;
use numbers::{Angle, MassSteps};

// One more than `check` allows of each, so that "too many" is not healed by a link.
const SECTIONS: usize = 13;
const FIN_SETS: usize = 5;
const WEIGHTS: usize = 13;
const CORNERS: usize = 25;
/// Bytes of one text: room for 24 characters of any script.
const TEXT_BYTES: usize = 96;

const _: () = assert!(
    SECTIONS > limits::SECTIONS
        && FIN_SETS > limits::FIN_SETS
        && WEIGHTS > limits::WEIGHTS
        && CORNERS > limits::FIN_POINTS.1
        && TEXT_BYTES >= 4 * limits::LABEL_CHARS,
    "version 1 has no room for the limits: lower them, or write a version 2"
);

/// Steps of a length.
pub(crate) const PER_MM: f64 = 10.0;
const PER_G_PER_M2: f64 = 1.0;
/// Added to a section's kind when its front is closed.
const CLOSED_FRONT: u8 = 16;

#[derive(Serialize, Deserialize)]
struct HeadV1<'a> {
    sections: u8,
    fin_sets: u8,
    weights: u8,
    name: &'a str,
    total_mass: Option<MassSteps>,
}

#[derive(Serialize, Deserialize)]
struct SectionV1 {
    shape: u8,
    length: Steps,
    diameter: Steps,
    mass: MassV1,
}

#[derive(Serialize, Deserialize)]
enum MassV1 {
    Weighed(MassSteps),
    Material(u8),
    Sheet(Steps),
    Joined,
}

#[derive(Serialize, Deserialize)]
struct FinSetV1<'a> {
    count: u8,
    start: Steps,
    roll: Angle,
    #[serde(borrow)]
    planform: PlanformV1<'a>,
    mass: MassV1,
}

#[derive(Serialize, Deserialize)]
enum PlanformV1<'a> {
    FourSided { root: Steps, tip: Steps, span: Steps, sweep: Steps },
    Corners(&'a [u8]),
}

#[derive(Serialize, Deserialize)]
struct WeightV1<'a> {
    label: &'a str,
    mass: MassSteps,
    position: Steps,
}

/// What a payload, whole or cut short, holds.
#[derive(Debug)]
pub(crate) struct Read<'a> {
    pub(crate) design: Design,
    /// What the head announces and the bytes do not hold.
    pub(crate) missing: Vec<Missing>,
    /// What follows the last part.
    pub(crate) rest: &'a [u8],
}

/// The payload for a design. Numbers come out on the grid of [`Design::rounded`].
pub(crate) fn write(design: &Design) -> Vec<u8> {
    let sections = first(&design.sections, SECTIONS);
    let fin_sets = first(&design.fins, FIN_SETS);
    let weights = first(&design.weights, WEIGHTS);
    let mut bytes = Vec::new();
    put(
        &mut bytes,
        &HeadV1 {
            sections: count(sections.len()),
            fin_sets: count(fin_sets.len()),
            weights: count(weights.len()),
            name: short(&design.name),
            total_mass: design.measured.total_mass_g.map(MassSteps::new),
        },
    );
    for section in sections {
        put(&mut bytes, &write_section(section));
    }
    for set in fin_sets {
        write_fin_set(&mut bytes, set);
    }
    for weight in weights {
        put(
            &mut bytes,
            &WeightV1 {
                label: short(&weight.label),
                mass: MassSteps::new(weight.mass_g),
                position: length(weight.position_mm),
            },
        );
    }
    bytes
}

/// Reads a payload as far as it goes.
///
/// # Errors
///
/// [`Damage::CutShort`] when not even the head is whole, [`Damage::Changed`] when a value
/// is none that [`write()`] writes.
pub(crate) fn read(payload: &[u8]) -> Result<Read<'_>, Damage> {
    let mut source = Source { rest: payload, ended: false };
    let head = source.take::<HeadV1<'_>>()?.ok_or(Damage::CutShort)?;
    let mut missing = Vec::new();
    let mut note = |count: usize, kind: fn(usize) -> Missing| {
        if count > 0 {
            missing.push(kind(count));
        }
    };
    let (sections, lost) = source.list(head.sections, SECTIONS, read_section)?;
    note(lost, Missing::Sections);
    let (fins, lost) = source.list(head.fin_sets, FIN_SETS, read_fin_set)?;
    note(lost, Missing::FinSets);
    let (weights, lost) = source.list(head.weights, WEIGHTS, read_weight)?;
    note(lost, Missing::Weights);
    let design = Design {
        name: text(head.name)?,
        sections,
        fins,
        weights,
        measured: Measured { total_mass_g: head.total_mass.map(MassSteps::value) },
    };
    Ok(Read { design, missing, rest: source.rest })
}

fn write_section(section: &Section) -> SectionV1 {
    let closed = if section.closed_front { CLOSED_FRONT } else { 0 };
    SectionV1 {
        shape: codes::kind_code(section.kind) + closed,
        length: length(section.length_mm),
        diameter: Steps::optional(section.diameter_mm, PER_MM),
        mass: write_mass(section.mass),
    }
}

fn read_section(section: &SectionV1) -> Result<Section, Damage> {
    let closed_front = section.shape & CLOSED_FRONT != 0;
    let code = section.shape & !CLOSED_FRONT;
    Ok(Section {
        kind: codes::kind(code).ok_or(Damage::Changed)?,
        length_mm: section.length.value(PER_MM),
        diameter_mm: section.diameter.optional_value(PER_MM),
        closed_front,
        mass: read_mass(&section.mass)?,
    })
}

fn write_mass(mass: Mass) -> MassV1 {
    match mass {
        Mass::WeighedG(g) => MassV1::Weighed(MassSteps::new(g)),
        Mass::Material(material) => MassV1::Material(codes::material_code(material)),
        Mass::SheetGPerM2(density) => MassV1::Sheet(Steps::new(density, PER_G_PER_M2)),
        Mass::Joined => MassV1::Joined,
    }
}

fn read_mass(mass: &MassV1) -> Result<Mass, Damage> {
    Ok(match *mass {
        MassV1::Weighed(mass) => Mass::WeighedG(mass.value()),
        MassV1::Material(code) => {
            Mass::Material(codes::material(code).ok_or(Damage::Changed)?)
        }
        MassV1::Sheet(density) => Mass::SheetGPerM2(density.value(PER_G_PER_M2)),
        MassV1::Joined => Mass::Joined,
    })
}

fn write_fin_set(bytes: &mut Vec<u8>, set: &FinSet) {
    let packed;
    let planform = match &set.planform {
        &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => {
            PlanformV1::FourSided {
                root: length(root_mm),
                tip: length(tip_mm),
                span: length(span_mm),
                sweep: length(sweep_mm),
            }
        }
        Planform::PointsMm(points) => {
            packed = corners::pack(first(points, CORNERS));
            PlanformV1::Corners(&packed)
        }
    };
    put(
        bytes,
        &FinSetV1 {
            count: u8::try_from(set.count).unwrap_or(u8::MAX),
            start: length(set.start_mm),
            roll: Angle::new(set.roll_deg),
            planform,
            mass: write_mass(set.mass),
        },
    );
}

fn read_fin_set(set: &FinSetV1<'_>) -> Result<FinSet, Damage> {
    let planform = match set.planform {
        PlanformV1::FourSided { root, tip, span, sweep } => Planform::FourSided {
            root_mm: root.value(PER_MM),
            tip_mm: tip.value(PER_MM),
            span_mm: span.value(PER_MM),
            sweep_mm: sweep.value(PER_MM),
        },
        PlanformV1::Corners(packed) => {
            let points = corners::unpack(packed, CORNERS).ok_or(Damage::Changed)?;
            Planform::PointsMm(points)
        }
    };
    Ok(FinSet {
        count: u32::from(set.count),
        start_mm: set.start.value(PER_MM),
        roll_deg: set.roll.value(),
        planform,
        mass: read_mass(&set.mass)?,
    })
}

fn read_weight(weight: &WeightV1<'_>) -> Result<Weight, Damage> {
    Ok(Weight {
        label: text(weight.label)?,
        mass_g: weight.mass.value(),
        position_mm: weight.position.value(PER_MM),
    })
}

/// Bytes that are read from the front until they end.
struct Source<'a> {
    rest: &'a [u8],
    ended: bool,
}

impl<'a> Source<'a> {
    /// The next value; `None` once the bytes have ended.
    fn take<T: Deserialize<'a>>(&mut self) -> Result<Option<T>, Damage> {
        if self.ended {
            return Ok(None);
        }
        match take_from_bytes(self.rest) {
            Ok((value, rest)) => {
                self.rest = rest;
                Ok(Some(value))
            }
            Err(Error::DeserializeUnexpectedEnd) => {
                self.ended = true;
                Ok(None)
            }
            Err(_) => Err(Damage::Changed),
        }
    }

    /// As many of `count` values as there are, and how many there are not.
    fn list<T: Deserialize<'a>, U>(
        &mut self,
        count: u8,
        most: usize,
        convert: fn(&T) -> Result<U, Damage>,
    ) -> Result<(Vec<U>, usize), Damage> {
        let count = usize::from(count);
        if count > most {
            return Err(Damage::Changed);
        }
        let mut list = Vec::with_capacity(count);
        while list.len() < count
            && let Some(value) = self.take::<T>()?
        {
            list.push(convert(&value)?);
        }
        let lost = count - list.len();
        Ok((list, lost))
    }
}

fn put(bytes: &mut Vec<u8>, value: &impl Serialize) {
    let more = postcard::to_allocvec(value).expect("every field can be written");
    bytes.extend_from_slice(&more);
}

fn length(mm: f64) -> Steps {
    Steps::new(mm, PER_MM)
}

fn count(length: usize) -> u8 {
    u8::try_from(length).expect("the list was cut to its bound")
}

fn first<T>(list: &[T], most: usize) -> &[T] {
    &list[..list.len().min(most)]
}

fn short(text: &str) -> &str {
    &text[..text.floor_char_boundary(TEXT_BYTES)]
}

fn text(text: &str) -> Result<String, Damage> {
    if text.len() > TEXT_BYTES {
        return Err(Damage::Changed);
    }
    Ok(text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Example, Field, Material, SectionKind, check};

    /// The bytes of one of everything, written out by hand from the tables of
    /// `FORMATS.md`.
    #[test]
    fn the_bytes_are_those_of_the_tables() {
        let section = |kind, closed_front, diameter_mm, mass| Section {
            kind,
            length_mm: 100.0,
            diameter_mm,
            closed_front,
            mass,
        };
        let design = Design {
            name: "Ab".into(),
            sections: vec![
                section(SectionKind::Ogive, false, None, Mass::WeighedG(0.03)),
                section(SectionKind::Tube, true, Some(51.2), Mass::SheetGPerM2(257.0)),
                section(SectionKind::Neck, false, Some(25.6), Mass::Joined),
            ],
            fins: vec![
                FinSet {
                    count: 3,
                    start_mm: 0.1,
                    roll_deg: -45.0,
                    planform: Planform::FourSided {
                        root_mm: 0.1,
                        tip_mm: 0.2,
                        span_mm: 0.3,
                        sweep_mm: -0.1,
                    },
                    mass: Mass::Material(Material::Balsa3),
                },
                FinSet {
                    count: 4,
                    start_mm: 0.2,
                    roll_deg: 0.0,
                    planform: Planform::PointsMm(vec![
                        [0.0, 0.1],
                        [-0.1, 0.0],
                        [0.5, 0.0],
                    ]),
                    mass: Mass::WeighedG(1.28),
                },
            ],
            weights: vec![Weight { label: "é".into(), mass_g: 0.64, position_mm: 1.0 }],
            measured: Measured { total_mass_g: Some(0.01) },
        };
        #[rustfmt::skip]
        let bytes = [
            3, 2, 1,  2, b'A', b'b',  1, 2,  0x01, 0x80,
            1,       0xe8, 0x03,  0x01, 0x80,  0, 6,
            5 + 16,  0xe8, 0x03,  0x00, 0x02,  2, 0x01, 0x01,
            8,       0xe8, 0x03,  0x00, 0x01,  3,
            3,  1, 0,  89,  0,  1, 0,  2, 0,  3, 0,  0xff, 0xff,  1, 8,
            // (0, 1), (-1, 0), (5, 0): 0x0004000, 0x0003fff, 0x0000005
            4,  2, 0,  0,  1, 11,
                0x00, 0x40, 0x00, 0xf0, 0xff, 0x03, 0x00,  0x05, 0x00, 0x00, 0x00,
                0, 0x80, 0x02,
            2, 0xc3, 0xa9,  0x80, 0x01,  10, 0,
        ];
        assert_eq!(write(&design), bytes);
        let read = read(&bytes).unwrap();
        assert_eq!((read.design, read.missing, read.rest), (design, vec![], &[][..]));
    }

    /// A number that cannot stand must not come back as one that can.
    #[test]
    fn a_fault_stays_a_fault() {
        let mut design = Example::Puffin.design();
        design.measured = Measured { total_mass_g: Some(80.0) };
        design.sections[0].mass = Mass::SheetGPerM2(120.0);
        design.fins.push(FinSet {
            planform: Planform::PointsMm(vec![[0.0, 0.0], [9.0, 4.0], [20.0, 0.0]]),
            ..design.fins[0].clone()
        });
        assert_eq!(check(&design), []);
        for field in Field::numbers(&design) {
            for wrong in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300, -1e9, 9e4] {
                let mut worse = design.clone();
                if !field.set(&mut worse, Some(wrong)) {
                    continue;
                }
                let bytes = write(&worse);
                let back = read(&bytes).unwrap().design;
                let value = field.get(&back).unwrap();
                assert_eq!(value.is_nan(), wrong.is_nan(), "{field} {wrong}");
                let faults = |design| check(design).iter().map(|f| f.field).collect();
                let (before, after): (Vec<_>, Vec<_>) = (faults(&worse), faults(&back));
                assert_eq!(after.contains(&field), before.contains(&field), "{field}");
                assert!(after.contains(&field), "{field} {wrong}");
            }
        }
    }

    #[test]
    fn too_much_of_anything_is_cut_and_stays_too_much() {
        let mut design = Example::Razorbill.design();
        design.name = "ö".repeat(200);
        let set = FinSet {
            count: 1_000_000,
            planform: Planform::PointsMm(vec![[1.0, 2.0]; 400]),
            ..design.fins[0].clone()
        };
        design.fins = vec![set; 300];
        design.weights = vec![design.weights[0].clone(); 300];
        design.sections = vec![design.sections[1].clone(); 300];
        let bytes = write(&design);
        let back = read(&bytes).unwrap().design;
        assert_eq!(back.name, "ö".repeat(48));
        assert_eq!(back.sections.len(), limits::SECTIONS + 1);
        assert_eq!(back.fins.len(), limits::FIN_SETS + 1);
        assert_eq!(back.weights.len(), limits::WEIGHTS + 1);
        assert_eq!(back.fins[0].count, 255);
        assert_eq!(back.fins[0].planform.corners_mm().len(), limits::FIN_POINTS.1 + 1);
    }

    #[test]
    fn counts_and_texts_beyond_the_bound_are_refused() {
        let head = |sections, fin_sets, weights, name: &str| {
            let mut bytes = Vec::new();
            put(
                &mut bytes,
                &HeadV1 { sections, fin_sets, weights, name, total_mass: None },
            );
            read(&bytes).map(|read| read.missing)
        };
        let all = [Missing::Sections(13), Missing::FinSets(5), Missing::Weights(13)];
        assert_eq!(head(13, 5, 13, ""), Ok(all.to_vec()));
        assert_eq!(head(14, 0, 0, ""), Err(Damage::Changed));
        assert_eq!(head(0, 6, 0, ""), Err(Damage::Changed));
        assert_eq!(head(0, 0, 255, ""), Err(Damage::Changed));
        assert_eq!(head(0, 0, 0, &"a".repeat(96)), Ok(vec![]));
        assert_eq!(head(0, 0, 0, &"a".repeat(97)), Err(Damage::Changed));
    }
}
