//! Measuring an attempt by a sensor's trace.

use crate::session::Session;
use crate::state::measuring::trace_file::TraceFile;
use turns_aloft_attempt::Measured;
use turns_aloft_describe::Sentence;
use turns_aloft_trace::{Columns, Table, TraceFault, Windows};

impl Session {
    /// Takes up a file of columns that the page has read: on a turntable it is laid over the run, else an attempt
    /// is measured by it.
    pub fn trace_opened(&mut self, table: Table) {
        if self.is_on_turntable() {
            self.lay_trace(&table);
            return;
        }
        let name = table.file_name.clone();
        match TraceFile::of(table) {
            Ok(file) => {
                let trace = file.trace();
                let turning = trace.turning().unwrap_or(self.scenario().turning);
                let sensor = trace.sensor(&name, turning);
                self.change(|scenario| scenario.turning = turning);
                self.begin_measuring(Measured::Sensor(sensor));
                if file.has_found_no_flight() {
                    self.say(TraceFault::NoFlight.sentence());
                }
                if let Some(measuring) = &mut self.measuring {
                    measuring.trace = Some(file);
                }
            }
            Err(fault) => self.trace_refused(&fault),
        }
    }

    /// Says what is wrong with a file of columns.
    pub fn trace_refused(&mut self, fault: &TraceFault) {
        self.say(fault.sentence());
    }

    /// Takes other columns or units of the open file.
    pub fn set_trace_columns(&mut self, columns: Columns) {
        self.change_trace(|file| file.with_columns(columns));
    }

    /// Takes rest and flight at other times of the open file.
    pub fn set_trace_windows(&mut self, windows: Windows) {
        self.change_trace(|file| file.with_windows(windows));
    }

    fn change_trace(&mut self, change: impl FnOnce(&TraceFile) -> Result<TraceFile, TraceFault>) {
        let Some(file) = self.measuring.as_ref().and_then(|it| it.trace.as_ref()) else {
            return;
        };
        match change(file) {
            Ok(file) => {
                let trace = file.trace();
                let turning = trace.turning().unwrap_or(self.scenario().turning);
                let sensor = trace.sensor(&file.table().file_name, turning);
                self.change(|scenario| scenario.turning = turning);
                if let Some(measuring) = &mut self.measuring {
                    measuring.change(|measured, _| *measured = Measured::Sensor(sensor));
                    measuring.trace = Some(file);
                }
                self.notice = None;
            }
            Err(fault) => self.say(fault.sentence()),
        }
    }
}
