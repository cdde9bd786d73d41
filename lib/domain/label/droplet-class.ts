import { accept, refuse } from "#domain/foundation/outcome";
import { type ReadAnswer } from "#domain/label/label-answer";

/**
 * The droplet classes of ASABE S572, from the finest to the coarsest, as its letters and words. There are eight (read
 * second-hand); their order is from memory and agrees with a public summary of ISO 25358. They have no size in
 * micrometers: the standard compares with reference nozzles. Their colors are left out, because two editions of the
 * standard swap those of C and VC.
 */
export const dropletClasses = [
  { letters: "XF", words: "extremely fine" },
  { letters: "VF", words: "very fine" },
  { letters: "F", words: "fine" },
  { letters: "M", words: "medium" },
  { letters: "C", words: "coarse" },
  { letters: "VC", words: "very coarse" },
  { letters: "XC", words: "extremely coarse" },
  { letters: "UC", words: "ultra coarse" },
] as const;

/** A class by its letters: "M", "VC". */
export type DropletClass = (typeof dropletClasses)[number]["letters"];

/** What a label wants: "medium or coarser" is a finest of M, "fine to medium" both ends; at least one end is there. */
export interface DropletLimits {
  readonly finest?: DropletClass;
  readonly coarsest?: DropletClass;
}

/** By how many classes left is the coarser: below zero when it is the finer, zero when they are one class. */
export function compareDroplets(left: DropletClass, right: DropletClass): number {
  return placeOf(left) - placeOf(right);
}

function placeOf(dropletClass: DropletClass): number {
  return dropletClasses.findIndex(({ letters }) => letters === dropletClass);
}

/** The class in the standard's words: "very coarse". */
export function dropletsInWords(dropletClass: DropletClass): string {
  return dropletClasses[placeOf(dropletClass)]?.words ?? dropletClass;
}

/** "medium or coarser", "fine to medium", "coarse or finer", "very coarse". */
export function limitsInWords({ finest, coarsest }: DropletLimits): string {
  if (finest !== undefined && coarsest !== undefined) {
    return finest === coarsest ? dropletsInWords(finest) : `${dropletsInWords(finest)} to ${dropletsInWords(coarsest)}`;
  }
  if (finest !== undefined) return `${dropletsInWords(finest)} or coarser`;
  return coarsest === undefined ? "any droplets" : `${dropletsInWords(coarsest)} or finer`;
}

const CLASSES_TO_WRITE = dropletClasses.map(({ words }) => words).join(", ");

/** Reads a class by its words or its letters, in whatever case. Refused: what is no class of the standard. */
export function readDropletClass(text: string): ReadAnswer<DropletClass> {
  const written = text.trim().replaceAll(/[\s-]+/gu, " ").toLowerCase();
  const found = dropletClasses.find(({ letters, words }) => letters.toLowerCase() === written || words === written);
  return found === undefined ? refuse(`"${text.trim()}" is no droplet class. The classes are ${CLASSES_TO_WRITE}.`) : accept(found.letters);
}

const NOUN = /[\s-]+(?:(?:spray )?droplets?(?: size| class)?|sprays?(?: quality)?)$/iu;
const OR_MORE = /^(.+?) (?:(?:or|and) (?:coarser|larger)|minimum)$/iu;
const OR_LESS = /^(.+?) (?:(?:or|and) (?:finer|smaller)|maximum)$/iu;
const NO_FINER = /^(?:no|not) finer than (.+)$/iu;
const NO_COARSER = /^(?:no|not) coarser than (.+)$/iu;

/**
 * Reads the droplets that a label wants: "medium or coarser", "fine to medium", "no finer than coarse", "very coarse",
 * by words or by the standard's letters. Refused: a class that the standard has not, a range from the coarser end.
 */
export function readDropletLimits(value: string): ReadAnswer<DropletLimits> {
  const text = value.replace(NOUN, "");
  const atLeast = OR_MORE.exec(text)?.[1] ?? NO_FINER.exec(text)?.[1];
  if (atLeast !== undefined) {
    const finest = readDropletClass(atLeast);
    return finest.ok ? accept({ finest: finest.value }) : finest;
  }
  const atMost = OR_LESS.exec(text)?.[1] ?? NO_COARSER.exec(text)?.[1];
  if (atMost !== undefined) {
    const coarsest = readDropletClass(atMost);
    return coarsest.ok ? accept({ coarsest: coarsest.value }) : coarsest;
  }
  const [, from = text, to = from] = /^(.+?) to (.+)$/iu.exec(text) ?? [];
  const [finest, coarsest] = [readDropletClass(from), readDropletClass(to)];
  if (!finest.ok) return finest;
  if (!coarsest.ok) return coarsest;
  if (compareDroplets(finest.value, coarsest.value) > 0) return refuse("Write the finer class first, as in fine to medium.");
  return accept({ finest: finest.value, coarsest: coarsest.value });
}
