//! The swing bench: the whole test by keyboard, in motion and in stillness.

use noseward_lesson::SwingOutcome;
use noseward_link::{Opened, open_hash};
use noseward_page_tests::{Key, Page, Result};
use std::time::{Duration, Instant};

/// How long the address may take to follow, on a busy machine.
const PATIENCE: Duration = Duration::from_secs(30);

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const STRING: &str = "[id='swing:string']";

async fn swings(page: &Page) -> Result<Vec<SwingOutcome>> {
    let hash = page.eval("location.hash").await?;
    let Opened::Record(record) = open_hash(hash.as_str().expect("the address is a text"))
    else {
        panic!("{hash} holds no rocket")
    };
    Ok(record.swings.outcomes().to_vec())
}

#[tokio::test]
async fn the_whole_test_by_keyboard() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("predict").await?;
    page.click("[id='nb-outcome:1']").await?;
    page.type_into("[id='nb:draft_because']", "small fins").await?;
    page.at("swing").await?;
    page.screenshot("swing-1366x600").await?;
    page.click("#swing-part-room > summary").await?;
    let clear =
        "document.querySelector('#swing-part-room p:nth-of-type(2) strong').textContent";
    page.wait_until(clear).await?;
    let before = page.eval(clear).await?;

    // A shorter string needs less room.
    page.element(STRING).await?.focus().await?;
    page.press(Key::Control + "a").await?;
    page.press("0,9").await?;
    page.wait_until(&format!("{clear} !== {before}")).await?;
    page.press(Key::Tab).await?;
    assert_eq!(page.value(STRING).await?, "0.9");
    // No outcome before a prediction is locked.
    page.run("document.getElementById('swung:0').click();").await?;
    assert_eq!(swings(&page).await?, []);
    page.click("#swing-to-predict").await?;
    page.click("#nb-lock").await?;
    page.wait_until("document.activeElement.id === 'next'").await?;
    page.press(Key::Enter).await?;
    page.is_at("swing").await?;

    // No outcome before the space is checked.
    page.tab_to("to-space").await?;
    page.press(Key::Tab).await?;
    page.press(Key::Enter).await?;
    assert_eq!(swings(&page).await?, []);

    page.tab_back_to("to-space").await?;
    page.press(Key::Enter).await?;
    page.wait_until("document.activeElement.id === 'swing-card'").await?;
    assert!(page.text("#swing-card").await?.contains("Mark a line"));
    page.tab_to("space-checked").await?;
    page.press(Key::Enter).await?;
    page.wait_until("!document.getElementById('swing-why-not')").await?;
    page.tab_to("swing-card:next").await?;
    for _ in 5..7 {
        page.press(Key::Enter).await?;
        page.wait_until("document.activeElement.id === 'swing-card'").await?;
        page.press(Key::Tab).await?;
        page.press(Key::Tab).await?;
    }
    assert!(page.text("#swing-card").await?.contains("Don’t grab it"));

    page.tab_to("swung:0").await?;
    page.press(Key::Enter).await?;
    page.tab_to("swung:4").await?;
    page.press(Key::Enter).await?;
    page.tab_back_to("swung:1").await?;
    // A key that is held down is one press.
    page.press(Key::Enter + Key::Enter).await?;
    page.press_again(Key::Enter).await?;
    page.wait_until(
        "document.getElementById('swings-said').innerText.includes('Three swings')",
    )
    .await?;
    use SwingOutcome::{Slipped, Steady, Wobbling};
    let seen = [Steady, Slipped, Wobbling, Wobbling];
    // The address follows a moment after the last of them; what it holds at the end of
    // the wait is compared.
    page.wait_until("document.querySelectorAll('#swings-seen li').length === 4").await?;
    let start = Instant::now();
    while swings(&page).await? != seen && start.elapsed() < PATIENCE {
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    assert_eq!(swings(&page).await?, seen);
    page.screenshot("swing-recorded").await?;

    // They are there after a reload, in a link, and not with another rocket.
    page.reload().await?;
    page.is_at("swing").await?;
    page.wait_until("document.getElementById('swings-seen')").await?;
    assert_eq!(
        page.eval("document.querySelectorAll('#swings-seen li').length").await?,
        4
    );
    assert_eq!(page.value(STRING).await?, "0.9", "with the string they were swung on");
    page.at("rocket").await?;
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Tab).await?;
    page.at("swing").await?;
    page.click("#swing-part-model > summary").await?;
    page.wait_until(
        "document.getElementById('swing-before').innerText.includes('Dashed')",
    )
    .await?;
    assert_eq!(swings(&page).await?, []);
    page.screenshot("swing-compared").await?;
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// Where the motion is worked out and shown.
async fn at_the_motion(page: &Page) -> Result<()> {
    page.at("swing").await?;
    page.click("#swing-part-model > summary").await?;
    page.wait_until("document.querySelector('#swing-strip svg')").await
}

#[tokio::test]
async fn the_pictures_move_and_stop_when_told() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    at_the_motion(&page).await?;
    let time = "document.getElementById('swing-time').textContent";
    let rocket = "document.querySelector('#swing-along svg').innerHTML";
    let (at_first, drawn) = (page.eval(time).await?, page.eval(rocket).await?);
    page.click("#swing-play").await?;
    page.wait_until(&format!("{time} !== {at_first} && {rocket} !== {drawn}")).await?;
    assert_eq!(page.text("#swing-play").await?, "Pause");
    page.click("#swing-play").await?;
    page.wait_until("document.getElementById('swing-play').innerText === 'Play'").await?;
    let paused = page.eval(time).await?;
    page.run("return new Promise(done => setTimeout(done, 200));").await?;
    assert_eq!(page.eval(time).await?, paused);
    page.click("#swing-step").await?;
    page.wait_until(&format!("{time} !== {paused}")).await?;
    page.click("#swing-rewind").await?;
    page.wait_until(&format!("{time} === {at_first}")).await?;
    // To the end by itself.
    page.click("[id='swing-speed:100']").await?;
    page.click("#swing-play").await?;
    page.wait_until("document.getElementById('swing-play').innerText === 'Play'").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn without_motion_stills_and_words_say_the_same() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    page.prefer("prefers-reduced-motion", "reduce").await?;
    page.goto("").await?;
    at_the_motion(&page).await?;
    assert_eq!(
        page.eval("document.getElementById('swing-play')").await?,
        serde_json::Value::Null
    );
    let stills = "[...document.querySelectorAll('.stills li')].length";
    assert_eq!(page.eval(stills).await?, 6);
    assert!(page.text(".stills").await?.contains("0.0 s: 90°"));
    assert!(page.text("#swing-words").await?.contains("nose-first"));
    let time = "document.getElementById('swing-time').textContent";
    let before = page.eval(time).await?;
    page.click("#swing-step").await?;
    page.wait_until(&format!("{time} !== {before}")).await?;
    page.screenshot("swing-still").await?;
    Ok(())
}

#[tokio::test]
async fn on_a_telephone_and_on_paper_it_is_all_there() -> Result<()> {
    let page = Page::open(360, 740).await?;
    at_the_motion(&page).await?;
    page.screenshot("swing-360x740").await?;
    let wide = "document.documentElement.scrollWidth > innerWidth";
    assert_eq!(page.eval(wide).await?, false);
    page.run("window.print = () => { window.printed = true; };").await?;
    page.click("#print-swing").await?;
    page.wait_until(
        "window.printed && document.documentElement.dataset.paper === 'swing'",
    )
    .await?;
    let cards = "document.querySelectorAll('#sheet-of-paper ol > li').length";
    assert_eq!(page.eval(cards).await?, 7);
    page.print("swing").await?;
    Ok(())
}
