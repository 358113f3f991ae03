//! A figure of a step: a quantity of what it sets up, or of a variant of that.
//!
//! In files it is the quantity's key, with the variant's name and a point before it where it is a variant's:
//! `turns`, `higher.turns`. In texts it stands in braces.

use crate::quantity::Quantity;
use crate::setup::Variant;

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Figure {
    pub quantity: Quantity,
    /// Its place among the step's variants; none for what is set up.
    pub variant: Option<usize>,
}

/// Why something is no figure.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NoFigure {
    Quantity(String),
    Variant(String),
    /// A brace that belongs to no other.
    Brace,
}

/// A place among the variants, and what is asked of it.
pub fn of_variant<'a>(
    written: &'a str,
    variants: &[Variant],
) -> Result<(Option<usize>, &'a str), NoFigure> {
    let Some((name, rest)) = written.split_once('.') else {
        return Ok((None, written));
    };
    let place = variants.iter().position(|variant| variant.name == name);
    let place = place.ok_or_else(|| NoFigure::Variant(name.to_owned()))?;
    Ok((Some(place), rest))
}

impl Figure {
    pub fn read(written: &str, variants: &[Variant]) -> Result<Self, NoFigure> {
        let (variant, key) = of_variant(written, variants)?;
        let quantity = Quantity::named(key).ok_or_else(|| NoFigure::Quantity(key.to_owned()))?;
        Ok(Self { quantity, variant })
    }

    pub fn written(&self, variants: &[Variant]) -> String {
        match self.variant.and_then(|place| variants.get(place)) {
            Some(variant) => format!("{}.{}", variant.name, self.quantity.key()),
            None => self.quantity.key().to_owned(),
        }
    }
}

/// A piece of a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Piece<'a> {
    Plain(&'a str),
    Figure(Figure),
}

/// The pieces of a text.
pub fn pieces<'a>(text: &'a str, variants: &[Variant]) -> Result<Vec<Piece<'a>>, NoFigure> {
    let mut pieces = Vec::new();
    let mut rest = text;
    while let Some((plain, behind)) = rest.split_once('{') {
        let (figure, behind) = behind.split_once('}').ok_or(NoFigure::Brace)?;
        pieces.push(Piece::Plain(plain));
        pieces.push(Piece::Figure(Figure::read(figure, variants)?));
        rest = behind;
    }
    pieces.push(Piece::Plain(rest));
    let stray = |piece: &Piece<'_>| matches!(piece, Piece::Plain(text) if text.contains('}'));
    if pieces.iter().any(stray) {
        return Err(NoFigure::Brace);
    }
    Ok(pieces)
}
