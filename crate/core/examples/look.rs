use faceload_core::{comparison::*, factors::Tables, load::*, order::*, analysis::swings};
fn main() {
    let tables = Tables::embedded().unwrap_or_else(|f| { for x in f { println!("{x}"); } std::process::exit(4) });
    for d in demo::DEMOS {
        let order = Order::read(Document::json(d.name, d.text).unwrap(), &tables).unwrap();
        let c = match compare(&tables, &order, Per::M2, Boundary::Face) { Ok(c) => c, Err(e) => { println!("{e:#?}"); return } };
        println!("== {} {}", d.name, d.title);
        for m in &c.models {
            print!("{:12}", m.alternative.id);
            for i in Indicator::ALL { print!(" {}={:.4}", i.id(), m.load(i, Per::M2).value); }
            println!();
            for s in faceload_core::inventory::Stage::ALL { let v: f64 = m.parts(Indicator::Co2e, Per::M2).filter(|p| p.stage == s.0).map(|p| m.value_of(p, Per::M2)).sum(); print!(" {}={:.3}", s.1, v); }
            println!();
        }
        for s in swings(&c, 0, 2, Indicator::Co2e).iter().take(10) { println!("   {:35} {:.3} {:.3}", c.models[0].book.input(s.input).id, s.at_low, s.at_high); }
    }
}
