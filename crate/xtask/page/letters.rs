//! Bytes as printable ASCII: 13 bits in two letters of 91, so that 16 letters hold what 17 and a third of base64 do.
//! The letters are `#` to `}` with `!` in place of `<`: none of them means anything inside a script's element, and no
//! character set, line end or space is involved. `www/unpack.js` reads them.

/// How many letters there are: 91 x 91 is just above 2^13.
const LETTERS: u32 = 91;
const BITS: u32 = 13;

fn letter(value: u32) -> char {
    match b'#' + value as u8 {
        b'<' => '!',
        plain => char::from(plain),
    }
}

/// The letters of some bytes, from the first bit to the last; what is missing in the last two is zero.
pub fn of(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 16 / 13 + 2);
    let mut pair = |value: u32| text.extend([letter(value / LETTERS), letter(value % LETTERS)]);
    let (mut held, mut bits) = (0_u32, 0);
    for byte in bytes {
        held = held << 8 | u32::from(*byte);
        bits += 8;
        if bits >= BITS {
            bits -= BITS;
            pair(held >> bits);
            held &= (1 << bits) - 1;
        }
    }
    if bits > 0 {
        pair(held << (BITS - bits));
    }
    text
}

#[cfg(test)]
pub mod tests {
    use super::of;

    /// What the page does.
    pub fn read(text: &str, size: usize) -> Vec<u8> {
        let value = |letter: u8| u32::from(if letter == b'!' { b'<' } else { letter } - b'#');
        let (mut bytes, mut held, mut bits) = (Vec::new(), 0, 0);
        for pair in text.as_bytes().chunks(2) {
            held = held << 13 | (value(pair[0]) * 91 + value(pair[1]));
            bits += 13;
            while bits >= 8 {
                bits -= 8;
                bytes.push((held >> bits) as u8);
                held &= (1 << bits) - 1;
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
            assert!(text.len() <= size * 16 / 13 + 2);
        }
        assert_eq!(read(&of(&[255; 99]), 99), [255; 99]);
    }

    #[test]
    fn no_letter_can_end_the_element_or_be_lost() {
        let bytes: Vec<u8> = (0..=255).cycle().take(60_000).zip(0_u32..).map(|(byte, at)| byte ^ (at / 256) as u8).collect();
        assert!(of(&bytes).bytes().all(|letter| letter.is_ascii_graphic() && letter != b'<'));
    }
}
