/** How grave a finding is. Only a hold keeps a mix ticket from being issued; none keeps the truth from being recorded. */
export const FINDING_LEVELS = ["hold", "take-care", "note"] as const;
export type FindingLevel = (typeof FINDING_LEVELS)[number];

/** Whose rule a finding holds something against. */
export type FindingSource = "label" | "law" | "handbook" | "common-practice" | "weather" | "stock" | "house";

/** Whose rule a finding is, in the word that stands under it. */
export const FINDING_SOURCE_WORDS: Readonly<Record<FindingSource, string>> = {
  label: "label",
  law: "law",
  handbook: "handbook",
  "common-practice": "common practice",
  weather: "weather",
  stock: "stock",
  house: "house",
};

/**
 * Who may answer a hold: nobody (a label is law), a license holder who states why a rule of law does not apply here,
 * or the office by changing the plan.
 */
export type HoldAnswerer = "nobody" | "license-holder" | "office";

/** The words of a finding, in the order in which they are read. */
export interface FindingWords {
  /** The check's own name, the same in code, on paper and in an answer: `label-rate-above-highest`. */
  readonly rule: string;
  readonly source: FindingSource;
  /** What is the matter, as a sentence that a crew member understands. */
  readonly what: string;
  /** The figure against its limit, as a sentence. */
  readonly figure?: string;
  /** What to do, as a sentence. */
  readonly toDo?: string;
  /** Where the rule is written: the label's section, the statute, the handbook. */
  readonly citation?: string;
  /** What it is about, by name: products, lawns, people, equipment. Findings of one cause are grouped without them. */
  readonly about: readonly string[];
}

/** A finding at its level. Only a hold says who may answer it. */
export type Finding =
  | (FindingWords & { readonly level: "hold"; readonly answerableBy: HoldAnswerer })
  | (FindingWords & { readonly level: "take-care" | "note" });

/** A finding that keeps a mix ticket from being issued until `answerableBy` has answered it. */
export function hold(answerableBy: HoldAnswerer, words: FindingWords): Finding {
  return { level: "hold", answerableBy, ...words };
}

/** A finding that wants care and holds nothing up. */
export function takeCare(words: FindingWords): Finding {
  return { level: "take-care", ...words };
}

/** A finding to know of, which asks for nothing. */
export function note(words: FindingWords): Finding {
  return { level: "note", ...words };
}

/** The findings with the gravest first; those of one level stay in their order. */
export function gravestFirst(findings: readonly Finding[]): readonly Finding[] {
  return FINDING_LEVELS.flatMap((level) => findings.filter((finding) => finding.level === level));
}

/** The findings without those that say the same, word for word and about the same, as one before them. */
export function eachFindingOnce(findings: readonly Finding[]): readonly Finding[] {
  const said = new Map(findings.map((finding) => [JSON.stringify(finding), finding]));
  return [...said.values()];
}

/** The holds among the findings. */
export function holdsOf(findings: readonly Finding[]): readonly Extract<Finding, { level: "hold" }>[] {
  return findings.filter((finding) => finding.level === "hold");
}
