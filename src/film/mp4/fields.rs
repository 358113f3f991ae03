//! Numbers one after the other, the highest byte first.

use crate::fault::FilmFault;

/// What is left to be read.
#[derive(Clone, Copy)]
pub(crate) struct Fields<'a>(pub &'a [u8]);

impl<'a> Fields<'a> {
    fn take<const N: usize>(&mut self) -> Result<[u8; N], FilmFault> {
        let (first, rest) = self.0.split_first_chunk().ok_or(FilmFault::Damaged)?;
        self.0 = rest;
        Ok(*first)
    }

    pub fn skip(&mut self, bytes: usize) -> Result<(), FilmFault> {
        self.0 = self.0.get(bytes..).ok_or(FilmFault::Damaged)?;
        Ok(())
    }

    pub fn u8(&mut self) -> Result<u8, FilmFault> {
        self.take().map(u8::from_be_bytes)
    }

    pub fn u16(&mut self) -> Result<u16, FilmFault> {
        self.take().map(u16::from_be_bytes)
    }

    pub fn u32(&mut self) -> Result<u32, FilmFault> {
        self.take().map(u32::from_be_bytes)
    }

    pub fn i32(&mut self) -> Result<i32, FilmFault> {
        self.take().map(i32::from_be_bytes)
    }

    pub fn u64(&mut self) -> Result<u64, FilmFault> {
        self.take().map(u64::from_be_bytes)
    }

    pub fn i64(&mut self) -> Result<i64, FilmFault> {
        self.take().map(i64::from_be_bytes)
    }

    /// The version of a table and its flags.
    pub fn version(&mut self) -> Result<(u8, u32), FilmFault> {
        let both = self.u32()?;
        Ok(((both >> 24) as u8, both & 0x00ff_ffff))
    }

    /// A time or duration, of 64 bits from version 1 on.
    pub fn time(&mut self, version: u8) -> Result<u64, FilmFault> {
        if version == 0 {
            self.u32().map(u64::from)
        } else {
            self.u64()
        }
    }
}
