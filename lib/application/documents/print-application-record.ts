import { z } from "zod";
import { recordToPrint } from "#application/documents/record-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues the paper of an application record with its hash and what was amended. */
export const printApplicationRecord = useCase("documents/print-application-record", z.object({ registerEntryId: idField }), async (work, { registerEntryId }) => issuePaper(work, await recordToPrint(work, registerEntryId)));
