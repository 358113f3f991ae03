//! A sensor on a real chair: this device's own, recorded, or a file; laid over the rate of the model.

use glam::DVec3;

use crate::session::Session;
use crate::state::measured_rate::{LONGEST_S, MeasuredRate};
use crate::state::turntable::OnTurntable;
use turns_aloft_describe::Sentence;
use turns_aloft_describe::number::plain;
use turns_aloft_trace::{AboutVertical, Signals, Table, TraceFault, find_columns};
use turns_aloft_turntable::slowing::{SHORTEST_S, friction};
use turns_aloft_words::{say, text};

/// Why the device's sensor is not recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoSensor {
    /// The browser or the device has none.
    Missing,
    /// It may not be read.
    Refused,
    /// The browser asks the user only while the screen is touched.
    TouchAgain,
}

impl Session {
    /// What the device's sensor reads from now on is recorded, from where the run has come to.
    pub fn sensor_started(&mut self) {
        self.dismiss();
        if let Some(on_turntable) = &mut self.turntable {
            let begins_s = on_turntable.end_s();
            let none = AboutVertical::default();
            on_turntable.measured = Some(MeasuredRate::new(none, true, begins_s));
        }
    }

    pub fn sensor_not_started(&mut self, why: NoSensor) {
        self.say(text(match why {
            NoSensor::Missing => "turntable-sensor-missing",
            NoSensor::Refused => "turntable-sensor-refused",
            NoSensor::TouchAgain => "turntable-sensor-touch",
        }));
    }

    /// A reading of the device's sensor, in its own axes; the acceleration with gravity in it, where there is one.
    pub fn sensor_read(
        &mut self,
        t_s: f64,
        rate_rad_s: [f64; 3],
        acceleration_m_s2: Option<[f64; 3]>,
    ) {
        let measured = self.turntable.as_mut().and_then(|it| it.measured.as_mut());
        let Some(measured) = measured.filter(|it| it.is_recording()) else {
            return;
        };
        let acceleration = acceleration_m_s2.map(DVec3::from_array);
        let rate = DVec3::from_array(rate_rad_s);
        measured.readings.push(t_s, rate, acceleration);
        if measured.span_s() >= LONGEST_S {
            self.stop_sensor();
            self.say(say!(
                "turntable-sensor-full",
                minutes = plain(LONGEST_S / 60.0)
            ));
        }
    }

    /// Whether the device's sensor is being recorded.
    pub fn is_recording_sensor(&self) -> bool {
        self.turntable
            .as_ref()
            .is_some_and(OnTurntable::is_recording)
    }

    /// Records no more; without a reading there is nothing to lay over the model.
    pub fn stop_sensor(&mut self) {
        if let Some(on_turntable) = &mut self.turntable
            && let Some(measured) = &mut on_turntable.measured
        {
            measured.recording = false;
            if measured.is_empty() {
                on_turntable.measured = None;
            }
        }
    }

    /// Takes away what a sensor has measured.
    pub fn drop_measured_rate(&mut self) {
        if let Some(on_turntable) = &mut self.turntable {
            on_turntable.measured = None;
        }
    }

    /// Lays a sensor's file over the run, from its beginning.
    pub(crate) fn lay_trace(&mut self, table: &Table) {
        match of_file(table) {
            Ok(readings) => {
                if let Some(on_turntable) = &mut self.turntable {
                    on_turntable.measured = Some(MeasuredRate::new(readings, false, 0.0));
                }
            }
            Err(fault) => self.say(fault.sentence()),
        }
    }

    /// A new run that slows down as was measured: its friction, and its rate where the slowing down begins. Both
    /// are laid one over the other from there.
    pub fn turn_as_measured(&mut self) {
        let Some(on_turntable) = &self.turntable else {
            return;
        };
        let Some(measured) = on_turntable.measured() else {
            return;
        };
        let Some(slowing) = measured.slowing() else {
            self.say(say!("turntable-no-slowing", seconds = plain(SHORTEST_S)));
            return;
        };
        let (from, begins_s) = (slowing[0], measured.begins_s);
        match friction(&slowing, on_turntable.shown().inertia_kg_m2) {
            Ok(friction) => {
                if self.take_friction(friction, on_turntable.sense() * from.rate_rad_s) {
                    self.turn_again();
                    let measured = self.turntable.as_mut().and_then(|it| it.measured.as_mut());
                    if let Some(measured) = measured {
                        measured.begins_s = begins_s - from.t_s;
                    }
                }
            }
            Err(why) => self.say(why.sentence()),
        }
    }
}

fn of_file(table: &Table) -> Result<AboutVertical, TraceFault> {
    let signals = Signals::of(table, &find_columns(table)?)?;
    Ok(AboutVertical::of(&signals))
}
