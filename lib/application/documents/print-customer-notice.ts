import { z } from "zod";
import { noticeToPrint } from "#application/documents/visit-papers-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues a customer's notice: before the visit from its mix ticket, after it from its record. */
export const printCustomerNotice = useCase("documents/print-customer-notice", z.object({ visitId: idField }), async (work, { visitId }) => issuePaper(work, await noticeToPrint(work, visitId)));
