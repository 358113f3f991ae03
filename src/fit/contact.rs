//! When the ice was left or met again, as far as it was marked.

use crate::unknown::normal_cdf;

/// The chance that the instant lies before the frames that it was marked between, and as much after them,
/// because a frame was marked wrongly: our choice. A toe that leaves the ice slowly is easily taken for
/// off it a frame early or late.
pub const WRONG_FRAME: f64 = 0.04;

/// How far outside those frames it then lies on average, in times between frames: our choice.
const WRONG_BY_FRAMES: f64 = 1.0;

/// An instant of which something is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Contact {
    /// Between two frames; `frame_s` apart are the film's frames.
    Between {
        from_s: f64,
        to_s: f64,
        frame_s: f64,
    },
    /// About a time.
    About { t_s: f64, sigma_s: f64 },
}

impl Contact {
    /// The instant that so many standard deviations stand for: within the frames each is as likely as any
    /// other, outside ever less.
    pub fn at_s(self, z: f64) -> f64 {
        match self {
            Self::About { t_s, sigma_s } => t_s + sigma_s * z,
            Self::Between {
                from_s,
                to_s,
                frame_s,
            } => {
                let outside = |chance: f64| {
                    let least = f64::MIN_POSITIVE;
                    WRONG_BY_FRAMES * frame_s * libm::log(WRONG_FRAME / chance.max(least))
                };
                let (below, above) = (normal_cdf(z), normal_cdf(-z));
                if below < WRONG_FRAME {
                    from_s - outside(below)
                } else if above < WRONG_FRAME {
                    to_s + outside(above)
                } else {
                    let part = (below - WRONG_FRAME) / (1.0 - 2.0 * WRONG_FRAME);
                    from_s + (to_s - from_s) * part
                }
            }
        }
    }
}
