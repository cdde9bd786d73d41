import { addDays } from "date-fns";
import { amount } from "#domain/quantities/innocent-amount";

export const paper = { amount, until: addDays };
