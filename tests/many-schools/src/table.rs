//! A table of a class as rows of cells, to change some.

use csv::{ReaderBuilder, Terminator, WriterBuilder};

/// Rows of cells, the headings first.
pub(crate) struct Table {
    pub(crate) rows: Vec<Vec<String>>,
    delimiter: u8,
}

const MARK: char = '\u{feff}';

impl Table {
    /// The table in a file that the page wrote.
    pub(crate) fn of(text: &str) -> Self {
        let text = text.trim_start_matches(MARK);
        let headings = text.lines().next().unwrap_or_default();
        let count = |mark: char| headings.matches(mark).count();
        let delimiter = if count(';') > count(',') { b';' } else { b',' };
        let mut reader = ReaderBuilder::new()
            .has_headers(false)
            .delimiter(delimiter)
            .from_reader(text.as_bytes());
        let cells =
            |record: csv::StringRecord| record.iter().map(str::to_owned).collect();
        let rows = reader.records().filter_map(Result::ok).map(cells).collect();
        Self { rows, delimiter }
    }

    /// The place of the column with a key.
    pub(crate) fn column(&self, key: &str) -> Option<usize> {
        let bracketed = format!("[{key}]");
        self.rows[0].iter().position(|found| found == key || found.ends_with(&bracketed))
    }

    /// Puts a cell into a row, the first behind the headings being 0; without a key behind the
    /// last cell.
    pub(crate) fn put(&mut self, row: u16, key: &str, cell: &str) {
        let column = self.column(key);
        let row = &mut self.rows[usize::from(row) + 1];
        match column {
            Some(column) => cell.clone_into(&mut row[column]),
            None => row.push(cell.to_owned()),
        }
    }

    /// The file with it.
    pub(crate) fn text(&self) -> String {
        let mut writer = WriterBuilder::new()
            .delimiter(self.delimiter)
            .terminator(Terminator::CRLF)
            .flexible(true)
            .from_writer(vec![]);
        let written = self.rows.iter().all(|row| writer.write_record(row).is_ok());
        let bytes = writer.into_inner().unwrap_or_default();
        assert!(written, "memory has room");
        format!("{MARK}{}", String::from_utf8_lossy(&bytes))
    }
}
