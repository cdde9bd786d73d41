import { amount } from "#domain/quantities/innocent-amount";

export const button = amount;
