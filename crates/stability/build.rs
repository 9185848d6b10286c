//! Turns `data/common_weights.csv` into a constant table, so that the page carries no
//! parser for it.

use std::fmt::Write as _;
use std::path::Path;
use std::{env, error::Error, fs};

fn main() -> Result<(), Box<dyn Error>> {
    let source = "data/common_weights.csv";
    println!("cargo::rerun-if-changed={source}");
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_path(source)?;
    let mut table = String::from("&[\n");
    for row in reader.records() {
        let row = row?;
        let number = |i: usize| -> Result<String, Box<dyn Error>> {
            match &row[i] {
                "" => Ok("None".into()),
                text => Ok(format!("Some({:?})", text.parse::<f64>()?)),
            }
        };
        if row[4].is_empty() {
            return Err(format!("{} has no source", &row[1]).into());
        }
        writeln!(
            table,
            "CommonWeight {{ group: WeightGroup::{}, kind: WeightKind::{}, mass_g: {}, \
             diameter_mm: {} }},",
            &row[0],
            &row[1],
            number(2)?,
            number(3)?,
        )?;
    }
    table.push_str("]\n");
    let out = env::var_os("OUT_DIR").ok_or("cargo sets OUT_DIR")?;
    fs::write(Path::new(&out).join("common_weights.rs"), table)?;
    Ok(())
}
