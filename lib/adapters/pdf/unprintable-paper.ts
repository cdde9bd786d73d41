import { type InputRefusal, badInput } from "#domain/foundation/outcome";

/** Thrown while a paper is drawn and answered as a refusal where drawing began; it never leaves this folder. */
export class UnprintablePaper extends Error {
  override readonly name = "UnprintablePaper";

  constructor(readonly refusal: InputRefusal) {
    super(refusal.sentence);
  }

  /** No font at hand has the character: an empty box on a paper of record would be worse than no paper. */
  static ofCharacter(character: string, text: string): UnprintablePaper {
    const code = `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;
    const sentence = `The papers’ fonts have no “${character}” (${code}), which stands in “${text}”. Write it another way.`;
    return new UnprintablePaper(badInput("text", code, "characters of the Latin script", sentence).refusal);
  }

  /** A row that is higher than a page can't be kept whole. */
  static ofHeight(text: string): UnprintablePaper {
    const begin = text.length > 80 ? `${text.slice(0, 80)}…` : text;
    const sentence = `A part of the paper is higher than a page and can’t be printed whole: “${begin}”. Shorten it.`;
    return new UnprintablePaper(badInput("text", begin, "a text that fits on a page", sentence).refusal);
  }
}
