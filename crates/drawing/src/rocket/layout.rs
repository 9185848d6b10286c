//! Where everything stands on the sheet.

use noseward_stability::{Body, SideView, Units};
use noseward_words as texts;

use super::{LabelStyle, Sheet};
use crate::scene::Point;
use crate::width::{bold_px, words_px};

/// Height of one line of words.
pub(super) const LINE_PX: f64 = 16.0;
pub(super) const TOP_PX: f64 = 30.0;
pub(super) const BOTTOM_PX: f64 = 16.0;
/// Between the ruler and what reaches furthest to its side.
const BESIDE_PX: f64 = 14.0;
/// The largest scale: a short rocket does not fill a large sheet.
const MOST_PX_PER_MM: f64 = 4.0;

/// From the rocket's column to the words on its right.
const TO_WORDS_PX: f64 = 34.0;

/// How far a rocket reaches, in metres: along the axis from the nose tip, and to the side.
#[derive(Clone, Copy, Debug)]
pub(super) struct Extent {
    pub(super) front_m: f64,
    pub(super) rear_m: f64,
    pub(super) half_m: f64,
}

impl Extent {
    pub(super) fn new(body: &Body, view: &SideView) -> Self {
        let corners = || view.fins().iter().flat_map(|fin| &fin.corners);
        Self {
            front_m: corners().map(|c| c.x).fold(0.0, f64::min),
            rear_m: corners().map(|c| c.x).fold(body.length_m(), f64::max),
            half_m: corners().map(|c| c.y.abs()).fold(body.width_m() / 2.0, f64::max),
        }
    }

    /// What holds both.
    pub(super) fn with(self, other: Self) -> Self {
        Self {
            front_m: self.front_m.min(other.front_m),
            rear_m: self.rear_m.max(other.rear_m),
            half_m: self.half_m.max(other.half_m),
        }
    }

    /// The largest scale at which it has room, in pixels for a millimetre.
    pub(super) fn px_per_mm(self, room_x: f64, room_y: f64) -> f64 {
        (room_y / self.length_mm())
            .min(room_x / (2.0 * self.half_m * 1000.0))
            .min(MOST_PX_PER_MM)
    }

    pub(super) fn length_mm(self) -> f64 {
        (self.rear_m - self.front_m) * 1000.0
    }
}

/// Columns from left to right: words of the centre of pressure, ruler, rocket, bracket,
/// words of the rest. The ruler stands beside the rocket. All in pixels.
#[derive(Clone, Copy, Debug)]
pub(super) struct Layout {
    pub(super) width: f64,
    pub(super) height: f64,
    pub(super) units: Units,
    pub(super) labels: LabelStyle,
    pub(super) px_per_mm: f64,
    /// Where the axis stands.
    pub(super) axis_x: f64,
    /// Where the nose tip is.
    pub(super) nose_y: f64,
    /// Left and right edge of the ruler.
    pub(super) ruler: (f64, f64),
    /// Whether the ruler is read from both sides; from its right else.
    pub(super) two_edged: bool,
    /// Where the words of the centre of pressure start.
    pub(super) left_words_x: f64,
    /// Where the rocket's column ends.
    pub(super) rocket_right: f64,
    /// Where the bracket stands.
    pub(super) bracket_x: f64,
    /// Where the words on the right start.
    pub(super) right_words_x: f64,
    /// How far the ruler reaches, in millimetres.
    pub(super) ruler_mm: f64,
}

impl Layout {
    pub(super) fn new(body: &Body, view: &SideView, sheet: &Sheet) -> Self {
        let extent = Extent::new(body, view);
        let (words, ruler_width, right) = match sheet.labels {
            LabelStyle::Full => (150.0, 46.0, 192.0),
            // Distances of four digits are longer.
            LabelStyle::Short if extent.rear_m >= 1.0 => (72.0, 46.0, 108.0),
            LabelStyle::Short => (72.0, 40.0, 104.0),
        };
        let (left_px, right_px) = words_wide_px(sheet.labels);
        let (words, right) = (f64::max(words, left_px), f64::max(right, right_px));
        let rocket_left = words + ruler_width + BESIDE_PX;
        let rocket_right = (sheet.width_px - right).max(rocket_left + 40.0);
        let room_x = rocket_right - rocket_left;
        let room_y = sheet.height_px - TOP_PX - BOTTOM_PX;
        let px_per_mm = extent.px_per_mm(room_x, room_y);
        let spare_y = room_y - extent.length_mm() * px_per_mm;
        let axis_x = f64::midpoint(rocket_left, rocket_right);
        let ruler_right = axis_x - extent.half_m * 1000.0 * px_per_mm - BESIDE_PX;
        let ruler = (ruler_right - ruler_width, ruler_right);
        Self {
            width: sheet.width_px,
            height: sheet.height_px,
            units: sheet.units,
            labels: sheet.labels,
            px_per_mm,
            axis_x,
            nose_y: TOP_PX + spare_y / 2.0 - extent.front_m * 1000.0 * px_per_mm,
            ruler,
            two_edged: false,
            left_words_x: ruler.0 - words + 1.0,
            rocket_right,
            bracket_x: rocket_right + 14.0,
            right_words_x: rocket_right + TO_WORDS_PX,
            ruler_mm: extent.rear_m * 1000.0,
        }
    }

    /// Down the sheet for a distance from the nose tip in metres.
    pub(super) fn y(&self, x_m: f64) -> f64 {
        self.nose_y + x_m * 1000.0 * self.px_per_mm
    }

    /// Across the sheet for a distance to the right of the axis in metres.
    pub(super) fn x(&self, y_m: f64) -> f64 {
        self.axis_x + y_m * 1000.0 * self.px_per_mm
    }

    /// The place of a point of the side view.
    pub(super) fn point(&self, x_m: f64, y_m: f64) -> Point {
        Point { x: self.x(y_m), y: self.y(x_m) }
    }
}

/// What the names of the points and what is said of them need on the left and on the right.
fn words_wide_px(labels: LabelStyle) -> (f64, f64) {
    let place = "1000 mm";
    let lines = |lines: &str| lines.split('|').map(bold_px).fold(0.0, f64::max);
    let (left, right) = match labels {
        LabelStyle::Full => (
            bold_px(&texts::drawing_pressure())
                .max(words_px(&texts::drawing_side_on_measured())),
            bold_px(&texts::drawing_mass())
                .max(words_px(&texts::drawing_measured_at(place)))
                .max(bold_px(&texts::drawing_points_apart(place))),
        ),
        LabelStyle::Short => {
            (lines(&texts::drawing_pressure_lines()), lines(&texts::drawing_mass_lines()))
        }
    };
    (left + 3.0, TO_WORDS_PX + right + 2.0)
}
