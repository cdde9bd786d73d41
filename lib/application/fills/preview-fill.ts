import { fillToRecord } from "#application/fills/record-fill";
import { recordFillSchema } from "#application/fills/record-fill.schema";
import { useCase } from "#application/use-case";

/** The fill that a form would record, beside the books, the plan and the labels, to be read back before it is written. Refuses what recording it would refuse. */
export const previewFill = useCase("fills/preview-fill", recordFillSchema, fillToRecord);
