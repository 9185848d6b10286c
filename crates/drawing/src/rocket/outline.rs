//! The rocket itself: fins behind, body, fins in front, weights.

use noseward_stability::{Body, Design, Part, ProjectedFin, SideView};

use super::layout::Layout;
use crate::palette::Colour;
use crate::scene::{Item, Path, Point, Style};

/// How far a drawn curve may stray from the true one, in pixels.
const TOLERANCE_PX: f64 = 0.15;
const EDGE: f64 = 2.0;
/// A fin seen edge-on is drawn as a line of this width.
const EDGE_ON: f64 = 4.0;

pub(super) fn rocket(body: &Body, view: &SideView, layout: &Layout) -> Vec<Item> {
    let mut items = Vec::new();
    let is_flat = |fin: &ProjectedFin| fin.turned.abs() < 1e-9;
    // A fin behind the body that is edge-on cannot be seen.
    items.extend(view.fins().iter().filter(|f| !f.near && !is_flat(f)).map(fin(layout)));
    items.extend(sections(body, layout));
    items.push(axis(body, layout));
    items.extend(view.fins().iter().filter(|f| f.near).map(fin(layout)));
    items
}

fn fin(layout: &Layout) -> impl Fn(&ProjectedFin) -> Item {
    move |fin| {
        let corners = fin.corners.iter().map(|c| layout.point(c.x, c.y)).collect();
        let edge_on = fin.turned.abs() < 1e-9;
        let width = if edge_on { EDGE_ON } else { EDGE };
        Item::Part {
            part: Part::Fins(fin.set),
            items: vec![Item::Path {
                path: Path::closed(corners),
                style: Style::line(Colour::Ink, width).filled(Colour::Fin),
            }],
        }
    }
}

/// Each section as an area that can be pointed at, with its side edges.
fn sections(body: &Body, layout: &Layout) -> Vec<Item> {
    let tolerance_m = TOLERANCE_PX / layout.px_per_mm / 1000.0;
    let stretches = body.stretches();
    stretches
        .iter()
        .enumerate()
        .map(|(i, stretch)| {
            let side = stretch.outline_m(tolerance_m);
            let run = |sign: f64| -> Vec<Point> {
                side.iter().map(|&(x, r)| layout.point(x, sign * r)).collect()
            };
            let (right, left) = (run(1.0), run(-1.0));
            let mut area = right.clone();
            area.extend(left.iter().rev());
            let mut edges = Path::open(right);
            edges.runs.push((left, false));
            let front_r = stretch.profile.front_radius_m();
            let joint = Path::open(vec![
                layout.point(stretch.front_m, -front_r),
                layout.point(stretch.front_m, front_r),
            ]);
            let ahead_r = i.checked_sub(1).map(|a| stretches[a].profile.rear_radius_m());
            let flush = ahead_r.is_some_and(|r| (r - front_r).abs() < 1e-6);
            let joint_style = if flush {
                Style::line(Colour::Soft, 1.0).dashed(&[4.0, 4.0])
            } else {
                Style::line(Colour::Ink, EDGE)
            };
            let mut items = vec![
                Item::Path { path: Path::closed(area), style: Style::area(Colour::Body) },
                Item::Path { path: edges, style: Style::line(Colour::Ink, EDGE) },
            ];
            if front_r > 0.0 {
                items.push(Item::Path { path: joint, style: joint_style });
            }
            let rear_r = stretch.profile.rear_radius_m();
            let behind_r = stretches.get(i + 1).map(|b| b.profile.front_radius_m());
            if rear_r > 0.0 && behind_r.is_none_or(|r| (r - rear_r).abs() >= 1e-6) {
                let end = Path::open(vec![
                    layout.point(stretch.rear_m(), -rear_r),
                    layout.point(stretch.rear_m(), rear_r),
                ]);
                items.push(Item::Path {
                    path: end,
                    style: Style::line(Colour::Ink, EDGE),
                });
            }
            Item::Part { part: Part::Section(i), items }
        })
        .collect()
}

fn axis(body: &Body, layout: &Layout) -> Item {
    let beyond = 12.0;
    let top = Point { x: layout.axis_x, y: layout.y(0.0) - beyond };
    let bottom = Point { x: layout.axis_x, y: layout.y(body.length_m()) + beyond };
    Item::Path {
        path: Path::open(vec![top, bottom]),
        style: Style::line(Colour::Soft, 1.0).dashed(&[10.0, 4.0, 2.0, 4.0]),
    }
}

/// The weights as dots on the axis, heavier ones larger.
pub(super) fn weights(design: &Design, layout: &Layout) -> Vec<Item> {
    let dot = |(i, weight): (usize, &noseward_stability::Weight)| Item::Part {
        part: Part::Weight(i),
        items: vec![Item::Dot {
            centre: layout.point(weight.position_mm / 1000.0, 0.0),
            radius: (3.0 + weight.mass_g.max(0.0).sqrt()).min(9.0),
            style: Style::line(Colour::Body, 1.5).filled(Colour::Ink),
        }],
    };
    design.weights.iter().enumerate().map(dot).collect()
}
