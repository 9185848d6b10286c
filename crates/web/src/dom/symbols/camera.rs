//! Symbols before the camera, four times a second. What it sees stays on this computer.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Array, Object, Promise};
use noseward_link::symbols_in_picture;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

use super::super::listener::Listener;
use super::super::report;
use super::super::timer::Timer;
use super::{Page, call, canvas, get, grey, set, size};
use crate::places::class::symbols::{
    CAMERA, Camera, CameraFault, CameraPage, Symbols, SymbolsNews,
};

/// Between two looks, in milliseconds: a slow computer has time for the rest.
const LOOK_AFTER_MS: i32 = 250;
/// Enough for a symbol that somebody holds before the camera.
const LONGEST: f64 = 1280.0;

thread_local! {
    static STREAM: RefCell<Option<Stream>> = const { RefCell::new(None) };
}

/// A camera that runs. It is given back, and its light goes off, when this is dropped.
struct Stream {
    stream: JsValue,
    canvas: JsValue,
    timer: Timer,
    _unseen: Listener,
}

impl Drop for Stream {
    fn drop(&mut self) {
        self.timer.stop();
        give_back(&self.stream);
    }
}

fn tracks(stream: &JsValue) -> Vec<JsValue> {
    let tracks = call(stream, "getTracks", &[]).map(JsCast::unchecked_into::<Array>);
    let tracks = tracks.unwrap_or_default();
    (0..tracks.length()).map(|i| tracks.get(i)).collect()
}

fn give_back(stream: &JsValue) {
    for track in tracks(stream) {
        report(call(&track, "stop", &[]));
    }
}

/// Asks for the camera that looks away from whoever holds the computer, if there are several.
pub(super) fn start(page: &Rc<Page>) {
    let page = Rc::clone(page);
    spawn_local(async move {
        match asked(&page).await {
            Ok(stream) => runs(&page, stream),
            Err(error) => {
                let name = error.and_then(|error| get(&error, "name").ok());
                let name = name.map(|name| name.as_string().unwrap_or_default());
                if page.of_symbols(|symbols| symbols.camera) == Some(Camera::Asked) {
                    let fault = CameraFault::of(name.as_deref(), about(&page));
                    page.learn(SymbolsNews::CameraRefused(fault));
                }
            }
        }
    });
}

/// Gives the camera back.
pub(super) fn stop() {
    STREAM.take();
}

/// The camera’s pictures, or what the browser throws; nothing where it has no cameras.
async fn asked(page: &Page) -> Result<JsValue, Option<JsValue>> {
    // Absent on pages that are not served securely.
    let devices = get(&page.window.navigator(), "mediaDevices").map_err(Some)?;
    if devices.is_undefined() {
        return Err(None);
    }
    let (wish, video) = (Object::new(), Object::new());
    let wished = [
        (&video, "facingMode", "environment".into()),
        (&video, "width", 1280.into()),
        (&video, "height", 720.into()),
        (&wish, "video", JsValue::from(&video)),
    ];
    for (of, name, value) in wished {
        set(of, name, &value).map_err(Some)?;
    }
    let asked = call(&devices, "getUserMedia", &[wish.into()]).map_err(Some)?;
    JsFuture::from(asked.unchecked_into::<Promise>()).await.map_err(Some)
}

/// What a refusal depends on.
fn about(page: &Page) -> CameraPage {
    let is_barred = || {
        // Chromium's, and no standard any more.
        let policy = get(&page.document, "featurePolicy")?;
        Ok::<_, JsValue>(call(&policy, "allowsFeature", &["camera".into()])?.is_falsy())
    };
    CameraPage {
        is_file: page.window.location().protocol().is_ok_and(|of| of == "file:"),
        is_secure: get(&page.window, "isSecureContext").is_ok_and(|is| !is.is_falsy()),
        is_barred: is_barred().unwrap_or_default(),
    }
}

fn is_wanted(page: &Page) -> bool {
    page.of_symbols(Symbols::wants_camera).unwrap_or_default()
}

/// The element that shows what the camera sees, where somebody wants it and can see it.
fn video(page: &Page) -> Option<JsValue> {
    let video = page.document.get_element_by_id(CAMERA).filter(|_| is_wanted(page));
    let video = video.map(JsValue::from);
    video.filter(|video| get(video, "offsetWidth").is_ok_and(|width| width != 0))
}

/// The camera runs, unless nobody wants it by now. Asked for twice, it runs once.
fn runs(page: &Rc<Page>, stream: JsValue) {
    let is_first = STREAM.with_borrow(Option::is_none) && is_wanted(page);
    match is_first.then(|| watch(page, &stream)) {
        Some(Ok(watched)) => {
            // By then the place shows the element for it.
            watched.timer.restart(LOOK_AFTER_MS);
            STREAM.set(Some(watched));
            page.learn(SymbolsNews::CameraRuns);
        }
        failed => {
            give_back(&stream);
            report(failed.transpose());
            if is_first {
                page.learn(SymbolsNews::CameraUnseen);
            }
        }
    }
}

fn watch(page: &Rc<Page>, stream: &JsValue) -> Result<Stream, JsValue> {
    let call = |does: fn(&Rc<Page>)| {
        let weak = Rc::downgrade(page);
        move || {
            if let Some(page) = weak.upgrade() {
                does(&page);
            }
        }
    };
    let unseen = call(|page| {
        if get(&page.document, "hidden").is_ok_and(|is| !is.is_falsy()) {
            unseen_now(page);
        }
    });
    Ok(Stream {
        stream: stream.clone(),
        canvas: canvas(page)?,
        timer: Timer::new(page.window.clone(), call(look)),
        _unseen: Listener::new(&page.document, "visibilitychange", move |_| unseen())?,
    })
}

/// Nobody sees what the camera sees. It stops even where the class was deleted meanwhile.
fn unseen_now(page: &Rc<Page>) {
    stop();
    page.learn(SymbolsNews::CameraUnseen);
}

/// One look. Where the camera's picture is on the page no more, nobody wants it either.
fn look(page: &Rc<Page>) {
    let Some(video) = video(page) else { return unseen_now(page) };
    let news = STREAM.with_borrow(|stream| {
        let stream = stream.as_ref()?;
        stream.timer.restart(LOOK_AFTER_MS);
        let ended = |track: &JsValue| {
            get(track, "readyState").is_ok_and(|state| state == "ended")
        };
        if tracks(&stream.stream).iter().all(ended) {
            return Some(SymbolsNews::CameraRefused(CameraFault::NoCamera));
        }
        seen(page, stream, &video).ok().flatten()
    });
    if let Some(news) = news {
        page.learn(news);
    }
}

/// What is to be told of what the camera sees: texts that were not there before.
fn seen(
    page: &Page,
    stream: &Stream,
    video: &JsValue,
) -> Result<Option<SymbolsNews>, JsValue> {
    if get(video, "srcObject")? != stream.stream {
        set(video, "srcObject", &stream.stream)?;
        return Ok(None);
    }
    let size = size(video, ["videoWidth", "videoHeight"])?;
    let grey = grey(&stream.canvas, video, size, LONGEST)?;
    let found = symbols_in_picture(grey.luma, grey.width, grey.height);
    let is_new = |text: &String| {
        page.of_symbols(|symbols| !symbols.seen.contains(text)) == Some(true)
    };
    let texts: Vec<String> = found.into_iter().flatten().filter(is_new).collect();
    Ok((!texts.is_empty()).then_some(SymbolsNews::Saw(texts)))
}
