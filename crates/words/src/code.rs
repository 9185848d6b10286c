//! The codes of a compiled sentence: what `compile/` writes and [`say`](crate::say) reads.
//!
//! A sentence is its own text. What is not text is a control character, which no sentence
//! holds otherwise: the codes below [`SELECT`] stand for the arguments, the first being 1.
//!
//! ```text
//! SELECT argument (CASE key text)* OTHERWISE text END
//! mark text CLOSE
//! ```

/// Ends a string of a table.
pub(crate) const END_OF_STRING: u8 = 0;
/// The most arguments a sentence can have: codes 1 to 15.
pub(crate) const MOST_ARGUMENTS: u8 = 15;
/// Begins a choice between texts, by the argument whose code follows.
pub(crate) const SELECT: u8 = 0x10;
/// Begins one of the texts; its key follows.
pub(crate) const CASE: u8 = 0x11;
/// Begins the text that is left when no key fits. It is the last.
pub(crate) const OTHERWISE: u8 = 0x12;
/// Ends a choice.
pub(crate) const END: u8 = 0x13;
/// Ends a marked run.
pub(crate) const CLOSE: u8 = 0x15;
/// Begins a run with the first [`Mark`](crate::Mark); the others follow up to 0x1F.
pub(crate) const FIRST_MARK: u8 = 0x16;
/// The least byte that is text.
pub(crate) const TEXT: u8 = 0x20;

/// The key of the first plural category.
pub(crate) const FIRST_CATEGORY: u8 = 0x20;
/// The key of the number 0 itself, or of the first of an argument's own choices; those up to
/// [`MOST_EXACT`] follow.
pub(crate) const FIRST_EXACT: u8 = 0x30;
/// What is no key.
pub(crate) const NO_KEY: u8 = 0;
/// The largest number that can be a key.
pub(crate) const MOST_EXACT: u8 = 0x7E - FIRST_EXACT;

/// The plural category “one” of CLDR, by its place in zero, one, two, few, many, other.
pub(crate) const ONE: u8 = 1;
/// The plural category “other”, which every language has.
pub(crate) const OTHER: u8 = 5;

/// What stands before the strings of a table.
pub(crate) const MAGIC: [u8; 4] = *b"NWT\x01";
/// Bytes before the strings: [`MAGIC`], what the sentences are, a sum of all that follows.
pub(crate) const HEADER: usize = 12;
/// What a table holds behind its sentences, in this order.
pub(crate) const TAG: usize = 0;
/// The plural categories: see [`plural_slot`].
pub(crate) const PLURALS: usize = 1;
/// What stands round text from elsewhere.
pub(crate) const OPEN_ISOLATE: usize = 2;
/// Its other end.
pub(crate) const CLOSE_ISOLATE: usize = 3;
/// Minus sign, decimal mark and zero of the digits 0 to 9; those of the language's own
/// digits follow.
pub(crate) const SYMBOLS: usize = 4;
/// How many strings that is.
pub(crate) const EXTRAS: usize = 10;

/// Where the plural table of a language has the category of a number, by its whole part and
/// what stands behind the decimal mark: nothing, zeros, or more than zeros.
///
/// Numbers from 100 on go by their last two digits: the rules of CLDR tell no more of
/// numbers up to 100,000, which the build checks for each language.
pub(crate) fn plural_slot(whole: u64, has_decimals: bool, part: u64) -> usize {
    let kind = match (has_decimals, part) {
        (false, _) => 0,
        (true, 0) => 200,
        (true, _) => 400,
    };
    let last = (whole % 100) as u8;
    kind + usize::from(last) + if whole < 100 { 0 } else { 100 }
}

/// A sum that tells changed bytes from what was written. FNV-1a: Fowler, Noll, Vo and
/// Eastlake, RFC 9923, with its 32-bit prime and offset.
pub(crate) fn sum(bytes: &[u8]) -> u32 {
    bytes
        .iter()
        .fold(0x811C_9DC5, |sum, byte| (sum ^ u32::from(*byte)).wrapping_mul(0x0100_0193))
}
