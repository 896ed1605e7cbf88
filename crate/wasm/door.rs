//! What the page may ask, in Rust's terms.

use std::cell::RefCell;
use std::rc::Rc;

use faceload_core::analysis::{Draws, Kept, Settings, Swing};
use faceload_core::comparison::{CompareFault, Comparison, compare};
use faceload_core::factors::Tables;
use faceload_core::load::{Indicator, Per};
use faceload_core::order::{Boundary, Document, Order, OrderFault, demo};
use faceload_picture::Theme;
use faceload_report::{catalogue as choosing, cautions, explain as explaining, job_lines, labels, result, view as viewing};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value, json};

/// A fault with the field it belongs to, where there is one.
#[derive(Serialize)]
pub struct Fault {
    field: String,
    came: String,
    wanted: String,
    help: String,
    words: String,
}

impl Fault {
    /// What it says.
    pub fn words(&self) -> &str {
        &self.words
    }
}

/// What the page asks of an order.
#[derive(Deserialize)]
pub struct Asked {
    per: String,
    boundary: String,
    pair: (usize, usize),
    indicator: String,
    most: usize,
    rows: Vec<String>,
    moved: Vec<(String, f64)>,
}

/// What is on the screen.
pub struct OnScreen {
    pub comparison: Rc<Comparison>,
    pub pair: (usize, usize),
    pub indicator: Indicator,
    pub swings: Vec<Swing>,
    pub intervals: Vec<Vec<[f64; 5]>>,
    /// What was asked: the order's text, per what, and what is counted.
    of: [String; 3],
    /// What was moved by hand.
    moved: Vec<(String, f64)>,
}

/// Looks at what is on the screen.
pub fn on_screen<T>(look: impl FnOnce(&OnScreen) -> T) -> Option<T> {
    SHOWN.with_borrow(|shown| shown.as_ref().map(look))
}

/// Takes the intervals of the loads on the screen.
pub fn take_intervals(intervals: Vec<Vec<[f64; 5]>>) {
    SHOWN.with_borrow_mut(|shown| {
        if let Some(shown) = shown {
            shown.intervals = intervals;
        }
    });
}

thread_local! {
    static TABLES: RefCell<Option<Tables>> = const { RefCell::new(None) };
    static SHOWN: RefCell<Option<OnScreen>> = const { RefCell::new(None) };
}

pub fn plain(words: String) -> Fault {
    Fault { field: String::new(), came: String::new(), wanted: String::new(), help: String::new(), words }
}

/// Faults of an order, each at its field.
pub fn named(faults: Vec<OrderFault>) -> Vec<Fault> {
    let of = |fault: OrderFault| Fault {
        words: fault.to_string(),
        field: fault.field,
        came: fault.came,
        wanted: fault.wanted,
        help: fault.help,
    };
    faults.into_iter().map(of).collect()
}

pub fn with_tables<T>(run: impl FnOnce(&Tables) -> Result<T, Vec<Fault>>) -> Result<T, Vec<Fault>> {
    TABLES.with_borrow_mut(|tables| {
        if tables.is_none() {
            *tables = Some(Tables::embedded().map_err(|faults| faults.iter().map(|fault| plain(fault.to_string())).collect::<Vec<_>>())?);
        }
        tables.as_ref().map_or_else(|| Err(Vec::new()), run)
    })
}

/// What messages call the order on the screen.
pub const ORDER: &str = "the order";

fn choice<T: Copy>(word: &str, words: &[(&str, T)], what: &str) -> Result<T, Vec<Fault>> {
    words.iter().find(|(known, _)| *known == word).map(|(_, choice)| *choice).ok_or_else(|| vec![plain(format!("`{word}` is no {what}"))])
}

pub fn indicator(id: &str) -> Result<Indicator, Vec<Fault>> {
    Indicator::read(id).ok_or_else(|| vec![plain(format!("`{id}` is no indicator"))])
}

pub fn compared(
    tables: &Tables,
    name: &str,
    order: &str,
    per: &str,
    boundary: &str,
    moved: &[(String, f64)],
) -> Result<Comparison, Vec<Fault>> {
    let per = choice(per, &Per::ALL, "functional unit")?;
    let boundary = choice(boundary, &Boundary::ALL, "boundary")?;
    let document = Document::json(name, order).map_err(|fault| named(vec![fault]))?;
    let order = Order::read(document, tables).and_then(|order| order.moved_by_hand(moved.to_vec(), tables)).map_err(named)?;
    compare(tables, &order, per, boundary).map_err(not_compared)
}

/// Why an order that was understood is not compared.
fn not_compared(fault: CompareFault) -> Vec<Fault> {
    match fault {
        CompareFault::Order(faults) => named(faults),
        other => cautions::fault(&other).into_iter().map(plain).collect(),
    }
}

/// The demos.
pub fn demos() -> String {
    let list: Vec<Value> = demo::DEMOS.iter().map(|demo| json!({ "name": demo.name, "title": demo.title, "order": demo.text })).collect();
    Value::Array(list).to_string()
}

/// The choices an order has.
pub fn catalogue() -> Result<String, Vec<Fault>> {
    with_tables(|tables| Ok(choosing::catalogue(tables).to_string()))
}

/// The labels.
pub fn labels() -> String {
    let map: Map<String, Value> = labels::all().map(|label| (label.id.to_owned(), Value::String(label.text.to_owned()))).collect();
    Value::Object(map).to_string()
}

/// The result as text.
pub fn compare_text(order: &str, per: &str, boundary: &str) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        compared(tables, ORDER, order, per, boundary, &[]).map(|comparison| {
            let pairs = comparison.first_pairs();
            let draws = Draws::make(&comparison, &pairs, Settings::default(), &mut Kept::default(), |_| true);
            result::json(&comparison, &draws, None)
        })
    })
}

/// What the page shows.
pub fn view(order: &str, asked: &Asked) -> Result<String, Vec<Fault>> {
    with_tables(|tables| {
        let of = [order, &asked.per, &asked.boundary].map(str::to_owned);
        let kept = SHOWN.with_borrow(|shown| {
            let shown = shown.as_ref().filter(|shown| shown.of == of)?;
            if shown.moved == asked.moved {
                return Some(Ok(Rc::clone(&shown.comparison)));
            }
            // While a slider moves only values change.
            let moved = if asked.rows.is_empty() { None } else { shown.comparison.moved(tables, &asked.moved) };
            moved.map(|moved| moved.map(Rc::new))
        });
        let comparison = match kept {
            Some(kept) => kept.map_err(not_compared)?,
            None => Rc::new(compared(tables, ORDER, order, &asked.per, &asked.boundary, &asked.moved)?),
        };
        let indicator = indicator(&asked.indicator)?;
        let last = comparison.models.len() - 1;
        let pair = (asked.pair.0.min(last), asked.pair.1.min(last));
        let moved = asked.moved.clone();
        let asked = viewing::Asked { pair, indicator, most: asked.most, rows: asked.rows.clone() };
        let mut swings = viewing::asked_swings(&comparison, &asked);
        let view = viewing::view(tables, &comparison, &asked, &swings);
        let text = serde_json::to_string(&view).map_err(|error| vec![plain(error.to_string())])?;
        swings.truncate(asked.most);
        SHOWN.set(Some(OnScreen { comparison, pair, indicator, swings, intervals: Vec::new(), of, moved }));
        Ok(text)
    })
}

/// How a load on the screen is computed: of all that is compared, or of the job in that place of the line-by-line table.
pub fn explain(alternative: &str, id: &str, job: Option<usize>) -> Result<String, Vec<Fault>> {
    let indicator = indicator(id)?;
    let missing = || vec![plain(format!("`{alternative}` is not on the screen"))];
    with_tables(|tables| {
        let explained = on_screen(|shown| {
            let comparison = &shown.comparison;
            let model = match job {
                Some(job) => job_lines::model(comparison, alternative, job)?,
                None => Rc::new(comparison.model(alternative)?.clone()),
            };
            Some(explaining::explain(tables, &model, indicator, comparison.per))
        });
        serde_json::to_string(&explained.flatten().ok_or_else(missing)?).map_err(|error| vec![plain(error.to_string())])
    })
}

pub fn theme(word: &str) -> Theme {
    match word {
        "dark" => Theme::Dark,
        "paper" => Theme::Paper,
        _ => Theme::Light,
    }
}
