//! The drawing before it is spelled in any format.

use noseward_stability::Component;
use noseward_words::Text;

use crate::palette::Colour;

/// A place in CSS pixels, from the top left corner.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Downwards.
    pub y: f64,
}

/// A whole picture.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scene {
    /// Width in CSS pixels.
    pub width_px: f64,
    /// Height in CSS pixels.
    pub height_px: f64,
    /// A short name for those who cannot see it.
    pub name: String,
    /// What is drawn, back to front.
    pub groups: Vec<Group>,
}

/// Things that are redrawn together.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Group {
    /// Its name within the scene.
    pub key: &'static str,
    /// Back to front.
    pub items: Vec<Item>,
}

/// One thing that is drawn.
#[derive(Clone, Debug, PartialEq)]
pub enum Item {
    /// Lines or areas.
    Path {
        /// Where.
        path: Path,
        /// How.
        style: Style,
    },
    /// A disc.
    Dot {
        /// Its middle.
        centre: Point,
        /// Its radius in pixels.
        radius: f64,
        /// How.
        style: Style,
    },
    /// One line of words.
    Text {
        /// Where the line's base starts, centres or ends.
        at: Point,
        /// Which of these.
        anchor: Anchor,
        /// The words.
        words: String,
        /// Their colour.
        colour: Colour,
        /// Whether they are bold.
        bold: bool,
    },
    /// The drawing of one part of the rocket, which can be pointed at.
    Part {
        /// Which part.
        part: Component,
        /// What a hand can do with it; `None` where it can only be pointed at.
        hint: Option<Text>,
        /// What it is drawn with.
        items: Vec<Self>,
    },
    /// Where a hand takes hold of a part to drag it: two short level lines, and more room
    /// round them than is seen, so that a finger finds it. Nothing of it is printed.
    Grip {
        /// Its middle.
        at: Point,
        /// From the middle to either line, in pixels.
        apart_px: f64,
        /// Half the length of a line, in pixels.
        half_px: f64,
    },
}

impl Item {
    /// The thin lines of a graph, which go under everything else.
    pub(crate) fn grid(lines: Path) -> Self {
        Self::Path { path: lines, style: Style::line(Colour::BoldLine, 1.0) }
    }

    /// One line of words.
    pub(crate) fn text(
        at: Point,
        anchor: Anchor,
        words: impl Into<String>,
        colour: Colour,
        bold: bool,
    ) -> Self {
        Self::Text { at, anchor, words: words.into(), colour, bold }
    }
}

/// Which end of a line of words its place means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// The left end.
    Start,
    /// The middle.
    Middle,
    /// The right end.
    End,
}

/// Straight strokes; each inner list is one run of the pen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Path {
    /// The runs, each with whether it is closed.
    pub runs: Vec<(Vec<Point>, bool)>,
}

impl Path {
    /// One open run.
    #[must_use]
    pub fn open(points: Vec<Point>) -> Self {
        Self { runs: vec![(points, false)] }
    }

    /// One closed run.
    #[must_use]
    pub fn closed(points: Vec<Point>) -> Self {
        Self { runs: vec![(points, true)] }
    }

    /// Adds a straight line.
    pub fn line(&mut self, from: Point, to: Point) {
        self.runs.push((vec![from, to], false));
    }
}

/// How a path is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Style {
    /// Colour of the inside.
    pub fill: Option<Colour>,
    /// Colour of the line.
    pub stroke: Option<Colour>,
    /// Width of the line in pixels.
    pub width_px: f64,
    /// Lengths of dashes and gaps in pixels; empty for an unbroken line.
    pub dashes: &'static [f64],
    /// Whether what lies behind shows through the inside.
    pub clear: bool,
}

impl Style {
    /// A line.
    #[must_use]
    pub fn line(stroke: Colour, width_px: f64) -> Self {
        Self { stroke: Some(stroke), width_px, ..Self::default() }
    }

    /// An area without an edge.
    #[must_use]
    pub fn area(fill: Colour) -> Self {
        Self { fill: Some(fill), ..Self::default() }
    }

    /// The same with an inside.
    #[must_use]
    pub fn filled(self, fill: Colour) -> Self {
        Self { fill: Some(fill), ..self }
    }

    /// The same with an inside that one sees through.
    #[must_use]
    pub fn clear(self) -> Self {
        Self { clear: true, ..self }
    }

    /// The same with a broken line.
    #[must_use]
    pub fn dashed(self, dashes: &'static [f64]) -> Self {
        Self { dashes, ..self }
    }
}
