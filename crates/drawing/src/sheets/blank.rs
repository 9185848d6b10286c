//! Charts to draw in by hand.

use noseward_stability::Units;
use noseward_words as words;

use crate::palette::Colour;
use crate::paper::{Flow, Page, PaperSize};
use crate::scene::{Group, Item, Path, Point, Scene, Style, Unit};
use crate::trial_chart::trial_chart_blank;

/// Width and height that the chart of swings is made for, in CSS pixels.
const CHART_PX: (f64, f64) = (703.0, 400.0);
/// The squared paper: the side of a square, and how many there are across and down.
const SQUARE_MM: f64 = 5.0;
const SQUARES: (u32, u32) = (34, 16);
/// What the axes have of the paper for words on them.
const WORDS_MM: f64 = 10.0;

/// The chart of swings without dots, and squared paper with two axes. One page.
#[must_use]
pub fn blank_charts(size: PaperSize, units: Units) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_charts());
    flow.fields(&[words::class_group(), words::class_number()]);
    flow.heading(2, &words::charts_swings());
    let chart = trial_chart_blank(CHART_PX.0, CHART_PX.1, units);
    flow.figure(&chart, (Flow::WIDTH_MM, CHART_PX.1));
    flow.heading(2, &words::pupil_squares());
    flow.paragraph(&words::pupil_squares_how());
    flow.figure(&squares(), (Flow::WIDTH_MM, 100.0));
    flow.pages()
}

/// Squares with a bold line at every fifth, axes at the left and below, and room for words.
fn squares() -> Scene {
    let (wide, high) =
        (f64::from(SQUARES.0) * SQUARE_MM, f64::from(SQUARES.1) * SQUARE_MM);
    let (left, bottom) = (WORDS_MM, high + 1.0);
    let point = |x: f64, y: f64| Point { x: left + x, y: bottom - y };
    let (mut fine, mut bold) = (Path::default(), Path::default());
    let mut line = |i: u32, from, to| {
        let path = if i.is_multiple_of(5) { &mut bold } else { &mut fine };
        path.line(from, to);
    };
    for i in 0..=SQUARES.0 {
        let x = f64::from(i) * SQUARE_MM;
        line(i, point(x, 0.0), point(x, high));
    }
    for i in 0..=SQUARES.1 {
        let y = f64::from(i) * SQUARE_MM;
        line(i, point(0.0, y), point(wide, y));
    }
    let axes = Path::open(vec![point(0.0, high), point(0.0, 0.0), point(wide, 0.0)]);
    let path =
        |path, colour, width| Item::Path { path, style: Style::line(colour, width) };
    let items = vec![
        path(fine, Colour::BoldLine, 0.15),
        path(bold, Colour::Soft, 0.25),
        path(axes, Colour::Ink, 0.6),
    ];
    Scene {
        width: left + wide + 1.0,
        height: bottom + WORDS_MM,
        unit: Unit::Mm,
        name: words::pupil_squares_name().into(),
        groups: vec![Group { key: "squares", items }],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::paper::inside::{says_in_order, sheet_is_sound};

    #[test]
    fn both_charts_take_one_page() {
        for units in [Units::METRIC, Units::INCH] {
            sheet_is_sound(1, &|size| blank_charts(size, units));
        }
        let pages = blank_charts(PaperSize::A4, Units::METRIC);
        let all =
            [words::lesson_steady(), words::lesson_not_sure(), words::pupil_squares()];
        says_in_order(&pages, &all);
    }

    /// Squares are squares, true to size: a ruler can be laid on them.
    #[test]
    fn squares_are_five_millimetres_wide() {
        let scene = squares();
        let Item::Path { path, .. } = &scene.groups[0].items[0] else {
            panic!("fine lines")
        };
        let (first, second) = (&path.runs[0].0[0], &path.runs[1].0[0]);
        assert!((second.x - first.x - SQUARE_MM).abs() < 1e-9);
        let pages = blank_charts(PaperSize::Letter, Units::METRIC);
        let items = pages[0].scene.groups.iter().flat_map(|group| &group.items);
        let scales = items.filter_map(|item| match item {
            Item::Placed { scale, scene: placed, .. } => {
                (placed.name == scene.name).then_some(*scale)
            }
            _ => None,
        });
        assert_eq!(scales.collect::<Vec<_>>(), [1.0]);
    }
}
