//! The pictures of a class, from its trials.
use super::model::ClassDesk;
use super::pattern::Pattern;
use crate::app::State;
use maud::{Markup, html};
pub(super) fn chart(_: &State, _: &ClassDesk, _: &Pattern<'_>) -> Markup {
    html! {}
}
pub(super) fn agreement(_: &State, _: &[(f64, f64)]) -> Markup {
    html! {}
}
