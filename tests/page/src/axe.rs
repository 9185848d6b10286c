//! What axe-core finds fault with.

use anyhow::{Context, Result};
use serde_json::Value;
use std::fmt;

/// Runs axe, once its own script has run, and gives the broken rules.
pub(crate) const RUN: &str = "
    return axe.run(document, { resultTypes: ['violations'] }).then(report =>
        report.violations.map(violation => ({
            id: violation.id,
            help: violation.help,
            targets: violation.nodes.map(node => node.target.flat().join(' ')),
        })));";

/// A broken rule of accessibility.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Violation {
    /// The name of the rule, such as `color-contrast`.
    pub id: String,
    /// What the rule asks for.
    pub help: String,
    /// Selectors of the elements that break it.
    pub targets: Vec<String>,
}

impl Violation {
    /// Reads what [`RUN`] returns.
    pub(crate) fn all(report: &Value) -> Result<Vec<Self>> {
        let list = report.as_array().context("axe gave no list of violations")?;
        Ok(list.iter().map(Self::one).collect())
    }

    fn one(value: &Value) -> Self {
        let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
        let targets = value["targets"].as_array();
        Self {
            id: text(&value["id"]),
            help: text(&value["help"]),
            targets: targets.into_iter().flatten().map(text).collect(),
        }
    }
}

impl fmt::Display for Violation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {} ({})", self.id, self.help, self.targets.join(", "))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn a_report_is_read_and_shown() {
        let report =
            json!([{ "id": "label", "help": "Name the field", "targets": ["#a", "#b"] }]);
        let violations = Violation::all(&report).unwrap();
        assert_eq!(violations[0].to_string(), "label: Name the field (#a, #b)");
        assert!(Violation::all(&Value::Null).is_err());
    }
}
