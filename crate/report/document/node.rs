//! The report as a tree: elements, words and pictures. HTML is one way to write it down; a page builds the same tree itself.
//!
//! Words are always words: whatever an order or a table says is escaped when it is written.

use serde::Serialize;

use crate::figure::{Cell, Figure, Table};

/// A part of the report.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Node {
    /// Words.
    Words(String),
    /// An element: its name, its attributes, what is inside.
    Element(&'static str, Vec<(&'static str, String)>, Vec<Node>),
    /// A drawing of ours, as SVG, and what it says in words.
    Picture {
        /// The drawing.
        svg: String,
        /// What it shows.
        words: String,
    },
}

/// An element with what is inside.
pub fn element(name: &'static str, inside: Vec<Node>) -> Node {
    Node::Element(name, Vec::new(), inside)
}

/// An element with words inside.
pub fn words(name: &'static str, text: impl Into<String>) -> Node {
    element(name, vec![Node::Words(text.into())])
}

/// A paragraph.
pub fn paragraph(text: impl Into<String>) -> Node {
    words("p", text)
}

/// A paragraph set back.
pub fn aside(text: impl Into<String>) -> Node {
    paragraph(text).with("class", "quiet")
}

/// A paragraph for each text.
pub fn paragraphs(texts: impl IntoIterator<Item = String>) -> Vec<Node> {
    texts.into_iter().map(paragraph).collect()
}

/// A list; nothing where it is empty.
pub fn list(texts: impl IntoIterator<Item = String>) -> Vec<Node> {
    let items: Vec<Node> = texts.into_iter().map(|text| words("li", text)).collect();
    if items.is_empty() { Vec::new() } else { vec![element("ul", items)] }
}

/// Terms and what is said of each.
pub fn terms(pairs: impl IntoIterator<Item = (String, String)>) -> Node {
    element("dl", pairs.into_iter().flat_map(|(term, text)| [words("dt", term), words("dd", text)]).collect())
}

/// A table, which may be wider than a small screen.
pub fn table(table: &Table) -> Node {
    let is_number = |column: usize| {
        let mut filled = table.rows.iter().filter_map(|row| row.get(column)).filter(|cell| !cell.shown().is_empty()).peekable();
        filled.peek().is_some() && filled.all(|cell| matches!(cell, Cell::Number { .. }))
    };
    let right: Vec<bool> = (0..table.columns.len()).map(is_number).collect();
    let set = |node: Node, column: usize| if right.get(column) == Some(&true) { node.with("class", "number") } else { node };
    let head = table.columns.iter().enumerate().map(|(column, name)| {
        if name.is_empty() { element("td", Vec::new()) } else { set(words("th", name.as_str()).with("scope", "col"), column) }
    });
    let rows = table.rows.iter().map(|row| {
        let cells = row.iter().enumerate().map(|(column, cell)| match (column, cell.shown()) {
            (0, shown) if !shown.is_empty() => words("th", shown).with("scope", "row"),
            (_, shown) => set(words("td", shown), column),
        });
        element("tr", cells.collect())
    });
    let inside = vec![
        words("caption", table.caption.as_str()),
        element("thead", vec![element("tr", head.collect())]),
        element("tbody", rows.collect()),
    ];
    element("div", vec![element("table", inside)])
        .with("class", "wide")
        .with("tabindex", "0")
        .with("role", "group")
        .with("aria-label", table.caption.as_str())
}

/// A figure under a heading of this level: its sentences, its picture, its tables.
pub fn figure(level: &'static str, figure: &Figure, picture: Option<Node>) -> Vec<Node> {
    let mut inside = vec![words(level, figure.heading.as_str())];
    inside.extend(paragraphs(figure.sentences.iter().cloned()));
    inside.extend(picture);
    inside.extend(figure.tables.iter().map(table));
    inside
}

/// A picture with what it says; where it could not be drawn, the reason.
pub fn picture(drawn: Result<String, String>, said: &str) -> Node {
    match drawn {
        Ok(svg) => element("figure", vec![Node::Picture { svg, words: said.to_owned() }]),
        Err(reason) => aside(format!("No picture: {reason}.")),
    }
}

impl Node {
    /// With an attribute.
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        if let Self::Element(_, attributes, _) = &mut self {
            attributes.push((name, value.into()));
        }
        self
    }

    /// Written as HTML.
    pub fn write(&self, out: &mut String) {
        match self {
            // A per cent sign stays on the line of its number.
            Self::Words(text) => escape(&text.replace(" %", "\u{a0}%"), out),
            Self::Picture { svg, words } => {
                // What our own drawing is called is what it says.
                let (head, body) = svg.split_once('>').unwrap_or(("<svg", ""));
                let head = head.split(" role=").next().unwrap_or(head);
                out.push_str(head);
                out.push_str(" role=\"img\" aria-label=\"");
                escape(words, out);
                out.push_str("\">");
                out.push_str(body.trim_end());
            }
            Self::Element(name, attributes, inside) => {
                out.push('<');
                out.push_str(name);
                for (name, value) in attributes {
                    out.push(' ');
                    out.push_str(name);
                    out.push_str("=\"");
                    escape(value, out);
                    out.push('"');
                }
                out.push('>');
                for node in inside {
                    node.write(out);
                }
                out.push_str("</");
                out.push_str(name);
                out.push('>');
                if !matches!(*name, "td" | "th" | "b" | "a" | "span") {
                    out.push('\n');
                }
            }
        }
    }
}

/// Words as HTML writes them.
pub fn escape(text: &str, out: &mut String) {
    for letter in text.chars() {
        match letter {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            letter => out.push(letter),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(node: &Node) -> String {
        let mut out = String::new();
        node.write(&mut out);
        out
    }

    #[test]
    fn words_of_an_order_stay_words() {
        let node = paragraph("<script>x</script> & \"y\"").with("title", "\"><b>");
        assert_eq!(written(&node), "<p title=\"&quot;&gt;&lt;b&gt;\">&lt;script&gt;x&lt;/script&gt; &amp; &quot;y&quot;</p>\n");
    }

    #[test]
    fn a_picture_is_called_what_it_says() {
        let node =
            Node::Picture { svg: "<svg width=\"1\" role=\"img\" aria-label=\"\">\n<g/></svg>\n".to_owned(), words: "a < b".to_owned() };
        assert_eq!(written(&node), "<svg width=\"1\" role=\"img\" aria-label=\"a &lt; b\">\n<g/></svg>");
    }

    #[test]
    fn a_column_of_numbers_stands_to_the_right_and_an_empty_one_does_not() {
        let node = table(&Table {
            columns: vec![String::new(), "kg".to_owned(), "note".to_owned()],
            rows: vec![vec!["ink".into(), Cell::number(1.0, "1".to_owned()), "".into()]],
            ..Table::default()
        });
        let html = written(&node);
        assert!(html.contains("<th scope=\"col\" class=\"number\">kg</th>") && html.contains("<td class=\"number\">1</td>"), "{html}");
        assert!(html.contains("<th scope=\"col\">note</th>") && html.contains("<th scope=\"row\">ink</th>"), "{html}");
    }
}
