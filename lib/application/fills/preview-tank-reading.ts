import { tankReadingToRecord } from "#application/fills/record-tank-reading";
import { recordTankReadingSchema } from "#application/fills/record-tank-reading.schema";
import { useCase } from "#application/use-case";

/** What a form would write down of a tank, beside its books, to be read back before it is written. Refuses what recording it would refuse. */
export const previewTankReading = useCase("fills/preview-tank-reading", recordTankReadingSchema, tankReadingToRecord);
