//! Numbers and texts as bytes, the shortest way that keeps every bit.

/// Up to so many decimal places, a number is written as a whole number of those places.
const MOST_PLACES: u64 = 6;

/// Stands where the places would: the number's own eight bytes follow.
const WHOLE: u64 = 7;

/// So many low bits hold the places.
const PLACES_BITS: u32 = 3;

/// Beyond it the decimal form would be no shorter than the number's own bytes.
const LARGEST_COUNT: u64 = 1 << 45;

#[derive(Debug, Default)]
pub struct Writer(pub Vec<u8>);

impl Writer {
    pub fn byte(&mut self, byte: u8) {
        self.0.push(byte);
    }

    /// Seven bits a byte, the lowest first; the high bit says that more follow.
    pub fn count(&mut self, mut count: u64) {
        while count > 0x7f {
            self.byte(count as u8 | 0x80);
            count >>= 7;
        }
        self.byte(count as u8);
    }

    pub fn number(&mut self, number: f64) {
        match decimal(number) {
            Some((count, places)) => {
                let sign_last = (count.unsigned_abs() << 1) | u64::from(count < 0);
                self.count(sign_last << PLACES_BITS | places);
            }
            None => {
                self.count(WHOLE);
                self.0.extend(number.to_le_bytes());
            }
        }
    }

    pub fn text(&mut self, text: &str) {
        self.count(text.len() as u64);
        self.0.extend(text.as_bytes());
    }
}

/// The number as so many of so many decimal places, if that is the very same number.
fn decimal(number: f64) -> Option<(i64, u64)> {
    (0..=MOST_PLACES).find_map(|places| {
        let count = (number * scale(places)).round() as i64;
        let same = from_decimal(count, places).to_bits() == number.to_bits();
        (same && count.unsigned_abs() < LARGEST_COUNT).then_some((count, places))
    })
}

fn from_decimal(count: i64, places: u64) -> f64 {
    count as f64 / scale(places)
}

fn scale(places: u64) -> f64 {
    (0..places).fold(1.0, |scale, _| scale * 10.0)
}

/// What is left to read. None where it ends too early or holds what is never written.
#[derive(Debug)]
pub struct Reader<'a>(pub &'a [u8]);

impl<'a> Reader<'a> {
    fn take(&mut self, bytes: usize) -> Option<&'a [u8]> {
        let (taken, rest) = self.0.split_at_checked(bytes)?;
        self.0 = rest;
        Some(taken)
    }

    pub fn byte(&mut self) -> Option<u8> {
        self.take(1).map(|taken| taken[0])
    }

    pub fn count(&mut self) -> Option<u64> {
        let mut count = 0;
        for shift in (0..63).step_by(7) {
            let byte = self.byte()?;
            count |= u64::from(byte & 0x7f) << shift;
            if byte < 0x80 {
                return Some(count);
            }
        }
        None
    }

    pub fn number(&mut self) -> Option<f64> {
        let written = self.count()?;
        if written == WHOLE {
            let (bytes, rest) = self.0.split_first_chunk()?;
            self.0 = rest;
            return Some(f64::from_le_bytes(*bytes));
        }
        let (sign_last, places) = (written >> PLACES_BITS, written & ((1 << PLACES_BITS) - 1));
        let size = i64::try_from(sign_last >> 1).ok()?;
        let count = if sign_last & 1 == 0 { size } else { -size };
        (places <= MOST_PLACES).then(|| from_decimal(count, places))
    }

    pub fn text(&mut self) -> Option<String> {
        let bytes = usize::try_from(self.count()?).ok()?;
        let text = std::str::from_utf8(self.take(bytes)?).ok()?;
        Some(text.to_owned())
    }
}
