//! What every class finds out about the two points of a rocket.
//!
//! All of it is common practice, no source. Here are the facts about the centre of mass
//! (CM) and the centre of pressure side-on (CP). Those about swinging and flying come with
//! the parts that work them out: tumbling below 10 mm, the quicker turn of a larger
//! separation, and the one to two calibres that are usually aimed for.

use noseward_references_tests::{assert_within, body, figures, four_sided};
use noseward_stability::{
    BottleSize, Design, Example, Figures, Mass, Material, Planform, Section, SectionKind,
    SideView, Weight,
};

/// A change that a ruler can tell, in metres. Facts about a direction ask for this much.
const TELLING_M: f64 = 0.5e-3;
/// Where two ways of computing the same centre may differ, in metres: the drawn outline
/// is flattened, the CP is not.
const FLATTENING_M: f64 = 3e-5;

/// The four examples, and each bottle with a paper nose and three fins at its tail.
fn rockets() -> Vec<Design> {
    let examples = Example::ALL.map(Example::design);
    let bottles = BottleSize::ALL.map(|size| {
        let mut design = size.design();
        design.name = format!("{size:?}");
        let nose = Section {
            kind: SectionKind::Ellipsoid,
            length_mm: 100.0,
            diameter_mm: None,
            closed_front: false,
            mass: Mass::Material(Material::Card160),
        };
        design.sections.insert(0, nose);
        design.fins = Example::Puffin.design().fins;
        design.fins[0].count = 3;
        design
    });
    examples.into_iter().chain(bottles).collect()
}

fn nose_mm(design: &Design) -> f64 {
    design.sections[0].length_mm
}

fn cp(figures: &Figures) -> f64 {
    figures.centre_of_pressure_side_on_m
}

fn cm(figures: &Figures) -> f64 {
    figures.mass.centre_m
}

/// A copy with a change.
fn with(design: &Design, change: impl FnOnce(&mut Design)) -> Figures {
    let mut changed = design.clone();
    change(&mut changed);
    figures(&changed)
}

fn fins_larger(design: &mut Design, times: f64) {
    for set in &mut design.fins {
        let Planform::FourSided { root_mm, tip_mm, span_mm, sweep_mm } = set.planform
        else {
            panic!("the examples have four-sided fins")
        };
        let front = -root_mm * (times - 1.0);
        set.start_mm = (set.start_mm + front).max(0.0);
        set.planform = four_sided(
            root_mm * times,
            tip_mm * times,
            span_mm * times,
            sweep_mm * times,
        );
    }
}

/// Common practice, no source: weight in the nose moves the CM forward and leaves the CP
/// where it was.
#[test]
fn weight_in_the_nose_moves_the_centre_of_mass_only() {
    for rocket in rockets() {
        let mut before = figures(&rocket);
        for grams in [2.0, 10.0, 40.0] {
            let after = with(&rocket, |d| {
                d.weights.push(Weight {
                    label: "modelling clay".into(),
                    mass_g: grams,
                    position_mm: 0.6 * nose_mm(d),
                });
            });
            assert!(cm(&after) < cm(&before) - TELLING_M, "{}", rocket.name);
            assert_eq!(cp(&after).to_bits(), cp(&before).to_bits(), "{}", rocket.name);
            assert!(after.separation_m > before.separation_m);
            before = after;
        }
    }
}

/// Common practice, no source: mass alone never moves the CP, however it is known.
#[test]
fn mass_alone_never_moves_the_centre_of_pressure() {
    type Change = fn(&mut Design);
    let changes: [Change; 7] = [
        |d| d.sections[0].mass = Mass::WeighedG(60.0),
        |d| d.sections[1].mass = Mass::SheetGPerM2(900.0),
        |d| d.fins[0].mass = Mass::WeighedG(80.0),
        |d| d.fins[0].mass = Mass::Material(Material::CorrugatedPlastic),
        |d| d.weights.clear(),
        |d| d.measured.total_mass_g = Some(300.0),
        |d| {
            let label = String::new();
            d.weights.push(Weight { label, mass_g: 30.0, position_mm: 40.0 });
        },
    ];
    for rocket in rockets() {
        let before = figures(&rocket);
        let mut moved = 0;
        for change in changes {
            let after = with(&rocket, change);
            assert_eq!(cp(&after).to_bits(), cp(&before).to_bits(), "{}", rocket.name);
            assert_eq!(after.side_area_m2.to_bits(), before.side_area_m2.to_bits());
            moved += usize::from((cm(&after) - cm(&before)).abs() > TELLING_M);
        }
        // The changes are real ones: most of them do move the CM.
        assert!(moved >= 4, "{}: {moved}", rocket.name);
    }
}

/// Common practice, no source: changing the outline (fins, length, nose shape) moves the
/// CP.
#[test]
fn the_outline_moves_the_centre_of_pressure() {
    type Change = fn(&mut Design);
    let changes: [(&str, Change); 5] = [
        ("no fins", |d| d.fins.clear()),
        ("a longer tube", |d| {
            d.sections[1].length_mm += 60.0;
        }),
        ("a longer nose", |d| d.sections[0].length_mm += 40.0),
        ("a stepped nose", |d| {
            d.sections[0].kind = SectionKind::Tube;
            d.sections[0].diameter_mm = d.sections[1].diameter_mm;
        }),
        ("larger fins", |d| fins_larger(d, 1.3)),
    ];
    for rocket in rockets() {
        let before = figures(&rocket);
        for (name, change) in changes {
            let after = with(&rocket, change);
            let moved = (cp(&after) - cp(&before)).abs();
            assert!(moved > TELLING_M, "{}, {name}: {moved}", rocket.name);
        }
    }
}

/// Common practice, no source: a blunter nose has more of its area in front, so the CP
/// moves forward from cone to parabola to half ellipse.
#[test]
fn a_blunter_nose_moves_the_centre_of_pressure_forward() {
    let blunter = [SectionKind::Cone, SectionKind::Paraboloid, SectionKind::Ellipsoid];
    for rocket in rockets() {
        let places =
            blunter.map(|kind| cp(&with(&rocket, |d| d.sections[0].kind = kind)));
        assert!(places[0] > places[1] && places[1] > places[2], "{}", rocket.name);
    }
}

/// Common practice, no source: fins moved further aft move the CP aft.
#[test]
fn fins_further_aft_move_the_centre_of_pressure_aft() {
    for rocket in rockets() {
        // Along the straight wall only: on a shoulder a fin also comes nearer the axis.
        let from = nose_mm(&rocket);
        let root = 40.0;
        let to = from + rocket.sections[1].length_mm - root;
        let places: Vec<Figures> = (0..=4)
            .map(|i| {
                with(&rocket, |d| {
                    d.fins[0].planform = four_sided(root, 20.0, 35.0, 20.0);
                    d.fins[0].start_mm = from + (to - from) * f64::from(i) / 4.0;
                })
            })
            .collect();
        for pair in places.windows(2) {
            assert!(cp(&pair[1]) > cp(&pair[0]) + TELLING_M, "{}", rocket.name);
            // The fins weigh, so the CM follows, but less.
            assert!(cm(&pair[1]) > cm(&pair[0]), "{}", rocket.name);
        }
    }
}

/// Common practice, no source: much larger fins move the CP aft and the CM with it, since
/// they weigh; heavy enough, they undo the gain.
#[test]
fn heavy_fins_can_undo_what_large_fins_gain() {
    for rocket in rockets() {
        let light = |d: &mut Design| d.fins[0].mass = Mass::Material(Material::Paper80);
        let before = with(&rocket, light);
        let larger = with(&rocket, |d| {
            light(d);
            fins_larger(d, 1.6);
        });
        assert!(cp(&larger) > cp(&before) + TELLING_M, "{}", rocket.name);
        assert!(cm(&larger) > cm(&before) + TELLING_M, "{}", rocket.name);
        assert!(larger.separation_m > before.separation_m, "{}: a gain", rocket.name);
        let heavier = with(&rocket, |d| {
            d.fins[0].mass = Mass::SheetGPerM2(5000.0);
            fins_larger(d, 1.6);
        });
        assert_eq!(cp(&heavier).to_bits(), cp(&larger).to_bits());
        assert!(cm(&heavier) > cm(&larger) + TELLING_M, "{}", rocket.name);
        assert!(heavier.separation_m < before.separation_m, "{}: undone", rocket.name);
    }
}

/// Common practice, no source: cutting half of the length off every fin takes a rocket
/// towards tumbling. Here its part: the separation shrinks.
#[test]
fn half_the_fins_leave_less_separation() {
    for rocket in rockets() {
        // Fins of card, so that what is lost in outline outweighs what is lost in mass.
        let card = |d: &mut Design| d.fins[0].mass = Mass::Material(Material::Paper80);
        let before = with(&rocket, card);
        let halved = with(&rocket, |d| {
            card(d);
            if let Planform::FourSided { tip_mm, span_mm, sweep_mm, root_mm } =
                &mut d.fins[0].planform
            {
                // Cut across the middle of the span.
                *tip_mm = f64::midpoint(*tip_mm, *root_mm);
                *span_mm /= 2.0;
                *sweep_mm /= 2.0;
            }
        });
        let lost_m = before.separation_m - halved.separation_m;
        assert!(lost_m > TELLING_M, "{}: {lost_m}", rocket.name);
    }
}

/// Common practice, no source: balancing the rocket itself finds the CM: about it the
/// parts' weights hold each other level, and about no other place.
#[test]
fn balancing_the_rocket_finds_the_centre_of_mass() {
    for rocket in rockets() {
        let found = figures(&rocket);
        let turning = |about: f64| -> f64 {
            found.parts.iter().map(|p| p.mass.mass_kg * (p.mass.centre_m - about)).sum()
        };
        let reach = found.mass.mass_kg * found.length_m;
        assert!(turning(cm(&found)).abs() < 1e-12 * reach, "{}", rocket.name);
        assert!(turning(cm(&found) - TELLING_M) > 1e-4 * reach);
        assert!(turning(cm(&found) + TELLING_M) < -1e-4 * reach);
    }
}

/// Common practice, no source: only the cut-out outline finds the CP. The card is hung
/// from a place on its axis and its weight on either side is added up, slice by slice.
#[test]
fn balancing_the_cut_out_finds_the_centre_of_pressure() {
    for rocket in rockets() {
        let found = figures(&rocket);
        let card = SideView::new(&rocket, &body(&rocket)).union();
        let (mut area, mut first) = (0.0, 0.0);
        for piece in &card {
            for ring in std::iter::once(piece.exterior()).chain(piece.interiors()) {
                // One slice between each edge and the axis: a trapezium, its sign by the
                // way it runs.
                for edge in ring.lines() {
                    let (a, b) = (edge.start, edge.end);
                    let slice = (a.x - b.x) * (a.y + b.y) / 2.0;
                    let moment = (a.x - b.x)
                        * (a.y * (2.0 * a.x + b.x) + b.y * (a.x + 2.0 * b.x))
                        / 6.0;
                    area += slice;
                    first += moment;
                }
            }
        }
        assert!(area > 0.0, "rings run round the card");
        assert_within(&rocket.name, first / area, cp(&found), FLATTENING_M);
        // The rocket itself balances somewhere else, so the card is needed.
        let apart = (cm(&found) - cp(&found)).abs();
        assert!(apart > FLATTENING_M, "{}: {apart}", rocket.name);
    }
}

/// Common practice, no source: folding every fin flat against the body, or turning two of
/// them edge-on, takes them out of the outline but not off the scales.
#[test]
fn fins_seen_edge_on_weigh_but_do_not_show() {
    for rocket in rockets() {
        let shown = with(&rocket, |d| d.fins[0].count = 2);
        let hidden = with(&rocket, |d| {
            d.fins[0].count = 2;
            d.fins[0].roll_deg = 90.0;
        });
        let none = with(&rocket, |d| d.fins.clear());
        assert_eq!(hidden.side_area_m2.to_bits(), none.side_area_m2.to_bits());
        assert_eq!(hidden.mass, shown.mass);
        assert!(cp(&shown) > cp(&hidden) + TELLING_M, "{}", rocket.name);
    }
}
