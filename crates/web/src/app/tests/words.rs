//! What the form calls a measurement: plain words beside its picture, and those of the trade
//! for whoever learns them.

use super::*;
use noseward_lesson::Level;

const TRADE: [&str; 7] =
    ["root", "span", "sweep", "ogive", "ellipsoid", "paraboloid", "taper"];

/// What is read in the place Rocket: its markup without the tags.
fn read(state: &State) -> String {
    let markup: String =
        places::rocket::regions(state).into_iter().map(|region| region.markup).collect();
    let pieces = markup.split('<').map(|piece| piece.split_once('>').map_or("", |p| p.1));
    pieces.collect::<Vec<_>>().join(" ").to_lowercase()
}

#[test]
fn the_main_measurements_have_plain_words() {
    for example in Example::ALL {
        for level in [Level::Balance, Level::Measure] {
            let mut state = open("", Some(&example.design()));
            state.desk.notebook.level = level;
            let words = read(&state);
            for trade in TRADE {
                assert!(!words.contains(trade), "{trade} of {example:?} at {level:?}");
            }
            assert!(words.contains("out from the body"));
        }
    }
}

#[test]
fn the_words_of_the_trade_stand_beside_the_plain_ones() {
    let wanted = ["along the body", "(root)", "outer edge", "(tip)", "out from the body"];
    let more = ["(span)", "slants back by", "(sweep)", "egg (ellipsoid)", "arch (ogive)"];
    let mut all = open("", None);
    all.all_measurements = true;
    let mut older = open("", None);
    older.desk.notebook.level = Level::Explain;
    for state in [all, older] {
        let words = read(&state);
        for word in wanted.into_iter().chain(more) {
            assert!(words.contains(word), "{word} in {words}");
        }
    }
}

/// The short list is the beginning of the long one, so that a place in it means the same.
#[test]
fn a_nose_is_chosen_by_its_place_in_either_list() {
    let offered = |state: &State| -> usize {
        let regions = places::rocket::regions(state);
        let nose = regions.iter().find(|region| region.id == "card-/sections/0").unwrap();
        let (_, list) =
            nose.markup.split_once("data-choice=\"/sections/0/kind\"").unwrap();
        let (list, _) = list.split_once("</select>").unwrap();
        list.matches("<option").count()
    };
    let mut state = open("", None);
    let noses = SectionKind::ALL.iter().filter(|kind| kind.is_nose()).count();
    assert_eq!(offered(&state), noses);
    for (i, kind) in SectionKind::ALL.into_iter().enumerate().take(noses) {
        assert!(kind.is_nose(), "{kind:?}");
        let choice = Choice::Kind(0);
        update(&mut state, Msg::Chose { choice, value: i.to_string() });
        assert_eq!(state.design.sections[0].kind, kind);
    }
    state.all_measurements = true;
    assert_eq!(offered(&state), SectionKind::ALL.len());
}

/// What needs mending is named as it stands beside the field.
#[test]
fn a_fault_names_its_field_as_the_form_does() {
    let mut state = open("", None);
    let span = Field::Fins(0, FinField::Span);
    typed(&mut state, span, "x");
    assert_eq!(shell::faults::place(&state, span), "Fins, out from the body");
}

/// Letter for letter, what a sentence with marks in it becomes.
#[test]
fn marked_words_stand_in_their_elements() {
    let mut state = open("", None);
    let waiting = |state: &State| shell::waiting::state(state).into_string();
    state.parts = Loading::all(Code::Loading);
    assert_eq!(waiting(&state), "<p>Getting it out…</p>");
    state.parts = Loading::all(Code::Failed);
    assert_eq!(
        waiting(&state),
        "<p class=\"notice notice--alarm\" role=\"alert\">This part of the page could not be \
         loaded. What is kept has not changed. See that the network is there. \
         <button type=\"button\" class=\"button button--small\" \
         data-action=\"nb-again\">Try again</button></p>"
    );
    state.parts = Loading::all(Code::Here);

    notebook::predict(&mut state, 0, "because");
    state.desk.unsaved = false;
    let crash = &shell::crash::for_crash(&state)[0].markup;
    assert_eq!(
        crash,
        "<p>The notebook of <strong>Red 1</strong> was open: \
         <a download=\"noseward-notebook-red-1.txt\" data-key=\"noseward/notebook/0\">save it as a \
         file</a>. Open that file here later, if the notebook is not there any more.</p>\
         <div></div>"
    );
}

/// Letter for letter, the list over the drawing.
#[test]
fn faults_are_counted_and_named() {
    let mut state = open("", None);
    let list = |state: &State| shell::faults::list(state).into_string();
    assert_eq!(list(&state), "");
    typed(&mut state, Field::Fins(0, FinField::Span), "x");
    assert_eq!(
        list(&state),
        "<div class=\"faults\"><h3 class=\"faults__title\">One thing to mend</h3>\
         <ul class=\"faults__list\"><li><button type=\"button\" class=\"faults__go\" \
         id=\"go:/fins/0/planform/four_sided/span_mm\" data-action=\"go\" data-target=\"/fins/0/planform/four_sided/span_mm\">Fins, out \
         from the body</button>: I cannot read this. Type, for example, 120 or 12.5 or 12 \
         cm.</li></ul></div>"
    );
    typed(&mut state, Field::Section(0, SectionField::Length), "y");
    let two = list(&state);
    assert!(two.contains("title\">2 things to mend<span"), "{two}");
    assert_eq!(two.matches("<li>").count(), 2, "{two}");
}

/// Every field has a name, and no two fields of a card share one.
#[test]
fn fields_are_named_apart() {
    let design = Example::Razorbill.design();
    let state = open("", Some(&design));
    for (field, name) in [
        (Field::Name, "Rocket’s name"),
        (Field::Sections, "Body"),
        (Field::FinSets, "Fins"),
        (Field::Weights, "Weights"),
        (Field::TotalMass, "Measured"),
        (Field::Fins(0, FinField::Count), "Fins, how many"),
        (Field::Fins(0, FinField::Roll), "Fins, turned by"),
        (Field::Fins(0, FinField::Root), "Fins, along the body"),
        (Field::Fins(0, FinField::Tip), "Fins, outer edge"),
        (Field::Fins(0, FinField::Sweep), "Fins, slants back by"),
        (Field::Fins(0, FinField::Planform), "Fins, outline"),
        (Field::Fins(0, FinField::SheetDensity), "Fins, mass"),
    ] {
        assert_eq!(shell::faults::place(&state, field), name);
    }
}

/// A number in a sentence is written as the rest of the page writes numbers.
#[test]
fn numbers_are_written_the_same_everywhere() {
    use noseward_stability::{fixed, trimmed};

    let minus = |text: &str| text.replace('-', "−");
    use noseward_words::Number;
    for i in -3000..3000_i32 {
        for value in [f64::from(i) * 0.125, f64::from(i) * 0.013_7, f64::from(i) * 1e12] {
            for places in 0..4_u8 {
                let (as_fixed, as_trimmed) =
                    (fixed(value, places.into()), trimmed(value, places.into()));
                assert_eq!(Number::fixed(value, places).to_string(), minus(&as_fixed));
                assert_eq!(
                    Number::trimmed(value, places).to_string(),
                    minus(&as_trimmed)
                );
            }
        }
    }
}

/// Letter for letter, messages that have something of their own in them.
#[test]
fn messages_are_whole_sentences() {
    use link::Missing;
    let mut state = open("", None);
    let mut said = |notice: Notice, address: Option<&str>| {
        state.notice = Some(notice);
        state.address = address.map(Into::into);
        let all = shell::notice::notice(&state).into_string()
            + &shell::notice::passing(&state).into_string();
        let (_, words) = all.split_once("notice__words\">").unwrap();
        words.split_once("</div>").unwrap().0.to_owned()
    };
    let lost = vec![
        Missing::Sections(2),
        Missing::FinSets(1),
        Missing::Weights(1),
        Missing::Swings,
    ];
    for (notice, words) in [
        (
            Notice::LinkCut(lost),
            "<strong>This link was cut short.</strong> Missing: 2 body sections, 1 set of \
             fins, 1 weight, the swings. Check every number, or ask for the link again.",
        ),
        (
            Notice::LinkCut(Vec::new()),
            "<strong>This link was cut short.</strong> Its end is missing. Check every \
             number, or ask for the link again.",
        ),
        (
            Notice::Started("Tern".into()),
            "Tern is here. Undo brings the last rocket back.",
        ),
        (
            Notice::Saved("a.txt".into()),
            "Saved as <strong>a.txt</strong>, if this browser allows downloads. If no file \
             appears, copy the link instead.",
        ),
        (
            Notice::Copied { with_notebook: true },
            "Link copied. It holds the rocket and the notebook; on another computer paste \
             it where a link is opened.",
        ),
    ] {
        assert_eq!(said(notice, None), words);
    }
    assert_eq!(
        said(Notice::Copied { with_notebook: false }, Some("https://example.org/")),
        "Link copied. It holds the rocket; paste it anywhere."
    );
}

/// Letter for letter, the points below the drawing as they were measured.
#[test]
fn a_measured_point_says_how_far_readings_are_apart() {
    let mut state = open("", None);
    notebook::begin(&mut state);
    let readings = |state: &mut State, mm: [f64; 3]| {
        let trial = state.desk.notebook.in_hand_mut().unwrap();
        trial.measured.mass.mm = mm.map(Some);
        state.take_readings();
        shell::strip::strip(state).into_string()
    };
    let same = readings(&mut state, [160.0; 3]);
    let told = "centre of mass <strong>160 mm</strong> measured; 140 mm worked \
                out<strong>: they differ</strong>";
    assert!(same.contains(told), "{same}");
    let apart = readings(&mut state, [141.0, 143.0, 144.0]);
    let told = "centre of mass <strong>143 mm</strong> measured, 141 mm to 144 mm; 140 mm \
                worked out</span>";
    assert!(apart.contains(told), "{apart}");
}
