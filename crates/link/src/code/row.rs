//! The check symbol at the end of each row.
//!
//! A row is a word of a Reed-Solomon code over the field of 32 elements with one check
//! symbol: `r xⁿ + s₁ xⁿ⁻¹ + … + sₙ`, where `r` is the row's number and `sₙ` the check
//! symbol, is zero at the primitive element α. Every wrong symbol and every swap of two
//! different symbols of a row makes it another value, for no two powers of α up to the
//! thirtieth are equal.
//!
//! Source: Reed and Solomon, "Polynomial codes over certain finite fields", Journal of
//! the Society for Industrial and Applied Mathematics 8 (1960), 300–304,
//! doi:10.1137/0108018. The field is that of the polynomial `x⁵ + x² + 1`, and α is `x`.

use super::symbols::Slot;

/// Symbols of a row, its check symbol included.
pub(crate) const ROW: usize = 20;

const POLYNOMIAL: u8 = 0b10_0101;

/// The symbol that makes a row right. Rows count from 1.
pub(crate) fn check_symbol(row: usize, data: &[u8]) -> u8 {
    times_alpha(data.iter().fold(start(row), |sum, &symbol| times_alpha(sum) ^ symbol))
}

/// Whether a row holds symbols only, and its check symbol agrees.
pub(crate) fn is_right(row: usize, slots: &[Slot]) -> bool {
    let sum = slots
        .iter()
        .try_fold(start(row), |sum, slot| slot.map(|symbol| times_alpha(sum) ^ symbol));
    sum == Ok(0)
}

fn start(row: usize) -> u8 {
    u8::try_from(row % 32).expect("less than 32")
}

fn times_alpha(symbol: u8) -> u8 {
    let twice = symbol << 1;
    if twice < 32 { twice } else { twice ^ POLYNOMIAL }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn alpha_is_primitive() {
        let mut power = 1;
        for exponent in 1..=31 {
            power = times_alpha(power);
            assert_eq!(power == 1, exponent == 31, "{exponent}");
        }
    }

    #[test]
    fn a_row_of_another_number_is_wrong() {
        let data: Vec<u8> = (3..22).collect();
        let row: Vec<Slot> =
            data.iter().copied().chain([check_symbol(7, &data)]).map(Ok).collect();
        for number in (1..=38).filter(|&number| number != 7) {
            assert!(!is_right(number, &row), "{number}");
        }
        assert!(is_right(7, &row));
        // The field has 32 elements: that is what the checksum of the whole is for.
        assert!(is_right(7 + 32, &row));
    }

    #[test]
    fn every_swap_within_a_row_is_seen() {
        let data: Vec<u8> = (3..22).collect();
        let row: Vec<Slot> =
            data.iter().copied().chain([check_symbol(7, &data)]).map(Ok).collect();
        for i in 0..ROW {
            for j in (0..i).filter(|&j| row[j] != row[i]) {
                let mut swapped = row.clone();
                swapped.swap(i, j);
                assert!(!is_right(7, &swapped), "{i} {j}");
            }
        }
    }
}
