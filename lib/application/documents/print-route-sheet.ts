import { z } from "zod";
import { dayPaperToPrint } from "#application/documents/day-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues a truck's route sheet; stops without a mix ticket say why on it. */
export const printRouteSheet = useCase("documents/print-route-sheet", z.object({ routeDayId: idField }), async (work, { routeDayId }) => issuePaper(work, await dayPaperToPrint(work, routeDayId, "routeSheet")));
