import { type ActiveIngredient, SERVICE_TYPES, type ServiceType } from "#domain/label/label-facts";

/** What a pesticide works against, which is what resistance arises in. */
export type PesticideKind = "herbicide" | "fungicide" | "insecticide" | "unknown";

/**
 * The words by which a label says whose group it prints: the kind, or the committee that numbers the groups of it. One
 * committee numbers those of insecticides and miticides together (from memory).
 */
const KIND_WORDS: ReadonlyMap<string, PesticideKind> = new Map([
  ["herbicide", "herbicide"],
  ["hrac", "herbicide"],
  ["wssa", "herbicide"],
  ["fungicide", "fungicide"],
  ["frac", "fungicide"],
  ["insecticide", "insecticide"],
  ["miticide", "insecticide"],
  ["acaricide", "insecticide"],
  ["irac", "insecticide"],
]);

/** What the kind of work tells where the group's own words do not. */
const KIND_OF_SERVICE: Readonly<Record<ServiceType, PesticideKind>> = {
  fertilizer: "unknown",
  "grassy weed control": "herbicide",
  "broadleaf weed control": "herbicide",
  "insect control": "insecticide",
  "disease control": "fungicide",
  other: "unknown",
};

function wordsOf(group: string): readonly string[] {
  return group.toLowerCase().split(/[\s,;:()]+/u).filter((word) => word !== "" && word !== "group" && word !== "groups");
}

function kindOfWord(word: string): PesticideKind | undefined {
  return KIND_WORDS.get(word) ?? KIND_WORDS.get(word.replace(/s$/u, ""));
}

/** The kind of a pesticide: in its group's own words, else by the kind of work that its label is used for. */
export function kindOf(modeOfAction: ActiveIngredient["modeOfAction"], serviceType: string): PesticideKind {
  const inWords = typeof modeOfAction === "string" ? undefined : wordsOf(modeOfAction.group).map(kindOfWord).find((kind) => kind !== undefined);
  const service = SERVICE_TYPES.find((one) => one === serviceType);
  return inWords ?? (service === undefined ? "unknown" : KIND_OF_SERVICE[service]);
}

/** Whether two may be of one kind: what nobody knows may be of any. */
export function isOfOneKind(one: PesticideKind, other: PesticideKind): boolean {
  return one === "unknown" || other === "unknown" || one === other;
}

/** "3" of "Group 3 herbicide", "3a" of "IRAC Group 3A": the code without the words of its kind, in small letters. */
export function codeOfGroup(group: string): string {
  return wordsOf(group).filter((word) => kindOfWord(word) === undefined).join(" ");
}
