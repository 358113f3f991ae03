//! Vectors over one number, or over two side by side: the left and the right limb of a body are
//! alike, so both are computed by the same instructions.
//!
//! Only additions and multiplications, and none of them fused: the digits are the same one by one
//! and side by side, and on every platform.

use std::ops::{Add, Mul, Sub};

use glam::{DMat3, DQuat, DVec3};
use wide::f64x2;

/// One number, or one for the left and one for the right.
pub trait Real:
    Copy + Default + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self>
{
    const ONE: Self;
    const HALF: Self;
}

impl Real for f64 {
    const ONE: Self = 1.0;
    const HALF: Self = 0.5;
}

impl Real for f64x2 {
    const ONE: Self = Self::ONE;
    const HALF: Self = Self::HALF;
}

#[derive(Debug, Clone, Copy, Default)]
pub struct Vec3<T> {
    pub x: T,
    pub y: T,
    pub z: T,
}

impl<T: Real> Vec3<T> {
    pub fn dot(self, other: Self) -> T {
        self.x * other.x + self.y * other.y + self.z * other.z
    }

    pub fn cross(self, other: Self) -> Self {
        Self {
            x: self.y * other.z - self.z * other.y,
            y: self.z * other.x - self.x * other.z,
            z: self.x * other.y - self.y * other.x,
        }
    }
}

impl<T: Real> Add for Vec3<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            x: self.x + other.x,
            y: self.y + other.y,
            z: self.z + other.z,
        }
    }
}

impl<T: Real> Sub for Vec3<T> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self {
            x: self.x - other.x,
            y: self.y - other.y,
            z: self.z - other.z,
        }
    }
}

impl<T: Real> Mul<T> for Vec3<T> {
    type Output = Self;
    fn mul(self, by: T) -> Self {
        Self {
            x: self.x * by,
            y: self.y * by,
            z: self.z * by,
        }
    }
}

impl From<DVec3> for Vec3<f64> {
    fn from(v: DVec3) -> Self {
        Self {
            x: v.x,
            y: v.y,
            z: v.z,
        }
    }
}

impl From<Vec3<f64>> for DVec3 {
    fn from(v: Vec3<f64>) -> Self {
        Self::new(v.x, v.y, v.z)
    }
}

impl Vec3<f64x2> {
    /// The same on both sides.
    pub fn both(v: Vec3<f64>) -> Self {
        Self::pair(v.into(), v.into())
    }

    pub fn pair(left: DVec3, right: DVec3) -> Self {
        Self {
            x: f64x2::new([left.x, right.x]),
            y: f64x2::new([left.y, right.y]),
            z: f64x2::new([left.z, right.z]),
        }
    }

    pub fn apart(self) -> [Vec3<f64>; 2] {
        let (x, y, z) = (self.x.to_array(), self.y.to_array(), self.z.to_array());
        [0, 1].map(|i| Vec3 {
            x: x[i],
            y: y[i],
            z: z[i],
        })
    }

    pub fn sum(self) -> Vec3<f64> {
        let [left, right] = self.apart();
        left + right
    }

    pub fn lengths(self) -> [f64; 2] {
        self.dot(self).sqrt().to_array()
    }
}

/// A symmetric tensor.
#[derive(Debug, Clone, Copy, Default)]
pub struct SymmetricTensor<T> {
    pub xx: T,
    pub yy: T,
    pub zz: T,
    pub xy: T,
    pub xz: T,
    pub yz: T,
}

impl<T: Real> SymmetricTensor<T> {
    /// This and (p . u) 1 - (p uᵀ + u pᵀ) / 2: moments of inertia about a point, seen from -p, for
    /// u = the sum of both first moments.
    pub fn moved(self, p: Vec3<T>, u: Vec3<T>) -> Self {
        let (x, y, z) = (p.x * u.x, p.y * u.y, p.z * u.z);
        Self {
            xx: self.xx + (y + z),
            yy: self.yy + (x + z),
            zz: self.zz + (x + y),
            xy: self.xy - T::HALF * (p.x * u.y + p.y * u.x),
            xz: self.xz - T::HALF * (p.x * u.z + p.z * u.x),
            yz: self.yz - T::HALF * (p.y * u.z + p.z * u.y),
        }
    }

    pub fn times(self, v: Vec3<T>) -> Vec3<T> {
        Vec3 {
            x: self.xx * v.x + self.xy * v.y + self.xz * v.z,
            y: self.xy * v.x + self.yy * v.y + self.yz * v.z,
            z: self.xz * v.x + self.yz * v.y + self.zz * v.z,
        }
    }
}

impl<T: Real> Add for SymmetricTensor<T> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            xx: self.xx + other.xx,
            yy: self.yy + other.yy,
            zz: self.zz + other.zz,
            xy: self.xy + other.xy,
            xz: self.xz + other.xz,
            yz: self.yz + other.yz,
        }
    }
}

impl From<DMat3> for SymmetricTensor<f64> {
    fn from(m: DMat3) -> Self {
        Self {
            xx: m.x_axis.x,
            yy: m.y_axis.y,
            zz: m.z_axis.z,
            xy: m.y_axis.x,
            xz: m.z_axis.x,
            yz: m.z_axis.y,
        }
    }
}

impl From<SymmetricTensor<f64>> for DMat3 {
    fn from(s: SymmetricTensor<f64>) -> Self {
        Self::from_cols(
            DVec3::new(s.xx, s.xy, s.xz),
            DVec3::new(s.xy, s.yy, s.yz),
            DVec3::new(s.xz, s.yz, s.zz),
        )
    }
}

impl SymmetricTensor<f64x2> {
    pub fn pair(left: SymmetricTensor<f64>, right: SymmetricTensor<f64>) -> Self {
        let pair = |left, right| f64x2::new([left, right]);
        Self {
            xx: pair(left.xx, right.xx),
            yy: pair(left.yy, right.yy),
            zz: pair(left.zz, right.zz),
            xy: pair(left.xy, right.xy),
            xz: pair(left.xz, right.xz),
            yz: pair(left.yz, right.yz),
        }
    }

    pub fn sum(self) -> SymmetricTensor<f64> {
        SymmetricTensor {
            xx: sum(self.xx),
            yy: sum(self.yy),
            zz: sum(self.zz),
            xy: sum(self.xy),
            xz: sum(self.xz),
            yz: sum(self.yz),
        }
    }
}

pub fn sum(pair: f64x2) -> f64 {
    let [left, right] = pair.to_array();
    left + right
}

/// A rotation by its matrix.
#[derive(Debug, Clone, Copy)]
pub struct RotationMatrix<T> {
    x_axis: Vec3<T>,
    y_axis: Vec3<T>,
    z_axis: Vec3<T>,
}

impl<T: Real> RotationMatrix<T> {
    /// Of a unit quaternion.
    #[inline(always)]
    fn of(v: Vec3<T>, w: T) -> Self {
        let double = v + v;
        let (xx, yy, zz) = (v.x * double.x, v.y * double.y, v.z * double.z);
        let (xy, xz, yz) = (v.x * double.y, v.x * double.z, v.y * double.z);
        let (wx, wy, wz) = (w * double.x, w * double.y, w * double.z);
        Self {
            x_axis: Vec3 {
                x: T::ONE - (yy + zz),
                y: xy + wz,
                z: xz - wy,
            },
            y_axis: Vec3 {
                x: xy - wz,
                y: T::ONE - (xx + zz),
                z: yz + wx,
            },
            z_axis: Vec3 {
                x: xz + wy,
                y: yz - wx,
                z: T::ONE - (xx + yy),
            },
        }
    }

    /// This turn after another one.
    #[inline(always)]
    pub fn after(&self, first: &Self) -> Self {
        Self {
            x_axis: self.vector(first.x_axis),
            y_axis: self.vector(first.y_axis),
            z_axis: self.vector(first.z_axis),
        }
    }

    #[inline(always)]
    pub fn vector(&self, v: Vec3<T>) -> Vec3<T> {
        self.x_axis * v.x + self.y_axis * v.y + self.z_axis * v.z
    }

    /// R S Rᵀ.
    #[inline(always)]
    pub fn tensor(&self, s: SymmetricTensor<T>) -> SymmetricTensor<T> {
        let (a, b, c) = (self.x_axis, self.y_axis, self.z_axis);
        let x = a * s.xx + b * s.xy + c * s.xz;
        let y = a * s.xy + b * s.yy + c * s.yz;
        let z = a * s.xz + b * s.yz + c * s.zz;
        SymmetricTensor {
            xx: x.x * a.x + y.x * b.x + z.x * c.x,
            yy: x.y * a.y + y.y * b.y + z.y * c.y,
            zz: x.z * a.z + y.z * b.z + z.z * c.z,
            xy: x.x * a.y + y.x * b.y + z.x * c.y,
            xz: x.x * a.z + y.x * b.z + z.x * c.z,
            yz: x.y * a.z + y.y * b.z + z.y * c.z,
        }
    }
}

impl From<DQuat> for RotationMatrix<f64> {
    fn from(q: DQuat) -> Self {
        Self::of(DVec3::new(q.x, q.y, q.z).into(), q.w)
    }
}

impl RotationMatrix<f64x2> {
    /// The same on both sides.
    pub fn both(turn: &RotationMatrix<f64>) -> Self {
        Self {
            x_axis: Vec3::both(turn.x_axis),
            y_axis: Vec3::both(turn.y_axis),
            z_axis: Vec3::both(turn.z_axis),
        }
    }

    pub fn pair(left: DQuat, right: DQuat) -> Self {
        let v = Vec3::pair(
            DVec3::new(left.x, left.y, left.z),
            DVec3::new(right.x, right.y, right.z),
        );
        Self::of(v, f64x2::new([left.w, right.w]))
    }
}
