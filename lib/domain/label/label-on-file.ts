import { invariant } from "#domain/foundation/invariant";
import { type LabelFacts } from "#domain/label/label-facts";
import { type GeneralField, type LabelText, type LabelUseText, UNREAD_GENERAL, type UseField } from "#domain/label/label-fields";
import { type LabelComplaints, readLabelText } from "#domain/label/label-text";

/** A label on file as it reads today, and what of it is refused today, by dotted name as in {@link readLabelText}. */
export interface LabelOnFile {
  readonly facts: LabelFacts;
  readonly complaints: LabelComplaints;
}

/**
 * Reads a label that was taken once and is on file as it was typed. Readers grow stricter ("11/2 pt" was read as 5 1/2
 * once), and what is refused today counts as read by nobody, which holds wherever it matters; a use that is nothing
 * without it, as without its rate, falls out until somebody enters it anew. Throws where the product itself is nothing
 * without it, which no stricter reader has brought about yet.
 */
export function readLabelOnFile(text: LabelText): LabelOnFile {
  const first = readLabelText(text);
  if (first.ok) return { facts: first.value, complaints: {} };
  let left = text;
  let complaints: LabelComplaints = first.refusal;
  // Each turn empties a field or leaves a use out, so there is an end.
  for (;;) {
    left = withoutRefused(left, complaints);
    const read = readLabelText(left);
    if (read.ok) return { facts: read.value, complaints: first.refusal };
    complaints = read.refusal;
  }
}

function withoutRefused(text: LabelText, complaints: LabelComplaints): LabelText {
  const refused = new Set(Object.keys(complaints));
  const general = { ...text.general };
  for (const name of Object.keys(UNREAD_GENERAL) as GeneralField[]) {
    if (!refused.has(`general.${name}`)) continue;
    invariant(general[name] !== "", `a label on file can be read without its ${name}`);
    general[name] = "";
  }
  const uses = text.uses.flatMap((use, index) => withoutRefusedOfUse(use, (name) => refused.has(`uses.${String(index)}.${name}`)) ?? []);
  return { ...text, general, uses };
}

/** The use without what is refused of it; undefined where it is refused for want of a field. */
function withoutRefusedOfUse(use: LabelUseText, isRefused: (name: UseField) => boolean): LabelUseText | undefined {
  const names = (Object.keys(use) as UseField[]).filter(isRefused);
  if (names.some((name) => use[name] === "")) return undefined;
  return { ...use, ...Object.fromEntries(names.map((name) => [name, ""])) };
}
