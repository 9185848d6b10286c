//! Bytes as anything that holds a notebook, a result or a set-up, or as a payload under
//! good checks.

#![no_main]

use libfuzzer_sys::fuzz_target;
use noseward_fuzz::{
    NotebookInput, check_error, check_notebook, check_parts, check_result, check_set_up,
    link_of, notebook_input, notebook_parts_of, result_code_of,
};
use noseward_link::{
    Any, looks_like_notebook, looks_like_table, may_be_more, open_any, pieces,
};

fuzz_target!(|bytes: &[u8]| {
    let text = match notebook_input(bytes) {
        NotebookInput::Text(text) => text,
        NotebookInput::Notebook(bytes) => link_of('n', bytes),
        NotebookInput::Parts(bytes) => notebook_parts_of(bytes),
        NotebookInput::Result(bytes) => result_code_of(bytes),
        NotebookInput::SetUp(bytes) => link_of('s', bytes),
    };
    let is_notebook = looks_like_notebook(&text);
    let is_more = is_notebook || looks_like_table(&text) || pieces(&text).len() > 1;
    assert!(!is_more || may_be_more(&text));
    match open_any(&text) {
        Ok(Any::Rocket(_)) => assert!(!is_notebook),
        Ok(Any::Notebook(file)) => check_notebook(&file),
        Ok(Any::Parts(parts)) => check_parts(&parts),
        Ok(Any::Result(result)) => check_result(&result),
        Ok(Any::SetUp(link)) => check_set_up(&link),
        Err(error) => check_error(&error),
    }
});
