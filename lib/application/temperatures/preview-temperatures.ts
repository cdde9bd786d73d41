import { accept } from "#domain/foundation/outcome";
import { keepTemperaturesSchema } from "#application/temperatures/keep-temperatures.schema";
import { refuseNothingNew } from "#application/temperatures/keep-temperatures";
import { temperaturesToWrite } from "#application/temperatures/temperatures-to-write";
import { useCase } from "#application/use-case";

/** Reads pasted days back before they are kept: what was understood, which days they replace, which are missing. */
export const previewTemperatures = useCase("temperatures/preview-temperatures", keepTemperaturesSchema, async (work, form) => {
  const read = await temperaturesToWrite(work, form);
  if (!read.ok) return read;
  return refuseNothingNew(read.value) ?? accept(read.value);
});
