//! The physics for other programs: the same schema as a file, as JavaScript objects.

use js_sys::Promise;
use noseward_stability::{Design, evaluate as evaluate_design};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsError, JsValue};
use wasm_bindgen_futures::JsFuture;

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

/// The report of a design.
pub(crate) fn report_of(design: JsValue) -> Result<JsValue, JsValue> {
    let design: Design = serde_wasm_bindgen::from_value(design)
        .map_err(|error| JsError::new(&format!("not a design: {error}")))?;
    // Objects and null, as JSON would give, not maps and undefined.
    let report = evaluate_design(&design).serialize(&Serializer::json_compatible());
    report.map_err(|error| JsError::from(error).into())
}

#[cfg(test)]
mod tests {
    const TYPES: &str = include_str!("js/types.d.ts");
    use noseward_stability::{Example, Mass, Planform, evaluate};
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

    /// Every key that a design or a report can hold is in the types.
    #[test]
    fn the_types_name_every_key() {
        let mut design = Example::Puffin.design();
        design.sections[0].mass = Mass::SheetGPerM2(200.0);
        design.fins.push(design.fins[0].clone());
        design.fins[1].planform = Planform::PointsMm(vec![]);
        let mut found = Vec::new();
        keys(&serde_json::to_value(&design).unwrap(), &mut found);
        keys(&serde_json::to_value(evaluate(&design)).unwrap(), &mut found);
        keys(
            &serde_json::to_value(evaluate(&Example::Puffin.design())).unwrap(),
            &mut found,
        );
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
