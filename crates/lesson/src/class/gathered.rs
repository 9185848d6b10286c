//! What whoever leads has gathered from the groups of a class, or of many.

use std::collections::BTreeMap;

use crate::{Group, Notebook, RulesCode, TrialResult};

/// Results of one class, at most: a day with many schools.
pub const MOST_RESULTS: usize = 20_000;
/// Notebooks that are kept whole, at most.
pub const MOST_WORKS: usize = 80;
/// Characters of a [`ClassLabel`], at most.
pub const LABEL_CHARS: usize = 12;

/// What tells one class from another where several are put together: letters, digits and
/// hyphens. There is no room for a name of a school.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct ClassLabel(String);

impl ClassLabel {
    /// The label with this text, in capitals; `None` for more than [`LABEL_CHARS`]
    /// characters, or other characters than letters and digits of ASCII and hyphens.
    /// Empty means that nobody said which class it is.
    #[must_use]
    pub fn new(text: &str) -> Option<Self> {
        let text = text.trim();
        let fits = text.len() <= LABEL_CHARS
            && text.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-');
        fits.then(|| Self(text.to_ascii_uppercase()))
    }

    /// Its letters.
    #[must_use]
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// One trial of one group, as it stands in the class.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// Of which class it is.
    pub class: ClassLabel,
    /// What counts: what came last.
    pub result: TrialResult,
    /// What came before it under the same group and number, the first first.
    pub older: Vec<TrialResult>,
    /// Whether whoever leads leaves it out of charts and figures.
    pub hidden: bool,
    /// Whether whoever leads marked it, to come back to it.
    pub marked: bool,
}

impl Entry {
    /// A result that nothing else is said of.
    #[must_use]
    pub fn new(class: ClassLabel, result: TrialResult) -> Self {
        Self { class, result, older: Vec::new(), hidden: false, marked: false }
    }
}

/// A notebook that a group handed in, whole, and what whoever marks it found there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Work {
    /// Of which class it is.
    pub class: ClassLabel,
    /// The notebook.
    pub notebook: Notebook,
    /// The statements that were found in it, by their numbers, each a bit: see
    /// [`Criterion`](crate::Criterion).
    pub statements: u16,
    /// Whether it is invented, for practice.
    pub example: bool,
}

/// A class. No two of its entries are of one class, group and trial.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Class {
    /// Which class it is; empty where nobody said.
    pub label: ClassLabel,
    /// The rules that its results must be made under; `None` takes all.
    pub rules: Option<RulesCode>,
    /// The last day on which it should still be kept, as year, month and day.
    pub delete_by: Option<(u16, u8, u8)>,
    entries: Vec<Entry>,
    index: BTreeMap<Key, usize>,
    works: Vec<Work>,
}

type Key = (ClassLabel, Group, u16);

/// What became of a result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Added {
    /// It is a new entry.
    New,
    /// It was there already, and is there once.
    Doubled,
    /// The trial was there with something else in it: this one counts now, and the older
    /// stands beside it.
    Newer,
}

/// Why a result is not taken in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// It was made under other rules than the class holds to.
    OtherRules {
        /// Those that it names, if any.
        found: Option<RulesCode>,
        /// Those of the class.
        expected: RulesCode,
    },
    /// It was not swung as often as a trial should be.
    Unfinished {
        /// Swings that count.
        swings: usize,
    },
    /// A number in it is none, or is beyond all rockets.
    NoNumber,
    /// There are [`MOST_RESULTS`] or [`MOST_WORKS`] already.
    Full,
}

/// Lengths beyond this are of no rocket of bottles, in millimetres.
const MOST_MM: f64 = 10_000.0;

impl Class {
    /// Every entry, in the order in which they came.
    #[must_use]
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The same, to hide or mark one.
    pub fn entry_mut(&mut self, at: usize) -> Option<&mut Entry> {
        self.entries.get_mut(at)
    }

    /// The entry of a group's trial in a class, to hide or mark it.
    pub fn find_mut(
        &mut self,
        class: &ClassLabel,
        group: Group,
        trial: u16,
    ) -> Option<&mut Entry> {
        let at = self.index.get(&(class.clone(), group, trial))?;
        self.entries.get_mut(*at)
    }

    /// Says which class it is: of what was gathered as the class before, too. Where that
    /// trial was there already, the later one counts and the other stands beside it.
    pub fn relabel(&mut self, label: ClassLabel) {
        let old = std::mem::replace(&mut self.label, label);
        self.index.clear();
        for mut entry in std::mem::take(&mut self.entries) {
            if entry.class == old {
                entry.class = self.label.clone();
            }
            let Some(&at) = self.index.get(&key(&entry)) else {
                self.index.insert(key(&entry), self.entries.len());
                self.entries.push(entry);
                continue;
            };
            let known = &mut self.entries[at];
            known.older.extend(entry.older);
            known.older.push(std::mem::replace(&mut known.result, entry.result));
            known.hidden |= entry.hidden;
            known.marked |= entry.marked;
        }
        for work in self.works.iter_mut().filter(|work| work.class == old) {
            work.class = self.label.clone();
        }
    }

    /// The notebooks that were handed in whole, in the order in which they came.
    #[must_use]
    pub fn works(&self) -> &[Work] {
        &self.works
    }

    /// The same, to mark one.
    pub fn work_mut(&mut self, at: usize) -> Option<&mut Work> {
        self.works.get_mut(at)
    }

    /// Whether nothing was gathered.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty() && self.works.is_empty()
    }

    /// Whether everything in it is invented.
    #[must_use]
    pub fn is_example(&self) -> bool {
        !self.is_empty()
            && self.entries.iter().all(|entry| entry.result.example)
            && self.works.iter().all(|work| work.example)
    }

    /// What counts in charts and figures: not what is hidden, and invented results only
    /// where there are no others. Each with its place among the entries.
    pub fn counting(&self) -> impl Iterator<Item = (usize, &Entry)> {
        let all_invented = self.is_example();
        self.entries.iter().enumerate().filter(move |(_, entry)| {
            !entry.hidden && (all_invented || !entry.result.example)
        })
    }

    /// Takes a result in. Of two that [are the same](TrialResult::is_same_as) the richer
    /// stays; an unfinished one is only taken in where `even_unfinished` says so, but for one
    /// that is there already.
    ///
    /// # Errors
    ///
    /// [`Refusal`]; nothing is changed then.
    pub fn add(
        &mut self,
        class: &ClassLabel,
        result: TrialResult,
        even_unfinished: bool,
    ) -> Result<Added, Refusal> {
        let key = (class.clone(), result.group, result.trial);
        let at = self.index.get(&key).copied();
        if let Some(entry) = at.and_then(|at| self.entries.get_mut(at)) {
            let mut all = std::iter::once(&mut entry.result).chain(&mut entry.older);
            if let Some(known) = all.find(|known| known.is_same_as(&result)) {
                *known = known.clone().completed_by(&result);
                return Ok(Added::Doubled);
            }
        }
        self.hold(&result, even_unfinished)?;
        let Some(at) = at else {
            if self.entries.len() == MOST_RESULTS {
                return Err(Refusal::Full);
            }
            self.index.insert(key, self.entries.len());
            self.entries.push(Entry::new(class.clone(), result));
            return Ok(Added::New);
        };
        let entry = &mut self.entries[at];
        entry.older.push(std::mem::replace(&mut entry.result, result));
        Ok(Added::Newer)
    }

    /// The notebooks that count: invented ones only where there is nothing else.
    pub fn counting_works(&self) -> impl Iterator<Item = &Work> {
        let all_invented = self.is_example();
        self.works.iter().filter(move |work| all_invented || !work.example)
    }

    /// Takes a notebook in, whole. Its trials are results of their own. What was found in
    /// one that is there already, here or elsewhere, is found in it.
    ///
    /// # Errors
    ///
    /// [`Refusal::Full`].
    pub fn add_work(&mut self, work: Work) -> Result<Added, Refusal> {
        let is_it =
            |known: &Work| known.class == work.class && known.notebook == work.notebook;
        if let Some(known) = self.works.iter_mut().find(|known| is_it(known)) {
            known.statements |= work.statements;
            return Ok(Added::Doubled);
        }
        if self.works.len() == MOST_WORKS {
            return Err(Refusal::Full);
        }
        self.works.push(work);
        Ok(Added::New)
    }

    /// Takes one entry out, with what stands beside it.
    pub fn remove(&mut self, at: usize) -> Option<Entry> {
        if at >= self.entries.len() {
            return None;
        }
        let removed = self.entries.remove(at);
        self.index_anew();
        Some(removed)
    }

    /// Lets go of everything that is invented. What came before an invented result counts again.
    pub fn drop_examples(&mut self) {
        for entry in &mut self.entries {
            entry.older.retain(|result| !result.example);
            if entry.result.example
                && let Some(real) = entry.older.pop()
            {
                entry.result = real;
            }
        }
        self.entries.retain(|entry| !entry.result.example);
        self.works.retain(|work| !work.example);
        self.index_anew();
    }

    fn index_anew(&mut self) {
        self.index = self.entries.iter().map(key).zip(0..).collect();
    }

    fn hold(&self, result: &TrialResult, even_unfinished: bool) -> Result<(), Refusal> {
        if let Some(expected) = self.rules
            && result.rules != Some(expected)
            && !result.example
        {
            return Err(Refusal::OtherRules { found: result.rules, expected });
        }
        if !numbers(result).iter().all(|mm| mm.abs() <= MOST_MM) {
            return Err(Refusal::NoNumber);
        }
        if !result.is_finished() && !even_unfinished {
            return Err(Refusal::Unfinished { swings: result.counted().len() });
        }
        Ok(())
    }
}

/// What tells an entry from all others.
fn key(Entry { class, result, .. }: &Entry) -> Key {
    (class.clone(), result.group, result.trial)
}

/// Every number of a result.
fn numbers(result: &TrialResult) -> Vec<f64> {
    let mut numbers = Vec::new();
    for point in [result.mass, result.pressure].into_iter().flatten() {
        numbers.extend([point.middle_mm, point.range_mm]);
        numbers.extend(point.readings_mm.into_iter().flatten());
    }
    if let Some(model) = result.model {
        numbers.extend([
            model.length_mm,
            model.body_width_mm,
            model.mass_g,
            model.mass_point_mm,
            model.pressure_point_mm,
        ]);
    }
    numbers
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Colour, PointResult, SwingOutcome};
    use SwingOutcome::{Sideways, Steady, TailFirst};
    use proptest::prelude::*;

    fn result(number: u8, trial: u16, outcome: SwingOutcome) -> TrialResult {
        let group = Group::new(Colour::Green, number).unwrap();
        TrialResult { outcomes: vec![outcome; 3], ..TrialResult::empty(group, trial) }
    }

    fn add(class: &mut Class, result: TrialResult) -> Result<Added, Refusal> {
        class.add(&ClassLabel::default(), result, false)
    }

    #[test]
    fn the_newer_stands_beside_the_older_and_nothing_twice() {
        let mut class = Class::default();
        assert_eq!(add(&mut class, result(1, 1, Steady)), Ok(Added::New));
        assert_eq!(add(&mut class, result(1, 1, Steady)), Ok(Added::Doubled));
        assert_eq!(add(&mut class, result(1, 1, Sideways)), Ok(Added::Newer));
        assert_eq!(add(&mut class, result(1, 1, Steady)), Ok(Added::Doubled));
        assert_eq!(add(&mut class, result(1, 2, Steady)), Ok(Added::New));
        assert_eq!(class.entries().len(), 2);
        assert_eq!(class.entries()[0].result, result(1, 1, Sideways));
        assert_eq!(class.entries()[0].older, [result(1, 1, Steady)]);
        let other = ClassLabel::new("b").unwrap();
        assert_eq!(class.add(&other, result(1, 1, Steady), false), Ok(Added::New));
    }

    #[test]
    fn what_is_refused_changes_nothing() {
        let rules = |value| RulesCode::new(value).unwrap();
        let mut class = Class { rules: Some(rules(7)), ..Class::default() };
        let other = TrialResult { rules: Some(rules(8)), ..result(1, 1, Steady) };
        let refusal = Refusal::OtherRules { found: Some(rules(8)), expected: rules(7) };
        assert_eq!(add(&mut class, other), Err(refusal));
        class.rules = None;
        let one_swing = TrialResult { outcomes: vec![TailFirst], ..result(1, 1, Steady) };
        let refused = add(&mut class, one_swing.clone());
        assert_eq!(refused, Err(Refusal::Unfinished { swings: 1 }));
        let mass = PointResult::of([Some(f64::NAN), None, None]);
        let odd = TrialResult { mass, ..result(1, 1, Steady) };
        assert_eq!(add(&mut class, odd), Err(Refusal::NoNumber));
        assert!(class.is_empty());
        let label = ClassLabel::default();
        assert_eq!(class.add(&label, one_swing.clone(), true), Ok(Added::New));
        assert_eq!(class.add(&label, one_swing, false), Ok(Added::Doubled));
    }

    #[test]
    fn invented_results_never_count_beside_real_ones() {
        let mut class = Class::default();
        let invented = TrialResult { example: true, ..result(1, 1, Steady) };
        add(&mut class, invented).unwrap();
        assert!(class.is_example());
        assert_eq!(class.counting().count(), 1);
        add(&mut class, result(2, 1, Steady)).unwrap();
        assert_eq!(class.counting().count(), 1);
        assert!(!class.is_example());
        class.drop_examples();
        assert_eq!(class.entries().len(), 1);
        assert_eq!(add(&mut class, result(2, 1, Steady)), Ok(Added::Doubled));
    }

    #[test]
    fn nothing_invented_is_left_behind_or_beside_what_is_real() {
        let mut class = Class::default();
        let invented = |trial| TrialResult { example: true, ..result(1, trial, Steady) };
        add(&mut class, invented(1)).unwrap();
        add(&mut class, result(1, 1, Sideways)).unwrap();
        add(&mut class, result(1, 2, Sideways)).unwrap();
        add(&mut class, invented(2)).unwrap();
        class.drop_examples();
        let [first, second] = class.entries() else { panic!("{class:?}") };
        assert_eq!(*first, Entry::new(ClassLabel::default(), result(1, 1, Sideways)));
        assert_eq!(*second, Entry::new(ClassLabel::default(), result(1, 2, Sideways)));
    }

    #[test]
    fn an_invented_notebook_counts_only_where_nothing_real_is() {
        let mut class = Class::default();
        let work = |number, example| {
            let mut notebook = Notebook::default();
            notebook.group = Group::new(Colour::Green, number).unwrap();
            Work { notebook, example, ..Work::default() }
        };
        class.add_work(work(1, true)).unwrap();
        assert!(class.is_example());
        assert_eq!(class.counting_works().count(), 1);
        class.add_work(work(2, false)).unwrap();
        assert!(!class.is_example());
        assert_eq!(class.counting_works().collect::<Vec<_>>(), [&work(2, false)]);
        class.drop_examples();
        assert_eq!(class.works(), [work(2, false)]);
    }

    #[test]
    fn what_was_found_in_a_notebook_here_or_elsewhere_is_found_in_it() {
        let mut class = Class::default();
        let work = |statements| Work { statements, ..Work::default() };
        assert_eq!(class.add_work(work(5)), Ok(Added::New));
        assert_eq!(class.add_work(work(6)), Ok(Added::Doubled));
        assert_eq!(class.works(), [work(7)]);
    }

    #[test]
    fn a_class_that_gets_a_label_takes_its_results_along() {
        let label = |text| ClassLabel::new(text).unwrap();
        let mut class = Class::default();
        add(&mut class, result(1, 1, Steady)).unwrap();
        class.add(&label("B"), result(1, 1, Sideways), false).unwrap();
        class.relabel(label("A"));
        let labels = |class: &Class| {
            let entries = class.entries().iter();
            entries.map(|entry| entry.class.as_str().to_owned()).collect::<Vec<_>>()
        };
        assert_eq!(labels(&class), ["A", "B"]);
        let green = result(1, 1, Steady).group;
        assert!(class.find_mut(&label("A"), green, 1).is_some());
        assert!(class.find_mut(&ClassLabel::default(), green, 1).is_none());
        class.relabel(label("B"));
        assert_eq!(labels(&class), ["B"]);
        assert_eq!(class.entries()[0].result, result(1, 1, Sideways));
        assert_eq!(class.entries()[0].older, [result(1, 1, Steady)]);
    }

    #[test]
    fn a_label_has_no_room_for_a_name() {
        assert_eq!(ClassLabel::new(" 7b-2 ").unwrap().as_str(), "7B-2");
        for bad in ["7 b", "Größe", "=1", "1234567890123"] {
            assert_eq!(ClassLabel::new(bad), None, "{bad}");
        }
    }

    proptest! {
        /// Whatever comes in whatever order: each trial is there once, and what was ever
        /// taken in is found in it.
        #[test]
        fn nothing_vanishes(steps in proptest::collection::vec(
            (1_u8..4, 1_u16..4, 0_usize..3, any::<bool>()), 0..60,
        )) {
            let mut class = Class::default();
            let mut came = Vec::new();
            for (number, trial, outcome, removes) in steps {
                if removes && !class.entries().is_empty() {
                    let gone = class.remove(usize::from(number) % class.entries().len());
                    let gone = gone.unwrap().result;
                    came.retain(|known: &TrialResult| {
                        (known.group, known.trial) != (gone.group, gone.trial)
                    });
                } else {
                    let one = result(number, trial, [Steady, Sideways, TailFirst][outcome]);
                    let is_known = came.contains(&one);
                    let added = add(&mut class, one.clone()).unwrap();
                    prop_assert_eq!(added == Added::Doubled, is_known);
                    came.push(one);
                }
            }
            for one in &came {
                let found = class.entries().iter().filter(|entry| {
                    entry.result == *one || entry.older.contains(one)
                });
                prop_assert_eq!(found.count(), 1);
            }
        }
    }
}
