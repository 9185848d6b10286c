//! Random designs and records on the grid, within the hard bounds.

use noseward_lesson::{MOST_OUTCOMES, Record, SwingOutcome, Swings};
use noseward_stability::{
    Design, Example, FinSet, Mass, Material, Measured, Planform, Quantity, Section,
    SectionKind, SwingField, SwingSetup, Weight, limits,
};
use proptest::collection::vec;
use proptest::prelude::*;

/// Whole steps of a quantity from `least` to `most`, with the ends more often than
/// chance would have them.
fn number(quantity: Quantity, least: f64, most: f64) -> impl Strategy<Value = f64> {
    prop_oneof![
        1 => Just(least),
        1 => Just(most),
        4 => least..=most,
        4 => least..=most.min(least + (most - least) / 50.0),
    ]
    .prop_map(move |value| quantity.rounded(value))
}

fn mm(least: f64, most: f64) -> impl Strategy<Value = f64> {
    number(Quantity::Length, least, most)
}

fn grams(least: f64) -> impl Strategy<Value = f64> {
    number(Quantity::Mass, least, limits::MASS_G)
}

fn mass() -> impl Strategy<Value = Mass> {
    let (thin, thick) = limits::SHEET_G_PER_M2;
    prop_oneof![
        3 => grams(0.0).prop_map(Mass::WeighedG),
        2 => prop::sample::select(&Material::ALL[..]).prop_map(Mass::Material),
        1 => number(Quantity::ArealDensity, thin, thick).prop_map(Mass::SheetGPerM2),
        1 => Just(Mass::Joined),
    ]
}

fn text() -> impl Strategy<Value = String> {
    prop_oneof![Just(String::new()), "[ -~]{0,24}", "\\PC{0,12}"]
}

fn section() -> impl Strategy<Value = Section> {
    let (narrow, wide) = limits::DIAMETER_MM;
    let kind = prop::sample::select(&SectionKind::ALL[..]);
    let length = mm(1.0, limits::LENGTH_MM);
    let diameter = prop::option::of(mm(narrow, wide));
    (kind, length, diameter, any::<bool>(), mass()).prop_map(
        |(kind, length_mm, diameter_mm, closed_front, mass)| Section {
            kind,
            length_mm,
            diameter_mm,
            closed_front,
            mass,
        },
    )
}

fn planform() -> impl Strategy<Value = Planform> {
    let reach = limits::FIN_REACH_MM;
    let corner =
        (mm(-reach, reach), mm(0.0, reach)).prop_map(|(along, out)| [along, out]);
    let (fewest, most) = limits::FIN_POINTS;
    prop_oneof![
        (mm(1.0, reach), mm(0.0, reach), mm(1.0, reach), mm(-reach, reach)).prop_map(
            |(root_mm, tip_mm, span_mm, sweep_mm)| Planform::FourSided {
                root_mm,
                tip_mm,
                span_mm,
                sweep_mm
            }
        ),
        vec(corner, fewest..=most).prop_map(Planform::PointsMm),
    ]
}

fn fin_set() -> impl Strategy<Value = FinSet> {
    let count = limits::FIN_COUNT.0..=limits::FIN_COUNT.1;
    let roll = number(Quantity::Angle, -360.0, 360.0);
    (count, mm(0.0, limits::LENGTH_MM), roll, planform(), mass()).prop_map(
        |(count, start_mm, roll_deg, planform, mass)| FinSet {
            count,
            start_mm,
            roll_deg,
            planform,
            mass,
        },
    )
}

fn weight() -> impl Strategy<Value = Weight> {
    (text(), grams(0.0), mm(0.0, limits::LENGTH_MM))
        .prop_map(|(label, mass_g, position_mm)| Weight { label, mass_g, position_mm })
}

/// Designs with counts and numbers within bounds; their parts need not fit together, and
/// the body may be empty.
pub(crate) fn design() -> impl Strategy<Value = Design> {
    let measured =
        (prop::option::of(grams(0.1)), prop::option::of(mm(0.0, limits::LENGTH_MM)));
    let measured = measured.prop_map(|(total_mass_g, _)| Measured { total_mass_g });
    (
        text(),
        vec(section(), 0..=limits::SECTIONS),
        vec(fin_set(), 0..=limits::FIN_SETS),
        vec(weight(), 0..=limits::WEIGHTS),
        measured,
    )
        .prop_map(|(name, sections, fins, weights, measured)| Design {
            name,
            sections,
            fins,
            weights,
            measured,
        })
        .prop_map(Design::cleaned)
}

fn setup() -> impl Strategy<Value = SwingSetup> {
    let value = |field: SwingField| {
        let (least, most) = field.bounds();
        prop_oneof![1 => Just(least), 1 => Just(most), 4 => least..=most]
    };
    (SwingField::ALL.map(value)).prop_map(|values| {
        let mut setup = SwingSetup::default();
        for (field, value) in SwingField::ALL.into_iter().zip(values) {
            field.set(&mut setup, value);
        }
        setup
    })
}

/// Swings on the grid, at least one.
fn swings() -> impl Strategy<Value = Swings> {
    let outcome = prop_oneof![
        1 => Just(SwingOutcome::Slipped),
        1 => prop::sample::select(&SwingOutcome::ALL[..]),
    ];
    (setup(), vec(outcome, 1..=MOST_OUTCOMES)).prop_map(|(setup, outcomes)| {
        let mut swings = Swings::new(setup, []).expect("none is not too many");
        for outcome in outcomes {
            // Where three count already, the rest is left out.
            swings.add(outcome);
        }
        swings.rounded()
    })
}

/// A [`design`], and in two of three cases swings.
pub(crate) fn record() -> impl Strategy<Value = Record> {
    (design(), prop::option::weighted(2.0 / 3.0, swings())).prop_map(
        |(design, swings)| Record { design, swings: swings.unwrap_or_default() },
    )
}

/// The examples, each alone and with swings.
pub(crate) fn examples() -> Vec<Record> {
    use SwingOutcome::{NotSure, Sideways, Slipped, Steady, TailFirst, Wobbling};
    let setup = SwingSetup {
        string_m: 2.35,
        arm_m: 0.62,
        turns_per_s: 1.15,
        air_density_kg_m3: 1.105,
    };
    let swung: [&[SwingOutcome]; 4] = [
        &[Slipped, Steady, Slipped, Wobbling, Slipped, NotSure],
        &[TailFirst],
        &[Sideways, Slipped],
        &[Steady, Steady, Steady],
    ];
    let alone = Example::ALL.map(|example| Record::from(example.design()));
    let swung =
        alone.clone().into_iter().zip(swung).zip(0..).map(|((record, outcomes), i)| {
            let setup = if i % 2 == 0 { setup } else { SwingSetup::default() };
            let swings = Swings::new(setup, outcomes.iter().copied());
            Record { swings: swings.expect("no more than there can be"), ..record }
        });
    let mut examples = alone.to_vec();
    examples.extend(swung);
    examples
}
