// What the check of the types is there to catch: each of these lines is wrong, and passes only while it is found to be.

declare const shown: view.View;
declare const page: Faceload;
declare const opened: link.Opened;

// @ts-expect-error a misspelt field
export const misspelt = shown.indicatros;

// @ts-expect-error a misspelt field of what lies flat in another
export const flat = opened.boundery;

// @ts-expect-error a list where one was meant
export const label: string = shown.indicators.label;

// @ts-expect-error a number where its text was meant
page.arithmetic(1, "co2e");

// @ts-expect-error a spot without its words
export const silent: spot.Spot = { x: 0, y: 0, width: 1, height: 1 };
