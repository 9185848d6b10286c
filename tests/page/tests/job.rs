//! The whole job, as a pupil does it: open, describe the rocket, read its two points,
//! share it.

use noseward_link::{Opened, hash, open_hash, to_file};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::{
    Example, MeasuredPoints, Planform, Resolution, SeparationDraws, evaluate,
};
use serde_json::Value;

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const STRAIGHT: &str = "[id='/sections/1/length_mm']";
const CLAY_MASS: &str = "[id='/weights/0/mass_g']";
const CLAY_PLACE: &str = "[id='/weights/0/position_mm']";

fn failed<T>(words: String) -> Result<T> {
    Err(std::io::Error::other(words).into())
}

#[tokio::test]
async fn a_click_into_a_number_selects_it() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.click(WIDTH).await?;
    page.press("82").await?;
    assert_eq!(page.value(WIDTH).await?, "82");
    // Whoever is in it already sets the caret, to mend one digit.
    page.click(WIDTH).await?;
    page.press(Key::End + "5").await?;
    assert_eq!(page.value(WIDTH).await?, "825");
    Ok(())
}

#[tokio::test]
async fn by_keyboard_alone_and_on_to_another_computer() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let before = page.text("#strip").await?;
    assert!(before.contains("51 mm"), "the worked example is there at once: {before}");

    page.tab_to("/sections/1/diameter_mm").await?;
    page.press(Key::Control + "a").await?;
    page.press("7 cm").await?;
    page.press(Key::Tab).await?;
    assert_eq!(page.value(WIDTH).await?, "70", "tidied when it is left");

    // The straight part: once up, ten down.
    assert_eq!(page.focused_id().await?, "/sections/1/length_mm");
    page.press(Key::Up).await?;
    page.press(Key::Shift + Key::Down).await?;
    assert_eq!(page.value(STRAIGHT).await?, "116");

    page.tab_to("/fins/0/planform/four_sided/span_mm").await?;
    page.press(Key::Control + "a").await?;
    page.press("62,5").await?;
    page.tab_to("add:weight").await?;
    page.press(Key::Enter).await?;
    page.wait_until("document.activeElement.id === 'part:/weights/1'").await?;
    page.tab_to("/weights/1/mass_g").await?;
    page.press(Key::Control + "a").await?;
    page.press("4").await?;
    page.press(Key::Tab).await?;

    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await?;
    let words = page.in_words().await?;
    page.keeps_rocket(|record| {
        let planform = &record.design.fins[0].planform;
        matches!(planform, Planform::FourSided { span_mm, .. } if *span_mm == 62.5)
    })
    .await?;

    // The same numbers, worked out natively from what the link holds.
    let hash_now = page.eval("location.hash").await?;
    let Opened::Record(record) = open_hash(hash_now.as_str().unwrap_or_default()) else {
        return failed(format!("the address holds no design: {hash_now}"));
    };
    let figures = evaluate(&record.design).figures.expect("it can be drawn");
    let apart = format!("{:.0} mm", (figures.least_separation_m * 1000.0).abs());
    assert!(page.text("#strip").await?.contains(&apart), "{apart}");

    page.reload().await?;
    assert_eq!(page.in_words().await?, words);

    let other = Page::unopened(1366, 600).await?;
    other.goto(hash_now.as_str().unwrap_or_default()).await?;
    assert_eq!(other.in_words().await?, words);
    assert_eq!(other.value("[id='/weights/1/mass_g']").await?, "4");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn focus_and_caret_stay_while_everything_is_redrawn() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.click(STRAIGHT).await?;
    page.press(Key::Home).await?;
    page.press("9").await?;
    page.wait_until("document.getElementById('faults').innerText.includes('mend')")
        .await?;
    let caret = page.eval("document.activeElement.selectionStart").await?;
    assert_eq!(caret, 1);
    assert_eq!(page.focused_id().await?, "/sections/1/length_mm");
    assert_eq!(page.value(STRAIGHT).await?, "9125");
    assert_eq!(
        page.text("[id='fault:/sections/1/length_mm']").await?,
        "Use a number from 1 mm to 2000 mm."
    );
    Ok(())
}

#[tokio::test]
async fn every_keystroke_redraws() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.click(CLAY_MASS).await?;
    page.press(Key::End).await?;
    let mut seen = vec![page.in_words().await?];
    for key in ["0", "."] {
        page.press(key).await?;
    }
    page.wait_until("document.getElementById('in-words').innerText.includes('236 g')")
        .await?;
    seen.push(page.in_words().await?);
    page.press(Key::Backspace).await?;
    page.press(Key::Backspace).await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('56 g')")
        .await?;
    assert_eq!(page.in_words().await?, seen[0]);
    Ok(())
}

#[tokio::test]
async fn nonsense_is_named_and_loses_nothing() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let drawing = "[...document.querySelectorAll('[data-group=rocket] path')]
        .map(path => path.getAttribute('d')).join()";
    let before = page.eval(drawing).await?;
    page.type_into(WIDTH, "wide").await?;
    page.wait_until("document.getElementById('faults').innerText.includes('mend')")
        .await?;
    assert!(page.text("#faults").await?.contains("Bottle, width: I cannot read this."));
    assert_eq!(page.value(WIDTH).await?, "wide");
    assert_eq!(page.eval(drawing).await?, before);
    let invalid = format!("document.querySelector(`{WIDTH}`).ariaInvalid");
    assert_eq!(page.eval(&invalid).await?, "true");
    page.screenshot("nonsense").await?;

    // A value that cannot be drawn: the last rocket stays, faded, and the list leads there.
    page.type_into(WIDTH, "65").await?;
    page.type_into(CLAY_PLACE, "999").await?;
    page.wait_until("document.documentElement.dataset.stale === 'true'").await?;
    assert_eq!(page.eval(drawing).await?, before);
    page.click("#faults button").await?;
    assert_eq!(page.focused_id().await?, "/weights/0/position_mm");
    page.press(Key::Control + "a").await?;
    page.press("99").await?;
    page.wait_until("document.getElementById('faults').innerText === ''").await?;

    // What could be two numbers is asked about, and the answer is one press.
    page.type_into(WIDTH, "1,234").await?;
    page.wait_until("document.querySelector('[data-action=take]')").await?;
    page.click("[id='take:/sections/1/diameter_mm:1.234']").await?;
    page.wait_until(&format!("document.querySelector(`{WIDTH}`).value === '1.2'"))
        .await?;
    Ok(())
}

#[tokio::test]
async fn undo_redo_and_starting_from_something_else() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(WIDTH, "72").await?;
    page.press(Key::Control + "z").await?;
    page.wait_until(&format!("document.querySelector(`{WIDTH}`).value === '65'")).await?;
    page.press(Key::Control + "y").await?;
    page.wait_until(&format!("document.querySelector(`{WIDTH}`).value === '72'")).await?;

    page.click("#begin-example > summary").await?;
    page.click("[id='start:1']").await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('Tern')")
        .await?;
    assert!(page.text("#passing").await?.contains("Undo brings the last rocket back"));
    assert_eq!(page.eval("document.querySelector('.menu[open]')").await?, Value::Null);
    page.click("#undo").await?;
    page.wait_until(&format!("document.querySelector(`{WIDTH}`)?.value === '72'"))
        .await?;
    assert!(page.text("#passing").await?.contains("Undone: another rocket, Tern"));
    Ok(())
}

#[tokio::test]
async fn save_open_and_paste() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let folder = page.allow_downloads("save").await?;
    page.more("#save").await?;
    let saved = page.downloaded(&folder.join("puffin.rocket.json")).await?;
    assert_eq!(String::from_utf8(saved)?, to_file(&Example::Puffin.design().into()));

    let razorbill = folder.join("razorbill.rocket.json");
    std::fs::write(&razorbill, to_file(&Example::Razorbill.design().into()))?;
    page.click("#begin-open > summary").await?;
    let input = page.element("#open-file").await?;
    input.send_keys(razorbill.to_string_lossy().as_ref()).await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('Razorbill')",
    )
    .await?;

    let link =
        format!("see {}#{} !", page.address(), hash(&Example::Gannet.design().into()));
    page.open_text(&link).await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('Gannet')")
        .await?;

    page.open_text("hello").await?;
    page.wait_until("document.querySelector('.notice--alarm')").await?;
    assert!(page.in_words().await?.contains("Gannet"));
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_link_never_overwrites_what_was_kept_unasked() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into("[id='/name']", "Mine").await?;
    page.keeps_rocket(|record| record.design.name == "Mine").await?;

    page.goto(&hash(&Example::Tern.design().into())).await?;
    assert!(page.text("#notice").await?.contains("Another rocket, Mine, is kept"));
    let before = page.eval("location.hash").await?;
    page.type_into("[id='/name']", "Visitor").await?;
    page.wait_until(&format!("location.hash !== {before}")).await?;
    page.keeps_rocket(|record| record.design.name == "Mine").await?;

    page.click("#back-to-mine").await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('Mine')")
        .await?;

    // A damaged link says so; what was kept is shown and stays.
    let mut damaged = hash(&Example::Tern.design().into());
    let last = damaged.pop();
    damaged.push(if last == Some('A') { 'B' } else { 'A' });
    damaged.replace_range(20..21, if &damaged[20..21] == "A" { "B" } else { "A" });
    page.goto(&damaged).await?;
    assert!(page.text("#notice").await?.contains("could not be opened"));
    assert!(page.in_words().await?.contains("Mine"));

    // A cut link opens what it can.
    let whole = hash(&Example::Puffin.design().into());
    page.goto(&whole[..whole.len() - 12]).await?;
    assert!(page.text("#notice").await?.contains("cut short"));
    assert!(page.in_words().await?.contains("Puffin"));
    page.screenshot("cut-link").await?;
    page.keeps_rocket(|record| record.design.name == "Mine").await?;
    Ok(())
}

#[tokio::test]
async fn a_link_put_into_the_address_bar_of_the_open_page_is_opened() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let razorbill = hash(&Example::Razorbill.design().into());
    page.eval(&format!("location.hash = '{razorbill}'")).await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('Razorbill')",
    )
    .await?;
    page.click("#undo").await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('Puffin')")
        .await?;
    Ok(())
}

#[tokio::test]
async fn copying_works_and_says_what_to_do_where_it_is_blocked() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.run(
        "window.copied = [];
         Object.defineProperty(navigator, 'clipboard', { configurable: true,
             value: { writeText: text => { copied.push(text); return Promise.resolve(); } } });",
    )
    .await?;
    page.more("#copy-link").await?;
    page.wait_until(
        "document.getElementById('passing').innerText.includes('Link copied')",
    )
    .await?;
    let copied = page.eval("copied[0]").await?;
    let expected =
        format!("{}#{}", page.address(), hash(&Example::Puffin.design().into()));
    assert_eq!(copied, expected.as_str());

    for blocked in ["undefined", "{ writeText: () => Promise.reject(new Error('no')) }"] {
        page.run(&format!(
            "Object.defineProperty(navigator, 'clipboard', {{ configurable: true,
                 value: {blocked} }});"
        ))
        .await?;
        page.more("#copy-link").await?;
        let open = page.eval("document.querySelector('.menu[open]')").await?;
        assert_eq!(open, Value::Null, "a menu lies over nothing that it has brought");
        page.wait_until("document.getElementById('copy-by-hand')").await?;
        assert_eq!(page.value("#copy-by-hand").await?, expected);
        page.click("#dismiss").await?;
        page.wait_until("!document.getElementById('copy-by-hand')").await?;
    }

    // It leads to where it was copied.
    page.at("why").await?;
    page.more("#copy-link").await?;
    page.wait_until("document.getElementById('copy-by-hand')").await?;
    let link = page.value("#copy-by-hand").await?;
    assert_eq!(link, expected.replace('#', "?at=why#"));
    Ok(())
}

#[tokio::test]
async fn where_nothing_may_be_kept_the_page_works_and_says_so() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    let block = "Object.defineProperty(window, 'localStorage', {
                     get() { throw new DOMException('barred', 'SecurityError'); } });";
    page.run_before_each_load(block).await?;
    page.goto("").await?;
    assert!(page.text("#keeping").await?.contains("This browser keeps nothing."));
    page.type_into(WIDTH, "70").await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await?;
    page.press(Key::Tab).await?;
    page.reload().await?;
    assert!(page.in_words().await?.contains("70 mm wide"), "from the address");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn units_switch_without_changing_the_design() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let before = page.eval("location.hash").await?;
    page.click("[id='units:inch']").await?;
    page.wait_until(&format!("document.querySelector(`{WIDTH}`).value === '2.559'"))
        .await?;
    let figures = evaluate(&Example::Puffin.design()).figures.expect("it can be drawn");
    let apart = format!("{:.2} in", figures.least_separation_m / 0.0254);
    assert!(page.text("#strip").await?.contains(&apart), "{apart}");
    page.click(WIDTH).await?;
    page.press(Key::Tab).await?;
    assert_eq!(page.eval("location.hash").await?, before);
    page.reload().await?;
    assert_eq!(page.value(WIDTH).await?, "2.559", "the choice of units is kept");
    page.type_into(WIDTH, "2 3/4").await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('2.75 in wide')",
    )
    .await?;
    Ok(())
}

#[tokio::test]
async fn drawing_and_steps_point_at_each_other() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.click("[id='/fins/0/count']").await?;
    page.wait_until("document.querySelector('#sheet [data-part=\"/fins/0\"].lit')")
        .await?;
    page.click("#sheet [data-part='/weights/0'] circle").await?;
    page.wait_until("document.querySelector('.card__row.lit')").await?;
    assert_eq!(page.focused_id().await?, "/weights/0/mass_g");
    Ok(())
}

#[tokio::test]
async fn a_weight_can_be_dragged_along_the_ruler() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let place = page
        .eval(
            "(() => { const box = document.querySelector(\"#sheet [data-part='/weights/0'] circle\")
                 .getBoundingClientRect(); return [box.x + box.width / 2, box.y + box.height / 2]; })()",
        )
        .await?;
    let (x, y) = (place[0].as_f64().unwrap_or(0.0), place[1].as_f64().unwrap_or(0.0));
    for (kind, dy) in [
        ("mousePressed", 0.0),
        ("mouseMoved", 20.0),
        ("mouseMoved", 60.0),
        ("mouseReleased", 60.0),
    ] {
        let event = serde_json::json!({
            "type": kind, "x": x, "y": y + dy, "button": "left", "buttons": 1,
            "clickCount": 1
        });
        page.cdp("Input.dispatchMouseEvent", event).await?;
    }
    page.wait_until(&format!("+document.querySelector(`{CLAY_PLACE}`).value > 75"))
        .await?;
    page.press(Key::Control + "z").await?;
    page.wait_until(&format!("document.querySelector(`{CLAY_PLACE}`).value === '45'"))
        .await?;
    Ok(())
}

/// A finger on the middle of an element, moved up or down by so many pixels, a step at a
/// time, and what the page showed before and at each step: the number in a field, the
/// bracket, the strip, and how far the page has scrolled.
async fn moved_by_a_finger(
    page: &Page,
    css: &str,
    field: &str,
    steps: [f64; 4],
) -> Result<Vec<(String, String, String, f64)>> {
    let middle = format!(
        "(box => [box.x + box.width / 2, box.y + box.height / 2])
         (document.querySelector(`{css}`).getBoundingClientRect())"
    );
    let middle = page.eval(&middle).await?;
    let (x, y) = (middle[0].as_f64().unwrap_or(0.0), middle[1].as_f64().unwrap_or(0.0));
    let seen = format!(
        "[document.querySelector(`{field}`).value,
          document.querySelector('#sheet [data-group=marks] [stroke-width=\"2\"]')
              .getAttribute('d'),
          document.querySelector('#strip .strip__number').innerText, scrollY]"
    );
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let mut found = Vec::new();
    let mut dy_before = 0.0;
    for (i, dy) in [0.0].into_iter().chain(steps).enumerate() {
        let kind = if i == 0 { "touchStart" } else { "touchMove" };
        // As a hand does it: no step is far from the one before.
        for part in 1..=4 {
            let at = dy_before + (dy - dy_before) * f64::from(part) / 4.0;
            if i > 0 || part == 4 {
                let event = serde_json::json!({
                    "type": kind, "touchPoints": [{ "x": x, "y": y + at, "id": 1 }]
                });
                page.cdp("Input.dispatchTouchEvent", event).await?;
            }
        }
        dy_before = dy;
        // The frame after the last event, and the one in which it is on the screen.
        page.run(
            "await new Promise(done => requestAnimationFrame(() => \
                 requestAnimationFrame(done)));",
        )
        .await?;
        let now = page.eval(&seen).await?;
        let scrolled = now[3].as_f64().unwrap_or(f64::NAN);
        found.push((text(&now[0]), text(&now[1]), text(&now[2]), scrolled));
    }
    let end = serde_json::json!({ "type": "touchEnd", "touchPoints": [] });
    page.cdp("Input.dispatchTouchEvent", end).await?;
    Ok(found)
}

/// What is dragged, the bracket and the strip go along, and the page stays where it is.
#[tokio::test]
async fn a_finger_drags_at_a_grip_and_scrolls_elsewhere() -> Result<()> {
    let page = Page::open(360, 740).await?;
    let touch = serde_json::json!({ "enabled": true, "maxTouchPoints": 1 });
    page.cdp("Emulation.setTouchEmulationEnabled", touch).await?;
    page.eval("scrollTo(0, 60)").await?;
    let up = [-12.0, -24.0, -36.0, -48.0];
    for (css, field, steps) in [
        ("#sheet [data-part='/fins/0'] .grip", "[id='/fins/0/start_mm']", up),
        ("#sheet [data-part='/weights/0'] circle", CLAY_PLACE, up.map(|dy| -dy)),
    ] {
        let before = page.value(field).await?;
        let found = moved_by_a_finger(&page, css, field, steps).await?;
        for (i, pair) in found.windows(2).enumerate() {
            assert_ne!(pair[0].0, pair[1].0, "{css}: the field at step {i}");
            assert_ne!(pair[0].1, pair[1].1, "{css}: the bracket at step {i}");
            assert_ne!(pair[0].2, pair[1].2, "{css}: the strip at step {i}");
            assert_eq!(pair[0].3, pair[1].3, "{css}: the page scrolled at step {i}");
        }
        page.wait_until("!('dragging' in document.documentElement.dataset)").await?;
        page.click("#undo").await?;
        page.wait_until(&format!(
            "document.querySelector(`{field}`).value === '{before}'"
        ))
        .await?;
    }
    // The fin itself, beside its grip, and the ruler's sheet scroll.
    page.eval("scrollTo(0, 60)").await?;
    let sheet = "#sheet [data-group='paper'] path";
    let found = moved_by_a_finger(&page, sheet, CLAY_PLACE, up).await?;
    assert_eq!(found[0].0, found[4].0);
    assert!(found[4].3 > found[0].3, "{found:?}");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// JavaScript writes 0.0 as 0: the same bits, but another kind of number here.
fn numbers_as_floats(value: Value) -> Value {
    match value {
        Value::Number(number) => number.as_f64().into(),
        Value::Array(list) => list.into_iter().map(numbers_as_floats).collect(),
        Value::Object(map) => map
            .into_iter()
            .map(|(key, inside)| (key, numbers_as_floats(inside)))
            .collect(),
        other => other,
    }
}

#[tokio::test]
async fn a_reload_right_after_a_keystroke_loses_nothing() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(STRAIGHT, "133").await?;
    page.reload().await?;
    assert_eq!(page.value(STRAIGHT).await?, "133");
    assert!(!page.text("#notice").await?.contains("link"), "no visitor, the same rocket");
    Ok(())
}

/// Removing what has the focus must neither throw nor drop the focus off the page.
#[tokio::test]
async fn the_focus_stays_on_the_page_whatever_goes() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for id in ["remove:/weights/0", "remove:/fins/0", "remove:/sections/0"] {
        let button = page.element(&format!("[id='{id}']")).await?;
        button.focus().await?;
        page.press(Key::Enter).await?;
        page.wait_until(&format!("!document.getElementById('{id}')")).await?;
        assert_eq!(page.eval("document.activeElement !== document.body").await?, true);
    }
    page.click("[id='show:all']").await?;
    page.click("#undo").await?;
    page.click("#undo").await?;
    page.click("[id='choice:/fins/0/planform']").await?;
    page.press(Key::Down + Key::Enter).await?;
    page.type_into("[id='/fins/0/planform/own_outline_mm/1/1']", "-20").await?;
    page.run(
        "const select = document.getElementById('choice:/fins/0/planform');
         select.value = '0'; select.dispatchEvent(new Event('change', { bubbles: true }));",
    )
    .await?;
    page.wait_until("document.getElementById('/fins/0/planform/four_sided/root_mm')")
        .await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The strip, the words and the graph's slider tell the same story, by keyboard.
#[tokio::test]
async fn the_air_from_every_side_is_told_and_spoken() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.wait_until(
        "document.getElementById('strip').innerText.includes('elf-righting.')",
    )
    .await?;
    page.at("why").await?;
    assert_eq!(page.focused_id().await?, "place-title");
    let slider = page.element("#angle").await?;
    slider.focus().await?;
    for _ in 0..12 {
        page.press(Key::Right).await?;
    }
    page.wait_until("document.getElementById('air-reading').innerText.startsWith('90°')")
        .await?;
    let side_on = page.text("#air-reading").await?;
    assert!(side_on.contains("turns it back nose-first"), "{side_on}");
    // How sure it is follows a moment later.
    let sure = |resolution| {
        let mut draws = SeparationDraws::new(
            &Example::Puffin.design(),
            &MeasuredPoints::default(),
            resolution,
        );
        draws.run(10_000);
        let interval = draws.verdict().expect("10,000 draws").separation_m;
        let words = format!(
            "likely {:.0} mm to {:.0} mm",
            interval.low * 1000.0,
            interval.high * 1000.0
        );
        format!("document.getElementById('strip').textContent.includes('{words}')")
    };
    page.wait_until(&sure(Resolution::default())).await?;
    page.click("#why-sure > summary").await?;
    assert!(page.text("#air-sure").await?.contains("self-righting in all tries"));
    page.run(
        "const ruler = document.getElementById('ruler-step');
         ruler.value = '5'; ruler.dispatchEvent(new Event('change', { bubbles: true }));",
    )
    .await?;
    page.wait_until(&sure(Resolution { length_mm: 5.0, mass_g: 1.0 })).await?;

    page.at("rocket").await?;
    page.goto(&hash(&Example::Tern.design().into())).await?;
    let figures = evaluate(&Example::Tern.design()).figures.expect("it can be drawn");
    let rest = figures.resting_angles.iter().find(|rest| rest.holds).expect("it rests");
    let told = format!("The air holds it tilted by {:.0}°", rest.angle_rad.to_degrees());
    page.wait_until(&format!(
        "document.getElementById('strip').innerText.includes('{told}')"
    ))
    .await
}

/// The same design gives the same bits in WebAssembly as it does natively.
#[tokio::test]
async fn the_call_for_other_programs_gives_the_native_report() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for example in Example::ALL {
        let design = example.design();
        let json = serde_json::to_string(&design)?;
        let report = page
            .run(&format!(
                "return import('./noseward.js').then(async noseward => {{
                     await noseward.default();
                     return JSON.stringify(await noseward.evaluate({json}));
                 }});"
            ))
            .await?;
        let report: Value = serde_json::from_str(report.as_str().unwrap_or_default())?;
        let native = serde_json::to_string(&evaluate(&design))?;
        let native: Value = serde_json::from_str(&native)?;
        assert_eq!(numbers_as_floats(report), numbers_as_floats(native), "{example:?}");
    }
    let mut design = Example::Puffin.design();
    design.fins[0].count = 5;
    let faults = page
        .run(&format!(
            "return import('./noseward.js').then(async noseward => {{
                 await noseward.default();
                 const report = await noseward.evaluate({});
                 return report.faults.map(fault => JSON.stringify(fault)).join();
             }});",
            serde_json::to_string(&design)?
        ))
        .await?;
    assert_eq!(
        faults,
        "{\"field\":\"/fins/0/count\",\"severity\":\"ask\",\"code\":\"many_fins\",\"values\":{},\
         \"sentence\":\"With more than four fins, each shades its neighbours.\"}"
    );
    let refused = page
        .run(
            "return import('./noseward.js').then(async noseward => {
                 await noseward.default();
                 try { await noseward.evaluate({ sections: 3 }); return 'taken'; }
                 catch (error) { return error.message; }
             });",
        )
        .await?;
    assert!(refused.as_str().is_some_and(|m| m.starts_with("not a design")), "{refused}");
    Ok(())
}

#[tokio::test]
async fn text_that_tries_to_run_is_only_text() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let evil = "<img src=x onerror=evil=1>";
    page.type_into("[id='/name']", evil).await?;
    page.click("[id='show:all']").await?;
    page.type_into("[id='/weights/0/label']", "\"><svg onload=evil=1>").await?;
    page.type_into(WIDTH, evil).await?;
    page.click("[id='show:few']").await?;
    page.click("[id='show:all']").await?;
    assert_eq!(page.eval("typeof window.evil").await?, "undefined");
    assert_eq!(page.eval("document.querySelectorAll('img').length").await?, 0);
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
