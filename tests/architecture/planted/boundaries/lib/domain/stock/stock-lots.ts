import { ledger } from "./no-cycle";

export const lots: unknown = ledger;
