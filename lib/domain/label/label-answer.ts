import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { plainCharacters } from "#domain/quantities/parse-number";

/** What was typed for one fact of a label. */
export type LabelAnswer =
  | { readonly kind: "unread" }
  | { readonly kind: "none" }
  | {
      readonly kind: "printed";
      /** In plain characters, without the quotation. */
      readonly value: string;
      /** The quotation, or else what was typed. */
      readonly labelWords: string;
    };

/** An answer, or the sentence that asks for a better one. */
export type ReadAnswer<Value> = Outcome<Value, string>;

const QUOTATION = /^(.*?)\s*["\u201C](.+)["\u201D]\.?$/su;

/** Splits what was typed into the fact and the label's own words, which may follow in quotation marks. */
export function answerOf(text: string): LabelAnswer {
  const typed = text.trim();
  if (typed === "") return { kind: "unread" };
  const [, before, quoted] = QUOTATION.exec(typed) ?? [];
  const fact = before === undefined || before === "" ? typed : before;
  const lines = fact.split("\n").map((line) => plainCharacters(line.replaceAll("\u00BA", "\u00B0")));
  const value = lines.filter((line) => line !== "").join("\n").replace(/[.;,]$/u, "");
  if (/^none$/iu.test(value)) return { kind: "none" };
  return { kind: "printed", value, labelWords: before === "" || quoted === undefined ? typed : quoted.trim() };
}

/** Reads a fact that may be unread, none, or printed. Refused as `read` refuses what is printed. */
export function readOnFile<Value>(
  text: string,
  read: (value: string, labelWords: string) => ReadAnswer<Value>,
): ReadAnswer<Value | "none" | "unknown"> {
  const answer = answerOf(text);
  if (answer.kind === "unread") return accept("unknown");
  return answer.kind === "none" ? accept("none") : read(answer.value, answer.labelWords);
}

/** Reads one of a few words, in whatever case it was typed. Every other word is refused. */
export function readWord<Word extends string>(words: readonly Word[], value: string): ReadAnswer<Word> {
  const found = words.find((word) => word.toLowerCase() === value.toLowerCase());
  return found === undefined ? refuse(`Write one of: ${words.join(", ")}.`) : accept(found);
}

/** Reads a yes or a no. A label that says nothing about it says no. Every other word is refused. */
export function readYesOrNo(text: string): ReadAnswer<boolean | "unknown"> {
  const answer = answerOf(text);
  if (answer.kind === "unread") return accept("unknown");
  if (answer.kind === "none") return accept(false);
  const word = readWord(["yes", "no"], answer.value);
  return word.ok ? accept(word.value === "yes") : word;
}

/** The parts of a list written with commas, or one a line. */
export function partsOf(value: string): readonly string[] {
  return value.split(/[,\n]/u).map((part) => part.trim()).filter((part) => part !== "");
}

type Values<Parts> = { readonly [Name in keyof Parts]: Parts[Name] extends ReadAnswer<infer Value> ? Value : never };

/** All answers as one value, or, refused, every complaint by the name of its field. */
export function gather<Parts extends Readonly<Record<string, ReadAnswer<unknown>>>>(
  parts: Parts,
): Outcome<Values<Parts>, Readonly<Record<string, string>>> {
  const complaints: Record<string, string> = {};
  const values: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(parts)) {
    if (part.ok) values[name] = part.value;
    else complaints[name] = part.refusal;
  }
  return Object.keys(complaints).length > 0 ? refuse(complaints) : accept(values as Values<Parts>);
}
