"use server";

import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { previewTemperatures } from "#application/temperatures/preview-temperatures";
import { type FormState } from "../../../form-state";
import { sendReadBackForm } from "../../../read-back-form";
import { caresOfDays, understoodSentence } from "../temperature-words";

/** Reads the days back, then keeps them. */
export async function keepTemperaturesAction(previous: FormState, form: FormData): Promise<FormState> {
  return sendReadBackForm(previous, form, {
    preview: previewTemperatures,
    readBack: (preview) => ({ sentence: understoodSentence(preview), cares: caresOfDays(preview) }),
    write: keepTemperatures,
    leadTo: (_written, { source = "" }) => `/settings/temperatures?source=${encodeURIComponent(source.trim())}`,
  });
}
