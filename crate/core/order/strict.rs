//! JSON in which each key stands once: a second one would silently win.

use std::fmt;

use serde::de::{Deserialize, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::map::Entry;
use serde_json::{Map, Number, Value};

/// A tree of values without keys written twice.
pub(super) struct Strict(pub Value);

/// How the fault of a second key begins.
const TWICE: &str = "key written twice: ";

/// The key that stands a second time, where that is the fault.
pub(super) fn key_written_twice(error: &serde_json::Error) -> Option<String> {
    let text = error.to_string();
    let (key, _) = text.strip_prefix(TWICE)?.rsplit_once(" at line ")?;
    Some(key.to_owned())
}

impl<'de> Deserialize<'de> for Strict {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(Tree).map(Self)
    }
}

struct Tree;

impl<'de> Visitor<'de> for Tree {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_bool<E>(self, flag: bool) -> Result<Value, E> {
        Ok(Value::Bool(flag))
    }

    fn visit_i64<E>(self, number: i64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_u64<E>(self, number: u64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_f64<E: Error>(self, number: f64) -> Result<Value, E> {
        Number::from_f64(number).map(Value::Number).ok_or_else(|| E::custom("a number that is not finite"))
    }

    fn visit_str<E>(self, text: &str) -> Result<Value, E> {
        Ok(Value::String(text.to_owned()))
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Value, A::Error> {
        let mut values = Vec::new();
        while let Some(Strict(value)) = list.next_element()? {
            values.push(value);
        }
        Ok(Value::Array(values))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut table: A) -> Result<Value, A::Error> {
        let mut map = Map::new();
        while let Some(key) = table.next_key::<String>()? {
            match map.entry(key) {
                Entry::Occupied(known) => return Err(A::Error::custom(format!("{TWICE}{}", known.key()))),
                Entry::Vacant(place) => {
                    let Strict(value) = table.next_value()?;
                    place.insert(value);
                }
            }
        }
        Ok(Value::Object(map))
    }
}
