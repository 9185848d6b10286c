//! An educator's hour: a lesson is set up, groups hand in in every way, and the class is looked
//! at, kept, given away and deleted.

use noseward_lesson::{Colour, Group};
use noseward_link::{SetUpLink, open_set_up, set_up_hash};
use noseward_page_tests::{Key, Page, Result};
use serde_json::json;
use std::fs;
use std::path::Path;

/// What can be seen of a swing, by its place in the list.
const STEADY: usize = 0;
const WOBBLING: usize = 1;
const SIDEWAYS: usize = 2;
const TAIL_FIRST: usize = 3;
const HEAD: &str = "document.getElementById('class-head').innerText";

async fn breaks_no_rule(page: &Page) -> Result<()> {
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    Ok(())
}

async fn says(page: &Page, words: &str) -> Result<()> {
    let place = "document.getElementById('place-regions').innerText";
    page.wait_until(&format!("{place}.includes({})", json!(words))).await
}

/// What one group does in a fresh browser: it measures two points, predicts, swings three times
/// and sees the same each time, of the list of what can be seen.
async fn lesson(hash: &str, points_mm: (u32, u32), seen: usize) -> Result<Page> {
    let page = Page::unopened(1366, 600).await?;
    page.goto(hash).await?;
    page.all_is_here().await?;
    page.at("measure").await?;
    for (point, mm) in [("mass", points_mm.0), ("pressure", points_mm.1)] {
        for (reading, off) in [(1, 0), (2, 1), (3, 0)] {
            let field = format!("[id='nb:centre_of_{point}_reading_{reading}_mm']");
            page.type_into(&field, &(mm + off).to_string()).await?;
            page.press(Key::Tab).await?;
        }
    }
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "its fins").await?;
    page.click("#nb-lock").await?;
    page.at("swing").await?;
    page.check_space().await?;
    for _ in 0..3 {
        page.click_again(&format!("[id='swung:{seen}']")).await?;
    }
    page.at("hand-in").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(page)
}

/// The code of the trial, as it is read off the page.
async fn code(page: &Page) -> Result<String> {
    page.text(".nb__result .share__code").await
}

/// The link to the notebook, as the page copies it.
async fn copied_link(page: &Page) -> Result<String> {
    page.run(
        "navigator.clipboard.writeText = async (text) => { window.copied = text; };",
    )
    .await?;
    page.click("#nb-copy-link").await?;
    page.wait_until("window.copied").await?;
    Ok(page.eval("window.copied").await?.as_str().unwrap_or_default().to_owned())
}

/// The file that a button of Hand in saves, where it is saved.
async fn saved(page: &Page, button: &str, i: usize, ending: &str) -> Result<String> {
    let folder = page.allow_downloads(&format!("class-hour-{i}")).await?;
    page.run("document.querySelector('#out-tables').open = true;").await?;
    page.click(button).await?;
    let colour = noseward_lesson::key(&Colour::ALL[i]);
    let file = folder.join(format!("noseward-notebook-{colour}-1.{ending}"));
    page.downloaded(&file).await?;
    Ok(file.display().to_string())
}

fn written(folder: &Path, name: &str, text: &str) -> Result<String> {
    let path = folder.join(name);
    fs::write(&path, text)?;
    Ok(path.display().to_string())
}

#[tokio::test]
async fn an_educator_s_hour() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    // A minute before the lesson.
    page.at("set-up").await?;
    page.type_into("[id='su:pupils']", "30").await?;
    page.press(Key::Tab).await?;
    page.wait_until("localStorage['noseward/set-up']").await?;
    let link = page.eval("document.getElementById('set-up-link').value").await?;
    let link = link.as_str().and_then(|link| link.split('#').nth(1)).expect("a link");
    let set_up = open_set_up(link).expect("a set-up").set_up;

    // Nine groups do the lesson, each on a computer of its own, and one without.
    let found = [
        ((150, 190), STEADY),
        ((150, 188), STEADY),
        ((160, 161), SIDEWAYS),
        ((158, 166), TAIL_FIRST),
        ((155, 172), WOBBLING),
        ((150, 180), STEADY),
        ((155, 170), STEADY),
        ((140, 190), STEADY),
        ((160, 163), SIDEWAYS),
    ];
    let folder = page.allow_downloads("class-hour").await?;
    let mut pasted = String::from("Dear colleague, here are ours:\n");
    let (mut codes, mut files) = (Vec::new(), Vec::new());
    for (i, (points_mm, seen)) in found.into_iter().enumerate() {
        let group = Group::new(Colour::ALL[i], 1);
        let hash = set_up_hash(&SetUpLink { set_up: set_up.clone(), group });
        let theirs = lesson(&hash.expect("it fits"), points_mm, seen).await?;
        match i {
            0..3 => pasted.push_str(&format!("\n{}\n", code(&theirs).await?)),
            3..5 => pasted.push_str(&format!("{}\n", copied_link(&theirs).await?)),
            5..7 => files.push(saved(&theirs, "#nb-save", i, "json").await?),
            7 => files.push(saved(&theirs, "#nb-csv-point", i, "csv").await?),
            _ => codes.push(code(&theirs).await?),
        }
        if i == 2 {
            codes.push(code(&theirs).await?);
        }
    }

    // By a paste.
    page.at("class").await?;
    breaks_no_rule(&page).await?;
    page.run(&format!(
        "const area = document.getElementById('cl:pasted');
         area.value = {};
         area.dispatchEvent(new Event('input', {{ bubbles: true }}));",
        json!(pasted)
    ))
    .await?;
    page.click("#cl-gather").await?;
    says(&page, "Trials: 5, groups: 5").await?;
    // By files, one of which is a table, and one a holiday picture.
    files.push(written(&folder, "codes.txt", &codes.join("\n\n"))?);
    files.push(written(&folder, "sea.txt", "\u{89}PNG of the sea")?);
    page.element("#class-files").await?.send_keys(files.join("\n")).await?;
    says(&page, "Trials: 9, groups: 9").await?;
    says(&page, "Here already, counted once: 1").await?;
    says(&page, "Lines with nothing to take in: 1").await?;
    // By a row from paper, with the keyboard alone.
    page.run("document.querySelector('#class-grid > summary').focus();").await?;
    page.press(Key::Enter).await?;
    page.tab_to("cl:colour").await?;
    page.press("W").await?;
    for (field, text) in [("number", "2"), ("point0", "150 151"), ("point1", "158")] {
        page.tab_to(&format!("cl:{field}")).await?;
        page.press(Key::Control + "a").await?;
        page.press(text).await?;
    }
    for field in ["swing0", "swing1", "swing2"] {
        page.tab_to(&format!("cl:{field}")).await?;
        page.press("t").await?;
    }
    page.tab_to("cl:changed").await?;
    page.press("nothing yet").await?;
    page.press(Key::Enter).await?;
    says(&page, "White 2, trial 1 is in.").await?;
    says(&page, "Trials: 10, groups: 10").await?;
    page.screenshot("class-gathered").await?;

    // It is there after a reload.
    page.wait_until("localStorage['noseward/class']?.includes('white 2')").await?;
    page.reload().await?;
    says(&page, "Trials: 10, groups: 10").await?;
    breaks_no_rule(&page).await?;

    // The pattern, and the big screen.
    page.click("[id='cl-show:1']").await?;
    page.wait_until("document.querySelector('.class__chart svg')").await?;
    says(&page, "What would settle it").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("class-pattern").await?;
    page.click("#cl-board").await?;
    page.click("[id='cl-timer:0']").await?;
    says(&page, "1:5").await?;
    let across = "document.documentElement.scrollWidth <= innerWidth";
    assert_eq!(page.eval(across).await?, json!(true));
    // Letters a 200th of 8 m high on a screen 2 m wide are 27 of 1366 pixels.
    let letters =
        "Math.min(...[...document.querySelectorAll('.class__says p, .class__clock')]
        .map((p) => parseFloat(getComputedStyle(p).fontSize)))";
    let px = page.eval(letters).await?.as_f64().unwrap_or(0.0);
    assert!(px >= 27.0, "{px}");
    page.screenshot("class-board").await?;
    page.click("#cl-board").await?;

    // The table: one is marked, one is left out.
    page.click("[id='cl-show:2']").await?;
    page.click("[id='cl-mark:0']").await?;
    page.click("[id='cl-hide:1']").await?;
    page.wait_until("document.querySelectorAll('.class__hidden').length === 1").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("class-table").await?;

    // What groups wrote is marked, and goes home on paper, but for what is left out, and in a
    // table.
    page.click("[id='cl-show:3']").await?;
    says(&page, "Notebook 1 of 5").await?;
    says(&page, "Only numbers came from: Red 1").await?;
    page.click("[id='cl-find:6']").await?;
    page.click("[id='cl-step:1']").await?;
    says(&page, "Notebook 2 of 5").await?;
    page.click("[id='cl-find:6']").await?;
    let found = "document.querySelector('[id=\"cl-find:6\"][aria-pressed=true]')";
    page.wait_until(found).await?;
    breaks_no_rule(&page).await?;
    page.screenshot("class-marking").await?;
    page.click("[id='cl-show:4']").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("class-reports").await?;
    page.run("window.print = () => { window.printed = true; };").await?;
    for (button, name, sheets) in [("0", "class-groups", 9), ("1", "class-class", 2)] {
        page.click(&format!("[id='cl-report:{button}']")).await?;
        page.wait_until("window.printed").await?;
        let bytes = fs::read(page.print(name).await?)?;
        let lines = bytes.split(|byte| *byte == b'\n');
        let pages = lines.filter(|line| line.ends_with(b"/Type /Page")).count();
        assert_eq!(pages, sheets, "{name}");
        page.run("window.printed = false; dispatchEvent(new Event('afterprint'));")
            .await?;
    }
    page.click("[id='cl-report:3']").await?;
    let table = page.downloaded(&folder.join("noseward-class-table.csv")).await?;
    let table = String::from_utf8(table)?;
    assert!(table.contains("What changed [what_changed]"), "{table}");
    // The headings, the trials, and the class.
    assert_eq!(table.lines().count(), 12, "{table}");

    // Saved, deleted, opened again: all of it is there.
    page.click("[id='cl-show:0']").await?;
    page.click("#cl-save").await?;
    let saved = page.downloaded(&folder.join("noseward-class.csv")).await?;
    assert!(String::from_utf8(saved)?.contains("white 2"));
    page.click("#cl-ask-delete").await?;
    page.click("#cl-delete").await?;
    page.wait_until("!('noseward/class' in localStorage)").await?;
    assert!(!page.eval(HEAD).await?.as_str().unwrap_or_default().contains("Trials"));
    let path = folder.join("noseward-class.csv").display().to_string();
    page.element("#class-files").await?.send_keys(path).await?;
    says(&page, "Trials: 10, groups: 10").await?;
    page.click("[id='cl-show:2']").await?;
    page.wait_until("document.querySelectorAll('.class__hidden').length === 1").await?;
    page.click("[id='cl-show:3']").await?;
    page.wait_until(found).await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn on_a_telephone_everything_of_the_example_class_fits() -> Result<()> {
    let page = Page::open(360, 740).await?;
    page.at("class").await?;
    page.click("#cl-example").await?;
    says(&page, "All of this is invented").await?;
    for view in 0..5 {
        page.click(&format!("[id='cl-show:{view}']")).await?;
        let across = "document.documentElement.scrollWidth <= innerWidth";
        page.wait_until(across).await?;
        breaks_no_rule(&page).await?;
        page.screenshot(&format!("class-telephone-{view}")).await?;
    }
    Ok(())
}
