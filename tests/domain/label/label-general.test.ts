import { describe, expect, test } from "vitest";
import { readActiveIngredients, readConcentration, readDensity, readGeneral, readRelease } from "#domain/label/label-general";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { accept } from "#domain/foundation/outcome";
import { A_PREVENTER_TEXT, aFeedText } from "../../support/label-texts";

test.each([
  ["10.2 lb per gal", densityOf("10.2", "lb per gal")],
  ["10.2 lb/gal", densityOf("10.2", "lb per gal")],
  ["1.22 kg per L", densityOf("1.22", "kg per L")],
  ["specific gravity 1.22", densityOf("1.22", "kg per L")],
])("density %s", (value, density) => expect(readDensity(value, "product")).toEqual(accept(density)));

test.each(["10.2", "10.2 lb", "10 oz per gal", "0 lb per gal", "10 lb per sq ft", "specific gravity 0", "heavy"])("density %s is refused", (value) => {
  expect(readDensity(value, "product").ok).toBe(false);
});

describe("a density that nothing has is refused, for its figure or its unit is a slip", () => {
  test.each(["specific gravity 122", "122 lb per gal", "1.22 lb per gal", "0.001 lb per gal", "3.99 lb per gal", "25.01 lb per gal", "1280 kg/L", "specific gravity 0.47", "specific gravity 3"])("of a product: %s", (value) => {
    expect(readDensity(value, "product")).toMatchObject({ ok: false, refusal: expect.stringContaining(`"${value}" can't be meant: a gallon of a product or a spray weighs 4 to 25 lb`) as unknown });
  });
  test.each(["4 lb per gal", "25 lb per gal", "1280 g/L", "specific gravity 0.48", "specific gravity 2.99"])("not of a product: %s", (value) => expect(readDensity(value, "product").ok).toBe(true));

  test.each(["2,700 lb per gal", "1.35 short ton per cu ft", "99 lb per cu yd", "5,001 lb per cu yd", "2.7 lb per cu yd"])("of loose material: %s", (value) => {
    expect(readDensity(value, "loose-material")).toMatchObject({ ok: false, refusal: expect.stringContaining(`"${value}" can't be meant: a cubic yard of loose material weighs 100 to 5,000 lb`) as unknown });
  });
  test.each(["100 lb per cu yd", "5,000 lb per cu yd", "8 lb per cu ft", "1.35 short ton per cu yd"])("not of loose material: %s", (value) => expect(readDensity(value, "loose-material").ok).toBe(true));
});

test("a concentration by weight or in a volume", () => {
  expect(readConcentration("0.37 %")).toEqual(accept(percentByWeight("0.37")));
  expect(readConcentration("4 lb per gal")).toEqual(accept({ kind: "mass-in-volume", massInVolume: densityOf("4", "lb per gal") }));
  expect(readConcentration("0.05 lb per gal")).toEqual(accept({ kind: "mass-in-volume", massInVolume: densityOf("0.05", "lb per gal") }));
  for (const value of ["0 %", "101 %", "4", "4 oz per gal", "40 lb per gal", "0 lb per gal"]) expect(readConcentration(value).ok, value).toBe(false);
});

test("active ingredients, one a line, with commas in their names", () => {
  const read = readActiveIngredients("2,4-D, dimethylamine salt; 2.4 lb per gal; Group 4 herbicide\nDicamba; 0.2 lb per gal\nA wetter; 1 %; none");
  expect(read.ok && read.value.map(({ name, modeOfAction }) => [name, modeOfAction])).toEqual([
    ["2,4-D, dimethylamine salt", { group: "Group 4 herbicide" }],
    ["Dicamba", "unknown"],
    ["A wetter", "none"],
  ]);
  for (const value of ["Prodiamine", "Prodiamine 0.37 %", "; 0.37 %", "A; 1 %; x; y", "A; 1 %\na; 2 %"]) expect(readActiveIngredients(value).ok, value).toBe(false);
});

test("the acid that a salt or ester is a form of, with how much of it the label says there is", () => {
  const acidOf = (line: string) => {
    const read = readActiveIngredients(line);
    return read.ok ? read.value[0]?.acid : read.refusal;
  };
  expect(acidOf("2,4-D, dimethylamine salt; 46.3 %; Group 4 herbicide; 2,4-D, acid equivalent 38.4 %")).toEqual({ name: "2,4-D", equivalent: percentByWeight("38.4") });
  expect(acidOf("2,4-D, dimethylamine salt; 46.3 %; ; 2,4-D acid equivalent: 3.8 lb per gal")).toEqual({ name: "2,4-D", equivalent: { kind: "mass-in-volume", massInVolume: densityOf("3.8", "lb per gal") } });
  expect(acidOf("2,4-D, dimethylamine salt; 46.3 %; Group 4 herbicide")).toBeUndefined();
  expect(acidOf("A salt; 4 lb per gal; none; An acid, acid equivalent 4 lb per gal")).toMatchObject({ name: "An acid" });
  expect(acidOf("A salt; 4 lb per gal; none; An acid, acid equivalent 4.1 lb per gal")).toMatch(/more acid than there is/u);
  expect(acidOf("A salt; 46.3 %; none; An acid, acid equivalent 46.4 %")).toMatch(/more acid than there is/u);
  expect(acidOf("A salt; 46.3 %; none; An acid, acid equivalent lots")).toMatch(/can't be read/u);
  expect(acidOf("A salt; 46.3 %; none; acid equivalent 40 %")).toMatch(/can't be read/u);
  expect(acidOf("A salt; 46.3 %; none; An acid, acid equivalent 38.4 %; more")).toMatch(/separated by semicolons/u);
});

test.each([
  ["slow 16 % of product", "slow-percent-of-product"],
  ["16% of the product", "slow-percent-of-product"],
  ["7 % WIN", "slow-percent-of-product"],
  ["slow 50 % of nitrogen", "slow-percent-of-nitrogen"],
])("release %s", (value, kind) => expect(readRelease(value)).toMatchObject({ value: { kind } }));

describe("the product as a whole", () => {
  test("every fact of a label", () => {
    const read = readGeneral(A_PREVENTER_TEXT);
    expect(read).toMatchObject({
      value: {
        productName: "Wardlow 19-0-7",
        form: "granular",
        formulation: "dry granule",
        epaRegistrationNumber: { number: "DEMO-0000-19" },
        isRestrictedUse: false,
        signalWord: "CAUTION",
        analysis: { release: { kind: "slow-percent-of-product" } },
        density: "unknown",
        activeIngredients: [{ name: "Prodiamine", modeOfAction: { group: "Group 3 herbicide" } }],
      },
    });
  });

  test("what nobody has read stays unknown, and what the label leaves out is none", () => {
    expect(readGeneral(aFeedText())).toMatchObject({
      value: { epaRegistrationNumber: "unknown", isRestrictedUse: "unknown", signalWord: "unknown", analysis: "unknown", density: "unknown", activeIngredients: "unknown" },
    });
    expect(readGeneral(aFeedText({ epaRegistrationNumber: "none", restrictedUse: "none", signalWord: "none", grade: "none", activeIngredients: "none" }))).toMatchObject({
      value: { epaRegistrationNumber: "none", isRestrictedUse: false, signalWord: "none", analysis: "none", activeIngredients: [] },
    });
  });

  test("a release that the label does not state, or nobody read, is not taken for quick or slow", () => {
    for (const nitrogenRelease of ["", "none"]) {
      expect(readGeneral(aFeedText({ grade: "32-0-0", nitrogenRelease }))).toMatchObject({ value: { analysis: { release: { kind: "not-stated" } } } });
    }
  });

  test.each([
    [{ nitrogenRelease: "slow 40 % of product", grade: "32-0-0" }, "nitrogenRelease"],
    [{ nitrogenRelease: "slow 16 % of product" }, "nitrogenRelease"],
    [{ grade: "90-20-0" }, "grade"],
    [{ formulation: "" }, "formulation"],
    [{ formulation: "soluble liquid" }, "formulation"],
    [{ signalWord: "POISON" }, "signalWord"],
    [{ restrictedUse: "maybe" }, "restrictedUse"],
  ])("%o is complained of at %s", (typed, field) => {
    const read = readGeneral(aFeedText(typed));
    expect(read.ok ? [] : Object.keys(read.refusal)).toEqual([field]);
  });
});
