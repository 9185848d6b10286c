//! Where QR symbols are read, in picture files and before the camera.

use maud::{Markup, html};
use noseward_link::{Progress, SymbolFault};
use noseward_words::{self as words, Text};

use crate::app::{CAMERA, Camera, CameraFault, PICTURES, PictureRead, State};

/// The field for pictures, the camera, and what came of both. What is read is handed on by
/// itself.
pub(crate) fn reader(state: &State) -> Markup {
    html! {
        p class="nb__row" {
            label for=(PICTURES) { (words::symbols_pictures()) }
            input class="menu__file" id=(PICTURES) type="file" accept="image/*" multiple
                aria-describedby="symbols-stay";
        }
        p class="nb__hint" id="symbols-stay" { (words::symbols_stay()) }
        (pictures(state))
        (camera(state))
        ul class="class__where" id="symbols-spread" {
            @for (of, _) in &state.symbols.spread {
                @let Progress { have, of, .. } = of.progress();
                @if have < of { li { (words::symbols_spread(have.into(), of.into())) } }
            }
        }
    }
}

fn pictures(state: &State) -> Markup {
    let symbols = &state.symbols;
    html! {
        p id="symbols-looking" role="status" {
            @if symbols.is_looking() {
                (words::symbols_looking((symbols.pictures.len() + 1).into(), symbols.chosen.into()))
            }
        }
        dl class="symbols__pictures" id="symbols-read" {
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
    if picture.texts.is_empty() && picture.faults.is_empty() {
        return vec![words::symbols_none().into()];
    }
    let of = |fault| picture.faults.iter().filter(|other| **other == fault).count();
    let told: [(usize, fn(words::Number) -> String); 4] = [
        (picture.texts.len(), words::symbols_read),
        (of(SymbolFault::Incomplete), words::symbols_incomplete),
        (of(SymbolFault::Unclear), words::symbols_unclear),
        (of(SymbolFault::NotText), words::symbols_not_text),
    ];
    let told = told.into_iter().filter(|(count, _)| *count > 0);
    told.map(|(count, say)| say(count.into())).collect()
}

fn camera(state: &State) -> Markup {
    let symbols = &state.symbols;
    let is_wanted = symbols.wants_camera();
    let (action, label) = if is_wanted {
        ("stop-camera", words::symbols_camera_stop())
    } else {
        ("start-camera", words::symbols_camera_start())
    };
    html! {
        button type="button" class="button" id="symbols-use" data-action=(action) { (label) }
        @if is_wanted {
            video class="symbols__camera" id=(CAMERA) autoplay muted playsinline {}
        }
        p id="symbols-said" role="status" {
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
