import { groupedBy } from "#domain/foundation/grouping";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AftercareTimeline, aftercareTimeline } from "#domain/mixing/aftercare";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { type EarlierProduct, earlierAtVisit } from "#domain/mixing/earlier-products";
import { type IrrigationStation } from "#domain/mixing/irrigation-run";
import { type ZoneSeeding } from "#domain/mixing/seeding-aftercare";
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
 * still run. Lawns that get nothing have none. Refused as aftercareTimeline refuses; the first refusal is handed on.
 */
export function aftercareOfLawns(lawns: readonly LawnToCareFor[], setting: AftercareSetting): Outcome<readonly AftercareOfLawns[]> {
  const treated = lawns.filter(({ own }) => own.length > 0).map((lawn) => withEarlier(lawn, setting));
  const groups: AftercareOfLawns[] = [];
  for (const group of groupedBy(treated, ({ key }) => key).values()) {
    const [first] = group;
    if (first === undefined) continue;
    const timeline = aftercareTimeline({
      ...setting,
      products: first.products,
      stations: stationsOf(group.map(({ lawn }) => lawn)),
      seedings: seedOf(group.map(({ lawn }) => lawn), treated.length > 1),
    });
    if (!timeline.ok) return timeline;
    groups.push({ lawnNames: group.map(({ lawn: { name } }) => name), timeline: timeline.value });
  }
  return accept(groups);
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

function stationsOf(lawns: readonly LawnToCareFor[]): readonly IrrigationStation[] {
  const byName = new Map(lawns.flatMap(({ stations }) => stations.map((station) => [station.stationName, station] as const)));
  return [...byName.values()];
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
