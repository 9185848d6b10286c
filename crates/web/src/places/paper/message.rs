//! What the buttons of the place Paper ask for.

use noseward_drawing::paper::PaperSize;

use super::sheets::Sheet;
use crate::places::message::Control;

/// Something that happens to the sheets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum PaperMsg {
    Choose(Sheet),
    Size(PaperSize),
    /// To look at this page.
    Page(usize),
    /// Answers are shown though nothing was measured.
    Anyway,
    /// All pages as a PDF.
    Save,
    /// To stop making them.
    Stop,
    Print,
    /// The page that is looked at as SVG.
    Svg,
    /// What is cut along, alone, as SVG.
    Outline,
}

impl PaperMsg {
    /// What a control means; `None` for one that means nothing.
    pub(crate) fn parse(control: &Control) -> Option<Self> {
        let Control { action, target } = control;
        Some(match &**action {
            "pp-sheet" => Self::Choose(*Sheet::ALL.get(target.parse::<usize>().ok()?)?),
            "pp-size" => Self::Size(match &**target {
                "a4" => PaperSize::A4,
                "letter" => PaperSize::Letter,
                _ => return None,
            }),
            "pp-page" => Self::Page(target.parse().ok()?),
            "pp-anyway" => Self::Anyway,
            "pp-save" => Self::Save,
            "pp-stop" => Self::Stop,
            "pp-print" => Self::Print,
            "pp-svg" => Self::Svg,
            "pp-outline" => Self::Outline,
            _ => return None,
        })
    }
}
