//! Bytes as a pasted text, and as a cell of a table.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{check_error, check_record};
use noseward_link::{Text, escape_formula, open_text};

fuzz_target!(|bytes: &[u8]| {
    let text = String::from_utf8_lossy(bytes);
    match open_text(&text) {
        Ok(Text::Record { record, .. }) => check_record(&record),
        Ok(Text::Partial { design, missing }) => {
            assert!(!missing.is_empty());
            check_record(&design.into());
        }
        Err(error) => check_error(&error),
    }
    let cell = escape_formula(&text);
    assert!(!cell.trim_start().starts_with(['=', '@']));
    assert_eq!(escape_formula(&cell), cell);
});
