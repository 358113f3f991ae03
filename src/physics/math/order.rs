//! Sorting by a number. All of it goes through one sort: the compiler makes another of 5 kB for every
//! type and every way to compare, and the page is to be small. Collecting into a `BTreeMap` sorts, too;
//! extending one does not.

/// The items by their number, the least first; equal ones stay as they stood.
pub fn by_number<T>(items: Vec<T>, number: impl Fn(&T) -> f64) -> Vec<T> {
    let numbers: Vec<f64> = items.iter().map(number).collect();
    let mut items: Vec<Option<T>> = items.into_iter().map(Some).collect();
    let places = places(&numbers).into_iter();
    places.filter_map(|place| items[place].take()).collect()
}

/// Numbers, the least first.
pub fn sorted(numbers: Vec<f64>) -> Vec<f64> {
    by_number(numbers, |number| *number)
}

fn places(numbers: &[f64]) -> Vec<usize> {
    let mut places: Vec<usize> = (0..numbers.len()).collect();
    places.sort_by(|&a, &b| numbers[a].total_cmp(&numbers[b]));
    places
}
