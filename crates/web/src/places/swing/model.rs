//! What the place Swing knows: how the rocket should behave on its string, and how far the test is.

use noseward_lesson::{Swings, Trial, same_build};
use noseward_stability::{
    Design, Figures, Quantity, Settling, Shares, SmallerSpace, Space, Starts, Swing,
    SwingDraws, SwingField, SwingLimit, SwingProblem, SwingSetup, Trajectory, trimmed,
};
use noseward_words::{self as words, Setup};

use crate::app::{Draft, Effect, State, Unreadable, call, has_unit, read_number};
use crate::later::Ask;
use crate::places::form::setup_value;

/// Everything about the bench that is not recorded.
#[derive(Debug)]
pub(crate) struct SwingState {
    /// Text in a field that could not be read.
    pub(super) drafts: Vec<(SetupField, Draft)>,
    /// The angle between nose and path at which it is let go, in degrees.
    pub(crate) start_deg: f64,
    /// What is known of the present rocket on its string.
    pub(crate) known: Option<Box<SwingResult>>,
    /// The rocket that the present one is compared with.
    pub(crate) previous: Option<Box<Previous>>,
    pub(crate) motion: Motion,
    /// What the adult in charge has looked at, in this visit.
    pub(super) checked: Option<Checked>,
    /// The card of the test that is shown.
    pub(crate) card: usize,
    /// Whether the reader's system asks for as little motion as possible.
    pub(crate) still: bool,
}

/// A field of the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum SetupField {
    Setup(SwingField),
    /// The starting angle.
    Start,
}

/// What was worked out for one rocket, one setup and one start.
#[derive(Debug)]
pub(crate) struct SwingResult {
    pub(crate) swing: Swing,
    /// The room that it needs, and what needs less.
    pub(crate) space: Space,
    pub(crate) smaller: Vec<SmallerSpace>,
    /// Where its outcome comes from.
    pub(crate) shares: Shares,
    pub(crate) settling: Settling,
    pub(crate) trajectory: Trajectory,
    /// The trajectory of the rocket that it is compared with.
    pub(crate) before: Option<Trajectory>,
    /// What every start leads to, as far as it is tried.
    pub(crate) starts: Starts,
    /// What else it might come to, with all that is not known exactly, as far as it is
    /// tried.
    pub(crate) draws: SwingDraws,
}

/// A rocket as it was before it was changed, with what it did.
#[derive(Clone, Debug)]
pub(crate) struct Previous {
    pub(crate) design: Design,
    pub(crate) figures: Figures,
    pub(crate) swings: Swings,
}

/// Whose swings they are: the place of the open notebook, and the trial in hand.
type Owner = (u32, Option<u16>);

/// The space as the adult in charge has looked at it: for one set of three swings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Checked {
    clear_m: f64,
    mass_kg: f64,
    speed_m_per_s: f64,
    owner: Owner,
}

/// Where the moving pictures are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Motion {
    pub(crate) playing: bool,
    pub(crate) time_s: f64,
    /// Seconds of the rocket's time in one of ours.
    pub(crate) speed: f64,
}

/// Cards of the test, from the hanging point to letting it slow.
pub(crate) const CARDS: usize = 7;
/// The card on which the space is checked. Those after it wait for that.
pub(crate) const SPACE_CARD: usize = 4;
/// Starts that are tried in one slice: some milliseconds on a slow machine.
pub(super) const STARTS_IN_SLICE: usize = 2;
/// Draws of a swing in one slice, likewise.
pub(super) const SWINGS_IN_SLICE: usize = 10;
/// How far one step of the pictures goes, in seconds.
pub(super) const STEP_S: f64 = 0.1;
/// The graph shows at least and at most so much, in seconds.
const SHOWN_S: (f64, f64) = (2.0, 10.0);

impl SwingState {
    /// A bench that nobody has used.
    pub(crate) fn new(still: bool) -> Self {
        Self {
            drafts: Vec::new(),
            start_deg: 90.0,
            known: None,
            previous: None,
            motion: Motion { playing: false, time_s: 0.0, speed: 0.5 },
            checked: None,
            card: 0,
            still,
        }
    }
}

impl SetupField {
    /// Every field.
    pub(crate) const ALL: [Self; 5] = [
        Self::Setup(SwingField::String),
        Self::Setup(SwingField::Arm),
        Self::Setup(SwingField::Turns),
        Self::Setup(SwingField::AirDensity),
        Self::Start,
    ];

    /// Its name in the markup.
    pub(crate) fn name(self) -> &'static str {
        match self {
            Self::Setup(SwingField::String) => "string",
            Self::Setup(SwingField::Arm) => "arm",
            Self::Setup(SwingField::Turns) => "turns",
            Self::Setup(SwingField::AirDensity) => "density",
            Self::Start => "start",
        }
    }

    /// The id of its element.
    pub(crate) fn id(self) -> String {
        format!("swing:{}", self.name())
    }

    /// The field with a name in the markup.
    pub(crate) fn parse(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|field| field.name() == name)
    }

    /// Reads a text; metres for lengths without a unit.
    pub(super) fn read(self, text: &str, state: &State) -> Result<f64, Unreadable> {
        let is_length = matches!(self, Self::Setup(SwingField::String | SwingField::Arm));
        let value = if is_length {
            let text = if has_unit(text) { text.to_owned() } else { format!("{text} m") };
            read_number(&text, Quantity::Length, state.units)?.map(|mm| mm / 1000.0)
        } else {
            read_number(text, Quantity::Angle, state.units)?
        };
        value.ok_or(Unreadable::Empty)
    }
}

impl SwingState {
    /// When the pictures end, in seconds.
    pub(crate) fn end_s(&self) -> f64 {
        let known = self.known.as_ref();
        let last = known.and_then(|known| known.trajectory.samples.last());
        last.map_or(0.0, |last| last.time_s)
    }

    /// The text of a field that could not be read, if it is so now.
    fn draft(&self, field: SetupField) -> Option<&Draft> {
        self.drafts.iter().find(|(drafted, _)| *drafted == field).map(|(_, draft)| draft)
    }

    /// The time at a place on the graph of this width, in seconds.
    pub(crate) fn time_at(&self, x_px: f64, width_px: f64) -> f64 {
        noseward_drawing::swing_graph_time_s(x_px, width_px, self.end_s())
    }
}

impl State {
    /// What stands in a field of the bench.
    pub(crate) fn setup_text(&self, field: SetupField) -> String {
        if let Some(text) = self.typed_text(&field.id()) {
            return text.to_owned();
        }
        if let Some(draft) = self.swing.draft(field) {
            return draft.text.clone();
        }
        let value = match field {
            SetupField::Setup(field) => field.get(&self.swings.setup),
            SetupField::Start => self.swing.start_deg,
        };
        words::as_typed(&trimmed(value, 3))
    }

    /// What is wrong in a field of the bench, if anything is.
    pub(crate) fn setup_fault(&self, field: SetupField) -> Option<String> {
        if let Some(draft) = self.swing.draft(field) {
            return Some(match (&draft.why, field) {
                (Unreadable::Ambiguous { small, large }, _) => {
                    words::swing_ambiguous(small, large)
                }
                (_, SetupField::Start) => words::swing_needs_angle().into(),
                (_, SetupField::Setup(field)) => words::swing_unreadable(match field {
                    SwingField::String => Setup::String,
                    SwingField::Arm => Setup::Arm,
                    SwingField::AirDensity => Setup::Density,
                    SwingField::Turns => Setup::Turns,
                }),
            });
        }
        let SetupField::Setup(field) = field else { return None };
        let faults = self.swings.setup.faults();
        let fault = faults.into_iter().find(|fault| fault.field == field)?;
        let written = |value| setup_value(field, value, self.units);
        Some(match fault.problem {
            SwingProblem::NotANumber => words::swing_no_number().into(),
            SwingProblem::OutOfBounds { least, most } => {
                words::swing_out_of_bounds(&written(least), &written(most))
            }
            SwingProblem::HangsDown => words::swing_hangs_down().into(),
            SwingProblem::TooSlow => words::swing_too_slow().into(),
        })
    }

    fn swings_of(&self) -> Owner {
        let in_hand = self.desk.notebook.in_hand();
        (self.desk.slot, in_hand.map(Trial::id))
    }

    /// The space that this swing needs, for the adult in charge to look at.
    pub(super) fn space_needed(&self) -> Option<Checked> {
        let space = self.swing.known.as_ref()?.space;
        Some(Checked {
            clear_m: space.clear_m,
            mass_kg: self.report.figures.as_ref()?.mass.mass_kg,
            speed_m_per_s: space.speed_m_per_s,
            owner: self.swings_of(),
        })
    }

    /// Whether the space that this swing needs has been checked. A longer string, faster
    /// turns, a heavier rocket or another trial has to be looked at again.
    pub(crate) fn is_space_checked(&self) -> bool {
        // Less than a scale or a watch can tell.
        const SAME: f64 = 1.001;
        self.space_needed().zip(self.swing.checked).is_some_and(|(needed, checked)| {
            needed.owner == checked.owner
                && needed.clear_m <= checked.clear_m * SAME
                && needed.speed_m_per_s <= checked.speed_m_per_s * SAME
                && needed.mass_kg <= checked.mass_kg * SAME
        })
    }

    /// The page was loaded between two swings: the set goes on at the card that asks for
    /// another look at the space, and not at the first.
    pub(crate) fn go_on_swinging(&mut self) {
        if !self.swings.outcomes().is_empty() && !self.swings.is_done() {
            self.swing.card = SPACE_CARD;
        }
    }

    /// Another rocket or trial wants another look at the space.
    pub(crate) fn forget_space(&mut self) {
        self.swing.checked = None;
    }

    /// What makes this swing too much: then there is no result, and nothing is recorded.
    pub(crate) fn swing_limit(&self) -> Option<SwingLimit> {
        let figures = self.report.figures.as_ref()?;
        self.swings.setup.limit(figures.mass.mass_kg)
    }

    /// Whether an outcome may be recorded now.
    pub(crate) fn may_swing(&self) -> bool {
        self.is_space_checked()
            && self.is_predicted()
            && !self.swings.is_done()
            && !self.swings.is_full()
    }

    /// How long the graph is, in seconds.
    fn shown_s(swing: &Swing, settling: &Settling) -> f64 {
        let (least, most) = SHOWN_S;
        let enough = settling.when.map_or(most, |when| 1.6 * when.on_axis_s() + 1.0);
        enough.clamp(least, most).min(swing.watched_s())
    }

    /// What was worked out is of another rocket, setup or start: in view it is worked out
    /// at once, elsewhere when somebody comes there.
    pub(crate) fn forget_swing(&mut self) {
        self.swing.motion.playing = false;
        self.swing.motion.time_s = 0.0;
        self.swing.known = None;
        if self.shows_swing() {
            call(self, Ask::Swing);
        }
    }

    /// Works out the motion from the chosen start. Nothing while a field cannot be read: a
    /// distance from an older number would look as if it were from this one.
    pub(crate) fn work_out_swing(&mut self) {
        self.swing.known = self.swing_result();
    }

    fn swing_result(&self) -> Option<Box<SwingResult>> {
        if !self.swing.drafts.is_empty() || self.swing_limit().is_some() {
            return None;
        }
        let figures = self.report.figures.as_ref()?;
        let swing = Swing::new(figures, &self.swings.setup)?;
        let start_rad = self.swing.start_deg.to_radians();
        let settling = swing.settling(start_rad);
        let shown_s = Self::shown_s(&swing, &settling);
        let before = self.swing.previous.as_ref().and_then(|previous| {
            let swung = !previous.swings.outcomes().is_empty();
            let setup = if swung { previous.swings.setup } else { self.swings.setup };
            let swing = Swing::new(&previous.figures, &setup)?;
            Some(swing.trajectory(start_rad, shown_s))
        });
        Some(Box::new(SwingResult {
            trajectory: swing.trajectory(start_rad, shown_s),
            space: swing.space(),
            smaller: swing.smaller_spaces(),
            shares: swing.shares(),
            starts: swing.starts_in_slices(),
            draws: SwingDraws::new(
                &self.design,
                &self.measured,
                &self.swings.setup,
                self.resolution,
            ),
            settling,
            swing,
            before,
        }))
    }

    /// After a change of the rocket, or of how it is swung: its swings stay with what it
    /// was, which becomes the one to compare with. The report is still of that one.
    pub(crate) fn leave_behind(&mut self, before: &Design, setup_before: SwingSetup) {
        let setup = self.swings.setup;
        if same_build(before, &self.design) && setup == setup_before {
            return;
        }
        if self.swings.outcomes().is_empty() {
            // A number that was typed anew: all is again as it was swung.
            let back = |previous: &mut Box<Previous>| {
                previous.swings.setup == setup
                    && !previous.swings.outcomes().is_empty()
                    && same_build(&previous.design, &self.design)
            };
            if let Some(previous) = self.swing.previous.take_if(back) {
                self.swings = previous.swings;
            }
            return;
        }
        self.swing.checked = None;
        let mut swings = std::mem::replace(&mut self.swings, setup.into());
        swings.setup = setup_before;
        self.swing.previous = self.previous(before, swings);
    }

    /// A rocket to compare with: the one that the report is of.
    pub(super) fn previous(
        &self,
        design: &Design,
        swings: Swings,
    ) -> Option<Box<Previous>> {
        let figures = self.report.figures.clone()?;
        Some(Box::new(Previous { design: design.clone(), figures, swings }))
    }
}

/// Somebody comes to the swing test.
pub(crate) fn arrive(state: &mut State) -> Vec<Effect> {
    if state.swing.known.is_none() {
        call(state, Ask::Swing);
    }
    vec![Effect::Slice]
}

/// Works out a little more. Returns what is to be done next; nothing when all is known.
pub(crate) fn slice(state: &mut State) -> Vec<Effect> {
    if !state.shows_swing() {
        return Vec::new();
    }
    if state.swing.known.is_none() {
        call(state, Ask::Swing);
        let found = state.swing.known.is_some();
        return if found { vec![Effect::Slice, Effect::Redraw] } else { Vec::new() };
    }
    call(state, Ask::Starts).effects
}
