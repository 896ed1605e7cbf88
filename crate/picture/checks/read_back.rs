//! Reads a drawing back from its SVG.
use crate::UNITS_PER_PX;
use crate::text_width::width;

/// One element of a drawing: its name, attributes and text.
pub struct Element {
    pub name: String,
    attributes: Vec<(String, String)>,
    pub text: String,
}

impl Element {
    pub fn get(&self, key: &str) -> &str {
        self.attributes.iter().find(|(k, _)| k == key).map_or("", |(_, v)| v.as_str())
    }

    /// A length in CSS px.
    pub fn px(&self, key: &str) -> f64 {
        let value: f64 = self.get(key).parse().unwrap_or_else(|_| panic!("{} {key}", self.name));
        value / f64::from(UNITS_PER_PX)
    }

    /// Left, top, right, bottom of a text by the width table, of a box or of a disc.
    pub fn extent(&self) -> (f64, f64, f64, f64) {
        if self.name == "rect" {
            let (x, y) = (self.px("x"), self.px("y"));
            return (x, y, x + self.px("width"), y + self.px("height"));
        }
        if self.name == "circle" {
            let (x, y, r) = (self.px("cx"), self.px("cy"), self.px("r"));
            return (x - r, y - r, x + r, y + r);
        }
        let size = self.px("font-size");
        let wide = width(self.text.trim(), size, self.get("font-weight") == "bold");
        let left = match self.get("text-anchor") {
            "start" => self.px("x"),
            "middle" => self.px("x") - wide / 2.0,
            _ => self.px("x") - wide,
        };
        // Letters with descenders reach over about one letter size around the middle.
        let middle = self.px("y") - 0.085 * size;
        (left, middle - size / 2.0, left + wide, middle + size / 2.0)
    }
}

/// Reads a drawing and refuses one that is not well-formed: names nest, values are quoted, and
/// `&` starts one of the five entities.
pub fn elements(svg: &str) -> Vec<Element> {
    let mut out: Vec<Element> = Vec::new();
    let mut open: Vec<usize> = Vec::new();
    let mut rest = svg;
    while let Some(at) = rest.find('<') {
        let text = plain(&rest[..at]);
        match open.last() {
            Some(i) => out[*i].text.push_str(&text),
            None => assert!(text.trim().is_empty(), "text outside: {text}"),
        }
        let end = rest.find('>').expect("a tag ends");
        let tag = &rest[at + 1..end];
        rest = &rest[end + 1..];
        if let Some(name) = tag.strip_prefix('/') {
            let i = open.pop().expect("an open element");
            assert_eq!(out[i].name, name);
            continue;
        }
        let (tag, closed) = tag.strip_suffix('/').map_or((tag, false), |t| (t, true));
        let (name, mut list) = tag.split_once(' ').unwrap_or((tag, ""));
        let mut attributes = Vec::new();
        while !list.trim().is_empty() {
            let (key, after) = list.trim().split_once("=\"").expect("a quoted value");
            let (value, after) = after.split_once('"').expect("a closing quote");
            attributes.push((key.to_owned(), plain(value)));
            list = after;
        }
        if !closed {
            open.push(out.len());
        }
        out.push(Element { name: name.to_owned(), attributes, text: String::new() });
    }
    assert!(open.is_empty() && rest.trim().is_empty(), "left open: {rest}");
    out
}

/// Text with its entities resolved.
fn plain(text: &str) -> String {
    assert!(!text.contains(|c: char| c.is_control() && c != '\n'), "{text:?}");
    let mut parts = text.split('&');
    let mut out = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        let (name, after) = part.split_once(';').expect("an entity ends");
        let entities = [("amp", '&'), ("lt", '<'), ("gt", '>'), ("quot", '"'), ("apos", '\'')];
        out.push(entities.iter().find(|(n, _)| *n == name).expect("a known entity").1);
        out.push_str(after);
    }
    out
}
