import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { isPassword } from "#adapters/password-hash";
import { asGuest } from "#adapters/postgres/company-work";
import { accountOfGuest, keepAccountOfGuest, type GuestAccount } from "#application/accounts/account-of-guest";
import { ATTEMPTS_PER_ACCOUNT, TOO_MANY_TRIES } from "#application/accounts/try-password";
import { refusalOf } from "#application/use-case";
import { aCompany, PASSWORD, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

const EMAIL = "robin@vale.example";
const WRONG = "Not the one.";
const JUST_TAKEN = "Someone was faster.";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

const keep = (account: GuestAccount) =>
  asGuest(house.client, company.companyId, (tx) => keepAccountOfGuest(tx, account, { now: house.now(), newId: house.newId }, JUST_TAKEN));

const refusedAtPassword = (sentence: unknown) => ({ ok: false, refusal: { kind: "bad-input", fields: { password: sentence } } });

describe("an address that has an account", () => {
  test("answers it to its own password, without a new hash, and keeps it as it is", async () => {
    const account = valueOf(await accountOfGuest(house, { email: company.owner.email, password: PASSWORD }, WRONG));
    expect(account).toEqual({ kind: "known", accountId: company.owner.key.accountId });
    const before = await house.books();
    expect(await keep(account)).toBe(company.owner.key.accountId);
    expect(await house.books()).toEqual(before);
  });

  test("takes a present password that would be too short for a new one, and refuses it as wrong", async () => {
    expect(await accountOfGuest(house, { email: company.owner.email, password: "short" }, WRONG)).toMatchObject(refusedAtPassword(WRONG));
  });

  test("counts the guesses, and after too many of them refuses the right password too", async () => {
    for (let guess = 0; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) {
      const answer = await accountOfGuest(house, { email: company.owner.email, password: "a wrong guess" }, WRONG);
      expect(answer).toMatchObject(refusedAtPassword(WRONG));
    }
    const answer = await accountOfGuest(house, { email: company.owner.email, password: PASSWORD }, WRONG);
    expect(answer).toMatchObject(refusedAtPassword(TOO_MANY_TRIES));
  });
});

describe("an address without an account", () => {
  test("needs a password that does as a new one", async () => {
    const before = await house.books();
    expect(await accountOfGuest(house, { email: EMAIL, password: "fourteen chars" }, WRONG)).toMatchObject(refusedAtPassword(saying("15 characters")));
    expect(await accountOfGuest(house, { email: EMAIL, password: "x".repeat(201) }, WRONG)).toMatchObject(refusedAtPassword(saying("200 characters")));
    expect(await house.books()).toEqual(before);
  });

  test("gets one when it is kept, and not before", async () => {
    const before = await house.books();
    const account = valueOf(await accountOfGuest(house, { email: EMAIL, password: PASSWORD }, WRONG));
    expect(await house.books()).toEqual(before);
    const accountId = await keep(account);
    const [row] = await house.ask<{ account_id: string; password_hash: string }>("select account_id, password_hash from account where email = $1", [EMAIL]);
    expect(row?.account_id).toBe(accountId);
    expect(await isPassword(row?.password_hash, PASSWORD)).toBe(true);
  });

  test("that has got one in between is not given a second: the work is rolled back", async () => {
    const [one, other] = await Promise.all([1, 2].map(() => accountOfGuest(house, { email: EMAIL, password: PASSWORD }, WRONG)));
    if (one === undefined || other === undefined) throw new Error("two answers are expected");
    await keep(valueOf(one));
    const before = await house.books();
    const refused = await keep(valueOf(other)).catch(refusalOf);
    expect(refused).toEqual({ ok: false, refusal: { kind: "conflict", sentence: JUST_TAKEN } });
    expect(await house.books()).toEqual(before);
  });
});
