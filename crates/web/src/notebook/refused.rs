//! Why a code, a file, a table or a text cannot be opened, in the language in use.

use noseward_lesson::{COUNTED, MOST_OUTCOMES, MOST_PLANS, MOST_TRIALS, NotebookError};
use noseward_link::{At, LinkError, LinkErrorKind as Kind, TABLE_END};
use noseward_words::{self as words, Crowd, NoneBecause, Number, Saved, TextKind};

use crate::shell::unopened;

/// What is wrong, where, and how to mend it.
pub(crate) fn said(error: &LinkError) -> String {
    let fault = fault(&error.kind, &error.at);
    match &error.at {
        At::Part(Some(part)) if !matches!(error.kind, Kind::OtherNotebook) => {
            words::refused_in_part((*part).into(), &fault)
        }
        At::TableRow(row) => words::refused_in_row((*row).into(), &fault),
        At::Cell { row, column } => words::refused_in_cell((*row).into(), column, &fault),
        At::Entry { list, place, key } => {
            words::refused_in_entry(list, (*place).into(), key, &fault)
        }
        _ => fault,
    }
}

/// What stands where, so that sentences fit it.
fn text_kind(at: &At) -> TextKind {
    match at {
        At::Table | At::TableRow(_) | At::Cell { .. } => TextKind::Table,
        At::File | At::NotebookFile | At::Entry { .. } => TextKind::File,
        At::Link | At::Code | At::Part(_) | At::Result => TextKind::Code,
    }
}

/// What is wrong. Of links, the first part of the page has the words.
fn fault(kind: &Kind, at: &At) -> String {
    match (kind, at) {
        (_, At::Link) => unopened::link(kind),
        (Kind::TooLarge { bytes }, _) => too_large(*bytes, at),
        (Kind::Newer { .. }, _) => words::refused_newer(text_kind(at)),
        (Kind::Unknown { key }, _) => words::refused_unknown(text_kind(at), key),
        (Kind::Nothing, _) => nothing(at).into(),
        (Kind::CutShort, At::Table) => words::refused_table_cut(TABLE_END),
        (Kind::Changed, At::Part(None)) => words::refused_parts_disagree().into(),
        (Kind::Changed, At::Code | At::Part(_) | At::Result) => {
            words::refused_code_wrong().into()
        }
        (Kind::Notebook(error), _) => no_notebook(*error, at),
        _ => of_code(kind).or_else(|| of_file(kind, at)).unwrap_or_else(|| of_cell(kind)),
    }
}

fn too_large(bytes: usize, at: &At) -> String {
    match (text_kind(at), at) {
        (TextKind::Code, _) => words::refused_too_long().into(),
        (TextKind::Table, _) => words::refused_table_too_large((bytes / 1024).into()),
        (TextKind::File, At::File) => unopened::file_too_large(bytes),
        (TextKind::File, _) => words::refused_notebook_too_large((bytes / 1024).into()),
    }
}

fn nothing(at: &At) -> words::Text {
    match at {
        At::Code => words::refused_no_code(),
        At::Part(_) => words::refused_no_part(),
        At::Result => words::refused_no_result(),
        At::NotebookFile => words::refused_no_notebook(),
        At::Table => words::refused_no_table(),
        _ => words::refused_nothing(),
    }
}

fn no_notebook(error: NotebookError, at: &At) -> String {
    let (because, most) = match error {
        NotebookError::TooManyTrials => (NoneBecause::Trials, MOST_TRIALS),
        NotebookError::TooManyPlans => (NoneBecause::Plans, MOST_PLANS),
        NotebookError::Numbers => (NoneBecause::Numbers, 0),
    };
    match text_kind(at) {
        TextKind::Table => words::refused_rows_make_none(because, most.into()),
        _ => words::refused_no_notebook_of(because, most.into()),
    }
}

/// What the rows of a code tell; `None` for what they do not.
fn of_code(kind: &Kind) -> Option<String> {
    Some(match kind {
        Kind::EndsEarly { row } => words::refused_ends_early((*row).into()),
        Kind::Character { row, character } => {
            let character = character.encode_utf8(&mut [0; 4]).to_owned();
            words::refused_character((*row).into(), &character)
        }
        Kind::Rows { rows } => of_rows(rows)?,
        Kind::TooFew { row } => words::refused_too_few((*row).into()),
        Kind::TooMany { row } => words::refused_too_many((*row).into()),
        Kind::MissingRow { row } => words::refused_missing_row((*row).into()),
        Kind::RowTwice { row } => words::refused_row_twice((*row).into()),
        Kind::Swapped { rows: (one, other) } => {
            words::refused_swapped((*one).into(), (*other).into())
        }
        Kind::OtherNotebook => words::refused_other_notebook().into(),
        _ => return None,
    })
}

/// Which rows of a code are wrong.
fn of_rows(rows: &[usize]) -> Option<String> {
    let (last, before) = rows.split_last()?;
    let before = before.iter().map(|row| Number::from(*row).to_string());
    let before = before.reduce(|said, row| words::lists_next(&said, &row));
    Some(match before {
        None => words::refused_row((*last).into()),
        Some(before) => words::refused_rows(&before, (*last).into()),
    })
}

/// What is wrong with a file; `None` for a fault of something else.
fn of_file(kind: &Kind, at: &At) -> Option<String> {
    Some(match kind {
        Kind::EndsInLine { line } => words::refused_ends_in_line((*line).into()),
        Kind::Syntax { line, column, detail } => {
            words::refused_syntax((*line).into(), (*column).into(), detail)
        }
        Kind::Content { line, column, detail } => {
            let saved =
                if matches!(at, At::File) { Saved::Rocket } else { Saved::Notebook };
            words::refused_content(saved, (*line).into(), (*column).into(), detail)
        }
        Kind::Crowded { list, count, .. } => {
            let crowd = match *list {
                "sections" => Crowd::Sections,
                "fins" => Crowd::FinSets,
                "own_outline_mm" => Crowd::Corners,
                _ => Crowd::Weights,
            };
            words::refused_crowded(crowd, (*count).into())
        }
        _ => return None,
    })
}

/// What is wrong in a table, or with a value of a file.
fn of_cell(kind: &Kind) -> String {
    let number = |count: u16| Number::from(u32::from(count));
    match kind {
        Kind::TwoColumns { column } => words::refused_two_columns(column),
        Kind::TooManyCells => words::refused_too_many_cells().into(),
        Kind::TwoRows { kind } => words::refused_two_rows(kind),
        Kind::Choice { found, choices } => {
            words::refused_choice(found, &choices.join("; "))
        }
        Kind::NotANumber { found } => words::refused_not_a_number(found),
        Kind::Ambiguous { found } => words::refused_ambiguous(found),
        Kind::Count { found, least, most } => {
            words::refused_count(found, number(*least), number(*most))
        }
        Kind::TooLong { chars, most } => {
            words::refused_too_many_characters((*chars).into(), (*most).into())
        }
        Kind::NotAGroup { found } => words::refused_not_a_group(found),
        Kind::OtherGroup { found } => words::refused_other_group(found),
        Kind::Taken { id } => words::refused_taken(number(*id)),
        Kind::Empty => words::refused_empty().into(),
        Kind::NotARocket { error } => words::refused_not_a_rocket(&front(error)),
        Kind::NotANotebook { error } => words::refused_not_a_notebook(&front(error)),
        Kind::NotRules { found } => words::refused_not_rules(found),
        Kind::NotAClass { found } => words::refused_not_a_class(found),
        Kind::NotAText { found } => words::refused_not_a_text(found),
        Kind::NotASeal { found } => words::refused_not_a_seal(found),
        Kind::Misplaced { found, kind } => words::refused_misplaced(found, kind),
        Kind::Swings(_) => {
            words::refused_too_many_swings(COUNTED.into(), MOST_OUTCOMES.into())
        }
        kind => unopened::link(kind),
    }
}

/// The front of a sentence on what stands in a cell.
fn front(error: &LinkError) -> String {
    said(error).split(['.', ':']).next().unwrap_or_default().to_owned()
}

#[cfg(test)]
mod tests;
