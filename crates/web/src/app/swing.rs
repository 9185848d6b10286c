//! The swing bench: how the rocket should behave on its string, and the test itself.

use noseward_lesson::{SwingOutcome, Swings, Trial, same_build};
use noseward_stability::{
    Design, Figures, Quantity, Settling, Starts, Swing, SwingDraws, SwingField,
    SwingLimit, SwingSetup, Trajectory, trimmed,
};

use super::typed::{self, Unreadable};
use super::{Draft, Effect, State, call};
use crate::later::Ask;

/// Everything about the bench that is not recorded.
#[derive(Debug)]
pub(crate) struct Bench {
    /// Text in a field that could not be read.
    drafts: Vec<(BenchField, Draft)>,
    /// The angle between nose and path at which it is let go, in degrees.
    pub(crate) start_deg: f64,
    /// What is known of the present rocket on its string.
    pub(crate) known: Option<Box<Known>>,
    /// The rocket that the present one is compared with.
    pub(crate) previous: Option<Box<Previous>>,
    pub(crate) motion: Motion,
    /// What the adult in charge has looked at, in this visit.
    checked: Option<Checked>,
    /// The card of the test that is shown.
    pub(crate) card: usize,
    /// Whether the reader's system asks for as little motion as possible.
    pub(crate) still: bool,
}

/// A field of the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum BenchField {
    Setup(SwingField),
    /// The starting angle.
    Start,
}

/// What was worked out for one rocket, one setup and one start.
#[derive(Debug)]
pub(crate) struct Known {
    pub(crate) swing: Swing,
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
struct Checked {
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
const STARTS_IN_SLICE: usize = 2;
/// Draws of a swing in one slice, likewise.
const SWINGS_IN_SLICE: usize = 10;
/// How far one step of the pictures goes, in seconds.
const STEP_S: f64 = 0.1;
/// The graph shows at least and at most so much, in seconds.
const SHOWN_S: (f64, f64) = (2.0, 10.0);

impl Bench {
    /// A bench that nobody has used.
    pub(super) fn new(still: bool) -> Self {
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

impl BenchField {
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
    fn read(self, text: &str, state: &State) -> Result<f64, Unreadable> {
        let is_length = matches!(self, Self::Setup(SwingField::String | SwingField::Arm));
        let value = if is_length {
            let has_unit =
                text.contains(|c: char| c.is_ascii_alphabetic() || "\"”″".contains(c));
            let text = if has_unit { text.to_owned() } else { format!("{text} m") };
            typed::read(&text, Quantity::Length, state.units)?.map(|mm| mm / 1000.0)
        } else {
            typed::read(text, Quantity::Angle, state.units)?
        };
        value.ok_or(Unreadable::Empty)
    }
}

impl Bench {
    /// When the pictures end, in seconds.
    pub(crate) fn end_s(&self) -> f64 {
        let known = self.known.as_ref();
        let last = known.and_then(|known| known.trajectory.samples.last());
        last.map_or(0.0, |last| last.time_s)
    }

    /// The text of a field that could not be read, if it is so now.
    fn draft(&self, field: BenchField) -> Option<&Draft> {
        self.drafts.iter().find(|(drafted, _)| *drafted == field).map(|(_, draft)| draft)
    }

    /// The time at a place on the graph of this width, in seconds.
    pub(crate) fn time_at(&self, x_px: f64, width_px: f64) -> f64 {
        noseward_drawing::swing_graph_time_s(x_px, width_px, self.end_s())
    }
}

impl State {
    /// What stands in a field of the bench.
    pub(crate) fn bench_text(&self, field: BenchField) -> String {
        if let Some(text) = self.typed_text(&field.id()) {
            return text.to_owned();
        }
        if let Some(draft) = self.bench.draft(field) {
            return draft.text.clone();
        }
        let value = match field {
            BenchField::Setup(field) => field.get(&self.swings.setup),
            BenchField::Start => self.bench.start_deg,
        };
        trimmed(value, 3)
    }

    /// What is wrong in a field of the bench, if anything is.
    pub(crate) fn bench_fault(&self, field: BenchField) -> Option<String> {
        if let Some(draft) = self.bench.draft(field) {
            return Some(match &draft.why {
                Unreadable::Ambiguous { small, large } => {
                    format!("Is that {small} or {large}?")
                }
                _ if field == BenchField::Start => {
                    "This needs an angle from 0 to 180 degrees.".into()
                }
                _ => {
                    let example = match field {
                        BenchField::Setup(SwingField::String) => "1.5 or 150 cm",
                        BenchField::Setup(SwingField::Arm) => "0.7 or 70 cm",
                        BenchField::Setup(SwingField::AirDensity) => "1.2",
                        _ => "1",
                    };
                    format!("I cannot read this. Type, for example, {example}.")
                }
            });
        }
        let BenchField::Setup(field) = field else { return None };
        let faults = self.swings.setup.faults();
        let fault = faults.into_iter().find(|fault| fault.field == field)?;
        Some(fault.sentence(self.units))
    }

    fn swings_of(&self) -> Owner {
        let in_hand = self.desk.notebook.in_hand();
        (self.desk.slot, in_hand.map(Trial::id))
    }

    /// The space that this swing needs, for the adult in charge to look at.
    fn space_needed(&self) -> Option<Checked> {
        let space = self.bench.known.as_ref()?.swing.space();
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
        self.space_needed().zip(self.bench.checked).is_some_and(|(needed, checked)| {
            needed.owner == checked.owner
                && needed.clear_m <= checked.clear_m * SAME
                && needed.speed_m_per_s <= checked.speed_m_per_s * SAME
                && needed.mass_kg <= checked.mass_kg * SAME
        })
    }

    /// Another rocket or trial wants another look at the space.
    pub(crate) fn forget_space(&mut self) {
        self.bench.checked = None;
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
    pub(super) fn hang_anew(&mut self) {
        self.bench.motion.playing = false;
        self.bench.motion.time_s = 0.0;
        self.bench.known = None;
        if self.shows_swing() {
            call(self, Ask::Hang);
        }
    }

    /// Works out the motion from the chosen start. Nothing while a field cannot be read: a
    /// distance from an older number would look as if it were from this one.
    pub(crate) fn hang(&mut self) {
        self.bench.known = self.hung();
    }

    fn hung(&self) -> Option<Box<Known>> {
        if !self.bench.drafts.is_empty() || self.swing_limit().is_some() {
            return None;
        }
        let figures = self.report.figures.as_ref()?;
        let swing = Swing::new(figures, &self.swings.setup)?;
        let start_rad = self.bench.start_deg.to_radians();
        let settling = swing.settling(start_rad);
        let shown_s = Self::shown_s(&swing, &settling);
        let before = self.bench.previous.as_ref().and_then(|previous| {
            let swung = !previous.swings.outcomes().is_empty();
            let setup = if swung { previous.swings.setup } else { self.swings.setup };
            let swing = Swing::new(&previous.figures, &setup)?;
            Some(swing.trajectory(start_rad, shown_s))
        });
        Some(Box::new(Known {
            trajectory: swing.trajectory(start_rad, shown_s),
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
    pub(super) fn leave_behind(&mut self, before: &Design, setup_before: SwingSetup) {
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
            if let Some(previous) = self.bench.previous.take_if(back) {
                self.swings = previous.swings;
            }
            return;
        }
        self.bench.checked = None;
        let mut swings = std::mem::replace(&mut self.swings, setup.into());
        swings.setup = setup_before;
        self.bench.previous = self.previous(before, swings);
    }

    /// A rocket to compare with: the one that the report is of.
    fn previous(&self, design: &Design, swings: Swings) -> Option<Box<Previous>> {
        let figures = self.report.figures.clone()?;
        Some(Box::new(Previous { design: design.clone(), figures, swings }))
    }
}

/// Something that happens on the bench.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum BenchMsg {
    /// Text was typed into a field.
    Typed(BenchField, String),
    /// A field was left.
    Left(BenchField),
    /// The slider was moved, in degrees.
    Start(f64),
    Play(bool),
    /// One picture further.
    Step,
    /// Back to the start.
    Rewind,
    /// Another speed.
    Speed(f64),
    /// So many seconds have passed.
    Tick(f64),
    /// To a time on the graph, in seconds.
    At(f64),
    Card(usize),
    SpaceChecked(bool),
    /// What somebody saw.
    Swung(SwingOutcome),
    /// The last outcome was a slip.
    TakeBack,
    /// From now on the present rocket is the one to compare with.
    Compare,
    /// The reader's system asks for stillness, or no longer.
    Still(bool),
}

impl BenchMsg {
    /// The message of a control, from its action and its target.
    pub(crate) fn parse(action: &str, target: &str) -> Option<Self> {
        Some(match action {
            "swing-play" => Self::Play(true),
            "swing-pause" => Self::Play(false),
            "swing-step" => Self::Step,
            "swing-rewind" => Self::Rewind,
            "swing-speed" => Self::Speed(target.parse::<u8>().ok().map(percent)?),
            "swing-card" => Self::Card(target.parse().ok().filter(|card| *card < CARDS)?),
            "space-checked" => Self::SpaceChecked(true),
            "space-open" => Self::SpaceChecked(false),
            "swung" => Self::Swung(
                SwingOutcome::ALL.get(target.parse::<usize>().ok()?).copied()?,
            ),
            "swung-wrong" => Self::TakeBack,
            "swing-compare" => Self::Compare,
            _ => return None,
        })
    }
}

fn percent(value: u8) -> f64 {
    f64::from(value) / 100.0
}

/// What a message does.
pub(super) fn update(state: &mut State, msg: BenchMsg) -> Vec<Effect> {
    let redraw = vec![Effect::Redraw];
    match msg {
        BenchMsg::Typed(field, text) => typed_into(state, field, &text),
        BenchMsg::Left(field) => {
            state.typing.take_if(|(typing, _)| *typing == field.id());
            redraw
        }
        BenchMsg::Start(degrees) => {
            let text = trimmed(degrees, 3);
            let effects = typed_into(state, BenchField::Start, &text);
            state.typing = None;
            effects
        }
        BenchMsg::Play(playing) => {
            let ended = state.bench.motion.time_s >= state.bench.end_s();
            let motion = &mut state.bench.motion;
            motion.playing = playing && !state.bench.still;
            if !motion.playing {
                return redraw;
            }
            if ended {
                motion.time_s = 0.0;
            }
            vec![Effect::Redraw, Effect::Animate]
        }
        BenchMsg::Step => {
            let end_s = state.bench.end_s();
            let motion = &mut state.bench.motion;
            motion.playing = false;
            motion.time_s = if motion.time_s >= end_s {
                0.0
            } else {
                (motion.time_s + STEP_S).min(end_s)
            };
            redraw
        }
        BenchMsg::Rewind => {
            state.bench.motion.playing = false;
            state.bench.motion.time_s = 0.0;
            redraw
        }
        BenchMsg::Speed(speed) => {
            state.bench.motion.speed = speed;
            redraw
        }
        BenchMsg::Tick(passed_s) => {
            if !state.bench.motion.playing {
                return Vec::new();
            }
            let end_s = state.bench.end_s();
            let motion = &mut state.bench.motion;
            motion.time_s = (motion.time_s + passed_s * motion.speed).min(end_s);
            if motion.time_s >= end_s {
                motion.playing = false;
                return redraw;
            }
            vec![Effect::DrawMotion, Effect::Animate]
        }
        BenchMsg::At(time_s) => {
            let end_s = state.bench.end_s();
            state.bench.motion.playing = false;
            state.bench.motion.time_s = time_s.clamp(0.0, end_s);
            vec![Effect::DrawMotion, Effect::Redraw]
        }
        BenchMsg::Card(card) => {
            let waits = card > SPACE_CARD && !state.is_space_checked();
            state.bench.card = if waits { SPACE_CARD } else { card };
            vec![Effect::Redraw, Effect::Focus("swing-card".into())]
        }
        BenchMsg::SpaceChecked(checked) => {
            state.bench.checked = state.space_needed().filter(|_| checked);
            redraw
        }
        BenchMsg::Swung(outcome) => {
            if !state.may_swing() || !state.swings.add(outcome) {
                return redraw;
            }
            if state.swings.is_done() {
                // The next three swings want another look.
                state.bench.checked = None;
            }
            state.swings_into_trial();
            vec![Effect::Redraw, Effect::Keep]
        }
        // What was seen before a prediction stays on record.
        BenchMsg::TakeBack if !state.is_predicted() => redraw,
        BenchMsg::TakeBack => {
            state.swings.remove_last();
            state.swings_into_trial();
            vec![Effect::Redraw, Effect::Keep, Effect::Focus("swing-record-card".into())]
        }
        BenchMsg::Compare => {
            state.bench.previous = state.previous(&state.design, state.swings.clone());
            state.hang_anew();
            vec![Effect::Slice, Effect::Redraw]
        }
        BenchMsg::Still(still) => {
            state.bench.still = still;
            state.bench.motion.playing &= !still;
            redraw
        }
    }
}

/// Somebody comes to the swing test.
pub(super) fn arrive(state: &mut State) -> Vec<Effect> {
    if state.bench.known.is_none() {
        call(state, Ask::Hang);
    }
    vec![Effect::Slice]
}

fn typed_into(state: &mut State, field: BenchField, text: &str) -> Vec<Effect> {
    state.typing = Some((field.id(), text.to_owned()));
    let read = field.read(text, state).and_then(|value| match field {
        BenchField::Start if !(0.0..=180.0).contains(&value) => {
            Err(Unreadable::NotANumber)
        }
        _ => Ok(value),
    });
    state.bench.drafts.retain(|(drafted, _)| *drafted != field);
    match read {
        Ok(value) => match field {
            BenchField::Setup(field) => {
                let before = state.swings.setup;
                field.set(&mut state.swings.setup, value);
                let design = state.design.clone();
                state.leave_behind(&design, before);
                state.hold_to_trial();
            }
            BenchField::Start => state.bench.start_deg = value,
        },
        Err(why) => {
            state.bench.drafts.push((field, Draft { text: text.to_owned(), why }));
        }
    }
    state.hang_anew();
    let mut effects = vec![Effect::Slice, Effect::Redraw];
    if field != BenchField::Start {
        effects.push(Effect::Keep);
    }
    effects
}

/// Works out a little more. Returns what is to be done next; nothing when all is known.
pub(super) fn slice(state: &mut State) -> Vec<Effect> {
    if !state.shows_swing() {
        return Vec::new();
    }
    if state.bench.known.is_none() {
        call(state, Ask::Hang);
        let found = state.bench.known.is_some();
        return if found { vec![Effect::Slice, Effect::Redraw] } else { Vec::new() };
    }
    call(state, Ask::Starts).effects
}

impl State {
    /// Tries a few starts more. Returns what is to be done next.
    pub(crate) fn try_starts(&mut self) -> Vec<Effect> {
        let Some(known) = &mut self.bench.known else { return Vec::new() };
        if !known.starts.is_done() {
            known.starts.run(STARTS_IN_SLICE);
            let done = known.starts.is_done();
            return if done {
                vec![Effect::Redraw, Effect::Slice]
            } else {
                vec![Effect::Slice]
            };
        }
        if known.draws.is_done() {
            return Vec::new();
        }
        known.draws.run(SWINGS_IN_SLICE);
        if known.draws.is_done() { vec![Effect::Redraw] } else { vec![Effect::Slice] }
    }
}
