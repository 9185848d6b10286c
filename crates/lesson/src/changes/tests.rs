//! What the program finds, and that each change can be taken back.

use noseward_stability::{
    BottleSize, Design, Example, Field, Mass, Material, Planform, Section, SectionKind,
    Units, Weight,
};
use proptest::prelude::*;
use proptest::sample::{Index, select};

use super::*;
use crate::{SwingOutcome, same_build};

fn record(example: Example) -> Record {
    example.design().into()
}

fn edited(example: Example, edit: impl FnOnce(&mut Design)) -> (Record, Record) {
    let before = record(example);
    let mut after = before.clone();
    edit(&mut after.design);
    (before, after)
}

fn sentences(before: &Record, after: &Record) -> Vec<String> {
    let found = changes(before, after);
    found.iter().map(|change| change.sentence(Units::METRIC)).collect()
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

#[test]
fn one_aspect_is_one_change() {
    type Edit = fn(&mut Design);
    let all: [(&str, &str, &str, Edit); 17] = [
        (
            "fin shape",
            "Fins: root 110 mm → 130 mm, span 55 mm → 80 mm.",
            "made the fins larger",
            |d| {
                d.fins[0].planform = Planform::FourSided {
                    root_mm: 130.0,
                    tip_mm: 60.0,
                    span_mm: 80.0,
                    sweep_mm: 50.0,
                };
            },
        ),
        ("fin number", "Fins: number 4 → 3.", "put on fewer fins", |d| {
            d.fins[0].count = 3;
        }),
        (
            "fin place",
            "Fins: start 215 mm → 200 mm, turned 0° → 45°.",
            "moved the fins forward",
            |d| {
                d.fins[0].start_mm = 200.0;
                d.fins[0].roll_deg = 45.0;
            },
        ),
        (
            "fin mass",
            "Fins: mass thick card (300 g/m²) → 12.5 g.",
            "changed the mass of the fins",
            |d| d.fins[0].mass = Mass::WeighedG(12.5),
        ),
        (
            "fins removed",
            "Fins removed: 4 fins, root 110 mm, tip 60 mm, span 55 mm, sweep 50 mm, thick card (300 g/m²).",
            "took fins off",
            |d| {
                d.fins.clear();
            },
        ),
        (
            "nose shape",
            "Nose: shape ellipsoid → dome.",
            "changed the shape of the nose",
            |d| {
                d.sections[0].kind = SectionKind::Dome;
            },
        ),
        ("nose mass", "Nose: mass 8 g → 12 g.", "made the nose heavier", |d| {
            d.sections[0].mass = Mass::WeighedG(12.0);
        }),
        ("bottle mass", "Bottle: mass 22 g → 20 g.", "made the bottle lighter", |d| {
            d.sections[1].mass = Mass::WeighedG(20.0);
        }),
        ("nose length", "Nose: length 120 mm → 90 mm.", "made the nose shorter", |d| {
            d.sections[0].length_mm = 90.0;
        }),
        ("nose length", "Nose: length 120 mm → 150 mm.", "made the nose longer", |d| {
            d.sections[0].length_mm = 150.0;
        }),
        ("body width", "Tube: width 65 mm → 70 mm.", "made the body wider", |d| {
            d.sections[1].diameter_mm = Some(70.0);
        }),
        ("body width", "Tube: width 65 mm → 60 mm.", "made the body narrower", |d| {
            d.sections[1].diameter_mm = Some(60.0);
        }),
        (
            "body front end",
            "Tube: front end closed → open.",
            "changed the front end of the body",
            |d| d.sections[1].closed_front = false,
        ),
        ("weight mass", "Clay: mass 20 g → 35 g.", "made the weight heavier", |d| {
            d.weights[0].mass_g = 35.0;
        }),
        ("weight place", "Clay: middle 45 mm → 250 mm.", "moved a weight back", |d| {
            d.weights[0].position_mm = 250.0;
        }),
        (
            "weight added",
            "Weight added: sticky tape, 9 g, 330 mm from the nose tip.",
            "added a weight",
            |d| {
                let tape = &Example::Razorbill.design().weights[0];
                d.weights.insert(0, tape.clone());
            },
        ),
        (
            "weight removed",
            "Weight removed: clay, 20 g, 45 mm from the nose tip.",
            "took a weight off",
            |d| d.weights.clear(),
        ),
    ];
    for (label, sentence, deed, edit) in all {
        let (before, after) = edited(Example::Puffin, edit);
        let found = changes(&before, &after);
        assert_eq!(sentences(&before, &after), [sentence]);
        assert_eq!(
            (found[0].label().as_str(), found[0].past_tense().as_str()),
            (label, deed)
        );
        assert_eq!(found[0].undo(&after), before, "{label}");
    }
}

/// What follows "we", and the label, of what the list above has not.
#[test]
fn each_deed_has_its_words() {
    type Edit = fn(&mut Design);
    let fins = |root_mm, span_mm, sweep_mm| {
        move |d: &mut Design| {
            d.fins[0].planform =
                Planform::FourSided { root_mm, tip_mm: 60.0, span_mm, sweep_mm };
        }
    };
    let all: [(&str, &str, Edit); 15] = [
        ("fin number", "put on more fins", |d| d.fins[0].count = 5),
        ("fin place", "turned the fins round the body", |d| d.fins[0].roll_deg = 45.0),
        ("fin place", "moved the fins back", |d| d.fins[0].start_mm = 220.0),
        ("fins added", "added fins", |d| {
            let more = Example::Tern.design().fins.remove(0);
            d.fins.push(more);
        }),
        ("nose mass", "made the nose lighter", |d| {
            d.sections[0].mass = Mass::WeighedG(5.0);
        }),
        ("nose mass", "changed the mass of the nose", |d| {
            d.sections[0].mass = Mass::Material(Material::Paper80);
        }),
        ("bottle mass", "made the bottle heavier", |d| {
            d.sections[1].mass = Mass::WeighedG(25.0);
        }),
        ("body length", "made the body shorter", |d| d.sections[1].length_mm = 100.0),
        ("taper length", "made the taper longer", |d| d.sections[2].length_mm = 60.0),
        ("neck shape", "changed the shape of the neck", |d| {
            d.sections[2].kind = SectionKind::Neck;
        }),
        ("nose removed", "took the nose off", |d| {
            d.sections.remove(0);
        }),
        ("nose added", "added a nose", |d| with_nose(d)),
        ("weight mass", "made the weight lighter", |d| d.weights[0].mass_g = 15.0),
        ("weight place", "moved a weight forward", |d| d.weights[0].position_mm = 40.0),
        ("nose width", "made the nose narrower", |d| {
            d.sections[0].diameter_mm = Some(60.0);
        }),
    ];
    for (label, deed, edit) in all {
        let (before, after) = edited(Example::Puffin, edit);
        let found = changes(&before, &after);
        let words: Vec<_> = found.iter().map(|c| (c.label(), c.past_tense())).collect();
        assert_eq!(words, [(label.to_owned(), deed.to_owned())]);
    }
    for (root_mm, span_mm, sweep_mm, deed) in [
        (110.0, 50.0, 50.0, "made the fins smaller"),
        (112.0, 56.0, 50.0, "made the fins larger"),
        (110.0, 55.0, 70.0, "changed the shape of the fins"),
        (111.0, 55.0, 50.0, "changed the shape of the fins"),
    ] {
        let (before, after) = edited(Example::Puffin, fins(root_mm, span_mm, sweep_mm));
        assert_eq!(changes(&before, &after)[0].past_tense(), deed);
    }
}

#[test]
fn corners_and_materials_are_written_out() {
    let (four_sided, points) = edited(Example::Puffin, |d| {
        let corners = vec![[0.0, 0.0], [50.0, 40.0], [90.0, 55.0], [110.0, 0.0]];
        d.fins[0].planform = Planform::PointsMm(corners);
    });
    let said = |edit: fn(&mut Vec<[f64; 2]>)| {
        let mut after = points.clone();
        let Planform::PointsMm(corners) = &mut after.design.fins[0].planform else {
            panic!("it has corners");
        };
        edit(corners);
        sentences(&points, &after)
    };
    assert_eq!(
        sentences(&four_sided, &points),
        ["Fins: outline four-sided → 4 corners."]
    );
    assert_eq!(said(|all| all[1][0] = 45.0), ["Fins: 1 of 4 corners moved."]);
    assert_eq!(
        said(|all| {
            all.remove(2);
        }),
        ["Fins: corners 4 → 3."]
    );
    let mut bare = points.clone();
    bare.design.fins.clear();
    let whole = "4 fins, length 110 mm, span 55 mm, thick card (300 g/m²).";
    assert_eq!(sentences(&points, &bare), [format!("Fins removed: {whole}")]);
    assert_eq!(sentences(&bare, &points), [format!("Fins added: {whole}")]);
    let mut sheet = points.clone();
    sheet.design.fins[0].mass = Mass::SheetGPerM2(220.0);
    assert_eq!(
        sentences(&points, &sheet),
        ["Fins: material thick card (300 g/m²) → sheet of 220 g/m²."]
    );
}

#[test]
fn units_are_those_of_the_reader() {
    let (before, after) = edited(Example::Puffin, |d| d.weights[0].position_mm = 63.5);
    let found = changes(&before, &after);
    assert_eq!(found[0].sentence(Units::INCH), "Clay: middle 1.772 in → 2.5 in.");
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
    assert_eq!(sentences(&before, &after), ["Tube: width 65 mm → 70 mm."]);
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
    let added = "Nose added: cone, 90 mm long, 7 g. The fins and the clay moved with it.";
    assert_eq!(sentences(&before, &after), [added]);
    assert_eq!(changes(&before, &after)[0].label(), "nose added");
    assert_eq!(changes(&before, &after)[0].undo(&after), before);
    let removed =
        "Nose removed: cone, 90 mm long, 7 g. The fins and the clay moved with it.";
    assert_eq!(sentences(&after, &before), [removed]);
    assert_eq!(changes(&after, &before)[0].undo(&before), after);
    // Fins moved besides are two changes, and each goes by itself.
    let mut two = after.clone();
    two.design.fins[0].start_mm += 10.0;
    let found = changes(&before, &two);
    let moved = "Fins: start 225 mm → 235 mm.";
    assert_eq!(sentences(&before, &two), [added, moved]);
    assert_eq!(found[1].undo(&two), after);
    let bare = found[0].undo(&two);
    assert_eq!(sentences(&before, &bare), ["Fins: start 135 mm → 145 mm."]);
    // So does a weight, and fins that were taken off come back behind the nose.
    let mut other = after.clone();
    other.design.weights[0].position_mm += 30.0;
    other.design.fins.clear();
    let found = changes(&before, &other);
    assert_eq!(sentences(&before, &other)[2], "Clay: middle 110 mm → 140 mm.");
    assert_eq!(found[1].undo(&found[2].undo(&other)), after);
    other.design.weights.clear();
    let found = changes(&before, &other);
    assert_eq!(found[1].undo(&found[2].undo(&other)), after);
}

#[test]
fn a_label_is_told_as_somebody_wrote_it() {
    let mut before = Example::Puffin.design();
    before.weights[0].label = "Red putty".into();
    before.weights.push(Weight { label: "tape".into(), mass_g: 5.0, position_mm: 90.0 });
    let mut after = before.clone();
    with_nose(&mut after);
    let said = sentences(&before.into(), &after.into());
    let along = "The fins, the Red putty and the tape moved with it.";
    assert!(said[0].ends_with(along), "{said:?}");
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
    assert_eq!(found[0].moved_with_it(), ["Fins", "clay"]);
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
    let said = sentences(&before.into(), &after.into());
    assert_eq!(said[1..], ["Clay: middle 0 mm → 50 mm."]);
}

#[test]
fn fins_that_keep_their_distance_from_the_tail_follow() {
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[1].length_mm += 40.0;
        d.fins[0].start_mm += 40.0;
    });
    let found = ["Tube: length 125 mm → 165 mm. The fins moved with it."];
    assert_eq!(sentences(&before, &after), found);
    assert_eq!(changes(&before, &after)[0].undo(&after), before);
    // Typed anew, the length alone leaves readings from the nose tip as they are.
    let (before, after) = edited(Example::Puffin, |d| d.sections[1].length_mm += 40.0);
    assert_eq!(sentences(&before, &after), ["Tube: length 125 mm → 165 mm."]);
    // What keeps its distance from either end of its own section follows that end alone.
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[0].length_mm += 30.0;
        d.sections[1].length_mm += 40.0;
        d.weights[0].position_mm += 30.0;
        d.fins[0].start_mm += 30.0;
    });
    assert_eq!(
        sentences(&before, &after),
        [
            "Nose: length 120 mm → 150 mm. The fins and the clay moved with it.",
            "Tube: length 125 mm → 165 mm.",
        ]
    );
    // Fins that went elsewhere owe nothing to a nose that was made longer.
    let (before, after) = edited(Example::Puffin, |d| {
        d.sections[0].length_mm += 30.0;
        d.fins[0].start_mm = 300.0;
    });
    assert_eq!(
        sentences(&before, &after),
        ["Nose: length 120 mm → 150 mm.", "Fins: start 215 mm → 300 mm."]
    );
}

#[test]
fn a_bottle_without_its_wall_keeps_its_mass() {
    let (before, after) = edited(Example::Puffin, |d| {
        let wall = d.sections.remove(1);
        d.sections[1].mass = wall.mass;
    });
    let found = changes(&before, &after);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].label(), "body removed");
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
    let labels: Vec<_> = changes(&before, &after).iter().map(Change::label).collect();
    assert_eq!(labels, ["fin number", "fin shape", "fin mass", "fin place"]);
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
    assert_eq!(sentences(&before, &after), ["Nose: shape ellipsoid → dome."]);
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
    let labels: Vec<_> = changes(&before, &after).iter().map(Change::label).collect();
    assert_eq!(labels, ["weight removed", "weight added"]);
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
    assert_eq!(
        sentences(&before, &after),
        [
            "Swing: string 1 m → 2 m.",
            "Swing: speed 0.8 turns a second → 0.6 turns a second.",
        ]
    );
    assert_eq!(found[0].past_tense(), "made the string longer");
    assert_eq!(found[1].past_tense(), "swung slower");
    assert_eq!(changes(&before, &found[0].undo(&after)).len(), 1);
    let back = changes(&after, &before);
    assert_eq!(back[0].past_tense(), "made the string shorter");
    assert_eq!(back[1].past_tense(), "swung faster");
    let mut other = before.clone();
    other.swings.setup.arm_m = 0.5;
    other.swings.setup.air_density_kg_m3 = 1.1;
    let deeds: Vec<_> = changes(&before, &other).iter().map(Change::past_tense).collect();
    assert_eq!(deeds, ["changed the arm length", "changed the density of the air"]);
    assert_eq!(
        sentences(&before, &other)[1],
        "Swing: density of the air 1.225 kg/m³ → 1.1 kg/m³."
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
            for units in [Units::METRIC, Units::INCH] {
                prop_assert!(change.sentence(units).ends_with('.'));
            }
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
