//! Makes the files of dist/ from the page's sources and the compiled module.
//!
//! Pure: sources in, files out. Every file but three is named after its content and
//! every reference is relative, so the page works in any folder of any server.

use crate::bindings::{Bindings, MODULE_NAME};
use crate::names::hashed;
use crate::policy;
use anyhow::{Context, Result, ensure};

/// Where index.html wants the content security policy.
const POLICY_MARK: &str = "<!--csp-->";
const STYLE_LINK: &str = "<link rel=\"stylesheet\" href=\"";
const STYLE_LINK_END: &str = "\">";

/// What a person wrote under www/.
#[derive(Debug)]
pub(crate) struct Sources {
    /// index.html
    pub(crate) index: String,
    /// boot.js
    pub(crate) boot: String,
    /// The style sheets, in the order in which [`style_paths`] names them.
    pub(crate) styles: Vec<String>,
    /// icon.svg
    pub(crate) icon: Vec<u8>,
}

/// A file of dist/.
#[derive(Debug)]
pub(crate) struct File {
    /// Its name; dist/ has no folders.
    pub(crate) name: String,
    /// Its content.
    pub(crate) bytes: Vec<u8>,
    /// Whether a first visit of the page loads it.
    pub(crate) first_visit: bool,
}

impl File {
    fn visited(name: &str, bytes: impl Into<Vec<u8>>) -> Self {
        Self { name: name.to_owned(), bytes: bytes.into(), first_visit: true }
    }

    fn for_programs(name: &str, bytes: impl Into<Vec<u8>>) -> Self {
        Self { name: name.to_owned(), bytes: bytes.into(), first_visit: false }
    }
}

/// The files of dist/: those of a visit, and two with lasting names for programs
/// that call the page's functions.
pub(crate) fn assemble(sources: &Sources, bindings: &Bindings) -> Result<Vec<File>> {
    let module_name = hashed("noseward", "wasm", &bindings.module);
    let glue =
        replace(&bindings.glue, MODULE_NAME, &module_name, "the script of the bindings")?;
    let glue_name = hashed("noseward", "js", glue.as_bytes());

    let boot = replace(
        &sources.boot,
        "./noseward.js",
        &format!("./{glue_name}"),
        "www/boot.js",
    )?
    // The glue knows where the module is: a boot script need not say it.
    .replace("./noseward.wasm", &format!("./{module_name}"));
    let boot_name = hashed("boot", "js", boot.as_bytes());

    let styles = sources.styles.concat();
    ensure!(
        !styles.contains("@import") && !styles.contains("url("),
        "a sheet under www/styles/ refers to another file (`@import` or `url(`), which \
         dist/ would not contain; link style sheets in index.html, put drawings in markup"
    );
    let styles_name = hashed("styles", "css", styles.as_bytes());
    let icon_name = hashed("icon", "svg", &sources.icon);

    let place = "www/index.html";
    let index = link_one_sheet(
        &sources.index,
        &format!(
            "<link rel=\"stylesheet\" href=\"{styles_name}\">\n\
             <link rel=\"modulepreload\" href=\"{glue_name}\">\n\
             <link rel=\"preload\" href=\"{module_name}\" as=\"fetch\" \
             type=\"application/wasm\" crossorigin>"
        ),
    )?;
    let index = replace(&index, POLICY_MARK, &policy::meta_element(), place)?;
    let index = replace(&index, "\"boot.js\"", &format!("\"{boot_name}\""), place)?;
    let index = replace(&index, "\"icon.svg\"", &format!("\"{icon_name}\""), place)?;
    ensure!(
        !index.contains("src=\"/") && !index.contains("href=\"/"),
        "{place} refers to an address that begins with `/`, which fails when the page \
         lies in a folder; make it relative"
    );

    let stable = format!(
        "export * from './{glue_name}';\nexport {{ default }} from './{glue_name}';\n"
    );
    Ok(vec![
        File::visited("index.html", index),
        File::visited(&styles_name, styles),
        File::visited(&icon_name, sources.icon.as_slice()),
        File::visited(&boot_name, boot),
        File::visited(&glue_name, glue),
        File::visited(&module_name, bindings.module.as_slice()),
        File::for_programs("noseward.js", stable),
        File::for_programs("noseward.d.ts", bindings.types.as_str()),
    ])
}

/// The paths of the style sheets that index.html links, in its order.
pub(crate) fn style_paths(index: &str) -> Result<Vec<&str>> {
    let paths: Vec<&str> = index
        .split(STYLE_LINK)
        .skip(1)
        .map(|rest| rest.split(STYLE_LINK_END).next().unwrap_or(rest))
        .collect();
    for path in &paths {
        ensure!(
            path.strip_prefix("styles/")
                .and_then(|name| name.strip_suffix(".css"))
                .is_some_and(|name| !name.contains(['/', '"', '\\'])),
            "www/index.html links the style sheet {path:?}; write each link as \
             {STYLE_LINK}styles/NAME.css{STYLE_LINK_END}"
        );
    }
    Ok(paths)
}

/// Puts `link` in the place of the first style sheet link and drops the others.
fn link_one_sheet(index: &str, link: &str) -> Result<String> {
    let element = |path: &str| format!("{STYLE_LINK}{path}{STYLE_LINK_END}");
    let paths = style_paths(index)?;
    let (first, others) = paths
        .split_first()
        .context("www/index.html links no style sheet; link www/styles/NAME.css")?;
    let mut page = index.to_owned();
    for path in others {
        let (before, after) =
            page.rsplit_once(&element(path)).expect("style_paths found the link here");
        page = format!("{}{after}", before.trim_end());
    }
    Ok(page.replacen(&element(first), link, 1))
}

/// Replaces a text wherever it stands, and fails when it stands nowhere.
fn replace(text: &str, from: &str, to: &str, place: &str) -> Result<String> {
    ensure!(text.contains(from), "{place} does not contain {from}; put it back");
    Ok(text.replace(from, to))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::is_hashed;

    const INDEX: &str = "<head>\n<!--csp-->\n<link rel=\"icon\" href=\"icon.svg\">\n\
        <link rel=\"stylesheet\" href=\"styles/base.css\">\n\
        <link rel=\"stylesheet\" href=\"styles/print.css\">\n\
        <script type=\"module\" src=\"boot.js\"></script>\n</head>";

    fn sources() -> Sources {
        Sources {
            index: INDEX.to_owned(),
            boot: "import init from './noseward.js';\nawait init(new URL('./noseward.wasm', \
                   import.meta.url));\n"
                .to_owned(),
            styles: vec!["a{}\n".to_owned(), "b{}\n".to_owned()],
            icon: b"<svg/>".to_vec(),
        }
    }

    fn bindings() -> Bindings {
        Bindings {
            glue: format!("new URL('{MODULE_NAME}', import.meta.url)"),
            types: "export function evaluate(x: any): any;".to_owned(),
            module: b"\0asm".to_vec(),
        }
    }

    fn named<'a>(files: &'a [File], start: &str, end: &str) -> &'a File {
        let fits =
            |file: &&File| file.name.starts_with(start) && file.name.ends_with(end);
        let mut found = files.iter().filter(fits);
        let file = found.next().unwrap();
        assert!(found.next().is_none(), "two files are called {start}…{end}");
        file
    }

    fn text(file: &File) -> &str {
        std::str::from_utf8(&file.bytes).unwrap()
    }

    #[test]
    fn each_file_refers_to_the_others_by_their_new_names() {
        let files = assemble(&sources(), &bindings()).unwrap();
        let wasm = named(&files, "noseward-", ".wasm");
        let glue = named(&files, "noseward-", ".js");
        let boot = named(&files, "boot-", ".js");
        assert_eq!(text(glue), format!("new URL('{}', import.meta.url)", wasm.name));
        assert!(text(boot).contains(&format!("from './{}'", glue.name)));
        assert!(text(boot).contains(&format!("'./{}'", wasm.name)));
        let page = text(named(&files, "index.html", ""));
        for file in files.iter().filter(|f| f.first_visit && f.name != "index.html") {
            assert!(is_hashed(&file.name), "{}", file.name);
            assert!(page.contains(&format!("\"{}\"", file.name)), "{}", file.name);
        }
        assert!(!page.contains("\"boot.js\"") && !page.contains("\"icon.svg\""));
    }

    #[test]
    fn a_change_of_the_module_changes_every_name_that_leads_to_it() {
        let before = assemble(&sources(), &bindings()).unwrap();
        let other = Bindings { module: b"\0asm!".to_vec(), ..bindings() };
        let after = assemble(&sources(), &other).unwrap();
        for (start, end) in
            [("noseward-", ".wasm"), ("noseward-", ".js"), ("boot-", ".js")]
        {
            let old = named(&before, start, end);
            assert_ne!(old.name, named(&after, start, end).name);
        }
        assert_eq!(named(&before, "styles-", "").name, named(&after, "styles-", "").name);
    }

    #[test]
    fn style_sheets_become_one_in_the_order_of_the_page() {
        assert_eq!(style_paths(INDEX).unwrap(), ["styles/base.css", "styles/print.css"]);
        let files = assemble(&sources(), &bindings()).unwrap();
        assert_eq!(text(named(&files, "styles-", ".css")), "a{}\nb{}\n");
        let page = text(named(&files, "index.html", ""));
        assert_eq!(page.matches("rel=\"stylesheet\"").count(), 1);
        assert!(!page.contains("styles/"));
        assert!(page.contains("crossorigin>\n<script"), "{page}");
    }

    #[test]
    fn the_policy_takes_the_place_of_its_mark() {
        let files = assemble(&sources(), &bindings()).unwrap();
        let page = text(named(&files, "index.html", ""));
        assert!(page.contains(&policy::meta_element()));
        assert!(!page.contains(POLICY_MARK));
    }

    #[test]
    fn a_lost_mark_is_named_with_its_file() {
        let lost = Sources { index: INDEX.replace(POLICY_MARK, ""), ..sources() };
        let error = assemble(&lost, &bindings()).unwrap_err().to_string();
        assert!(error.contains("www/index.html"), "{error}");
        assert!(error.contains(POLICY_MARK), "{error}");
        let lost = Sources { boot: String::new(), ..sources() };
        let error = assemble(&lost, &bindings()).unwrap_err().to_string();
        assert!(error.contains("www/boot.js"), "{error}");
    }

    #[test]
    fn what_would_break_in_a_folder_or_fall_out_of_dist_is_refused() {
        let absolute = INDEX.replace("<head>", "<head><base href=\"/\">");
        let bad = Sources { index: absolute, ..sources() };
        assert!(assemble(&bad, &bindings()).is_err());
        for style in ["@import 'x.css';", "a { background: url(x.png) }"] {
            let bad = Sources { styles: vec![style.to_owned()], ..sources() };
            assert!(assemble(&bad, &bindings()).is_err(), "{style}");
        }
        for path in ["styles/../x.css", "other/x.css", "styles/x.css\" media=\"print"] {
            let index = INDEX.replace("styles/print.css", path);
            assert!(style_paths(&index).is_err(), "{path}");
        }
    }

    #[test]
    fn programs_find_the_functions_under_a_lasting_name() {
        let files = assemble(&sources(), &bindings()).unwrap();
        let glue = &named(&files, "noseward-", ".js").name;
        let stable = named(&files, "noseward.js", "");
        assert!(!stable.first_visit);
        assert!(text(stable).contains(&format!("export * from './{glue}'")));
        assert!(text(stable).contains(&format!("export {{ default }} from './{glue}'")));
        assert_eq!(text(named(&files, "noseward.d.ts", "")), bindings().types);
    }
}
