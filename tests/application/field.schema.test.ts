import { describe, expect, test } from "vitest";
import { type z } from "zod";
import {
  emailField, idField, newPasswordField, optionalDate, optionalLine, requiredDate, requiredLine, roleField, secretField, stateField,
  timeZoneField, versionField,
} from "#application/field.schema";
import { countedId, countedSecret } from "../support/house";

const MEGABYTE = "x".repeat(1_048_576);
const NO_STRINGS = [undefined, null, 5, true, {}, [], ["x"], { toString: () => "x" }];

interface Case {
  readonly schema: z.ZodType;
  readonly good: readonly (readonly [input: unknown, output: unknown])[];
  readonly bad: readonly unknown[];
}

const CASES: Readonly<Record<string, Case>> = {
  requiredLine: {
    schema: requiredLine("a name", 5),
    good: [["Robin", "Robin"], ["  Ro  ", "Ro"], ["Zoë", "Zoë"], ["🌱🌱", "🌱🌱"]],
    bad: [...NO_STRINGS, "", "  ", "Robins", "a\u0000b", "a\nb", "a\u007fb", "a\u0085b", "\ud83c", MEGABYTE],
  },
  optionalLine: {
    schema: optionalLine(5),
    good: [["", null], ["  ", null], [" Ro ", "Ro"]],
    bad: [...NO_STRINGS, "Robins", "a\u0000b", "\udf31", MEGABYTE],
  },
  requiredDate: {
    schema: requiredDate("the day"),
    good: [["2026-04-14", "2026-04-14"], [" 2028-02-29 ", "2028-02-29"]],
    bad: [...NO_STRINGS, "", "2026-02-29", "2026-4-1", "14.04.2026", "2026-04-14T00:00:00Z", "\u0000", MEGABYTE],
  },
  optionalDate: {
    schema: optionalDate("the day"),
    good: [["", null], [" ", null], ["2026-04-14", "2026-04-14"]],
    bad: [...NO_STRINGS, "2026-02-29", "soon", "\u0000", MEGABYTE],
  },
  emailField: {
    schema: emailField,
    good: [[" Robin@Vale.Example ", "robin@vale.example"]],
    bad: [...NO_STRINGS, "", "robin", "robin@vale", "a@b@c.example", "robin\u0000@vale.example", "\ud800@vale.example", MEGABYTE],
  },
  newPasswordField: {
    schema: newPasswordField,
    good: [["fifteen letters", "fifteen letters"], ["   spaces stay  ", "   spaces stay  "], ["x".repeat(200), "x".repeat(200)]],
    bad: [...NO_STRINGS, "", "fourteen chars", "x".repeat(201), MEGABYTE],
  },
  versionField: {
    schema: versionField,
    good: [[1, 1], ["1", 1], ["0012", 12], [2_147_483_647, 2_147_483_647]],
    bad: [undefined, null, true, {}, [], ["1"], "", " 1", "1.5", "-1", "1e3", "0x1", 0, -1, 1.5, Number.NaN, Infinity, 2_147_483_648, "2147483648", "9".repeat(400), MEGABYTE],
  },
  stateField: { schema: stateField, good: [["IN", "IN"], ["PR", "PR"]], bad: [...NO_STRINGS, "", "in", "XX", "__proto__", "constructor"] },
  timeZoneField: { schema: timeZoneField, good: [["America/Chicago", "America/Chicago"]], bad: [...NO_STRINGS, "", "UTC", "Europe/Berlin", "__proto__"] },
  roleField: { schema: roleField, good: [["owner", "owner"]], bad: [...NO_STRINGS, "", "Owner", "client", "__proto__"] },
  idField: {
    schema: idField,
    good: [[countedId(7), countedId(7)]],
    bad: [...NO_STRINGS, "", "x", `${countedId(7)} `, `{${countedId(7)}}`, "-".repeat(36), countedId(7).replace("4", "\u0000"), MEGABYTE],
  },
  secretField: {
    schema: secretField,
    good: [[countedSecret(7), countedSecret(7)]],
    bad: [...NO_STRINGS, "", "x".repeat(42), "x".repeat(44), `${"x".repeat(42)}=`, `${"x".repeat(43)}\n`, "\u0000".repeat(43), MEGABYTE],
  },
};

describe.each(Object.entries(CASES))("%s", (_name, { schema, good, bad }) => {
  test("takes what is meant, tidied", () => {
    for (const [input, output] of good) expect(schema.safeParse(input), JSON.stringify(input)).toMatchObject({ success: true, data: output });
  });

  test("refuses all else, with a sentence for the person who typed it", () => {
    for (const input of bad) {
      const parsed = schema.safeParse(input);
      const shown = JSON.stringify([input]).slice(0, 60);
      expect(parsed.success, shown).toBe(false);
      for (const { message } of parsed.error?.issues ?? []) expect(message, shown).toMatch(/^[A-Z].{8,}[.!a-z]$/s);
    }
  });
});
