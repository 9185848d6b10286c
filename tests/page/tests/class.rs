//! An educator's hour: a lesson is set up, groups hand in in every way, and the class is looked
//! at, kept, given away and deleted.

use noseward_lesson::{
    Colour, Draft, Group, Notebook, Record, SwingOutcome, TrialResult,
};
use noseward_link::{
    Format, NotebookFile, SetUpLink, notebook_hash, open_set_up, result_code,
    set_up_hash, to_notebook_file, to_table,
};
use noseward_page_tests::{Key, Page, Result};
use noseward_stability::Weight;
use serde_json::json;
use std::fs;
use std::path::Path;

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

/// What a group under a set-up finds: `more_g` in the nose, and what it saw.
fn notebook(
    link: &SetUpLink,
    number: usize,
    more_g: f64,
    seen: SwingOutcome,
) -> Notebook {
    let group = Group::new(Colour::ALL[number], 1).expect("a colour");
    let mut notebook = Notebook::of_set_up(group, &link.set_up);
    let mut design = link.set_up.rocket.clone().expect("the form has one");
    if more_g > 0.0 {
        design.weights.push(Weight {
            label: String::new(),
            mass_g: more_g,
            position_mm: 30.0,
        });
    }
    let id = notebook.begin(&Record::from(design)).expect("there is room");
    let trial = notebook.trial_mut(id).expect("it was begun");
    let figures = trial.rocket().figures().expect("no faults").clone();
    let points_mm = [
        figures.computed_mass.centre_m * 1000.0,
        figures.centre_of_pressure_side_on_m * 1000.0,
    ];
    for (point, mm) in noseward_lesson::BalancePoint::ALL.into_iter().zip(points_mm) {
        trial.measured.of_mut(point).mm =
            [0.0, 1.0, -1.0].map(|off| Some(mm.round() + off));
    }
    trial.draft = Draft { outcome: Some(SwingOutcome::Steady), because: String::new() };
    notebook.lock(id);
    let swings = noseward_lesson::Swings::new(Default::default(), vec![seen; 3]);
    notebook.swing(&swings.expect("three swings"));
    notebook
}

/// What one group does in a fresh browser, and the code of its trial.
async fn lesson(hash: &str) -> Result<String> {
    let page = Page::unopened(1366, 600).await?;
    page.goto(hash).await?;
    page.all_is_here().await?;
    page.at("measure").await?;
    for (point, mm) in [("mass", "150"), ("pressure", "190")] {
        page.type_into(&format!("[id='nb:centre_of_{point}_reading_1_mm']"), mm).await?;
        page.press(Key::Tab).await?;
    }
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "its fins").await?;
    page.click("#nb-lock").await?;
    page.at("swing").await?;
    page.check_space().await?;
    for _ in 0..3 {
        page.click_again("[id='swung:0']").await?;
    }
    page.at("hand-in").await?;
    let code = page.text(".nb__result .share__code").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(code)
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
    let set_up = open_set_up(link).expect("a set-up");

    // Two groups do the lesson by hand, each on a computer of its own.
    let mut pasted = String::from("Dear colleague, here are ours:\n");
    for number in [0, 1] {
        let group = Group::new(Colour::ALL[number], 1);
        let link = SetUpLink { set_up: set_up.set_up.clone(), group };
        let code = lesson(&set_up_hash(&link).expect("it fits")).await?;
        pasted.push_str(&format!("\n{code}\n"));
    }
    // Eight more hand in in other ways: codes, links, files, a table.
    use SwingOutcome::{Sideways, Steady, TailFirst, Wobbling};
    let more: Vec<Notebook> = [
        (2, 0.0, Sideways),
        (3, 5.0, TailFirst),
        (4, 10.0, Wobbling),
        (5, 20.0, Steady),
        (6, 5.0, Steady),
        (7, 40.0, Steady),
        (8, 2.0, Sideways),
        (9, 30.0, Steady),
    ]
    .into_iter()
    .map(|(number, more_g, seen)| notebook(&set_up, number, more_g, seen))
    .collect();
    let file = |i: usize| NotebookFile { notebook: more[i].clone(), rocket: None };
    let result = TrialResult::of(&more[0], 1).expect("a trial");
    pasted.push_str(&format!("{}\n", result_code(&result)));
    for i in [1, 2] {
        let hash = notebook_hash(&file(i)).expect("it fits");
        pasted.push_str(&format!("https://school.example/rockets/#{hash}\n"));
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
    let folder = page.allow_downloads("class-hour").await?;
    let files = [
        written(&folder, "a.json", &to_notebook_file(&file(3)))?,
        written(&folder, "b.json", &to_notebook_file(&file(4)))?,
        written(
            &folder,
            "c.csv",
            &to_table(&more[5], Format::PointComma, &|_| String::new()),
        )?,
        written(
            &folder,
            "d.txt",
            &format!(
                "{}\n{}",
                result_code(&TrialResult::of(&more[6], 1).expect("a trial")),
                result_code(&result)
            ),
        )?,
        written(&folder, "e.txt", "\u{89}PNG of the sea")?,
    ];
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
