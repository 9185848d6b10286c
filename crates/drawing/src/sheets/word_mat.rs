//! The word mat on paper: a card a word, with its picture and what it means.

mod path;
mod pieces;
pub mod strokes;

use noseward_words::{self as words, Text};

use crate::paper::{Flow, Page, PaperSize};
use pieces::scene;

/// How large a picture is, in millimetres.
const PICTURE_MM: f64 = 17.0;
/// A card is at least so high, in millimetres: fifteen on a page.
const CARD_MM: f64 = 46.0;

/// A word of the mat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MatTerm<'a> {
    /// The word.
    pub name: Text,
    /// One sentence on it.
    pub means: Text,
    /// Its picture in the letters of the place Word mat: pieces with `;` between, each a letter
    /// and a path.
    pub picture: &'a str,
}

/// The word mat, for a wall or a table, or to cut apart: two pages of fifteen words.
#[must_use]
pub fn word_mat(size: PaperSize, terms: &[MatTerm<'_>]) -> Vec<Page> {
    let mut flow = Flow::new(size, &words::places_words());
    flow.cards(3, terms.len(), CARD_MM, &mut |flow, i| {
        let term = &terms[i];
        flow.beside(&[PICTURE_MM, 36.0], 2.0, &mut |flow, i| match i {
            0 => flow.figure(&scene(term.picture), (PICTURE_MM, PICTURE_MM)),
            _ => flow.heading(3, &term.name),
        });
        flow.paragraph(&term.means);
    });
    flow.pages()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::boxes::in_languages;
    use crate::paper::inside::{sheet_is_sound, words_of};

    /// Where the page keeps its pictures.
    const PICTURES: &str = include_str!("../../../web/src/places/word_mat/pictures.rs");

    /// The pictures of the page, in their order.
    pub(super) fn pictures() -> Vec<&'static str> {
        let named = PICTURES.split("pub(super) const ").skip(1);
        let quoted = named.filter_map(|one| one.split('"').nth(1));
        quoted.collect()
    }

    /// The longest of what the mat says, with every picture.
    fn terms() -> Vec<MatTerm<'static>> {
        let said = [
            (words::term_side_on(), words::means_side_on()),
            (words::term_swing_test(), words::means_swing_test()),
            (words::term_middle(), words::means_middle()),
            (words::term_nose_on(), words::means_nose_on()),
            (words::term_cut_out(), words::means_cut_out()),
            (words::term_ballast(), words::means_ballast()),
        ];
        let said = said.into_iter().cycle();
        let both = pictures().into_iter().zip(said);
        both.map(|(picture, (name, means))| MatTerm { name, means, picture }).collect()
    }

    #[test]
    fn thirty_words_take_two_pages() {
        assert_eq!(terms().len(), 30);
        sheet_is_sound(2, &|size| word_mat(size, &terms()));
    }

    #[test]
    fn every_word_stands_with_what_it_means() {
        let check = || {
            let said = words_of(&word_mat(PaperSize::A4, &terms()[..1]));
            assert!(said.contains(words::term_side_on().as_str()));
            assert!(said.contains(words::means_side_on().as_str()));
        };
        check();
        in_languages(&check);
    }
}
