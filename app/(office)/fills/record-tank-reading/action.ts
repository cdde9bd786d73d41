"use server";

import { previewTankReading } from "#application/fills/preview-tank-reading";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { type FormState } from "../../../form-state";
import { sendReadBackForm } from "../../../read-back-form";
import { memberOfPage } from "../../../session";
import { careOfForm } from "../../visits/visit-finding";
import { tankReadingSentence } from "./tank-reading-sentence";

/** Holds the reading against the books and reads it back, then writes it. */
export async function recordTankReadingAction(previous: FormState, form: FormData): Promise<FormState> {
  return sendReadBackForm(previous, form, {
    preview: previewTankReading,
    readBack: async (preview) => {
      const { company } = await memberOfPage();
      return { sentence: tankReadingSentence(preview, company.timeZone), cares: preview.findings.map(careOfForm) };
    },
    write: recordTankReading,
    leadTo: (_written, { equipmentId = "" }) => `/fills#tank-${equipmentId}`,
  });
}
