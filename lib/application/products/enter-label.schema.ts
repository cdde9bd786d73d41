import { z } from "zod";
import { GENERAL_FIELD_NAMES, type GeneralField, type LabelText, type LabelUseText, USE_FIELD_NAMES, type UseField } from "#domain/label/label-fields";
import { readLabelUse } from "#domain/label/label-use";
import { readGeneral } from "#domain/label/label-general";
import { idField } from "#application/field.schema";

const LONGEST = 1000;
const BROKEN_FORM = "The form is not whole. Load the page again.";
/** Control characters, and halves of surrogate pairs; the line's end, which lists are made of, is taken out first. */
const UNWRITABLE = /[\p{Cc}\p{Cs}]/u;

const typedText = z
  .string("Write as printed, leave it empty, or write none.")
  .transform((text) => text.replaceAll("\r\n", "\n").trim())
  .pipe(z.string().max(LONGEST, `At most ${String(LONGEST)} characters.`).refine((text) => !UNWRITABLE.test(text.replaceAll("\n", "")), "Leave out control characters."));

function fieldsOf<Name extends string>(names: readonly Name[]) {
  return Object.fromEntries(names.map((name) => [name, typedText])) as Record<Name, typeof typedText>;
}

/** Counts that come as a hidden field. */
function countField(highest: number) {
  return z.union([z.number(), z.string().regex(/^\d{1,6}$/).transform(Number)], BROKEN_FORM).pipe(z.number().int(BROKEN_FORM).min(0, BROKEN_FORM).max(highest, BROKEN_FORM));
}

export const enterLabelSchema = z
  .object({
    productId: idField,
    form: z.enum(["granular", "liquid"], BROKEN_FORM),
    /** The number of the entry that the form was filled from; 0 for none. */
    basedOnNumber: countField(999_999),
    /** Which use of the label the form holds, counted from 0; the number of its uses for one more. */
    useIndex: countField(49),
    ...fieldsOf(GENERAL_FIELD_NAMES),
    ...fieldsOf(USE_FIELD_NAMES),
  })
  .superRefine((typed, context) => {
    // The same readers that the use case asks, so that the browser says at once what it would say.
    const { general, use } = partsOfForm(typed);
    const label = { productName: "this product", form: typed.form, general, uses: [] };
    for (const read of [readGeneral(label), readLabelUse(label.productName, use)]) {
      if (read.ok) continue;
      for (const [field, message] of Object.entries(read.refusal)) context.addIssue({ code: "custom", path: [field], message });
    }
  });

/** The general part and the use out of the form, in which every field has a name of its own. */
export function partsOfForm(typed: Readonly<Record<GeneralField | UseField, string>>): { readonly general: LabelText["general"]; readonly use: LabelUseText } {
  const pick = <Name extends GeneralField | UseField>(names: readonly Name[]) =>
    Object.fromEntries(names.map((name) => [name, typed[name]])) as Record<Name, string>;
  return { general: pick(GENERAL_FIELD_NAMES), use: pick(USE_FIELD_NAMES) };
}
