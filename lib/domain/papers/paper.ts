// What every paper says at its head and foot, and the values and findings that all papers are made of. Texts arrive
// formatted: a paper says again what a ticket, a record or a snapshot has decided, and decides nothing.
import { type Finding, type FindingLevel } from "#domain/foundation/finding";

/** The business in whose name a paper speaks. */
export interface PaperCompany {
  readonly name: string;
  readonly address: string;
  readonly phone: string;
  /** The number of the business license; nothing when none is on file, which the paper then says. */
  readonly licenseNumber?: string;
}

/** What stands at the head and the foot of every page. */
export interface PaperFrame {
  readonly company: PaperCompany;
  /** The paper's name, for example "Route sheet". */
  readonly title: string;
  /** The number of the record, mix ticket or sheet; some papers have none. */
  readonly number?: string;
  /** The day the paper speaks of, as printed: "Tuesday, April 14, 2026". */
  readonly date: string;
  /** When what the paper says was decided or stored, in milliseconds since 1970: the same paper is the same file. */
  readonly createdEpochMilliseconds: number;
  /** The rules by which it was checked, as printed: "Rules of April 3, 2026 (version 12)". */
  readonly ruleVersion: string;
  /** From what it was made, as printed: "From mix ticket MT-0412 as issued April 13, 4:10 pm". */
  readonly source: string;
  readonly isDemonstration: boolean;
}

/** What a paper says of one thing: a text, or in which way it is not known. Nothing is ever left out silently. */
export type PaperValue =
  | { readonly kind: "said"; readonly text: string }
  | { readonly kind: "to-write" }
  | { readonly kind: "not-taken" }
  | { readonly kind: "not-recorded" }
  | { readonly kind: "does-not-apply"; readonly because: string };

/** A value with its name. Codes (registration numbers, lots, hashes) are set in a type of their own. */
export interface PaperField {
  readonly label: string;
  readonly value: PaperValue;
  readonly isCode?: boolean;
}

/** Text as a value of a paper. */
export function said(text: string): PaperValue {
  return { kind: "said", text };
}

/** Left open on the paper, to be written by hand. */
export const TO_WRITE: PaperValue = { kind: "to-write" };
/** What nobody took down at the time. */
export const NOT_TAKEN: PaperValue = { kind: "not-taken" };
/** What the record does not hold. */
export const NOT_RECORDED: PaperValue = { kind: "not-recorded" };

/** What is printed for a value; nothing for one that is left to write by hand. */
export function wordsOf(value: PaperValue): string {
  switch (value.kind) {
    case "said":
      return value.text;
    case "to-write":
      return "";
    case "not-taken":
      return "not taken";
    case "not-recorded":
      return "not recorded";
    case "does-not-apply":
      return value.because;
  }
}

/** A finding as a paper prints it. An answered hold stays on the paper, with its answer. */
export interface PaperFinding {
  readonly level: FindingLevel | "answered";
  readonly words: string;
  /** Whose rule it is, and where it is written: "Label, Directions for use". */
  readonly source?: string;
}

const SOURCE_WORDS: Readonly<Record<Finding["source"], string>> = {
  label: "Label",
  law: "Law",
  handbook: "Handbook",
  "common-practice": "Common practice",
  weather: "Weather",
  stock: "Stock",
  house: "House rule",
};

/** A finding as a line of a paper, in the order in which it is read: what, the figure against its limit, what to do. */
export function findingLine(finding: Finding): PaperFinding {
  return { level: finding.level, words: sentencesOf(finding), source: sourceOf(finding) };
}

/** A hold that was answered, with the answer after it ("Answered by Dana Quill, license …, April 13: …"). */
export function answeredLine(finding: Finding, answer: string): PaperFinding {
  return { level: "answered", words: `${sentencesOf(finding)} ${answer}`, source: sourceOf(finding) };
}

function sentencesOf({ what, figure, toDo }: Finding): string {
  return [what, figure, toDo].filter((sentence) => sentence !== undefined).join(" ");
}

function sourceOf({ source, citation }: Finding): string {
  return citation === undefined ? SOURCE_WORDS[source] : `${SOURCE_WORDS[source]}, ${citation}`;
}

const LEVEL_WORDS: Readonly<Record<PaperFinding["level"], string>> = {
  hold: "Hold.",
  "take-care": "Take care.",
  note: "Note.",
  answered: "Hold, answered.",
};

/** The word that stands before a finding, because a shape or a color alone says nothing. */
export function levelWord(level: PaperFinding["level"]): string {
  return LEVEL_WORDS[level];
}
