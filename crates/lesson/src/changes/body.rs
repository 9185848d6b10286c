//! How the body was rearranged, and what that did to everything that sits on it.

use noseward_stability::{Design, Mass, Quantity};

use super::align::{Step, align};
use super::parts::{self, OTHER_PART};

/// Places closer than this are the same, in millimetres.
const SAME_PLACE_MM: f64 = 0.05;

/// The sections of two rockets side by side.
pub(super) struct Bodies<'a> {
    before: &'a Design,
    after: &'a Design,
    /// Which section is which, from nose to tail.
    pub(super) steps: Vec<Step>,
    /// How much longer each step made the body, in millimetres.
    longer_mm: Vec<f64>,
}

/// How a place on the body changed.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Displacement {
    /// Where it would be, had it only followed the body, in millimetres.
    pub(super) expected_mm: f64,
    /// Which steps took it along.
    pub(super) by: Vec<bool>,
}

impl<'a> Bodies<'a> {
    pub(super) fn new(before: &'a Design, after: &'a Design) -> Self {
        let lens = (before.sections.len(), after.sections.len());
        let gap = parts::cost(OTHER_PART, 1);
        let steps = align(lens, gap, |i, j| {
            let differences = parts::of_sections((before, i), (after, j)).len();
            super::each(differences)
        });
        let length = |design: &Design, at: Option<usize>| {
            at.map_or(0.0, |i| design.sections[i].length_mm)
        };
        let longer = |&(i, j): &Step| length(after, j) - length(before, i);
        let longer_mm = steps.iter().map(longer).collect();
        Self { before, after, steps, longer_mm }
    }

    /// How much longer a step made the body, in millimetres.
    pub(super) fn longer_mm(&self, step: usize) -> f64 {
        self.longer_mm[step]
    }

    /// How a place went from `from_mm` to `to_mm`. It followed the body where it kept its
    /// distance from the tail or from either end of the section that it sits on;
    /// otherwise only sections that came or went in front of it took it along.
    pub(super) fn carried(&self, from_mm: f64, to_mm: f64) -> Displacement {
        let count = self.steps.len();
        let sits = self.step_under(self.before, from_mm, |step| step.0);
        let ways = [
            self.along(from_mm, |_| false),
            self.along(from_mm, |_| true),
            self.along(from_mm, |step| step < sits),
            self.along(from_mm, |step| step <= sits && sits < count),
        ];
        let found = ways.into_iter().find(|way| near(way.expected_mm, to_mm));
        found.unwrap_or_else(|| self.pushed(from_mm))
    }

    /// A place of before, taken along by the sections that came or went in front of it.
    pub(super) fn pushed(&self, from_mm: f64) -> Displacement {
        let sits = self.step_under(self.before, from_mm, |step| step.0);
        self.along(from_mm, |step| step < sits && self.came_or_went(step))
    }

    /// The steps that a place of after owes its place to: sections that came or went in
    /// front of it.
    pub(super) fn pushed_to(&self, to_mm: f64) -> Vec<bool> {
        let sits = self.step_under(self.after, to_mm, |step| step.1);
        (0..self.steps.len()).map(|k| k < sits && self.came_or_went(k)).collect()
    }

    /// Where a section was removed that another had been weighed with, and that one took
    /// its mass over, or the other way round: that one's place in after, and its mass
    /// before.
    pub(super) fn mass_passed(&self, step: usize) -> Option<(usize, Mass)> {
        let &(i, j) = self.steps.get(step + 1)?;
        let old = self.before.sections[i?].mass;
        let new = self.after.sections[j?].mass;
        let passes = match self.steps[step] {
            (Some(gone), None) => {
                old == Mass::Joined && new == self.before.sections[gone].mass
            }
            (None, Some(come)) => {
                new == Mass::Joined && old == self.after.sections[come].mass
            }
            _ => false,
        };
        (passes && old != new).then_some((j?, old))
    }

    fn came_or_went(&self, step: usize) -> bool {
        let (i, j) = self.steps[step];
        i.is_none() || j.is_none()
    }

    fn along(&self, from_mm: f64, takes: impl Fn(usize) -> bool) -> Displacement {
        let by: Vec<bool> = (0..self.steps.len()).map(takes).collect();
        let moves = self.longer_mm.iter().zip(&by).filter(|(_, takes)| **takes);
        let moved_mm: f64 = moves.map(|(mm, _)| mm).sum();
        Displacement { expected_mm: Quantity::Length.rounded(from_mm + moved_mm), by }
    }

    /// The step of the section that a place sits on; behind the tail, the number of steps.
    fn step_under(
        &self,
        design: &Design,
        mm: f64,
        side: impl Fn(&Step) -> Option<usize>,
    ) -> usize {
        let mut rear_mm = 0.0;
        let on = design.sections.iter().position(|section| {
            rear_mm += section.length_mm;
            mm < rear_mm - SAME_PLACE_MM
        });
        let step = on.and_then(|on| self.steps.iter().position(|s| side(s) == Some(on)));
        step.unwrap_or(self.steps.len())
    }
}

pub(super) fn near(a_mm: f64, b_mm: f64) -> bool {
    (a_mm - b_mm).abs() < SAME_PLACE_MM
}
