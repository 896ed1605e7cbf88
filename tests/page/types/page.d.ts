// What the scripts of the page share: the one global object, and the program behind it.

/** A part of the page by its id: which element it is the mark-up says. */
interface Faceload {
  part(id: string): any;
  element(tag: string, facts?: Record<string, any>, ...children: (Node | string)[]): any;
  fill(place: Element, ...children: (Node | string)[]): void;
  say(id: string, facts?: Record<string, string | number>): string;
  labels: Record<string, string>;
  catalogue: any;
  /** What is on the screen. */
  shown(): view.View;
  theme(): "light" | "dark" | "paper";
  paper: { file: number; third: number };
  picture(svg: string): string;
  layer(frame: Element, over: { name: string; size: [number, number]; spots: spot.Spot[] }): void;
  figure(place: Element, shown: sure.Shown, name: string, lead?: (row: figure.Cell[], column: string) => Partial<spot.Lead> | undefined): void;
  saves(heading: string, figure: string, texts: { csv: () => string; svg?: () => string }): HTMLElement;
  behind: { (of: () => { indicator: string; alternatives: number[] }): HTMLElement; pair(): { indicator: string; alternatives: number[] } };
  arithmetic(alternative: string, indicator: string, at?: { stage?: string; input?: string; job?: number; what?: string }): void;
  opens(text: string, lead: { alternative: string; indicator: string; stage?: string; input?: string; job?: number; what?: string }): HTMLElement;
  engine: Engine;
  findings: { found(): sure.Sure | null; [part: string]: any };
  /** Scripts add parts of their own. */
  [part: string]: any;
}

interface Engine {
  start(): Promise<void>;
  view(order: string, question: door.Asked): { view?: view.View; faults?: door.Fault[] };
  explain(alternative: string, indicator: string, job?: number): explain.Explained;
  loadsSpots(indicator: string, width: number): spot.Spot[];
  swingsSpots(width: number): spot.Spot[];
  sources(indicator: string, alternatives: number[]): source_list.BehindLoad[];
  check(name: string, text: string): door.Fault[];
  rows(bytes: Uint8Array, question: rows.Asked): { report?: any; faults?: door.Fault[] };
  rowsInOrder(bytes: Uint8Array, question: rows.Asked, order: string, beside: boolean): { order?: any; faults?: door.Fault[] };
  rowsLeftOut(bytes: Uint8Array, question: rows.Asked): string;
  writeLink(order: string, shared: link.Shared): { link?: string; left_out?: number; faults?: door.Fault[] };
  readLink(address: string): { linked?: link.Opened; faults?: door.Fault[] };
  [call: string]: any;
}

interface Window {
  faceload: Faceload;
  trustedTypes?: any;
}

declare const wasm_bindgen: any;

// What a selector finds is known to the mark-up, not to the types.
interface ParentNode {
  querySelector(selectors: string): any;
  querySelectorAll(selectors: string): NodeListOf<any>;
}
interface Element {
  closest(selectors: string): any;
}
