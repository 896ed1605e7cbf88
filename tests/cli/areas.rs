//! Areas: electricity areas, fuels, freight and vehicles, listed by name; own tables can add some.

use std::path::PathBuf;

use crate::program::faceload;

#[test]
fn every_area_and_fuel_is_listed_with_what_it_emits() {
    let ran = faceload(&["areas"]);
    assert_eq!((ran.code, ran.words.as_str()), (0, ""));
    for carrier in crate::shop::tables().carriers.values() {
        let line = ran.result.lines().find(|line| line.trim_start().starts_with(&format!("{} ", carrier.id)));
        let line = line.unwrap_or_else(|| panic!("no line of {}", carrier.id));
        assert!(line.contains(&carrier.full_label()) && line.contains("; grade "), "{line}");
    }
    for heading in ["Electricity areas, g CO2e per kWh at the meter", "Heating fuels, ", "Freight, ", "Vehicles, "] {
        assert!(ran.result.lines().any(|line| line.starts_with(heading)), "{heading}");
    }
}

#[test]
fn a_word_finds_an_area_by_id_name_country_or_year() {
    // 329.6 g/kWh generated, 7 % lost on the way: 354 at the meter; the loss is a stand-in.
    let found = faceload(&["areas", "germany"]);
    assert_eq!(found.code, 0);
    let line = found.result.lines().find(|line| line.trim_start().starts_with("de ")).expect("Germany");
    assert_eq!(line.split_whitespace().collect::<Vec<_>>().join(" "), "de 354 Germany, 2025; life-cycle, CO2e only; grade D");
    for (word, id) in [("rfcw", "us.rfcw-2022"), ("Texas", "us.state-tx-2022"), ("united kingdom", "uk.gas-oil"), ("2026", "uk")] {
        let found = faceload(&["areas", word]);
        assert!(found.result.lines().any(|line| line.trim_start().starts_with(&format!("{id} "))), "{word}: {}", found.result);
    }
    let nothing = faceload(&["areas", "atlantis"]);
    assert_eq!((nothing.code, nothing.result.as_str()), (3, ""));
    assert!(nothing.words.contains("`atlantis` is in no area"), "{}", nothing.words);
}

/// A folder with an area of its own and the source it cites; the second cell of the row is its name.
fn folder(name: &str, row: &str) -> String {
    let folder = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join("areas").join(name);
    std::fs::create_dir_all(&folder).expect("the folder can be made");
    let header = faceload_core::factors::Texts::embedded().carriers;
    let header = header.lines().next().expect("columns");
    let sources = "key,title,publisher,year,kind,seen,licence,attribution,locator\nutility,Letter of our utility,Tern Harbour Light and Power,2026,data sheet,document,,,letter\n";
    std::fs::write(folder.join("carriers.csv"), format!("{header}\n{row}\n")).expect("the table can be written");
    std::fs::write(folder.join("sources.csv"), sources).expect("the table can be written");
    let order = "schema_version = 1\n[site]\nelectricity = \"th.harbour\"\n[[line]]\ncode = \"R1-1\"\nsize = \"24 in\"\nquantity = 5\n";
    std::fs::write(folder.join("order.toml"), order).expect("the order can be written");
    folder.to_string_lossy().into_owned()
}

const HARBOUR: &str = "electricity.th.harbour,Tern Harbour,Tern Harbour,2026,direct,,,,250,g{gas}/kW.h,,1.1,,grid-loss.us-2023,,primary.us-electricity.energy,utility,letter,C,";

#[test]
fn an_area_of_its_own_is_one_row() {
    let folder = folder("own", HARBOUR);
    let order = format!("{folder}/order.toml");
    let without = faceload(&["compare", &order]);
    assert_eq!(without.code, 3);
    assert!(without.words.contains("`th.harbour` where the id of an electricity area"), "{}", without.words);
    let with = faceload(&["compare", &order, "--factors", &folder]);
    assert_eq!((with.code, with.words.as_str()), (0, ""));
    assert!(with.result.contains("Tern Harbour, 2026") && with.result.contains("electricity.th-harbour.co2e"), "{}", with.result);
    // 250 g/kWh, 4.2 % lost: 261 at the meter.
    let listed = faceload(&["areas", "harbour", "--factors", &folder]);
    assert!(listed.result.contains("th.harbour  ") && listed.result.contains(" 261 "), "{}", listed.result);
}

#[test]
fn an_area_of_its_own_takes_no_inputs_of_a_built_in_one() {
    // `us-rfcw` would name its inputs as `us.rfcw` does; under the same name it stands in its place.
    let folder = folder("twin", &HARBOUR.replacen("th.harbour", "us-rfcw", 1));
    let twin = faceload(&["check", &folder]);
    assert_eq!((twin.code, twin.result.as_str()), (4, ""));
    assert!(twin.words.contains("carriers.csv, line 2, column `id`: `electricity.us-rfcw` where an id of its own"), "{}", twin.words);
    std::fs::write(format!("{folder}/carriers.csv"), {
        let table = faceload_core::factors::Texts::embedded().carriers;
        let row = table.lines().find(|line| line.starts_with("electricity.us.rfcw,")).expect("the area");
        format!(
            "{}\n{}\n",
            table.lines().next().expect("columns"),
            row.replacen("911.424", "500", 1).replacen("egrid-2023", "utility", 1).replacen(",B,", ",C,", 1)
        )
    })
    .expect("the table can be written");
    let own = faceload(&["compare", "--factors", &folder]);
    assert_eq!((own.code, own.words.as_str()), (0, ""));
    assert!(own.result.contains("electricity.us-rfcw.co2e.co2"), "{}", own.result);
}

#[test]
fn an_area_at_fault_is_exit_4_with_its_line_and_column() {
    for (name, from, to, said) in [
        ("loss", "grid-loss.us-2023", "grid-loss.th", "carriers.csv, line 2, column `loss`: `grid-loss.th` where the id of a row"),
        ("no-loss", "grid-loss.us-2023", "", "carriers.csv, line 2, column `loss`: "),
        ("basis", "direct", "whole", "carriers.csv, line 2, column `basis`: `whole` where direct or life-cycle was wanted"),
        ("unit", "g{gas}/kW.h", "g{gas}/km", "carriers.csv, line 2, column `unit`: `g{gas}/km` where a unit such as `kg{gas}/kW.h`"),
        ("range", ",1.1,", ",0.9,", "carriers.csv, line 2, column `range`: `0.9` where a number not below 1"),
        ("grade", ",C,", ",A,", "carriers.csv, line 2, column `grade`: `A` where C or lower was wanted"),
    ] {
        let folder = folder(name, &HARBOUR.replacen(from, to, 1));
        let ran = faceload(&["check", &folder]);
        assert_eq!((ran.code, ran.result.as_str()), (4, ""), "{name}: {ran:?}");
        assert!(ran.words.contains(said), "{name}: {}", ran.words);
    }
}
