//! A key: marks and the words that say what they mean, one after another, broken into as many
//! lines as they need.
use crate::axis::LINE;
use crate::look::Theme;
use crate::refused::Refused;
use crate::sheet::{SMALL, Sheet, Side, small};
use crate::text_width::{lines, width};
use plotters_backend::DrawingBackend;

/// Px between a mark and its words.
const GAP: f64 = 6.0;
/// Px from the words of one mark to the next mark.
const APART: f64 = 18.0;
/// Words of more lines than this are cut.
const MOST_LINES: usize = 6;

/// One mark with its words.
struct Entry {
    /// Which of the words given.
    index: usize,
    /// Left edge of the mark, and how many lines stand above.
    x: f64,
    line: usize,
    words: Vec<String>,
}

/// A key laid out.
pub(crate) struct Key {
    entries: Vec<Entry>,
    mark: f64,
    /// Lines it takes.
    lines: usize,
}

impl Key {
    /// The key of `words` from `left` to `right`, each beside a mark of `mark` px. Empty words
    /// leave their mark out.
    pub fn new<'a>(words: impl IntoIterator<Item = &'a str>, mark: f64, (left, right): (f64, f64)) -> Self {
        let mut key = Self { entries: Vec::new(), mark, lines: 0 };
        let mut x = left;
        for (index, text) in words.into_iter().enumerate().filter(|(_, text)| !text.is_empty()) {
            let words = lines(text, SMALL, false, right - left - mark - GAP, MOST_LINES);
            let taken = mark + GAP + words.iter().map(|l| width(l, SMALL, false)).fold(0.0, f64::max);
            let beside = x > left && words.len() == 1 && x + taken <= right;
            if !beside {
                (x, key.lines) = (left, key.lines + words.len());
            }
            let line = key.lines - words.len();
            // Nothing stands beside words of more than one line.
            let next = if words.len() > 1 { right } else { x + taken + APART };
            key.entries.push(Entry { index, x, line, words });
            x = next;
        }
        key
    }

    /// Its height.
    pub fn height(&self) -> f64 {
        LINE * self.lines as f64
    }

    /// Draws it from `top` down; `mark` draws a mark by the place of its words among those given,
    /// its left edge and its middle.
    pub fn draw<DB: DrawingBackend>(
        &self,
        sheet: &Sheet<DB>,
        top: f64,
        theme: Theme,
        mut mark: impl FnMut(usize, f64, f64) -> Result<(), Refused>,
    ) -> Result<(), Refused> {
        for entry in &self.entries {
            let middle = |line: usize| top + LINE * (line as f64 + 0.5);
            mark(entry.index, entry.x, middle(entry.line))?;
            for (i, words) in entry.words.iter().enumerate() {
                sheet.text(words, (entry.x + self.mark + GAP, middle(entry.line + i)), Side::Right, small(theme))?;
            }
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn laid(words: &[&str], right: f64) -> Vec<(usize, usize, Vec<String>)> {
        let key = Key::new(words.iter().copied(), 9.0, (4.0, right));
        key.entries.into_iter().map(|e| (e.index, e.line, e.words)).collect()
    }

    #[test]
    fn words_that_have_room_share_a_line() {
        let one = |i, text: &str| (i, 0, vec![text.to_owned()]);
        assert_eq!(laid(&["low", "", "high"], 300.0), [one(0, "low"), one(2, "high")]);
    }

    #[test]
    fn words_are_broken_into_lines_and_never_cut() {
        let words = ["input at its 5 % point", "input at its 95 % point", "every input as the order has it, none moved"];
        for right in [120.0, 200.0, 316.0, 900.0] {
            let laid = laid(&words, right);
            let joined: Vec<String> = laid.iter().map(|(_, _, lines)| lines.join(" ")).collect();
            assert_eq!(joined, words);
            for pair in laid.windows(2) {
                assert!(pair[1].1 >= pair[0].1 + pair[0].2.len() - 1, "{laid:?}");
            }
        }
    }

    #[test]
    fn a_key_without_words_takes_no_height() {
        assert_eq!(Key::new([""], 9.0, (4.0, 300.0)).height(), 0.0);
    }
}
