//! Writes a module so that it compresses well: its functions in another order, and shorter names.

use anyhow::Result;
use std::collections::BTreeMap;
use std::convert::Infallible;
use wasm_encoder::reencode::{Error, Reencode, utils};
use wasm_encoder::{
    CodeSection, DataSection, ExportSection, FunctionSection, ImportSection, Module,
};
use wasmparser::{
    CodeSectionReader, Data, Export, FunctionBody, FunctionSectionReader,
    ImportSectionReader, Parser, Payload, TypeRef,
};

/// The names to be replaced, and by which.
pub(crate) type Names = BTreeMap<String, String>;

/// Writes a module with its functions in another order.
#[derive(Debug)]
struct Writer<'a> {
    names: &'a Names,
    /// The places of the functions that the module has of its own, in the new order.
    order: Vec<usize>,
    /// The new number of each function, those that are imported included.
    numbers: Vec<u32>,
}

/// The module with other names for what it imports and exports. Functions of one type stand
/// together, and of these the ones that begin alike.
pub(crate) fn rewritten(module: &[u8], names: &Names) -> Result<Vec<u8>> {
    let (mut imported, mut types, mut bodies) = (0, Vec::new(), Vec::new());
    for payload in Parser::new(0).parse_all(module) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    imported += usize::from(matches!(import?.ty, TypeRef::Func(_)));
                }
            }
            Payload::FunctionSection(section) => {
                types = section.into_iter().collect::<Result<Vec<u32>, _>>()?;
            }
            Payload::CodeSectionEntry(body) => bodies.push(body.as_bytes()),
            _ => {}
        }
    }
    let mut order: Vec<usize> = (0..bodies.len()).collect();
    order.sort_by_key(|&place| (types[place], bodies[place]));
    let mut numbers: Vec<u32> = (0..).take(imported + order.len()).collect();
    for (&place, number) in order.iter().zip((0..).skip(imported)) {
        numbers[imported + place] = number;
    }
    let mut written = Module::new();
    let mut writer = Writer { names, order, numbers };
    writer.parse_core_module(&mut written, Parser::new(0), module)?;
    Ok(written.finish())
}

impl Writer<'_> {
    fn name<'a>(&'a self, name: &'a str) -> &'a str {
        self.names.get(name).map_or(name, String::as_str)
    }
}

impl Reencode for Writer<'_> {
    type Error = Infallible;

    fn function_index(&mut self, index: u32) -> Result<u32, Error<Infallible>> {
        Ok(self.numbers[index as usize])
    }

    fn parse_import_section(
        &mut self,
        imports: &mut ImportSection,
        section: ImportSectionReader<'_>,
    ) -> Result<(), Error<Infallible>> {
        for import in section.into_imports() {
            let import = import?;
            let ty = self.entity_type(import.ty)?;
            imports.import(import.module, self.name(import.name), ty);
        }
        Ok(())
    }

    fn parse_export(
        &mut self,
        exports: &mut ExportSection,
        export: Export<'_>,
    ) -> Result<(), Error<Infallible>> {
        let index = self.external_index(export.kind, export.index)?;
        let kind = self.export_kind(export.kind)?;
        exports.export(self.name(export.name), kind, index);
        Ok(())
    }

    fn parse_function_section(
        &mut self,
        functions: &mut FunctionSection,
        section: FunctionSectionReader<'_>,
    ) -> Result<(), Error<Infallible>> {
        let types = section.into_iter().collect::<Result<Vec<u32>, _>>()?;
        for &place in &self.order {
            functions.function(types[place]);
        }
        Ok(())
    }

    fn parse_code_section(
        &mut self,
        code: &mut CodeSection,
        section: CodeSectionReader<'_>,
    ) -> Result<(), Error<Infallible>> {
        let bodies = section.into_iter().collect::<Result<Vec<FunctionBody<'_>>, _>>()?;
        for place in self.order.clone() {
            self.parse_function_body(code, bodies[place].clone())?;
        }
        Ok(())
    }

    fn parse_data(
        &mut self,
        data: &mut DataSection,
        datum: Data<'_>,
    ) -> Result<(), Error<Infallible>> {
        let bytes = without_commit(datum.data);
        utils::parse_data(self, data, Data { data: &bytes, ..datum })
    }
}

/// The same with zeros where the standard library's places in its source name a commit: the page
/// says which compiler made it, and every file would carry forty letters that cannot be
/// compressed.
fn without_commit(bytes: &[u8]) -> Vec<u8> {
    const BEFORE: &[u8] = b"/rustc/";
    const LETTERS: usize = 40;
    let mut bytes = bytes.to_vec();
    for start in BEFORE.len()..bytes.len().saturating_sub(LETTERS) {
        let (before, from) = bytes.split_at_mut(start);
        let commit = &mut from[..LETTERS];
        if before.ends_with(BEFORE) && commit.iter().all(u8::is_ascii_hexdigit) {
            commit.fill(b'0');
        }
    }
    bytes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_commit_of_the_standard_library_is_left_out() {
        let place = |commit: &str| format!("at /rustc/{commit}/library/core.rs, and on");
        let commit = "59807616e1fa2540724bfbac14d7976d7e4a3860";
        let without = without_commit(place(commit).as_bytes());
        assert_eq!(without, place(&"0".repeat(40)).as_bytes());
        for other in ["not-a-commit", &commit[1..]] {
            assert_eq!(without_commit(place(other).as_bytes()), place(other).as_bytes());
        }
    }
    use wasm_encoder::{
        ConstExpr, ElementSection, Elements, EntityType, ExportKind, Function,
        Instruction, RefType, TableSection, TableType, TypeSection, ValType,
    };
    use wasmparser::{Operator, Validator};

    /// A module whose function of number n, from 1 on, gives n, in one of two ways; function 0
    /// is imported.
    fn module() -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([], [ValType::I32]);
        types.ty().function([ValType::I32], [ValType::I32]);
        let mut imports = ImportSection::new();
        imports.import("outside", "__wbg_now_f50c7ae6ec1ca87c", EntityType::Function(0));
        let (mut functions, mut code) = (FunctionSection::new(), CodeSection::new());
        for (number, ty) in [(1, 1), (2, 0), (3, 1), (4, 0)] {
            functions.function(ty);
            let mut function = Function::new([]);
            if number > 2 {
                function.instruction(&Instruction::Nop);
            }
            function
                .instruction(&Instruction::I32Const(number))
                .instruction(&Instruction::End);
            code.function(&function);
        }
        let mut tables = TableSection::new();
        tables.table(TableType {
            element_type: RefType::FUNCREF,
            table64: false,
            minimum: 4,
            maximum: None,
            shared: false,
        });
        let mut exports = ExportSection::new();
        exports.export("one", ExportKind::Func, 1).export("four", ExportKind::Func, 4);
        exports.export("outside", ExportKind::Func, 0);
        let mut elements = ElementSection::new();
        let all = Elements::Functions([1, 2, 3, 4][..].into());
        elements.active(None, &ConstExpr::i32_const(0), all);
        let mut module = Module::new();
        module.section(&types).section(&imports).section(&functions).section(&tables);
        module.section(&exports).section(&elements).section(&code);
        module.finish()
    }

    /// What is found in a module.
    #[derive(Default)]
    struct Found {
        /// The exports with their numbers.
        exported: Vec<(String, u32)>,
        /// The numbers in the table.
        table: Vec<u32>,
        /// What each function gives.
        given: Vec<i32>,
        /// The type of each.
        types: Vec<u32>,
    }

    fn read(module: &[u8]) -> Found {
        let Found { mut exported, mut table, mut given, mut types } = Found::default();
        for payload in Parser::new(0).parse_all(module) {
            match payload.unwrap() {
                Payload::ExportSection(exports) => {
                    let exports = exports.into_iter().map(Result::unwrap);
                    exported =
                        exports.map(|one| (one.name.to_owned(), one.index)).collect();
                }
                Payload::ElementSection(elements) => {
                    let element = elements.into_iter().next().unwrap().unwrap();
                    let wasmparser::ElementItems::Functions(all) = element.items else {
                        panic!("other elements")
                    };
                    table = all.into_iter().map(Result::unwrap).collect();
                }
                Payload::FunctionSection(all) => {
                    types = all.into_iter().map(Result::unwrap).collect();
                }
                Payload::CodeSectionEntry(body) => {
                    let value = |op| match op {
                        Ok(Operator::I32Const { value }) => Some(value),
                        _ => None,
                    };
                    given.extend(
                        body.get_operators_reader().unwrap().into_iter().find_map(value),
                    );
                }
                _ => {}
            }
        }
        Found { exported, table, given, types }
    }

    #[test]
    fn functions_of_a_type_stand_together_and_are_still_found() {
        let names = [("__wbg_now_f50c7ae6ec1ca87c", "_0"), ("four", "_1")];
        let names = names.map(|(long, short)| (long.to_owned(), short.to_owned())).into();
        let before = module();
        Validator::new().validate_all(&before).unwrap();
        let after = rewritten(&before, &names).unwrap();
        Validator::new().validate_all(&after).unwrap();
        let Found { exported, table, given, types } = read(&after);
        assert_eq!(types, [0, 0, 1, 1]);
        // By their first bytes: what begins with nop (1) comes before what begins with a number.
        assert_eq!(given, [4, 2, 3, 1]);
        let number =
            |value: i32| given.iter().zip(1..).find(|(given, _)| **given == value);
        let number = |value| number(value).unwrap().1;
        assert_eq!(table, [1, 2, 3, 4].map(number));
        let export = |name: &str, number| (name.to_owned(), number);
        assert_eq!(
            exported,
            [export("one", number(1)), export("_1", number(4)), export("outside", 0)]
        );
        let holds =
            |text: &str| after.windows(text.len()).any(|at| at == text.as_bytes());
        assert!(holds("outside\x02_0") && !holds("__wbg_now"));
        assert_eq!(rewritten(&after, &Names::new()).unwrap(), after);
    }
}
