//! The separation over the trials: what was measured, what was computed, one trial after
//! the other.
//!
//! No line joins two trials: nothing was built between them.

use noseward_stability::Units;
use noseward_words::{self as words, Known, Text};

use crate::area::Area;
use crate::axis::{
    Reach, axis_number, is_shown, measured, measured_number, reading, separation_in,
};
use crate::legend::{Entry, legend};
use crate::palette::Colour;
use crate::plot::{EDGE, LEGEND_EDGE, Scale, zero_style};
use crate::scene::{Anchor, Group, Item, Path, Point, Scene, Style, Unit};
use crate::width::words_px;

/// One trial of the series. Separations are centre of pressure less centre of mass, in
/// millimetres: positive when the centre of mass is nearer the nose.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SeriesTrial {
    /// What stands under it: its number, or a few letters.
    pub label: String,
    /// The measured separation: its middle, and from where to where it may lie.
    pub measured_mm: Option<(f64, f64, f64)>,
    /// The separation that was computed from the parts.
    pub computed_mm: Option<f64>,
}

const RIGHT: f64 = 12.0;
const TOP: f64 = 34.0;
const HEIGHT: f64 = 220.0;
/// From the plot to the legend: the trials and what they are.
const TRIALS: f64 = 42.0;
/// Lines of the axis stand at least this far apart.
const STEPS_APART_PX: f64 = 30.0;
/// Half the width of a mark, where there is room.
const HALF_PX: f64 = 5.5;
/// The radius of a dot, as a share of half a diamond: of the two it looks larger.
const DOT: f64 = 0.92;
/// Between two labels of trials.
const LABELS_APART_PX: f64 = 6.0;

/// The trials across, in the order given, and their separation upwards, with groups `axis`,
/// `marks` and `legend`.
///
/// What was measured is a filled dot with a thin bar over its range, what was computed a
/// hollow diamond at its right. The width is 300 CSS pixels or more. A separation that is
/// not finite or beyond 100 m is left out; `None` without any trial.
#[must_use]
pub fn trial_series(
    trials: &[SeriesTrial],
    units: Units,
    width_px: f64,
) -> Option<Scene> {
    if trials.is_empty() {
        return None;
    }
    let plot = Plot::new(trials, units, width_px);
    let mut axis = plot.separations(units);
    axis.extend(plot.names(trials));
    let mut marks = Vec::new();
    for (i, trial) in (0_u32..).zip(trials) {
        marks.extend(plot.marks(i, trial));
    }
    let has_range = trials.iter().any(|trial| measured_mm(trial).is_some());
    let top = plot.area.bottom + TRIALS;
    let right = width_px - LEGEND_EDGE;
    let (legend, bottom) = legend(&entries(has_range), EDGE, right, top);
    Some(Scene {
        width: width_px,
        height: bottom + 4.0,
        unit: Unit::Px,
        name: words::drawing_series().into(),
        groups: vec![
            Group { key: "axis", items: axis },
            Group { key: "marks", items: marks },
            Group { key: "legend", items: legend },
        ],
    })
}

/// What [`trial_series`] shows, a sentence for each trial. Empty for no trial.
#[must_use]
pub fn trial_series_words(trials: &[SeriesTrial], units: Units) -> String {
    let sentence = |trial: &SeriesTrial| {
        let (measured_mm, computed_mm) = (measured_mm(trial), computed_mm(trial));
        let known = match (measured_mm, computed_mm) {
            (None, None) => Known::Nothing,
            (Some(_), None) => Known::ByRuler,
            (None, Some(_)) => Known::ByFigures,
            (Some(_), Some(_)) => Known::ByBoth,
        };
        // What is not known is not said.
        let (middle, least, most) = measured_mm.unwrap_or_default();
        words::drawing_trial(
            &trial.label,
            known,
            &measured(units, middle),
            &measured_number(units, least),
            &measured(units, most),
            &reading(units, computed_mm.unwrap_or_default()),
        )
    };
    trials.iter().map(sentence).collect::<Vec<_>>().join(" ")
}

/// What was measured, if the chart can show it; the range in order.
fn measured_mm(trial: &SeriesTrial) -> Option<(f64, f64, f64)> {
    let (middle, a, b) = trial.measured_mm?;
    let shown = is_shown(middle) && is_shown(a) && is_shown(b);
    shown.then(|| (middle, a.min(b), a.max(b)))
}

fn computed_mm(trial: &SeriesTrial) -> Option<f64> {
    trial.computed_mm.filter(|&mm| is_shown(mm))
}

/// Where the marks are drawn, and what its edges mean.
struct Plot {
    area: Area,
    scale: Scale,
    step_mm: f64,
    /// The room of one trial, in pixels.
    room_px: f64,
    /// Half the width of a mark.
    half_px: f64,
}

impl Plot {
    fn new(trials: &[SeriesTrial], units: Units, width_px: f64) -> Self {
        let measured = trials.iter().filter_map(measured_mm);
        let lengths = measured
            .flat_map(|(middle, least, most)| [middle, least, most])
            .chain(trials.iter().filter_map(computed_mm));
        let (reach, step_mm) = Reach::of(lengths).in_steps(units, HEIGHT, STEPS_APART_PX);
        let widest = reach
            .multiples_mm(step_mm)
            .map(|mm| words_px(&axis_number(units, mm)))
            .fold(0.0, f64::max);
        let area = Area {
            left: EDGE + widest + 8.0,
            right: width_px - RIGHT,
            top: TOP,
            bottom: TOP + HEIGHT,
        };
        #[expect(clippy::cast_precision_loss, reason = "a class has few trials")]
        let room_px = (area.right - area.left) / trials.len() as f64;
        // Two marks side by side, and some room to the next trial.
        let half_px = (room_px * 0.21).min(HALF_PX);
        let scale = Scale::new(reach, area.bottom, area.top);
        Self { area, scale, step_mm, room_px, half_px }
    }

    fn x(&self, trial: u32) -> f64 {
        self.area.left + (f64::from(trial) + 0.5) * self.room_px
    }

    fn y(&self, mm: f64) -> f64 {
        self.scale.px(mm)
    }

    /// The lines and numbers of the separation, and what it is.
    fn separations(&self, units: Units) -> Vec<Item> {
        let mut items =
            self.scale.levels(&self.area, self.step_mm, |mm| axis_number(units, mm));
        let at = Point { x: EDGE, y: TOP - 17.0 };
        let title = separation_in(units);
        items.insert(1, Item::text(at, Anchor::Start, title, Colour::Ink, true));
        items
    }

    /// The labels of the trials: of the first, and of every second, third or so on where
    /// not all have room.
    fn names(&self, trials: &[SeriesTrial]) -> Vec<Item> {
        let bottom = self.area.bottom;
        let width = |trial: &SeriesTrial| words_px(&trial.label);
        let widest = trials.iter().map(width).fold(0.0, f64::max);
        let each = ((widest + LABELS_APART_PX) / self.room_px).ceil().max(1.0);
        let mut ends = Path::default();
        let mut items = Vec::new();
        for (i, trial) in (0_u32..).zip(trials) {
            let x = self.x(i);
            ends.line(Point { x, y: bottom }, Point { x, y: bottom + 4.0 });
            let half = width(trial) / 2.0;
            let inside = x >= half && x + half <= self.area.right + RIGHT;
            if inside && f64::from(i) % each == 0.0 {
                let at = Point { x, y: bottom + 17.0 };
                let label = trial.label.clone();
                items.push(Item::text(at, Anchor::Middle, label, Colour::Ink, false));
            }
        }
        items.push(Item::text(
            Point { x: self.area.middle().x, y: bottom + 34.0 },
            Anchor::Middle,
            words::drawing_trial_axis(),
            Colour::Ink,
            true,
        ));
        items.insert(0, Item::Path { path: ends, style: Style::line(Colour::Ink, 1.0) });
        items
    }

    /// The dot of a trial stands at the left of its middle, the diamond at its right.
    fn marks(&self, i: u32, trial: &SeriesTrial) -> Vec<Item> {
        let (x, half) = (self.x(i), self.half_px);
        let mut items = Vec::new();
        if let Some((middle, least, most)) = measured_mm(trial) {
            let x = x - half;
            let bar = bar(x, self.y(most), self.y(least), half);
            items.push(Item::Path { path: bar, style: bar_style() });
            items.push(dot(Point { x, y: self.y(middle) }, half * DOT));
        }
        if let Some(mm) = computed_mm(trial) {
            items.push(diamond(Point { x: x + half * 1.2, y: self.y(mm) }, half));
        }
        items
    }
}

fn bar_style() -> Style {
    Style::line(Colour::Ink, 1.5)
}

/// An upright line with a cap at each end.
fn bar(x: f64, top: f64, bottom: f64, half: f64) -> Path {
    let mut path = Path::default();
    path.line(Point { x, y: top }, Point { x, y: bottom });
    for y in [top, bottom] {
        path.line(Point { x: x - half + 1.0, y }, Point { x: x + half - 1.0, y });
    }
    path
}

fn dot(centre: Point, radius: f64) -> Item {
    Item::Dot { centre, radius, style: Style::area(Colour::Ink) }
}

fn diamond(centre: Point, half: f64) -> Item {
    let Point { x, y } = centre;
    let corners = vec![
        Point { x, y: y - half },
        Point { x: x + half, y },
        Point { x, y: y + half },
        Point { x: x - half, y },
    ];
    Item::Path {
        path: Path::closed(corners),
        style: Style::line(Colour::Ink, 1.5).filled(Colour::Sheet),
    }
}

/// An arrow up or down.
fn arrow(area: &Area, up: bool) -> Vec<Item> {
    let x = area.middle().x;
    let (tip, tail) = if up { (area.top, area.bottom) } else { (area.bottom, area.top) };
    let back = if up { tip + 5.0 } else { tip - 5.0 };
    let mut path = Path::open(vec![Point { x, y: tail }, Point { x, y: tip }]);
    path.runs.push((
        vec![
            Point { x: x - 4.0, y: back },
            Point { x, y: tip },
            Point { x: x + 4.0, y: back },
        ],
        false,
    ));
    vec![Item::Path { path, style: bar_style() }]
}

fn entries(has_range: bool) -> Vec<Entry<'static>> {
    let mark = |sample: fn(Point) -> Item, words: Text| Entry {
        sample: Box::new(move |area: &Area| vec![sample(area.middle())]),
        words: words.into(),
    };
    let mut entries = vec![
        mark(|at| dot(at, HALF_PX * DOT), words::drawing_dot()),
        mark(|at| diamond(at, HALF_PX), words::drawing_diamond()),
    ];
    if has_range {
        entries.push(Entry {
            sample: Box::new(|area: &Area| {
                let path = bar(area.middle().x, area.top, area.bottom, HALF_PX);
                vec![Item::Path { path, style: bar_style() }]
            }),
            words: words::drawing_bar().into(),
        });
    }
    entries.push(Entry::line(zero_style(), words::drawing_zero()));
    for (up, words) in
        [(true, words::drawing_mass_nearer()), (false, words::drawing_pressure_nearer())]
    {
        let sample = Box::new(move |area: &Area| arrow(area, up));
        entries.push(Entry { sample, words: words.into() });
    }
    entries
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::{in_languages, lines_miss_words, words_keep_apart};

    const WIDTHS: [f64; 5] = [300.0, 320.0, 420.0, 700.0, 900.0];

    fn trial(number: u32, middle_mm: f64) -> SeriesTrial {
        SeriesTrial {
            label: number.to_string(),
            measured_mm: (!number.is_multiple_of(3)).then_some((
                middle_mm,
                middle_mm - 4.0,
                middle_mm + 6.0,
            )),
            computed_mm: (!number.is_multiple_of(4)).then_some(middle_mm + 3.0),
        }
    }

    fn series() -> Vec<Vec<SeriesTrial>> {
        let many = |count: u32, from_mm: f64, step_mm: f64| -> Vec<_> {
            (1..=count).map(|n| trial(n, from_mm + step_mm * f64::from(n))).collect()
        };
        vec![
            many(1, 20.0, 0.0),
            many(5, -60.0, 18.0),
            many(12, 20.0, 0.0),
            many(12, -300.0, 1.0),
            many(40, -40.0, 6.0),
            many(3, -20_000.0, 17_000.0),
            vec![SeriesTrial { label: "9".into(), ..SeriesTrial::default() }],
        ]
    }

    fn points(item: &Item) -> Vec<Point> {
        match item {
            Item::Path { path, .. } => {
                path.runs.iter().flat_map(|(run, _)| run.clone()).collect()
            }
            Item::Dot { centre, radius, .. } => [-radius, *radius]
                .map(|by| Point { x: centre.x + by, y: centre.y + by })
                .into(),
            Item::Text { .. }
            | Item::Part { .. }
            | Item::Grip { .. }
            | Item::Placed { .. } => Vec::new(),
        }
    }

    #[test]
    fn words_stay_clear_of_lines_and_of_each_other() {
        for (i, trials) in series().iter().enumerate() {
            for units in [Units::METRIC, Units::INCH] {
                for width in WIDTHS {
                    let scene = trial_series(trials, units, width).unwrap();
                    let which = format!("{i} at {width} in {}", units.length_unit());
                    words_keep_apart(&scene, &which);
                    lines_miss_words(&scene, &[], &which);
                    let keys: Vec<_> = scene.groups.iter().map(|g| g.key).collect();
                    assert_eq!(keys, ["axis", "marks", "legend"]);
                }
            }
        }
    }

    /// The marks of a trial stand in its own column, level with their separation.
    #[test]
    fn marks_stand_in_their_column_and_at_their_level() {
        for trials in series() {
            for width in WIDTHS {
                let scene = trial_series(&trials, Units::METRIC, width).unwrap();
                let plot = Plot::new(&trials, Units::METRIC, width);
                let mut marks = scene.groups[1].items.iter();
                for (i, trial) in (0_u32..).zip(&trials) {
                    let column = plot.x(i);
                    let mut spans = Vec::new();
                    if let Some((middle, least, most)) = trial.measured_mm {
                        let bar = points(marks.next().unwrap());
                        assert_eq!((bar[0].y, bar[1].y), (plot.y(most), plot.y(least)));
                        let Some(Item::Dot { centre, radius, style }) = marks.next()
                        else {
                            panic!("a dot after its bar");
                        };
                        assert_eq!(centre.y, plot.y(middle));
                        assert_eq!(style.fill, Some(Colour::Ink));
                        assert!(
                            bar.iter().all(|p| (p.x - centre.x).abs() < radius + 1.0)
                        );
                        spans.push((centre.x - radius, centre.x + radius));
                    }
                    if let Some(mm) = trial.computed_mm {
                        let corners = points(marks.next().unwrap());
                        assert_eq!(corners.len(), 4);
                        assert_eq!(corners[1].y, plot.y(mm));
                        spans.push((corners[3].x, corners[1].x));
                    }
                    for (from, to) in &spans {
                        assert!(from > &(column - plot.room_px / 2.0), "{i} at {width}");
                        assert!(to < &(column + plot.room_px / 2.0), "{i} at {width}");
                    }
                    if let [dot, diamond] = spans[..] {
                        assert!(dot.1 <= diamond.0, "{dot:?} {diamond:?}");
                    }
                }
                assert_eq!(marks.next(), None);
            }
        }
    }

    #[test]
    fn zero_is_on_the_axis_and_nothing_leaves_the_plot() {
        for trials in series() {
            let scene = trial_series(&trials, Units::METRIC, 420.0).unwrap();
            let plot = Plot::new(&trials, Units::METRIC, 420.0);
            let zero = scene.groups[0].items.iter().find_map(|item| match item {
                Item::Path { path, style } if *style == zero_style() => Some(path),
                _ => None,
            });
            assert_eq!(zero.unwrap().runs[0].0[0].y, plot.y(0.0));
            let labelled = scene.groups[0].items.iter().any(|item| {
                matches!(item, Item::Text { words, at, .. }
                    if words == "0" && (at.y - plot.y(0.0) - 4.5).abs() < 1e-9)
            });
            assert!(labelled);
            for p in scene.groups[1].items.iter().flat_map(points) {
                let above = plot.area.top - HALF_PX..=plot.area.bottom + HALF_PX;
                assert!(above.contains(&p.y), "{p:?}");
                assert!(p.x >= plot.area.left && p.x <= plot.area.right, "{p:?}");
            }
        }
    }

    #[test]
    fn every_trial_is_named_where_there_is_room() {
        for (width, count, named) in [(700.0, 12, 12), (300.0, 5, 5), (300.0, 40, 10)] {
            let trials: Vec<_> = (1..=count).map(|n| trial(n, 20.0)).collect();
            let scene = trial_series(&trials, Units::METRIC, width).unwrap();
            let under = TOP + HEIGHT + 17.0;
            let names = scene.groups[0]
                .items
                .iter()
                .filter(|item| matches!(item, Item::Text { at, .. } if at.y == under));
            assert!(names.count() >= named, "{count} at {width}");
        }
    }

    #[test]
    fn without_a_trial_there_is_no_chart() {
        assert_eq!(trial_series(&[], Units::METRIC, 700.0), None);
        let bad = SeriesTrial {
            label: "1".into(),
            measured_mm: Some((1.0, f64::NAN, 2.0)),
            computed_mm: Some(f64::INFINITY),
        };
        let scene = trial_series(std::slice::from_ref(&bad), Units::METRIC, 700.0);
        assert_eq!(scene.unwrap().groups[1].items, []);
        let words = trial_series_words(&[bad], Units::METRIC);
        assert_eq!(words, "Trial 1: no separation.");
    }

    #[test]
    fn words_tell_every_trial() {
        let trials = [trial(1, 46.0), trial(3, -12.0), trial(4, 25.4)];
        assert_eq!(
            trial_series_words(&trials, Units::METRIC),
            "Trial 1: measured 46 mm, between 42 and 52 mm; computed 49 mm. Trial 3: \
             computed −9 mm. Trial 4: measured 25.4 mm, between 21.4 and 31.4 mm."
        );
        assert_eq!(trial_series_words(&[], Units::METRIC), "");
    }

    #[test]
    fn there_is_room_in_german_and_arabic() {
        in_languages(&words_stay_clear_of_lines_and_of_each_other);
    }
}
