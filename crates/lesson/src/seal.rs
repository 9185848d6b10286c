//! Checks over what should not change unseen, so that a change by hand leaves a trace.
//!
//! A trial has a seal once something is locked or was swung: over its number, its rocket,
//! its predictions and its swings. A notebook has one over the numbers and the seals of its
//! trials, so that none can be taken out, and no seal with what it covers.
//!
//! A seal is a checksum, no secret. It shows a change by hand in a file, a table or a code.
//! It cannot show what a program changed that works the seal out anew, nor that somebody
//! went back to an earlier copy, which was right when it was written.

use std::fmt;
use std::str::FromStr;

use crc::{CRC_32_ISO_HDLC, Crc, Digest, NoTable};
use noseward_stability::{
    Design, FinSet, Mass, Measured, Planform, Quantity, Section, SwingSetup, Weight,
};
use serde::Serialize;

use crate::{ClassQuestion, Prediction, RulesCode, SetUp, Trial, key};

/// The checksum that PNG and zip use. Without a table: it is over a few hundred bytes.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// A check over what should not change unseen: eight hexadecimal digits as text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seal(pub u32);

impl fmt::Display for Seal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:08x}", self.0)
    }
}

impl FromStr for Seal {
    type Err = &'static str;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let digits = text.len() == 8 && text.bytes().all(|b| b.is_ascii_hexdigit());
        let value = digits.then(|| u32::from_str_radix(text, 16).ok()).flatten();
        value.map(Self).ok_or("a seal is eight hexadecimal digits")
    }
}

/// The seal over a trial.
pub(crate) fn over_trial(trial: &Trial) -> Seal {
    let mut sealing = Sealing::new();
    sealing.trial(trial);
    sealing.seal()
}

/// A trial's number, whether it was deleted, and the seal that stands in it.
pub(crate) type Entry = (u16, bool, Option<Seal>);

/// The seal over a notebook's trials, in any order, and over the rules that they were made
/// under.
pub(crate) fn over_notebook(
    altered: bool,
    rules: Option<RulesCode>,
    mut trials: Vec<Entry>,
) -> Seal {
    let mut sealing = Sealing::new();
    sealing.flag("altered", altered);
    if let Some(rules) = rules {
        sealing.count("rules", rules.value().into());
    }
    while let Some(least) = (0..trials.len()).min_by_key(|&i| trials[i].0) {
        let (id, deleted, seal) = trials.swap_remove(least);
        sealing.count("trial", id.into());
        sealing.flag("deleted", deleted);
        if let Some(Seal(seal)) = seal {
            sealing.count("seal", seal.into());
        }
    }
    sealing.seal()
}

/// The check over what must be the same where results are compared.
pub(crate) fn over_rules(set_up: &SetUp) -> Seal {
    let mut sealing = Sealing::new();
    match &set_up.question {
        ClassQuestion::Own(text) => sealing.text("question.own", text),
        // By numbers, which are frozen as keys are and take less code.
        question => sealing.count("question", question.number().into()),
    }
    sealing.count("changeable", set_up.changeable.bits().into());
    sealing.flag("two_changes", set_up.allows_two_changes);
    if let Some(g) = set_up.limits.added_g {
        sealing.number("limit.added_g", g, Quantity::Mass);
    }
    for (key, value) in [
        ("limit.string_m", set_up.limits.string_m),
        ("limit.turns_per_s", set_up.limits.turns_per_s),
    ] {
        // On the grid of links: hundredths.
        sealing.real(key, (value * 100.0).round());
    }
    sealing.seal()
}

/// What is covered, as keys with their values, one after the other.
///
/// What is left empty has no entry. So a value that comes to be covered later breaks no
/// seal that was written without it, as long as it goes without an entry where it has its
/// usual value. Keys and their order are a format: a change breaks seals.
struct Sealing {
    digest: Digest<'static, u32, NoTable>,
    #[cfg(test)]
    keys: Vec<&'static str>,
}

impl Sealing {
    fn new() -> Self {
        Self {
            digest: CRC.digest(),
            #[cfg(test)]
            keys: Vec::new(),
        }
    }

    fn seal(self) -> Seal {
        Seal(self.digest.finalize())
    }

    /// Key and value, each with an end of its own.
    fn put(&mut self, key: &'static str, value: &[u8]) {
        #[cfg(test)]
        self.keys.push(key);
        for bytes in [key.as_bytes(), value] {
            self.digest.update(&(bytes.len() as u64).to_le_bytes());
            self.digest.update(bytes);
        }
    }

    fn text(&mut self, key: &'static str, text: &str) {
        if !text.is_empty() {
            self.put(key, text.as_bytes());
        }
    }

    fn flag(&mut self, key: &'static str, is: bool) {
        if is {
            self.put(key, b"yes");
        }
    }

    fn choice(&mut self, key: &'static str, choice: &impl Serialize) {
        self.put(key, key::key(choice).as_bytes());
    }

    fn count(&mut self, key: &'static str, count: u64) {
        self.put(key, &count.to_le_bytes());
    }

    /// A number on its grid, so that every spelling of it gives the same.
    fn number(&mut self, key: &'static str, value: f64, quantity: Quantity) {
        let steps = quantity.rounded(value) * quantity.steps_per_unit();
        self.real(key, steps.round());
    }

    fn real(&mut self, key: &'static str, value: f64) {
        let bits = if value.is_nan() { u64::MAX } else { (value + 0.0).to_bits() };
        self.count(key, bits);
    }

    fn trial(&mut self, trial: &Trial) {
        self.count("id", trial.id().into());
        self.flag("altered", trial.is_altered());
        self.design(trial.design());
        for Prediction { outcome, because, swings_seen } in trial.predictions().versions()
        {
            self.choice("prediction.outcome", outcome);
            self.text("prediction.because", because);
            self.count("prediction.swings_seen", (*swings_seen).into());
        }
        for outcome in trial.taken_back() {
            self.choice("taken_back", outcome);
        }
        if trial.swings().outcomes().is_empty() {
            return;
        }
        let SwingSetup { string_m, arm_m, turns_per_s, air_density_kg_m3 } =
            trial.swings().setup;
        for (key, value) in [
            ("setup.string_m", string_m),
            ("setup.arm_m", arm_m),
            ("setup.turns_per_s", turns_per_s),
            ("setup.air_density_kg_m3", air_density_kg_m3),
        ] {
            self.real(key, value);
        }
        for outcome in trial.swings().outcomes() {
            self.choice("swing.outcome", outcome);
        }
    }

    fn design(&mut self, design: &Design) {
        let Design { name, sections, fins, weights, measured } = design;
        let Measured { total_mass_g } = measured;
        self.text("name", name);
        for section in sections {
            let Section { kind, length_mm, diameter_mm, closed_front, mass } = section;
            self.choice("section.kind", kind);
            self.number("section.length_mm", *length_mm, Quantity::Length);
            if let Some(mm) = *diameter_mm {
                self.number("section.diameter_mm", mm, Quantity::Length);
            }
            self.flag("section.closed_front", *closed_front);
            self.mass(*mass);
        }
        for set in fins {
            self.fin_set(set);
        }
        for Weight { label, mass_g, position_mm } in weights {
            self.number("weight.mass_g", *mass_g, Quantity::Mass);
            self.number("weight.position_mm", *position_mm, Quantity::Length);
            self.text("weight.label", label);
        }
        if let Some(g) = *total_mass_g {
            self.number("total_mass_g", g, Quantity::Mass);
        }
    }

    fn fin_set(&mut self, set: &FinSet) {
        let FinSet { count, start_mm, roll_deg, planform, mass } = set;
        self.count("fins.count", (*count).into());
        self.number("fins.start_mm", *start_mm, Quantity::Length);
        self.number("fins.roll_deg", *roll_deg, Quantity::Angle);
        match planform {
            &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => {
                for (key, mm) in [
                    ("fins.root_mm", root_mm),
                    ("fins.tip_mm", tip_mm),
                    ("fins.span_mm", span_mm),
                    ("fins.sweep_mm", sweep_mm),
                ] {
                    self.number(key, mm, Quantity::Length);
                }
            }
            Planform::PointsMm(corners) => {
                for &[along, out] in corners {
                    self.number("fins.corner.along_mm", along, Quantity::Length);
                    self.number("fins.corner.out_mm", out, Quantity::Length);
                }
            }
        }
        self.mass(*mass);
    }

    fn mass(&mut self, mass: Mass) {
        match mass {
            Mass::WeighedG(g) => self.number("mass.weighed_g", g, Quantity::Mass),
            Mass::Material(material) => self.choice("mass.material", &material),
            Mass::SheetGPerM2(sheet) => {
                self.number("mass.sheet_g_per_m2", sheet, Quantity::ArealDensity);
            }
            Mass::Joined => self.flag("mass.joined", true),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Predictions, SwingOutcome, Swings, TrialParts};
    use noseward_stability::{Example, Material, SectionKind};

    /// One of everything that a seal covers.
    fn everything() -> TrialParts {
        let mut design = Example::Tern.design();
        let section = |mass| Section {
            kind: SectionKind::Tube,
            length_mm: 100.0,
            diameter_mm: Some(65.0),
            closed_front: true,
            mass,
        };
        design.sections = vec![
            section(Mass::WeighedG(7.0)),
            section(Mass::Material(Material::Card300)),
            section(Mass::SheetGPerM2(220.0)),
            section(Mass::Joined),
        ];
        let set = FinSet {
            count: 3,
            start_mm: 225.0,
            roll_deg: 60.0,
            planform: Planform::PointsMm(vec![[0.0, 0.0], [9.0, 4.0], [20.0, 0.0]]),
            mass: Mass::WeighedG(4.0),
        };
        let planform = Planform::FourSided {
            root_mm: 45.0,
            tip_mm: 25.0,
            span_mm: 30.0,
            sweep_mm: 20.0,
        };
        design.fins = vec![FinSet { planform, ..set.clone() }, set];
        design.weights =
            vec![Weight { label: "clay".into(), mass_g: 9.0, position_mm: 40.0 }];
        design.measured.total_mass_g = Some(80.0);
        let mut predictions = Predictions::default();
        predictions.add(Prediction {
            outcome: SwingOutcome::Wobbling,
            because: "small fins".into(),
            swings_seen: 2,
        });
        let setup =
            SwingSetup { string_m: 1.2, turns_per_s: 0.95, ..SwingSetup::default() };
        TrialParts {
            id: 3,
            design,
            predictions,
            taken_back: vec![SwingOutcome::TailFirst],
            swings: Swings::new(setup, [SwingOutcome::Steady, SwingOutcome::Slipped])
                .unwrap(),
            altered: true,
            ..TrialParts::default()
        }
    }

    #[test]
    fn a_seal_is_eight_digits() {
        for (text, value) in [("00000000", 0), ("cbf43926", 0xcbf4_3926)] {
            assert_eq!(text.parse(), Ok(Seal(value)));
            assert_eq!(Seal(value).to_string(), text);
        }
        for bad in ["", "1", "+0000000", "cbf4392g", "cbf439260", "cbf4392 "] {
            assert!(bad.parse::<Seal>().is_err(), "{bad}");
        }
    }

    /// The list of what a seal covers, in its order. A change breaks seals in files.
    #[test]
    fn what_is_covered_is_frozen() {
        let mut sealing = Sealing::new();
        sealing.trial(&everything().into());
        let mut keys = sealing.keys;
        keys.dedup();
        let section = ["section.kind", "section.length_mm", "section.diameter_mm"];
        let closed = "section.closed_front";
        let fins = ["fins.count", "fins.start_mm", "fins.roll_deg"];
        let [kind, length, width] = section;
        let [count, start, roll] = fins;
        let (along, out) = ("fins.corner.along_mm", "fins.corner.out_mm");
        #[rustfmt::skip]
        let frozen = [
            "id", "altered", "name",
            kind, length, width, closed, "mass.weighed_g",
            kind, length, width, closed, "mass.material",
            kind, length, width, closed, "mass.sheet_g_per_m2",
            kind, length, width, closed, "mass.joined",
            count, start, roll,
            "fins.root_mm", "fins.tip_mm", "fins.span_mm", "fins.sweep_mm",
            "mass.weighed_g",
            count, start, roll, along, out, along, out, along, out, "mass.weighed_g",
            "weight.mass_g", "weight.position_mm", "weight.label",
            "total_mass_g",
            "prediction.outcome", "prediction.because", "prediction.swings_seen",
            "taken_back",
            "setup.string_m", "setup.arm_m", "setup.turns_per_s",
            "setup.air_density_kg_m3", "swing.outcome",
        ];
        assert_eq!(keys, frozen);
    }

    /// By keys and numbers alone: no word of the page is in it.
    #[test]
    fn seals_once_written_stay_right() {
        assert_eq!(over_trial(&everything().into()).to_string(), "bde50bf9");
        let entries = vec![(2, true, None), (1, false, Some(Seal(7)))];
        assert_eq!(over_notebook(false, None, entries).to_string(), "ced848f8");
    }

    #[test]
    fn a_zero_is_a_zero_whatever_its_sign() {
        let seal = |value| {
            let mut sealing = Sealing::new();
            sealing.real("setup.arm_m", value);
            sealing.seal()
        };
        assert_eq!(seal(-0.0), seal(0.0));
        assert_eq!(seal(-f64::NAN), seal(f64::NAN));
        assert_ne!(seal(0.1), seal(0.0));
    }

    #[test]
    fn the_order_of_trials_is_free_and_all_else_is_not() {
        let (one, two) = ((1, false, Some(Seal(7))), (2, false, None));
        let seal = over_notebook(false, None, vec![one, two]);
        assert_eq!(over_notebook(false, None, vec![two, one]), seal);
        for other in [
            vec![one],
            vec![two],
            vec![one, two, (3, false, None)],
            vec![one, (3, false, None)],
            vec![(1, true, Some(Seal(7))), two],
            vec![(1, false, Some(Seal(8))), two],
            vec![(1, false, None), two],
            vec![one, (2, false, Some(Seal(7)))],
        ] {
            assert_ne!(over_notebook(false, None, other), seal);
        }
        assert_ne!(over_notebook(true, None, vec![one, two]), seal);
        let rules = RulesCode::new(7);
        assert_ne!(over_notebook(false, rules, vec![one, two]), seal);
    }
}
