//! Floor 0. Owns: quantities and our own kinds of them, reading `30 in`, writing numbers.
//! Never: a bare `f64` where a quantity belongs.
//!
//! Our mistakes are mixing kinds of kilogram, so every kind that must not mix is a base dimension
//! of its own: kg of CO2e are not kg of solvent, m2 of sheeting bought are not m2 of face,
//! kWh at the meter are not MJ of primary energy. The compiler then refuses the mixture.
//!
//! A sum of two loads is refused, the same sum of one kind is not:
//! ```
//! use faceload_core::quantity::{Climate, Solvent, of};
//! let sum = of::<Climate>(1.0) + of::<Climate>(2.0);
//! # let _: fn() -> Solvent = || of(0.0);
//! assert_eq!(sum, of(3.0));
//! ```
//! ```compile_fail
//! use faceload_core::quantity::{Climate, Solvent, of};
//! let sum = of::<Climate>(1.0) + of::<Solvent>(2.0);
//! # let _: fn() -> Solvent = || of(0.0);
//! assert_eq!(sum, of(3.0));
//! ```
//! A factor for electricity does not fit fuel heat:
//! ```
//! use faceload_core::quantity::{Climate, Co2ePerKwh, Electricity, FuelHeat, of};
//! let load: Climate = of::<Electricity>(10.0) * of::<Co2ePerKwh>(0.4);
//! # let _: fn() -> FuelHeat = || of(0.0);
//! assert_eq!(load, of(4.0));
//! ```
//! ```compile_fail
//! use faceload_core::quantity::{Climate, Co2ePerKwh, Electricity, FuelHeat, of};
//! let load: Climate = of::<FuelHeat>(10.0) * of::<Co2ePerKwh>(0.4);
//! # let _: fn() -> FuelHeat = || of(0.0);
//! assert_eq!(load, of(4.0));
//! ```
//! Energy at the meter does not add to primary energy:
//! ```
//! use faceload_core::quantity::{Electricity, PrimaryEnergy, of};
//! let sum = of::<PrimaryEnergy>(3.6) + of::<PrimaryEnergy>(1.0);
//! # let _: fn() -> Electricity = || of(0.0);
//! assert_eq!(sum, of(4.6));
//! ```
//! ```compile_fail
//! use faceload_core::quantity::{Electricity, PrimaryEnergy, of};
//! let sum = of::<PrimaryEnergy>(3.6) + of::<Electricity>(1.0);
//! # let _: fn() -> Electricity = || of(0.0);
//! assert_eq!(sum, of(4.6));
//! ```

#![allow(clippy::disallowed_methods, reason = "the library's macro writes `powi` and `mul_add`; nobody calls them")]

mod kind;
mod number;
mod rounding;
mod span;
mod unit_text;

pub use faceload_numeric::{exp, ln, normal_quantile, normal_quantiles};
pub use kind::*;
pub(crate) use number::nearest;
pub use number::{NumberFault, group, read_number, write_number};
pub use rounding::{last_place, write_to_place};
pub use span::{Span, SpanFault};
pub use unit_text::{UnitFault, UnitText};

/// One base quantity: its module, type, unit and the place of its exponent.
macro_rules! base {
    ($module:ident, $name:ident, $doc:literal, $unit:ident, $short:literal, $($exponent:ident)+) => {
        #[macro_use]
        #[doc = $doc]
        pub mod $module {
            #![allow(missing_docs, reason = "the library's macro writes items without documentation")]
            quantity! {
                quantity: $name; $doc;
                dimension: Kinds<$($exponent),+>;
                units { @$unit: 1.0; $short, $doc, $doc; }
            }
        }
    };
}

base!(length, Length, "length", metre, "m", P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(time, Time, "time", hour, "h", Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(warmth, Warmth, "temperature interval", kelvin, "K", Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(mass, Mass, "mass", kilogram, "kg", Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(electricity, Electricity, "electricity at the meter", kilowatt_hour, "kWh", Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(fuel_heat, FuelHeat, "heat, for fuels by higher heating value", megajoule_heat, "MJ heat", Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(primary_energy, PrimaryEnergy, "primary energy", megajoule_primary, "MJ primary", Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(climate, Climate, "mass of CO2 equivalent", kilogram_co2e, "kg CO2e", Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(solvent, Solvent, "mass of volatile organic compounds to air", kilogram_voc, "kg VOC", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0 Z0);
base!(waste, Waste, "mass of waste", kilogram_waste, "kg waste", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0 Z0);
base!(water, Water, "volume of water", litre_water, "L water", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0 Z0);
base!(liquid, Liquid, "volume of ink or another shop liquid", litre_liquid, "L", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0 Z0);
base!(face_area, FaceArea, "area of sign face", square_metre_face, "m2 face", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0 Z0);
base!(bought_area, BoughtArea, "area of material bought", square_metre_bought, "m2 bought", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0 Z0);
base!(service, Service, "time in service", service_year, "year", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1 Z0);
base!(piece, Piece, "pieces", piece, "pieces", Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 Z0 P1);

system! {
    /// The system of quantities: sixteen kinds that must not mix.
    quantities: Kinds {
        length: metre, DimLength;
        time: hour, DimTime;
        warmth: kelvin, DimWarmth;
        mass: kilogram, DimMass;
        electricity: kilowatt_hour, DimElectricity;
        fuel_heat: megajoule_heat, DimFuelHeat;
        primary_energy: megajoule_primary, DimPrimaryEnergy;
        climate: kilogram_co2e, DimClimate;
        solvent: kilogram_voc, DimSolvent;
        waste: kilogram_waste, DimWaste;
        water: litre_water, DimWater;
        liquid: litre_liquid, DimLiquid;
        face_area: square_metre_face, DimFaceArea;
        bought_area: square_metre_bought, DimBoughtArea;
        service: service_year, DimService;
        piece: piece, DimPiece;
    }
    /// The base units.
    units: BaseUnits {
        mod length::Length,
        mod time::Time,
        mod warmth::Warmth,
        mod mass::Mass,
        mod electricity::Electricity,
        mod fuel_heat::FuelHeat,
        mod primary_energy::PrimaryEnergy,
        mod climate::Climate,
        mod solvent::Solvent,
        mod waste::Waste,
        mod water::Water,
        mod liquid::Liquid,
        mod face_area::FaceArea,
        mod bought_area::BoughtArea,
        mod service::Service,
        mod piece::Piece,
    }
}

/// The quantities, stored as `f64` in their base units.
mod double {
    #![allow(missing_docs, reason = "the library's macro writes items without documentation")]
    Kinds!(crate::quantity, f64);
}
pub use double::*;
