//! A design as JSON in, its report as JSON out: what `examples/evaluate.rs` of the
//! stability crate does between reading and printing.

use noseward_stability::{
    BottleSize, Design, Example, Mass, Material, Planform, SectionKind, evaluate,
};
use serde_json::{Value, json};

/// Every documented key once, with a value of its own.
fn full() -> Value {
    json!({
        "name": "Fulmar",
        "sections": [
            {
                "kind": "ogive",
                "length_mm": 120.0,
                "diameter_mm": 65.0,
                "closed_front": false,
                "mass": { "weighed_g": 8.0 }
            },
            {
                "kind": "tube",
                "length_mm": 125.0,
                "diameter_mm": 65.0,
                "closed_front": true,
                "mass": { "material": "bottle_wall" }
            },
            {
                "kind": "rounded_taper",
                "length_mm": 55.0,
                "diameter_mm": 28.0,
                "closed_front": false,
                "mass": "joined"
            },
            {
                "kind": "neck",
                "length_mm": 21.0,
                "diameter_mm": null,
                "closed_front": false,
                "mass": { "sheet_g_per_m2": 2600.0 }
            }
        ],
        "fins": [
            {
                "count": 4,
                "start_mm": 215.0,
                "roll_deg": 0.0,
                "planform": {
                    "four_sided": {
                        "root_mm": 100.0,
                        "tip_mm": 60.0,
                        "span_mm": 55.0,
                        "sweep_mm": 40.0
                    }
                },
                "mass": { "material": "card300" }
            },
            {
                "count": 3,
                "start_mm": 225.0,
                "roll_deg": 30.0,
                "planform": { "own_outline_mm": [[0.0, 0.0], [20.0, 15.0], [40.0, 0.0]] },
                "mass": { "weighed_g": 3.0 }
            }
        ],
        "weights": [{ "label": "clay", "mass_g": 20.0, "position_mm": 45.0 }],
        "measured": { "total_mass_g": 75.0 }
    })
}

fn read(json: &Value) -> Result<Design, serde_json::Error> {
    serde_json::from_str(&json.to_string())
}

#[test]
fn every_documented_key_is_read_and_written_back() {
    let json = full();
    let design = read(&json).unwrap();
    assert_eq!(design.name, "Fulmar");
    assert_eq!(design.sections[0].kind, SectionKind::Ogive);
    assert_eq!(design.sections[0].mass, Mass::WeighedG(8.0));
    assert!(design.sections[1].closed_front);
    assert_eq!(design.sections[1].mass, Mass::Material(Material::BottleWall));
    assert_eq!(design.sections[2].mass, Mass::Joined);
    assert_eq!(design.sections[3].diameter_mm, None);
    assert_eq!(design.sections[3].mass, Mass::SheetGPerM2(2600.0));
    assert_eq!(design.fins[1].roll_deg, 30.0);
    let points = vec![[0.0, 0.0], [20.0, 15.0], [40.0, 0.0]];
    assert_eq!(design.fins[1].planform, Planform::PointsMm(points));
    assert_eq!(design.measured.total_mass_g, Some(75.0));
    assert_eq!(serde_json::to_value(&design).unwrap(), json);
    assert_eq!(evaluate(&design).faults, []);
}

#[test]
fn every_start_survives_the_round_trip() {
    let examples = Example::ALL.map(Example::design);
    let bottles = BottleSize::ALL.map(BottleSize::design);
    for design in examples.into_iter().chain(bottles) {
        let text = serde_json::to_string(&design).unwrap();
        assert_eq!(serde_json::from_str::<Design>(&text).unwrap(), design);
    }
}

#[test]
fn what_has_a_default_may_be_left_out() {
    let design = read(&json!({
        "sections": [{ "kind": "tube", "length_mm": 200, "diameter_mm": 65,
                       "mass": { "weighed_g": 20 } }],
        "fins": [{ "count": 3, "start_mm": 100,
                   "planform": { "own_outline_mm": [[0, 0], [20, 30], [40, 0]] },
                   "mass": { "material": "card220" } }],
        "weights": [{ "mass_g": 5, "position_mm": 10 }],
        "measured": {}
    }))
    .unwrap();
    assert_eq!(design.name, "");
    assert!(!design.sections[0].closed_front);
    assert_eq!(design.fins[0].roll_deg, 0.0);
    assert_eq!(design.weights[0].label, "");
    assert_eq!(design.measured.total_mass_g, None);
    assert!(evaluate(&design).figures.is_some());
}

/// The names that a list of choices uses, all of them.
#[test]
fn the_names_of_kinds_and_materials() {
    let names = |values: Vec<Value>| -> Vec<String> {
        values.iter().map(|v| v.as_str().unwrap().to_owned()).collect()
    };
    let kinds = SectionKind::ALL.map(|k| serde_json::to_value(k).unwrap());
    assert_eq!(
        names(kinds.into()),
        [
            "dome",
            "ellipsoid",
            "ogive",
            "paraboloid",
            "cone",
            "tube",
            "straight_taper",
            "rounded_taper",
            "neck"
        ]
    );
    let materials = Material::ALL.map(|m| serde_json::to_value(m).unwrap());
    assert_eq!(
        names(materials.into()),
        [
            "paper80",
            "card160",
            "card220",
            "card300",
            "corrugated_e",
            "corrugated_b",
            "corrugated_plastic",
            "polystyrene5",
            "balsa3",
            "bottle_wall"
        ]
    );
}

/// A misspelt key must not be passed over in silence.
#[test]
fn unknown_keys_are_refused() {
    for place in ["", "/sections/0", "/fins/0", "/weights/0", "/measured"] {
        assert_unknown_key_is_refused(place);
    }
}

#[test]
fn unknown_keys_of_a_fin_are_refused() {
    assert_unknown_key_is_refused("/fins/0/planform/four_sided");
}

fn assert_unknown_key_is_refused(place: &str) {
    let mut json = full();
    let object = json.pointer_mut(place).and_then(Value::as_object_mut);
    object.expect(place).insert("colour".into(), json!("red"));
    let error = read(&json).expect_err(place).to_string();
    assert!(error.contains("colour"), "{place}: {error}");
}

#[test]
fn what_must_stand_there_is_asked_for_by_name() {
    for (place, key) in [
        ("", "sections"),
        ("/sections/0", "kind"),
        ("/sections/0", "length_mm"),
        ("/sections/0", "mass"),
        ("/fins/0", "count"),
        ("/fins/0", "start_mm"),
        ("/fins/0", "planform"),
        ("/fins/0", "mass"),
        ("/fins/0/planform/four_sided", "span_mm"),
        ("/weights/0", "mass_g"),
        ("/weights/0", "position_mm"),
    ] {
        let mut json = full();
        let object = json.pointer_mut(place).unwrap().as_object_mut().unwrap();
        assert!(object.remove(key).is_some(), "{place}/{key}");
        let error = read(&json).expect_err(key).to_string();
        assert!(error.contains(key), "{place}: {error}");
    }
}

#[test]
fn wrong_types_and_names_are_refused() {
    for (place, value) in [
        ("/sections/0/kind", json!("Ogive")),
        ("/sections/0/kind", json!("cube")),
        ("/sections/0/length_mm", json!("120")),
        ("/sections/0/length_mm", json!(null)),
        ("/sections/0/mass", json!({ "material": "lead" })),
        ("/sections/0/mass", json!({ "weighed_g": 1, "material": "card300" })),
        ("/sections/0/mass", json!(8)),
        ("/fins/0/count", json!(2.5)),
        ("/fins/0/count", json!(-3)),
        ("/fins/1/planform", json!({ "own_outline_mm": [[0, 0, 0]] })),
        ("/fins/1/planform", json!({ "polygon": [] })),
        ("/measured/total_mass_g", json!("75 g")),
    ] {
        let mut json = full();
        *json.pointer_mut(place).unwrap() = value.clone();
        assert!(read(&json).is_err(), "{place} took {value}");
    }
    assert!(serde_json::from_str::<Design>("").is_err());
    assert!(serde_json::from_str::<Design>("[]").is_err());
}

/// The report's figures in SI, one object a part, and its faults with a place that is
/// really there in the design.
#[test]
fn the_report_as_json() {
    let mut json = full();
    json["weights"][0]["position_mm"] = json!(45.0);
    json["fins"][0]["count"] = json!(6);
    let design = read(&json).unwrap();
    let report = serde_json::to_value(evaluate(&design)).unwrap();
    let figures = &report["figures"];
    let length = figures["length_m"].as_f64().unwrap();
    assert!((length - 0.321).abs() < 1e-12);
    assert_eq!(figures["mass"]["mass_kg"], json!(0.075));
    assert!(figures["mass"]["centre_m"].as_f64().unwrap() > 0.19);
    let parts: Vec<&str> = figures["parts"]
        .as_array()
        .unwrap()
        .iter()
        .map(|p| p["part"].as_str().unwrap())
        .collect();
    assert_eq!(
        parts,
        [
            "/sections/0",
            "/sections/1",
            "/sections/2",
            "/sections/3",
            "/fins/0",
            "/fins/1",
            "/weights/0"
        ]
    );
    for part in parts {
        assert!(json.pointer(part).is_some(), "{part}");
    }
    let fault = &report["faults"][0];
    assert_eq!(fault["field"], "/fins/0/count");
    assert_eq!(fault["severity"], "ask");
    assert_eq!(fault["code"], "many_fins");
    assert_eq!(fault["values"], json!({}));
    assert_eq!(json.pointer("/fins/0/count"), Some(&json!(6)));

    json["sections"][0]["length_mm"] = json!(0);
    let stopped = serde_json::to_value(evaluate(&read(&json).unwrap())).unwrap();
    assert_eq!(stopped["figures"], Value::Null);
    assert_eq!(stopped["faults"][0]["field"], "/sections/0/length_mm");
    assert_eq!(stopped["faults"][0]["severity"], "stop");
    assert_eq!(stopped["faults"][0]["code"], "out_of_bounds");
    let values = &stopped["faults"][0]["values"];
    assert!(values["least"].as_f64().unwrap() > 0.0);
    assert!(values["most"].as_f64().unwrap() > values["least"].as_f64().unwrap());
}
