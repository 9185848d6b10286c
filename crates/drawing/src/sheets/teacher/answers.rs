//! What the questions of the lesson come to, and how to read results.
//!
//! One to two calibres of separation, and less than 10 mm on a hand-sized bottle rocket: common
//! practice, no source. What each question comes to is the model's: tests of noseward-lesson hold
//! it to the physics.

use noseward_lesson::ClassQuestion;
use noseward_stability::{Confidence, Figures};
use noseward_words::{self as words, Number};

use super::lesson::columns;
use super::{TeacherPack, cover, names};
use crate::names::{comes_out, outcome_meaning};
use crate::paper::{Flow, Mark, Page, PaperSize, Table};
use crate::written::Written;

/// Below that, a hand-sized bottle rocket often tumbles, in millimetres: common practice, no
/// source.
const OFTEN_TUMBLES_MM: f64 = 10.0;

pub(super) fn pages(size: PaperSize, of: TeacherPack<'_>) -> Vec<Page> {
    let mut flow = Flow::new(size, words::teacher_answers().as_str());
    flow.paragraph(words::teacher_answers_for().as_str());
    flow.table(&questions(&of.set_up.question));
    match of.figures() {
        Some(figures) => {
            flow.table(&rocket(of, &figures));
            flow.small(words::teacher_worked_out().as_str());
        }
        None => flow.paragraph(words::teacher_no_rocket().as_str()),
    }
    flow.heading(2, words::teacher_read().as_str());
    flow.list(&reading(of), Mark::Dot);
    flow.pages()
}

/// Every question with what is expected, that of the lesson first.
fn questions(of_lesson: &ClassQuestion) -> Table {
    let others = ClassQuestion::MENU.into_iter().filter(|other| other != of_lesson);
    let rows = std::iter::once(of_lesson.clone()).chain(others).map(|question| {
        let [mass, pressure, separation] = match question.expected() {
            Some(expected) => [
                words::teacher_goes(names::goes(expected.mass)),
                words::teacher_goes(names::goes(expected.pressure)),
                words::teacher_becomes(names::becomes(expected.separation)),
            ],
            None => [words::teacher_own().into(), String::new(), String::new()],
        };
        vec![names::question(&question), mass, pressure, separation]
    });
    let [question, mass, pressure, separation] = [
        words::set_up_question_card(),
        words::term_mass(),
        words::term_side_on(),
        words::term_separation(),
    ]
    .map(|head| head.as_str());
    Table {
        caption: words::teacher_questions().into(),
        columns: columns([
            (question, 0.42),
            (mass, 0.19),
            (pressure, 0.21),
            (separation, 0.18),
        ]),
        rows: rows.collect(),
        row_mm: 0.0,
    }
}

/// Both points of the rocket that groups begin with, how far they are apart, and what it does.
fn rocket(of: TeacherPack<'_>, figures: &Figures) -> Table {
    let reading = |m: f64| of.units().reading(m * 1000.0);
    let widths = Number::fixed(figures.separation_body_widths, 1);
    let separation = reading(figures.separation_m);
    let rows = [
        (words::term_mass(), reading(figures.mass.centre_m)),
        (words::term_side_on(), reading(figures.centre_of_pressure_side_on_m)),
        (
            words::term_separation(),
            words::lists_next(&separation, &words::class_widths(widths)),
        ),
        (words::teacher_air(), told(of.confidence, figures)),
    ];
    let name = of.set_up.rocket.as_ref().map_or("", |design| &design.name);
    Table {
        columns: columns([(words::teacher_rocket().as_str(), 0.4), (name, 0.6)]),
        rows: rows.map(|(what, value)| vec![what.into(), value]).into(),
        ..Table::default()
    }
}

/// What the air will do. Where nobody worked out how sure that is, it is probable.
fn told(confidence: Option<Confidence>, figures: &Figures) -> String {
    let comes_out = comes_out(figures.outcome);
    let told = match confidence {
        Some(Confidence::Agreed) => words::verdict_agreed(comes_out),
        Some(Confidence::Probably) | None => words::verdict_probably(comes_out),
        Some(Confidence::TooClose) => {
            let [told, why] =
                [words::verdict_too_close(), words::verdict_means_too_close()];
            return format!("{told} {why}");
        }
    };
    format!("{told} {}", outcome_meaning(figures.outcome))
}

/// How to read what a class found.
fn reading(of: TeacherPack<'_>) -> Vec<String> {
    let at = cover::turning_point_mm();
    let mut list: Vec<String> = vec![
        words::teacher_read_sign().into(),
        words::teacher_read_rule(&of.units().reading(OFTEN_TUMBLES_MM)),
        words::teacher_read_turning().into(),
        words::teacher_read_overlap().into(),
        words::teacher_read_string().into(),
        words::teacher_read_predicted().into(),
        words::teacher_read_full().into(),
    ];
    list.extend(at.map(|mm| words::teacher_read_cover(&of.units().reading(mm))));
    list
}
