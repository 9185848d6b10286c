//! Texts in the cells of a table.

use std::borrow::Cow;

/// A text that a spreadsheet takes for a text: one that it could take for a formula gets
/// an apostrophe in front. Numbers such as `-3` and `+1.5` stay as they are.
///
/// Source: OWASP, "CSV Injection",
/// <https://owasp.org/www-community/attacks/CSV_Injection>: a cell must not begin with
/// `=`, `+`, `-`, `@`, a tab, a carriage return or a line feed. White space before one of
/// the signs does not help: some programs take it off.
///
/// ```
/// # use noseward_link::escape_formula;
/// assert_eq!(escape_formula("=1+1"), "'=1+1");
/// assert_eq!(escape_formula("-3"), "-3");
/// ```
#[must_use]
pub fn escape_formula(cell: &str) -> Cow<'_, str> {
    let starts_with_break = cell.starts_with(['\t', '\r', '\n']);
    let body = cell.trim_start_matches(|c: char| c == '\u{feff}' || c.is_whitespace());
    // Full-width forms: spreadsheets in East Asian settings read them as the plain ones.
    let starts_formula = body.starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠']);
    if starts_with_break || starts_formula && !is_number(body) {
        Cow::Owned(format!("'{cell}"))
    } else {
        Cow::Borrowed(cell)
    }
}

/// At most one sign, and digits with at most one point or comma.
fn is_number(text: &str) -> bool {
    let text = text.trim_end();
    let digits = text.strip_prefix(['+', '-']).unwrap_or(text);
    let (whole, rest) = digits.split_once(['.', ',']).unwrap_or((digits, ""));
    let all_digits = |part: &str| part.bytes().all(|b| b.is_ascii_digit());
    all_digits(whole) && all_digits(rest) && !(whole.is_empty() && rest.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_starts_a_formula_is_a_text() {
        for cell in [
            "=1+1",
            "+A1",
            "-A1",
            "@SUM(A1)",
            "=cmd|' /C calc'!A0",
            "  =1+1",
            "\t=1",
            "\tx",
            "\rx",
            "\nx",
            "\u{feff}=1",
            "\u{a0}@x",
            "-",
            "+",
            "-.",
            "--3",
            "+-3",
            "-3-2",
            "-1.2.3",
            "-3+cmd|' /C calc'!A0",
            "-1,5;2",
            "＝1",
            "- 3",
        ] {
            assert_eq!(escape_formula(cell), format!("'{cell}"), "{cell:?}");
        }
    }

    #[test]
    fn numbers_and_plain_words_stay() {
        for cell in [
            "",
            " ",
            "3",
            "-3",
            "+1.5",
            "-0,25",
            "+.5",
            "-5.",
            " -3 ",
            "Puffin",
            "a=b",
            "'=1",
            "12-3",
            "(-3)",
            "…",
            "3 % of -2",
        ] {
            assert_eq!(escape_formula(cell), cell, "{cell:?}");
            assert!(matches!(escape_formula(cell), Cow::Borrowed(_)));
        }
    }
}
