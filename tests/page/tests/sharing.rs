//! The ways out of one computer and into another, each with the others barred, and what
//! the page says to the network meanwhile: nothing.

use noseward_link::{code, hash, to_file};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Example;
use serde_json::{Value, json};

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const ROWS: &str = "[...document.querySelectorAll('#share .share__code li')]\
                    .map(row => row.textContent).join('\\n')";

/// Bars everything that a browser may bar; the page gets no storage, clipboard, download,
/// file chooser, print or service worker.
const BARRED: &str = "
    Object.defineProperty(window, 'localStorage', {
        get() { throw new DOMException('barred', 'SecurityError'); } });
    Object.defineProperty(navigator, 'serviceWorker', { value: undefined });
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
    history.replaceState = history.pushState = () => { throw new DOMException('barred', 'SecurityError'); };
    URL.createObjectURL = () => { throw new DOMException('barred', 'SecurityError'); };
    window.print = () => {};";

/// A page on which everything is barred.
async fn barred(hash: &str) -> Result<Page> {
    let page = Page::unopened(1366, 600).await?;
    page.run_before_each_load(BARRED).await?;
    page.goto(hash).await?;
    Ok(page)
}

#[tokio::test]
async fn a_code_read_off_one_screen_and_typed_on_another() -> Result<()> {
    let page = barred(&hash(&Example::Gannet.design().into())).await?;
    page.at("hand-in").await?;
    page.wait_until("document.querySelectorAll('#share li').length > 1").await?;
    let shown = page.eval(ROWS).await?;
    let shown = shown.as_str().unwrap();
    assert_eq!(shown, code(&Example::Gannet.design().into()));

    let other = barred("").await?;
    other.click("#begin-open > summary").await?;
    // Key by key, as a hand would: small letters, O for 0, no spaces.
    let typed = shown.replace(' ', "").replace('0', "o").to_lowercase();
    let lines: Vec<&str> = typed.lines().collect();
    other.type_into("#open-text", &lines.join(" ")).await?;
    other.press(Key::Tab).await?;
    other.press(Key::Enter).await?;
    other.wait_until("document.getElementById('/name').value === 'Gannet'").await?;
    assert_eq!(other.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_slip_in_a_code_is_found_in_its_row_and_loses_nothing() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let mut rows: Vec<String> =
        code(&Example::Tern.design().into()).lines().map(str::to_owned).collect();
    let wrong = if rows[1].starts_with('7') { "8" } else { "7" };
    rows[1].replace_range(0..1, wrong);
    page.open_text(&rows.join("\n")).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('ow 2')")
        .await?;
    assert_eq!(page.value("[id='/name']").await?, "Puffin");
    assert_eq!(page.value("#open-text").await?, rows.join("\n"), "to be mended there");
    Ok(())
}

#[tokio::test]
async fn a_link_and_a_file_go_in_by_paste_with_all_else_barred() -> Result<()> {
    let page = barred("").await?;
    let tern = Example::Tern.design();
    page.open_text(&format!("See https://x.test/n/#{}", hash(&tern.into()))).await?;
    page.wait_until("document.getElementById('/name').value === 'Tern'").await?;
    page.open_text(&to_file(&Example::Razorbill.design().into())).await?;
    page.wait_until("document.getElementById('/name').value === 'Razorbill'").await?;
    // The link can be read off the page although the address bar may not be written.
    page.at("hand-in").await?;
    page.wait_until("document.getElementById('share-link')").await?;
    let expected =
        format!("{}#{}", page.address(), hash(&Example::Razorbill.design().into()));
    assert_eq!(page.value("#share-link").await?, expected);
    Ok(())
}

#[tokio::test]
async fn what_is_shared_follows_the_rocket() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("hand-in").await?;
    page.wait_until("document.querySelectorAll('#share li').length > 1").await?;
    page.screenshot("share").await?;
    let before = page.eval(ROWS).await?;
    let symbol = page.eval("document.querySelector('#share svg').innerHTML").await?;
    page.at("rocket").await?;
    page.type_into(WIDTH, "71").await?;
    page.press(Key::Tab).await?;
    page.at("hand-in").await?;
    page.wait_until(&format!("{ROWS} !== {before}")).await?;
    assert_ne!(
        page.eval("document.querySelector('#share svg').innerHTML").await?,
        symbol
    );
    page.set_viewport(360, 740).await?;
    page.screenshot("share-narrow").await?;
    let wide = "document.documentElement.scrollWidth > innerWidth";
    assert_eq!(page.eval(wide).await?, false);
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    Ok(())
}

#[tokio::test]
async fn paper_carries_code_and_symbol_of_the_rocket_as_it_is() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(WIDTH, "71").await?;
    page.press(Key::Tab).await?;
    page.all_is_here().await?;
    // What is on the sheet while the browser prints by itself.
    page.run(
        "addEventListener('beforeprint', () => {
            const sheet = document.querySelector('#sheet-of-paper .handout');
            const rows = [...sheet.querySelectorAll('li')].map(row => row.textContent);
            window.printed = [rows.join('\\n'), sheet.querySelectorAll('svg').length];
        });",
    )
    .await?;
    page.print("rocket-with-code").await?;
    let mut design = Example::Puffin.design();
    design.sections[1].diameter_mm = Some(71.0);
    page.wait_until("window.printed").await?;
    assert_eq!(page.eval("window.printed").await?, json!([code(&design.into()), 1]));
    Ok(())
}

#[tokio::test]
async fn the_lesson_is_printed_alone() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.run(
        "window.print = () => { window.paper = document.documentElement.dataset.paper; };",
    )
    .await?;
    page.at("lead").await?;
    page.click("#paper > summary").await?;
    page.click("#print-lesson").await?;
    page.wait_until("window.paper === 'lesson'").await?;
    page.print("lesson").await?;
    page.wait_until("document.documentElement.dataset.paper === undefined").await?;
    Ok(())
}

/// The note for IT says: one origin, no cookie, no request after the page and its copy
/// have loaded. The browser's own record of the network is the witness.
#[tokio::test]
async fn the_note_for_it_is_true() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.wait_until("document.documentElement.dataset.offline === 'ready'").await?;
    let note = page.eval("document.getElementById('privacy').textContent").await?;
    for claim in ["One origin", "no cookies", "it makes no request", "noseward/"] {
        assert!(note.as_str().unwrap().contains(claim), "{claim}");
    }
    let loaded = page.requests().await?;
    assert!(
        loaded.iter().all(|request| request.starts_with(page.address())),
        "{loaded:?}"
    );

    // From now on nothing may be asked for, whatever somebody does.
    page.run(
        "window.asked = [];
         new PerformanceObserver(list => window.asked.push(
             ...list.getEntries().map(entry => entry.name))).observe({ type: 'resource' });",
    )
    .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.click("[id='units:inch']").await?;
    page.click("[id='add:weight']").await?;
    page.open_text(&hash(&Example::Tern.design().into())).await?;
    page.click("#undo").await?;
    for place in ["measure", "predict", "swing", "compare", "conclude", "hand-in"] {
        page.at(place).await?;
    }
    page.more("#copy-link").await?;
    let folder = page.allow_downloads("silent").await?;
    page.more("#save").await?;
    page.downloaded(&folder.join(noseward_link::file_name(&Example::Puffin.design())))
        .await?;
    page.at("why").await?;
    page.wait_until("document.getElementById('air-sure').textContent.length > 100")
        .await?;
    assert_eq!(page.requests().await?, loaded);
    // A file is handed over under an address of the page's own making.
    let asked =
        page.eval("window.asked.filter(name => !name.startsWith('blob:'))").await?;
    assert_eq!(asked, json!([]));
    assert_eq!(page.eval("document.cookie").await?, "");
    let cookies = page.cdp("Network.getAllCookies", json!({})).await?;
    assert_eq!(cookies["cookies"], json!([]));
    let keys = page.eval("Object.keys(localStorage)").await?;
    let ours = |key: &Value| key.as_str().is_some_and(|key| key.starts_with("noseward/"));
    assert!(keys.as_array().unwrap().iter().all(ours), "{keys}");
    Ok(())
}

/// Whoever has reached a button that is drawn anew stays on it.
#[tokio::test]
async fn the_focus_stays_on_a_button_whose_region_is_drawn_anew() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.run("document.getElementById('to-swing').focus();").await?;
    let before = page.eval("document.getElementById('path').innerHTML").await?;
    page.run(
        "const name = document.getElementById('/name'); name.value = 'Auk';
         name.dispatchEvent(new InputEvent('input', { bubbles: true }));",
    )
    .await?;
    page.wait_until(&format!("document.getElementById('path').innerHTML !== {before}"))
        .await?;
    assert_eq!(page.focused_id().await?, "to-swing");
    Ok(())
}
