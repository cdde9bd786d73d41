import { expect, test } from "vitest";
import { badField, conflict, notFound, SIGNED_OUT } from "#application/refusal";

test("each refusal says its kind and a whole sentence", () => {
  expect(notFound("person")).toEqual({
    ok: false,
    refusal: { kind: "not-found", sentence: "There is no such person here. It may have been removed, or the address is wrong." },
  });
  expect(conflict("Too late.")).toEqual({ ok: false, refusal: { kind: "conflict", sentence: "Too late." } });
  expect(badField("number", "Taken.")).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { number: "Taken." } } });
  expect(SIGNED_OUT.kind).toBe("signed-out");
});
