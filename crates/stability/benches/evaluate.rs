//! How long one evaluation takes, from a design to its report, and what follows from it.

use noseward_stability::{
    Example, MeasuredPoints, Resolution, SeparationDraws, Swing, SwingDraws, SwingSetup,
    evaluate,
};

fn main() {
    divan::main();
}

#[divan::bench(args = Example::ALL)]
fn one_evaluation(bencher: divan::Bencher<'_, '_>, example: Example) {
    let design = example.design();
    bencher.bench(|| evaluate(divan::black_box(&design)));
}

#[divan::bench(sample_count = 10)]
fn ten_thousand_draws(bencher: divan::Bencher<'_, '_>) {
    let design = Example::Puffin.design();
    bencher.bench(|| {
        let mut draws = SeparationDraws::new(
            &design,
            &MeasuredPoints::default(),
            Resolution::default(),
        );
        while !draws.is_done() {
            draws.run(10_000);
        }
        draws.verdict()
    });
}

#[divan::bench(args = Example::ALL)]
fn every_start_of_a_swing(bencher: divan::Bencher<'_, '_>, example: Example) {
    let figures = evaluate(&example.design()).figures.expect("no fault stops it");
    let setup = SwingSetup::default();
    bencher.bench(|| Swing::new(divan::black_box(&figures), &setup).map(|s| s.starts()));
}

#[divan::bench(args = Example::ALL)]
fn all_draws_of_a_swing(bencher: divan::Bencher<'_, '_>, example: Example) {
    let (design, setup) = (example.design(), SwingSetup::default());
    let nothing = MeasuredPoints::default();
    bencher.bench(|| {
        let mut draws = SwingDraws::new(&design, &nothing, &setup, Resolution::default());
        draws.run(usize::MAX);
        draws.verdict()
    });
}
