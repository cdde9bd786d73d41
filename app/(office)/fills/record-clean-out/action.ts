"use server";

import { previewCleanOut } from "#application/fills/preview-clean-out";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { type FormState } from "../../../form-state";
import { sendReadBackForm } from "../../../read-back-form";
import { memberOfPage } from "../../../session";
import { careOfForm } from "../../visits/visit-finding";
import { cleanOutSentence } from "./clean-out-sentence";

/** Reads the clean-out back, then writes it. */
export async function recordCleanOutAction(previous: FormState, form: FormData): Promise<FormState> {
  return sendReadBackForm(previous, form, {
    preview: previewCleanOut,
    readBack: async (preview) => {
      const { company } = await memberOfPage();
      return { sentence: cleanOutSentence(preview, company.timeZone), cares: preview.findings.map(careOfForm) };
    },
    write: recordCleanOut,
    leadTo: (_written, { equipmentId = "" }) => `/fills#tank-${equipmentId}`,
  });
}
