import { Client } from "pg";
import { amount } from "#domain/quantities/innocent-amount";

export const mail = { amount, Client };
