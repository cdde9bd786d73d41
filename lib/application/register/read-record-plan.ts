import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { idField } from "#application/field.schema";
import { notFound } from "#application/refusal";
import { recordPlan } from "#application/register/record-plan";
import { visitOnFile } from "#application/visits/read-visit";
import { useCase } from "#application/use-case";

/** What a visit was to be, as its record will ask about it: lawns, mixes, and products for which no mix could be worked out. */
export const readRecordPlan = useCase("register/read-record-plan", z.object({ visitId: idField }), async (work, { visitId }) => {
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  return accept({ visit: found.visit, record: found.record, plan: await recordPlan(work, found) });
});
