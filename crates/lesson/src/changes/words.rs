//! Changes in words.

use noseward_stability::{
    FinSet, Mass, Planform, Quantity, Section, SectionKind, SwingField, Units, Weight,
    capital, trimmed,
};

use super::{Along, Change, ChangeKind, Pair, Piece, SectionPiece};

/// Areas that differ by less than this share are equal: another shape, no larger fin.
const SAME_AREA: f64 = 0.02;

impl Change {
    /// The change with its old and new values, and what moved with it: "Fins: root 70 mm
    /// → 90 mm, span 60 mm → 80 mm."
    #[must_use]
    pub fn sentence(&self, units: Units) -> String {
        let words = match &self.piece {
            Piece::Section(pair) => self.section(pair, units),
            Piece::Fins(pair) => self.fins(pair, units),
            Piece::Weight(pair) => self.weight(pair, units),
            Piece::Swing(Pair { before: Some(a), after: Some(b) }) => match self.kind {
                ChangeKind::Swing(field) => {
                    let [a, b] = [a, b].map(|s| field.written(field.get(s), units));
                    let what = match field {
                        SwingField::String => "string",
                        SwingField::Arm => "arm",
                        SwingField::Turns => "speed",
                        SwingField::AirDensity => "density of the air",
                    };
                    format!("Swing: {what} {a} → {b}")
                }
                _ => String::new(),
            },
            Piece::Swing(_) => String::new(),
        };
        let moved = self.moved_with_it();
        match &moved[..] {
            [] => format!("{words}."),
            names => format!("{words}. {} moved with it.", listed(names)),
        }
    }

    /// The change in two or three words, for a table: "fin shape", "nose mass", "body
    /// length".
    #[must_use]
    pub fn label(&self) -> String {
        let section = self.section_word();
        match self.kind {
            ChangeKind::SectionAdded => format!("{section} added"),
            ChangeKind::SectionRemoved => format!("{section} removed"),
            ChangeKind::SectionShape => format!("{section} shape"),
            ChangeKind::SectionLength => format!("{section} length"),
            ChangeKind::SectionWidth => format!("{section} width"),
            ChangeKind::SectionMass if self.is_bottle() => "bottle mass".into(),
            ChangeKind::SectionMass => format!("{section} mass"),
            ChangeKind::ClosedFront => format!("{section} front end"),
            ChangeKind::FinsAdded => "fins added".into(),
            ChangeKind::FinsRemoved => "fins removed".into(),
            ChangeKind::FinNumber => "fin number".into(),
            ChangeKind::FinShape => "fin shape".into(),
            ChangeKind::FinPlace => "fin place".into(),
            ChangeKind::FinMass => "fin mass".into(),
            ChangeKind::WeightAdded => "weight added".into(),
            ChangeKind::WeightRemoved => "weight removed".into(),
            ChangeKind::WeightMass => "weight mass".into(),
            ChangeKind::WeightPlace => "weight place".into(),
            ChangeKind::Swing(field) => swing_word(field).into(),
        }
    }

    /// What a group did, to follow "we": "made the fins larger", "added a nose".
    #[must_use]
    pub fn past_tense(&self) -> String {
        let section = self.section_word();
        match &self.piece {
            Piece::Section(pair) => match (self.kind, pair) {
                (ChangeKind::SectionAdded, _) => format!("added a {section}"),
                (ChangeKind::SectionRemoved, _) => format!("took the {section} off"),
                (_, Pair { before: Some(a), after: Some(b) }) => match self.kind {
                    ChangeKind::SectionLength => {
                        let more = b.section.length_mm > a.section.length_mm;
                        made(section, more, "longer", "shorter")
                    }
                    ChangeKind::SectionWidth => {
                        made(section, b.width_mm > a.width_mm, "wider", "narrower")
                    }
                    ChangeKind::SectionMass => {
                        let what = if self.is_bottle() { "bottle" } else { section };
                        weighed(what, a.section.mass, b.section.mass)
                    }
                    ChangeKind::ClosedFront => {
                        format!("changed the front end of the {section}")
                    }
                    _ => format!("changed the shape of the {section}"),
                },
                _ => String::new(),
            },
            Piece::Fins(Pair { before: Some(a), after: Some(b) }) => match self.kind {
                ChangeKind::FinNumber if b.count > a.count => "put on more fins".into(),
                ChangeKind::FinNumber => "put on fewer fins".into(),
                ChangeKind::FinMass => weighed("fins", a.mass, b.mass),
                ChangeKind::FinPlace if a.start_mm == b.start_mm => {
                    "turned the fins round the body".into()
                }
                ChangeKind::FinPlace => moved("the fins", b.start_mm > a.start_mm),
                _ => {
                    let [old, new] = [a, b].map(area_mm2);
                    if (new - old).abs() < SAME_AREA * old {
                        "changed the shape of the fins".into()
                    } else {
                        made("fins", new > old, "larger", "smaller")
                    }
                }
            },
            Piece::Fins(Pair { before: None, .. }) => "added fins".into(),
            Piece::Fins(_) => "took fins off".into(),
            Piece::Weight(Pair { before: Some(a), after: Some(b) }) => {
                if self.kind == ChangeKind::WeightMass {
                    made("weight", b.mass_g > a.mass_g, "heavier", "lighter")
                } else {
                    moved("a weight", b.position_mm > a.position_mm)
                }
            }
            Piece::Weight(Pair { before: None, .. }) => "added a weight".into(),
            Piece::Weight(_) => "took a weight off".into(),
            Piece::Swing(pair) => {
                let ChangeKind::Swing(field) = self.kind else { return String::new() };
                let value = |setup: &Option<_>| setup.as_ref().map(|s| field.get(s));
                let more = value(&pair.after) > value(&pair.before);
                match field {
                    SwingField::String => made("string", more, "longer", "shorter"),
                    SwingField::Turns if more => "swung faster".into(),
                    SwingField::Turns => "swung slower".into(),
                    SwingField::Arm | SwingField::AirDensity => {
                        format!("changed the {}", swing_word(field))
                    }
                }
            }
        }
    }

    /// What merely moved with it, by name: "Fins", "clay".
    #[must_use]
    pub fn moved_with_it(&self) -> Vec<&str> {
        let there = self.along.iter().filter(|along| along.was_there);
        there
            .filter(|along| along.by_mm != 0.0)
            .map(|Along { name, .. }| &**name)
            .collect()
    }

    fn section(&self, pair: &Pair<SectionPiece>, units: Units) -> String {
        let whole = |piece: &SectionPiece| {
            let section = &piece.section;
            let shape = if section.kind.is_nose() {
                format!("{}, ", shape(section.kind))
            } else {
                String::new()
            };
            let length = units.length(section.length_mm);
            format!("{shape}{length} long, {}", mass(section.mass, units))
        };
        let name = &self.name;
        match pair {
            Pair { before: None, after: Some(is) } => {
                format!("{name} added: {}", whole(is))
            }
            Pair { before: Some(was), after: None } => {
                format!("{name} removed: {}", whole(was))
            }
            Pair { before: Some(a), after: Some(b) } => {
                let of = |write: &dyn Fn(&Section) -> String| {
                    arrow(write(&a.section), write(&b.section))
                };
                let length = |mm: Option<f64>| {
                    mm.map_or_else(|| "not known".into(), |mm| units.length(mm))
                };
                let what = match self.kind {
                    ChangeKind::SectionLength => {
                        format!("length {}", of(&|s| units.length(s.length_mm)))
                    }
                    ChangeKind::SectionWidth => {
                        format!("width {}", arrow(length(a.width_mm), length(b.width_mm)))
                    }
                    ChangeKind::SectionMass => {
                        masses(a.section.mass, b.section.mass, units)
                    }
                    ChangeKind::ClosedFront => {
                        let end = |s: &Section| {
                            if s.closed_front { "closed" } else { "open" }.to_owned()
                        };
                        format!("front end {}", of(&end))
                    }
                    _ => format!("shape {}", of(&|s| shape(s.kind).to_owned())),
                };
                let is_whole = self.kind == ChangeKind::SectionMass && self.is_bottle();
                let name = if is_whole { "Bottle" } else { name };
                format!("{name}: {what}")
            }
            Pair { before: None, after: None } => String::new(),
        }
    }

    fn fins(&self, pair: &Pair<FinSet>, units: Units) -> String {
        let name = &self.name;
        let whole = |set: &FinSet| {
            let sides = sides(&set.planform).into_iter();
            let sides = sides.map(|(side, mm)| format!("{side} {}, ", units.length(mm)));
            let sides: String = sides.collect();
            format!("{} fins, {sides}{}", set.count, mass(set.mass, units))
        };
        match pair {
            Pair { before: Some(a), after: Some(b) } => {
                let what = match self.kind {
                    ChangeKind::FinNumber => {
                        format!(
                            "number {}",
                            arrow(a.count.to_string(), b.count.to_string())
                        )
                    }
                    ChangeKind::FinShape => shapes(&a.planform, &b.planform, units),
                    ChangeKind::FinMass => masses(a.mass, b.mass, units),
                    _ => {
                        let start = differing("start", a.start_mm, b.start_mm, |mm| {
                            units.length(mm)
                        });
                        let turned =
                            differing("turned", a.roll_deg, b.roll_deg, |degrees| {
                                format!("{}°", Quantity::Angle.number(degrees, units))
                            });
                        joined([start, turned])
                    }
                };
                format!("{name}: {what}")
            }
            Pair { before: None, after: Some(is) } => {
                format!("{name} added: {}", whole(is))
            }
            Pair { before: Some(was), after: None } => {
                format!("{name} removed: {}", whole(was))
            }
            Pair { before: None, after: None } => String::new(),
        }
    }

    fn weight(&self, pair: &Pair<Weight>, units: Units) -> String {
        let whole = |weight: &Weight| {
            let place = units.length(weight.position_mm);
            let grams = units.mass(weight.mass_g);
            let name = weight.label.trim();
            let comma = if name.is_empty() { "" } else { ", " };
            format!("{name}{comma}{grams}, {place} from the nose tip")
        };
        match pair {
            Pair { before: Some(a), after: Some(b) } => {
                let what = if self.kind == ChangeKind::WeightMass {
                    format!("mass {}", arrow(units.mass(a.mass_g), units.mass(b.mass_g)))
                } else {
                    let [a, b] = [a, b].map(|weight| units.length(weight.position_mm));
                    format!("middle {}", arrow(a, b))
                };
                format!("{}: {what}", capital(&self.name))
            }
            Pair { before: None, after: Some(is) } => {
                format!("Weight added: {}", whole(is))
            }
            Pair { before: Some(was), after: None } => {
                format!("Weight removed: {}", whole(was))
            }
            Pair { before: None, after: None } => String::new(),
        }
    }

    fn section_piece(&self) -> Option<&SectionPiece> {
        match &self.piece {
            Piece::Section(pair) => pair.after.as_ref().or(pair.before.as_ref()),
            _ => None,
        }
    }

    /// "nose", "body", "taper" or "neck".
    fn section_word(&self) -> &'static str {
        match self.section_piece().map(|piece| piece.section.kind) {
            Some(SectionKind::Tube) | None => "body",
            Some(SectionKind::StraightTaper | SectionKind::RoundedTaper) => "taper",
            Some(SectionKind::Neck) => "neck",
            Some(_) => "nose",
        }
    }

    fn is_bottle(&self) -> bool {
        self.section_piece()
            .is_some_and(|p| p.is_bottle && p.section.kind == SectionKind::Tube)
    }
}

fn swing_word(field: SwingField) -> &'static str {
    match field {
        SwingField::String => "string length",
        SwingField::Arm => "arm length",
        SwingField::Turns => "speed of the swing",
        SwingField::AirDensity => "density of the air",
    }
}

/// The shape of a section in a word or two.
fn shape(kind: SectionKind) -> &'static str {
    match kind {
        SectionKind::Cone => "cone",
        SectionKind::Ogive => "ogive",
        SectionKind::Ellipsoid => "ellipsoid",
        SectionKind::Paraboloid => "paraboloid",
        SectionKind::Dome => "dome",
        SectionKind::Tube => "tube",
        SectionKind::StraightTaper => "straight taper",
        SectionKind::RoundedTaper => "rounded taper",
        SectionKind::Neck => "neck",
    }
}

fn mass(mass: Mass, units: Units) -> String {
    match mass {
        Mass::WeighedG(g) => units.mass(g),
        Mass::Material(material) => material.name().into(),
        Mass::SheetGPerM2(density) => format!("sheet of {} g/m²", trimmed(density, 0)),
        Mass::Joined => "weighed with the part in front".into(),
    }
}

fn masses(a: Mass, b: Mass, units: Units) -> String {
    let weighed = [a, b].map(|mass| matches!(mass, Mass::WeighedG(_)));
    let word = if weighed == [false; 2] { "material" } else { "mass" };
    format!("{word} {}", arrow(mass(a, units), mass(b, units)))
}

/// How a four-sided fin, or the corners of another one, changed.
fn shapes(a: &Planform, b: &Planform, units: Units) -> String {
    match (a, b) {
        (Planform::PointsMm(a), Planform::PointsMm(b)) => {
            if a.len() == b.len() {
                let moved = a.iter().zip(b).filter(|(a, b)| a != b).count();
                format!("{moved} of {} corners moved", a.len())
            } else {
                format!("corners {}", arrow(a.len().to_string(), b.len().to_string()))
            }
        }
        (Planform::FourSided { .. }, Planform::FourSided { .. }) => {
            let pairs = sides(a).into_iter().zip(sides(b));
            joined(pairs.map(|((side, old), (_, new))| {
                differing(side, old, new, |mm| units.length(mm))
            }))
        }
        _ => {
            let word = |planform: &Planform| match planform {
                Planform::FourSided { .. } => "four-sided".to_owned(),
                Planform::PointsMm(points) => format!("{} corners", points.len()),
            };
            format!("outline {}", arrow(word(a), word(b)))
        }
    }
}

/// The sides of a four-sided fin; of another one how far it reaches.
fn sides(planform: &Planform) -> Vec<(&'static str, f64)> {
    match planform {
        &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => vec![
            ("root", root_mm),
            ("tip", tip_mm),
            ("span", span_mm),
            ("sweep", sweep_mm),
        ],
        Planform::PointsMm(points) => {
            let most = |axis: usize| points.iter().map(|p| p[axis]).fold(0.0, f64::max);
            vec![("length", most(0)), ("span", most(1))]
        }
    }
}

/// The area of one fin, in mm².
fn area_mm2(set: &FinSet) -> f64 {
    let corners = set.planform.corners_mm();
    let next = corners.iter().cycle().skip(1);
    let twice: f64 =
        corners.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum();
    twice.abs() / 2.0
}

fn made(what: &str, more: bool, word: &str, otherwise: &str) -> String {
    format!("made the {what} {}", if more { word } else { otherwise })
}

fn weighed(what: &str, a: Mass, b: Mass) -> String {
    match (a, b) {
        (Mass::WeighedG(a), Mass::WeighedG(b)) => made(what, b > a, "heavier", "lighter"),
        _ => format!("changed the mass of the {what}"),
    }
}

fn moved(what: &str, back: bool) -> String {
    format!("moved {what} {}", if back { "back" } else { "forward" })
}

fn arrow(a: String, b: String) -> String {
    format!("{a} → {b}")
}

/// "root 70 mm → 90 mm", or nothing where both are the same.
fn differing(word: &str, a: f64, b: f64, write: impl Fn(f64) -> String) -> String {
    if a == b { String::new() } else { format!("{word} {}", arrow(write(a), write(b))) }
}

fn joined(parts: impl IntoIterator<Item = String>) -> String {
    let parts: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    parts.join(", ")
}

/// "The fins", "The fins and the clay", "The fins, the clay and the tape".
fn listed(names: &[&str]) -> String {
    let mut text = String::new();
    for (i, name) in names.iter().enumerate() {
        text.push_str(match i {
            0 => "The ",
            _ if i + 1 == names.len() => " and the ",
            _ => ", the ",
        });
        // Ours start with a capital letter; labels are as somebody wrote them.
        let ours = name.starts_with("Fins") || name.starts_with("Weight");
        match name.split_at_checked(1) {
            Some((first, rest)) if ours => {
                text.push_str(&first.to_ascii_lowercase());
                text.push_str(rest);
            }
            _ => text.push_str(name),
        }
    }
    text
}
