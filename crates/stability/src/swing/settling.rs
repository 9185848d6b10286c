//! What a swing comes to.

use std::f64::consts::PI;

use serde::Serialize;

use super::Swing;
use super::forces::Forces;
use super::motion::{Motion, State};
use super::when::When;
use crate::outcome::{Rest, bisected};

/// How the rocket ends up on its circle.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Settles {
    /// With its nose ahead.
    NoseFirst,
    /// With its tail ahead.
    TailFirst,
    /// At an angle to its path.
    Across {
        /// That angle, in radians.
        angle_rad: f64,
    },
    /// It still swings too widely when the watching ends.
    StillSwinging {
        /// The resting angle that it can no longer leave, in radians; `None` while it may
        /// still come to rest at several.
        about_rad: Option<f64>,
    },
}

/// How a swing settles from one starting angle, let go without turning.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Settling {
    /// The angle between nose and path at the start, in radians from 0 to π.
    pub start_rad: f64,
    /// What it comes to.
    pub comes_to: Settles,
    /// When it comes within 10 degrees of where it rests, for good. `None` while it still
    /// swings.
    pub when: Option<When>,
    /// The resting angle, in radians; as in `comes_to`.
    pub rest_rad: Option<f64>,
    /// The most by which it can still swing away from there when the watching ends, in
    /// radians. `None` where no resting angle is known.
    pub remaining_rad: Option<f64>,
}

/// Starting angles next to each other that lead to the same.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StartRange {
    /// From this starting angle, in radians.
    pub from_rad: f64,
    /// To this one.
    pub to_rad: f64,
    /// What they lead to.
    pub comes_to: Settles,
    /// The longest that one of the tried starts takes. `None` where one has not settled.
    pub slowest: Option<When>,
}

impl StartRange {
    /// Whether it is a tail-first trap: let go there, the rocket flies with its tail
    /// ahead.
    #[must_use]
    pub fn is_tail_first_trap(&self) -> bool {
        self.comes_to == Settles::TailFirst
    }
}

/// Within this of its resting angle it counts as settled, in radians: 10 degrees. Our
/// judgement of what an eye can tell on a moving string.
pub(super) const SETTLED_RAD: f64 = 10.0 * PI / 180.0;
/// Watching ends after so many seconds or turns, whichever is sooner: longer than anyone
/// swings. Our judgement.
const WATCHED_S: f64 = 20.0;
const WATCHED_TURNS: f64 = 30.0;
/// Nobody lets go exactly on a balance point: a start nearer than this to an angle that
/// does not hold is taken this far from it, towards the nose (from the nose itself, away):
/// a tenth of a degree, in radians.
const LET_GO_RAD: f64 = 0.1 * PI / 180.0;
/// Tried starts from 0 to 180 degrees lie this many degrees apart.
const APART_DEG: u32 = 5;

/// The valley around a resting angle that holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Well {
    rest_rad: f64,
    /// The angles that do not hold on either side; 0 or π itself for the ends.
    from_rad: f64,
    to_rad: f64,
    /// Below this energy the rocket cannot leave the valley, in joules.
    brim_j: f64,
    /// Below this energy it stays within [`SETTLED_RAD`].
    settled_j: f64,
}

impl Well {
    /// Every valley of a list of resting angles.
    pub(super) fn all(rests: &[Rest], forces: &Forces) -> Vec<Self> {
        let held = rests.iter().enumerate().filter(|(_, rest)| rest.holds);
        held.map(|(i, rest)| {
            let rest_rad = rest.angle_rad;
            let before = i.checked_sub(1).and_then(|i| rests.get(i)).copied();
            let after = rests.get(i + 1).copied();
            // Beyond an end lies the mirror image of the same valley.
            let lowest = |near: &dyn Fn(f64) -> f64| {
                let before = before.map_or(f64::INFINITY, |r| near(r.angle_rad));
                before.min(after.map_or(f64::INFINITY, |r| near(r.angle_rad)))
            };
            let brim = |angle: f64| forces.work_j(angle);
            let settled = |angle: f64| {
                let off = (angle - rest_rad).clamp(-SETTLED_RAD, SETTLED_RAD);
                forces.work_j(rest_rad + off)
            };
            Self {
                rest_rad,
                from_rad: before.map_or(0.0, |r| r.angle_rad),
                to_rad: after.map_or(PI, |r| r.angle_rad),
                brim_j: lowest(&brim),
                settled_j: lowest(&settled),
            }
        })
        .collect()
    }

    fn spans(&self, angle_rad: f64) -> bool {
        (self.from_rad..=self.to_rad).contains(&angle_rad)
    }

    /// How far an angle is outside of the band around the resting angle; negative inside.
    fn outside_rad(&self, angle_rad: f64) -> f64 {
        (folded(angle_rad) - self.rest_rad).abs() - SETTLED_RAD
    }

    /// How far from the resting angle an energy reaches, in radians.
    fn reach_rad(&self, forces: &Forces, energy_j: f64) -> f64 {
        let towards = |edge_rad: f64| {
            let mut above = |angle: f64| forces.work_j(angle) - energy_j;
            if edge_rad == self.rest_rad || above(self.rest_rad) >= 0.0 {
                return 0.0;
            }
            let (low, high) = (self.rest_rad.min(edge_rad), self.rest_rad.max(edge_rad));
            (bisected(&mut above, low, high) - self.rest_rad).abs()
        };
        towards(self.from_rad).max(towards(self.to_rad))
    }
}

/// Any angle as that between nose and path, from 0 to π.
fn folded(angle_rad: f64) -> f64 {
    libm::remainder(angle_rad, 2.0 * PI).abs()
}

impl Swing {
    /// How long the rocket is watched, in seconds: 20 s or 30 turns, whichever is sooner.
    #[must_use]
    pub fn watched_s(&self) -> f64 {
        WATCHED_S.min(WATCHED_TURNS / self.setup.turns_per_s)
    }

    /// The angle at which it is let go: a little off an angle that does not hold.
    pub(super) fn let_go(&self, start_rad: f64) -> f64 {
        let off_nose = libm::remainder(start_rad, 2.0 * PI);
        let near = |rest: &&Rest| (off_nose.abs() - rest.angle_rad).abs() < LET_GO_RAD;
        match self.rests.iter().filter(|rest| !rest.holds).find(near) {
            Some(rest) => {
                let beside = (rest.angle_rad - LET_GO_RAD).abs();
                start_rad - off_nose + beside.copysign(off_nose)
            }
            None => start_rad,
        }
    }

    /// What it comes to, let go at an angle without turning.
    ///
    /// The moment at which it comes within 10 degrees of where it rests is located on the
    /// integrator's dense output. That it stays follows from its energy, which the air only
    /// takes away. An angle that is not finite gives a rocket that still swings.
    #[must_use]
    pub fn settling(&self, start_angle_rad: f64) -> Settling {
        self.watch(start_angle_rad, true)
    }

    /// Watches to the end, or until it has settled.
    fn watch(&self, start_angle_rad: f64, to_the_end: bool) -> Settling {
        let end_s = self.watched_s();
        let start =
            State { angle_rad: self.let_go(start_angle_rad), rate_rad_per_s: 0.0 };
        let mut found = Settling {
            start_rad: folded(start_angle_rad),
            comes_to: Settles::StillSwinging { about_rad: None },
            when: None,
            rest_rad: None,
            remaining_rad: None,
        };
        // Since when it has been within the band of each valley.
        let inside = |well: &Well| well.outside_rad(start.angle_rad) <= 0.0;
        let mut since: Vec<Option<f64>> =
            self.wells.iter().map(|well| inside(well).then_some(0.0)).collect();
        let Some(mut motion) = Motion::new(&self.forces, start) else { return found };
        let mut last = start;
        loop {
            if found.when.is_none() {
                self.judge(&mut found, last, &since);
            }
            let over = motion.time_s() >= end_s;
            if over || (found.when.is_some() && !to_the_end) {
                break;
            }
            if motion.step().is_none() {
                break;
            }
            for (well, since) in self.wells.iter().zip(&mut since) {
                *since = still_inside(well, &mut motion, *since);
            }
            last = motion.state();
        }
        // What came after the end was not watched.
        if found.when.is_some_and(|when| when.on_axis_s() > end_s) {
            found.when = None;
            found.comes_to = Settles::StillSwinging { about_rad: found.rest_rad };
        }
        let at_end = if to_the_end { motion.at(end_s) } else { last };
        let energy_j = self.forces.energy_j(at_end.angle_rad, at_end.rate_rad_per_s);
        let well = self.wells.iter().find(|well| Some(well.rest_rad) == found.rest_rad);
        found.remaining_rad = well.map(|well| well.reach_rad(&self.forces, energy_j));
        found
    }

    /// Puts down where it can no longer leave, and since when it has settled.
    fn judge(&self, found: &mut Settling, state: State, since: &[Option<f64>]) {
        let energy_j = self.forces.energy_j(state.angle_rad, state.rate_rad_per_s);
        let angle_rad = folded(state.angle_rad);
        for (well, since) in self.wells.iter().zip(since) {
            if energy_j > well.brim_j || !well.spans(angle_rad) {
                continue;
            }
            let rest_rad = well.rest_rad;
            found.rest_rad = Some(rest_rad);
            found.comes_to = Settles::StillSwinging { about_rad: Some(rest_rad) };
            if let Some(since) = since.filter(|_| energy_j <= well.settled_j) {
                found.when = Some(When::new(since, self.setup.turns_per_s));
                found.comes_to = if rest_rad == 0.0 {
                    Settles::NoseFirst
                } else if rest_rad < PI {
                    Settles::Across { angle_rad: rest_rad }
                } else {
                    Settles::TailFirst
                };
            }
        }
    }

    /// What every start leads to, from 0 to 180 degrees in steps of 5.
    #[must_use]
    pub fn starts(&self) -> Starts {
        let mut starts = self.starts_in_slices();
        while !starts.is_done() {
            starts.run(1);
        }
        starts
    }

    /// The same, to be worked out a few starts at a time.
    #[must_use]
    pub fn starts_in_slices(&self) -> Starts {
        Starts { swing: self.clone(), tried: Vec::new() }
    }
}

/// Since when the rocket has been within the band, after one more step.
fn still_inside(well: &Well, motion: &mut Motion<'_>, since: Option<f64>) -> Option<f64> {
    let outside = |state: State| well.outside_rad(state.angle_rad);
    let (before, after) = (motion.state_before(), motion.state());
    let (from_s, to_s) = (motion.time_before_s(), motion.time_s());
    if outside(after) > 0.0 {
        return None;
    }
    if outside(before) > 0.0 {
        return Some(motion.when(&outside, from_s, to_s));
    }
    if before.rate_rad_per_s * after.rate_rad_per_s < 0.0 {
        // It turned round within the step: perhaps outside.
        let turned_s = motion.when(&|state| state.rate_rad_per_s, from_s, to_s);
        if outside(motion.at(turned_s)) > 0.0 {
            return Some(motion.when(&outside, turned_s, to_s));
        }
    }
    since
}

/// What the starting angles from 0 to 180 degrees lead to, worked out in slices.
///
/// ```
/// use noseward_stability::{Example, Settles, Swing, SwingSetup, evaluate};
///
/// let figures = evaluate(&Example::Puffin.design()).figures.expect("no fault");
/// let swing = Swing::new(&figures, &SwingSetup::default()).expect("it can be swung");
/// let mut starts = swing.starts_in_slices();
/// while !starts.is_done() {
///     starts.run(4);
/// }
/// assert_eq!(starts.tried().len(), 37);
/// assert_eq!(starts.ranges()[0].comes_to, Settles::NoseFirst);
/// ```
#[derive(Clone, Debug)]
pub struct Starts {
    swing: Swing,
    tried: Vec<Settling>,
}

impl Starts {
    /// How many starts there are: 0, 5, … 180 degrees.
    pub const COUNT: usize = 180 / APART_DEG as usize + 1;

    /// Tries so many starts more.
    pub fn run(&mut self, count: usize) {
        for _ in 0..count.min(Self::COUNT - self.tried.len()) {
            let start_rad = start_rad(self.tried.len());
            let mut settling = self.swing.watch(start_rad, false);
            settling.start_rad = start_rad;
            self.tried.push(settling);
        }
    }

    /// Whether all are tried.
    #[must_use]
    pub fn is_done(&self) -> bool {
        self.tried.len() == Self::COUNT
    }

    /// Each tried start, from 0 on. Watching ended when it had settled, so what remains is
    /// what remained then.
    #[must_use]
    pub fn tried(&self) -> &[Settling] {
        &self.tried
    }

    /// The starts that lead to the same as ranges, from 0 on without gaps.
    ///
    /// Two ranges meet at the resting angle between them that does not hold; where there
    /// is none, midway between the two starts that were tried.
    #[must_use]
    pub fn ranges(&self) -> Vec<StartRange> {
        let mut ranges: Vec<StartRange> = Vec::new();
        for start in &self.tried {
            if let Some(range) = ranges.last_mut()
                && range.comes_to == start.comes_to
            {
                range.to_rad = start.start_rad;
                let both = range.slowest.zip(start.when);
                range.slowest =
                    both.map(|(a, b)| if b.on_axis_s() > a.on_axis_s() { b } else { a });
                continue;
            }
            let mut from_rad = start.start_rad;
            if let Some(range) = ranges.last_mut() {
                let between = |rest: &&Rest| {
                    !rest.holds
                        && (range.to_rad..=start.start_rad).contains(&rest.angle_rad)
                };
                let edge = self.swing.rests.iter().find(between);
                let middle = f64::midpoint(range.to_rad, start.start_rad);
                from_rad = edge.map_or(middle, |rest| rest.angle_rad);
                range.to_rad = from_rad;
            }
            ranges.push(StartRange {
                from_rad,
                to_rad: start.start_rad,
                comes_to: start.comes_to,
                slowest: start.when,
            });
        }
        ranges
    }
}

/// The starting angle of a place in the list, in radians; exact at both ends.
fn start_rad(place: usize) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "at most 37")]
    let share = place as f64 / (Starts::COUNT - 1) as f64;
    PI * share
}
