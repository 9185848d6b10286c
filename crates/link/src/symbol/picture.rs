//! A picture at one scale, and what in it is ink and what is paper.

use std::ops::{Add, Mul, Sub};

/// The longest side that is looked at, in pixels: a larger picture is reduced first.
const LONGEST: usize = 2400;
/// A picture is halved until it is no longer than this: then the smallest symbol that fills
/// it has modules of some ten pixels.
const COARSEST: usize = 320;
/// Side of a block of pixels with a threshold of its own.
const BLOCK: usize = 16;
/// Grey values between ink and paper, at least; what differs less is all paper.
const CONTRAST: u8 = 24;

/// A point of a picture, in pixels from its corner. The middle of the first pixel is at 0.5.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Point {
    pub(super) x: f64,
    pub(super) y: f64,
}

impl Point {
    pub(super) fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// Positive where `other` lies clockwise of it, as seen.
    pub(super) fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    pub(super) fn length(self) -> f64 {
        self.dot(self).sqrt()
    }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { x: self.x + other.x, y: self.y + other.y }
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self { x: self.x - other.x, y: self.y - other.y }
    }
}

impl Mul<f64> for Point {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self { x: self.x * by, y: self.y * by }
    }
}

/// The grey values of a picture with the threshold of each block.
pub(super) struct Picture {
    luma: Vec<u8>,
    pub(super) width: usize,
    pub(super) height: usize,
    /// Pixels of the whole picture along one of this.
    pub(super) scale: f64,
    /// Of each block, row by row: the grey between ink and paper, and how far both are from it.
    thresholds: Vec<(f64, f64)>,
    columns: usize,
}

/// The same picture at every scale, the finest first.
pub(super) fn scales(luma: &[u8], width: usize, height: usize) -> Vec<Picture> {
    let mut scales = Vec::new();
    if width == 0 || width.checked_mul(height) != Some(luma.len()) {
        return scales;
    }
    let mut by = width.max(height).div_ceil(LONGEST);
    loop {
        let picture = Picture::reduced(luma, width, by);
        // The smallest symbol has 21 modules.
        if picture.width.min(picture.height) < 21 {
            return scales;
        }
        let is_coarsest = picture.width.max(picture.height) <= COARSEST;
        scales.push(picture);
        if is_coarsest {
            return scales;
        }
        by *= 2;
    }
}

impl Picture {
    /// Each pixel is the mean of a square of `by` times `by`.
    fn reduced(whole: &[u8], whole_width: usize, by: usize) -> Self {
        let (width, height) = (whole_width / by, whole.len() / whole_width / by);
        let mut luma = Vec::with_capacity(width * height);
        let mut sums = vec![0; width];
        for rows in whole.chunks_exact(whole_width.saturating_mul(by)).take(height) {
            sums.fill(0);
            for row in rows.chunks_exact(whole_width) {
                for (sum, pixels) in sums.iter_mut().zip(row.chunks_exact(by)) {
                    *sum += pixels.iter().map(|&grey| usize::from(grey)).sum::<usize>();
                }
            }
            // A mean of bytes is a byte.
            luma.extend(
                sums.iter().map(|sum| u8::try_from(sum / (by * by)).unwrap_or(0)),
            );
        }
        let columns = width.div_ceil(BLOCK);
        let mut picture = Self {
            luma,
            width,
            height,
            scale: by as f64,
            thresholds: Vec::new(),
            columns,
        };
        picture.thresholds = picture.thresholds();
        picture
    }

    /// Half way between the darkest and the lightest of a block and of those round it.
    fn thresholds(&self) -> Vec<(f64, f64)> {
        let (columns, rows) = (self.columns, self.height.div_ceil(BLOCK));
        let mut ends = vec![(u8::MAX, u8::MIN); columns * rows];
        for (y, row) in self.luma.chunks_exact(self.width.max(1)).enumerate() {
            for (column, pixels) in row.chunks(BLOCK).enumerate() {
                let (dark, light) = &mut ends[y / BLOCK * columns + column];
                for &grey in pixels {
                    (*dark, *light) = (grey.min(*dark), grey.max(*light));
                }
            }
        }
        let mut thresholds = Vec::with_capacity(ends.len());
        for row in 0..rows {
            for column in 0..columns {
                let (mut dark, mut light) = (u8::MAX, u8::MIN);
                for r in row.saturating_sub(1)..(row + 2).min(rows) {
                    for c in column.saturating_sub(1)..(column + 2).min(columns) {
                        let (d, l) = ends[r * columns + c];
                        (dark, light) = (dark.min(d), light.max(l));
                    }
                }
                let half = f64::from(light.saturating_sub(dark)) / 2.0;
                thresholds.push(if light.saturating_sub(dark) < CONTRAST {
                    (-1.0, 1.0)
                } else {
                    (f64::from(dark) + half, half)
                });
            }
        }
        thresholds
    }

    /// Whether a pixel of the picture is ink.
    pub(super) fn is_dark(&self, x: usize, y: usize) -> bool {
        let (middle, _) = self.thresholds[y / BLOCK * self.columns + x / BLOCK];
        f64::from(self.luma[y * self.width + x]) < middle
    }

    /// How much ink is at a point: from -1, which is paper, to 1. Nothing is known of what
    /// lies outside.
    pub(super) fn ink(&self, at: Point) -> f64 {
        let is_inside = at.x >= 0.0
            && at.x < self.width as f64
            && at.y >= 0.0
            && at.y < self.height as f64;
        if !is_inside {
            return 0.0;
        }
        let (left, right, x) = between(at.x, self.width);
        let (top, bottom, y) = between(at.y, self.height);
        let grey = |x, y| f64::from(self.luma[y * self.width + x]);
        let upper = grey(left, top) * (1.0 - x) + grey(right, top) * x;
        let lower = grey(left, bottom) * (1.0 - x) + grey(right, bottom) * x;
        let grey = upper * (1.0 - y) + lower * y;
        let (column, row) = (whole(at.x) / BLOCK, whole(at.y) / BLOCK);
        let (middle, half) = self.thresholds[row * self.columns + column];
        ((middle - grey) / half).clamp(-1.0, 1.0)
    }
}

/// The two pixels whose middles are round a place, and how far from the first it is.
fn between(at: f64, size: usize) -> (usize, usize, f64) {
    let from = (at - 0.5).max(0.0);
    let first = whole(from).min(size - 1);
    (first, (first + 1).min(size - 1), from - first as f64)
}

/// The pixel of a place in the picture.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast to an integer saturates"
)]
pub(super) fn whole(at: f64) -> usize {
    at as usize
}
