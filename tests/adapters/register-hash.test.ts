import { expect, test } from "vitest";
import { registerHash } from "#adapters/register-hash";

const bytes = (text: string) => new TextEncoder().encode(text);
const hexOf = (hash: Uint8Array) => Buffer.from(hash).toString("hex");

test("is the sha256 of the hash before and the entry, in this order and with nothing between", () => {
  // FIPS 180-4, the example of 56 letters; its first 32 stand for the hash before.
  const example = "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1";
  expect(hexOf(registerHash(bytes("abcdbcdecdefdefgefghfghighijhijk"), "ijkljklmklmnlmnomnopnopq"))).toBe(example);
});

test("hangs on both, and takes letters beyond the alphabet as UTF-8", () => {
  const before = registerHash(new Uint8Array(32), "one");
  expect(registerHash(before, "two")).not.toEqual(registerHash(new Uint8Array(32), "two"));
  expect(registerHash(before, "two")).not.toEqual(registerHash(before, "Two"));
  expect(registerHash(new Uint8Array(0), "Zoë")).toEqual(registerHash(new Uint8Array([0x5a, 0x6f, 0xc3, 0xab]), ""));
});
