// How the required words of a sign stand on it: where lines break, how tall the letters are, how the sign is turned.
// Pure, so that a screen can say beforehand that a name is too long; the letters' measures come from the font in use.
import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type SignLaw, signTexts } from "./posting-sign";

const POINTS_AN_INCH = 72;
/** Room between the cut line and the letters, so that a crooked cut takes none (house rule). */
const MARGIN_POINTS = 9;
/** Air between two lines, as a part of the letter height; capitals have nothing below the line (house rule). */
const LEAST_GAP_SHARE = 0.15;
/** Air that is left between a tail and the accent below it (house rule). */
const LEAST_AIR_SHARE = 0.05;
/** Beyond this, taller letters only crowd the sign (house rule). */
const MOST_GAP_SHARE = 0.75;
/** How far letters may be narrowed, step by step, before the sign is refused; their height stays (house rule). */
const WIDTHS_PERCENT = [100, 95, 90, 85, 80] as const;
/** By how much a sign may grow where the law names only the smallest size. */
const GROWTH = [1, 1.25, 1.5, 2] as const;
/** Letter heights are tried from large to small by this step, and last at the legal height itself. */
const STEP_POINTS = 0.5;

/** The measures of the letters in use, in parts of the font size. */
export interface LetterMeasure {
  readonly capHeightEm: number;
  readonly widthEm: (text: string) => number;
  /** How far accents reach above a capital. */
  readonly riseEm: (text: string) => number;
  /** How far commas and tails reach below the line. */
  readonly dropEm: (text: string) => number;
}

/** A sign with its words set: sizes in points, 72 to the inch. */
export interface FittedSign {
  readonly widthPoints: number;
  readonly heightPoints: number;
  readonly lines: readonly string[];
  /** The height of a capital. */
  readonly letterHeightPoints: number;
  readonly fontSizePoints: number;
  /** 100 where the letters have the width that they were drawn with. */
  readonly letterWidthPercent: number;
  /** From the foot of each line to the top of the capitals of the next: one fewer than the lines. */
  readonly gapsPoints: readonly number[];
}

/** The largest sign that fits on the paper at hand, in points. */
export interface SheetRoom {
  readonly widthPoints: number;
  readonly heightPoints: number;
}

/**
 * Sets the required words in capitals, none lower than the legal letter height and as tall as they fit, breaking only
 * between words. Tries the shape upright and lying where the law leaves that open, then narrower letters, then a larger
 * sign where the law names only the least size. Refuses ("sign words") what does not fit even so.
 */
export function fitSign(
  law: SignLaw,
  company: { readonly name: string; readonly phone: string },
  letters: LetterMeasure,
  room: SheetRoom,
): Outcome<FittedSign> {
  const phrases = signTexts(law, company).map((text) => text.toUpperCase().split(" ").filter((word) => word !== ""));
  for (const growth of law.sizeIs === "exactly" ? [1] : GROWTH) {
    for (const letterWidthPercent of WIDTHS_PERCENT) {
      const fitted = shapesOf(law, growth)
        .filter(({ widthPoints, heightPoints }) => fitsTurned({ widthPoints, heightPoints }, room))
        .map((shape) => fitShape({ ...shape, letterWidthPercent }, phrases, law, letters))
        .filter((sign) => sign !== undefined)
        .sort((a, b) => b.letterHeightPoints - a.letterHeightPoints)[0];
      if (fitted !== undefined) return accept(fitted);
    }
  }
  const words = phrases.map((phrase) => phrase.join(" ")).join(" ");
  const least = `${law.leastLetterHeightInches} in`;
  const size = `${law.sidesInches[0]} x ${law.sidesInches[1]} in`;
  return badInput(
    "sign words",
    words,
    `words that fit on ${size} in letters of at least ${least}`,
    `The words do not fit on a sign of ${size} in letters of ${least} (${law.citation}): “${words}”. Give the company a shorter name for signs.`,
  );
}

interface Shape {
  readonly widthPoints: number;
  readonly heightPoints: number;
}

function shapesOf({ sidesInches: [first, second], orientation }: SignLaw, growth: number): readonly Shape[] {
  const given = { widthPoints: first * growth * POINTS_AN_INCH, heightPoints: second * growth * POINTS_AN_INCH };
  return orientation === "as-given" ? [given] : [given, { widthPoints: given.heightPoints, heightPoints: given.widthPoints }];
}

function fitsTurned(shape: Shape, room: SheetRoom): boolean {
  const fits = (width: number, height: number) => shape.widthPoints <= width && shape.heightPoints <= height;
  return fits(room.widthPoints, room.heightPoints) || fits(room.heightPoints, room.widthPoints);
}

function fitShape(
  shape: Shape & { readonly letterWidthPercent: number },
  phrases: readonly (readonly string[])[],
  law: SignLaw,
  letters: LetterMeasure,
): FittedSign | undefined {
  const roomHigh = shape.heightPoints - 2 * MARGIN_POINTS;
  for (const letterHeightPoints of heightsFrom(roomHigh, law.leastLetterHeightInches * POINTS_AN_INCH)) {
    const fontSizePoints = letterHeightPoints / letters.capHeightEm;
    const pointsAnEm = (fontSizePoints * shape.letterWidthPercent) / 100;
    const widthOf = (text: string) => letters.widthEm(text) * pointsAnEm;
    const lines = breakLines(phrases, widthOf, shape.widthPoints - 2 * MARGIN_POINTS);
    if (lines === undefined) continue;
    const spare = roomHigh - lines.length * letterHeightPoints;
    const least = leastGaps(lines, letters, fontSizePoints);
    if (spare < sumOf(least)) continue;
    const gapsPoints = evenGaps(least, Math.min(spare, sumOf(least.map((gap) => Math.max(gap, MOST_GAP_SHARE * letterHeightPoints)))));
    return { ...shape, lines, letterHeightPoints, fontSizePoints, gapsPoints };
  }
  return undefined;
}

const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** The gaps by which no line touches the next. */
function leastGaps(lines: readonly string[], letters: LetterMeasure, fontSizePoints: number): readonly number[] {
  const letterHeight = letters.capHeightEm * fontSizePoints;
  return lines.slice(1).map((line, index) => {
    const meeting = (letters.dropEm(lines[index] ?? "") + letters.riseEm(line)) * fontSizePoints;
    return Math.max(LEAST_GAP_SHARE * letterHeight, meeting + LEAST_AIR_SHARE * letterHeight);
  });
}

/** Gaps that fill the room as evenly as their least sizes let them. */
function evenGaps(least: readonly number[], roomPoints: number): readonly number[] {
  let left = roomPoints;
  let sharers = least.length;
  // The widest first: what needs more than its share takes it, and the others share what is left.
  for (const gap of [...least].sort((a, b) => b - a)) {
    if (gap <= left / sharers) break;
    left -= gap;
    sharers -= 1;
  }
  const share = sharers === 0 ? 0 : left / sharers;
  return least.map((gap) => Math.max(gap, share));
}

function heightsFrom(most: number, least: number): number[] {
  const steps = Math.max(0, Math.ceil((most - least) / STEP_POINTS));
  return Array.from({ length: steps + 1 }, (_, step) => least + (steps - step) * STEP_POINTS);
}

/** What a break inside a phrase costs beside lines of unequal length, in squared parts of the line's room. */
const BREAK_IN_PHRASE = 0.08;

interface Breaking {
  readonly lines: readonly string[];
  readonly cost: number;
}

/** The fewest lines, and among those the most even ones that break between phrases; nothing when a word is too wide. */
function breakLines(phrases: readonly (readonly string[])[], widthOf: (text: string) => number, room: number): readonly string[] | undefined {
  const words = phrases.flatMap((phrase) => phrase.map((text, index) => ({ text, endsPhrase: index === phrase.length - 1 })));
  // best[n] is the best way to set the first n words.
  const best: (Breaking | undefined)[] = [{ lines: [], cost: 0 }];
  for (let end = 1; end <= words.length; end += 1) {
    for (let start = end - 1; start >= 0; start -= 1) {
      const line = words.slice(start, end).map(({ text }) => text).join(" ");
      const width = widthOf(line);
      if (width > room) break;
      const before = best[start];
      // A dash belongs to what it follows.
      if (before === undefined || words[start]?.text === "-") continue;
      const cost = before.cost + (1 - width / room) ** 2 + (words[end - 1]?.endsPhrase === true ? 0 : BREAK_IN_PHRASE);
      const lines = [...before.lines, line];
      const held = best[end];
      if (held === undefined || lines.length < held.lines.length || (lines.length === held.lines.length && cost < held.cost)) {
        best[end] = { lines, cost };
      }
    }
  }
  return best[words.length]?.lines;
}
