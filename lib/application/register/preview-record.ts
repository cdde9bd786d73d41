import { accept } from "#domain/foundation/outcome";
import { recordToWrite } from "#application/register/complete-visit";
import { completeVisitSchema } from "#application/register/complete-visit.schema";
import { useCase } from "#application/use-case";

/** The record that completing a visit would write, to be read back before it is written. Refuses what that would refuse. */
export const previewRecord = useCase("register/preview-record", completeVisitSchema, async (work, form) => {
  const toWrite = await recordToWrite(work, form);
  return toWrite.ok ? accept({ content: toWrite.value.content }) : toWrite;
});
