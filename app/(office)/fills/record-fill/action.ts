"use server";

import { previewFill } from "#application/fills/preview-fill";
import { recordFill } from "#application/fills/record-fill";
import { type FormState } from "../../../form-state";
import { sendReadBackForm } from "../../../read-back-form";
import { memberOfPage } from "../../../session";
import { careOfForm } from "../../visits/visit-finding";
import { fillSentence } from "./fill-sentence";

/** Reads the fill back beside the books, the plan and the labels, then writes it. */
export async function recordFillAction(previous: FormState, form: FormData): Promise<FormState> {
  return sendReadBackForm(previous, form, {
    preview: previewFill,
    readBack: async (preview) => {
      const { company } = await memberOfPage();
      return { sentence: fillSentence(preview, company.timeZone), cares: preview.findings.map(careOfForm) };
    },
    write: recordFill,
    leadTo: ({ number }) => `/fills#fill-${String(number)}`,
  });
}
