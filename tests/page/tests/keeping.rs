//! Nothing is lost and nothing is left: two tabs, data of another version, no room, a
//! module that stops, and deleting everything.

use noseward_link::{Opened, hash, open_hash, to_file};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Example;

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const KEPT: &str = "localStorage.getItem('noseward/rocket')";

/// Waits until the rocket that is kept has this text in it.
async fn kept_holds(page: &Page, text: &str) -> Result<()> {
    page.wait_until(&format!("{KEPT}?.includes({text:?})")).await
}

#[tokio::test]
async fn a_tab_never_overwrites_what_another_has_kept() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "First").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "First").await?;

    page.open_tab("").await?;
    page.type_into("[id='/name']", "Second").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Second").await?;

    // The first tab has heard of it, says so, and leaves it alone.
    page.go_to_tab(0).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('Second')")
        .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    assert!(page.eval(KEPT).await?.as_str().unwrap().contains("Second"));
    page.reload().await?;
    assert_eq!(page.value("[id='/name']").await?, "First", "the address holds it");
    assert_eq!(page.value(WIDTH).await?, "70");

    page.click("#keep-this").await?;
    kept_holds(&page, "First").await?;
    page.go_to_tab(1).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('First')")
        .await?;
    page.click("#back-to-mine").await?;
    assert_eq!(page.value("[id='/name']").await?, "First");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// A tab that slept hears nothing; what it finds there before it writes must be enough.
#[tokio::test]
async fn a_tab_that_heard_nothing_looks_before_it_writes() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "\"diameter_mm\": 70").await?;
    // The same tab gets no event for what its own scripts write.
    let other = to_file(&Example::Tern.design().into());
    page.run(&format!("localStorage.setItem('noseward/rocket', {other:?});")).await?;
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('Tern')")
        .await?;
    assert_eq!(page.eval(KEPT).await?, other.as_str());
    Ok(())
}

#[tokio::test]
async fn what_a_newer_version_kept_is_left_alone() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let newer = r#"{"noseward":"rocket","version":99,"design":{"rooms":3}}"#;
    page.run(&format!("localStorage.setItem('noseward/rocket', {newer:?});")).await?;
    page.goto("").await?;
    assert!(page.text("#notice").await?.contains("cannot be read here"));
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    assert_eq!(page.eval(KEPT).await?, newer);
    let folder = page.allow_downloads("newer").await?;
    page.click("#save-kept").await?;
    let saved = page.downloaded(&folder.join("noseward-kept.json")).await?;
    assert_eq!(String::from_utf8(saved).unwrap(), newer);
    Ok(())
}

#[tokio::test]
async fn when_the_room_runs_out_a_banner_says_so_and_the_page_goes_on() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.run(
        "Storage.prototype.setItem = () => {
             throw new DOMException('full', 'QuotaExceededError'); };",
    )
    .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('nothing')")
        .await?;
    page.click("#copy-link-instead").await?;
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('72 mm')")
        .await?;
    let Opened::Record(record) =
        open_hash(page.eval("location.hash").await?.as_str().unwrap())
    else {
        panic!("the address holds the rocket")
    };
    assert_eq!(record.design.sections[1].diameter_mm, Some(72.0));
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The browser's own lists, not the page's word, say that nothing is left.
#[tokio::test]
async fn everything_is_deleted_when_asked_and_not_before() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.press(Key::Tab).await?;
    page.click("[id='units:inch']").await?;
    kept_holds(&page, "Ours").await?;
    page.wait_until("document.documentElement.dataset.offline === 'ready'").await?;
    // A second tab must not bring it back.
    page.open_tab("").await?;
    page.go_to_tab(0).await?;
    page.run("localStorage.setItem('another-page', 'stays');").await?;

    page.click("#computer > summary").await?;
    page.click("#ask-to-delete").await?;
    assert_eq!(page.focused_id().await?, "delete-now");
    page.click("#keep-all").await?;
    assert!(page.eval(KEPT).await?.as_str().unwrap().contains("Ours"));
    page.click("#ask-to-delete").await?;
    page.click_again("#delete-now").await?;
    page.wait_until("document.getElementById('notice').innerText.includes('is left')")
        .await?;
    let left = "JSON.stringify([Object.keys(localStorage), await caches.keys(), \
                (await navigator.serviceWorker.getRegistrations()).length, \
                Object.keys(sessionStorage), document.cookie])";
    assert_eq!(page.eval(left).await?, r#"[["another-page"],[],0,[],""]"#);
    assert_eq!(page.eval("location.hash").await?, "");
    assert_eq!(page.value("[id='/name']").await?, "Puffin");

    page.go_to_tab(1).await?;
    page.wait_until("document.getElementById('notice').innerText.includes('deleted')")
        .await?;
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("location.hash.length > 20").await?;
    assert_eq!(page.eval(KEPT).await?, serde_json::Value::Null);
    page.click("#keep-this").await?;
    kept_holds(&page, "Ours").await?;
    Ok(())
}

/// Makes the running module read outside its memory: what a fault in it would do.
const STOP: &str = "return import(document.querySelector('link[rel=modulepreload]').href)
    .then(module => module.default())
    .then(exports => new Promise(done => {
        addEventListener('error', () => setTimeout(done, 50), { once: true });
        setTimeout(() => exports.__wbindgen_free(0x7ffffff0, 16, 4), 0);
    }));";

#[tokio::test]
async fn a_module_that_stops_leaves_the_rocket_behind() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.type_into(WIDTH, "71.5").await?;
    assert_eq!(page.eval("document.getElementById('crash').hidden").await?, true);
    page.run(STOP).await?;
    page.wait_until("!document.getElementById('crash').hidden").await?;
    page.screenshot("stopped").await?;
    let mut expected = Example::Puffin.design();
    expected.name = "Ours".into();
    expected.sections[1].diameter_mm = Some(71.5);
    let expected = format!("{}#{}", page.address(), hash(&expected.into()));
    assert_eq!(page.value("#crash-text").await?, expected);
    // The link in the message leads back to the rocket as it was.
    page.click("#crash-link").await?;
    page.reload().await?;
    assert_eq!(page.value("[id='/name']").await?, "Ours");
    assert_eq!(page.value(WIDTH).await?, "71.5");
    Ok(())
}

#[tokio::test]
async fn a_fresh_start_is_a_way_out_of_a_rocket_that_breaks_the_page() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Ours").await?;
    page.press(Key::Tab).await?;
    kept_holds(&page, "Ours").await?;
    page.visit_file("?afresh").await?;
    page.ready().await?;
    assert_eq!(page.value("[id='/name']").await?, "Puffin");
    assert!(page.text("#notice").await?.contains("Ours"), "still kept");
    page.wait_until("location.search === ''").await?;
    page.click("#back-to-mine").await?;
    assert_eq!(page.value("[id='/name']").await?, "Ours");
    Ok(())
}

#[tokio::test]
async fn this_computer_is_checked_with_everything_barred() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    let barred = "Object.defineProperty(window, 'localStorage', {
            get() { throw new DOMException('barred', 'SecurityError'); } });
        Object.defineProperty(navigator, 'serviceWorker', { value: undefined });
        Object.defineProperty(navigator, 'clipboard', { value: {
            writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError'))
        } });
        window.print = () => {};
        HTMLAnchorElement.prototype.click = () => {};
        HTMLInputElement.prototype.click = () => {};";
    page.run_before_each_load(barred).await?;
    page.goto("").await?;
    page.click("#computer > summary").await?;
    page.click("[id='try:copying']").await?;
    page.wait_until("!document.getElementById('try:copying')").await?;
    for way in ["saving", "opening", "printing"] {
        page.click(&format!("[id='try:{way}']")).await?;
        page.click(&format!("[id='barred:{way}']")).await?;
        page.wait_until(&format!("!document.getElementById('barred:{way}')")).await?;
    }
    page.screenshot("computer-barred").await?;
    let check = page.text("#check").await?;
    assert_eq!(check.matches("Barred").count(), 6, "{check}");
    // The way that still works needs nothing but eyes and a pencil.
    page.click("#share-button").await?;
    page.wait_until("document.querySelectorAll('#share li').length > 0").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
