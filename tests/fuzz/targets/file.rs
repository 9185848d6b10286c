//! Bytes as a saved file.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{check_error, check_record};
use noseward_link::open_file;

fuzz_target!(|bytes: &[u8]| {
    match open_file(&String::from_utf8_lossy(bytes)) {
        Ok(record) => check_record(&record),
        Err(error) => check_error(&error),
    }
});
