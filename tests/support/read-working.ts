// A reader who follows a working by hand: plain arithmetic on the printed figures, nothing of lib. It finds fault where a
// line does not come to what it says within what its figures can mean, and where a line uses a figure from nowhere.
import { type Working } from "#domain/foundation/working";

const QUARTERS: Readonly<Record<string, number>> = { "¼": 0.25, "½": 0.5, "¾": 0.75 };
/**
 * What everybody knows: sq ft in the unit of rates and in an acre, oz wt in a pound, fl oz in a gallon, in in a foot,
 * minutes in an hour, a percent, and none, one and a half.
 */
const KNOWN = [0, 1, 2, 12, 16, 100, 1000, 43_560, 128, 60];
/** Names that have digits and are no figures. */
const NAMES = /P2O5|K2O/gu;
const FIGURE = /(\d[\d,]*(?:\.\d+)?|(?=[¼½¾]))([¼½¾]?)(%?)/u;

/** A printed figure with the least and the most that it can stand for. */
interface Printed {
  readonly value: number;
  readonly least: number;
  readonly most: number;
}

/** Digits after the point by size, as lines of arithmetic print them: two more than pages do. */
function decimalsOf(value: number): number {
  if (value >= 1000) return 2;
  if (value >= 100) return 3;
  if (value >= 1) return 4;
  if (value >= 0.1) return 5;
  if (value >= 0.01) return 6;
  if (value >= 0.001 || value === 0) return 7;
  return 4 - Math.floor(Math.log10(value));
}

function printed(value: number): Printed {
  const half = 0.5 * 10 ** -decimalsOf(value) * 1.000001;
  return { value, least: Math.max(0, value - half), most: value + half };
}

/** The first figure of a text; undefined where it has none. */
export function firstFigure(text: string): number | undefined {
  const match = FIGURE.exec(text);
  if (match === null) return undefined;
  const [, digits = "", quarter = "", percent = ""] = match;
  const value = Number(digits.replaceAll(",", "") || "0") + (QUARTERS[quarter] ?? 0);
  return percent === "" ? value : value / 100;
}

function everyFigure(text: string): readonly number[] {
  return [...text.replaceAll(NAMES, "").matchAll(new RegExp(FIGURE, "gu"))].flatMap(([found]) => firstFigure(found) ?? []);
}

function term(text: string): Printed {
  const value = firstFigure(text);
  if (value === undefined) throw new Error(`No figure in "${text}".`);
  const percent = text.includes("%") ? 100 : 1;
  const { least, most } = printed(value * percent);
  return text.startsWith("√ ") ? { value: Math.sqrt(value), least: Math.sqrt(least), most: Math.sqrt(most) } : { value, least: least / percent, most: most / percent };
}

function product(text: string): Printed {
  const [first = "", ...rest] = text.split(/ (?=[×÷] )/u);
  return rest.reduce((left, next) => {
    const right = term(next.slice(2));
    return next.startsWith("×")
      ? { value: left.value * right.value, least: left.least * right.least, most: left.most * right.most }
      : { value: left.value / right.value, least: left.least / right.most, most: left.most / right.least };
  }, term(first));
}

function sum(text: string): Printed {
  const [first = "", ...rest] = text.split(/ (?=[+−] )/u);
  return rest.reduce((left, next) => {
    const right = product(next.slice(2));
    return next.startsWith("+")
      ? { value: left.value + right.value, least: left.least + right.least, most: left.most + right.most }
      : { value: left.value - right.value, least: left.least - right.most, most: left.most - right.least };
  }, product(first));
}

interface Line {
  /** The words before it: "Product for the area". */
  readonly label: string;
  readonly text: string;
}

/** The lines of a step: what stands between semicolons, each with the words before its colon. */
function linesOf(step: string): readonly Line[] {
  return step.split("; ").map((line) => {
    const [left = ""] = line.split(" = ");
    const colon = line.includes(" = ") ? left.lastIndexOf(": ") : -1;
    return colon < 0 ? { label: "", text: line } : { label: line.slice(0, colon), text: line.slice(colon + 2) };
  });
}

const isArithmetic = (text: string) => text.includes(" = ");

/** Everything that a reader with a pocket calculator objects to; nothing where all of it holds. */
export function faultsOf({ formula, inputs, steps, title }: Working): readonly string[] {
  const seen = new Set([...KNOWN, ...[formula, ...inputs.map(({ figure }) => figure)].flatMap(everyFigure)]);
  const faults: string[] = [];
  for (const { label, text } of steps.flatMap(linesOf)) {
    const [left = "", right = ""] = text.split(" = ");
    for (const value of everyFigure(label)) seen.add(value);
    if (isArithmetic(text)) {
      const strangers = everyFigure(left.replaceAll(/(?<=[×+−] )\d+(?= × )/gu, "")).filter((value) => !seen.has(value));
      // Counts of marks stand in the line before; a count of runs is what everybody sees.
      if (strangers.length > 0) faults.push(`${title}: "${text}" uses ${strangers.join(", ")} from nowhere.`);
      const worked = sum(left);
      const said = term(right);
      if (said.most < worked.least || said.least > worked.most) faults.push(`${title}: "${text}" comes to ${String(worked.value)}.`);
    }
    for (const value of everyFigure(isArithmetic(text) ? right : text)) seen.add(value);
  }
  return faults;
}

/**
 * The steps that say a figure for the first time without any arithmetic: a reader can't come to it by hand. A figure
 * that is rounded from one before it, or a count, is none.
 */
export function bareFiguresOf({ formula, inputs, steps }: Working): readonly string[] {
  const seen = new Set([...KNOWN, ...[formula, ...inputs.map(({ figure }) => figure)].flatMap(everyFigure)]);
  return steps.flatMap(linesOf).flatMap(({ label, text }) => {
    const isNew = !isArithmetic(text) && everyFigure(text).some((value) => !seen.has(value));
    for (const value of everyFigure(`${label} ${text}`)) seen.add(value);
    return isNew ? [text] : [];
  });
}

/** Whether a figure that is shown rounded is one that the working comes to or goes in with. */
export function comesTo({ inputs, steps }: Working, shown: string): boolean {
  const value = firstFigure(shown);
  const figures = [...inputs.map(({ figure }) => figure), ...steps].flatMap(everyFigure);
  return value === undefined || figures.some((one) => Math.abs(one - value) <= Math.max(0.0051 * Math.abs(value), 0.0000005));
}

/** What the last line comes to, or what it leaves as it is. */
export function lastComesTo({ steps }: Working): string | undefined {
  return /(?: = |not rounded: )(.*)$/u.exec(steps.at(-1) ?? "")?.[1];
}
