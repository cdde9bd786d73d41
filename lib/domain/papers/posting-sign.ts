// A lawn marker as the law words it. Its facts come in as an argument, with their citation: nothing here knows a state.
import { type PaperFrame } from "./paper";

/** A part of what a sign must say, in order. Company and phone stand where the law asks for the business. */
export type SignPhrase =
  | { readonly kind: "words"; readonly text: string }
  | { readonly kind: "company-name" }
  | { readonly kind: "company-phone" };

/** What the law says of a sign's form. */
export interface SignLaw {
  readonly jurisdiction: string;
  readonly citation: string;
  /** The two sides of the sign, shorter first where the law leaves open which is up. */
  readonly sidesInches: readonly [number, number];
  /** "any": the sign may stand upright or lie. "as-given": the first side is the width, the second the height. */
  readonly orientation: "any" | "as-given";
  /** Whether the law names the size itself ("exactly") or the smallest one ("at-least"). */
  readonly sizeIs: "exactly" | "at-least";
  /** The least height of a letter, measured on a capital. */
  readonly leastLetterHeightInches: number;
  /** "White paper, letters in a contrasting color". */
  readonly colorWords: string;
  readonly phrases: readonly SignPhrase[];
}

/** Signs to be posted at one visit. */
export interface PostingSign {
  readonly frame: PaperFrame;
  readonly law: SignLaw;
  /** How many are needed at least; sheets are printed whole. */
  readonly signs: number;
}

/** The phrases with the company's name and phone in their places. */
export function signTexts(law: SignLaw, company: { readonly name: string; readonly phone: string }): readonly string[] {
  return law.phrases.map((phrase) => {
    switch (phrase.kind) {
      case "words":
        return phrase.text;
      case "company-name":
        return company.name;
      case "company-phone":
        // A number that is broken into two lines is read as two numbers.
        return company.phone.replaceAll(" ", "\u00a0");
    }
  });
}
