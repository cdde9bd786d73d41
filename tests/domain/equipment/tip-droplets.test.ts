import { describe, expect, test } from "vitest";
import { dropletsAt, judgeDroplets, readTipDroplets } from "#domain/equipment/tip-droplets";
import { type DropletClass, dropletClasses, type DropletLimits } from "#domain/label/droplet-class";
import { refusalOf, valueOf } from "../../support/domain-answers";
import { saying } from "../../support/said";

const letters = dropletClasses.map((dropletClass) => dropletClass.letters);
const product = "Demoweed 3L";
const tip = (dropletClass: DropletClass | "unknown") => ({ tip: "the blue tip", pressurePsi: 40, dropletClass });
const onLabel = (limits: DropletLimits) => ({ ...limits, basis: "label", source: "label, section 4" }) as const;
const findingsFor = (found: DropletClass | "unknown", wanted: DropletLimits) => judgeDroplets(tip(found), product, onLabel(wanted));
const rulesFor = (found: DropletClass | "unknown", wanted: DropletLimits) => findingsFor(found, wanted).map(({ level, rule }) => `${level} ${rule}`);

describe("what was looked up in a chart", () => {
  const CHART = valueOf(readTipDroplets("tipDroplets", "Flat fan, red; 40 psi; medium\nFlat fan, red;20;C\nFlat fan, red; 41 psi; fine\nGun; 60 psi; very coarse"));

  test("is a class for a tip at a pressure, one to a line", () => {
    expect(CHART).toContainEqual({ tip: "Flat fan, red", pressurePsi: 20, dropletClass: "C" });
    expect(CHART).toHaveLength(4);
    expect(valueOf(readTipDroplets("tipDroplets", "\n"))).toEqual([]);
  });

  test.each([
    ["flat fan, RED", 40, "M"],
    ["Flat  fan,red", 40, "M"],
    ["Flat fan, red", 42, "F"],
    ["Flat fan, red", 30, "unknown"],
    ["Flat fan, blue", 40, "unknown"],
    ["Gun", 58, "VC"],
    ["Gun", 57.9, "unknown"],
  ] as const)("%s at %f psi makes %s: the nearest by the gauge, and nothing between", (name, pressurePsi, dropletClass) => {
    expect(dropletsAt(CHART, name, pressurePsi, 2)).toEqual({ tip: name, pressurePsi, dropletClass });
  });

  test.each(["Gun; 60 psi", "Gun; 60 psi; wet", "Gun; x; medium", "; 60; medium", "Gun; 60; medium; more", "Gun; 60; medium\ngun; 60 psi; fine", Array.from({ length: 101 }, (_, line) => `T${String(line)}; 40; M`).join("\n")])(
    "refuses %.40s",
    (text) => {
      expect(refusalOf(readTipDroplets("tipDroplets", text))).toMatchObject({ kind: "bad-input", field: "tipDroplets" });
    },
  );
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
    expect(findingsFor("F", { finest: "C" })).toEqual([
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
    expect(findingsFor("UC", wanted)[0]).toMatchObject({ figure: saying(words) });
  });
});

describe("facts that are missing", () => {
  test("a label that was not read and a tip that was not looked up are holds for the office", () => {
    expect(judgeDroplets(tip("M"), product, "unknown")[0]).toMatchObject({ level: "hold", answerableBy: "office", rule: "label-droplets-not-entered" });
    expect(findingsFor("unknown", { finest: "M" })[0]).toMatchObject({ level: "hold", answerableBy: "office", rule: "tip-droplets-not-entered" });
  });

  test("a label that wants nothing needs no tip's class", () => {
    expect(judgeDroplets(tip("unknown"), product, "none")).toEqual([]);
  });
});
