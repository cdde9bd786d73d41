import { linesOf, type Mix, type RecordPlan, type RecordTreatment, treatmentOnLine } from "#application/register/record-plan";

/** What the record of a visit asks of once: a mix, or a product for which no mix could be worked out. */
export type MixAsked = {
  /** The line of its first product, under which the form names it. */
  readonly key: string;
  readonly lines: readonly number[];
  readonly lawns: Mix["lawns"] | RecordTreatment["lawns"];
  /** Alike for all that goes on the same lawns, or of spot work on the same share of them: out of one fill it is one pass. */
  readonly ground: string;
} & ({ readonly mix: Mix } | { readonly treatment: RecordTreatment });

/** The mixes of a visit, and after them the products that have none. */
export function mixesAsked({ mixes, treatments }: Pick<RecordPlan, "mixes" | "treatments">): readonly MixAsked[] {
  const mixed = new Set(mixes.flatMap(linesOf));
  const without = treatments.filter(({ line }) => !mixed.has(line));
  return [
    ...mixes.map((mix): MixAsked => {
      const lines = linesOf(mix);
      const [first = 0] = lines;
      return { key: String(first), lines, lawns: mix.lawns, ground: groundOf(treatmentOnLine(treatments, first)), mix };
    }),
    ...without.map((treatment): MixAsked => ({ key: String(treatment.line), lines: [treatment.line], lawns: treatment.lawns, ground: groundOf(treatment), treatment })),
  ];
}

function groundOf({ lawns, spot }: RecordTreatment): string {
  return JSON.stringify([lawns.map(({ zoneId }) => zoneId).toSorted(), spot?.shareBasisPoints ?? "all over"]);
}
