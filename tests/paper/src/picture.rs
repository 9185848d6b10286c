//! A page in grey values.

use crate::document::MM_PER_INCH;
use anyhow::{Context, Result, ensure};

/// A picture in grey values, from black to white.
#[derive(Clone, Debug)]
pub struct Picture {
    /// How many pixels a row has.
    pub width: usize,
    /// How many rows there are.
    pub height: usize,
    /// Millimetres of paper from one pixel to the next.
    pub mm: f64,
    grey: Vec<u8>,
}

/// From where to where something reaches, in millimetres from the top left corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// To the left edge.
    pub left: f64,
    /// To the top.
    pub top: f64,
    /// To the right edge.
    pub right: f64,
    /// To the foot.
    pub bottom: f64,
}

impl Picture {
    /// Reads a portable graymap (PGM, "P5": three numbers in text, then a byte a pixel).
    ///
    /// # Errors
    ///
    /// When it is something else.
    pub fn read(bytes: &[u8], per_inch: u32) -> Result<Self> {
        let mut parts = bytes.splitn(5, u8::is_ascii_whitespace);
        let mut next = || {
            let text = std::str::from_utf8(parts.next()?).ok()?;
            Some(text.to_owned())
        };
        ensure!(next().as_deref() == Some("P5"), "this is no graymap");
        let mut number = || next().and_then(|text| text.parse::<usize>().ok());
        let (width, height) = number().zip(number()).context("a graymap has a size")?;
        ensure!(number() == Some(255), "a pixel is no byte");
        let start =
            bytes.len().checked_sub(width * height).context("pixels are missing")?;
        let grey = bytes[start..].to_vec();
        Ok(Self { width, height, mm: MM_PER_INCH / f64::from(per_inch), grey })
    }

    /// The grey value of a pixel, white beyond the edges.
    #[must_use]
    pub fn grey(&self, x: usize, y: usize) -> u8 {
        if x < self.width && y < self.height {
            self.grey[y * self.width + x]
        } else {
            255
        }
    }

    /// From where to where anything is drawn; `None` on an empty page.
    #[must_use]
    pub fn ink(&self) -> Option<Bounds> {
        let is_ink = |x: usize, y: usize| self.grey(x, y) < 250;
        let row = |y: &usize| (0..self.width).any(|x| is_ink(x, *y));
        let column = |x: &usize| (0..self.height).any(|y| is_ink(*x, y));
        let (top, bottom) = ((0..self.height).find(row)?, (0..self.height).rfind(row)?);
        let (left, right) =
            ((0..self.width).find(column)?, (0..self.width).rfind(column)?);
        let mm = |pixels: usize| pixels as f64 * self.mm;
        Some(Bounds {
            left: mm(left),
            top: mm(top),
            right: mm(right + 1),
            bottom: mm(bottom + 1),
        })
    }

    /// The middles of what is darker than `limit` in a row, in millimetres, each weighed by how
    /// dark it is, so that they are known to a small share of a pixel.
    #[must_use]
    pub fn strokes_in_row(&self, y_mm: f64, limit: u8) -> Vec<f64> {
        let y = self.pixel(y_mm);
        middles((0..self.width).map(|x| self.grey(x, y)), limit, self.mm)
    }

    /// The same in a column.
    #[must_use]
    pub fn strokes_in_column(&self, x_mm: f64, limit: u8) -> Vec<f64> {
        let x = self.pixel(x_mm);
        middles((0..self.height).map(|y| self.grey(x, y)), limit, self.mm)
    }

    /// The pixel at a distance from the edge.
    #[must_use]
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "places on paper"
    )]
    pub fn pixel(&self, mm: f64) -> usize {
        (mm / self.mm).max(0.0) as usize
    }
}

fn middles(line: impl Iterator<Item = u8>, limit: u8, mm: f64) -> Vec<f64> {
    let mut found = Vec::new();
    let (mut weight, mut moment, mut darkest) = (0.0, 0.0, 255);
    // A white pixel behind the last ends what reaches the edge.
    for (grey, place) in line.chain([255]).zip(0..) {
        let ink = f64::from(255 - grey);
        if grey < 250 {
            weight += ink;
            moment += ink * (f64::from(place) + 0.5);
            darkest = grey.min(darkest);
        } else {
            if darkest < limit {
                found.push(moment / weight * mm);
            }
            (weight, moment, darkest) = (0.0, 0.0, 255);
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    fn picture() -> Picture {
        let mut bytes = b"P5\n4 3\n255\n".to_vec();
        // White as 10, the byte of a new line, is none: a header ends but once.
        bytes.extend([255, 10, 255, 255, 255, 0, 127, 255, 255, 255, 255, 255]);
        Picture::read(&bytes, 254).unwrap()
    }

    #[test]
    fn a_graymap_is_read_to_its_pixels() {
        let picture = picture();
        assert_eq!((picture.width, picture.height), (4, 3));
        assert_eq!(
            [picture.grey(1, 0), picture.grey(2, 1), picture.grey(9, 9)],
            [10, 127, 255]
        );
        let wanted = Bounds { left: 0.1, top: 0.0, right: 0.3, bottom: 0.2 };
        let found = picture.ink().unwrap();
        let near = |a: f64, b: f64| (a - b).abs() < 1e-12;
        assert!(near(picture.mm, 0.1));
        assert!(near(found.left, wanted.left) && near(found.top, wanted.top));
        assert!(near(found.right, wanted.right) && near(found.bottom, wanted.bottom));
        assert!(Picture::read(b"P6\n1 1\n255\n...", 100).is_err());
        assert!(Picture::read(b"P5\n9 9\n255\n...", 100).is_err());
    }

    #[test]
    fn the_middle_of_a_stroke_is_weighed() {
        // 255 of ink in pixel 1, 128 in pixel 2: 1.5 + 128/383.
        let found = picture().strokes_in_row(0.15, 100);
        assert_eq!(found.len(), 1);
        assert!((found[0] - 0.1 * (1.5 + 128.0 / 383.0)).abs() < 1e-12, "{found:?}");
        assert!(picture().strokes_in_column(0.25, 100).is_empty());
        assert_eq!(picture().strokes_in_column(0.25, 128).len(), 1);
    }
}
