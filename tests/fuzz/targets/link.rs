//! Bytes as the text after `#`, or as a payload under a good checksum.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{Input, check_error, check_record, input, link_of};
use noseward_link::{Opened, open_hash};

fuzz_target!(|bytes: &[u8]| {
    let opened = match input(bytes) {
        Input::Text(text) => open_hash(&text),
        Input::Payload(bytes) => open_hash(&link_of('r', bytes)),
    };
    match opened {
        Opened::Record(record) => check_record(&record),
        Opened::Partial { design, missing } => {
            assert!(!missing.is_empty());
            check_record(&design.into());
        }
        Opened::Damaged(error) => check_error(&error),
        Opened::Nothing => {}
    }
});
