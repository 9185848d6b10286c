//! The pictures of the word mat: one rocket in fine lines, and over it what the word is about.
//! Shapes tell the marks apart as everywhere on the page: the centre of mass is a solid triangle,
//! the air an arrow. They hold no words, and stay as they are in every language.
//!
//! A picture is a text, which is less to load than a list: pieces with `;` between, each a letter
//! and what belongs to it.
//!
//! | letter | piece | |
//! |---|---|---|
//! | `r` | the rocket | where it is, as `transform` has it |
//! | `b` | a fin by itself on the side of the body, large | |
//! | `s` | a ruler | |
//! | `v` | air from above | |
//! | `f` | fine lines | a path |
//! | `a` | what the word is about: an area | a path |
//! | `l` | the same: a bold line | a path |
//! | `m` | what is heavy | a path |
//! | `w` | air, or a distance | a path |
//! | `d` | readings, as dots | a path |

use maud::{Markup, html};
use noseward_drawing::sheets::strokes::{AIR, BIG_FIN, ROCKET, RULER};

pub(super) const NOSE: &str = "r;aM25 18C25 10 28 5 32 3C36 5 39 10 39 18Z";
pub(super) const TUBE: &str = "r;aM25 18H39V44H25Z";
pub(super) const TAPER: &str = "r;aM25 44H39L36 50H28Z";
pub(super) const NECK: &str = "r;aM28 50H36V60H28Z";
pub(super) const WIDTH: &str = "r;wM25 22H39M25 18V26M39 18V26";
pub(super) const BALLAST: &str = "r;mM28 16C26 10 29 8 32 8S38 10 36 16Z";
pub(super) const FIN: &str = "r;aM25 27L13 39V50L25 43ZM39 27L51 39V50L39 43Z";
pub(super) const ROOT: &str = "b;lM14 10V48";
pub(super) const TIP: &str = "b;lM46 28V54";
pub(super) const SPAN: &str = "b;wM14 38H46M14 33V43M46 33V43";
pub(super) const SWEEP: &str = "b;fM18 10H52M49 28H52;wM56 10V28M51 10H61M51 28H61";
pub(super) const MASS: &str = "r;mM32 23L18 16V30Z";
pub(super) const SIDE_ON: &str =
    "r;wM61 33H34M40 27L33 33L40 39;fM61 12H49M61 19H49M61 55H49M61 60H49";
pub(super) const NOSE_ON: &str = "r;wM61 37H34M40 31L33 37L40 43;fM46 2L44 14M53 2L51 14M60 2L58 14M18 2L16 14M11 2L9 14";
pub(super) const SEPARATION: &str =
    "r;mM32 22L20 16V28Z;wM61 40H34M40 34L33 40L40 46;lM10 22H5V40H10";
pub(super) const CUT_OUT: &str = "fM32 3H38V61H32Z;aM3 32C7 27 11 25 19 25H30L40 13H51L45 25L52 29H60V35H52L45 39L51 51H40L30 39H19C11 39 7 37 3 32Z";
pub(super) const ANGLE: &str = "rtranslate(16 59)rotate(40)scale(.8)translate(-32-60);fM16 59V16;wM16 2V14M11 9L16 14L21 9;lM16 23A36 36 0 0 1 34.5 28.1";
pub(super) const SWING_TEST: &str =
    "fM33 7A25.5 25.5 0 1 0 39 54;lM27 31H52;dM27 31h0;rtranslate(33 13)scale(.6)";
pub(super) const RIGHTING: &str = "v;rrotate(60 32 38)translate(8 14)scale(.75);lM52 24A26 26 0 0 0 33 12M38 8L32 12L37 17";
pub(super) const BROADSIDE: &str = "wM14 3V16M10 12L14 16L18 12M32 3V16M28 12L32 16L36 12M50 3V16M46 12L50 16L54 12;rrotate(-90 32 32)translate(-6)";
pub(super) const SWAPS_ENDS: &str = "v;rrotate(180 32 32)translate(8 4)scale(.75);lM48 18A22 22 0 0 1 48 56M54 55L47 57L49 50";
pub(super) const FAIR_TEST: &str = "rtranslate(-5 6)scale(.7);rtranslate(24 6)scale(.7);mM43.5 17C42 13 44 11.5 46.4 11.5S51 13 49.3 17Z";
pub(super) const VARIABLE: &str = "mM4 40a5 5 0 1 0 10 0a5 5 0 1 0-10 0M19 36a8 8 0 1 0 16 0a8 8 0 1 0-16 0M39 32a11 11 0 1 0 22 0a11 11 0 1 0-22 0;lM6 55H58M52 50L58 55L52 60M12 50L6 55L12 60";
pub(super) const PREDICTION: &str =
    "lM6 5H58V46H30L18 59V46H6Z;rrotate(25 32 26)translate(14 7)scale(.56)";
pub(super) const READING: &str = "s;lM33 8V34M27 28L33 35L39 28";
pub(super) const REPEAT: &str = "fM14 27H50V37H14ZM20 27V32M26 27V31M32 27V32M38 27V31M44 27V32;lM54 20A25 25 0 0 0 10 20M54 44A25 25 0 0 1 10 44M9 12L10 21L18 18M55 52L54 43L46 46";
pub(super) const MIDDLE: &str = "s;dM13 30h0M29 30h0M55 30h0;lM29 5V18M23 13L29 19L35 13";
pub(super) const RANGE: &str = "s;dM13 30h0M29 30h0M55 30h0;lM13 20V14H55V20";
pub(super) const UNCERTAINTY: &str = "s;dM33 26h0;lM15 26H51M15 18V34M51 18V34";
pub(super) const EVIDENCE: &str =
    "fM8 4V56H60M8 48L56 10;dM17 44h0M25 32h0M34 30h0M42 18h0M52 16h0";

/// A picture. The words beside it say what it shows.
pub(super) fn picture(pieces: &str) -> Markup {
    html! {
        svg class="word__picture" viewBox="0 0 64 64" aria-hidden="true" {
            @for piece in pieces.split(';') {
                @let (letter, rest) = piece.split_at(1);
                @let (look, path) = match letter {
                    "r" => ("f", ROCKET),
                    "b" => ("f", BIG_FIN),
                    "s" => ("f", RULER),
                    "v" => ("w", AIR),
                    look => (look, rest),
                };
                path class={ "word__" (look) } d=(path)
                    transform=[Some(rest).filter(|_| letter == "r")] {}
            }
        }
    }
}
