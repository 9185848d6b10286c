//! Files that are handed in to a class: texts, and pictures of symbols, which are looked at one
//! after the other and each a little at a time.

use std::cell::RefCell;
use std::rc::Rc;

use noseward_link::{SymbolRead, SymbolSearch};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{File, HtmlInputElement};

use super::super::report;
use super::super::timer::Timer;
use super::{Page, call, canvas, get, grey, size};
use crate::places::PlaceMsg;
use crate::places::class::symbols::{PictureRead, SymbolsNews};
use crate::places::class::{CLASS_BYTES, CLASS_FILES, ClassMsg};

/// What is longer is reduced when it is drawn: the search goes no finer.
const LONGEST: f64 = 2400.0;
/// Texts that are read at the same time: to begin with one takes a browser a millisecond or two.
const READ_AT_ONCE: usize = 16;
/// How long the page may stand still, in milliseconds.
const SLICE_MS: f64 = 30.0;

thread_local! {
    static WAITING: RefCell<Waiting> = RefCell::default();
}

/// Pictures that are still to be looked at.
#[derive(Default)]
struct Waiting {
    /// The first is looked at.
    files: Vec<File>,
    search: Option<(SymbolSearch, Timer)>,
}

/// Takes the files out of the field in which they were chosen: texts come to the class as they
/// are, pictures are looked at.
pub(super) fn take_chosen(page: &Rc<Page>) {
    let field = page.document.get_element_by_id(CLASS_FILES);
    let Some(field) = field.and_then(|field| field.dyn_into::<HtmlInputElement>().ok())
    else {
        return;
    };
    let Some(list) = field.files() else { return };
    let files = (0..list.length()).filter_map(|i| list.get(i));
    let (pictures, texts): (Vec<File>, Vec<File>) = files.partition(is_picture);
    // So that choosing the same file again is a change again.
    field.set_value("");
    if !texts.is_empty() {
        read(page, texts);
    }
    if !pictures.is_empty() {
        page.learn(SymbolsNews::Took(pictures.len()));
        let is_first = WAITING.with_borrow_mut(|waiting| {
            let is_first = waiting.files.is_empty();
            waiting.files.extend(pictures);
            is_first
        });
        if is_first {
            open_next(page);
        }
    }
}

/// Whether a file is a picture, or one that not every browser knows.
fn is_picture(file: &File) -> bool {
    let kind = get(file, "type").ok().and_then(|kind| kind.as_string());
    kind.is_some_and(|kind| kind.starts_with("image/"))
        || [".heic", ".heif"]
            .iter()
            .any(|end| file.name().to_ascii_lowercase().ends_with(end))
}

/// Reads texts, a few at the same time.
fn read(page: &Rc<Page>, files: Vec<File>) {
    let page = Rc::clone(page);
    spawn_local(async move {
        let begin = |file: &File| {
            let is_small = file.size() <= CLASS_BYTES;
            (file.name(), is_small.then(|| JsFuture::from(file.text())))
        };
        let mut texts = Vec::new();
        for some in files.chunks(READ_AT_ONCE) {
            let begun: Vec<_> = some.iter().map(begin).collect();
            for (name, text) in begun {
                let text = match text {
                    Some(text) => text.await.ok().and_then(|text| text.as_string()),
                    None => None,
                };
                texts.push((name, text));
            }
        }
        page.send(PlaceMsg::Class(ClassMsg::Files(texts)).into());
    });
}

fn open_next(page: &Rc<Page>) {
    let Some(file) = WAITING.with_borrow(|waiting| waiting.files.first().cloned()) else {
        return;
    };
    let page = Rc::clone(page);
    spawn_local(async move {
        match opened(&page, &file).await {
            Ok(search) => {
                let weak = Rc::downgrade(&page);
                let timer = Timer::new(page.window.clone(), move || {
                    if let Some(page) = weak.upgrade() {
                        go_on(&page);
                    }
                });
                timer.restart(0);
                WAITING.with_borrow_mut(|waiting| waiting.search = Some((search, timer)));
            }
            Err(_) => looked(&page, None),
        }
    });
}

/// Has the browser read a file, by itself and not as the source of an element: the page's policy
/// lets no picture in that is a file of the person's.
async fn opened(page: &Page, file: &File) -> Result<SymbolSearch, JsValue> {
    let asked = call(&page.window, "createImageBitmap", &[file.into()])?;
    let bitmap = JsFuture::from(asked.unchecked_into::<js_sys::Promise>()).await?;
    let canvas = canvas(page)?;
    let read = grey(&canvas, &bitmap, size(&bitmap, ["width", "height"])?, LONGEST);
    // They take 50 MB together, and the browser does not hurry to tidy up.
    report(call(&bitmap, "close", &[]));
    report(super::set(&canvas, "width", &0.into()));
    let read = read?;
    Ok(SymbolSearch::new(read.luma, read.width, read.height))
}

/// Looks at a little more of the picture.
fn go_on(page: &Rc<Page>) {
    let now = || page.window.performance().map_or(0.0, |clock| clock.now());
    let until = now() + SLICE_MS;
    let found = WAITING.with_borrow_mut(|waiting| {
        let (search, timer) = waiting.search.as_mut()?;
        while search.goes_on() {
            if now() > until {
                timer.restart(0);
                return None;
            }
        }
        Some(waiting.search.take()?.0.found())
    });
    if found.is_some() {
        looked(page, found);
    }
}

/// The first picture is done with; without anything found it is none.
fn looked(page: &Rc<Page>, found: Option<Vec<SymbolRead>>) {
    let file = WAITING.with_borrow_mut(|waiting| waiting.files.remove(0));
    let is_picture = found.is_some();
    let (mut texts, mut faults) = (Vec::new(), Vec::new());
    for symbol in found.unwrap_or_default() {
        match symbol {
            Ok(text) => texts.push(text),
            Err(fault) => faults.push(fault),
        }
    }
    let read = PictureRead { name: file.name(), is_picture, read: texts.len(), faults };
    page.learn(SymbolsNews::Looked(read, texts));
    open_next(page);
}
