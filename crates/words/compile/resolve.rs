//! Turns what a file says into pieces: puts terms and other sentences in, and checks every
//! choice, argument and mark.

use std::collections::BTreeMap;

use fluent_syntax::ast::{
    CallArguments, Expression, InlineExpression as Inline, Pattern, PatternElement,
    Variant, VariantKey,
};
use fluent_syntax::unicode::unescape_unicode_to_string;

use super::book::{Book, Entry, line_of};
use super::plurals::{CATEGORIES, Plurals};
use super::signature::{Argument, ArgumentKind};
use super::tree::{Key, MARKS, Piece};
use super::{Fault, Source};
use crate::code::MOST_EXACT;
use crate::mark::Mark;

/// The pieces of a sentence of this language.
///
/// Terms and sentences that it refers to are looked for in each of the books in turn.
pub(crate) fn pieces(
    entry: &Entry<'_>,
    books: &[&Book<'_>],
    arguments: &[Argument],
    plurals: &Plurals,
    faults: &mut Vec<Fault>,
) -> Vec<Piece> {
    let mut resolver = Resolver {
        books,
        arguments,
        plurals,
        faults,
        source: entry.source,
        line: entry.line,
        within: vec![entry.id.to_owned()],
    };
    let mut pieces = resolver.pattern(&entry.pattern, None);
    resolver.line = entry.line;
    resolver.check_marks(&pieces, false);
    if let Some(Piece::Text(text)) = pieces.last_mut() {
        text.truncate(text.trim_end_matches(' ').len());
    }
    if pieces.iter().all(|p| matches!(p, Piece::Text(text) if text.trim().is_empty())) {
        resolver.fault("an empty sentence", "write the sentence");
    }
    pieces
}

/// What the words that a term is given are, by their names.
type Given = BTreeMap<String, String>;

struct Resolver<'r, 'a> {
    books: &'r [&'r Book<'a>],
    arguments: &'r [Argument],
    plurals: &'r Plurals,
    faults: &'r mut Vec<Fault>,
    source: &'r Source,
    /// The line that was last seen to be at hand.
    line: usize,
    /// The sentences and terms that are being put in.
    within: Vec<String>,
}

impl<'r, 'a> Resolver<'r, 'a> {
    fn fault(&mut self, what: &str, help: &str) {
        self.faults.push(Fault::new(self.source, self.line, what, help));
    }

    /// The pieces of a pattern. Within a term, `given` is what the term was given.
    fn pattern(
        &mut self,
        pattern: &Pattern<&'a str>,
        given: Option<&Given>,
    ) -> Vec<Piece> {
        let mut pieces = Vec::new();
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => {
                    self.line = line_of(self.source, value);
                    self.text(value, &mut pieces);
                }
                PatternElement::Placeable { expression } => {
                    self.expression(expression, given, &mut pieces);
                }
            }
        }
        pieces
    }

    /// Text as it stands in the file: a new line is a space, and `<name>` is a mark.
    fn text(&mut self, text: &str, pieces: &mut Vec<Piece>) {
        let mut rest = text;
        while let Some(at) = rest.find('<') {
            let (before, from) = rest.split_at(at);
            let is_mark =
                from[1..].starts_with(|c: char| c.is_ascii_alphabetic() || c == '/');
            if !is_mark {
                self.plain(&rest[..=at], pieces);
                rest = &from[1..];
                continue;
            }
            self.plain(before, pieces);
            let Some(end) = from.find('>') else {
                self.fault("a mark without its >", "write < alone as { \"<\" }");
                return;
            };
            let name = &from[1..end];
            let mark =
                MARKS.iter().position(|mark| *mark == name.trim_start_matches('/'));
            match mark {
                Some(_) if name.starts_with('/') => pieces.push(Piece::Close),
                Some(mark) => pieces.push(Piece::Open(Mark::ALL[mark])),
                None => {
                    let what = format!("there is no mark <{name}>");
                    self.fault(&what, &format!("the marks are {}", MARKS.join(", ")));
                }
            }
            if let (Some(mark), true) = (mark, name.starts_with('/')) {
                self.check_close(Mark::ALL[mark], pieces);
            }
            rest = &from[end + 1..];
        }
        self.plain(rest, pieces);
    }

    /// A closing mark, which is the last of the pieces, must be of the mark that is open.
    fn check_close(&mut self, mark: Mark, pieces: &[Piece]) {
        let before = pieces.split_last().map_or(pieces, |(_, before)| before);
        let open = before.iter().rev().find_map(|piece| match piece {
            Piece::Open(mark) => Some(Some(*mark)),
            Piece::Close => Some(None),
            _ => None,
        });
        if open.flatten() != Some(mark) {
            let name = name_of(mark);
            let what = format!("</{name}> closes nothing");
            self.fault(&what, &format!("open it by <{name}> before, in the same text"));
        }
    }

    /// Text without marks, as it stands in the file.
    fn plain(&mut self, text: &str, pieces: &mut Vec<Piece>) {
        let mut plain = String::new();
        let mut after_space = matches!(
            pieces.last(), Some(Piece::Text(before)) if before.ends_with(' ')
        );
        for c in text.chars() {
            let c = if c == '\n' { ' ' } else { c };
            if c != ' ' || !after_space {
                plain.push(c);
            }
            after_space = c == ' ';
        }
        self.push(&plain, pieces);
    }

    /// Text as it will be said.
    fn push(&mut self, text: &str, pieces: &mut Vec<Piece>) {
        if text.chars().any(char::is_control) {
            self.fault("a control character", "delete it: sentences hold none");
        }
        match pieces.last_mut() {
            _ if text.is_empty() => {}
            Some(Piece::Text(before)) => before.push_str(text),
            _ => pieces.push(Piece::Text(text.into())),
        }
    }

    fn expression(
        &mut self,
        expression: &Expression<&'a str>,
        given: Option<&Given>,
        pieces: &mut Vec<Piece>,
    ) {
        match expression {
            Expression::Inline(inline) => self.inline(inline, given, pieces),
            Expression::Select { selector, variants } => {
                self.select(selector, variants, given, pieces);
            }
        }
    }

    fn inline(
        &mut self,
        inline: &Inline<&'a str>,
        given: Option<&Given>,
        pieces: &mut Vec<Piece>,
    ) {
        match inline {
            Inline::StringLiteral { value } => {
                let text = unescape_unicode_to_string(value).into_owned();
                self.push(&text, pieces);
            }
            Inline::NumberLiteral { value } => self.push(value, pieces),
            Inline::VariableReference { id } => {
                self.line = line_of(self.source, id.name);
                self.variable(id.name, given, pieces);
            }
            Inline::FunctionReference { id, arguments } => {
                self.line = line_of(self.source, id.name);
                if let Some(argument) = self.number(id.name, arguments) {
                    pieces.push(Piece::Argument(argument));
                }
            }
            Inline::TermReference { id, attribute: None, arguments } => {
                self.line = line_of(self.source, id.name);
                let words = self.words_given(arguments.as_ref());
                self.term(id.name, &words, pieces);
            }
            // The parser allows these in a selector only.
            Inline::TermReference { id, .. } => {
                self.line = line_of(self.source, id.name);
                self.fault(
                    "an attribute of a term is no text",
                    "choose by it, or leave it out",
                );
            }
            Inline::MessageReference { id, attribute } => {
                self.line = line_of(self.source, id.name);
                if attribute.is_some() {
                    self.fault(
                        "sentences have no attributes",
                        "leave out what follows the dot",
                    );
                }
                self.message(id.name, pieces);
            }
            Inline::Placeable { expression } => {
                self.expression(expression, given, pieces);
            }
        }
    }

    fn variable(&mut self, name: &str, given: Option<&Given>, pieces: &mut Vec<Piece>) {
        if let Some(given) = given {
            match given.get(name) {
                Some(word) => self.push(&word.clone(), pieces),
                None => self.fault(
                    &format!("the term is not given ${name}"),
                    &format!("write it where the term is used: ({name}: \"…\")"),
                ),
            }
            return;
        }
        let Some(argument) = self.argument(name) else { return };
        if let ArgumentKind::Choice(_) = self.arguments[argument].kind {
            let help = "choose between texts by it: it is no text itself";
            self.fault(&format!("${name} is a choice"), help);
        } else {
            pieces.push(Piece::Argument(argument));
        }
    }

    /// The place of an argument.
    fn argument(&mut self, name: &str) -> Option<usize> {
        let found = self.arguments.iter().position(|argument| argument.name == name);
        if found.is_none() {
            let names: Vec<_> = self
                .arguments
                .iter()
                .map(|argument| format!("${}", argument.name))
                .collect();
            let help = if names.is_empty() {
                "English names none in the comment above it".into()
            } else {
                format!("English has {}", names.join(", "))
            };
            self.fault(&format!("no argument ${name}"), &help);
        }
        found
    }

    /// The argument of `NUMBER($argument)`, the one function there is.
    fn number(
        &mut self,
        function: &str,
        arguments: &CallArguments<&'a str>,
    ) -> Option<usize> {
        let help =
            "write NUMBER($argument): how many decimals, the code that says it knows";
        if function != "NUMBER" || !arguments.named.is_empty() {
            self.fault(&format!("{function} or its options are unknown"), help);
            return None;
        }
        let [Inline::VariableReference { id }] = arguments.positional.as_slice() else {
            self.fault("NUMBER takes one argument", help);
            return None;
        };
        let argument = self.argument(id.name)?;
        if self.arguments[argument].kind == ArgumentKind::Number {
            return Some(argument);
        }
        self.fault(&format!("${} is no number", id.name), "leave NUMBER out");
        None
    }

    /// The words that a term is given.
    fn words_given(&mut self, arguments: Option<&CallArguments<&'a str>>) -> Given {
        let mut given = Given::new();
        let Some(arguments) = arguments else { return given };
        if !arguments.positional.is_empty() {
            self.fault("a word without a name for the term", "write (name: \"word\")");
        }
        for named in &arguments.named {
            if let Inline::StringLiteral { value } = &named.value {
                let word = unescape_unicode_to_string(value).into_owned();
                given.insert(named.name.name.to_owned(), word);
            } else {
                let what =
                    format!("{} is not a word in quotation marks", named.name.name);
                self.fault(&what, "write (name: \"word\")");
            }
        }
        given
    }

    /// Does something within a term or another sentence, and comes back to this line.
    fn enter(
        &mut self,
        name: String,
        entry: &'r Entry<'a>,
        what: impl FnOnce(&mut Self),
    ) {
        if self.within.contains(&name) {
            self.fault(
                &format!("{name} is part of itself"),
                "write the words themselves",
            );
            return;
        }
        let (source, line) = (self.source, self.line);
        self.within.push(name);
        (self.source, self.line) = (entry.source, entry.line);
        what(self);
        (self.source, self.line) = (source, line);
        self.within.pop();
    }

    fn term(&mut self, name: &str, words: &Given, pieces: &mut Vec<Piece>) {
        let Some(term) = self.books.iter().find_map(|book| book.terms.get(name)) else {
            self.fault(&format!("no term -{name}"), "write its line, as “-name = words”");
            return;
        };
        self.enter(format!("-{name}"), term, |this| {
            let inner = this.pattern(&term.pattern, Some(words));
            join(pieces, inner);
        });
    }

    fn message(&mut self, name: &str, pieces: &mut Vec<Piece>) {
        let Some(message) = self.books.iter().find_map(|book| book.message(name)) else {
            self.fault(
                &format!("no sentence {name}"),
                "write it, or the words themselves",
            );
            return;
        };
        self.enter(name.to_owned(), message, |this| {
            let inner = this.pattern(&message.pattern, None);
            join(pieces, inner);
        });
    }

    fn select(
        &mut self,
        selector: &Inline<&'a str>,
        variants: &[Variant<&'a str>],
        given: Option<&Given>,
        pieces: &mut Vec<Piece>,
    ) {
        if let Inline::VariableReference { id }
        | Inline::FunctionReference { id, .. }
        | Inline::TermReference { id, .. } = selector
        {
            self.line = line_of(self.source, id.name);
        }
        let line = self.line;
        match selector {
            Inline::VariableReference { id } => match given {
                Some(given) => {
                    let word = given.get(id.name).cloned();
                    self.known(word.as_deref(), variants, Some(given), pieces);
                }
                None => {
                    if let Some(argument) = self.argument(id.name) {
                        self.by_argument(argument, variants, pieces);
                    }
                }
            },
            Inline::FunctionReference { id, arguments } => {
                if let Some(argument) = self.number(id.name, arguments) {
                    self.by_argument(argument, variants, pieces);
                }
            }
            Inline::TermReference { id, attribute: Some(attribute), .. } => {
                let word = self.attribute(id.name, attribute.name);
                self.known(word.as_deref(), variants, given, pieces);
            }
            _ => self
                .fault("nothing to choose by", "choose by an argument, as in $name ->"),
        }
        self.line = line;
    }

    /// What a term tells of itself.
    fn attribute(&mut self, term: &str, name: &str) -> Option<String> {
        let entry = self.books.iter().find_map(|book| book.terms.get(term));
        let attribute =
            entry.and_then(|e| e.attributes.iter().find(|a| a.id.name == name));
        match attribute.map(|attribute| attribute.value.elements.as_slice()) {
            Some([PatternElement::TextElement { value }]) => Some((*value).to_owned()),
            _ => {
                let what = format!("-{term} has no word .{name}");
                self.fault(&what, &format!("write below it: .{name} = word"));
                None
            }
        }
    }

    /// The one text that fits a word which the build knows.
    fn known(
        &mut self,
        word: Option<&str>,
        variants: &[Variant<&'a str>],
        given: Option<&Given>,
        pieces: &mut Vec<Piece>,
    ) {
        let fits = |variant: &&Variant<&str>| Some(key_text(&variant.key)) == word;
        let chosen = variants.iter().find(fits).or(variants.iter().find(|v| v.default));
        if let Some(variant) = chosen {
            let inner = self.pattern(&variant.value, given);
            join(pieces, inner);
        }
    }

    fn by_argument(
        &mut self,
        argument: usize,
        variants: &[Variant<&'a str>],
        pieces: &mut Vec<Piece>,
    ) {
        let name = self.arguments[argument].name.clone();
        let kind = self.arguments[argument].kind.clone();
        if kind == ArgumentKind::Text {
            let help = "only numbers and choices can be chosen by: say in the English \
                        comment what it can be";
            self.fault(&format!("${name} is text"), help);
            return;
        }
        let line = self.line;
        let (mut cases, mut otherwise): (Vec<(Key, Vec<Piece>)>, _) =
            (Vec::new(), Vec::new());
        let mut keys = Vec::new();
        for variant in variants {
            let text = key_text(&variant.key);
            self.line = line_of(self.source, text);
            let key = match &kind {
                ArgumentKind::Choice(choices) => self.choice(text, choices, &name),
                _ => self.number_key(&variant.key),
            };
            let inner = self.pattern(&variant.value, None);
            self.line = line_of(self.source, text);
            self.check_marks(&inner, false);
            let Some(key) = key else { continue };
            if keys.contains(&key) {
                self.fault(&format!("“{text}” stands there twice"), "delete one of them");
            }
            keys.push(key);
            if variant.default {
                if kind == ArgumentKind::Number && key != Key::Category(5) {
                    let what = format!("“{text}” is the default");
                    self.fault(&what, "the default of a number is *[other]");
                }
                otherwise = inner;
            } else {
                cases.push((key, inner));
            }
        }
        self.line = line;
        if kind == ArgumentKind::Number {
            for category in self.plurals.categories.clone() {
                if !keys.contains(&Key::Category(category)) {
                    let word = CATEGORIES[usize::from(category)];
                    let what = format!("the plural “{word}” is missing");
                    self.fault(&what, &format!("write a text for [{word}] of ${name}"));
                }
            }
        }
        // A number itself comes before the plural it belongs to.
        cases.sort_by_key(|(key, _)| *key);
        pieces.push(Piece::Select { argument, cases, otherwise });
    }

    fn choice(&mut self, text: &str, choices: &[String], name: &str) -> Option<Key> {
        let place = choices.iter().position(|choice| choice == text);
        if place.is_none() {
            let what = format!("no choice “{text}”");
            self.fault(&what, &format!("${name} is one of {}", choices.join(", ")));
        }
        place.and_then(|place| u8::try_from(place).ok()).map(Key::Choice)
    }

    fn number_key(&mut self, key: &VariantKey<&str>) -> Option<Key> {
        match key {
            VariantKey::NumberLiteral { value } => {
                let exact = value.parse().ok().filter(|exact| *exact <= MOST_EXACT);
                if exact.is_none() {
                    let help =
                        format!("a number to choose by is whole, 0 to {MOST_EXACT}");
                    self.fault(&format!("“{value}” cannot be chosen by"), &help);
                }
                exact.map(Key::Exact)
            }
            VariantKey::Identifier { name } => {
                let is_it = |category: &&u8| CATEGORIES[usize::from(**category)] == *name;
                let category = self.plurals.categories.iter().find(is_it).copied();
                if category.is_none() {
                    let known = self.plurals.categories.iter();
                    let names: Vec<_> = known
                        .map(|category| CATEGORIES[usize::from(*category)])
                        .collect();
                    let what = format!("the language has no plural “{name}”");
                    self.fault(&what, &format!("it has {}", names.join(", ")));
                }
                category.map(Key::Category)
            }
        }
    }

    /// Marks are closed in the text they begin in, and none stands in another.
    fn check_marks(&mut self, pieces: &[Piece], mut is_open: bool) {
        let mut open = None;
        for piece in pieces {
            match piece {
                Piece::Open(mark) if is_open => {
                    let what = format!("<{}> stands within another mark", name_of(*mark));
                    self.fault(&what, "close the other one before");
                }
                Piece::Open(mark) => {
                    open = Some(*mark);
                    is_open = true;
                }
                Piece::Close => {
                    open = None;
                    is_open = false;
                }
                Piece::Select { cases, otherwise, .. } if is_open => {
                    let inner = cases.iter().map(|(_, inner)| inner).chain([otherwise]);
                    for inner in inner {
                        self.check_marks(inner, true);
                    }
                }
                Piece::Select { .. } | Piece::Text(_) | Piece::Argument(_) => {}
            }
        }
        if let Some(mark) = open {
            let name = name_of(mark);
            let help = format!("write </{name}> in the same text");
            self.fault(&format!("<{name}> is not closed"), &help);
        }
    }
}

fn name_of(mark: Mark) -> &'static str {
    let place = Mark::ALL.iter().position(|other| *other == mark);
    place.map_or("", |place| MARKS[place])
}

fn key_text<'a>(key: &VariantKey<&'a str>) -> &'a str {
    match key {
        VariantKey::Identifier { name } => name,
        VariantKey::NumberLiteral { value } => value,
    }
}

/// Puts pieces behind others.
fn join(pieces: &mut Vec<Piece>, more: Vec<Piece>) {
    for piece in more {
        match (pieces.last_mut(), piece) {
            (Some(Piece::Text(before)), Piece::Text(text)) => before.push_str(&text),
            (_, piece) => pieces.push(piece),
        }
    }
}
