import { z } from "zod";
import { emailField, idField, roleField } from "#application/field.schema";

export const invitePersonSchema = z.object({ personId: idField, email: emailField, role: roleField });
