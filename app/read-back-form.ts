import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { type UseCase } from "#application/use-case";
import { type CareOfForm, changedForm, type FormState, readBackForm, type ReadBackWords, refusedForm, textFields } from "./form-state";
import { sendForm } from "./session";

/** What a form says it will write, and what wants care in it. */
interface ReadBack {
  readonly sentence: readonly ReadBackWords[];
  readonly cares: readonly CareOfForm[];
}

/** A form that is read back before it writes. */
interface ReadBackForm<Preview, Written> {
  readonly preview: UseCase<never, Preview>;
  readonly readBack: (preview: Preview) => ReadBack | Promise<ReadBack>;
  readonly write: UseCase<never, Written>;
  /** Where it leads once it is written, given what was typed. */
  readonly leadTo: (written: Written, typed: Readonly<Record<string, string>>) => string | Promise<string>;
}

/**
 * Answers one press: the first reads back what will be written, the second writes it and leads on; "change" gives
 * everything typed back. A third press of the same form writes nothing, because its use case knows the form.
 */
export async function sendReadBackForm<Preview, Written>(
  previous: FormState,
  form: FormData,
  { preview, readBack, write, leadTo }: ReadBackForm<Preview, Written>,
): Promise<FormState> {
  const typed = textFields(form);
  if (typed["press"] === "change") return changedForm(previous, form);
  if (typed["press"] !== "write") {
    const answer = await sendForm(preview, form);
    if (!answer.ok) return refusedForm(previous, form, answer.refusal);
    const { sentence, cares } = await readBack(answer.value);
    return readBackForm(previous, form, sentence, cares);
  }
  const answer = await sendForm(write, form);
  if (!answer.ok) return refusedForm(previous, form, answer.refusal);
  revalidatePath("/", "layout");
  redirect(await leadTo(answer.value, typed));
}
