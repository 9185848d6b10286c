//! Where the air pushes.

pub(crate) mod side_on;
