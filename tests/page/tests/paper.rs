//! The place Paper: a sheet is chosen, seen, saved as PDF and as SVG, and printed true to size.

use noseward_page_tests::{Page, Result};
use serde_json::json;
use std::fs;

async fn breaks_no_rule(page: &Page) -> Result<()> {
    let told: Vec<String> = page.axe().await?.iter().map(ToString::to_string).collect();
    assert_eq!(told, Vec::<String>::new());
    Ok(())
}

/// Where pages begin in a PDF, and the sizes that they name.
fn pages(pdf: &[u8]) -> usize {
    let text = String::from_utf8_lossy(pdf);
    let all = text.matches("/Type /Page").count();
    all - text.matches("/Type /Pages").count()
}

#[tokio::test]
async fn a_cut_out_is_saved_printed_and_given_to_a_cutter() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let folder = page.allow_downloads("paper").await?;
    page.at("paper").await?;
    page.wait_until("document.querySelector('.leaf--seen svg')").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("paper").await?;
    page.click("#pp-save").await?;
    let pdf = page.downloaded(&folder.join("noseward-cut-out.pdf")).await?;
    assert!(pdf.starts_with(b"%PDF-") && pages(&pdf) == 3);
    page.click("#pp-outline").await?;
    let svg = page.downloaded(&folder.join("noseward-cut-out-outline.svg")).await?;
    let svg = String::from_utf8(svg)?;
    assert!(svg.contains("mm\" height=\"327mm\""), "as long as the rocket: {svg}");
    // By the keyboard alone to the last page, as it is announced.
    page.run("document.getElementById('pp-behind').focus();").await?;
    for at in ["2 of 3", "3 of 3"] {
        page.press(noseward_page_tests::Key::Enter).await?;
        let text = "document.querySelector('.pages__leaf').innerText";
        page.wait_until(&format!("{text}.includes({})", json!(at))).await?;
        assert_eq!(page.focused_id().await?, "pp-behind");
    }
    page.click("#pp-svg").await?;
    let svg = page.downloaded(&folder.join("noseward-cut-out-3.svg")).await?;
    assert!(String::from_utf8(svg)?.contains("width=\"210mm\" height=\"297mm\""));
    page.run("window.print = () => { window.printed = true; };").await?;
    page.click("#pp-print").await?;
    page.wait_until("window.printed").await?;
    let printed = fs::read(page.print("paper-printed").await?)?;
    assert_eq!(pages(&printed), 3);
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn on_a_telephone_every_sheet_can_be_chosen_and_fits() -> Result<()> {
    let page = Page::open(360, 740).await?;
    page.at("paper").await?;
    page.wait_until("document.querySelector('.leaf--seen svg')").await?;
    breaks_no_rule(&page).await?;
    let sheets = "document.querySelectorAll('.pages__sheet').length";
    let sheets = page.eval(sheets).await?.as_u64().unwrap_or(0);
    assert!(sheets >= 3);
    for sheet in 0..sheets {
        let id = format!("[id='pp-sheet:{sheet}']");
        page.click(&id).await?;
        page.wait_until(&format!(
            "document.querySelector(\"{id}\").ariaPressed === 'true'"
        ))
        .await?;
        let across = "document.documentElement.scrollWidth <= innerWidth";
        page.wait_until(across).await?;
    }
    page.screenshot("paper-telephone").await?;
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}

/// The browser opens a saved picture: its width, its height, and how many points are not white.
async fn opened(page: &Page, png: &[u8]) -> Result<(u64, u64, u64)> {
    let told = page
        .run(&format!(
            "return (async () => {{
               const blob = new Blob([new Uint8Array({})], {{ type: 'image/png' }});
               const image = await createImageBitmap(blob);
               const {{ width, height }} = image;
               const context = new OffscreenCanvas(width, height).getContext('2d');
               context.drawImage(image, 0, 0);
               const points = new Uint32Array(
                 context.getImageData(0, 0, width, height).data.buffer);
               return [width, height, points.filter((p) => p !== 0xffffffff).length];
             }})();",
            json!(png)
        ))
        .await?;
    let number = |i: usize| told[i].as_u64().unwrap_or_default();
    Ok((number(0), number(1), number(2)))
}

async fn choose(page: &Page, name: &str) -> Result<()> {
    page.run(&format!(
        "[...document.querySelectorAll('.pages__sheet')]
           .find((sheet) => sheet.innerText === {}).click();",
        json!(name)
    ))
    .await?;
    let heading = "document.getElementById('pages-preview').innerText";
    page.wait_until(&format!("{heading} === {}", json!(name))).await
}

#[tokio::test]
async fn drawings_pictures_and_tables_are_for_other_programs() -> Result<()> {
    let page = Page::open(1366, 600).await?;
    let folder = page.allow_downloads("paper-out").await?;
    page.at("paper").await?;
    page.wait_until("document.querySelector('.leaf--seen svg')").await?;
    page.click("#pp-png").await?;
    let png = page.downloaded(&folder.join("noseward-cut-out-1.png")).await?;
    let (width, height, inked) = opened(&page, &png).await?;
    assert_eq!((width, height), (2480, 3508), "A4, 300 points to the inch");
    let share = inked as f64 / (width * height) as f64;
    assert!((0.005..0.3).contains(&share), "a share of {share} is inked");
    choose(&page, "The rocket with its ruler").await?;
    page.wait_until("document.querySelector('.leaf--drawn svg')").await?;
    breaks_no_rule(&page).await?;
    page.screenshot("paper-drawing").await?;
    page.click("#pp-svg").await?;
    let svg = page.downloaded(&folder.join("noseward-rocket.svg")).await?;
    let svg = String::from_utf8(svg)?;
    assert!(svg.contains("#1d2b3a") && !svg.contains("var("), "{svg}");
    page.click("#pp-png").await?;
    let png = page.downloaded(&folder.join("noseward-rocket.png")).await?;
    let (width, height, inked) = opened(&page, &png).await?;
    assert_eq!((width, height), (2160, 1680));
    assert!(inked > width * height / 100, "{inked} points are inked");
    let said = |region: &str, words: &str| {
        format!("document.getElementById('{region}').innerText.includes('{words}')")
    };
    page.wait_until(&said("passing", "noseward-rocket.png")).await?;
    // Where the browser has no room for so large a picture, the page says so.
    page.run("HTMLCanvasElement.prototype.toBlob = (told) => told(null);").await?;
    page.click("#pp-png").await?;
    page.wait_until(&said("notice", "could not paint")).await?;
    choose(&page, "Hazards, for your own risk assessment").await?;
    page.click("#pp-table").await?;
    let table = page.downloaded(&folder.join("noseward-hazards.csv")).await?;
    let table = String::from_utf8(table)?;
    assert!(table.starts_with('\u{feff}') && table.lines().count() > 10, "{table}");
    assert_eq!(page.errors().await?, Vec::<String>::new());
    Ok(())
}
