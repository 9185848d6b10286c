//! The page in other languages: a lesson by keyboard, nothing cut in any place, drawings that
//! keep their left and right, and how a language is chosen.

use noseward_page_tests::{Engine, Key, Page, Result};
use noseward_words::{self as words, Choice, Number};
use serde_json::json;
use std::collections::BTreeMap;

const SIZES: [(u32, u32); 3] = [(1366, 600), (360, 740), (1920, 1080)];
const PLACES: [&str; 13] = [
    "rocket", "measure", "predict", "swing", "compare", "conclude", "hand-in", "why",
    "lead", "words", "set-up", "class", "paper",
];
const LANG: &str = "document.documentElement.lang";

/// Everything that is cut, in words: a page that scrolls sideways; words in a box that hides
/// what is beyond it; chosen words wider than their list; names in the path that overlap;
/// words of a drawing outside it, or over others of the same drawing.
const CUT: &str = "(() => {
    const cut = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth) cut.push('the page ' + root.scrollWidth);
    const shown = (one) => one.checkVisibility({ visibilityProperty: true })
        && !one.closest('.visually-hidden')
        && getComputedStyle(one).clipPath === 'none';
    const told = (one) => one.outerHTML.slice(0, 90) + ' ' + one.textContent.slice(0, 60);
    const brush = document.createElement('canvas').getContext('2d');
    for (const one of document.querySelectorAll('body *')) {
        if (one instanceof SVGElement || one.readOnly || !shown(one)) continue;
        const style = getComputedStyle(one);
        const hides = (overflow) => overflow === 'hidden' || overflow === 'clip';
        if (one.tagName === 'SELECT') {
            brush.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
            const words = one.selectedOptions[0].textContent.trim();
            const wide = brush.measureText(words).width;
            const arrow = 14;
            const room = one.clientWidth - arrow
                - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
            // A list has one line, and no real choice is wider than a telephone.
            const real = root.lang !== 'en-XA';
            if (real && wide > room) cut.push(`the choice ${one.id} ${words} ${wide} ${room}`);
            continue;
        }
        const strip = one.id === 'strip';
        const across = one.scrollWidth > one.clientWidth + 1;
        const down = one.scrollHeight > one.clientHeight + 1;
        if ((hides(style.overflowX) || strip) && across) cut.push('across: ' + told(one));
        if ((hides(style.overflowY) || strip) && down) cut.push('down: ' + told(one));
    }
    const apart = (boxes, name) => boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
            const over = a.left < b.right - 0.5 && b.left < a.right - 0.5
                && a.top < b.bottom - 0.5 && b.top < a.bottom - 0.5;
            if (over) cut.push(`${name}: ${a.words} over ${b.words}`);
        }
    });
    const names = [...document.querySelectorAll('.path__name')].filter(shown);
    apart(names.map((name) => {
        const range = document.createRange();
        range.selectNodeContents(name);
        const { left, right, top, bottom } = range.getBoundingClientRect();
        return { left, right, top, bottom, words: name.textContent };
    }), 'path');
    for (const svg of document.querySelectorAll('svg')) {
        const { width, height } = svg.viewBox.baseVal;
        if (!shown(svg) || !width) continue;
        const place = svg.parentElement.id || svg.getAttribute('aria-label');
        // Letters fill about the middle three fifths of their line.
        const boxes = [...svg.querySelectorAll('text')].filter(shown).map((text) => {
            const box = text.getBBox();
            // A drawing may be laid into another, and turned.
            const to = svg.getScreenCTM().inverse().multiply(text.getScreenCTM());
            const corners = [box.x, box.x + box.width].flatMap((x) =>
                [0.2, 0.8].map((part) =>
                    new DOMPoint(x, box.y + box.height * part).matrixTransform(to)));
            const [xs, ys] = [corners.map((c) => c.x), corners.map((c) => c.y)];
            return {
                left: Math.min(...xs), right: Math.max(...xs),
                top: Math.min(...ys), bottom: Math.max(...ys),
                words: text.textContent,
            };
        });
        for (const box of boxes) {
            const inside = box.left >= -0.5 && box.right <= width + 0.5
                && box.top >= -0.5 && box.bottom <= height + 0.5;
            if (!inside) cut.push(`${place}: ${JSON.stringify(box)} of ${width} ${height}`);
        }
        apart(boxes, place);
    }
    return cut;
})()";

async fn open(page: &Page, query: &str) -> Result<()> {
    page.visit_address(&format!("{}?{query}", page.address())).await?;
    page.ready().await
}

async fn nothing_is_cut(page: &Page, name: &str) -> Result<()> {
    let cut = page.eval(CUT).await?;
    assert_eq!(cut, json!([]), "{name}");
    Ok(())
}

/// Every place as it stands now, at every size.
async fn nothing_is_cut_anywhere(page: &Page, name: &str) -> Result<()> {
    for (width, height) in SIZES {
        page.set_viewport(width, height).await?;
        for place in PLACES {
            // As from the menu, which is closed: a test finds its way in `a_lesson`.
            page.run(&format!("document.getElementById('to-{place}').click()")).await?;
            page.is_at(place).await?;
            page.run("return new Promise((done) => requestAnimationFrame(() => setTimeout(done, 100)))")
                .await?;
            let name = format!("{name}, {place}, {width} by {height}");
            page.screenshot(&name.replace([',', ' '], "-")).await?;
            nothing_is_cut(page, &name).await?;
            if place == "class" {
                nothing_is_cut_of_a_class(page, &name).await?;
            }
        }
    }
    Ok(())
}

/// Every view of the invented class.
async fn nothing_is_cut_of_a_class(page: &Page, name: &str) -> Result<()> {
    page.run("document.getElementById('cl-example')?.click()").await?;
    let views = "document.querySelectorAll('[data-action=cl-show]').length";
    let views = page.eval(views).await?.as_u64().unwrap_or(0);
    assert!(views > 2, "{views}");
    // The first again in the end.
    for view in (0..views).rev() {
        let view = format!("cl-show:{view}");
        page.run(&format!("document.getElementById('{view}').click()")).await?;
        page.wait_until(&format!(
            "document.getElementById('{view}').getAttribute('aria-pressed') === 'true'"
        ))
        .await?;
        page.run("return new Promise((done) => requestAnimationFrame(() => setTimeout(done, 100)))")
            .await?;
        let name = format!("{name}, {view}");
        page.screenshot(&name.replace([',', ' ', ':'], "-")).await?;
        nothing_is_cut(page, &name).await?;
    }
    Ok(())
}

async fn axe_finds_nothing(page: &Page, name: &str) -> Result<()> {
    for place in PLACES {
        page.run(&format!("document.getElementById('to-{place}').click()")).await?;
        page.is_at(place).await?;
        let told: Vec<String> =
            page.axe().await?.iter().map(ToString::to_string).collect();
        assert!(told.is_empty(), "{name}, {place}: {told:#?}");
    }
    Ok(())
}

async fn fill(page: &Page, id: &str, text: &str) -> Result<()> {
    page.tab_to(id).await?;
    page.press(Key::Control + "a").await?;
    page.press(text).await
}

/// By the way on, to the next place.
async fn next(page: &Page, place: &str) -> Result<()> {
    page.tab_to("next").await?;
    page.press_again(Key::Enter).await?;
    page.is_at(place).await
}

/// A trial from Rocket to Hand in by keyboard alone; `number` writes a plain decimal as a
/// pupil types it.
async fn a_lesson(page: &Page, number: impl Fn(&str) -> String) -> Result<()> {
    fill(page, "/fins/0/planform/four_sided/span_mm", &number("62.5")).await?;
    next(page, "measure").await?;
    for (point, readings) in
        [("mass", ["138.5", "141", "139"]), ("pressure", ["204", "199", "201.5"])]
    {
        for (reading, i) in readings.into_iter().zip(1..) {
            let id = format!("nb:centre_of_{point}_reading_{i}_mm");
            fill(page, &id, &number(reading)).await?;
        }
    }
    page.press(Key::Tab).await?;
    let shown = page.value("[id='nb:centre_of_mass_reading_1_mm']").await?;
    assert_eq!(shown, number("138.5"), "it is shown as it was typed");
    next(page, "predict").await?;
    page.tab_to("nb-outcome:0").await?;
    page.press(Key::Enter).await?;
    fill(page, "nb:draft_because", "◆ 1").await?;
    page.tab_to("nb-lock").await?;
    page.press(Key::Enter).await?;
    page.wait_until("document.activeElement.id === 'next'").await?;
    next(page, "swing").await?;
    page.check_space().await?;
    for outcome in [0, 1, 2] {
        page.tab_to(&format!("swung:{outcome}")).await?;
        page.press_again(Key::Enter).await?;
    }
    next(page, "compare").await?;
    next(page, "conclude").await?;
    fill(page, "nb:claim", "◆ 2").await?;
    next(page, "hand-in").await?;
    let notebook =
        page.keeps_notebook(|notebook| notebook.conclusion.claim == "◆ 2").await?;
    let trial = notebook.trial(1).expect("it was begun");
    assert!(trial.is_complete());
    assert_eq!(trial.measured.mass.mm[0], Some(138.5));
    assert_eq!(trial.measured.pressure.mm[2], Some(201.5));
    Ok(())
}

#[tokio::test]
async fn a_lesson_in_german() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    open(&page, "lang=de").await?;
    assert_eq!(page.eval(LANG).await?, "de");
    assert_eq!(page.eval("document.documentElement.dir").await?, "ltr");
    a_lesson(&page, |plain| plain.replace('.', ",")).await?;
    nothing_is_cut_anywhere(&page, "de").await?;
    page.set_viewport(1366, 600).await?;
    axe_finds_nothing(&page, "de").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_lesson_in_arabic_with_its_own_digits() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    open(&page, "lang=ar-u-nu-arab").await?;
    assert_eq!(page.eval("document.documentElement.dir").await?, "rtl");
    let own = |c: char| match c.to_digit(10) {
        Some(digit) => char::from_u32(0x660 + digit).expect("a digit"),
        None => '٫',
    };
    a_lesson(&page, |plain| plain.chars().map(own).collect()).await?;
    nothing_is_cut_anywhere(&page, "ar").await?;
    page.set_viewport(1366, 600).await?;
    axe_finds_nothing(&page, "ar").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn words_half_as_long_again_have_room() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    open(&page, "lang=en-XA").await?;
    nothing_is_cut_anywhere(&page, "en-XA-new").await?;
    page.set_viewport(1366, 600).await?;
    page.run("document.getElementById('to-rocket').click()").await?;
    page.is_at("rocket").await?;
    a_lesson(&page, str::to_owned).await?;
    nothing_is_cut_anywhere(&page, "en-XA").await
}

/// In every engine: the words of drawings stand where they do left to right, and within them.
async fn drawings_keep_their_left_and_right(engine: Engine) -> Result<()> {
    let page = Page::open_in(engine, 1366, 600).await?;
    for place in ["rocket", "why"] {
        for language in ["de", "ar"] {
            open(&page, &format!("at={place}&lang={language}")).await?;
            page.is_at(place).await?;
            nothing_is_cut(&page, &format!("{engine:?}, {language}, {place}")).await?;
        }
    }
    // Right to left, too, an angle of 180° is at the right of its axis.
    let numbers = "[...document.querySelectorAll('#air-graph text')]
        .filter((text) => text.textContent.includes('180°'))
        .every((text) => text.getBBox().x > 300)";
    page.wait_until(numbers).await?;
    Ok(())
}

#[tokio::test]
async fn drawings_keep_their_left_and_right_in_chromium() -> Result<()> {
    drawings_keep_their_left_and_right(Engine::Chromium).await
}

#[tokio::test]
async fn drawings_keep_their_left_and_right_in_firefox() -> Result<()> {
    drawings_keep_their_left_and_right(Engine::Firefox).await
}

#[tokio::test]
async fn drawings_keep_their_left_and_right_in_webkit() -> Result<()> {
    drawings_keep_their_left_and_right(Engine::WebKit).await
}

#[tokio::test]
async fn a_language_is_chosen_and_kept_and_what_is_half_typed_stays() -> Result<()> {
    const WIDTH: &str = "/sections/1/diameter_mm";
    let page = Page::open(1366, 600).await?;
    let list = "document.getElementById('language').getBoundingClientRect().height";
    page.wait_until(&format!("{list} >= 24")).await?;
    page.click(&format!("[id='{WIDTH}']")).await?;
    page.press(Key::Control + "a").await?;
    page.press("6").await?;
    for language in ["de", "ar", "en"] {
        page.choose_language(language).await?;
        page.wait_until(&format!("{LANG}.startsWith({language:?})")).await?;
        assert_eq!(page.focused_id().await?, WIDTH, "{language}");
        assert_eq!(page.value(&format!("[id='{WIDTH}']")).await?, "6", "{language}");
    }
    // By keyboard, as it is meant to be.
    page.tab_back_to("language").await?;
    page.press("D").await?;
    page.wait_until(&format!("{LANG} === 'de'")).await?;
    assert_eq!(page.focused_id().await?, "language");
    page.reload().await?;
    assert_eq!(page.eval(LANG).await?, "de");
    open(&page, "lang=ar").await?;
    assert_eq!(page.eval(LANG).await?, "ar");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

fn speak(key: &str) -> Choice {
    let choice = Choice::parse(key).expect("there is such a language");
    let table = words::table_of(choice.language.key);
    words::speak(table.map(|table| table.with_own_digits(choice.own_digits)));
    choice
}

/// Numbers with so many decimals that nobody could round them in two ways.
fn numbers() -> Vec<(f64, u8)> {
    let whole = (0..=130).chain([199, 200, 1000, 1001, 2003, 10_011, 123_456, 1_000_000]);
    let mut numbers: Vec<(f64, u8)> = whole.map(|n| (f64::from(n), 0)).collect();
    for k in 1..=122_u32 {
        let (value, decimals) = (f64::from(k * k) * 0.013_7 - 30.0, k % 3 + 1);
        let decimals = u8::try_from(decimals).expect("it is small");
        let shown = (value * [1.0, 10.0, 100.0, 1000.0][usize::from(decimals)]).abs();
        if (shown.fract() - 0.5).abs() > 1e-6 && shown > 0.5 {
            numbers.extend([(value, decimals), (-value, decimals), (value.trunc(), 0)]);
        }
    }
    numbers
}

/// What the browser's `Intl` says of each of the numbers.
async fn by_the_browser(page: &Page, tag: &str, what: &str) -> Result<Vec<String>> {
    let js = "NUMBERS.map(([value, digits]) => {
        const options = {
            minimumFractionDigits: digits, maximumFractionDigits: digits, useGrouping: false,
        };
        return WHAT;
    })"
    .replace("NUMBERS", &json!(numbers()).to_string())
    .replace("WHAT", what)
    .replace("TAG", &json!(tag).to_string());
    let said = page.eval(&js).await?;
    let said: Vec<String> = serde_json::from_value(said)?;
    assert!(said.len() >= 480, "{}", said.len());
    Ok(said)
}

#[tokio::test]
async fn numbers_are_written_as_the_browser_writes_them() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for (key, tag) in [
        ("en", "en-GB"),
        ("en-US", "en-US"),
        ("de", "de"),
        ("ar", "ar-u-nu-latn"),
        ("ar-u-nu-arab", "ar-u-nu-arab"),
    ] {
        let what = "new Intl.NumberFormat(TAG, options).format(value)";
        let theirs = by_the_browser(&page, tag, what).await?;
        speak(key);
        for ((value, decimals), theirs) in numbers().into_iter().zip(theirs) {
            let ours = Number::fixed(value, decimals).to_string();
            assert_eq!(ours, theirs.replace('-', "−"), "{key}: {value} {decimals}");
        }
    }
    Ok(())
}

/// Each plural of the browser has one form of the sentence, and no two have the same.
#[tokio::test]
async fn plurals_are_those_of_the_browser() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for (key, plurals) in [("en", 2), ("de", 2), ("ar", 6)] {
        let what = "new Intl.PluralRules(TAG, options).select(value)";
        let theirs = by_the_browser(&page, key, what).await?;
        speak(key);
        let mut forms: BTreeMap<String, String> = BTreeMap::new();
        for ((value, decimals), theirs) in numbers().into_iter().zip(theirs) {
            let number = Number::fixed(value, decimals);
            let said = words::faults_to_mend(number);
            let form = said.replace(&number.to_string(), "n");
            let known = forms.entry(theirs.clone()).or_insert_with(|| form.clone());
            assert_eq!(*known, form, "{key}: {value} {decimals} is {theirs}");
        }
        assert_eq!(forms.len(), plurals, "{key}: {forms:?}");
        let mut each: Vec<String> = forms.into_values().collect();
        each.sort();
        each.dedup();
        assert_eq!(each.len(), plurals, "{key}: {each:?}");
    }
    Ok(())
}
