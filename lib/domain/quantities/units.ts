import { BrokenInvariant } from "#domain/foundation/invariant";

/**
 * The units in which people speak, each as a whole number of the canonical unit of its dimension.
 *
 * Canonical units: volume 1.5625 pL (1/640,000,000 mL), mass 6.25 ng (1/160,000,000 g), area 0.04 mm2 (the square of
 * 0.2 mm), length 0.125 micrometers. They are the grid on which every unit below is whole. Stored as a signed 64 bit
 * integer they reach 3.8 million gal and 127 million lb.
 *
 * The grid is fine enough that what is read off a scale or a measuring cup is whole too: hundredths of a pound and of
 * an ounce by weight; halves, quarters, eighths and tenths of a fluid ounce; quarters and tenths of a teaspoon and of a
 * tablespoon; tenths and twentieths of a gallon; ten-thousandths of a gram and of a milliliter. Not whole are
 * hundredths of a gallon (but for the twentieths among them) and of a fluid ounce, thousandths of a pound, eighths of
 * an ounce by weight and thirds of any weight: a volume finer by the five that is missing would reach 760,000 gal only.
 *
 * Source of the factors: NIST SP 811 Appendix B.8 and NIST Handbook 44 Appendix C. Exact by definition are the inch
 * (25.4 mm), the pound (453.592 37 g) and the gallon (231 cu in); the acre is the international one (43,560 sq ft).
 */
export type Dimension = "volume" | "mass" | "area" | "length";

interface UnitDefinition {
  readonly dimension: Dimension;
  readonly canonicalAmount: bigint;
}

/** Each unit as a whole number of its canonical unit; see {@link Dimension} for the grid and the source. */
export const units = {
  mL: { dimension: "volume", canonicalAmount: 640_000_000n },
  L: { dimension: "volume", canonicalAmount: 640_000_000_000n },
  m3: { dimension: "volume", canonicalAmount: 640_000_000_000_000n },
  tsp: { dimension: "volume", canonicalAmount: 3_154_509_820n },
  tbsp: { dimension: "volume", canonicalAmount: 9_463_529_460n },
  "fl oz": { dimension: "volume", canonicalAmount: 18_927_058_920n },
  cup: { dimension: "volume", canonicalAmount: 151_416_471_360n },
  pt: { dimension: "volume", canonicalAmount: 302_832_942_720n },
  qt: { dimension: "volume", canonicalAmount: 605_665_885_440n },
  gal: { dimension: "volume", canonicalAmount: 2_422_663_541_760n },
  "cu in": { dimension: "volume", canonicalAmount: 10_487_720_960n },
  "cu ft": { dimension: "volume", canonicalAmount: 18_122_781_818_880n },
  "cu yd": { dimension: "volume", canonicalAmount: 489_315_109_109_760n },

  g: { dimension: "mass", canonicalAmount: 160_000_000n },
  kg: { dimension: "mass", canonicalAmount: 160_000_000_000n },
  "oz wt": { dimension: "mass", canonicalAmount: 4_535_923_700n },
  lb: { dimension: "mass", canonicalAmount: 72_574_779_200n },
  "short ton": { dimension: "mass", canonicalAmount: 145_149_558_400_000n },

  m2: { dimension: "area", canonicalAmount: 25_000_000n },
  ha: { dimension: "area", canonicalAmount: 250_000_000_000n },
  "sq ft": { dimension: "area", canonicalAmount: 2_322_576n },
  "sq yd": { dimension: "area", canonicalAmount: 20_903_184n },
  acre: { dimension: "area", canonicalAmount: 101_171_410_560n },

  mm: { dimension: "length", canonicalAmount: 8_000n },
  cm: { dimension: "length", canonicalAmount: 80_000n },
  m: { dimension: "length", canonicalAmount: 8_000_000n },
  in: { dimension: "length", canonicalAmount: 203_200n },
  ft: { dimension: "length", canonicalAmount: 2_438_400n },
  yd: { dimension: "length", canonicalAmount: 7_315_200n },
} as const satisfies Readonly<Record<string, UnitDefinition>>;

/** The name of a unit, as it stands in code and in rates: "fl oz", "oz wt", "sq ft". */
export type Unit = keyof typeof units;
/** What a unit measures. */
export type DimensionOf<U extends Unit> = (typeof units)[U]["dimension"];
/** The units that measure a dimension. */
export type UnitOf<D extends Dimension> = {
  [U in Unit]: DimensionOf<U> extends D ? U : never;
}[Unit];

/** Throws unless a measure is of a dimension. The types say so already; what comes from storage might not. */
export function requireDimension(measure: { readonly dimension: Dimension }, expected: Dimension): void {
  if (measure.dimension !== expected) failOnDimension(measure.dimension, expected);
}

function failOnDimension(found: Dimension, expected: Dimension): never {
  throw new BrokenInvariant(`a measure of ${expected} is wanted, not one of ${found}`);
}

/** One squared canonical length (0.125 micrometers) times this is one canonical area (0.04 mm2). */
export const LENGTHS_SQUARED_PER_AREA = 2_560_000n;

/** One canonical area times one canonical length is 16/5 of a canonical volume: 5 pL to 1.5625 pL. */
export const VOLUMES_PER_AREA_TIMES_LENGTH = { numerator: 16n, denominator: 5n } as const;

/** The greatest amount that a signed 64 bit column holds. What people type is refused above it. */
export const GREATEST_STORED_AMOUNT = 9_223_372_036_854_775_807n;
