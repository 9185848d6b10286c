//! What an English sentence says of itself in the comment above it.

use super::Fault;
use super::book::{Entry, line_of};
use crate::code::{MOST_ARGUMENTS, MOST_EXACT};

/// The most choices an argument can have: they are numbers from 0 on.
const MOST_CHOICES: u8 = MOST_EXACT + 1;

/// An argument of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Argument {
    /// Its name, in small letters and dashes.
    pub(crate) name: String,
    /// What it can be.
    pub(crate) kind: ArgumentKind,
    /// What it is, for translators and for those who call the function.
    pub(crate) about: String,
}

/// What an argument can be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum ArgumentKind {
    /// Text from elsewhere.
    Text,
    /// A number.
    Number,
    /// One of these.
    Choice(Vec<String>),
}

/// The arguments that the comment names, in its order, and what else it says.
///
/// A line for each: `# $name (text): what it is`, with `text`, `number` or choices such as
/// `up | down` in brackets.
pub(crate) fn signature(
    entry: &Entry<'_>,
    faults: &mut Vec<Fault>,
) -> (Vec<Argument>, String) {
    let mut arguments: Vec<Argument> = Vec::new();
    let mut about = Vec::new();
    for line in &entry.comment {
        let Some(rest) = line.trim().strip_prefix('$') else {
            about.push(line.trim());
            continue;
        };
        match argument(rest) {
            Ok(argument) if arguments.iter().any(|other| other.name == argument.name) => {
                let what = format!("${} is named twice", argument.name);
                faults.push(at(entry, line, &what, "delete one of the lines"));
            }
            Ok(argument) => arguments.push(argument),
            Err(what) => faults.push(at(
                entry,
                line,
                &what,
                "write “# $name (text): what it is”, with text, number, or choices such \
                 as up | down in the brackets",
            )),
        }
    }
    if arguments.len() > usize::from(MOST_ARGUMENTS) {
        let what = format!("{} has {} arguments", entry.id, arguments.len());
        let help = format!("{MOST_ARGUMENTS} at most: make it several sentences");
        faults.push(Fault::new(entry.source, entry.line, &what, &help));
    }
    if about.is_empty() && entry.group.is_empty() {
        let what = format!("nothing says where {} is seen", entry.id);
        let help =
            "say where it is seen in a comment above it, or above its group with ##";
        faults.push(Fault::new(entry.source, entry.line, &what, help));
    }
    let about = if entry.group.is_empty() {
        about.join(" ")
    } else {
        format!("{} {}", entry.group, about.join(" ")).trim().to_owned()
    };
    (arguments, about)
}

fn at(entry: &Entry<'_>, piece: &str, what: &str, help: &str) -> Fault {
    Fault::new(entry.source, line_of(entry.source, piece), what, help)
}

/// An argument from what stands behind its `$`.
fn argument(text: &str) -> Result<Argument, String> {
    let (name, rest) = text.split_once(" (").ok_or("an argument without its kind")?;
    let (kind, about) =
        rest.split_once("): ").ok_or("an argument without a word on it")?;
    if !is_small(name) {
        return Err(format!("${name} is not in small letters and dashes"));
    }
    let kind = match kind {
        "text" => ArgumentKind::Text,
        "number" => ArgumentKind::Number,
        choices if choices.contains('|') => {
            let choices: Vec<String> =
                choices.split('|').map(|choice| choice.trim().to_owned()).collect();
            for (i, choice) in choices.iter().enumerate() {
                if !is_small(choice) {
                    return Err(format!("“{choice}” is not in small letters and dashes"));
                }
                if choices[..i].contains(choice) {
                    return Err(format!("“{choice}” is a choice twice"));
                }
            }
            if choices.len() > usize::from(MOST_CHOICES) {
                return Err(format!("{} choices are too many", choices.len()));
            }
            ArgumentKind::Choice(choices)
        }
        kind => {
            return Err(format!(
                "“{kind}” is none of text, number and choices with | between them"
            ));
        }
    };
    Ok(Argument { name: name.into(), kind, about: about.trim().into() })
}

/// Whether a name can be that of a function or, in capitals, of a type.
pub(crate) fn is_small(name: &str) -> bool {
    name.starts_with(|c: char| c.is_ascii_lowercase())
        && !name.ends_with('-')
        && !name.contains("--")
        && name.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_argument_is_its_name_its_kind_and_a_word_on_it() {
        let from = argument("body-width (number): in millimetres").unwrap();
        assert_eq!(from.name, "body-width");
        assert_eq!(from.kind, ArgumentKind::Number);
        assert_eq!(from.about, "in millimetres");
        let way = argument("way (up | far-down): which").unwrap();
        assert_eq!(way.kind, ArgumentKind::Choice(vec!["up".into(), "far-down".into()]));
        for wrong in [
            "name",
            "name (text)",
            "Name (text): x",
            "n (Up | down): x",
            "n (): x",
            "n_m (text): x",
        ] {
            assert!(argument(wrong).is_err(), "{wrong}");
        }
    }
}
