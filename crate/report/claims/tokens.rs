//! A text as its words, for the wording guard: small letters, apart at spaces, hyphens and signs, each with
//! whether a sentence or part of one ends behind it.

/// One word.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Token {
    /// In small letters; `m\u{b2}` is `m2`.
    pub word: String,
    /// Whether a full stop, semicolon, colon or the text's end follows.
    pub ends: bool,
}

/// Whether a sentence goes on behind the end of a line, as in a text that was broken into lines to fit.
fn goes_on(rest: &[char]) -> bool {
    rest.iter().find(|letter| !matches!(letter, ' ' | '\t' | '\r')).is_some_and(|letter| letter.is_lowercase() || letter.is_ascii_digit())
}

/// The words of a text.
///
/// ```
/// use faceload_report::claims::tokens::tokens;
/// let words: Vec<String> = tokens("Eco-friendly: 4.3\u{202f}kg CO\u{2082}e.").into_iter().map(|token| token.word).collect();
/// assert_eq!(words, ["eco", "friendly", "4.3", "kg", "co2e"]);
/// ```
pub fn tokens(text: &str) -> Vec<Token> {
    let mut list: Vec<Token> = Vec::new();
    let mut word = String::new();
    let letters: Vec<char> = text.chars().filter(|c| !matches!(c, '\u{ad}' | '\u{200b}'..='\u{200d}' | '\u{2060}' | '\u{feff}')).collect();
    let mut finish = |word: &mut String| {
        if !word.is_empty() {
            list.push(Token { word: std::mem::take(word), ends: false });
        }
        list.len()
    };
    let mut ends = Vec::new();
    for (at, letter) in letters.iter().enumerate() {
        let next_is_digit = letters.get(at + 1).is_some_and(char::is_ascii_digit);
        match letter {
            '\u{b2}' | '\u{2082}' => word.push('2'),
            '\'' | '\u{2019}' => {}
            '%' => {
                finish(&mut word);
                word.push('%');
                finish(&mut word);
            }
            '.' if next_is_digit && word.ends_with(|c: char| c.is_ascii_digit()) => word.push('.'),
            letter if letter.is_alphanumeric() => word.extend(letter.to_lowercase()),
            letter => {
                let words = finish(&mut word);
                if matches!(letter, '.' | ';' | ':' | '!' | '?') || *letter == '\n' && !goes_on(&letters[at + 1..]) {
                    ends.push(words);
                }
            }
        }
    }
    let words = finish(&mut word);
    ends.push(words);
    for place in ends {
        if let Some(token) = place.checked_sub(1).and_then(|place| list.get_mut(place)) {
            token.ends = true;
        }
    }
    list
}

/// Whether a word fits one of a pattern: `certif*` is every word that begins so.
pub fn fits(word: &str, pattern: &str) -> bool {
    pattern.strip_suffix('*').map_or(word == pattern, |stem| word.starts_with(stem))
}

/// Where some words stand one after another, the first and the last of them.
pub fn places(list: &[Token], phrase: &str) -> Vec<(usize, usize)> {
    let words: Vec<&str> = phrase.split(' ').collect();
    let whole = |at: &usize| {
        list.get(*at..*at + words.len()).is_some_and(|run| {
            run.iter().zip(&words).all(|(token, word)| fits(&token.word, word)) && run[..run.len() - 1].iter().all(|token| !token.ends)
        })
    };
    (0..list.len()).filter(whole).map(|at| (at, at + words.len() - 1)).collect()
}

#[cfg(test)]
mod tests {
    use super::{places, tokens};

    #[test]
    fn a_line_that_was_broken_to_fit_goes_on_and_one_of_a_list_does_not() {
        let ends = |text: &str| tokens(text).into_iter().map(|token| token.ends).collect::<Vec<_>>();
        assert_eq!(ends("no statement of\ndurability"), [false, false, false, true]);
        assert_eq!(ends("No solvent\nDurable"), [false, true, true]);
        assert_eq!(ends("no solvent\n\ndurable"), [false, true, true]);
        assert_eq!(ends("no solvent\n- durable"), [false, true, true]);
        assert_eq!(places(&tokens("an eco\nfriendly face"), "eco friendly"), [(1, 2)]);
    }
}
