//! A list in words for a spreadsheet, which nothing reads back.

use csv::{Terminator, WriterBuilder};

use super::Format;
use crate::escape_formula;

/// Rows of words as a table, the headings first: lines end in CR LF, a file begins with a byte
/// order mark, and what a spreadsheet would take for a formula stands behind an apostrophe.
///
/// ```
/// use noseward_link::{Format, list_to_table};
///
/// let rows = [["step", "done"], ["swing; look", "=1"]];
/// let table = list_to_table(rows, Format::CommaSemicolon);
/// assert_eq!(table, "\u{feff}step;done\r\n\"swing; look\";'=1\r\n");
/// ```
#[must_use]
pub fn list_to_table<S: AsRef<str>, const N: usize>(
    rows: impl IntoIterator<Item = [S; N]>,
    format: Format,
) -> String {
    let mut table = WriterBuilder::new()
        .delimiter(format.delimiter())
        .terminator(Terminator::CRLF)
        .from_writer(Vec::new());
    for row in rows {
        let cells = row.each_ref().map(|cell| escape_formula(cell.as_ref()));
        let Ok(()) = table.write_record(cells.each_ref().map(|cell| cell.as_bytes()))
        else {
            unreachable!("memory has room")
        };
    }
    let Ok(bytes) = table.into_inner() else { unreachable!("memory has room") };
    let Ok(text) = String::from_utf8(bytes) else { unreachable!("cells are text") };
    if format.is_file() { format!("\u{feff}{text}") } else { text }
}
