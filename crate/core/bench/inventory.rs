//! Invented order files as long as a town's inventory: a row for every sign that stands.

use crate::envelope::order;

const STREET: &str = r#""shape":"rectangle","corner":"1.5 in","colours":{"green":"72 %","white":"28 %"},"rim":"white","cut_length":"5 m""#;

/// So many lines, one sign each; one in a hundred has artwork of its own, so jobs grow with the lines.
pub fn inventory(lines: usize) -> String {
    let line = |number: usize| {
        let label = format!("post {number}");
        match number % 10 {
            0 | 1 => format!(r#"{{"label":"{label}","code":"R1-1","size":"{} in","quantity":1}}"#, [24, 30, 36][number % 3]),
            2 => {
                format!(r#"{{"label":"{label}","code":"R2-1","size":"{} in","quantity":1}}"#, ["18 x 24", "24 x 30", "30 x 36"][number % 3])
            }
            3 => format!(r#"{{"label":"{label}","code":"W1-2","size":"{} in","quantity":1}}"#, [24, 30, 36][number % 3]),
            4 if number % 100 == 4 => {
                format!(r#"{{"label":"{label}",{STREET},"size":"36 x 9 in","quantity":1,"sides":2,"artwork":"street {number}"}}"#)
            }
            4..7 => format!(r#"{{"label":"{label}",{STREET},"size":"{} x 6 in","quantity":1,"sides":2}}"#, 24 + 6 * (number % 4)),
            _ => format!(
                r#"{{"label":"{label}","shape":"rectangle","size":"12 x 18 in","corner":"1.5 in","colours":{{"red":"30 %","white":"70 %"}},"rim":"white","quantity":1,"stock":true,"artwork":"no parking {}"}}"#,
                number % 7
            ),
        }
    };
    order(&(1..=lines).map(line).collect::<Vec<_>>())
}
