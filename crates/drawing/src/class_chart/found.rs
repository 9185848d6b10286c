//! What was found over the trials: the curve, where half fly nose-first or the gap, and how
//! sure that is; beside it what is common practice.

use noseward_lesson::{Band, Curve, Gap, NoTurningPoint};
use noseward_words as words;

use super::ClassChart;
use super::rows::Rows;
use crate::area::Area;
use crate::legend::Entry;
use crate::palette::Colour;
use crate::plot::{
    HATCH_PX, Scale, hatch_edge_style, hatch_style, hatched, level, upright, zero_style,
};
use crate::scene::{Item, Path, Point, Style};

/// The curve is worked out so far apart.
const STEP_PX: f64 = 4.0;

pub(super) fn curve_style() -> Style {
    Style::line(Colour::Ink, 2.5)
}

fn band_style() -> Style {
    Style::area(Colour::Fin).clear()
}

fn band_edge_style() -> Style {
    Style::line(Colour::Soft, 1.0).dashed(&[4.0, 3.0])
}

pub(super) fn turning_style() -> Style {
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
fn at_mm(chart: &ClassChart<'_>, scale: &Scale) -> Option<f64> {
    let mm = chart.unit.mm(chart.turning()?.at);
    (scale.reach.least_mm..=scale.reach.most_mm).contains(&mm).then_some(mm)
}

fn at_words(chart: &ClassChart<'_>, at: f64) -> String {
    words::class_chart_turning(&chart.unit.told(at))
}

fn gap_words(chart: &ClassChart<'_>, gap: &Gap) -> String {
    let (from, to) = chart.unit.told_between(gap.from, gap.to);
    if chart.unit.told(gap.from) == to {
        at_words(chart, gap.to)
    } else {
        words::class_chart_gap(&from, &to)
    }
}

/// What stands above that line, or above the gap, and where.
pub(super) fn named(chart: &ClassChart<'_>, scale: &Scale) -> Option<(f64, String)> {
    if let Some(gap) = gap(chart) {
        let middle = chart.unit.mm(f64::midpoint(gap.from, gap.to));
        return Some((middle, gap_words(chart, gap)));
    }
    Some((at_mm(chart, scale)?, at_words(chart, chart.turning()?.at)))
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

/// What is drawn under the marks, back to front, with the line at 0.
pub(super) fn items(chart: &ClassChart<'_>, scale: &Scale, rows: &Rows) -> Vec<Item> {
    let (plots, Area { left, right, .. }) = (rows.plots(), rows.area);
    let x = |separation: f64| scale.px(chart.unit.mm(separation));
    let line = |x: f64| {
        let is_inside = x > left && x < right;
        if is_inside { upright(&plots, x) } else { Path::default() }
    };
    let curve = chart.turning().map(|found| curve(chart, &found.curve, scale, rows));
    let mut items = Vec::new();
    let mut draw = |path: Path, style| {
        if !path.runs.is_empty() {
            items.push(Item::Path { path, style });
        }
    };
    if let Some([band, edges, _]) = &curve {
        draw(band.clone(), band_style());
        draw(edges.clone(), band_edge_style());
    }
    if let Some((from, to)) = hatched_from(chart) {
        let (from, to) = (x(from), x(to));
        for plot in &plots {
            let hatch = Area { left: from.max(left), right: to.min(right), ..*plot };
            draw(hatch.hatching(HATCH_PX), hatch_style());
        }
        let mut ends = line(from);
        ends.runs.extend(line(to).runs);
        draw(ends, hatch_edge_style());
    }
    if let Some((one, two)) = chart.practice_mm() {
        let (one, two) = (scale.px(one), scale.px(two));
        let mut edges = line(one);
        edges.runs.extend(line(two).runs);
        let top = Area { left: one, right: two.min(right), ..rows.area };
        edges.runs.extend(level(&top, top.top).runs);
        draw(edges, practice_style());
    }
    draw(line(scale.px(0.0)), zero_style());
    if let Some([.., curve]) = curve {
        draw(curve, curve_style());
    }
    if let Some(mm) = at_mm(chart, scale) {
        draw(line(scale.px(mm)), turning_style());
    }
    items
}

/// The band of the curve, the edges of that, and the curve, from one edge of the rows to the
/// other.
fn curve(chart: &ClassChart<'_>, curve: &Curve, scale: &Scale, rows: &Rows) -> [Path; 3] {
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
    [Path::closed(high), edges, Path::open(line)]
}

/// What of it needs words beside the chart.
pub(super) fn entries<'a>(chart: &'a ClassChart<'_>, is_named: bool) -> Vec<Entry<'a>> {
    let mut entries = Vec::new();
    let hatch = |words| Entry { sample: Box::new(hatched), words };
    if let Some(gap) = gap(chart).filter(|_| !is_named) {
        entries.push(hatch(gap_words(chart, gap)));
    }
    let Some(found) = chart.turning() else { return entries };
    let sample = |area: &Area| {
        let mut edges = level(area, area.top);
        edges.runs.extend(level(area, area.bottom).runs);
        vec![
            Item::Path { path: area.outline(), style: band_style() },
            Item::Path { path: edges, style: band_edge_style() },
        ]
    };
    entries.push(Entry::line(curve_style(), words::class_chart_curve()));
    let band = words::class_chart_curve_band().into();
    entries.push(Entry { sample: Box::new(sample), words: band });
    if !is_named {
        entries.push(Entry::line(turning_style(), at_words(chart, found.at)));
    }
    entries.push(match found.band {
        Band::Between { least, most } => {
            let (from, to) = chart.unit.told_between(least, most);
            hatch(words::class_chart_turning_band(&from, &to))
        }
        Band::Unbounded => {
            Entry::line(turning_style(), words::class_chart_turning_open())
        }
    });
    entries
}
