//! A rocket turned about its centre of mass.

use noseward_stability::{Body, Design, Figures, SideView};

use crate::palette::Colour;
use crate::scene::{Item, Path, Point, Style};

/// A rocket that is drawn at any angle, at one scale.
#[derive(Clone, Debug)]
pub(crate) struct Turnable {
    view: SideView,
    pivot_m: f64,
    /// From the centre of mass to the farthest point of the outline, in metres.
    reach_m: f64,
}

impl Turnable {
    /// `None` when the design has no body.
    pub(crate) fn new(design: &Design, figures: &Figures) -> Option<Self> {
        let body = Body::new(design)?;
        let view = SideView::new(design, &body);
        let pivot_m = figures.mass.centre_m;
        let corners = view.fins().iter().flat_map(|fin| fin.corners.iter());
        let reach_m = corners
            .map(|c| (c.x, c.y))
            .chain(view.body_chain_m().iter().copied())
            .map(|(x, y)| libm::hypot(x - pivot_m, y))
            .fold(1e-6, f64::max);
        Some(Self { view, pivot_m, reach_m })
    }

    /// Fins and body within `radius_px` of the place of the centre of mass. Nose to the
    /// left at 0; it swings down as the angle grows.
    pub(crate) fn items(
        &self,
        angle_rad: f64,
        centre: Point,
        radius_px: f64,
    ) -> Vec<Item> {
        let scale = radius_px / self.reach_m;
        let (sin, cos) = libm::sincos(angle_rad);
        let turned = |x: f64, y: f64| {
            let (along, across) = ((x - self.pivot_m) * scale, y * scale);
            Point {
                x: centre.x + along * cos + across * sin,
                y: centre.y - along * sin + across * cos,
            }
        };
        let chain = self.view.body_chain_m();
        let right = chain.iter().map(|&(x, r)| turned(x, r));
        let left = chain.iter().rev().map(|&(x, r)| turned(x, -r));
        let body = Path::closed(right.chain(left).collect());
        let edge = Style::line(Colour::Ink, 1.5);
        let mut items: Vec<Item> = self
            .view
            .fins()
            .iter()
            .map(|fin| {
                let corners = fin.corners.iter().map(|c| turned(c.x, c.y)).collect();
                Item::Path {
                    path: Path::closed(corners),
                    style: edge.filled(Colour::Fin),
                }
            })
            .collect();
        items.push(Item::Path { path: body, style: edge.filled(Colour::Body) });
        items
    }
}
