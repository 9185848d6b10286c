//! The outline of a cut-out in millimetres of paper, nose up.

use noseward_stability::SideView;
use noseward_words::{self as texts, Text};

use super::words;
use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};

/// A pencil's line.
const LINE_MM: f64 = 0.35;
const MIDDLE_MM: f64 = 0.2;
/// What is free round it, for its own line.
const FREE_MM: f64 = 1.0;

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
    /// From the nose to the tail, at which it may be folded.
    pub(super) axis: Path,
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
            axis: Path::open(vec![at(0.0, 0.0), at(body_m, 0.0)]),
            points,
            axis_x,
        }
    }

    /// What is drawn, given how a path is cut to a sheet, and where the sheet's corner lies.
    pub(super) fn items(&self, cut: &dyn Fn(&Path) -> Path, corner: Point) -> Vec<Item> {
        let axis = Style::line(Colour::Soft, MIDDLE_MM).dashed(&[4.0, 1.5, 0.6, 1.5]);
        let mut items = vec![
            Item::Path { path: cut(&self.axis), style: axis },
            Item::Path {
                path: cut(&self.path),
                style: Style::line(Colour::Ink, LINE_MM),
            },
        ];
        for (i, (y, name)) in self.points.iter().enumerate() {
            // Mass to the left, pressure to the right, as in every drawing of the two.
            let side = if i == 0 { -1.0 } else { 1.0 };
            let at = Point { x: self.axis_x, y: *y };
            let tip = |x: f64, dy: f64| Point { x: at.x + side * x, y: at.y + dy };
            let colour = if i == 0 { Colour::Fulcrum } else { Colour::Wind };
            let triangle = Path::closed(vec![at, tip(7.0, -3.0), tip(7.0, 3.0)]);
            let arrow = {
                let mut arrow = Path::open(vec![tip(16.0, 0.0), at]);
                arrow.runs.push((vec![tip(4.0, -2.0), at, tip(4.0, 2.0)], false));
                arrow
            };
            let (path, style) = if i == 0 {
                (triangle, Style::area(colour))
            } else {
                (arrow, Style::line(colour, 0.8))
            };
            let path = cut(&path);
            if path.runs.is_empty() {
                continue;
            }
            items.push(Item::Path { path, style });
            let anchor = if i == 0 { Anchor::End } else { Anchor::Start };
            let label =
                tip(if i == 0 { 9.0 } else { 1.0 }, if i == 0 { 1.2 } else { -2.5 });
            items.push(Item::Text {
                at: Point { x: label.x - corner.x, y: label.y - corner.y },
                anchor,
                words: name.as_str().to_owned(),
                colour,
                bold: false,
                size: 2.9,
            });
        }
        items
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
                items: self.items(&Path::clone, Point::default()),
            }],
        }
    }

    /// A word at the nose, on the first sheet.
    pub(super) fn nose(&self) -> Item {
        let at = Point { x: self.axis_x + 12.0, y: FREE_MM + 3.0 };
        words(at, Anchor::Start, texts::cut_out_nose().as_str())
    }
}
