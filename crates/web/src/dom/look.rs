//! What a part for whoever leads does where the browser is.

use std::rc::Rc;

use super::{Page, picture, symbols};
use crate::app::Looking;
use crate::later::Question;
use crate::part;

/// Something for a part.
pub(crate) struct Look<'a> {
    page: &'a Rc<Page>,
    looking: Looking,
}

impl Page {
    /// Has a part look at something: it asks for that itself, so it is here.
    pub(super) fn look(self: &Rc<Self>, looking: Looking) {
        let look = Look { page: self, looking };
        part::call(looking.part(), &mut Question::Look(look));
    }
}

/// What the part of the class does.
pub(crate) fn look_at_symbols(look: &Look<'_>) {
    symbols::perform(look.page, look.looking);
}

/// What the part of the place Paper does.
pub(crate) fn paint(look: &Look<'_>) {
    picture::save(look.page);
}
