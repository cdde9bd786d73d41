import { expect, test } from "vitest";
import { groupedBy } from "#domain/foundation/grouping";

test("groups and their members stay in the order in which they came", () => {
  const groups = groupedBy(["pond", "oak", "path", "elm", "pine"], (word) => word[0]);
  expect([...groups]).toEqual([
    ["p", ["pond", "path", "pine"]],
    ["o", ["oak"]],
    ["e", ["elm"]],
  ]);
  expect(groupedBy([], String).size).toBe(0);
});
