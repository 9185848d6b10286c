//! What a saved file is called.

use noseward_stability::{Design, limits};

/// Stands in where a name has no letter or digit that suits every computer.
const UNNAMED: &str = "my";

/// A name for the file of a design, such as `puffin.rocket.json`: the rocket's name in
/// lower-case ASCII letters and digits, with a hyphen for whatever stands between them.
///
/// A rocket without a name, or with one in another script, is `my.rocket.json`.
#[must_use]
pub fn file_name(design: &Design) -> String {
    let mut stem = String::new();
    for c in design.name.chars().take(limits::LABEL_CHARS) {
        if c.is_ascii_alphanumeric() {
            stem.push(c.to_ascii_lowercase());
        } else if !stem.is_empty() && !stem.ends_with('-') {
            stem.push('-');
        }
    }
    let stem = stem.trim_end_matches('-');
    format!("{}.rocket.json", if stem.is_empty() { UNNAMED } else { stem })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_letters_digits_and_hyphens_are_left() {
        for (name, file) in [
            ("Puffin", "puffin.rocket.json"),
            ("  Class 8b: the “Tern”! ", "class-8b-the-tern.rocket.json"),
            ("../../etc", "etc.rocket.json"),
            ("Möwe 2", "m-we-2.rocket.json"),
            ("", "my.rocket.json"),
            ("海鸥", "my.rocket.json"),
            ("--", "my.rocket.json"),
        ] {
            let design = Design { name: name.into(), ..Design::default() };
            assert_eq!(file_name(&design), file);
        }
        let long = Design { name: "a".repeat(9999), ..Design::default() };
        assert_eq!(file_name(&long).len(), limits::LABEL_CHARS + ".rocket.json".len());
    }
}
