//! Widths of letters, so that text is placed without asking a browser. The widths are those of a
//! wide sans-serif (the larger of two free fonts, letter by letter), so real text is seldom wider.

/// Widths of ` ` to `~` in thousandths of the letter size.
const ASCII: [u16; 95] = [
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337,
    337, 838, 838, 838, 556, 1015, 684, 686, 722, 770, 667, 611, 778, 752, 295, 500, 667, 557, 863, 748, 787, 667, 787, 722, 667, 611, 732,
    684, 989, 685, 667, 685, 390, 337, 390, 838, 556, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635,
    635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
];

/// Bold text is about this much wider.
const BOLD: f64 = 1.15;

/// Width of one letter in thousandths of the letter size.
fn letter(c: char) -> u16 {
    match c {
        ' '..='~' => ASCII[c as usize - ' ' as usize],
        '\u{2009}' | '\u{202F}' => 200,
        '\u{A0}' | '\u{B7}' => 320,
        '\u{B2}' | '\u{B3}' | '\u{B9}' | '\u{2070}'..='\u{2089}' => 530,
        '\u{2212}' => 838,
        '\u{2013}' => 560,
        '\u{DF}'..='\u{E5}' | '\u{E7}'..='\u{FF}' => 640,
        '\u{C0}'..='\u{C5}' | '\u{C7}'..='\u{DE}' => 790,
        '\u{300}'..='\u{36F}' => 0,
        '\u{80}'..='\u{10FF}' => 1100,
        '\u{1F000}'.. => 1400,
        _ => 1050,
    }
}

/// Width of a text in px at a letter size in px.
pub(crate) fn width(text: &str, size: f64, bold: bool) -> f64 {
    let sum: u32 = text.chars().map(|c| u32::from(letter(c))).sum();
    f64::from(sum) / 1000.0 * size * if bold { BOLD } else { 1.0 }
}

/// The text without characters that a drawing cannot carry (XML allows no control characters);
/// each becomes a space.
pub(crate) fn printable(text: &str) -> String {
    let held = |c: char| !c.is_control() && !matches!(c, '\u{FFFE}' | '\u{FFFF}');
    text.chars().map(|c| if held(c) { c } else { ' ' }).collect()
}

/// The text, cut with `…` where it is wider than the room.
pub(crate) fn fitted(text: &str, size: f64, bold: bool, room: f64) -> String {
    let text = printable(text);
    if width(&text, size, bold) <= room {
        return text;
    }
    let mut kept = String::new();
    for c in text.chars() {
        kept.push(c);
        if width(&kept, size, bold) + width("…", size, bold) > room {
            kept.pop();
            break;
        }
    }
    format!("{}…", kept.trim_end())
}

/// The text in at most `most` lines, broken at spaces; the last line is cut where it must be.
pub(crate) fn lines(text: &str, size: f64, bold: bool, room: f64, most: usize) -> Vec<String> {
    let text = printable(text);
    let words: Vec<&str> = text.split_whitespace().collect();
    let mut out = Vec::new();
    let mut at = 0;
    while at < words.len() {
        let mut end = at + 1;
        let last = out.len() + 1 == most;
        while end < words.len() && (last || width(&words[at..=end].join(" "), size, bold) <= room) {
            end += 1;
        }
        out.push(fitted(&words[at..end].join(" "), size, bold, room));
        at = end;
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn widths_add_up() {
        assert_eq!(width("", 13.0, false), 0.0);
        assert_eq!(width("00", 10.0, false), 12.72);
        assert!((width("00", 10.0, true) - 12.72 * 1.15).abs() < 1e-12);
        assert_eq!(width("é", 10.0, false), 6.4);
    }

    #[test]
    fn cut_text_fits_and_says_so() {
        let cut = fitted("direct-applied sheeting, cut and weeded", 13.0, false, 120.0);
        assert!(cut.starts_with("direct-app") && cut.ends_with('…'), "{cut}");
        assert!(width(&cut, 13.0, false) <= 120.0);
        assert_eq!(fitted("film", 13.0, false, 120.0), "film");
    }

    #[test]
    fn lines_break_at_spaces_and_stop() {
        let two = lines("screen printing, ultraviolet ink, short run", 13.0, false, 150.0, 2);
        assert_eq!(two.len(), 2);
        assert_eq!(two[0], "screen printing,");
        assert!(two[1].ends_with('…'), "{two:?}");
        assert!(two.iter().all(|l| width(l, 13.0, false) <= 150.0));
        assert_eq!(lines("digital", 13.0, false, 150.0, 2), ["digital"]);
        assert!(lines("", 13.0, false, 150.0, 2).is_empty());
    }

    #[test]
    fn control_characters_become_spaces() {
        assert_eq!(printable("a\u{0}b\nc\u{FFFF}"), "a b c ");
    }
}
