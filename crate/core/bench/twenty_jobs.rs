//! An invented order of twenty jobs of every kind.

use crate::envelope::order;

/// Twenty lines, none of which is made together with another.
pub fn twenty_jobs() -> String {
    let mut lines = Vec::new();
    for (size, quantity) in [("24 in", 12), ("30 in", 100), ("36 in", 20)] {
        lines.push(format!(r#"{{"label":"stop","code":"R1-1","size":"{size}","quantity":{quantity}}}"#));
    }
    for (size, quantity) in [("18 x 24 in", 40), ("24 x 30 in", 1000), ("30 x 36 in", 15), ("36 x 48 in", 6)] {
        lines.push(format!(r#"{{"label":"speed limit","code":"R2-1","size":"{size}","quantity":{quantity}}}"#));
    }
    for artwork in ["A", "B", "C", "D", "E", "F"] {
        lines.push(format!(r#"{{"label":"warning {artwork}","code":"W1-2","artwork":"{artwork}","size":"30 in","quantity":4}}"#));
    }
    for (size, quantity) in [("30 x 6 in", 60), ("36 x 9 in", 40), ("42 x 9 in", 25)] {
        lines.push(street_names(size, quantity));
    }
    for (size, quantity) in [("12 x 8 ft", 4), ("10 x 5 ft", 2)] {
        lines.push(format!(
            r#"{{"label":"guide","shape":"rectangle","size":"{size}","colours":{{"green":"80 %","white":"20 %"}},"rim":"white","quantity":{quantity},"designs":{quantity},"characters":40,"blank":"panels 0.125 in"}}"#
        ));
    }
    lines.push(
        r#"{"label":"harbour trail","shape":"rectangle","size":"24 x 30 in","corner":"1.5 in","colours":{"blue":"38 %","green":"22 %","black":"9 %","white":"31 %"},"rim":"white","quantity":1}"#.to_owned(),
    );
    lines.push(r#"{"label":"no entry","shape":"disc","size":"600 mm","colours":{"red":"80 %","white":"20 %"},"rim":"red","quantity":20,"stock":true}"#.to_owned());
    order(&lines)
}

fn street_names(size: &str, quantity: u32) -> String {
    format!(
        r#"{{"label":"street names","shape":"rectangle","size":"{size}","corner":"1.5 in","colours":{{"green":"72 %","white":"28 %"}},"rim":"white","quantity":{quantity},"designs":{quantity},"sides":2,"characters":12,"cut_length":"6 m"}}"#
    )
}
