import { z } from "zod";
import { idField } from "#application/field.schema";

export const issueMixTicketSchema = z.object({ visitId: idField });
