//! The wording guard: which sentences about loads may be sent, clause by clause.
//!
//! Clauses are told in our words, with the edition and whether an excerpt was seen or it is from memory. A
//! sentence that passes breaks none of these rules; that is no clearance, and no legal advice.

use super::rule::{Around, Finds, Refused, Rule, Seen};
use super::shape;
use super::tokens::tokens;

const ISO_14021: &str = "ISO 14021:2016 with A1:2021";
const ISO_14026: &str = "ISO 14026:2017";
const ISO_14044: &str = "ISO 14044:2006 with A1:2017 and A2:2020";
const CFR: &str = "16 CFR 260 of 11 October 2012 (77 FR 62122)";
const EU: &str = "Directive (EU) 2024/825 of 28 February 2024, applied from 27 September 2026";

/// A comparison that says all that it must.
const COMPARISON: &str = "Per m2 of sign face kept in service 10 years, face only, under the stated assumptions: estimated CO2e of film 4.7 kg CO2e \
(range 3.9 to 7.6), of digital 5.8 (4.8 to 8.9); in 99 of 100 draws of our input ranges film was lower. Film was also lower in energy, higher in \
waste; no clear difference in solvent; water about the same. Made with tables 0a1b2c. Not verified by a third party. Not a public comparative \
assertion: no panel review.";

/// The rules, by document and clause.
pub const RULES: [Rule; 27] = [
    Rule {
        document: ISO_14021,
        place: "5.3",
        asks: "vague or unspecific claims, and those that make a product look harmless as a whole, are not made",
        seen: Seen::Excerpt,
        finds: Finds::Words(
            "eco, ecofriendly, ecolog*, earth friendly, nature friendly, non polluting, nonpolluting, harmless, benign, low \
impact, environmentally safe, environmentally sound, environmentally conscious, environmentally responsible, \
ozone friendly, ozone safe, planet, clean energy, clean production, clean technology, cleaner production, cleaner \
choice, natural choice, natural product*",
        ),
        reason: "it says nothing that can be checked",
        way_out: "name the indicator, both values with their ranges, and per what",
        allowed: "The ink is thinned with a cleaner that holds 0.8 kg VOC per kg.",
        refused: "These are eco-friendly faces.",
    },
    Rule {
        document: EU,
        place: "Annex, point 4a",
        asks: "a generic environmental claim needs recognised excellent performance; a word, a name or a colour can be such a claim",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::green),
        reason: "no recognised scheme stands behind it, and the word names no colour of a sign or film here",
        way_out: "say `green film` or `green sheeting` where the colour is meant, else name the indicator and the values",
        allowed: "Green film is laid on white sheeting, fluorescent yellow-green is bought as sheeting.",
        refused: "Screen printing is the greener way.",
    },
    Rule {
        document: EU,
        place: "Annex, point 4a, words about climate and carbon",
        asks: "climate friendly, carbon friendly, energy efficient and the like are generic claims",
        seen: Seen::Excerpt,
        finds: Finds::Words("climate friendly, carbon friendly, low carbon, energy efficient, energy saving, friendly to, climate smart"),
        reason: "it is generic",
        way_out: "give the load in CO2e or energy, with its range and per what",
        allowed: "The oven takes 12 kW of electricity.",
        refused: "A climate-friendly face.",
    },
    Rule {
        document: ISO_14021,
        place: "5.5",
        asks: "no claim of sustainability is made, since no method shows it",
        seen: Seen::Excerpt,
        finds: Finds::Words("sustainab*, unsustainab*"),
        reason: "no method shows sustainability, and five indicators do not",
        way_out: "say what was reckoned: a load in an indicator",
        allowed: "Waste of making the face is 0.48 kg per m2.",
        refused: "Overlay film is the sustainable route.",
    },
    Rule {
        document: ISO_14021,
        place: "5.7, endorsement",
        asks: "a claim does not look as if an independent body had endorsed or certified it",
        seen: Seen::Excerpt,
        finds: Finds::Undenied(
            "verif*, endors*, accredit*, third party, independent*, recommended by, approved, approval, audited, validated",
        ),
        reason: "nobody outside endorsed or verified it",
        way_out: "leave it out; reviewers can be named in the order and are printed as stated by the user",
        allowed: "Not verified by a third party.",
        refused: "These loads are independently verified.",
    },
    Rule {
        document: CFR,
        place: "260.6",
        asks: "a certification or seal is itself a claim and must be meant, true and explained",
        seen: Seen::Excerpt,
        finds: Finds::Undenied(
            "certif*, award*, accolade, top rated, highly rated, peer reviewed, critically reviewed, reviewed by experts",
        ),
        reason: "nothing here is certified or rated",
        way_out: "leave it out; say who made the comparison and with which tables",
        allowed: "Reviewers, as stated by the user: A. Reader, Tern Harbour County.",
        refused: "A certified comparison of sign faces.",
    },
    Rule {
        document: EU,
        place: "Annex, point 2a",
        asks: "a sustainability label rests on a certification scheme or a public authority",
        seen: Seen::Excerpt,
        finds: Finds::Undenied("ecolabel*, eco label*, seal, seals, leaf, badge*, trust mark, energy label*, quality label*"),
        reason: "there is no scheme behind it",
        way_out: "leave the mark out; print the sentence",
        allowed: "The line is labelled stop in the order.",
        refused: "Look for the leaf on the face.",
    },
    Rule {
        document: EU,
        place: "Annex, point 4b",
        asks: "what is true of a part is not said of the whole product or business",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::whole_product),
        reason: "the face was reckoned, with or without its blank; no post, no service, no firm",
        way_out: "say `sign face`, and whether the blank is counted",
        allowed: "A sign face loads 4.7 kg CO2e per m2, the blank left out.",
        refused: "Our signs load 4.7 kg CO2e per m2.",
    },
    Rule {
        document: ISO_14021,
        place: "6.3",
        asks: "a comparison says against what, on the same function, in the same unit",
        seen: Seen::Memory,
        finds: Finds::Shape(shape::without_basis),
        reason: "a comparison needs its basis",
        way_out: "copy the sentence of `faceload statement`, which says all of it",
        allowed: COMPARISON,
        refused: "Film faces need less.",
    },
    Rule {
        document: ISO_14026,
        place: "scope and principles",
        asks: "a footprint is communicated under a programme with rules of its own",
        seen: Seen::Excerpt,
        finds: Finds::Words("footprint*"),
        reason: "no programme's rules were followed",
        way_out: "say `estimated CO2e`",
        allowed: "Estimated CO2e is 4.7 kg per m2 of face.",
        refused: "The carbon footprint of this face is 4.7 kg.",
    },
    Rule {
        document: ISO_14044,
        place: "5.3 and 6.3",
        asks: "a comparison made public as superior or equal needs a panel's critical review",
        seen: Seen::Excerpt,
        finds: Finds::Undenied(
            "superior*, comparative assertion, life cycle assessment, lca, panel review, panel reviewed, critical review, iso \
14040, iso 14044",
        ),
        reason: "five indicators are no such study, and no panel reviewed it",
        way_out: "say that it is a comparison for internal decisions",
        allowed: "Not a public comparative assertion: no panel review.",
        refused: "A life-cycle assessment shows that film is superior.",
    },
    Rule {
        document: ISO_14044,
        place: "4.4.5",
        asks: "comparisons for the public are made indicator by indicator, without weighting",
        seen: Seen::Memory,
        finds: Finds::Words("overall, score*, all in all, on balance, in total better, ranks first, number one, winner"),
        reason: "indicators are not added up to one",
        way_out: "say each indicator, what got worse beside what got better",
        allowed: "Energy, water, solvent, waste and CO2e are given apart.",
        refused: "Overall, screen printing wins.",
    },
    Rule {
        document: CFR,
        place: "260.2",
        asks: "a claim has a reasonable basis, usually reliable evidence",
        seen: Seen::Memory,
        finds: Finds::Words(
            "always, completely, totally, absolutely, certainly, undoubtedly, proves, proven, guarantee*, 100 % sure, 100 % \
certain, 100 % of, in all draws, in every draw, 100 of 100, 0 of 100, probab*, confidence, chance*, \
scientifically",
        ),
        reason: "draws of input ranges are no proof, and their share is no probability",
        way_out: "say `in N of 100 draws of our input ranges`",
        allowed: "Ranges are the middle 90 % of the draws.",
        refused: "Film always takes 4 kg.",
    },
    Rule {
        document: CFR,
        place: "260.3(a)",
        asks: "qualifications are clear and stand near the claim",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::without_limits),
        reason: "what limits a comparison stands in the same text",
        way_out: "keep `not verified by a third party` and `not a public comparative assertion` with it",
        allowed: COMPARISON,
        refused: "Film loads less CO2e than digital per m2 of face.",
    },
    Rule {
        document: CFR,
        place: "260.3(c)",
        asks: "a benefit is not overstated",
        seen: Seen::Excerpt,
        finds: Finds::Words(
            "dramatic*, drastic*, huge*, massive*, tremendous*, enormous*, up to, as much as, far less, far lower, much less, \
much lower, vast*",
        ),
        reason: "it is larger in words than in numbers",
        way_out: "give the two values with their ranges",
        allowed: "The difference is 1.1 kg CO2e per m2 of face.",
        refused: "A dramatic cut in CO2e per m2 of face.",
    },
    Rule {
        document: CFR,
        place: "260.3(d)",
        asks: "a comparison is clear and substantiated",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::without_share),
        reason: "nobody can tell how sure it is",
        way_out: "give the ranges, or in how many of 100 draws",
        allowed: COMPARISON,
        refused: "Film loads less CO2e than digital per m2 of face in service.",
    },
    Rule {
        document: CFR,
        place: "260.4(b)",
        asks: "no unqualified claim of a general environmental benefit",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::general_benefit),
        reason: "a benefit for the environment as a whole was not reckoned",
        way_out: "name the indicator, both values with their ranges, and per what",
        allowed: "Loads are reckoned in five indicators.",
        refused: "Better for the environment.",
    },
    Rule {
        document: CFR,
        place: "260.4(c)",
        asks: "a negligible benefit is not made to look significant",
        seen: Seen::Excerpt,
        finds: Finds::Words("significan*, substantial*, considerabl*, meaningful*, noticeabl*"),
        reason: "how much it matters is for the reader to judge, and nothing was tested for significance",
        way_out: "give the difference with its range; too small to matter is said as `about the same`",
        allowed: "Water is 0.06 L per m2 of face.",
        refused: "A significant cut in water per m2 of face.",
    },
    Rule {
        document: CFR,
        place: "260.4, trade-offs",
        asks: "where a benefit is claimed, what got worse is weighed too",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::without_the_others),
        reason: "an indicator that got worse could be hidden",
        way_out: "say all five: energy, water, solvent, waste, CO2e",
        allowed: COMPARISON,
        refused: "Film loads less CO2e than digital per m2 of face in 99 of 100 draws.",
    },
    Rule {
        document: CFR,
        place: "260.5; Directive (EU) 2024/825, annex, point 4c",
        asks: "no product is called neutral, reduced or positive in greenhouse gases by offsets",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::neutral),
        reason: "offsets are not counted here, and no load is zero by them",
        way_out: "give the load in CO2e as it is",
        allowed: "Offset printing is not one of the routes; the cleaner is pH-neutral.",
        refused: "A carbon-neutral sign face.",
    },
    Rule {
        document: CFR,
        place: "260.9; ISO 14021:2016, 5.4",
        asks: "free of something only where it would be expected, is not there, and nothing as harmful stands in for it",
        seen: Seen::Excerpt,
        finds: Finds::Words(
            "free of, solvent free, voc free, emission free, emissions free, waste free, carbon free, contains no, no solvent, \
no solvents, no emission*, no waste, no voc*, without solvent*, zero solvent, zero waste, zero voc*, solventless",
        ),
        reason: "zero is a boundary here, not a finding: what suppliers use is not in it",
        way_out: "give the load with its unit and say what is left out",
        allowed: "Solvent evaporated in the shop is 0.004 kg VOC per m2 of face; suppliers' solvents are left out.",
        refused: "Film is a solvent-free route.",
    },
    Rule {
        document: CFR,
        place: "260.10",
        asks: "not toxic means to people and to the environment, with evidence",
        seen: Seen::Excerpt,
        finds: Finds::Words("non toxic, nontoxic, not toxic, safe for, safer for, harmless to, healthy, healthier"),
        reason: "toxicity and exposure were not reckoned",
        way_out: "point to the products' safety data sheets",
        allowed: "Toxicity is not covered.",
        refused: "UV ink is non-toxic.",
    },
    Rule {
        document: CFR,
        place: "260.7, .8, .12, .13, .15 and .16",
        asks: "compostable, degradable, recyclable, recycled, renewable: each has conditions of its own",
        seen: Seen::Excerpt,
        finds: Finds::Words(
            "recyclable, recycled content, recycled material*, made from recycled, compostable, biodegradable, degradable, \
renewable*",
        ),
        reason: "these conditions were not checked",
        way_out: "leave it out",
        allowed: "The order says that the blank is melted again after use.",
        refused: "Faces on recyclable blanks.",
    },
    Rule {
        document: EU,
        place: "Article 6(2)(d) of Directive 2005/29/EC as amended",
        asks: "a promise of future performance rests on a public plan with targets, checked by a third party",
        seen: Seen::Excerpt,
        finds: Finds::Shape(shape::future),
        reason: "it promises what was not reckoned",
        way_out: "compare the order as it is made today",
        allowed: "The faces will be delivered in week 14.",
        refused: "Our CO2e will be halved by 2030.",
    },
    Rule {
        document: EU,
        place: "Article 7(7) of Directive 2005/29/EC as amended",
        asks: "who compares products tells the method, what is compared, and how it is kept up to date",
        seen: Seen::Memory,
        finds: Finds::Shape(shape::without_method),
        reason: "nobody can redo it",
        way_out: "say the assumptions and the mark of the tables",
        allowed: COMPARISON,
        refused: "Film loads less CO2e per m2 of face than digital, in 99 of 100 draws.",
    },
    Rule {
        document: EU,
        place: "Annex, practices about durability",
        asks: "no durability is claimed that the goods may not have",
        seen: Seen::Memory,
        finds: Finds::Undenied(
            "durab*, long lasting, lasts, longer lasting, lifetime, weather resistant, weatherproof, fade resistant, warrant*",
        ),
        reason: "years in service are an assumption of the order, not a finding",
        way_out: "say `kept in service N years, under the stated assumptions`",
        allowed: "Nothing here is a statement of durability.",
        refused: "Screen-printed faces are more durable.",
    },
    Rule {
        document: "this program",
        place: "what it does not say",
        asks: "signs are safety devices: conformity is for the agency's specification, the law and their inspectors",
        seen: Seen::Ours,
        finds: Finds::Undenied(
            "conform*, complies, compliant, compliance, comply, meets, astm, mutcd, en 12899, fit for, qualified, in \
accordance with, safe, safer",
        ),
        reason: "conformity and safety were not looked at",
        way_out: "leave it out; the specification and the agency decide",
        allowed: "Nothing here is a statement of conformity.",
        refused: "These faces comply with the specification.",
    },
];

/// What a text is refused for; nothing where no rule speaks against it.
pub fn check(text: &str, around: Around<'_>) -> Vec<Refused> {
    let list = tokens(text);
    let each = |phrases: &'static str| phrases.split(", ").collect::<Vec<_>>();
    let words = |rule: &Rule| match rule.finds {
        Finds::Words(phrases) => shape::first(&list, &each(phrases)),
        Finds::Undenied(phrases) => shape::first_undenied(&list, &each(phrases)),
        Finds::Shape(find) => find(&list, around),
    };
    RULES.iter().filter_map(|rule| words(rule).map(|words| Refused { rule, words })).collect()
}
