//! What there is to say about measured and worked out, as sentences.

use noseward_drawing::Written;
use noseward_lesson::{End, Explanation};
use noseward_stability::Units;
use noseward_words::{self as words, NearerEnd};

use crate::places::labels::point_in;

pub(super) fn sentence(explanation: Explanation, units: Units) -> String {
    let text = match explanation {
        Explanation::Agree { point, apart_mm } => {
            return words::beside_agree(point_in(point), &units.length(apart_mm));
        }
        Explanation::Differ { point, apart_mm, nearer } => {
            let nearer = match nearer {
                End::Nose => NearerEnd::Nose,
                End::Tail => NearerEnd::Tail,
            };
            let apart = units.length(apart_mm);
            return words::beside_differ(point_in(point), &apart, nearer);
        }
        Explanation::CannotTell { range_mm } => {
            return words::beside_cannot_tell(&units.length(range_mm));
        }
        Explanation::PartMissing { scales_g, parts_g } => {
            let [scales, parts] = [scales_g, parts_g].map(|g| units.scale_reading(g));
            return words::beside_scales(&scales, &parts);
        }
        Explanation::OtherEnd => words::beside_other_end(),
        Explanation::TailHeavier => words::beside_tail_heavier(),
        Explanation::TailLighter => words::beside_tail_lighter(),
        Explanation::NotWeighed => words::beside_weigh(),
        Explanation::Card => words::beside_card(),
        Explanation::CutOut => words::beside_flat(),
        Explanation::CutOutLength => words::beside_how_long(),
        Explanation::OddFins => words::beside_which_view(),
    };
    text.into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_lesson::BalancePoint;

    #[test]
    fn each_explanation_has_its_sentence() {
        use Explanation::{Agree, CannotTell, Differ, PartMissing};
        let [mass, pressure] = BalancePoint::ALL;
        for (explanation, words) in [
            (
                Agree { point: mass, apart_mm: 4.0 },
                "The centre of mass: measured and worked out agree to within 4 mm.",
            ),
            (
                Agree { point: pressure, apart_mm: 0.5 },
                "The centre of pressure (side-on): measured and worked out agree to within \
                 0.5 mm.",
            ),
            (
                Differ { point: mass, apart_mm: 20.5, nearer: End::Tail },
                "The centre of mass: measured 20.5 mm nearer the tail than worked out.",
            ),
            (
                Differ { point: pressure, apart_mm: 20.0, nearer: End::Nose },
                "The centre of pressure (side-on): measured 20 mm nearer the nose than \
                 worked out.",
            ),
            (
                CannotTell { range_mm: 26.0 },
                "But your readings lie 26 mm apart themselves: they cannot tell. Measure \
                 again?",
            ),
            (Explanation::OtherEnd, "Was it read from the other end of the rocket?"),
            (
                Explanation::TailHeavier,
                "Is the tail heavier than described: tape, glue, thick fins?",
            ),
            (
                Explanation::TailLighter,
                "Is the tail lighter than described, or is there more ballast in the nose?",
            ),
            (
                PartMissing { scales_g: 60.0, parts_g: 45.0 },
                "The scales say 60 g, the parts add up to 45 g. Is a part missing?",
            ),
            (Explanation::NotWeighed, "What does the whole rocket weigh on the scales?"),
            (
                Explanation::Card,
                "Is the card the same all over: no tape, glue or double card?",
            ),
            (
                Explanation::CutOut,
                "Is the cut-out flat, and are its fins cut to the right size?",
            ),
            (
                Explanation::CutOutLength,
                "How long is the cut-out? Its length gives its scale.",
            ),
            (
                Explanation::OddFins,
                "An odd number of fins looks different from each side: which view was cut \
                 out?",
            ),
        ] {
            assert_eq!(sentence(explanation, Units::METRIC), words);
        }
    }
}
