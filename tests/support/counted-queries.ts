// A house that counts what a use case asks the database, for tests that the number does not grow with the rows.
import { type House } from "#application/use-case";
import { type TestHouse } from "./house";

/** The same house, and how many calls of its database it made since. */
export function countingHouse(house: TestHouse): { readonly house: House; readonly count: () => number } {
  let calls = 0;
  const counted = (model: object) =>
    new Proxy(model, {
      get: (target, name) => {
        calls += 1;
        return Reflect.get(target, name) as unknown;
      },
    });
  const transaction = (tx: object) =>
    new Proxy(tx, {
      get: (target, name) => {
        const value: unknown = Reflect.get(target, name);
        if (typeof value === "function") calls += 1;
        return typeof value === "object" && value !== null ? counted(value) : value;
      },
    });
  const client = new Proxy(house.client, {
    get: (target, name) =>
      name === "$transaction"
        ? (work: (tx: unknown) => Promise<unknown>) => target.$transaction((tx) => work(transaction(tx)))
        : (Reflect.get(target, name) as unknown),
  });
  return { house: { ...house, client }, count: () => calls };
}
