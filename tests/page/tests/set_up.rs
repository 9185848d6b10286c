//! A lesson is set up, and a class opens its link.

use noseward_page_tests::{Key, Page, Result};
use serde_json::json;

const LINK: &str = "document.getElementById('set-up-link').value";
/// The label of the open notebook.
const LABEL: &str =
    "document.querySelector('#group-menu b, #group-menu strong').textContent";

/// Chooses from a list of the form.
async fn choose(page: &Page, field: &str, value: &str) -> Result<()> {
    page.run(&format!(
        "const list = document.getElementById('su:{field}');
         list.value = '{value}';
         list.dispatchEvent(new Event('input', {{ bubbles: true }}));"
    ))
    .await?;
    Ok(())
}

/// The link of the form, without the address.
async fn hash(page: &Page) -> Result<String> {
    let link = page.eval(LINK).await?;
    let link = link.as_str().expect("a link");
    assert!(link.chars().count() <= 600, "{link}");
    Ok(link.split('#').nth(1).expect("a hash").to_owned())
}

async fn breaks_no_rule(page: &Page) -> Result<()> {
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    Ok(())
}

/// Another browser, with nothing in it, in which somebody opens a link.
async fn fresh(hash: &str) -> Result<Page> {
    let page = Page::unopened(1366, 600).await?;
    page.goto(hash).await?;
    page.all_is_here().await?;
    Ok(page)
}

#[tokio::test]
async fn a_minute_by_keyboard_from_opening_to_a_link() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.run("document.querySelector('#more-menu > summary').focus();").await?;
    page.press(Key::Enter).await?;
    page.tab_to("to-set-up").await?;
    page.press(Key::Enter).await?;
    page.is_at("set-up").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("set-up").await?;
    let usual = hash(&page).await?;
    page.tab_to("su:pupils").await?;
    page.press("24").await?;
    page.tab_to("su:size").await?;
    page.press("4").await?;
    page.tab_to("su:question").await?;
    page.press(Key::Down).await?;
    page.wait_until("document.getElementById('place').textContent.includes('6 groups')")
        .await?;
    assert_ne!(hash(&page).await?, usual);
    // The link is in view without scrolling, and the button copies it.
    let seen = "['set-up-link', 'su-copy'].every(id =>
        document.getElementById(id).getBoundingClientRect().bottom < innerHeight)";
    assert_eq!(page.eval(seen).await?, json!(true));
    page.run(
        "window.copied = null;
         navigator.clipboard.writeText = async (text) => { window.copied = text; };",
    )
    .await?;
    page.tab_to("su-copy").await?;
    page.press(Key::Enter).await?;
    page.wait_until(&format!("window.copied === {LINK}")).await?;
    page.set_viewport(360, 740).await?;
    let across = "document.documentElement.scrollWidth <= innerWidth";
    assert_eq!(page.eval(across).await?, json!(true));
    page.screenshot("set-up-telephone").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn the_form_survives_a_reload() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("set-up").await?;
    choose(&page, "question", "4").await?;
    page.type_into("[id='su:hall']", "14").await?;
    page.press(Key::Tab).await?;
    page.wait_until("localStorage['noseward/set-up']").await?;
    let link = hash(&page).await?;
    page.wait_until(&format!("localStorage['noseward/set-up'] === '{link}'")).await?;
    page.reload().await?;
    page.is_at("set-up").await?;
    assert_eq!(hash(&page).await?, link);
    assert_eq!(page.value("[id='su:hall']").await?, "14");
    Ok(())
}

#[tokio::test]
async fn one_link_hands_out_labels_in_the_language_of_the_lesson() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("set-up").await?;
    choose(&page, "language", "de").await?;
    choose(&page, "level", "2").await?;
    for place in ["0", "7"] {
        page.click(&format!("[id='su-shows:{place}']")).await?;
    }
    page.wait_until(
        "document.getElementById('su-shows:7').ariaPressed === 'false'
            || document.getElementById('su-shows:7').getAttribute('aria-pressed') === 'false'",
    )
    .await?;
    let link = hash(&page).await?;

    let pupil = fresh(&link).await?;
    pupil.is_at("join").await?;
    pupil.wait_until("document.documentElement.lang === 'de'").await?;
    assert_eq!(pupil.text("#place-title").await?, "Welche Gruppe seid ihr?");
    breaks_no_rule(&pupil).await?;
    pupil.screenshot("set-up-join").await?;
    // A reload asks again.
    pupil.reload().await?;
    pupil.is_at("join").await?;
    pupil.wait_until("document.querySelectorAll('.join button').length === 10").await?;
    pupil.click("[id='join:3']").await?;
    pupil.is_at("measure").await?;
    assert_eq!(pupil.eval(LABEL).await?, "Grün 1");
    let hidden = "['to-rocket', 'to-why'].some(id => document.getElementById(id))";
    assert_eq!(pupil.eval(hidden).await?, json!(false));
    // Neither a hidden place nor the answer can be reached by the address.
    pupil.wait_until("localStorage['noseward/notebook']").await?;
    pupil.visit_file("?at=why").await?;
    pupil.ready().await?;
    pupil.is_at("measure").await?;
    pupil.wait_until("document.documentElement.lang === 'de'").await?;
    pupil.screenshot("set-up-joined").await?;
    // The same link again opens the same notebook.
    let notebooks = "Object.keys(localStorage)
        .filter(key => /^noseward.notebook.[0-9]+$/.test(key)).length";
    let count = pupil.eval(notebooks).await?;
    pupil.goto(&link).await?;
    pupil.is_at("join").await?;
    pupil.click("[id='join:3']").await?;
    pupil.is_at("measure").await?;
    assert_eq!(pupil.eval(LABEL).await?, "Grün 1");
    assert_eq!(pupil.eval(notebooks).await?, count);
    assert_eq!(pupil.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn what_breaks_a_rule_is_refused_by_its_name() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    page.at("set-up").await?;
    choose(&page, "question", "3").await?;
    let link = hash(&page).await?;
    let pupil = fresh(&link).await?;
    pupil.is_at("join").await?;
    pupil.click("[id='join:0']").await?;
    pupil.is_at("rocket").await?;
    // What is fixed stands there, and whoever leads can lift it.
    pupil.at("lead").await?;
    let disabled = "document.getElementById('nb:level').matches(':disabled')";
    assert_eq!(pupil.eval(disabled).await?, json!(true));
    let told = pupil.text("#settings-title ~ p").await?;
    assert!(told.contains("Red 1 is under the rules "), "{told}");
    breaks_no_rule(&pupil).await?;
    lock(&pupil).await?;
    pupil.at("rocket").await?;
    pupil.type_into("[id='/fins/0/planform/four_sided/span_mm']", "40").await?;
    pupil.press(Key::Tab).await?;
    lock(&pupil).await?;
    let refused = "document.getElementById('notice').textContent
        .includes('In this lesson the fins keep their shape and size (rules ')";
    pupil.wait_until(refused).await?;
    pupil.screenshot("set-up-refused").await?;
    pupil.at("lead").await?;
    pupil.click("#nb-lift").await?;
    pupil.wait_until(&format!("!{disabled}")).await?;
    lock(&pupil).await?;
    pupil.wait_until("document.querySelector('.nb__locked')").await?;
    Ok(())
}

/// Predicts what the rocket on the page will do, and locks that.
async fn lock(page: &Page) -> Result<()> {
    page.at("predict").await?;
    page.click("[id='nb-outcome:0']").await?;
    page.type_into("[id='nb:draft_because']", "its fins").await?;
    page.click("#nb-lock").await?;
    Ok(())
}
