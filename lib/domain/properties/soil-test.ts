/** What a laboratory found of phosphorus, as far as the law asks: whether the soil needs any. */
export const PHOSPHORUS_FINDINGS = ["deficient", "sufficient", "not-tested"] as const;
export type PhosphorusFinding = (typeof PHOSPHORUS_FINDINGS)[number];

export const PHOSPHORUS_WORDS: Readonly<Record<PhosphorusFinding, string>> = {
  deficient: "Deficient: the soil needs phosphorus",
  sufficient: "Sufficient: no phosphorus is needed",
  "not-tested": "Phosphorus was not tested",
};
