//! A sensor's file as far as its table and columns, in two pieces; the first byte says where it is cut.
//! What is made of the readings takes longer: `trace.rs`.

#![no_main]

use libfuzzer_sys::{Corpus, fuzz_target};
use turns_aloft::trace::find_columns;
use turns_aloft_fuzz::{said, sensor_table};

fuzz_target!(|data: &[u8]| -> Corpus {
    let Some((&cut, text)) = data.split_first() else {
        return Corpus::Reject;
    };
    let at = text.len() * usize::from(cut) / 256;
    let table = match sensor_table(&[&text[..at], &text[at..]]) {
        Ok(table) => table,
        Err(why) => {
            said(&why);
            return Corpus::Keep;
        }
    };
    let whole = sensor_table(&[text]).expect("it was read in two pieces");
    assert_eq!(whole.rows(), table.rows());
    assert_eq!(whole.columns.len(), table.columns.len());
    for (column, of_whole) in table.columns.iter().zip(&whole.columns) {
        assert_eq!(column.name, of_whole.name);
        assert_eq!(column.values.len(), table.rows());
        let bits = |values: &[f64]| -> Vec<u64> { values.iter().map(|it| it.to_bits()).collect() };
        assert_eq!(bits(&column.values), bits(&of_whole.values));
    }
    match find_columns(&table) {
        Ok(_) => {}
        Err(why) => said(&why),
    }
    Corpus::Keep
});
