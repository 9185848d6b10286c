//! Somebody who presses and types without aim, reloads, and pulls the plug; and two or
//! three tabs that write at once. Nothing stops, and nothing is lost without a word.
//!
//! A few runs belong to every check of the page. Many, with other seeds:
//! `cargo run -- monkey [runs] [seed]`. A seed tells a run again, but for what depends on
//! the moment.

use noseward_link::hash;
use noseward_page_tests::{Page, Result};
use noseward_stability::Example;
use rand_pcg::Pcg32;
use rand_pcg::rand_core::Rng;
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::env;
use std::time::Duration;

/// Runs of every check.
const RUNS: u64 = 2;
/// Deeds between two looks at what is left of them.
const DEEDS: usize = 14;
/// Looks in one run. The last is after the plug was pulled.
const LOOKS: usize = 3;

/// What is typed: numbers, slips, nonsense.
const TEXTS: [&str; 16] = [
    "12",
    "8.2 cm",
    "82,5",
    "1,234",
    "0",
    "-5",
    "1e9",
    "",
    "wide",
    "45 mm",
    "2 1/2 in",
    "٤٥",
    "<b>&\"'",
    "\nfirst line",
    "🚀🚀🚀",
    "a long word that goes on and on and on and on and on",
];

/// Finds what a person could use now, and uses the one that `pick` says. Gives its name.
const USE: &str = "
    const [pick, text] = arguments;
    const barred = /^(print|try|delete-now|nb-copy-link|copy-link|save|nb-save)|nb-csv|nb-text|nb-delete-now/;
    const usable = [...document.querySelectorAll(
        'button[data-action], a[data-action], summary, input[data-field], input[data-note], textarea[data-note], '
        + 'select, input[data-swing], input[type=range]')]
        .filter(e => e.checkVisibility() && !e.closest('#computer, #more, .failed')
            && !barred.test(e.dataset.action ?? ''));
    const found = usable[Math.floor(pick * usable.length)];
    const name = found.id || found.dataset.action || found.textContent.trim();
    found.focus();
    if (found.matches('button, a, summary')) found.click();
    else {
        if (found.matches('select')) {
            found.selectedIndex = text.length % found.options.length;
        } else if (found.matches('[type=range]')) {
            found.value = text.length * 7;
        } else {
            found.value = found.matches('textarea') ? text : text.replace(/\\n/g, ' ');
        }
        found.dispatchEvent(new Event('input', { bubbles: true }));
        found.dispatchEvent(new Event('change', { bubbles: true }));
    }
    return name;";

/// The places where something can be written.
const PLACES: [&str; 5] = ["rocket", "measure", "predict", "compare", "conclude"];

/// What stands in each field that has been read; of lists, what is chosen. The plan that is
/// being typed, and how a rocket would be swung that was not, are not kept.
const SEEN: &str =
    "Object.fromEntries([...document.querySelectorAll('[data-field], [data-note]')]
    .filter(e => !e.matches('[aria-invalid=true], [id=\"nb:plan\"], [id=\"nb:slot\"]'))
    .map(e => [e.id, e.value]).concat([['trials', String(
        document.querySelectorAll('#compare-list tbody tr').length)]]))";

/// What is kept and what the address says.
const KEPT: &str = "JSON.stringify([location.hash, Object.entries(localStorage).sort()])";

fn chance(random: &mut Pcg32) -> f64 {
    f64::from(random.next_u32()) / (f64::from(u32::MAX) + 1.0)
}

fn one_of<'a>(random: &mut Pcg32, list: &[&'a str]) -> &'a str {
    let index = random.next_u32() as usize % list.len();
    list[index]
}

fn number(name: &str, otherwise: u64) -> u64 {
    env::var(name).ok().and_then(|text| text.parse().ok()).unwrap_or(otherwise)
}

fn seeds() -> impl Iterator<Item = u64> {
    let first = number("NOSEWARD_SEED", 1);
    first..first + number("NOSEWARD_RUNS", RUNS)
}

/// Waits until nothing more is written.
async fn settle(page: &Page) -> Result<()> {
    page.run("document.activeElement?.blur();").await?;
    let mut before = page.eval(KEPT).await?;
    let mut quiet = 0;
    while quiet < 8 {
        tokio::time::sleep(Duration::from_millis(100)).await;
        let now = page.eval(KEPT).await?;
        quiet = if now == before { quiet + 1 } else { 0 };
        before = now;
    }
    Ok(())
}

/// To a place, whatever lies over its link.
async fn go(page: &Page, place: &str) -> Result<()> {
    page.run(&format!("document.getElementById('to-{place}').click();")).await?;
    page.is_at(place).await
}

async fn seen(page: &Page) -> Result<BTreeMap<String, String>> {
    let mut all = BTreeMap::new();
    for place in PLACES {
        go(page, place).await?;
        page.eval("await new Promise(done => setTimeout(done, 100))").await?;
        let here: BTreeMap<String, String> =
            serde_json::from_value(page.eval(SEEN).await?)?;
        let here = here.into_iter();
        all.extend(here.filter(|(id, _)| id != "trials" || place == "compare"));
    }
    Ok(all)
}

async fn deed(page: &Page, random: &mut Pcg32) -> Result<String> {
    let kind = chance(random);
    if kind < 0.06 {
        let example = Example::ALL[random.next_u32() as usize % Example::ALL.len()];
        page.run(&format!("location.hash = {:?};", hash(&example.design().into())))
            .await?;
        return Ok(format!("the link of {}", example.design().name));
    }
    if kind < 0.12 {
        let id = one_of(random, &["undo", "redo"]);
        page.run(&format!("document.getElementById('{id}').click();")).await?;
        return Ok(id.to_owned());
    }
    let (pick, text) = (chance(random), one_of(random, &TEXTS));
    let call = format!("return (function () {{{USE}}})({pick}, {});", json!(text));
    let name = page.run(&call).await?;
    Ok(format!("{name} {text:?}"))
}

async fn run(seed: u64) -> Result<()> {
    let mut random = Pcg32::new(seed, 1);
    let mut page = Page::open(1366, 600).await?;
    let mut deeds = Vec::new();
    if seed.is_multiple_of(2) {
        // Without aim nobody comes this far.
        page.at("predict").await?;
        page.click("[id='nb-outcome:0']").await?;
        page.type_into("[id='nb:draft_because']", "so").await?;
        page.click("#nb-lock").await?;
        page.at("swing").await?;
        page.click("#to-space").await?;
        page.click("#space-checked").await?;
    }
    for look in 1..=LOOKS {
        for _ in 0..DEEDS {
            deeds.push(deed(&page, &mut random).await?);
            let stopped = page.eval("!document.getElementById('crash').hidden").await?;
            assert_eq!(stopped, Value::Bool(false), "seed {seed}: {deeds:#?}");
        }
        settle(&page).await?;
        assert_eq!(page.errors().await?, Vec::<String>::new(), "seed {seed}: {deeds:#?}");
        let before = seen(&page).await?;
        let address = page.eval("location.href").await?;
        if look == LOOKS {
            page.kill_the_browser().await?;
            page.visit_address(address.as_str().unwrap_or_default()).await?;
            page.ready().await?;
        } else {
            page.reload().await?;
        }
        let after = seen(&page).await?;
        let lost: Vec<_> = before
            .iter()
            .filter(|(id, value)| after.get(*id).is_some_and(|now| now != *value))
            .map(|(id, value)| format!("{id}: {value:?} became {:?}", after[id]))
            .collect();
        assert_eq!(lost, Vec::<String>::new(), "seed {seed}, look {look}: {deeds:#?}");
        deeds.push("looked".into());
    }
    Ok(())
}

#[tokio::test]
async fn nothing_stops_and_nothing_is_lost() -> Result<()> {
    for seed in seeds() {
        run(seed).await?;
    }
    Ok(())
}

/// What a tab shows of the field, and whether it says that others wrote.
const SHOWN: &str = "({
    text: document.getElementById(FIELD).value,
    said: document.getElementById('notice').innerText })";

/// What all tabs have kept: links as the bytes in them, where texts stand as they are.
const STORE: &str = "Object.values(localStorage).map(text => /^[nr]1[.]/.test(text)
    ? atob(text.slice(3).replaceAll('-', '+').replaceAll('_', '/')) : text).join(' ')";

async fn tabs(seed: u64) -> Result<()> {
    let mut random = Pcg32::new(seed, 2);
    let page = Page::open(1366, 600).await?;
    let count = 2 + random.next_u32() as usize % 2;
    page.at("conclude").await?;
    for _ in 1..count {
        page.open_tab("").await?;
        page.at("conclude").await?;
    }
    // The last that each tab wrote, of each kind.
    let mut last: BTreeMap<(usize, &str), String> = BTreeMap::new();
    for step in 0..12 {
        let tab = random.next_u32() as usize % count;
        // In the notebook each tab writes into a place of its own: what another tab wrote
        // stands on the page, and whoever types over it has seen it.
        let place = ["nb:claim", "nb:evidence", "nb:reason"][tab];
        let what = one_of(&mut random, &["/name", place]);
        let text = format!("t{tab}s{step}e");
        page.go_to_tab(tab).await?;
        go(&page, if what == "/name" { "rocket" } else { "conclude" }).await?;
        let type_in = format!(
            "const field = document.getElementById('{what}');
             field.value = '{text}';
             field.dispatchEvent(new Event('input', {{ bubbles: true }}));"
        );
        page.run(&type_in).await?;
        last.insert((tab, what), text);
        if chance(&mut random) < 0.3 {
            let pause = u64::from(random.next_u32() % 400);
            tokio::time::sleep(Duration::from_millis(pause)).await;
        }
    }
    for tab in 0..count {
        page.go_to_tab(tab).await?;
        settle(&page).await?;
    }
    let store = page.eval(STORE).await?.to_string();
    for ((tab, what), text) in &last {
        page.go_to_tab(*tab).await?;
        go(&page, if *what == "/name" { "rocket" } else { "conclude" }).await?;
        let shown = page.eval(&SHOWN.replace("FIELD", &json!(what).to_string())).await?;
        let kept = store.contains(text.as_str());
        let said = shown["said"].as_str().is_some_and(|said| !said.is_empty());
        let told = shown["text"] == text.as_str() && said;
        assert!(kept || told, "seed {seed}: {text} in {what}: {shown}, {store}");
    }
    Ok(())
}

#[tokio::test]
async fn tabs_that_write_at_once_lose_nothing_without_a_word() -> Result<()> {
    for seed in seeds() {
        tabs(seed).await?;
    }
    Ok(())
}
