import { type UsState } from "#domain/company/us-state";
import { ILLINOIS } from "#domain/rules/packs/illinois";
import { INDIANA } from "#domain/rules/packs/indiana";
import { type RulePack } from "#domain/rules/rule-pack";

/** The packs that the product brings along. */
export const PACKS_ON_FILE: readonly RulePack[] = [INDIANA, ILLINOIS];

/** The pack of a state, or undefined: then every rule of that state is not on file. */
export function packOf(state: UsState): RulePack | undefined {
  return PACKS_ON_FILE.find((pack) => pack.state === state);
}

/** The editions of all packs as one line, which goes on tickets, records and papers. */
export const RULES_VERSION = PACKS_ON_FILE.map(({ edition }) => edition).join(", ");
