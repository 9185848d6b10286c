//! The drawing before it is spelled in any format.

use noseward_stability::Component;
use noseward_words::Text;

use crate::palette::Colour;

/// The size of words that are drawn among the words of the page, in CSS pixels.
pub const TEXT_PX: f64 = 13.0;

/// A place in the units of its scene, from the top left corner.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Downwards.
    pub y: f64,
}

/// What the lengths of a scene are measured in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Unit {
    /// CSS pixels, so that its words are as large as those of the page round it.
    #[default]
    Px,
    /// Millimetres of paper.
    Mm,
}

/// A whole picture, or a page.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scene {
    /// Its width.
    pub width: f64,
    /// Its height.
    pub height: f64,
    /// What these and all lengths within are measured in.
    pub unit: Unit,
    /// A short name for those who cannot see it.
    pub name: String,
    /// What is drawn, back to front.
    pub groups: Vec<Group>,
}

impl Scene {
    /// A square picture without a name, all of it one group.
    pub(crate) fn picture(side: f64, items: Vec<Item>) -> Self {
        let groups = vec![Group { key: "picture", items }];
        Self { width: side, height: side, groups, ..Self::default() }
    }
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
        /// Its radius.
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
        /// How large they are: the size of their font.
        size: f64,
    },
    /// Another drawing, laid into this one.
    Placed {
        /// Where its top left corner comes to lie, before it is turned.
        at: Point,
        /// What its lengths are multiplied with.
        scale: f64,
        /// By how much it is turned about that corner, clockwise, in degrees.
        turned_deg: f64,
        /// The other one.
        scene: Scene,
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
        Self::Text { at, anchor, words: words.into(), colour, bold, size: TEXT_PX }
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
    /// Width of the line.
    pub width: f64,
    /// Lengths of dashes and gaps; empty for an unbroken line.
    pub dashes: &'static [f64],
    /// Whether what lies behind shows through the inside.
    pub clear: bool,
}

impl Style {
    /// A line.
    #[must_use]
    pub fn line(stroke: Colour, width: f64) -> Self {
        Self { stroke: Some(stroke), width, ..Self::default() }
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
