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
pub const DEMOS: [Demo; 9] = [
    Demo { name: "stop", title: "100 stop signs", text: include_str!("stop.json") },
    Demo { name: "diamonds", title: "24 warning diamonds of 6 designs, made to order", text: include_str!("diamonds.json") },
    Demo { name: "diamonds-stock", title: "24 warning diamonds of 6 designs, from stock", text: include_str!("diamonds-stock.json") },
    Demo { name: "blades", title: "40 two-sided street names of 40 designs", text: include_str!("blades.json") },
    Demo { name: "guide", title: "4 guide signs on panels", text: include_str!("guide.json") },
    Demo { name: "custom", title: "one custom sign in three colours", text: include_str!("custom.json") },
    Demo { name: "speed", title: "1 000 speed-limit signs for stock", text: include_str!("speed.json") },
    Demo { name: "county", title: "all of these as one order", text: include_str!("county.json") },
    Demo { name: "metric", title: "triangles, discs and octagons, metric", text: include_str!("metric.json") },
];

/// The demo of that name.
pub fn find(name: &str) -> Option<&'static Demo> {
    DEMOS.iter().find(|demo| demo.name == name)
}
