import { afterEach, beforeEach, expect, test } from "vitest";
import { ATTEMPTS_PER_ADDRESS, signIn } from "#application/accounts/sign-in";
import { ATTEMPTS_PER_ACCOUNT, SIGN_IN_WINDOW_MINUTES } from "#application/accounts/try-password";
import { endMembership } from "#application/people/end-membership";
import { aCompany, aMember, PASSWORD, type TestCompany, valueOf } from "../../support/crew";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
beforeEach(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterEach(() => house.close());

const HOME = "203.0.113.7";
const tryWith = (password: unknown, email: unknown = company.owner.email, address = HOME) => signIn(house, { email, password }, address);

test("the right password opens the account's company, whatever the case of the address", async () => {
  expect(await tryWith(PASSWORD)).toEqual({ ok: true, value: company.owner.key });
  expect(await tryWith(PASSWORD, `  ${company.owner.email.toUpperCase()} `)).toEqual({ ok: true, value: company.owner.key });
});

test("an unknown address, a wrong password and a form that is none get the very same answer", async () => {
  const wrong = await tryWith("not the password");
  expect(wrong).toMatchObject({ ok: false, refusal: { kind: "wrong" } });
  expect(await tryWith(PASSWORD, "nobody@foxtail.example")).toEqual(wrong);
  for (const hostile of [undefined, null, 5, {}, [], "", "\u0000", "x".repeat(1_048_576)]) {
    expect(await tryWith(hostile)).toEqual(wrong);
    expect(await signIn(house, { email: hostile, password: PASSWORD }, HOME)).toEqual(wrong);
  }
  expect(await tryWith(`${PASSWORD}\u0000`)).toEqual(wrong);
});

test("an account takes so many wrong guesses, then not even the right one, until the window has passed", async () => {
  for (let guess = 0; guess < ATTEMPTS_PER_ACCOUNT; guess += 1) {
    expect(await tryWith(`guess ${String(guess)}`, undefined, `203.0.113.${String(guess)}`)).toMatchObject({ refusal: { kind: "wrong" } });
  }
  expect(await tryWith(PASSWORD, undefined, "198.51.100.1")).toMatchObject({ refusal: { kind: "too-many" } });
  house.pass(SIGN_IN_WINDOW_MINUTES - 1);
  expect(await tryWith(PASSWORD)).toMatchObject({ refusal: { kind: "too-many" } });
  house.pass(1);
  expect(await tryWith(PASSWORD)).toMatchObject({ ok: true });
});

test("guesses at an address that nobody has are refused at the same count", async () => {
  const kinds: string[] = [];
  for (let guess = 0; guess <= ATTEMPTS_PER_ACCOUNT; guess += 1) {
    const answer = await tryWith(PASSWORD, "nobody@foxtail.example");
    kinds.push(answer.ok ? "ok" : answer.refusal.kind);
  }
  expect(kinds).toEqual([...Array.from({ length: ATTEMPTS_PER_ACCOUNT }, () => "wrong"), "too-many"]);
});

test("twenty guesses at once are counted as twenty", async () => {
  const answers = await Promise.all(Array.from({ length: 20 }, (_, guess) => tryWith(`guess ${String(guess)}`)));
  const kinds = answers.map((answer) => (answer.ok ? "ok" : answer.refusal.kind));
  expect(kinds.filter((kind) => kind === "wrong")).toHaveLength(ATTEMPTS_PER_ACCOUNT);
  expect(kinds.filter((kind) => kind === "too-many")).toHaveLength(20 - ATTEMPTS_PER_ACCOUNT);
});

test("a network address takes so many guesses over all accounts, and another address is not held up by it", async () => {
  await house.ask("insert into sign_in_throttle values ($1, $2, $3)", [`address:${HOME}`, house.now(), ATTEMPTS_PER_ADDRESS - 1]);
  expect(await tryWith("wrong", "one@foxtail.example")).toMatchObject({ refusal: { kind: "wrong" } });
  expect(await tryWith(PASSWORD)).toMatchObject({ refusal: { kind: "too-many" } });
  expect(await tryWith(PASSWORD, undefined, "198.51.100.1")).toMatchObject({ ok: true });
  house.pass(SIGN_IN_WINDOW_MINUTES);
  expect(await tryWith(PASSWORD)).toMatchObject({ ok: true });
});

test("a sign-in forgets the account's guesses and gives its own attempt back to the address", async () => {
  await tryWith("wrong");
  await tryWith("wrong again");
  await tryWith(PASSWORD);
  const rows = await house.ask("select throttle_key, failures from sign_in_throttle order by 1");
  expect(rows).toEqual([
    { throttle_key: `account:${company.owner.email}`, failures: 0 },
    { throttle_key: `address:${HOME}`, failures: 2 },
  ]);
});

test("an account without any company is told so, and only with the right password", async () => {
  const member = await aMember(house, company, "technician");
  valueOf(await endMembership(house, company.owner.key, { personId: member.personId }));
  expect(await tryWith(PASSWORD, member.email)).toMatchObject({ refusal: { kind: "no-company" } });
  expect(await tryWith("not the password", member.email)).toMatchObject({ refusal: { kind: "wrong" } });
});
