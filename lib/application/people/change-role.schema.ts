import { z } from "zod";
import { idField, roleField } from "#application/field.schema";

export const changeRoleSchema = z.object({ personId: idField, role: roleField });
