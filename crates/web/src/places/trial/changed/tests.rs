//! What is said of each change.

use noseward_lesson::{Record, SwingOutcome, changes};
use noseward_stability::{Example, Material, Section, Weight};

use super::*;

fn said_in(before: &Record, after: &Record, units: Units) -> Vec<(String, String)> {
    let designs = [&before.design, &after.design];
    changes(before, after)
        .iter()
        .map(|change| (label(change), sentence(change, designs, units)))
        .collect()
}

/// Holds the labels and sentences between two rockets against these.
fn assert_said(before: &Record, after: &Record, expected: &[(&str, &str)]) {
    let said = said_in(before, after, Units::METRIC);
    let said: Vec<_> = said.iter().map(|(a, b)| (a.as_str(), b.as_str())).collect();
    assert_eq!(said, expected);
}

fn edited(edit: impl FnOnce(&mut Design)) -> (Record, Record) {
    let before = Record::from(Example::Puffin.design());
    let mut after = before.clone();
    edit(&mut after.design);
    (before, after)
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
fn each_change_has_a_label_and_a_sentence() {
    type Edit = fn(&mut Design);
    let all: [(&str, &str, Edit); 17] = [
        ("fin shape", "Fins: root 110 mm → 130 mm, span 55 mm → 80 mm.", |d| {
            d.fins[0].planform = Planform::FourSided {
                root_mm: 130.0,
                tip_mm: 60.0,
                span_mm: 80.0,
                sweep_mm: 50.0,
            };
        }),
        ("fin number", "Fins: number 4 → 3.", |d| d.fins[0].count = 3),
        ("fin place", "Fins: start 215 mm → 200 mm, turned 0° → 45°.", |d| {
            d.fins[0].start_mm = 200.0;
            d.fins[0].roll_deg = 45.0;
        }),
        ("fin mass", "Fins: mass thick card (300 g/m²) → 12.5 g.", |d| {
            d.fins[0].mass = Mass::WeighedG(12.5);
        }),
        (
            "fins removed",
            "Fins removed: 4 fins, root 110 mm, tip 60 mm, span 55 mm, sweep 50 mm, thick card (300 g/m²).",
            |d| d.fins.clear(),
        ),
        ("nose shape", "Nose: shape ellipsoid → dome.", |d| {
            d.sections[0].kind = SectionKind::Dome;
        }),
        ("nose mass", "Nose: mass 8 g → 12 g.", |d| {
            d.sections[0].mass = Mass::WeighedG(12.0);
        }),
        ("bottle mass", "Bottle: mass 22 g → 20 g.", |d| {
            d.sections[1].mass = Mass::WeighedG(20.0);
        }),
        ("nose length", "Nose: length 120 mm → 90 mm.", |d| {
            d.sections[0].length_mm = 90.0;
        }),
        ("body width", "Tube: width 65 mm → 70 mm.", |d| {
            d.sections[1].diameter_mm = Some(70.0);
        }),
        ("body front end", "Tube: front end closed → open.", |d| {
            d.sections[1].closed_front = false;
        }),
        ("weight mass", "Clay: mass 20 g → 35 g.", |d| d.weights[0].mass_g = 35.0),
        ("weight place", "Clay: middle 45 mm → 250 mm.", |d| {
            d.weights[0].position_mm = 250.0;
        }),
        ("weight removed", "Weight removed: clay, 20 g, 45 mm from the nose tip.", |d| {
            d.weights.clear();
        }),
        ("weight added", "Weight added: 5 g, 90 mm from the nose tip.", |d| {
            let weight = Weight { label: " ".into(), mass_g: 5.0, position_mm: 90.0 };
            d.weights.push(weight);
        }),
        ("taper length", "Taper: length 55 mm → 70 mm.", |d| {
            d.sections[2].length_mm = 70.0;
        }),
        ("neck shape", "Neck 1: shape rounded taper → neck.", |d| {
            d.sections[2].kind = SectionKind::Neck;
        }),
    ];
    for (label, sentence, edit) in all {
        let (before, after) = edited(edit);
        assert_said(&before, &after, &[(label, sentence)]);
    }
    let (closed, open) = edited(|d| d.sections[1].closed_front = false);
    assert_said(&open, &closed, &[("body front end", "Tube: front end open → closed.")]);
    let (none, wide) = edited(|d| d.sections[1].diameter_mm = None);
    let width = &said_in(&wide, &none, Units::METRIC)[0].1;
    assert_eq!(width, "Tube: width not known → 65 mm.");
    let (metric, inch) = edited(|d| d.weights[0].position_mm = 63.5);
    let sentence = &said_in(&metric, &inch, Units::INCH)[0].1;
    assert_eq!(sentence, "Clay: middle 1.772 in → 2.5 in.");
}

#[test]
fn corners_and_materials_are_written_out() {
    let (four_sided, points) = edited(|d| {
        let corners = vec![[0.0, 0.0], [50.0, 40.0], [90.0, 55.0], [110.0, 0.0]];
        d.fins[0].planform = Planform::PointsMm(corners);
    });
    let corners = |edit: fn(&mut Vec<[f64; 2]>), sentence| {
        let mut after = points.clone();
        let Planform::PointsMm(corners) = &mut after.design.fins[0].planform else {
            panic!("it has corners");
        };
        edit(corners);
        assert_said(&points, &after, &[("fin shape", sentence)]);
    };
    let outline = "Fins: outline four-sided → 4 corners.";
    assert_said(&four_sided, &points, &[("fin shape", outline)]);
    corners(|all| all[1][0] = 45.0, "Fins: 1 of 4 corners moved.");
    corners(
        |all| {
            all.remove(2);
        },
        "Fins: corners 4 → 3.",
    );
    let mut bare = points.clone();
    bare.design.fins.clear();
    let removed =
        "Fins removed: 4 fins, length 110 mm, span 55 mm, thick card (300 g/m²).";
    assert_said(&points, &bare, &[("fins removed", removed)]);
    let added = removed.replace("removed", "added");
    assert_said(&bare, &points, &[("fins added", &added)]);
    let mut sheet = points.clone();
    sheet.design.fins[0].mass = Mass::SheetGPerM2(220.0);
    let material = "Fins: material thick card (300 g/m²) → sheet of 220 g/m².";
    assert_said(&points, &sheet, &[("fin mass", material)]);
    let (card, paper) = edited(|d| d.fins[0].mass = Mass::Material(Material::Paper80));
    let material = "Fins: material thick card (300 g/m²) → printer paper (80 g/m²).";
    assert_said(&card, &paper, &[("fin mass", material)]);
}

#[test]
fn what_moved_with_a_nose_is_told_as_somebody_wrote_it() {
    let (mut before, _) = edited(|_| {});
    before.design.weights[0].label = "Red putty".into();
    let tape = Weight { label: "tape".into(), mass_g: 5.0, position_mm: 90.0 };
    before.design.weights.push(tape);
    let mut after = before.clone();
    with_nose(&mut after.design);
    let along = "90 mm long, 7 g. Moved with it: Fins, Red putty, tape.";
    let added = format!("Nose 1 added: cone, {along}");
    assert_said(&before, &after, &[("nose added", &added)]);
    let removed = format!("Nose 1 removed: cone, {along}");
    assert_said(&after, &before, &[("nose removed", &removed)]);
    // The fins were there, and are not told of by themselves.
    let mut tube = after.clone();
    tube.design.sections.remove(2);
    tube.design.sections[2].mass = after.design.sections[2].mass;
    let sentence = &said_in(&after, &tube, Units::METRIC)[0];
    assert_eq!(
        (sentence.0.as_str(), sentence.1.as_str()),
        ("body removed", "Tube removed: 125 mm long, 22 g.")
    );
}

#[test]
fn how_a_rocket_is_swung_is_written_with_its_unit() {
    let [mut before, mut after] = [0, 1].map(|_| Record::from(Example::Tern.design()));
    let setup = &mut after.swings.setup;
    setup.string_m = 2.0;
    setup.arm_m = 0.5;
    setup.turns_per_s = 1.0;
    setup.air_density_kg_m3 = 1.1;
    for record in [&mut before, &mut after] {
        record.swings.add(SwingOutcome::Wobbling);
    }
    assert_said(
        &before,
        &after,
        &[
            ("string length", "Swing: string 1 m → 2 m."),
            ("arm length", "Swing: arm 0.7 m → 0.5 m."),
            ("speed of the swing", "Swing: speed 0.8 turns a second → 1 turn a second."),
            ("density of the air", "Swing: density of the air 1.225 kg/m³ → 1.1 kg/m³."),
        ],
    );
}
