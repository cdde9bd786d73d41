/** What a crew puts liquids down with. The order is that of a list to choose from. */
export const SPRAYER_KINDS = ["hose-and-gun", "boom-sprayer", "backpack-sprayer"] as const;
/** What a crew puts granules down with, in the order of a list to choose from. */
export const SPREADER_KINDS = ["broadcast-spreader", "drop-spreader"] as const;
/** All of it, sprayers first. */
export const EQUIPMENT_KINDS = [...SPRAYER_KINDS, ...SPREADER_KINDS] as const;

/** A kind of sprayer. */
export type SprayerKind = (typeof SPRAYER_KINDS)[number];
/** A kind of spreader. */
export type SpreaderKind = (typeof SPREADER_KINDS)[number];
/** A kind of sprayer or spreader. */
export type EquipmentKind = (typeof EQUIPMENT_KINDS)[number];

/** The words for a kind on screens and papers. */
export const EQUIPMENT_KIND_WORDS: Readonly<Record<EquipmentKind, string>> = {
  "hose-and-gun": "Hose and gun",
  "boom-sprayer": "Boom sprayer",
  "backpack-sprayer": "Backpack sprayer",
  "broadcast-spreader": "Broadcast spreader",
  "drop-spreader": "Drop spreader",
};

/** Whether it holds a liquid. What does not is a spreader. */
export function isSprayer(kind: EquipmentKind): kind is SprayerKind {
  return (SPRAYER_KINDS as readonly EquipmentKind[]).includes(kind);
}

/** How a sprayer's carrier rate may be measured. */
export type SprayerMethod = "timed-area" | "timed-course" | "boom" | "small-area";

/** The words for a method: what is measured. */
export const SPRAYER_METHOD_WORDS: Readonly<Record<SprayerMethod, string>> = {
  "timed-area": "Catch, and the time for a measured area",
  "timed-course": "Catch, swath, and the time for a measured course",
  boom: "Catch of each nozzle, and the time for a measured course",
  "small-area": "What a measured area took",
};

const METHODS: Readonly<Record<SprayerKind, readonly [SprayerMethod, ...SprayerMethod[]]>> = {
  "hose-and-gun": ["timed-area", "small-area"],
  "boom-sprayer": ["boom", "small-area"],
  "backpack-sprayer": ["timed-course", "timed-area", "small-area"],
};

/**
 * The methods that suit a sprayer, the usual one first: a gun has no swath to speak of, a boom no area of its own.
 * Common practice.
 */
export function methodsFor(kind: SprayerKind): readonly [SprayerMethod, ...SprayerMethod[]] {
  return METHODS[kind];
}
