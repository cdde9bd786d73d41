import { z } from "zod";
import { dayPaperToPrint } from "#application/documents/day-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues a truck's loading list for the stops whose mix tickets stand. */
export const printLoadingList = useCase("documents/print-loading-list", z.object({ routeDayId: idField }), async (work, { routeDayId }) => issuePaper(work, await dayPaperToPrint(work, routeDayId, "loadingList")));
