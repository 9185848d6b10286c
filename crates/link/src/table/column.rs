//! The columns of a table.

use noseward_lesson::{MOST_OUTCOMES, MOST_VERSIONS, Point, REPEATS, Statement};
use noseward_stability::SwingField;

use super::kind::Kind;

/// One column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Column {
    Kind,
    Group,
    Trial,
    ComparedWith,
    /// Where a deleted trial stood.
    Place,
    Plan,
    /// What the rocket is called; for people.
    Name,
    Rocket,
    RocketLength,
    CutOutLength,
    From(Point),
    Guess(Point),
    Reading(Point, usize),
    LeftOut(Point),
    LeftOutReason(Point),
    /// For people, as the next four.
    Middle(Point),
    Range(Point),
    Separation,
    ComputedSeparation,
    Overall,
    /// Of a version of the prediction, the first being 0.
    Outcome(usize),
    Because(usize),
    SwingsSeen(usize),
    DraftOutcome,
    DraftBecause,
    Setup(SwingField),
    Swing(usize),
    Note,
    Seal,
    Altered,
    Version,
    Level,
    Support,
    TwoChanges,
    InHand,
    Statement(Statement),
}

impl Column {
    /// Every column, in the order in which a table has them.
    pub(super) fn all() -> Vec<Self> {
        let mut all = vec![
            Self::Kind,
            Self::Group,
            Self::Trial,
            Self::ComparedWith,
            Self::Place,
            Self::Plan,
            Self::Name,
            Self::Rocket,
            Self::RocketLength,
            Self::CutOutLength,
        ];
        for point in Point::ALL {
            all.extend([Self::From(point), Self::Guess(point)]);
            all.extend((0..REPEATS).map(|i| Self::Reading(point, i)));
            all.extend([Self::LeftOut(point), Self::LeftOutReason(point)]);
            all.extend([Self::Middle(point), Self::Range(point)]);
        }
        all.extend([Self::Separation, Self::ComputedSeparation]);
        for i in 0..MOST_VERSIONS {
            all.extend([Self::Outcome(i), Self::Because(i), Self::SwingsSeen(i)]);
        }
        all.extend([Self::DraftOutcome, Self::DraftBecause]);
        all.extend(SwingField::ALL.map(Self::Setup));
        all.extend((0..MOST_OUTCOMES).map(Self::Swing));
        all.extend([Self::Overall, Self::Note, Self::Seal, Self::Altered]);
        all.extend([
            Self::Version,
            Self::Level,
            Self::Support,
            Self::TwoChanges,
            Self::InHand,
        ]);
        all.extend(Statement::ALL.map(Self::Statement));
        all
    }

    /// What stands above it: ASCII, and with no mark that parts cells, whatever the form.
    pub(super) fn heading(self) -> String {
        let of = |point, what: &str| {
            let point = match point {
                Point::Mass => "centre of mass",
                Point::Pressure => "centre of pressure",
            };
            format!("{point}: {what}")
        };
        let version = |i: usize, what: &str| match i {
            0 => format!("prediction: {what}"),
            _ => format!("prediction {}: {what}", i + 1),
        };
        let plain = match self {
            Self::Kind => super::KIND_HEADING,
            Self::Group => "group",
            Self::Trial => "trial",
            Self::ComparedWith => "compared with trial",
            Self::Place => "place before it was deleted",
            Self::Plan => "plan",
            Self::Name => "rocket's name",
            Self::Rocket => "rocket",
            Self::RocketLength => "rocket length (mm)",
            Self::CutOutLength => "cut-out length (mm)",
            Self::From(point) => return of(point, "measured from"),
            Self::Guess(point) => return of(point, "guess from nose (mm)"),
            Self::Reading(point, i) => {
                return of(point, &format!("reading {} (mm)", i + 1));
            }
            Self::LeftOut(point) => return of(point, "reading left out"),
            Self::LeftOutReason(point) => return of(point, "reason for leaving it out"),
            Self::Middle(point) => return of(point, "middle from nose (mm)"),
            Self::Range(point) => return of(point, "range (mm)"),
            Self::Separation => "measured separation (mm)",
            Self::ComputedSeparation => "computed separation (mm)",
            Self::Overall => "all swings together",
            Self::Outcome(i) => return version(i, "outcome"),
            Self::Because(i) => return version(i, "because"),
            Self::SwingsSeen(i) => return version(i, "swings seen before"),
            Self::DraftOutcome => "not locked: outcome",
            Self::DraftBecause => "not locked: because",
            Self::Setup(SwingField::String) => "string (m)",
            Self::Setup(SwingField::Arm) => "arm (m)",
            Self::Setup(SwingField::Turns) => "turns a second",
            Self::Setup(SwingField::AirDensity) => "air density (g per cubic metre)",
            Self::Swing(i) => return format!("swing {}", i + 1),
            Self::Note => "note",
            Self::Seal => "seal",
            Self::Altered => "altered",
            Self::Version => "table version",
            Self::Level => "level",
            Self::Support => "help with the conclusion",
            Self::TwoChanges => "two changes allowed",
            Self::InHand => "trial in hand",
            Self::Statement(Statement::Claim) => "claim",
            Self::Statement(Statement::Evidence) => "evidence",
            Self::Statement(Statement::Reason) => "reason",
            Self::Statement(Statement::Trust) => "trust",
        };
        plain.into()
    }

    /// Whether it is worked out from the others, and not read.
    pub(super) fn is_worked_out(self) -> bool {
        matches!(
            self,
            Self::Name
                | Self::Middle(_)
                | Self::Range(_)
                | Self::Separation
                | Self::ComputedSeparation
                | Self::Overall
        )
    }

    /// Whether a row of this kind has something in it.
    pub(super) fn is_in(self, kind: Kind) -> bool {
        match self {
            Self::Kind | Self::Group => true,
            Self::Place => kind == Kind::Deleted,
            Self::Plan => !matches!(kind, Kind::Conclusion | Kind::Notebook),
            Self::Version
            | Self::Level
            | Self::Support
            | Self::TwoChanges
            | Self::InHand => kind == Kind::Notebook,
            Self::Statement(_) => kind == Kind::Conclusion,
            _ => matches!(kind, Kind::Trial | Kind::Deleted),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_differ_and_stay_as_they_are() {
        let headings: Vec<String> =
            Column::all().into_iter().map(Column::heading).collect();
        for (i, heading) in headings.iter().enumerate() {
            let plain = |b: u8| b.is_ascii_graphic() || b == b' ';
            assert!(heading.bytes().all(plain), "{heading}");
            assert!(!heading.contains([',', ';', '"']), "{heading}");
            assert!(!headings[..i].contains(heading), "{heading}");
        }
        assert_eq!(headings.len(), 73);
    }
}
