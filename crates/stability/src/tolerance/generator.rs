//! Random numbers that are the same on every machine.

use std::f64::consts::TAU;

use rand_pcg::Pcg32;
use rand_pcg::rand_core::{Rng, SeedableRng};

/// A stream of random numbers, decided by its seed.
///
/// The same seed gives the same bits natively and in the browser: the generator works with
/// whole numbers, and what shapes its numbers is `sqrt` and functions of `libm`. Crates of
/// ready-made distributions were tried and left: they take their logarithm from the system
/// as soon as any other crate switches that on, and then the bits differ.
///
/// Source: M. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good
/// Algorithms for Random Number Generation, Harvey Mudd College HMC-CS-2014-0905, 2014
/// (its 64-bit state with 32-bit output: WebAssembly multiplies 64 bits in one step).
/// Its period of 2⁶⁴ is far longer than any use here.
#[derive(Clone, Debug)]
pub struct Generator(Pcg32);

impl Generator {
    /// The stream of this seed. Neighbouring seeds give unrelated streams.
    #[must_use]
    pub fn seeded(seed: u64) -> Self {
        Self(Pcg32::seed_from_u64(seed))
    }

    /// Evenly from 0 to 1, never either, in steps of 2⁻⁵² and symmetrical about one half.
    pub(super) fn unit(&mut self) -> f64 {
        const STEPS: f64 = (1_u64 << 52) as f64;
        ((self.0.next_u64() >> 12) as f64 + 0.5) / STEPS
    }

    /// Evenly from −1 to 1 (JCGM 101, 6.4.2).
    pub(super) fn rectangular(&mut self) -> f64 {
        2.0 * self.unit() - 1.0
    }

    /// As a sine at a random moment, from −1 to 1 (JCGM 101, 6.4.6.3).
    pub(super) fn arcsine(&mut self) -> f64 {
        libm::sin(TAU * self.unit())
    }

    /// Normally, about 0 with standard deviation 1 (JCGM 101, 6.4.7.4: the method of Box and
    /// Muller). Reaches 8.5: beyond that lies one draw in 10¹⁷.
    pub(super) fn normal(&mut self) -> f64 {
        let radius2 = -2.0 * libm::log(self.unit());
        radius2.sqrt() * libm::cos(TAU * self.unit())
    }

    /// By Student's t with `v` degrees of freedom, about 0, not scaled: its standard
    /// deviation is √(v/(v−2)) where v > 2 and none otherwise (JCGM 101, 6.4.9).
    ///
    /// As [`normal`](Self::normal), with the radius stretched: a point of the plane with
    /// density falling as (1 + r²/v)^−(v/2 + 1) lies outside r with probability
    /// (1 + r²/v)^−(v/2), and each of its coordinates follows Student's t.
    /// Source: R. W. Bailey, Polar generation of random variates with the t-distribution,
    /// Mathematics of Computation 62, 1994, p. 779 (citation from memory; tail
    /// and coordinates confirmed by integration with sympy).
    pub(super) fn student_t(&mut self, v: f64) -> f64 {
        let exponent = -2.0 * libm::log(self.unit()) / v;
        (v * libm::expm1(exponent)).sqrt() * libm::cos(TAU * self.unit())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked out once and kept: whatever changes these changes every page that shows a
    /// share of draws. The same numbers came from a wasm32 build.
    #[test]
    fn bits_of_seed_1() {
        let mut generator = Generator::seeded(1);
        let mut bits = Vec::new();
        for _ in 0..1000 {
            bits.push(generator.unit().to_bits());
            bits.push(generator.rectangular().to_bits());
            bits.push(generator.arcsine().to_bits());
            bits.push(generator.normal().to_bits());
            bits.push(generator.student_t(3.0).to_bits());
        }
        let mixed = bits.iter().fold(0_u64, |sum, b| sum.rotate_left(5) ^ b);
        assert_eq!(format!("{mixed:016x}"), "142bf8311026bee3");
    }

    /// Shares below fixed points, from tables of each distribution, within four standard
    /// errors of a share, √(p(1−p)/n).
    #[test]
    fn shares_below_known_points() {
        type Draw = fn(&mut Generator) -> f64;
        // Points of the normal: 1.959964. Of t with 1 degree: tan(π(p − ½)), with 3:
        // 3.182446 (two-sided 95 %); of the arcsine: sin(π(p − ½)).
        let points: [(&str, Draw, f64, f64); 9] = [
            ("unit", Generator::unit, 0.2, 0.2),
            ("rectangular", Generator::rectangular, 0.5, 0.75),
            ("arcsine", Generator::arcsine, 0.5, 2.0 / 3.0),
            ("arcsine", Generator::arcsine, -0.5, 1.0 / 3.0),
            ("normal", Generator::normal, 1.959_964, 0.975),
            ("normal", Generator::normal, -1.0, 0.158_655),
            ("t, 1", |g| g.student_t(1.0), 1.0, 0.75),
            ("t, 3", |g| g.student_t(3.0), 3.182_446, 0.975),
            ("t, 3", |g| g.student_t(3.0), -3.182_446, 0.025),
        ];
        let n = 100_000;
        for (name, draw, point, share) in points {
            let mut generator = Generator::seeded(7);
            let below = (0..n).filter(|_| draw(&mut generator) < point).count();
            let found = below as f64 / f64::from(n);
            let tolerance = 4.0 * (share * (1.0 - share) / f64::from(n)).sqrt();
            let off = found - share;
            assert!(off.abs() < tolerance, "{name} below {point}: {found}");
        }
    }

    #[test]
    fn many_degrees_of_freedom_are_the_normal() {
        let (mut a, mut b) = (Generator::seeded(3), Generator::seeded(3));
        for _ in 0..1000 {
            let (t, normal) = (a.student_t(1e12), b.normal());
            assert!((t - normal).abs() < 1e-9, "{t} {normal}");
        }
    }
}
