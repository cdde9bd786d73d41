import { cleanOutToRecord } from "#application/fills/record-clean-out";
import { recordCleanOutSchema } from "#application/fills/record-clean-out.schema";
import { useCase } from "#application/use-case";

/** The clean-out that a form would record, to be read back before it is written. Refuses what recording it would refuse. */
export const previewCleanOut = useCase("fills/preview-clean-out", recordCleanOutSchema, cleanOutToRecord);
