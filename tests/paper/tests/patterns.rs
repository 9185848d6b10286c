//! Parts that are cut from a sheet come to the part of the rocket when they are rolled up.

use anyhow::{Context, Result, bail, ensure};
use noseward_drawing::paper::{Page, Tag};
use noseward_drawing::pattern::{fin_piece, ruler_piece, section_pieces, strip_piece};
use noseward_drawing::{Group, Item, Point, Scene};
use noseward_paper_tests::{Document, INK, Picture};
use noseward_stability::{Design, Example, Planform, Section, SectionKind};
use std::f64::consts::PI;

/// Thin lines, where none of their pixels is wholly dark.
const THIN: u8 = 170;

/// A part alone on paper of its size, and where its scene begins there.
fn drawn(name: &str, scene: &Scene) -> Result<(Picture, Point)> {
    const FREE_MM: f64 = 15.0;
    let at = Point { x: FREE_MM, y: FREE_MM };
    let part = Item::Placed { at, scale: 1.0, turned_deg: 0.0, scene: scene.clone() };
    let page = Scene {
        width: scene.width + 2.0 * FREE_MM,
        height: scene.height + 2.0 * FREE_MM,
        groups: vec![Group { key: "part", items: vec![part] }],
        ..scene.clone()
    };
    let pages = [Page { scene: page, tags: vec![Tag::Figure(name.into())] }];
    let document = Document::write(&format!("pattern-{name}"), &pages, "en-GB")?;
    Ok((document.picture(1, 300)?, at))
}

/// A rocket whose first section is a cone of this length, on a tube of this width.
fn with_cone(length_mm: f64, width_mm: f64) -> Design {
    let mut design = Example::Gannet.design();
    design.sections[0] =
        Section { kind: SectionKind::Cone, length_mm, ..design.sections[0].clone() };
    design.sections[1].diameter_mm = Some(width_mm);
    design
}

/// The circle through points, by least squares (Kåsa's way): its middle and its radius.
fn circle(points: &[Point]) -> (Point, f64) {
    // x² + y² = a x + b y + c, from the middle of the points so that the sums stay small.
    let count = points.iter().fold(0.0, |count, _| count + 1.0);
    let mean = |of: fn(&Point) -> f64| points.iter().map(of).sum::<f64>() / count;
    let (mx, my) = (mean(|p| p.x), mean(|p| p.y));
    let (mut xx, mut xy, mut yy, mut xz, mut yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for p in points {
        let (x, y) = (p.x - mx, p.y - my);
        let z = x * x + y * y;
        xx += x * x;
        xy += x * y;
        yy += y * y;
        xz += x * z;
        yz += y * z;
    }
    let det = 2.0 * (xx * yy - xy * xy);
    let (x, y) = ((xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det);
    let radius = (x * x + y * y + (xx + yy) / count).sqrt();
    (Point { x: x + mx, y: y + my }, radius)
}

/// Read off a cone's sector: the radius of its arc, and the angle from its bare side to the line
/// at which its tab begins.
fn sector(picture: &Picture, at: Point, scene: &Scene) -> Result<(f64, f64)> {
    let (right, bottom) = (at.x + scene.width, at.y + scene.height);
    let mut arc = Vec::new();
    let mut x = at.x + 2.0;
    while x < right {
        let mut strokes = picture.strokes_in_column(x, INK);
        strokes.retain(|y| at.y < *y && *y < bottom);
        arc.extend(strokes.last().map(|y| Point { x: x + picture.mm / 2.0, y: *y }));
        x += 0.5;
    }
    // From the lowest point on both sides as long as the line is nearly level.
    let lowest = |a: &&Point, b: &&Point| a.y.total_cmp(&b.y);
    let middle = arc.iter().max_by(lowest).context("no arc")?.x;
    arc.retain(|p| (p.x - middle).abs() < scene.width / 6.0);
    let (apex, radius) = circle(&arc);
    for p in &arc {
        let off = libm::hypot(p.x - apex.x, p.y - apex.y) - radius;
        ensure!(off.abs() < 0.15, "{p:?} is {off} mm off the arc");
    }
    let mut turns = Vec::new();
    for share in 30..=85 {
        let y = apex.y + radius * f64::from(share) / 100.0;
        let mut strokes = picture.strokes_in_row(y, THIN);
        strokes.retain(|x| at.x < *x && *x < right);
        let y = (picture.pixel(y) as f64 + 0.5) * picture.mm - apex.y;
        turns.extend(strokes.iter().map(|x| libm::atan2(x - apex.x, y)));
    }
    let (right, left): (Vec<f64>, Vec<f64>) = turns.iter().partition(|turn| **turn > 0.0);
    let (fold, bare) = commonest(&right).zip(commonest(&left)).context("no sides")?;
    Ok((radius, fold - bare))
}

/// The value that most of them share: the direction of what runs straight from the tip, as the
/// edge of a tab and letters do not.
fn commonest(turns: &[f64]) -> Option<f64> {
    let near =
        |turn: f64| turns.iter().filter(move |other| (turn - **other).abs() < 2e-3);
    let most = turns.iter().max_by_key(|turn| near(**turn).count())?;
    let (sum, count) =
        near(*most).fold((0.0, 0.0), |(sum, n), turn| (sum + turn, n + 1.0));
    (count > 9.0).then_some(sum / count)
}

/// The arc becomes the girth of the cone's base, the side its slant height.
#[test]
fn a_cone_rolled_from_its_sector_has_its_base_and_its_side() -> Result<()> {
    for (i, (length, width)) in
        [(120.0, 65.0), (150.0, 50.0), (90.0, 24.0), (100.0, 70.0)]
            .into_iter()
            .enumerate()
    {
        let pieces = section_pieces(&with_cone(length, width), 0);
        let turns = pieces.iter().fold(0.0, |count, _| count + 1.0);
        let scene = pieces.first().context("a cone is cut from something")?;
        let (picture, at) = drawn(&format!("cone-{i}"), scene)?;
        let (side, angle) = sector(&picture, at, scene)?;
        let slant = libm::hypot(length, width / 2.0);
        let base = angle * turns * side / (2.0 * PI);
        eprintln!(
            "cone {length} × {width}: side {:+.3}, base {:+.3}",
            side - slant,
            base - width / 2.0
        );
        ensure!((side - slant).abs() < 0.3, "{length} × {width}: side {side}, {slant}");
        ensure!((base - width / 2.0).abs() < 0.15, "{length} × {width}: base {base}");
    }
    Ok(())
}

/// From the left end of the strip to the line at which its tab begins, just above its lower edge.
#[test]
fn a_strip_is_as_long_as_the_girth_of_the_body() -> Result<()> {
    let mut narrow = Example::Tern.design();
    narrow.sections[1].diameter_mm = Some(50.0);
    for (i, (design, width)) in
        [(Example::Gannet.design(), 24.0), (narrow, 50.0)].into_iter().enumerate()
    {
        let mut design = design;
        design.fins[0].start_mm = 120.0;
        let scene = strip_piece(&design, 0).context("it has fins")?;
        let (picture, at) = drawn(&format!("strip-{i}"), &scene)?;
        let mut strokes = picture.strokes_in_row(at.y + scene.height - 1.8, THIN);
        strokes.retain(|x| at.x < *x && *x < at.x + scene.width);
        ensure!(strokes.len() == 3, "an end, a line, the tab's end: {strokes:?}");
        let girth = strokes[1] - strokes[0];
        eprintln!("strip {width}: {:+.3}", girth - PI * width);
        ensure!((girth - PI * width).abs() < 0.3, "{girth} for {width}");
    }
    Ok(())
}

/// A line for each millimetre, each where it should be.
#[test]
fn the_ruler_measures_as_a_ruler_does() -> Result<()> {
    let scene = ruler_piece();
    let (picture, at) = drawn("ruler", &scene)?;
    let strokes = picture.strokes_in_row(at.y + 2.5, THIN);
    ensure!(strokes.len() == 251, "from 0 to 250 mm: {}", strokes.len());
    for (stroke, mm) in strokes.iter().zip(0..) {
        let off = stroke - strokes[0] - f64::from(mm);
        ensure!(off.abs() < 0.1, "the line of {mm} mm is {off} mm off");
    }
    Ok(())
}

/// From edge to edge at some heights over its root.
#[test]
fn a_fin_has_its_outline() -> Result<()> {
    let mut design = Example::Puffin.design();
    let (root, tip, span) = (110.0, 60.0, 55.0);
    design.fins[0].planform =
        Planform::FourSided { root_mm: root, tip_mm: tip, span_mm: span, sweep_mm: 20.0 };
    let scene = fin_piece(&design, 0).context("it has fins")?;
    let (picture, at) = drawn("fin", &scene)?;
    let top = picture.strokes_in_column(at.x + 50.0, INK);
    let top = top.first().context("it has a tip")?;
    for height in [10.0, 20.0, 30.0, 40.0, 50.0] {
        let strokes = picture.strokes_in_row(top + span - height, INK);
        let [first, .., last] = strokes.as_slice() else { bail!("{strokes:?}") };
        let wanted = root + (tip - root) * height / span;
        eprintln!("fin at {height}: {:+.3}", last - first - wanted);
        ensure!((last - first - wanted).abs() < 0.3, "{height}: {first} {last} {wanted}");
    }
    Ok(())
}
