//! Symbols before the camera, four times a second. What it sees stays on this computer.

use std::rc::Rc;

use js_sys::{Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{
    HtmlCanvasElement, HtmlVideoElement, MediaDevices, MediaStream,
    MediaStreamConstraints, MediaStreamTrack, MediaStreamTrackState,
};

use super::super::timer::Timer;
use super::{Longest, Page, canvas, report, symbols};
use crate::app::{Camera, CameraFault, CameraPage, SymbolsMsg};

/// Between two looks, in milliseconds: a slow computer has time for the rest.
const LOOK_AFTER_MS: i32 = 250;
/// Enough for a symbol that somebody holds before the camera.
const LONGEST: Longest = Longest(1280.0);

/// A camera that runs. It is given back, and its light goes off, when this is dropped.
pub(super) struct Stream {
    stream: MediaStream,
    canvas: HtmlCanvasElement,
    timer: Timer,
}

impl Stream {
    fn tracks(&self) -> impl Iterator<Item = MediaStreamTrack> {
        let tracks = self.stream.get_tracks().into_iter();
        tracks.map(JsCast::unchecked_into::<MediaStreamTrack>)
    }
}

impl Drop for Stream {
    fn drop(&mut self) {
        self.timer.stop();
        self.tracks().for_each(|track| track.stop());
    }
}

/// Asks for the camera that looks away from whoever holds the computer, if there are several.
pub(super) fn start(page: &Rc<Page>) {
    let page = Rc::clone(page);
    spawn_local(async move {
        match ask(&page).await {
            Ok(stream) => page.runs(stream),
            Err(error) => {
                if page.wants_camera() {
                    let name = error.and_then(|e| Reflect::get(&e, &"name".into()).ok());
                    let name = name.map(|name| name.as_string().unwrap_or_default());
                    let fault = CameraFault::of(name.as_deref(), about(&page));
                    page.tell(SymbolsMsg::CameraRefused(fault));
                }
            }
        }
    });
}

/// Gives the camera back.
pub(super) fn stop(page: &Rc<Page>) {
    if let Some(video) = video(page) {
        video.set_src_object(None);
    }
    page.reading.stream.take();
}

/// The element that shows what the camera sees, where the place has one.
fn video(page: &Page) -> Option<HtmlVideoElement> {
    page.document.query_selector("video[data-camera]").ok()??.dyn_into().ok()
}

/// The camera's pictures, or what the browser throws; nothing where it has no cameras.
async fn ask(page: &Page) -> Result<MediaStream, Option<JsValue>> {
    // Absent on pages that are not served securely, whatever the types say.
    let devices = Reflect::get(&page.window.navigator(), &"mediaDevices".into());
    let devices: MediaDevices = match devices {
        Ok(devices) if !devices.is_undefined() => devices.unchecked_into(),
        _ => return Err(None),
    };
    let wish = Object::new();
    let set = |key: &str, value: &JsValue| {
        Reflect::set(&wish, &key.into(), value).map_err(Some)
    };
    set("facingMode", &"environment".into())?;
    set("width", &1280.into())?;
    set("height", &720.into())?;
    let constraints = MediaStreamConstraints::new();
    constraints.set_video(&wish);
    let asked = devices.get_user_media_with_constraints(&constraints).map_err(Some)?;
    Ok(JsFuture::from(asked).await.map_err(Some)?.unchecked_into())
}

/// What a refusal depends on.
fn about(page: &Page) -> CameraPage {
    let is_barred = || -> Option<bool> {
        // Chromium's, and no standard any more.
        let policy = Reflect::get(&page.document, &"featurePolicy".into()).ok()?;
        let allows = Reflect::get(&policy, &"allowsFeature".into()).ok()?;
        let allows: js_sys::Function = allows.dyn_into().ok()?;
        Some(allows.call1(&policy, &"camera".into()).ok()?.is_falsy())
    };
    CameraPage {
        is_file: page.window.location().protocol().is_ok_and(|of| of == "file:"),
        is_secure: page.window.is_secure_context(),
        is_barred: is_barred() == Some(true),
    }
}

impl Page {
    fn wants_camera(&self) -> bool {
        self.state.borrow().symbols.camera.is_wanted()
    }

    /// The camera runs, unless nobody wants it by now.
    fn runs(self: &Rc<Self>, stream: MediaStream) {
        let Ok(canvas) = canvas(self) else { return };
        let weak = Rc::downgrade(self);
        let timer = Timer::new(self.window.clone(), move || {
            if let Some(page) = weak.upgrade() {
                page.look_through_camera();
            }
        });
        let stream = Stream { stream, canvas, timer };
        // Asked for twice, it runs once.
        let is_first = self.state.borrow().symbols.camera == Camera::Asked
            && self.reading.stream.borrow().is_none();
        if is_first {
            stream.timer.restart(LOOK_AFTER_MS);
            self.reading.stream.replace(Some(stream));
            self.tell(SymbolsMsg::CameraRuns);
        }
    }

    /// One look. Where the camera's picture is on the page no more, nobody wants it either.
    fn look_through_camera(self: &Rc<Self>) {
        let msg = match video(self).filter(|_| self.wants_camera()) {
            None => Some(SymbolsMsg::StopCamera),
            Some(video) => self.seen(&video),
        };
        match msg {
            Some(SymbolsMsg::StopCamera) => {
                stop(self);
                self.tell(SymbolsMsg::StopCamera);
            }
            Some(SymbolsMsg::CameraRefused(fault)) => {
                stop(self);
                self.tell(SymbolsMsg::CameraRefused(fault));
            }
            msg => {
                if let Some(stream) = &*self.reading.stream.borrow() {
                    stream.timer.restart(LOOK_AFTER_MS);
                }
                if let Some(msg) = msg {
                    self.tell(msg);
                }
            }
        }
    }

    /// What is to be told of what the camera sees: texts that were not there before, or that it
    /// sees nothing any more.
    fn seen(&self, video: &HtmlVideoElement) -> Option<SymbolsMsg> {
        let stream = self.reading.stream.borrow();
        let stream = stream.as_ref()?;
        if stream
            .tracks()
            .all(|track| track.ready_state() == MediaStreamTrackState::Ended)
        {
            return Some(SymbolsMsg::CameraRefused(CameraFault::NoCamera));
        }
        if video.src_object().as_ref() != Some(&stream.stream) {
            // Telephones show it in the page, and without a press, only so.
            video.set_muted(true);
            video.set_autoplay(true);
            report(video.set_attribute("playsinline", ""));
            video.set_src_object(Some(&stream.stream));
        }
        let size = (video.video_width(), video.video_height());
        let found = symbols(&stream.canvas, size, LONGEST, |context, width, height| {
            context.draw_image_with_html_video_element_and_dw_and_dh(
                video, 0.0, 0.0, width, height,
            )
        });
        let state = self.state.borrow();
        let is_new = |text: &String| !state.symbols.texts.contains(text);
        let texts: Vec<String> =
            found.ok()?.into_iter().flatten().filter(is_new).collect();
        (!texts.is_empty()).then_some(SymbolsMsg::Saw(texts))
    }
}
