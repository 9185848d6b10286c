//! Pictures of symbols as cameras take them: turned, from aside, blurred, in uneven light and
//! with noise, always the same.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};
use rand_pcg::Pcg32;
use rand_pcg::rand_core::{Rng, SeedableRng};

/// White modules round a symbol.
const QUIET: f64 = 4.0;

/// A symbol as the page makes it: the address as bytes, the code as capital letters.
pub(crate) fn symbol(address: Option<&str>, code: &str) -> QrCode {
    let mut segments = Vec::new();
    if let Some(address) = address {
        segments.push(QrSegment::make_bytes(format!("{address}#").as_bytes()));
    }
    segments.extend(QrSegment::make_segments(code));
    let (least, most) = (Version::MIN, Version::MAX);
    QrCode::encode_segments_advanced(&segments, QrCodeEcc::Low, least, most, None, true)
        .expect("it fits")
}

/// A picture that is being made, in grey values from 0 to 255.
#[derive(Clone)]
pub(crate) struct Photograph {
    pub(crate) width: usize,
    pub(crate) height: usize,
    grey: Vec<f64>,
}

/// A way of looking at a symbol: where in the picture its middle is, how large a module is
/// there, in pixels, how far it is turned, and how far it leans away from who looks.
#[derive(Clone, Copy)]
pub(crate) struct View {
    pub(crate) middle: (f64, f64),
    pub(crate) module_px: f64,
    pub(crate) turned_deg: f64,
    pub(crate) leans_deg: f64,
}

impl View {
    pub(crate) fn straight(middle: (f64, f64), module_px: f64) -> Self {
        Self { middle, module_px, turned_deg: 0.0, leans_deg: 0.0 }
    }

    /// Where on the plane of the symbol, in modules from its middle, a pixel looks. The camera
    /// is as far away as two symbols and a half are wide; the symbol leans backwards round a line
    /// across its middle that stands at 30 degrees in the picture.
    fn modules(self, size: f64) -> impl Fn(f64, f64) -> (f64, f64) {
        let sincos = |deg: f64| libm::sincos(deg.to_radians());
        let turn = |(x, y): (f64, f64), (sin, cos): (f64, f64)| {
            (x * cos + y * sin, y * cos - x * sin)
        };
        let away = 2.5 * size;
        let (to, back, turned) = (sincos(30.0), sincos(-30.0), sincos(self.turned_deg));
        let (sin, cos) = sincos(self.leans_deg);
        move |x, y| {
            let at = (x - self.middle.0, y - self.middle.1);
            let at = (at.0 / self.module_px, at.1 / self.module_px);
            let (across, up) = turn(at, to);
            // The ray (across, up, away) t meets the plane through (0, 0, away).
            let v = up * away / (away * cos - up * sin);
            let u = across * (away + v * sin) / away;
            turn(turn((u, v), back), turned)
        }
    }
}

impl Photograph {
    /// A sheet of one grey.
    pub(crate) fn new(width: usize, height: usize, grey: f64) -> Self {
        Self { width, height, grey: vec![grey; width * height] }
    }

    /// Puts a symbol with the white round it into the picture, each pixel the mean of nine
    /// points.
    pub(crate) fn put(mut self, symbol: &QrCode, view: View) -> Self {
        let size = f64::from(symbol.size());
        let module_at = view.modules(size);
        for (i, grey) in self.grey.iter_mut().enumerate() {
            let (x, y) = ((i % self.width) as f64, (i / self.width) as f64);
            for point in 0..9 {
                let (dx, dy) = (f64::from(point % 3), f64::from(point / 3));
                let (x, y) = (x + (dx + 0.5) / 3.0, y + (dy + 0.5) / 3.0);
                let (u, v) = module_at(x, y);
                let (u, v) = (u + size / 2.0, v + size / 2.0);
                let is_on = |at: f64| at > -QUIET && at < size + QUIET;
                if point == 0 && !(is_on(u) && is_on(v)) {
                    break;
                }
                *grey = if point == 0 { 0.0 } else { *grey };
                #[expect(clippy::cast_possible_truncation, reason = "within the symbol")]
                let is_dark = symbol.get_module(u.floor() as i32, v.floor() as i32);
                *grey += if is_dark { 25.0 } else { 230.0 } / 9.0;
            }
        }
        self
    }

    /// A Gaussian of so many pixels.
    pub(crate) fn blurred(mut self, sigma_px: f64) -> Self {
        let reach = 9_usize;
        let weight = |far: usize| {
            let far = far as f64 / sigma_px;
            libm::exp(-far * far / 2.0)
        };
        let weights: Vec<f64> =
            (0..=2 * reach).map(|i| weight(i.abs_diff(reach))).collect();
        let sum: f64 = weights.iter().sum();
        let (width, height) = (self.width, self.height);
        for (dx, dy) in [(1, 0), (0, 1)] {
            let near = |x: usize, y: usize, i: usize| {
                let x = (x + dx * i).saturating_sub(dx * reach).min(width - 1);
                let y = (y + dy * i).saturating_sub(dy * reach).min(height - 1);
                self.grey[y * width + x]
            };
            self.grey = (0..width * height)
                .map(|at| {
                    let all = weights.iter().enumerate();
                    all.map(|(i, w)| w * near(at % width, at / width, i)).sum::<f64>()
                        / sum
                })
                .collect();
        }
        self
    }

    /// Light that falls to this share from the left upper corner to the right lower one.
    pub(crate) fn shaded(mut self, share: f64) -> Self {
        let (width, height) = (self.width as f64, self.height as f64);
        for (i, grey) in self.grey.iter_mut().enumerate() {
            let (x, y) =
                ((i % self.width) as f64 / width, (i / self.width) as f64 / height);
            *grey *= 1.0 - (1.0 - share) * f64::midpoint(x, y);
        }
        self
    }

    /// A shadow whose edge goes through the middle and leaves this share of the light.
    pub(crate) fn shadowed(mut self, share: f64) -> Self {
        let (width, height) = (self.width as f64, self.height as f64);
        for (i, grey) in self.grey.iter_mut().enumerate() {
            let x = (i % self.width) as f64 - width / 2.0;
            let y = (i / self.width) as f64 - height / 2.0;
            *grey *= if 0.7 * x + 0.4 * y < 0.0 { share } else { 1.0 };
        }
        self
    }

    /// Noise of so many grey values either way, near enough to normal.
    pub(crate) fn noisy(mut self, spread: f64, seed: u64) -> Self {
        let mut lots = Pcg32::seed_from_u64(seed);
        for grey in &mut self.grey {
            let lot = || f64::from(lots.next_u32()) / f64::from(u32::MAX) - 0.5;
            // Of twelve uniform numbers the sum has a spread of one.
            *grey += spread * std::iter::repeat_with(lot).take(12).sum::<f64>();
        }
        self
    }

    pub(crate) fn inverted(mut self) -> Self {
        self.grey.iter_mut().for_each(|grey| *grey = 255.0 - *grey);
        self
    }

    /// Columns from here on are white.
    pub(crate) fn cut_at(mut self, column: usize) -> Self {
        for row in self.grey.chunks_mut(self.width) {
            row[column..].fill(230.0);
        }
        self
    }

    /// A stain in the middle.
    pub(crate) fn stained(mut self, (x, y): (f64, f64), radius_px: f64) -> Self {
        for (i, grey) in self.grey.iter_mut().enumerate() {
            let (dx, dy) = ((i % self.width) as f64 - x, (i / self.width) as f64 - y);
            if dx * dx + dy * dy < radius_px * radius_px {
                *grey = 25.0;
            }
        }
        self
    }

    /// As bytes.
    pub(crate) fn luma(&self) -> Vec<u8> {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a cast to an integer saturates"
        )]
        self.grey.iter().map(|grey| grey.round() as u8).collect()
    }
}
