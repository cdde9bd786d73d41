import { expect, test } from "vitest";
import { BrokenInvariant, invariant, unreachable } from "#domain/foundation/invariant";

test("a promise that holds is silent; one that is broken throws what was promised", () => {
  expect(() => invariant(true, "this holds")).not.toThrow();
  expect(() => invariant(false, "the ledger balances")).toThrow(new BrokenInvariant("the ledger balances"));
});

test("a case that should not exist shows itself", () => {
  expect(() => unreachable("surprise" as never)).toThrow('unreachable case: "surprise"');
  expect(new BrokenInvariant("x").name).toBe("BrokenInvariant");
});
