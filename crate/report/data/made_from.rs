//! What a result was made from: orders, own tables, what was asked, how draws were made; written down and read back.

use faceload_core::analysis::{Design, Draws, Kept, NUMBERS, Settings};
use faceload_core::comparison::{Comparison, compare};
use faceload_core::factors::{FILES, Tables, Texts};
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order};
use serde_json::{Map, Value, json};

use crate::cautions;

/// What a result looks at closely.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Looked {
    /// A pair, where one was asked for.
    pub pair: Option<(usize, usize)>,
    /// An indicator.
    pub indicator: Indicator,
}

/// The draws behind a record: of the table, of every pair, and of the pair looked at where it is the other way round.
pub fn drawn(comparison: &Comparison, looked: Looked, settings: Settings, go_on: impl FnMut(usize) -> bool) -> Draws {
    let mut pairs = comparison.pairs();
    pairs.extend(looked.pair.filter(|pair| !pairs.contains(pair)));
    Draws::make(comparison, &pairs, settings, &mut Kept::default(), go_on)
}

/// It as a tree.
pub(super) fn tree(tables: &Tables, comparison: &Comparison, draws: &Draws, looked: Looked) -> Value {
    let order = &comparison.order;
    // An order that names itself is the same order in whatever file it lies.
    let name = |one: &Document| one.value["name"].as_str().unwrap_or(one.file_name()).to_owned();
    let orders: Vec<Value> = order.documents.iter().map(|one| json!({ "name": name(one), "order": one.value })).collect();
    let mut own = Map::new();
    if let Some(mut texts) = tables.own_texts.clone() {
        for file in FILES {
            let text = texts.of(file).map(std::mem::take).filter(|text| !text.is_empty());
            own.extend(text.map(|text| (file.to_owned(), Value::String(text))));
        }
    }
    let moved: Vec<Value> = order.moved.iter().map(|(id, value)| json!({ "id": id, "value": value })).collect();
    let id = |place: usize| comparison.models[place].alternative.id.as_str();
    json!({
        "orders": orders,
        "own_tables": own,
        "moved": moved,
        "per": comparison.per.name(),
        "boundary": comparison.boundary.name(),
        "between": looked.pair.map(|(a, b)| [id(a), id(b)]),
        "indicator": looked.indicator.id(),
        "draws": { "number": draws.asked, "seed": draws.settings.seed, "design": draws.settings.design.name() },
    })
}

/// Everything that a record was made from, understood again.
pub struct MadeFrom {
    /// The tables, own rows included.
    pub tables: Tables,
    /// The comparison.
    pub comparison: Comparison,
    /// What is looked at.
    pub looked: Looked,
    /// How draws are made.
    pub settings: Settings,
}

/// A field that is not there or not as it must be.
fn unfit(field: &str, came: Option<&Value>, wanted: &str) -> Vec<String> {
    let came = came.map_or_else(|| "nothing".to_owned(), |value| format!("`{}`", value.to_string().chars().take(60).collect::<String>()));
    vec![format!("made_from.{field}: {came} where {wanted} was wanted; take the file as it was made")]
}

fn word<T: Copy>(tree: &Value, field: &'static str, words: &[(&str, T)], wanted: &str) -> Result<T, Vec<String>> {
    let found = tree[field].as_str().and_then(|word| words.iter().find(|(known, _)| *known == word));
    found.map(|(_, meaning)| *meaning).ok_or_else(|| unfit(field, tree.get(field), wanted))
}

/// Reads it back, on these built-in tables.
pub(super) fn read(tree: &Value, built_in: &Tables) -> Result<MadeFrom, Vec<String>> {
    let tables = tables(tree, built_in)?;
    let order = order(tree, &tables)?;
    let per = word(tree, "per", &Per::ALL, "a functional unit")?;
    let boundary = word(tree, "boundary", &Boundary::ALL, "a boundary")?;
    let comparison = compare(&tables, &order, per, boundary).map_err(|fault| cautions::fault(&fault))?;
    let place = |id: &Value| comparison.models.iter().position(|model| Some(model.alternative.id.as_str()) == id.as_str());
    let pair = match &tree["between"] {
        Value::Null => None,
        Value::Array(ids) if ids.len() == 2 => {
            Some(place(&ids[0]).zip(place(&ids[1])).ok_or_else(|| unfit("between", tree.get("between"), "two alternatives of the order"))?)
        }
        other => return Err(unfit("between", Some(other), "two alternatives of the order")),
    };
    let indicator =
        tree["indicator"].as_str().and_then(Indicator::read).ok_or_else(|| unfit("indicator", tree.get("indicator"), "an indicator"))?;
    let made = &tree["draws"];
    let number = made["number"].as_u64().and_then(|number| usize::try_from(number).ok()).filter(|number| NUMBERS.contains(number));
    let number = number.ok_or_else(|| unfit("draws.number", made.get("number"), &crate::sureness::numbers(&NUMBERS)))?;
    let seed = made["seed"].as_u64().ok_or_else(|| unfit("draws.seed", made.get("seed"), "a whole number"))?;
    let design = [Design::LatinHypercube, Design::Plain].into_iter().find(|design| Some(design.name()) == made["design"].as_str());
    let design = design.ok_or_else(|| unfit("draws.design", made.get("design"), "a design of draws"))?;
    Ok(MadeFrom {
        looked: Looked { pair, indicator },
        settings: Settings { number, seed, design, ..Settings::default() },
        tables,
        comparison,
    })
}

fn tables(tree: &Value, built_in: &Tables) -> Result<Tables, Vec<String>> {
    let own = tree["own_tables"].as_object().ok_or_else(|| unfit("own_tables", tree.get("own_tables"), "own tables by file name"))?;
    if own.is_empty() {
        return Ok(built_in.clone());
    }
    let mut texts = Texts::default();
    for (file, text) in own {
        let place = texts.of(file).zip(text.as_str());
        let (place, text) = place.ok_or_else(|| unfit("own_tables", Some(&Value::String(file.clone())), "the text of a table"))?;
        text.clone_into(place);
    }
    built_in.with_own("own tables", &texts).map_err(|faults| faults.iter().map(ToString::to_string).collect())
}

fn order(tree: &Value, tables: &Tables) -> Result<Order, Vec<String>> {
    let orders = tree["orders"].as_array().filter(|orders| !orders.is_empty());
    let orders = orders.ok_or_else(|| unfit("orders", tree.get("orders"), "a list of orders"))?;
    let mut sum: Option<Order> = None;
    for one in orders {
        let name = one["name"].as_str().ok_or_else(|| unfit("orders", Some(one), "an order with its name"))?;
        let document = Document::json(name, &one["order"].to_string()).map_err(|fault| vec![fault.to_string()])?;
        let order = Order::read(document, tables).map_err(|faults| cautions::faults(&faults))?;
        sum = Some(match sum {
            None => order,
            Some(before) => before.joined_by(order).map_err(|fault| vec![fault.to_string()])?,
        });
    }
    let order = sum.ok_or_else(Vec::new)?;
    let moved = tree["moved"].as_array().ok_or_else(|| unfit("moved", tree.get("moved"), "a list of inputs"))?;
    let moved = moved.iter().map(|one| Some((one["id"].as_str()?.to_owned(), one["value"].as_f64()?))).collect::<Option<Vec<_>>>();
    let moved = moved.ok_or_else(|| unfit("moved", tree.get("moved"), "a list of inputs with values"))?;
    order.moved_by_hand(moved, tables).map_err(|faults| cautions::faults(&faults))
}
