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

mod choice;
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

use std::borrow::Cow;

pub use choice::Choice;
pub use languages::{Kind, LANGUAGES, Language};
pub use mark::Mark;
pub use marked::{Marked, Runs};
pub use number::{Number, as_typed, decimal_mark};
pub use say::isolated;
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

/// What the language in use has for a sentence without arguments, by the number that
/// [`by_key`] gives; `None` in English, and where English is said in its place.
#[must_use]
pub fn written(id: u16) -> Option<Marked> {
    table::in_use(id).map(|sentence| Marked(Cow::Borrowed(sentence)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_stands_in_the_page_is_found_by_its_number() {
        let (id, purpose) = by_key("index-purpose").unwrap();
        assert_eq!(purpose.text(), "Will your bottle rocket fly nose-first?");
        assert_eq!(written(id), None);
        let german = TABLES.iter().find(|(key, _)| *key == "de").unwrap().1;
        speak(Some(Table::load(german.to_vec()).unwrap()));
        let german = written(id).unwrap();
        assert_eq!(german.text(), "Fliegt eure Flaschenrakete mit der Nase voran?");
        assert_eq!(by_key("index-purpose"), Some((id, german)));
        assert_eq!(written(u16::MAX), None);
    }
}
