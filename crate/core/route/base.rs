//! The base: which colour of sheeting a face is made on, and what is then printed.

use super::Reason;
use crate::inventory::Printed;
use crate::order::{Base, Colour, Line};

/// A base colour and the colours printed on it.
type OnBase = (Colour, Vec<Printed>);

/// The colours printed on a base.
fn printed_on(line: &Line, base: Colour) -> Vec<Printed> {
    line.colours
        .iter()
        .filter(|(colour, _)| **colour != base)
        .map(|(colour, coverage)| Printed { colour: *colour, coverage: *coverage })
        .collect()
}

/// The base with the least printed colour, among white and the sign's own colours sold as
/// sheeting; `white_only` for a printer that stocks no other. Fluorescent exists as sheeting only.
pub(super) fn choose(line: &Line, white_only: bool) -> Result<OnBase, Reason> {
    let fluorescent: Vec<Colour> = line.colours.keys().copied().filter(|colour| colour.is_fluorescent()).collect();
    let candidates = match (line.base, &fluorescent[..]) {
        (_, [_, _, ..]) => return Err(Reason::TwoBases),
        (Base::Of(colour), [only]) if colour != *only => return Err(Reason::TwoBases),
        (Base::Of(colour), _) => vec![colour],
        (Base::Any, [colour]) => vec![*colour],
        (Base::Any, _) if white_only => vec![Colour::White],
        (Base::Any, _) => [Colour::White]
            .into_iter()
            .chain(line.colours.keys().copied().filter(|colour| colour.is_sold_as_base() && *colour != Colour::White))
            .collect(),
    };
    let area = |printed: &[Printed]| printed.iter().map(|one| one.coverage).sum::<f64>();
    candidates
        .into_iter()
        .map(|base| (base, printed_on(line, base)))
        .min_by(|a, b| area(&a.1).total_cmp(&area(&b.1)))
        .filter(|(_, printed)| !printed.is_empty())
        .ok_or(Reason::NothingPrinted)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::factors::Tables;
    use crate::order::{Document, Order};

    fn line(code: &str) -> Line {
        let tables = Tables::embedded().unwrap();
        let text = format!(r#"{{"schema_version":1,"line":[{{"code":"{code}","size":"30 in","quantity":1}}]}}"#);
        Order::read(Document::json("test", &text).unwrap(), &tables).unwrap().lines[0].clone()
    }

    #[test]
    fn a_warning_sign_is_black_on_yellow_sheeting_or_all_ink_on_white() {
        let (base, printed) = choose(&line("W1-2"), false).unwrap();
        assert_eq!((base, printed.len()), (Colour::Yellow, 1));
        let (base, printed) = choose(&line("W1-2"), true).unwrap();
        assert_eq!((base, printed.len()), (Colour::White, 2));
        assert!((printed.iter().map(|one| one.coverage).sum::<f64>() - 1.0).abs() < 1e-9);
    }
}
