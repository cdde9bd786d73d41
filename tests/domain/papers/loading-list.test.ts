import { expect, test } from "vitest";
import { groupsToLoad } from "#domain/papers/loading-list";

test("a group with nothing to load is left out, the others stay in their order", () => {
  const line = { what: "Lawn markers", amount: "11" };
  const groups = [{ title: "Signs", lines: [line] }, { title: "Seed", lines: [] }, { title: "Spill kit", lines: [line] }];
  expect(groupsToLoad(groups).map(({ title }) => title)).toEqual(["Signs", "Spill kit"]);
});
