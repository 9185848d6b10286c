//! What is left of the open notebook should the module ever stop: `boot.js` shows it then,
//! and makes it a file.

use maud::html;
use noseward_link::notebook_text_name;
use noseward_words as words;

use crate::app::{Slot, State};
use crate::notebook::kept;
use crate::places::labels;
use crate::shell::marked::marked;
use crate::shell::{Region, region};

/// The name of the open notebook and a link to its file. Its text is here only as long as it
/// is not kept on this computer: from then on it stands in local storage.
pub(crate) fn for_crash(state: &State) -> Vec<Region> {
    let desk = &state.desk;
    let notebook = &desk.notebook;
    if notebook.is_blank() {
        return vec![region("crash-notebook", html! {})];
    }
    let text = if desk.unsaved { kept(state) } else { String::new() };
    let sentence = words::crash_notebook(&labels::group(notebook.group));
    let file = notebook_text_name(notebook);
    let markup = html! {
        p {
            (marked(&sentence, &|_, run| html! {
                a download=(file) data-key=(Slot::key(desk.slot)) { (run) }
            }))
        }
        div { (text) }
    };
    vec![region("crash-notebook", markup)]
}
