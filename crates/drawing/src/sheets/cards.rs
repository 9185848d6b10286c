//! Cards to cut apart: how a rocket is hung, balanced and swung, and who does what.

use noseward_lesson::SwingOutcome;
use noseward_stability::Space;
use noseward_words::{self as words, Number, Text};

use super::said::printed;
use super::swing_picture::swing_picture;
use crate::names::outcome_names;
use crate::paper::{Flow, Mark, Page, PaperSize};
use crate::pictures::{Picture, picture};
use crate::scene::Scene;

/// How large the picture on a card is, in millimetres.
const PICTURE_MM: f64 = 11.0;
const ROLE_PICTURE_MM: f64 = 15.0;
/// A card for who does what is at least so high, in millimetres.
const ROLE_MM: f64 = 62.0;

/// Cards for hanging, balancing and swinging a rocket, with the cautions at each step, and one
/// for what is written down. To cut apart; one page. How far away everybody stands is left open.
#[must_use]
pub fn cue_cards(size: PaperSize) -> Vec<Page> {
    cue_cards_with_room(size, None)
}

/// The same for a rocket whose swing was worked out: the room that it needs says how far away
/// everybody stands, and how hard the string pulls. What must not be swung has none.
#[must_use]
pub fn cue_cards_with_room(size: PaperSize, room: Option<Space>) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_cards());
    flow.cards(2, 6, 0.0, &mut |flow, i| match i {
        0 => hang(flow),
        1 => balance(flow),
        2 => ready(flow, room),
        3 => space(flow, room),
        4 => swing(flow),
        _ => write_down(flow),
    });
    flow.pages()
}

/// The title of a card beside its picture.
fn head(flow: &mut Flow, title: &str, scene: &Scene) {
    flow.beside(&[1.0, 5.0], 2.0, &mut |flow, i| match i {
        0 => flow.figure(scene, (PICTURE_MM, PICTURE_MM)),
        _ => flow.heading(3, title),
    });
}

fn hang(flow: &mut Flow) {
    head(flow, &words::swing_hang_title(), &picture(Picture::HangingPoint));
    flow.caution(&words::swing_hang());
    flow.list(&[words::swing_hang_measure()], Mark::Dot);
}

fn balance(flow: &mut Flow) {
    head(flow, &words::measure_pressure(), &picture(Picture::Balance));
    flow.caution(&words::pupil_card_cutting());
    let steps = [words::pupil_card_flat(), words::measure_pressure_how()];
    flow.list(&steps, Mark::Number);
}

fn ready(flow: &mut Flow, room: Option<Space>) {
    flow.heading(3, &words::pupil_card_ready());
    flow.caution(&words::swing_ask());
    let tug = match room {
        Some(room) => words::swing_tug_pull(Number::fixed(room.pull_n, 1)),
        None => words::swing_tug().into(),
    };
    let steps = [words::swing_tape().into(), words::swing_eyes().into(), tug];
    flow.list(&steps, Mark::Number);
}

fn space(flow: &mut Flow, room: Option<Space>) {
    flow.heading(3, &words::swing_space_title());
    let half_metres = |m| Number::trimmed(m, 1);
    flow.caution(&match room {
        Some(room) => printed(&words::swing_space_line(
            half_metres(room.clear_m),
            half_metres(room.clear_across_m()),
        )),
        None => words::pupil_card_line().into(),
    });
    flow.paragraph(&words::swing_space());
    flow.list(&[words::swing_initials()], Mark::Box);
}

fn swing(flow: &mut Flow) {
    head(flow, &words::places_swing_heading(), &swing_picture());
    flow.caution(&printed(&words::swing_one()));
    flow.list(&[words::swing_one_count(), words::swing_slow()], Mark::Number);
}

fn write_down(flow: &mut Flow) {
    flow.heading(3, &words::pupil_card_record());
    let what = [
        words::pupil_card_readings(),
        words::pupil_card_odd(),
        words::pupil_card_prediction(),
        words::pupil_card_swings(),
        words::pupil_card_slipped(),
    ];
    flow.list(&what, Mark::Dot);
    governing(flow);
}

/// Who does what in a group, a card each. To cut apart; one page.
#[must_use]
pub fn role_cards(size: PaperSize) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::pupil_roles());
    flow.paragraph(&words::pupil_roles_how());
    let roles: [fn(&mut Flow); 6] = [ruler, string, swinger, lookout, nose, pencil];
    flow.cards(2, roles.len(), ROLE_MM, &mut |flow, i| roles[i](flow));
    governing(&mut flow);
    flow.pages()
}

/// The name of a role beside a picture of what it is about.
fn role(flow: &mut Flow, name: Text, scene: &Scene) {
    flow.beside(&[4.0, 1.0], 2.0, &mut |flow, i| match i {
        0 => flow.heading(1, &name),
        _ => flow.figure(scene, (ROLE_PICTURE_MM, ROLE_PICTURE_MM)),
    });
}

fn ruler(flow: &mut Flow) {
    role(flow, words::pupil_role_ruler(), &picture(Picture::Balance));
    flow.paragraph(&words::pupil_role_ruler_does());
    flow.list(&[words::measure_mass_how(), words::measure_pressure_how()], Mark::Dot);
}

fn string(flow: &mut Flow) {
    role(flow, words::pupil_role_string(), &picture(Picture::HangingPoint));
    flow.caution(&words::pupil_hang());
    flow.paragraph(&words::pupil_role_string_does());
}

fn swinger(flow: &mut Flow) {
    role(flow, words::pupil_role_swinger(), &swing_picture());
    flow.caution(&words::swing_ask());
    flow.paragraph(&words::pupil_role_swinger_does());
    flow.list(&[words::swing_one_count()], Mark::Dot);
}

fn lookout(flow: &mut Flow) {
    flow.heading(1, &words::pupil_role_space());
    flow.caution(&words::swing_record_caution());
    flow.paragraph(&words::pupil_role_space_does());
    flow.list(&[words::swing_space()], Mark::Dot);
}

fn nose(flow: &mut Flow) {
    flow.heading(1, &words::pupil_role_nose());
    flow.caution(&words::swing_eyes());
    flow.paragraph(&words::pupil_role_nose_does());
    // A mark of direction would be parted from its end where a line ends.
    let all = outcome_names(&SwingOutcome::ALL).replace(['\u{2068}', '\u{2069}'], "");
    flow.list(&[all], Mark::Dot);
}

fn pencil(flow: &mut Flow) {
    flow.heading(1, &words::pupil_role_pencil());
    flow.paragraph(&words::pupil_role_pencil_does());
    let what = [
        words::pupil_card_prediction(),
        words::pupil_card_odd(),
        words::pupil_card_slipped(),
    ];
    flow.list(&what, Mark::Dot);
}

/// What goes with every caution.
fn governing(flow: &mut Flow) {
    flow.space(1.5);
    flow.small(&words::swing_no_permission());
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use crate::paper::inside::{says_in_order, sheet_is_sound, words_of};

    /// Of a rocket of 150 g and half a metre, on a string of 1.5 m.
    fn room() -> Space {
        Space {
            speed_m_per_s: 9.4,
            pull_n: 8.9,
            swept_m: 2.7,
            throw_m: 5.2,
            clear_m: 8.5,
            about_m: 7.5,
        }
    }

    #[test]
    fn the_distance_is_told_or_there_is_a_gap_for_it() {
        let said = |room| words_of(&cue_cards_with_room(PaperSize::A4, room));
        let known = said(Some(room()));
        assert!(known.contains("8.5 m") && known.contains("17 m"), "{known}");
        assert!(known.contains("8.9 N") && !known.contains("______ m"), "{known}");
        let open = said(None);
        assert!(open.contains("______ m") && !open.contains(" N."), "{open}");
    }

    #[test]
    fn cards_take_one_page() {
        for room in [None, Some(room())] {
            sheet_is_sound(1, &|size| cue_cards_with_room(size, room));
        }
        sheet_is_sound(1, &role_cards);
    }

    /// Each caution stands before the step that it is about, in a frame.
    #[test]
    fn cautions_come_before_their_steps() {
        let check = || {
            let take_care = words::sheets_caution();
            let one = printed(&words::swing_one());
            let all: [[Text; 3]; 3] = [
                [take_care, words::swing_hang(), words::swing_hang_measure()],
                [take_care, words::pupil_card_cutting(), words::measure_pressure_how()],
                [take_care, words::swing_ask(), words::swing_tape()],
            ];
            let pages = cue_cards(PaperSize::A4);
            for card in all {
                says_in_order(&pages, &card);
            }
            let swing = [take_care.as_str(), &one, &words::swing_slow()];
            says_in_order(&pages, &swing);
            says_in_order(&pages, &[words::swing_no_permission()]);
            let roles = role_cards(PaperSize::A4);
            let swinger =
                [take_care, words::swing_ask(), words::pupil_role_swinger_does()];
            says_in_order(&roles, &swinger);
        };
        check();
        in_languages(&check);
    }
}
