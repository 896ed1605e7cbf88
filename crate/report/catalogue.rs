//! The choices an order has, for a face that offers them: the page needs no list of its own.

use faceload_core::factors::{Carried, Tables};
use faceload_core::order::{Alternative, Colour, DRYINGS, Drying, RouteName, default_alternatives, inks};
use faceload_core::route::ROUTES;
use serde_json::{Map, Value, json};

/// Every choice.
pub fn catalogue(tables: &Tables) -> Value {
    let routes = ROUTES.map(|route| {
        let inks: Vec<&str> = inks(route.name()).iter().map(|(word, _)| *word).collect();
        let prints_by_choice = route.name() == RouteName::ScreenPrinting;
        let dryings: Vec<Value> = DRYINGS
            .iter()
            .filter(|_| prints_by_choice)
            .map(|(word, drying)| json!({ "word": word, "uv": matches!(drying, Drying::Uv | Drying::UvLed) }))
            .collect();
        json!({ "name": route.name().name(), "label": route.label(), "inks": inks, "dryings": dryings })
    });
    let bases: Vec<&str> =
        std::iter::once("any").chain(Colour::ALL.iter().filter(|(_, colour)| colour.is_sold_as_base()).map(|(word, _)| *word)).collect();
    json!({
        "routes": routes,
        "alternatives": default_alternatives().iter().map(as_written).collect::<Vec<Value>>(),
        "electricity": carriers(tables, Carried::Electricity),
        "heat": carriers(tables, Carried::Heat),
        "freight": carriers(tables, Carried::Freight),
        "vehicle": carriers(tables, Carried::Vehicle),
        "bases": bases,
        "sheetings": ["prismatic", "beaded"],
    })
}

/// Areas, fuels or ways to carry by name and year, in groups by country, the newest year first.
fn carriers(tables: &Tables, carried: Carried) -> Vec<Value> {
    let list = tables.carriers_of(carried);
    list.iter().map(|one| json!({ "value": one.id, "text": one.label(), "group": one.country })).collect()
}

/// An alternative as an order writes it.
fn as_written(alternative: &Alternative) -> Value {
    let mut map = Map::new();
    map.insert("id".to_owned(), json!(alternative.id));
    map.insert("route".to_owned(), json!(alternative.route.name()));
    if let Some((word, _)) = inks(alternative.route).iter().find(|(_, ink)| *ink == alternative.ink) {
        map.insert("ink".to_owned(), json!(word));
    }
    if alternative.route == RouteName::ScreenPrinting {
        let word = DRYINGS.iter().find(|(_, drying)| *drying == alternative.drying).map(|(word, _)| *word);
        map.insert("drying".to_owned(), json!(word));
    }
    Value::Object(map)
}

#[cfg(test)]
mod tests {
    use super::*;
    use faceload_core::order::{Document, Order};

    #[test]
    fn the_default_alternatives_as_written_read_as_the_defaults() {
        let tables = Tables::embedded().unwrap();
        let order = json!({ "schema_version": 1, "line": [{ "code": "R1-1", "size": "30 in", "quantity": 1 }], "alternative": catalogue(&tables)["alternatives"] });
        let read = Order::read(Document::json("test", &order.to_string()).unwrap(), &tables).unwrap();
        assert_eq!(read.alternatives, default_alternatives());
    }
}
