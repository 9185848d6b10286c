//! Measurement uncertainty against the examples of its two guides.
//!
//! GUM: JCGM 100:2008, Guide to the expression of uncertainty in measurement, annex H.
//! Supplement 1: JCGM 101:2008, Propagation of distributions using a Monte Carlo method,
//! clause 9. The tables in `data/` name their sources line by line; where a published
//! figure was rounded, or worked out from rounded inputs, they give it worked out again.
//!
//! Draws cannot agree exactly. Each figure from draws may be off by four of its own
//! standard errors, which one right figure in 16,000 exceeds:
//!
//! - the mean by u/√M, for M draws of standard deviation u;
//! - the standard deviation by √((μ₄ − u⁴)/M)/(2u), μ₄ being the fourth central moment;
//! - the value below which a share p of the draws lies: how many lie below the true one is
//!   binomial, with standard deviation √(M p (1−p)), so the error is half the distance of
//!   the values that many ranks below and above. No shape need be known for that.
//!
//! To these comes half a unit of the last digit of the figure compared with. The seeds are
//! fixed: a test passes always or never.

use noseward_references_tests::{assert_close, assert_within, table};
use noseward_stability::{
    Budget, Distribution, Generator, Input, MonteCarlo, Readings, Summary, propagate,
};

const H1: &str = include_str!("../data/gum_h1.csv");
const H2: &str = include_str!("../data/gum_h2.csv");
const H3: &str = include_str!("../data/gum_h3.csv");
const SUPPLEMENT: &str = include_str!("../data/jcgm101.csv");

/// Standard errors that a figure from draws may be off.
const ERRORS: f64 = 4.0;
/// Draws for each example: 0.2 % of the uncertainty is one standard error of the mean.
const DRAWS: usize = 200_000;
/// Of a normal result within 95 % to either side.
const NORMAL_95: f64 = 1.959_964;

fn input(estimate: f64, distribution: Distribution) -> Input {
    Input::new(estimate, distribution).expect("a published input")
}

fn normal(estimate: f64, standard: f64) -> Input {
    input(estimate, Distribution::Normal { standard })
}

fn rectangular(estimate: f64, half_width: f64) -> Input {
    input(estimate, Distribution::Rectangular { half_width })
}

/// A published figure and half a unit of its last digit. A whole number is meant exactly.
fn printed(text: &str) -> (f64, f64) {
    let value: f64 = text.parse().unwrap_or_else(|_| panic!("no number: {text}"));
    let (digits, exponent) = text.split_once('e').unwrap_or((text, "0"));
    let half = match digits.split_once('.') {
        Some((_, decimals)) => format!("0.{}5e{exponent}", "0".repeat(decimals.len())),
        None => "1e-6".into(),
    };
    (value, half.parse().expect("a number"))
}

#[track_caller]
fn assert_printed(what: &str, found: f64, text: &str) {
    let (expected, half) = printed(text);
    // The sliver is for figures that lie in the middle between two digits.
    assert_within(what, found, expected, half * 1.001);
}

/// A row of a table, by its first cell, and from the second on if there are several.
fn row(text: &str, name: &str) -> Vec<String> {
    let found = table(text).into_iter().find(|cells| cells[0] == name);
    found.unwrap_or_else(|| panic!("no row {name}"))
}

// GUM, H.1: calibration of an end gauge of 50 mm. All lengths in nanometres.

/// The length of the gauge at 20 °C from the standard's length, the three parts of their
/// difference, the differences of expansion and of temperature, the expansion, and the
/// two parts of the temperature's distance from 20 °C.
fn gauge_length(x: &[f64]) -> f64 {
    let [l, repeats, random, systematic, d_alpha, d_theta, alpha, mean, swing] = *x
    else {
        panic!("nine inputs");
    };
    let d = repeats + random + systematic;
    l + d - l * (d_alpha * (mean + swing) + alpha * d_theta)
}

/// The names of the first seven inputs in the table, in the order of the model.
const GAUGE_ROWS: [&str; 7] = [
    "l_s",
    "d (repeatability)",
    "d (comparator random)",
    "d (comparator systematic)",
    "delta_alpha",
    "delta_theta",
    "alpha_s",
];

fn gauge_inputs() -> Vec<Input> {
    let known =
        |input: Input, v: f64| input.with_degrees_of_freedom(v).expect("more than none");
    vec![
        known(normal(50_000_623.0, 25.0), 18.0),
        known(normal(215.0, 5.8), 24.0),
        known(normal(0.0, 3.9), 5.0),
        known(normal(0.0, 6.7), 8.0),
        known(rectangular(0.0, 1e-6), 50.0),
        known(rectangular(0.0, 0.05), 2.0),
        rectangular(11.5e-6, 2e-6),
        normal(-0.1, 0.2),
        input(0.0, Distribution::Arcsine { half_width: 0.5 }),
    ]
}

/// Sensitivities and contributions line by line; 32 nm with 16 degrees of freedom.
#[test]
fn end_gauge_to_first_order() {
    let inputs = gauge_inputs();
    let budget = propagate(&inputs, &mut gauge_length);
    assert_within("length", budget.estimate, 50_000_838.0, 1e-6);
    for (i, name) in GAUGE_ROWS.iter().enumerate() {
        let cells = row(H1, name);
        let contribution = budget.contributions[i];
        assert_printed(name, inputs[i].standard_uncertainty(), &cells[1]);
        assert_printed(name, contribution.sensitivity.abs(), &cells[3]);
        assert_printed(name, contribution.signed.abs(), &cells[4]);
        let v = contribution.degrees_of_freedom;
        assert_eq!(v, cells[5].parse::<f64>().unwrap(), "{name}");
    }
    // Published: nothing from the temperature either, in two parts here.
    for part in &budget.contributions[7..] {
        assert_within("temperature", part.signed, 0.0, 1e-9);
    }
    let cells = row(H1, "combined u_c");
    let v = budget.effective_degrees_of_freedom().unwrap();
    assert_printed("combined", budget.standard_uncertainty(), &cells[4]);
    assert_printed("degrees of freedom", v, &cells[5]);
    // As published: 32 nm and, rounded down, 16.
    assert_eq!(budget.standard_uncertainty().round(), 32.0);
    assert_eq!(v.floor(), 16.0);
}

/// H.1.3.2: the parts of the difference alone; published 9.7 nm and 25.6.
#[test]
fn end_gauge_difference_by_welch_and_satterthwaite() {
    let parts = &gauge_inputs()[1..4];
    let budget = propagate(parts, &mut |x| x.iter().sum());
    let cells = row(H1, "d (combined)");
    assert_printed("combined", budget.standard_uncertainty(), &cells[4]);
    let v = budget.effective_degrees_of_freedom().unwrap();
    assert_printed("degrees of freedom", v, &cells[5]);
}

/// H.1.3.4: a mean of −0.1 ± 0.2 °C, with a swing of 0.5 °C about it.
#[test]
fn end_gauge_temperature() {
    let parts = &gauge_inputs()[7..];
    let budget = propagate(parts, &mut |x| x[0] + x[1]);
    let cells = row(H1, "theta (0.2 normal, 0.5 arcsine)");
    assert_printed("combined", budget.standard_uncertainty(), &cells[1]);
}

/// H.1.7: products of two doubts, which no slope shows, make it 34 nm. Draws find them.
#[test]
fn end_gauge_by_draws() {
    let drawn = Drawn::new(gauge_inputs(), gauge_length);
    let cells = row(H1, "u_c with second order");
    drawn.assert_mean("length", 50_000_838.0, 1e-6);
    drawn.assert_uncertainty("with second order", &cells[4]);
    // Not by being vague: the first-order figure is well outside what is allowed.
    let first_order = printed(&row(H1, "combined u_c")[4]).0;
    assert!(drawn.summary.standard_uncertainty > first_order + 1.5);
    assert_eq!(drawn.summary.standard_uncertainty.round(), 34.0);
}

// GUM, H.2: resistance, reactance and impedance from voltage, current and phase that were
// read together, so that they are correlated.

/// One column of the five sets of readings.
fn column(index: usize) -> Vec<f64> {
    table(H2).iter().map(|cells| cells[index].parse().expect("a number")).collect()
}

/// The correlation of two means from readings taken in pairs (GUM, 5.2.3, equation 17, and
/// 5.2.2, equation 14).
fn correlation(a: &[f64], b: &[f64]) -> f64 {
    let mean = |x: &[f64]| x.iter().sum::<f64>() / x.len() as f64;
    let joint = |x: &[f64], y: &[f64]| -> f64 {
        let (mx, my) = (mean(x), mean(y));
        x.iter().zip(y).map(|(x, y)| (x - mx) * (y - my)).sum()
    };
    joint(a, b) / (joint(a, a) * joint(b, b)).sqrt()
}

/// The three results: R, X and Z in ohms, from volts, milliamperes and radians.
const IMPEDANCE: [fn(&[f64]) -> f64; 3] = [
    |x| 1000.0 * x[0] / x[1] * libm::cos(x[2]),
    |x| 1000.0 * x[0] / x[1] * libm::sin(x[2]),
    |x| 1000.0 * x[0] / x[1],
];

const PAIRS: [(usize, usize); 3] = [(0, 1), (0, 2), (1, 2)];

/// Table H.2: means, their standard uncertainties and correlations. The instruments'
/// steps are no part of the example.
#[test]
fn impedance_readings() {
    let columns = [column(1), column(2), column(3)];
    let published =
        [("4.9990", "3.209e-3"), ("19.6610", "9.471e-3"), ("1.04446", "7.521e-4")];
    for (values, (mean, u)) in columns.iter().zip(published) {
        let readings = Readings::new(values, 0.0).unwrap();
        assert_eq!(readings.count(), 5);
        assert_printed("mean", readings.mean(), mean);
        assert_printed("u", readings.standard_uncertainty_of_mean().unwrap(), u);
        assert_eq!(readings.to_input().degrees_of_freedom().round(), 4.0);
    }
    for ((i, j), r) in PAIRS.into_iter().zip(["-0.3553", "0.8576", "-0.6451"]) {
        assert_printed("r", correlation(&columns[i], &columns[j]), r);
    }
}

/// Tables H.3 and H.4, first approach, from inputs that are not rounded; published from
/// rounded ones: 127.732 ± 0.071, 219.847 ± 0.295 and 254.260 ± 0.236 Ω, correlated by
/// −0.588, −0.485 and 0.993.
#[test]
fn impedance_from_correlated_inputs() {
    let columns = [column(1), column(2), column(3)];
    let inputs = columns.each_ref().map(|x| Readings::new(x, 0.0).unwrap().to_input());
    let r = |i: usize, j: usize| correlation(&columns[i], &columns[j]);
    let budgets = IMPEDANCE.map(|mut model| {
        let mut budget = propagate(&inputs, &mut model);
        for (i, j) in PAIRS {
            budget = budget.with_correlation(i, j, r(i, j)).unwrap();
        }
        budget
    });
    let worked_out = [
        ("R", "127.73217", "0.07107"),
        ("X", "219.84651", "0.29558"),
        ("Z", "254.25970", "0.23634"),
    ];
    for (budget, (name, value, u)) in budgets.iter().zip(worked_out) {
        assert_printed(name, budget.estimate, value);
        assert_printed(name, budget.standard_uncertainty(), u);
        assert_eq!(budget.effective_degrees_of_freedom(), None);
    }
    // Without the correlations R would seem three times as uncertain.
    let alone = propagate(&inputs, &mut IMPEDANCE[0].clone());
    assert!(alone.standard_uncertainty() > 2.5 * 0.07107);
    // H.2.3: how the results are correlated follows from the contributions.
    let joint = |a: &Budget, b: &Budget| -> f64 {
        let mut sum = 0.0;
        for (i, x) in a.contributions.iter().enumerate() {
            for (j, y) in b.contributions.iter().enumerate() {
                sum += x.signed * y.signed * if i == j { 1.0 } else { r(i, j) };
            }
        }
        sum / (a.standard_uncertainty() * b.standard_uncertainty())
    };
    for ((i, j), r) in PAIRS.into_iter().zip(["-0.5884", "-0.4853", "0.9925"]) {
        assert_printed("correlation", joint(&budgets[i], &budgets[j]), r);
    }
}

/// H.2.4, second approach: each set of readings gives its own R, X and Z, and these are
/// averaged. Published: 127.732 ± 0.071, 219.847 ± 0.295 and 254.260 ± 0.236 Ω.
#[test]
fn impedance_set_by_set() {
    let columns = [column(1), column(2), column(3)];
    let worked_out = [
        ("R", "127.73163", "0.07127"),
        ("X", "219.84689", "0.29549"),
        ("Z", "254.26005", "0.23625"),
    ];
    for (model, (name, mean, u)) in IMPEDANCE.into_iter().zip(worked_out) {
        let set = |k: usize| model(&[columns[0][k], columns[1][k], columns[2][k]]);
        let readings = Readings::new(&[0, 1, 2, 3, 4].map(set), 0.0).unwrap();
        assert_printed(name, readings.mean(), mean);
        assert_printed(name, readings.standard_uncertainty(), u);
    }
}

// GUM, H.3: the correction of a thermometer as a straight line through eleven points.

/// Intercept at 20 °C and slope of the line of least squares (GUM, H.3.2).
fn line(t: &[f64], b: &[f64]) -> (f64, f64) {
    let n = t.len() as f64;
    let off = |t: f64| t - 20.0;
    let sum = |term: &dyn Fn(usize) -> f64| -> f64 { (0..t.len()).map(term).sum() };
    let (st, sb) = (sum(&|k| off(t[k])), sum(&|k| b[k]));
    let stt = sum(&|k| off(t[k]) * off(t[k]));
    let stb = sum(&|k| off(t[k]) * b[k]);
    let d = n * stt - st * st;
    ((sb * stt - stb * st) / d, (n * stb - sb * st) / d)
}

/// The uncertainty of the line from that of the points, propagated through the fit, and of
/// the correction at 30 °C from the line with its correlation: −0.1494 ± 0.0041 °C.
#[test]
fn thermometer_line() {
    let rows = table(H3);
    let values = |index: usize| -> Vec<f64> {
        rows.iter().map(|cells| cells[index].parse().unwrap()).collect()
    };
    let (t, b) = (values(1), values(2));
    let (y1, y2) = line(&t, &b);
    let residuals = t.iter().zip(&b).map(|(t, b)| b - y1 - y2 * (t - 20.0));
    let s = (residuals.map(|r| r * r).sum::<f64>() / 9.0).sqrt();
    assert_printed("s", s, "0.0034976");
    // The fit is linear in b, so its chords are its slopes.
    let points: Vec<Input> = b.iter().map(|&b| normal(b, s)).collect();
    let intercept = propagate(&points, &mut |b| line(&t, b).0);
    let slope = propagate(&points, &mut |b| line(&t, b).1);
    assert_printed("y1", intercept.estimate, "-0.17120379");
    assert_printed("u(y1)", intercept.standard_uncertainty(), "0.0028776");
    assert_printed("y2", slope.estimate, "0.0021826977");
    assert_printed("u(y2)", slope.standard_uncertainty(), "0.00066794");
    let (u1, u2) = (intercept.standard_uncertainty(), slope.standard_uncertainty());
    let both = intercept.contributions.iter().zip(&slope.contributions);
    let r = both.map(|(a, b)| a.signed * b.signed).sum::<f64>() / (u1 * u2);
    assert_printed("r", r, "-0.9304");
    let coefficients = [normal(y1, u1), normal(y2, u2)];
    let correction = propagate(&coefficients, &mut |y| y[0] + y[1] * 10.0);
    let correction = correction.with_correlation(0, 1, r).unwrap();
    assert_printed("at 30 °C", correction.estimate, "-0.1493768");
    assert_printed("u", correction.standard_uncertainty(), "0.0041386");
    // The same straight from the points.
    let straight = propagate(&points, &mut |b| {
        let (y1, y2) = line(&t, b);
        y1 + y2 * 10.0
    });
    let u = straight.standard_uncertainty();
    assert_close("straight", u, correction.standard_uncertainty(), 1e-9);
}

// Supplement 1, clause 9.

/// Draws with what is needed to judge them.
struct Drawn {
    draws: MonteCarlo,
    summary: Summary,
}

impl Drawn {
    fn new(inputs: Vec<Input>, model: fn(&[f64]) -> f64) -> Self {
        Self::seeded(20, DRAWS, inputs, model)
    }

    fn seeded(
        seed: u64,
        count: usize,
        inputs: Vec<Input>,
        model: fn(&[f64]) -> f64,
    ) -> Self {
        let mut draws = MonteCarlo::new(inputs, Generator::seeded(seed));
        draws.run(count, &mut |x| model(x).into());
        let summary = draws.summary().expect("enough draws");
        assert_eq!(draws.class_counts(), [count]);
        Self { draws, summary }
    }

    /// One standard error of the standard deviation.
    fn uncertainty_error(&self) -> f64 {
        let u2 = self.summary.standard_uncertainty * self.summary.standard_uncertainty;
        let values = self.draws.values();
        let fourth = |v: &f64| libm::pow(v - self.summary.mean, 4.0);
        let m4 = values.iter().map(fourth).sum::<f64>() / values.len() as f64;
        ((m4 - u2 * u2) / values.len() as f64).sqrt() / (2.0 * u2.sqrt())
    }

    /// Four standard errors of the value below which so many thousandths of the draws lie.
    fn quantile_tolerance(&self, thousandths: usize) -> f64 {
        const { assert!(ERRORS == 4.0) };
        // In order since the summary.
        let values = self.draws.values();
        let rank = values.len() * thousandths / 1000;
        let variance = rank * (1000 - thousandths) / 1000;
        let ranks = (16 * variance).isqrt();
        (values[rank + ranks] - values[rank - ranks]) / 2.0
    }

    #[track_caller]
    fn assert_mean(&self, what: &str, expected: f64, half: f64) {
        let count = self.draws.values().len() as f64;
        let error = self.summary.standard_uncertainty / count.sqrt();
        assert_within(what, self.summary.mean, expected, ERRORS * error + half);
    }

    #[track_caller]
    fn assert_uncertainty(&self, what: &str, text: &str) {
        let (expected, half) = printed(text);
        let tolerance = ERRORS * self.uncertainty_error() + half;
        assert_within(what, self.summary.standard_uncertainty, expected, tolerance);
    }

    /// Mean, uncertainty and symmetrical interval as in a row of the table.
    #[track_caller]
    fn assert_row(&self, cells: &[String]) {
        let (mean, half) = printed(&cells[3]);
        self.assert_mean("mean", mean, half);
        self.assert_uncertainty("uncertainty", &cells[4]);
        let interval = self.summary.symmetric;
        for (found, text, thousandths) in
            [(interval.low, &cells[5], 25), (interval.high, &cells[6], 975)]
        {
            let (expected, half) = printed(text);
            let tolerance = self.quantile_tolerance(thousandths) + half;
            assert_within("end", found, expected, tolerance);
        }
        let shortest = self.summary.shortest;
        assert!(shortest.high - shortest.low <= interval.high - interval.low);
    }
}

fn sum(x: &[f64]) -> f64 {
    x.iter().sum()
}

/// Mean 0 and this standard deviation, all equally likely.
fn rectangular_of_deviation(standard: f64) -> Input {
    rectangular(0.0, standard * 3.0_f64.sqrt())
}

/// The interval that first order gives with the normal distribution's factor.
#[track_caller]
fn assert_first_order(inputs: &[Input], cells: &[String]) {
    let budget = propagate(inputs, &mut sum);
    let u = budget.standard_uncertainty();
    assert_printed("u to first order", u, &cells[4]);
    assert_printed("low to first order", budget.estimate - NORMAL_95 * u, &cells[5]);
    assert_printed("high to first order", budget.estimate + NORMAL_95 * u, &cells[6]);
}

/// Supplement 1, 9.2.2.
#[test]
fn sum_of_four_normals() {
    let inputs = vec![normal(0.0, 1.0); 4];
    let cells = row(SUPPLEMENT, "9.2.2");
    assert_first_order(&inputs, &cells);
    Drawn::new(inputs, sum).assert_row(&cells);
}

/// Supplement 1, 9.2.3: nearly normal, a hundredth narrower.
#[test]
fn sum_of_four_rectangulars() {
    let inputs = vec![rectangular_of_deviation(1.0); 4];
    assert_first_order(&inputs, &row(SUPPLEMENT, "9.2.3 GUM"));
    Drawn::new(inputs, sum).assert_row(&row(SUPPLEMENT, "9.2.3"));
}

/// Supplement 1, 9.2.4: one of them ten times as wide decides the shape. First order has
/// the right uncertainty, and an interval a sixth too wide.
#[test]
fn sum_with_one_wide_rectangular() {
    let inputs: Vec<Input> = [1.0, 1.0, 1.0, 10.0].map(rectangular_of_deviation).into();
    assert_first_order(&inputs, &row(SUPPLEMENT, "9.2.4 GUM"));
    let drawn = Drawn::new(inputs, sum);
    drawn.assert_row(&row(SUPPLEMENT, "9.2.4"));
    let wide = printed(&row(SUPPLEMENT, "9.2.4 GUM")[6]).0;
    assert!(drawn.summary.symmetric.high + drawn.quantile_tolerance(975) < wide);
}

/// Supplement 1, 9.3: a weight of 100 g against another in air, in milligrams and
/// kilograms per cubic metre. The buoyancy is a product of two doubts about zero, so first
/// order misses it. The table's interval is the shortest one of a shape that is
/// symmetrical but for chance, and the published figures agree with both.
#[test]
fn mass_calibration() {
    let inputs = vec![
        normal(100_000.0, 0.050),
        normal(1.234, 0.020),
        rectangular(1.20, 0.10),
        rectangular(8000.0, 1000.0),
        rectangular(8000.0, 50.0),
    ];
    let model = |x: &[f64]| {
        let buoyancy = (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4]);
        (x[0] + x[1]) * (1.0 + buoyancy) - 100_000.0
    };
    let first_order = propagate(&inputs, &mut { model });
    let cells = row(SUPPLEMENT, "9.3 mass GUM first order");
    assert_printed("first order", first_order.standard_uncertainty(), &cells[4]);
    Drawn::new(inputs, model).assert_row(&row(SUPPLEMENT, "9.3 mass"));
}

// Supplement 1, 9.4: the square of a length of two parts, each with u = 0.005. Near the
// origin nothing but draws will do: the result cannot be negative, and its slope is zero.

fn squared_length(x: &[f64]) -> f64 {
    x[0] * x[0] + x[1] * x[1]
}

fn two_parts(x1: f64) -> Vec<Input> {
    vec![normal(x1, 0.005), normal(0.0, 0.005)]
}

/// At the origin and two standard uncertainties away. The shortest interval starts at zero,
/// so its upper end is the value above which 5 % lie, and its lower end one of the very
/// least results (the first thousandth here): each rank further up makes the interval
/// longer, soon by more than chance makes it shorter.
#[test]
fn squared_length_near_the_origin() {
    for (x1, name) in [(0.0, "9.4.2 x1=0"), (0.010, "9.4.2 x1=0.010")] {
        let cells = row(SUPPLEMENT, name);
        let first_order = propagate(&two_parts(x1), &mut squared_length);
        let u = first_order.standard_uncertainty();
        assert_within("first order", u, 2.0 * x1 * 0.005, 1e-15);
        let drawn = Drawn::new(two_parts(x1), squared_length);
        let (mean, half) = printed(&cells[3]);
        drawn.assert_mean(name, mean, half);
        drawn.assert_uncertainty(name, &cells[4]);
        let (high, half) = printed(&cells[6]);
        let shortest = drawn.summary.shortest;
        let tolerance = drawn.quantile_tolerance(950) + half;
        assert_within(name, shortest.high, high, tolerance);
        assert!(shortest.low < drawn.draws.values()[DRAWS / 1000]);
        // The symmetrical one leaves out the likeliest results.
        assert!(drawn.summary.symmetric.low > 2.0 * shortest.low);
        assert!(shortest.high < drawn.summary.symmetric.high);
    }
}

/// Ten standard uncertainties away. Where a shortest interval lies is known worse than
/// how long it is, and by no simple formula: the standard error of an end is taken from
/// twelve runs. The table's figures come from draws too, ten million of them; √2 allows
/// for an error as large as that of the twelve together, and theirs is smaller.
#[test]
fn squared_length_further_away() {
    let cells = row(SUPPLEMENT, "9.4.2 x1=0.050");
    let drawn = Drawn::new(two_parts(0.05), squared_length);
    let (mean, half) = printed(&cells[3]);
    drawn.assert_mean("mean", mean, half);
    drawn.assert_uncertainty("u", &cells[4]);
    let runs: Vec<Drawn> = (0..12)
        .map(|seed| Drawn::seeded(seed, DRAWS / 4, two_parts(0.05), squared_length))
        .collect();
    let ends = |end: fn(&Summary) -> f64| {
        let values: Vec<f64> = runs.iter().map(|run| end(&run.summary)).collect();
        let readings = Readings::new(&values, 0.0).unwrap();
        (readings.mean(), readings.standard_uncertainty())
    };
    for (text, end) in [
        (&cells[5], (|s| s.shortest.low) as fn(&Summary) -> f64),
        (&cells[6], |s| s.shortest.high),
    ] {
        let (expected, half) = printed(text);
        let (found, error) = ends(end);
        let tolerance = ERRORS * error * 2.0_f64.sqrt() + half;
        assert!(tolerance < 0.02 * expected, "{tolerance}");
        assert_within("end of the shortest", found, expected, tolerance);
    }
}
