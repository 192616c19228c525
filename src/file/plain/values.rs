//! Plain text as values of the format, by way of serde.

use super::NotPlain;
use super::text::Plain;
use serde::de::{DeserializeSeed, Deserializer, EnumAccess, MapAccess, SeqAccess, VariantAccess, Visitor};
use std::borrow::Cow;

type Read<T> = Result<T, NotPlain>;

/// Values with commas between them, and perhaps one behind the last.
struct List<'r, 'de> {
    reader: &'r mut Plain<'de>,
    close: u8,
    may_go_on: bool,
}

impl<'de> List<'_, 'de> {
    fn goes_on(&mut self) -> Read<bool> {
        self.reader.skip_blanks();
        let goes_on = self.reader.peek() != Some(self.close);
        if goes_on && !self.may_go_on { Err(NotPlain) } else { Ok(goes_on) }
    }

    fn value<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<T::Value> {
        self.reader.skip_blanks();
        let value = seed.deserialize(&mut *self.reader)?;
        self.reader.skip_blanks();
        self.may_go_on = self.reader.takes(b',');
        Ok(value)
    }
}

impl<'de> Plain<'de> {
    fn bracketed<T>(&mut self, [open, close]: [u8; 2], read: impl FnOnce(List<'_, 'de>) -> Read<T>) -> Read<T> {
        self.needs(open)?;
        let value = read(List { reader: self, close, may_go_on: true })?;
        self.needs(close)?;
        Ok(value)
    }

    /// One value in brackets.
    fn wrapped<T>(&mut self, read: impl FnOnce(&mut Self) -> Read<T>) -> Read<T> {
        self.bracketed(*b"()", |list| {
            list.reader.skip_blanks();
            let value = read(&mut *list.reader)?;
            list.reader.skip_blanks();
            list.reader.takes(b',');
            Ok(value)
        })
    }
}

impl<'de> SeqAccess<'de> for List<'_, 'de> {
    type Error = NotPlain;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Read<Option<T::Value>> {
        if self.goes_on()? { self.value(seed).map(Some) } else { Ok(None) }
    }
}

impl<'de> MapAccess<'de> for List<'_, 'de> {
    type Error = NotPlain;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Read<Option<K::Value>> {
        if self.goes_on()? { seed.deserialize(&mut *self.reader).map(Some) } else { Ok(None) }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Read<V::Value> {
        self.reader.needs(b':')?;
        self.value(seed)
    }
}

impl<'de> EnumAccess<'de> for &mut Plain<'de> {
    type Error = NotPlain;
    type Variant = Self;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Read<(V::Value, Self)> {
        let variant = seed.deserialize(&mut *self)?;
        Ok((variant, self))
    }
}

impl<'de> VariantAccess<'de> for &mut Plain<'de> {
    type Error = NotPlain;

    fn unit_variant(self) -> Read<()> {
        Ok(())
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Read<T::Value> {
        self.wrapped(|reader| seed.deserialize(reader))
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Read<V::Value> {
        self.bracketed(*b"()", |list| visitor.visit_seq(list))
    }

    fn struct_variant<V: Visitor<'de>>(self, _: &'static [&'static str], visitor: V) -> Read<V::Value> {
        self.bracketed(*b"()", |list| visitor.visit_map(list))
    }
}

macro_rules! numbers {
    ($($deserialize:ident $visit:ident)*) => {
        $(fn $deserialize<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
            visitor.$visit(self.number()?)
        })*
    };
}

impl<'de> Deserializer<'de> for &mut Plain<'de> {
    type Error = NotPlain;

    numbers! {
        deserialize_i8 visit_i8 deserialize_i16 visit_i16 deserialize_i32 visit_i32 deserialize_i64 visit_i64
        deserialize_u8 visit_u8 deserialize_u16 visit_u16 deserialize_u32 visit_u32 deserialize_u64 visit_u64
        deserialize_f32 visit_f32 deserialize_f64 visit_f64
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.name()? {
            "true" => visitor.visit_bool(true),
            "false" => visitor.visit_bool(false),
            _ => Err(NotPlain),
        }
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.string()? {
            Cow::Borrowed(text) => visitor.visit_borrowed_str(text),
            Cow::Owned(text) => visitor.visit_string(text),
        }
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.deserialize_str(visitor)
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        visitor.visit_borrowed_str(self.name()?)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        match self.name()? {
            "None" => visitor.visit_none(),
            "Some" => self.wrapped(|reader| visitor.visit_some(reader)),
            _ => Err(NotPlain),
        }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Read<V::Value> {
        self.bracketed(*b"[]", |list| visitor.visit_seq(list))
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Read<V::Value> {
        self.bracketed(*b"()", |list| visitor.visit_seq(list))
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        self.bracketed(*b"()", |list| visitor.visit_map(list))
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Read<V::Value> {
        visitor.visit_enum(self)
    }

    /// What the format does not have: the full reader has the word.
    fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Read<V::Value> {
        Err(NotPlain)
    }

    serde::forward_to_deserialize_any! {
        i128 u128 char bytes byte_buf unit unit_struct newtype_struct tuple_struct map ignored_any
    }
}
