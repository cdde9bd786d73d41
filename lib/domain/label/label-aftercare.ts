import { accept, refuse } from "#domain/foundation/outcome";
import { type Authority, type OnFile } from "#domain/weather/spray-limits";
import { type AftercareKind, AFTERCARE_KINDS, type ConstraintOf, type LabelAftercare, type Reach, type SeedingMethod } from "#domain/label/aftercare-constraint";
import { refuseImpossibleAftercare } from "#domain/label/aftercare-range";
import { gather, type ReadAnswer, readOnFile, readWord } from "#domain/label/label-answer";
import { type LabelUseText, type UseField } from "#domain/label/label-fields";
import { readPostingSign } from "#domain/label/label-sign";
import { readReach, readReachBack, readUntils } from "#domain/label/label-time";
import { type MowingCount, readMowingCount, speaksOfMowings } from "#domain/label/mowing-count";
import { readRainThatSpoils, readWateringIn } from "#domain/label/label-water";

/** The field in which each fact about what comes after is typed. */
export const AFTERCARE_FIELDS = {
  "people-and-pets": "peopleAndPets",
  "watering-not-before": "wateringNotBefore",
  "watering-in": "wateringIn",
  "rain-that-spoils": "rainThatSpoils",
  "leaf-at-application": "leafAtApplication",
  "soil-at-application": "soilAtApplication",
  "mowing-before": "mowingBefore",
  "mowing-after": "mowingAfter",
  "seeding-before": "seedingBefore",
  "seeding-after": "seedingAfter",
  "posting-sign": "postingSign",
} as const satisfies Readonly<Record<AftercareKind, UseField>>;

type Wordless<Kind extends AftercareKind> = Omit<ConstraintOf<Kind>, "labelWords">;

function until<Kind extends "people-and-pets" | "watering-not-before" | "mowing-after">(kind: Kind) {
  return (value: string) => {
    const untils = readUntils(value);
    return untils.ok ? accept({ kind, untilLaterOf: untils.value }) : untils;
  };
}

function readMowingBefore(value: string): ReadAnswer<Wordless<"mowing-before">> {
  const within = readReachBack(value);
  return within.ok ? accept({ kind: "mowing-before", within: within.value }) : within;
}

/** Reads "60 days", or the mowings that new seed must have had: "until after the second mowing". */
function readSeedingBefore(value: string): ReadAnswer<Wordless<"seeding-before">> {
  const within = speaksOfMowings(value) ? readMowingCount(value) : readReachBack(value);
  return within.ok ? accept({ kind: "seeding-before", within: within.value }) : within;
}

function state<Kind extends "leaf-at-application" | "soil-at-application">(kind: Kind) {
  return (value: string) => {
    const word = readWord(["dry", "moist"], value);
    return word.ok ? accept({ kind, state: word.value }) : word;
  };
}

const METHOD_FIRST = /^(broadcast|slit)(?:[- ]?seed(?:ing|ed)?)?:? (.+)$/iu;
const METHOD_LAST = /^(.+?) (?:for|when|if|before) (broadcast|slit)(?:[- ]?seed(?:ing|ed)?)?$/iu;

function readInterval(part: string): { readonly method: SeedingMethod | "any"; readonly until: ReadAnswer<Reach | MowingCount> } {
  const [, methodFirst, timeAfter] = METHOD_FIRST.exec(part) ?? [];
  const [, timeBefore, methodLast] = METHOD_LAST.exec(part) ?? [];
  const method = (methodFirst ?? methodLast ?? "any").toLowerCase() as SeedingMethod | "any";
  const time = timeAfter ?? timeBefore ?? part;
  return { method, until: speaksOfMowings(time) ? readMowingCount(time) : readReach(time) };
}

/**
 * Reads "4 months", "after 2 mowings", or one for each method, since slit-seeded grass takes another interval than
 * broadcast seed: "broadcast 6 weeks, slit 11 weeks". Refused: a part that is neither a time nor mowings, and one
 * method twice.
 */
export function readSeedingAfter(value: string): ReadAnswer<Wordless<"seeding-after">> {
  const read: Wordless<"seeding-after">["intervals"][number][] = [];
  for (const part of value.split(/[,;\n]/u)) {
    const { method, until: reach } = readInterval(part.trim());
    if (!reach.ok) return reach;
    read.push({ method, until: reach.value });
  }
  if (new Set(read.map(({ method }) => method)).size < read.length) return refuse("Write one time, or one each for broadcast and slit seeding.");
  return accept({ kind: "seeding-after", intervals: read });
}

const READERS: { readonly [Kind in AftercareKind]: (value: string) => ReadAnswer<Wordless<Kind>> } = {
  "people-and-pets": until("people-and-pets"),
  "watering-not-before": until("watering-not-before"),
  "watering-in": readWateringIn,
  "rain-that-spoils": readRainThatSpoils,
  "leaf-at-application": state("leaf-at-application"),
  "soil-at-application": state("soil-at-application"),
  "mowing-before": readMowingBefore,
  "mowing-after": until("mowing-after"),
  "seeding-before": readSeedingBefore,
  "seeding-after": readSeedingAfter,
  "posting-sign": readPostingSign,
};

/** A label that asks for nothing afterwards. */
export const NOTHING_STATED = Object.fromEntries(AFTERCARE_KINDS.map((kind) => [kind, "none"])) as unknown as LabelAftercare["facts"];

/** Reads one fact; one that can't be meant is judged alone, so that the complaint stands at its own field. */
function readFact<Kind extends AftercareKind>(
  kind: Kind,
  productName: string,
  use: LabelUseText,
  authority: Authority,
): ReadAnswer<OnFile<ConstraintOf<Kind>>> {
  return readOnFile(use[AFTERCARE_FIELDS[kind]], (value, labelWords) => {
    const found: ReadAnswer<Wordless<Kind>> = READERS[kind](value);
    if (!found.ok) return found;
    // The reader of a kind gives that kind's constraint; only the words are added.
    const stated = { ...found.value, labelWords, ...authority } as unknown as ConstraintOf<Kind> & Authority;
    const impossible = refuseImpossibleAftercare({ productName, facts: { ...NOTHING_STATED, [kind]: stated } });
    return impossible === undefined ? accept(stated) : refuse(impossible.refusal.sentence);
  });
}

/** Everything that a use asks for around an application, or every complaint by its field. */
export function readAftercare(productName: string, use: LabelUseText, authority: Authority) {
  const fields: Record<string, ReadAnswer<unknown>> = {};
  for (const kind of AFTERCARE_KINDS) fields[AFTERCARE_FIELDS[kind]] = readFact(kind, productName, use, authority);
  const read = gather(fields);
  if (!read.ok) return read;
  const facts = Object.fromEntries(AFTERCARE_KINDS.map((kind) => [kind, read.value[AFTERCARE_FIELDS[kind]]]));
  return accept<LabelAftercare>({ productName, facts: facts as unknown as LabelAftercare["facts"] });
}
