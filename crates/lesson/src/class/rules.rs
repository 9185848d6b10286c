//! The rules that results were made under, as a short code.

/// Bits of a [`RulesCode`].
pub const RULES_BITS: u32 = 20;

/// A check over the rules of a lesson: results of two codes are not compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct RulesCode(u32);

impl RulesCode {
    /// The code with this value; `None` unless it is below 2^[`RULES_BITS`].
    #[must_use]
    pub fn new(value: u32) -> Option<Self> {
        (value >> RULES_BITS == 0).then_some(Self(value))
    }

    /// The lower bits of a checksum as a code.
    #[must_use]
    pub fn of_checksum(checksum: u32) -> Self {
        Self(checksum & ((1 << RULES_BITS) - 1))
    }

    /// Its value, below 2^[`RULES_BITS`].
    #[must_use]
    pub fn value(self) -> u32 {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_has_twenty_bits() {
        assert_eq!(RulesCode::new(0xf_ffff).map(RulesCode::value), Some(0xf_ffff));
        assert_eq!(RulesCode::new(0x10_0000), None);
        assert_eq!(RulesCode::of_checksum(0xabc1_2345).value(), 0x1_2345);
    }
}
