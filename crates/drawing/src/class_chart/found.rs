//! What was found over the trials: the curve, where half fly nose-first or the gap, and how
//! sure that is; beside it what is common practice.

use noseward_lesson::{Band, Curve, Gap, NoTurningPoint};
use noseward_words as words;

use super::ClassChart;
use super::rows::Rows;
use crate::area::Area;
use crate::legend::Entry;
use crate::palette::Colour;
use crate::plot::{Scale, hatched, level, upright};
use crate::scene::{Item, Path, Point, Style};

/// The curve is worked out so far apart.
const STEP_PX: f64 = 4.0;

fn curve_style() -> Style {
    Style::line(Colour::Ink, 2.5)
}

fn edge_style() -> Style {
    Style::line(Colour::Soft, 1.0).dashed(&[4.0, 3.0])
}

fn turning_style() -> Style {
    Style::line(Colour::Ink, 2.0).dashed(&[9.0, 4.0])
}

/// The lines at one and two body widths.
pub(super) fn practice_style() -> Style {
    Style::line(Colour::Soft, 2.0).dashed(&[2.0, 3.0])
}

fn gap<'a>(chart: &ClassChart<'a>) -> Option<&'a Gap> {
    match chart.found {
        Some(Err(NoTurningPoint::Parted(gap))) => Some(gap),
        _ => None,
    }
}

/// Where half fly nose-first, if that is on the chart.
pub(super) fn at_mm(chart: &ClassChart<'_>, scale: &Scale) -> Option<f64> {
    let mm = chart.unit.mm(chart.turning()?.at);
    (scale.reach.least_mm..=scale.reach.most_mm).contains(&mm).then_some(mm)
}

/// The words at that line.
pub(super) fn at_words(chart: &ClassChart<'_>) -> String {
    let at = chart.turning().map_or(0.0, |found| found.at);
    words::class_chart_turning(&chart.unit.told(at))
}

/// From where to where is hatched, in the unit of the chart: where half may fly nose-first.
fn hatched_from(chart: &ClassChart<'_>) -> Option<(f64, f64)> {
    match (chart.turning(), gap(chart)) {
        (Some(found), _) => match found.band {
            Band::Between { least, most } => Some((least, most)),
            Band::Unbounded => None,
        },
        (None, Some(gap)) => Some((gap.from, gap.to)),
        (None, None) => None,
    }
}

/// What is drawn under the marks, back to front.
pub(super) fn items(chart: &ClassChart<'_>, scale: &Scale, rows: &Rows) -> Vec<Item> {
    let plots = rows.plots();
    let x = |mm: f64| scale.px(mm).clamp(rows.area.left, rows.area.right);
    let mut items = Vec::new();
    if let Some((from, to)) = hatched_from(chart) {
        let (left, right) = (x(chart.unit.mm(from)), x(chart.unit.mm(to)));
        for plot in &plots {
            items.extend(hatched(&Area { left, right, ..*plot }));
        }
    }
    if let Some((one, two)) = chart.practice_mm() {
        let mut path = upright(&plots, x(one));
        if x(two) < rows.area.right {
            path.runs.extend(upright(&plots, x(two)).runs);
        }
        let top = Area { left: x(one), right: x(two), ..rows.area };
        path.runs.extend(level(&top, top.top).runs);
        items.push(Item::Path { path, style: practice_style() });
    }
    if let Some(found) = chart.turning() {
        items.extend(curve(chart, &found.curve, scale, rows));
    }
    if let Some(mm) = at_mm(chart, scale) {
        let path = upright(&plots, x(mm));
        items.push(Item::Path { path, style: turning_style() });
    }
    items
}

/// The curve and its band, from one edge of the rows to the other.
fn curve(chart: &ClassChart<'_>, curve: &Curve, scale: &Scale, rows: &Rows) -> [Item; 3] {
    let (mut line, mut low, mut high) = (Vec::new(), Vec::new(), Vec::new());
    let Area { left, right, .. } = rows.area;
    let steps = ((right - left) / STEP_PX).ceil();
    let mut step = 0.0;
    while step <= steps {
        let x = left + (right - left) * step / steps;
        let separation = chart.unit.separation(scale.mm(x));
        let (least, most) = curve.chance_band(separation);
        let point = |chance| Point { x, y: rows.y(chance) };
        line.push(point(curve.chance(separation)));
        low.push(point(least));
        high.push(point(most));
        step += 1.0;
    }
    let edges = Path { runs: vec![(high.clone(), false), (low.clone(), false)] };
    low.reverse();
    high.extend(low);
    [
        Item::Path { path: Path::closed(high), style: Style::area(Colour::Fin).clear() },
        Item::Path { path: edges, style: edge_style() },
        Item::Path { path: Path::open(line), style: curve_style() },
    ]
}

/// What of it needs words beside the chart.
pub(super) fn entries<'a>(chart: &'a ClassChart<'_>, is_named: bool) -> Vec<Entry<'a>> {
    let mut entries = Vec::new();
    let told = |separation| chart.unit.told(separation);
    if chart.turning().is_some() {
        entries.push(Entry::line(curve_style(), words::class_chart_curve()));
        let sample = |area: &Area| {
            let mut edges = level(area, area.top);
            edges.runs.extend(level(area, area.bottom).runs);
            let style = Style::area(Colour::Fin).clear();
            vec![
                Item::Path { path: area.outline(), style },
                Item::Path { path: edges, style: edge_style() },
            ]
        };
        let words = words::class_chart_curve_band().into();
        entries.push(Entry { sample: Box::new(sample), words });
        if !is_named {
            entries.push(Entry::line(turning_style(), at_words(chart)));
        }
    }
    let hatch = |words| Entry { sample: Box::new(hatched), words };
    if let Some((from, to)) = hatched_from(chart) {
        let (from, to) = (told(from), told(to));
        entries.push(hatch(if gap(chart).is_some() {
            words::class_chart_gap(&from, &to)
        } else {
            words::class_chart_turning_band(&from, &to)
        }));
    } else if chart.turning().is_some() {
        entries.push(Entry::line(turning_style(), words::class_chart_turning_open()));
    }
    entries
}
