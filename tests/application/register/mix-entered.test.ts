import { expect, test } from "vitest";
import { fillsEntered } from "#application/register/mix-entered";

test("the fills that a form names for a mix come with their gallons and where the form has them; none where the first is none", () => {
  const said = { measuredBy: "meter", amount: "4", fillId: "8", alsoFrom: [{ row: "2", fillId: "7", amount: "" }] } as const;
  expect(fillsEntered("2", said)).toEqual([{ fillId: "8", amount: "4", field: "mixes.2" }, { fillId: "7", amount: "", field: "mixes.2.alsoFrom.2" }]);
  expect([fillsEntered("2", { ...said, fillId: null }), fillsEntered("2", undefined)]).toEqual([[], []]);
});
