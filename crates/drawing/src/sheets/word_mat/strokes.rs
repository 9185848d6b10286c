//! What several pictures of the word mat share, as paths.

/// The rocket, upright.
pub const ROCKET: &str = "M25 18C25 10 28 5 32 3C36 5 39 10 39 18V44L36 50V60H28V50L25 44ZM25 18H39M25 44H39M28 50H36M25 27L13 39V50L25 43M39 27L51 39V50L39 43";
/// A fin by itself.
pub const BIG_FIN: &str = "M14 2V62M14 10L46 28V54L14 48";
/// A ruler.
pub const RULER: &str =
    "M3 40H61V54H3ZM9 40V47M17 40V45M25 40V47M33 40V45M41 40V47M49 40V45M57 40V47";
/// Air from above, as on the page.
pub const AIR: &str = "M8 3V13M5 10L8 13L11 10M56 3V13M53 10L56 13L59 10";
