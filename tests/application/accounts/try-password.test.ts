import { afterAll, beforeAll, expect, test } from "vitest";
import { ATTEMPTS_PER_ACCOUNT, SIGN_IN_WINDOW_MINUTES, TOO_MANY_TRIES, tryPassword } from "#application/accounts/try-password";
import { hashPassword } from "#adapters/password-hash";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

test("counts wrong tries, forgets them at a right one, and begins anew after the window", async () => {
  const account = { email: "robin@vale.example", passwordHash: await hashPassword("right") };
  for (let turn = 0; turn < 2; turn += 1) {
    for (let guess = 1; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) expect(await tryPassword(house, account, "guess")).toBe("wrong");
    expect(await tryPassword(house, account, "right")).toBe("right");
  }
  for (let guess = 0; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) expect(await tryPassword(house, account, "guess")).toBe("wrong");
  expect(await tryPassword(house, account, "right")).toBe("too-many");
  house.pass(SIGN_IN_WINDOW_MINUTES);
  expect(await tryPassword(house, account, "right")).toBe("right");
});

test("an address without an account is never right", async () => {
  expect(await tryPassword(house, { email: "nobody@vale.example", passwordHash: undefined }, "right")).toBe("wrong");
});

test("counts whose window has passed are cleared away by later tries, whoever makes them", async () => {
  const passwordHash = await hashPassword("right");
  for (const email of ["one@vale.example", "two@vale.example"]) await tryPassword(house, { email, passwordHash }, "guess");
  house.pass(SIGN_IN_WINDOW_MINUTES);
  await tryPassword(house, { email: "three@vale.example", passwordHash }, "guess");
  expect(await house.ask("select throttle_key from sign_in_throttle")).toEqual([{ throttle_key: "account:three@vale.example" }]);
});

test("the sentence says how long to wait", () => expect(TOO_MANY_TRIES).toContain(`${String(SIGN_IN_WINDOW_MINUTES)} minutes`));
