//! QR symbols come to the class: in pictures, and before a camera.

use noseward_lesson::{Notebook, TrialResult, example_class};
use noseward_link::{NotebookFile, notebook_parts, result_code};
use noseward_page_tests::{Engine, Page, Result};
use qrcodegen::{QrCode, QrCodeEcc};
use serde_json::{Value, json};
use std::path::Path;

/// Draws symbols, each given by its rows of 0 and 1, on a canvas like a sheet on a dark table.
const DRAW: &str = "const draw = (canvas, symbols, across) => {
    const context = canvas.getContext('2d');
    const { width, height } = canvas;
    context.fillStyle = '#544';
    context.fillRect(0, 0, width, height);
    const light = context.createLinearGradient(0, 0, width, height);
    light.addColorStop(0, '#fff');
    light.addColorStop(1, '#998');
    context.fillStyle = light;
    context.fillRect(width / 40, height / 40, width * 0.95, height * 0.95);
    const side = width * 0.95 / across;
    symbols.forEach((rows, i) => {
        const module = side / (rows.length + 12);
        context.save();
        context.translate(width / 40 + side * (i % across + 0.5),
            height / 40 + side * (Math.floor(i / across) + 0.5));
        context.rotate((i + 1) * 7 * Math.PI / 180);
        context.fillStyle = '#222';
        rows.forEach((row, y) => [...row].forEach((dark, x) => {
            if (dark === '1') {
                context.fillRect((x - rows.length / 2) * module,
                    (y - rows.length / 2) * module, module * 1.02, module * 1.02);
            }
        }));
        context.restore();
    });
};
";

/// The rows of a symbol, as the page makes it.
fn rows(code: &str) -> Value {
    let compact: String = code.split_whitespace().collect();
    let symbol = QrCode::encode_text(&compact, QrCodeEcc::Low).expect("it fits");
    let row = |y| -> String {
        let modules = (0..symbol.size()).map(|x| symbol.get_module(x, y));
        modules.map(|dark| if dark { '1' } else { '0' }).collect()
    };
    (0..symbol.size()).map(row).collect()
}

/// The code of the first complete trial of each group of the invented class but the last, and the parts of
/// that one's notebook.
fn codes() -> (Vec<String>, Vec<String>) {
    let mut class = example_class();
    let notebook = class.pop().expect("it has groups");
    let code = |notebook: &Notebook| {
        let trial = notebook.trials().iter().find(|trial| trial.is_complete())?;
        Some(result_code(&TrialResult::of(notebook, trial.id())?))
    };
    let parts = notebook_parts(&NotebookFile { notebook, rocket: None });
    (class.iter().filter_map(code).collect(), parts.expect("it fits"))
}

async fn says(page: &Page, words: &str) -> Result<()> {
    let place = "document.getElementById('place-regions').innerText";
    page.wait_until(&format!("{place}.includes({})", json!(words))).await
}

/// Chooses pictures with these symbols, as a camera of 12 megapixels takes them, and a file
/// that is none.
async fn choose(page: &Page, pictures: &[(&str, Vec<Value>, u32)]) -> Result<()> {
    page.run(&format!(
        "return (async () => {{
        {DRAW}
        const canvas = document.createElement('canvas');
        canvas.width = 4000;
        canvas.height = 3000;
        const files = new DataTransfer();
        for (const [name, symbols, across] of {}) {{
            draw(canvas, symbols, across);
            const blob = await new Promise((done) => canvas.toBlob(done, 'image/jpeg', 0.8));
            files.items.add(new File([blob], name, {{ type: 'image/jpeg' }}));
        }}
        files.items.add(new File(['no picture'], 'broken.png', {{ type: 'image/png' }}));
        const field = document.getElementById('class-files');
        field.files = files.files;
        field.dispatchEvent(new Event('change', {{ bubbles: true }}));
        }})();",
        json!(pictures)
    ))
    .await?;
    says(page, "broken.png").await
}

async fn symbols_in_pictures_come_to_the_class(page: &Page) -> Result<()> {
    let (codes, parts) = codes();
    page.at("class").await?;
    page.all_is_here().await?;
    let all: Vec<Value> = codes.iter().chain(&parts).map(|code| rows(code)).collect();
    let (first, rest) = all.split_at(all.len() - 1);
    let pictures = [
        ("sheet.jpg", first.to_vec(), 6),
        ("last.jpg", rest.to_vec(), 2),
        ("sky.jpg", vec![], 1),
    ];
    choose(page, &pictures).await?;
    says(page, &format!("{} symbols were read.", first.len())).await?;
    says(page, "1 symbol was read.").await?;
    says(page, "No QR symbol was found").await?;
    says(page, "cannot open this file as a picture").await?;
    says(page, "whole notebooks: 1.").await?;
    says(page, &format!("groups: {}", codes.len() + 1)).await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn symbols_in_pictures_are_read_in_chromium() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    symbols_in_pictures_come_to_the_class(&page).await?;
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    page.screenshot("class-symbols").await?;
    Ok(())
}

#[tokio::test]
async fn symbols_in_pictures_are_read_in_firefox() -> Result<()> {
    let page = Page::open_in(Engine::Firefox, 1366, 600).await?;
    symbols_in_pictures_come_to_the_class(&page).await
}

#[tokio::test]
async fn symbols_in_pictures_are_read_in_webkit() -> Result<()> {
    let page = Page::open_in(Engine::WebKit, 1366, 600).await?;
    symbols_in_pictures_come_to_the_class(&page).await
}

/// Its policy lets in nothing at all.
#[tokio::test]
async fn symbols_in_pictures_are_read_in_the_single_file() -> Result<()> {
    let dist = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../dist");
    let file = dist.join("noseward.html").canonicalize()?;
    let page = Page::unopened(1366, 600).await?;
    page.visit_address(&format!("file://{}", file.display())).await?;
    page.ready().await?;
    symbols_in_pictures_come_to_the_class(&page).await
}

/// A camera that shows a canvas with these symbols; what was given of it is told by `tracks`.
async fn pretend_camera(page: &Page, symbols: &[Value]) -> Result<()> {
    page.run(&format!(
        "{DRAW}
        const canvas = document.createElement('canvas');
        canvas.width = 640;
        canvas.height = 480;
        window.tracks = [];
        window.show = (symbols) => draw(canvas, symbols, 1.5);
        window.show({});
        navigator.mediaDevices.getUserMedia = async (wish) => {{
            window.wish = wish;
            const stream = canvas.captureStream(20);
            window.tracks.push(...stream.getTracks());
            // A canvas that is not drawn gives no pictures.
            window.again = setInterval(() => canvas.getContext('2d').fillRect(0, 0, 1, 1), 50);
            return stream;
        }};",
        json!(symbols)
    ))
    .await?;
    Ok(())
}

const GIVEN_BACK: &str = "window.tracks.length > 0
    && window.tracks.every((track) => track.readyState === 'ended')";

#[tokio::test]
async fn symbols_before_the_camera_come_to_the_class_and_leaving_stops_it() -> Result<()>
{
    let (codes, parts) = codes();
    let page = Page::open(1366, 600).await?;
    page.at("class").await?;
    pretend_camera(&page, &[rows(&codes[0])]).await?;
    page.click("#cl-camera").await?;
    says(&page, "Hold one symbol after the other").await?;
    says(&page, "Trials: 1, groups: 1").await?;
    assert_eq!(page.focused_id().await?, "cl-camera", "the button is the same");
    page.screenshot("class-camera").await?;
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    // A notebook in several, one after the other.
    for (part, here) in parts.iter().zip(1..) {
        page.run(&format!("window.show([{}]);", rows(part))).await?;
        if here < parts.len() {
            says(&page, &format!("{here} of {} symbols", parts.len())).await?;
        }
    }
    says(&page, "whole notebooks: 1.").await?;
    // By the button, and by what takes the picture away.
    for leave in ["#cl-camera", "#cl-show\\:1", "#to-rocket"] {
        assert_eq!(page.eval(GIVEN_BACK).await?, false);
        page.click(leave).await?;
        page.wait_until(GIVEN_BACK).await?;
        page.at("class").await?;
        page.click("#cl-show\\:0").await?;
        page.run("window.tracks.length = 0;").await?;
        page.click_again("#cl-camera").await?;
        says(&page, "Hold one symbol after the other").await?;
    }
    // The camera was unplugged.
    page.run("window.tracks.forEach((track) => track.stop());").await?;
    says(&page, "No camera was found").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn without_a_camera_the_page_says_why_and_what_else_works() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("class").await?;
    for (name, words) in [
        ("NotAllowedError", "does not let this page use the camera"),
        ("NotFoundError", "No camera was found"),
        ("NotReadableError", "Another program uses the camera"),
    ] {
        page.run(&format!(
            "navigator.mediaDevices.getUserMedia = async () => {{
                throw new DOMException('', '{name}');
            }};"
        ))
        .await?;
        page.click_again("#cl-camera").await?;
        says(&page, words).await?;
        says(&page, "It works without a camera here, too").await?;
    }
    page.run(
        "Object.defineProperty(navigator, 'mediaDevices', { value: undefined });
         Object.defineProperty(window, 'isSecureContext', { value: false });",
    )
    .await?;
    page.click_again("#cl-camera").await?;
    says(&page, "begins with https").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
