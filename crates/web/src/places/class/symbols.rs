//! Where QR symbols are read, in picture files and before the camera. What is read comes to the
//! class by itself.

mod model;

pub(crate) use model::{
    CAMERA, Camera, CameraFault, CameraPage, PictureRead, Symbols, SymbolsNews, learn,
};

use maud::{Markup, html};
use noseward_link::{Progress, SymbolFault};
use noseward_words::{self as words, Text};

/// What is read, and the picture of the camera.
pub(super) fn reader(symbols: &Symbols) -> Markup {
    html! {
        p class="nb__hint" { (words::symbols_stay()) }
        @if symbols.wants_camera() {
            video class="symbols__camera" id=(CAMERA) autoplay muted playsinline {}
        }
        p class="symbols__said" id="class-symbols-said" role="status" { (said_of_camera(symbols)) }
        (pictures(symbols))
        ul class="class__where" id="class-symbols-spread" {
            @for (of, _) in &symbols.spread {
                @let Progress { have, of, .. } = of.progress();
                @if have < of { li { (words::symbols_spread(have.into(), of.into())) } }
            }
        }
    }
}

/// Starts the camera and stops it.
pub(super) fn camera(symbols: &Symbols) -> Markup {
    let (action, label) = if symbols.wants_camera() {
        ("cl-camera-off", words::symbols_camera_stop())
    } else {
        ("cl-camera", words::symbols_camera_start())
    };
    html! {
        button type="button" class="button" id="cl-camera" data-action=(action) { (label) }
    }
}

fn pictures(symbols: &Symbols) -> Markup {
    html! {
        p class="symbols__said" id="class-symbols-looking" role="status" {
            @if symbols.is_looking() {
                (words::symbols_looking((symbols.pictures.len() + 1).into(), symbols.chosen.into()))
            }
        }
        dl class="symbols__pictures" id="class-symbols-read" {
            @for picture in &symbols.pictures {
                dt { bdi { (picture.name) } }
                dd { (said(picture).join(" ")) }
            }
        }
    }
}

/// What there is to say of a picture.
fn said(picture: &PictureRead) -> Vec<String> {
    if !picture.is_picture {
        return vec![words::symbols_not_picture().into()];
    }
    if picture.read == 0 && picture.faults.is_empty() {
        return vec![words::symbols_none().into()];
    }
    let mut told = Vec::new();
    let mut tell = |count: usize, say: fn(words::Number) -> String| {
        if count > 0 {
            told.push(say(count.into()));
        }
    };
    let of = |fault| picture.faults.iter().filter(|other| **other == fault).count();
    tell(picture.read, words::symbols_read);
    tell(of(SymbolFault::Incomplete), words::symbols_incomplete);
    tell(of(SymbolFault::Unclear), words::symbols_unclear);
    tell(of(SymbolFault::NotText), words::symbols_not_text);
    told
}

fn said_of_camera(symbols: &Symbols) -> Markup {
    html! {
        @match symbols.camera {
            Camera::Off => {},
            Camera::Asked => (words::symbols_camera_asked()),
            Camera::Runs => (words::symbols_camera_runs()),
            Camera::Refused(fault) => { (refused(fault)) " " (words::symbols_without()) }
        }
        @if !symbols.seen.is_empty() {
            " " (words::symbols_camera_read(symbols.seen.len().into()))
        }
    }
}

/// Why there is no camera, and what to do.
fn refused(fault: CameraFault) -> Text {
    match fault {
        CameraFault::NoCamera => words::symbols_no_camera(),
        CameraFault::NotAllowed => words::symbols_not_allowed(),
        CameraFault::InsecurePage => words::symbols_insecure(),
        CameraFault::FilePage => words::symbols_file(),
        CameraFault::Blocked => words::symbols_blocked(),
        CameraFault::InUse => words::symbols_in_use(),
    }
}
