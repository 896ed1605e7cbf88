//! Bytes as text: each letter holds seven bits. The three letters that HTML would change or take for mark-up stand 128 higher,
//! where each is two bytes of UTF-8, 0xC2 and another. `www/unpack.js` reads them.

/// NUL becomes another character, CR a line end, and `<` may open a tag.
const MOVED: [u8; 3] = [0, b'\r', b'<'];

/// Which a letter is, is in its low seven bits.
fn letter(value: u8) -> char {
    char::from(if MOVED.contains(&value) { value | 128 } else { value })
}

/// The letters of some bytes, from the first bit to the last; zeros follow until seven bytes are eight letters.
pub fn of(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 6 / 5 + 8);
    for seven in bytes.chunks(7) {
        let held = (0..7).fold(0_u64, |held, at| held << 8 | u64::from(seven.get(at).copied().unwrap_or(0)));
        text.extend((0..8).rev().map(|at| letter((held >> (7 * at)) as u8 & 127)));
    }
    text
}

#[cfg(test)]
pub mod tests {
    use super::of;

    /// What the page does.
    pub fn read(text: &str, size: usize) -> Vec<u8> {
        let (mut bytes, mut held, mut bits) = (Vec::new(), 0_u32, 0);
        for letter in text.bytes().filter(|letter| *letter != 0xC2) {
            held = held << 7 | u32::from(letter & 127);
            bits += 7;
            if bits >= 8 {
                bits -= 8;
                bytes.push((held >> bits) as u8);
            }
        }
        bytes.truncate(size);
        bytes
    }

    #[test]
    fn bytes_come_back_from_their_letters() {
        let bytes: Vec<u8> = (0..20_000_u32).map(|at| (at.wrapping_mul(2_654_435_761) >> 13) as u8).collect();
        for size in (0..40).chain([19_999, 20_000]) {
            let text = of(&bytes[..size]);
            assert_eq!(read(&text, size), bytes[..size]);
            assert_eq!(text.chars().count(), size.div_ceil(7) * 8);
        }
        assert_eq!(read(&of(&[255; 99]), 99), [255; 99]);
    }

    #[test]
    fn no_letter_can_end_the_element_or_be_lost() {
        let bytes: Vec<u8> = (0..=255).cycle().take(60_000).zip(0_u32..).map(|(byte, at)| byte ^ (at / 256) as u8).collect();
        assert!(!of(&bytes).contains(['\0', '\r', '<']));
    }
}
