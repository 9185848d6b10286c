//! What the columns of the table of a class are called, in the language in use.

use noseward_words::{self as words, Text};

use crate::places::hand_in;

/// Those that the table of a notebook has not, by their keys.
const OWN: [(&str, Text); 21] = [
    ("class", words::report_column_class()),
    ("what_changed", words::report_column_changed()),
    ("changes", words::report_column_changes()),
    ("rules", words::report_column_rules()),
    ("body_width_mm", words::report_column_width()),
    ("mass_g", words::report_column_mass()),
    ("computed_centre_of_mass_mm", words::report_column_mass_computed()),
    ("computed_centre_of_pressure_mm", words::report_column_pressure_computed()),
    ("centre_of_mass_readings", words::report_column_mass_readings()),
    ("centre_of_pressure_readings", words::report_column_pressure_readings()),
    ("prediction", words::report_column_prediction()),
    ("prediction_swings_seen", words::report_column_seen_before()),
    ("two_changes_allowed", words::report_column_two_allowed()),
    ("swung_first", words::report_column_swung_first()),
    ("example", words::report_column_example()),
    ("hidden", words::report_column_hidden()),
    ("marked", words::report_column_marked()),
    ("nose_first", words::report_column_nose_first()),
    ("delete_by", words::report_column_delete_by()),
    ("notebook", words::report_column_notebook()),
    ("statements", words::report_column_statements()),
];

/// What the column with this key is called; nothing for a key that is not known here.
pub(super) fn called(key: &str) -> String {
    match OWN.iter().find(|(known, _)| *known == key) {
        Some((_, words)) => (*words).into(),
        None => hand_in::called(key),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::places::labels::in_languages;
    use noseward_lesson::Class;
    use noseward_link::{Format, class_to_table};

    fn headings(called: &dyn Fn(&str) -> String) -> Vec<String> {
        let table = class_to_table(&Class::default(), Format::Tabs, true, called);
        table.lines().next().unwrap().split('\t').map(str::to_owned).collect()
    }

    #[test]
    fn every_column_is_called_something_of_its_own() {
        in_languages(&|| {
            let keys = headings(&|_| String::new());
            for (key, _) in OWN {
                assert!(keys.iter().any(|known| known == key), "{key} is no column");
            }
            let called: Vec<_> = keys.iter().map(|key| called(key)).collect();
            for (i, words) in called.iter().enumerate() {
                assert!(words.starts_with(char::is_alphabetic), "{}: {words}", keys[i]);
                assert!(!words.contains([',', ';', '"', '[', ']', '\n']), "{words}");
                assert!(!called[..i].contains(words), "{words}");
            }
        });
    }
}
