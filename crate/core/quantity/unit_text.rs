//! Units as the tables and people write them: UCUM, with braces for what kind of kilogram.
//!
//! `kg{CO2e}/kW.h` is a factor for electricity; `mL{ink}/m2{face}` a film of ink. A person writes
//! `0.20 L/m2` without braces; the row it replaces says which litre and which square metre.
//! Inch, foot, mile, pound, short ton and gallon are exact (NIST Handbook 44-2026, Appendix C).

#![deny(clippy::disallowed_methods)]

use super::Exponents;

/// A unit: its text, the kinds it is made of, and its size in base units.
#[derive(Debug, Clone, PartialEq)]
pub struct UnitText {
    text: String,
    kind: Exponents,
    base: f64,
    plain: [i8; 5],
    size: f64,
}

/// Why a text is no unit.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum UnitFault {
    /// A part of the unit is unknown.
    Unknown(String),
    /// The braces do not fit the unit they follow.
    Braces(String),
}

/// The base kinds by their place in [`Exponents`].
#[derive(Clone, Copy, PartialEq)]
enum Base {
    Length,
    Time,
    Warmth,
    Mass,
    Electricity,
    Heat,
    Primary,
    Climate,
    Solvent,
    Waste,
    Water,
    Liquid,
    Face,
    Bought,
    Service,
    Piece,
}

/// What a unit measures before its braces are read. Years in service, counts and pure numbers have
/// no physical dimension.
#[derive(Clone, Copy, PartialEq)]
enum Plain {
    Length,
    Time,
    Warmth,
    Mass,
    Energy,
    Power,
    Volume,
    Year,
    None,
}

use Plain::{Energy, Mass, None as Bare, Power, Time, Volume, Warmth, Year};

const POUND: f64 = 0.453_592_37;
const GALLON: f64 = 3.785_411_784e-3;
/// Btu (IT) in MJ (NIST SP 811).
const BTU: f64 = 1.055_055_852_62e-3;

/// Every unit we read: text, what it measures, size in m, h, K, kg, MJ, MJ/h, m3.
const ATOMS: [(&str, Plain, f64); 47] = [
    ("m", Plain::Length, 1.0),
    ("km", Plain::Length, 1e3),
    ("cm", Plain::Length, 1e-2),
    ("mm", Plain::Length, 1e-3),
    ("um", Plain::Length, 1e-6),
    ("[in_i]", Plain::Length, 0.0254),
    ("in", Plain::Length, 0.0254),
    ("[ft_i]", Plain::Length, 0.3048),
    ("ft", Plain::Length, 0.3048),
    ("yd", Plain::Length, 0.9144),
    ("[mi_i]", Plain::Length, 1609.344),
    ("mi", Plain::Length, 1609.344),
    ("h", Time, 1.0),
    ("min", Time, 1.0 / 60.0),
    ("s", Time, 1.0 / 3600.0),
    ("d", Time, 24.0),
    ("K", Warmth, 1.0),
    ("kg", Mass, 1.0),
    ("g", Mass, 1e-3),
    ("mg", Mass, 1e-6),
    ("t", Mass, 1e3),
    ("[lb_av]", Mass, POUND),
    ("lb", Mass, POUND),
    ("[oz_av]", Mass, POUND / 16.0),
    ("oz", Mass, POUND / 16.0),
    ("[ston_av]", Mass, 2000.0 * POUND),
    ("MJ", Energy, 1.0),
    ("kJ", Energy, 1e-3),
    ("J", Energy, 1e-6),
    ("GJ", Energy, 1e3),
    ("MMBTU", Energy, 1e6 * BTU),
    ("therm", Energy, 1e5 * BTU),
    ("kW", Power, 3.6),
    ("W", Power, 3.6e-3),
    ("MW", Power, 3.6e3),
    ("kWh", Energy, 3.6),
    ("MWh", Energy, 3.6e3),
    ("L", Volume, 1e-3),
    ("mL", Volume, 1e-6),
    ("gal", Volume, GALLON),
    ("[gal_us]", Volume, GALLON),
    ("a", Year, 1.0),
    ("year", Year, 1.0),
    ("years", Year, 1.0),
    ("%", Bare, 0.01),
    ("1", Bare, 1.0),
    ("", Bare, 1.0),
];

impl UnitText {
    /// Reads a unit such as `kg{CO2e}/kW.h`.
    ///
    /// ```
    /// use faceload_core::quantity::{Co2ePerKwh, UnitText};
    /// let unit = UnitText::read("kg{CO2e}/kW.h").unwrap();
    /// assert!(unit.measures::<Co2ePerKwh>());
    /// ```
    pub fn read(text: &str) -> Result<Self, UnitFault> {
        let mut unit = Self { text: text.to_owned(), ..Self::pure() };
        let mut divide = false;
        let mut atom = String::new();
        // A meter's kWh is one unit here, so that `kg/kW.h` divides by all of it.
        let joined = text.trim().replace("kW.h", "kWh").replace("MW.h", "MWh");
        for c in joined.chars().chain(['.']) {
            let inside_braces = atom.contains('{') && !atom.contains('}');
            if matches!(c, '.' | '/') && !inside_braces {
                unit.take(&atom, if divide { -1 } else { 1 })?;
                atom.clear();
                divide = c == '/';
            } else {
                atom.push(c);
            }
        }
        Ok(unit)
    }

    /// Multiplies one part into the unit.
    fn take(&mut self, atom: &str, sign: i8) -> Result<(), UnitFault> {
        let (symbol, braces) = match atom.split_once('{') {
            Some((symbol, rest)) => (symbol, rest.trim_end_matches('}')),
            None => (atom, ""),
        };
        let (symbol, power) = match symbol.chars().last() {
            Some(last @ ('2' | '3')) if symbol.len() > 1 => (&symbol[..symbol.len() - 1], last as i8 - b'0' as i8),
            _ => (symbol, 1),
        };
        let (_, plain, size) = ATOMS
            .iter()
            .find(|(name, ..)| *name == symbol)
            .ok_or_else(|| UnitFault::Unknown(if symbol.is_empty() { atom.to_owned() } else { symbol.to_owned() }))?;
        let exponent = sign * power;
        let (kinds, per_kind) = kinds_of(*plain, power, braces).ok_or_else(|| UnitFault::Braces(atom.to_owned()))?;
        for (kind, count) in kinds {
            self.kind[kind as usize] += sign * count;
        }
        // A count in braces has no physical size, so it does not weigh in the plain reading.
        let physical: &[(usize, i8)] = match plain {
            Plain::Length => &[(0, 1)],
            Time => &[(1, 1)],
            Warmth => &[(2, 1)],
            Mass => &[(3, 1)],
            Energy => &[(4, 1)],
            Power => &[(4, 1), (1, -1)],
            Volume => &[(0, 3)],
            Year | Bare => &[],
        };
        for (place, count) in physical {
            self.plain[*place] += exponent * count;
        }
        self.size *= raise(*size, exponent);
        self.base *= raise(per_kind * raise(*size, power), sign);
        Ok(())
    }

    /// No unit: a pure number.
    pub fn pure() -> Self {
        Self { text: "1".to_owned(), kind: [0; 16], base: 1.0, plain: [0; 5], size: 1.0 }
    }

    /// The text as written.
    pub fn text(&self) -> &str {
        &self.text
    }

    /// Whether the unit measures this kind of quantity.
    pub fn measures<Q: super::Kind>(&self) -> bool {
        self.kind == Q::EXPONENTS
    }

    /// Whether both units measure the same kind.
    pub fn measures_as(&self, other: &Self) -> bool {
        self.kind == other.kind
    }

    /// The kinds the unit is made of.
    pub fn kind(&self) -> Exponents {
        self.kind
    }

    /// One of this unit, in base units.
    pub fn base(&self) -> f64 {
        self.base
    }

    /// How many of `self` one `other` is, where both measure the same physical thing; a person may
    /// leave out the braces.
    ///
    /// ```
    /// use faceload_core::quantity::UnitText;
    /// let row = UnitText::read("L{ink}/m2").unwrap();
    /// let typed = UnitText::read("mL/m2").unwrap();
    /// assert!((row.from_plain(&typed).unwrap() - 0.001).abs() < 1e-15);
    /// assert_eq!(row.from_plain(&UnitText::read("kg").unwrap()), None);
    /// ```
    pub fn from_plain(&self, other: &Self) -> Option<f64> {
        (self.plain == other.plain).then(|| other.size / self.size)
    }

    /// The unit as a person may type it: without the braces that only tell kinds apart.
    pub fn typed(&self) -> String {
        let mut text = self
            .text
            .replace("kW.h", "kWh")
            .replace("MW.h", "MWh")
            .replace("[in_i]", "in")
            .replace("[mi_i]", "mi")
            .replace("[lb_av]", "lb")
            .replace("[ft_i]", "ft")
            .replace("[gal_us]", "gal");
        while let Some(start) =
            text.match_indices('{').map(|(at, _)| at).find(|at| !text[*at..].starts_with("{piece}") && !text[*at..].starts_with("{day}"))
        {
            let end = text[start..].find('}').map_or(text.len(), |end| start + end + 1);
            text.replace_range(start..end, "");
        }
        if text == "1" { String::new() } else { text }
    }

    /// The unit as a reader sees it: `kg CO2e/kWh`, nothing for a pure number.
    pub fn words(&self) -> String {
        if self.text == "1" {
            return String::new();
        }
        let mut words = self.text.replace("kW.h", "kWh").replace("MW.h", "MWh").replace("kW.s/m3", "kW per m3/s");
        for (from, to) in [
            ("[in_i]", "in"),
            ("[mi_i]", "mile"),
            ("[lb_av]", "lb"),
            ("[ston_av]", "short ton"),
            ("MMBTU", "mmBtu"),
            ("um", "\u{b5}m"),
            (".", "\u{b7}"),
        ] {
            words = words.replace(from, to);
        }
        let words = words.replace("{liquid}", "").replace("/{", "/").replace('{', " ").replace('}', "");
        words.trim().replace("piece", "pieces")
    }
}

/// The kinds behind one atom, by its braces, and how many base units of that kind are in its size
/// (base units differ from m, kg, MJ, m3 for litres and kWh only).
fn kinds_of(plain: Plain, power: i8, braces: &str) -> Option<(Vec<(Base, i8)>, f64)> {
    let litres = 1e3;
    let kilowatt_hours = 1.0 / 3.6;
    Some(match (plain, braces) {
        (Plain::Length, "") => (vec![(Base::Length, power)], 1.0),
        (Plain::Length, "face") if power == 2 => (vec![(Base::Face, 1)], 1.0),
        (Plain::Length, "bought") if power == 2 => (vec![(Base::Bought, 1)], 1.0),
        (Time, "") => (vec![(Base::Time, power)], 1.0),
        (Warmth, "") => (vec![(Base::Warmth, power)], 1.0),
        (Mass, "" | "CO2" | "CH4" | "N2O") => (vec![(Base::Mass, power)], 1.0),
        (Mass, "CO2e") => (vec![(Base::Climate, power)], 1.0),
        (Mass, "VOC") => (vec![(Base::Solvent, power)], 1.0),
        (Mass, "waste") => (vec![(Base::Waste, power)], 1.0),
        (Energy, "") => (vec![(Base::Electricity, power)], kilowatt_hours),
        (Energy, "primary") => (vec![(Base::Primary, power)], 1.0),
        (Energy, "HHV" | "heat") => (vec![(Base::Heat, power)], 1.0),
        (Power, "") => (vec![(Base::Electricity, power), (Base::Time, -power)], kilowatt_hours),
        (Power, "heat") => (vec![(Base::Heat, power), (Base::Time, -power)], 1.0),
        (Power, "primary") => (vec![(Base::Primary, power), (Base::Time, -power)], 1.0),
        (Volume, "water") => (vec![(Base::Water, power)], litres),
        (Volume, "ink" | "liquid") => (vec![(Base::Liquid, power)], litres),
        (Volume, "") => (vec![(Base::Length, 3 * power)], 1.0),
        (Year, "") => (vec![(Base::Service, power)], 1.0),
        (Bare, "piece") => (vec![(Base::Piece, power)], 1.0),
        (Bare, _) => (vec![], 1.0),
        _ => return None,
    })
}

/// A small whole power, by repeated multiplication.
fn raise(size: f64, power: i8) -> f64 {
    let mut product = 1.0;
    for _ in 0..power.unsigned_abs() {
        product *= size;
    }
    if power < 0 { 1.0 / product } else { product }
}
