//! The project's one command: builds the page, serves it on this machine, and
//! runs every check.
//!
//! ```text
//! cargo run                        build the page and serve it on 127.0.0.1
//! cargo run -- build [language …]  leave the page in dist/, and these languages in the single file
//! cargo run -- test                every check, as the continuous integration runs it
//! cargo run -- test unit           the checks that need no page
//! cargo run -- test page [filter]  the page, its size, its tests in a browser
//! cargo run -- test spreadsheet    tables, in a spreadsheet program
//! cargo run -- test paper          sheets of paper, in poppler and qpdf
//! cargo run -- test many-schools   results of many schools, in DuckDB
//! cargo run -- test twice          whether two builds give the same page
//! cargo run -- test supply         what the project is built from
//! cargo run -- test fuzz           the fuzz targets, for about a minute
//! cargo run -- bench               the measurements
//! cargo run -- monkey [runs] [seed]  presses and typing without aim, and tabs that write at once
//! cargo run -- mutants [what] [part]  which changes no test would notice
//! ```

#![forbid(unsafe_code)]
#![expect(clippy::print_stdout, reason = "a command-line tool")]

mod assemble;
mod axe;
mod benches;
mod bindings;
mod browsers;
mod bundle;
mod checks;
mod command;
mod compile;
mod debian;
mod dist;
mod edition;
mod fuzz;
mod join;
mod licences;
mod many_schools;
mod monkey;
mod mutants;
mod names;
mod page_words;
mod paper;
mod policy;
mod programs;
mod reproducible;
mod rewrite;
mod serve;
mod single;
mod sizes;
mod split;
mod spreadsheet;
mod supply;
mod tool;
mod toolchain;

use std::env;
use std::path::Path;
use std::process::ExitCode;

const USAGE: &str = "\
usage: cargo run                        build the page and serve it on 127.0.0.1
       cargo run -- build [language …]  leave the page in dist/, these languages in its single file
       cargo run -- test                run every check
       cargo run -- test unit           run the checks that need no page
       cargo run -- test page [filter]  build the page, weigh it, test it in a browser
       cargo run -- test spreadsheet    have a spreadsheet program open and save tables
       cargo run -- test paper          have other programs read and draw sheets of paper
       cargo run -- test many-schools   have DuckDB merge the results of many schools
       cargo run -- test twice          see whether two builds give the same page
       cargo run -- test supply         check what the project is built from
       cargo run -- test fuzz           run the fuzz targets for about a minute
       cargo run -- bench               measure
       cargo run -- monkey [runs] [seed]  press and type without aim, in one tab and several
       cargo run -- mutants [what] [part]  see which changes no test notices";

fn main() -> ExitCode {
    let arguments: Vec<String> = env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let root = Path::new(env!("CARGO_MANIFEST_DIR"))
        .ancestors()
        .nth(2)
        .expect("this crate lies two folders below the workspace");
    let outcome = match words.as_slice() {
        [] | ["serve"] => serve::build_and_serve(root),
        ["build", languages @ ..] => bundle::build(root, languages).map(|_| ()),
        ["test"] => checks::everything(root),
        ["test", "unit"] => checks::unit(root),
        ["test", "page", filter @ ..] => checks::page(root, filter),
        ["test", "spreadsheet"] => checks::spreadsheet(root),
        ["test", "paper"] => checks::paper(root),
        ["test", "many-schools"] => checks::many_schools(root),
        ["test", "twice"] => checks::twice(root),
        ["test", "supply"] => checks::supply(root),
        ["test", "fuzz"] => fuzz::run_all(root),
        ["bench"] => benches::run_all(root),
        ["monkey", how @ ..] => monkey::run_all(root, how),
        ["mutants", what @ ..] => mutants::run_all(root, what),
        ["help" | "--help" | "-h"] => {
            println!("{USAGE}");
            Ok(())
        }
        _ => {
            eprintln!("there is no command `{}`\n{USAGE}", words.join(" "));
            return ExitCode::from(2);
        }
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("\nfailed: {error:#}");
            ExitCode::FAILURE
        }
    }
}
