//! A page to take home: build and balance, and predict. Nothing in it swings or is launched.

use noseward_words as words;

use crate::paper::{Flow, Mark, Page, PaperSize};

pub(super) fn pages(size: PaperSize) -> Vec<Page> {
    let never = words::home_never();
    let mut flow =
        Flow::new(size, words::home_title().as_str()).with_foot(never.as_str());
    flow.fields(&[words::cover_group().as_str()]);
    flow.space(3.0);
    flow.caution(&format!("{never} {}", words::home_never_swing()));
    flow.heading(2, words::home_need().as_str());
    flow.paragraph(words::home_things().as_str());
    flow.heading(2, words::home_do().as_str());
    flow.caution(words::home_cut().as_str());
    flow.list(
        &[
            words::home_body(),
            words::home_fins(),
            words::home_guess(),
            words::home_hang(),
            words::home_read(),
            words::home_draw(),
            words::home_balance(),
        ]
        .map(|step| step.as_str()),
        Mark::Number,
    );
    let mut pictures = super::idea::hung(40.0);
    pictures.extend(super::idea::balanced(122.0));
    flow.drawing(words::home_pictures().as_str(), super::idea::LEVEL, pictures);
    for read in [words::home_hangs_at(), words::home_balances_at()] {
        flow.fields(&[read.as_str(), "", ""]);
    }
    flow.space(4.0);
    flow.ruled(words::home_nearer().as_str(), 1, 9.0);
    flow.ruled(words::home_predict().as_str(), 3, 9.0);
    flow.paragraph(words::home_bring().as_str());
    flow.pages()
}
