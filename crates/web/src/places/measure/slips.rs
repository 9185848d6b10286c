//! What looks like a slip of the ruler, as sentences.

use noseward_drawing::Written;
use noseward_lesson::{End, Slip, SlipCause, SlipKind, UntilChanged};
use noseward_stability::Units;
use noseward_words::{self as words, Number, SlipSize};

use crate::places::labels::point_in;

/// What looks odd, what may have happened, and what is done until it is changed.
pub(super) fn sentence(slip: &Slip, units: Units) -> String {
    let sentence = of_kind(slip.kind, units);
    let behind = match slip.until_changed {
        Some(UntilChanged::NotCounted) => words::slips_not_counted(),
        Some(UntilChanged::NotUsed) => words::slips_not_used(),
        None => return sentence,
    };
    format!("{sentence} {behind}")
}

fn of_kind(kind: SlipKind, units: Units) -> String {
    let length = |mm: f64| units.length(mm);
    let text = match kind {
        SlipKind::OtherUnit { typed_mm, meant_mm, cause } => {
            let is_small = typed_mm < meant_mm;
            let size = if is_small { SlipSize::Small } else { SlipSize::Large };
            let cause = match cause {
                SlipCause::Centimetres => words::SlipCause::Centimetres,
                SlipCause::Inches => words::SlipCause::Inches,
                SlipCause::Millimetres => words::SlipCause::Millimetres,
                SlipCause::ZeroTooMany => words::SlipCause::Zero,
            };
            let meant = units.reading(meant_mm);
            return words::slips_other_unit(size, &length(typed_mm), cause, &meant);
        }
        SlipKind::RocketDiffers { measured_mm, described_mm } => {
            return words::slips_rocket(&length(measured_mm), &length(described_mm));
        }
        SlipKind::CutOutDiffers { cutout_mm, rocket_mm } => {
            return words::slips_cutout(&length(cutout_mm), &length(rocket_mm));
        }
        SlipKind::Scaled { percent } => {
            return words::slips_scaled(Number::fixed(percent, 0));
        }
        SlipKind::GuessOutside { rocket_mm } => {
            return words::slips_guess(&length(rocket_mm));
        }
        SlipKind::Beyond { point, length_mm } => {
            return words::slips_beyond(point_in(point), &length(length_mm));
        }
        SlipKind::NearEnd { reading_mm, point, length_mm } => {
            let (reading, of) = (length(reading_mm), point_in(point));
            return words::slips_near_end(&reading, of, &length(length_mm));
        }
        SlipKind::OtherEnd { from: End::Tail, meant_mm } => {
            return words::slips_from_tail(&length(meant_mm));
        }
        SlipKind::OtherEnd { from: End::Nose, meant_mm } => {
            return words::slips_from_nose(&length(meant_mm));
        }
        SlipKind::NotANumber => words::slips_not_a_number(),
        SlipKind::BelowZero => words::slips_below_zero(),
        SlipKind::Zero => words::slips_zero(),
        SlipKind::LeftOut => words::slips_left_out(),
        SlipKind::Apart => words::slips_apart(),
        SlipKind::OnlyOne => words::slips_only_one(),
    };
    text.into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use SlipKind::{
        Beyond, CutOutDiffers, GuessOutside, NearEnd, OtherEnd, OtherUnit, RocketDiffers,
        Scaled,
    };
    use noseward_lesson::{BalancePoint, ReadingField};

    fn said(kind: SlipKind, units: Units) -> String {
        let place = ReadingField::RocketLength;
        sentence(&Slip { place, kind, until_changed: None }, units)
    }

    #[test]
    fn each_slip_has_its_sentence() {
        let (mass, pressure) = (BalancePoint::Mass, BalancePoint::Pressure);
        for (kind, words) in [
            (SlipKind::NotANumber, "This needs a number."),
            (
                SlipKind::BelowZero,
                "A ruler shows nothing below zero. Is there a sign too many?",
            ),
            (SlipKind::Zero, "This is zero. Leave it empty if nothing was measured."),
            (
                RocketDiffers { measured_mm: 321.0, described_mm: 412.0 },
                "The ruler says 321 mm, the description 412 mm. Measure again, or change \
                 the description.",
            ),
            (
                CutOutDiffers { cutout_mm: 55.0, rocket_mm: 411.0 },
                "A cut-out of 55 mm for a rocket of 411 mm? Measure it again.",
            ),
            (
                Scaled { percent: 93.9 },
                "The cut-out is 94 % as long as the rocket. Its readings are scaled to the \
                 rocket.",
            ),
            (
                GuessOutside { rocket_mm: 411.0 },
                "This guess lies outside the rocket, which is 411 mm long.",
            ),
            (
                Beyond { point: mass, length_mm: 411.0 },
                "This lies beyond the rocket, which is 411 mm long.",
            ),
            (
                Beyond { point: pressure, length_mm: 388.0 },
                "This lies beyond the cut-out, which is 388 mm long.",
            ),
            (
                NearEnd { reading_mm: 12.0, point: mass, length_mm: 411.0 },
                "Only 12 mm: no point is so near an end of a rocket of 411 mm. Measure \
                 again.",
            ),
            (
                NearEnd { reading_mm: 12.5, point: pressure, length_mm: 388.0 },
                "Only 12.5 mm: no point is so near an end of a cut-out of 388 mm. Measure \
                 again.",
            ),
            (
                OtherEnd { from: End::Tail, meant_mm: 248.0 },
                "Was this read from the tail? Then it is 248 mm from the nose.",
            ),
            (
                OtherEnd { from: End::Nose, meant_mm: 248.0 },
                "Was this read from the nose? Then it is 248 mm from the tail.",
            ),
            (SlipKind::LeftOut, "You leave this reading out. Say why."),
            (
                SlipKind::Apart,
                "This reading lies apart from the other two. It stays in the record. Choose \
                 whether to leave it out, and say why.",
            ),
            (
                SlipKind::OnlyOne,
                "One reading cannot show how far readings differ. Take two more.",
            ),
        ] {
            assert_eq!(said(kind, Units::METRIC), words);
        }
    }

    #[test]
    fn another_unit_is_said_with_what_may_be_meant() {
        let (metric, inch) = (Units::METRIC, Units::INCH);
        for (typed_mm, meant_mm, cause, units, words) in [
            (
                24.3,
                243.0,
                SlipCause::Centimetres,
                metric,
                "Only 24.3 mm: read in centimetres? Did you mean 243 mm?",
            ),
            (
                9.7,
                246.38,
                SlipCause::Inches,
                metric,
                "Only 9.7 mm: read in inches? Did you mean 246 mm?",
            ),
            (
                2450.0,
                245.0,
                SlipCause::ZeroTooMany,
                metric,
                "2450 mm: one zero too many? Did you mean 245 mm?",
            ),
            (
                6223.0,
                245.0,
                SlipCause::Millimetres,
                inch,
                "245 in: read in millimetres? Did you mean 9.65 in?",
            ),
            (
                622.3,
                245.0,
                SlipCause::Centimetres,
                inch,
                "24.5 in: read in centimetres? Did you mean 9.65 in?",
            ),
        ] {
            assert_eq!(said(OtherUnit { typed_mm, meant_mm, cause }, units), words);
        }
    }

    #[test]
    fn what_is_done_meanwhile_is_said_behind_it() {
        let place = ReadingField::RocketLength;
        let said = |until_changed| {
            let slip = Slip { place, kind: SlipKind::Zero, until_changed };
            sentence(&slip, Units::METRIC)
        };
        let [counted, used] = [UntilChanged::NotCounted, UntilChanged::NotUsed]
            .map(|what| said(Some(what)));
        assert!(counted.ends_with("measured. It does not count until it is changed."));
        assert!(used.ends_with("measured. It is not used until it is changed."));
    }
}
