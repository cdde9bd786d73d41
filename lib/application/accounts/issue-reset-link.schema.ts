import { z } from "zod";
import { idField } from "#application/field.schema";

export const issueResetLinkSchema = z.object({ personId: idField });
