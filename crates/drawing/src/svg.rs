//! A scene spelled as SVG. The one place that rounds numbers for it.

use std::fmt::Write as _;

use maud::{Markup, html};
use noseward_stability::trimmed;
use noseward_words::isolated;

use crate::palette::Colour;
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, TEXT_PX, Unit};
use crate::width::narrowed;

/// A whole SVG element. `described_by` is the id of the element that says the same in
/// words, for those who cannot see it.
#[must_use]
pub fn svg_document(scene: &Scene, described_by: Option<&str>) -> String {
    let unit = match scene.unit {
        Unit::Px => "",
        Unit::Mm => "mm",
    };
    html! {
        svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label=(scene.name)
            aria-describedby=[described_by]
            viewBox=(format!("0 0 {} {}", number(scene.width), number(scene.height)))
            width={ (number(scene.width)) (unit) } height={ (number(scene.height)) (unit) } {
            @for group in &scene.groups {
                g data-group=(group.key) { (items(&group.items, scene.width)) }
            }
        }
    }
    .into_string()
}

/// The same for a file that other programs open: with its own font, the colours of paper, and, on
/// `sheet`, white behind it all. A cutter would cut along the edge of that.
#[must_use]
pub fn svg_file(scene: &Scene, sheet: bool) -> String {
    let document = svg_document(scene, None);
    // Words have no quotation marks in them: these are escaped.
    let mut parts = document.split("=\"var(--");
    let mut file = String::new();
    let (begin, rest) =
        parts.next().and_then(|all| all.split_once('>')).unwrap_or_default();
    file.push_str(begin);
    file.push_str(" font-family=\"Arial,Helvetica,sans-serif\" font-size=\"13\">");
    if sheet {
        file.push_str("<rect width=\"100%\" height=\"100%\" fill=\"#fff\"></rect>");
    }
    file.push_str(rest);
    for part in parts {
        let (_, value) = part.split_once(',').unwrap_or_default();
        let (value, rest) = value.split_once(')').unwrap_or_default();
        file.extend(["=\"", value, rest]);
    }
    file
}

/// What stands inside the element of one group, in a picture of some width.
#[must_use]
pub fn svg_group(group: &Group, width_px: f64) -> String {
    items(&group.items, width_px).into_string()
}

fn items(list: &[Item], width_px: f64) -> Markup {
    html! { @for one in list { (item(one, width_px)) } }
}

fn item(item: &Item, width_px: f64) -> Markup {
    match item {
        Item::Path { path, style } => {
            let p = Painted::new(style);
            html! {
                path d=(data(path)) fill=(p.fill) fill-opacity=[p.opacity] stroke=[p.stroke]
                    stroke-width=[p.width] stroke-dasharray=[p.dashes] {}
            }
        }
        Item::Dot { centre, radius, style } => {
            let p = Painted::new(style);
            html! {
                circle cx=(number(centre.x)) cy=(number(centre.y)) r=(number(*radius))
                    fill=(p.fill) stroke=[p.stroke] stroke-width=[p.width] {}
            }
        }
        Item::Text { at, anchor, words, colour, bold, size } => {
            // Of pages the words are measured before.
            let is_px = *size == TEXT_PX;
            let room = narrowed(*at, *anchor, (words, *bold), width_px);
            let room = room.filter(|_| is_px).map(number);
            let size = (!is_px).then(|| number(*size));
            let anchor = match anchor {
                Anchor::Start => None,
                Anchor::Middle => Some("middle"),
                Anchor::End => Some("end"),
            };
            let weight = bold.then_some("bold");
            html! {
                text x=(number(at.x)) y=(number(at.y)) fill=(colour.css())
                    text-anchor=[anchor] font-weight=[weight] font-size=[size] textLength=[&room]
                    lengthAdjust=[room.as_ref().map(|_| "spacingAndGlyphs")] { (isolated(words)) }
            }
        }
        Item::Placed { at, scale, turned_deg, scene } => {
            let (x, y) = (number(at.x), number(at.y));
            let (scale, turned) = (trimmed(*scale, 5), number(*turned_deg));
            html! {
                g transform=(format!("translate({x} {y})rotate({turned})scale({scale})")) {
                    @for group in &scene.groups { (items(&group.items, scene.width)) }
                }
            }
        }
        Item::Part { part, hint, items: inside } => html! {
            g data-part=(part) {
                @if let Some(hint) = hint { title { (hint) } }
                (items(inside, width_px))
            }
        },
        // The styles of the page make the area feel the pointer, and hide both on paper.
        Item::Grip { at, apart_px, half_px } => {
            let (left, top) = (number(at.x - GRIP_PX), number(at.y - GRIP_PX));
            let (x, long) = (number(at.x - half_px), number(2.0 * half_px));
            let (upper, lower) = (number(at.y - apart_px), number(at.y + apart_px));
            html! {
                path class="grip" fill="none"
                    d=(format!("M{left} {top}h28v28h-28Z")) {}
                path fill="none" stroke=(Colour::Soft.css()) stroke-width="2"
                    d=(format!("M{x} {upper}h{long}M{x} {lower}h{long}")) {}
            }
        }
    }
}

/// What can be taken hold of reaches so far from the middle of a grip: 28 pixels in all (as
/// is written above) are more than WCAG 2.2 asks for (2.5.8), and a finger finds them.
pub(crate) const GRIP_PX: f64 = 14.0;

/// The attributes that a style comes to.
struct Painted {
    fill: &'static str,
    opacity: Option<&'static str>,
    stroke: Option<&'static str>,
    width: Option<String>,
    dashes: Option<String>,
}

impl Painted {
    fn new(style: &Style) -> Self {
        let dashes: Vec<String> = style.dashes.iter().map(|&d| number(d)).collect();
        Self {
            fill: style.fill.map_or("none", |colour| colour.css()),
            opacity: style.clear.then_some("0.6"),
            stroke: style.stroke.map(|colour| colour.css()),
            width: style.stroke.map(|_| number(style.width)),
            dashes: (!dashes.is_empty()).then(|| dashes.join(" ")),
        }
    }
}

fn data(path: &Path) -> String {
    let mut data = String::new();
    for (points, closed) in &path.runs {
        for (i, &Point { x, y }) in points.iter().enumerate() {
            let pen = if i == 0 { 'M' } else { 'L' };
            let (x, y) = (number(x), number(y));
            write!(data, "{pen}{x} {y}").expect("a string takes everything");
        }
        if *closed {
            data.push('Z');
        }
    }
    data
}

/// A number to a hundredth of a pixel, without trailing zeros.
fn number(value: f64) -> String {
    trimmed(value, 2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short() {
        assert_eq!(number(12.0), "12");
        assert_eq!(number(-0.001), "0");
        assert_eq!(number(1.0 / 3.0), "0.33");
    }

    #[test]
    fn words_are_escaped() {
        let text = Item::Text {
            at: Point { x: 50.0, y: 0.0 },
            anchor: Anchor::Middle,
            words: "<script>&\"".into(),
            colour: Colour::Ink,
            bold: true,
            size: TEXT_PX,
        };
        let group = Group { key: "words", items: vec![text] };
        assert_eq!(
            svg_group(&group, 100.0),
            "<text x=\"50\" y=\"0\" fill=\"var(--ink,#1d2b3a)\" text-anchor=\"middle\" \
             font-weight=\"bold\">&lt;script&gt;&amp;&quot;</text>"
        );
    }

    #[test]
    fn a_file_needs_no_page_round_it() {
        let words = "\"=\"var(--ink,#1d2b3a)";
        let at = Point::default();
        let text = Item::text(at, Anchor::Start, words, Colour::Wind, false);
        let group = Group { key: "words", items: vec![text.clone(), text] };
        let name = words.to_owned();
        let scene = Scene { width: 300.0, name, groups: vec![group], ..Scene::default() };
        let text = "<text x=\"0\" y=\"0\" fill=\"#1c5d99\">\
                    &quot;=&quot;var(--ink,#1d2b3a)</text>";
        let told = svg_file(&scene, true);
        assert!(told.contains(&format!("{text}{text}")), "{told}");
        assert!(told.starts_with("<svg xmlns=") && told.ends_with("</g></svg>"));
        let ground =
            "font-size=\"13\"><rect width=\"100%\" height=\"100%\" fill=\"#fff\">";
        assert!(told.contains(ground) && !svg_file(&scene, false).contains("<rect"));
    }

    #[test]
    fn words_that_would_cross_an_edge_are_squeezed() {
        let at = Point { x: 12.0, y: 9.0 };
        let text = Item::text(at, Anchor::Start, "centre of mass", Colour::Ink, false);
        let group = Group { key: "words", items: vec![text] };
        let squeezed = "textLength=\"48\" lengthAdjust=\"spacingAndGlyphs\"";
        assert!(svg_group(&group, 60.0).contains(squeezed));
        assert!(!svg_group(&group, 120.0).contains("textLength"));
    }

    #[test]
    fn a_path_with_two_runs() {
        let mut path = Path::closed(vec![
            Point { x: 0.0, y: 0.0 },
            Point { x: 1.5, y: 0.0 },
            Point { x: 0.0, y: 2.0 },
        ]);
        path.line(Point { x: 3.0, y: 3.0 }, Point { x: 4.0, y: 3.0 });
        assert_eq!(data(&path), "M0 0L1.5 0L0 2ZM3 3L4 3");
    }
}
