import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { Prisma } from "#adapters/postgres/generated/client";
import { inCompany } from "#adapters/postgres/company-work";
import { writeDeed } from "#application/audit-trail";
import { checkInput, fieldComplaints, refusalOf, rollBack, useCase } from "#application/use-case";
import { accept } from "#domain/foundation/outcome";
import { conflict } from "#application/refusal";
import { type Attempt } from "../support/attempt";
import { ATTEMPTS, USE_CASE_NAMES } from "../support/attempts";
import { aCompany, aPerson, type TestCompany } from "../support/crew";
import { countedId, openHouse, type TestHouse } from "../support/house";

let house: TestHouse;
let company: TestCompany;
let other: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house, "First Crew");
  other = await aCompany(house, "Second Crew");
});
afterAll(() => house.close());

/** What a browser, or whoever pretends to be one, may send in place of any field. */
const HOSTILE: Readonly<Record<string, unknown>> = {
  nothing: undefined,
  null: null,
  "a negative number": -5,
  "a number too large for the database": 2 ** 31,
  "not a number": Number.NaN,
  true: true,
  "an object": { toString: "not a function" },
  "an empty list": [],
  "a list of one good-looking thing": ["1"],
  "a NUL byte": "\u0000",
  "a NUL byte inside": "a\u0000b",
  "half of a surrogate pair": "\ud800",
  "a megabyte": "x".repeat(1_048_576),
};

/**
 * What a field takes after all: one that may be left out, ticks of which none is set, a list that may be empty, words and choices that may be left away, a
 * thermometer below zero; or one whose fellow is complained of.
 */
const TAKEN: ReadonlySet<string> = new Set([
  "days/set-shop-position latitude nothing",
  "days/set-shop-position longitude nothing",
  "days/set-shop-position zip nothing",
  "fills/preview-fill visitIds an empty list",
  "fills/preview-tank-reading missingWent nothing",
  "fills/preview-tank-reading missingWent null",
  "fills/read-fill-of-day visitIds an empty list",
  "fills/read-planned-fill visitIds an empty list",
  "fills/record-fill visitIds an empty list",
  "fills/record-tank-reading missingWent nothing",
  "fills/record-tank-reading missingWent null",
  "properties/add-station waters nothing",
  "properties/change-station waters nothing",
  "register/complete-visit temperatureF a negative number",
  "register/preview-record temperatureF a negative number",
  "visits/look-at-lawns said nothing",
]);

/** Whether a refusal complains of the field, or of a part of it. */
function complainsOf(field: string, answer: Awaited<ReturnType<Attempt["run"]>>): boolean {
  if (answer.ok || answer.refusal.kind !== "bad-input") return false;
  return Object.entries(answer.refusal.fields).some(([name, sentence]) => (name === field || name.startsWith(`${field}.`)) && sentence !== "");
}

const NO_OBJECTS: Readonly<Record<string, unknown>> = { undefined, null: null, "a number": 5, "a string": "x", "a list": [], true: true };

describe.each(USE_CASE_NAMES)("%s", (name) => {
  let attempt: Attempt;
  beforeAll(async () => {
    attempt = await ATTEMPTS[name](house, company);
  });

  test("refuses what is no form at all, and writes nothing", async () => {
    const before = await house.books();
    for (const [what, input] of Object.entries(NO_OBJECTS)) {
      expect(await attempt.run(house, company.owner.key, input), what).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
    }
    expect(await house.books()).toEqual(before);
  });

  test("refuses hostile fields by name, and writes nothing", async () => {
    const before = await house.books();
    const wrong: string[] = [];
    for (const field of Object.keys(attempt.input)) {
      for (const [what, value] of Object.entries(HOSTILE)) {
        if (TAKEN.has(`${name} ${field} ${what}`)) continue;
        const answer = await attempt.run(house, company.owner.key, { ...attempt.input, [field]: value });
        if (!complainsOf(field, answer)) wrong.push(`${name} ${field} ${what}: ${JSON.stringify(answer)}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(await house.books()).toEqual(before);
  });

  test("takes nothing from a prototype that travels with the form", async () => {
    const before = await house.books();
    const carried = JSON.parse(`{"__proto__": ${JSON.stringify({ ...attempt.input, planted: true })}}`) as unknown;
    const answer = await attempt.run(house, company.owner.key, carried);
    expect(answer.ok).toBe(Object.keys(attempt.input).length === 0);
    expect(await house.books()).toEqual(before);
    expect(({} as Record<string, unknown>).planted).toBeUndefined();
  });

  test("does nothing for a session that no longer stands, or never did", async () => {
    const before = await house.books();
    const { key } = company.owner;
    const keys = {
      "a later version": { ...key, sessionVersion: 2 },
      "an earlier version": { ...key, sessionVersion: 0 },
      "an unknown account": { ...key, accountId: countedId(0xffffff) },
      "an unknown company": { ...key, companyId: countedId(0xffffff) },
      "another company": { ...key, companyId: other.companyId },
    };
    for (const [what, stale] of Object.entries(keys)) {
      expect(await attempt.run(house, stale, attempt.input), what).toMatchObject({ ok: false, refusal: { kind: "signed-out" } });
    }
    expect(await house.books()).toEqual(before);
  });

  test("answers to another company's id as to an unknown one", async () => {
    const { input } = await ATTEMPTS[name](house, other);
    // The id of a request or of a list is made by the form that sends it; it is nobody's before. An empty one names nothing.
    const ids = Object.keys(input).filter((field) => field.endsWith("Id") && !["requestId", "listId"].includes(field) && input[field] !== "");
    const before = await house.books();
    for (const field of ids) {
      const foreign = await attempt.run(house, company.owner.key, { ...attempt.input, [field]: input[field] });
      const unknown = await attempt.run(house, company.owner.key, { ...attempt.input, [field]: countedId(0xffffff) });
      expect(foreign, field).toMatchObject({ ok: false, refusal: { kind: expect.stringMatching(/^(?:not-found|bad-input)$/u) as string } });
      expect(foreign).toEqual(unknown);
    }
    expect(await house.books()).toEqual(before);
  });
});

describe("a use case", () => {
  const form = z.object({ then: z.enum(["accept", "refuse", "throw"]) });
  const writeAnd = useCase("people/add-person", form, async (work, { then }) => {
    await writeDeed(work, null, { deed: "person-added", details: { name: then } });
    if (then === "refuse") return conflict("Refused after writing.");
    if (then === "throw") throw new Error("thrown after writing");
    return accept(work.now);
  });

  test("keeps what it wrote when it accepts, and reads the clock once", async () => {
    const before = await house.books();
    expect(await writeAnd(house, company.owner.key, { then: "accept" })).toEqual({ ok: true, value: house.now() });
    const after = await house.books();
    expect(after.audit_event).toHaveLength((before.audit_event ?? []).length + 1);
  });

  test("keeps nothing when it refuses or throws after it has written", async () => {
    const before = await house.books();
    expect(await writeAnd(house, company.owner.key, { then: "refuse" })).toEqual(conflict("Refused after writing."));
    await expect(writeAnd(house, company.owner.key, { then: "throw" })).rejects.toThrow("thrown after writing");
    expect(await house.books()).toEqual(before);
  });
});

describe("the refusals that come as errors", () => {
  test("a unique key that someone else was faster to take is a conflict", async () => {
    const personId = await aPerson(house, company);
    const again = inCompany(house.client, company.owner.key, (tx) =>
      tx.person.create({ data: { companyId: company.companyId, personId, name: "Twice", createdAt: house.now() } }),
    );
    const error: unknown = await again.catch((reason: unknown) => reason);
    expect(error).toBeInstanceOf(Prisma.PrismaClientKnownRequestError);
    expect(refusalOf(error)).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  });

  test("what a guest's work rolls back with comes out again; anything else is a defect and goes on", () => {
    const { refusal } = conflict("Too late.");
    expect(refusalOf(caught(() => rollBack(refusal)))).toEqual({ ok: false, refusal });
    const defect = new Error("a defect");
    expect(caught(() => refusalOf(defect))).toBe(defect);
  });
});

function caught(act: () => unknown): unknown {
  try {
    act();
  } catch (error) {
    return error;
  }
  return undefined;
}

describe("checking an input", () => {
  const schema = z.object({ name: z.string("Give a name."), inner: z.object({ day: z.string("Give a day.").min(3, "Too short.").max(1, "Too long.") }) });

  test("names each field by its path, with its first complaint, and counts them", () => {
    expect(checkInput(schema, { inner: { day: "xx" } })).toEqual({
      ok: false,
      refusal: {
        kind: "bad-input",
        sentence: "Nothing was saved. 2 fields need another look.",
        fields: { name: "Give a name.", "inner.day": "Too short." },
      },
    });
    expect(checkInput(z.string("Give a word."), 5)).toMatchObject({ refusal: { sentence: "Nothing was saved. One field needs another look." } });
    expect(checkInput(z.string(), "word")).toEqual({ ok: true, value: "word" });
  });

  test("keeps a complaint about a field that is called like something of every object", () => {
    const error = new z.ZodError([{ code: "custom", path: ["constructor"], message: "Not this.", input: 1 }]);
    expect(Object.entries(fieldComplaints(error))).toEqual([["constructor", "Not this."]]);
  });
});
