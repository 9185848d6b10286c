//! The form in which a lesson is set up.

use std::borrow::Cow;

use noseward_lesson::{
    ClassQuestion, Colour, Labels, Level, MOST_ADDED_G, MOST_GROUPS, MOST_HALL_M,
    MOST_IN_GROUP, Plan, Rocket, SetUp, Support, Telling,
};
use noseward_link::{SetUpLink, open_set_up, set_up_hash, set_up_text};
use noseward_stability::{
    BottleSize, Design, Example, Quantity, SwingField, UnitSystem, Units, trimmed,
};
use noseward_words::{self as words, Choice, Number};

use crate::app::{State, example_design, read_number};

/// In front of the name of each of its fields.
pub(crate) const FIELD: &str = "su:";

/// The form, and what was kept of it.
#[derive(Debug, Default)]
pub(crate) struct SetUpState {
    /// What this computer keeps of it.
    pub(crate) text: Option<String>,
    /// Whether anything was changed in this visit.
    pub(crate) changed: bool,
    pub(crate) form: Option<Box<Form>>,
}

/// The form.
#[derive(Clone, Debug)]
pub(crate) struct Form {
    pub(super) set_up: SetUp,
    /// The rocket to begin with, and what is known of it.
    pub(super) rocket: Option<Rocket>,
    /// Text in a field that could not be read; the set-up keeps the value before it.
    pub(super) drafts: Vec<(SetUpField, String)>,
    pub(super) plan: Plan,
    /// The set-up before another one was opened here.
    pub(super) before: Option<Box<SetUp>>,
}

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SetUpField {
    Pupils,
    Size,
    Labels,
    Language,
    Level,
    Units,
    Help,
    Telling,
    Question,
    Own,
    Added,
    Hall,
    String,
    Turns,
    Rocket,
    Plan,
    /// A link or code of another set-up.
    Open,
}

impl SetUpField {
    /// Every field.
    pub(crate) const ALL: [Self; 17] = [
        Self::Pupils,
        Self::Size,
        Self::Labels,
        Self::Language,
        Self::Level,
        Self::Units,
        Self::Help,
        Self::Telling,
        Self::Question,
        Self::Own,
        Self::Added,
        Self::Hall,
        Self::String,
        Self::Turns,
        Self::Rocket,
        Self::Plan,
        Self::Open,
    ];

    /// Its name in the markup, which is the element's id too.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Pupils => "su:pupils",
            Self::Size => "su:size",
            Self::Labels => "su:labels",
            Self::Language => "su:language",
            Self::Level => "su:level",
            Self::Units => "su:units",
            Self::Help => "su:help",
            Self::Telling => "su:telling",
            Self::Question => "su:question",
            Self::Own => "su:own",
            Self::Added => "su:added",
            Self::Hall => "su:hall",
            Self::String => "su:string",
            Self::Turns => "su:turns",
            Self::Rocket => "su:rocket",
            Self::Plan => "su:plan",
            Self::Open => "su:open",
        }
    }

    /// The field with a name.
    pub(crate) fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|field| field.name() == name)
    }

    /// The least and the most of a number; `None` where none stands in it.
    pub(super) fn bounds(self, set_up: &SetUp) -> Option<(f64, f64)> {
        Some(match self {
            Self::Pupils => (1.0, f64::from(set_up.group_size * MOST_GROUPS)),
            Self::Size => (1.0, f64::from(MOST_IN_GROUP)),
            Self::Added => (0.0, MOST_ADDED_G),
            Self::Hall => (1.0, MOST_HALL_M),
            Self::String => SwingField::String.bounds(),
            Self::Turns => SwingField::Turns.bounds(),
            _ => return None,
        })
    }

    /// Whether it may be left empty.
    fn may_be_empty(self) -> bool {
        matches!(self, Self::Added | Self::Hall)
    }

    /// The number in it.
    fn number(self, set_up: &SetUp) -> Option<f64> {
        match self {
            Self::Pupils => Some(set_up.pupils.into()),
            Self::Size => Some(set_up.group_size.into()),
            Self::Added => set_up.limits.added_g,
            Self::Hall => set_up.hall_m,
            Self::String => Some(set_up.limits.string_m),
            Self::Turns => Some(set_up.limits.turns_per_s),
            _ => None,
        }
    }
}

/// Whether a field of the form has this name.
#[cfg(test)]
pub(crate) fn is_field(name: &str) -> bool {
    SetUpField::parse(name).is_some()
}

/// A rocket to begin with, by its place in the list.
pub(super) fn rockets() -> Vec<(String, Design)> {
    let examples = Example::ALL.into_iter().map(|example| {
        let design = example_design(example).rounded();
        (design.name.clone(), design)
    });
    let bottles = BottleSize::ALL.into_iter().map(|size| {
        let name = words::menus_empty_bottle(Number::trimmed(size.litres(), 2));
        (name, size.design().rounded())
    });
    examples.chain(bottles).collect()
}

impl Form {
    /// The form as it is when nobody has used it in this visit: what was kept, or else a
    /// working set-up in the language of the page.
    fn new(state: &State) -> Self {
        let kept = state.set_up.text.as_ref().and_then(|text| open_set_up(text).ok());
        if let Some(kept) = kept {
            return Self::of(kept.set_up);
        }
        let rocket = Some(example_design(Example::Tern).rounded());
        let language = state.speech.spoken().key.to_owned();
        let units = state.units.system;
        Self::of(SetUp { rocket, language, units, ..SetUp::default() })
    }

    pub(super) fn of(set_up: SetUp) -> Self {
        let rocket = set_up.rocket.clone().map(Rocket::from);
        Self { set_up, rocket, drafts: Vec::new(), plan: Plan::default(), before: None }
    }

    /// The set-up as it is kept: with its rocket, where a link has room for that.
    fn text(&self) -> String {
        let link = SetUpLink { set_up: self.set_up.clone(), group: None };
        set_up_hash(&link).unwrap_or_else(|| set_up_text(&self.set_up))
    }

    /// What stands in a field.
    pub(super) fn text_of(&self, field: SetUpField) -> String {
        if let Some((_, text)) = self.drafts.iter().find(|(known, _)| *known == field) {
            return text.clone();
        }
        if let (SetUpField::Own, ClassQuestion::Own(text)) =
            (field, &self.set_up.question)
        {
            return text.clone();
        }
        let number = field.number(&self.set_up);
        number.map_or_else(String::new, |value| words::as_typed(&trimmed(value, 2)))
    }

    /// Types into a field. A number that cannot be read, or is out of bounds, stays there.
    pub(super) fn typed(&mut self, field: SetUpField, text: &str) {
        self.drafts.retain(|(known, _)| *known != field);
        match field.bounds(&self.set_up) {
            None => self.chosen(field, text),
            Some(bounds) => {
                if !self.number_typed(field, text, bounds) {
                    self.drafts.push((field, text.to_owned()));
                }
            }
        }
    }

    /// What is known of another rocket is worked out anew.
    fn follow(&mut self) {
        if self.rocket.as_ref().map(Rocket::design) != self.set_up.rocket.as_ref() {
            self.rocket = self.set_up.rocket.clone().map(Rocket::from);
        }
    }

    /// Whether the text was a number that the field takes.
    fn number_typed(
        &mut self,
        field: SetUpField,
        text: &str,
        bounds: (f64, f64),
    ) -> bool {
        // An angle is a number without a unit.
        let Ok(read) = read_number(text, Quantity::Angle, Units::METRIC) else {
            return false;
        };
        let fits = read.is_none_or(|value| bounds.0 <= value && value <= bounds.1);
        if !fits || read.is_none() && !field.may_be_empty() {
            return false;
        }
        let set_up = &mut self.set_up;
        let value = read.unwrap_or_default();
        match field {
            SetUpField::Pupils | SetUpField::Size if value.fract() != 0.0 => {
                return false;
            }
            SetUpField::Pupils => set_up.pupils = whole(value),
            SetUpField::Size => set_up.group_size = whole(value),
            SetUpField::Added => set_up.limits.added_g = read,
            SetUpField::Hall => set_up.hall_m = read,
            SetUpField::String => set_up.limits.string_m = value,
            _ => set_up.limits.turns_per_s = value,
        }
        let now = std::mem::take(&mut self.set_up);
        self.set_up = now.rounded();
        true
    }

    fn chosen(&mut self, field: SetUpField, text: &str) {
        let at = text.parse::<usize>().ok();
        let set_up = &mut self.set_up;
        match field {
            SetUpField::Labels => {
                let colour = at.and_then(|at| Colour::ALL.get(at.checked_sub(1)?));
                set_up.labels = colour.map_or(Labels::Colours, |c| Labels::Numbers(*c));
            }
            SetUpField::Language => {
                let choice = Choice::parse(text);
                set_up.language = choice.map(|choice| choice.key).unwrap_or("").into();
            }
            SetUpField::Level => put(&mut set_up.level, &Level::ALL, at),
            SetUpField::Units => {
                put(&mut set_up.units, &[UnitSystem::Metric, UnitSystem::Inch], at);
            }
            SetUpField::Help => put(&mut set_up.support, &Support::ALL, at),
            SetUpField::Telling => put(&mut set_up.telling, &Telling::ALL, at),
            SetUpField::Plan => put(&mut self.plan, &Plan::ALL, at),
            SetUpField::Question => {
                let of_menu = at.and_then(|at| ClassQuestion::MENU.get(at).cloned());
                let own = || ClassQuestion::Own(String::new());
                set_up.question = of_menu.unwrap_or_else(own);
                set_up.changeable = set_up.question.changeable();
            }
            SetUpField::Own => {
                set_up.question = ClassQuestion::Own(text.to_owned());
                let now = std::mem::take(set_up);
                *set_up = now.rounded();
            }
            SetUpField::Rocket => {
                let chosen = at.and_then(|at| rockets().into_iter().nth(at));
                if let Some((_, design)) = chosen {
                    set_up.rocket = Some(design);
                }
            }
            SetUpField::Open => self.open(text),
            _ => {}
        }
    }

    /// Another set-up comes into the form, if the text is one; the one before stays at hand.
    fn open(&mut self, text: &str) {
        let Ok(opened) = open_set_up(text.trim()) else {
            if !text.trim().is_empty() {
                self.drafts.push((SetUpField::Open, text.to_owned()));
            }
            return;
        };
        let before = std::mem::replace(&mut self.set_up, opened.set_up);
        self.before = Some(Box::new(before));
        self.drafts.clear();
    }

    /// What may be changed.
    pub(super) fn toggle(&mut self, one: noseward_lesson::Changeable) {
        self.set_up.changeable = self.set_up.changeable.toggled(one);
    }
}

/// Puts the value with a number into its place, if there is one.
fn put<T: Copy>(value: &mut T, all: &[T], at: Option<usize>) {
    if let Some(chosen) = at.and_then(|at| all.get(at)) {
        *value = *chosen;
    }
}

fn whole(value: f64) -> u8 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "whole, and within the bounds of a field"
    )]
    let whole = value as u8;
    whole
}

impl State {
    /// The form, or what it will be once something is changed in it.
    pub(super) fn form(&self) -> Cow<'_, Form> {
        match &self.set_up.form {
            Some(form) => Cow::Borrowed(form),
            None => Cow::Owned(Form::new(self)),
        }
    }

    /// Something was changed in the form: it is to be kept.
    pub(super) fn form_changed(&mut self) {
        let form = self.form_mut();
        form.follow();
        let text = form.text();
        self.set_up.text = Some(text);
        self.set_up.changed = true;
    }

    /// The form, to change it.
    pub(super) fn form_mut(&mut self) -> &mut Form {
        let form = self.form().into_owned();
        self.set_up.form.get_or_insert_with(|| Box::new(form))
    }
}
