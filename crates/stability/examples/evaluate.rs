//! Reads a design as JSON and prints its report as JSON.
//!
//! ```text
//! cargo run -p noseward-stability --example evaluate < design.json
//! ```

#![expect(clippy::print_stdout, reason = "a command-line program")]

use std::io::{self, Read as _};
use std::process::ExitCode;

use noseward_stability::{Design, evaluate};

fn main() -> ExitCode {
    match run() {
        Ok(report) => {
            println!("{report}");
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("standard input is not a design: {error}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<String, Box<dyn std::error::Error>> {
    let mut text = String::new();
    io::stdin().read_to_string(&mut text)?;
    let design: Design = serde_json::from_str(&text)?;
    Ok(serde_json::to_string_pretty(&evaluate(&design))?)
}
