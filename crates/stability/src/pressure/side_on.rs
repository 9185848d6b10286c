//! The centre of pressure side-on: what a card cut-out finds.

use crate::outline::side_view::SideView;

/// The centre of pressure side-on, and the area that it stands for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct SideOn {
    /// Distance from the nose tip, in metres.
    pub(crate) centre_m: f64,
    /// Area of the side view, in m².
    pub(crate) area_m2: f64,
}

/// The centroid of the side view's area.
///
/// Common classroom practice, no source: it treats air from the side as pushing equally
/// on every bit of the outline.
pub(crate) fn side_on(view: &SideView) -> SideOn {
    let (area_m2, centre_m) = view.area_and_centroid_m();
    SideOn { centre_m, area_m2 }
}
