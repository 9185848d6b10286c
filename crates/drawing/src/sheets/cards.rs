//! Cards to cut apart: how a rocket is hung, balanced and swung, and who does what.

use noseward_words::{self as words, Text};

use super::said::printed;
use super::swing_picture::swing_picture;
use crate::paper::{Flow, Mark, Page, PaperSize};
use crate::pictures::{Picture, picture};
use crate::scene::Scene;

/// How large the picture on a card is, in millimetres.
const PICTURE_MM: f64 = 17.0;
/// A card for who does what is at least so high, in millimetres.
const ROLE_MM: f64 = 62.0;

/// Cards for hanging, balancing and swinging a rocket, with the cautions at each step, and one
/// for what is written down. To cut apart; one page.
#[must_use]
pub fn cue_cards(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_cards());
    let cards: [fn(&mut Flow); 5] = [hang, balance, ready, swing, write_down];
    flow.cards(2, 4, 0.0, &mut |flow, i| cards[i](flow));
    flow.cards(1, 1, 0.0, &mut |flow, _| cards[4](flow));
    flow.pages()
}

/// The title of a card beside its picture.
fn head(flow: &mut Flow, title: &str, scene: &Scene) {
    flow.beside(&[1.0, 3.0], 2.0, &mut |flow, i| match i {
        0 => flow.figure(scene, (PICTURE_MM, PICTURE_MM)),
        _ => flow.heading(2, title),
    });
}

fn hang(flow: &mut Flow) {
    head(flow, &words::swing_hang_title(), &picture(Picture::HangingPoint));
    flow.caution(&words::pupil_hang());
    flow.list(&[words::swing_hang(), words::swing_hang_measure()], Mark::Number);
}

fn balance(flow: &mut Flow) {
    head(flow, &words::measure_pressure(), &picture(Picture::Balance));
    flow.caution(&words::pupil_card_cutting());
    let steps = [
        words::pupil_card_flat(),
        words::measure_pressure_how(),
        words::pupil_card_balance(),
    ];
    flow.list(&steps, Mark::Number);
}

fn ready(flow: &mut Flow) {
    flow.heading(2, &words::pupil_card_ready());
    flow.caution(&words::swing_ask());
    let steps = [
        words::swing_tape(),
        words::swing_eyes(),
        words::swing_tug(),
        words::swing_space(),
    ];
    flow.list(&steps, Mark::Number);
    flow.list(&[words::swing_initials()], Mark::Box);
}

fn swing(flow: &mut Flow) {
    head(flow, &words::places_swing_heading(), &swing_picture());
    flow.caution(&words::swing_record_caution());
    let steps = [
        printed(&words::swing_one()),
        words::swing_one_count().into(),
        words::swing_slow().into(),
    ];
    flow.list(&steps, Mark::Number);
}

fn write_down(flow: &mut Flow) {
    flow.heading(2, &words::pupil_card_record());
    let what = [
        words::pupil_card_readings(),
        words::pupil_card_odd(),
        words::pupil_card_prediction(),
        words::pupil_card_swings(),
        words::pupil_card_slipped(),
    ];
    flow.list(&what, Mark::Dot);
}

/// Who does what in a group, a card each. To cut apart; one page.
#[must_use]
pub fn role_cards(size: PaperSize) -> Vec<Page> {
    type Role = (Text, Text, Option<Text>);
    let roles: [Role; 6] = [
        (words::pupil_role_ruler(), words::pupil_role_ruler_does(), None),
        (
            words::pupil_role_string(),
            words::pupil_role_string_does(),
            Some(words::pupil_hang()),
        ),
        (
            words::pupil_role_swinger(),
            words::pupil_role_swinger_does(),
            Some(words::swing_ask()),
        ),
        (
            words::pupil_role_space(),
            words::pupil_role_space_does(),
            Some(words::swing_record_caution()),
        ),
        (
            words::pupil_role_nose(),
            words::pupil_role_nose_does(),
            Some(words::swing_eyes()),
        ),
        (words::pupil_role_pencil(), words::pupil_role_pencil_does(), None),
    ];
    let mut flow = Flow::new(size, &words::pupil_roles());
    flow.paragraph(&words::pupil_roles_how());
    flow.cards(2, roles.len(), ROLE_MM, &mut |flow, i| {
        let (name, does, caution) = roles[i];
        flow.heading(1, &name);
        if let Some(caution) = caution {
            flow.caution(&caution);
        }
        flow.paragraph(&does);
    });
    flow.pages()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use crate::paper::inside::{says_in_order, sheet_is_sound};

    #[test]
    fn cards_take_one_page() {
        sheet_is_sound(1, &cue_cards);
        sheet_is_sound(1, &role_cards);
    }

    /// Each caution stands before the step that it is about, in a frame.
    #[test]
    fn cautions_come_before_their_steps() {
        let check = || {
            let take_care = words::sheets_caution();
            let one = printed(&words::swing_one());
            let all: [[Text; 3]; 3] = [
                [take_care, words::pupil_hang(), words::swing_hang()],
                [take_care, words::pupil_card_cutting(), words::measure_pressure_how()],
                [take_care, words::swing_ask(), words::swing_tape()],
            ];
            let pages = cue_cards(PaperSize::A4);
            for card in all {
                says_in_order(&pages, &card);
            }
            says_in_order(&pages, &[words::swing_record_caution().as_str(), &one]);
            let roles = role_cards(PaperSize::A4);
            let swinger =
                [take_care, words::swing_ask(), words::pupil_role_swinger_does()];
            says_in_order(&roles, &swinger);
        };
        check();
        in_languages(&check);
    }
}
