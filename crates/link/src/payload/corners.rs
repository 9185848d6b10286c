//! The corners of an own outline, 3½ bytes each.

use super::numbers::{PER_MM, steps};

/// Bits of one coordinate.
const BITS: u32 = 14;
const MASK: u32 = (1 << BITS) - 1;
const MOST: i32 = 8191;
const NOT_A_NUMBER: i32 = -8192;
/// Groups of four bits in a corner.
const NIBBLES: usize = 7;

pub(super) fn pack(corners_mm: &[[f64; 2]]) -> Vec<u8> {
    let nibbles: Vec<u8> = corners_mm
        .iter()
        .flat_map(|&[along, out]| {
            let bits = pack_one(along) | pack_one(out) << BITS;
            (0..NIBBLES).map(move |i| ((bits >> (4 * i)) & 0xf) as u8)
        })
        .collect();
    nibbles
        .chunks(2)
        .map(|pair| pair[0] | pair.get(1).map_or(0, |high| high << 4))
        .collect()
}

/// The corners in millimetres; `None` for a number of bytes that no more than `most`
/// corners give.
pub(super) fn unpack(bytes: &[u8], most: usize) -> Option<Vec<[f64; 2]>> {
    let count = bytes.len() * 2 / NIBBLES;
    if count > most || (count * NIBBLES).div_ceil(2) != bytes.len() {
        return None;
    }
    let nibbles: Vec<u8> =
        bytes.iter().flat_map(|byte| [byte & 0xf, byte >> 4]).collect();
    let corner = |nibbles: &[u8]| {
        let bits =
            nibbles.iter().rev().fold(0, |bits, &four| bits << 4 | u32::from(four));
        [unpack_one(bits), unpack_one(bits >> BITS)]
    };
    Some(nibbles.chunks_exact(NIBBLES).map(corner).collect())
}

fn pack_one(mm: f64) -> u32 {
    steps(mm, PER_MM, MOST).unwrap_or(NOT_A_NUMBER).cast_unsigned() & MASK
}

fn unpack_one(bits: u32) -> f64 {
    let unused = u32::BITS - BITS;
    match (bits << unused).cast_signed() >> unused {
        NOT_A_NUMBER => f64::NAN,
        steps => f64::from(steps) / PER_MM,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use noseward_stability::{Quantity, limits};

    #[test]
    fn every_coordinate_comes_back() {
        for n in -8000..=8000 {
            let mm = Quantity::Length.rounded(f64::from(n) * 0.1);
            let corners = vec![[mm, -mm], [-mm + 0.0, mm], [mm, 800.0]];
            assert_eq!(unpack(&pack(&corners), 3), Some(corners));
        }
    }

    #[test]
    fn a_corner_takes_three_and_a_half_bytes() {
        for (count, bytes) in
            [(0, 0), (1, 4), (2, 7), (3, 11), (4, 14), (24, 84), (25, 88)]
        {
            let packed = pack(&vec![[1.5, -2.5]; count]);
            assert_eq!(packed.len(), bytes);
            assert_eq!(unpack(&packed, 25), Some(vec![[1.5, -2.5]; count]));
        }
        for bytes in [1, 2, 3, 5, 6, 8, 87, 89, 91, 92] {
            assert_eq!(unpack(&vec![0; bytes], 25), None, "{bytes}");
        }
    }

    #[test]
    fn far_out_stays_beyond_the_limit() {
        let corners = pack(&[[f64::INFINITY, f64::NEG_INFINITY], [f64::NAN, -1e9]]);
        let corners = unpack(&corners, 25).unwrap();
        assert_eq!(corners[0], [819.1, -819.1]);
        const { assert!(819.1 > limits::FIN_REACH_MM) };
        assert!(corners[1][0].is_nan());
        assert_eq!(corners[1][1], -819.1);
    }
}
