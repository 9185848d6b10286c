//! The rocket itself: fins behind, body, fins in front, weights; and where a hand takes hold
//! of what can be moved.

use noseward_stability::{
    Body, Component, Design, Mass, Material, ProjectedFin, SectionKind, SideView,
};
use noseward_words as words;

use super::layout::Layout;
use crate::palette::Colour;
use crate::scene::{Item, Path, Point, Style};

/// How far a drawn curve may stray from the true one, in pixels.
const TOLERANCE_PX: f64 = 0.15;
const EDGE: f64 = 2.0;
/// What lies in front of the body has a finer edge.
const FINE_EDGE: f64 = 1.25;
/// Half of what is seen of a fin that is edge-on.
const EDGE_ON_HALF: f64 = 2.5;
/// A cap is wider than its neck by this much on either side.
const CAP_OVER: f64 = 2.0;
/// The cap's share of its neck.
const CAP_SHARE: f64 = 0.6;
/// Between the outer edge of a fin and the middle of its grip.
const GRIP_INSET: f64 = 11.0;
/// Half of one of its lines.
const GRIP_LINE: f64 = 6.0;

pub(super) fn rocket(
    design: &Design,
    body: &Body,
    view: &SideView,
    layout: &Layout,
) -> Vec<Item> {
    let mut items = fin_sets(design, view, layout, false);
    items.extend(sections(design, body, layout));
    items.extend(shine(design, body, layout));
    items.extend(cap(design, body, layout));
    items.push(axis(body, layout));
    items.extend(fin_sets(design, view, layout, true));
    items
}

fn is_edge_on(fin: &ProjectedFin) -> bool {
    fin.turned.abs() < 1e-9
}

/// Of each set the fins in front of the body, or those behind it, as one part.
fn fin_sets(design: &Design, view: &SideView, layout: &Layout, near: bool) -> Vec<Item> {
    let mut parts = Vec::new();
    for set in 0..design.fins.len() {
        let of_set = || view.fins().iter().filter(|fin| fin.set == set);
        let best = of_set().map(rank).fold(0.0, f64::max);
        let (mut items, mut grip) = (Vec::new(), None);
        // A fin behind the body that is edge-on cannot be seen.
        for fin in of_set().filter(|fin| fin.near == near && (near || !is_edge_on(fin))) {
            let corners = corners(fin, layout);
            if rank(fin) == best {
                grip = Some(fin_grip(&corners, fin.turned, layout));
            }
            items.push(Item::Path { path: Path::closed(corners), style: fin_style(fin) });
        }
        if !items.is_empty() {
            let hint = grip.as_ref().map(|_| words::drawing_drag_fins());
            items.extend(grip);
            parts.push(Item::Part { part: Component::Fins(set), hint, items });
        }
    }
    parts
}

fn corners(fin: &ProjectedFin, layout: &Layout) -> Vec<Point> {
    if !is_edge_on(fin) {
        return fin.corners.iter().map(|c| layout.point(c.x, c.y)).collect();
    }
    let (front, rear) = ends(fin.corners.iter().map(|c| layout.y(c.x)));
    let (left, right) = (layout.axis_x - EDGE_ON_HALF, layout.axis_x + EDGE_ON_HALF);
    let corners = [(left, front), (right, front), (right, rear), (left, rear)];
    corners.map(|(x, y)| Point { x, y }).into()
}

fn fin_style(fin: &ProjectedFin) -> Style {
    let in_front = fin.near && fin.turned.abs() < 1.0 - 1e-9;
    let style = Style::line(Colour::Ink, if in_front { FINE_EDGE } else { EDGE });
    let style = style.filled(Colour::Fin);
    // The edge of the body shows through what covers it.
    if in_front && !is_edge_on(fin) { style.clear() } else { style }
}

/// How easily a hand finds it, beside others of its set: the more of it is seen, on the
/// right, in front.
fn rank(fin: &ProjectedFin) -> f64 {
    // Two that mirror each other may differ in the last bit.
    let seen = (fin.turned.abs() * 1e6).round();
    4.0 * seen + 2.0 * f64::from(fin.turned > 0.0) + f64::from(fin.near)
}

/// The least and the largest of some numbers.
fn ends(of: impl Iterator<Item = f64>) -> (f64, f64) {
    of.fold((f64::MAX, f64::MIN), |(least, most), x| (least.min(x), most.max(x)))
}

/// Two short lines within the outer edge of a fin whose corners are these.
fn fin_grip(corners: &[Point], turned: f64, layout: &Layout) -> Item {
    let side = if turned < 0.0 { -1.0 } else { 1.0 };
    let out = |p: &Point| side * (p.x - layout.axis_x);
    let (inner, outer) = ends(corners.iter().map(out));
    let inset = GRIP_INSET.min(0.45 * (outer - inner));
    let at = outer - inset;
    // Where the fin begins and ends there, seen from the front.
    let (mut from, mut to) = (f64::MAX, f64::MAX);
    let mut last = corners.len() - 1;
    for i in 0..corners.len() {
        let (a, b) = (corners[last], corners[i]);
        last = i;
        let (a_out, b_out) = (out(&a), out(&b));
        if (a_out <= at) != (b_out <= at) {
            let y = a.y + (b.y - a.y) * (at - a_out) / (b_out - a_out);
            to = to.min(from.max(y));
            from = from.min(y);
        }
    }
    Item::Grip {
        at: Point { x: layout.axis_x + side * at, y: f64::midpoint(from, to) },
        apart_px: 3.0_f64.min((to - from) / 4.0),
        half_px: GRIP_LINE.min((0.6 * inset).max(4.0)),
    }
}

/// Whether a section is of card or the like; else one sees through it.
fn is_card(design: &Design, i: usize) -> bool {
    let section = &design.sections[i];
    match section.mass {
        Mass::Joined => i > 0 && is_card(design, i - 1),
        Mass::Material(material) => material != Material::BottleWall,
        Mass::WeighedG(_) | Mass::SheetGPerM2(_) => {
            section.kind.is_nose() && section.kind != SectionKind::Dome
        }
    }
}

/// Each section as an area that can be pointed at, with its edges; then the joints between
/// those that are equally wide where they meet.
fn sections(design: &Design, body: &Body, layout: &Layout) -> Vec<Item> {
    let tolerance_m = TOLERANCE_PX / layout.px_per_mm / 1000.0;
    let stretches = body.stretches();
    let mut joints = Path::default();
    let mut items: Vec<Item> = Vec::new();
    for (i, stretch) in stretches.iter().enumerate() {
        let side = stretch.outline_m(tolerance_m);
        let run = |sign: f64| -> Vec<Point> {
            side.iter().map(|&(x, r)| layout.point(x, sign * r)).collect()
        };
        let (right, left) = (run(1.0), run(-1.0));
        let mut area = right.clone();
        area.extend(left.iter().rev());
        let mut edges = Path::open(right);
        edges.runs.push((left, false));
        let across = |path: &mut Path, x: f64, r: f64| {
            path.line(layout.point(x, -r), layout.point(x, r));
        };
        let front_r = stretch.profile.front_radius_m();
        let ahead_r = i.checked_sub(1).map(|a| stretches[a].profile.rear_radius_m());
        let flush = ahead_r.is_some_and(|r| (r - front_r).abs() < 1e-6);
        if front_r > 0.0 {
            across(
                if flush { &mut joints } else { &mut edges },
                stretch.front_m,
                front_r,
            );
        }
        let rear_r = stretch.profile.rear_radius_m();
        let behind_r = stretches.get(i + 1).map(|b| b.profile.front_radius_m());
        if rear_r > 0.0 && behind_r.is_none_or(|r| (r - rear_r).abs() >= 1e-6) {
            across(&mut edges, stretch.rear_m(), rear_r);
        }
        let inside = if is_card(design, i) {
            Style::area(Colour::Ruler)
        } else {
            Style::area(Colour::Body).clear()
        };
        items.push(Item::Part {
            part: Component::Section(i),
            hint: None,
            items: vec![
                Item::Path { path: Path::closed(area), style: inside },
                Item::Path { path: edges, style: Style::line(Colour::Ink, EDGE) },
            ],
        });
    }
    let style = Style::line(Colour::Soft, 1.0).dashed(&[4.0, 4.0]);
    if !joints.runs.is_empty() {
        items.push(Item::Path { path: joints, style });
    }
    items
}

/// Light along the straight part of the bottle, the first where there are several.
fn shine(design: &Design, body: &Body, layout: &Layout) -> Option<Item> {
    let is_wall =
        |&i: &usize| design.sections[i].kind == SectionKind::Tube && !is_card(design, i);
    let stretch = &body.stretches()[(0..design.sections.len()).find(is_wall)?];
    let (r, long_m) = (stretch.profile.front_radius_m(), stretch.profile.length_m());
    let at = |along: f64| layout.point(stretch.front_m + along * long_m, -0.66 * r);
    // A long stroke, and a short one behind it.
    let mut path = Path::default();
    path.line(at(0.1), at(0.76));
    path.line(at(0.85), at(0.91));
    let width_px = 0.15 * (layout.x(r) - layout.axis_x);
    Some(Item::Path { path, style: Style::line(Colour::BoldLine, width_px) })
}

/// The cap of a bottle that ends in its neck.
fn cap(design: &Design, body: &Body, layout: &Layout) -> Option<Item> {
    let last = design.sections.len() - 1;
    if design.sections[last].kind != SectionKind::Neck || is_card(design, last) {
        return None;
    }
    let neck = &body.stretches()[last];
    let rear = layout.y(neck.rear_m());
    let front = layout.y(neck.rear_m() - CAP_SHARE * neck.profile.length_m());
    let half = layout.x(neck.profile.rear_radius_m()) - layout.axis_x + CAP_OVER;
    let at = |across: f64, y: f64| Point { x: layout.axis_x + across * half, y };
    let corners = vec![at(-1.0, front), at(1.0, front), at(1.0, rear), at(-1.0, rear)];
    let mut path = Path::closed(corners);
    for across in [-0.6, -0.2, 0.2, 0.6] {
        path.line(at(across, front), at(across, rear));
    }
    let style = Style::line(Colour::Ink, FINE_EDGE).filled(Colour::BoldLine);
    Some(Item::Path { path, style })
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
    let dot = |(i, weight): (usize, &noseward_stability::Weight)| {
        let centre = layout.point(weight.position_mm / 1000.0, 0.0);
        let radius = (3.0 + weight.mass_g.max(0.0).sqrt()).min(9.0);
        Item::Part {
            part: Component::Weight(i),
            hint: Some(words::drawing_drag_weight()),
            items: vec![
                Item::Grip { at: centre, apart_px: radius + 4.0, half_px: 4.5 },
                Item::Dot {
                    centre,
                    radius,
                    style: Style::line(Colour::Body, 1.5).filled(Colour::Ink),
                },
            ],
        }
    };
    design.weights.iter().enumerate().map(dot).collect()
}
