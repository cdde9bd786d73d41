import { groupedBy } from "#domain/foundation/grouping";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AftercareKind } from "#domain/label/aftercare-constraint";
import { NOTHING_STATED } from "#domain/label/label-aftercare";
import { type AftercareTimeline, timelineOf } from "#domain/mixing/aftercare";
import { type AftercareQuestion, refuseImpossibleQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type EarlierProduct, earlierAtVisit } from "#domain/mixing/earlier-products";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
import { type WateredGroup, wateringOfLawns } from "#domain/mixing/watering-of-lawns";
import { type LawnWatering } from "#domain/properties/lawn-watering";

/** The lawns of a visit that get the same after the same, with what is to be done and left on them afterwards. */
export interface AftercareOfLawns {
  readonly lawnNames: readonly string[];
  readonly timeline: AftercareTimeline;
}

/** What one application of a visit puts onto a lawn: its product, and the same once more under the law about its sign. */
export interface OwnApplication {
  /** The same for all lawns that get it. */
  readonly key: string;
  readonly products: readonly AppliedProduct[];
}

/** A lawn with everything that its aftercare hangs on. */
export interface LawnToCareFor {
  readonly name: string;
  readonly own: readonly OwnApplication[];
  /** What was put down on it before; the key is the same for all lawns that got it. */
  readonly earlier: readonly (EarlierProduct & { readonly key: string })[];
  readonly waterings: readonly LawnWatering[];
  readonly stations: readonly IrrigationStation[];
  readonly seedings: readonly Omit<ZoneSeeding, "lawnNames">[];
}

/** Everything else that the aftercare of a visit hangs on, the same for all of its lawns. */
export type AftercareSetting = Omit<AftercareQuestion, "products" | "stations" | "seedings">;

/**
 * The aftercare of each group of lawns that get the same products after the same earlier ones, as far as those may
 * still run. Lawns that get nothing have none; what they got before keeps off the stations that they share with others.
 * No two stations of the property run at one time, and what is found of several groups stands with the first of them.
 * Refused as aftercareTimeline refuses; the first refusal is handed on.
 */
export function aftercareOfLawns(lawns: readonly LawnToCareFor[], setting: AftercareSetting): Outcome<readonly AftercareOfLawns[]> {
  const treated = lawns.filter(({ own }) => own.length > 0).map((lawn) => withEarlier(lawn, setting));
  const groups = [...groupedBy(treated, ({ key }) => key).values()];
  const questions = groups.map((group): AftercareQuestion => {
    const ofGroup = group.map(({ lawn }) => lawn);
    return { ...setting, products: group[0]?.products ?? [], stations: [], seedings: seedOf(ofGroup, treated.length > 1) };
  });
  const besides = lawnsBeside(lawns, setting);
  for (const question of [...questions, ...besides.map(({ products }) => ({ ...setting, products, stations: [], seedings: [] }))]) {
    const refusal = refuseImpossibleQuestion(question);
    if (refusal !== undefined) return refusal;
  }
  const watered = groups.map((group) => ({ lawns: group.map(({ lawn }) => lawn), products: group[0]?.products ?? [] }));
  const waterings = wateringOfLawns(watered, besides, setting);
  if (!waterings.ok) return waterings;
  const answers = questions.flatMap((question, index): readonly AftercareOfLawns[] => {
    const watering = waterings.value[index];
    const lawnNames = (groups[index] ?? []).map(({ lawn: { name } }) => name);
    return watering === undefined ? [] : [{ lawnNames, timeline: timelineOf(question, watering) }];
  });
  return accept(answers.length < 2 ? answers : withFindingsOnce(answers));
}

/** What is found of several groups in the same words stands with the first of them. */
function withFindingsOnce(groups: readonly AftercareOfLawns[]): readonly AftercareOfLawns[] {
  const said = new Set<string>();
  return groups.map(({ lawnNames, timeline }) => {
    const findings = timeline.findings.filter((finding) => !said.has(JSON.stringify(finding)));
    for (const finding of findings) said.add(JSON.stringify(finding));
    return { lawnNames, timeline: { ...timeline, findings } };
  });
}

const KEEPS_WATER_OFF: readonly AftercareKind[] = ["watering-not-before", "rain-that-spoils"];

/** Lawns that get nothing in this visit and share a station with one that does, with what of earlier products may still keep water off them. */
function lawnsBeside(lawns: readonly LawnToCareFor[], setting: AftercareSetting): readonly WateredGroup[] {
  const names = new Set(lawns.flatMap(({ own, stations }) => (own.length === 0 ? [] : stations.map(({ stationName }) => stationName))));
  const beside = lawns.filter(({ own, stations, earlier }) => own.length === 0 && earlier.length > 0 && stations.some(({ stationName }) => names.has(stationName)));
  return beside.flatMap((lawn) => {
    const products = withEarlier(lawn, setting).products.flatMap((product) => {
      const { label } = product;
      if (KEEPS_WATER_OFF.every((kind) => label.facts[kind] === "none")) return [];
      const facts = Object.fromEntries(KEEPS_WATER_OFF.map((kind) => [kind, label.facts[kind]]));
      return [{ ...product, label: { ...label, facts: { ...NOTHING_STATED, ...facts } } }];
    });
    return products.length === 0 ? [] : [{ lawns: [lawn], products }];
  });
}

interface LawnWithEarlier {
  readonly lawn: LawnToCareFor;
  readonly key: string;
  readonly products: readonly AppliedProduct[];
}

function withEarlier(lawn: LawnToCareFor, { visit, estimates }: AftercareSetting): LawnWithEarlier {
  const asked = {
    atEpochMilliseconds: visit.fromEpochMilliseconds,
    untilEpochMilliseconds: visit.untilEpochMilliseconds,
    waterings: lawn.waterings,
    estimates,
    isSeedPlanned: lawn.seedings.some(({ standing }) => standing === "planned"),
  };
  const running = lawn.earlier.flatMap(({ key, ...earlier }) => {
    const product = earlierAtVisit(earlier, asked);
    return product === undefined ? [] : [{ key: earlierKey(key, product), product }];
  });
  return {
    lawn,
    key: JSON.stringify([lawn.own.map(({ key }) => key), running.map(({ key }) => key)]),
    products: [...lawn.own.flatMap(({ products }) => products), ...running.map(({ product }) => product)],
  };
}

/** Lawns that got the same before differ where one was watered in since, or where only one waits for seed. */
function earlierKey(key: string, { label, wateredInAtEpochMilliseconds }: AppliedProduct): readonly unknown[] {
  return [key, wateredInAtEpochMilliseconds, Object.entries(label.facts).flatMap(([kind, fact]) => (fact === "none" ? [] : kind))];
}

/** The seed of some lawns, told once for the lawns that have it alike; whose it is is said where the visit has several. */
function seedOf(group: readonly LawnToCareFor[], hasSeveral: boolean): readonly ZoneSeeding[] {
  const all = group.flatMap(({ name, seedings }) => seedings.map(({ date, method, standing }) => ({ date, method, standing, lawnName: name })));
  const alike = groupedBy(all, ({ date, method, standing }) => [date, method, standing].join(" "));
  return [...alike.values()].flatMap(([seed, ...others]): readonly ZoneSeeding[] => {
    if (seed === undefined) return [];
    const { lawnName, ...one } = seed;
    const lawnNames = [...new Set([lawnName, ...others.map((other) => other.lawnName)])];
    return [hasSeveral ? { ...one, lawnNames } : one];
  });
}
