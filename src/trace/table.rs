//! The numbers of a file, in columns.

/// One column.
#[derive(Debug, Clone, Default)]
pub struct Column {
    /// As the file names it.
    pub name: String,
    /// One value for each row; not a number where none stands there.
    pub values: Vec<f64>,
    /// The first text in it that is no number, and its line, counted from 1.
    pub text: Option<(u64, String)>,
}

/// The numbers of a file.
#[derive(Debug, Clone, Default)]
pub struct Table {
    /// Name of the file, which may tell what kind of sensor it is of.
    pub file_name: String,
    /// None of them has a name where the file has none.
    pub columns: Vec<Column>,
    /// The line of each row, counted from 1.
    pub lines: Vec<u64>,
}

impl Table {
    pub fn rows(&self) -> usize {
        self.lines.len()
    }

    pub fn has_names(&self) -> bool {
        self.columns.iter().any(|column| !column.name.is_empty())
    }
}
