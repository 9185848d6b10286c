//! The pictures of the word mat: one rocket in fine lines, and over it what the word is about.
//! Shapes tell the marks apart as everywhere on the page: the centre of mass is a solid triangle,
//! the air an arrow. They hold no words, and stay as they are in every language.

use maud::{Markup, html};

/// How a line of a picture looks, by its class in the style sheet.
#[derive(Clone, Copy, Debug)]
pub(super) enum Look {
    /// A fine line.
    Fine,
    /// What the word is about: an area, and a bold line.
    Area,
    Line,
    /// What is heavy, filled.
    Mass,
    /// The air, and distances.
    Wind,
    /// Readings, as dots.
    Dots,
}

/// A piece of a picture: a path, or the rocket, put somewhere else.
pub(super) type Piece = (Look, &'static str, &'static str);

/// The rocket, upright.
const ROCKET: &str = "M25 18C25 10 28 5 32 3C36 5 39 10 39 18V44L36 50V60H28V50L25 44ZM25 18H39M25 \
    44H39M28 50H36M25 27L13 39V50L25 43M39 27L51 39V50L39 43";
const HERE: Piece = (Look::Fine, ROCKET, "");
/// A fin by itself on the side of the body, large.
const BIG_FIN: Piece = (Look::Fine, "M14 2V62M14 10L46 28V54L14 48", "");
/// A ruler.
const RULER: Piece = (
    Look::Fine,
    "M3 40H61V54H3ZM9 40V47M17 40V45M25 40V47M33 40V45M41 40V47M49 40V45M57 40V47",
    "",
);
/// Air from above.
const WIND: Piece = (Look::Wind, "M8 3V13M5 10L8 13L11 10M56 3V13M53 10L56 13L59 10", "");

const fn area(path: &'static str) -> Piece {
    (Look::Area, path, "")
}

const fn line(path: &'static str) -> Piece {
    (Look::Line, path, "")
}

const fn fine(path: &'static str) -> Piece {
    (Look::Fine, path, "")
}

const fn mass(path: &'static str) -> Piece {
    (Look::Mass, path, "")
}

const fn wind(path: &'static str) -> Piece {
    (Look::Wind, path, "")
}

const fn dots(path: &'static str) -> Piece {
    (Look::Dots, path, "")
}

/// The rocket somewhere else, as `transform` has it.
const fn rocket(transform: &'static str) -> Piece {
    (Look::Fine, ROCKET, transform)
}

pub(super) const NOSE: &[Piece] =
    &[HERE, area("M25 18C25 10 28 5 32 3C36 5 39 10 39 18Z")];
pub(super) const TUBE: &[Piece] = &[HERE, area("M25 18H39V44H25Z")];
pub(super) const TAPER: &[Piece] = &[HERE, area("M25 44H39L36 50H28Z")];
pub(super) const NECK: &[Piece] = &[HERE, area("M28 50H36V60H28Z")];
pub(super) const WIDTH: &[Piece] = &[HERE, wind("M25 22H39M25 18V26M39 18V26")];
pub(super) const BALLAST: &[Piece] = &[HERE, mass("M28 16C26 10 29 8 32 8S38 10 36 16Z")];
pub(super) const FIN: &[Piece] =
    &[HERE, area("M25 27L13 39V50L25 43ZM39 27L51 39V50L39 43Z")];
pub(super) const ROOT: &[Piece] = &[BIG_FIN, line("M14 10V48")];
pub(super) const TIP: &[Piece] = &[BIG_FIN, line("M46 28V54")];
pub(super) const SPAN: &[Piece] = &[BIG_FIN, wind("M14 38H46M14 33V43M46 33V43")];
pub(super) const SWEEP: &[Piece] =
    &[BIG_FIN, fine("M18 10H52M49 28H52"), wind("M56 10V28M51 10H61M51 28H61")];

pub(super) const MASS: &[Piece] = &[HERE, mass("M32 23L18 16V30Z")];
pub(super) const SIDE_ON: &[Piece] = &[
    HERE,
    wind("M61 33H34M40 27L33 33L40 39"),
    fine("M61 12H49M61 19H49M61 55H49M61 60H49"),
];
pub(super) const NOSE_ON: &[Piece] = &[
    HERE,
    wind("M61 37H34M40 31L33 37L40 43"),
    fine("M46 2L44 14M53 2L51 14M60 2L58 14M18 2L16 14M11 2L9 14"),
];
pub(super) const SEPARATION: &[Piece] = &[
    HERE,
    mass("M32 22L20 16V28Z"),
    wind("M61 40H34M40 34L33 40L40 46"),
    line("M10 22H5V40H10"),
];
pub(super) const CUT_OUT: &[Piece] = &[
    fine("M32 3H38V61H32Z"),
    area(
        "M3 32C7 27 11 25 19 25H30L40 13H51L45 25L52 29H60V35H52L45 39L51 51H40L30 39H19C11 39 7 37 3 32Z",
    ),
];
pub(super) const ANGLE: &[Piece] = &[
    rocket("translate(16 59)rotate(40)scale(.8)translate(-32-60)"),
    fine("M16 59V16"),
    wind("M16 2V14M11 9L16 14L21 9"),
    line("M16 23A36 36 0 0 1 34.5 28.1"),
];

pub(super) const SWING_TEST: &[Piece] = &[
    (Look::Fine, "M33 7A25.5 25.5 0 1 0 39 54", ""),
    line("M27 31H52"),
    dots("M27 31h0"),
    rocket("translate(33 13)scale(.6)"),
];
pub(super) const RIGHTING: &[Piece] = &[
    WIND,
    rocket("rotate(60 32 38)translate(8 14)scale(.75)"),
    line("M52 24A26 26 0 0 0 33 12M38 8L32 12L37 17"),
];
pub(super) const BROADSIDE: &[Piece] = &[
    wind(
        "M14 3V16M10 12L14 16L18 12M32 3V16M28 12L32 16L36 12M50 3V16M46 12L50 16L54 12",
    ),
    rocket("rotate(-90 32 32)translate(-6)"),
];
pub(super) const SWAPS_ENDS: &[Piece] = &[
    WIND,
    rocket("rotate(180 32 32)translate(8 4)scale(.75)"),
    line("M48 18A22 22 0 0 1 48 56M54 55L47 57L49 50"),
];

pub(super) const FAIR_TEST: &[Piece] = &[
    rocket("translate(-5 6)scale(.7)"),
    rocket("translate(24 6)scale(.7)"),
    mass("M43.5 17C42 13 44 11.5 46.4 11.5S51 13 49.3 17Z"),
];
pub(super) const VARIABLE: &[Piece] = &[
    mass(
        "M4 40a5 5 0 1 0 10 0a5 5 0 1 0-10 0M19 36a8 8 0 1 0 16 0a8 8 0 1 0-16 0M39 32a11 11 0 1 0 22 0a11 11 0 1 0-22 0",
    ),
    line("M6 55H58M52 50L58 55L52 60M12 50L6 55L12 60"),
];
pub(super) const PREDICTION: &[Piece] = &[
    line("M6 5H58V46H30L18 59V46H6Z"),
    rocket("rotate(25 32 26)translate(14 7)scale(.56)"),
];
pub(super) const READING: &[Piece] = &[RULER, line("M33 8V34M27 28L33 35L39 28")];
pub(super) const REPEAT: &[Piece] = &[
    (Look::Fine, "M14 27H50V37H14ZM20 27V32M26 27V31M32 27V32M38 27V31M44 27V32", ""),
    line(
        "M54 20A25 25 0 0 0 10 20M54 44A25 25 0 0 1 10 44M9 12L10 21L18 18M55 52L54 43L46 46",
    ),
];
pub(super) const MIDDLE: &[Piece] =
    &[RULER, dots("M13 30h0M29 30h0M55 30h0"), line("M29 5V18M23 13L29 19L35 13")];
pub(super) const RANGE: &[Piece] =
    &[RULER, dots("M13 30h0M29 30h0M55 30h0"), line("M13 20V14H55V20")];
pub(super) const UNCERTAINTY: &[Piece] =
    &[RULER, dots("M33 26h0"), line("M15 26H51M15 18V34M51 18V34")];
pub(super) const EVIDENCE: &[Piece] =
    &[fine("M8 4V56H60M8 48L56 10"), dots("M17 44h0M25 32h0M34 30h0M42 18h0M52 16h0")];

/// A picture. The words beside it say what it shows.
pub(super) fn picture(pieces: &[Piece]) -> Markup {
    html! {
        svg class="word__picture" viewBox="0 0 64 64" aria-hidden="true" {
            @for (look, path, transform) in pieces {
                path class=(class(*look)) d=(path) transform=[Some(transform).filter(|t| !t.is_empty())] {}
            }
        }
    }
}

fn class(look: Look) -> &'static str {
    match look {
        Look::Fine => "word__fine",
        Look::Area => "word__area",
        Look::Line => "word__line",
        Look::Mass => "word__mass",
        Look::Wind => "word__wind",
        Look::Dots => "word__dots",
    }
}
