import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson, type PlainValue } from "#domain/register/canonical-json";

const plain = fc.letrec<{ value: PlainValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    fc.string({ unit: "grapheme" }),
    fc.maxSafeInteger(),
    fc.boolean(),
    fc.constant(null),
    fc.array(tie("value"), { maxLength: 4 }),
    fc.dictionary(fc.string({ unit: "grapheme" }).filter((name) => name !== "__proto__"), tie("value"), { maxKeys: 4 }),
  ),
})).value;

// RFC 8785, section 3.2.3: names are sorted by their UTF-16 code units; its example has these in this order.
test("names stand in the order of RFC 8785", () => {
  const names = { "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One", "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis" };
  const order = ["Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh"];
  expect(Object.values(JSON.parse(canonicalJson(names)) as Record<string, string>).filter((word) => word !== "One")).toEqual(order.filter((word) => word !== "One"));
  expect(canonicalJson(names).startsWith('{"\\r":"Carriage Return","1":"One"')).toBe(true);
});

test("the text reads back as the value and does not depend on the order in which names came", () => {
  fc.assert(
    fc.property(plain, (value) => {
      const text = canonicalJson(value);
      const read = JSON.parse(text) as PlainValue;
      expect(canonicalJson(read)).toBe(text);
      expect(canonicalJson(reversed(value))).toBe(text);
    }),
  );
});

function reversed(value: PlainValue): PlainValue {
  if (Array.isArray(value)) return (value as readonly PlainValue[]).map(reversed);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).reverse().map(([name, part]) => [name, reversed(part)]));
}

test.each([[1.5], [Number.NaN], [2 ** 53], ["\ud800"], [{ a: undefined } as unknown as PlainValue]])("%j is no part of a record", (value) => {
  expect(() => canonicalJson(value)).toThrow();
});
