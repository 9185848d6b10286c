//! Which language the page speaks.

use noseward_words::{self as words, Choice, Kind, Language, Table};

use super::{Effect, Notice, State};

/// In front of a language that was chosen for a class, where it is kept.
const LED: char = '~';

/// The language in use, and those there are.
#[derive(Clone, Debug)]
pub(crate) struct Speech {
    /// What is spoken now.
    spoken: Choice,
    /// Whether somebody chose it: otherwise the browser's wish is asked again next time.
    chosen: bool,
    /// Whether it was chosen for a class, and not by whoever sits here.
    led: bool,
    /// What was chosen and is still on its way.
    awaited: Option<Choice>,
    /// What was chosen to stand beside it, here or on its way.
    beside: Option<&'static Language>,
    /// The sentences that are here.
    tables: Vec<Table>,
    /// The keys of the languages whose sentences can be had, with spaces between them.
    available: String,
}

impl Default for Speech {
    fn default() -> Self {
        Self {
            spoken: Choice::ENGLISH,
            chosen: false,
            led: false,
            awaited: None,
            beside: None,
            tables: Vec::new(),
            available: String::new(),
        }
    }
}

impl Speech {
    /// With which language the page opens: what was chosen, in the address or on this
    /// computer, or else what the browser wishes for, by BCP 47 tags.
    pub(crate) fn opening(available: String, chosen: Option<&str>, wished: &str) -> Self {
        let mut speech = Self { available, ..Self::default() };
        speech.led = chosen.is_some_and(|chosen| chosen.starts_with(LED));
        let is_there = |choice: Choice| speech.is_there(choice);
        let chosen = chosen.map(|chosen| chosen.trim_start_matches(LED));
        let chosen = chosen.and_then(Choice::parse).filter(|choice| is_there(*choice));
        let wished = || wished.split(' ').find_map(|tag| Choice::wished(tag, is_there));
        let awaited = chosen.or_else(wished).filter(|choice| *choice != Choice::ENGLISH);
        speech.chosen = chosen.is_some();
        speech.awaited = awaited;
        speech
    }

    /// The language that is wanted as soon as its sentences are here, by its key.
    pub(crate) fn awaited(&self) -> Option<&'static str> {
        self.awaited.map(|choice| choice.language.key)
    }

    pub(crate) fn spoken(&self) -> Choice {
        self.spoken
    }

    /// The same after everything that was chosen has been deleted.
    pub(super) fn forgotten(self) -> Self {
        Self { chosen: false, led: false, ..self }
    }

    /// What is to be kept on this computer.
    pub(crate) fn chosen(&self) -> Option<String> {
        let mark = if self.led { String::from(LED) } else { String::new() };
        self.chosen.then(|| mark + self.spoken.key)
    }

    /// What somebody chose here who is no set-up.
    pub(crate) fn own(&self) -> Option<Choice> {
        Some(self.awaited.unwrap_or(self.spoken)).filter(|_| self.chosen && !self.led)
    }

    /// What there is to choose from, and whether it is chosen: also one that is on its way.
    pub(crate) fn offered(&self) -> Vec<(Choice, bool)> {
        let now = self.awaited.unwrap_or(self.spoken);
        let mut offered = Vec::new();
        for choice in Choice::ALL {
            if self.is_there(choice) && choice.language.kind != Kind::Pseudo {
                offered.push((choice, choice == now));
            }
        }
        offered
    }

    fn is_there(&self, choice: Choice) -> bool {
        choice.language.kind == Kind::BuiltIn
            || self.available.split(' ').any(|key| key == choice.language.key)
    }

    /// Takes what was fetched, and speaks the language that is awaited if it is here now.
    ///
    /// # Errors
    ///
    /// The name of the language that came to nothing: its sentences did not come, or are no
    /// sentences of this page. Of two that were on their way nobody says which it was, so both
    /// are given up, and can be chosen again.
    pub(crate) fn take(&mut self, table: Option<Vec<u8>>) -> Result<bool, &'static str> {
        match table.map(Table::load) {
            Some(Ok(table)) => self.tables.push(table),
            _ => {
                let late = self.beside.take_if(|beside| !is_here(&self.tables, beside));
                let awaited = self.awaited.take().map(|choice| choice.name);
                let name = awaited.or(late.map(|language| language.name));
                return name.map_or(Ok(false), Err);
            }
        }
        let spoken = self.awaited.filter(|choice| self.speak(*choice));
        self.awaited.take_if(|_| spoken.is_some());
        Ok(spoken.is_some())
    }

    /// Speaks a language, if its sentences are here.
    fn speak(&mut self, choice: Choice) -> bool {
        let is_here = is_here(&self.tables, choice.language);
        if is_here {
            self.say_in(choice.language, choice.own_digits);
            self.spoken = choice;
        }
        is_here
    }

    /// Has whatever follows said in a language whose sentences are here.
    fn say_in(&self, language: &Language, own_digits: bool) {
        let table = find(&self.tables, language);
        words::speak(table.map(|table| table.with_own_digits(own_digits)));
    }

    /// What can stand beside the language in use: every other one, once.
    pub(crate) fn offered_beside(&self) -> impl Iterator<Item = &'static Language> {
        let offered = self.offered().into_iter().filter(|(choice, _)| !choice.own_digits);
        let spoken = self.spoken.language.key;
        offered.map(|(choice, _)| choice.language).filter(move |of| of.key != spoken)
    }

    /// What is to stand beside the language in use, also while it is on its way. None where
    /// that is what is spoken by now.
    pub(crate) fn beside(&self) -> Option<&'static Language> {
        self.beside.filter(|beside| beside.key != self.spoken.language.key)
    }

    /// The same once it can be said.
    pub(crate) fn beside_here(&self) -> Option<&'static Language> {
        self.beside().filter(|beside| is_here(&self.tables, beside))
    }

    /// Says something in another language whose sentences are here, and goes on in the first.
    pub(crate) fn say_beside<T>(&self, beside: &Language, say: impl FnOnce() -> T) -> T {
        self.say_in(beside, false);
        let said = say();
        self.say_in(self.spoken.language, self.spoken.own_digits);
        said
    }
}

/// The sentences of a language that is not built in.
fn find(tables: &[Table], language: &Language) -> Option<Table> {
    tables.iter().find(|table| table.language().key == language.key).copied()
}

fn is_here(tables: &[Table], language: &Language) -> bool {
    language.kind == Kind::BuiltIn || find(tables, language).is_some()
}

/// Somebody chose a language.
pub(super) fn chose(state: &mut State, choice: Choice) -> Vec<Effect> {
    state.speech.led = false;
    speak(state, choice)
}

/// A set-up chose a language.
pub(crate) fn led(state: &mut State, choice: Choice) -> Vec<Effect> {
    state.speech.led = true;
    speak(state, choice)
}

fn speak(state: &mut State, choice: Choice) -> Vec<Effect> {
    state.speech.chosen = true;
    if state.speech.speak(choice) {
        state.speech.awaited = None;
        return vec![Effect::Speak, Effect::Redraw, Effect::KeepView];
    }
    state.speech.awaited = Some(choice);
    vec![Effect::FetchTable(choice.language.key), Effect::Redraw]
}

/// Somebody chose a language to stand beside the one in use, or none.
pub(super) fn chose_beside(
    state: &mut State,
    language: Option<&'static Language>,
) -> Vec<Effect> {
    state.speech.beside = language;
    match language {
        Some(language) if !is_here(&state.speech.tables, language) => {
            vec![Effect::FetchTable(language.key), Effect::Redraw]
        }
        _ => vec![Effect::Redraw],
    }
}

/// The sentences of a language came, or did not.
pub(super) fn came(state: &mut State, table: Option<Vec<u8>>) -> Vec<Effect> {
    match state.speech.take(table) {
        Ok(true) => return vec![Effect::Speak, Effect::Redraw, Effect::KeepView],
        Ok(false) => {}
        Err(name) => state.notice = Some(failed(name)),
    }
    vec![Effect::Redraw]
}

/// A language did not come.
pub(crate) fn failed(name: &str) -> Notice {
    Notice::Said { alarming: true, words: words::language_failed(name) }
}
