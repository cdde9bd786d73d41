import { type Outcome, accept, badInput } from "#domain/foundation/outcome";
import { type DatePeriod, type Dated, unbrokenDays } from "#domain/turf/daily-series";
import { type AmountLimit, MOST_RAIN, amountRange, percentRange, refuseOutOfRange } from "#domain/turf/physical-range";

// Equations by number: Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, chapter 8,
// from memory. Depths of water are in mm, which is the same as liters per square meter.

/** A root zone that holds water between two limits, all for the user to state: soils differ too much for defaults. */
export interface RootZone {
  readonly rootDepthMillimeters: number;
  /** Water by volume that stays after drainage. */
  readonly fieldCapacityPercent: number;
  /** Water by volume at which roots find none. */
  readonly wiltingPointPercent: number;
  /** The share of the available water that turf takes without stress, above 0 and below 1 (p in FAO-56). */
  readonly readilyAvailableShare: number;
}

/** What a root zone holds, in mm. */
export interface RootZoneWater {
  /** FAO-56 Eq. 82. */
  readonly totalAvailableMillimeters: number;
  /** FAO-56 Eq. 83. */
  readonly readilyAvailableMillimeters: number;
}

/**
 * Depth of water, in mm, between two volumetric water contents in % over a depth of soil: 4 % of 100 mm are
 * 4 mm. Negative when the soil has become drier. Source: Woods, The attractions of metric units.
 */
export function waterDepthMillimeters(fromPercent: number, toPercent: number, depthMillimeters: number): number {
  return ((toPercent - fromPercent) / 100) * depthMillimeters;
}

/**
 * What a root zone holds (FAO-56 Eq. 82 and 83). Refuses each figure at its own field: a root depth outside 1 to 2,000
 * mm and a share outside 0.01 to 0.99 (common practice), no percent, and a wilting point that is not below field
 * capacity.
 */
export function rootZoneWater(zone: RootZone): Outcome<RootZoneWater> {
  const refusal = refuseOutOfRange([
    {
      field: "rootDepthMillimeters",
      words: "The root depth",
      value: zone.rootDepthMillimeters,
      lowest: 1,
      highest: 2000,
      unit: "mm",
    },
    percentRange("fieldCapacityPercent", "The field capacity", zone.fieldCapacityPercent),
    percentRange("wiltingPointPercent", "The wilting point", zone.wiltingPointPercent),
    {
      field: "readilyAvailableShare",
      words: "The readily available share",
      value: zone.readilyAvailableShare,
      lowest: 0.01,
      highest: 0.99,
      unit: "(a share)",
    },
  ]);
  if (refusal !== undefined) return refusal;
  if (zone.wiltingPointPercent >= zone.fieldCapacityPercent) {
    return badInput(
      "wiltingPointPercent",
      `${zone.wiltingPointPercent} %`,
      `below the field capacity, ${zone.fieldCapacityPercent} %`,
      `The wilting point, ${zone.wiltingPointPercent} %, must be below the field capacity, ${zone.fieldCapacityPercent} %.`,
    );
  }
  const totalAvailableMillimeters = waterDepthMillimeters(
    zone.wiltingPointPercent,
    zone.fieldCapacityPercent,
    zone.rootDepthMillimeters,
  );
  return accept({
    totalAvailableMillimeters,
    readilyAvailableMillimeters: totalAvailableMillimeters * zone.readilyAvailableShare,
  });
}

/** Irrigation of a day: 250 mm are ten deep waterings (common practice). */
const MOST_IRRIGATION: AmountLimit = { highest: 250, unit: "mm" };
/** Water use of a day: 30 mm are twice what a desert's sun and wind take from wet grass (common practice). */
const MOST_WATER_USE: AmountLimit = { highest: 30, unit: "mm" };
/** What the deepest root zone lacks at most: all its 2,000 mm, were they water. */
const MOST_DEPLETION: AmountLimit = { highest: 2000, unit: "mm" };

/** One day's water, in mm. Rain that runs off is left out by whoever states the rain. */
export interface WaterDay extends Dated {
  readonly effectiveRainMillimeters: number;
  readonly irrigationMillimeters: number;
  /** What turf without stress would use: coefficient times reference evapotranspiration. */
  readonly waterUseMillimeters: number;
}

/** The root zone at the end of a day. Depletion is what it lacks to field capacity. */
export interface WaterLine extends Dated {
  readonly depletionMillimeters: number;
  /** Water that went below the roots (FAO-56 Eq. 88). */
  readonly drainageMillimeters: number;
  /** What was really used, less than wanted under stress (FAO-56 Eq. 81). */
  readonly actualUseMillimeters: number;
  /** From 0 to 1; below 1 the turf lacks water (FAO-56 Eq. 84). */
  readonly stressCoefficient: number;
  readonly needsWater: boolean;
}

/** The water stress coefficient, from 0 to 1, at a depletion (FAO-56 Eq. 84). */
export function stressCoefficient(water: RootZoneWater, depletionMillimeters: number): number {
  const { totalAvailableMillimeters: total, readilyAvailableMillimeters: readily } = water;
  if (depletionMillimeters <= readily) return 1;
  return Math.max(0, (total - depletionMillimeters) / (total - readily));
}

/**
 * Carries a root zone through days without a gap, beginning with the depletion at the end of the day before
 * (FAO-56 Eq. 85, capillary rise taken as zero). Depletion stays from 0 to the total available water (Eq. 86).
 * Needs water says that depletion is above the readily available water.
 *
 * Refuses impossible figures, a first depletion beyond what the zone holds, and a missing day, by its date.
 */
export function runWaterBalance(
  zone: RootZone,
  days: readonly WaterDay[],
  period: DatePeriod & { readonly depletionBeforeMillimeters: number },
): Outcome<readonly WaterLine[]> {
  const water = rootZoneWater(zone);
  if (!water.ok) return water;
  const readDays = unbrokenDays(days, period);
  if (!readDays.ok) return readDays;
  const refusal = refuseOutOfRange([
    {
      field: "depletionBeforeMillimeters",
      words: "The depletion before the first day",
      value: period.depletionBeforeMillimeters,
      lowest: 0,
      highest: water.value.totalAvailableMillimeters,
      unit: "mm",
    },
    ...readDays.value.flatMap((day) => [
      amountRange(
        `${day.date} effectiveRainMillimeters`,
        `The rain of ${day.date}`,
        day.effectiveRainMillimeters,
        MOST_RAIN.dayMillimeters,
      ),
      amountRange(
        `${day.date} irrigationMillimeters`,
        `The irrigation of ${day.date}`,
        day.irrigationMillimeters,
        MOST_IRRIGATION,
      ),
      amountRange(`${day.date} waterUseMillimeters`, `The water use of ${day.date}`, day.waterUseMillimeters, MOST_WATER_USE),
    ]),
  ]);
  if (refusal !== undefined) return refusal;
  const lines: WaterLine[] = [];
  let depletionMillimeters = period.depletionBeforeMillimeters;
  for (const day of readDays.value) {
    const line = endOfDay(water.value, depletionMillimeters, day);
    depletionMillimeters = line.depletionMillimeters;
    lines.push(line);
  }
  return accept(lines);
}

function endOfDay(water: RootZoneWater, depletionBefore: number, day: WaterDay): WaterLine {
  const stress = stressCoefficient(water, depletionBefore);
  const wantedUse = stress * day.waterUseMillimeters;
  const balance = depletionBefore - day.effectiveRainMillimeters - day.irrigationMillimeters + wantedUse;
  const depletionMillimeters = Math.min(water.totalAvailableMillimeters, Math.max(0, balance));
  const drainageMillimeters = Math.max(0, -balance);
  return {
    date: day.date,
    depletionMillimeters,
    drainageMillimeters,
    actualUseMillimeters: wantedUse - Math.max(0, balance - water.totalAvailableMillimeters),
    stressCoefficient: stress,
    needsWater: depletionMillimeters > water.readilyAvailableMillimeters,
  };
}

/** The answer to "is the lawn too wet to drive on", with what it rests on. */
export interface DrivingAnswer {
  readonly kind: "too-wet" | "dry-enough";
  readonly depletionMillimeters: number;
  readonly neededDepletionMillimeters: number;
  /** How much the answer is worth; to be shown beside it. */
  readonly basis: string;
}

/**
 * Whether the root zone is too near field capacity to carry a machine without ruts. `neededDepletionMillimeters`
 * is the company's own figure: no published one was found, so this is common practice applied to an estimate,
 * and whoever stands on the lawn knows better. Refuses figures below zero and beyond any root zone.
 */
export function judgeDriving(depletionMillimeters: number, neededDepletionMillimeters: number): Outcome<DrivingAnswer> {
  const refusal = refuseOutOfRange([
    amountRange("depletionMillimeters", "The depletion", depletionMillimeters, MOST_DEPLETION),
    amountRange("neededDepletionMillimeters", "The depletion needed for driving", neededDepletionMillimeters, MOST_DEPLETION),
  ]);
  return (
    refusal ??
    accept({
      kind: depletionMillimeters < neededDepletionMillimeters ? "too-wet" : "dry-enough",
      depletionMillimeters,
      neededDepletionMillimeters,
      basis:
        "estimated by a water balance and held against the company's own figure (common practice); not measured on the lawn",
    })
  );
}
