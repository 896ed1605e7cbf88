//! No row is unused: demo orders, varied over every choice, ask for every row of practice and factors.

use std::collections::BTreeSet;

use faceload_core::comparison::{compare, effort};
use faceload_core::factors::Carried;
use faceload_core::load::Per;
use faceload_core::order::{Boundary, Document, Order, demo};
use serde_json::{Value, json};

use super::none;
use crate::shop::tables;

/// Rows that wait, each with its reason. The aim is none.
const WAITING: [(&str, &str); 3] = [
    ("gwp.ar4.ch4-fugitive", "no flow leaks methane yet: gas is counted as burnt"),
    ("gwp.ar5.ch4-fugitive", "no flow leaks methane yet: gas is counted as burnt"),
    ("gwp.ar6.ch4-fugitive", "no flow leaks methane yet: gas is counted as burnt"),
];

/// The ids of the rows that an order asks for.
fn asked(order: &Value) -> BTreeSet<String> {
    let document = Document::json("order.json", &order.to_string()).expect("JSON");
    let order = Order::read(document, tables()).unwrap_or_else(|faults| panic!("{faults:?}"));
    let mut asked = BTreeSet::new();
    for boundary in [Boundary::Face, Boundary::FaceWithBlank] {
        let comparison = compare(tables(), &order, Per::M2Year, boundary).unwrap_or_else(|fault| panic!("{fault:?}"));
        for model in &comparison.models {
            effort(&comparison, model);
            asked.extend(model.book.used().into_iter().map(|id| model.book.input(id).id.clone()));
        }
    }
    asked
}

#[test]
fn every_row_of_the_tables_is_used() {
    let mut used = BTreeSet::new();
    for demo in demo::DEMOS {
        let order: Value = serde_json::from_str(demo.text).expect("JSON");
        let mut vary = |change: &dyn Fn(&mut Value)| {
            let mut other = order.clone();
            other["site"]["delivery"] = json!("60 km");
            other["site"]["visit"] = json!("30 km");
            change(&mut other);
            used.extend(asked(&other));
        };
        vary(&|_| {});
        for sheeting in ["prismatic", "beaded"] {
            vary(&|order| order["line"].as_array_mut().expect("lines").iter_mut().for_each(|line| line["sheeting"] = json!(sheeting)));
        }
        for gwp in ["AR4", "AR5", "AR6"] {
            vary(&|order| order["gwp"] = json!(gwp));
        }
        vary(&|order| order["site"]["voc_rule"] = json!(true));
        vary(&|order| {
            order["alternative"] = json!([
                {"id": "bare", "route": "digital-printing", "ink": "resin", "overlay": false, "sheeting_liner": "pet"},
                {"id": "racked", "route": "screen-printing", "ink": "water", "drying": "rack"},
                {"id": "led", "route": "screen-printing", "ink": "uv", "drying": "uv-led"},
            ]);
        });
    }
    // Every area, with every fuel and vehicle that can stand beside one; on one alternative, for the time it takes.
    let stop: Value = serde_json::from_str(demo::DEMOS[0].text).expect("JSON");
    for (key, carried) in
        [("electricity", Carried::Electricity), ("heat", Carried::Heat), ("freight", Carried::Freight), ("vehicle", Carried::Vehicle)]
    {
        for one in tables().carriers_of(carried) {
            let areas = if one.upstream.is_empty() || key == "electricity" { vec!["us.rfcw"] } else { vec!["us.rfcw", "de"] };
            for area in areas {
                let mut other = stop.clone();
                other["alternative"] = json!([{"id": "only", "route": "screen-printing"}]);
                other["site"] = json!({"electricity": area, "delivery": "60 km", "visit": "30 km"});
                other["site"][key] = json!(one.id);
                used.extend(asked(&other));
            }
        }
    }
    let waiting: BTreeSet<&str> = WAITING.iter().map(|(id, _)| *id).collect();
    none(tables().inputs.iter().map(|row| row.id.clone()).filter(|id| !used.contains(id) && !waiting.contains(id.as_str())).collect());
    none(
        WAITING
            .iter()
            .filter(|(id, _)| used.contains(*id) || tables().find(id).is_none())
            .map(|(id, _)| format!("`{id}` waits no longer"))
            .collect(),
    );
}

#[test]
fn every_source_is_cited_and_every_sign_code_can_be_made() {
    for code in tables().signs.keys() {
        let order = json!({"schema_version": 1, "line": [{"code": code, "size": "24 in", "quantity": 3}]});
        assert!(!asked(&order).is_empty(), "{code}");
    }
}
