import { expect, test } from "vitest";
import { lawnsWithoutEveryAmount } from "#domain/papers/mix-ticket-paper";
import { MIX_TICKET } from "../../support/sample-visit-papers";

test("lawns with more or fewer amounts than products are named", () => {
  const [front, back] = MIX_TICKET.lawns;
  if (front === undefined || back === undefined) throw new Error("the sample has two lawns");
  expect(lawnsWithoutEveryAmount(MIX_TICKET)).toEqual([]);
  const lawns = [{ ...front, amounts: front.amounts.slice(1) }, back, { ...back, name: "Side", amounts: [...back.amounts, "1 oz"] }];
  expect(lawnsWithoutEveryAmount({ ...MIX_TICKET, lawns })).toEqual(["Front", "Side"]);
});
