//! The word mat: words with pictures, in one or two languages, on screen and on paper.

use noseward_page_tests::{Key, Page, Result};
use serde_json::{Value, json};
use std::fs;

/// A4 and Letter, in centimetres.
const PAPER: [(&str, (f64, f64)); 2] = [("a4", (21.0, 29.7)), ("letter", (21.59, 27.94))];

/// How many cards there are, and the language beside on each.
async fn cards(page: &Page) -> Result<Value> {
    page.eval(
        "[document.querySelectorAll('.word').length,
          [...new Set([...document.querySelectorAll('.word > [lang]')].map(e => `${e.lang} ${e.dir}`))]]",
    )
    .await
}

/// Chooses from the list of second languages, as a person does by keyboard.
async fn beside(page: &Page, key: &str) -> Result<()> {
    page.run(&format!(
        "const list = document.getElementById('beside');
         list.value = '{key}';
         list.dispatchEvent(new Event('change', {{ bubbles: true }}));"
    ))
    .await?;
    let is_beside = format!(
        "('{key}' ? document.querySelectorAll('.word > [lang]').length === 30
            : !document.querySelector('.word > [lang]'))"
    );
    page.wait_until(&is_beside).await
}

async fn breaks_no_rule(page: &Page) -> Result<()> {
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    Ok(())
}

/// Prints the mat and counts its pages.
async fn fits_two_pages(page: &Page, name: &str) -> Result<()> {
    for (paper, size_cm) in PAPER {
        let path = page.print_on(&format!("words-{name}-{paper}"), size_cm).await?;
        let bytes = fs::read(path)?;
        let pages = bytes.split(|byte| *byte == b'\n');
        let pages = pages.filter(|line| line.ends_with(b"/Type /Page")).count();
        assert_eq!(pages, 2, "{name} on {paper}");
    }
    Ok(())
}

#[tokio::test]
async fn the_mat_opens_by_its_address_by_menu_and_by_keyboard() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    page.visit_file("?at=words").await?;
    page.ready().await?;
    page.is_at("words").await?;
    assert_eq!(page.eval("document.title").await?, "Word mat · Noseward");
    assert_eq!(cards(&page).await?, json!([30, []]));
    page.at("rocket").await?;
    page.at("words").await?;
    assert_eq!(page.focused_id().await?, "place-title");
    // From the place for whoever leads too.
    page.at("lead").await?;
    page.click("#lead-to-words").await?;
    page.is_at("words").await?;

    page.at("rocket").await?;
    page.run("document.querySelector('#more-menu > summary').focus();").await?;
    page.press(Key::Enter).await?;
    page.tab_to("to-words").await?;
    page.press(Key::Enter).await?;
    page.is_at("words").await?;
    assert_eq!(page.focused_id().await?, "place-title");
    page.tab_to("beside").await?;
    page.press("D").await?;
    page.wait_until("document.querySelectorAll('.word > [lang=de]').length === 30")
        .await?;
    assert_eq!(page.focused_id().await?, "beside", "the focus stays on the list");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_second_language_stands_beside_the_first() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("words").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("words").await?;
    let offered = "[...document.querySelectorAll('#beside option')].map(o => o.value)";
    let offered = page.eval(offered).await?;
    assert_eq!(offered, json!(["", "en-plain", "en-US", "de", "ar"]));
    for (key, is) in [("de", "de ltr"), ("ar", "ar rtl")] {
        beside(&page, key).await?;
        assert_eq!(cards(&page).await?, json!([30, [is]]));
        breaks_no_rule(&page).await?;
        page.screenshot(&format!("words-{key}")).await?;
        // Side by side, and on a telephone one below the other; nothing sticks out.
        for (size, is_side) in [((1366, 600), true), ((360, 740), false)] {
            page.set_viewport(size.0, size.1).await?;
            let lies = page
                .eval(
                    "(([a, b]) => [a.top === b.top,
                        document.documentElement.scrollWidth <= innerWidth])
                     ([...document.querySelectorAll('.word:first-child > div')]
                        .map(e => e.getBoundingClientRect()))",
                )
                .await?;
            assert_eq!(lies, json!([is_side, true]), "{key} at {size:?}");
        }
        page.screenshot(&format!("words-{key}-telephone")).await?;
        page.set_viewport(1366, 600).await?;
    }
    // The page goes on in its own language.
    assert_eq!(page.text("#place-title").await?, "Word mat");
    assert_eq!(page.eval("document.documentElement.lang").await?, "en-GB");
    beside(&page, "").await?;
    assert_eq!(cards(&page).await?, json!([30, []]));
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn the_mat_is_printed_alone_on_two_pages() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("words").await?;
    page.run("window.print = () => { window.printed = true; };").await?;
    page.click("#print-mat").await?;
    page.wait_until("window.printed").await?;
    for key in ["", "en-plain", "de", "ar"] {
        beside(&page, key).await?;
        fits_two_pages(&page, &format!("en-{key}")).await?;
    }
    page.cdp("Emulation.setEmulatedMedia", json!({ "media": "print" })).await?;
    let shown =
        "['.header', '.trial-line', '.place__lead', '#beside', '#print-mat', '#next-bar',
        '.footer', '#place-title', '.word', '.word__picture']
        .map(css => document.querySelector(css).checkVisibility())";
    let shown = page.eval(shown).await?;
    assert_eq!(
        shown,
        json!([false, false, false, false, false, false, false, true, true, true])
    );
    Ok(())
}
