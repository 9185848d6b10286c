//! What stands round every place: the path, the drawing with its strip, messages, the way on.
//! Every view is a function from the state to markup; maud escapes what a person typed.

pub(crate) mod crash;
pub(crate) mod delete;
pub(crate) mod faults;
mod group;
mod language;
pub(crate) mod marked;
pub(crate) mod menus;
pub(crate) mod notice;
pub(crate) mod strip;
pub(crate) mod unopened;
pub(crate) mod verdict;
pub(crate) mod waiting;
pub(crate) mod way;

use std::borrow::Cow;

use maud::{Markup, html};
use noseward_drawing::{LabelStyle, Scene, Sheet, rocket, svg_document, svg_group};
use noseward_link as link;
use noseward_stability::{Field, trimmed};
use noseward_words as words;

use crate::app::{Place, State};

/// A part of the page that is brought up to date as one.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Region {
    /// The id of the element.
    pub(crate) id: Cow<'static, str>,
    /// What stands inside.
    pub(crate) markup: String,
}

/// A region with what stands inside.
pub(crate) fn region(id: impl Into<Cow<'static, str>>, markup: Markup) -> Region {
    Region { id: id.into(), markup: markup.into_string() }
}

/// A sheet narrower than this has room for distances only.
const FULL_LABELS_PX: f64 = 520.0;

/// How much larger the drawing is shown than it is made: for a projector, so that its words
/// keep their room.
pub(crate) fn magnification(state: &State) -> f64 {
    if state.big { 1.5 } else { 1.0 }
}

/// The sheet as the drawing needs it.
pub(crate) fn sheet(state: &State) -> Sheet {
    let larger = magnification(state);
    let (width_px, height_px) = (state.sheet_px.0 / larger, state.sheet_px.1 / larger);
    Sheet {
        width_px: width_px.max(240.0),
        height_px: height_px.max(160.0),
        units: state.units,
        labels: if width_px < FULL_LABELS_PX {
            LabelStyle::Short
        } else {
            LabelStyle::Full
        },
        told: state.points_told(),
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
        let Scene { width, height, name, .. } = &self.scene;
        format!("{} {} {name}", trimmed(*width, 2), trimmed(*height, 2))
    }

    /// Each group's name and content.
    pub(crate) fn groups(&self) -> impl Iterator<Item = (&'static str, String)> {
        self.scene
            .groups
            .iter()
            .map(|group| (group.key, svg_group(group, self.scene.width)))
    }
}

/// The last rocket that could be drawn, as SVG.
pub(crate) fn drawing(state: &State) -> Option<Drawing> {
    let (design, report) = &state.drawn;
    let scene = rocket(design, report.figures.as_ref()?, &sheet(state))?;
    Some(Drawing { scene, described_by: Some("in-words") })
}

/// What stands on the sheet of a rocket that cannot be drawn, and never could be in this visit.
pub(crate) fn nothing_drawn() -> Markup {
    html! { p class="sheet__message" { (words::strip_nothing_drawn()) } }
}

/// What is brought up to date in the frame after a change: the drawing, its strip, messages.
pub(crate) fn first(state: &State) -> Vec<Region> {
    vec![
        region("strip", strip::strip(state)),
        region("notice", notice::notice(state)),
        region("passing", notice::passing(state)),
        region("faults", faults::list(state)),
    ]
}

/// What is brought up to date a moment later, so that a keystroke does not wait for it.
pub(crate) fn then(state: &State) -> Vec<Region> {
    let hash = link::hash(&state.record());
    vec![
        region("path", way::path(state, &hash)),
        region("tools", way::tools(state, &hash)),
        region("trial-line", way::trial_line(state)),
        region("language-choice", language::choice(state)),
        region("place-head", way::head(state)),
        region("next-bar", way::next(state, &hash)),
    ]
}

/// What stands in a place until its part is loaded. Deleting needs nothing of that.
pub(crate) fn waiting(state: &State) -> Vec<Region> {
    let mut regions = vec![region("waits", waiting::state(state))];
    if state.place == Place::Lead {
        regions.push(region("delete", delete::delete(state.asks_to_delete)));
    }
    regions
}

/// A link to another place, as a button.
/// Unlike those of the path its address leaves the rocket out, so that it need not be encoded
/// once more: in another tab it opens the rocket that is kept.
pub(crate) fn link_to(place: Place, id: &str, words: &Markup) -> Markup {
    html! {
        a class="button button--small" id=(id) href=(place.href())
            data-action="to" data-target=(place.key()) { (words) }
    }
}

/// Whether something is on, as `aria-pressed` has it and the style sheets ask for it.
pub(crate) fn pressed(on: bool) -> &'static str {
    if on { "true" } else { "false" }
}

/// The short sentence that is spoken once typing pauses.
pub(crate) fn spoken(state: &State) -> String {
    strip::spoken(state)
}

/// A unit as a screen reader should say it, behind “in”.
pub(crate) fn spoken_unit(unit: &str) -> &str {
    match unit {
        "mm" => words::units_millimetres(),
        "g" => words::units_grams(),
        "in" => words::units_inches(),
        "oz" => words::units_ounces(),
        "°" => words::units_degrees(),
        "g/m²" => words::units_grams_per_square_metre(),
        other => return other,
    }
    .as_str()
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
