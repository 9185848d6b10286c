//! Makes the files of dist/ from the page's sources and the compiled module.
//!
//! Pure: sources in, files out. Every file but a few with lasting names is named after its
//! content and every reference is relative, so the page works in any folder of any server.

use crate::bindings::{Bindings, MODULE_NAME};
use crate::edition::{BUILD_MARK, Edition, fill_build};
use crate::names::{digest, hashed};
use crate::policy;
use crate::single::{self, single_file};
use crate::split::Part;
use anyhow::{Context, Result, ensure};

/// Where index.html wants the content security policy.
const POLICY_MARK: &str = "<!--csp-->";
/// Where it says which build it is, for its own scripts.
const BUILD_PLACE: &str = "<!--build-->";
/// Where it says which edition it is, for people.
const EDITION_PLACE: &str = "<!--edition-->";
/// Where it lists the languages that there are beside English.
const LANGUAGES_PLACE: &str = "<!--languages-->";
/// Where the service worker wants the files that it keeps where they are used.
const SOME_MARK: &str = "{{some}}";
/// Where it refers to the licences; the single file has them here.
const LICENCES: &str = "licences.txt";
const LICENCES_PLACE: &str = "<!--licences-->";
/// What stands between these is left out of the single file.
const HOSTED: (&str, &str) = ("<!--hosted-->", "<!--/hosted-->");
/// What stands between these is in no other.
const SINGLE: (&str, &str) = ("<!--single-->", "<!--/single-->");
const BOOT_ELEMENT: &str = "<script type=\"module\" src=\"boot.js\"></script>";
const RESCUE_ELEMENT: &str = "<script src=\"rescue.js\" async></script>";
const STYLES_PLACE: &str = "<!--styles-->";
const STYLE_LINK: &str = "<link rel=\"stylesheet\" href=\"";
const STYLE_LINK_END: &str = "\">";
const MANIFEST: &str = "noseward.webmanifest";
/// Where the service worker wants the SHA-256 of the index, which holds the build.
const INDEX_DIGEST_MARK: &str = "{{index-digest}}";
/// Where the service worker wants the files, each with its SHA-256.
const FILES_MARK: &str = "{{files}}";

/// How the name of a file of sentences ends.
pub(crate) const TABLE_ENDING: &str = "words";

/// How the name begins of a file that only whoever leads needs; www/sw.js looks for that.
const LEADERS_BEGINNING: &str = "leaders-";

/// The name of the page in one file.
pub(crate) const SINGLE_FILE: &str = "noseward.html";

/// The pictures under www/icons/ that operating systems show; the page does not.
pub(crate) const ICONS: [&str; 4] =
    ["icon-180.png", "icon-192.png", "icon-512.png", "icon-maskable.png"];

/// What a person wrote under www/.
#[derive(Debug)]
pub(crate) struct Sources {
    /// index.html
    pub(crate) index: String,
    /// boot.js with keep.js behind it
    pub(crate) boot: String,
    /// offline.js
    pub(crate) offline: String,
    /// unpack.js
    pub(crate) unpack: String,
    /// rescue.js
    pub(crate) rescue: String,
    /// sw.js
    pub(crate) worker: String,
    /// noseward.webmanifest
    pub(crate) manifest: String,
    /// The style sheets, in the order in which [`style_paths`] names them.
    pub(crate) styles: Vec<String>,
    /// Those of the places, which load with them.
    pub(crate) place_styles: String,
    /// The same of the places that only whoever leads opens.
    pub(crate) leader_styles: String,
    /// icon.svg
    pub(crate) icon: Vec<u8>,
    /// The pictures, in the order of [`ICONS`].
    pub(crate) icons: Vec<Vec<u8>>,
    /// The sentences of every other language, by its key.
    pub(crate) tables: Vec<(&'static str, Vec<u8>)>,
    /// Which of them the single file has too.
    pub(crate) single_languages: Vec<&'static str>,
}

/// A file of dist/.
#[derive(Debug)]
pub(crate) struct File {
    /// Its name; dist/ has no folders.
    pub(crate) name: String,
    /// Its content.
    pub(crate) bytes: Vec<u8>,
    /// Whether a first visit of the page loads it in order to show the page.
    pub(crate) first_visit: bool,
    /// The parts of the page that need it.
    pub(crate) parts: Vec<String>,
    /// Whether all of these are for whoever leads only.
    pub(crate) is_for_leaders: bool,
}

impl File {
    pub(crate) fn visited(name: &str, bytes: impl Into<Vec<u8>>) -> Self {
        Self { first_visit: true, ..Self::beside(name, bytes) }
    }

    pub(crate) fn beside(name: &str, bytes: impl Into<Vec<u8>>) -> Self {
        Self {
            name: name.to_owned(),
            bytes: bytes.into(),
            first_visit: false,
            parts: Vec::new(),
            is_for_leaders: false,
        }
    }
}

/// The files of dist/: those of a visit; the service worker, the manifest and its icons;
/// the single file; and two with lasting names for programs that call the page's
/// functions. The page is made of the module in parts, the single file of the `whole` one.
pub(crate) fn assemble(
    sources: &Sources,
    bindings: &Bindings,
    whole: &Bindings,
    licences: &str,
    edition: &Edition,
) -> Result<Vec<File>> {
    let mut glue = bindings.glue.clone();
    let later: Vec<File> = bindings
        .later
        .iter()
        .map(|part| {
            let (stem, ending) =
                part.name.split_once('.').context("a part has no ending")?;
            let wants = |wants: &&Part| wants.files.contains(&part.name);
            let wants: Vec<&Part> = bindings.parts.iter().filter(wants).collect();
            let is_for_leaders =
                !wants.is_empty() && wants.iter().all(|part| part.is_for_leaders);
            let stem = stem.trim_start_matches("split_");
            let whose = if is_for_leaders { LEADERS_BEGINNING } else { "" };
            let name = hashed(&format!("{whose}{stem}"), ending, &part.bytes);
            glue = rename(
                &glue,
                &format!("./{}", part.name),
                &format!("./{name}"),
                "the script that loads the parts",
            )?;
            let parts = wants.iter().map(|part| part.name.clone()).collect();
            Ok(File {
                parts,
                is_for_leaders,
                ..File::beside(&name, part.bytes.as_slice())
            })
        })
        .collect::<Result<_>>()?;
    let (tables, list) = tables(sources);
    glue += &list;
    let module_name = hashed("noseward", "wasm", &bindings.module);
    let glue = replace(&glue, MODULE_NAME, &module_name, "the script of the bindings")?;
    let glue_name = hashed("noseward", "js", glue.as_bytes());

    let boot = replace(
        &sources.boot,
        "./noseward.js",
        &format!("./{glue_name}"),
        "www/boot.js",
    )?;
    let boot = format!("{boot}\n{}", sources.offline);
    let boot_name = hashed("boot", "js", boot.as_bytes());
    let rescue_name = hashed("rescue", "js", sources.rescue.as_bytes());

    let styles = sources.styles.concat();
    let all_styles = format!("{styles}{}{}", sources.place_styles, sources.leader_styles);
    ensure!(
        !all_styles.contains("@import") && !all_styles.contains("url("),
        "a sheet under www/styles/ refers to another file (`@import` or `url(`), which \
         dist/ would not contain; link style sheets in index.html, put drawings in markup"
    );
    let styles_name = hashed("styles", "css", styles.as_bytes());
    let icon_name = hashed("icon", "svg", &sources.icon);
    let pictures = pictures(sources);
    let manifest = manifest(sources, &icon_name, &pictures)?;
    // Servers do not say in which letters a text is written; the mark in front does.
    let marked = format!("\u{feff}{licences}");
    let licences_name = hashed("licences", "txt", marked.as_bytes());

    let place = "www/index.html";
    let words = edition.words();
    let common = |words: &str, languages: &[&str]| -> Result<String> {
        let index = link_one_sheet(&sources.index, STYLES_PLACE)?;
        let index = replace(&index, LANGUAGES_PLACE, &languages.join(" "), place)?;
        let meta = format!("<meta name=\"build\" content=\"{BUILD_MARK}\">");
        let index = replace(&index, BUILD_PLACE, &meta, place)?;
        replace(&index, EDITION_PLACE, words, place)
    };
    let languages: Vec<&str> = sources.tables.iter().map(|(key, _)| *key).collect();
    let index = only(HOSTED, SINGLE, &common(&words, &languages)?, place)?;
    let index = replace(
        &index,
        STYLES_PLACE,
        &format!(
            "<link rel=\"stylesheet\" href=\"{styles_name}\">\n\
             <link rel=\"modulepreload\" href=\"{glue_name}\">\n\
             <link rel=\"preload\" href=\"{module_name}\" as=\"fetch\" \
             type=\"application/wasm\" crossorigin>"
        ),
        place,
    )?;
    let index = replace(&index, POLICY_MARK, &policy::meta_element(), place)?;
    let renamed = |element: &str, from: &str, to: &str| element.replace(from, to);
    let element = renamed(BOOT_ELEMENT, "boot.js", &boot_name);
    let index = replace(&index, BOOT_ELEMENT, &element, place)?;
    let element = renamed(RESCUE_ELEMENT, "rescue.js", &rescue_name);
    let index = replace(&index, RESCUE_ELEMENT, &element, place)?;
    let index = rename(&index, "icon.svg", &icon_name, place)?;
    let index = rename(&index, MANIFEST, &manifest.name, place)?;
    let index = rename(&index, ICONS[0], &pictures[0].name, place)?;
    let index = rename(&index, LICENCES, &licences_name, place)?;
    ensure!(
        !index.contains("src=\"/") && !index.contains("href=\"/"),
        "{place} refers to an address that begins with `/`, which fails when the page \
         lies in a folder; make it relative"
    );

    let marks = single::Marks {
        policy: POLICY_MARK,
        styles: STYLES_PLACE,
        boot: BOOT_ELEMENT,
        rescue: RESCUE_ELEMENT,
        licences: LICENCES_PLACE,
    };
    let parts = single::Parts {
        styles: &all_styles,
        glue: &whole.glue,
        unpack: &sources.unpack,
        boot: &sources.boot,
        rescue: &sources.rescue,
        icon: &sources.icon,
        module: &whole.module,
        tables: &of_single_file(sources),
        licences,
    };
    let single = common(&words, &sources.single_languages)?;
    let single = only(SINGLE, HOSTED, &single, place)?;
    let single = single_file(&single, &marks, &parts)?;

    let stable = format!(
        "export * from './{glue_name}';\nexport {{ default }} from './{glue_name}';\n"
    );
    let mut files = vec![
        File::visited(&styles_name, styles),
        File::visited(&icon_name, sources.icon.as_slice()),
        File::visited(&boot_name, boot),
        File::visited(&rescue_name, sources.rescue.as_str()),
        File::visited(&glue_name, glue),
        File::visited(&module_name, bindings.module.as_slice()),
        manifest,
    ];
    // Loaded later, and needed without a network all the same.
    let (for_leaders, later): (Vec<File>, Vec<File>) =
        later.into_iter().partition(|file| file.is_for_leaders);
    files.extend(later);
    files.push(File::beside(&licences_name, marked));
    let some: Vec<File> = tables.into_iter().chain(for_leaders).collect();
    let worker = worker(&sources.worker, &files, &some)?;
    files.extend(some);
    files.extend(pictures);
    files.extend([
        File::visited("index.html", index),
        File::beside("sw.js", worker),
        File::beside(SINGLE_FILE, single),
        File::beside("noseward.js", stable),
        File::beside("noseward.d.ts", bindings.types.as_str()),
    ]);
    fill_build(&mut files);
    fill_index_digest(&mut files);
    Ok(files)
}

/// Tells the service worker what the finished index looks like.
fn fill_index_digest(files: &mut [File]) {
    let index = files.iter().find(|file| file.name == "index.html");
    let index = digest(&index.expect("it was made above").bytes);
    for file in files.iter_mut().filter(|file| file.name == "sw.js") {
        let text = String::from_utf8_lossy(&file.bytes);
        file.bytes = text.replace(INDEX_DIGEST_MARK, &index).into_bytes();
    }
}

fn pictures(sources: &Sources) -> Vec<File> {
    let stem = |name: &'static str| name.trim_end_matches(".png");
    let picture = |(name, bytes): (&'static str, &Vec<u8>)| {
        File::beside(&hashed(stem(name), "png", bytes), bytes.as_slice())
    };
    ICONS.into_iter().zip(&sources.icons).map(picture).collect()
}

fn manifest(sources: &Sources, icon_name: &str, pictures: &[File]) -> Result<File> {
    let place = "www/noseward.webmanifest";
    let mut text = rename(&sources.manifest, "icon.svg", icon_name, place)?;
    // The first is for systems that do not read the manifest.
    for (name, picture) in ICONS.iter().zip(pictures).skip(1) {
        text = rename(&text, name, &picture.name, place)?;
    }
    Ok(File::beside(&hashed("noseward", "webmanifest", text.as_bytes()), text))
}

/// The sentences of each other language as a file, and what tells the script of the bindings
/// what these are called.
fn tables(sources: &Sources) -> (Vec<File>, String) {
    let file = |(key, bytes): &(&str, Vec<u8>)| {
        File::beside(&hashed(key, TABLE_ENDING, bytes), bytes.as_slice())
    };
    let files: Vec<File> = sources.tables.iter().map(file).collect();
    let names = sources.tables.iter().zip(&files);
    let names: Vec<String> =
        names.map(|((key, _), file)| format!("\"{key}\":\"./{}\"", file.name)).collect();
    (files, format!("\nconst TABLES={{{}}};\n", names.join(",")))
}

/// The sentences that go into the single file.
fn of_single_file(sources: &Sources) -> Vec<(&str, &[u8])> {
    let is_there = |key: &&str| sources.single_languages.contains(key);
    let tables = sources.tables.iter().filter(|(key, _)| is_there(key));
    tables.map(|(key, bytes)| (*key, bytes.as_slice())).collect()
}

/// The service worker, which keeps these files and the index, and some where they are used.
fn worker(source: &str, files: &[File], some: &[File]) -> Result<String> {
    let place = "www/sw.js";
    let digests = |files: &[File]| {
        let entry = |file: &File| format!("'{}': '{}'", file.name, digest(&file.bytes));
        files.iter().map(entry).collect::<Vec<String>>().join(", ")
    };
    let source = replace(source, SOME_MARK, &digests(some), place)?;
    for mark in [BUILD_MARK, INDEX_DIGEST_MARK] {
        ensure!(source.contains(mark), "{place} does not contain {mark}; put it back");
    }
    replace(&source, FILES_MARK, &digests(files), place)
}

/// Replaces a name in quotes by another.
fn rename(text: &str, from: &str, to: &str, place: &str) -> Result<String> {
    replace(text, &format!("\"{from}\""), &format!("\"{to}\""), place)
}

/// A document with what stands between some marks, without them, and without what stands
/// between others.
fn only(
    wanted: (&str, &str),
    unwanted: (&str, &str),
    document: &str,
    place: &str,
) -> Result<String> {
    let document = document.replace(wanted.0, "").replace(wanted.1, "");
    let mut pieces = document.split(unwanted.0);
    let mut kept = pieces.next().unwrap_or_default().to_owned();
    let unpaired = || format!("{place} has a {} without its {}", unwanted.0, unwanted.1);
    ensure!(!kept.contains(unwanted.1), unpaired());
    for piece in pieces {
        let (_, after) = piece.split_once(unwanted.1).with_context(unpaired)?;
        ensure!(!after.contains(unwanted.1), unpaired());
        kept.push_str(after);
    }
    Ok(kept)
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
pub(crate) fn replace(text: &str, from: &str, to: &str, place: &str) -> Result<String> {
    ensure!(text.contains(from), "{place} does not contain {from}; put it back");
    Ok(text.replace(from, to))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::names::is_hashed;
    use crate::split::PartFile;

    const INDEX: &str = "<html data-languages=\"<!--languages-->\"><head>\n<!--csp-->\n<!--build-->\n\
        <link rel=\"icon\" href=\"icon.svg\">\n<!--hosted-->\
        <link rel=\"apple-touch-icon\" href=\"icon-180.png\">\
        <link rel=\"manifest\" href=\"noseward.webmanifest\"><!--/hosted-->\n\
        <link rel=\"stylesheet\" href=\"styles/base.css\">\n\
        <link rel=\"stylesheet\" href=\"styles/print.css\">\n\
        <script type=\"module\" src=\"boot.js\"></script>\n\
        <script src=\"rescue.js\" async></script>\n</head>\n<body><!--edition-->\
        <!--hosted--><a href=\"noseward.html\">one file</a>\
        <a href=\"licences.txt\">licences</a><!--/hosted--><!--single--><pre><!--licences--></pre><!--/single-->\n</body>";

    fn sources() -> Sources {
        Sources {
            index: INDEX.to_owned(),
            boot: "import('./noseward.js');\n".to_owned(),
            offline: "offline();\n".to_owned(),
            unpack: "function unpacked(){}\n".to_owned(),
            rescue: "rescue();\n".to_owned(),
            worker: "const BUILD = '{{build}}', INDEX = '{{index-digest}}', \
                     SOME = {{{some}}}, DIGESTS = {{{files}}};\n"
                .to_owned(),
            manifest: "[\"icon.svg\", \"icon-192.png\", \"icon-512.png\", \
                       \"icon-maskable.png\"]"
                .to_owned(),
            styles: vec!["a{}\n".to_owned(), "b{}\n".to_owned()],
            place_styles: "c{}\n".to_owned(),
            leader_styles: "d{}\n".to_owned(),
            icon: b"<svg/>".to_vec(),
            icons: ICONS.iter().map(|name| name.as_bytes().to_vec()).collect(),
            tables: vec![("ar", b"arabic".to_vec()), ("de", b"german".to_vec())],
            single_languages: vec!["de"],
        }
    }

    const TEXTS: &str = "A & B <b@example.org>";

    fn edition() -> Edition {
        Edition::new("1.2.3", Some(0), "rustc 1.95.0").unwrap()
    }

    fn built(sources: &Sources) -> Vec<File> {
        assemble(sources, &bindings(), &whole(), TEXTS, &edition()).unwrap()
    }

    fn refusal(sources: &Sources) -> String {
        assemble(sources, &bindings(), &whole(), TEXTS, &edition())
            .unwrap_err()
            .to_string()
    }

    fn build_of(files: &[File]) -> String {
        let page = text(named(files, "index.html", ""));
        let (_, rest) = page.split_once("<meta name=\"build\" content=\"").unwrap();
        rest.split('"').next().unwrap().to_owned()
    }

    fn bindings() -> Bindings {
        Bindings {
            glue: format!("new URL('{MODULE_NAME}', import.meta.url)"),
            types: "export function evaluate(x: any): any;".to_owned(),
            module: b"\0asm".to_vec(),
            later: Vec::new(),
            parts: Vec::new(),
        }
    }

    fn whole() -> Bindings {
        Bindings { module: b"\0asm whole".to_vec(), ..bindings() }
    }

    #[test]
    fn a_part_is_found_by_its_new_name_and_kept_for_later() {
        let part =
            PartFile { name: "split_notebook.wasm".into(), bytes: b"part".to_vec() };
        let glue = format!("{}; \"./split_notebook.wasm\"", bindings().glue);
        let in_parts = Bindings { glue, later: vec![part], ..bindings() };
        let files = assemble(&sources(), &in_parts, &whole(), TEXTS, &edition()).unwrap();
        let part = named(&files, "notebook-", ".wasm");
        assert!(!part.first_visit && is_hashed(&part.name));
        let glue = text(named(&files, "noseward-", ".js"));
        assert!(glue.contains(&format!("; \"./{}\"", part.name)), "{glue}");
        let worker = text(named(&files, "sw.js", ""));
        assert!(worker.contains(&format!("'{}'", part.name)), "{worker}");
    }

    #[test]
    fn what_only_leaders_need_is_kept_where_it_is_used() {
        let file = |name: &str| PartFile { name: name.into(), bytes: name.into() };
        let part = |name: &str, files: &[&str], is_for_leaders| Part {
            name: name.into(),
            files: files.iter().map(|&file| file.into()).collect(),
            is_for_leaders,
        };
        let glue =
            format!("{}; \"./split_class.wasm\" \"./chunk_1.wasm\"", bindings().glue);
        let in_parts = Bindings {
            glue,
            later: vec![file("split_class.wasm"), file("chunk_1.wasm")],
            parts: vec![
                part("class", &["split_class.wasm", "chunk_1.wasm"], true),
                part("why", &["chunk_1.wasm"], false),
            ],
            ..bindings()
        };
        let files = assemble(&sources(), &in_parts, &whole(), TEXTS, &edition()).unwrap();
        let worker = text(named(&files, "sw.js", ""));
        let (some, digests) = worker.split_once("DIGESTS").unwrap();
        let class = named(&files, "leaders-class-", ".wasm");
        assert!(class.is_for_leaders && is_hashed(&class.name));
        assert!(some.contains(&class.name) && !digests.contains(&class.name), "{worker}");
        let shared = named(&files, "chunk_1-", ".wasm");
        assert!(!shared.is_for_leaders && digests.contains(&shared.name), "{worker}");
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
        let files = built(&sources());
        let wasm = named(&files, "noseward-", ".wasm");
        let glue = named(&files, "noseward-", ".js");
        let boot = named(&files, "boot-", ".js");
        let german = named(&files, "de-", ".words");
        let start = format!("new URL('{}', import.meta.url)", wasm.name);
        assert!(text(glue).starts_with(&start), "{}", text(glue));
        assert!(text(glue).contains(&format!("\"de\":\"./{}\"", german.name)));
        assert_eq!(text(boot), format!("import('./{}');\n\noffline();\n", glue.name));
        let page = text(named(&files, "index.html", ""));
        let manifest = text(named(&files, "noseward-", ".webmanifest"));
        let tables = |file: &&File| !file.name.ends_with(TABLE_ENDING);
        for file in files.iter().filter(|file| is_hashed(&file.name)).filter(tables) {
            let name = format!("\"{}\"", file.name);
            assert!(page.contains(&name) || manifest.contains(&name), "{}", file.name);
        }
        assert!(files.iter().filter(|file| file.first_visit).all(|file| {
            file.name == "index.html" || page.contains(&format!("\"{}\"", file.name))
        }));
        for name in ["boot.js", "rescue.js", "icon.svg", "icon-180.png", MANIFEST] {
            assert!(!page.contains(&format!("\"{name}\"")), "{name}");
        }
    }

    #[test]
    fn a_change_of_the_module_changes_every_name_that_leads_to_it() {
        let before = built(&sources());
        let other = Bindings { module: b"\0asm!".to_vec(), ..bindings() };
        let after = assemble(&sources(), &other, &other, TEXTS, &edition()).unwrap();
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
        let files = built(&sources());
        assert_eq!(text(named(&files, "styles-", ".css")), "a{}\nb{}\n");
        let page = text(named(&files, "index.html", ""));
        assert_eq!(page.matches("rel=\"stylesheet\"").count(), 1);
        assert!(!page.contains("styles/"));
        assert!(page.contains("crossorigin>\n<script"), "{page}");
    }

    #[test]
    fn the_policy_takes_the_place_of_its_mark() {
        let files = built(&sources());
        let page = text(named(&files, "index.html", ""));
        assert!(page.contains(&policy::meta_element()));
        assert!(!page.contains(POLICY_MARK));
    }

    #[test]
    fn a_lost_mark_is_named_with_its_file() {
        let lost = Sources { index: INDEX.replace(POLICY_MARK, ""), ..sources() };
        let error = refusal(&lost);
        assert!(error.contains("www/index.html"), "{error}");
        assert!(error.contains(POLICY_MARK), "{error}");
        for mark in [BUILD_MARK, INDEX_DIGEST_MARK, FILES_MARK, SOME_MARK] {
            let worker = sources().worker.replace(mark, "");
            let error = refusal(&Sources { worker, ..sources() });
            assert!(error.contains("www/sw.js") && error.contains(mark), "{error}");
        }
        let lost = Sources { manifest: "[]".to_owned(), ..sources() };
        assert!(refusal(&lost).contains("www/noseward.webmanifest"));
        let lost = Sources { boot: String::new(), ..sources() };
        let error = refusal(&lost);
        assert!(error.contains("www/boot.js"), "{error}");
    }

    #[test]
    fn what_would_break_in_a_folder_or_fall_out_of_dist_is_refused() {
        let absolute = INDEX.replace("<head>", "<head><base href=\"/\">");
        let bad = Sources { index: absolute, ..sources() };
        assert!(refusal(&bad).contains("relative"));
        for style in ["@import 'x.css';", "a { background: url(x.png) }"] {
            let bad = Sources { styles: vec![style.to_owned()], ..sources() };
            assert!(refusal(&bad).contains("refers to another"), "{style}");
        }
        for path in ["styles/../x.css", "other/x.css", "styles/x.css\" media=\"print"] {
            let index = INDEX.replace("styles/print.css", path);
            assert!(style_paths(&index).is_err(), "{path}");
        }
    }

    #[test]
    fn programs_find_the_functions_under_a_lasting_name() {
        let files = built(&sources());
        let glue = &named(&files, "noseward-", ".js").name;
        let stable = named(&files, "noseward.js", "");
        assert!(!stable.first_visit);
        assert!(text(stable).contains(&format!("export * from './{glue}'")));
        assert!(text(stable).contains(&format!("export {{ default }} from './{glue}'")));
        assert_eq!(text(named(&files, "noseward.d.ts", "")), bindings().types);
    }

    #[test]
    fn the_page_says_which_edition_it_is() {
        let files = built(&sources());
        let build = build_of(&files);
        let page = text(named(&files, "index.html", ""));
        let words = format!("1.2.3, 1970-01-01, {}, rustc 1.95.0", &build[..8]);
        assert!(page.contains(&words), "{page}");
        let single = text(named(&files, "noseward.html", ""));
        assert!(single.contains(&words), "{single}");
        for file in &files {
            assert!(
                !String::from_utf8_lossy(&file.bytes).contains("{{"),
                "{}",
                file.name
            );
        }
    }

    #[test]
    fn any_change_is_another_build() {
        let first = build_of(&built(&sources()));
        assert_eq!(first, build_of(&built(&sources())));
        let mut others = vec![
            Sources { rescue: "other();\n".to_owned(), ..sources() },
            Sources { worker: format!("{}//", sources().worker), ..sources() },
            Sources { index: INDEX.replace("one file", "a file"), ..sources() },
            Sources { unpack: "function unpacked() {}\n".to_owned(), ..sources() },
            sources(),
        ];
        others[4].icons[0].push(0);
        for other in others {
            assert_ne!(first, build_of(&built(&other)), "{other:?}");
        }
        let later = Edition::new("1.2.3", Some(86_400), "rustc 1.95.0").unwrap();
        let files = assemble(&sources(), &bindings(), &whole(), TEXTS, &later).unwrap();
        assert_ne!(first, build_of(&files));
    }

    #[test]
    fn the_worker_knows_the_content_of_what_a_visit_loads_and_no_lasting_name() {
        let files = built(&sources());
        let worker = text(named(&files, "sw.js", ""));
        let list = worker.split_once("DIGESTS = {").unwrap().1;
        let list = list.split('}').next().unwrap();
        let listed: Vec<&str> = list.split('\'').skip(1).step_by(4).collect();
        assert!(listed.iter().all(|name| is_hashed(name)), "{listed:?}");
        for name in &listed {
            let bytes = &named(&files, name, "").bytes;
            assert!(list.contains(&format!("'{name}': '{}'", digest(bytes))), "{list}");
        }
        let index = digest(&named(&files, "index.html", "").bytes);
        assert!(worker.contains(&format!("INDEX = '{index}'")), "{worker}");
        for file in files.iter().filter(|f| f.first_visit && f.name != "index.html") {
            assert!(listed.contains(&file.name.as_str()), "{}", file.name);
        }
        assert!(worker.contains(&format!("BUILD = '{}'", build_of(&files))), "{worker}");
    }

    #[test]
    fn sentences_lie_beside_the_page_and_in_the_single_file_where_they_are_named() {
        let files = built(&sources());
        let page = text(named(&files, "index.html", ""));
        assert!(page.contains("data-languages=\"ar de\""), "{page}");
        let single = text(named(&files, "noseward.html", ""));
        assert!(single.contains("data-languages=\"de\""), "{single}");
        assert!(single.contains("id=\"packed-de\"") && !single.contains("packed-ar"));
        let worker = text(named(&files, "sw.js", ""));
        let (tables, digests) = worker.split_once("DIGESTS").unwrap();
        for key in ["ar", "de"] {
            let file = named(&files, &format!("{key}-"), ".words");
            assert!(!file.first_visit && is_hashed(&file.name));
            assert!(tables.contains(&file.name) && !digests.contains(&file.name));
        }
    }

    #[test]
    fn the_licences_lie_beside_the_page_and_stand_in_the_single_file() {
        let files = built(&sources());
        let beside = named(&files, "licences-", ".txt");
        assert_eq!(text(beside), format!("\u{feff}{TEXTS}"));
        let page = text(named(&files, "index.html", ""));
        assert!(page.contains(&format!("<a href=\"{}\">", beside.name)), "{page}");
        assert!(!page.contains(TEXTS));
        let single = text(named(&files, "noseward.html", ""));
        assert!(single.contains("<pre>A &amp; B &lt;b@example.org></pre>"), "{single}");
        let worker = text(named(&files, "sw.js", ""));
        assert!(worker.contains(&beside.name), "they are there without a network");
    }

    #[test]
    fn only_the_page_on_a_server_offers_what_lies_beside_it() {
        let files = built(&sources());
        assert!(text(named(&files, "index.html", "")).contains("one file</a>"));
        let single = text(named(&files, "noseward.html", ""));
        for word in ["one file</a>", "manifest", "offline();", ".svg\"", "<!--"] {
            assert!(!single.contains(word), "{word} in {single}");
        }
        for index in [
            INDEX.replacen(HOSTED.1, "", 1),
            INDEX.replacen(HOSTED.0, "", 1),
            INDEX.replace("<head>", "<head><!--/hosted-->"),
        ] {
            let bad = Sources { index, ..sources() };
            assert!(refusal(&bad).contains("without its"));
        }
    }
}
