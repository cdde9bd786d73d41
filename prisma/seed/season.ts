/**
 * The season of the demonstration: one program whose rounds lie around the day of making, the properties that are on it,
 * and a few visits planned by hand. Rates are of the usual kind within the invented labels (common practice).
 */
import { type SessionKey } from "#adapters/postgres/company-work";
import { listProducts } from "#application/products/list-products";
import { addProgram } from "#application/programs/add-program";
import { addRound } from "#application/programs/add-round";
import { putOnProgram } from "#application/programs/put-on-program";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { addSeeding } from "#application/properties/add-seeding";
import { listProperties } from "#application/properties/list-properties";
import { readProperty } from "#application/properties/read-property";
import { type House } from "#application/use-case";
import { callOffVisit } from "#application/visits/call-off-visit";
import { listVisits } from "#application/visits/list-visits";
import { planVisit } from "#application/visits/plan-visit";
import { LOOK } from "#application/visits/task-fields.schema";
import { must } from "./must";

export interface SeasonSeed {
  readonly key: SessionKey;
  readonly houseDaysAgo: (days: number) => House;
  readonly dayIn: (days: number) => string;
}

/** A product by how its name begins, with a rate within its label. */
interface Planned {
  readonly product: string;
  readonly rate: string;
  readonly reason: string;
}

interface PlannedRound {
  readonly name: string;
  readonly opensInDays: number;
  readonly closesInDays: number;
  readonly secondLook: string;
  readonly treatments: readonly Planned[];
}

const FEED = (rate: string): Planned => ({ product: "Greenmere", rate, reason: "feed" });
const WEEDS: Planned = { product: "Plainleaf", rate: "1.3 fl oz/1,000 sq ft", reason: "dandelion, clover" };
const IRON: Planned = { product: "Ironside", rate: "1.5 fl oz/1,000 sq ft", reason: "color" };

// Windows in days from the day of making: three have closed, one is open, two are to come.
const ROUNDS: readonly PlannedRound[] = [
  { name: "Preventer", opensInDays: -78, closesInDays: -50, secondLook: "", treatments: [{ product: "Wardlow", rate: "3 lb/1,000 sq ft", reason: "crabgrass" }] },
  { name: "First feed", opensInDays: -46, closesInDays: -26, secondLook: "", treatments: [FEED("2.5 lb/1,000 sq ft")] },
  { name: "Weeds and color", opensInDays: -22, closesInDays: -4, secondLook: "3", treatments: [WEEDS, IRON] },
  { name: "Second feed", opensInDays: -6, closesInDays: 12, secondLook: "", treatments: [FEED("2 lb/1,000 sq ft")] },
  { name: "Third feed", opensInDays: 26, closesInDays: 46, secondLook: "", treatments: [FEED("2.5 lb/1,000 sq ft")] },
  { name: "Last feed and iron", opensInDays: 60, closesInDays: 82, secondLook: "21", treatments: [FEED("3 lb/1,000 sq ft"), IRON] },
];

const BEGUN_DAYS_AGO = 100;
const ON_FROM_THE_START = 14;
const JOINED_DAYS_AGO = 2;
const ON_THE_PROGRAM = 25;

async function makeRounds({ key, houseDaysAgo, dayIn }: SeasonSeed, keyOf: (product: string) => string): Promise<string> {
  const then = houseDaysAgo(BEGUN_DAYS_AGO);
  const season = dayIn(0).slice(0, 4);
  const { programId } = must(await addProgram(then, key, { name: "Cool-season lawns", season }));
  for (const { name, opensInDays, closesInDays, secondLook, treatments } of ROUNDS) {
    const rows = treatments.map(({ product, rate, reason }, row) => [String(row), { productUse: keyOf(product), rate, reason }] as const);
    must(await addRound(then, key, { programId, name, opensOn: dayIn(opensInDays), closesOn: dayIn(closesInDays), secondLook, treatments: Object.fromEntries(rows) }));
  }
  return programId;
}

const ticks = (ids: readonly string[]) => Object.fromEntries(ids.map((id) => [id, "yes" as const]));

/** Two of the first visits were called off, each for its reason. */
async function callSomeOff({ key, houseDaysAgo }: SeasonSeed): Promise<void> {
  const then = houseDaysAgo(60);
  const { visits } = must(await listVisits(then, key, {}));
  const first = visits.filter(({ name }) => name === ROUNDS[0]?.name);
  const reasons = ["The customer overseeds this month", "Fence work, nobody on the ground until it is done"];
  for (const [index, reason] of reasons.entries()) {
    const visit = first[index];
    if (visit !== undefined) must(await callOffVisit(then, key, { visitId: visit.visitId, version: visit.version, reason }));
  }
}

/** What is planned outside the rounds, and the property where the law asks for a soil test first. */
interface ByHand {
  readonly iron: string;
  readonly spots: string;
  readonly starter: string;
  readonly inIllinois: string | undefined;
}

/** The seed of the feed with phosphate: over an old lawn, which stays old to the law. */
async function overseed({ key, houseDaysAgo, dayIn }: SeasonSeed, propertyId: string): Promise<void> {
  const house = houseDaysAgo(1);
  const { property } = must(await readProperty(house, key, { propertyId }));
  const [first] = property.lawns;
  if (first === undefined) return;
  must(await addSeeding(house, key, { zoneId: first.zoneId, date: dayIn(-3), kind: "overseeding", method: "broadcast", standing: "done" }));
}

/**
 * A call-back to look, spot work within the hours that a customer gave, and a feed with phosphate that Illinois's law
 * leaves to a license holder.
 */
async function planByHand(seed: SeasonSeed, propertyIds: readonly string[], { iron, spots, starter, inIllinois }: ByHand): Promise<void> {
  const { key, houseDaysAgo, dayIn } = seed;
  const house = houseDaysAgo(1);
  const plan = async (propertyId: string | undefined, name: string, task: { readonly productUse: string; readonly rate: string; readonly spotShare?: string; readonly reason: string }, hours: readonly [string, string]) => {
    if (propertyId === undefined) return;
    const { property } = must(await readProperty(house, key, { propertyId }));
    const lawns = ticks(property.lawns.slice(0, 1).map(({ zoneId }) => zoneId));
    const [customerFrom, customerUntil] = hours;
    must(await planVisit(house, key, { requestId: house.newId(), propertyId, name, opensOn: dayIn(-1), closesOn: dayIn(6), customerFrom, customerUntil, secondLook: "", tasks: { "0": { ...task, lawns } } }));
  };
  await plan(propertyIds[0], "Call-back", { productUse: LOOK, rate: "", reason: "brown patches by the walk" }, ["", ""]);
  await plan(propertyIds[6], "Spot work", { productUse: spots, rate: "1.5 fl oz/gal", spotShare: "10%", reason: "ground ivy along the drive" }, ["09:00", "15:00"]);
  await plan(propertyIds[8], "Color by the fence", { productUse: iron, rate: "1.5 fl oz/1,000 sq ft", reason: "yellow by the fence" }, ["13:00", "16:00"]);
  if (inIllinois !== undefined) await overseed(seed, inIllinois);
  await plan(inIllinois, "Feed for new seed", { productUse: starter, rate: "3 lb/1,000 sq ft", reason: "seeded patches" }, ["", ""]);
}

/**
 * Makes the program and puts properties on it, some from its start and most since the day before yesterday. Needs the
 * products of the shed and the customers' ground; without them there is nothing to plan, and nothing is made.
 */
export async function makeSeason(seed: SeasonSeed): Promise<void> {
  const { key, houseDaysAgo } = seed;
  const { products } = must(await listProducts(houseDaysAgo(0), key, {}));
  const { properties } = must(await listProperties(houseDaysAgo(0), key, {}));
  const choices = products.flatMap(({ productId, name, label }) => {
    const [use] = label.confirmed?.facts.uses ?? [];
    return use === undefined ? [] : [{ name, key: productUseKey(productId, use.useName) }];
  });
  const servedIds = properties.filter(({ standing, lawns }) => standing === "current" && lawns > 0).map(({ propertyId }) => propertyId);
  if (choices.length === 0 || servedIds.length === 0) return;
  const keyOf = (product: string) => {
    const choice = choices.find(({ name }) => name.startsWith(product));
    if (choice === undefined) throw new Error(`The shed of the demonstration has no confirmed ${product}.`);
    return choice.key;
  };
  const programId = await makeRounds(seed, keyOf);
  const fromTheStart = servedIds.slice(0, ON_FROM_THE_START);
  must(await putOnProgram(houseDaysAgo(BEGUN_DAYS_AGO), key, { programId, properties: ticks(fromTheStart) }));
  const later = servedIds.slice(ON_FROM_THE_START, ON_THE_PROGRAM);
  if (later.length > 0) must(await putOnProgram(houseDaysAgo(JOINED_DAYS_AGO), key, { programId, properties: ticks(later) }));
  await callSomeOff(seed);
  const inIllinois = properties.find(({ propertyId, state }) => state === "IL" && servedIds.includes(propertyId))?.propertyId;
  await planByHand(seed, servedIds, { iron: keyOf("Ironside"), spots: keyOf("Sharpleaf"), starter: keyOf("Fieldrow"), inIllinois });
}
