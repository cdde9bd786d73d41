import { lots } from "./stock-lots";

export const ledger: unknown = lots;
