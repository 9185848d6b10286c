//! How a lesson is set up, once for the whole class.

use noseward_stability::{
    Design, SwingField, SwingSetup, UnitSystem, cleaned_lines, within,
};

use super::{
    BrokenRule, Changeable, Changeables, ClassQuestion, LessonPlaces, OWN_CHARS,
    RuleLimits, RulesCode,
};
use crate::{Change, Colour, Group, Level, Support, Telling, Trial, seal};

/// The most groups of a class.
pub const MOST_GROUPS: u8 = 40;
/// The most pupils of a group.
pub const MOST_IN_GROUP: u8 = 6;
/// The most added mass that a limit can be, in grams.
pub const MOST_ADDED_G: f64 = 1000.0;
/// The widest hall, in metres.
pub const MOST_HALL_M: f64 = 200.0;
/// Strings that differ by less are the same, in metres.
const SAME_STRING_M: f64 = 0.015;
/// Where two numbers are written alike, neither is more.
const ALIKE: f64 = 1e-6;

/// Everything that whoever leads decides before a lesson. No pupil is in it.
#[derive(Clone, Debug, PartialEq)]
pub struct SetUp {
    /// How many pupils there are.
    pub pupils: u8,
    /// How many of them are a group; a few may be one less.
    pub group_size: u8,
    /// What the groups are called.
    pub labels: Labels,
    /// The language of the page, by its key; empty for that of each browser.
    pub language: String,
    /// How much the page shows.
    pub level: Level,
    /// Units of the fields.
    pub units: UnitSystem,
    /// What is asked.
    pub question: ClassQuestion,
    /// What may be changed.
    pub changeable: Changeables,
    /// How far.
    pub limits: RuleLimits,
    /// Whether two changes at once are allowed.
    pub allows_two_changes: bool,
    /// What is told when.
    pub telling: Telling,
    /// How much help the conclusion gets.
    pub support: Support,
    /// The places that are shown.
    pub places: LessonPlaces,
    /// How wide the hall is, in metres, if that is known.
    pub hall_m: Option<f64>,
    /// The rocket that every group begins with. A notebook holds its set-up without one.
    pub rocket: Option<Design>,
}

/// What the groups of a class are called.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Labels {
    /// A colour each: Red 1, Orange 1, …
    #[default]
    Colours,
    /// One colour for a class: Blue 1, Blue 2, …
    Numbers(Colour),
}

impl Default for SetUp {
    /// A class of thirty, in threes, that asks about larger fins, and is told what the page
    /// works out once it has measured and predicted.
    fn default() -> Self {
        let swing = SwingSetup::default();
        let question = ClassQuestion::default();
        Self {
            pupils: 30,
            group_size: 3,
            labels: Labels::default(),
            language: String::new(),
            level: Level::default(),
            units: UnitSystem::default(),
            changeable: question.changeable(),
            question,
            limits: RuleLimits {
                added_g: None,
                string_m: swing.string_m,
                turns_per_s: swing.turns_per_s,
            },
            allows_two_changes: false,
            telling: Telling::Points,
            support: Support::default(),
            places: LessonPlaces::default(),
            hall_m: None,
            rocket: None,
        }
    }
}

impl SetUp {
    /// The label of each group.
    pub fn labels(&self) -> impl Iterator<Item = Group> + use<> {
        let (count, labels) = (self.groups(), self.labels);
        (0..count).filter_map(move |i| match labels {
            Labels::Colours => {
                let colours = Colour::ALL.len();
                let colour = Colour::ALL[usize::from(i) % colours];
                let round = usize::from(i) / colours;
                Group::new(colour, u8::try_from(round + 1).unwrap_or(u8::MAX))
            }
            Labels::Numbers(colour) => Group::new(colour, i + 1),
        })
    }

    /// How many groups there are, from 1 to [`MOST_GROUPS`].
    #[must_use]
    pub fn groups(&self) -> u8 {
        self.pupils.div_ceil(self.group_size.max(1)).clamp(1, MOST_GROUPS)
    }

    /// As it is kept: within its bounds, and with a question of one's own as long as it may
    /// be.
    #[must_use]
    pub fn rounded(mut self) -> Self {
        self.group_size = self.group_size.clamp(1, MOST_IN_GROUP);
        self.pupils = self.pupils.clamp(1, self.group_size * MOST_GROUPS);
        let steps = |value: f64, per_unit: f64| (value * per_unit).round() / per_unit;
        let RuleLimits { added_g, string_m, turns_per_s } = &mut self.limits;
        *added_g = added_g.map(|g| within(steps(g, 10.0), (0.0, MOST_ADDED_G)));
        *string_m = within(steps(*string_m, 100.0), SwingField::String.bounds());
        *turns_per_s = within(steps(*turns_per_s, 20.0), SwingField::Turns.bounds());
        self.hall_m = self.hall_m.map(|m| within(steps(m, 10.0), (0.0, MOST_HALL_M)));
        if let ClassQuestion::Own(text) = &mut self.question {
            *text = cleaned_lines(text, OWN_CHARS).replace('\n', " ");
        }
        self.rocket = self.rocket.map(Design::rounded);
        self
    }

    /// What stands in the notebook of a group: all but the rocket.
    #[must_use]
    pub fn without_rocket(&self) -> Self {
        Self { rocket: None, ..self.clone() }
    }

    /// The code of its rules: the same where results may be compared. How many groups there
    /// are, what they read and how much help they get is no part of that.
    #[must_use]
    pub fn rules(&self) -> RulesCode {
        RulesCode::of_checksum(seal::over_rules(self).0)
    }

    /// The rule that locking the prediction of a trial would break, by what it changes.
    #[must_use]
    pub fn broken_by(&self, trial: &Trial, changes: &[Change]) -> Option<BrokenRule> {
        let forbidden = changes.iter().map(Changeable::of);
        let forbidden = forbidden.filter(|one| *one != Changeable::Swinging);
        let mut forbidden = forbidden.filter(|one| !self.changeable.has(*one));
        if let Some(one) = forbidden.next() {
            return Some(BrokenRule::Changed(one));
        }
        if changes.len() > 1 && !self.allows_two_changes {
            return Some(BrokenRule::SeveralChanges(changes.len()));
        }
        let added_g: f64 = trial.design().weights.iter().map(|one| one.mass_g).sum();
        let most_g = self.limits.added_g.filter(|most_g| added_g > most_g + ALIKE);
        most_g.map(BrokenRule::AddedMass)
    }

    /// The rule that a swing would break, by how it is swung and how the trial before was.
    #[must_use]
    pub fn broken_by_swing(
        &self,
        setup: &SwingSetup,
        before: Option<&SwingSetup>,
    ) -> Option<BrokenRule> {
        let RuleLimits { string_m, turns_per_s, .. } = self.limits;
        if setup.string_m > string_m + ALIKE {
            return Some(BrokenRule::String(string_m));
        }
        if setup.turns_per_s > turns_per_s + ALIKE {
            return Some(BrokenRule::Turns(turns_per_s));
        }
        let is_other = before
            .is_some_and(|one| (one.string_m - setup.string_m).abs() > SAME_STRING_M);
        (is_other && !self.changeable.has(Changeable::Swinging))
            .then_some(BrokenRule::Changed(Changeable::Swinging))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Notebook, Record};
    use noseward_stability::Example;

    #[test]
    fn every_group_has_a_label_of_its_own() {
        for labels in [Labels::Colours, Labels::Numbers(Colour::Green)] {
            for groups in [1, 12, 13, MOST_GROUPS] {
                let all: Vec<Group> =
                    SetUp { pupils: groups, group_size: 1, labels, ..SetUp::default() }
                        .labels()
                        .collect();
                assert_eq!(all.len(), usize::from(groups));
                for (i, label) in all.iter().enumerate() {
                    assert!(!all[..i].contains(label), "{label:?}");
                }
            }
        }
        let keys: Vec<_> = SetUp::default().labels().map(Group::key).collect();
        assert_eq!(keys[..3], ["red 1", "orange 1", "yellow 1"]);
    }

    #[test]
    fn rules_are_what_makes_results_comparable() {
        type Edit = fn(&mut SetUp);
        let usual = SetUp::default();
        let others: [Edit; 7] = [
            |s| s.question = ClassQuestion::FinNumber,
            |s| s.question = ClassQuestion::Own("Why?".into()),
            |s| s.changeable = Changeables::ALL,
            |s| s.allows_two_changes = true,
            |s| s.limits.string_m = 1.2,
            |s| s.limits.turns_per_s = 0.7,
            |s| s.limits.added_g = Some(30.0),
        ];
        let mut codes = vec![usual.rules()];
        for edit in others {
            let mut other = usual.clone();
            edit(&mut other);
            assert!(!codes.contains(&other.rules()), "{other:?}");
            codes.push(other.rules());
        }
        let alike: [Edit; 8] = [
            |s| s.pupils = 4,
            |s| s.labels = Labels::Numbers(Colour::Red),
            |s| s.language = "de".into(),
            |s| s.level = Level::Model,
            |s| s.support = Support::None,
            |s| s.telling = Telling::All,
            |s| s.hall_m = Some(20.0),
            |s| s.rocket = Some(Example::Tern.design()),
        ];
        for edit in alike {
            let mut other = usual.clone();
            edit(&mut other);
            assert_eq!(other.rules(), usual.rules(), "{other:?}");
        }
        // It stands on paper and in results.
        assert_eq!(usual.rules().value(), 802_073);
    }

    /// The rule that the second trial of a notebook breaks.
    fn broken(set_up: &SetUp, edit: impl Fn(&mut Record)) -> Option<BrokenRule> {
        let mut record = Record::from(Example::Puffin.design());
        let mut notebook = Notebook::default();
        notebook.begin(&record).unwrap();
        edit(&mut record);
        let id = notebook.begin(&record).unwrap();
        let trial = notebook.trial(id).unwrap();
        set_up.broken_by(trial, &notebook.changes_of(trial))
    }

    #[test]
    fn a_trial_breaks_the_rule_that_it_breaks() {
        let set_up = SetUp {
            question: ClassQuestion::FinNumber,
            changeable: ClassQuestion::FinNumber.changeable(),
            limits: RuleLimits { added_g: Some(20.0), ..SetUp::default().limits },
            ..SetUp::default()
        };
        let more_fins = |record: &mut Record| record.design.fins[0].count = 3;
        let heavier = |record: &mut Record| record.design.weights[0].mass_g = 20.5;
        assert_eq!(broken(&set_up, |_| {}), None);
        assert_eq!(broken(&set_up, more_fins), None);
        let added = Some(BrokenRule::Changed(Changeable::AddedMass));
        assert_eq!(broken(&set_up, heavier), added);
        let both = |record: &mut Record| {
            more_fins(record);
            heavier(record);
        };
        assert_eq!(broken(&set_up, both), added);
        let free = SetUp { changeable: Changeables::ALL, ..set_up };
        assert_eq!(broken(&free, heavier), Some(BrokenRule::AddedMass(20.0)));
        assert_eq!(broken(&free, both), Some(BrokenRule::SeveralChanges(2)));
        let two = SetUp { allows_two_changes: true, ..free };
        assert_eq!(broken(&two, both), Some(BrokenRule::AddedMass(20.0)));
    }

    #[test]
    fn a_swing_breaks_the_rule_that_it_breaks() {
        let set_up = SetUp::default();
        let usual = SwingSetup::default();
        let of = |setup: SwingSetup| set_up.broken_by_swing(&setup, Some(&usual));
        assert_eq!(of(usual), None);
        let longer = SwingSetup { string_m: 1.05, ..usual };
        assert_eq!(of(longer), Some(BrokenRule::String(1.0)));
        let faster = SwingSetup { turns_per_s: 0.85, ..usual };
        assert_eq!(of(faster), Some(BrokenRule::Turns(0.8)));
        let shorter = SwingSetup { string_m: 0.8, ..usual };
        let other = BrokenRule::Changed(Changeable::Swinging);
        assert_eq!(of(shorter), Some(other));
        assert_eq!(set_up.broken_by_swing(&shorter, None), None);
        // Slower, with another arm, in other air: nobody chooses those.
        let otherwise =
            SwingSetup { turns_per_s: 0.7, arm_m: 0.5, air_density_kg_m3: 1.1, ..usual };
        assert_eq!(of(otherwise), None);
        let free = SetUp { changeable: Changeables::ALL, ..set_up };
        assert_eq!(free.broken_by_swing(&shorter, Some(&usual)), None);
    }
}
