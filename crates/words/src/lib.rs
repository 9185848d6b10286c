//! Every sentence of the page, one function each, in the language in use.
//!
//! The sentences stand in `languages/`, a folder a language and a file a place, in the syntax
//! of Fluent. The build compiles them: English into the functions themselves, so that it
//! loads with the code that says it, and every other language into a table, which the page
//! fetches when somebody chooses it. This crate knows nothing of the page or of rockets.
//!
//! ```
//! use noseward_words as words;
//!
//! assert_eq!(words::faults_body(), "Body");
//! assert_eq!(words::faults_to_mend(1_u8.into()), "One thing to mend");
//! assert_eq!(words::faults_to_mend(3_u8.into()), "3 things to mend");
//! ```

mod code;
mod languages;
mod mark;
mod marked;
mod number;
mod say;
mod table;
mod text;

/// What the build made of `languages/`.
mod sentences {
    include!(concat!(env!("OUT_DIR"), "/sentences.rs"));
}

pub use languages::{Kind, LANGUAGES, Language};
pub use mark::Mark;
pub use marked::{Marked, Runs};
pub use number::Number;
pub use sentences::*;
pub use table::{Table, TableError, language, speak};
pub use text::Text;

/// The number of a sentence without arguments, for a page that is written before it runs,
/// and what it says; `None` where there is no such sentence, or where it has arguments.
///
/// ```
/// use noseward_words as words;
///
/// let (_, body) = words::by_key("faults-body").unwrap();
/// assert_eq!(words::faults_body(), body.text().as_str());
/// assert!(words::by_key("faults-to-mend").is_none());
/// ```
#[cfg(any(test, feature = "tables"))]
#[must_use]
pub fn by_key(key: &str) -> Option<(u16, Marked)> {
    let message = MESSAGES.iter().find(|message| message.key == key)?;
    let is_alone = message.arguments.is_empty();
    is_alone.then(|| (message.sentence.id, Marked::plain(&message.sentence)))
}
