import { expect, test } from "vitest";
import { hashOfSecret } from "#adapters/link-secret";

test("is the sha256 of the secret", () => {
  // FIPS 180-4, the example for "abc".
  const example = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
  expect(Buffer.from(hashOfSecret("abc")).toString("hex")).toBe(example);
  expect(hashOfSecret("abd")).not.toEqual(hashOfSecret("abc"));
});
