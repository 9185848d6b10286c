//! The places of the page: a step of the lesson each, and three beside them. Everything that
//! knows them all is in this table.

use super::State;
use crate::part::Part;
use noseward_lesson::{LessonPlace, Statement, Trial};
use noseward_words::{self as words, Text};

/// A place of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum Place {
    /// Describing the rocket.
    #[default]
    Rocket,
    /// Finding both points of the real one.
    Measure,
    /// Saying what it will do.
    Predict,
    /// Swinging it.
    Swing,
    /// What changed, and what it did.
    Compare,
    /// What the group found out.
    Conclude,
    /// Ways to keep it and to give it away.
    HandIn,
    /// The air from every side, and how sure all that is.
    Why,
    /// The terms of the trade, with pictures.
    Words,
    /// Which group of a class somebody is.
    Join,
    /// The link for a class.
    SetUp,
    /// What the groups of a class found, together.
    Class,
    /// Sheets to print.
    Paper,
    /// For whoever leads the lesson.
    Lead,
}

/// What the page knows of a place.
struct Row {
    place: Place,
    /// What has to be loaded for it; `None` for the first one.
    part: Option<Part>,
    /// Its name in the address.
    key: &'static str,
    /// Its name on the page.
    name: Text,
    heading: Text,
    /// Whether the drawing stands beside it.
    has_drawing: bool,
    /// Whether the trial in hand is done with it; `None` for a place beside the path.
    is_done: Option<fn(&State) -> bool>,
}

const PLACES: [Row; 14] = [
    Row {
        place: Place::Rocket,
        part: None,
        key: "rocket",
        name: words::places_rocket(),
        heading: words::places_rocket_heading(),
        has_drawing: true,
        is_done: Some(|state| state.trial_in_hand().is_some()),
    },
    Row {
        place: Place::Measure,
        part: Some(Part::Measure),
        key: "measure",
        name: words::places_measure(),
        heading: words::places_measure_heading(),
        has_drawing: true,
        is_done: Some(|state| {
            state.trial_in_hand().is_some()
                && state.measured.centre_of_mass.is_some()
                && state.measured.centre_of_pressure.is_some()
        }),
    },
    Row {
        place: Place::Predict,
        part: Some(Part::Trial),
        key: "predict",
        name: words::places_predict(),
        heading: words::places_predict_heading(),
        has_drawing: true,
        is_done: Some(|state| state.trial_in_hand().is_some_and(Trial::is_locked)),
    },
    Row {
        place: Place::Swing,
        part: Some(Part::Swing),
        key: "swing",
        name: words::places_swing(),
        heading: words::places_swing_heading(),
        has_drawing: true,
        is_done: Some(|state| {
            state.trial_in_hand().is_some_and(|trial| trial.swings().is_done())
        }),
    },
    Row {
        place: Place::Compare,
        part: Some(Part::Compare),
        key: "compare",
        name: words::places_compare(),
        heading: words::places_compare_heading(),
        has_drawing: true,
        is_done: Some(|state| {
            let is_done = |trial: &Trial| trial.is_complete() && !trial.note.is_empty();
            state.trial_in_hand().is_some_and(is_done)
        }),
    },
    Row {
        place: Place::Conclude,
        part: Some(Part::Trial),
        key: "conclude",
        name: words::places_conclude(),
        heading: words::places_conclude_heading(),
        has_drawing: false,
        is_done: Some(|state| {
            let notebook = &state.desk.notebook;
            !notebook.conclusion.text(Statement::Claim).is_empty()
                && notebook.trials().iter().any(Trial::is_complete)
        }),
    },
    Row {
        place: Place::HandIn,
        part: Some(Part::HandIn),
        key: "hand-in",
        name: words::places_hand_in(),
        heading: words::places_hand_in_heading(),
        has_drawing: false,
        is_done: Some(|state| state.handed_in),
    },
    Row {
        place: Place::Why,
        part: Some(Part::Why),
        key: "why",
        name: words::places_why(),
        heading: words::places_why_heading(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::Words,
        part: Some(Part::WordMat),
        key: "words",
        name: words::places_words(),
        heading: words::places_words(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::Join,
        part: Some(Part::Files),
        key: "join",
        name: words::places_join(),
        heading: words::places_join(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::SetUp,
        part: Some(Part::SetUp),
        key: "set-up",
        name: words::places_set_up(),
        heading: words::places_set_up(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::Class,
        part: Some(Part::Class),
        key: "class",
        name: words::places_class(),
        heading: words::places_class(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::Paper,
        part: Some(Part::Paper),
        key: "paper",
        name: words::places_paper(),
        heading: words::places_paper(),
        has_drawing: false,
        is_done: None,
    },
    Row {
        place: Place::Lead,
        part: Some(Part::Lead),
        key: "lead",
        name: words::places_lead(),
        heading: words::places_lead(),
        has_drawing: false,
        is_done: None,
    },
];

impl Place {
    fn row(self) -> &'static Row {
        PLACES.iter().find(|row| row.place == self).unwrap_or(&PLACES[0])
    }

    /// Every place, in the order of the lesson.
    pub(crate) fn all() -> impl Iterator<Item = Self> {
        PLACES.iter().map(|row| row.place)
    }

    /// The place with a name in the address.
    pub(crate) fn parse(key: &str) -> Option<Self> {
        PLACES.iter().find(|row| row.key == key).map(|row| row.place)
    }

    /// Its name in the address.
    pub(crate) fn key(self) -> &'static str {
        self.row().key
    }

    /// Its name on the page.
    pub(crate) fn name(self) -> Text {
        self.row().name
    }

    /// What stands at its top.
    pub(crate) fn heading(self) -> Text {
        self.row().heading
    }

    /// What has to be loaded for it; `None` for the first one.
    pub(crate) fn part(self) -> Option<Part> {
        self.row().part
    }

    /// Whether the drawing stands beside it.
    pub(crate) fn has_drawing(self) -> bool {
        self.row().has_drawing
    }

    /// Whether the trial in hand is done with it.
    pub(crate) fn is_done(self, state: &State) -> bool {
        self.row().is_done.is_some_and(|is_done| is_done(state))
    }

    /// The next place of the path that is shown, or the first of it.
    pub(crate) fn next(self, state: &State) -> Self {
        let mut path = Self::path(state).skip_while(|place| *place != self);
        path.nth(1).unwrap_or_else(|| Self::first(state))
    }

    /// The first place of the path that is shown.
    pub(crate) fn first(state: &State) -> Self {
        Self::path(state).next().unwrap_or_default()
    }

    /// The places of the path that are shown.
    pub(crate) fn path(state: &State) -> impl Iterator<Item = Self> {
        let path = PLACES.iter().filter(|row| row.is_done.is_some());
        path.map(|row| row.place).filter(|place| place.is_shown(state))
    }

    /// Whether the set-up of the open notebook shows it. What whoever leads needs always is.
    pub(crate) fn is_shown(self, state: &State) -> bool {
        // Those that can be hidden stand in front, in the same order.
        let of_lesson = LessonPlace::ALL.get(self as usize);
        let set_up = state.desk.notebook.set_up();
        of_lesson.zip(set_up).is_none_or(|(place, set_up)| set_up.places.has(*place))
    }

    /// What stands in the address for it, before `#`: nothing for the first.
    pub(crate) fn search(self) -> String {
        if self == Self::Rocket { String::new() } else { self.href() }
    }

    /// The address of a link to it from the page.
    pub(crate) fn href(self) -> String {
        format!("?at={}", self.key())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::Opening;
    use noseward_lesson::{Group, Notebook, SetUp};

    #[test]
    fn names_in_the_address_lead_back() {
        for place in Place::all() {
            assert_eq!(Place::parse(place.key()), Some(place));
            assert_eq!(PLACES.iter().filter(|row| row.key == place.key()).count(), 1);
        }
        assert_eq!(Place::parse("elsewhere"), None);
    }

    #[test]
    fn the_path_goes_on_past_what_is_hidden() {
        let mut state = State::new(&Opening::default());
        let path = |state: &State| Place::path(state).collect::<Vec<_>>();
        assert_eq!(path(&state), Place::all().take(7).collect::<Vec<_>>());
        assert_eq!(Place::Rocket.next(&state), Place::Measure);
        assert_eq!(Place::Conclude.next(&state), Place::HandIn);
        for place in Place::all().skip(6) {
            assert_eq!(place.next(&state), Place::Rocket);
        }
        let mut set_up = SetUp::default();
        for hidden in [LessonPlace::Rocket, LessonPlace::Compare, LessonPlace::Why] {
            set_up.places = set_up.places.toggled(hidden);
        }
        state.desk.notebook = Notebook::of_set_up(Group::default(), &set_up);
        let keys: Vec<_> = Place::path(&state).map(Place::key).collect();
        assert_eq!(keys, ["measure", "predict", "swing", "conclude", "hand-in"]);
        assert_eq!(Place::Swing.next(&state), Place::Conclude);
        assert_eq!(Place::Words.next(&state), Place::Measure);
        assert!(!Place::Why.is_shown(&state) && Place::Words.is_shown(&state));
        assert!(Place::Lead.is_shown(&state) && Place::SetUp.is_shown(&state));
    }

    /// A set-up hides places by their order here.
    #[test]
    fn what_can_be_hidden_stands_in_front() {
        for (place, of_lesson) in Place::all().zip(LessonPlace::ALL) {
            assert_eq!(place.key().replace('-', "_"), noseward_lesson::key(&of_lesson));
        }
        for (place, number) in Place::all().zip(0..) {
            assert_eq!(place as usize, number);
        }
    }
}
