//! What the reader of JSON complains of, for people.

/// The complaint in the language spoken.
pub fn complaint(why: &serde_json::Error) -> String {
    why.to_string()
}
