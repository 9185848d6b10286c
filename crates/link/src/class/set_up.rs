//! How a lesson is set up, as a link, and as a code to be typed.

use noseward_lesson::{Group, SetUp};

use crate::code::{self, rows, symbols};
use crate::error::{At, LinkError, LinkErrorKind};
use crate::frame::{self, VERSION};
use crate::link::{HASH_CHARS, open_bytes, spell};
use crate::payload::set_up;

/// Kind and version, as the checksum covers them.
const MARK: [u8; 2] = [b's', VERSION];
/// `S`, in front of the version.
pub(crate) const KIND: u8 = 25;
/// Characters of a link to a set-up with its `#`, at most: with an address of sixty they are
/// six hundred.
pub const SET_UP_HASH_CHARS: usize = 540;
/// Bytes that a code stands for, at most.
const MOST_BYTES: usize = HASH_CHARS / 4 * 3;

/// How a lesson is set up, and for which group; none where its label is still to be chosen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SetUpLink {
    /// The set-up.
    pub set_up: SetUp,
    /// The group.
    pub group: Option<Group>,
}

impl SetUpLink {
    fn bytes(&self) -> Vec<u8> {
        let set_up = self.set_up.clone().rounded();
        frame::framed(MARK, &set_up::write(&Self { set_up, group: self.group }))
    }
}

/// The text for a link to a set-up, without the `#`; `None` where that would be longer than
/// [`SET_UP_HASH_CHARS`]: its rocket has too many parts.
#[must_use]
pub fn set_up_hash(link: &SetUpLink) -> Option<String> {
    let text = spell('s', &link.bytes());
    (text.len() + "#".len() <= SET_UP_HASH_CHARS).then_some(text)
}

/// A set-up as a notebook keeps it, without rocket and group.
#[must_use]
pub fn set_up_text(set_up: &SetUp) -> String {
    let link = SetUpLink { set_up: set_up.without_rocket(), group: None };
    spell('s', &link.bytes())
}

/// The code for a set-up, in rows as that of a rocket.
#[must_use]
pub fn set_up_code(link: &SetUpLink) -> String {
    let mut data = vec![KIND, VERSION];
    data.extend(symbols::pack(&link.bytes()));
    rows(&data)
}

/// Opens a link to a set-up, and no code: what reads codes would come along with every
/// notebook.
pub(crate) fn open_link(text: &str) -> Result<SetUpLink, LinkErrorKind> {
    let bytes = open_bytes(MARK[0], text, HASH_CHARS).ok_or(LinkErrorKind::Nothing)??;
    set_up::read(frame::unframed(MARK, &bytes)?)
}

/// Opens a link to a set-up, or its code.
///
/// # Errors
///
/// [`LinkError`]; of a code most name the row.
pub fn open_set_up(text: &str) -> Result<SetUpLink, LinkError> {
    match open_link(text) {
        Err(LinkErrorKind::Nothing) => {
            let opened = of_code(text)
                .and_then(|bytes| set_up::read(frame::unframed(MARK, &bytes)?));
            opened.map_err(|kind| kind.at(At::Code))
        }
        opened => opened.map_err(|kind| kind.at(At::Link)),
    }
}

fn of_code(text: &str) -> Result<Vec<u8>, LinkErrorKind> {
    let data = code::read(KIND, text, |front| {
        let bytes =
            frame::announced(&symbols::unpack(front)).ok_or(LinkErrorKind::Changed)?;
        if bytes > MOST_BYTES {
            return Err(LinkErrorKind::TooLarge { bytes });
        }
        Ok(symbols::count(bytes))
    })?;
    Ok(symbols::unpack(&data))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::payload::tail;
    use crate::{Any, looks_like_notebook, may_be_more, open_any, pieces};
    use noseward_lesson::{
        Changeables, ClassQuestion, Colour, Labels, LessonPlaces, Level, OWN_CHARS,
        RuleLimits, Support, Telling,
    };
    use noseward_stability::{BottleSize, Example, Planform, UnitSystem};
    use proptest::prelude::*;
    use proptest::sample::select;

    fn questions() -> impl Strategy<Value = ClassQuestion> {
        let own = "[a-zäÄ?ع ]{0,80}".prop_map(|text| {
            let set_up = SetUp { question: ClassQuestion::Own(text), ..SetUp::default() };
            set_up.rounded().question
        });
        prop_oneof![select(ClassQuestion::MENU.to_vec()), own]
    }

    fn limits() -> impl Strategy<Value = RuleLimits> {
        (prop::option::of(0..2000_u16), 30..=300_u16, 6..=60_u16).prop_map(
            |(added, string, turns)| RuleLimits {
                added_g: added.map(|steps| f64::from(steps) / 10.0),
                string_m: f64::from(string) / 100.0,
                turns_per_s: f64::from(turns) / 20.0,
            },
        )
    }

    prop_compose! {
        fn set_ups()(
            (groups, group_size) in (1..=40_u8, 1..=6_u8),
            labels in prop_oneof![
                Just(Labels::Colours),
                select(Colour::ALL.to_vec()).prop_map(Labels::Numbers),
            ],
            language in select(vec!["", "en", "de", "ar-u-nu-arab", "en-plain"]),
            level in select(Level::ALL.to_vec()),
            units in select(vec![UnitSystem::Metric, UnitSystem::Inch]),
            question in questions(),
            changeable in (0..=Changeables::ALL.bits()).prop_map(Changeables::new),
            limits in limits(),
            allows_two_changes in any::<bool>(),
            telling in select(Telling::ALL.to_vec()),
            support in select(Support::ALL.to_vec()),
            places in (1..=511_u16).prop_map(LessonPlaces::new),
            hall in prop::option::of(0..1000_u16),
            rocket in prop::option::of(select(Example::ALL.to_vec())),
        ) -> SetUp {
            SetUp {
                pupils: groups * group_size, group_size, labels, language: language.into(), level, units, question,
                changeable: changeable.unwrap(),
                limits, allows_two_changes, telling, support,
                places: places.unwrap_or_default(),
                hall_m: hall.map(|steps| f64::from(steps) / 10.0),
                rocket: rocket.map(|example| example.design().rounded()),
            }
        }
    }

    proptest! {
        #[test]
        fn a_link_and_a_code_bring_it_back(
            set_up in set_ups(), number in prop::option::of(1..=40_u8),
        ) {
            let group = number.and_then(|n| Group::new(Colour::Gold, n));
            let link = SetUpLink { set_up, group };
            let hash = set_up_hash(&link).expect("it is short enough");
            prop_assert!(hash.starts_with("s1."));
            let code = set_up_code(&link);
            prop_assert!(code.starts_with("S1"));
            for text in [hash.clone(), format!("#{hash}"), code.clone(), code.to_lowercase(),
                format!("Dear groups,\nhttps://x.test/#{hash}\nyours")] {
                prop_assert!(looks_like_notebook(&text) && may_be_more(&text), "{}", text);
                let opened = open_any(&text);
                prop_assert_eq!(opened, Ok(Any::SetUp(Box::new(link.clone()))), "{}", text);
            }
            prop_assert_eq!(pieces(&format!("{hash}\n{code}")).len(), 2);
        }
    }

    #[test]
    fn the_longest_of_an_ordinary_lesson_is_short_enough() {
        let own = "\u{623}".repeat(OWN_CHARS);
        let rockets = Example::ALL.map(Example::design).into_iter();
        for rocket in rockets.chain(BottleSize::ALL.map(BottleSize::design)) {
            let set_up = SetUp {
                question: ClassQuestion::Own(own.clone()),
                language: "ar-u-nu-arab".into(),
                rocket: Some(rocket),
                ..SetUp::default()
            };
            let group = Group::new(Colour::Red, 1);
            assert!(set_up_hash(&SetUpLink { set_up, group }).is_some());
        }
    }

    #[test]
    fn a_rocket_of_too_many_parts_is_refused() {
        let mut rocket = Example::Puffin.design();
        let corners = (0..24_u8).map(|i| [f64::from(i), f64::from(i % 2)]).collect();
        rocket.fins[0].planform = Planform::PointsMm(corners);
        rocket.fins = vec![rocket.fins[0].clone(); 4];
        let mut link = SetUpLink::default();
        link.set_up.rocket = Some(rocket);
        assert_eq!(set_up_hash(&link), None);
        let kept = set_up_text(&link.set_up);
        assert!(kept.len() < 120, "a notebook keeps it without: {kept}");
    }

    #[test]
    fn what_is_wrong_is_told() {
        let link = SetUpLink::default();
        let hash = set_up_hash(&link).unwrap();
        let kind = |text: &str| open_set_up(text).map_err(|error| error.kind);
        assert_eq!(kind(&hash[..hash.len() - 8]), Err(LinkErrorKind::CutShort));
        let newer = hash.replacen("s1.", "s2.", 1);
        assert_eq!(kind(&newer), Err(LinkErrorKind::Newer { version: 2 }));
        let code = set_up_code(&link);
        let wrong = code.replacen("S1", "S1*", 1);
        let character = LinkErrorKind::Character { row: 1, character: '*' };
        assert_eq!(kind(&wrong), Err(character));
        let payload = set_up::write(&link);
        let framed = |payload: &[u8]| kind(&spell('s', &frame::framed(MARK, payload)));
        assert_eq!(framed(&payload), Ok(link.clone()));
        for end in 0..payload.len() {
            assert_eq!(framed(&payload[..end]), Err(LinkErrorKind::Changed), "{end}");
        }
        // What comes later stands behind, and is passed over.
        let mut later = payload.clone();
        later[0] |= 1 << 6;
        later.extend(tail(&[(false, "later", b"x")]));
        assert_eq!(framed(&later), Ok(link));
        for text in ["S1 was a good lesson.", "Slip", "S1", "Silver 1", "s1.x", "Sleeves"]
        {
            assert!(!looks_like_notebook(text), "{text}");
        }
    }

    /// They hang on walls and stand in notebooks.
    #[test]
    fn links_once_written_open() {
        let once = "s1.HOuO8BIBHgMAAQACABD_A0wRAAADAAA";
        assert_eq!(set_up_hash(&SetUpLink::default()).as_deref(), Some(once));
        assert_eq!(open_set_up(once), Ok(SetUpLink::default()));
    }
}
