//! A page of paper: a scene in millimetres, and what each of its groups is to somebody who has
//! it read out.

use crate::scene::{Group, Item, Scene, Unit};

/// A sheet as printers have it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PaperSize {
    /// 210 × 297 mm (ISO 216).
    #[default]
    A4,
    /// 8.5 × 11 inches.
    Letter,
}

impl PaperSize {
    /// Both.
    pub const ALL: [Self; 2] = [Self::A4, Self::Letter];

    /// Width and height in millimetres.
    #[must_use]
    pub fn size_mm(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}

/// Nothing is drawn nearer to an edge, in millimetres: printers leave some of it white.
pub(crate) const MARGIN_MM: f64 = 12.0;
/// Width and height of what both papers have room for within these margins, in millimetres.
pub(crate) const ROOM_MM: (f64, f64) = (186.0, 255.0);

/// What a group of a page is.
#[derive(Clone, Debug, PartialEq)]
pub enum Tag {
    /// A heading; the title of a sheet is of level 1.
    Heading(u8),
    /// A paragraph, or an entry of a list.
    Paragraph,
    /// A cell of a table: in which row, from 0, and whether it is a heading. The next table
    /// begins with row 0.
    Cell {
        /// Its row.
        row: usize,
        /// Whether it names what stands below or beside it.
        is_head: bool,
    },
    /// A drawing, which the name of its scene tells.
    Figure(String),
    /// Lines and words that say nothing of their own, such as the number of the page.
    Artifact,
}

/// One page.
#[derive(Clone, Debug, PartialEq)]
pub struct Page {
    /// What is drawn on it, in millimetres from the top left corner of the paper.
    pub scene: Scene,
    /// What each of its groups is, in the order in which they are read.
    pub tags: Vec<Tag>,
}

impl Page {
    pub(crate) fn blank(size: PaperSize, name: &str) -> Self {
        let (width, height) = size.size_mm();
        let scene = Scene {
            width,
            height,
            unit: Unit::Mm,
            name: name.to_owned(),
            groups: vec![],
        };
        Self { scene, tags: Vec::new() }
    }

    pub(crate) fn push(&mut self, tag: Tag, items: Vec<Item>) {
        let key = match tag {
            Tag::Heading(_) => "heading",
            Tag::Paragraph => "paragraph",
            Tag::Cell { .. } => "cell",
            Tag::Figure(_) => "figure",
            Tag::Artifact => "artifact",
        };
        self.scene.groups.push(Group { key, items });
        self.tags.push(tag);
    }
}
