//! What the buttons of the place Hand in ask for.

use noseward_link::Format;

/// A way out of this computer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum HandInMsg {
    /// All of it: the rocket alone where nothing is written.
    Save,
    SaveRocket,
    Spreadsheet(Format),
    PlainText,
    CopyTable(Format),
    /// The result of a trial, by its number.
    CopyResult(u16),
    CopyLink,
    /// The notebook as symbols, or no longer.
    Symbols,
}

impl HandInMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        Some(match action {
            "nb-save" => Self::Save,
            "nb-csv-point" => Self::Spreadsheet(Format::PointComma),
            "nb-csv-comma" => Self::Spreadsheet(Format::CommaSemicolon),
            "nb-text" => Self::PlainText,
            "nb-copy-table" => Self::CopyTable(Format::Tabs),
            "nb-copy-table-comma" => Self::CopyTable(Format::TabsComma),
            "nb-copy-result" => Self::CopyResult(target.parse().ok()?),
            "nb-copy-link" => Self::CopyLink,
            "nb-symbols" => Self::Symbols,
            _ => return None,
        })
    }
}
