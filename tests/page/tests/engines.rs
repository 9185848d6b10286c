//! The same job in every engine, because pupils bring what they have.
//!
//! Beside it: every engine works out the same numbers to the last bit, and the page
//! works where nothing may be kept.

use noseward_lesson::Trial;
use noseward_link::{Opened, code, hash, open_hash, to_file};
use noseward_page_tests::{Engine, Key, Page, Result, Storage};
use noseward_stability::{Design, Example, evaluate};
use serde_json::{Value, json};
use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

/// A laptop with the tools of its browser; a telephone.
const LAPTOP: (u32, u32) = (1366, 600);
const TELEPHONE: (u32, u32) = (360, 740);

/// How long the address may take to follow, on a busy machine.
const PATIENCE: Duration = Duration::from_secs(30);

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const CLAY_PLACE: &str = "[id='/weights/0/position_mm']";
const SECOND_MASS: &str = "[id='/weights/1/mass_g']";

/// The lines of the rocket, without the marks.
const DRAWING: &str = "[...document.querySelectorAll('[data-group=rocket] path')]
    .map(path => path.getAttribute('d')).join()";

/// How far the page reaches beyond its right edge, in pixels.
const PAST: &str =
    "document.documentElement.scrollWidth - document.documentElement.clientWidth";

#[tokio::test]
async fn chromium_does_the_whole_job() -> Result<()> {
    the_whole_job(Page::open_in(Engine::Chromium, LAPTOP.0, LAPTOP.1).await?).await
}

#[tokio::test]
async fn slowed_chromium_does_the_whole_job() -> Result<()> {
    let page = Page::unopened(LAPTOP.0, LAPTOP.1).await?;
    page.throttle(6.0).await?;
    page.goto("").await?;
    the_whole_job(page).await
}

#[tokio::test]
async fn firefox_does_the_whole_job() -> Result<()> {
    the_whole_job(Page::open_in(Engine::Firefox, LAPTOP.0, LAPTOP.1).await?).await
}

#[tokio::test]
async fn webkit_does_the_whole_job() -> Result<()> {
    the_whole_job(Page::open_in(Engine::WebKit, LAPTOP.0, LAPTOP.1).await?).await
}

async fn the_whole_job(page: Page) -> Result<()> {
    it_opens_with_the_worked_example(&page).await?;
    typed_numbers_count(&page).await?;
    parts_come_and_go(&page).await?;
    the_link_opens_elsewhere(&page).await?;
    what_is_pasted_opens(&page).await?;
    the_keyboard_alone_will_do(&page).await?;
    a_trial_is_predicted(&page).await?;
    a_swing_is_recorded(&page).await?;
    back_and_forward(&page).await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The part of the module that loads later is there, and what it keeps comes back.
async fn a_trial_is_predicted(page: &Page) -> Result<()> {
    page.at("measure").await?;
    page.type_into("[id='nb:centre_of_mass_reading_1_mm']", "20,3 cm").await?;
    page.press(Key::Tab).await?;
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "a long nose").await?;
    page.click("#nb-lock").await?;
    let locked =
        "document.getElementById('predict-locked')?.innerText.includes('a long nose')";
    page.wait_until(locked).await?;
    page.keeps_notebook(|notebook| notebook.trials().iter().any(Trial::is_locked))
        .await?;
    page.reload().await?;
    page.is_at("predict").await?;
    page.wait_until(locked).await?;
    page.at("measure").await?;
    assert_eq!(page.value("[id='nb:centre_of_mass_reading_1_mm']").await?, "203");
    Ok(())
}

async fn it_opens_with_the_worked_example(page: &Page) -> Result<()> {
    let design = Example::Puffin.design();
    let figures = evaluate(&design).figures.expect("it can be drawn");
    assert_strip_tells(page, &design).await?;
    for m in [figures.mass.centre_m, figures.centre_of_pressure_side_on_m] {
        page.wait_until(&format!(
            "document.getElementById('in-words').innerText.includes('{:.0} mm')",
            m * 1000.0
        ))
        .await?;
    }
    // Both marks are within the sheet, and as far apart as they should be.
    let places = page
        .eval(
            "(() => { const box = element => element.getBoundingClientRect();
              const sheet = box(document.querySelector('#sheet svg'));
              const clay = document.querySelector(`#sheet [data-part='/weights/0'] circle`);
              const marks = document.querySelectorAll(
                  '#sheet [data-group=marks] path:not([fill=none])');
              return [clay, ...marks].map(box)
                  .filter(box => box.top >= sheet.top && box.bottom <= sheet.bottom)
                  .map(box => box.y + box.height / 2); })()",
        )
        .await?;
    let places: Vec<f64> = serde_json::from_value(places)?;
    let [clay, wind, fulcrum] = places[..] else {
        panic!("weight, arrow and fulcrum are to be seen: {places:?}");
    };
    let mass_mm = figures.mass.centre_m * 1000.0;
    let expected =
        figures.separation_m * 1000.0 / (mass_mm - design.weights[0].position_mm);
    let found = (wind - fulcrum) / (fulcrum - clay);
    assert!((found - expected).abs() < 0.02, "{found} for {expected}: {places:?}");
    Ok(())
}

async fn typed_numbers_count(page: &Page) -> Result<()> {
    for (field, typed, tidied) in [(CLAY_PLACE, "12,5", "12.5"), (WIDTH, "12 cm", "120")]
    {
        let before = page.text("#strip").await?;
        page.type_into(field, typed).await?;
        page.wait_until(&format!(
            "document.getElementById('strip').innerText !== {}",
            json!(before)
        ))
        .await?;
        page.press(Key::Tab).await?;
        assert_eq!(page.value(field).await?, tidied);
        assert_strip_tells(page, &design(page).await?).await?;
    }

    let drawn = page.eval(DRAWING).await?;
    page.type_into(WIDTH, "wide").await?;
    page.wait_until("document.getElementById('faults').innerText.includes('mend')")
        .await?;
    assert!(page.text("#faults").await?.contains("Bottle, width: I cannot read this."));
    assert_eq!(page.eval(DRAWING).await?, drawn);
    assert!(drawn.as_str().is_some_and(|lines| lines.len() > 100), "{drawn}");
    page.type_into(WIDTH, "70").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('faults').innerText === ''").await?;
    assert_ne!(page.eval(DRAWING).await?, drawn);
    Ok(())
}

async fn parts_come_and_go(page: &Page) -> Result<()> {
    page.click("[id='add:weight']").await?;
    page.type_into(SECOND_MASS, "4").await?;
    page.press(Key::Tab).await?;
    let with = design(page).await?;
    assert_eq!(with.weights.len(), 2);
    assert_eq!(with.weights[1].mass_g.to_bits(), 4.0_f64.to_bits());
    assert_strip_tells(page, &with).await?;

    page.click("[id='remove:/weights/1']").await?;
    page.wait_until(&format!("!document.querySelector(`{SECOND_MASS}`)")).await?;
    page.click("#undo").await?;
    page.wait_until(&format!("document.querySelector(`{SECOND_MASS}`)?.value === '4'"))
        .await?;
    assert_strip_tells(page, &with).await
}

/// What the page says of the rocket, once it is known how sure that is: on a busy machine that
/// takes longer than the words.
async fn settled_words(page: &Page) -> Result<String> {
    let start = Instant::now();
    loop {
        let words = page.in_words().await?;
        if !words.contains("being worked out") {
            return Ok(words);
        }
        assert!(start.elapsed() < PATIENCE, "it is never sure: {words}");
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
}

async fn the_link_opens_elsewhere(page: &Page) -> Result<()> {
    // The address follows the last change after a moment.
    let start = Instant::now();
    loop {
        let seen = design(page).await?.weights;
        if seen.len() == 2 {
            break;
        }
        assert!(
            start.elapsed() < PATIENCE,
            "the address does not get its second weight; it holds {seen:?}"
        );
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    let words = settled_words(page).await?;
    let link = page.eval("location.hash").await?;
    let link = link.as_str().unwrap_or_default();

    page.reload().await?;
    assert_eq!(settled_words(page).await?, words);
    assert_eq!(page.value(SECOND_MASS).await?, "4");

    let other = Page::unopened_in(page.engine(), Storage::Allowed, TELEPHONE).await?;
    other.goto(link).await?;
    assert_eq!(settled_words(&other).await?, words);
    assert_eq!(design(&other).await?, design(page).await?);
    assert_eq!(other.errors().await?, Vec::<String>::new());
    Ok(())
}

async fn what_is_pasted_opens(page: &Page) -> Result<()> {
    let link =
        format!("see {}#{} !", page.address(), hash(&Example::Gannet.design().into()));
    let typed = code(&Example::Tern.design().into()).to_lowercase();
    let file = to_file(&Example::Razorbill.design().into());
    for (text, name) in [(link, "Gannet"), (typed, "Tern"), (file, "Razorbill")] {
        // A paste is one insertion, which `value` does as well.
        page.open_text(&text).await?;
        page.wait_until(&format!(
            "document.getElementById('in-words').innerText.includes('{name}')"
        ))
        .await?;
    }
    assert_strip_tells(page, &Example::Razorbill.design()).await
}

/// The bench works out its motion, and what was seen goes into the link.
async fn a_swing_is_recorded(page: &Page) -> Result<()> {
    page.at("swing").await?;
    page.wait_until(
        "document.getElementById('swing-words').textContent.includes('nose-first')",
    )
    .await?;
    page.click("#to-space").await?;
    page.click("#space-checked").await?;
    let before = page.eval("location.hash").await?;
    page.run("for (let i = 0; i < 2; i++) document.getElementById('swung:0').click();")
        .await?;
    page.wait_until(&format!("location.hash !== {before}")).await?;
    assert_eq!(
        page.eval("document.querySelectorAll('#swings-seen li').length").await?,
        1,
        "a double click is one press"
    );
    Ok(())
}

/// Back and Forward go from place to place, and the rocket stays as it is now.
async fn back_and_forward(page: &Page) -> Result<()> {
    page.at("rocket").await?;
    page.type_into(WIDTH, "71").await?;
    page.press(Key::Tab).await?;
    page.run("history.back();").await?;
    page.is_at("swing").await?;
    page.run("history.back();").await?;
    page.is_at("measure").await?;
    assert!(page.in_words().await?.contains("71 mm wide"));
    page.run("history.forward();").await?;
    page.is_at("swing").await?;
    let address = page.eval("location.search").await?;
    assert_eq!(address, "?at=swing");
    page.reload().await?;
    page.is_at("swing").await?;
    page.at("rocket").await?;
    assert_eq!(page.value(WIDTH).await?, "71");
    Ok(())
}

async fn the_keyboard_alone_will_do(page: &Page) -> Result<()> {
    page.goto(&hash(&Example::Puffin.design().into())).await?;
    let field = "/sections/1/diameter_mm";
    page.tab_to(field).await?;
    // Tab has selected the old number, so the new one takes its place.
    page.press("7 cm").await?;
    page.press(Key::Tab).await?;
    assert_eq!(page.value(WIDTH).await?, "70");
    assert_eq!(page.focused_id().await?, "/sections/1/length_mm");
    page.press(Key::Up).await?;
    assert_eq!(page.value("[id='/sections/1/length_mm']").await?, "126");
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await
}

/// The design in the address bar: what the page takes the rocket for.
async fn design(page: &Page) -> Result<Design> {
    let hash = page.eval("location.hash").await?;
    match open_hash(hash.as_str().unwrap_or_default()) {
        Opened::Record(record) => Ok(record.design),
        _ => Err(std::io::Error::other(format!("{hash} holds no design")).into()),
    }
}

async fn assert_strip_tells(page: &Page, design: &Design) -> Result<()> {
    let figures = evaluate(design).figures.expect("it can be drawn");
    let apart = format!("{:.0} mm", (figures.least_separation_m * 1000.0).abs());
    page.wait_until(&format!(
        "document.getElementById('strip').innerText.includes('{apart}')"
    ))
    .await
}

/// The single file from a disk, in the engines that Chromium's own tests do not cover.
#[tokio::test]
async fn firefox_opens_the_single_file_from_a_disk() -> Result<()> {
    opens_the_single_file(Engine::Firefox).await
}

#[tokio::test]
async fn webkit_opens_the_single_file_from_a_disk() -> Result<()> {
    opens_the_single_file(Engine::WebKit).await
}

async fn opens_the_single_file(engine: Engine) -> Result<()> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../dist/noseward.html");
    let file = format!("file://{}", file.canonicalize()?.display());
    let page = Page::unopened_in(engine, Storage::Allowed, LAPTOP).await?;
    let link = hash(&Example::Gannet.design().into());
    page.visit_address(&format!("{file}#{link}")).await?;
    page.ready().await?;
    assert_strip_tells(&page, &Example::Gannet.design()).await?;
    page.type_into(WIDTH, "72").await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('72 mm wide')",
    )
    .await?;
    for place in ["measure", "swing", "why", "lead", "rocket"] {
        page.at(place).await?;
    }
    // Itself, under whatever name this engine gives it, and the icon that it carries.
    let mut requests = page.requests().await?;
    requests.retain(|request| !request.starts_with("data:"));
    assert_eq!(requests.len(), 1, "{requests:?}");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn chromium_gives_the_native_numbers() -> Result<()> {
    every_number_has_the_native_bits(Engine::Chromium).await
}

#[tokio::test]
async fn firefox_gives_the_native_numbers() -> Result<()> {
    every_number_has_the_native_bits(Engine::Firefox).await
}

#[tokio::test]
async fn webkit_gives_the_native_numbers() -> Result<()> {
    every_number_has_the_native_bits(Engine::WebKit).await
}

async fn every_number_has_the_native_bits(engine: Engine) -> Result<()> {
    let page = Page::open_in(engine, LAPTOP.0, LAPTOP.1).await?;
    for example in Example::ALL {
        let design = example.design();
        let report = page
            .run(&format!(
                "const view = new DataView(new ArrayBuffer(8));
                 const bits = number => (view.setFloat64(0, number),
                     view.getBigUint64(0).toString(16).padStart(16, '0'));
                 const spelt = (key, value) =>
                     typeof value === 'number' ? bits(value) : value;
                 return import('./noseward.js').then(async noseward => {{
                     await noseward.default();
                     return JSON.stringify(await noseward.evaluate({}), spelt);
                 }});",
                serde_json::to_string(&design)?
            ))
            .await?;
        let report: Value = serde_json::from_str(report.as_str().unwrap_or_default())?;
        let native = numbers_as_bits(serde_json::to_value(evaluate(&design))?);
        assert_eq!(report, native, "{example:?} in {engine}");
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

fn numbers_as_bits(value: Value) -> Value {
    match value {
        Value::Number(number) => number
            .as_f64()
            .map_or(Value::Null, |number| format!("{:016x}", number.to_bits()).into()),
        Value::Array(list) => list.into_iter().map(numbers_as_bits).collect(),
        Value::Object(map) => {
            map.into_iter().map(|(key, inside)| (key, numbers_as_bits(inside))).collect()
        }
        other => other,
    }
}

#[tokio::test]
async fn chromium_shows_all_of_it() -> Result<()> {
    it_fits(Engine::Chromium).await
}

#[tokio::test]
async fn firefox_shows_all_of_it() -> Result<()> {
    it_fits(Engine::Firefox).await
}

#[tokio::test]
async fn webkit_shows_all_of_it() -> Result<()> {
    it_fits(Engine::WebKit).await
}

/// Pictures for people, and what can be told without looking at them.
async fn it_fits(engine: Engine) -> Result<()> {
    let page = Page::open_in(engine, LAPTOP.0, LAPTOP.1).await?;
    for (width, height) in [LAPTOP, TELEPHONE] {
        page.set_viewport(width, height).await?;
        page.reload().await?;
        let size = page.eval("[innerWidth, innerHeight]").await?;
        assert_eq!(size, json!([width, height]), "{engine}");
        page.eval("scrollTo(0, 0)").await?;
        let name = format!("engine-{engine}-{width}x{height}");
        page.screenshot(&name).await?;
        assert_eq!(page.eval(PAST).await?, 0, "{name} scrolls sideways");
        let strip = page
            .eval(
                "(strip => [strip.getBoundingClientRect().bottom,
                    strip.scrollWidth - strip.clientWidth,
                    strip.scrollHeight - strip.clientHeight])
                 (document.getElementById('strip'))",
            )
            .await?;
        let bottom = strip[0].as_f64().unwrap_or(f64::INFINITY);
        assert!(bottom <= f64::from(height), "{name}: the strip ends at {bottom}");
        assert_eq!([&strip[1], &strip[2]], [0, 0], "{name}: the strip is cut");
        for place in ["measure", "swing", "compare", "hand-in", "why", "lead", "rocket"] {
            page.at(place).await?;
            page.screenshot(&format!("{name}-{place}")).await?;
            assert_eq!(page.eval(PAST).await?, 0, "{name}, {place} scrolls sideways");
            let bottom = page
                .eval("document.getElementById('next').getBoundingClientRect().bottom")
                .await?;
            let bottom = bottom.as_f64().unwrap_or(f64::INFINITY);
            assert!(
                bottom <= f64::from(height),
                "{name}, {place}: the way on at {bottom}"
            );
        }
    }
    if engine != Engine::WebKit {
        // The driver of WebKitGTK cannot print.
        let bytes = fs::read(page.print(&format!("engine-{engine}")).await?)?;
        assert!(bytes.starts_with(b"%PDF-"));
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn chromium_works_where_storage_is_blocked() -> Result<()> {
    it_works_without_storage(Engine::Chromium, Storage::Blocked).await
}

#[tokio::test]
async fn firefox_works_where_storage_is_blocked() -> Result<()> {
    it_works_without_storage(Engine::Firefox, Storage::Blocked).await
}

#[tokio::test]
async fn firefox_works_where_storage_is_missing() -> Result<()> {
    it_works_without_storage(Engine::Firefox, Storage::Missing).await
}

async fn it_works_without_storage(engine: Engine, storage: Storage) -> Result<()> {
    let page = Page::unopened_in(engine, storage, LAPTOP).await?;
    page.goto("").await?;
    let found = page
        .run("try { return String(localStorage); } catch (error) { return error.name; }")
        .await?;
    let expected = if storage == Storage::Blocked { "SecurityError" } else { "null" };
    assert_eq!(found, expected, "{engine} gives what it should not");
    assert!(page.text("#keeping").await?.contains("This browser keeps nothing."));
    page.type_into(WIDTH, "70").await?;
    page.wait_until(
        "document.getElementById('in-words').innerText.includes('70 mm wide')",
    )
    .await?;
    page.click("[id='units:inch']").await?;
    page.click("[id='units:metric']").await?;
    page.reload().await?;
    assert!(page.in_words().await?.contains("70 mm wide"), "from the address");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn chromium_tells_errors() -> Result<()> {
    errors_are_told(Engine::Chromium).await
}

#[tokio::test]
async fn firefox_tells_errors() -> Result<()> {
    errors_are_told(Engine::Firefox).await
}

#[tokio::test]
async fn webkit_tells_errors() -> Result<()> {
    errors_are_told(Engine::WebKit).await
}

/// The other tests of this file rely on it: no error is none that was told.
async fn errors_are_told(engine: Engine) -> Result<()> {
    let page = Page::open_in(engine, LAPTOP.0, LAPTOP.1).await?;
    page.run(
        "setTimeout(() => { throw new Error('thrown on purpose') });
         setTimeout(() => { Promise.reject(new Error('rejected on purpose')) });
         console.error('logged on purpose');
         const script = document.createElement('script');
         script.textContent = 'window.intruder = true';
         document.body.append(script);",
    )
    .await?;
    page.eval("new Promise(resolve => setTimeout(resolve, 50))").await?;
    // What was told before the page was left is not lost.
    page.reload().await?;
    let errors = page.errors().await?.join("\n");
    let policy = errors.replace('-', " ").contains("Content Security Policy");
    assert!(policy, "{engine}: {errors}");
    for words in ["thrown on purpose", "rejected on purpose", "logged on purpose"] {
        assert!(errors.contains(words), "{engine}, {words}: {errors}");
    }
    assert_eq!(page.eval("typeof window.intruder").await?, "undefined");
    assert_eq!(page.errors().await?.join("\n"), errors, "told every time");
    Ok(())
}

#[tokio::test]
async fn what_only_chromium_can_do_fails_elsewhere_with_a_sentence() -> Result<()> {
    let page = Page::unopened_in(Engine::Firefox, Storage::Allowed, LAPTOP).await?;
    let error = page.throttle(6.0).await.unwrap_err().to_string();
    let expected = "Emulation.setCPUThrottlingRate is a command of chromium";
    assert!(error.starts_with(expected), "{error}");
    Ok(())
}
