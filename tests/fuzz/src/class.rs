//! What must hold for whatever is handed in to a class.

use noseward_lesson::{Class, Entry};
use noseward_link::{ClassRow, Format, Gathering, HandedIn, class_to_table};

use crate::check_error;

/// Takes a text in as the page does, and holds the class that comes of it against its table.
///
/// # Panics
///
/// If a promise is broken.
pub fn check_gathered(text: &str) {
    let class = gathered(text);
    let table = class_to_table(&class, Format::PointComma, true, &|_| String::new());
    let again = gathered(&table);
    assert_eq!(again.entries(), class.entries());
    assert_eq!(again.works(), class.works());
}

fn gathered(text: &str) -> Class {
    let mut class = Class::default();
    for found in Gathering::new("", text) {
        assert!(found.line > 0);
        match found.what {
            Ok(HandedIn::Result(result)) => {
                let label = class.label.clone();
                add(&mut class, Entry::new(label, *result));
            }
            Ok(HandedIn::Row(row)) => match *row {
                ClassRow::Result(entry) | ClassRow::Older(entry) => {
                    add(&mut class, entry)
                }
                ClassRow::Work(work) => drop(class.add_work(work)),
                ClassRow::Class(_) => {}
            },
            Ok(
                HandedIn::Notebook(_)
                | HandedIn::Rocket
                | HandedIn::SetUp
                | HandedIn::Part { .. }
                | HandedIn::Words,
            ) => {}
            Err(error) => check_error(&error),
        }
    }
    class
}

fn add(class: &mut Class, entry: Entry) {
    let (group, trial) = (entry.result.group, entry.result.trial);
    if class.add(&entry.class, entry.result, true).is_ok()
        && let Some(known) = class.find_mut(&entry.class, group, trial)
    {
        known.hidden |= entry.hidden;
        known.marked |= entry.marked;
    }
}
