import { describe, expect, test } from "vitest";
import { compareDroplets, dropletClasses, type DropletLimits, dropletsInWords, limitsInWords, readDropletClass, readDropletLimits } from "#domain/label/droplet-class";
import { saying } from "../../support/said";

const letters = dropletClasses.map((dropletClass) => dropletClass.letters);

test("there are eight classes, each coarser than the one before", () => {
  expect(letters).toEqual(["XF", "VF", "F", "M", "C", "VC", "XC", "UC"]);
  letters.forEach((left, leftPlace) =>
    letters.forEach((right, rightPlace) => {
      expect(Math.sign(compareDroplets(left, right))).toBe(Math.sign(leftPlace - rightPlace));
    }),
  );
  expect(letters.map(dropletsInWords)).toEqual(dropletClasses.map(({ words }) => words));
});

test("a class is read by its words and by its letters", () => {
  for (const dropletClass of dropletClasses) {
    expect(readDropletClass(` ${dropletClass.words.toUpperCase()} `)).toEqual({ ok: true, value: dropletClass.letters });
    expect(readDropletClass(dropletClass.letters.toLowerCase())).toEqual({ ok: true, value: dropletClass.letters });
  }
  expect(readDropletClass("Very-coarse")).toEqual({ ok: true, value: "VC" });
  expect(readDropletClass("huge")).toEqual({ ok: false, refusal: saying("ultra coarse") });
});

describe("what a label wants", () => {
  test.each<readonly [string, DropletLimits, string]>([
    ["medium or coarser", { finest: "M" }, "medium or coarser"],
    ["Coarse or coarser droplets", { finest: "C" }, "coarse or coarser"],
    ["M or larger", { finest: "M" }, "medium or coarser"],
    ["medium or coarser spray quality", { finest: "M" }, "medium or coarser"],
    ["no finer than very coarse", { finest: "VC" }, "very coarse or coarser"],
    ["fine to medium spray droplets", { finest: "F", coarsest: "M" }, "fine to medium"],
    ["M to VC", { finest: "M", coarsest: "VC" }, "medium to very coarse"],
    ["coarse", { finest: "C", coarsest: "C" }, "coarse"],
    ["medium or finer", { coarsest: "M" }, "medium or finer"],
    ["not coarser than F", { coarsest: "F" }, "fine or finer"],
  ])("%s", (text, limits, words) => {
    expect(readDropletLimits(text)).toEqual({ ok: true, value: limits });
    expect(limitsInWords(limits)).toBe(words);
  });

  test.each(["big", "coarse to fine", "medium or better", "fine to huge", "huge or coarser", "huge or finer", "huge to fine"])("can't be read from %s", (text) => {
    expect(readDropletLimits(text).ok).toBe(false);
  });
});
