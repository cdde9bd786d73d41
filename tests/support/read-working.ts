// A reader who follows a working by hand: plain arithmetic on the printed figures, nothing of lib. It finds fault where a
// line does not come to what it says within what its figures can mean, and where a line uses a figure from nowhere.
import { type Working } from "#domain/foundation/working";

const QUARTERS: Readonly<Record<string, number>> = { "¼": 0.25, "½": 0.5, "¾": 0.75 };
/** What everybody knows: sq ft in the unit of rates and in an acre, oz wt in a pound, fl oz in a gallon, minutes in an hour, and one. */
const KNOWN = [1, 16, 1000, 43_560, 128, 60];
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
  return [...text.matchAll(new RegExp(FIGURE, "gu"))].flatMap(([found]) => firstFigure(found) ?? []);
}

function term(text: string): Printed {
  const value = firstFigure(text);
  if (value === undefined) throw new Error(`No figure in "${text}".`);
  const percent = text.includes("%") ? 100 : 1;
  const { least, most } = printed(value * percent);
  return { value, least: least / percent, most: most / percent };
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

const isArithmetic = (step: string) => step.includes(" = ");

/** Everything that a reader with a pocket calculator objects to; nothing where all of it holds. */
export function faultsOf({ inputs, steps, title }: Working): readonly string[] {
  const seen = new Set([...KNOWN, ...inputs.flatMap(({ figure }) => everyFigure(figure))]);
  const faults: string[] = [];
  for (const step of steps) {
    const [left = "", right = ""] = step.split(" = ");
    if (isArithmetic(step)) {
      const strangers = everyFigure(left.replaceAll(/(?<=[×+−] )\d+(?= × )/gu, "")).filter((value) => !seen.has(value));
      // Counts of marks stand in the line before; a count of runs is what everybody sees.
      if (strangers.length > 0) faults.push(`${title}: "${step}" uses ${strangers.join(", ")} from nowhere.`);
      const worked = sum(left);
      const said = term(right);
      if (said.most < worked.least || said.least > worked.most) faults.push(`${title}: "${step}" comes to ${String(worked.value)}.`);
    }
    for (const value of everyFigure(isArithmetic(step) ? right : step)) seen.add(value);
  }
  return faults;
}

/** What the last line comes to, or what it leaves as it is. */
export function lastComesTo({ steps }: Working): string | undefined {
  return /(?: = |not rounded: )(.*)$/u.exec(steps.at(-1) ?? "")?.[1];
}
