//! Which language the page speaks.

use noseward_words::{self as words, Choice, Kind, Language, Table};

use super::{Effect, Notice, State};

/// The language in use, and those there are.
#[derive(Clone, Debug)]
pub(crate) struct Speech {
    /// What is spoken now.
    spoken: Choice,
    /// Whether somebody chose it: otherwise the browser's wish is asked again next time.
    chosen: bool,
    /// What was chosen and is still on its way.
    awaited: Option<Choice>,
    /// What was chosen to stand beside it, here or on its way.
    beside: Option<Choice>,
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
        let is_there = |choice: Choice| speech.is_there(choice);
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
        Self { chosen: false, ..self }
    }

    /// What is to be kept on this computer.
    pub(crate) fn chosen(&self) -> Option<Choice> {
        Some(self.spoken).filter(|_| self.chosen)
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
    /// The choice that came to nothing: its sentences did not come, or are no sentences of
    /// this page.
    pub(crate) fn take(&mut self, table: Option<Vec<u8>>) -> Result<bool, Choice> {
        match table.map(Table::load) {
            Some(Ok(table)) => self.tables.push(table),
            // Which it was, nobody says: all that is on its way is given up.
            _ => {
                let late = self.beside.filter(|beside| !self.is_here(*beside));
                self.beside = self.beside.filter(|_| late.is_none());
                return self.awaited.take().or(late).map_or(Ok(false), Err);
            }
        }
        let spoken = self.awaited.filter(|choice| self.speak(*choice));
        self.awaited.take_if(|_| spoken.is_some());
        Ok(spoken.is_some())
    }

    /// Speaks a language, if its sentences are here.
    fn speak(&mut self, choice: Choice) -> bool {
        if !self.is_here(choice) {
            return false;
        }
        words::speak(self.table(choice));
        self.spoken = choice;
        true
    }

    /// Whether the sentences of a language are here.
    fn is_here(&self, choice: Choice) -> bool {
        choice.language.kind == Kind::BuiltIn || self.table(choice).is_some()
    }

    /// Those of a language that is not built in.
    fn table(&self, choice: Choice) -> Option<Table> {
        let is_of = |table: &&Table| table.language() == choice.language;
        let table = self.tables.iter().find(is_of)?;
        Some(table.with_own_digits(choice.own_digits))
    }

    /// What can stand beside the language in use: every other one. Their digits make no
    /// difference there.
    pub(crate) fn offered_beside(&self) -> Vec<Choice> {
        let mut offered = Vec::new();
        for (choice, _) in self.offered() {
            if choice.language != self.spoken.language && !choice.own_digits {
                offered.push(choice);
            }
        }
        offered
    }

    /// What is to stand beside the language in use, also while it is on its way. None where
    /// that is what is spoken by now.
    pub(crate) fn beside(&self) -> Option<Choice> {
        self.beside.filter(|beside| beside.language != self.spoken.language)
    }

    /// Says something in the language beside, and gives it with that language: none where there
    /// is none, or where its sentences are not here yet.
    pub(crate) fn say_beside<T>(
        &self,
        say: impl FnOnce() -> T,
    ) -> Option<(&'static Language, T)> {
        let beside = self.beside().filter(|beside| self.is_here(*beside))?;
        words::speak(self.table(beside));
        let said = say();
        words::speak(self.table(self.spoken));
        Some((beside.language, said))
    }
}

/// Somebody chose a language.
pub(super) fn chose(state: &mut State, choice: Choice) -> Vec<Effect> {
    state.speech.chosen = true;
    if state.speech.speak(choice) {
        state.speech.awaited = None;
        return vec![Effect::Speak, Effect::Redraw, Effect::KeepView];
    }
    state.speech.awaited = Some(choice);
    vec![Effect::FetchTable(choice.language.key), Effect::Redraw]
}

/// Somebody chose a language to stand beside the one in use, or none.
pub(super) fn chose_beside(state: &mut State, choice: Option<Choice>) -> Vec<Effect> {
    state.speech.beside = choice;
    let mut effects = vec![Effect::Redraw];
    if let Some(choice) = choice.filter(|choice| !state.speech.is_here(*choice)) {
        effects.push(Effect::FetchTable(choice.language.key));
    }
    effects
}

/// The sentences of a language came, or did not.
pub(super) fn came(state: &mut State, table: Option<Vec<u8>>) -> Vec<Effect> {
    match state.speech.take(table) {
        Ok(true) => return vec![Effect::Speak, Effect::Redraw, Effect::KeepView],
        Ok(false) => {}
        Err(choice) => state.notice = Some(failed(choice)),
    }
    vec![Effect::Redraw]
}

/// A language did not come.
pub(crate) fn failed(choice: Choice) -> Notice {
    Notice::Said { alarming: true, words: words::language_failed(choice.name) }
}
