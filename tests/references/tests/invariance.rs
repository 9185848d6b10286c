//! Changes that must not matter, or must matter in a known way, on random designs.
//!
//! Every property follows from geometry and the parallel-axis rule; no source needed.

use noseward_references_tests::{assert_close, figures, four_sided};
use noseward_stability::{
    Design, Example, Field, Figures, FinSet, Mass, Material, Measured, Planform,
    Quantity, Section, SectionKind, Severity, Weight, evaluate,
};
use proptest::collection::vec;
use proptest::prelude::{
    Just, ProptestConfig, Strategy, any, prop_assert, prop_assert_eq, prop_oneof,
    proptest,
};
use proptest::sample::{Index, select};

/// The same sums in another order, and cosines of angles that differ in the last bit.
const ROUNDING: f64 = 1e-11;
/// The same through quadrature at two sizes. It is asked for 1e-12, but its stopping rule
/// depends on the size of the numbers and lets a few 1e-8 by: `inertia_shapes.rs` has the
/// test that asks for more.
const SCALED: f64 = 1e-9;

/// What a random design may begin with: the dome, which has a longest length, is left out.
const FIRST: [SectionKind; 5] = [
    SectionKind::Cone,
    SectionKind::Ogive,
    SectionKind::Ellipsoid,
    SectionKind::Paraboloid,
    SectionKind::Tube,
];
/// What may follow: sections without a curve.
const STRAIGHT: [SectionKind; 2] = [SectionKind::Tube, SectionKind::StraightTaper];

/// Random cases by property; no file of past failures is written beside the tests.
fn config(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() }
}

fn sheet() -> impl Strategy<Value = Mass> {
    prop_oneof![
        select(&Material::ALL[..]).prop_map(Mass::Material),
        (60.0..900.0).prop_map(Mass::SheetGPerM2),
    ]
}

fn nose() -> impl Strategy<Value = Section> {
    (select(&FIRST[..]), 20.0..50.0, 10.0..35.0, sheet()).prop_map(
        |(kind, length_mm, width_mm, mass)| Section {
            kind,
            length_mm,
            diameter_mm: Some(width_mm),
            closed_front: kind == SectionKind::Tube,
            mass,
        },
    )
}

fn straight() -> impl Strategy<Value = Section> {
    (select(&STRAIGHT[..]), 10.0..40.0, 10.0..40.0, sheet(), any::<bool>()).prop_map(
        |(kind, length_mm, width_mm, mass, closed_front)| Section {
            kind,
            length_mm,
            diameter_mm: Some(width_mm),
            closed_front,
            mass,
        },
    )
}

fn planform() -> impl Strategy<Value = Planform> {
    let sides = (10.0..60.0, 0.0..50.0, 10.0..50.0, 0.0..30.0);
    let edge = vec((1.0..8.0, 3.0..50.0), 2..10);
    prop_oneof![
        sides.prop_map(|(root, tip, span, sweep)| four_sided(root, tip, span, sweep)),
        // A ragged outer edge that runs rearwards, so that it cannot cross itself.
        edge.prop_map(|steps| {
            let mut along = 0.0;
            let mut points = vec![[0.0, 0.0]];
            for (step, out) in steps {
                along += step;
                points.push([along, out]);
            }
            points.push([along + 3.0, 0.0]);
            Planform::PointsMm(points)
        }),
    ]
}

/// Fins that start somewhere on the straight part of the body: `place` is a share of it.
fn set() -> impl Strategy<Value = (f64, FinSet)> {
    (0.01..0.95, 2_u32..=8, -360.0..360.0, planform(), sheet()).prop_map(
        |(place, count, roll_deg, planform, mass)| {
            (place, FinSet { count, start_mm: 0.0, roll_deg, planform, mass })
        },
    )
}

/// A design without faults that stop it, small enough to be made ten times larger, and
/// with no fin beside a curved section, which is the one place where the flattening of the
/// outline, a fixed length, enters the figures.
fn design() -> impl Strategy<Value = Design> {
    (nose(), vec(straight(), 1..4), vec(set(), 0..3), vec((0.1..1.0, 0.2..50.0), 0..5))
        .prop_map(|(nose, straights, sets, weights)| {
            let nose_mm = nose.length_mm;
            let straight_mm: f64 = straights.iter().map(|s| s.length_mm).sum();
            let sections = std::iter::once(nose).chain(straights).collect();
            let fins = sets.into_iter().map(|(place, mut set)| {
                set.start_mm = nose_mm + place * straight_mm;
                set
            });
            let weights = weights.into_iter().map(|(place, mass_g)| Weight {
                label: String::new(),
                mass_g,
                position_mm: 0.99 * place * (nose_mm + straight_mm),
            });
            Design {
                name: String::new(),
                sections,
                fins: fins.collect(),
                weights: weights.collect(),
                measured: Measured::default(),
            }
        })
}

/// All lengths times `times`; sheets stay the same, so that every mass goes with the area.
fn scaled(design: &Design, times: f64) -> Design {
    let mut design = design.clone();
    for section in &mut design.sections {
        section.length_mm *= times;
        section.diameter_mm = section.diameter_mm.map(|mm| mm * times);
    }
    for set in &mut design.fins {
        set.start_mm *= times;
        set.planform = match &set.planform {
            &Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } => four_sided(
                root_mm * times,
                tip_mm * times,
                span_mm * times,
                sweep_mm * times,
            ),
            Planform::PointsMm(points) => Planform::PointsMm(
                points.iter().map(|[a, o]| [a * times, o * times]).collect(),
            ),
        };
    }
    for weight in &mut design.weights {
        weight.position_mm *= times;
        weight.mass_g *= times * times;
    }
    design
}

/// Both figures are of the same rocket.
#[track_caller]
fn assert_same(a: &Figures, b: &Figures, relative: f64) {
    let size = a.length_m.max(b.length_m);
    let place = |what: &str, x: f64, y: f64| {
        assert!((x - y).abs() <= relative * size, "{what}: {x} {y}");
    };
    assert_close("area", a.side_area_m2, b.side_area_m2, relative);
    place("CP", a.centre_of_pressure_side_on_m, b.centre_of_pressure_side_on_m);
    place("CM", a.mass.centre_m, b.mass.centre_m);
    assert_close("mass", a.mass.mass_kg, b.mass.mass_kg, relative);
    let inertia =
        |f: &Figures| [f.mass.axial_inertia_kg_m2, f.mass.transverse_inertia_kg_m2];
    for (x, y) in inertia(a).into_iter().zip(inertia(b)) {
        assert_close("inertia", x, y, relative);
    }
    assert_eq!(a.length_m, b.length_m);
    assert_eq!(a.body_width_m, b.body_width_m);
}

proptest! {
    #![proptest_config(config(256))]

    /// Lengths go with the scale, areas and masses with its square, inertia with its
    /// fourth power; what is counted in body widths stays.
    #[test]
    fn scale(design in design(), times in select(&[10.0, 0.1][..])) {
        let (a, b) = (figures(&design), figures(&scaled(&design, times)));
        let times2 = times * times;
        let close = |what, found: f64, expected: f64| {
            assert_close(what, found, expected, SCALED);
        };
        close("length", b.length_m, a.length_m * times);
        close("width", b.body_width_m, a.body_width_m * times);
        close("area", b.side_area_m2, a.side_area_m2 * times2);
        let cp = |f: &Figures| f.centre_of_pressure_side_on_m;
        close("CP", cp(&b), cp(&a) * times);
        close("mass", b.mass.mass_kg, a.mass.mass_kg * times2);
        close("CM", b.mass.centre_m, a.mass.centre_m * times);
        let times4 = times2 * times2;
        let axial = |f: &Figures| f.mass.axial_inertia_kg_m2;
        close("axial inertia", axial(&b), axial(&a) * times4);
        let transverse = |f: &Figures| f.mass.transverse_inertia_kg_m2;
        close("transverse inertia", transverse(&b), transverse(&a) * times4);
        // A difference: compared with the length in body widths, not with itself.
        let off = (b.separation_body_widths - a.separation_body_widths).abs();
        prop_assert!(off <= SCALED * a.length_m / a.body_width_m, "{off:e}");
    }

    /// Seen from the other side, right and left change places.
    #[test]
    fn mirror(design in design()) {
        let mut mirrored = design.clone();
        for set in &mut mirrored.fins {
            // Held within a turn either way, as the bounds ask.
            set.roll_deg = (180.0 - set.roll_deg) % 360.0;
        }
        assert_same(&figures(&design), &figures(&mirrored), ROUNDING);
    }

    /// Every fin takes its neighbour's place.
    #[test]
    fn turning_a_set_by_one_fin(design in design(), steps in 1_u32..8) {
        let mut turned = design.clone();
        for set in &mut turned.fins {
            let step = 360.0 / f64::from(set.count);
            set.roll_deg = (set.roll_deg + step * f64::from(steps)) % 360.0;
        }
        assert_same(&figures(&design), &figures(&turned), ROUNDING);
    }

    #[test]
    fn order_of_weights_and_fin_sets(design in design()) {
        let mut reversed = design.clone();
        reversed.weights.reverse();
        reversed.fins.reverse();
        assert_same(&figures(&design), &figures(&reversed), ROUNDING);
    }

    /// One weight or the same in two lumps at the same place.
    #[test]
    fn a_weight_in_two_lumps(design in design(), share in 0.1..0.9) {
        let mut split = design.clone();
        let lumps = |w: &Weight| [share, 1.0 - share].map(|s| Weight {
            mass_g: w.mass_g * s,
            ..w.clone()
        });
        split.weights = design.weights.iter().flat_map(lumps).collect();
        assert_same(&figures(&design), &figures(&split), ROUNDING);
    }

    /// A tube cut in two is the same tube.
    #[test]
    fn a_tube_in_two_pieces(design in design(), share in 0.3..0.7) {
        let mut cut = design.clone();
        for i in (0..design.sections.len()).rev() {
            let whole = &design.sections[i];
            if whole.kind == SectionKind::Tube && whole.length_mm > 10.0 {
                let mut rear = whole.clone();
                rear.length_mm *= 1.0 - share;
                rear.closed_front = false;
                cut.sections[i].length_mm *= share;
                cut.sections.insert(i + 1, rear);
            }
        }
        let (a, b) = (figures(&design), figures(&cut));
        let relative = ROUNDING;
        assert_close("area", a.side_area_m2, b.side_area_m2, relative);
        assert_close("mass", a.mass.mass_kg, b.mass.mass_kg, relative);
        assert_close("CM", a.mass.centre_m, b.mass.centre_m, relative);
        let transverse = |f: &Figures| f.mass.transverse_inertia_kg_m2;
        assert_close("inertia", transverse(&a), transverse(&b), relative);
    }

    /// The grid that links store is a fixed point, and near what was typed.
    #[test]
    fn rounding_twice_is_rounding_once(design in design()) {
        let once = design.clone().rounded();
        prop_assert_eq!(&once.clone().rounded(), &once);
        let (a, b) = (figures(&design), figures(&once));
        // Half a step of 0.1 mm on each section adds up to less than this.
        prop_assert!((a.length_m - b.length_m).abs() <= 0.05e-3 * 5.0);
    }
}

/// Numbers that nobody should type, and some that anybody might.
fn garbage() -> impl Strategy<Value = f64> {
    prop_oneof![
        3 => -10.0..600.0,
        1 => proptest::num::f64::ANY,
        1 => select(&[
            0.0, -0.0, 1.0, -1.0, 1e-300, 1e300, -1e300, f64::MAX, f64::MIN,
            f64::MIN_POSITIVE, f64::EPSILON, f64::NAN, f64::INFINITY, f64::NEG_INFINITY,
        ][..]),
    ]
}

fn garbage_mass() -> impl Strategy<Value = Mass> {
    prop_oneof![
        garbage().prop_map(Mass::WeighedG),
        garbage().prop_map(Mass::SheetGPerM2),
        select(&Material::ALL[..]).prop_map(Mass::Material),
        Just(Mass::Joined),
    ]
}

fn garbage_section() -> impl Strategy<Value = Section> {
    let width = proptest::option::of(garbage());
    (select(&SectionKind::ALL[..]), garbage(), width, any::<bool>(), garbage_mass())
        .prop_map(|(kind, length_mm, diameter_mm, closed_front, mass)| Section {
            kind,
            length_mm,
            diameter_mm,
            closed_front,
            mass,
        })
}

fn garbage_set() -> impl Strategy<Value = FinSet> {
    let point = (garbage(), garbage()).prop_map(|(a, o)| [a, o]);
    let planform = prop_oneof![
        (garbage(), garbage(), garbage(), garbage())
            .prop_map(|(root, tip, span, sweep)| four_sided(root, tip, span, sweep)),
        vec(point, 0..30).prop_map(Planform::PointsMm),
    ];
    let count = prop_oneof![0_u32..12, any::<u32>()];
    (count, garbage(), garbage(), planform, garbage_mass()).prop_map(
        |(count, start_mm, roll_deg, planform, mass)| FinSet {
            count,
            start_mm,
            roll_deg,
            planform,
            mass,
        },
    )
}

/// Anything at all.
fn anything() -> impl Strategy<Value = Design> {
    let weight = ("\\PC{0,30}", garbage(), garbage())
        .prop_map(|(label, mass_g, position_mm)| Weight { label, mass_g, position_mm });
    let measured = proptest::option::of(garbage());
    (
        "\\PC{0,30}",
        vec(garbage_section(), 0..15),
        vec(garbage_set(), 0..6),
        vec(weight, 0..15),
        measured,
    )
        .prop_map(|(name, sections, fins, weights, total)| Design {
            name,
            sections,
            fins,
            weights,
            measured: Measured { total_mass_g: total },
        })
}

/// A rocket that makes sense but for one to three of its numbers or kinds.
fn nearly_right() -> impl Strategy<Value = Design> {
    let sound =
        prop_oneof![design(), select(&Example::ALL[..]).prop_map(Example::design),];
    let slip = (any::<Index>(), garbage());
    let kind = proptest::option::of((any::<Index>(), select(&SectionKind::ALL[..])));
    (sound, vec(slip, 0..4), kind).prop_map(|(mut design, slips, kind)| {
        for (which, value) in slips {
            let numbers = Field::numbers(&design);
            let field = numbers[which.index(numbers.len())];
            // A count that is no whole number is refused, which is fine here.
            let _ = field.set(&mut design, Some(value));
        }
        if let Some((which, kind)) = kind {
            let at = which.index(design.sections.len());
            design.sections[at].kind = kind;
        }
        design
    })
}

/// Keys that are null where there is next to no force, as the report's types say.
const MAY_BE_NULL: [&str; 2] = ["centre_of_pressure_nose_on_m", "nose_on_centre_m"];

/// JSON has no word for a number that is not finite: such a one is written as null.
fn has_null(value: &serde_json::Value) -> bool {
    match value {
        serde_json::Value::Null => true,
        serde_json::Value::Array(list) => list.iter().any(has_null),
        serde_json::Value::Object(map) => map.iter().any(|(key, inside)| {
            !(MAY_BE_NULL.contains(&key.as_str()) && inside.is_null()) && has_null(inside)
        }),
        serde_json::Value::Bool(_)
        | serde_json::Value::Number(_)
        | serde_json::Value::String(_) => false,
    }
}

/// Never a panic, and either a fault that stops or figures that are numbers.
fn assert_answered(design: &Design) {
    let report = evaluate(design);
    let stopped = report.faults.iter().any(|f| f.severity() == Severity::Stop);
    assert_eq!(stopped, report.figures.is_none(), "{:?}", report.faults);
    if let Some(figures) = &report.figures {
        let json = serde_json::to_value(figures).expect("figures can be written");
        assert!(!has_null(&json), "{json}");
        assert!(figures.side_area_m2 > 0.0 && figures.mass.mass_kg > 0.0);
        assert!(figures.computed_mass.mass_kg > 0.0);
    }
    let faults = serde_json::to_value(&report.faults).expect("faults can be written");
    assert!(!has_null(&faults), "{faults}");
}

/// One fault a field is enough, as `check` says.
#[test]
fn a_measured_field_has_one_fault() {
    let mut design = Example::Puffin.design();
    design.measured.total_mass_g = Some(700.0);
    let faults = evaluate(&design).faults;
    assert_eq!(faults.len(), 1, "{faults:?}");
}

/// Every number is written with as many digits as tell its bits.
fn bits(design: &Design) -> String {
    format!("{:?}", evaluate(design))
}

proptest! {
    #![proptest_config(config(2000))]

    #[test]
    fn anything_is_answered(design in anything()) {
        assert_answered(&design);
    }

    #[test]
    fn nearly_right_is_answered(design in nearly_right()) {
        assert_answered(&design);
    }

    #[test]
    fn the_same_design_gives_the_same_bits(design in nearly_right()) {
        prop_assert_eq!(bits(&design), bits(&design.clone()));
    }

    /// Any number within a thousand times a thousand kilometres, NaN and infinities too:
    /// written out, since NaN does not equal itself.
    #[test]
    fn rounding_any_number_twice_is_rounding_it_once(
        value in prop_oneof![
            -1e12..1e12,
            select(&[f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -0.0, 1e-300][..]),
        ],
    ) {
        assert_rounding_settles(value);
    }

    #[test]
    fn rounding_huge_numbers_twice_is_rounding_them_once(value in proptest::num::f64::ANY) {
        assert_rounding_settles(value);
    }
}

fn assert_rounding_settles(value: f64) {
    let quantities = [
        Quantity::Count,
        Quantity::Length,
        Quantity::Mass,
        Quantity::Angle,
        Quantity::ArealDensity,
    ];
    for quantity in quantities {
        let once = quantity.rounded(value);
        let twice = quantity.rounded(once);
        assert_eq!(format!("{twice:?}"), format!("{once:?}"), "{quantity:?} {value:e}");
        assert_eq!(once.is_finite(), value.is_finite(), "{quantity:?} {value:e}");
    }
}
