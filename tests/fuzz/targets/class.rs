//! Bytes as whatever is handed in to a class: pasted, or the file of a group or of a class.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::check_gathered;

fuzz_target!(|bytes: &[u8]| check_gathered(&String::from_utf8_lossy(bytes)));
