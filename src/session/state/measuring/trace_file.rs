//! The file of a sensor that is open: its columns, and the flight found in them.

use std::sync::Arc;

use turns_aloft_trace::{
    Columns, Signals, Survey, Table, Trace, TraceFault, Windows, find_columns,
};

#[derive(Debug, Clone)]
pub struct TraceFile {
    table: Arc<Table>,
    columns: Columns,
    windows: Windows,
    survey: Arc<Survey>,
    trace: Arc<Trace>,
}

impl TraceFile {
    pub fn of(table: Table) -> Result<Self, TraceFault> {
        let columns = find_columns(&table)?;
        Self::new(Arc::new(table), columns, Windows::default())
    }

    fn new(table: Arc<Table>, columns: Columns, windows: Windows) -> Result<Self, TraceFault> {
        let survey = Survey::of(Signals::of(&table, &columns)?);
        // Where no flight is found the user sets it, and has to see the trace for that.
        let windows = if survey.flights.is_empty() && windows.flight_s.is_none() {
            let flight_s = Some(survey.around_peak_s());
            Windows {
                flight_s,
                ..windows
            }
        } else {
            windows
        };
        let trace = survey.trace(&windows)?;
        Ok(Self {
            table,
            columns,
            windows,
            survey: Arc::new(survey),
            trace: Arc::new(trace),
        })
    }

    /// The same file with other columns or units.
    pub fn with_columns(&self, columns: Columns) -> Result<Self, TraceFault> {
        Self::new(Arc::clone(&self.table), columns, Windows::default())
    }

    /// The same with rest and flight at other times.
    pub fn with_windows(&self, windows: Windows) -> Result<Self, TraceFault> {
        Ok(Self {
            trace: Arc::new(self.survey.trace(&windows)?),
            windows,
            ..self.clone()
        })
    }

    /// Whether the flight is where the user has to look for it.
    pub fn has_found_no_flight(&self) -> bool {
        self.survey.flights.is_empty()
    }

    pub fn table(&self) -> &Table {
        &self.table
    }

    pub const fn columns(&self) -> Columns {
        self.columns
    }

    pub const fn windows(&self) -> Windows {
        self.windows
    }

    pub fn signals(&self) -> &Signals {
        &self.survey.signals
    }

    pub fn trace(&self) -> &Trace {
        &self.trace
    }
}
