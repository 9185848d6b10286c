//! The physics for other programs: the same schema as a file, as JavaScript objects.

use js_sys::Promise;
use noseward_link as link;
use noseward_stability::{
    Fault, Field, Figures, ProblemValues, Report, Severity, Units,
    evaluate as evaluate_design,
};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsError, JsValue};
use wasm_bindgen_futures::JsFuture;

use crate::app::problem_sentence;
use crate::later::Question;
use crate::part::{self, Part};

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("js/types.d.ts");

#[wasm_bindgen]
extern "C" {
    /// A design as it crosses the border; `types.d.ts` says what it holds.
    #[wasm_bindgen(typescript_type = "Design")]
    #[derive(Debug)]
    pub type JsDesign;
}

/// Checks a design (millimetres, grams, degrees) and works out its figures (SI units), once
/// the part of the module that does so is loaded.
///
/// # Errors
///
/// Rejects with an `Error` that names what is not as the schema says, or says that the part
/// could not be loaded.
#[wasm_bindgen(unchecked_return_type = "Report")]
pub async fn evaluate(design: JsDesign) -> Result<JsValue, JsValue> {
    let loads = Promise::new(&mut |resolve, _| {
        part::load(Part::Files, move |done| {
            let _ = resolve.call1(&JsValue::UNDEFINED, &done.into());
        });
    });
    if JsFuture::from(loads).await? != JsValue::TRUE {
        return Err(JsError::new("a part of the module could not be loaded").into());
    }
    let mut report = Ok(JsValue::UNDEFINED);
    let mut question = Question::Evaluate { design: design.into(), report: &mut report };
    part::call(Part::Files, &mut question);
    report
}

/// A report as other programs get it: beside each fault what is wrong, in words.
#[derive(Debug, Serialize)]
struct Told<'a> {
    faults: Vec<ToldFault>,
    figures: &'a Option<Figures>,
}

#[derive(Debug, Serialize)]
struct ToldFault {
    field: Field,
    severity: Severity,
    code: &'static str,
    values: ProblemValues,
    sentence: String,
}

impl<'a> From<&'a Report> for Told<'a> {
    fn from(report: &'a Report) -> Self {
        let told = |fault: &Fault| ToldFault {
            field: fault.field,
            severity: fault.severity(),
            code: fault.problem.code(),
            values: fault.problem.values(),
            sentence: problem_sentence(fault, Units::METRIC),
        };
        Self {
            faults: report.faults.iter().map(told).collect(),
            figures: &report.figures,
        }
    }
}

/// The report of a design.
pub(crate) fn report_of(design: JsValue) -> Result<JsValue, JsValue> {
    // As text: what reads files is here anyhow.
    let design = js_sys::JSON::stringify(&design)?.as_string().unwrap_or_default();
    let design = link::design_of_json(&design)
        .map_err(|detail| JsError::new(&format!("not a design: {detail}")))?;
    // Objects and null, as JSON would give, not maps and undefined.
    let report = evaluate_design(&design);
    let told = Told::from(&report).serialize(&Serializer::json_compatible());
    told.map_err(|error| JsError::from(error).into())
}

#[cfg(test)]
mod tests {
    use super::Told;
    const TYPES: &str = include_str!("js/types.d.ts");
    use noseward_stability::{Design, Example, Mass, Planform, evaluate};
    use serde_json::Value;

    fn keys(value: &Value, out: &mut Vec<String>) {
        match value {
            Value::Object(map) => {
                for (key, inside) in map {
                    out.push(key.clone());
                    keys(inside, out);
                }
            }
            Value::Array(list) => list.iter().for_each(|inside| keys(inside, out)),
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
        }
    }

    fn told(design: &Design) -> Value {
        serde_json::to_value(Told::from(&evaluate(design))).unwrap()
    }

    /// The crate's own report, and beside each fault its sentence.
    #[test]
    fn a_fault_is_told_in_a_code_in_numbers_and_in_words() {
        let mut design = Example::Puffin.design();
        design.fins[0].count = 5;
        design.weights[0].position_mm = 900.0;
        let mut told = told(&design);
        assert_eq!(
            told["faults"],
            serde_json::json!([
                {
                    "field": "/fins/0/count",
                    "severity": "ask",
                    "code": "many_fins",
                    "values": {},
                    "sentence": "With more than four fins, each shades its neighbours.",
                },
                {
                    "field": "/weights/0/position_mm",
                    "severity": "stop",
                    "code": "weight_outside",
                    "values": { "length_mm": 321.0 },
                    "sentence": "This weight is outside the rocket, which ends 321 mm from \
                                 the nose tip.",
                },
            ])
        );
        for fault in told["faults"].as_array_mut().unwrap() {
            fault.as_object_mut().unwrap().remove("sentence");
        }
        assert_eq!(told, serde_json::to_value(evaluate(&design)).unwrap());
    }

    /// What stands in quotes between two places of a text, in alphabetical order.
    fn quoted<'a>(text: &'a str, from: &str, to: &str) -> Vec<&'a str> {
        let (_, text) = text.split_once(from).unwrap();
        let (text, _) = text.split_once(to).unwrap();
        let mut found: Vec<&str> = text.split('"').skip(1).step_by(2).collect();
        found.sort_unstable();
        found
    }

    /// Every code of a fault is in the types once, and every number in one.
    #[test]
    fn the_types_name_every_code() {
        let source = include_str!("../../stability/src/check.rs");
        let codes = quoted(source, "pub fn code(", "pub fn values(");
        assert!(codes.len() > 30);
        assert_eq!(codes, quoted(TYPES, "type FaultCode =", ";\n"));
        let values = quoted(source, "ProblemValues(match *self", "\n    }\n}");
        assert!(values.len() > 15);
        for name in values {
            assert!(TYPES.contains(&format!("  {name}?: number;")), "{name}");
        }
    }

    /// Every key that a design or a report can hold is in the types.
    #[test]
    fn the_types_name_every_key() {
        let mut design = Example::Puffin.design();
        design.sections[0].mass = Mass::SheetGPerM2(200.0);
        design.fins.push(design.fins[0].clone());
        design.fins[1].planform = Planform::PointsMm(vec![]);
        let mut found = Vec::new();
        keys(&serde_json::to_value(&design).unwrap(), &mut found);
        keys(&told(&design), &mut found);
        keys(&told(&Example::Puffin.design()), &mut found);
        assert!(found.len() > 40);
        for key in found {
            let named = [format!("{key}:"), format!("{key}?:")];
            assert!(
                named.iter().any(|n| TYPES.contains(n)),
                "{key} is not in types.d.ts"
            );
        }
    }

    #[test]
    fn the_types_name_every_material_and_kind() {
        use noseward_stability::{Material, SectionKind};
        let text = |value: Value| format!("\"{}\"", value.as_str().unwrap());
        for material in Material::ALL {
            assert!(TYPES.contains(&text(serde_json::to_value(material).unwrap())));
        }
        for kind in SectionKind::ALL {
            assert!(TYPES.contains(&text(serde_json::to_value(kind).unwrap())));
        }
    }
}
