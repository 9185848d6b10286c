//! A trial by finger, on a telephone: every place, no mouse and no keys but those for numbers
//! and words.

use noseward_page_tests::{Key, Page, Result};
use serde_json::json;

/// The least width and height of what a finger has to hit, in CSS pixels.
///
/// Source: Web Content Accessibility Guidelines 2.2, success criterion 2.5.8 (AA).
const TARGET_PX: f64 = 24.0;

/// Puts a finger on the element with an id, and lifts it again.
async fn tap(page: &Page, id: &str) -> Result<()> {
    page.wait_until(&format!("document.getElementById({id:?})")).await?;
    // In the middle of the window nothing that stands still covers it.
    let at = format!(
        "(() => {{
           const one = document.getElementById({id:?});
           one.scrollIntoView({{ block: 'center', behavior: 'instant' }});
           const box = one.getBoundingClientRect();
           const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
           const hit = document.elementFromPoint(x, y);
           return [x, y, box.width, box.height, one === hit || one.contains(hit)];
         }})()"
    );
    let at = page.eval(&at).await?;
    let number = |i: usize| at[i].as_f64().expect("a number");
    assert_eq!(at[4], true, "{id} is covered or out of view: {at}");
    assert!(number(2) >= TARGET_PX && number(3) >= TARGET_PX, "{id} is small: {at}");
    let (x, y) = (number(0), number(1));
    let touch = json!({ "type": "touchStart", "touchPoints": [{ "x": x, "y": y }] });
    page.cdp("Input.dispatchTouchEvent", touch).await?;
    let lifted = json!({ "type": "touchEnd", "touchPoints": [] });
    page.cdp("Input.dispatchTouchEvent", lifted).await?;
    Ok(())
}

/// Taps into a field and types.
async fn fill(page: &Page, id: &str, text: &str) -> Result<()> {
    tap(page, id).await?;
    page.wait_until(&format!("document.activeElement.id === {id:?}")).await?;
    page.press(Key::Control + "a").await?;
    page.press(text).await
}

/// By the way on, to the next place.
async fn next(page: &Page, place: &str) -> Result<()> {
    tap(page, "next").await?;
    page.is_at(place).await
}

#[tokio::test]
async fn a_trial_by_finger_on_a_telephone() -> Result<()> {
    let page = Page::unopened(360, 740).await?;
    let touch = json!({ "enabled": true, "maxTouchPoints": 1 });
    page.cdp("Emulation.setTouchEmulationEnabled", touch).await?;
    page.goto("").await?;
    fill(&page, "/fins/0/planform/four_sided/span_mm", "62").await?;
    next(&page, "measure").await?;
    for (point, readings) in
        [("mass", ["138", "141", "139"]), ("pressure", ["204", "199", "201"])]
    {
        for (reading, i) in readings.into_iter().zip(1..) {
            fill(&page, &format!("nb:centre_of_{point}_reading_{i}_mm"), reading).await?;
        }
    }
    next(&page, "predict").await?;
    tap(&page, "nb-outcome:0").await?;
    fill(&page, "nb:draft_because", "the fins are large").await?;
    tap(&page, "nb-lock").await?;
    page.wait_until("document.activeElement.id === 'next'").await?;
    next(&page, "swing").await?;
    tap(&page, "to-space").await?;
    tap(&page, "space-checked").await?;
    page.wait_until("!document.getElementById('swing-why-not')").await?;
    for (outcome, said) in [(0, "1 of 3"), (1, "2 of 3"), (0, "Three swings")] {
        tap(&page, &format!("swung:{outcome}")).await?;
        let words = "document.getElementById('swings-said').textContent";
        page.wait_until(&format!("{words}.includes({said:?})")).await?;
    }
    next(&page, "compare").await?;
    next(&page, "conclude").await?;
    fill(&page, "nb:claim", "Large fins keep the nose in front.").await?;
    next(&page, "hand-in").await?;
    let notebook = page
        .keeps_notebook(|notebook| notebook.conclusion.claim.contains("Large fins keep"))
        .await?;
    let trial = notebook.trial(1).expect("it was begun");
    assert!(trial.is_complete() && trial.measured.mass.mm.iter().all(Option::is_some));
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
