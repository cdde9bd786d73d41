import { expect, test } from "vitest";
import { holdUpOfForm } from "#application/equipment/sprayer-hold-up";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount, of } from "#domain/quantities/quantity";
import { sprayerForm } from "../../support/gear";
import { A_SENTENCE } from "../../support/said";

const BARE = { ...sprayerForm(), vehicleId: null, hoseLength: "", hoseDiameter: "", pumpHolds: "" };
const HOSE = { ...BARE, hoseLength: "300 ft", hoseDiameter: "1/2 in", pumpHolds: "0 gal" };

test("as typed, zero included; nothing typed is unknown and not zero", () => {
  expect(holdUpOfForm({ ...BARE, holdUp: "3.5 gal" })).toEqual({ ok: true, value: of("gal", "3.5").amount });
  expect(holdUpOfForm({ ...BARE, holdUp: "0 gal" })).toEqual({ ok: true, value: 0n });
  expect(holdUpOfForm(BARE)).toEqual({ ok: true, value: null });
});

test("300 ft of half-inch hose hold 3.06 gal, and the pump comes on top", () => {
  const gallonsOf = (form: typeof HOSE) => {
    const held = holdUpOfForm(form);
    return held.ok && held.value !== null ? formatQuantity(fromAmount("volume", held.value), "us") : held;
  };
  expect(gallonsOf(HOSE)).toBe("3.06 gal");
  expect(gallonsOf({ ...HOSE, pumpHolds: "0.4 gal" })).toBe("3.46 gal");
});

test.each([
  ["holdUp", { ...HOSE, holdUp: "3 gal" }],
  ["hoseLength", { ...HOSE, hoseLength: "" }],
  ["hoseDiameter", { ...HOSE, hoseDiameter: "" }],
  ["pumpHolds", { ...HOSE, pumpHolds: "" }],
])("half of it, or both ways at once, is refused at %s", (field, form) => {
  expect(holdUpOfForm(form)).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
});
