//! Every cell of a row, with whatever people and spreadsheets leave in it.

use noseward_lesson::{Class, ClassLabel, ResultPrediction, SwingOutcome, TrialResult};
use noseward_link::{Format, class_to_table, rules_of_text};

use crate::schools::RULES;
use crate::table::Table;
use crate::trials::{as_code, trial};

/// What stands in cells.
const CELLS: [&str; 108] = [
    "",
    " ",
    "?",
    "0",
    "1",
    "+1",
    "-1",
    "\u{2212}1",
    "- 1",
    "+-1",
    "1.0",
    "1,0",
    "1.5",
    "1.25",
    "1,234",
    "1.234",
    "-1.234",
    "0.125",
    "1234.5",
    "1,234.5",
    "1.234,5",
    "1.234.567",
    "1,234,567.25",
    "12,34,5",
    "1234.567",
    "123,456.789",
    "1e5",
    "inf",
    "nan",
    "0x1",
    "1_000",
    "1.",
    ".5",
    ".",
    ",",
    "00012",
    "6",
    "7",
    "255",
    "256",
    "300",
    "9999.96",
    "10000.1",
    "65534",
    "65535",
    "99999999999999",
    "123456789012345",
    "1234567890123456",
    "12:30",
    "3/4",
    "12 mm",
    "yes",
    "No",
    " YES ",
    "ja",
    "true",
    "steady",
    "Tail First",
    "tail-first",
    "TAIL_FIRST",
    "slipped",
    "not sure",
    "mixed",
    "blue 4",
    "Blue 04",
    "blue +4",
    "blue 41",
    "blue 0",
    "blue  4",
    "blue4",
    "grey 40",
    "gray 1",
    "7b-2",
    "'7b-2",
    "''7b",
    "'abc",
    "'-",
    "abc",
    "AB1CD2EF3GHJ",
    "'AB1CD2EF3GH",
    "AB1C2DE3FG4H",
    "1234567890123",
    "größe",
    "k7q-O",
    "28T5",
    "'28t5",
    "28-t5",
    "2 8 T O",
    "28U5",
    "28T",
    "result",
    "OLDER",
    "class",
    "notebook",
    "kind_of_row",
    "Kind of row [kind_of_row]",
    "\u{a0}5\u{a0}",
    "two\r\nlines",
    "\"x\"; y, z",
    "=1+1",
    "\u{feff}=1",
    "#N/A",
    "wahr",
    "'Wahr",
    "7B\u{200f}",
    "١٢",
    "in 3 steps we made it far longer",
    "'=1+1",
];

/// A table in which each of them stands in each column once, in a row with readings and in one
/// without.
#[must_use]
pub fn every_cell(format: Format) -> String {
    let mut class = Class::default();
    class.label = ClassLabel::new("7B").unwrap_or_default();
    let predicted =
        Some(ResultPrediction { outcome: SwingOutcome::Steady, swings_seen: 2 });
    for result in [trial(0, 50), as_code(&trial(1, 51))] {
        let result = TrialResult { rules: rules_of_text(RULES), predicted, ..result };
        let added = class.add(&class.label.clone(), result, true);
        assert!(added.is_ok(), "{added:?}");
    }
    let mut table = Table::of(&class_to_table(&class, format, false, &|_| String::new()));
    let (examples, trial_at) = (table.rows[1..3].to_vec(), table.column("trial"));
    table.rows.truncate(1);
    let long = ["x".repeat(300), "x".repeat(301)];
    let cells = CELLS.into_iter().chain(long.iter().map(String::as_str));
    for (number, (column, cell)) in (1..).zip(
        (0..table.rows[0].len())
            .flat_map(|column| cells.clone().map(move |cell| (column, cell))),
    ) {
        for (row, number) in examples.iter().zip([2 * number, 2 * number + 1]) {
            let mut row = row.clone();
            if let Some(trial) = trial_at {
                row[trial] = i32::to_string(&number);
            }
            cell.clone_into(&mut row[column]);
            table.rows.push(row);
        }
    }
    table.text()
}
