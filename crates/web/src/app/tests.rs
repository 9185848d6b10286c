//! Whole messages through the state and the views, without a browser.

mod class;
mod computer;
mod keeping;
mod lost;
mod marking;
mod markup;
mod notebook;
mod paper;
mod paths;
mod set_up;
mod speech;
mod swing;
mod symbols;
mod telling;
mod word_mat;
mod words;

use super::*;
use crate::part::Part;
use crate::places::swing::{CARDS, SPACE_CARD, SetupField, SwingMsg, SwingResult};
use crate::shell::Region;
use crate::{places, shell};
use noseward_stability::{
    Axis, FinField, Mass, Planform, SectionField, SectionKind, limits,
};

fn open(hash: &str, kept: Option<&Design>) -> State {
    let mut state = State::new(&Opening {
        hash: hash.into(),
        kept: kept.map(|design| link::hash(&design.clone().into())),
        can_keep: true,
        ..Opening::default()
    });
    // As it is a moment after the first drawing.
    state.parts = Loading::all(Code::Here);
    state
}

fn typed(state: &mut State, field: Field, text: &str) -> Vec<Effect> {
    let effects = update(state, Msg::Typed { field, text: text.into() });
    update(state, Msg::Paused);
    effects
}

fn separation_mm(state: &State) -> f64 {
    state.report.figures.as_ref().unwrap().separation_m * 1000.0
}

const WIDTH: Field = Field::Section(1, SectionField::Diameter);
const CLAY_PLACE: Field = Field::Weight(0, WeightField::Position);

mod opening {
    use super::*;

    #[test]
    fn the_worked_example_when_there_is_nothing_else() {
        let state = open("", None);
        assert_eq!(state.design.name, "Puffin");
        assert_eq!(state.notice, None);
        assert!(state.report.figures.is_some());
    }

    #[test]
    fn what_was_kept_when_there_is_no_link() {
        let mine = Example::Gannet.design();
        assert_eq!(open("", Some(&mine)).design, mine.rounded());
        assert_eq!(open("#steps", Some(&Example::Tern.design())).design.name, "Tern");
    }

    #[test]
    fn a_link_comes_first_and_the_kept_rocket_waits() {
        let mine = Example::Gannet.design();
        let hash = format!("#{}", link::hash(&Example::Tern.design().into()));
        let mut state = open(&hash, Some(&mine));
        assert_eq!(state.design.name, "Tern");
        assert_eq!(state.keeping, Keeping::Other(Box::new(mine.into())));
        update(&mut state, Msg::BackToMine);
        assert_eq!(
            (state.design.name.as_str(), &state.keeping),
            ("Gannet", &Keeping::Here)
        );
        update(&mut state, Msg::Undo);
        assert_eq!(state.design.name, "Tern", "nothing is lost on the way back");
    }

    #[test]
    fn the_own_link_after_a_reload_is_no_visitor() {
        let mine = Example::Gannet.design();
        let state = open(&link::hash(&mine.clone().into()), Some(&mine));
        assert_eq!(state.keeping, Keeping::Here);
    }

    #[test]
    fn keeping_the_visitor_ends_the_wait() {
        let hash = link::hash(&Example::Tern.design().into());
        let mut state = open(&hash, Some(&Example::Razorbill.design()));
        assert!(update(&mut state, Msg::KeepThis).contains(&Effect::Keep));
        assert_eq!(
            (state.design.name.as_str(), &state.keeping),
            ("Tern", &Keeping::Here)
        );
        update(&mut state, Msg::Undo);
        assert_eq!(state.design.name, "Razorbill", "their own can be brought back");
    }

    #[test]
    fn after_a_reload_what_was_kept_last_is_newer_than_the_address() {
        let state = State::new(&Opening {
            hash: link::hash(&Example::Tern.design().into()),
            own_hash: true,
            kept: Some(link::hash(&Example::Razorbill.design().into())),
            can_keep: true,
            ..Opening::default()
        });
        assert_eq!(
            (state.design.name.as_str(), &state.keeping),
            ("Razorbill", &Keeping::Here)
        );
    }

    #[test]
    fn a_damaged_link_leaves_the_kept_rocket_and_says_so() {
        let mut hash = link::hash(&Example::Tern.design().into()).into_bytes();
        let last = hash.len() - 6;
        hash[last] = if hash[last] == b'A' { b'B' } else { b'A' };
        let hash = String::from_utf8(hash).unwrap();
        let state = open(&hash, Some(&Example::Razorbill.design()));
        assert_eq!(state.design.name, "Razorbill");
        assert!(matches!(state.notice, Some(Notice::LinkDamaged(_))));
        assert_eq!(open(&hash, None).design.name, "Puffin");
    }

    #[test]
    fn a_cut_link_opens_what_it_can() {
        let hash = link::hash(&Example::Puffin.design().into());
        let state = open(&hash[..hash.len() - 20], None);
        assert_eq!(state.design.name, "Puffin");
        assert!(matches!(state.notice, Some(Notice::LinkCut(_))));
        assert!(region(&state, "notice").contains("cut short"));
    }

    #[test]
    fn a_fresh_start_opens_neither_link_nor_kept_rocket_and_loses_neither() {
        let kept = Example::Tern.design();
        let state = State::new(&Opening {
            hash: format!("#{}", link::hash(&Example::Gannet.design().into())),
            kept: Some(link::hash(&kept.clone().into())),
            can_keep: true,
            afresh: true,
            ..Opening::default()
        });
        assert_eq!(state.design.name, "Puffin");
        assert_eq!(state.keeping, Keeping::Other(Box::new(kept.rounded().into())));
    }
}

/// Everything that any place shows of a state, and what stands round them.
fn regions(state: &State) -> Vec<Region> {
    let mut all = shell::first(state);
    all.extend(shell::then(state));
    all.extend(shell::waiting(state));
    all.extend(in_places(state).into_iter().flatten());
    all
}

/// What each place shows, in the order of the lesson.
fn in_places(state: &State) -> [Vec<Region>; 14] {
    [
        places::rocket::regions(state),
        places::measure::regions(state),
        places::predict::regions(state),
        places::swing::regions(state),
        places::compare::regions(state),
        places::conclude::regions(state),
        places::hand_in::regions(state),
        places::why::regions(state),
        places::word_mat::regions(state),
        places::join::regions(state),
        places::set_up::regions(state),
        places::class::regions(state),
        places::paper::regions(state),
        places::lead::regions(state),
    ]
}

/// What stands in a place that loads later.
fn place_regions(state: &State, place: Place) -> Vec<Region> {
    match place {
        Place::Rocket => Vec::new(),
        Place::Measure => places::measure::regions(state),
        Place::Predict => places::predict::regions(state),
        Place::Swing => places::swing::regions(state),
        Place::Compare => places::compare::regions(state),
        Place::Conclude => places::conclude::regions(state),
        Place::HandIn => places::hand_in::regions(state),
        Place::Why => places::why::regions(state),
        Place::Words => places::word_mat::regions(state),
        Place::Join => places::join::regions(state),
        Place::SetUp => places::set_up::regions(state),
        Place::Class => places::class::regions(state),
        Place::Paper => places::paper::regions(state),
        Place::Lead => places::lead::regions(state),
    }
}

/// The place that is shown now with what stands round it.
fn page(state: &State) -> String {
    let mut regions = shell::first(state);
    regions.extend(shell::then(state));
    regions.extend(match state.place {
        Place::Rocket => places::rocket::regions(state),
        place => {
            let is_here = |part| state.parts.is_here(part);
            if place.part().is_some_and(is_here) && is_here(Part::Notebook) {
                place_regions(state, place)
            } else {
                shell::waiting(state)
            }
        }
    });
    regions.extend(places::why::described(state));
    let element = |r: Region| format!("<div id=\"{}\">{}</div>", r.id, r.markup);
    regions.into_iter().map(element).collect()
}

fn go(state: &mut State, place: Place) -> Vec<Effect> {
    update(state, Msg::To(place))
}

/// What stands in the element or the region with this id, wherever that is shown.
fn region(state: &State, id: &str) -> String {
    let all = regions(state);
    if let Some(region) = all.iter().find(|region| region.id == id) {
        return region.markup.clone();
    }
    let mark = format!(" id=\"{id}\"");
    let inside = all.iter().find_map(|region| {
        let at = region.markup.find(&mark)?;
        let opens = region.markup[..at].rfind('<')?;
        Some(inner(&region.markup[opens..]).to_owned())
    });
    inside.unwrap_or_default()
}

/// What stands in the element with which some markup begins.
fn inner(markup: &str) -> &str {
    let name = markup[1..].split([' ', '>']).next().unwrap();
    let (open, close) = (format!("<{name}"), format!("</{name}>"));
    let start = markup.find('>').unwrap() + 1;
    let (mut at, mut depth) = (start, 1);
    loop {
        let end = at + markup[at..].find(&close).expect("every element is closed");
        depth += markup[at..end].matches(&open).count();
        depth -= 1;
        if depth == 0 {
            return &markup[start..end];
        }
        at = end + close.len();
    }
}

mod typing {
    use super::*;

    #[test]
    fn every_keystroke_is_worked_out() {
        let mut state = open("", None);
        let before = separation_mm(&state);
        let effects = typed(&mut state, CLAY_PLACE, "2");
        assert_eq!(effects, [Effect::Redraw, Effect::Keep]);
        let two = separation_mm(&state);
        typed(&mut state, CLAY_PLACE, "20");
        assert!(two > separation_mm(&state) && separation_mm(&state) > before);
    }

    #[test]
    fn the_centre_of_pressure_does_not_notice_a_weight() {
        let mut state = open("", None);
        let centre =
            |s: &State| s.report.figures.as_ref().unwrap().centre_of_pressure_side_on_m;
        let before = centre(&state);
        typed(&mut state, CLAY_PLACE, "100");
        assert_eq!(centre(&state), before);
    }

    /// Found by pupils: nothing that was added later was drawn.
    #[test]
    fn a_name_that_is_too_long_stops_nothing() {
        let mut state = open("", None);
        typed(&mut state, Field::Name, &"long ".repeat(12));
        let [(field, severity, words)] = &state.faults()[..] else { unreachable!() };
        assert_eq!((*field, *severity), (Field::Name, Severity::Ask));
        assert!(words.contains("24 letters"), "{words}");
        update(&mut state, Msg::Add(Addition::Fins));
        assert!(!state.is_stale());
        assert_eq!(state.drawn.0, state.design);
    }

    #[test]
    fn what_cannot_be_read_stays_in_its_field_and_changes_nothing() {
        let mut state = open("", None);
        let before = state.design.clone();
        for text in ["abc", "", "1,234", "12 g", "-"] {
            typed(&mut state, WIDTH, if text.is_empty() { "x" } else { text });
            assert_eq!(state.design, before, "{text}");
        }
        typed(&mut state, CLAY_PLACE, "");
        assert_eq!(state.text_of(CLAY_PLACE), "");
        assert_eq!(state.draft(CLAY_PLACE).unwrap().why, Unreadable::Empty);
        assert_eq!(state.text_of(WIDTH), "-");
        assert_eq!(state.faults().len(), 2);
        assert_eq!(update(&mut state, Msg::Left { field: WIDTH }), [Effect::Redraw]);
        typed(&mut state, WIDTH, "66");
        typed(&mut state, CLAY_PLACE, "45");
        assert_eq!(state.faults(), []);
    }

    #[test]
    fn a_fault_keeps_the_last_good_drawing() {
        let mut state = open("", None);
        typed(&mut state, CLAY_PLACE, "900");
        assert!(state.is_stale());
        assert_eq!(state.drawn.0.weights[0].position_mm, 45.0);
        assert_eq!(state.text_of(CLAY_PLACE), "900");
        assert!(shell::drawing(&state).is_some());
        let fault = region(&state, "fault:/weights/0/position_mm");
        assert!(fault.contains("outside the rocket"), "{fault}");
        let card = region(&state, "card-weights");
        assert_eq!(card.matches("aria-invalid=\"true\"").count(), 1, "{card}");
        typed(&mut state, CLAY_PLACE, "90");
        assert!(!state.is_stale());
    }

    #[test]
    fn a_half_typed_number_is_no_fault_until_typing_pauses() {
        let mut state = open("", None);
        let type_on = |state: &mut State, field, text: &str| {
            update(state, Msg::Typed { field, text: text.into() });
        };
        let length = Field::Section(1, SectionField::Length);
        type_on(&mut state, length, "1");
        assert!(state.report.figures.is_none(), "the fins are off the body");
        assert_eq!((state.faults().len(), state.is_stale()), (0, false));
        update(&mut state, Msg::Paused);
        assert!(state.is_stale() && !state.faults().is_empty());
        // What has been told stays told until it is mended.
        type_on(&mut state, length, "12");
        assert!(state.is_stale());
        type_on(&mut state, length, "125");
        assert_eq!((state.faults().len(), state.is_stale()), (0, false));
        type_on(&mut state, length, "x");
        assert_eq!(state.faults(), []);
        update(&mut state, Msg::Left { field: length });
        assert_eq!(state.faults().len(), 1);
    }

    #[test]
    fn units_are_understood_and_the_field_is_tidied_when_left() {
        let mut state = open("", None);
        typed(&mut state, WIDTH, "6,6 cm");
        assert_eq!(state.design.sections[1].diameter_mm, Some(66.0));
        assert_eq!(state.text_of(WIDTH), "6,6 cm", "as it was typed");
        assert_eq!(update(&mut state, Msg::Left { field: WIDTH }), [Effect::Redraw]);
        assert_eq!(state.text_of(WIDTH), "66");
    }

    #[test]
    fn an_ambiguous_number_offers_both_and_takes_either() {
        let mut state = open("", None);
        typed(&mut state, WIDTH, "1,234");
        let slot = region(&state, &format!("fault:{WIDTH}"));
        assert!(slot.contains(">1.234<") && slot.contains(">1234<"), "{slot}");
        let msg = Msg::parse("take", &format!("{WIDTH} 1.234")).unwrap();
        update(&mut state, msg);
        assert_eq!(state.design.sections[1].diameter_mm, Some(1.2));
    }

    #[test]
    fn an_optional_number_can_be_emptied() {
        let mut state = open("", None);
        typed(&mut state, Field::TotalMass, "75");
        assert_eq!(state.design.measured.total_mass_g, Some(75.0));
        typed(&mut state, Field::TotalMass, "");
        assert_eq!(state.design.measured.total_mass_g, None);
        assert_eq!(state.faults(), []);
    }

    #[test]
    fn a_count_must_be_whole() {
        let mut state = open("", None);
        let count = Field::Fins(0, FinField::Count);
        typed(&mut state, count, "3,5");
        assert_eq!(state.draft(count).unwrap().why, Unreadable::NotWhole);
        assert_eq!(state.design.fins[0].count, 4);
        typed(&mut state, count, "-1");
        assert_eq!(state.draft(count).unwrap().why, Unreadable::NotWhole);
    }

    #[test]
    fn arrow_keys_step_in_the_units_of_the_page() {
        let mut state = open("", None);
        let step = |state: &mut State, field, steps| {
            update(state, Msg::Stepped { field, steps });
            field.get(&state.design).unwrap()
        };
        assert_eq!(step(&mut state, CLAY_PLACE, 1.0), 46.0);
        assert_eq!(step(&mut state, CLAY_PLACE, -10.0), 36.0);
        update(&mut state, Msg::Units(UnitSystem::Inch));
        assert_eq!(step(&mut state, CLAY_PLACE, 1.0), 37.6);
        let nose_width = Field::Section(0, SectionField::Diameter);
        update(&mut state, Msg::Units(UnitSystem::Metric));
        assert_eq!(step(&mut state, nose_width, 1.0), 66.0, "starts at the bottle's");
        assert_eq!(step(&mut state, CLAY_PLACE, -1e9), 0.0, "stops at the bound");
    }

    #[test]
    fn switching_units_changes_no_stored_value() {
        let mut state = open("", None);
        let before = state.design.clone();
        update(&mut state, Msg::Units(UnitSystem::Inch));
        for field in Field::numbers(&state.design) {
            update(&mut state, Msg::Left { field });
        }
        update(&mut state, Msg::Units(UnitSystem::Metric));
        assert_eq!(state.design, before);
    }
}

mod undoing {
    use super::*;

    #[test]
    fn typing_in_one_field_is_one_step() {
        let mut state = open("", None);
        for text in ["6", "66", "66.", "66.5"] {
            typed(&mut state, WIDTH, text);
        }
        update(&mut state, Msg::Left { field: WIDTH });
        typed(&mut state, WIDTH, "70");
        update(&mut state, Msg::Undo);
        assert_eq!(state.design.sections[1].diameter_mm, Some(66.5));
        update(&mut state, Msg::Undo);
        assert_eq!(state.design.sections[1].diameter_mm, Some(65.0));
        assert!(!state.can_undo());
        update(&mut state, Msg::Redo);
        update(&mut state, Msg::Redo);
        assert_eq!(state.design.sections[1].diameter_mm, Some(70.0));
        assert!(!state.can_redo());
        assert_eq!(update(&mut state, Msg::Redo), []);
    }

    #[test]
    fn a_new_change_ends_redo() {
        let mut state = open("", None);
        typed(&mut state, WIDTH, "70");
        update(&mut state, Msg::Undo);
        typed(&mut state, CLAY_PLACE, "30");
        assert!(!state.can_redo());
    }

    #[test]
    fn every_edit_can_be_undone() {
        let edits = [
            Msg::Add(Addition::Fins),
            Msg::Add(Addition::Tube),
            Msg::Remove(Component::Section(0)),
            Msg::Copy(Component::Fins(0)),
            Msg::MoveDown(Component::Section(1)),
            Msg::Start(Start::Bottle(BottleSize::Ml2000)),
            Msg::Chose { choice: Choice::Planform(0), value: "1".into() },
            Msg::OpenText(link::to_file(&Example::Razorbill.design().into())),
        ];
        for edit in edits {
            let mut state = open("", None);
            let before = state.design.clone();
            assert!(!update(&mut state, edit.clone()).is_empty());
            assert_ne!(state.design, before, "{edit:?}");
            update(&mut state, Msg::Undo);
            assert_eq!(state.design, before, "{edit:?}");
        }
    }
}

mod editing {
    use super::*;

    #[test]
    fn what_sits_on_the_body_moves_with_it() {
        let mut state = open("", None);
        update(&mut state, Msg::Remove(Component::Section(0)));
        assert_eq!(state.design.fins[0].start_mm, 95.0);
        update(&mut state, Msg::Add(Addition::Nose));
        assert_eq!(state.design.sections[0].kind, SectionKind::Cone);
        let nose_mm = state.design.sections[0].length_mm;
        assert_eq!(state.design.fins[0].start_mm, 95.0 + nose_mm);
        assert_eq!(state.report.faults, []);
    }

    #[test]
    fn a_weighed_piece_keeps_its_mass_when_its_head_goes() {
        let mut state = open("", None);
        update(&mut state, Msg::Remove(Component::Section(1)));
        assert_eq!(state.design.sections[1].mass, Mass::WeighedG(22.0));
    }

    #[test]
    fn every_part_can_be_added_up_to_its_limit_and_stays_without_stops() {
        for addition in Addition::ALL {
            let mut state = open("", None);
            let mut count = 0;
            while addition.fits(&state.design) && count < 20 {
                let effects = update(&mut state, Msg::Add(addition));
                assert!(matches!(effects.last(), Some(Effect::Focus(_))));
                count += 1;
            }
            assert!(count <= limits::SECTIONS, "{addition:?}");
            assert!(state.report.figures.is_some(), "{:?}", state.report.faults);
        }
        let mut empty = open("", None);
        empty.design = Design::default();
        for addition in [Addition::Tube, Addition::Nose, Addition::Fins] {
            update(&mut empty, Msg::Add(addition));
        }
        assert!(empty.report.figures.is_some(), "{:?}", empty.report.faults);
    }

    #[test]
    fn a_part_that_is_not_there_is_left_alone() {
        let mut state = open("", None);
        let before = state.design.clone();
        for msg in [
            Msg::Remove(Component::Weight(9)),
            Msg::Copy(Component::Section(0)),
            Msg::MoveUp(Component::Fins(0)),
            Msg::AddCorner(0),
            Msg::RemoveCorner(3, 1),
            Msg::Chose { choice: Choice::Kind(0), value: "99".into() },
            Msg::Chose { choice: Choice::Mass(Component::Fins(4)), value: "0".into() },
        ] {
            assert_eq!(update(&mut state, msg.clone()), [], "{msg:?}");
        }
        assert_eq!(state.design, before);
    }

    #[test]
    fn weighing_a_part_starts_from_what_was_worked_out() {
        let mut state = open("", None);
        let worked_out = state.report.figures.as_ref().unwrap().parts[4].mass.mass_kg;
        let choice = Choice::Mass(Component::Fins(0));
        update(&mut state, Msg::Chose { choice, value: "0".into() });
        let Mass::WeighedG(g) = state.design.fins[0].mass else { panic!() };
        assert!((g - worked_out * 1000.0).abs() < 0.06);
    }

    #[test]
    fn a_free_fin_starts_as_the_four_sided_one_and_comes_back() {
        let mut state = open("", None);
        let before = state.design.fins[0].planform.clone();
        let choose = |state: &mut State, value: &str| {
            let choice = Choice::Planform(0);
            update(state, Msg::Chose { choice, value: value.into() });
        };
        choose(&mut state, "1");
        update(&mut state, Msg::AddCorner(0));
        let Planform::PointsMm(points) = &state.design.fins[0].planform else { panic!() };
        assert_eq!(points.len(), 5);
        let corner = Field::Fins(0, FinField::Point(1, Axis::Out));
        typed(&mut state, corner, "12");
        assert_eq!(corner.get(&state.design), Some(12.0));
        update(&mut state, Msg::RemoveCorner(0, 1));
        choose(&mut state, "0");
        assert_eq!(state.design.fins[0].planform, before);
    }

    #[test]
    fn a_coin_brings_its_mint_mass() {
        let mut state = open("", None);
        let quarter = noseward_stability::COMMON_WEIGHTS
            .iter()
            .position(|w| w.kind == noseward_stability::WeightKind::UsQuarter)
            .unwrap();
        let choice = Choice::WeightKind(0);
        update(&mut state, Msg::Chose { choice, value: quarter.to_string() });
        assert_eq!(state.design.weights[0].mass_g, 5.67);
        assert_eq!(state.design.weights[0].label, "US quarter");
    }

    /// What is in an example is called as the page calls it; its own name stays.
    #[test]
    fn an_example_begins_in_the_language_in_use() {
        noseward_words::speak(noseward_words::table_of("de"));
        let mut state = open("", None);
        let label = |state: &State| state.design.weights[0].label.clone();
        assert_eq!((state.design.name.as_str(), &*label(&state)), ("Puffin", "Knete"));
        assert!(region(&state, "card-weights").contains("selected>Knete<"));
        update(&mut state, Msg::Start(Start::Example(Example::Razorbill)));
        assert_eq!(label(&state), "Klebeband");
        noseward_words::speak(None);
    }

    #[test]
    fn dragging_goes_by_the_scale_of_the_drawing() {
        let mut state = open("", None);
        let scale =
            noseward_drawing::mm_per_px(&state.design, &shell::sheet(&state)).unwrap();
        let part = Component::Weight(0);
        update(&mut state, Msg::Dragged { part, from_mm: 45.0, by_px: 30.0 });
        let expected = (45.0 + 30.0 * scale).round();
        assert_eq!(state.design.weights[0].position_mm, expected);
    }

    #[test]
    fn a_fault_leads_to_its_field_even_if_it_is_not_among_the_main_ones() {
        let mut state = open("", None);
        let neck = Field::Section(3, SectionField::Diameter);
        typed(&mut state, neck, "90");
        let effects = update(&mut state, Msg::Go(neck));
        assert!(state.all_measurements);
        assert_eq!(effects.last(), Some(&Effect::Focus(neck.to_string())));
        assert!(region(&state, "card-/sections/3").contains(&format!("id=\"{neck}\"")));
    }

    #[test]
    fn a_passing_message_goes_with_the_next_change_and_a_warning_stays() {
        let mut state = open("", None);
        update(&mut state, Msg::Start(Start::Example(Example::Tern)));
        assert!(state.notice.is_some());
        typed(&mut state, WIDTH, "66");
        assert_eq!(state.notice, None);
        update(&mut state, Msg::OpenText("hello".into()));
        typed(&mut state, WIDTH, "67");
        assert!(matches!(state.notice, Some(Notice::FileFault(_))));
    }

    #[test]
    fn a_bad_file_changes_nothing() {
        let mut state = open("", None);
        let before = state.design.clone();
        for text in ["", "hello", "{\"sections\": 3}", "<script>alert(1)</script>"] {
            update(&mut state, Msg::OpenText(text.into()));
            assert!(matches!(state.notice, Some(Notice::FileFault(_))), "{text}");
        }
        assert_eq!(state.design, before);
    }
}

mod air {
    use super::*;
    use noseward_lesson::Telling;
    use noseward_stability::evaluate_measured;

    /// A trial is begun, and the rocket hangs level there.
    fn read(state: &mut State, mm: f64) {
        let id = state.desk.notebook.begin(&state.record()).unwrap();
        let trial = state.desk.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm = [Some(mm); 3];
        trial.draft.outcome = Some(noseward_lesson::SwingOutcome::Steady);
        assert!(state.desk.notebook.lock(id));
        state.take_readings();
    }

    /// As the strip writes it, from draws of its own.
    fn interval(design: &Design, resolution: Resolution) -> String {
        let mut draws =
            SeparationDraws::new(design, &MeasuredPoints::default(), resolution);
        draws.run(10_000);
        let interval = draws.verdict().unwrap().separation_m;
        format!(
            "likely {:.0} mm to {:.0} mm",
            interval.low * 1000.0,
            interval.high * 1000.0
        )
    }

    fn work_out(state: &mut State) {
        let mut slices = 0;
        while update(state, Msg::Slice) == [Effect::Slice] {
            slices += 1;
            assert!(slices < 1000);
        }
    }

    #[test]
    fn how_sure_it_is_follows_once_typing_pauses() {
        let mut state = open("", None);
        assert!(region(&state, "strip").contains("likely …"));
        work_out(&mut state);
        let expected = interval(&state.design, Resolution::default());
        assert!(region(&state, "strip").contains(&expected), "{expected}");
        let sure = region(&state, "air-sure");
        assert!(sure.contains("self-righting in all tries"), "{sure}");
        assert!(sure.contains("The readings that matter most: clay"), "{sure}");
        assert_eq!(update(&mut state, Msg::Slice), [], "all is known");

        // While somebody types nothing is worked out, and what was known is dropped.
        update(&mut state, Msg::Typed { field: CLAY_PLACE, text: "50".into() });
        assert!(region(&state, "strip").contains("likely …"));
        assert_eq!(update(&mut state, Msg::Slice), []);
        update(&mut state, Msg::Paused);
        work_out(&mut state);
        let coarse = Resolution { length_mm: 5.0, mass_g: 5.0 };
        update(&mut state, Msg::Resolution(coarse));
        work_out(&mut state);
        let wider = interval(&state.design, coarse);
        assert!(wider != expected && region(&state, "strip").contains(&wider), "{wider}");
    }

    #[test]
    fn paper_waits_until_all_is_known() {
        let mut state = open("", None);
        typed(&mut state, WIDTH, "70");
        update(&mut state, Msg::WorkOut);
        assert!(matches!(state.certainty, Certainty::Known(Some(_))));
        assert!(!region(&state, "air-sure").contains("being worked out"));
    }

    #[test]
    fn a_border_case_is_too_close_to_call() {
        let mut state = open("", None);
        let hung = |mm: f64| MeasuredPoints::hung_at(mm / 1000.0).unwrap();
        let design = state.design.clone();
        let outcome =
            |mm: f64| evaluate_measured(&design, &hung(mm)).figures.unwrap().outcome;
        let mut mm = 100.0;
        while outcome(mm).rank() == 0 {
            mm += 0.1;
        }
        read(&mut state, mm);
        work_out(&mut state);
        assert!(region(&state, "strip").contains("Too close to call"));
        assert!(region(&state, "rocket-in-words").contains("too close to call"));
    }

    /// Once a group has measured, that is what counts, and a difference is said.
    #[test]
    fn what_was_measured_leads() {
        let mut state = open("", None);
        let computed = state.report.figures.as_ref().unwrap().clone();
        read(&mut state, 160.0);
        let figures = state.report.figures.as_ref().unwrap().clone();
        assert!((figures.mass.centre_m - 0.160).abs() < 1e-12);
        let lost = computed.least_separation_m - figures.least_separation_m;
        assert!((lost - (0.160 - computed.mass.centre_m)).abs() < 1e-12);
        let strip = region(&state, "strip");
        let told = "centre of mass <strong>160 mm</strong> measured; 140 mm worked out<strong>: they differ";
        assert!(strip.contains(told), "{strip}");
        let least = format!("{:.0} mm", figures.least_separation_m * 1000.0);
        assert!(strip.contains(&least), "{strip}");
        // The swing uses it too.
        update(&mut state, Msg::To(Place::Swing));
        let used = state.report.figures.as_ref().unwrap().mass.centre_m;
        assert!((used - 0.160).abs() < 1e-12);
        // Close enough to be one place.
        let trial = state.desk.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm = [Some(143.0), Some(144.0), Some(141.0)];
        state.take_readings();
        let strip = region(&state, "strip");
        assert!(
            strip.contains("<strong>143 mm</strong> measured, 141 mm to 144 mm;"),
            "{strip}"
        );
        assert!(!strip.contains("they differ"), "{strip}");
    }

    /// Readings of a rocket say nothing of another one.
    #[test]
    fn a_change_leaves_the_readings_with_the_rocket_that_they_are_of() {
        let mut state = open("", None);
        state.desk.notebook.begin(&state.record()).unwrap();
        let trial = state.desk.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm = [Some(160.0); 3];
        assert!(state.take_readings());
        typed(&mut state, CLAY_PLACE, "60");
        assert!(state.measured.is_empty());
        let strip = region(&state, "strip");
        assert!(strip.contains("of the rocket before you changed it"), "{strip}");
        typed(&mut state, CLAY_PLACE, "45");
        assert!(!state.measured.is_empty(), "the old number again");
        // A new reading is of the rocket as it is now.
        typed(&mut state, CLAY_PLACE, "60");
        let trial = state.desk.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm[0] = Some(165.0);
        assert!(state.take_readings());
        assert!(!region(&state, "strip").contains("before you changed"));
    }

    /// Whoever leads may want a prediction before the verdict is told.
    #[test]
    fn a_prediction_comes_before_the_verdict_where_that_is_wished() {
        let mut state = open("", None);
        work_out(&mut state);
        let everything = |state: &State| -> String {
            let told =
                ["strip", "why-words", "why-graphs", "why-in-words", "why-table-part"];
            told.map(|id| region(state, id)).concat()
        };
        assert!(everything(&state).contains("elf-righting"));
        state.desk.notebook.telling = Telling::Verdict;
        let hidden = everything(&state).to_lowercase();
        for word in ["self-righting", "broadside", "turns it back", "<svg"] {
            assert!(!hidden.contains(word), "{word}");
        }
        assert!(hidden.contains("predict first"));
        assert!(!shell::spoken(&state).contains("righting"));
        // As soon as one is locked.
        read(&mut state, 140.0);
        work_out(&mut state);
        assert!(everything(&state).contains("elf-righting"));
        // Another rocket wants another prediction.
        typed(&mut state, CLAY_PLACE, "60");
        assert!(!everything(&state).contains("elf-righting"));
    }

    /// And a reading before a point is told.
    #[test]
    fn a_point_is_told_once_it_was_measured_where_that_is_wished() {
        let mut state = open("", None);
        state.desk.notebook.telling = Telling::Points;
        let (_, figures) = shell::strip::drawn(&state).unwrap();
        let secret = format!("{:.0} mm", figures.mass.centre_m * 1000.0);
        let told = |state: &State| -> String {
            let mut told = shell::drawing(state).unwrap().document();
            for id in ["strip", "rocket-in-words", "as-table"] {
                told += &region(state, id);
            }
            told + &shell::spoken(state)
        };
        assert!(!told(&state).contains(&secret), "{secret}: {}", told(&state));
        assert!(region(&state, "strip").contains("Measure first"));
        state.desk.notebook.telling = Telling::All;
        assert!(told(&state).contains(&secret));
        state.desk.notebook.telling = Telling::Points;
        // Nor by the table and the charts of the trials.
        state.desk.notebook.begin(&state.record()).unwrap();
        let compared = |state: &State| -> String {
            places::compare::regions(state).into_iter().map(|r| r.markup).collect()
        };
        assert!(!compared(&state).contains("worked out"), "{}", compared(&state));
        state.desk.notebook.telling = Telling::All;
        assert!(compared(&state).contains("worked out"));
        state.desk.notebook.telling = Telling::Points;
        read(&mut state, 152.0);
        let drawing = shell::drawing(&state).unwrap().document();
        assert!(
            drawing.contains("centre of mass") && !drawing.contains("centre of pressure")
        );
    }

    /// Readings that cannot tell which point is nearer the nose leave no outcome certain.
    #[test]
    fn readings_that_overlap_make_it_no_more_than_probable() {
        let mut state = open("", None);
        update(&mut state, Msg::Start(Start::Example(Example::Tern)));
        read(&mut state, 156.0);
        let mut said = |pressure_mm: [f64; 3]| {
            let trial = state.desk.notebook.in_hand_mut().unwrap();
            trial.measured.pressure.mm = pressure_mm.map(Some);
            assert!(state.take_readings());
            work_out(&mut state);
            region(&state, "strip")
        };
        let apart = said([150.0; 3]);
        assert!(apart.contains("Broadside. "), "{apart}");
        let overlap = said([150.0, 150.0, 156.0]);
        assert!(overlap.contains("Probably broadside. "), "{overlap}");
        state.place = Place::Why;
        let words = region(&state, "air-words");
        assert!(words.contains("Your readings overlap."), "{words}");
    }

    #[test]
    fn each_outcome_has_its_words() {
        for (example, name) in [
            (Example::Puffin, "self-righting"),
            (Example::Tern, "broadside"),
            (Example::Razorbill, "broadside"),
            (Example::Gannet, "self-righting"),
        ] {
            let mut state = open("", None);
            update(&mut state, Msg::Start(Start::Example(example)));
            let said = |state: &State| region(state, "strip").to_ascii_lowercase();
            // Nothing is said that is taken back once the readings have been tried.
            let strip = said(&state);
            assert!(strip.contains(&format!("{name}? ")), "{example:?}: {strip}");
            assert!(!strip.contains(&format!("{name}.")), "{example:?}: {strip}");
            work_out(&mut state);
            let strip = said(&state);
            assert!(strip.contains(&format!("{name}. ")), "{example:?}: {strip}");
            // It is not known how sure it is where that part did not come.
            update(&mut state, Msg::Resolution(Resolution::default()));
            state.parts = Loading::all(Code::Failed);
            assert!(said(&state).contains("probably"), "{example:?}: {}", said(&state));
        }
    }
}
