import { type Dimension, type Unit, units } from "#domain/quantities/units";

/** How a unit is written on screens and papers: always whole, never "oz" alone. Plural where English has one. */
const WRITTEN: Readonly<Partial<Record<Unit, { readonly one: string; readonly many: string }>>> = {
  m2: { one: "m²", many: "m²" },
  m3: { one: "m³", many: "m³" },
  acre: { one: "acre", many: "acres" },
  cup: { one: "cup", many: "cups" },
  "short ton": { one: "short ton", many: "short tons" },
};

/** The unit as it is written after a figure; `many` after a figure above one. */
export function writtenUnit(unit: Unit, number: "one" | "many"): string {
  return WRITTEN[unit]?.[number] ?? unit;
}

/** What people type for each unit, in lower case, without periods, "square" as sq, "cubic" as cu, "feet" as ft. */
const SPELLINGS: Readonly<Record<Unit, readonly string[]>> = {
  mL: ["ml", "milliliter", "milliliters", "millilitre", "millilitres", "cc"],
  L: ["l", "liter", "liters", "litre", "litres"],
  m3: ["m3", "m^3", "cu m", "cu meter", "cu meters", "cu metre", "cu metres"],
  tsp: ["tsp", "tsps", "teaspoon", "teaspoons"],
  tbsp: ["tbsp", "tbsps", "tbs", "tablespoon", "tablespoons"],
  "fl oz": ["fl oz", "floz", "oz fl", "fluid oz", "fluid ounce", "fluid ounces", "fl ounce", "fl ounces"],
  cup: ["cup", "cups"],
  pt: ["pt", "pts", "pint", "pints"],
  qt: ["qt", "qts", "quart", "quarts"],
  gal: ["gal", "gals", "gallon", "gallons"],
  "cu in": ["cu in", "in3", "in^3"],
  "cu ft": ["cu ft", "cuft", "ft3", "ft^3", "cf"],
  "cu yd": ["cu yd", "cu yds", "cuyd", "yd3", "yd^3", "cy"],
  g: ["g", "gram", "grams", "gm", "gms"],
  kg: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"],
  "oz wt": [
    "oz wt",
    "ozwt",
    "wt oz",
    "oz weight",
    "weight oz",
    "oz by weight",
    "dry oz",
    "ounce weight",
    "ounces weight",
    "weight ounces",
    "oz av",
    "oz avdp",
  ],
  lb: ["lb", "lbs", "pound", "pounds", "#"],
  "short ton": ["short ton", "short tons", "ton", "tons"],
  m2: ["m2", "m^2", "sq m", "sqm", "sq meter", "sq meters", "sq metre", "sq metres"],
  ha: ["ha", "hectare", "hectares"],
  "sq ft": ["sq ft", "sqft", "ft2", "ft^2", "sf", "ft sq"],
  "sq yd": ["sq yd", "sq yds", "sqyd", "yd2", "yd^2", "sy"],
  acre: ["acre", "acres", "ac"],
  mm: ["mm", "millimeter", "millimeters", "millimetre", "millimetres"],
  cm: ["cm", "centimeter", "centimeters", "centimetre", "centimetres"],
  m: ["m", "meter", "meters", "metre", "metres"],
  in: ["in", "ins"],
  ft: ["ft"],
  yd: ["yd", "yds"],
};

function isUnit(text: string): text is Unit {
  return Object.hasOwn(units, text);
}

const UNIT_BY_SPELLING: ReadonlyMap<string, Unit> = new Map(
  Object.entries(SPELLINGS).flatMap(([unit, spellings]) =>
    isUnit(unit) ? spellings.map((spelling): [string, Unit] => [spelling, unit]) : [],
  ),
);

const OUNCE = new Set(["oz", "ozs", "ounce", "ounces"]);

function foldSpelling(text: string): string {
  return text
    .toLowerCase()
    .replaceAll(".", " ")
    .replace(/\s+/gu, " ")
    .trim()
    .replace(/\bsquare\b/u, "sq")
    .replace(/\bcubic\b/u, "cu")
    .replace(/\b(?:feet|foot)\b/u, "ft")
    .replace(/\b(?:yards|yard)\b/u, "yd")
    .replace(/\b(?:inches|inch)\b/u, "in");
}

/** What a typed unit means. An ounce alone means two things; M alone is a thousand to some and meters to others. */
export type TypedUnit =
  | { readonly kind: "unit"; readonly unit: Unit }
  | { readonly kind: "ounce-of-which-kind" }
  | { readonly kind: "capital-m" }
  | { readonly kind: "unknown" };

/** Reads a unit as people type it, in plain characters (see plainCharacters). */
export function readUnit(text: string): TypedUnit {
  if (text.trim() === "M") return { kind: "capital-m" };
  const spelling = foldSpelling(text);
  if (OUNCE.has(spelling)) return { kind: "ounce-of-which-kind" };
  const unit = UNIT_BY_SPELLING.get(spelling);
  return unit === undefined ? { kind: "unknown" } : { kind: "unit", unit };
}

const US_CUSTOMARY: ReadonlySet<string> = new Set<Unit>([
  "tsp",
  "tbsp",
  "fl oz",
  "cup",
  "pt",
  "qt",
  "gal",
  "cu in",
  "cu ft",
  "cu yd",
  "oz wt",
  "lb",
  "short ton",
  "sq ft",
  "sq yd",
  "acre",
  "in",
  "ft",
  "yd",
]);

/** Whether a unit is one of the US customary ones, beside which a bare "1,000" can only mean square feet. */
export function isUsCustomary(unit: string): boolean {
  return US_CUSTOMARY.has(unit);
}

/** The units that are offered in a refusal, by dimension, in the order of the trade. */
export const offeredUnits: Readonly<Record<Dimension, readonly Unit[]>> = {
  mass: ["lb", "oz wt", "kg", "g"],
  volume: ["gal", "fl oz", "L", "mL"],
  area: ["sq ft", "acre", "m2", "ha"],
  length: ["ft", "in", "m"],
};

/** What a dimension is called in a sentence. */
export const dimensionInWords: Readonly<Record<Dimension, string>> = {
  mass: "a weight",
  volume: "a volume",
  area: "an area",
  length: "a length",
};
