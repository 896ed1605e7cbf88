//! Demo orders: the invented Tern Harbour County and its sign shop.

/// A worked order to start from.
#[derive(Debug, Clone, Copy)]
pub struct Demo {
    /// The name a command takes.
    pub name: &'static str,
    /// What it is, for people.
    pub title: &'static str,
    /// The order as JSON.
    pub text: &'static str,
}

/// Every demo; the first is what a command without an order shows.
pub const DEMOS: [Demo; 3] = [
    Demo { name: "stop", title: "100 stop signs", text: include_str!("stop.json") },
    Demo { name: "diamonds", title: "24 warning diamonds of 6 designs, made to order", text: include_str!("diamonds.json") },
    Demo { name: "diamonds-stock", title: "24 warning diamonds of 6 designs, from stock", text: include_str!("diamonds-stock.json") },
];

/// The demo of that name.
pub fn find(name: &str) -> Option<&'static Demo> {
    DEMOS.iter().find(|demo| demo.name == name)
}
