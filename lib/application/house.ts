import { realCircumstances } from "#adapters/circumstances";
import { databaseClient } from "#adapters/postgres/client";
import { type House } from "#application/use-case";

/** The house that the web server works in: the real database, clock and dice. */
export function house(): House {
  return { client: databaseClient(), ...realCircumstances() };
}
