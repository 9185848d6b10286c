//! Motion: being called in the next frame, and told how much time has passed.

use std::cell::Cell;

use web_sys::{MediaQueryList, Window};

use super::timer::Frame;

/// A longer pause between two frames counts as this, in seconds: the page was hidden, or
/// the machine was busy.
const LONGEST_S: f64 = 0.25;

/// Asks for frames one by one.
pub(super) struct Animation {
    window: Window,
    frame: Frame,
    last_ms: Cell<Option<f64>>,
}

impl Animation {
    pub(super) fn new(window: Window, does: impl Fn() + 'static) -> Self {
        let frame = Frame::new(window.clone(), does);
        Self { window, frame, last_ms: Cell::default() }
    }

    /// Asks for one frame.
    pub(super) fn request(&self) {
        if self.last_ms.get().is_none() {
            self.last_ms.set(self.now_ms());
        }
        self.frame.request();
    }

    /// Seconds since the last frame, or since the first request.
    pub(super) fn passed_s(&self) -> f64 {
        let now_ms = self.now_ms();
        let passed_ms = now_ms.zip(self.last_ms.replace(now_ms));
        passed_ms.map_or(0.0, |(now, last)| ((now - last) / 1000.0).clamp(0.0, LONGEST_S))
    }

    /// Forgets the last frame, unless another has been asked for: a motion that begins
    /// again must not make up for the pause.
    pub(super) fn rest_unless_asked(&self) {
        if !self.frame.is_waiting() {
            self.last_ms.set(None);
        }
    }

    fn now_ms(&self) -> Option<f64> {
        self.window.performance().map(|performance| performance.now())
    }
}

/// The question whether the reader's system asks for as little motion as possible; it
/// tells when the answer changes.
pub(super) fn stillness(window: &Window) -> Option<MediaQueryList> {
    window.match_media("(prefers-reduced-motion: reduce)").ok().flatten()
}

/// Its answer now.
pub(super) fn is_unwanted(window: &Window) -> bool {
    stillness(window).is_some_and(|query| query.matches())
}
