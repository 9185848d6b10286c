use super::*;
use crate::boxes::in_languages;
use crate::paper::Tag;
use crate::paper::inside::sheet_is_sound;
use crate::scene::Item;
use noseward_lesson::{ClassQuestion, Kit, MOST_GROUPS};

fn of(set_up: &SetUp, plan: Plan) -> TeacherPack<'_> {
    TeacherPack { set_up, plan, rules: "K7Q0", confidence: None }
}

/// Set-ups that make the longest sheets.
fn set_ups() -> Vec<SetUp> {
    let rocket = |example: Example| Some(example.design());
    let mut set_ups: Vec<SetUp> = ClassQuestion::MENU
        .into_iter()
        .map(|question| SetUp {
            question,
            rocket: rocket(Example::Puffin),
            ..SetUp::default()
        })
        .collect();
    set_ups.push(SetUp {
        question: ClassQuestion::Own("Why? ".repeat(16).trim().into()),
        changeable: ClassQuestion::Own(String::new()).changeable(),
        allows_two_changes: true,
        pupils: MOST_GROUPS,
        group_size: 1,
        units: UnitSystem::Inch,
        ..SetUp::default()
    });
    let mut heavy = SetUp { rocket: rocket(Example::Gannet), ..SetUp::default() };
    heavy.limits.added_g = Some(200.0);
    (heavy.limits.string_m, heavy.limits.turns_per_s) = (3.0, 3.0);
    set_ups.push(heavy);
    set_ups
}

/// The words of a page, a line each, without its foot.
fn said(pages: &[Page]) -> Vec<String> {
    let mut said = Vec::new();
    for page in pages {
        for (group, tag) in page.scene.groups.iter().zip(&page.tags) {
            if *tag == Tag::Artifact {
                continue;
            }
            for item in &group.items {
                if let Item::Text { words, .. } = item {
                    said.push(words.clone());
                }
            }
        }
    }
    said
}

/// The cells of the tables of a page, row by row.
fn rows(pages: &[Page]) -> Vec<Vec<String>> {
    let mut rows: Vec<Vec<String>> = Vec::new();
    let mut last = None;
    for page in pages {
        for (group, tag) in page.scene.groups.iter().zip(&page.tags) {
            let Tag::Cell { row, .. } = tag else {
                last = None;
                continue;
            };
            if last.replace(*row) != Some(*row) {
                rows.push(Vec::new());
            }
            let words = group.items.iter().filter_map(|item| match item {
                Item::Text { words, .. } => Some(words.as_str()),
                _ => None,
            });
            let cell = words.collect::<Vec<_>>().join(" ");
            rows.last_mut().unwrap().push(cell);
        }
    }
    rows
}

#[test]
fn every_sheet_is_one_page_and_the_lesson_two() {
    for set_up in set_ups() {
        for sheet in TeacherSheet::ALL {
            let is_same = matches!(
                sheet,
                TeacherSheet::Idea
                    | TeacherSheet::WrongIdeas
                    | TeacherSheet::Hazards
                    | TeacherSheet::Home
                    | TeacherSheet::Evidence
            );
            let is_first = set_up.question == ClassQuestion::MENU[0];
            if is_same && !is_first {
                continue;
            }
            for plan in Plan::ALL {
                let is_lesson = sheet == TeacherSheet::Lesson;
                if !is_lesson && plan != Plan::Hour {
                    continue;
                }
                let most = if is_lesson { 2 } else { 1 };
                sheet_is_sound(most, &|size| sheet.pages(size, of(&set_up, plan)));
            }
        }
    }
}

/// English in plain words is longer here and there.
#[test]
fn in_plain_words_there_are_no_more_pages() {
    words::speak(words::table_of("en-plain"));
    for set_up in set_ups() {
        let pages = pack(PaperSize::Letter, of(&set_up, Plan::HalfDay));
        assert_eq!(pages.len(), TeacherSheet::ALL.len() + 1, "{:?}", set_up.question);
    }
    words::speak(None);
}

#[test]
fn the_pack_is_all_sheets_with_their_titles() {
    let set_up = SetUp::default();
    let of = of(&set_up, Plan::Hour);
    let pages = pack(PaperSize::A4, of);
    assert_eq!(pages.len(), TeacherSheet::ALL.len() + 1);
    for sheet in TeacherSheet::ALL {
        let titled = pages.iter().filter(|page| page.scene.name == sheet.name().as_str());
        assert_eq!(titled.count(), sheet.pages(PaperSize::A4, of).len(), "{sheet:?}");
        assert_eq!(said(&sheet.pages(PaperSize::A4, of))[0], sheet.name().as_str());
    }
}

/// On the sheet itself: read off its cells.
#[test]
fn the_minutes_of_the_sheet_add_up() {
    let set_up = SetUp::default();
    for plan in Plan::ALL {
        let rows = rows(&TeacherSheet::Lesson.pages(PaperSize::A4, of(&set_up, plan)));
        let head = rows.iter().position(|row| row[0] == "From").unwrap();
        let all = rows.iter().position(|row| row[0] == "Altogether").unwrap();
        let minutes = |row: &Vec<String>| row[1].parse::<u16>().unwrap_or(0);
        let sum: u16 = rows[head + 1..all].iter().map(minutes).sum();
        assert_eq!(sum, minutes(&rows[all]), "{plan:?}");
        assert_eq!(sum, plan.lessons().iter().sum::<u16>(), "{plan:?}");
        let begins = rows[head + 1..all].iter().filter(|row| row[0] == "0").count();
        assert_eq!(begins, plan.lessons().len(), "{plan:?}");
    }
}

#[test]
fn the_kit_is_what_the_lesson_counts() {
    let set_up = SetUp { pupils: 24, group_size: 4, ..SetUp::default() };
    let rows =
        rows(&TeacherSheet::Lesson.pages(PaperSize::Letter, of(&set_up, Plan::Hour)));
    let head = rows.iter().position(|row| row[0] == "What").unwrap();
    let kit = set_up.kit();
    assert_eq!(rows[head + 1..].len(), Kit::ALL.len());
    for (row, kit) in rows[head + 1..].iter().zip(kit) {
        let (thing, swap) = names::kit(kit.kit);
        let (count, spares) = (kit.count.to_string(), kit.spares.to_string());
        assert_eq!(*row, [thing.as_str(), &count, &spares, swap.as_str()]);
    }
}

#[test]
fn hazards_are_told_and_nothing_else_is_filled_in() {
    let check = || {
        let told = hazard_rows();
        assert!(told.len() >= 17, "{}", told.len());
        for [step, hazard, measure, checked] in &told {
            assert!(!step.is_empty() && !hazard.is_empty());
            assert!(measure.is_empty() && checked.is_empty(), "{hazard}");
        }
        let pages =
            TeacherSheet::Hazards.pages(PaperSize::A4, of(&SetUp::default(), Plan::Hour));
        let rows = rows(&pages);
        assert_eq!(rows.len(), 1 + told.len() + 2);
        assert_eq!(rows[0], hazard_heads());
        for (row, [step, hazard, ..]) in rows[1..].iter().zip(&told) {
            assert_eq!(row[0], *step);
            assert_eq!(row[1].replace(' ', ""), hazard.replace(' ', ""));
        }
        for row in &rows[1..] {
            assert_eq!(row[2..], ["", ""]);
        }
        let text = said(&pages).join(" ");
        assert!(text.contains(words::set_up_governing().as_str()), "{text}");
    };
    check();
    in_languages(&check);
}

/// Arabic: a line that begins with a unit or a code, behind a wrap, is written from the right too.
#[test]
fn every_line_of_arabic_is_written_from_the_right() {
    words::speak(words::table_of("ar"));
    let set_up = SetUp::default();
    let is_arabic = |c: char| matches!(c, '\u{600}'..='\u{6ff}');
    let is_mark = |c: char| c == '\u{200f}';
    let mut marked = 0;
    for line in said(&pack(PaperSize::A4, of(&set_up, Plan::Hour))) {
        let is_right = line.starts_with(is_arabic) || line.starts_with(is_mark);
        assert!(is_right || !line.contains(is_arabic), "{line}");
        marked += usize::from(line.starts_with(is_mark));
    }
    assert!(marked > 0);
    words::speak(None);
}

#[test]
fn nothing_is_called_safe_and_no_pressure_is_named() {
    for set_up in set_ups() {
        let text = said(&pack(PaperSize::A4, of(&set_up, Plan::HalfDay)));
        let text = text.join(" ").to_lowercase();
        for word in ["safe", "approved", "guarantee", "ready to fly"] {
            assert!(!text.contains(word), "{word}");
        }
        for unit in ["psi", "bar", "kpa"] {
            assert!(text.split([' ', '.', ',']).all(|word| word != unit), "{unit}");
        }
    }
}

#[test]
fn what_goes_home_has_no_word_of_launching_but_one() {
    let pages =
        TeacherSheet::Home.pages(PaperSize::A4, of(&SetUp::default(), Plan::Hour));
    let text = said(&pages).join(" ");
    let without = text.replace("Do not launch at home.", "").to_lowercase();
    assert_ne!(without.len(), text.len());
    for word in ["launch", "pressure", "pump", "fly", "air "] {
        assert!(!without.contains(word), "{word}: {without}");
    }
    let foot = pages[0].scene.groups.iter().zip(&pages[0].tags);
    let foot: Vec<_> = foot.filter(|(_, tag)| **tag == Tag::Artifact).collect();
    let last = &foot.last().unwrap().0.items[0];
    assert!(
        matches!(last, Item::Text { words, .. } if words == "Do not launch at home.")
    );
}

#[test]
fn the_cover_lesson_has_numbers_to_work_with() {
    let trials = cover::trials();
    assert_eq!(trials.len(), cover::ROCKETS);
    let ahead = trials.iter().filter(|trial| trial.nose_first() == Some(true)).count();
    assert!((4..=8).contains(&ahead), "{ahead}");
    let at = cover::turning_point_mm().expect("some fly on both sides of it");
    assert!((14.0..=22.0).contains(&at), "{at}");
    let set_up = SetUp::default();
    let pages = TeacherSheet::Cover.pages(PaperSize::A4, of(&set_up, Plan::Hour));
    let rows = rows(&pages);
    for (row, trial) in rows[1..].iter().zip(&trials) {
        let mm = |text: &str| text.trim_end_matches(" mm").parse::<f64>().unwrap();
        let apart = trial.measured_separation_mm().unwrap();
        assert!((mm(&row[2]) - mm(&row[1]) - apart).abs() < 0.5, "{row:?}");
        assert_eq!(row[3], "");
    }
    assert!(said(&pages).contains(&"Made-up numbers, for practice".into()));
}

#[test]
fn answers_are_those_of_the_starting_rocket() {
    let set_up = SetUp { rocket: Some(Example::Tern.design()), ..SetUp::default() };
    let figures = evaluate(&Example::Tern.design()).figures.unwrap();
    let answers = |confidence| {
        let of = TeacherPack { confidence, ..of(&set_up, Plan::Hour) };
        rows(&TeacherSheet::Answers.pages(PaperSize::A4, of))
    };
    let rows = answers(None);
    let cell = |rows: &[Vec<String>], head: &str| {
        rows.iter().find(|row| row[0] == head).map(|row| row[1].clone()).unwrap()
    };
    let units = Units::METRIC;
    assert_eq!(
        cell(&rows, "Centre of mass"),
        units.reading(figures.mass.centre_m * 1000.0)
    );
    let told = cell(&rows, "What the air does");
    assert!(told.starts_with("Probably "), "{told}");
    let told = cell(&answers(Some(Confidence::TooClose)), "What the air does");
    assert!(told.starts_with("Too close to call."), "{told}");
    let told = cell(&answers(Some(Confidence::Agreed)), "What the air does");
    assert!(!told.contains("robably"), "{told}");
    assert!(TeacherSheet::Answers.tells_answers());
    // The question of the lesson stands first, and every one of the menu is there.
    let question = rows.iter().position(|row| row[0] == "Question").unwrap();
    assert_eq!(rows[question + 1][0], names::question(&set_up.question));
    for one in ClassQuestion::MENU {
        assert!(rows.iter().any(|row| row[0] == names::question(&one)), "{one:?}");
    }
}
