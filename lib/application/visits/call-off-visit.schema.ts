import { z } from "zod";
import { idField, requiredLine, versionField } from "#application/field.schema";

export const callOffVisitSchema = z.object({ visitId: idField, version: versionField, reason: requiredLine("the reason", 200) });
