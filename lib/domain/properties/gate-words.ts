import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { parseLength } from "#domain/quantities/parse-length";
import { isZero, type Quantity } from "#domain/quantities/quantity";

/** What a list says of a gate: the code that opens it, how wide it is, and how to get through, in words. */
export interface ListedGate {
  readonly code: string | null;
  readonly width: Quantity<"length"> | null;
  readonly words: string | null;
}

const ALLOWED = "36 in; code 4471; side gate, latch sticks";
const NONE = /^(no|none|n|-|n\/a|no gate|open)$/iu;
const NAMED_CODE = /^(?:gate )?(?:code|pin)[:# ]*([0-9A-Z*#-]{2,12})$/iu;
const SIGNED_CODE = /^#\s?([0-9A-Z*-]{2,12})#?$/iu;
const LONG_NUMBER = /^\*?\d{4,8}[#*]?$/u;
const SHORT_NUMBER = /^\d{1,3}(\.\d+)?$/u;
const STARTS_LIKE_A_LENGTH = /^\d[\d ./]*\s*(?:ft|feet|foot|in|inch|inches|yd|m|cm|mm|["'\u2019\u201D\u2032\u2033])/iu;

/** True for words that are one code by themselves. */
function codeOf(part: string): string | undefined {
  return NAMED_CODE.exec(part)?.[1] ?? SIGNED_CODE.exec(part)?.[1] ?? (LONG_NUMBER.test(part) ? part : undefined);
}

/**
 * Reads a gate's cell, whose parts stand between commas or semicolons: a length is the narrowest width, four digits or
 * more, or what follows "code" or "#", the code; whatever else is words. A short number alone could be either and is
 * refused, as are two codes and two widths. At `gate`.
 */
export function readGate(text: string): Outcome<ListedGate> {
  const found = text.trim();
  let code: string | null = null;
  let width: Quantity<"length"> | null = null;
  const words: string[] = [];
  for (const part of found.split(/[,;]/u).map((each) => each.trim())) {
    if (part === "" || NONE.test(part)) continue;
    const itsCode = codeOf(part);
    if (itsCode !== undefined) {
      if (code !== null) return badInput("gate", found, ALLOWED, `"${found}" has two codes. Keep one, and write the other into the notes.`);
      code = itsCode;
    } else if (SHORT_NUMBER.test(part)) {
      return badInput("gate", found, ALLOWED, `"${part}" could be inches or a code. Write ${part} in, or code ${part}.`);
    } else if (STARTS_LIKE_A_LENGTH.test(part)) {
      const read = parseLength(part.replace(/\s+wide$/iu, ""), { field: "gate" });
      if (!read.ok) return badInput("gate", found, ALLOWED, read.refusal.sentence);
      if (width !== null || isZero(read.value.quantity)) return badInput("gate", found, ALLOWED, `Give the width of the narrowest gate, once: "${found}".`);
      width = read.value.quantity;
    } else {
      words.push(part);
    }
  }
  return accept({ code, width, words: words.length === 0 ? null : words.join(", ") });
}
