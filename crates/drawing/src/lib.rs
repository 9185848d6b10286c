//! Draws a rocket and its two points.
//!
//! What is drawn is decided once, as a [`Scene`]; [`svg_document`] and [`svg_group`]
//! spell it as SVG. A scene is measured in CSS pixels, so that its text keeps the size of
//! the page's text whatever the scale of the rocket.

#![forbid(unsafe_code)]

mod agreement_chart;
mod air;
mod area;
mod axis;
mod below;
#[cfg(test)]
mod boxes;
mod class_chart;
mod cut_out;
#[cfg(test)]
mod goldens;
mod legend;
pub mod names;
mod palette;
pub mod paper;
pub mod pattern;
mod pictures;
mod plot;
mod push;
mod qr;
#[cfg(test)]
mod read_back;
mod rocket;
mod scene;
pub mod sheets;
mod svg;
mod swing;
mod trial_chart;
mod trial_series;
mod turned;
mod width;
mod written;

pub use agreement_chart::agreement_chart;
pub use air::{AirSheet, air_graph, air_graph_angle_deg, turned_rocket};
pub use below::below;
pub use class_chart::{ClassChart, ClassTrial, SeparationUnit, class_chart};
pub use cut_out::{CutOut, cut_out, cut_out_outline};
pub use names::{
    colour_name, comes_out, group_name, how_found, listed, outcome_meaning, outcome_name,
    outcome_names, overall_name, part_name, point_in, point_name, statement_name,
    statement_question,
};
pub use palette::Colour;
pub use pictures::{PICTURE_SIZE_PX, Picture, picture};
pub use push::push_bars;
pub use qr::{qr, qr_scene};
pub use rocket::{LabelStyle, Sheet, Told, mm_per_px, pair, rocket};
pub use scene::{Anchor, Group, Item, Path, Point, Scene, Style, TEXT_PX, Unit};
pub use svg::{svg_document, svg_file, svg_group};
pub use swing::{
    SwingCurve, start_strip, swing_circle, swing_cursor, swing_graph, swing_graph_time_s,
    swing_rocket, swing_turning,
};
pub use trial_chart::{ChartTrial, trial_chart, trial_chart_blank, trial_chart_words};
pub use trial_series::{SeriesTrial, trial_series, trial_series_words};
pub use width::measure_words;
pub use written::Written;
