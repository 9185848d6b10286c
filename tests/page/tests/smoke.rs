//! The page starts, keeps to itself, and lends its functions to others.

use noseward_page_tests::{Page, Result};

#[tokio::test]
async fn the_page_becomes_ready_without_a_word_on_the_console() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    page.screenshot("smoke").await?;
    assert_eq!(page.console().await?, Vec::<String>::new());
    Ok(())
}

#[tokio::test]
async fn everything_comes_from_the_folder_of_the_page() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let requests = page.requests().await?;
    for end in [".css", ".js", ".wasm"] {
        let loaded = requests.iter().any(|request| request.ends_with(end));
        assert!(loaded, "no {end} among {requests:#?}");
    }
    for request in &requests {
        assert!(request.starts_with(page.address()), "{request} is from elsewhere");
    }
    Ok(())
}

#[tokio::test]
async fn nothing_is_loaded_twice() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let mut requests = page.requests().await?;
    // Browsers look at the icon in their cache again when the address changes.
    requests.retain(|request| !request.ends_with(".svg"));
    requests.sort();
    let count = requests.len();
    requests.dedup();
    assert_eq!(requests.len(), count, "{requests:#?}");
    Ok(())
}

#[tokio::test]
async fn the_page_carries_its_policy_and_the_browser_keeps_to_it() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let policy = page
        .eval(
            "document.querySelector('meta[http-equiv=Content-Security-Policy]').content",
        )
        .await?;
    let policy = policy.as_str().expect("the attribute is a text");
    for part in ["default-src 'self'", "'wasm-unsafe-eval'", "form-action 'none'"] {
        assert!(policy.contains(part), "{part} is not in {policy}");
    }
    // Markup that brings its own script is what the policy is for.
    page.run(
        "const script = document.createElement('script');\
         script.textContent = 'window.intruder = true';\
         document.body.append(script);",
    )
    .await?;
    assert_eq!(page.eval("typeof window.intruder").await?, "undefined");
    let errors = page.errors().await?;
    assert!(errors.iter().any(|e| e.contains("Content Security Policy")), "{errors:?}");
    Ok(())
}

#[tokio::test]
async fn axe_finds_no_fault() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    let violations = page.axe().await?;
    let told: Vec<String> = violations.iter().map(ToString::to_string).collect();
    assert!(told.is_empty(), "{told:#?}");
    Ok(())
}

/// The lasting name gives the call for other programs, ready to use.
async fn assert_lends_its_function(page: &Page) -> Result<()> {
    let kind = page
        .run(
            "return import('./noseward.js').then(async noseward => {\
                 await noseward.default();\
                 return typeof noseward.evaluate;\
             });",
        )
        .await?;
    assert_eq!(kind, "function");
    Ok(())
}

#[tokio::test]
async fn a_program_reaches_the_functions_under_their_lasting_name() -> Result<()> {
    let page = Page::open(1280, 800).await?;
    assert_lends_its_function(&page).await
}

#[tokio::test]
async fn a_program_reaches_the_functions_without_the_page() -> Result<()> {
    let page = Page::unopened(1280, 800).await?;
    page.visit_file("noseward.d.ts").await?;
    assert_lends_its_function(&page).await
}
