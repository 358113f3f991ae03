//! Rotations as unit quaternions, with the trigonometry of `libm`.
//!
//! The page (wasm) and the command (native) must print the same digits, so the mechanics never
//! call the platform's sine and cosine; `clippy.toml` forbids them.

use glam::{DQuat, DVec3};

/// The rotation by `|v|` radians about `v` (the exponential map of SO(3)).
pub fn exp(v: DVec3) -> DQuat {
    let angle = v.length();
    // sin(x/2)/x, by its series where the quotient loses digits.
    let (scale, w) = if angle < 1e-4 {
        let a2 = angle * angle;
        (0.5 - a2 / 48.0, 1.0 - a2 / 8.0)
    } else {
        let (s, c) = libm::sincos(0.5 * angle);
        (s / angle, c)
    };
    DQuat::from_xyzw(v.x * scale, v.y * scale, v.z * scale, w)
}

/// The rotation vector of the shortest way round, `|v| <= pi` (the logarithm of SO(3)).
pub fn log(q: DQuat) -> DVec3 {
    let q = if q.w < 0.0 { -q } else { q };
    let v = DVec3::new(q.x, q.y, q.z);
    let s = v.length();
    if s < 1e-9 {
        return v * (2.0 / q.w);
    }
    v * (2.0 * libm::atan2(s, q.w) / s)
}

/// Rate in the moving axes of a body whose rotation vector is `u` and changes by `u_rate` a second
/// (the right Jacobian of SO(3)): u' - (1 - cos a) / a² u x u' + (a - sin a) / a³ u x (u x u').
pub fn rate_of(u: DVec3, u_rate: DVec3) -> DVec3 {
    let a2 = u.length_squared();
    // Both quotients by their series where they lose digits.
    let (first, second) = if a2 < 1e-4 {
        (0.5 - a2 / 24.0, 1.0 / 6.0 - a2 / 120.0)
    } else {
        let a = a2.sqrt();
        let (sin, cos) = libm::sincos(a);
        ((1.0 - cos) / a2, (a - sin) / (a2 * a))
    };
    let across = u.cross(u_rate);
    u_rate - across * first + u.cross(across) * second
}

/// Angular acceleration in the moving axes of that body, where `u_rate` changes by `u_change` a second:
/// the right Jacobian times u'', and what its own change adds.
pub fn acceleration_of(u: DVec3, u_rate: DVec3, u_change: DVec3) -> DVec3 {
    let a2 = u.length_squared();
    // (1 - cos a) / a² and (a - sin a) / a³ change by these times u . u' a second; b is the second one.
    let (b, first, second) = if a2 < 1e-2 {
        (
            1.0 / 6.0 - a2 * (1.0 / 120.0 - a2 * (1.0 / 5040.0 - a2 / 362_880.0)),
            -1.0 / 12.0 + a2 * (1.0 / 180.0 - a2 * (1.0 / 6720.0 - a2 / 453_600.0)),
            -1.0 / 60.0 + a2 * (1.0 / 1260.0 - a2 * (1.0 / 60_480.0 - a2 / 4_989_600.0)),
        )
    } else {
        let a = a2.sqrt();
        let (sin, cos) = libm::sincos(a);
        let a4 = a2 * a2;
        (
            (a - sin) / (a2 * a),
            (a * sin + 2.0 * (cos - 1.0)) / a4,
            (3.0 * sin - a * (2.0 + cos)) / (a4 * a),
        )
    };
    let (across, along) = (u.cross(u_rate), u.dot(u_rate));
    rate_of(u, u_change) - across * (first * along)
        + u.cross(across) * (second * along)
        + u_rate.cross(across) * b
}

/// The change of the rotation vector `u` of a body that turns at this rate in its own axes: the inverse
/// of [`rate_of`], v + u x v / 2 + (1 - (a / 2) cot (a / 2)) / a² u x (u x v).
pub fn vector_rate_of(u: DVec3, rate: DVec3) -> DVec3 {
    let a2 = u.length_squared();
    let second = if a2 < 1e-2 {
        1.0 / 12.0 + a2 * (1.0 / 720.0 + a2 * (1.0 / 30_240.0 + a2 / 1_209_600.0))
    } else {
        let half = 0.5 * a2.sqrt();
        let (sin, cos) = libm::sincos(half);
        (1.0 - half * cos / sin) / a2
    };
    let across = u.cross(rate);
    rate + across * 0.5 + u.cross(across) * second
}

/// Rotation about one axis.
pub fn about(axis: DVec3, angle_rad: f64) -> DQuat {
    exp(axis * angle_rad)
}

/// The smallest rotation that carries unit vector `from` to unit vector `to`.
///
/// Opposite vectors turn by pi about any perpendicular axis.
pub fn smallest_rotation(from: DVec3, to: DVec3) -> DQuat {
    let w = 1.0 + from.dot(to);
    if w < 1e-12 {
        let p = from.any_orthonormal_vector();
        return DQuat::from_xyzw(p.x, p.y, p.z, 0.0);
    }
    let c = from.cross(to);
    DQuat::from_xyzw(c.x, c.y, c.z, w).normalize()
}

/// The same rotation seen in a mirror that swaps left and right (the XY plane).
pub fn mirrored(q: DQuat) -> DQuat {
    DQuat::from_xyzw(-q.x, -q.y, q.z, q.w)
}

/// Heading of a body about the vertical: 0 when its right-left axis points along world Z, that
/// is, when it faces X; positive anticlockwise from above; in (-pi, pi].
pub fn heading_rad(q: DQuat) -> f64 {
    let right = q * DVec3::Z;
    libm::atan2(right.x, right.z)
}
