import { z } from "zod";
import { mixTicketToPrint } from "#application/documents/mix-ticket-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues the paper of a mix ticket, as it was issued. */
export const printMixTicket = useCase("documents/print-mix-ticket", z.object({ mixTicketId: idField }), async (work, { mixTicketId }) => issuePaper(work, await mixTicketToPrint(work, mixTicketId)));
