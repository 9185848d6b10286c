//! The timer of the big screen: it ends at a time of the clock, however rarely it is looked at.

use maud::{Markup, html};
use noseward_words::{self as words, Number};

use super::model::ClassDesk;
use super::{button, plain_button};
use crate::app::Effect;

/// What it can be set to, in minutes.
pub(super) const MINUTES: [u8; 4] = [2, 5, 10, 20];

/// A timer that runs, or has run out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Timer {
    /// How long it takes, in seconds.
    length_s: f64,
    /// When it began by the clock; `None` until that is known.
    from_s: Option<f64>,
    pub(super) left_s: f64,
}

impl Timer {
    pub(super) fn new(minutes: u8) -> Self {
        let length_s = 60.0 * f64::from(minutes);
        Self { length_s, from_s: None, left_s: length_s }
    }

    /// It is that late by the clock.
    pub(super) fn is_now(&mut self, now_s: f64) {
        let from_s = *self.from_s.get_or_insert(now_s);
        self.left_s = (self.length_s - (now_s - from_s)).max(0.0);
    }
}

/// What the clock says, while a timer runs.
pub(super) fn tick(desk: &mut ClassDesk, now_s: f64) -> Vec<Effect> {
    let Some(timer) = &mut desk.timer else { return Vec::new() };
    timer.is_now(now_s);
    if timer.left_s > 0.0 {
        vec![Effect::Redraw, Effect::Clock]
    } else {
        vec![Effect::Redraw]
    }
}

pub(super) fn timer(desk: &ClassDesk) -> Markup {
    html! {
        div class="class__timer nb__row" {
            @match desk.timer {
                None => {
                    span { (words::class_timer()) }
                    @for (minutes, i) in MINUTES.into_iter().zip(0_usize..) {
                        (button("cl-timer", &i.to_string(), true, &html! { (words::class_minutes(u32::from(minutes).into())) }))
                    }
                },
                Some(timer) => {
                    @if timer.left_s > 0.0 {
                        // Once a minute is enough for whoever listens.
                        span class="class__clock" aria-hidden="true" dir="ltr" { (clock(timer.left_s)) }
                        span class="visually-hidden" role="status" { (words::class_timer_left(Number::fixed((timer.left_s / 60.0).ceil(), 0))) }
                    } @else { b role="status" { (words::class_timer_over()) } }
                    (plain_button("cl-timer-stop", true, words::class_timer_stop()))
                },
            }
        }
    }
}

/// Minutes and seconds.
fn clock(left_s: f64) -> String {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "at most some thousand"
    )]
    let left = left_s.ceil() as u32;
    format!("{}:{:02}", left / 60, left % 60)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_ends_by_the_clock_however_rarely_it_is_looked_at() {
        let mut timer = Timer::new(2);
        timer.is_now(1000.0);
        assert_eq!(clock(timer.left_s), "2:00");
        timer.is_now(1000.3);
        assert_eq!(clock(timer.left_s), "2:00");
        timer.is_now(1061.0);
        assert_eq!(clock(timer.left_s), "0:59");
        timer.is_now(2000.0);
        assert_eq!(timer.left_s, 0.0);
    }
}
