import { z } from "zod";
import { amount } from "#domain/quantities/innocent-amount";

export const delivery = z.object({ amount: z.literal(amount) });
