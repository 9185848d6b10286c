//! What to show at the front: two rockets on a string, two changes at once, and without a hall
//! both points of one rocket.
//!
//! Tied where it hangs level, with tape so that the string cannot slide: string test of NASA's
//! Rockets Educator Guide (EG-2011-11-223-KSC). That an unfair comparison, shown, teaches the
//! control of variables: Chen and Klahr 1999 (Child Development 70), Schwichow and others 2016
//! (Developmental Review 39). That half of the length off every fin takes a rocket towards
//! tumbling: common practice, no source.

use noseward_words as words;

use super::TeacherPack;
use crate::paper::{Flow, Mark, Page, PaperSize};

pub(super) fn pages(size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_demonstration().as_str());
    flow.paragraph(words::teacher_show_lead().as_str());
    flow.heading(2, words::teacher_show_before().as_str());
    let before = [
        words::teacher_show_alike().into(),
        words::rocket_taped().text(),
        words::swing_hang().to_string(),
        words::swing_tape().into(),
        words::teacher_show_try().into(),
    ];
    flow.list(&before, Mark::Number);
    flow.heading(2, words::teacher_show_class().as_str());
    let guess = [words::teacher_show_look(), words::teacher_show_guess()];
    flow.list(&guess.map(|step| step.as_str()), Mark::Dot);
    swing(&mut flow, of);
    let [which, hang] = [words::teacher_show_which(), words::teacher_show_hang()];
    flow.heading(2, words::teacher_show_two().as_str());
    flow.paragraph(which.as_str());
    flow.heading(2, words::teacher_show_still().as_str());
    flow.paragraph(hang.as_str());
    flow.pages()
}

/// Its cautions stand before and after the swing itself.
fn swing(flow: &mut Flow, of: TeacherPack<'_>) {
    let caution = words::swing_caution().text();
    match of.space() {
        Some((line, holds)) => {
            let tug = words::swing_tug();
            flow.caution(&format!("{caution}\n{line}\n{tug}"));
            flow.small(&holds);
        }
        None => flow.caution(&format!("{caution}\n{}", words::swing_limit())),
    }
    flow.list(&[words::teacher_show_swing().as_str()], Mark::Dot);
    flow.caution(words::swing_slow().as_str());
    flow.list(&[words::teacher_show_ask().as_str()], Mark::Dot);
}
