//! Panics without their messages. In the page a panic ends the program by a trap, and its message goes nowhere, since there
//! is no terminal; so a call that can only panic becomes that trap, and what was worked out for the message goes with it.

use std::collections::HashSet;

use walrus::ir::{Call, Instr, InstrSeq, InstrSeqId, Unreachable, Visitor, dfs_in_order};
use walrus::{FunctionId, FunctionKind, LocalFunction, Module, passes::gc};

/// What the names of the functions hold that all panics go through.
const ROOT: &str = "]::panicking::panic";

/// Puts traps in place of calls that panic, and takes out what nothing calls any more.
pub fn put(module: &mut Module) {
    let panicking = panicking(module);
    for (_, function) in module.funcs.iter_local_mut() {
        for sequence in sequences(function) {
            let instructions = &mut function.block_mut(sequence).instrs;
            let Some(at) = instructions.iter().position(|(one, _)| calls(one, &panicking)) else { continue };
            let place = instructions[at].1;
            instructions.truncate(at);
            while instructions.last().is_some_and(|(one, _)| is_lost(one)) {
                instructions.pop();
            }
            instructions.push((Unreachable {}.into(), place));
        }
    }
    gc::run(module);
}

fn calls(one: &Instr, functions: &HashSet<FunctionId>) -> bool {
    matches!(one, Instr::Call(Call { func }) if functions.contains(func))
}

/// Whether all that it does is lost when the program ends right after.
fn is_lost(one: &Instr) -> bool {
    use Instr::{Binop, Const, Drop, GlobalGet, Load, LocalGet, LocalSet, LocalTee, Select, Store, Unop};
    matches!(
        one,
        Const(_) | LocalGet(_) | LocalSet(_) | LocalTee(_) | GlobalGet(_) | Binop(_) | Unop(_) | Select(_) | Drop(_) | Load(_) | Store(_)
    )
}

fn sequences(function: &LocalFunction) -> Vec<InstrSeqId> {
    struct All(Vec<InstrSeqId>);
    impl<'a> Visitor<'a> for All {
        fn start_instr_seq(&mut self, sequence: &'a InstrSeq) {
            self.0.push(sequence.id());
        }
    }
    let mut all = All(Vec::new());
    dfs_in_order(&mut all, function, function.entry_block());
    all.0
}

/// The functions that panic and do nothing else: those all panics go through, and those that only lead there.
fn panicking(module: &Module) -> HashSet<FunctionId> {
    let is_root = |id: &FunctionId| module.funcs.get(*id).name.as_deref().is_some_and(|name| name.contains(ROOT));
    let mut known: HashSet<FunctionId> = module.funcs.iter_local().map(|(id, _)| id).filter(is_root).collect();
    loop {
        let before = known.len();
        for (id, function) in module.funcs.iter_local() {
            if !known.contains(&id) && only_leads(module, function, &known) {
                known.insert(id);
            }
        }
        if known.len() == before {
            return known;
        }
    }
}

/// Whether a function always ends in one of those, without a word to the page before.
fn only_leads(module: &Module, function: &LocalFunction, known: &HashSet<FunctionId>) -> bool {
    let entry = function.entry_block();
    let ends = function.block(entry).instrs.iter().any(|(one, _)| calls(one, known));
    ends && sequences(function).into_iter().flat_map(|sequence| &function.block(sequence).instrs).all(|(one, _)| match one {
        Instr::Call(call) => !matches!(module.funcs.get(call.func).kind, FunctionKind::Import(_)),
        Instr::CallIndirect(_) | Instr::Return(_) => false,
        Instr::Br(branch) => branch.block != entry,
        Instr::BrIf(branch) => branch.block != entry,
        Instr::BrTable(branch) => branch.default != entry && !branch.blocks.contains(&entry),
        _ => true,
    })
}

#[cfg(test)]
mod tests {
    use super::{put, sequences};
    use walrus::ir::Instr;
    use walrus::{FunctionBuilder, FunctionId, Module, ValType};

    fn function(module: &mut Module, name: &str, build: impl FnOnce(&mut walrus::InstrSeqBuilder<'_>)) -> FunctionId {
        let mut builder = FunctionBuilder::new(&mut module.types, &[], &[]);
        builder.name(name.to_owned());
        build(&mut builder.func_body());
        let id = builder.finish(Vec::new(), &mut module.funcs);
        module.exports.add(name, id);
        id
    }

    /// How many instructions each function has, and whether its last is the trap.
    fn left(module: &Module, id: FunctionId) -> (usize, bool) {
        let function = module.funcs.get(id).kind.unwrap_local();
        let all: Vec<&Instr> = sequences(function).into_iter().flat_map(|one| &function.block(one).instrs).map(|(one, _)| one).collect();
        (all.len(), matches!(all.last(), Some(Instr::Unreachable(_))))
    }

    #[test]
    fn calls_that_only_panic_become_traps_and_others_stay() {
        let mut module = Module::default();
        let imported = module.types.add(&[], &[]);
        let (told, _) = module.add_import_func("page", "told", imported);
        let count = module.globals.add_local(ValType::I32, true, false, walrus::ConstExpr::Value(walrus::ir::Value::I32(0)));
        let panic = function(&mut module, "core[1]::panicking::panic_fmt", |body| {
            body.unreachable();
        });
        let leads = function(&mut module, "core[1]::option::unwrap_failed", |body| {
            body.i32_const(7).drop().call(panic).unreachable();
        });
        let caller = function(&mut module, "caller", |body| {
            body.i32_const(1).global_set(count).i32_const(2).drop().call(leads).unreachable();
        });
        let says = function(&mut module, "says", |body| {
            body.call(told).call(panic).unreachable();
        });
        let calls_it = function(&mut module, "calls it", |body| {
            body.call(says);
        });
        put(&mut module);
        assert_eq!(left(&module, caller), (3, true), "the counting stays, the message goes");
        assert_eq!(left(&module, says), (2, true), "the page is still told");
        assert_eq!(left(&module, calls_it), (1, false), "a function that tells the page is called as before");
    }
}
