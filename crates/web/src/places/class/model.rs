//! What the place Class knows: the class itself, and what is looked at and typed there.

use std::cell::{Cell, RefCell};
use std::rc::Rc;

use noseward_lesson::{Class, Entry, Refusal, SwingOutcome};
use noseward_link::{Gathering, LinkError};

use super::pattern::Pattern;
use super::symbols::Symbols;
use super::timer::Timer;
use crate::app::Opening;

/// In front of the name of each of its fields.
pub(crate) const FIELD: &str = "cl:";
/// The input that chooses files, by its id.
pub(crate) const CLASS_FILES: &str = "class-files";
/// The largest file of results, in bytes: some 60,000 rows.
pub(crate) const CLASS_BYTES: f64 = 16.0 * 1024.0 * 1024.0;

/// The class as the first part of the page knows it.
#[derive(Debug, Default)]
pub(crate) struct ClassState {
    /// What this computer keeps of it, until it is opened.
    pub(crate) text: Option<String>,
    /// Whether it has changed since it was last kept.
    pub(crate) unsaved: bool,
    /// Whether something is being taken in.
    pub(crate) is_busy: bool,
    /// The day, as year, month and day.
    pub(crate) today: (u16, u8, u8),
    pub(crate) desk: Option<Box<ClassDesk>>,
}

impl ClassState {
    pub(crate) fn new(opening: &Opening) -> Self {
        let (text, today) = (opening.class.clone(), opening.today);
        Self { text, today, ..Self::default() }
    }
}

/// The class, and what is looked at and typed there.
#[derive(Default)]
pub(crate) struct ClassDesk {
    pub(super) class: Class,
    pub(super) view: View,
    /// What is typed or pasted.
    pub(super) pasted: String,
    /// What is still to be taken in, with the names of the files, the last first.
    pub(super) queue: Vec<(String, String)>,
    /// What is being taken in.
    pub(super) running: Option<Gathering>,
    /// The slices since it was last told how far that is.
    pub(super) slices: u8,
    /// Whether that is the class as this computer kept it: it was held to everything then.
    pub(super) is_opening: bool,
    /// Whether nothing is told of what is being taken in: it was kept, with all behind it.
    pub(super) is_quiet: bool,
    /// QR symbols that are read.
    pub(crate) symbols: Symbols,
    /// What became of what was taken in last.
    pub(super) tally: Tally,
    /// What was not taken in, and waits for somebody to mend it or let it go.
    pub(super) refused: Vec<Refused>,
    /// The class before the last gathering.
    pub(super) before: Option<Box<Class>>,
    /// A row of numbers from paper.
    pub(super) row: PaperRow,
    /// What is wrong in that row.
    pub(super) row_fault: Option<String>,
    /// What became of the row before.
    pub(super) row_said: Option<String>,
    pub(super) pattern: PatternView,
    /// The pattern as it was worked out last, until something of the class changes.
    pub(super) known: RefCell<Option<(Along, Rc<Pattern>)>>,
    /// How many groups there are, until something of the class changes.
    pub(super) groups: Cell<Option<u32>>,
    pub(super) timer: Option<Timer>,
    pub(super) table: TableView,
    /// The notebook that is marked, by its place in the class.
    pub(super) marked: usize,
    pub(super) asks_to_delete: bool,
    /// Text of the label of the class, or of its day, that could not be read.
    pub(super) drafts: Vec<(&'static str, String)>,
}

impl ClassDesk {
    /// What was worked out of the class is of the class before.
    pub(super) fn forget(&self) {
        self.known.replace(None);
        self.groups.set(None);
    }
}

impl std::fmt::Debug for ClassDesk {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("ClassDesk")
    }
}

/// What the place shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) enum View {
    /// What was handed in.
    #[default]
    Gather,
    /// What all of it comes to.
    Pattern,
    /// Each trial in a row.
    Table,
    /// What groups wrote, to be marked.
    Marking,
    /// What is given back.
    Reports,
}

impl View {
    pub(crate) const ALL: [Self; 5] =
        [Self::Gather, Self::Pattern, Self::Table, Self::Marking, Self::Reports];
}

/// What became of what was taken in.
#[derive(Clone, Debug, Default)]
pub(super) struct Tally {
    pub(super) new: u32,
    pub(super) notebooks: u32,
    /// Trials that were there already, where they stood.
    pub(super) doubled: Vec<Where>,
    /// Trials that take the place of older ones.
    pub(super) newer: Vec<Where>,
    /// Lines that hold nothing.
    pub(super) words: Vec<Where>,
    /// Files of how many are done.
    pub(super) files: (usize, usize),
    /// Whether somebody stopped it.
    pub(super) stopped: bool,
}

/// A place in what was handed in.
#[derive(Clone, Debug)]
pub(super) struct Where {
    /// The name of the file; empty for what was pasted.
    pub(super) source: String,
    pub(super) line: usize,
    /// What stands there, or whose trial it is.
    pub(super) what: String,
}

/// Something that was not taken in.
#[derive(Clone, Debug)]
pub(super) struct Refused {
    pub(super) at: Where,
    pub(super) why: Why,
}

/// Why something was not taken in.
#[derive(Clone, Debug)]
pub(super) enum Why {
    /// It cannot be read.
    Unread(LinkError),
    /// The class does not take it as it is.
    NotTaken(Box<Entry>, Refusal),
    /// There is no room for another notebook.
    NotebooksFull,
    /// It is a rocket without a trial.
    Rocket,
    /// It is the set-up of a lesson.
    SetUp,
    /// Other parts of its notebook are missing.
    Part { here: usize, of: usize },
    /// The file is too large, or no text.
    File,
}

impl Why {
    /// Whether the class takes it all the same if somebody says so.
    pub(super) fn can_be_taken(&self) -> bool {
        matches!(
            self,
            Self::NotTaken(_, Refusal::OtherRules { .. } | Refusal::Unfinished { .. })
        )
    }
}

/// A row of numbers from paper, as it is typed.
#[derive(Clone, Debug)]
pub(super) struct PaperRow {
    /// The colour of the group, by its place in the list.
    pub(super) colour: usize,
    pub(super) number: String,
    pub(super) trial: String,
    /// What was read of the two points, up to three readings each.
    pub(super) points: [String; 2],
    pub(super) predicted: Option<SwingOutcome>,
    pub(super) swings: [Option<SwingOutcome>; 3],
    pub(super) changed: String,
}

impl Default for PaperRow {
    fn default() -> Self {
        Self {
            colour: 0,
            number: "1".into(),
            trial: "1".into(),
            points: Default::default(),
            predicted: None,
            swings: [None; 3],
            changed: String::new(),
        }
    }
}

/// How the pattern is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct PatternView {
    pub(super) along: Along,
    /// Whether dots have the labels of their groups.
    pub(super) names: bool,
    /// Whether it fills a big screen.
    pub(super) board: bool,
}

/// Which separation stands along the chart.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Along {
    /// Whether it is the one that was worked out, and not the measured one.
    pub(super) computed: bool,
    /// Whether in body widths, and not in lengths.
    pub(super) in_widths: bool,
}

/// How the table is looked at.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct TableView {
    pub(super) sort: Sort,
    pub(super) filter: Filter,
    /// How many hundred rows more are shown than the first.
    pub(super) more: usize,
}

/// What the table is sorted by.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Sort {
    /// As it came.
    #[default]
    Came,
    Group,
    Separation,
    Outcome,
}

impl Sort {
    pub(super) const ALL: [Self; 4] =
        [Self::Came, Self::Group, Self::Separation, Self::Outcome];
}

/// Which rows the table shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum Filter {
    #[default]
    All,
    Marked,
    Hidden,
    /// More than one thing changed.
    NotFair,
    /// Something about it looks odd.
    Odd,
    /// There is an older one beside it.
    Twice,
}

impl Filter {
    pub(super) const ALL: [Self; 6] =
        [Self::All, Self::Marked, Self::Hidden, Self::NotFair, Self::Odd, Self::Twice];
}

/// A field of the place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum ClassField {
    Label,
    DeleteBy,
    Pasted,
    /// A refused text, to be mended.
    Mend(usize),
    Colour,
    Number,
    Trial,
    Point(usize),
    Predicted,
    Swing(usize),
    Changed,
    Sort,
    Filter,
    Marked,
}

impl ClassField {
    /// Its name in the markup, which is the element's id too.
    pub(super) fn name(self) -> String {
        let name = match self {
            Self::Label => "label",
            Self::DeleteBy => "day",
            Self::Pasted => "pasted",
            Self::Mend(i) => return format!("{FIELD}mend{i}"),
            Self::Colour => "colour",
            Self::Number => "number",
            Self::Trial => "trial",
            Self::Point(i) => return format!("{FIELD}point{i}"),
            Self::Predicted => "predicted",
            Self::Swing(i) => return format!("{FIELD}swing{i}"),
            Self::Changed => "changed",
            Self::Sort => "sort",
            Self::Filter => "filter",
            Self::Marked => "marked",
        };
        format!("{FIELD}{name}")
    }

    /// The field with a name.
    pub(super) fn parse(name: &str) -> Option<Self> {
        let name = name.strip_prefix(FIELD)?;
        let numbered = |front: &str| name.strip_prefix(front)?.parse::<usize>().ok();
        Some(match name {
            "label" => Self::Label,
            "day" => Self::DeleteBy,
            "pasted" => Self::Pasted,
            "colour" => Self::Colour,
            "number" => Self::Number,
            "trial" => Self::Trial,
            "predicted" => Self::Predicted,
            "changed" => Self::Changed,
            "sort" => Self::Sort,
            "filter" => Self::Filter,
            "marked" => Self::Marked,
            _ => numbered("mend")
                .map(Self::Mend)
                .or_else(|| numbered("point").filter(|i| *i < 2).map(Self::Point))
                .or_else(|| numbered("swing").filter(|i| *i < 3).map(Self::Swing))?,
        })
    }
}

/// Whether a field of the place has this name.
#[cfg(test)]
pub(crate) fn is_field(name: &str) -> bool {
    ClassField::parse(name).is_some()
}
