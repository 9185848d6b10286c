//! How long one evaluation takes, from a design to its report.

use noseward_stability::{Example, evaluate};

fn main() {
    divan::main();
}

#[divan::bench(args = Example::ALL)]
fn one_evaluation(bencher: divan::Bencher<'_, '_>, example: Example) {
    let design = example.design();
    bencher.bench(|| evaluate(divan::black_box(&design)));
}
