import { measureText } from "./measure-text";
import { type HungLabel, type WantedLabel, assignRows, hangLabel } from "./place-in-line";

/** One application of the nutrient, put down or to come. Amounts are in the unit of the bar. */
export interface NutrientPart {
  readonly id: string;
  /** The day or the month, as it is written: "Apr 14". */
  readonly when: string;
  readonly product: string;
  readonly standing: "put-down" | "this-visit" | "planned";
  readonly quick: number;
  readonly slow: number;
  /** What no label says the release of; none where it is left out. */
  readonly notStated?: number;
}

/** What the grass asks for in a year. */
export interface NutrientRange {
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

/** The most that may be put down in a year, and whose word that is: "law", "label", "house". */
export interface NutrientLimit {
  readonly amount: number;
  readonly source: string;
}

/** What the bar is drawn from. */
export interface NutrientYear {
  readonly parts: readonly NutrientPart[];
  readonly range?: NutrientRange;
  readonly limit?: NutrientLimit;
  /** Decimals of every figure that is written. */
  readonly decimals: number;
  /** False for a nutrient that knows no quick and slow: all that is down is simply put down. */
  readonly hasRelease?: boolean;
}

/** One stretch of the bar. Quick, not stated and slow are put down; the others are frames. */
export interface NutrientMark {
  readonly partId: string;
  readonly kind: "quick" | "not-stated" | "slow" | "this-visit" | "planned";
  readonly amount: number;
  readonly from: number;
}

/** The words of each kind of mark. */
export const nutrientWords: Readonly<Record<NutrientMark["kind"], string>> = {
  quick: "quick",
  "not-stated": "release not stated",
  slow: "slow",
  "this-visit": "this visit",
  planned: "planned",
};

/** The order in which kinds follow each other along the bar. */
export const nutrientKinds = ["quick", "not-stated", "slow", "this-visit", "planned"] as const;

/** Quick, slow and not stated together. */
export function partTotal({ quick, slow, notStated = 0 }: NutrientPart): number {
  return quick + slow + notStated;
}

/** Turns the applications into stretches, end to end from nothing: quick, not stated, slow, this visit, planned. */
export function nutrientMarks(parts: readonly NutrientPart[]): readonly NutrientMark[] {
  const amounts = nutrientKinds.flatMap((kind) =>
    parts.map((part) => ({ partId: part.id, kind, amount: amountOf(part, kind) })).filter(({ amount }) => amount > 0),
  );
  let from = 0;
  return amounts.map((mark) => {
    const placed = { ...mark, from };
    from += mark.amount;
    return placed;
  });
}

function amountOf(part: NutrientPart, kind: NutrientMark["kind"]): number {
  if (kind === "quick" || kind === "slow") return part.standing === "put-down" ? part[kind] : 0;
  if (kind === "not-stated") return part.standing === "put-down" ? (part.notStated ?? 0) : 0;
  return part.standing === kind ? partTotal(part) : 0;
}

/** The sum of one kind of mark. */
export function kindTotal(marks: readonly NutrientMark[], kind: NutrientMark["kind"]): number {
  return marks.filter((mark) => mark.kind === kind).reduce((sum, mark) => sum + mark.amount, 0);
}

/** The least width of the wide form, in pixels. */
export const barLeastPixels = 640;

const textPixels = 13;

/** A label above the bar. `row` counts upward from the bar; undefined where it had no room. */
export interface NutrientLabel {
  readonly kind: NutrientMark["kind"] | "limit";
  readonly words: string;
  readonly hung: HungLabel;
  readonly row: number | undefined;
}

/** The bar, laid out for its least width. Amounts become shares of `axisEnd`. */
export interface NutrientBarLayout {
  readonly marks: readonly NutrientMark[];
  readonly total: number;
  readonly axisEnd: number;
  readonly ticks: readonly number[];
  readonly labels: readonly NutrientLabel[];
  readonly labelRows: number;
  readonly rangeLabel?: { readonly words: string; readonly hung: HungLabel };
}

/** Lays out the bar: from 0 to 1.1 times the largest figure, with a label for each kind in the first row with room. */
export function layOutNutrientBar(year: NutrientYear): NutrientBarLayout {
  const { parts, range, limit, decimals } = year;
  const marks = nutrientMarks(parts);
  const total = marks.reduce((sum, mark) => sum + mark.amount, 0);
  const largest = Math.max(total, range?.high ?? 0, limit?.amount ?? 0);
  const axisEnd = largest === 0 ? 1 : largest * 1.1;
  const pixels = (amount: number) => (amount / axisEnd) * barLeastPixels;
  const wanted = wantedLabels(marks, year, pixels);
  const rows = assignRows(wanted, barLeastPixels, 3, 12);
  const rangeWords = range === undefined ? undefined : `${range.name} ${range.low.toFixed(decimals)} to ${range.high.toFixed(decimals)}`;
  return {
    marks,
    total,
    axisEnd,
    ticks: axisTicks(axisEnd),
    labels: wanted.map(({ kind, words, ...label }, index) => ({ kind, words, hung: hangLabel(label, barLeastPixels), row: rows[index] })),
    labelRows: 1 + Math.max(0, ...rows.map((row) => row ?? 0)),
    ...(range === undefined || rangeWords === undefined
      ? {}
      : {
          rangeLabel: {
            words: rangeWords,
            hung: hangLabel(
              { widthPixels: measureText(rangeWords, textPixels), middlePixels: pixels((range.low + range.high) / 2) },
              barLeastPixels,
            ),
          },
        }),
  };
}

function wantedLabels(
  marks: readonly NutrientMark[],
  { limit, decimals, hasRelease = true }: NutrientYear,
  pixels: (amount: number) => number,
): (WantedLabel & { readonly kind: NutrientLabel["kind"]; readonly words: string })[] {
  const kinds = nutrientKinds.flatMap((kind) => {
    const own = marks.filter((mark) => mark.kind === kind);
    const [first] = own;
    if (first === undefined) return [];
    const sum = kindTotal(own, kind);
    return [labelOf(kind, `${kind === "quick" && !hasRelease ? "put down" : nutrientWords[kind]} ${sum.toFixed(decimals)}`, pixels(first.from + sum / 2))];
  });
  if (limit === undefined) return kinds;
  return [labelOf("limit", `${limit.source} ${limit.amount.toFixed(decimals)}`, pixels(limit.amount)), ...kinds];
}

function labelOf(kind: NutrientLabel["kind"], words: string, middlePixels: number) {
  return { kind, words, middlePixels, widthPixels: measureText(words, textPixels, 600) };
}

/** Round figures along the axis, from 0, at most eight of them: steps of 1, 2 or 5 times a power of ten. */
export function axisTicks(axisEnd: number): readonly number[] {
  const raw = axisEnd / 7;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= raw) ?? 10 * power;
  const count = Math.floor(axisEnd / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(6)));
}
