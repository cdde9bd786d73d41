import fc from "fast-check";
import { expect, test } from "vitest";
import { listParts } from "#domain/quantities/list-parts";

test.each([
  ["32, 50, 45, 17", ["32", "50", "45", "17"]],
  ["32,150,145,17", ["32", "150", "145", "17"]],
  ["90,100,110,95", ["90", "100", "110", "95"]],
  ["100,110,120", ["100", "110", "120"]],
  ["1,250, 300", ["1,250", "300"]],
  ["1,250; 300", ["1,250", "300"]],
  ["0,2; 0,25; 0,22", ["0,2", "0,25", "0,22"]],
  ["0, 1; 2;3\n4", ["0", "1", "2", "3", "4"]],
  ["32,50,45,", ["32", "50", "45"]],
  ["32, 50,", ["32", "50"]],
  ["1,250 sq ft", ["1,250 sq ft"]],
  ["1,250", ["1,250"]],
  ["12,50", ["12", "50"]],
  ["0.2,0.25", ["0.2", "0.25"]],
  ["40 ft 6 in", ["40 ft 6 in"]],
  ["  ", []],
  [";,\n", []],
])("%s", (text, parts) => expect(listParts(text)).toEqual(parts));

test("whole numbers come back by each separator, whatever their size", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 9999 }), { minLength: 3, maxLength: 12 }), fc.constantFrom(",", ", ", ";", "; ", "\n"), (numbers, between) => {
      expect(listParts(numbers.join(between))).toEqual(numbers.map(String));
    }),
  );
});
