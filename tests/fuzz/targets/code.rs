//! Bytes as a typed code, or as a payload under good checksums.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{Input, check_error, check_record, code_of, input};
use noseward_link::{looks_like_code, open_code};

fuzz_target!(|bytes: &[u8]| {
    let text = match input(bytes) {
        Input::Text(text) => text,
        Input::Payload(bytes) => code_of(bytes),
    };
    let _ = looks_like_code(&text);
    match open_code(&text) {
        Ok(record) => check_record(&record),
        Err(error) => check_error(&error),
    }
});
