//! The word mat: the terms of the trade, each with a sentence and a picture, in one language or
//! in two beside each other. What is printed is the place as it is.

mod pictures;

use maud::{Markup, html};
use noseward_drawing::sheets::MatTerm;
use noseward_words::{self as words, Text};

use crate::app::State;
use crate::shell::{Region, region};
use pictures::picture;

/// A word of the mat.
type Term = MatTerm<'static>;

const fn term(name: Text, means: Text, picture: &'static str) -> Term {
    Term { name, means, picture }
}

/// The parts of a rocket.
const PARTS: [Term; 11] = [
    term(words::term_nose(), words::means_nose(), pictures::NOSE),
    term(words::term_tube(), words::means_tube(), pictures::TUBE),
    term(words::term_taper(), words::means_taper(), pictures::TAPER),
    term(words::term_neck(), words::means_neck(), pictures::NECK),
    term(words::term_width(), words::means_width(), pictures::WIDTH),
    term(words::term_ballast(), words::means_ballast(), pictures::BALLAST),
    term(words::term_fin(), words::means_fin(), pictures::FIN),
    term(words::term_root(), words::means_root(), pictures::ROOT),
    term(words::term_tip(), words::means_tip(), pictures::TIP),
    term(words::term_span(), words::means_span(), pictures::SPAN),
    term(words::term_sweep(), words::means_sweep(), pictures::SWEEP),
];

/// The two points.
const POINTS: [Term; 6] = [
    term(words::term_mass(), words::means_mass(), pictures::MASS),
    term(words::term_side_on(), words::means_side_on(), pictures::SIDE_ON),
    term(words::term_nose_on(), words::means_nose_on(), pictures::NOSE_ON),
    term(words::term_separation(), words::means_separation(), pictures::SEPARATION),
    term(words::term_cut_out(), words::means_cut_out(), pictures::CUT_OUT),
    term(words::term_angle(), words::means_angle(), pictures::ANGLE),
];

/// What it does.
const OUTCOMES: [Term; 4] = [
    term(words::term_swing_test(), words::means_swing_test(), pictures::SWING_TEST),
    term(words::term_self_righting(), words::means_self_righting(), pictures::RIGHTING),
    term(words::term_broadside(), words::means_broadside(), pictures::BROADSIDE),
    term(words::term_swaps_ends(), words::means_swaps_ends(), pictures::SWAPS_ENDS),
];

/// How one tests and measures.
const TEST: [Term; 9] = [
    term(words::term_fair_test(), words::means_fair_test(), pictures::FAIR_TEST),
    term(words::term_variable(), words::means_variable(), pictures::VARIABLE),
    term(words::term_prediction(), words::means_prediction(), pictures::PREDICTION),
    term(words::term_reading(), words::means_reading(), pictures::READING),
    term(words::term_repeat(), words::means_repeat(), pictures::REPEAT),
    term(words::term_middle(), words::means_middle(), pictures::MIDDLE),
    term(words::term_range(), words::means_range(), pictures::RANGE),
    term(words::term_uncertainty(), words::means_uncertainty(), pictures::UNCERTAINTY),
    term(words::term_evidence(), words::means_evidence(), pictures::EVIDENCE),
];

const GROUPS: [(Text, &[Term]); 4] = [
    (words::mat_parts(), &PARTS),
    (words::mat_points(), &POINTS),
    (words::mat_outcomes(), &OUTCOMES),
    (words::mat_test(), &TEST),
];

/// Every word, for paper.
pub(crate) fn terms() -> Vec<Term> {
    GROUPS.iter().flat_map(|(_, terms)| terms.iter().copied()).collect()
}

/// The place.
pub(crate) fn regions(state: &State) -> Vec<Region> {
    vec![region("mat-tools", tools(state)), region("mat", mat(state))]
}

/// The second language, and the way to paper.
fn tools(state: &State) -> Markup {
    let beside = state.speech.beside();
    html! {
        p class="place__lead" { (words::mat_lead()) }
        div class="nb__row screen-only" {
            span class="nb__choice" {
                label for="beside" { (words::mat_beside()) }
                select class="field__select" id="beside" {
                    option value="" selected[beside.is_none()] { (words::mat_beside_none()) }
                    @for language in state.speech.offered_beside() {
                        option value=(language.key) lang=(language.tag)
                            selected[beside.is_some_and(|beside| beside.key == language.key)] { (language.name) }
                    }
                }
            }
            button type="button" class="button" id="print-mat" data-action="print-place" { (words::mat_print()) }
        }
    }
}

fn mat(state: &State) -> Markup {
    let beside = state.speech.beside_here();
    html! {
        div class={ "mat" @if beside.is_some() { " mat--two" } } {
            @for (title, terms) in GROUPS {
                h3 class="mat__title" { (title) }
                ul class="mat__words" {
                    @for term in terms {
                        li class="word" {
                            (picture(term.picture))
                            div { (said(*term)) }
                            @if let Some(language) = beside {
                                div lang=(language.tag) dir=(language.dir) {
                                    (state.speech.say_beside(language, || said(*term)))
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn said(term: Term) -> Markup {
    html! { h4 { (term.name) } p { (term.means) } }
}
