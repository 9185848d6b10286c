//! What the buttons of the place Paper ask for.

use noseward_drawing::paper::PaperSize;

use super::sheets::Sheet;
use crate::places::message::Control;

/// Something that happens to the sheets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum PaperMsg {
    Choose(Sheet),
    Size(PaperSize),
    /// To the page behind the one that is looked at, or before it.
    Leaf(bool),
    /// Answers are shown though nothing was measured.
    Anyway,
    /// All pages as a PDF: to be saved, or opened in a tab of its own.
    Pdf {
        opens: bool,
    },
    Print,
    /// The page or the drawing that is looked at as SVG.
    Svg,
    /// The same in points of colour.
    Png,
    /// What is cut along, alone, as SVG.
    Outline,
    /// What stands in rows on it, for a spreadsheet.
    Table,
}

impl PaperMsg {
    /// What a control means; `None` for one that means nothing.
    pub(crate) fn parse(control: &Control) -> Option<Self> {
        let Control { action, target } = control;
        Some(match &**action {
            "pp-sheet" => Self::Choose(Sheet::all().nth(target.parse().ok()?)?),
            "pp-size" => Self::Size(match &**target {
                "a4" => PaperSize::A4,
                "letter" => PaperSize::Letter,
                _ => return None,
            }),
            "pp-before" => Self::Leaf(false),
            "pp-behind" => Self::Leaf(true),
            "pp-anyway" => Self::Anyway,
            "pp-save" => Self::Pdf { opens: false },
            "pp-open" => Self::Pdf { opens: true },
            "pp-print" => Self::Print,
            "pp-svg" => Self::Svg,
            "pp-png" => Self::Png,
            "pp-outline" => Self::Outline,
            "pp-table" => Self::Table,
            _ => return None,
        })
    }
}
