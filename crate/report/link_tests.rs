//! Links: written and read again, refused with a reason, never unpacked beyond their caps.

use super::*;
use serde_json::json;

fn linked() -> Linked {
    Linked {
        order: json!({ "schema_version": 1, "line": [{ "code": "R1-1", "size": "30 in", "quantity": 100 }] }),
        per: "m2-year".to_owned(),
        boundary: "face".to_owned(),
        pair: Some(("screen".to_owned(), "digital".to_owned())),
        indicator: "co2e".to_owned(),
        moved: vec![("oven.exhaust".to_owned(), 0.1)],
        tables: "0123456789ab".to_owned(),
        left_out: 0,
    }
}

fn packed(text: &[u8]) -> String {
    format!("{BEGINS}{}", BASE64_URL_SAFE_NO_PAD.encode(compress_to_vec(text, LEVEL)))
}

#[test]
fn a_link_reads_as_what_was_written_wherever_it_stands() {
    let link = linked().write().unwrap();
    assert!(link.starts_with(BEGINS) && link[1..].chars().all(|c| c.is_ascii_alphanumeric() || ".-_".contains(c)), "{link}");
    for address in [link.clone(), format!("https://signs.example/faceload.html{link}"), format!(" {link}&view=read\n")] {
        assert_eq!(Linked::read(&address), Ok(linked()), "{address}");
    }
}

#[test]
fn keys_keep_their_order_and_numbers_their_digits() {
    let text =
        r#"{"order":{"z":1,"a":0.1,"__proto__":{"b":[true,null,"\u202e"]}},"per":"m2","boundary":"face","indicator":"co2e","tables":""}"#;
    let read = Linked::read(&packed(text.as_bytes())).unwrap();
    assert_eq!(serde_json::to_string(&read.order).unwrap(), "{\"z\":1,\"a\":0.1,\"__proto__\":{\"b\":[true,null,\"\u{202e}\"]}}");
}

#[test]
fn what_is_no_link_is_refused_with_the_way_out() {
    let cut = {
        let link = linked().write().unwrap();
        link[..link.len() - 8].to_owned()
    };
    for (text, said) in [
        ("", "`` where a link that has `#1.` in it was wanted"),
        ("faceload.html#2.abc", "`#2.abc` where a link that has `#1.` in it was wanted"),
        ("#1.a b", "` ` where letters, digits"),
        ("#1.<script>", "`<` where letters, digits"),
        ("#1.é", "`é` where letters, digits"),
        ("#1.", "a packed text that breaks off"),
        ("#1.aaaa", "a packed text that breaks off"),
        (cut.as_str(), "a packed text that breaks off"),
        (&packed(b"[]"), "a text that holds no order"),
        (
            &packed(b"{\"order\":{},\"per\":\"m2\",\"boundary\":\"face\",\"indicator\":\"co2e\",\"tables\":\"\",\"run\":1}"),
            "unknown field `run`",
        ),
    ] {
        let words = Linked::read(text).unwrap_err().to_string();
        assert!(words.starts_with("the link: ") && words.contains(said) && words.contains("; "), "{text}: {words}");
    }
}

#[test]
fn a_link_that_would_unpack_to_too_much_is_not_unpacked() {
    let megabytes = vec![b' '; 2_000_000];
    let bomb = packed(&megabytes);
    assert!(bomb.len() < LONGEST, "{}", bomb.len());
    assert_eq!(Linked::read(&bomb), Err(LinkFault::Large));
    // Below the cap in bytes, above it in times.
    let alike = packed(&vec![b' '; 100_000]);
    assert_eq!(Linked::read(&alike), Err(LinkFault::Large));
    let long = format!("{BEGINS}{}", "a".repeat(LONGEST + 1));
    assert_eq!(Linked::read(&long), Err(LinkFault::Long(LONGEST + 1)));
}

#[test]
fn a_link_that_could_not_be_read_is_not_made() {
    let mut large = linked();
    large.order["name"] = Value::String(" ".repeat(UNPACKED));
    assert_eq!(large.write(), Err(LinkFault::Large));
    let mut long = linked();
    let mut state = 1_u64;
    long.order["name"] = (0..40_000)
        .map(|_| {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1);
            char::from(b'!' + ((state >> 33) % 90) as u8)
        })
        .collect::<String>()
        .into();
    assert!(matches!(long.write(), Err(LinkFault::Long(length)) if length > LONGEST));
}

#[test]
fn values_of_the_shops_own_are_left_out_and_no_others() {
    let mut order = json!({ "alternative": [
        { "id": "a", "with": { "x": { "value": "1 kW", "grade": "own", "note": "meter" }, "y": "2 kW", "z": { "value": "3 kW", "grade": "C" } } },
        { "id": "b", "with": { "x": { "value": "1 kW", "grade": " own " } } },
        { "id": "c", "with": {} },
        { "id": "d" },
    ] });
    assert_eq!(without_own(&mut order), 2);
    assert_eq!(
        order,
        json!({ "alternative": [
            { "id": "a", "with": { "y": "2 kW", "z": { "value": "3 kW", "grade": "C" } } }, { "id": "b" }, { "id": "c", "with": {} }, { "id": "d" },
        ] })
    );
    assert_eq!(without_own(&mut json!([1])), 0);
}

#[test]
fn no_changed_letter_of_a_link_breaks_the_reader() {
    const LETTERS: &[u8] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    let link = linked().write().unwrap();
    let (mut read, mut refused, mut state) = (0, 0, 7_u64);
    for turn in 0..20_000 {
        let mut bytes = link.clone().into_bytes();
        for _ in 0..=turn % 3 {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            let at = BEGINS.len() + (state >> 33) as usize % (bytes.len() - BEGINS.len());
            bytes[at] = LETTERS[(state >> 20) as usize % LETTERS.len()];
        }
        match Linked::read(&String::from_utf8(bytes).unwrap()) {
            Ok(_) => read += 1,
            Err(fault) => {
                assert!(fault.to_string().contains(" wanted; "), "{fault}");
                refused += 1;
            }
        }
    }
    assert!(read > 0 && refused > 10_000, "{read} read, {refused} refused");
}
