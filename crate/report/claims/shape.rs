//! Shapes of a text that a list of words cannot tell: a colour from a claim, a comparison from half of one.

use super::rule::Around;
use super::tokens::{Token, fits, places};

/// The first of some phrases that stands in a text, in backticks.
pub(super) fn first(list: &[Token], phrases: &[&str]) -> Option<String> {
    phrases.iter().find_map(|phrase| places(list, phrase).first().map(|place| said(list, *place)))
}

/// The same, where it is not denied.
pub(super) fn first_undenied(list: &[Token], phrases: &[&str]) -> Option<String> {
    let found = phrases.iter().flat_map(|phrase| places(list, phrase)).filter(|(at, _)| !is_denied(list, *at)).min()?;
    Some(said(list, found))
}

fn said(list: &[Token], (from, to): (usize, usize)) -> String {
    let words: Vec<&str> = list[from..=to].iter().map(|token| token.word.as_str()).collect();
    format!("`{}`", words.join(" "))
}

fn has(list: &[Token], pattern: &str) -> bool {
    !places(list, pattern).is_empty()
}

/// Words that may stand between a denial and what it denies: `nothing here is a statement of conformity or durability`.
const BETWEEN: [&str; 22] = [
    "a",
    "an",
    "the",
    "be",
    "been",
    "yet",
    "here",
    "is",
    "are",
    "statement",
    "of",
    "by",
    "or",
    "nor",
    "for",
    "public",
    "comparative",
    "third",
    "conform*",
    "certif*",
    "durab*",
    "verif*",
];

/// Whether a denial leads up to a word, with nothing between that could make it half a denial.
fn is_denied(list: &[Token], at: usize) -> bool {
    for token in list[..at].iter().rev() {
        if token.ends {
            return false;
        }
        if ["not", "no", "nothing", "neither", "nor"].contains(&token.word.as_str()) {
            return true;
        }
        if !BETWEEN.iter().any(|word| fits(&token.word, word)) {
            return false;
        }
    }
    false
}

/// Names of sign colours, and what may stand between a colour and what is coloured: `green and white guide sign`.
const COLOURS: [&str; 9] = ["white", "yellow", "orange", "red", "blue", "brown", "black", "pink", "purple"];
const JOINING: [&str; 10] = ["and", "or", "on", "with", "guide", "street", "name", "direct", "applied", "retroreflective"];
/// What a colour of is never a claim.
const COLOURED: [&str; 15] = [
    "film*",
    "sheeting*",
    "ink*",
    "legend*",
    "border*",
    "copy",
    "ground*",
    "background*",
    "overlay*",
    "printed",
    "colour*",
    "color*",
    "letter*",
    "panel*",
    "rim*",
];
/// What can be green in both meanings; a claim where somebody praises it.
const SIGNS: [&str; 4] = ["sign", "signs", "face", "faces"];
const PRAISING: [&str; 9] = ["our", "your", "go", "choose", "buy", "truly", "really", "more", "most"];

/// `green` and its kin where they name no colour of a sign or film.
pub(super) fn green(list: &[Token], _: Around<'_>) -> Option<String> {
    let word = |at: usize| list.get(at).map_or("", |token| token.word.as_str());
    let is_colour = |at: usize| {
        let before = |steps: usize| at.checked_sub(steps).filter(|from| list[*from..at].iter().all(|token| !token.ends)).map_or("", word);
        if matches!(before(1), "yellow" | "fluorescent") || (matches!(before(1), "and" | "on" | "or") && COLOURS.contains(&before(2))) {
            return true;
        }
        if list[at].ends {
            return false;
        }
        if matches!(word(at + 1), "and" | "on" | "or") && COLOURS.contains(&word(at + 2)) {
            return true;
        }
        let noun = (at + 1..at + 7).map(word).find(|word| !COLOURS.contains(word) && !JOINING.contains(word)).unwrap_or("");
        COLOURED.iter().any(|pattern| fits(noun, pattern)) || (SIGNS.contains(&noun) && !PRAISING.contains(&before(1)))
    };
    let claims = |at: &usize| matches!(word(*at), "greener" | "greenest") || (word(*at) == "green" && !is_colour(*at));
    (0..list.len()).find(claims).map(|at| said(list, (at, at)))
}

/// A benefit for the environment as a whole, in no indicator.
pub(super) fn general_benefit(list: &[Token], _: Around<'_>) -> Option<String> {
    const WHOLE: [&str; 9] = ["environment*", "planet*", "earth", "climate", "nature", "ecosystem*", "impact*", "footprint*", "pollution"];
    const GOOD: [&str; 24] = [
        "better",
        "best",
        "good",
        "great",
        "friendl*",
        "kind",
        "kinder",
        "safe",
        "safer",
        "lower",
        "lowest",
        "less",
        "least",
        "reduc*",
        "sav*",
        "protect*",
        "gentle",
        "conscious*",
        "responsib*",
        "help*",
        "benefit*",
        "small*",
        "low",
        "preferable",
    ];
    let is = |token: &Token, words: &[&str]| words.iter().any(|word| fits(&token.word, word));
    (0..list.len()).filter(|at| is(&list[*at], &WHOLE)).find_map(|at| {
        let from = at.saturating_sub(4);
        let near = (from..list.len().min(at + 5)).find(|other| is(&list[*other], &GOOD))?;
        Some(said(list, (at.min(near), at.max(near))))
    })
}

/// Offsetting of emissions; offset printing is a trade.
pub(super) fn neutral(list: &[Token], _: Around<'_>) -> Option<String> {
    let of_gas = ["carbon", "climate", "co2", "co2e", "emission*", "greenhouse"].iter().any(|word| has(list, word));
    let neutral = first(list, &["net zero", "zero carbon", "zero emission*", "carbon negative", "climate positive", "carbon positive"]);
    neutral.or_else(|| first(list, &["neutral*", "offset*", "compensat*"]).filter(|_| of_gas))
}

/// A promise about loads to come.
pub(super) fn future(list: &[Token], _: Around<'_>) -> Option<String> {
    let of_load = ["energy", "water", "solvent*", "waste", "co2e", "co2", "emission*", "environment*", "climate", "carbon"];
    let of_load = of_load.iter().any(|word| has(list, word));
    first(list, &["will", "by 20*", "target*", "commit*", "pledge*", "goal*", "going to", "on track"]).filter(|_| of_load)
}

/// Whether a text compares: a word of more or less that is no number's (`more than 99 of 100`).
fn compares(list: &[Token]) -> Option<String> {
    const WORDS: [&str; 26] = [
        "less",
        "lower",
        "lowest",
        "least",
        "fewer",
        "fewest",
        "better",
        "best",
        "worse",
        "worst",
        "higher",
        "highest",
        "more",
        "most",
        "smaller",
        "smallest",
        "greater",
        "reduc*",
        "saves",
        "saving*",
        "halv*",
        "improv*",
        "outperform*",
        "beats",
        "cuts",
        "half",
    ];
    let number = |at: usize| list.get(at).is_some_and(|token| token.word.starts_with(|c: char| c.is_ascii_digit()));
    let found = (0..list.len()).find(|at| {
        let word = list[*at].word.as_str();
        let counted =
            matches!(word, "more" | "fewer" | "less") && list.get(at + 1).is_some_and(|next| next.word == "than") && number(at + 2);
        let bound = matches!(word, "least" | "most") && at.checked_sub(1).is_some_and(|before| list[before].word == "at");
        WORDS.iter().any(|pattern| fits(word, pattern)) && !counted && !bound
    });
    let equal = || first(list, &["about the same", "same as", "as good as", "equal to", "no worse", "no clear difference"]);
    found.map(|at| said(list, (at, at))).or_else(equal)
}

/// What a comparison that is sent alone lacks.
fn lacks(list: &[Token], around: Around<'_>, missing: impl Fn(&[&str]) -> Option<&'static str>) -> Option<String> {
    let Around::Alone(names) = around else { return None };
    let compared = compares(list)?;
    missing(names).map(|what| format!("{compared} without {what}"))
}

/// Against what, in which indicator, per what, for how long.
pub(super) fn without_basis(list: &[Token], around: Around<'_>) -> Option<String> {
    lacks(list, around, |names| {
        let named = names
            .iter()
            .filter(|name| has(list, &super::tokens::tokens(name).iter().map(|one| one.word.as_str()).collect::<Vec<_>>().join(" ")));
        let per = ["per m2", "per square metre", "per square meter", "whole order"].iter().any(|words| has(list, words));
        if !INDICATORS.iter().any(|(_, words)| words.iter().any(|word| has(list, word))) {
            return Some("an indicator");
        }
        if !has(list, "than") && named.count() < 2 {
            return Some("what it is compared with");
        }
        if !per {
            return Some("a unit, such as `per m2 of face`");
        }
        (!has(list, "in service")).then_some("how long both are kept in service")
    })
}

/// In how many draws.
pub(super) fn without_share(list: &[Token], around: Around<'_>) -> Option<String> {
    let sure = || has(list, "draws") || has(list, "range");
    lacks(list, around, |_| (!sure()).then_some("a range or a share of draws"))
}

/// What it rests on.
pub(super) fn without_method(list: &[Token], around: Around<'_>) -> Option<String> {
    lacks(list, around, |_| (!has(list, "assumptions") || !has(list, "tables")).then_some("the assumptions and tables that it rests on"))
}

/// That no panel reviewed it.
pub(super) fn without_limits(list: &[Token], around: Around<'_>) -> Option<String> {
    let said = has(list, "not verified by a third party") && has(list, "not a public comparative assertion");
    lacks(list, around, |_| (!said).then_some("its limits"))
}

const INDICATORS: [(&str, &[&str]); 5] =
    [("energy", &["energy"]), ("water", &["water"]), ("solvent", &["solvent", "voc"]), ("waste", &["waste"]), ("CO2e", &["co2e"])];

/// What got worse beside what got better.
pub(super) fn without_the_others(list: &[Token], around: Around<'_>) -> Option<String> {
    let unsaid = INDICATORS.iter().any(|(_, words)| !words.iter().any(|word| has(list, word)));
    lacks(list, around, |_| unsaid.then_some("the other indicators"))
}

/// The whole sign, product or firm, where the face was reckoned.
pub(super) fn whole_product(list: &[Token], around: Around<'_>) -> Option<String> {
    if !matches!(around, Around::Alone(_)) || has(list, "face") || has(list, "faces") {
        return None;
    }
    let whole = first(list, &["sign", "signs", "product*", "company", "firm", "plant", "package*", "brand*"])?;
    (compares(list).is_some() || INDICATORS.iter().any(|(_, words)| words.iter().any(|word| has(list, word)))).then_some(whole)
}
