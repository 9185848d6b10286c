//! The outline of a cut-out in millimetres of paper, nose up.

use noseward_stability::SideView;
use noseward_words::{self as texts, Text};

use super::{Window, clipped, words};
use crate::palette::Colour;
use crate::paper::wide;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// A pencil's line.
const LINE_MM: f64 = 0.35;
const MIDDLE_MM: f64 = 0.2;
/// What is free round it, for its own line.
const FREE_MM: f64 = 1.0;
/// How large the words at a point are, and what is free above and below their middle.
const LABEL_MM: f64 = 2.9;
const BAND_MM: f64 = 3.0;
/// Between a line and words beside it.
const OFF_LINE_MM: f64 = 2.0;
/// How far from a point its words begin at least: beyond its triangle, or beyond its arrow.
const MARKS_MM: [f64; 2] = [9.0, 18.0];

pub(super) struct Outline {
    /// How large it is drawn.
    pub(super) scale: f64,
    /// Of the real rocket.
    pub(super) length_mm: f64,
    /// Of the drawing.
    pub(super) width: f64,
    pub(super) height: f64,
    /// The line to cut along.
    pub(super) path: Path,
    /// From the nose to the tail.
    pub(super) axis: Path,
    /// Whether a part touches the rest at a point at most, so that it would fall off.
    pub(super) is_loose: bool,
    points: Vec<(f64, Text)>,
    axis_x: f64,
}

impl Outline {
    pub(super) fn new(
        view: &SideView,
        scale: f64,
        answers_mm: Option<(f64, f64)>,
    ) -> Self {
        let rings = view.contours_m();
        let all = || rings.iter().flatten();
        let least = all().map(|c| c.y).fold(0.0, f64::min);
        let most = all().map(|c| c.y).fold(0.0, f64::max);
        let tail = all().map(|c| c.x).fold(0.0, f64::max);
        let mm = scale * 1000.0;
        let axis_x = FREE_MM - least * mm;
        let at =
            |x_m: f64, y_m: f64| Point { x: axis_x + y_m * mm, y: FREE_MM + x_m * mm };
        let run =
            rings.iter().map(|ring| (ring.iter().map(|c| at(c.x, c.y)).collect(), true));
        let path = Path { runs: run.collect() };
        let parts = path.runs.iter().filter(|(ring, _)| is_part(ring)).count();
        let body_m = view.body_chain_m().last().map_or(0.0, |(x, _)| *x);
        let points = answers_mm.map_or(Vec::new(), |(mass, pressure)| {
            let y = |from_nose: f64| FREE_MM + from_nose * scale;
            vec![
                (y(mass), texts::cut_out_mass()),
                (y(pressure), texts::cut_out_pressure()),
            ]
        });
        Self {
            scale,
            length_mm: tail * 1000.0,
            width: (most - least) * mm + 2.0 * FREE_MM,
            height: tail * mm + 2.0 * FREE_MM,
            path,
            is_loose: parts > 1,
            axis: Path::open(vec![at(0.0, 0.0), at(body_m, 0.0)]),
            points,
            axis_x,
        }
    }

    /// What is drawn in a window, or all of it: the line to cut along, and both points.
    pub(super) fn items(&self, window: Option<Window>) -> Vec<Item> {
        let mut items = vec![Item::Path {
            path: cut(&self.path, window),
            style: Style::line(Colour::Ink, LINE_MM),
        }];
        for i in 0..self.points.len() {
            items.extend(self.point(i, window));
        }
        items
    }

    /// The line from the nose to the tail.
    pub(super) fn axis_in(&self, window: Option<Window>) -> Item {
        let style = Style::line(Colour::Soft, MIDDLE_MM).dashed(&[4.0, 1.5, 0.6, 1.5]);
        Item::Path { path: cut(&self.axis, window), style }
    }

    /// One of both points: its sign, and its words where no line of the outline is.
    fn point(&self, i: usize, window: Option<Window>) -> Vec<Item> {
        let (y, name) = self.points[i];
        let at = Point { x: self.axis_x, y };
        let tip = |x: f64, dy: f64| Point { x: at.x + SIDES[i] * x, y: at.y + dy };
        let colour = [Colour::Fulcrum, Colour::Wind][i];
        let (path, style) = if i == 0 {
            let triangle = Path::closed(vec![at, tip(7.0, -3.0), tip(7.0, 3.0)]);
            (triangle, Style::area(colour))
        } else {
            let mut arrow = Path::open(vec![tip(16.0, 0.0), at]);
            arrow.runs.push((vec![tip(4.0, -2.0), at, tip(4.0, 2.0)], false));
            (arrow, Style::line(colour, 0.8))
        };
        let path = cut(&path, window);
        let mut items = Vec::new();
        if !path.runs.is_empty() {
            items.push(Item::Path { path, style });
        }
        let from = self.label_from(i);
        let leader = Path::open(vec![tip(MARKS_MM[i] - 2.0, 0.0), tip(from - 1.0, 0.0)]);
        if from > MARKS_MM[i] {
            let style = Style::line(colour, MIDDLE_MM);
            items.push(Item::Path { path: cut(&leader, window), style });
        }
        let (start, end) = (tip(from, 1.0), tip(from + label_mm(name), 1.0));
        let corner = window.map_or(Point::default(), Window::corner);
        if window.is_none_or(|window| window.has(start) && window.has(end)) {
            items.push(Item::Text {
                at: Point { x: start.x - corner.x, y: start.y - corner.y },
                anchor: [Anchor::End, Anchor::Start][i],
                words: name.as_str().to_owned(),
                colour,
                bold: false,
                size: LABEL_MM,
            });
        }
        items
    }

    /// How far from the axis the words at a point begin: beyond its sign, and beyond lines of the
    /// outline that they would cross.
    fn label_from(&self, i: usize) -> f64 {
        let (y, name) = self.points[i];
        let ends = if i == 0 { (-FAR_MM, self.axis_x) } else { (self.axis_x, FAR_MM) };
        let (left, right) = ends;
        let band = Window { left, top: y - BAND_MM, right, bottom: y + BAND_MM };
        let lines = clipped(&self.path, band).runs.into_iter().map(|(points, _)| {
            let away = points.iter().map(|p| (p.x + left - self.axis_x).abs());
            away.fold((FAR_MM, 0.0_f64), |(low, high), x| (low.min(x), high.max(x)))
        });
        let mut lines: Vec<(f64, f64)> = lines.collect();
        lines.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        let mut from = MARKS_MM[i];
        for (low, high) in lines {
            if low < from + label_mm(name) + OFF_LINE_MM && high > from - OFF_LINE_MM {
                from = high + OFF_LINE_MM;
            }
        }
        from
    }

    /// What the words at the points may take beside the outline.
    pub(super) fn beside_mm(&self) -> f64 {
        let wide = self.points.iter().map(|(_, name)| label_mm(*name) + OFF_LINE_MM);
        wide.fold(0.0, f64::max)
    }

    /// All of it in one piece.
    pub(super) fn scene(&self, name: Text) -> Scene {
        Scene {
            width: self.width,
            height: self.height,
            unit: Unit::Mm,
            name: name.as_str().to_owned(),
            groups: vec![Group {
                key: "outline",
                items: std::iter::once(self.axis_in(None))
                    .chain(self.items(None))
                    .collect(),
            }],
        }
    }

    /// A word at the nose, on the first sheet.
    pub(super) fn nose(&self) -> Item {
        let at = Point { x: self.axis_x + 12.0, y: FREE_MM + 3.0 };
        words(at, Anchor::Start, texts::cut_out_nose().as_str())
    }
}

/// Mass to the left, pressure to the right, as in every drawing of the two.
const SIDES: [f64; 2] = [-1.0, 1.0];
/// Beyond all outlines.
const FAR_MM: f64 = 1e5;

fn label_mm(name: Text) -> f64 {
    wide(name.as_str(), LABEL_MM, false)
}

fn cut(path: &Path, window: Option<Window>) -> Path {
    window.map_or_else(|| path.clone(), |window| clipped(path, window))
}

/// Whether a ring goes round a part of the cut-out, not round a gap in it.
fn is_part(ring: &[Point]) -> bool {
    let next = ring.iter().cycle().skip(1);
    ring.iter().zip(next).map(|(a, b)| a.x * b.y - b.x * a.y).sum::<f64>() < 0.0
}

#[cfg(test)]
impl Outline {
    /// Whether no line of the outline runs through the words at the points.
    pub(super) fn has_free_words(&self) -> bool {
        self.points.iter().enumerate().all(|(i, (y, name))| {
            let from = self.label_from(i);
            let ends = [from, from + label_mm(*name)].map(|x| self.axis_x + SIDES[i] * x);
            let [left, right] = [ends[0].min(ends[1]), ends[0].max(ends[1])];
            let window = Window { left, top: y - 2.0, right, bottom: y + 1.5 };
            clipped(&self.path, window).runs.is_empty()
        })
    }
}
