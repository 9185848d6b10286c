//! Reads the files of one language.

use std::collections::BTreeMap;

use fluent_syntax::ast::{Attribute, Entry as Ast, Pattern};
use fluent_syntax::parser;

use super::{Fault, Source};

/// All that the files of a language say.
#[derive(Debug, Default)]
pub(crate) struct Book<'a> {
    /// The sentences, by file and as they stand there.
    pub(crate) messages: Vec<Entry<'a>>,
    /// The terms, which sentences borrow words from.
    pub(crate) terms: BTreeMap<&'a str, Entry<'a>>,
    /// Its files, by name.
    pub(crate) files: Vec<&'a Source>,
}

/// A sentence or a term.
#[derive(Debug)]
pub(crate) struct Entry<'a> {
    /// Its name, without the dash of a term.
    pub(crate) id: &'a str,
    /// Where it stands.
    pub(crate) source: &'a Source,
    /// The line its name stands in.
    pub(crate) line: usize,
    /// What it says.
    pub(crate) pattern: Pattern<&'a str>,
    /// What else a term tells of itself, such as its gender.
    pub(crate) attributes: Vec<Attribute<&'a str>>,
    /// The lines of the comment above it.
    pub(crate) comment: Vec<&'a str>,
    /// The comment of its group.
    pub(crate) group: String,
}

impl<'a> Book<'a> {
    /// What the files of this language say. What cannot be read is a fault and left out.
    pub(crate) fn read(
        sources: &'a [Source],
        language: &str,
        faults: &mut Vec<Fault>,
    ) -> Self {
        let mut book = Self {
            files: sources.iter().filter(|source| source.language == language).collect(),
            ..Self::default()
        };
        book.files.sort_by(|a, b| a.file.cmp(&b.file));
        for source in book.files.clone() {
            book.read_file(source, faults);
        }
        book
    }

    /// The sentence of this name.
    pub(crate) fn message(&self, id: &str) -> Option<&Entry<'a>> {
        self.messages.iter().find(|entry| entry.id == id)
    }

    fn read_file(&mut self, source: &'a Source, faults: &mut Vec<Fault>) {
        let resource = match parser::parse(source.text.as_str()) {
            Ok(resource) => resource,
            Err((resource, errors)) => {
                for error in errors {
                    let line = line_at(&source.text, error.pos.start);
                    let what = error.kind.to_string();
                    let help = "write it as the sentences above and below are written";
                    faults.push(Fault::new(source, line, &what, help));
                }
                resource
            }
        };
        let mut group = String::new();
        for entry in resource.body {
            match entry {
                Ast::GroupComment(comment) => group = comment.content.join(" "),
                Ast::Message(message) => {
                    let line = line_of(source, message.id.name);
                    let Some(pattern) = message.value else {
                        let help = "write the sentence itself";
                        faults.push(Fault::new(source, line, "an empty sentence", help));
                        continue;
                    };
                    if let Some(first) = message.attributes.first() {
                        let what = format!("{} has an attribute", message.id.name);
                        let line = line_of(source, first.id.name);
                        let help = "make it a sentence of its own name";
                        faults.push(Fault::new(source, line, &what, help));
                    }
                    if let Some(other) = self.message(message.id.name) {
                        let what = format!(
                            "{} stands in {} too",
                            message.id.name, other.source.file
                        );
                        let help = "delete one, or give one another name";
                        faults.push(Fault::new(source, line, &what, help));
                        continue;
                    }
                    self.messages.push(Entry {
                        id: message.id.name,
                        source,
                        line,
                        pattern,
                        attributes: Vec::new(),
                        comment: message.comment.map_or_else(Vec::new, |c| c.content),
                        group: group.clone(),
                    });
                }
                Ast::Term(term) => {
                    let line = line_of(source, term.id.name);
                    let entry = Entry {
                        id: term.id.name,
                        source,
                        line,
                        pattern: term.value,
                        attributes: term.attributes,
                        comment: Vec::new(),
                        group: group.clone(),
                    };
                    if self.terms.insert(term.id.name, entry).is_some() {
                        let what = format!("-{} stands there twice", term.id.name);
                        let help = "delete one, or give one another name";
                        faults.push(Fault::new(source, line, &what, help));
                    }
                }
                // Junk was told as an error of the parser.
                Ast::Comment(_) | Ast::ResourceComment(_) | Ast::Junk { .. } => {}
            }
        }
    }
}

/// The line, counted from 1, that a piece of this file's text begins in.
pub(crate) fn line_of(source: &Source, piece: &str) -> usize {
    let at = (piece.as_ptr() as usize).saturating_sub(source.text.as_ptr() as usize);
    line_at(&source.text, at)
}

fn line_at(text: &str, at: usize) -> usize {
    1 + text.bytes().take(at).filter(|byte| *byte == b'\n').count()
}
