//! What every quantity can do, and the names of those made by division.

#![deny(clippy::disallowed_methods)]

use std::ops::Div;

use super::*;
use uom::typenum::Integer;

/// The exponents of the sixteen base kinds, in the order of the system.
pub type Exponents = [i8; 16];

/// A quantity of a known kind, held in base units.
pub trait Kind: Copy {
    /// Which kind: the exponents of the base kinds.
    const EXPONENTS: Exponents;
    /// The number in base units.
    fn base(self) -> f64;
    /// The quantity with this number of base units.
    fn from_base(number: f64) -> Self;
}

impl<D: Dimension + ?Sized> Kind for Quantity<D, BaseUnits<f64>, f64> {
    const EXPONENTS: Exponents = [
        D::DimLength::I8,
        D::DimTime::I8,
        D::DimWarmth::I8,
        D::DimMass::I8,
        D::DimElectricity::I8,
        D::DimFuelHeat::I8,
        D::DimPrimaryEnergy::I8,
        D::DimClimate::I8,
        D::DimSolvent::I8,
        D::DimWaste::I8,
        D::DimWater::I8,
        D::DimLiquid::I8,
        D::DimFaceArea::I8,
        D::DimBoughtArea::I8,
        D::DimService::I8,
        D::DimPiece::I8,
    ];

    fn base(self) -> f64 {
        self.value
    }

    fn from_base(number: f64) -> Self {
        Self { dimension: std::marker::PhantomData, units: std::marker::PhantomData, value: number }
    }
}

/// A quantity of so many base units: `of::<Climate>(3.0)` is 3 kg CO2e.
pub fn of<Q: Kind>(number: f64) -> Q {
    Q::from_base(number)
}

/// `Per<Climate, Electricity>` is kg CO2e per kWh.
pub type Per<A, B> = <A as Div<B>>::Output;

/// A number without a unit.
pub type Share = Per<Mass, Mass>;
/// m2 that are neither face nor bought: screens, blanks, scanned prints.
pub type Area = <Length as std::ops::Mul<Length>>::Output;
/// m3 of air.
pub type Volume = <Area as std::ops::Mul<Length>>::Output;
/// m3/h.
pub type AirFlow = Per<Volume, Time>;
/// kW at the meter.
pub type Power = Per<Electricity, Time>;
/// kg per litre of ink or shop liquid.
pub type Density = Per<Mass, Liquid>;
/// kg per m2 bought.
pub type Grammage = Per<Mass, BoughtArea>;
/// kg CO2e per kWh at the meter.
pub type Co2ePerKwh = Per<Climate, Electricity>;
/// kg CO2e per kg of material.
pub type Co2ePerKg = Per<Climate, Mass>;
/// kg x km of freight.
pub type Freight = <Mass as std::ops::Mul<Length>>::Output;
