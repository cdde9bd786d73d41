import { z } from "zod";
import { newPasswordField, secretField } from "#application/field.schema";

export const resetPasswordSchema = z.object({ secret: secretField, password: newPasswordField });
