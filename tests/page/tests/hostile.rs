//! Texts that try to become markup or script, through every way into the page.
//!
//! The strings are of the usual kinds (OWASP, "Cross Site Scripting Prevention Cheat
//! Sheet": markup, attributes, addresses, styles, encodings), written for this test.

use noseward_link::{hash, to_file};
use noseward_page_tests::{Page, Result};
use noseward_stability::{Design, Example};
use serde_json::{Value, json};

/// Each would set `window.intruder` or add an element if it were taken for markup.
const HOSTILE: [&str; 24] = [
    "<script>window.intruder=1</script>",
    "<img src=x onerror=intruder=1>",
    "<svg onload=intruder=1>",
    "<svg><script>intruder=1</script>",
    "\"><b onclick=intruder=1>b",
    "' autofocus onfocus=intruder=1",
    "\" style=\"color:red",
    "</textarea><iframe src=x>",
    "</title><base href=//x>",
    "</style><link rel=import>",
    "</svg></g><form action=x>",
    "<a href=javascript:alert(1)>",
    "javascript:window.intruder=1",
    "data:text/html,<script>",
    "<!--<img src=--><img src=x>",
    "<![CDATA[<img src=x>]]>",
    "&lt;img src=x&gt;",
    "&#60;img src=x&#62;",
    "\\u003cimg src=x\\u003e",
    "%3Cimg src=x%3E",
    "+ADw-img src=x+AD4-",
    "{{intruder=1}}${intruder=1}",
    "<math><mtext><mglyph><style>",
    "\u{202e}<\u{0}img\u{7} src=x>\u{2028}",
];

/// What must not have come into being: counted against the page as it was built.
const FOREIGN: &str = "document.querySelectorAll('script, img, iframe, object, embed, link, \
     base, form, math, style, b, [style], [onerror], [onload], [onclick], [onfocus], \
     [autofocus], a[href^=\"javascript\" i], a[href^=data]').length";

/// Places where what is typed of the rocket is told.
const ELSEWHERE: [&str; 4] = ["predict", "compare", "why", "hand-in"];

/// The text without what no name may hold; the end of a line becomes a space.
fn shown(text: &str) -> String {
    let text = text.replace('\u{2028}', " ");
    text.chars().filter(|c| !c.is_control() && *c != '\u{202e}').collect()
}

/// Puts a text into a field at once and tells it as typing is told: keys would take minutes.
async fn fill(page: &Page, id: &str, text: &str) -> Result<()> {
    page.run(&format!(
        "const field = document.getElementById({id:?});
         field.value = {text};
         field.dispatchEvent(new InputEvent('input', {{ bubbles: true }}));
         field.dispatchEvent(new Event('change', {{ bubbles: true }}));
         field.dispatchEvent(new FocusEvent('focusout', {{ bubbles: true }}));",
        text = json!(text),
    ))
    .await?;
    Ok(())
}

async fn assert_unharmed(page: &Page, before: &Value, way: &str) -> Result<()> {
    assert_eq!(page.eval("typeof window.intruder").await?, "undefined", "{way}");
    assert_eq!(&page.eval(FOREIGN).await?, before, "{way}");
    let state = page.eval("document.documentElement.dataset.state").await?;
    assert_eq!(state, "ready", "{way}");
    let errors = page.errors().await?;
    assert!(errors.is_empty(), "{way}: {errors:#?}");
    Ok(())
}

/// A rocket whose every text is hostile.
fn rocket(text: &str) -> Design {
    let mut design = Example::Puffin.design();
    design.name = text.chars().take(24).collect();
    for weight in &mut design.weights {
        weight.label = design.name.clone();
    }
    design
}

#[tokio::test]
async fn no_text_that_is_typed_becomes_markup() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let mut elsewhere = Vec::new();
    for place in ELSEWHERE {
        page.at(place).await?;
        elsewhere.push(page.eval(FOREIGN).await?);
    }
    page.at("rocket").await?;
    page.click("[id='show:all']").await?;
    page.wait_until("document.querySelectorAll('input[data-field]').length > 20").await?;
    let before = page.eval(FOREIGN).await?;
    let fields = page
        .eval(
            "[...document.querySelectorAll('input[data-field]')].map(field => field.id)",
        )
        .await?;
    let fields: Vec<String> = serde_json::from_value(fields)?;
    assert!(fields.len() > 20, "{fields:?}");
    for text in HOSTILE {
        for id in &fields {
            fill(&page, id, text).await?;
        }
        page.wait_until("document.querySelectorAll('#faults li').length > 0").await?;
        assert_unharmed(&page, &before, text).await?;
        for (place, before) in ELSEWHERE.iter().zip(&elsewhere) {
            page.at(place).await?;
            assert_unharmed(&page, before, &format!("{text} at {place}")).await?;
        }
        page.at("rocket").await?;
    }
    page.screenshot("hostile-typed").await?;
    Ok(())
}

#[tokio::test]
async fn no_word_of_the_notebook_becomes_markup() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    for place in ["measure", "predict", "conclude", "compare"] {
        page.at(place).await?;
        let before = page.eval(FOREIGN).await?;
        let fields = page
            .eval("[...document.querySelectorAll('[data-note]:is(input, textarea)')].map(f => f.id)")
            .await?;
        let fields: Vec<String> = serde_json::from_value(fields)?;
        assert!(!fields.is_empty(), "{place}");
        for text in HOSTILE {
            for id in &fields {
                fill(&page, id, text).await?;
            }
            page.run("return new Promise(requestAnimationFrame);").await?;
            assert_unharmed(&page, &before, text).await?;
        }
    }
    Ok(())
}

#[tokio::test]
async fn no_link_becomes_markup() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let before = page.eval(FOREIGN).await?;
    for text in HOSTILE {
        page.goto(&hash(&rocket(text).into())).await?;
        let name = page.value("[id='/name']").await?;
        assert_eq!(name, shown(&text.chars().take(24).collect::<String>()));
        assert_unharmed(&page, &before, text).await?;
        // And as a link that makes no sense.
        page.visit(text).await?;
        page.ready().await?;
        assert_unharmed(&page, &before, text).await?;
    }
    Ok(())
}

#[tokio::test]
async fn no_file_and_no_pasted_text_becomes_markup() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("measure").await?;
    page.at("rocket").await?;
    let before = page.eval(FOREIGN).await?;
    for text in HOSTILE {
        let file = to_file(&rocket(text).into());
        let in_a_key = file.replace("\"sections\"", &json!(text).to_string());
        let in_a_kind = file.replacen("\"ellipsoid\"", &json!(text).to_string(), 1);
        assert_ne!(file, in_a_kind);
        for pasted in [file, in_a_key, in_a_kind, text.to_owned(), format!("R1{text}")] {
            page.run(&format!(
                "document.getElementById('open-text').value = {};
                 document.getElementById('open-pasted').click();",
                json!(pasted)
            ))
            .await?;
            page.wait_until(
                "(document.getElementById('notice').innerText \
                  + document.getElementById('passing').innerText).length > 5",
            )
            .await?;
            assert_unharmed(&page, &before, &pasted).await?;
        }
    }
    page.screenshot("hostile-pasted").await?;
    Ok(())
}

/// A file is read in full by the browser before the page can look at it.
#[tokio::test]
async fn a_file_of_nonsense_or_of_great_size_says_so_and_loses_nothing() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let give = |content: &str| {
        format!(
            "const data = new DataTransfer();
             data.items.add(new File([{content}], 'rocket.json'));
             const input = document.getElementById('open-file');
             input.files = data.files;
             input.dispatchEvent(new Event('change', {{ bubbles: true }}));"
        )
    };
    for content in
        ["new Uint8Array(70000).fill(255)", "'['.repeat(200000)", "'9'.repeat(3e7)"]
    {
        page.run(&give(content)).await?;
        page.wait_until(
            "document.getElementById('notice').innerText.includes('could not be opened')",
        )
        .await?;
        assert_eq!(page.value("[id='/name']").await?, "Puffin", "{content}");
        page.click("#dismiss").await?;
    }
    page.run(&give(&json!(to_file(&Example::Tern.design().into())).to_string())).await?;
    page.wait_until("document.getElementById('/name').value === 'Tern'").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
