//! A picture at one scale, and what in it is ink and what is paper.

use std::ops::{Add, Mul, Sub};

/// The longest side that is looked at, in pixels: a larger picture is reduced first.
const LONGEST: usize = 2400;
/// A picture is halved until it is no longer than this: then the smallest symbol that fills
/// it has modules of some ten pixels.
const COARSEST: usize = 320;
/// Grey values between ink and paper, at least; what differs less is all paper.
const CONTRAST: u8 = 24;

/// How ink is told from paper: by what is round it, and that in blocks of pixels.
#[derive(Clone, Copy, Debug)]
pub(super) enum Light {
    /// Half way between the darkest and the lightest: good where the picture is out of focus.
    Even,
    /// By the mean, of which half is ink: that still parts the two beside the edge of a shadow.
    Shadows,
}

impl Light {
    /// The side of a block, and how many of them on each side count.
    fn blocks(self) -> (usize, usize) {
        match self {
            Self::Even => (16, 1),
            Self::Shadows => (8, 2),
        }
    }
}

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
#[derive(Debug)]
pub(super) struct Picture {
    luma: Vec<u8>,
    pub(super) width: usize,
    pub(super) height: usize,
    /// Pixels of the whole picture along one of this.
    pub(super) scale: f64,
    light: Light,
    /// Of each block, row by row: the grey between ink and paper, and how far both are from it.
    thresholds: Vec<(f64, f64)>,
}

/// What is known of the pixels of a block.
#[derive(Clone, Copy)]
struct Block {
    dark: u8,
    light: u8,
    sum: u32,
    count: u32,
}

impl Block {
    const EMPTY: Self = Self { dark: u8::MAX, light: u8::MIN, sum: 0, count: 0 };

    fn and(self, other: Self) -> Self {
        Self {
            dark: self.dark.min(other.dark),
            light: self.light.max(other.light),
            sum: self.sum + other.sum,
            count: self.count + other.count,
        }
    }

    fn threshold(self, light: Light) -> (f64, f64) {
        let contrast = self.light.saturating_sub(self.dark);
        if contrast < CONTRAST {
            return (-1.0, 1.0);
        }
        let half = f64::from(contrast) / 2.0;
        let middle = match light {
            Light::Even => f64::from(self.dark) + half,
            Light::Shadows => f64::from(self.sum) / f64::from(self.count),
        };
        (middle, half)
    }
}

/// The ways in which a picture of so many values is looked at, the last one first: of how many
/// pixels along a side one is the mean, the finest first, and how ink is told.
pub(super) fn ways(len: usize, width: usize, height: usize) -> Vec<(usize, Light)> {
    let mut ways = Vec::new();
    if width == 0 || width.checked_mul(height) != Some(len) {
        return ways;
    }
    for light in [Light::Shadows, Light::Even] {
        let mut by = width.max(height).div_ceil(LONGEST);
        // The smallest symbol has 21 modules.
        while width.min(height) / by >= 21 {
            ways.push((by, light));
            if width.max(height) / by <= COARSEST {
                break;
            }
            by *= 2;
        }
    }
    ways
}

impl Picture {
    /// Each pixel is the mean of a square of `by` times `by`.
    pub(super) fn reduced(
        whole: &[u8],
        whole_width: usize,
        by: usize,
        light: Light,
    ) -> Self {
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
        let scale = by as f64;
        let mut picture = Self { luma, width, height, scale, light, thresholds: vec![] };
        picture.thresholds = picture.thresholds();
        picture
    }

    /// Of each block with those round it.
    fn thresholds(&self) -> Vec<(f64, f64)> {
        let (side, reach) = self.light.blocks();
        let (columns, rows) = (self.width.div_ceil(side), self.height.div_ceil(side));
        let mut blocks = vec![Block::EMPTY; columns * rows];
        for (y, row) in self.luma.chunks_exact(self.width.max(1)).enumerate() {
            for (column, pixels) in row.chunks(side).enumerate() {
                let block = &mut blocks[y / side * columns + column];
                *block = pixels.iter().fold(*block, |block, &grey| {
                    block.and(Block {
                        dark: grey,
                        light: grey,
                        sum: grey.into(),
                        count: 1,
                    })
                });
            }
        }
        let round =
            |at: usize, end: usize| at.saturating_sub(reach)..(at + reach + 1).min(end);
        let mut thresholds = Vec::with_capacity(blocks.len());
        for row in 0..rows {
            for column in 0..columns {
                let mut all = Block::EMPTY;
                for r in round(row, rows) {
                    for c in round(column, columns) {
                        all = all.and(blocks[r * columns + c]);
                    }
                }
                thresholds.push(all.threshold(self.light));
            }
        }
        thresholds
    }

    /// The grey between ink and paper round a pixel, and how far both are from it.
    pub(super) fn threshold(&self, x: usize, y: usize) -> (f64, f64) {
        let (side, _) = self.light.blocks();
        self.thresholds[y / side * self.width.div_ceil(side) + x / side]
    }

    /// Whether a pixel of the picture is ink.
    pub(super) fn is_dark(&self, x: usize, y: usize) -> bool {
        let (middle, _) = self.threshold(x, y);
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
        let (middle, half) = self.threshold(whole(at.x), whole(at.y));
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
