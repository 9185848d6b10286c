//! Where the air pushes.

pub(crate) mod air;
pub(crate) mod crossflow;
pub(crate) mod fin_sets;
pub(crate) mod model;
pub(crate) mod nose_on;
pub(crate) mod rolls;
pub(crate) mod side_on;
