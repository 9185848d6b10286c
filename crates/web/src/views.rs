//! The state as markup. Every view is a function from the state to text; maud escapes
//! what a person typed.

mod air;
mod computer;
mod desk;
mod faults;
mod field;
mod menus;
mod notice;
mod readings;
mod share;
mod steps;
mod swing;

use noseward_drawing::{LabelStyle, Scene, Sheet, rocket, svg_document, svg_group};
use noseward_stability::Field;

use crate::app::{Code, State};

pub(crate) use field::spoken_unit;
pub(crate) use menus::start_menu;
pub(crate) use share::code_rows;
pub(crate) use steps::{is_shown, steps};

/// A place of the page whose content is replaced whole.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Region {
    /// The id of the element.
    pub(crate) id: &'static str,
    /// What stands inside.
    pub(crate) markup: String,
}

/// The place of one field's fault.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct FaultSlot {
    /// The id of the element.
    pub(crate) id: String,
    /// The ids of the controls that it may belong to.
    pub(crate) controls: [String; 2],
    /// What stands inside.
    pub(crate) markup: String,
    /// Whether the value cannot stand.
    pub(crate) stops: bool,
}

/// A sheet narrower than this has room for distances only.
const FULL_LABELS_PX: f64 = 520.0;

/// The sheet as the drawing needs it.
pub(crate) fn sheet(state: &State) -> Sheet {
    let (width_px, height_px) = state.sheet_px;
    Sheet {
        width_px: width_px.max(240.0),
        height_px: height_px.max(160.0),
        units: state.units,
        labels: if width_px < FULL_LABELS_PX {
            LabelStyle::Short
        } else {
            LabelStyle::Full
        },
    }
}

/// A scene on the page: its frame, which seldom changes, and groups that may.
#[derive(Debug)]
pub(crate) struct Drawing {
    scene: Scene,
    described_by: Option<&'static str>,
}

impl Drawing {
    /// The whole element, for when the frame changed.
    pub(crate) fn document(&self) -> String {
        svg_document(&self.scene, self.described_by)
    }

    /// What identifies the frame: size and name.
    pub(crate) fn frame(&self) -> String {
        let Scene { width_px, height_px, name, .. } = &self.scene;
        format!("{width_px} {height_px} {name}")
    }

    /// Each group's name and content.
    pub(crate) fn groups(&self) -> impl Iterator<Item = (&'static str, String)> {
        self.scene.groups.iter().map(|group| (group.key, svg_group(group)))
    }
}

/// The last rocket that could be drawn, as SVG.
fn drawing(state: &State) -> Option<Drawing> {
    let (design, report) = &state.drawn;
    let scene = rocket(design, report.figures.as_ref()?, &sheet(state))?;
    Some(Drawing { scene, described_by: Some("in-words") })
}

/// What is redrawn in the frame after a change; the steps are not.
pub(crate) struct Outputs {
    pub(crate) drawing: Option<Drawing>,
    pub(crate) regions: Vec<Region>,
    /// The sentence at each field that has a fault. The others have none.
    pub(crate) slots: Vec<FaultSlot>,
    /// Buttons by id, with whether they do anything now.
    pub(crate) buttons: [(&'static str, bool); 2],
    /// Whether the drawing is older than what is typed.
    pub(crate) stale: bool,
    /// Whether the outcome may be told.
    pub(crate) told: bool,
}

/// The outputs of a state.
pub(crate) fn outputs(state: &State) -> Outputs {
    let regions = regions([
        ("strip", readings::strip(state)),
        ("notice", notice::notice(state)),
        ("open-fault", notice::open_fault(state)),
        ("faults", faults::list(state)),
        ("keeping", notice::keeping(state)),
        ("delete", computer::delete(state.asks_to_delete)),
    ]);
    Outputs {
        drawing: drawing(state),
        regions,
        slots: faults::slots(state),
        buttons: [("undo", state.can_undo()), ("redo", state.can_redo())],
        stale: state.is_stale(),
        told: state.tells_outcome(),
    }
}

/// What stands further down the page: brought up to date a moment after the rest, so that
/// a keystroke does not wait for it.
pub(crate) fn later_regions(state: &State) -> Vec<Region> {
    let mut later = regions([
        ("as-table", readings::as_table(state)),
        ("air-words", air::words(state)),
        ("air-sure", air::sure(state)),
        ("air-reading", air::reading(state)),
    ]);
    if state.graphs_in_view {
        later.extend(regions([
            ("air-turned", air::turned(state)),
            ("air-graph", air::graph(state)),
        ]));
    }
    later
}

/// The swing bench, but for its moving pictures; out of view the test alone.
pub(crate) fn bench_regions(state: &State) -> Vec<Region> {
    let mut regions = swing::test(state);
    if state.bench.in_view {
        regions.extend(swing::regions(state));
    }
    regions
}

/// The pictures of the swing bench at their present time.
pub(crate) fn bench_pictures(state: &State) -> Vec<(&'static str, Drawing)> {
    swing::pictures(state)
}

/// What moves in those pictures: each picture's place, the group and its content.
pub(crate) fn bench_moving(state: &State) -> Vec<(&'static str, &'static str, String)> {
    let moving = swing::moving(state).into_iter();
    moving.map(|(id, group)| (id, group.key, svg_group(&group))).collect()
}

/// The time and the angle that the moving pictures show, in words.
pub(crate) fn bench_time(state: &State) -> String {
    swing::time(state)
}

/// Whether a switch is on, as `aria-pressed` has it.
pub(crate) fn pressed(on: bool) -> &'static str {
    if on { "true" } else { "false" }
}

/// Each place with what stands inside.
pub(crate) fn regions<const N: usize>(
    list: [(&'static str, maud::Markup); N],
) -> Vec<Region> {
    let regions = list.into_iter();
    regions.map(|(id, markup)| Region { id, markup: markup.into_string() }).collect()
}

/// The rocket in words, and what stands where something is loaded later, until it is here.
pub(crate) fn soon(state: &State) -> Vec<Region> {
    let mut found = regions([
        ("nb-state", desk::state(state)),
        // The drawing is described by it.
        ("in-words", readings::in_words(state)),
    ]);
    if state.desk.code != Code::Here {
        let also = ["air-words", "swing-words", "check"];
        let waits = also.map(|id| Region { id, ..found[0].clone() });
        found.extend(waits);
    }
    found
}

/// What stands under Share until the part that fills it is here.
pub(crate) fn share_waits(state: &State) -> Vec<Region> {
    regions([("share", desk::state(state))])
}

/// What this computer allows.
pub(crate) fn computer(state: &State) -> Vec<Region> {
    regions([("check", computer::computer(state))])
}

/// The ways out of this computer, worked out when somebody looks at them.
pub(crate) fn share(state: &State) -> Vec<Region> {
    share::regions(state)
}

/// The short sentence that is spoken once typing pauses.
pub(crate) fn spoken(state: &State) -> String {
    readings::spoken(state)
}

/// The id of the element that a fault's field leads to.
pub(crate) fn target_of(field: Field) -> String {
    match field {
        Field::Sections => "add:tube".into(),
        Field::FinSets => "part:/fins/0".into(),
        Field::Weights => "part:/weights/0".into(),
        _ => field.to_string(),
    }
}
