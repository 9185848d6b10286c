//! What is drawn on a page, in PDF's operators.

use pdf_writer::{Content, Name, Str};

use super::super::letters::{Letter, width};
use super::super::page::{Page, Tag};
use super::{BOLD, CLEAR, PLAIN, POINTS_PER_MM, SIGNS, single, structure};
use crate::palette::Colour;
use crate::scene::{Anchor, Item, Path, Point, Scene, Style, TEXT_PX};

/// How much of what lies behind an area that one sees through is covered; as in SVG.
pub(super) const CLEAR_ALPHA: f32 = 0.6;
/// Where a quarter of a circle has its control points (the usual cubic approximation).
const KAPPA: f64 = 0.552_284_75;

/// The operators for a page, from its top left corner.
pub(super) fn of(page: &Page) -> Vec<u8> {
    let mut content = Content::new();
    let scale = single(POINTS_PER_MM);
    content.transform([
        scale,
        0.0,
        0.0,
        -scale,
        0.0,
        single(page.scene.height * POINTS_PER_MM),
    ]);
    for ((group, tag), i) in page.scene.groups.iter().zip(&page.tags).zip(0..) {
        match structure::role(tag) {
            Some(role) => {
                let mut mark = content.begin_marked_content_with_properties(role);
                mark.properties().identify(i);
            }
            None => {
                content.begin_marked_content(Name(b"Artifact"));
            }
        }
        items(&mut content, &group.items, f64::MAX);
        content.end_marked_content();
        debug_assert!(*tag != Tag::Heading(0), "levels begin with 1");
    }
    content.finish().into_vec()
}

fn items(content: &mut Content, list: &[Item], scene_width: f64) {
    for item in list {
        match item {
            Item::Path { path, style } => {
                painted(content, style, |content| trace(content, path));
            }
            Item::Dot { centre, radius, style } => {
                painted(content, style, |content| circle(content, *centre, *radius));
            }
            Item::Text { .. } => text(content, item, scene_width),
            Item::Placed { at, scale, turned_deg, scene } => {
                placed(content, *at, *scale, *turned_deg, scene);
            }
            Item::Part { items: inside, .. } => items(content, inside, scene_width),
            // Nobody takes hold of paper.
            Item::Grip { .. } => {}
        }
    }
}

fn placed(content: &mut Content, at: Point, scale: f64, turned_deg: f64, scene: &Scene) {
    let turned = turned_deg.to_radians();
    let (sin, cos) = (libm::sin(turned) * scale, libm::cos(turned) * scale);
    content.save_state();
    content.transform([cos, sin, -sin, cos, at.x, at.y].map(single));
    for group in &scene.groups {
        items(content, &group.items, scene.width);
    }
    content.restore_state();
}

/// Paints what `trace` has traced.
fn painted(content: &mut Content, style: &Style, trace: impl Fn(&mut Content)) {
    let colours = |colour: Colour| colour.on_paper();
    content.save_state();
    if style.clear {
        content.set_parameters(CLEAR);
    }
    if let Some([r, g, b]) = style.fill.map(colours) {
        content.set_fill_rgb(r, g, b);
    }
    if let Some([r, g, b]) = style.stroke.map(colours) {
        content.set_stroke_rgb(r, g, b);
        content.set_line_width(single(style.width));
        if !style.dashes.is_empty() {
            content.set_dash_pattern(style.dashes.iter().map(|&dash| single(dash)), 0.0);
        }
    }
    trace(content);
    match (style.fill, style.stroke) {
        (Some(_), Some(_)) => content.fill_nonzero_and_stroke(),
        (Some(_), None) => content.fill_nonzero(),
        (None, Some(_)) => content.stroke(),
        (None, None) => content.end_path(),
    };
    content.restore_state();
}

fn trace(content: &mut Content, path: &Path) {
    for (points, is_closed) in &path.runs {
        for (i, point) in points.iter().enumerate() {
            let (x, y) = (single(point.x), single(point.y));
            if i == 0 {
                content.move_to(x, y);
            } else {
                content.line_to(x, y);
            }
        }
        if *is_closed {
            content.close_path();
        }
    }
}

fn circle(content: &mut Content, centre: Point, radius: f64) {
    let at =
        |x: f64, y: f64| (single(centre.x + x * radius), single(centre.y + y * radius));
    let (x, y) = at(1.0, 0.0);
    content.move_to(x, y);
    for (from, to) in [
        ((1.0, 0.0), (0.0, 1.0)),
        ((0.0, 1.0), (-1.0, 0.0)),
        ((-1.0, 0.0), (0.0, -1.0)),
        ((0.0, -1.0), (1.0, 0.0)),
    ] {
        let (x1, y1) = at(from.0 + KAPPA * to.0, from.1 + KAPPA * to.1);
        let (x2, y2) = at(to.0 + KAPPA * from.0, to.1 + KAPPA * from.1);
        let (x3, y3) = at(to.0, to.1);
        content.cubic_to(x1, y1, x2, y2, x3, y3);
    }
    content.close_path();
}

/// A line of words, narrower where a picture that is laid into the page has no room for it.
fn text(content: &mut Content, item: &Item, scene_width: f64) {
    let Item::Text { at, anchor, words, colour, bold, size } = item else { return };
    let wide = width(words, *size, *bold);
    let room = match anchor {
        Anchor::Start => scene_width - at.x,
        Anchor::Middle => 2.0 * at.x.min(scene_width - at.x),
        Anchor::End => at.x,
    };
    let is_page = (*size - TEXT_PX).abs() > 1e-9;
    let share = if is_page || wide <= room { 1.0 } else { (room / wide).max(0.1) };
    let back = match anchor {
        Anchor::Start => 0.0,
        Anchor::Middle => wide * share / 2.0,
        Anchor::End => wide * share,
    };
    let [r, g, b] = colour.on_paper();
    content.begin_text().set_fill_rgb(r, g, b);
    // The page is upside down, its letters are not.
    let (x, y) = (single(at.x - back), single(at.y));
    content.set_text_matrix([single(share), 0.0, 0.0, -1.0, x, y]);
    // The blank parts the words from those that are read out next.
    for (font, bytes) in runs(&format!("{words} "), *bold) {
        content.set_font(font, single(*size)).show(Str(&bytes));
    }
    content.end_text();
}

/// The bytes of words, with the font that has them.
fn runs(words: &str, bold: bool) -> Vec<(Name<'static>, Vec<u8>)> {
    let mut runs: Vec<(Name<'static>, Vec<u8>)> = Vec::new();
    for letter in words.chars().filter_map(Letter::of) {
        let (font, byte) = match letter {
            Letter::Helvetica(byte) => (if bold { BOLD } else { PLAIN }, byte),
            Letter::Symbol(byte, _) => (SIGNS, byte),
            Letter::Nothing => continue,
        };
        match runs.last_mut().filter(|(last, _)| *last == font) {
            Some((_, bytes)) => bytes.push(byte),
            None => runs.push((font, vec![byte])),
        }
    }
    runs
}
