import { expect, test } from "vitest";
import { hashPassword, isPassword } from "#adapters/password-hash";

test("hashes with argon2id at the cost that is meant, with a salt of its own each time", async () => {
  const [one, other] = await Promise.all([hashPassword("four words in a row"), hashPassword("four words in a row")]);
  expect(one).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  expect(other).not.toBe(one);
});

test("knows the password, and no other, to the last character", async () => {
  for (const password of ["four words in a row", "Zoë 🌱 pass", `${"x".repeat(199)}y`, "with\u0000inside"]) {
    const hash = await hashPassword(password);
    expect(await isPassword(hash, password)).toBe(true);
    for (const other of [`${password} `, password.slice(0, -1), password.toUpperCase(), ""]) expect(await isPassword(hash, other)).toBe(false);
  }
});

test("without a hash nothing is right", async () => {
  for (const password of ["", "four words in a row"]) expect(await isPassword(undefined, password)).toBe(false);
});
