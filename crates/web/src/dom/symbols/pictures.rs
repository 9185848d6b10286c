//! Symbols in picture files, one after the other, each in a task of its own.

use std::rc::Rc;

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{File, ImageBitmap};

use super::{Longest, Page, canvas, report, symbols};
use crate::app::{PictureFault, PictureRead, SymbolsMsg};
use noseward_link::SymbolRead;

/// What is larger is reduced when it is drawn: the search goes no finer.
const LONGEST: Longest = Longest(2400.0);

/// Looks at the picture that was chosen first.
///
/// The browser reads the file itself, and by that and not as the source of an element: the
/// page's policy lets no picture in that is a file of the person's.
pub(super) fn look_at_next(page: &Rc<Page>) {
    let Some(file) = ({
        let mut files = page.reading.files.borrow_mut();
        (!files.is_empty()).then(|| files.remove(0))
    }) else {
        return;
    };
    let page = Rc::clone(page);
    spawn_local(async move {
        let found = match bitmap(&page, &file).await {
            Ok(bitmap) => found(&page, &bitmap),
            Err(_) => Err(PictureFault::NotPicture),
        };
        page.tell(SymbolsMsg::Looked(PictureRead { name: file.name(), found }));
    });
}

async fn bitmap(page: &Page, file: &File) -> Result<ImageBitmap, JsValue> {
    let bitmap = JsFuture::from(page.window.create_image_bitmap_with_blob(file)?).await?;
    Ok(bitmap.unchecked_into())
}

fn found(page: &Page, bitmap: &ImageBitmap) -> Result<Vec<SymbolRead>, PictureFault> {
    let size = (bitmap.width(), bitmap.height());
    let found = canvas(page).and_then(|canvas| {
        symbols(&canvas, size, LONGEST, |context, width, height| {
            context.draw_image_with_image_bitmap_and_dw_and_dh(
                bitmap, 0.0, 0.0, width, height,
            )
        })
    });
    bitmap.close();
    match found {
        Ok(found) if found.is_empty() => Err(PictureFault::NoSymbol),
        Ok(found) => Ok(found),
        Err(error) => {
            report::<()>(Err(error));
            Err(PictureFault::NotPicture)
        }
    }
}
