//! A rocket in bytes, and the swings that may go along.
//!
//! The structs mirror the tables of `FORMATS.md`; the order of their fields, and of the
//! variants of the enums, is the format.

use noseward_lesson::{Record, Swings};
use noseward_stability::{
    Design, FinSet, Mass, Measured, Planform, Section, Weight, limits,
};
use serde::{Deserialize, Serialize};

use super::codes::{KINDS, MATERIALS, choice, code};
use super::numbers::{Angle, MassSteps, PER_MM, Steps};
use super::{TAIL, VERSION, behind_tail, corners, flags, put, swings, take};
use crate::error::LinkErrorKind;
use crate::missing::Missing;

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
    "there is no room for the limits"
);

const PER_G_PER_M2: f64 = 1.0;
/// Added to a section's kind when its front is closed.
const CLOSED_FRONT: u8 = 16;

/// The rocket was weighed whole.
const TOTAL_MASS: u8 = 1 << 4;
/// The swings go along.
const SWINGS: u8 = 1 << 5;

#[derive(Serialize, Deserialize)]
struct Head<'a> {
    /// Version and flags.
    form: u8,
    /// Sections in the lower half, sets of fins in the upper.
    body: u8,
    weights: u8,
    name: &'a str,
}

#[derive(Serialize, Deserialize)]
struct SectionBytes {
    shape: u8,
    length: Steps,
    diameter: Steps,
    mass: MassBytes,
}

#[derive(Serialize, Deserialize)]
enum MassBytes {
    Weighed(MassSteps),
    Material(u8),
    Sheet(Steps),
    Joined,
}

#[derive(Serialize, Deserialize)]
struct FinSetBytes<'a> {
    count: u8,
    start: Steps,
    roll: Angle,
    #[serde(borrow)]
    planform: PlanformBytes<'a>,
    mass: MassBytes,
}

#[derive(Serialize, Deserialize)]
enum PlanformBytes<'a> {
    FourSided { root: Steps, tip: Steps, span: Steps, sweep: Steps },
    Corners(&'a [u8]),
}

#[derive(Serialize, Deserialize)]
struct WeightBytes<'a> {
    label: &'a str,
    mass: MassSteps,
    position: Steps,
}

/// What a payload, whole or cut short, holds.
#[derive(Debug)]
pub(crate) struct Read<'a> {
    /// The rocket, [cleaned](Design::cleaned), and its swings.
    pub(crate) record: Record,
    /// What the head announces and the bytes do not hold.
    pub(crate) missing: Vec<Missing>,
    /// What follows the last part.
    pub(crate) rest: &'a [u8],
}

/// What a design has more of than is kept.
pub(crate) fn crowded(design: &Design) -> Option<LinkErrorKind> {
    let corners = design.fins.iter().map(|set| match &set.planform {
        Planform::FourSided { .. } => 0,
        Planform::PointsMm(corners) => corners.len(),
    });
    [
        ("sections", design.sections.len(), SECTIONS),
        ("fins", design.fins.len(), FIN_SETS),
        ("weights", design.weights.len(), WEIGHTS),
        ("own_outline_mm", corners.max().unwrap_or(0), CORNERS),
    ]
    .into_iter()
    .find(|(_, count, most)| count > most)
    .map(|(list, count, most)| LinkErrorKind::Crowded { list, count, most })
}

/// The payload for a record: its rocket, and its swings if there are any. Numbers come out
/// on the grid of [`Record::rounded`].
pub(crate) fn write_record(record: &Record) -> Vec<u8> {
    if !record.has_swings() {
        return write(&record.design);
    }
    let mut bytes = write(&record.design);
    bytes[0] |= SWINGS;
    bytes.extend(swings::write(&record.swings));
    bytes
}

/// The payload for a design alone.
pub(crate) fn write(design: &Design) -> Vec<u8> {
    let sections = first(&design.sections, SECTIONS);
    let fin_sets = first(&design.fins, FIN_SETS);
    let weights = first(&design.weights, WEIGHTS);
    let Measured { total_mass_g } = design.measured;
    let mut bytes = Vec::new();
    put(
        &mut bytes,
        &Head {
            form: VERSION | total_mass_g.map_or(0, |_| TOTAL_MASS),
            body: count(sections.len()) | count(fin_sets.len()) << 4,
            weights: count(weights.len()),
            name: short(&design.name),
        },
    );
    if let Some(grams) = total_mass_g {
        put(&mut bytes, &MassSteps::new(grams));
    }
    for section in sections {
        put(&mut bytes, &write_section(section));
    }
    for set in fin_sets {
        write_fin_set(&mut bytes, set);
    }
    for weight in weights {
        put(
            &mut bytes,
            &WeightBytes {
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
/// [`LinkErrorKind::CutShort`] when not even the head is whole,
/// [`LinkErrorKind::Newer`] and [`LinkErrorKind::Unknown`] for what another version wrote,
/// [`LinkErrorKind::Changed`] when a value is none that is ever written.
pub(crate) fn read(payload: &[u8]) -> Result<Read<'_>, LinkErrorKind> {
    let (Head { form, body, weights, name }, rest) = take::<Head<'_>>(payload)?;
    let flags = flags(form, TOTAL_MASS | SWINGS)?;
    let name = text(name)?;
    let (total_mass, rest) = if flags & TOTAL_MASS == 0 {
        (None, rest)
    } else {
        let (mass, rest) = take::<MassSteps>(rest)?;
        (Some(mass), rest)
    };
    let mut source = Source { rest, ended: false };
    let mut missing = Vec::new();
    let mut note = |count: usize, kind: fn(usize) -> Missing| {
        if count > 0 {
            missing.push(kind(count));
        }
    };
    let (sections, lost) = source.list(body & 0b1111, SECTIONS, read_section)?;
    note(lost, Missing::Sections);
    let (fins, lost) = source.list(body >> 4, FIN_SETS, read_fin_set)?;
    note(lost, Missing::FinSets);
    let (weights, lost) = source.list(weights, WEIGHTS, read_weight)?;
    note(lost, Missing::Weights);
    let mut swings = Swings::default();
    if flags & SWINGS != 0 {
        let arrived = if source.ended { None } else { swings::read(source.rest)? };
        match arrived {
            Some(arrived) => (swings, source.rest) = arrived,
            None => missing.push(Missing::Swings),
        }
    }
    if flags & TAIL != 0 && missing.is_empty() {
        source.rest = behind_tail(source.rest)?;
    }
    let measured = Measured { total_mass_g: total_mass.map(MassSteps::value) };
    let design = Design { name, sections, fins, weights, measured }.cleaned();
    Ok(Read { record: Record { design, swings }, missing, rest: source.rest })
}

fn write_section(section: &Section) -> SectionBytes {
    let closed = if section.closed_front { CLOSED_FRONT } else { 0 };
    SectionBytes {
        shape: code(KINDS, &section.kind) + closed,
        length: length(section.length_mm),
        diameter: Steps::optional(section.diameter_mm, PER_MM),
        mass: write_mass(section.mass),
    }
}

fn read_section(section: &SectionBytes) -> Result<Section, LinkErrorKind> {
    let closed_front = section.shape & CLOSED_FRONT != 0;
    Ok(Section {
        kind: choice(KINDS, section.shape & !CLOSED_FRONT)
            .ok_or(LinkErrorKind::Changed)?,
        length_mm: section.length.value(PER_MM),
        diameter_mm: section.diameter.optional_value(PER_MM),
        closed_front,
        mass: read_mass(&section.mass)?,
    })
}

fn write_mass(mass: Mass) -> MassBytes {
    match mass {
        Mass::WeighedG(g) => MassBytes::Weighed(MassSteps::new(g)),
        Mass::Material(material) => MassBytes::Material(code(MATERIALS, &material)),
        Mass::SheetGPerM2(density) => MassBytes::Sheet(Steps::new(density, PER_G_PER_M2)),
        Mass::Joined => MassBytes::Joined,
    }
}

fn read_mass(mass: &MassBytes) -> Result<Mass, LinkErrorKind> {
    Ok(match *mass {
        MassBytes::Weighed(mass) => Mass::WeighedG(mass.value()),
        MassBytes::Material(code) => {
            Mass::Material(choice(MATERIALS, code).ok_or(LinkErrorKind::Changed)?)
        }
        MassBytes::Sheet(density) => Mass::SheetGPerM2(density.value(PER_G_PER_M2)),
        MassBytes::Joined => Mass::Joined,
    })
}

fn write_fin_set(bytes: &mut Vec<u8>, set: &FinSet) {
    let packed;
    let planform = match &set.planform {
        &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => {
            PlanformBytes::FourSided {
                root: length(root_mm),
                tip: length(tip_mm),
                span: length(span_mm),
                sweep: length(sweep_mm),
            }
        }
        Planform::PointsMm(points) => {
            packed = corners::pack(first(points, CORNERS));
            PlanformBytes::Corners(&packed)
        }
    };
    put(
        bytes,
        &FinSetBytes {
            count: u8::try_from(set.count).unwrap_or(u8::MAX),
            start: length(set.start_mm),
            roll: Angle::new(set.roll_deg),
            planform,
            mass: write_mass(set.mass),
        },
    );
}

fn read_fin_set(set: &FinSetBytes<'_>) -> Result<FinSet, LinkErrorKind> {
    let planform = match set.planform {
        PlanformBytes::FourSided { root, tip, span, sweep } => Planform::FourSided {
            root_mm: root.value(PER_MM),
            tip_mm: tip.value(PER_MM),
            span_mm: span.value(PER_MM),
            sweep_mm: sweep.value(PER_MM),
        },
        PlanformBytes::Corners(packed) => {
            let points =
                corners::unpack(packed, CORNERS).ok_or(LinkErrorKind::Changed)?;
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

fn read_weight(weight: &WeightBytes<'_>) -> Result<Weight, LinkErrorKind> {
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
    fn take<T: Deserialize<'a>>(&mut self) -> Result<Option<T>, LinkErrorKind> {
        if self.ended {
            return Ok(None);
        }
        match take(self.rest) {
            Ok((value, rest)) => {
                self.rest = rest;
                Ok(Some(value))
            }
            Err(LinkErrorKind::CutShort) => {
                self.ended = true;
                Ok(None)
            }
            Err(kind) => Err(kind),
        }
    }

    /// As many of `count` values as there are, and how many there are not.
    fn list<T: Deserialize<'a>, U>(
        &mut self,
        count: u8,
        most: usize,
        convert: fn(&T) -> Result<U, LinkErrorKind>,
    ) -> Result<(Vec<U>, usize), LinkErrorKind> {
        let count = usize::from(count);
        if count > most {
            return Err(LinkErrorKind::Changed);
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

fn text(text: &str) -> Result<String, LinkErrorKind> {
    if text.len() > TEXT_BYTES {
        return Err(LinkErrorKind::Changed);
    }
    Ok(text.to_owned())
}

#[cfg(test)]
mod tests {
    use super::super::tail;
    use super::*;
    use noseward_lesson::SwingOutcome;
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
            0x11, 0x23, 1,  2, b'A', b'b',  2,
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
        assert_eq!((&read.missing[..], read.rest), (&[][..], &[][..]));
        assert_eq!(read.record, Record::from(design));
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
                let back = read(&bytes).unwrap().record.design;
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
        let back = read(&bytes).unwrap().record.design;
        assert_eq!(back.name, "ö".repeat(48));
        assert_eq!(back.sections.len(), limits::SECTIONS + 1);
        assert_eq!(back.fins.len(), limits::FIN_SETS + 1);
        assert_eq!(back.weights.len(), limits::WEIGHTS + 1);
        assert_eq!(back.fins[0].count, 255);
        assert_eq!(back.fins[0].planform.corners_mm().len(), limits::FIN_POINTS.1 + 1);
    }

    #[test]
    fn counts_and_texts_beyond_the_bound_are_refused() {
        let head = |sections: u8, fin_sets: u8, weights, name: &str| {
            let mut bytes = Vec::new();
            let body = sections | fin_sets << 4;
            put(&mut bytes, &Head { form: VERSION, body, weights, name });
            read(&bytes).map(|read| read.missing)
        };
        let all = [Missing::Sections(13), Missing::FinSets(5), Missing::Weights(13)];
        assert_eq!(head(13, 5, 13, ""), Ok(all.to_vec()));
        assert_eq!(head(14, 0, 0, ""), Err(LinkErrorKind::Changed));
        assert_eq!(head(0, 6, 0, ""), Err(LinkErrorKind::Changed));
        assert_eq!(head(0, 0, 255, ""), Err(LinkErrorKind::Changed));
        assert_eq!(head(0, 0, 0, &"a".repeat(96)), Ok(vec![]));
        assert_eq!(head(0, 0, 0, &"a".repeat(97)), Err(LinkErrorKind::Changed));
    }

    #[test]
    fn the_swings_come_whole_or_not_at_all() {
        let mut sent = Record::from(Example::Tern.design());
        sent.swings.add(SwingOutcome::TailFirst);
        let bytes = write_record(&sent);
        assert_eq!(read(&bytes).unwrap().record, sent);
        let rocket = write(&sent.design).len();
        for end in rocket..bytes.len() {
            let read = read(&bytes[..end]).unwrap();
            assert_eq!(read.record, sent.design.clone().into());
            assert_eq!(read.missing, [Missing::Swings]);
        }
        let missing = read(&bytes[..rocket - 1]).unwrap().missing;
        assert_eq!((missing.last(), missing.len()), (Some(&Missing::Swings), 2));
    }

    /// What a later version may write behind the rest, and in the first byte.
    #[test]
    fn what_comes_later_is_passed_over_or_refused_by_name() {
        let mut record = Record::from(Example::Puffin.design());
        for _ in 0..2 {
            let mut bytes = write_record(&record);
            bytes[0] |= TAIL;
            let with =
                |values: &[(bool, &str, &[u8])]| [&bytes[..], &tail(values)].concat();
            let passed = with(&[(false, "paint", b"red and white")]);
            let read_all = read(&passed).unwrap();
            assert_eq!((&read_all.record, read_all.rest), (&record, &[][..]));
            assert_eq!(read_all.missing, []);
            let named = with(&[(false, "paint", b""), (true, "fin_foil", b"2")]);
            let unknown = LinkErrorKind::Unknown { key: "fin_foil".into() };
            assert_eq!(read(&named).map(|_| ()), Err(unknown));
            let mut newer = write_record(&record);
            newer[0] += 1;
            let error = LinkErrorKind::Newer { version: 2 };
            assert_eq!(read(&newer).map(|_| ()), Err(error));
            record.swings.add(SwingOutcome::Steady);
        }
    }

    #[test]
    fn what_has_more_than_is_kept_is_named() {
        let mut design = Example::Puffin.design();
        assert_eq!(crowded(&design), None);
        design.weights = vec![design.weights[0].clone(); 13];
        assert_eq!(crowded(&design), None);
        design.weights = vec![design.weights[0].clone(); 6000];
        let crowd = LinkErrorKind::Crowded { list: "weights", count: 6000, most: 13 };
        assert_eq!(crowded(&design), Some(crowd));
        design.weights.clear();
        design.fins[0].planform = Planform::PointsMm(vec![[0.0, 0.0]; 26]);
        let crowd =
            LinkErrorKind::Crowded { list: "own_outline_mm", count: 26, most: 25 };
        assert_eq!(crowded(&design), Some(crowd));
    }
}
