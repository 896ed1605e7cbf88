// Written by `cargo xtask types` from the structs of crate/report and crate/wasm.

declare namespace document {
  interface Report {
    title: string;
    sheets: string;
    body: node.Node;
  }
}

declare namespace door {
  interface Fault {
    field: string;
    came: string;
    wanted: string;
    help: string;
    words: string;
  }
  interface Asked {
    per: string;
    boundary: string;
    pair: [number, number];
    indicator: string;
    most: number;
    rows: string[];
    moved: [string, number][];
  }
}

declare namespace explain {
  interface Explained {
    alternative: string;
    indicator: string;
    total: string;
    divided: string;
    stages: explain.StageOf[];
    inputs: explain.InputOf[];
  }
  interface StageOf {
    name: string;
    total: string;
    flows: explain.FlowOf[];
  }
  interface FlowOf {
    label: string;
    product: string;
    amount: explain.TermOf[];
    amount_common: explain.Piece[];
    factor: explain.TermOf[];
    factor_common: explain.Piece[];
  }
  interface TermOf {
    pieces: explain.Piece[];
    value: string;
  }
  interface Piece {
    text: string;
    input?: string;
    item?: string;
  }
  interface InputOf {
    id: string;
    item: string;
    value: string;
    range: string;
    spread: string;
    grade: string;
    grade_words: string;
    source: string;
    place: string;
    year: string;
    note: string;
    own: boolean;
    whose?: string[];
    typed?: string;
  }
}

declare namespace figure {
  interface Figure {
    heading: string;
    sentences: string[];
    tables: figure.Table[];
  }
  interface Table {
    caption: string;
    columns: string[];
    rows: figure.Cell[][];
  }
  type Cell = string | { value: number; shown: string };
}

declare namespace job_lines {
  interface JobOf {
    label: string;
    what: string;
    lines: number;
    m2: number;
    alternatives: job_lines.AlternativeOf[];
  }
  interface AlternativeOf {
    id: string;
    makes: boolean;
    why_not: string | null;
    loads: Record<string, unknown> | null;
    texts?: string[];
  }
}

declare namespace link {
  interface Linked {
    order: unknown;
    per: string;
    boundary: string;
    pair?: [string, string];
    indicator: string;
    moved?: [string, number][];
    tables: string;
    left_out?: number;
  }
  interface Shared {
    per: string;
    boundary: string;
    pair: [string, string] | null;
    indicator: string;
    moved: [string, number][];
    own: boolean;
  }
  interface Opened extends link.Linked {
    text: string;
    told: string[];
  }
}

declare namespace node {
  type Node = string | [string, [string, string][], node.Node[]] | { svg: string; words: string };
}

declare namespace report {
  interface Whole extends document.Report {
    html: string;
  }
}

declare namespace result {
  interface Exchange {
    schema_version: number;
    order: string;
    per: string;
    boundary: string;
    lines: number;
    lines_compared: number;
    lines_per_alternative: number[];
    how_sure: string;
    draws: result.Made;
    not_covered: string;
    caution: string;
    reviewers_stated_by_user?: unknown;
    standing: string;
    factors: result.FactorsOf;
    alternatives: result.One[];
    pairs?: result.Between[];
    between?: result.Between;
  }
  interface Made {
    number: number;
    asked: number;
    seed: number;
    design: string;
    inputs: number;
  }
  interface FactorsOf {
    sha_256: string;
    own_rows: unknown;
  }
  interface Between {
    alternatives: string[];
    lines: number;
    m2: number;
    loads: Record<string, unknown>;
  }
  interface One {
    id: string;
    route: string;
    m2: number;
    loads: Record<string, unknown>;
  }
}

declare namespace rows {
  interface Asked {
    name: string;
    separator: string | null;
    header: boolean | null;
    columns: [number, string][];
    missing: [string, string][];
    unit: string | null;
    comma: boolean;
  }
}

declare namespace source_list {
  interface SourceOf {
    words: string;
    licence: string;
    inputs: number;
  }
  interface BehindLoad {
    words: string;
    inputs: number;
    grades: string[];
  }
}

declare namespace spot {
  interface Spot {
    x: number;
    y: number;
    width: number;
    height: number;
    words: string;
    lead?: spot.Lead;
  }
  interface Lead {
    alternative: string;
    indicator: string;
    stage?: string;
    input?: string;
  }
}

declare namespace statement {
  interface Statement {
    schema_version: number;
    between: string[];
    indicator: string;
    text: string | null;
    why_none: string[];
    standing: string;
    tables_sha_256: string;
  }
}

declare namespace sure {
  interface Asked {
    per: string;
    boundary: string;
    pair: [number, number];
    indicator: string;
    moved: [string, number][];
    draws: number;
    width: number;
    theme: string;
    over: string[];
  }
  interface Sure {
    how_sure: string;
    answer: string | null;
    ranked: string[];
    pairs: sure.PairOf[];
    intervals: number[][][];
    ranges: string[][];
    spread: sure.Shown | null;
    statement: statement.Statement | null;
  }
  interface PairOf {
    a: number;
    b: number;
    sentence: string;
    differences: string[];
  }
  interface Shown {
    figure: figure.Figure;
    csv: string;
    svg: string | null;
    paper: string | null;
    size: [number, number];
    spots: spot.Spot[];
  }
}

declare namespace view {
  interface View {
    name: string;
    order_line: string;
    extent: string;
    square_feet: string;
    compared: string;
    comparable: boolean;
    conditions: string;
    moved: string[];
    per: string;
    per_words: string;
    boundary: string;
    boundary_words: string;
    how_sure: string;
    answer: string | null;
    alternatives: view.AlternativeOf[];
    indicators: view.IndicatorOf[];
    beside: view.Beside[];
    pairs: view.PairOf[];
    moves: view.MovesOf;
    inputs: explain.InputOf[];
    sources: source_list.SourceOf[];
    tables: string;
    tables_mark: string;
    jobs: job_lines.JobOf[];
    dropped: string[];
    cautions: string[];
    left_out: string[];
    not_covered: string;
    caution: string;
    standing: string;
  }
  interface AlternativeOf {
    id: string;
    words: string;
    story: string;
    base: string;
  }
  interface IndicatorOf {
    id: string;
    label: string;
    unit: string;
    counts: string;
    ranked: string;
    texts: string[];
  }
  interface Beside {
    label: string;
    unit: string;
    within: string | null;
    texts: string[];
  }
  interface PairOf {
    a: number;
    b: number;
    words: string;
    lines: string;
    sentence: string;
    differences: string[];
  }
  interface MovesOf {
    pair: [number, number];
    indicator: string;
    now: string;
    rest: number;
    rows: view.MoveOf[];
  }
  interface MoveOf {
    id: string;
    item: string;
    unit: string;
    value: number;
    low: number;
    high: number;
    by_ratio: boolean;
    at_low: string;
    at_high: string;
    turns: boolean;
    grade: string;
  }
}
