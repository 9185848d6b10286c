//! Sheets with parts at true size, to be cut out: fins, noses and tapers, a strip that shows
//! where fins go, a ruler and a balance stand.
//!
//! Every part is printed side up: folds go back from it. A solid line is cut, a dashed one
//! folded. Both papers have the same pages.

mod fin;
mod gore;
mod layout;
mod piece;
mod sector;
mod strip;
#[cfg(test)]
mod tests;
mod tools;

use std::f64::consts::PI;

use noseward_stability::{Body, Component, Design, FinSet, SectionKind, Stretch, limits};
use noseward_words::{self as texts, Number, Text};

use crate::names::part_name;
use crate::palette::Colour;
use crate::paper::{Flow, Mark, Page, PaperSize, check_bars};
use crate::scene::{Anchor, Item, Path, Point, Scene};
use gore::Leaves;
use piece::Piece;
use sector::Straight;
use strip::Strip;

/// A part over more sheets than this is refused.
const MOST_SHEETS: usize = 12;
/// A cone or taper is made in so many equal parts at most.
const MOST_PARTS: u32 = 4;
/// How near points of a rounded side lie to it, in metres.
const FLAT_M: f64 = 2e-5;

/// The fins of a set, each with a tab along its root. Empty where the set has no outline with a
/// root.
#[must_use]
pub fn fin_pattern(size: PaperSize, design: &Design, set: usize) -> Vec<Page> {
    let Some(fins) = fins_of(design, set) else { return Vec::new() };
    let pieces: Vec<Piece> =
        (1..=fins.count).filter_map(|number| fin::fin(fins, Some(number))).collect();
    let Some(first) = pieces.first() else { return Vec::new() };
    let name = texts::paper_parts_cut(&part_name(design, Component::Fins(set)));
    let use_it = [
        step(texts::paper_parts_fold_tab()),
        Step::Care(texts::paper_parts_care_bottle()),
        step(texts::paper_parts_fix_fin()),
    ];
    if layout::fits(first) {
        let mut flow = begun(size, design, &name, &printed(), &use_it);
        layout::lay(&mut flow, &name, &pieces);
        return flow.pages();
    }
    let Some(one) = fin::fin(fins, None) else { return Vec::new() };
    larger(size, design, &name, &one, pieces.len(), &use_it)
}

/// One fin of a set with its tab, in millimetres.
#[must_use]
pub fn fin_piece(design: &Design, set: usize) -> Option<Scene> {
    let name = part_name(design, Component::Fins(set));
    Some(fin::fin(fins_of(design, set)?, None)?.scene(&name))
}

/// A nose, a taper or a tube, laid flat. Empty for a neck, and where the design has no such
/// section or no body.
#[must_use]
pub fn section_pattern(size: PaperSize, design: &Design, section: usize) -> Vec<Page> {
    let Some(shape) = Shape::new(design, section) else { return Vec::new() };
    let part = part_name(design, Component::Section(section));
    let name = texts::paper_parts_cut(&part);
    let pieces = shape.pieces(&part);
    let is_nose = design.sections[section].kind.is_nose();
    let use_it = shape.steps(pieces.len(), is_nose);
    if pieces.iter().all(layout::fits) {
        let mut flow = begun(size, design, &name, &printed(), &use_it);
        layout::lay(&mut flow, &name, &pieces);
        return flow.pages();
    }
    let Some(one) = shape.piece(shape.parts(), &part) else { return Vec::new() };
    larger(size, design, &name, &one, pieces.len(), &use_it)
}

/// What a nose, a taper or a tube is cut from, piece by piece, in millimetres.
#[must_use]
pub fn section_pieces(design: &Design, section: usize) -> Vec<Scene> {
    let Some(shape) = Shape::new(design, section) else { return Vec::new() };
    let part = part_name(design, Component::Section(section));
    shape.pieces(&part).iter().map(|piece| piece.scene(&part)).collect()
}

/// A strip for each set of fins, which goes round the body once and shows where they go. Empty
/// for a rocket without a body or without fins on it.
#[must_use]
pub fn strip_pattern(size: PaperSize, design: &Design) -> Vec<Page> {
    let name = texts::paper_parts_strip().as_str();
    let mut pieces = Vec::new();
    let mut has_rows = false;
    for set in 0..design.fins.len() {
        let part = part_name(design, Component::Fins(set));
        let Some(mut strip) = strip_of(design, set, &part) else { continue };
        while strip.girth / strip.rows as f64 + strip::TAB_MM > STRIP_MM {
            strip.rows += 1;
        }
        has_rows |= strip.rows > 1;
        pieces.extend(strip.pieces());
    }
    if pieces.is_empty() {
        return Vec::new();
    }
    let mut use_it = Vec::new();
    use_it.extend(has_rows.then(|| step(texts::paper_parts_rows())));
    use_it.push(Step::Care(texts::paper_parts_care_bottle()));
    use_it.push(step(texts::paper_parts_wrap()));
    use_it.push(step(texts::paper_parts_mark()));
    let mut flow = begun(size, design, name, &printed(), &use_it);
    layout::lay(&mut flow, name, &pieces);
    flow.pages()
}

/// How long a row of a strip may be.
const STRIP_MM: f64 = layout::AREA_MM.0 - 2.0 * piece::EDGE_MM;

/// The strip for a set of fins in one row, in millimetres.
#[must_use]
pub fn strip_piece(design: &Design, set: usize) -> Option<Scene> {
    let name = part_name(design, Component::Fins(set));
    Some(strip_of(design, set, &name)?.pieces().first()?.scene(&name))
}

fn fins_of(design: &Design, set: usize) -> Option<&FinSet> {
    design.fins.get(set).filter(|_| within_limits(design))
}

fn strip_of<'a>(design: &'a Design, set: usize, part: &'a str) -> Option<Strip<'a>> {
    let fins = fins_of(design, set)?;
    let radius_mm = Body::new(design)?.radius_at_m(fins.start_mm / 1000.0) * 1000.0;
    let zero = design.fins.len() > 1;
    (radius_mm > 0.0 && fins.count > 0).then_some(Strip {
        part,
        set: fins,
        girth: 2.0 * PI * radius_mm,
        rows: 1,
        zero,
    })
}

/// A ruler of 250 mm and a stand on whose edge a cut-out balances.
#[must_use]
pub fn tools_pattern(size: PaperSize) -> Vec<Page> {
    let name = texts::paper_parts_tools().as_str();
    let mut flow = Flow::new(size, name);
    explain(
        &mut flow,
        &[
            step(texts::paper_parts_card()),
            step(texts::cut_out_step_check()),
            Step::Care(texts::paper_parts_care_cut()),
            step(texts::cut_out_step_cut()),
            step(texts::paper_parts_ruler_end()),
            step(texts::paper_parts_stand_fold()),
            step(texts::paper_parts_stand_tape()),
            step(texts::paper_parts_stand_use()),
        ],
    );
    legend(&mut flow);
    let (ruler, stand) = (tools::ruler(), tools::stand());
    layout::lay(&mut flow, name, std::slice::from_ref(&stand));
    // Two rulers, and another stand beside them.
    flow.next_page();
    let (long, wide) = ruler.size();
    let at = |x: f64, y: f64| Point { x, y };
    let left = 2.0 * (wide + RULERS_APART_MM) + 8.0;
    let mut items = check_bars(at(left, 0.0), at(Flow::WIDTH_MM - 8.0, 40.0));
    for x in [wide, 2.0 * wide + RULERS_APART_MM] {
        let layers = ruler.layers(&Path::clone, Point::default());
        let scene = Scene { width: long, height: wide, ..piece::in_mm("", layers) };
        let at = at(x + 0.5, RULER_TOP_MM);
        items.push(Item::Placed { at, scale: 1.0, turned_deg: 90.0, scene });
    }
    let at = at(left, 60.0);
    items.push(Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene: stand.scene("") });
    // As long as the ruler: a little longer than what other pages hold, and above the foot.
    flow.drawing(name, long + 2.0 * RULER_TOP_MM, items);
    flow.pages()
}

/// Between two rulers, and above them.
const RULERS_APART_MM: f64 = 2.0;
const RULER_TOP_MM: f64 = 0.3;

/// The ruler alone, in millimetres.
#[must_use]
pub fn ruler_piece() -> Scene {
    tools::ruler().scene(texts::paper_parts_tools().as_str())
}

/// The balance stand alone, unfolded, in millimetres.
#[must_use]
pub fn stand_piece() -> Scene {
    tools::stand().scene(texts::paper_parts_tools().as_str())
}

/// Whether numbers are within the bounds that a design has without faults, so that no part is
/// endless.
pub(crate) fn within_limits(design: &Design) -> bool {
    let is_length = |mm: f64| mm.abs() <= limits::LENGTH_MM;
    let is_width = |mm: f64| mm.abs() <= limits::DIAMETER_MM.1;
    design.sections.len() <= limits::SECTIONS
        && design.sections.iter().all(|section| {
            is_length(section.length_mm) && section.diameter_mm.is_none_or(is_width)
        })
        && design.fins.len() <= limits::FIN_SETS
        && design.fins.iter().all(|set| {
            let corners = set.planform.corners_mm();
            set.count <= limits::FIN_COUNT.1
                && is_length(set.start_mm)
                && set.roll_deg.is_finite()
                && corners.iter().flatten().all(|&mm| is_length(mm))
        })
}

/// Something to do, or to take care of before one does what follows.
#[derive(Clone, Debug, PartialEq)]
enum Step {
    Do(String),
    Care(Text),
    /// What it is, before the first step.
    Say(String),
}

fn step(words: Text) -> Step {
    Step::Do(words.as_str().to_owned())
}

/// A section that can be made from card.
enum Shape {
    Straight(Straight),
    Round(Leaves),
}

impl Shape {
    fn new(design: &Design, section: usize) -> Option<Self> {
        let kind = design.sections.get(section).filter(|_| within_limits(design))?.kind;
        let stretch: Stretch = *Body::new(design)?.stretches().get(section)?;
        let profile = stretch.profile;
        Some(match kind {
            SectionKind::Neck => return None,
            SectionKind::Cone | SectionKind::Tube | SectionKind::StraightTaper => {
                Self::Straight(Straight {
                    front: profile.front_radius_m() * 1000.0,
                    rear: profile.rear_radius_m() * 1000.0,
                    length: profile.length_m() * 1000.0,
                })
            }
            SectionKind::Ogive
            | SectionKind::Ellipsoid
            | SectionKind::Paraboloid
            | SectionKind::Dome
            | SectionKind::RoundedTaper => {
                let points = stretch.outline_m(FLAT_M).into_iter();
                let side: Vec<(f64, f64)> =
                    points.map(|(x, r)| (x * 1000.0, r * 1000.0)).collect();
                Self::Round(Leaves::new(&side))
            }
        })
    }

    /// One of some equal parts; `None` where it cannot be made of so many.
    fn piece(&self, parts: u32, said: &str) -> Option<Piece> {
        match self {
            Self::Straight(straight) => straight.piece(parts, said),
            Self::Round(leaves) => leaves
                .count
                .is_multiple_of(parts)
                .then(|| leaves.piece(leaves.count / parts, said)),
        }
    }

    /// Of how many equal parts it is made: as few as fit on a page each. Where none does, as few
    /// as there can be, or leaf by leaf.
    fn parts(&self) -> u32 {
        let is_there = |&parts: &u32| self.piece(parts, "").is_some();
        let fits = |&parts: &u32| self.piece(parts, "").is_some_and(|p| layout::fits(&p));
        match self {
            Self::Straight(_) => {
                let mut all = 1..=MOST_PARTS;
                all.clone().find(fits).or(all.find(is_there)).unwrap_or(1)
            }
            Self::Round(leaves) => (1..=leaves.count).find(fits).unwrap_or(leaves.count),
        }
    }

    /// What it is cut from.
    fn pieces(&self, part: &str) -> Vec<Piece> {
        let parts = self.parts();
        let said = |number: u32| match parts {
            1 => part.to_owned(),
            _ => texts::paper_parts_piece(part, number.into(), parts.into()),
        };
        (1..=parts).filter_map(|number| self.piece(parts, &said(number))).collect()
    }

    /// What is done with so many parts.
    fn steps(&self, parts: usize, is_nose: bool) -> Vec<Step> {
        let mut steps = Vec::new();
        if parts > 1 {
            steps.push(Step::Do(texts::paper_parts_parts(parts.into())));
        }
        steps.extend(match self {
            Self::Straight(_) => {
                [texts::paper_parts_bend(), texts::paper_parts_glue_tab()].map(step)
            }
            Self::Round(_) => {
                [texts::paper_parts_ring(), texts::paper_parts_leaves()].map(step)
            }
        });
        if is_nose {
            steps.push(Step::Care(texts::paper_parts_care_nose()));
            steps.push(step(texts::paper_parts_round_tip()));
        }
        steps.push(Step::Care(texts::paper_parts_care_bottle()));
        steps.push(step(texts::paper_parts_put_on()));
        steps
    }
}

/// What is done first with parts at true size.
fn printed() -> [Step; 2] {
    [step(texts::paper_parts_card()), step(texts::cut_out_step_check())]
}

/// A sheet with its title, what is done with it and what its lines mean. `first` is done before
/// anything is cut out.
fn begun(
    size: PaperSize,
    design: &Design,
    name: &str,
    first: &[Step],
    use_it: &[Step],
) -> Flow {
    let title = match design.name.as_str() {
        "" => name.to_owned(),
        rocket => texts::paper_parts_of(rocket, name),
    };
    let mut flow = Flow::new(size, &title);
    let mut steps = first.to_vec();
    steps.push(Step::Care(texts::paper_parts_care_cut()));
    steps.push(step(texts::cut_out_step_cut()));
    steps.extend_from_slice(use_it);
    explain(&mut flow, &steps);
    legend(&mut flow);
    flow
}

/// A part that is larger than a page: over several, or told why not.
fn larger(
    size: PaperSize,
    design: &Design,
    name: &str,
    piece: &Piece,
    times: usize,
    use_it: &[Step],
) -> Vec<Page> {
    let (width, height) = piece.size();
    let (width, height) = (Number::fixed(width, 0), Number::fixed(height, 0));
    let large = texts::paper_parts_large(width, height);
    let first = [
        Step::Say(large.clone()),
        step(texts::cut_out_step_check_all()),
        Step::Care(texts::paper_parts_care_cut()),
        step(texts::paper_parts_join()),
        Step::Do(texts::paper_parts_trace(times.into())),
    ];
    let mut flow = begun(size, design, name, &first, use_it);
    if layout::tiled(&mut flow, piece, MOST_SHEETS).is_some() {
        return flow.pages();
    }
    let too_large = Step::Do(texts::paper_parts_too_large(MOST_SHEETS.into()));
    begun(size, design, name, &[Step::Say(large), too_large], use_it).pages()
}

/// Steps with numbers, and each caution before its step. None is told twice.
fn explain(flow: &mut Flow, steps: &[Step]) {
    let mut number = 1;
    for (i, step) in steps.iter().enumerate() {
        match step {
            _ if steps[..i].contains(step) => {}
            Step::Do(words) => {
                flow.list(&[words], Mark::NumberFrom(number));
                number += 1;
            }
            Step::Care(words) => flow.caution(words.as_str()),
            Step::Say(words) => flow.paragraph(words),
        }
    }
}

/// What each kind of line means.
fn legend(flow: &mut Flow) {
    const SAMPLE_MM: f64 = 14.0;
    const WORDS_MM: f64 = 3.3;
    const ROW_MM: f64 = 5.5;
    let said = [
        texts::paper_parts_solid(),
        texts::paper_parts_dashed(),
        texts::paper_parts_thin(),
    ];
    let rtl = texts::language().dir == "rtl";
    let mut items = Vec::new();
    let (mut x, mut y) = (0.0, 0.0);
    for (style, said) in piece::samples().into_iter().zip(said) {
        let words = said.as_str();
        let wide = SAMPLE_MM + 2.0 + crate::paper::wide(words, WORDS_MM, false);
        if x > 0.0 && x + wide > Flow::WIDTH_MM {
            (x, y) = (0.0, y + ROW_MM);
        }
        let place =
            |x: f64, y: f64| Point { x: if rtl { Flow::WIDTH_MM - x } else { x }, y };
        let mut path = Path::default();
        path.line(place(x, y + 2.7), place(x + SAMPLE_MM, y + 2.7));
        items.push(Item::Path { path, style });
        items.push(Item::Text {
            at: place(x + SAMPLE_MM + 2.0, y + 3.8),
            anchor: if rtl { Anchor::End } else { Anchor::Start },
            words: words.to_owned(),
            colour: Colour::Ink,
            bold: false,
            size: WORDS_MM,
        });
        x += wide + 7.0;
    }
    let told: Vec<&str> = said.iter().map(|said| said.as_str()).collect();
    flow.drawing(&told.join("; "), y + ROW_MM, items);
}
