//! What is left of the open notebook should the module ever stop: `boot.js` shows it then,
//! and makes it a file.

use maud::html;
use noseward_link::notebook_text_name;

use crate::app::{Slot, State};
use crate::notebook::kept;
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
    let markup = html! {
        p {
            "The notebook of " strong { (notebook.group) } " was open: "
            a download=(notebook_text_name(notebook))
                data-key=(Slot::key(desk.slot)) { "save it as a file" }
            ". Open that file here later, if the notebook is not there any more."
        }
        div { (text) }
    };
    vec![region("crash-notebook", markup)]
}
