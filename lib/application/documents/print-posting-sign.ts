import { z } from "zod";
import { signToPrint } from "#application/documents/visit-papers-to-print";
import { issuePaper } from "#application/documents/issued-papers";
import { idField } from "#application/field.schema";
import { useCase } from "#application/use-case";

/** Issues a sheet of lawn markers for a visit. */
export const printPostingSign = useCase("documents/print-posting-sign", z.object({ visitId: idField }), async (work, { visitId }) => issuePaper(work, await signToPrint(work, visitId)));
