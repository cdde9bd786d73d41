import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { areOverArea, citationOfUse, knownDensity, type LabelFacts, type LabelUse, type ProductRate, type UseRate } from "#domain/label/label-facts";
import { activeIngredientIn, activeIngredientRate } from "#domain/quantities/active-ingredient";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { formatRatesApart } from "#domain/quantities/format-rate";
import { allocate, fromAmount, type Quantity } from "#domain/quantities/quantity";
import { compareRates, type Rate } from "#domain/quantities/rate";
import { type ProductAmount, rateOver } from "#domain/mixing/spray-mix";
import { strengthOf } from "#domain/mixing/stated-rate";
import { type LotInFill } from "#domain/mixing/tank-fill";
import { type TreatedLawn } from "#domain/mixing/treated-area";
import { inTakingOrder, type LotOnHand } from "#domain/stock/first-expired";

/** A lot that a crew may have taken from, at a location. */
export interface LotAtPlace extends LotOnHand {
  readonly stockLocationId: string;
}

/** So much of a lot that left a location. */
export interface LotTaken extends LotInFill {
  readonly stockLocationId: string;
}

/**
 * Which lots an amount that was really used came from: first expired, first out, at each place in turn. What the books
 * do not have is taken from the last lot that gave any, or else from the first on file (the truth is recorded), and a
 * finding asks for a count. Without any lot on file nothing can be taken down, and the finding says so.
 */
export function takeDown(productName: string, used: ProductAmount, places: readonly (readonly LotAtPlace[])[]): { readonly taken: readonly LotTaken[]; readonly findings: readonly Finding[] } {
  const lots = places.flatMap((place) => inTakingOrder(place));
  const taken: LotTaken[] = [];
  let missing = used.amount;
  for (const { lotId, stockLocationId, amount } of lots) {
    if (missing === 0n) break;
    if (amount <= 0n) continue;
    const part = amount < missing ? amount : missing;
    taken.push({ lotId, stockLocationId, amount: part });
    missing -= part;
  }
  if (missing === 0n) return { taken, findings: [] };
  const short = { dimension: used.dimension, amount: missing } as ProductAmount;
  const last = lots.findLast(({ lotId, stockLocationId }) => taken.some((one) => one.lotId === lotId && one.stockLocationId === stockLocationId)) ?? lots.at(0);
  if (last === undefined) return { taken, findings: [countIt(productName, short, "No lot of it is on file.")] };
  return { taken: addTo(taken, last, missing), findings: [countIt(productName, short, "The books go below zero by that.")] };
}

function addTo(taken: readonly LotTaken[], { lotId, stockLocationId }: LotAtPlace, amount: bigint): readonly LotTaken[] {
  const isSame = (one: LotTaken) => one.lotId === lotId && one.stockLocationId === stockLocationId;
  const before = taken.find(isSame);
  if (before === undefined) return [...taken, { lotId, stockLocationId, amount }];
  return taken.map((one) => (isSame(one) ? { ...one, amount: one.amount + amount } : one));
}

function countIt(productName: string, short: ProductAmount, figure: string): Finding {
  return takeCare({
    rule: "count-it",
    source: "stock",
    what: `More ${productName} was used than the books had, by ${formatQuantity(short, "us")}.`,
    figure,
    toDo: "Count what is there.",
    about: [productName],
  });
}

/** What one lawn really got. */
export interface LawnPutDown {
  readonly zoneId: string;
  readonly lawnName: string;
  readonly treatedArea: Quantity<"area">;
  readonly amount: ProductAmount;
  readonly activeIngredients: readonly { readonly name: string; readonly rate: Rate<"active-ingredient-mass-per-area"> }[];
}

/**
 * The label and the use that something was put down under. The use is not known of what nobody planned, where its label
 * has several; of a label that nobody has entered nothing is.
 */
export type LabelPutDown = { readonly label: LabelFacts; readonly use: LabelUse | "not-known" } | "not-on-file";

/** The uses under which it may have been put down: the one that it was, or all that its label has. */
export function usesPutDown({ label, use }: Exclude<LabelPutDown, "not-on-file">): readonly LabelUse[] {
  return use === "not-known" ? label.uses : [use];
}

/** What the lawns got, what of it can't be counted, and what is said of it. */
export interface SharedPutDown {
  readonly lawns: readonly LawnPutDown[];
  /** Active ingredients that take a density which is missing, by name; or that nobody has read which ones there are. */
  readonly notCountable: readonly string[] | "not-read";
  readonly findings: readonly Finding[];
}

/** So much of a product that came out with so much finished spray, all of one strength. */
export interface SprayedOfProduct {
  readonly product: ProductAmount;
  readonly sprayed: Quantity<"volume">;
}

/**
 * Shares what was really used out over the lawns that got it, by their treated areas; the lawns add up to it exactly. A
 * real rate above the label's highest is said as what it is: nothing keeps it from being recorded. Without a label no
 * rate is held against it, and a strength only where the finished spray is known that it came out with, fill by fill. An active ingredient that can't be counted is named as that, so that no total takes it for none.
 */
export function sharePutDown(treatment: LabelPutDown, used: ProductAmount, lawns: readonly TreatedLawn[], draws: readonly SprayedOfProduct[] = []): SharedPutDown {
  const notCountable = notCountableIn(treatment, used);
  const treated = lawns.filter(({ treatedArea }) => treatedArea.amount > 0n);
  if (treated.length === 0 || used.amount === 0n) return { lawns: [], notCountable, findings: [] };
  const parts = allocate<"mass" | "volume">(used, treated.map(({ treatedArea }) => treatedArea.amount));
  const findings: Finding[] = treatment === "not-on-file" ? [] : draws.flatMap((draw) => tooStrong(treatment, draw));
  const shared = treated.map((lawn, index): LawnPutDown => {
    const amount = fromAmount(used.dimension, parts[index]?.amount ?? 0n) as ProductAmount;
    const rate = rateOver(amount, lawn.treatedArea);
    if (treatment !== "not-on-file") findings.push(...aboveLabel(treatment, lawn, amount));
    const activeIngredients = treatment === "not-on-file" ? [] : activesOf(treatment, rate);
    return { zoneId: lawn.zoneId, lawnName: lawn.name, treatedArea: lawn.treatedArea, amount, activeIngredients };
  });
  return { lawns: shared, notCountable, findings };
}

function notCountableIn(treatment: LabelPutDown, used: ProductAmount): SharedPutDown["notCountable"] {
  if (treatment === "not-on-file" || treatment.label.activeIngredients === "unknown") return "not-read";
  const density = knownDensity(treatment.label);
  return treatment.label.activeIngredients.filter(({ concentration }) => !activeIngredientIn(used, concentration, density).ok).map(({ name }) => name);
}

type OnFile = Exclude<LabelPutDown, "not-on-file">;

/**
 * What was used is shared out draw by draw, lot by lot and lawn by lawn in whole canonical units, and each share may
 * end up to one unit above its exact part. A hundred units, 0.6 micrograms or 0.16 nanoliters, are more than all shares
 * of one record come to and less than any scale or cup shows: the room is for counting in whole units, and none for
 * working.
 */
const ROOM_OF_SHARES_UNITS = 100n;

/** What is held against a label: what was used, less the room. */
function lessRoom(amount: ProductAmount): ProductAmount {
  const least = amount.amount - ROOM_OF_SHARES_UNITS;
  return fromAmount(amount.dimension, least < 0n ? 0n : least);
}

interface Limit {
  readonly use: LabelUse;
  readonly most: UseRate;
}

/** The highest of these that is by the measure of a rate; undefined where none is. */
function highestBy({ basis }: UseRate, limits: readonly Limit[]): Limit | undefined {
  const [first, ...others] = limits.filter(({ most }) => most.basis === basis);
  return others.reduce((highest, one) => (highest !== undefined && compareRates<UseRate["basis"]>(one.most, highest.most) > 0 ? one : highest), first);
}

/** Held exactly against the label's highest: whatever is more than that is more than the label allows. */
function isAbove(rate: UseRate, highest: UseRate): boolean {
  return compareRates<UseRate["basis"]>(rate, highest) > 0;
}

/** What went on the ground against the most that any of the uses allows there; a use without such a most allows any. */
function aboveLabel(treatment: OnFile, lawn: TreatedLawn, amount: ProductAmount): readonly Finding[] {
  const rate = rateOver(amount, lawn.treatedArea);
  const limits = usesPutDown(treatment).map((use) => ({ use, most: areOverArea(use.rates) ? use.rates.high : use.besideRates?.mostOnArea }));
  const limit = highestBy(rate, limits.flatMap(({ use, most }) => (most === undefined ? [] : [{ use, most }])));
  if (limit === undefined || limits.some(({ most }) => most === undefined) || !isAbove(rateOver(lessRoom(amount), lawn.treatedArea), limit.most)) return [];
  const { productName } = treatment.label;
  return [putDownAbove(productName, `More ${productName} went on ${lawn.name} than its label allows.`, rate, limit, [lawn.name])];
}

/** The strength of what was sprayed against the strongest that any of the uses allows; a use over area allows any. */
function tooStrong(treatment: OnFile, { product: used, sprayed }: SprayedOfProduct): readonly Finding[] {
  const uses = usesPutDown(treatment);
  if (sprayed.amount === 0n || uses.some(({ rates }) => areOverArea(rates))) return [];
  const strength = strengthOf(used, sprayed);
  const limit = highestBy(strength, uses.map((use) => ({ use, most: use.rates.high })));
  if (limit === undefined || !isAbove(strengthOf(lessRoom(used), sprayed), limit.most)) return [];
  const { productName } = treatment.label;
  return [putDownAbove(productName, `${productName} was sprayed stronger than its label allows.`, strength, limit, [])];
}

function putDownAbove(productName: string, what: string, rate: UseRate, { use, most }: Limit, lawnNames: readonly string[]): Finding {
  const [above, highest] = formatRatesApart<UseRate["basis"]>(rate, most, "us");
  return hold("nobody", {
    rule: "put-down-above-label",
    source: "label",
    what,
    figure: `It came to ${above}; the label's highest is ${highest}.`,
    toDo: "Tell the license holder today.",
    citation: citationOfUse(productName, use.useName),
    about: [productName, ...lawnNames],
  });
}

/** The active ingredients that can be counted; the others are named as not countable. */
function activesOf({ label }: { readonly label: LabelFacts }, rate: ProductRate): LawnPutDown["activeIngredients"] {
  if (label.activeIngredients === "unknown") return [];
  const density = knownDensity(label);
  return label.activeIngredients.flatMap(({ name, concentration }) => {
    const active = activeIngredientRate(rate, concentration, density);
    return active.ok ? [{ name, rate: active.value }] : [];
  });
}
