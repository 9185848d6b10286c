//! What a swing comes to.

use std::f64::consts::PI;

use serde::Serialize;

use super::Swing;
use super::motion::{Motion, ROUGH_ERROR, STEP_ERROR, State};
use super::when::When;
use crate::outcome::Rest;

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

impl Settles {
    /// Whether both look the same to the eye: across its path to within five degrees.
    #[must_use]
    pub fn is_like(self, other: Self) -> bool {
        let near = |a: f64, b: f64| (a - b).abs() < ALIKE_RAD;
        match (self, other) {
            (Self::Across { angle_rad: a }, Self::Across { angle_rad: b }) => near(a, b),
            (
                Self::StillSwinging { about_rad: Some(a) },
                Self::StillSwinging { about_rad: Some(b) },
            ) => near(a, b),
            _ => self == other,
        }
    }
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
const WATCHED_S: f64 = 12.0;
const WATCHED_TURNS: f64 = 20.0;
/// It has settled when it then stays for as many turns of the circle as this. Our
/// judgement.
const STAYS_TURNS: f64 = 3.0;
/// Two angles across the path nearer than this look the same, in radians: 5 degrees.
const ALIKE_RAD: f64 = 5.0 * PI / 180.0;
/// Nobody lets go exactly on a balance point: a start nearer than this to an angle that
/// does not hold is taken this far from it, towards the nose (from the nose itself, away):
/// a tenth of a degree, in radians.
const LET_GO_RAD: f64 = 0.1 * PI / 180.0;
/// Tried starts from 0 to 180 degrees lie this many degrees apart.
const APART_DEG: u32 = 5;
/// The border between two starts that lead to different things is halved so often: to a
/// third of a degree.
const HALVINGS: usize = 4;

/// The valley around a resting angle that holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Well {
    /// Where it rests, from −π to π: positive with the nose above the path.
    pub(super) rest_rad: f64,
    /// How far the angles that do not hold lie below and above.
    pub(super) below_rad: f64,
    pub(super) above_rad: f64,
}

impl Well {
    /// Every valley, from the resting angles with the nose above the path and below it.
    pub(super) fn all(up: &[Rest], down: &[Rest]) -> Vec<Self> {
        // All the way round, from nose-first upwards to tail-first and on, in one list.
        let back = down.iter().rev().skip(1);
        let back = back.map(|r| Rest { angle_rad: 2.0 * PI - r.angle_rad, ..*r });
        let round: Vec<Rest> = up.iter().copied().chain(back).collect();
        // The last is the first again, a turn later.
        let count = round.len() - 1;
        let held = (0..count).filter(|&i| round[i].holds);
        held.map(|i| {
            let rest_rad = round[i].angle_rad;
            let before_rad = match i.checked_sub(1) {
                Some(before) => round[before].angle_rad,
                None => round[count - 1].angle_rad - 2.0 * PI,
            };
            Self {
                rest_rad: libm::remainder(rest_rad, 2.0 * PI),
                below_rad: rest_rad - before_rad,
                above_rad: round[i + 1].angle_rad - rest_rad,
            }
        })
        .collect()
    }

    /// How far an angle is from the resting angle, from −π to π.
    fn off_rad(&self, angle_rad: f64) -> f64 {
        libm::remainder(angle_rad - self.rest_rad, 2.0 * PI)
    }

    /// How far an angle is outside of the band around the resting angle; negative inside.
    fn outside_rad(&self, angle_rad: f64) -> f64 {
        self.off_rad(angle_rad).abs() - SETTLED_RAD
    }

    fn spans(&self, angle_rad: f64) -> bool {
        let off = self.off_rad(angle_rad);
        -self.below_rad <= off && off <= self.above_rad
    }

    /// What it is to rest there.
    fn settles(&self) -> Settles {
        match self.rest_rad.abs() {
            0.0 => Settles::NoseFirst,
            angle_rad if angle_rad < PI => Settles::Across { angle_rad },
            _ => Settles::TailFirst,
        }
    }
}

/// Any angle as that between nose and path, from 0 to π.
fn folded(angle_rad: f64) -> f64 {
    libm::remainder(angle_rad, 2.0 * PI).abs()
}

/// What is known of one valley while the rocket is watched: since when it has been within
/// the band and within the valley, in seconds.
#[derive(Clone, Copy, Debug)]
struct Watched<'a> {
    well: &'a Well,
    settled_s: Option<f64>,
    inside_s: Option<f64>,
    /// How far it still swings in the last turns, in radians.
    widest_rad: f64,
}

impl<'a> Watched<'a> {
    fn new(well: &'a Well, angle_rad: f64) -> Self {
        Self {
            well,
            settled_s: (well.outside_rad(angle_rad) <= 0.0).then_some(0.0),
            inside_s: well.spans(angle_rad).then_some(0.0),
            widest_rad: 0.0,
        }
    }
}

impl Swing {
    /// How long the rocket is watched, in seconds: 12 s or 20 turns, whichever is sooner.
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

    /// Let go at an angle, without turning, on a string that hangs as it does without lift.
    pub(super) fn start(&self, angle_rad: f64, rate_rad_per_s: f64) -> State {
        State {
            angle_rad,
            rate_rad_per_s,
            elevation_rad: self.forces.elevation_rad(0.0),
            rising_rad_per_s: 0.0,
        }
    }

    /// What it comes to, let go at an angle without turning, its nose above the path.
    ///
    /// The moment at which it comes within 10 degrees of where it rests is located on the
    /// integrator's dense output. It has settled when it then stays there to the end of the
    /// watching, for three turns of the circle or more. An angle that is not finite gives a
    /// rocket that still swings.
    #[must_use]
    pub fn settling(&self, start_angle_rad: f64) -> Settling {
        self.watch(start_angle_rad, STEP_ERROR)
    }

    fn watch(&self, start_angle_rad: f64, step_error: f64) -> Settling {
        let end_s = self.watched_s();
        let late_s = end_s - STAYS_TURNS / self.setup.turns_per_s;
        let start = self.start(self.let_go(start_angle_rad), 0.0);
        let mut found = Settling {
            start_rad: folded(start_angle_rad),
            comes_to: Settles::StillSwinging { about_rad: None },
            when: None,
            rest_rad: None,
            remaining_rad: None,
        };
        let Some(mut motion) = Motion::within(&self.forces, start, step_error) else {
            return found;
        };
        let begun = |well| Watched::new(well, self.forces.off_path_rad(start));
        let mut watched: Vec<Watched<'_>> = self.wells.iter().map(begun).collect();
        while motion.time_s() < end_s {
            if motion.step().is_none() {
                return found;
            }
            let now_s = motion.time_s().min(end_s);
            let angle_rad = self.forces.off_path_rad(motion.at(now_s));
            for one in &mut watched {
                one.settled_s = still_inside(one.well, &mut motion, one.settled_s);
                let inside = one.well.spans(angle_rad);
                one.inside_s = inside.then_some(one.inside_s.unwrap_or(now_s));
                if now_s >= late_s {
                    let off = one.well.off_rad(angle_rad).abs();
                    one.widest_rad = one.widest_rad.max(off);
                }
            }
        }
        let late = |since: Option<f64>| since.filter(|&since_s| since_s <= late_s);
        let Some(one) = watched.iter().find(|one| late(one.inside_s).is_some()) else {
            return found;
        };
        let rest_rad = one.well.rest_rad.abs();
        found.rest_rad = Some(rest_rad);
        found.remaining_rad = Some(one.widest_rad);
        found.comes_to = Settles::StillSwinging { about_rad: Some(rest_rad) };
        if let Some(since_s) = late(one.settled_s) {
            found.when = Some(When::new(since_s, self.setup.turns_per_s));
            found.comes_to = one.well.settles();
        }
        found
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
        Starts { swing: self.clone(), tried: Vec::new(), borders: None }
    }
}

/// Since when the rocket has been within the band, after one more step.
fn still_inside(well: &Well, motion: &mut Motion<'_>, since: Option<f64>) -> Option<f64> {
    let forces = motion.forces();
    let outside = |state: State| well.outside_rad(forces.off_path_rad(state));
    let outside_of = |values: [f64; 4]| outside(State::of(values));
    let (from_s, to_s) = (motion.time_before_s(), motion.time_s());
    let (before, after) = (motion.state_before(), motion.state());
    if outside(after) > 0.0 {
        return None;
    }
    if outside(before) > 0.0 {
        return Some(motion.when(&outside_of, from_s, to_s));
    }
    if before.rate_rad_per_s * after.rate_rad_per_s < 0.0 {
        // It turned round within the step: perhaps outside.
        let rate = |values: [f64; 4]| State::of(values).rate_rad_per_s;
        let turned_s = motion.when(&rate, from_s, to_s);
        if outside(motion.at(turned_s)) > 0.0 {
            return Some(motion.when(&outside_of, turned_s, to_s));
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
    /// The borders between tried starts that come to different things, once all are tried.
    borders: Option<Vec<Border>>,
}

/// Between two starts that come to different things.
#[derive(Clone, Copy, Debug)]
struct Border {
    low_rad: f64,
    high_rad: f64,
    below: Settles,
    halved: usize,
}

impl Border {
    fn place_rad(&self) -> f64 {
        f64::midpoint(self.low_rad, self.high_rad)
    }
}

impl Starts {
    /// How many starts there are: 0, 5, … 180 degrees.
    pub const COUNT: usize = 180 / APART_DEG as usize + 1;

    /// Tries so many starts more; when all are tried, some between those that come to
    /// different things.
    pub fn run(&mut self, count: usize) {
        for _ in 0..count {
            if self.tried.len() < Self::COUNT {
                let start_rad = start_rad(self.tried.len());
                let mut settling = self.swing.watch(start_rad, ROUGH_ERROR);
                settling.start_rad = start_rad;
                self.tried.push(settling);
                if self.tried.len() == Self::COUNT {
                    self.borders = Some(borders(&self.tried));
                }
            } else if let Some(border) =
                self.borders.iter_mut().flatten().find(|b| b.halved < HALVINGS)
            {
                let middle_rad = border.place_rad();
                let found = self.swing.watch(middle_rad, ROUGH_ERROR).comes_to;
                let low = found.is_like(border.below);
                *(if low { &mut border.low_rad } else { &mut border.high_rad }) =
                    middle_rad;
                border.halved += 1;
            }
        }
    }

    /// Whether all are tried.
    #[must_use]
    pub fn is_done(&self) -> bool {
        let borders = self.borders.as_ref();
        borders.is_some_and(|all| all.iter().all(|border| border.halved == HALVINGS))
    }

    /// Each tried start, from 0 on.
    #[must_use]
    pub fn tried(&self) -> &[Settling] {
        &self.tried
    }

    /// The starts that lead to the same as ranges, from 0 on without gaps. The borders
    /// between them are known to a third of a degree when all is done, and to half of
    /// five before.
    #[must_use]
    pub fn ranges(&self) -> Vec<StartRange> {
        let found = self.borders.clone().unwrap_or_else(|| borders(&self.tried));
        let mut edges = found.iter().map(Border::place_rad);
        let mut ranges: Vec<StartRange> = Vec::new();
        for start in &self.tried {
            if let Some(range) = ranges.last_mut()
                && range.comes_to.is_like(start.comes_to)
            {
                range.to_rad = start.start_rad;
                let later = |a: When, b: When| {
                    if b.on_axis_s() > a.on_axis_s() { b } else { a }
                };
                range.slowest = range.slowest.zip(start.when).map(|(a, b)| later(a, b));
                continue;
            }
            let mut from_rad = start.start_rad;
            if let Some(range) = ranges.last_mut() {
                from_rad = edges.next().unwrap_or(from_rad);
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

fn borders(tried: &[Settling]) -> Vec<Border> {
    tried
        .windows(2)
        .filter(|pair| !pair[0].comes_to.is_like(pair[1].comes_to))
        .map(|pair| Border {
            low_rad: pair[0].start_rad,
            high_rad: pair[1].start_rad,
            below: pair[0].comes_to,
            halved: 0,
        })
        .collect()
}

/// The starting angle of a place in the list, in radians; exact at both ends.
fn start_rad(place: usize) -> f64 {
    #[expect(clippy::cast_precision_loss, reason = "at most 37")]
    let share = place as f64 / (Starts::COUNT - 1) as f64;
    PI * share
}
