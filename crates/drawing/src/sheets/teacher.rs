//! The teacher pack: what whoever leads prints before a lesson, made from its set-up.

mod answers;
mod cover;
mod demonstration;
mod evidence;
mod hazards;
mod home;
mod idea;
mod lesson;
mod wrong_ideas;

use noseward_lesson::{Plan, SetUp};
use noseward_stability::{
    Confidence, Example, Figures, Swing, SwingSetup, UnitSystem, Units, evaluate,
};
use noseward_words::{self as words, Number, Text};

use crate::names::lesson as names;
use crate::paper::{Page, PaperSize};
use crate::written::Written;

pub use hazards::{hazard_heads, hazard_rows};

/// What the pack is made from.
#[derive(Clone, Copy, Debug)]
pub struct TeacherPack<'a> {
    /// How the lesson is set up.
    pub set_up: &'a SetUp,
    /// How long there is.
    pub plan: Plan,
    /// The code of its rules, as it is written.
    pub rules: &'a str,
    /// How sure the outcome of its rocket is, where that was worked out.
    pub confidence: Option<Confidence>,
}

/// A sheet of the pack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TeacherSheet {
    /// The lesson with its timings, and on a second page the kit.
    Lesson,
    /// The idea, explained.
    Idea,
    /// Ten likely wrong ideas, each with a question.
    WrongIdeas,
    /// What the questions of the lesson come to. It tells the points of the starting rocket.
    Answers,
    /// What to show at the front.
    Demonstration,
    /// Hazards, with empty columns.
    Hazards,
    /// A lesson without swinging or launching.
    Cover,
    /// A page to take home.
    Home,
    /// Which part of the lesson gives evidence for what.
    Evidence,
}

impl TeacherSheet {
    /// All of them, in the order of the pack.
    pub const ALL: [Self; 9] = [
        Self::Lesson,
        Self::Idea,
        Self::WrongIdeas,
        Self::Answers,
        Self::Demonstration,
        Self::Hazards,
        Self::Cover,
        Self::Home,
        Self::Evidence,
    ];

    /// What it is called: its title.
    #[must_use]
    pub const fn name(self) -> Text {
        match self {
            Self::Lesson => words::teacher_lesson(),
            Self::Idea => words::teacher_idea(),
            Self::WrongIdeas => words::teacher_wrong(),
            Self::Answers => words::teacher_answers(),
            Self::Demonstration => words::teacher_demonstration(),
            Self::Hazards => words::teacher_hazards(),
            Self::Cover => words::cover_title(),
            Self::Home => words::home_title(),
            Self::Evidence => words::teacher_evidence(),
        }
    }

    /// Whether it tells what pupils are to find out of the rocket that they begin with.
    #[must_use]
    pub fn tells_answers(self) -> bool {
        self == Self::Answers
    }

    /// The sheet.
    #[must_use]
    pub fn pages(self, size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
        match self {
            Self::Lesson => lesson::pages(size, of),
            Self::Idea => idea::pages(size),
            Self::WrongIdeas => wrong_ideas::pages(size),
            Self::Answers => answers::pages(size, of),
            Self::Demonstration => demonstration::pages(size, of),
            Self::Hazards => hazards::pages(size),
            Self::Cover => cover::pages(size, of),
            Self::Home => home::pages(size),
            Self::Evidence => evidence::pages(size),
        }
    }
}

/// All sheets, one behind the other.
#[must_use]
pub fn pack(size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
    TeacherSheet::ALL.into_iter().flat_map(|sheet| sheet.pages(size, of)).collect()
}

impl TeacherPack<'_> {
    fn units(self) -> Units {
        Units { system: self.set_up.units }
    }

    /// What is known of the rocket that every group begins with.
    fn figures(self) -> Option<Figures> {
        evaluate(self.set_up.rocket.as_ref()?).figures
    }

    /// The longest string and the fastest turns.
    fn swing_setup(self) -> SwingSetup {
        SwingSetup {
            string_m: self.set_up.limits.string_m,
            turns_per_s: self.set_up.limits.turns_per_s,
            ..SwingSetup::default()
        }
    }

    fn string(self) -> String {
        let metres = self.set_up.limits.string_m;
        match self.set_up.units {
            UnitSystem::Metric => format!("{} m", Number::trimmed(metres, 2)),
            UnitSystem::Inch => self.units().length(metres * 1000.0),
        }
    }

    fn turns(self) -> String {
        let turns = self.set_up.limits.turns_per_s;
        words::swing_turns_a_second(Number::trimmed(turns, 2))
    }

    /// The line that nobody crosses, and what it was worked out for: the rocket that groups
    /// begin with, or an example. `None` where it pulls too hard for a pupil's arm.
    fn space(self) -> Option<(String, String)> {
        let figures = self.figures().or_else(example)?;
        let space = Swing::new(&figures, &self.swing_setup())?.space();
        let metres = |value: f64| Number::trimmed(value, 1);
        let (clear, across) = (metres(space.clear_m), metres(space.clear_across_m()));
        let line = words::swing_space_line(clear, across).text();
        let length = self.units().reading(figures.length_m * 1000.0);
        let holds = words::teacher_show_holds(&self.string(), &self.turns(), &length);
        Some((line, holds))
    }
}

fn example() -> Option<Figures> {
    evaluate(&Example::Puffin.design()).figures
}

#[cfg(test)]
mod tests;
