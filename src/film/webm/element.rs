//! Elements (EBML, RFC 8794): an id, a size, and the content.

/// An element of the file.
pub(crate) struct Element {
    pub id: u32,
    /// Where its content begins.
    pub content: u64,
    /// Where it ends; none where its size was not known when it was written.
    pub end: Option<u64>,
}

/// The head of an element.
pub(crate) struct Head {
    pub id: u32,
    pub size: Option<u64>,
    pub head_bytes: usize,
}

/// A number of variable length with its marker, and its length.
fn variable(bytes: &[u8], longest: u32) -> Option<(u64, u32)> {
    let length = bytes.first()?.leading_zeros() + 1;
    let all = bytes.get(..length as usize).filter(|_| length <= longest)?;
    let value = all
        .iter()
        .fold(0, |value, &byte| value << 8 | u64::from(byte));
    Some((value, length))
}

/// Without its marker, that of `length` bytes.
const fn unmarked(value: u64, length: u32) -> u64 {
    value & ((1 << (7 * length)) - 1)
}

/// The head of the element that begins there; none where there is none, or not all of it.
pub(crate) fn element(bytes: &[u8]) -> Option<Head> {
    let (id, id_bytes) = variable(bytes, 4)?;
    let (size, size_bytes) = variable(bytes.get(id_bytes as usize..)?, 8)?;
    let size = unmarked(size, size_bytes);
    let unknown = (1 << (7 * size_bytes)) - 1;
    Some(Head {
        id: u32::try_from(id).ok()?,
        size: (size != unknown).then_some(size),
        head_bytes: (id_bytes + size_bytes) as usize,
    })
}

/// A number of variable length, and what follows it.
pub(crate) fn number(bytes: &[u8]) -> Option<(u64, &[u8])> {
    let (value, length) = variable(bytes, 8)?;
    Some((unmarked(value, length), &bytes[length as usize..]))
}

/// A whole number that is an element's content.
pub(crate) fn unsigned(content: &[u8]) -> Option<u64> {
    let fold = |value, &byte| value << 8 | u64::from(byte);
    (content.len() <= 8).then(|| content.iter().fold(0, fold))
}

/// Calls for each element in a row with its id and content; none where one is not whole.
pub(crate) fn each<'a>(mut row: &'a [u8], mut with: impl FnMut(u32, &'a [u8])) -> Option<()> {
    while !row.is_empty() {
        let head = element(row)?;
        let end = head
            .head_bytes
            .checked_add(usize::try_from(head.size?).ok()?)?;
        with(head.id, row.get(head.head_bytes..end)?);
        row = &row[end..];
    }
    Some(())
}
