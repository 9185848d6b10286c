//! The notebook: a whole lesson by keyboard, with a reload and a killed tab in the middle;
//! every way out and in; two tabs; a part that does not load.

use noseward_lesson::{Notebook, Record, SwingOutcome, Trial};
use noseward_link::{
    Format, NotebookFile, notebook_hash, open_table, to_notebook_file, to_table,
};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::{Example, Planform};
use serde_json::json;

const SPAN: &str = "/fins/0/planform/four_sided/span_mm";
const COUNT: &str = "/fins/0/count";

/// Whether a prediction was locked.
fn is_predicted(notebook: &Notebook) -> bool {
    notebook.trials().iter().any(Trial::is_locked)
}

/// To a place by keyboard alone: by the link in the path.
async fn by_keyboard_to(page: &Page, place: &str) -> Result<()> {
    page.run("document.activeElement.blur(); scrollTo(0, 0);").await?;
    page.tab_to(&format!("to-{place}")).await?;
    page.press(Key::Enter).await?;
    page.is_at(place).await?;
    page.wait_until("document.activeElement.id === 'place-title'").await
}

/// Types into the field that has the focus, and leaves it.
async fn fill(page: &Page, id: &str, text: &str) -> Result<()> {
    page.tab_to(id).await?;
    page.press(Key::Control + "a").await?;
    page.press(text).await
}

/// Measures and predicts by keyboard, from place to place by the way on.
async fn measure_and_predict(
    page: &Page,
    readings: [&str; 6],
    outcome: usize,
    because: &str,
) -> Result<()> {
    by_keyboard_to(page, "measure").await?;
    let points = ["mass", "pressure"].into_iter().flat_map(|point| {
        (1..=3).map(move |i| format!("nb:centre_of_{point}_reading_{i}_mm"))
    });
    for (id, text) in points.zip(readings) {
        fill(page, &id, text).await?;
    }
    page.tab_to("next").await?;
    page.press(Key::Enter).await?;
    page.is_at("predict").await?;
    page.tab_to(&format!("nb-outcome:{outcome}")).await?;
    page.press(Key::Enter).await?;
    fill(page, "nb:draft_because", because).await?;
    page.tab_to("nb-lock").await?;
    page.press(Key::Enter).await?;
    page.wait_until("document.activeElement.id === 'next'").await
}

/// Swings three times by keyboard; the adult has to be asked before every three.
async fn swing(page: &Page, outcomes: [usize; 3]) -> Result<()> {
    page.press(Key::Enter).await?;
    page.is_at("swing").await?;
    page.check_space().await?;
    let mut last = 0;
    for outcome in outcomes {
        let id = format!("swung:{outcome}");
        if outcome < last {
            page.tab_back_to(&id).await?;
        } else {
            page.tab_to(&id).await?;
        }
        page.press_again(Key::Enter).await?;
        last = outcome;
    }
    page.wait_until("document.getElementById('swings-said').innerText.includes('Three')")
        .await
}

/// Changes a measurement of the rocket, for the next trial.
async fn change(page: &Page, field: &str, text: &str) -> Result<()> {
    by_keyboard_to(page, "rocket").await?;
    page.element(&format!("[id='{field}']")).await?.focus().await?;
    page.press(Key::Control + "a").await?;
    page.press(text).await?;
    page.press(Key::Tab).await?;
    page.wait_until("document.getElementById('nb-bring-back')").await
}

#[tokio::test]
async fn a_whole_lesson_by_keyboard() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    // As if the tab were killed each time it is left: nothing can be kept at the last
    // moment.
    page.run_before_each_load(
        "for (const kind of ['pagehide', 'visibilitychange', 'beforeunload'])\
           addEventListener(kind, (event) => event.stopImmediatePropagation(), true);",
    )
    .await?;
    page.goto("").await?;
    // Whoever leads wants the prediction before the verdict.
    page.at("lead").await?;
    page.run(
        "const told = document.getElementById('nb:telling'); told.value = '1';
         told.dispatchEvent(new Event('input', { bubbles: true }));",
    )
    .await?;
    let strip = "document.getElementById('strip').textContent";
    page.wait_until(&format!("{strip}.includes('Predict first')")).await?;

    let first = ["128", "131", "12,9 cm", "160", "163", "161"];
    measure_and_predict(&page, first, 1, "the fins are small").await?;
    page.wait_until(&format!("!{strip}.includes('Predict first')")).await?;
    swing(&page, [0, 1, 1]).await?;
    page.screenshot("notebook-swung").await?;

    change(&page, SPAN, "70").await?;
    page.wait_until(&format!("{strip}.includes('Predict first')")).await?;
    by_keyboard_to(&page, "measure").await?;
    fill(&page, "nb:centre_of_mass_reading_1_mm", "132").await?;
    page.press(Key::Tab).await?;
    page.keeps_notebook(|notebook| {
        notebook.in_hand().is_some_and(|trial| trial.measured.mass.mm[0] == Some(132.0))
    })
    .await?;
    by_keyboard_to(&page, "predict").await?;
    let changed = page.text("#predict-changed").await?;
    assert!(changed.contains("55 mm → 70 mm"), "{changed}");
    assert!(changed.contains("centre of mass moved"), "{changed}");

    // A reload in the middle, which stays at the place.
    page.reload().await?;
    page.is_at("predict").await?;
    by_keyboard_to(&page, "measure").await?;
    assert_eq!(page.value("[id='nb:centre_of_mass_reading_1_mm']").await?, "132");
    let second = ["132", "134", "133", "180", "183", "181"];
    measure_and_predict(&page, second, 0, "bigger fins push more").await?;
    swing(&page, [0, 0, 0]).await?;

    // A third trial, and the tab is killed while somebody types.
    change(&page, COUNT, "3").await?;
    by_keyboard_to(&page, "measure").await?;
    fill(&page, "nb:centre_of_mass_reading_1_mm", "130").await?;
    fill(&page, "nb:centre_of_mass_reading_2_mm", "131").await?;
    page.press(Key::Tab).await?;
    page.press("12").await?;
    page.goto("").await?;
    by_keyboard_to(&page, "measure").await?;
    assert_eq!(page.value("[id='nb:centre_of_mass_reading_1_mm']").await?, "130");
    assert_eq!(page.value("[id='nb:centre_of_mass_reading_2_mm']").await?, "131");
    let third = ["130", "131", "129", "170", "171", "172"];
    measure_and_predict(&page, third, 2, "three fins are fewer").await?;
    swing(&page, [1, 1, 0]).await?;

    change(&page, SPAN, "40").await?;
    let fourth = ["120", "121", "119", "118", "122", "120"];
    measure_and_predict(&page, fourth, 2, "too close").await?;
    swing(&page, [2, 3, 5]).await?;
    by_keyboard_to(&page, "measure").await?;
    assert!(page.text("#measure-together").await?.contains("Too close to call"));

    // A conclusion with the group's own numbers.
    by_keyboard_to(&page, "conclude").await?;
    page.tab_to("nb:claim").await?;
    page.tab_to("nb-use:0 0").await?;
    page.press(Key::Enter).await?;
    page.wait_until("document.activeElement.id === 'nb:claim'").await?;
    page.press(Key::Control + Key::End).await?;
    page.press(" So fins help.").await?;
    page.press(Key::Tab).await?;
    let notebook = page
        .keeps_notebook(|notebook| notebook.conclusion.claim.contains("So fins help."))
        .await?;
    assert_eq!(notebook.trials().len(), 4);
    for trial in notebook.trials() {
        assert!(trial.is_complete() && !trial.swung_first() && !trial.is_altered());
    }
    assert!(notebook.conclusion.claim.contains("separation"), "{notebook:?}");
    by_keyboard_to(&page, "compare").await?;
    let rows = page.text("#compare-list").await?;
    for words in ["fin shape", "fin number", "the fins are small", "mixed"] {
        assert!(rows.contains(words), "{words}: {rows}");
    }
    let dots =
        page.eval("document.querySelectorAll('#compare-charts svg').length").await?;
    assert_eq!(dots, 2, "two charts");
    page.screenshot("notebook-1366x600").await?;
    page.set_viewport(360, 740).await?;
    for place in ["measure", "predict", "swing", "compare", "conclude", "hand-in"] {
        page.at(place).await?;
        let wide = "document.documentElement.scrollWidth <= innerWidth";
        page.wait_until(wide).await?;
        page.screenshot(&format!("notebook-{place}-360x740")).await?;
        let told: Vec<String> =
            page.axe().await?.iter().map(ToString::to_string).collect();
        assert!(told.is_empty(), "{place}: {told:#?}");
    }
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// A page with one complete trial, and a prediction that would be a formula.
async fn one_trial() -> Result<Page> {
    let page = Page::open(1366, 600).await?;
    page.at("predict").await?;
    // A key that is held down presses a button once, wherever the focus went.
    let held = "document.getElementById('nb-lock').dispatchEvent(new KeyboardEvent(
        'keydown', { key: 'Enter', repeat: true, bubbles: true, cancelable: true }))";
    assert_eq!(page.eval(held).await?, false);
    page.at("measure").await?;
    page.type_into("[id='nb:centre_of_mass_reading_1_mm']", "131,5").await?;
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "=1+1 is \"two\"; so").await?;
    page.click("#nb-lock").await?;
    page.keeps_notebook(is_predicted).await?;
    Ok(page)
}

/// Another page, which has opened some text.
async fn opened(texts: &[String]) -> Result<(Page, Notebook)> {
    let page = Page::open(1366, 600).await?;
    page.at("measure").await?;
    for text in texts {
        page.open_text(text).await?;
        page.wait_until(
            "(document.getElementById('notice').innerText \
              + document.getElementById('passing').innerText).length > 5",
        )
        .await?;
    }
    let notebook = page.keeps_notebook(is_predicted).await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok((page, notebook))
}

#[tokio::test]
async fn every_way_out_leads_back_in() -> Result<()> {
    let page = one_trial().await?;
    let notebook = page.keeps_notebook(|_| true).await?;
    let folder = page.allow_downloads("notebook").await?;
    page.at("hand-in").await?;
    page.click("#out-tables > summary").await?;
    let label = page.label().await?;
    let stem = format!("noseward-notebook-{}", label.to_lowercase().replace(' ', "-"));
    for (button, ending) in
        [("nb-save", ".json"), ("nb-csv-comma", "-semicolons.csv"), ("nb-text", ".txt")]
    {
        page.click(&format!("#{button}")).await?;
        let name = format!("{stem}{ending}");
        let bytes = page.downloaded(&folder.join(&name)).await?;
        let text = String::from_utf8(bytes).expect("UTF-8");
        let (_, again) = opened(&[text]).await?;
        assert_eq!(again, notebook, "{name}");
    }
    // Codes, in any order and in two goes.
    page.click("#nb-symbols").await?;
    page.wait_until("document.querySelector('.nb__symbols')").await?;
    let codes = "[...document.querySelectorAll('.nb__symbols .share__code')]\
        .map((code) => [...code.querySelectorAll('li')].map((row) => row.innerText).join('\\n'))";
    let codes = page.eval(codes).await?;
    let mut codes: Vec<String> = serde_json::from_value(codes).expect("texts");
    assert!(!codes.is_empty());
    codes.reverse();
    let (_, again) = opened(&codes).await?;
    assert_eq!(again, notebook);

    // One result, in words.
    let code = "[...document.querySelectorAll('.nb__result .share__code li')]\
        .map((row) => row.innerText).join(' ')";
    let code = page.eval(code).await?;
    let code = code.as_str().expect("a code");
    assert!(code.starts_with("T1") && code.len() <= 200, "{code}");
    page.open_text(&code.to_lowercase()).await?;
    page.wait_until(&format!(
        "document.getElementById('passing').innerText.includes('result of {label}, trial 1')"
    ))
    .await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_prediction_that_was_changed_elsewhere_says_so() -> Result<()> {
    let page = one_trial().await?;
    let notebook = page.keeps_notebook(|_| true).await?;
    let table = to_table(&notebook, Format::PointComma, &|_| String::new())
        .replace("two", "three");
    assert!(open_table(&table).expect("a table").trials()[0].is_altered());
    let (other, again) = opened(&[table]).await?;
    assert!(again.trials()[0].is_altered());
    other.at("compare").await?;
    assert!(
        other
            .text("#compare-list")
            .await?
            .contains("changed by hand, outside of the page")
    );
    // And it goes on saying so.
    other.reload().await?;
    other.is_at("compare").await?;
    other
        .wait_until(
            "document.getElementById('compare-list').innerText.includes('changed by hand')",
        )
        .await?;
    Ok(())
}

/// Writes a note to the trial in hand.
async fn note(page: &Page, text: &str) -> Result<()> {
    page.at("compare").await?;
    page.wait_until("document.getElementById('nb:note')").await?;
    page.type_into("[id='nb:note']", text).await?;
    page.press(Key::Tab).await?;
    page.keeps_notebook(|notebook| {
        notebook.trials().iter().any(|trial| trial.note == text)
    })
    .await?;
    Ok(())
}

/// Begins a notebook for another group, with a note in its first trial.
async fn another_group(page: &Page, text: &str) -> Result<()> {
    page.click("#group-menu > summary").await?;
    page.click("#nb-new-group").await?;
    page.at("predict").await?;
    page.click("[id='nb-outcome:1']").await?;
    note(page, text).await
}

#[tokio::test]
async fn groups_share_a_computer_and_tabs_a_notebook() -> Result<()> {
    let page = one_trial().await?;
    another_group(&page, "second group").await?;
    let keys = "Object.keys(localStorage).filter((key) => key.startsWith('noseward/notebook/')).length";
    assert_eq!(page.eval(keys).await?, 2);

    // Another tab writes into the same notebook: both stay.
    page.open_tab("").await?;
    note(&page, "from the other tab").await?;
    page.go_to_tab(0).await?;
    page.at("compare").await?;
    page.wait_until("document.getElementById('nb:note').value === 'from the other tab'")
        .await?;

    // Each tab comes back to its own, whichever was kept last.
    page.go_to_tab(1).await?;
    another_group(&page, "third group").await?;
    page.go_to_tab(0).await?;
    page.reload().await?;
    page.is_at("compare").await?;
    page.wait_until("document.getElementById('nb:note')?.value === 'from the other tab'")
        .await?;

    // Everything goes when everything is deleted.
    page.at("lead").await?;
    page.click("#ask-to-delete").await?;
    page.click_again("#delete-now").await?;
    page.wait_until("document.getElementById('passing').innerText.includes('deleted')")
        .await?;
    assert_eq!(page.eval(keys).await?, 0);
    assert_eq!(page.eval("sessionStorage.length").await?, 0);
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn a_place_that_does_not_load_can_be_asked_for_again() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    page.cdp("Network.enable", json!({})).await?;
    page.cdp("Network.setBlockedURLs", json!({ "urls": ["*notebook-*"] })).await?;
    page.goto("").await?;
    page.click("#to-measure").await?;
    page.wait_until("document.querySelector('#waits [data-action=nb-again]')").await?;
    assert!(page.text("#waits").await?.contains("could not be loaded"));
    // The rest of the page works meanwhile.
    page.click("#to-rocket").await?;
    page.type_into(&format!("[id='{SPAN}']"), "61").await?;
    page.cdp("Network.setBlockedURLs", json!({ "urls": [] })).await?;
    // Coming back to it asks again by itself; the button is for whoever is there.
    page.click("#to-measure").await?;
    page.run("document.querySelector('#waits [data-action=nb-again]')?.click();").await?;
    page.is_at("measure").await?;
    page.wait_until("document.getElementById('nb:centre_of_mass_reading_1_mm')").await?;
    Ok(())
}

#[tokio::test]
async fn the_notebook_on_paper() -> Result<()> {
    let page = one_trial().await?;
    page.at("hand-in").await?;
    page.run("window.print = () => {};").await?;
    page.click("#print-notebook").await?;
    page.wait_until("document.querySelector('#sheet-of-paper .nb__table')").await?;
    let on_paper = "document.getElementById('sheet-of-paper').textContent";
    let sheet = page.eval(on_paper).await?;
    let sheet = sheet.as_str().expect("a text");
    for words in ["Notebook of", "is \"two\"; so", "131.5 mm", "What we found out"] {
        assert!(sheet.contains(words), "{words}: {sheet}");
    }
    page.print("notebook").await?;
    // Once it is printed, the page is as it was.
    page.wait_until("document.documentElement.dataset.paper === undefined").await?;
    assert_eq!(page.eval(on_paper).await?, "");
    Ok(())
}

/// A notebook with a trial of each rocket, predicted for this reason, as somebody else has
/// made it.
fn trials_of(examples: &[Example], because: &str) -> NotebookFile {
    let mut notebook = Notebook::default();
    for example in examples {
        let mut record = Record::from(example.design());
        let id = notebook.begin(&record).expect("there is room");
        let trial = notebook.in_hand_mut().expect("it was begun");
        trial.measured.mass.mm[0] = Some(128.0);
        trial.draft.outcome = Some(SwingOutcome::Steady);
        because.clone_into(&mut trial.draft.because);
        notebook.lock(id);
        record.swings.add(SwingOutcome::Wobbling);
        notebook.swing(&record.swings);
    }
    NotebookFile { notebook, rocket: None }
}

#[tokio::test]
async fn a_notebooks_link_stays_in_the_address_until_it_is_opened() -> Result<()> {
    let page = Page::unopened(1366, 600).await?;
    page.cdp("Network.enable", json!({})).await?;
    page.cdp("Network.setBlockedURLs", json!({ "urls": ["*notebook-*"] })).await?;
    let link = notebook_hash(&trials_of(&[Example::Puffin], "a")).expect("it is short");
    let link = format!("#{link}");
    page.goto(&link).await?;
    page.type_into(&format!("[id='{SPAN}']"), "61").await?;
    page.press(Key::Tab).await?;
    // What was typed is kept, and the link is still there to be opened, in any place.
    page.keeps_rocket(|record| {
        let planform = &record.design.fins[0].planform;
        matches!(planform, Planform::FourSided { span_mm, .. } if *span_mm == 61.0)
    })
    .await?;
    assert_eq!(page.eval("location.hash").await?, link.as_str());
    page.click("#to-compare").await?;
    page.wait_until("document.querySelector('#waits [data-action=nb-again]')").await?;
    assert_eq!(page.eval("location.hash").await?, link.as_str());
    page.cdp("Network.setBlockedURLs", json!({ "urls": [] })).await?;
    page.reload().await?;
    page.wait_until(
        "document.getElementById('compare-list')?.innerText.includes('in hand')",
    )
    .await?;
    Ok(())
}

#[tokio::test]
async fn a_first_line_break_outlives_a_reload() -> Result<()> {
    let page = one_trial().await?;
    let fields = [("compare", "nb:note"), ("conclude", "nb:claim")];
    for (place, field) in fields {
        page.at(place).await?;
        let area = page.element(&format!("[id='{field}']")).await?;
        area.focus().await?;
        page.press(Key::Control + "a").await?;
        page.press(Key::Enter).await?;
        page.press("below it").await?;
        page.press(Key::Tab).await?;
    }
    page.keeps_notebook(|notebook| notebook.conclusion.claim == "\nbelow it").await?;
    page.reload().await?;
    for (place, field) in fields {
        page.at(place).await?;
        let css = format!("[id='{field}']");
        assert_eq!(page.value(&css).await?, "\nbelow it", "{field}");
    }
    Ok(())
}

#[tokio::test]
async fn a_wide_table_scrolls_within_itself() -> Result<()> {
    let page = Page::open(320, 740).await?;
    let long = "becausefinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfinsfins";
    page.open_text(&to_notebook_file(&trials_of(&Example::ALL, long))).await?;
    for (level, columns) in [(0, 6), (1, 6), (2, 7), (3, 8)] {
        page.at("lead").await?;
        page.run(&format!(
            "const level = document.getElementById('nb:level'); level.value = '{level}';\
             level.dispatchEvent(new Event('input', {{ bubbles: true }}));"
        ))
        .await?;
        page.at("compare").await?;
        page.wait_until(&format!(
            "document.querySelectorAll('#compare-list thead th').length === {columns}\
             && /nearer the nose/i.test(document.querySelector('#compare-list thead').innerText)\
             === ({level} === 0)"
        ))
        .await?;
        page.run("for (const one of document.querySelectorAll('.place details')) one.open = true;")
            .await?;
        // The page contains what overflows the notebook, where it could not be reached.
        for place in ["document.documentElement", "document.getElementById('place')"] {
            let wide = format!("{place}.scrollWidth - {place}.clientWidth");
            assert_eq!(page.eval(&wide).await?, 0, "level {level}: {place}");
        }
    }
    assert_eq!(page.eval("innerWidth").await?, 320);
    let hint = page.text(".nb__sideways").await?;
    assert!(hint.contains("sideways"), "{hint}");
    // By keyboard too.
    let table = ".nb__wide:has(.nb__table)";
    page.element(table).await?.focus().await?;
    page.press(Key::Right).await?;
    let at = format!("document.querySelector('{table}').scrollLeft");
    // Until it has come to rest: a scroll by key goes on for a while.
    page.wait_until(&format!(
        "await new Promise(done => {{ const at = {at}; \
         setTimeout(() => done(at > 0 && at === {at}), 250); }})"
    ))
    .await?;
    page.screenshot("notebook-320x740").await?;

    // It stays there while something is written into it.
    page.run(&format!("{at} = 150;")).await?;
    page.type_into("[id='nb:note']", "written meanwhile").await?;
    page.wait_until(&format!(
        "document.querySelector('{table}').innerText.includes('written meanwhile')"
    ))
    .await?;
    assert_eq!(page.eval(&at).await?, 150);
    Ok(())
}
