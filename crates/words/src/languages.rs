//! The languages, and what is known of each.

/// A language, or a register or variety of one.
#[derive(Debug, PartialEq, Eq)]
pub struct Language {
    /// What the page calls it: the folder of its sentences, its table, a setting.
    pub key: &'static str,
    /// Its BCP 47 tag, for the attribute `lang`.
    pub tag: &'static str,
    /// Its own name for itself.
    pub name: &'static str,
    /// The direction it is written in, for the attribute `dir`.
    pub dir: &'static str,
    /// Where its sentences come from.
    pub kind: Kind,
    /// Whether it was translated or reworded, and nobody who teaches in it has read every
    /// sentence yet: the page says so.
    pub awaits_a_teacher: bool,
    /// The CLDR numbering system of its own digits, where they are not 0 to 9. They are
    /// shown only when asked for.
    pub own_digits: Option<&'static str>,
}

/// Where the sentences of a language come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// English: in the code itself.
    BuiltIn,
    /// From a table, which holds every one.
    Full,
    /// From a table where it says something else than English.
    OverEnglish,
    /// Made from English by the build, to see what longer words and other letters do.
    Pseudo,
}

/// Every language. The first is the one that is built in.
pub const LANGUAGES: [Language; 6] = [
    Language {
        key: "en",
        tag: "en-GB",
        name: "English",
        dir: "ltr",
        kind: Kind::BuiltIn,
        awaits_a_teacher: false,
        own_digits: None,
    },
    Language {
        key: "en-plain",
        // “simple” is the subtag that IANA's registry has for it.
        tag: "en-GB-simple",
        name: "English in plain words",
        dir: "ltr",
        kind: Kind::OverEnglish,
        awaits_a_teacher: true,
        own_digits: None,
    },
    Language {
        key: "en-US",
        tag: "en-US",
        name: "English (United States)",
        dir: "ltr",
        kind: Kind::OverEnglish,
        awaits_a_teacher: true,
        own_digits: None,
    },
    Language {
        key: "de",
        tag: "de",
        name: "Deutsch",
        dir: "ltr",
        kind: Kind::Full,
        awaits_a_teacher: true,
        own_digits: None,
    },
    Language {
        key: "ar",
        tag: "ar",
        name: "العربية",
        dir: "rtl",
        kind: Kind::Full,
        awaits_a_teacher: true,
        own_digits: Some("arab"),
    },
    Language {
        key: "en-XA",
        // XA is for private use: nobody's country.
        tag: "en-XA",
        name: "Ɓíğ Ëñĝļíšħ",
        dir: "ltr",
        kind: Kind::Pseudo,
        awaits_a_teacher: true,
        own_digits: None,
    },
];
