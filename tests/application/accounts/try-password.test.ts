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

test("the sentence says how long to wait", () => expect(TOO_MANY_TRIES).toContain(`${String(SIGN_IN_WINDOW_MINUTES)} minutes`));
