//! The harness does what its names say, whatever the page looks like.

use noseward_page_tests::{Key, Page, Result};
use serde_json::json;
use std::fs;

/// Two fields of our own in front of everything, the first with the focus.
const FIELDS: &str = "
    for (const id of ['second', 'first']) {
        const field = document.createElement('input');
        field.id = 'harness-' + id;
        field.value = 'old';
        document.body.prepend(field);
    }
    document.getElementById('harness-first').focus();";

#[tokio::test]
async fn the_window_has_the_size_that_was_asked_for() -> Result<()> {
    let page = Page::open(360, 640).await?;
    assert_eq!(page.eval("[innerWidth, innerHeight]").await?, json!([360, 640]));
    page.set_viewport(1024, 768).await?;
    page.reload().await?;
    assert_eq!(page.eval("[innerWidth, innerHeight]").await?, json!([1024, 768]));
    Ok(())
}

#[tokio::test]
async fn keys_go_where_they_should() -> Result<()> {
    let page = Page::open(800, 600).await?;
    page.run(FIELDS).await?;
    page.type_into("#harness-first", "new").await?;
    assert_eq!(page.value("#harness-first").await?, "new");
    page.press("er").await?;
    assert_eq!(page.value("#harness-first").await?, "newer");
    page.press(Key::Tab).await?;
    assert_eq!(page.focused_id().await?, "harness-second");
    page.press(Key::Control + "a").await?;
    page.press(Key::Backspace).await?;
    assert_eq!(page.value("#harness-second").await?, "");
    page.type_into("#harness-first", "").await?;
    assert_eq!(page.value("#harness-first").await?, "");
    Ok(())
}

#[tokio::test]
async fn the_page_is_loaded_afresh_with_a_hash() -> Result<()> {
    let page = Page::open(800, 600).await?;
    page.run("window.mark = 1").await?;
    page.visit("any-hash").await?;
    assert_eq!(page.eval("typeof window.mark").await?, "undefined");
    assert!(page.address().ends_with('/'));
    let opened = page.eval("performance.getEntriesByType('navigation')[0].name").await?;
    assert_eq!(opened, format!("{}#any-hash", page.address()));
    Ok(())
}

#[tokio::test]
async fn preferences_reach_the_style_sheets() -> Result<()> {
    let page = Page::open(800, 600).await?;
    let dark = "matchMedia('(prefers-color-scheme: dark)').matches";
    page.prefer("prefers-color-scheme", "dark").await?;
    assert_eq!(page.eval(dark).await?, true);
    page.prefer("prefers-color-scheme", "light").await?;
    assert_eq!(page.eval(dark).await?, false);
    Ok(())
}

#[tokio::test]
async fn saved_files_arrive() -> Result<()> {
    let page = Page::open(800, 600).await?;
    let folder = page.allow_downloads("harness").await?;
    page.run(
        "const link = document.createElement('a');
         link.href = URL.createObjectURL(new Blob(['content']));
         link.download = 'saved.txt';
         link.click();",
    )
    .await?;
    let saved = page.downloaded(&folder.join("saved.txt")).await?;
    assert_eq!(saved, b"content");
    fs::remove_dir_all(folder)?;
    Ok(())
}

#[tokio::test]
async fn errors_of_the_page_are_told() -> Result<()> {
    let page = Page::open(800, 600).await?;
    page.run("setTimeout(() => { throw new Error('on purpose') })").await?;
    page.eval("new Promise(resolve => setTimeout(resolve))").await?;
    let errors = page.errors().await?;
    assert!(errors.iter().any(|error| error.contains("on purpose")), "{errors:?}");
    assert_eq!(page.errors().await?, errors, "a line is told every time");
    Ok(())
}

#[tokio::test]
async fn axe_sees_a_field_without_a_name() -> Result<()> {
    let page = Page::open(800, 600).await?;
    page.run(FIELDS).await?;
    let violations = page.axe().await?;
    let label = violations.iter().find(|violation| violation.id == "label");
    let targets = label.map(|violation| violation.targets.join(" "));
    assert_eq!(targets.as_deref(), Some("#harness-first #harness-second"));
    Ok(())
}

#[tokio::test]
async fn the_page_prints() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let bytes = fs::read(page.print("harness").await?)?;
    assert!(bytes.starts_with(b"%PDF-"));
    Ok(())
}

#[tokio::test]
async fn two_browsers_share_nothing() -> Result<()> {
    let (one, other) = tokio::try_join!(Page::open(800, 600), Page::open(800, 600))?;
    one.eval("localStorage.setItem('whose', 'one')").await?;
    assert_eq!(one.eval("localStorage.getItem('whose')").await?, "one");
    assert_eq!(other.eval("localStorage.getItem('whose')").await?, json!(null));
    Ok(())
}
