import { type CalendarDate } from "#domain/foundation/calendar-date";

/** What seed or sod makes of a lawn: a new one, or a thicker one where a lawn stands already. */
export const SEEDING_KINDS = ["new-lawn", "sod", "overseeding"] as const;
export type SeedingKind = (typeof SEEDING_KINDS)[number];

export const SEEDING_KIND_WORDS: Readonly<Record<SeedingKind, string>> = {
  "new-lawn": "New lawn from seed",
  sod: "New lawn from sod",
  overseeding: "Overseeding of a lawn that stands",
};

/** How seed goes in. Where nobody knows, the longest of a label's intervals counts. */
export const SOWING_METHODS = ["broadcast", "slit", "unknown"] as const;
export type SowingMethod = (typeof SOWING_METHODS)[number];

export const SOWING_METHOD_WORDS: Readonly<Record<SowingMethod, string>> = { broadcast: "Broadcast", slit: "Slit seeded", unknown: "Not known" };

/** Whether it was done, or is planned. */
export const SEEDING_STANDINGS = ["done", "planned"] as const;
export type SeedingStanding = (typeof SEEDING_STANDINGS)[number];

export const SEEDING_STANDING_WORDS: Readonly<Record<SeedingStanding, string>> = { done: "Done", planned: "Planned" };

interface OnADay {
  readonly date: CalendarDate;
  readonly standing: SeedingStanding;
}

/** Seed that went into a lawn or will. */
export interface SownSeed extends OnADay {
  readonly kind: Exclude<SeedingKind, "sod">;
  readonly method: SowingMethod;
}

/** Sod that was laid or will be: it is no seed, so it has no method and labels say nothing of it by themselves. */
export interface LaidSod extends OnADay {
  readonly kind: "sod";
}

/** Seed or sod of a lawn: of its history or of its plan. */
export type LawnSeeding = SownSeed | LaidSod;

/** The seed among a lawn's seedings, for which labels state how long it keeps apart from their products. */
export function sownSeed(seedings: readonly LawnSeeding[]): readonly SownSeed[] {
  return seedings.filter((seeding) => seeding.kind !== "sod");
}

/** The seedings by which a lawn was or will be made anew. Overseeding leaves an old lawn old. */
export function newLawns(seedings: readonly LawnSeeding[]): readonly LawnSeeding[] {
  return seedings.filter(({ kind }) => kind !== "overseeding");
}

/** The sod of a lawn that lies there on a day by what is on file, planned sod too; the youngest of it. */
export function youngestSod(seedings: readonly LawnSeeding[], on: CalendarDate): LaidSod | undefined {
  return seedings
    .filter((seeding) => seeding.kind === "sod")
    .filter(({ date }) => date <= on)
    .reduce<LaidSod | undefined>((youngest, sod) => (youngest === undefined || sod.date > youngest.date ? sod : youngest), undefined);
}

/** "Overseeding of a lawn that stands, slit seeded": what a seeding is, in the words of a table's cell. */
export function seedingWords(seeding: LawnSeeding): string {
  if (seeding.kind === "sod") return SEEDING_KIND_WORDS.sod;
  const how = seeding.method === "unknown" ? "method not known" : SOWING_METHOD_WORDS[seeding.method].toLowerCase();
  return `${SEEDING_KIND_WORDS[seeding.kind]}, ${how}`;
}
