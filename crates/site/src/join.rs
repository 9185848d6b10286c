//! Joins modules that are started together, and writes what comes of them as short as it can be.
//!
//! The cutting program gives each module every type of the whole, functions of its own by
//! which it calls those of others, and numbers with room for larger ones.

use crate::rewrite::{Names, rewritten};
use anyhow::{Context, Result, bail, ensure};
use std::collections::{BTreeMap, BTreeSet};
use std::convert::Infallible;
use wasm_encoder::reencode::{Error, Reencode};
use wasm_encoder::{
    CodeSection, DataSection, ElementSection, FunctionSection, ImportSection, Module,
    TypeSection,
};
use wasmparser::{
    Data, DataKind, Element, ElementItems, ElementKind, FuncType, FunctionBody, Import,
    Operator, Parser, Payload, TypeRef,
};

/// A module as it was cut.
#[derive(Default)]
struct Input<'a> {
    types: Vec<FuncType>,
    imports: Vec<Import<'a>>,
    /// The type of each function.
    functions: Vec<u32>,
    bodies: Vec<FunctionBody<'a>>,
    elements: Vec<Element<'a>>,
    data: Vec<Data<'a>>,
}

/// A function: the place of its module, and its own there.
type Function = (usize, usize);

/// Writes what stands in a module as it is to stand in the joined one.
struct Writer<'a> {
    input: &'a Input<'a>,
    /// The types of the joined one, which grow as they are used.
    types: &'a mut Vec<FuncType>,
    /// The number there of each function.
    numbers: &'a [u32],
}

impl Reencode for Writer<'_> {
    type Error = Infallible;

    fn type_index(&mut self, index: u32) -> Result<u32, Error<Infallible>> {
        let found = &self.input.types[index as usize];
        if !self.types.contains(found) {
            self.types.push(found.clone());
        }
        let known = self.types.iter().zip(0..).find(|(known, _)| *known == found);
        Ok(known.expect("it was put there").1)
    }

    fn function_index(&mut self, index: u32) -> Result<u32, Error<Infallible>> {
        Ok(self.numbers[index as usize])
    }
}

/// One module that does when it starts what these would do one after the other. Fails on what
/// no part has.
pub(crate) fn joined(modules: &[&[u8]]) -> Result<Vec<u8>> {
    let inputs: Vec<Input<'_>> =
        modules.iter().map(|module| Input::read(module)).collect::<Result<_>>()?;
    let (kept, numbers) = numbered(&inputs)?;
    let mut types = Vec::new();
    let (mut functions, mut code) = (FunctionSection::new(), CodeSection::new());
    for (module, function) in kept {
        let (input, numbers) = (&inputs[module], &numbers[module]);
        let mut writer = Writer { input, types: &mut types, numbers };
        functions.function(writer.type_index(input.functions[function])?);
        writer.parse_function_body(&mut code, input.bodies[function].clone())?;
    }
    let (mut elements, mut data) = (ElementSection::new(), DataSection::new());
    for (input, numbers) in inputs.iter().zip(&numbers) {
        let mut writer = Writer { input, types: &mut types, numbers };
        for element in &input.elements {
            writer.parse_element(&mut elements, element.clone())?;
        }
        for one in input.data.iter().filter(|one| !one.data.is_empty()) {
            writer.parse_data(&mut data, one.clone())?;
        }
    }
    let imports = imports(&inputs)?;
    let mut section = TypeSection::new();
    for one in types {
        let one = wasm_encoder::FuncType::try_from(one);
        section.ty().func_type(&one.ok().context("a type is of no function")?);
    }
    let mut module = Module::new();
    module.section(&section).section(&imports).section(&functions);
    module.section(&elements).section(&code).section(&data);
    rewritten(&module.finish(), &Names::new())
}

impl<'a> Input<'a> {
    fn read(module: &'a [u8]) -> Result<Self> {
        let mut input = Self::default();
        for payload in Parser::new(0).parse_all(module) {
            match payload? {
                Payload::TypeSection(types) => {
                    let types = types.into_iter_err_on_gc_types();
                    input.types = types.collect::<Result<_, _>>()?;
                }
                Payload::ImportSection(imports) => {
                    let imports = imports.into_imports();
                    input.imports = imports.collect::<Result<_, _>>()?;
                }
                Payload::FunctionSection(functions) => {
                    input.functions = functions.into_iter().collect::<Result<_, _>>()?;
                }
                Payload::CodeSectionEntry(body) => input.bodies.push(body),
                Payload::ElementSection(elements) => {
                    input.elements = elements.into_iter().collect::<Result<_, _>>()?;
                }
                Payload::DataSection(data) => {
                    input.data = data.into_iter().collect::<Result<_, _>>()?;
                }
                Payload::ExportSection(exports) if exports.count() == 0 => {}
                Payload::Version { .. }
                | Payload::DataCountSection { .. }
                | Payload::CodeSectionStart { .. }
                | Payload::CustomSection(_)
                | Payload::End(_) => {}
                other => bail!("a part of the module has what none should: {other:?}"),
            }
        }
        let is_active = |one: &Data<'_>| matches!(one.kind, DataKind::Active { .. });
        ensure!(input.data.iter().all(is_active), "data of a part waits to be copied");
        Ok(input)
    }

    /// The entry of the table that a function calls with its own arguments and does nothing
    /// else: so it calls what is in another module.
    fn handed_on(&self, function: usize) -> Result<Option<u32>> {
        let body = &self.bodies[function];
        let type_index = self.functions[function];
        let ops: Vec<Operator<'_>> =
            body.get_operators_reader()?.into_iter().collect::<Result<_, _>>()?;
        let arguments = self.types[type_index as usize].params().len();
        let Some(&Operator::I32Const { value }) = ops.get(arguments) else {
            return Ok(None);
        };
        let mut expected: Vec<Operator<'_>> = (0..)
            .take(arguments)
            .map(|local_index| Operator::LocalGet { local_index })
            .collect();
        expected.extend([
            Operator::I32Const { value },
            Operator::CallIndirect { type_index, table_index: 0 },
            Operator::End,
        ]);
        Ok(if ops == expected { Some(u32::try_from(value)?) } else { None })
    }
}

/// What the modules import, each thing once. They number imports of a kind from 0, so there
/// may be one of a kind.
fn imports(inputs: &[Input<'_>]) -> Result<ImportSection> {
    let mut found: Vec<Import<'_>> = Vec::new();
    for import in inputs.iter().flat_map(|input| &input.imports) {
        if !found.contains(import) {
            found.push(*import);
        }
    }
    let mut section = ImportSection::new();
    for (place, import) in found.iter().enumerate() {
        let kind = std::mem::discriminant(&import.ty);
        let is_other = |other: &Import<'_>| std::mem::discriminant(&other.ty) != kind;
        ensure!(
            !matches!(import.ty, TypeRef::Func(_)) && found[..place].iter().all(is_other),
            "the parts of the module import more than they used to: {import:?}"
        );
        let ty = wasm_encoder::EntityType::try_from(import.ty);
        section.import(import.module, import.name, ty.ok().context("an odd import")?);
    }
    Ok(section)
}

/// The functions that stand in the joined module, and the number there of every function of
/// each one. One that only hands on is the one that it hands on to, if that is here, and
/// otherwise the first one that does the same.
fn numbered(inputs: &[Input<'_>]) -> Result<(Vec<Function>, Vec<Vec<u32>>)> {
    let mut entries = entries(inputs)?;
    let mut leaders: Vec<Vec<Function>> = Vec::new();
    for (module, input) in inputs.iter().enumerate() {
        let leader = |function| {
            let leader = input
                .handed_on(function)?
                .map(|entry| *entries.entry(entry).or_insert((module, function)));
            Ok(leader.unwrap_or((module, function)))
        };
        leaders.push((0..input.bodies.len()).map(leader).collect::<Result<_>>()?);
    }
    let kept: BTreeSet<Function> = leaders.iter().flatten().copied().collect();
    let numbers: BTreeMap<Function, u32> = kept.iter().copied().zip(0..).collect();
    let number = |leader: &Function| numbers[leader];
    let numbers = leaders.iter().map(|leaders| leaders.iter().map(number).collect());
    Ok((kept.into_iter().collect(), numbers.collect()))
}

/// The functions that the modules put into the table, by their entries, but for those that only
/// hand on.
fn entries(inputs: &[Input<'_>]) -> Result<BTreeMap<u32, Function>> {
    let mut entries = BTreeMap::new();
    for (module, input) in inputs.iter().enumerate() {
        for element in &input.elements {
            let ElementKind::Active { offset_expr, .. } = &element.kind else {
                bail!("functions of a part wait to be put into the table")
            };
            let ElementItems::Functions(functions) = &element.items else {
                bail!("a part puts something else than functions into the table")
            };
            let Operator::I32Const { value } =
                offset_expr.get_operators_reader().read()?
            else {
                bail!("a part does not know where its functions belong in the table")
            };
            for (function, entry) in
                functions.clone().into_iter().zip(u32::try_from(value)?..)
            {
                let function = function? as usize;
                if input.handed_on(function)?.is_none() {
                    entries.insert(entry, (module, function));
                }
            }
        }
    }
    Ok(entries)
}

#[cfg(test)]
mod tests {
    use super::*;
    use wasm_encoder::{
        ConstExpr, Elements, EntityType, GlobalType, Instruction, MemoryType, RefType,
        TableType, ValType,
    };
    use wasmparser::Validator;

    const NUMBER: u32 = 2;

    fn imported(names: &[&str]) -> ImportSection {
        let mut imports = ImportSection::new();
        for name in names {
            let ty: EntityType = match *name {
                "memory" => MemoryType {
                    minimum: 1,
                    maximum: None,
                    memory64: false,
                    shared: false,
                    page_size_log2: None,
                }
                .into(),
                "table" => TableType {
                    element_type: RefType::FUNCREF,
                    table64: false,
                    minimum: 10,
                    maximum: None,
                    shared: false,
                }
                .into(),
                name => GlobalType {
                    val_type: ValType::I32,
                    mutable: name == "stack",
                    shared: false,
                }
                .into(),
            };
            imports.import("__wasm_split", name, ty);
        }
        imports
    }

    /// A module as it is cut: with types that it does not use, an export section without
    /// exports, and data of no length. Its functions take a number and give one; the first
    /// stands in the table.
    fn cut(
        imports: &[&str],
        bodies: &[Vec<Instruction<'_>>],
        entry: i32,
        bytes: &[u8],
    ) -> Vec<u8> {
        let mut types = TypeSection::new();
        types.ty().function([ValType::I64], []);
        types.ty().function([], [ValType::F64]);
        types.ty().function([ValType::I32], [ValType::I32]);
        let (mut functions, mut code) = (FunctionSection::new(), CodeSection::new());
        for body in bodies {
            functions.function(NUMBER);
            let mut function = wasm_encoder::Function::new([]);
            for instruction in body {
                function.instruction(instruction);
            }
            function.instruction(&Instruction::End);
            code.function(&function);
        }
        let mut elements = ElementSection::new();
        elements.active(
            None,
            &ConstExpr::i32_const(entry),
            Elements::Functions([0][..].into()),
        );
        let mut data = DataSection::new();
        data.active(0, &ConstExpr::i32_const(8), []);
        data.active(0, &ConstExpr::i32_const(8), bytes.iter().copied());
        let mut module = Module::new();
        module.section(&types).section(&imported(imports)).section(&functions);
        module.section(&wasm_encoder::ExportSection::new()).section(&elements);
        module.section(&code).section(&data);
        module.finish()
    }

    /// What calls an entry of the table.
    fn handing_on(entry: i32) -> Vec<Instruction<'static>> {
        let call = Instruction::CallIndirect { type_index: NUMBER, table_index: 0 };
        vec![Instruction::LocalGet(0), Instruction::I32Const(entry), call]
    }

    fn calling(functions: &[u32]) -> Vec<Instruction<'static>> {
        let calls = functions.iter().map(|function| Instruction::Call(*function));
        [Instruction::LocalGet(0)].into_iter().chain(calls).collect()
    }

    fn ops<'a>(input: &Input<'a>, function: usize) -> Vec<Operator<'a>> {
        let body = input.bodies[function].get_operators_reader().unwrap();
        body.into_iter().collect::<Result<_, _>>().unwrap()
    }

    #[test]
    fn what_is_joined_calls_itself_and_has_no_more_than_it_uses() {
        let first = [calling(&[1, 2]), handing_on(5), handing_on(9)];
        let first = cut(&["memory", "table", "stack"], &first, 3, b"a");
        let second = [calling(&[2, 1, 0]), handing_on(9), handing_on(3)];
        let second = cut(&["memory", "table"], &second, 5, b"bc");
        let module = joined(&[&first, &second]).unwrap();
        Validator::new().validate_all(&module).unwrap();
        let found = Input::read(&module).unwrap();
        assert_eq!(found.types.len(), 1);
        assert_eq!(found.functions, [0; 3]);
        let names: Vec<_> = found.imports.iter().map(|import| import.name).collect();
        assert_eq!(names, ["memory", "table", "stack"]);
        let data: Vec<_> = found.data.iter().map(|one| one.data).collect();
        assert_eq!(data, [&b"a"[..], b"bc"]);
        // Which of them is which: the two that stand in the table, and what calls the rest.
        let entries = entries(&[Input::read(&module).unwrap()]).unwrap();
        let (first, second) = (entries[&3].1, entries[&5].1);
        let other =
            (0..3).find(|&place| found.handed_on(place).unwrap() == Some(9)).unwrap();
        let calls = |function: usize| -> Vec<usize> {
            let called = |op: &Operator<'_>| match *op {
                Operator::Call { function_index } => Some(function_index as usize),
                _ => None,
            };
            ops(&found, function).iter().filter_map(called).collect()
        };
        assert_eq!(calls(first), [second, other]);
        assert_eq!(calls(second), [first, other, second]);
    }

    #[test]
    fn what_does_more_than_hand_on_stays() {
        let mut more = handing_on(5);
        more.insert(0, Instruction::Nop);
        let other_value = [Instruction::I32Const(1), Instruction::I32Const(5)];
        let other_value = [&other_value[..], &handing_on(5)[2..]].concat();
        let module =
            cut(&["memory", "table"], &[calling(&[1, 2]), more, other_value], 5, b"");
        let module = joined(&[&module]).unwrap();
        Validator::new().validate_all(&module).unwrap();
        assert_eq!(Input::read(&module).unwrap().bodies.len(), 3);
    }

    #[test]
    fn what_no_part_has_is_refused() {
        let module = |names: &[&str]| cut(names, &[calling(&[])], 3, b"a");
        let two = module(&["memory", "table", "stack", "base"]);
        assert!(joined(&[&two]).unwrap_err().to_string().contains("base"));
        let apart =
            (module(&["memory", "table", "stack"]), module(&["memory", "table", "base"]));
        assert!(joined(&[&apart.0, &apart.1]).is_err());
        let mut module = Module::new();
        module.section(&wasm_encoder::StartSection { function_index: 0 });
        assert!(
            joined(&[&module.finish()]).unwrap_err().to_string().contains("StartSection")
        );
        assert!(joined(&[b"\0asm"]).is_err());
    }
}
