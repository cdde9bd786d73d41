// Every use case of a signed-in member with an input that it accepts: tests of what holds for all of them walk this.
import { type UseCaseName } from "#application/permission";
import { type Prepare } from "./attempt";
import { ATTEMPTS_OF_COMPANY } from "./attempts-of-company";
import { ATTEMPTS_OF_WORK } from "./attempts-of-work";

/** One for each use case that the permissions name: the compiler asks for the missing one. */
export const ATTEMPTS: Readonly<Record<UseCaseName, Prepare>> = { ...ATTEMPTS_OF_COMPANY, ...ATTEMPTS_OF_WORK };

/** The names of all use cases of a member. */
export const USE_CASE_NAMES = Object.keys(ATTEMPTS) as readonly UseCaseName[];

/** Those that only read, by their verb. */
export const READING: ReadonlySet<UseCaseName> = new Set(USE_CASE_NAMES.filter((name) => /\/(?:read|list|check|preview)-/u.test(name)));
