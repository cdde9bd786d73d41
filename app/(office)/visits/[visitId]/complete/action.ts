"use server";

import { may } from "#application/permission";
import { completeVisit } from "#application/register/complete-visit";
import { previewRecord } from "#application/register/preview-record";
import { type FormState } from "../../../../form-state";
import { sendReadBackForm } from "../../../../read-back-form";
import { memberOfPage } from "../../../../session";
import { recordSentence } from "../../../register/record-sentence";
import { careOfForm } from "../../visit-finding";

/** Reads the record back, then writes it. */
export async function completeVisitAction(previous: FormState, form: FormData): Promise<FormState> {
  return sendReadBackForm(previous, form, {
    preview: previewRecord,
    readBack: ({ content }) => ({ sentence: recordSentence(content), cares: content.findings.filter(({ level }) => level !== "note").map(careOfForm) }),
    write: completeVisit,
    leadTo: async ({ registerEntryId }, { visitId = "" }) => {
      const { member } = await memberOfPage();
      return may(member.role, "register/read-record") ? `/register/${registerEntryId}` : `/visits/${visitId}#record`;
    },
  });
}
