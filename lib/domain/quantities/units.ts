import { BrokenInvariant } from "#domain/foundation/invariant";

/**
 * The units in which people speak, each as a whole number of the canonical unit of its dimension.
 *
 * Canonical units: volume 31.25 pL (1/32,000,000 mL), mass 0.625 micrograms (1/1,600,000 g), area 0.04 mm2
 * (the square of 0.2 mm), length 0.125 micrometers. They are the grid on which every unit below is whole. Stored
 * as a signed 64 bit integer they reach 76 million gal and 12.7 billion lb.
 *
 * Source of the factors: NIST SP 811 Appendix B.8 and NIST Handbook 44 Appendix C. Exact by definition are the inch
 * (25.4 mm), the pound (453.592 37 g) and the gallon (231 cu in); the acre is the international one (43,560 sq ft).
 */
export type Dimension = "volume" | "mass" | "area" | "length";

interface UnitDefinition {
  readonly dimension: Dimension;
  readonly canonicalAmount: bigint;
}

export const units = {
  mL: { dimension: "volume", canonicalAmount: 32_000_000n },
  L: { dimension: "volume", canonicalAmount: 32_000_000_000n },
  m3: { dimension: "volume", canonicalAmount: 32_000_000_000_000n },
  tsp: { dimension: "volume", canonicalAmount: 157_725_491n },
  tbsp: { dimension: "volume", canonicalAmount: 473_176_473n },
  "fl oz": { dimension: "volume", canonicalAmount: 946_352_946n },
  cup: { dimension: "volume", canonicalAmount: 7_570_823_568n },
  pt: { dimension: "volume", canonicalAmount: 15_141_647_136n },
  qt: { dimension: "volume", canonicalAmount: 30_283_294_272n },
  gal: { dimension: "volume", canonicalAmount: 121_133_177_088n },
  "cu in": { dimension: "volume", canonicalAmount: 524_386_048n },
  "cu ft": { dimension: "volume", canonicalAmount: 906_139_090_944n },
  "cu yd": { dimension: "volume", canonicalAmount: 24_465_755_455_488n },

  g: { dimension: "mass", canonicalAmount: 1_600_000n },
  kg: { dimension: "mass", canonicalAmount: 1_600_000_000n },
  "oz wt": { dimension: "mass", canonicalAmount: 45_359_237n },
  lb: { dimension: "mass", canonicalAmount: 725_747_792n },
  "short ton": { dimension: "mass", canonicalAmount: 1_451_495_584_000n },

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

export type Unit = keyof typeof units;
export type DimensionOf<U extends Unit> = (typeof units)[U]["dimension"];
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

/** One canonical area times one canonical length is 4/25 of a canonical volume: 5 pL to 31.25 pL. */
export const VOLUMES_PER_AREA_TIMES_LENGTH = { numerator: 4n, denominator: 25n } as const;

/** The greatest amount that a signed 64 bit column holds. What people type is refused above it. */
export const GREATEST_STORED_AMOUNT = 9_223_372_036_854_775_807n;
