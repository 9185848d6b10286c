//! What the columns of a table are called, in the language in use.

use noseward_lesson::BalancePoint;
use noseward_words::{self as words, Number, Text};

use crate::places::labels;

/// The columns that are there once, by their keys.
const ONCE: [(&str, Text); 33] = [
    ("kind_of_row", words::columns_kind()),
    ("group", words::columns_group()),
    ("trial", words::columns_trial()),
    ("compared_with", words::columns_compared_with()),
    ("plan", words::columns_plan()),
    ("rocket", words::columns_rocket()),
    ("rocket_name", words::columns_rocket_name()),
    ("rocket_length_mm", words::columns_rocket_length()),
    ("cutout_length_mm", words::columns_cutout_length()),
    ("measured_separation_mm", words::columns_measured_separation()),
    ("computed_separation_mm", words::columns_computed_separation()),
    ("draft_outcome", words::columns_draft()),
    ("draft_because", words::columns_draft_because()),
    ("string_m", words::columns_string()),
    ("arm_m", words::columns_arm()),
    ("turns_per_s", words::columns_turns()),
    ("air_density_g_m3", words::columns_air_density()),
    ("all_swings", words::columns_all_swings()),
    ("note", words::columns_note()),
    ("seal", words::columns_seal()),
    ("altered", words::columns_altered()),
    ("place", words::columns_place()),
    ("version", words::columns_version()),
    ("level", words::columns_level()),
    ("help", words::columns_help()),
    ("two_changes", words::columns_two_changes()),
    ("in_hand", words::columns_in_hand()),
    ("telling", words::columns_telling()),
    ("set_up", words::columns_set_up()),
    ("claim", words::lesson_claim()),
    ("evidence", words::lesson_evidence()),
    ("reason", words::lesson_reason()),
    ("trust", words::lesson_trust()),
];

/// What the column with this key is called; nothing for a key that is not known here.
pub(crate) fn called(key: &str) -> String {
    let is_key = |(known, _): &&(&str, Text)| *known == key;
    match ONCE.iter().find(is_key) {
        Some((_, words)) => (*words).into(),
        None => of_point(key).or_else(|| numbered(key)).unwrap_or_default(),
    }
}

/// Of the readings of a point.
fn of_point(key: &str) -> Option<String> {
    let of = |point, front| Some((point, key.strip_prefix(front)?));
    let (point, what) = of(BalancePoint::Mass, "centre_of_mass_")
        .or_else(|| of(BalancePoint::Pressure, "centre_of_pressure_"))?;
    let point = labels::point_in(point);
    Some(match what {
        "from" => words::columns_from(point),
        "guess_mm" => words::columns_guess(point),
        "left_out" => words::columns_left_out(point),
        "left_out_reason" => words::columns_left_out_reason(point),
        "middle_mm" => words::columns_middle(point),
        "range_mm" => words::columns_range(point),
        _ => words::columns_reading(point, number(what.strip_prefix("reading_")?)?.0),
    })
}

/// Of predictions and swings, which have numbers.
fn numbered(key: &str) -> Option<String> {
    if let Some(behind) = key.strip_prefix("swing_") {
        return Some(words::columns_swing(number(behind)?.0));
    }
    if let Some(behind) = key.strip_prefix("taken_back_") {
        return Some(words::columns_taken_back(number(behind)?.0));
    }
    let (number, what) = number(key.strip_prefix("prediction_")?)?;
    Some(match what {
        "_outcome" => words::columns_prediction(number),
        "_because" => words::columns_because(number),
        "_swings_seen" => words::columns_swings_seen(number),
        _ => return None,
    })
}

/// The digit at the start of a text, and what stands behind it.
fn number(text: &str) -> Option<(Number, &str)> {
    let digit = text.bytes().next().filter(u8::is_ascii_digit)?;
    Some((Number::from(digit - b'0'), text.get(1..)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::places::labels::in_languages;
    use noseward_lesson::Notebook;
    use noseward_link::{Format, to_table};

    fn headings(called: &dyn Fn(&str) -> String) -> Vec<String> {
        let table = to_table(&Notebook::default(), Format::Tabs, called);
        table.lines().next().unwrap().split('\t').map(str::to_owned).collect()
    }

    #[test]
    fn every_column_is_called_something_of_its_own() {
        in_languages(&|| {
            let keys = headings(&|_| String::new());
            for (key, _) in ONCE {
                assert!(keys.iter().any(|known| known == key), "{key} is no column");
            }
            let headings = headings(&called);
            for (i, (key, heading)) in keys.iter().zip(&headings).enumerate() {
                let words = heading.strip_suffix(&format!(" [{key}]"));
                let words = words.unwrap_or_else(|| panic!("{heading}"));
                assert!(!words.contains([',', ';', '"', '[', ']', '\n']), "{words}");
                assert!(words.starts_with(char::is_alphabetic), "{words}");
                let is_twice = |other: &String| called(other) == words;
                assert!(!keys[..i].iter().any(is_twice), "{words}");
            }
        });
    }

    #[test]
    fn a_heading_is_words_and_a_key() {
        for (key, words) in [
            ("measured_separation_mm", "Measured separation (mm)"),
            ("centre_of_pressure_reading_2_mm", "Centre of pressure: reading 2 (mm)"),
            ("prediction_1_outcome", "Prediction 1"),
            ("prediction_6_swings_seen", "Prediction 6: swings seen before"),
            ("swing_3", "Swing 3"),
            ("taken_back_1", "Taken back 1"),
            ("trust", "Trust"),
        ] {
            assert_eq!(called(key), words);
            assert!(headings(&called).contains(&format!("{words} [{key}]")));
        }
        for key in ["", "swing_", "swing_x", "prediction_1_x", "centre_of_mass_x", "x"] {
            assert_eq!(called(key), "");
        }
    }
}
