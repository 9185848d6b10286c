//! What the program finds, and that each change can be taken back.

use noseward_stability::{
    BottleSize, Design, Example, Field, Mass, Material, Planform, Section, SectionKind,
    Weight,
};
use proptest::prelude::*;
use proptest::sample::{Index, select};

use super::*;
use crate::{End, SwingOutcome, same_build};
use Amount::{Less, More};
use ChangedPart::{Body, Bottle, Fins, Neck, Nose, Taper};
use PartDifference as Of;

fn record(example: Example) -> Record {
    example.design().into()
}

fn edited(example: Example, edit: impl FnOnce(&mut Design)) -> (Record, Record) {
    let before = record(example);
    let mut after = before.clone();
    edit(&mut after.design);
    (before, after)
}

/// Holds what is found against what differs.
fn assert_found(before: &Record, after: &Record, expected: &[(ChangedPart, Of<'_>)]) {
    let found = changes(before, after);
    let found: Vec<_> = found.iter().map(Change::difference).collect();
    let expected: Vec<_> =
        expected.iter().map(|(of, what)| Difference::Part(*of, *what)).collect();
    assert_eq!(found, expected);
}

fn deeds(before: &Record, after: &Record) -> Vec<Deed> {
    changes(before, after).iter().map(Change::deed).collect()
}

fn along(before: &Record, after: &Record) -> Vec<Vec<Component>> {
    changes(before, after).iter().map(|change| change.moved_with_it().collect()).collect()
}

const FINS: Component = Component::Fins(0);
const CLAY: Component = Component::Weight(0);

/// A section that is there in one of the two rockets only.
fn nose(design: &Record, is_new: bool) -> (ChangedPart, Of<'_>) {
    (Nose, Of::Section { section: &design.design.sections[0], is_new })
}

/// A nose in front, and everything else moved back by its length.
fn with_nose(design: &mut Design) {
    let nose = Section {
        kind: SectionKind::Cone,
        length_mm: 90.0,
        diameter_mm: None,
        closed_front: false,
        mass: Mass::WeighedG(7.0),
    };
    design.sections.insert(0, nose);
    design.fins.iter_mut().for_each(|set| set.start_mm += 90.0);
    design.weights.iter_mut().for_each(|weight| weight.position_mm += 90.0);
}

type PartEdit = fn(&mut Design);
type Expected = for<'a> fn(&'a Design, &'a Design) -> Of<'a>;

#[test]
fn one_aspect_is_one_change() {
    let all: [(Deed, ChangedPart, Expected, PartEdit); 17] = [
        (
            Deed::FinSize(More),
            Fins,
            |a, b| Of::Planform(&a.fins[0].planform, &b.fins[0].planform),
            |d| {
                d.fins[0].planform = Planform::FourSided {
                    root_mm: 130.0,
                    tip_mm: 60.0,
                    span_mm: 80.0,
                    sweep_mm: 50.0,
                };
            },
        ),
        (Deed::FinNumber(Less), Fins, |_, _| Of::Number(4, 3), |d| d.fins[0].count = 3),
        (
            Deed::Moved(Fins, End::Nose),
            Fins,
            |a, b| Of::Place(&a.fins[0], &b.fins[0]),
            |d| {
                d.fins[0].start_mm = 200.0;
                d.fins[0].roll_deg = 45.0;
            },
        ),
        (
            Deed::Mass(Fins),
            Fins,
            |_, _| Of::Mass(Mass::Material(Material::Card300), Mass::WeighedG(12.5)),
            |d| d.fins[0].mass = Mass::WeighedG(12.5),
        ),
        (
            Deed::Removed(Fins),
            Fins,
            |a, _| Of::Fins { set: &a.fins[0], is_new: false },
            |d| d.fins.clear(),
        ),
        (
            Deed::Shape(Nose),
            Nose,
            |_, _| Of::Shape(SectionKind::Ellipsoid, SectionKind::Dome),
            |d| d.sections[0].kind = SectionKind::Dome,
        ),
        (
            Deed::Weight(Nose, More),
            Nose,
            |_, _| Of::Mass(Mass::WeighedG(8.0), Mass::WeighedG(12.0)),
            |d| d.sections[0].mass = Mass::WeighedG(12.0),
        ),
        (
            Deed::Weight(Bottle, Less),
            Bottle,
            |_, _| Of::Mass(Mass::WeighedG(22.0), Mass::WeighedG(20.0)),
            |d| d.sections[1].mass = Mass::WeighedG(20.0),
        ),
        (
            Deed::Length(Nose, Less),
            Nose,
            |_, _| Of::Length(120.0, 90.0),
            |d| d.sections[0].length_mm = 90.0,
        ),
        (
            Deed::Length(Nose, More),
            Nose,
            |_, _| Of::Length(120.0, 150.0),
            |d| d.sections[0].length_mm = 150.0,
        ),
        (
            Deed::Width(Body, More),
            Body,
            |_, _| Of::Width(Some(65.0), Some(70.0)),
            |d| d.sections[1].diameter_mm = Some(70.0),
        ),
        (
            Deed::Width(Body, Less),
            Body,
            |_, _| Of::Width(Some(65.0), Some(60.0)),
            |d| d.sections[1].diameter_mm = Some(60.0),
        ),
        (
            Deed::ClosedFront(Body),
            Body,
            |_, _| Of::ClosedFront(true, false),
            |d| d.sections[1].closed_front = false,
        ),
        (
            Deed::Weight(ChangedPart::Weight, More),
            ChangedPart::Weight,
            |_, _| Of::Mass(Mass::WeighedG(20.0), Mass::WeighedG(35.0)),
            |d| d.weights[0].mass_g = 35.0,
        ),
        (
            Deed::Moved(ChangedPart::Weight, End::Tail),
            ChangedPart::Weight,
            |_, _| Of::Middle(45.0, 250.0),
            |d| d.weights[0].position_mm = 250.0,
        ),
        (
            Deed::Added(ChangedPart::Weight),
            ChangedPart::Weight,
            |_, b| Of::Weight { weight: &b.weights[0], is_new: true },
            |d| {
                let tape = &Example::Razorbill.design().weights[0];
                d.weights.insert(0, tape.clone());
            },
        ),
        (
            Deed::Removed(ChangedPart::Weight),
            ChangedPart::Weight,
            |a, _| Of::Weight { weight: &a.weights[0], is_new: false },
            |d| d.weights.clear(),
        ),
    ];
    for (deed, of, what, edit) in all {
        let (before, after) = edited(Example::Puffin, edit);
        assert_found(&before, &after, &[(of, what(&before.design, &after.design))]);
        let found = changes(&before, &after);
        assert_eq!(found[0].deed(), deed);
        assert_eq!(found[0].undo(&after), before, "{deed:?}");
    }
}

/// What the list above has not.
#[test]
fn each_deed_is_told_from_the_others() {
    let fins = |root_mm, span_mm, sweep_mm| {
        move |d: &mut Design| {
            d.fins[0].planform =
                Planform::FourSided { root_mm, tip_mm: 60.0, span_mm, sweep_mm };
        }
    };
    let all: [(Deed, PartEdit); 15] = [
        (Deed::FinNumber(More), |d| d.fins[0].count = 5),
        (Deed::FinsTurned, |d| d.fins[0].roll_deg = 45.0),
        (Deed::Moved(Fins, End::Tail), |d| d.fins[0].start_mm = 220.0),
        (Deed::Added(Fins), |d| {
            let more = Example::Tern.design().fins.remove(0);
            d.fins.push(more);
        }),
        (Deed::Weight(Nose, Less), |d| d.sections[0].mass = Mass::WeighedG(5.0)),
        (Deed::Mass(Nose), |d| d.sections[0].mass = Mass::Material(Material::Paper80)),
        (Deed::Weight(Bottle, More), |d| d.sections[1].mass = Mass::WeighedG(25.0)),
        (Deed::Length(Body, Less), |d| d.sections[1].length_mm = 100.0),
        (Deed::Length(Taper, More), |d| d.sections[2].length_mm = 60.0),
        (Deed::Shape(Neck), |d| d.sections[2].kind = SectionKind::Neck),
        (Deed::Removed(Nose), |d| {
            d.sections.remove(0);
        }),
        (Deed::Added(Nose), with_nose),
        (Deed::Weight(ChangedPart::Weight, Less), |d| d.weights[0].mass_g = 15.0),
        (Deed::Moved(ChangedPart::Weight, End::Nose), |d| {
            d.weights[0].position_mm = 40.0;
        }),
        (Deed::Width(Nose, Less), |d| d.sections[0].diameter_mm = Some(60.0)),
    ];
    for (deed, edit) in all {
        let (before, after) = edited(Example::Puffin, edit);
        assert_eq!(deeds(&before, &after), [deed]);
    }
    for (root_mm, span_mm, sweep_mm, deed) in [
        (110.0, 50.0, 50.0, Deed::FinSize(Less)),
        (112.0, 56.0, 50.0, Deed::FinSize(More)),
        (110.0, 55.0, 70.0, Deed::Shape(Fins)),
        (111.0, 55.0, 50.0, Deed::Shape(Fins)),
    ] {
        let (before, after) = edited(Example::Puffin, fins(root_mm, span_mm, sweep_mm));
        assert_eq!(deeds(&before, &after), [deed]);
    }
}

#[test]
fn words_and_measured_values_are_no_change() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.name = "Razorbill".into();
        d.weights[0].label = "putty".into();
        d.measured.total_mass_g = Some(80.0);
    });
    assert_eq!(changes(&before, &after), []);
}

#[test]
fn what_comes_to_the_same_is_no_change() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[0].diameter_mm = Some(65.0);
        d.fins[0].planform = Planform::PointsMm(d.fins[0].planform.corners_mm());
    });
    assert_eq!(changes(&before, &after), []);
    // A nose that follows its bottle's width follows it to another one.
    let (before, after) =
        edited(Example::Puffin, |d| d.sections[1].diameter_mm = Some(70.0));
    assert_found(&before, &after, &[(Body, Of::Width(Some(65.0), Some(70.0)))]);
}

#[test]
fn a_nose_is_one_change_and_takes_the_rest_along() {
    let mut before = BottleSize::Ml500.design();
    before.fins = Example::Tern.design().fins;
    before.fins[0].start_mm = 135.0;
    before.weights =
        vec![Weight { label: "clay".into(), mass_g: 9.0, position_mm: 20.0 }];
    let mut after = before.clone();
    with_nose(&mut after);
    let (before, after) = (Record::from(before), Record::from(after));
    let added = nose(&after, true);
    assert_found(&before, &after, &[added]);
    assert_eq!(along(&before, &after), [[FINS, CLAY]]);
    assert!(!changes(&before, &after)[0].is_removed());
    assert_eq!(changes(&before, &after)[0].undo(&after), before);
    assert_found(&after, &before, &[nose(&after, false)]);
    assert_eq!(along(&after, &before), [[FINS, CLAY]]);
    assert!(changes(&after, &before)[0].is_removed());
    assert_eq!(changes(&after, &before)[0].undo(&before), after);
    // Fins moved besides are two changes, and each goes by itself.
    let mut two = after.clone();
    two.design.fins[0].start_mm += 10.0;
    let found = changes(&before, &two);
    let moved = Of::Place(&after.design.fins[0], &two.design.fins[0]);
    assert_found(&before, &two, &[added, (Fins, moved)]);
    assert_eq!(found[1].undo(&two), after);
    let bare = found[0].undo(&two);
    let moved = Of::Place(&before.design.fins[0], &bare.design.fins[0]);
    assert_found(&before, &bare, &[(Fins, moved)]);
    // So does a weight, and fins that were taken off come back behind the nose.
    let mut other = after.clone();
    other.design.weights[0].position_mm += 30.0;
    other.design.fins.clear();
    let found = changes(&before, &other);
    let middle = Difference::Part(ChangedPart::Weight, Of::Middle(110.0, 140.0));
    assert_eq!(found[2].difference(), middle);
    assert_eq!(found[1].undo(&found[2].undo(&other)), after);
    other.design.weights.clear();
    let found = changes(&before, &other);
    assert_eq!(found[1].undo(&found[2].undo(&other)), after);
}

#[test]
fn what_is_added_behind_an_added_nose_stays_on_its_section() {
    let (before, after) = edited(Example::Puffin, |d| {
        with_nose(d);
        // One on the bottle, one in the nose itself.
        for position_mm in [290.0, 20.0] {
            d.weights.push(Weight { label: "tape".into(), mass_g: 5.0, position_mm });
        }
    });
    let found = changes(&before, &after);
    assert_eq!(found.len(), 3, "{found:?}");
    assert!(found[0].moved_with_it().eq([FINS, CLAY]));
    let undone = found[0].undo(&after).design.weights;
    let places: Vec<_> = undone.iter().map(|weight| weight.position_mm).collect();
    assert_eq!(places, [45.0, 200.0, 20.0]);
}

#[test]
fn a_place_between_two_sections_is_on_the_one_behind() {
    let mut before = Example::Puffin.design();
    before.weights[0].position_mm = 120.0;
    let mut after = before.clone();
    after.sections.remove(0);
    after.fins[0].start_mm -= 120.0;
    after.weights[0].position_mm = 50.0;
    let found = changes(&before.into(), &after.into());
    assert_eq!(found.len(), 2);
    let middle = Difference::Part(ChangedPart::Weight, Of::Middle(0.0, 50.0));
    assert_eq!(found[1].difference(), middle);
}

#[test]
fn fins_that_keep_their_distance_from_the_tail_follow() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[1].length_mm += 40.0;
        d.fins[0].start_mm += 40.0;
    });
    let tube = (Body, Of::Length(125.0, 165.0));
    assert_found(&before, &after, &[tube]);
    assert_eq!(along(&before, &after), [[FINS]]);
    assert_eq!(changes(&before, &after)[0].undo(&after), before);
    // Typed anew, the length alone leaves readings from the nose tip as they are.
    let (before, after) = edited(Example::Puffin, |d| d.sections[1].length_mm += 40.0);
    assert_found(&before, &after, &[tube]);
    assert_eq!(along(&before, &after), [[]]);
    // What keeps its distance from either end of its own section follows that end alone.
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[0].length_mm += 30.0;
        d.sections[1].length_mm += 40.0;
        d.weights[0].position_mm += 30.0;
        d.fins[0].start_mm += 30.0;
    });
    let nose = (Nose, Of::Length(120.0, 150.0));
    assert_found(&before, &after, &[nose, tube]);
    assert_eq!(along(&before, &after), [&[FINS, CLAY][..], &[]]);
    // Fins that went elsewhere owe nothing to a nose that was made longer.
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[0].length_mm += 30.0;
        d.fins[0].start_mm = 300.0;
    });
    let moved = Of::Place(&before.design.fins[0], &after.design.fins[0]);
    assert_found(&before, &after, &[nose, (Fins, moved)]);
    assert_eq!(along(&before, &after), [[], []]);
}

#[test]
fn a_bottle_without_its_wall_keeps_its_mass() {
    let (before, after) = edited(Example::Puffin, |d| {
        let wall = d.sections.remove(1);
        d.sections[1].mass = wall.mass;
    });
    let found = changes(&before, &after);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].deed(), Deed::Removed(Body));
    assert_eq!(found[0].undo(&after), before);
    let back = changes(&after, &before);
    assert_eq!(back.len(), 1, "{back:?}");
    assert_eq!(back[0].undo(&before), after);
    // Weighed anew, it is another change besides, there and back.
    let mut weighed = after;
    weighed.design.sections[1].mass = Mass::WeighedG(30.0);
    let count = |a, b| changes(a, b).len();
    assert_eq!((count(&before, &weighed), count(&weighed, &before)), (2, 2));
}

#[test]
fn fins_that_changed_in_every_way_are_the_same_fins() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.fins = Example::Tern.design().fins;
        d.fins[0].mass = Mass::WeighedG(4.0);
    });
    let kinds: Vec<_> =
        changes(&before, &after).iter().map(|change| change.kind).collect();
    use ChangeKind::{FinMass, FinNumber, FinPlace, FinShape};
    assert_eq!(kinds, [FinNumber, FinShape, FinMass, FinPlace]);
}

#[test]
fn between_equals_the_fewer_changes_are_told() {
    let weights = |all: [(f64, f64); 3]| {
        let mut design = Example::Tern.design();
        let clay =
            |(mass_g, position_mm)| Weight { label: "clay".into(), mass_g, position_mm };
        design.weights = all.map(clay).to_vec();
        Record::from(design)
    };
    // Two taken off and two added, or five numbers of three weights.
    let before = weights([(10.0, 50.0), (20.0, 100.0), (30.0, 150.0)]);
    let after = weights([(30.0, 150.0), (20.0, 110.0), (40.0, 200.0)]);
    assert_eq!(changes(&before, &after).len(), 4);
}

/// Only of a tube is it told whether its front is closed; it comes back with any shape.
#[test]
fn a_shape_comes_back_with_its_front() {
    let mut before = record(Example::Puffin);
    before.design.sections[0].closed_front = true;
    let mut after = before.clone();
    after.design.sections[0].kind = SectionKind::Dome;
    after.design.sections[0].closed_front = false;
    let shape = Of::Shape(SectionKind::Ellipsoid, SectionKind::Dome);
    assert_found(&before, &after, &[(Nose, shape)]);
    assert_eq!(changes(&before, &after)[0].undo(&after), before);
}

#[test]
fn what_is_gone_already_is_not_taken_off_again() {
    let (before, after) =
        edited(Example::Puffin, |d| d.fins.extend(Example::Tern.design().fins));
    let added = &changes(&before, &after)[0];
    assert_eq!(added.undo(&added.undo(&after)), before);
}

#[test]
fn another_weight_is_another_weight() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.weights = Example::Razorbill.design().weights;
    });
    let weight = ChangedPart::Weight;
    assert_eq!(deeds(&before, &after), [Deed::Removed(weight), Deed::Added(weight)]);
}

#[test]
fn swings_are_compared_where_both_were_swung() {
    let (mut before, mut after) = (record(Example::Tern), record(Example::Tern));
    after.swings.setup.string_m = 2.0;
    after.swings.setup.turns_per_s = 0.6;
    after.swings.add(SwingOutcome::Steady);
    assert_eq!(changes(&before, &after), []);
    before.swings.add(SwingOutcome::Wobbling);
    let found = changes(&before, &after);
    use SwingField::{AirDensity, Arm, String, Turns};
    let differences: Vec<_> = found.iter().map(Change::difference).collect();
    assert_eq!(
        differences,
        [Difference::Swing(String, 1.0, 2.0), Difference::Swing(Turns, 0.8, 0.6)]
    );
    assert_eq!(found[0].part, None);
    assert_eq!(
        deeds(&before, &after),
        [Deed::Swing(String, More), Deed::Swing(Turns, Less)]
    );
    assert_eq!(changes(&before, &found[0].undo(&after)).len(), 1);
    assert_eq!(
        deeds(&after, &before),
        [Deed::Swing(String, Less), Deed::Swing(Turns, More)]
    );
    let mut other = before.clone();
    other.swings.setup.arm_m = 0.5;
    other.swings.setup.air_density_kg_m3 = 1.1;
    assert_eq!(
        deeds(&before, &other),
        [Deed::Swing(Arm, Less), Deed::Swing(AirDensity, Less)]
    );
}

/// The design with every width and outline written out.
fn explicit(mut design: Design) -> Design {
    let widths: Vec<_> = (0..design.sections.len()).map(|i| design.width_mm(i)).collect();
    for (section, width_mm) in design.sections.iter_mut().zip(widths) {
        section.diameter_mm = width_mm;
        section.closed_front &= section.kind == SectionKind::Tube;
    }
    for set in &mut design.fins {
        set.planform = Planform::PointsMm(set.planform.corners_mm());
    }
    design
}

/// One thing that somebody might do to a rocket.
#[derive(Clone, Debug)]
enum Edit {
    Number(Index, f64),
    Kind(Index, SectionKind),
    Material(Index, Material),
    AddSection(Index, f64, bool),
    RemoveSection(Index, bool),
    AddFins(Index, f64),
    RemoveFins(Index),
    AddWeight(Index, f64),
    RemoveWeight(Index),
}

fn edit() -> impl Strategy<Value = Edit> {
    let at = any::<Index>;
    prop_oneof![
        6 => (at(), 1.0..300.0).prop_map(|(at, value)| Edit::Number(at, value)),
        1 => (at(), select(&SectionKind::ALL[..])).prop_map(|(at, k)| Edit::Kind(at, k)),
        1 => (at(), select(&Material::ALL[..])).prop_map(|(at, m)| Edit::Material(at, m)),
        2 => (at(), 1.0..200.0, any::<bool>())
            .prop_map(|(at, mm, moves)| Edit::AddSection(at, mm, moves)),
        2 => (at(), any::<bool>()).prop_map(|(at, moves)| Edit::RemoveSection(at, moves)),
        1 => (at(), 0.0..400.0).prop_map(|(at, mm)| Edit::AddFins(at, mm)),
        1 => at().prop_map(Edit::RemoveFins),
        1 => (at(), 0.0..400.0).prop_map(|(at, mm)| Edit::AddWeight(at, mm)),
        1 => at().prop_map(Edit::RemoveWeight),
    ]
}

fn shift(design: &mut Design, behind_mm: f64, by_mm: f64) {
    let fins = design.fins.iter_mut().map(|set| &mut set.start_mm);
    let weights = design.weights.iter_mut().map(|weight| &mut weight.position_mm);
    for place in fins.chain(weights).filter(|place| **place >= behind_mm) {
        *place += by_mm;
    }
}

fn perform(design: &mut Design, edit: &Edit) {
    match edit {
        Edit::Number(at, value) => {
            let field = *at.get(&Field::numbers(design));
            field.set(design, Some(*value));
        }
        Edit::Kind(at, kind) if !design.sections.is_empty() => {
            at.get_mut(&mut design.sections).kind = *kind;
        }
        Edit::Material(at, material) => {
            let sections = design.sections.iter_mut().map(|section| &mut section.mass);
            let mut all: Vec<_> =
                sections.chain(design.fins.iter_mut().map(|set| &mut set.mass)).collect();
            if !all.is_empty() {
                **at.get_mut(&mut all) = Mass::Material(*material);
            }
        }
        Edit::AddSection(at, length_mm, moves) => {
            let at = at.index(design.sections.len() + 1);
            let front: f64 = design.sections[..at].iter().map(|s| s.length_mm).sum();
            let section = Section {
                kind: SectionKind::Tube,
                length_mm: *length_mm,
                diameter_mm: Some(40.0),
                closed_front: false,
                mass: Mass::WeighedG(3.0),
            };
            design.sections.insert(at, section);
            if *moves {
                shift(design, front, *length_mm);
            }
        }
        Edit::RemoveSection(at, moves) if !design.sections.is_empty() => {
            let at = at.index(design.sections.len());
            let gone = design.sections.remove(at);
            let front: f64 = design.sections[..at].iter().map(|s| s.length_mm).sum();
            if *moves {
                shift(design, front + gone.length_mm, -gone.length_mm);
            }
            if let Some(next) = design.sections.get_mut(at)
                && next.mass == Mass::Joined
            {
                next.mass = gone.mass;
            }
        }
        Edit::AddFins(at, start_mm) => {
            let set =
                FinSet { start_mm: *start_mm, ..Example::Tern.design().fins.remove(0) };
            design.fins.insert(at.index(design.fins.len() + 1), set);
        }
        Edit::RemoveFins(at) if !design.fins.is_empty() => {
            design.fins.remove(at.index(design.fins.len()));
        }
        Edit::AddWeight(at, position_mm) => {
            let weight =
                Weight { label: "tape".into(), mass_g: 5.0, position_mm: *position_mm };
            design.weights.insert(at.index(design.weights.len() + 1), weight);
        }
        Edit::RemoveWeight(at) if !design.weights.is_empty() => {
            design.weights.remove(at.index(design.weights.len()));
        }
        _ => {}
    }
}

proptest! {
    #![proptest_config(ProptestConfig {
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    #[test]
    fn taking_every_change_back_gives_the_rocket_before(
        example in select(&Example::ALL[..]),
        edits in proptest::collection::vec(edit(), 1..7),
        picks in proptest::collection::vec(any::<Index>(), 40),
    ) {
        let before = record(example);
        let mut now = before.clone();
        for edit in &edits {
            perform(&mut now.design, edit);
        }
        now.design = now.design.rounded();
        prop_assert_eq!(changes(&now, &now), []);
        let mut found = changes(&before, &now);
        for pick in picks {
            if found.is_empty() {
                break;
            }
            let change = pick.get(&found).clone();
            let undone = change.undo(&now);
            let left = changes(&before, &undone);
            prop_assert!(
                left.len() < found.len(),
                "{change:?} left {left:?} of {found:?} in {:?}", now.design,
            );
            (now, found) = (undone, left);
        }
        prop_assert!(found.is_empty());
        prop_assert!(
            same_build(&explicit(now.design.clone()), &explicit(before.design.clone())),
            "{:?}\n{:?}", now.design, before.design,
        );
    }

    #[test]
    fn one_edit_of_a_number_is_one_change(
        example in select(&Example::ALL[..]),
        at in any::<Index>(),
        value in 1.0..300.0,
    ) {
        let (before, after) = edited(example, |d| {
            let mut fields = Field::numbers(d);
            fields.retain(|field| field.part().is_some());
            at.get(&fields).set(d, Some(value));
        });
        let after = after.rounded();
        let found = changes(&before, &after);
        let same = explicit(before.design.clone()) == explicit(after.design.clone());
        prop_assert_eq!(found.len(), usize::from(!same));
        if let [change] = &found[..] {
            prop_assert_eq!(&change.undo(&after), &before);
        }
    }
}
