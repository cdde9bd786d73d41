import { type z } from "zod";
import { type Circumstances } from "#adapters/circumstances";
import { Prisma, type PrismaClient } from "#adapters/postgres/generated/client";
import { type CompanyFacts, type CompanyTransaction, type Member, type SessionKey, inCompany } from "#adapters/postgres/company-work";
import { type Outcome, refuse } from "#domain/foundation/outcome";
import { conflict, SIGNED_OUT, type UseCaseRefusal } from "#application/refusal";
import { may, type UseCaseName } from "#application/permission";

export { type SessionKey } from "#adapters/postgres/company-work";

/** What a use case has at hand while it runs: the company's transaction, who acts, the moment, and new ids. */
export interface Work {
  readonly tx: CompanyTransaction;
  readonly member: Member;
  readonly company: CompanyFacts;
  readonly sessionVersion: number;
  /** The moment of the act, read from the clock once. */
  readonly now: Date;
  readonly newId: () => string;
  readonly newSecret: () => string;
}

/** Where a use case runs: the database, the clock, the dice. */
export interface House extends Circumstances {
  readonly client: PrismaClient;
}

export interface UseCase<Input, Answer> {
  readonly useCaseName: UseCaseName;
  /** Checks the input, the session and the role, then runs everything or nothing. */
  (house: House, key: SessionKey, input: Input): Promise<Outcome<Answer, UseCaseRefusal>>;
}

/** Carries a refusal out of a transaction so that nothing stays written. */
class RolledBack extends Error {
  constructor(readonly refusal: UseCaseRefusal) {
    super(refusal.sentence);
  }
}

/** The first complaint about each field, by the field's dotted path. */
export function fieldComplaints(error: z.ZodError): Readonly<Record<string, string>> {
  const fields = new Map<string, string>();
  for (const { path, message } of error.issues) {
    const field = path.join(".");
    if (!fields.has(field)) fields.set(field, message);
  }
  return Object.fromEntries(fields);
}

/** Checks anything that came from outside against a schema. */
export function checkInput<Schema extends z.ZodType>(schema: Schema, input: unknown): Outcome<z.output<Schema>, UseCaseRefusal> {
  const parsed = schema.safeParse(input);
  if (parsed.success) return { ok: true, value: parsed.data };
  const fields = fieldComplaints(parsed.error);
  const count = Object.keys(fields).length;
  return refuse({
    kind: "bad-input",
    sentence: `Nothing was saved. ${count === 1 ? "One field needs" : `${String(count)} fields need`} another look.`,
    fields,
  });
}

/**
 * Makes a use case out of its name (which decides who may do it), the schema of its input, and its body.
 * The body runs in one transaction of the member's company; a refusal that it returns rolls back.
 */
export function useCase<Schema extends z.ZodType, Answer>(
  useCaseName: UseCaseName,
  schema: Schema,
  body: (work: Work, input: z.output<Schema>) => Promise<Outcome<Answer, UseCaseRefusal>>,
): UseCase<z.input<Schema>, Answer> {
  const run = async (house: House, key: SessionKey, input: z.input<Schema>): Promise<Outcome<Answer, UseCaseRefusal>> => {
    const checked = checkInput(schema, input);
    if (!checked.ok) return checked;
    try {
      const answer = await inCompany(house.client, key, async (tx, member, company) => {
        if (!may(member.role, useCaseName)) {
          throw new RolledBack({ kind: "not-allowed", sentence: "Your role does not include this. Ask the owner of the company." });
        }
        const outcome = await body(
          { tx, member, company, sessionVersion: key.sessionVersion, now: house.now(), newId: house.newId, newSecret: house.newSecret },
          checked.value,
        );
        if (!outcome.ok) throw new RolledBack(outcome.refusal);
        return outcome;
      });
      return answer === "signed-out" ? refuse(SIGNED_OUT) : answer;
    } catch (error) {
      return refusalOf(error);
    }
  };
  return Object.assign(run, { useCaseName });
}

/** A refusal that travelled as an exception, or a unique key that someone else was faster to take. Else rethrows. */
export function refusalOf(error: unknown): { readonly ok: false; readonly refusal: UseCaseRefusal } {
  if (error instanceof RolledBack) return refuse(error.refusal);
  if (error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002") {
    return conflict("The same thing was just written by someone else, or twice. Nothing was saved a second time; look again.");
  }
  throw error;
}

/** For work that is not a member's (a guest's link): throws the refusal so that the transaction rolls back. */
export function rollBack(refusal: UseCaseRefusal): never {
  throw new RolledBack(refusal);
}
