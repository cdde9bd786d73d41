// What it takes to try a use case: an input that it accepts, made ready in the company's books.
import { type SessionKey } from "#adapters/postgres/company-work";
import { type UseCaseName } from "#application/permission";
import { type UseCaseRefusal } from "#application/refusal";
import { type House, type UseCase } from "#application/use-case";
import { type Outcome } from "#domain/foundation/outcome";
import { type TestCompany, type TestMember } from "./crew";
import { type TestHouse } from "./house";

export interface Attempt {
  readonly useCaseName: UseCaseName;
  /** An input that is accepted now, once; what it needs has been written to the company's books. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Calls the use case with anything, as a browser may. */
  readonly run: (house: House, key: SessionKey, input: unknown) => Promise<Outcome<unknown, UseCaseRefusal>>;
}

/** An attempt of a use case with an input. */
export function attempt<Input extends Readonly<Record<string, unknown>>, Answer>(useCase: UseCase<Input, Answer>, input: Input): Attempt {
  return { useCaseName: useCase.useCaseName, input, run: (house, key, anything) => useCase(house, key, anything as Input) };
}

/** Makes ready what an attempt needs; some inputs name the member who will make it, who is the owner unless said. */
export type Prepare = (house: TestHouse, company: TestCompany, actor?: TestMember) => Attempt | Promise<Attempt>;
