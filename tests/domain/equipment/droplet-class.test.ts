import { describe, expect, test } from "vitest";
import { compareDroplets, dropletClasses, dropletsInWords, judgeDroplets, type DropletClass, type WantedDroplets } from "#domain/equipment/droplet-class";
import { saying } from "../../support/said";

const letters = dropletClasses.map((dropletClass) => dropletClass.letters);
const product = "Demoweed 3L";
const tip = (dropletClass: DropletClass | "unknown") => ({ tip: "the blue tip", pressurePsi: 40, dropletClass });
const rulesFor = (found: DropletClass | "unknown", wanted: WantedDroplets) =>
  judgeDroplets(tip(found), product, wanted).map(({ level, rule }) => `${level} ${rule}`);

test("there are eight classes, each coarser than the one before", () => {
  expect(letters).toEqual(["XF", "VF", "F", "M", "C", "VC", "XC", "UC"]);
  letters.forEach((left, leftPlace) =>
    letters.forEach((right, rightPlace) => {
      expect(Math.sign(compareDroplets(left, right))).toBe(Math.sign(leftPlace - rightPlace));
    }),
  );
  expect(letters.map(dropletsInWords)).toEqual(dropletClasses.map(({ words }) => words));
});

describe("against the label", () => {
  test.each(letters)("%s where medium or coarser is wanted", (found) => {
    const isFiner = ["XF", "VF", "F"].includes(found);
    expect(rulesFor(found, { finest: "M" })).toEqual(isFiner ? ["hold droplets-finer-than-label"] : []);
  });

  test.each(letters)("%s where fine to medium is wanted", (found) => {
    const expected = { XF: "finer", VF: "finer", F: undefined, M: undefined, C: "coarser", VC: "coarser", XC: "coarser", UC: "coarser" }[found];
    expect(rulesFor(found, { finest: "F", coarsest: "M" })).toEqual(expected === undefined ? [] : [`hold droplets-${expected}-than-label`]);
  });

  test("nobody answers it, and it says both classes and where it is written", () => {
    expect(judgeDroplets(tip("F"), product, { finest: "C", citation: "label, section 4" })).toEqual([
      {
        level: "hold",
        answerableBy: "nobody",
        rule: "droplets-finer-than-label",
        source: "label",
        what: "the blue tip at 40 psi makes finer droplets than the label of Demoweed 3L allows.",
        figure: "It makes fine (F). The label wants coarse or coarser.",
        toDo: "Take a coarser tip or a lower pressure.",
        citation: "label, section 4",
        about: [product, "the blue tip"],
      },
    ]);
  });

  test.each([
    [{ coarsest: "M" }, "medium or finer."],
    [{ finest: "VC", coarsest: "VC" }, "wants very coarse."],
    [{ finest: "VF", coarsest: "M" }, "very fine to medium."],
  ] as const)("%o is said in words", (wanted, words) => {
    expect(judgeDroplets(tip("UC"), product, wanted)[0]).toMatchObject({ figure: saying(words) });
  });
});

describe("facts that are missing", () => {
  test("a label that was not read and a tip that was not looked up are holds for the office", () => {
    expect(judgeDroplets(tip("M"), product, "unknown")[0]).toMatchObject({ level: "hold", answerableBy: "office", rule: "label-droplets-not-entered" });
    expect(judgeDroplets(tip("unknown"), product, { finest: "M" })[0]).toMatchObject({ level: "hold", answerableBy: "office", rule: "tip-droplets-not-entered" });
  });

  test("a label that wants nothing needs no tip's class", () => {
    expect(rulesFor("unknown", "none")).toEqual([]);
    expect(rulesFor("unknown", {})).toEqual([]);
  });
});
