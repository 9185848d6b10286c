//! The places of the page: links, the browser's own ways between them, and what stays as it
//! is while a place is drawn anew under somebody's hands.

use noseward_link::{Opened, hash, open_hash};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::{Design, Example};
use serde_json::json;
use std::time::{Duration, Instant};

/// How long another tab may take to come, on a busy machine.
const PATIENCE: Duration = Duration::from_secs(30);

/// Every place by its name in the address, in the order of the lesson.
const PLACES: [&str; 13] = [
    "rocket", "measure", "predict", "swing", "compare", "conclude", "hand-in", "why",
    "words", "set-up", "class", "paper", "lead",
];

const WIDTH: &str = "[id='/sections/1/diameter_mm']";
const READING: &str = "[id='nb:centre_of_mass_reading_1_mm']";

/// What stands in the address for a place, before `#`.
fn search(place: &str) -> String {
    if place == "rocket" { String::new() } else { format!("?at={place}") }
}

/// The rocket in the address.
async fn in_address(page: &Page) -> Result<Design> {
    let hash = page.eval("location.hash").await?;
    let Opened::Record(record) = open_hash(hash.as_str().expect("the address is a text"))
    else {
        panic!("{hash} holds no rocket")
    };
    Ok(record.design)
}

/// The usual rocket with a body of this width.
fn as_wide_as(mm: f64) -> Design {
    let mut design = Example::Puffin.design();
    design.sections[1].diameter_mm = Some(mm);
    design
}

/// Gives the usual rocket another width, as the address has it afterwards.
async fn make_as_wide_as(page: &Page, mm: f64) -> Result<()> {
    page.at("rocket").await?;
    page.type_into(WIDTH, &mm.to_string()).await?;
    page.press(Key::Tab).await?;
    let hash = hash(&as_wide_as(mm).into());
    page.wait_until(&format!("location.hash === '#{hash}'")).await
}

#[tokio::test]
async fn back_and_forward_go_between_places_and_leave_the_rocket_as_it_is() -> Result<()>
{
    let page = Page::open(1366, 600).await?;
    page.at("measure").await?;
    page.at("predict").await?;
    make_as_wide_as(&page, 71.0).await?;
    // Back to places that were left with another rocket, and to where the page began.
    for place in ["predict", "measure", "rocket"] {
        page.run("history.back();").await?;
        page.is_at(place).await?;
        assert_eq!(page.eval("location.search").await?, search(place));
        assert_eq!(in_address(&page).await?, as_wide_as(71.0), "{place}");
        assert_eq!(page.focused_id().await?, "place-title", "{place}");
    }
    assert_eq!(page.value(WIDTH).await?, "71");
    make_as_wide_as(&page, 72.0).await?;
    for place in ["measure", "predict", "rocket"] {
        page.run("history.forward();").await?;
        page.is_at(place).await?;
        assert_eq!(page.eval("location.search").await?, search(place));
        assert_eq!(in_address(&page).await?, as_wide_as(72.0), "{place}");
    }
    assert_eq!(page.value(WIDTH).await?, "72");
    // The same place again is no step.
    let steps = page.eval("history.length").await?;
    page.at("rocket").await?;
    assert_eq!(page.eval("history.length").await?, steps);
    assert_eq!(page.text("#notice").await?, "");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The link with which the page was opened stays in the address as long as it was cut and
/// nothing has changed.
#[tokio::test]
async fn back_to_a_link_that_was_cut_short_leaves_the_rocket_as_it_is() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    let whole = hash(&Example::Tern.design().into());
    let cut = &whole[..whole.len() - 6];
    page.goto(cut).await?;
    assert!(page.text("#notice").await?.contains("cut short"));
    assert_eq!(page.eval("location.hash").await?, format!("#{cut}"));
    page.at("measure").await?;
    page.at("rocket").await?;
    page.type_into(WIDTH, "71").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('71 mm')")
        .await?;
    let mended = in_address(&page).await?;
    for place in ["measure", "rocket"] {
        page.run("history.back();").await?;
        page.is_at(place).await?;
        assert_eq!(page.eval("location.search").await?, search(place));
    }
    page.wait_until("document.getElementById('/sections/1/diameter_mm').value === '71'")
        .await?;
    assert_eq!(in_address(&page).await?, mended);
    Ok(())
}

#[tokio::test]
async fn an_address_opens_its_place_and_a_reload_stays_there() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    page.visit_file("?at=measure").await?;
    page.ready().await?;
    page.is_at("measure").await?;
    assert_eq!(page.eval("location.search").await?, "?at=measure");
    assert_eq!(page.eval("document.title").await?, "Measure both points · Noseward");
    page.type_into(READING, "131").await?;
    page.press(Key::Tab).await?;
    page.reload().await?;
    page.is_at("measure").await?;
    assert_eq!(page.value(READING).await?, "131");
    // Of a link, the place as well as the rocket.
    let tern = Example::Tern.design();
    page.visit_file(&format!("?at=why#{}", hash(&tern.clone().into()))).await?;
    page.ready().await?;
    page.is_at("why").await?;
    assert_eq!(in_address(&page).await?, tern);
    page.click("#why-sentences > summary").await?;
    assert!(page.text("#rocket-in-words").await?.contains("Tern"));
    // A place that there is not is the first.
    page.visit_file("?at=elsewhere").await?;
    page.ready().await?;
    page.is_at("rocket").await?;
    assert_eq!(page.eval("location.search").await?, "");
    Ok(())
}

/// Clicks with a key held down, as somebody does who wants another tab.
async fn click_with_control(page: &Page, css: &str) -> Result<()> {
    let middle = "const box = document.querySelector(CSS).getBoundingClientRect();
        return [box.x + box.width / 2, box.y + box.height / 2];";
    let middle = page.run(&middle.replace("CSS", &json!(css).to_string())).await?;
    for kind in ["mousePressed", "mouseReleased"] {
        let event = json!({
            "type": kind, "x": middle[0], "y": middle[1], "button": "left",
            "clickCount": 1, "modifiers": 2,
        });
        page.cdp("Input.dispatchMouseEvent", event).await?;
    }
    Ok(())
}

#[tokio::test]
async fn a_link_to_a_place_opens_in_another_tab_with_the_rocket() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    make_as_wide_as(&page, 71.0).await?;
    for place in PLACES {
        let link = format!("document.getElementById('to-{place}').href");
        let at = format!("?at={place}#{}", hash(&as_wide_as(71.0).into()));
        let expected = format!("{}{at}", page.address());
        assert_eq!(page.eval(&link).await?, expected.as_str());
    }
    let hash = hash(&as_wide_as(71.0).into());
    let next = page.eval("document.getElementById('next').href").await?;
    assert_eq!(next, format!("{}?at=measure#{hash}", page.address()));

    click_with_control(&page, "#to-measure").await?;
    let start = Instant::now();
    while let Err(error) = page.go_to_tab(1).await {
        if start.elapsed() > PATIENCE {
            return Err(error);
        }
        tokio::time::sleep(Duration::from_millis(50)).await;
    }
    page.ready().await?;
    page.is_at("measure").await?;
    assert_eq!(in_address(&page).await?, as_wide_as(71.0));
    // Where the link was, nothing has happened.
    page.go_to_tab(0).await?;
    page.is_at("rocket").await?;
    assert_eq!(page.eval("location.search").await?, "");
    Ok(())
}

#[tokio::test]
async fn whoever_arrives_hears_where_they_are() -> Result<()> {
    let page = Page::open(360, 740).await?;
    for place in PLACES.into_iter().skip(1).chain(["rocket"]) {
        page.run("scrollTo(0, document.body.scrollHeight);").await?;
        page.at(place).await?;
        assert_eq!(page.focused_id().await?, "place-title", "{place}");
        let heading = page.text("#place-title").await?;
        assert_eq!(page.eval("document.title").await?, format!("{heading} · Noseward"));
        let current =
            "[...document.querySelectorAll('[aria-current=page]')].map(a => a.id)";
        assert_eq!(page.eval(current).await?, json!([format!("to-{place}")]));
        // The heading is in view, however far down the page somebody was.
        page.wait_until(
            "(box => document.elementFromPoint(box.x + 9, box.y + box.height / 2)?.id)
                (document.getElementById('place-title').getBoundingClientRect())
                === 'place-title'",
        )
        .await?;
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_number_stays_as_it_is_typed_until_its_field_is_left() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.type_into(WIDTH, "8.2 cm").await?;
    page.wait_until("document.getElementById('in-words').innerText.includes('82 mm')")
        .await?;
    assert_eq!(page.value(WIDTH).await?, "8.2 cm");
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('/sections/1/diameter_mm').value === '82'")
        .await?;

    page.at("measure").await?;
    page.type_into(READING, "8.2 cm").await?;
    page.wait_until("document.getElementById('nb-mass').innerText.includes('82 mm')")
        .await?;
    assert_eq!(page.value(READING).await?, "8.2 cm");
    page.press(Key::Tab).await?;
    page.wait_until(
        "document.getElementById('nb:centre_of_mass_reading_1_mm').value === '82'",
    )
    .await?;

    // What cannot be read stays there, to be mended.
    page.type_into(READING, "a lot").await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('nb-mass').innerText.includes('Reading 1')")
        .await?;
    assert_eq!(page.value(READING).await?, "a lot");
    Ok(())
}

/// Types two letters in the middle of a field, the second once the page has been drawn anew
/// with the first; `drawn` is true then, with `TEXT` as what stands in the field.
async fn type_in_the_middle(page: &Page, css: &str, drawn: &str) -> Result<()> {
    page.type_into(css, "62").await?;
    page.press(Key::Left).await?;
    for (letter, text, caret) in [("1", "612", 2), ("4", "6142", 3)] {
        page.press(letter).await?;
        page.wait_until(&drawn.replace("TEXT", &json!(text).to_string())).await?;
        assert_eq!(page.value(css).await?, text);
        assert_eq!(
            page.eval("document.activeElement.selectionStart").await?,
            caret,
            "{css}"
        );
        assert_eq!(
            page.eval("document.activeElement.selectionEnd").await?,
            caret,
            "{css}"
        );
    }
    Ok(())
}

#[tokio::test]
async fn the_caret_stays_in_the_middle_of_what_is_typed() -> Result<()> {
    let in_markup = "document.activeElement.getAttribute('value') === TEXT";
    let page = Page::open(1366, 600).await?;
    type_in_the_middle(&page, WIDTH, in_markup).await?;
    page.type_into(WIDTH, "72").await?;
    page.at("measure").await?;
    type_in_the_middle(&page, READING, in_markup).await?;
    page.at("compare").await?;
    let in_the_list = "document.getElementById('compare-list').innerText.includes(TEXT)";
    type_in_the_middle(&page, "[id='nb:note']", in_the_list).await?;
    Ok(())
}

#[tokio::test]
async fn what_somebody_has_opened_or_closed_stays_so_while_it_is_drawn_anew() -> Result<()>
{
    let page = Page::open(1366, 600).await?;
    let open = |id: &str| format!("document.getElementById('{id}').open");
    page.at("measure").await?;
    assert_eq!(page.eval(&open("nb-lengths")).await?, false);
    page.click("#nb-lengths > summary").await?;
    page.type_into("[id='nb:rocket_length_mm']", "a lot").await?;
    page.wait_until(
        "document.getElementById('measure-lengths').innerText.includes('Length of the rocket:')",
    )
    .await?;
    assert_eq!(page.eval(&open("nb-lengths")).await?, true);

    // Elsewhere, while the words inside change.
    make_as_wide_as(&page, 71.0).await?;
    page.at("why").await?;
    assert_eq!(page.eval(&open("why-sentences")).await?, false);
    page.click("#why-sentences > summary").await?;
    assert_eq!(page.eval(&open("why-sentences")).await?, true);
    let words = "document.getElementById('rocket-in-words').textContent";
    let before = page.eval(words).await?;
    page.click("#undo").await?;
    page.wait_until(&format!("{words} !== {before}")).await?;
    assert_eq!(page.eval(&open("why-sentences")).await?, true);

    // A menu is there until somebody turns to something else.
    page.at("rocket").await?;
    page.click("#begin-open > summary").await?;
    page.type_into("#open-text", "no rocket").await?;
    page.click("#open-pasted").await?;
    page.wait_until("document.getElementById('open-fault').innerText").await?;
    assert_eq!(page.eval(&open("begin-open")).await?, true);
    assert_eq!(page.value("#open-text").await?, "no rocket");
    page.click(WIDTH).await?;
    assert_eq!(page.eval(&open("begin-open")).await?, false);
    Ok(())
}
