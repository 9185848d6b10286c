//! What moved with a change, as sentences. "Back" is towards the tail.

use noseward_drawing::Written;
use noseward_lesson::{BalancePoint, Became, BeforeAfter, Moved};
use noseward_stability::{UnitSystem, Units};
use noseward_words::{self as words, MovedWay};

use crate::places::labels::point_in;

/// Four sentences: the two points, the separation, the mass.
pub(super) fn sentences(moved: &Moved, units: Units) -> String {
    let [mass, pressure] = BalancePoint::ALL.map(|point| {
        let of = point_in(point);
        let Some(mm) = moved.point_mm(point) else { return words::moved_not(of) };
        let way = if mm > 0.0 { MovedWay::Back } else { MovedWay::Forward };
        words::moved_point(of, &units.reading(mm.abs()), way)
    });
    let written = |mm| units.reading(mm);
    let separation = separation(
        moved.separation_mm,
        written,
        words::moved_separation,
        words::moved_separation_stayed,
    );
    let weight = match moved.heavier_g() {
        None => words::moved_mass_same().into(),
        Some(g) => {
            let written = match units.system {
                UnitSystem::Metric => format!("{} g", words::Number::trimmed(g.abs(), 1)),
                UnitSystem::Inch => units.scale_reading(g.abs()),
            };
            let say = if g > 0.0 { words::moved_heavier } else { words::moved_lighter };
            say(&written)
        }
    };
    [mass, pressure, separation, weight].join(" ")
}

/// What the readings of two trials say of their separation.
pub(crate) fn measured(found: BeforeAfter, units: Units) -> String {
    separation(
        found,
        |mm| units.length(mm),
        words::moved_measured,
        words::moved_measured_stayed,
    )
}

/// What became of a separation, or that it stayed, where both are written the same.
pub(crate) fn separation(
    found: BeforeAfter,
    written: impl Fn(f64) -> String,
    became: impl Fn(&str, &str, words::Became) -> String,
    stayed: impl Fn(&str) -> String,
) -> String {
    let [from, to] = [found.before, found.after].map(written);
    if from == to {
        return stayed(&to);
    }
    let verb = match found.became() {
        Became::Grew => words::Became::Grew,
        Became::Shrank => words::Became::Shrank,
        Became::Went => words::Became::Went,
    };
    became(&from, &to, verb)
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::{Rocket, moved};
    use noseward_stability::{Example, Planform};

    #[test]
    fn a_weight_moves_one_point() {
        let puffin = Example::Puffin.design();
        let mut other = puffin.clone();
        other.weights[0].mass_g += 10.0;
        let [puffin, other] = [puffin, other].map(Rocket::from);
        let said = |a, b, units| sentences(&moved(a, b).unwrap(), units);
        let heavier = said(&puffin, &other, Units::METRIC);
        for words in [
            "The centre of mass moved 14 mm forward. ",
            "The centre of pressure (side-on) did not move. The separation grew from ",
            " The rocket is 10 g heavier.",
        ] {
            assert!(heavier.contains(words), "{heavier}");
        }
        let lighter = said(&other, &puffin, Units::METRIC);
        assert!(
            lighter.starts_with("The centre of mass moved 14 mm back. "),
            "{lighter}"
        );
        assert!(lighter.ends_with(" The rocket is 10 g lighter."), "{lighter}");
        let same = said(&puffin, &puffin, Units::METRIC);
        assert!(same.starts_with("The centre of mass did not move. "), "{same}");
        assert!(same.contains("The separation stayed at "), "{same}");
        assert!(same.ends_with(" The rocket weighs the same."), "{same}");
    }

    #[test]
    fn longer_fins_move_both_points_back() {
        let puffin = Example::Puffin.design();
        let mut other = puffin.clone();
        other.fins[0].planform = Planform::FourSided {
            root_mm: 110.0,
            tip_mm: 60.0,
            span_mm: 75.0,
            sweep_mm: 50.0,
        };
        let moved = moved(&puffin.into(), &other.into()).unwrap();
        let metric = sentences(&moved, Units::METRIC);
        assert!(metric.contains(" mm back. The separation "), "{metric}");
        assert!(metric.ends_with("The rocket is 2 g heavier."), "{metric}");
        assert!(sentences(&moved, Units::INCH).contains(" in back. The separation "));
    }

    #[test]
    fn the_separation_in_words() {
        for (before, after, words) in [
            (12.0, 46.5, "The measured separation grew from 12 mm to 46.5 mm."),
            (46.0, 12.0, "The measured separation shrank from 46 mm to 12 mm."),
            (-8.0, 12.0, "The measured separation went from −8 mm to 12 mm."),
            (12.0, 12.0, "The measured separation stayed at 12 mm."),
        ] {
            let found = BeforeAfter { before, after };
            assert_eq!(measured(found, Units::METRIC), words);
        }
    }
}
