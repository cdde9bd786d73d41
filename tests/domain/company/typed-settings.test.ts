import { expect, test } from "vitest";
import { DEFAULT_HOUSE_SETTINGS } from "#domain/company/house-settings";
import { readTankMark, readWholeSetting, WHOLE_SETTING_RANGES, type WholeSetting } from "#domain/company/typed-settings";
import { exactly } from "#domain/quantities/exact-quantity";
import { refusalOf, valueOf } from "../../support/domain-answers";

const NAMES = Object.keys(WHOLE_SETTING_RANGES) as readonly WholeSetting[];

test.each(NAMES)("%s is read at both ends of its range and refused beyond them; its default lies within", (name) => {
  const { least, most } = WHOLE_SETTING_RANGES[name];
  expect(valueOf(readWholeSetting(name, ` ${String(least)} `))).toBe(least);
  expect(valueOf(readWholeSetting(name, String(most)))).toBe(most);
  expect(refusalOf(readWholeSetting(name, String(most + 1)))).toMatchObject({ field: name, found: String(most + 1) });
  if (least > 0) expect(refusalOf(readWholeSetting(name, String(least - 1)))).toMatchObject({ field: name });
  expect(valueOf(readWholeSetting(name, String(DEFAULT_HOUSE_SETTINGS[name])))).toBe(DEFAULT_HOUSE_SETTINGS[name]);
});

test.each(["", "many", "-1", "3.5", "1e2", "36,5"])("%j is no whole number", (text) => {
  expect(refusalOf(readWholeSetting("calibrationValidDays", text)).sentence).toBe("Give a whole number, 1 to 1,096 days.");
});

test("a comma of thousands is read", () => {
  expect(valueOf(readWholeSetting("calibrationValidDays", "1,096"))).toBe(1096);
});

test("a tank's mark is a volume with its unit", () => {
  expect(valueOf(readTankMark("0.1 gal"))).toEqual(exactly("gal", "0.1"));
  expect(valueOf(readTankMark(" 1 fl oz "))).toEqual(exactly("fl oz", "1"));
  expect(valueOf(readTankMark("10 gal"))).toEqual(exactly("gal", "10"));
});

test.each(["", "0.1", "1 lb", "0 gal", "0.9 fl oz", "11 gal", "a little"])("%j is no mark of a tank", (text) => {
  expect(refusalOf(readTankMark(text))).toMatchObject({ field: "tankMark" });
});
