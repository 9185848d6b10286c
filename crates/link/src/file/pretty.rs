//! JSON with short lines: a corner of a fin on one line, and no `.0`.

use std::io::{self, Write};

use serde::Serialize;
use serde_json::ser::{Formatter, PrettyFormatter, Serializer};

/// The value as indented JSON, with a new line at the end.
pub(crate) fn json(value: &impl Serialize) -> String {
    let mut bytes = Vec::new();
    let mut serializer = Serializer::with_formatter(&mut bytes, Lines::default());
    value.serialize(&mut serializer).expect("a design has only text as keys");
    bytes.push(b'\n');
    String::from_utf8(bytes).expect("JSON is text")
}

/// Two spaces a level; an array within an array stands on one line.
#[derive(Default)]
struct Lines {
    pretty: PrettyFormatter<'static>,
    /// What encloses the present place, outermost first.
    open: Vec<Bracket>,
}

#[derive(PartialEq)]
enum Bracket {
    Array,
    Object,
}

impl Lines {
    fn on_one_line(&self) -> bool {
        self.open.ends_with(&[Bracket::Array, Bracket::Array])
    }
}

impl Formatter for Lines {
    fn write_f64<W: ?Sized + Write>(
        &mut self,
        writer: &mut W,
        value: f64,
    ) -> io::Result<()> {
        // The shortest digits that give the same number again, as `{}` writes them.
        write!(writer, "{value}")
    }

    fn begin_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.push(Bracket::Array);
        if self.on_one_line() {
            writer.write_all(b"[")
        } else {
            self.pretty.begin_array(writer)
        }
    }

    fn end_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        let on_one_line = self.on_one_line();
        self.open.pop();
        if on_one_line { writer.write_all(b"]") } else { self.pretty.end_array(writer) }
    }

    fn begin_array_value<W: ?Sized + Write>(
        &mut self,
        writer: &mut W,
        first: bool,
    ) -> io::Result<()> {
        match (self.on_one_line(), first) {
            (true, true) => Ok(()),
            (true, false) => writer.write_all(b", "),
            (false, _) => self.pretty.begin_array_value(writer, first),
        }
    }

    fn end_array_value<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.pretty.end_array_value(writer)
    }

    fn begin_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.push(Bracket::Object);
        self.pretty.begin_object(writer)
    }

    fn end_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.open.pop();
        self.pretty.end_object(writer)
    }

    fn begin_object_key<W: ?Sized + Write>(
        &mut self,
        writer: &mut W,
        first: bool,
    ) -> io::Result<()> {
        self.pretty.begin_object_key(writer, first)
    }

    fn begin_object_value<W: ?Sized + Write>(
        &mut self,
        writer: &mut W,
    ) -> io::Result<()> {
        self.pretty.begin_object_value(writer)
    }

    fn end_object_value<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.pretty.end_object_value(writer)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_short() {
        let value = serde_json::json!({
            "corners": [[0.0, 0.0], [12.5, -3.0]],
            "none": [],
            "sets": [{"corners": [[1.0, 2.0]]}],
        });
        let text = "{
  \"corners\": [
    [0, 0],
    [12.5, -3]
  ],
  \"none\": [],
  \"sets\": [
    {
      \"corners\": [
        [1, 2]
      ]
    }
  ]
}
";
        assert_eq!(json(&value), text);
    }
}
