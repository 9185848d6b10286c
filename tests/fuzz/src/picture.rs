//! Small pictures, made larger.

/// Each grey value as a square of so many pixels on a side, with its width and height. A last
/// row that is not full is left out.
#[must_use]
pub fn enlarged(greys: &[u8], columns: usize, side: usize) -> (Vec<u8>, usize, usize) {
    let rows: Vec<&[u8]> = greys.chunks_exact(columns.max(1)).collect();
    let larger = |row: &[u8]| -> Vec<u8> {
        row.iter().flat_map(|&grey| vec![grey; side]).collect()
    };
    let luma: Vec<u8> = rows.iter().flat_map(|row| larger(row).repeat(side)).collect();
    (luma, columns * side, rows.len() * side)
}
