//! The JSON Schema (draft 2020-12) of a record.

use serde_json::{Map, Value, json};

use super::sheet::{Column, Sheet};

/// The name of its file in a folder of data.
pub(super) const SCHEMA: &str = "data-form.json";

/// An object with exactly these members.
fn object(members: &[(&str, Value)]) -> Value {
    let names: Vec<&str> = members.iter().map(|(name, _)| *name).collect();
    let members: Map<String, Value> = members.iter().map(|(name, schema)| ((*name).to_owned(), schema.clone())).collect();
    json!({ "type": "object", "required": names, "properties": members, "additionalProperties": false })
}

fn list(of: &Value) -> Value {
    json!({ "type": "array", "items": of })
}

fn of_column(column: &Column) -> Value {
    let kind = column.kind.name();
    json!({ "description": column.says, "type": if column.required { json!(kind) } else { json!([kind, "null"]) } })
}

fn of_sheet(sheet: &Sheet) -> Value {
    let columns: Vec<(&str, Value)> = sheet.columns.iter().map(|column| (column.name, of_column(column))).collect();
    let mut rows = list(&object(&columns));
    rows["description"] = json!(sheet.says);
    rows
}

/// What `faceload compare --json` prints.
fn of_result() -> Value {
    let (text, number, whole) = (json!({ "type": "string" }), json!({ "type": "number" }), json!({ "type": "integer", "minimum": 0 }));
    let points = object(&["5%", "25%", "50%", "75%", "95%"].map(|point| (point, number.clone())));
    let by_indicator = |schema: Value| json!({ "type": "object", "additionalProperties": schema });
    let load = object(&[("value", number.clone()), ("unit", text.clone()), ("draws", points.clone())]);
    let drawn = object(&[
        ("first", points.clone()),
        ("second", points.clone()),
        ("difference", points.clone()),
        ("ratio", json!({ "anyOf": [points, { "type": "null" }] })),
        ("first_less", json!({ "type": "number", "minimum": 0, "maximum": 1 })),
        ("difference_at", json!({ "type": "number", "minimum": 0, "maximum": 1 })),
    ]);
    let difference = object(&[
        ("first", number.clone()),
        ("second", number.clone()),
        ("difference", number.clone()),
        ("unit", text.clone()),
        ("draws", drawn),
        ("finding", json!({ "enum": ["first-less", "second-less", "about-the-same", "no-clear-difference"] })),
    ]);
    let pair = object(&[
        ("alternatives", json!({ "type": "array", "items": { "type": "string" }, "minItems": 2, "maxItems": 2 })),
        ("lines", whole.clone()),
        ("m2", number.clone()),
        ("loads", by_indicator(difference)),
    ]);
    let one = object(&[("id", text.clone()), ("route", text.clone()), ("m2", number), ("loads", by_indicator(load))]);
    let draws = object(&[
        ("number", whole.clone()),
        ("asked", whole.clone()),
        ("seed", whole.clone()),
        ("design", text.clone()),
        ("inputs", whole.clone()),
    ]);
    let mut schema = object(&[
        ("schema_version", json!({ "const": 1 })),
        ("order", text.clone()),
        ("per", json!({ "enum": ["m2", "order", "m2-year"] })),
        ("boundary", json!({ "enum": ["face", "face-with-blank"] })),
        ("lines", whole.clone()),
        ("lines_compared", whole.clone()),
        ("lines_per_alternative", list(&whole)),
        ("how_sure", text.clone()),
        ("draws", draws),
        ("not_covered", text.clone()),
        ("caution", text.clone()),
        ("standing", text.clone()),
        ("factors", object(&[("sha_256", text.clone()), ("own_rows", list(&text))])),
        ("alternatives", list(&one)),
    ]);
    // These are left out where there is nothing to say.
    schema["properties"]["reviewers_stated_by_user"] = list(&text);
    schema["properties"]["pairs"] = list(&pair);
    schema
}

/// The schema of a record with these sheets.
pub(super) fn schema(sheets: &[Sheet]) -> Value {
    let text = json!({ "type": "string" });
    let hash = json!({ "type": "string", "pattern": "^[0-9a-f]{64}$" });
    let order = object(&[("name", text.clone()), ("order", json!({ "type": "object" }))]);
    let made_from = object(&[
        ("orders", list(&order)),
        ("own_tables", json!({ "type": "object", "additionalProperties": { "type": "string" } })),
        ("moved", list(&object(&[("id", text.clone()), ("value", json!({ "type": "number" }))]))),
        ("per", text.clone()),
        ("boundary", text.clone()),
        ("between", json!({ "type": ["array", "null"], "items": { "type": "string" }, "minItems": 2, "maxItems": 2 })),
        ("indicator", text.clone()),
        (
            "draws",
            object(&[
                ("number", json!({ "type": "integer" })),
                ("seed", json!({ "type": "integer", "minimum": 0 })),
                ("design", text.clone()),
            ]),
        ),
    ]);
    let rows: Vec<(&str, Value)> = sheets.iter().map(|sheet| (sheet.name, of_sheet(sheet))).collect();
    let mut schema = object(&[
        ("schema_version", json!({ "const": super::record::SCHEMA_VERSION })),
        ("program", object(&[("name", text.clone()), ("version", text)])),
        ("sha_256", object(&["order", "made_from", "tables", "result"].map(|of| (of, hash.clone())))),
        ("made_from", made_from),
        ("result", of_result()),
        ("rows", object(&rows)),
    ]);
    schema["$schema"] = json!("https://json-schema.org/draft/2020-12/schema");
    schema["title"] = json!("A comparison of sign faces with what it was made from");
    schema["description"] = json!(
        "sha_256: of the canonical bytes (members sorted by name, no white space) of the list of orders, of made_from, and of result and rows \
         together; tables: of the rows of the tables, see the program's notes. A hash finds a change; it does not say who made the file."
    );
    schema
}
