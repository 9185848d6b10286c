//! Bytes as the text after `#`, or as a payload under a good checksum.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{Input, check_design, input, link_of};
use noseward_link::{Opened, open_hash};

fuzz_target!(|bytes: &[u8]| {
    let opened = match input(bytes) {
        Input::Text(text) => open_hash(&text),
        Input::Payload(payload) => open_hash(&link_of(payload)),
    };
    match opened {
        Opened::Design(design) => check_design(&design),
        Opened::Partial { design, missing } => {
            assert!(!missing.is_empty());
            check_design(&design);
        }
        Opened::Damaged(damage) => assert!(!damage.to_string().is_empty()),
        Opened::Nothing => {}
    }
});
