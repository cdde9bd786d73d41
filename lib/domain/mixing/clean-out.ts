import { type Finding, note, takeCare } from "#domain/foundation/finding";

/**
 * Where the water of a clean-out went: onto a site that the label names, which keeps rinsate a use by its label; into the
 * tank in which the shop keeps rinsate; anywhere else, in words. Common practice.
 */
export const RINSATE_WENT = ["labeled-site", "shop-tank", "elsewhere"] as const;
export type RinsateWent = (typeof RINSATE_WENT)[number];

/** A clean-out as far as what it means for the next mix asks. */
export interface CleanOutFacts {
  /** Milliseconds since 1970. */
  readonly cleanedAt: number;
}

/** A fill as far as a clean-out asks. */
export interface FillFacts {
  readonly number: number;
  /** Milliseconds since 1970. */
  readonly filledAt: number;
}

/** Where the rinsate went, as the end of a sentence: "onto 12 Elm St", "into the shop's rinsate tank". */
export function rinsateWords(went: RinsateWent, where: string): string {
  switch (went) {
    case "labeled-site":
      return `onto ${where}, within the label`;
    case "shop-tank":
      return "into the shop's rinsate tank";
    case "elsewhere":
      return `elsewhere: ${where}`;
  }
}

/**
 * Where the product that a tank still held goes in the ledger with its rinsate. What goes onto a labeled site is rinsed out
 * all the same: only the record of a visit says that something was put down on a lawn.
 */
export function wentOfRinsate(went: RinsateWent): "rinsate" | "loss" {
  return went === "elsewhere" ? "loss" : "rinsate";
}

/** What is said where product goes onto a labeled site with the rinsate. */
export function labeledSiteCounts(went: RinsateWent): readonly Finding[] {
  if (went !== "labeled-site") return [];
  return [
    note({
      rule: "rinsate-on-labeled-site",
      source: "label",
      what: "Rinsate on a labeled site counts against its label's rates and yearly limits.",
      figure: "The stock is posted to rinsate; no application record and no nutrients of the lawn follow from a clean-out.",
      toDo: "Where it is more than rinse water, write it on the record of the visit whose lawn took it.",
      about: [],
    }),
  ];
}

/**
 * Whether a tank is clean: its latest clean-out came after its latest fill. One in the same minute as the fill came before
 * it, because a tank is cleaned out to be filled. A tank without a clean-out on file is not known to be clean.
 */
export function isCleanSince(cleanOut: CleanOutFacts | undefined, fill: FillFacts | undefined): boolean {
  return cleanOut !== undefined && (fill === undefined || cleanOut.cleanedAt > fill.filledAt);
}

/** What is said of a clean-out that is recorded although the tank has been filled since: it stays a fact and frees nothing. */
export function filledSince(gearName: string, cleanOut: CleanOutFacts, fill: FillFacts | undefined): readonly Finding[] {
  if (fill === undefined || isCleanSince(cleanOut, fill)) return [];
  return [
    takeCare({
      rule: "filled-since-clean-out",
      source: "stock",
      what: `${gearName} has been filled since this clean-out.`,
      figure: `Fill ${String(fill.number)} is what the tank held last; it is not cleaned out.`,
      toDo: "Look at day and time; record another clean-out where one was done after the fill.",
      about: [gearName],
    }),
  ];
}
