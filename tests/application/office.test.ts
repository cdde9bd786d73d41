import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { databaseClient } from "#adapters/postgres/client";
import { canServe, marksCookiesSecure, officeLink, sealingSecret } from "#application/office";
import { cloneDatabase, type DatabaseClone } from "../support/database";
import { forgetClient } from "../support/forget-client";

let database: DatabaseClone;

beforeAll(async () => {
  forgetClient();
  database = await cloneDatabase();
  vi.stubEnv("DATABASE_APP_URL", database.appUrl);
  vi.stubEnv("NEXTAUTH_URL", "https://office.example");
  vi.stubEnv("NEXTAUTH_SECRET", "a secret of the tests that opens nothing");
});

afterAll(async () => {
  vi.unstubAllEnvs();
  await databaseClient().$disconnect();
  forgetClient();
  await database.drop();
});

test("a link that is handed over begins with where browsers reach the office", () => {
  expect(officeLink("/invitation/abc")).toBe("https://office.example/invitation/abc");
});

test("an office behind TLS marks its cookies secure, and seals them with its own secret", () => {
  expect(marksCookiesSecure()).toBe(true);
  expect(sealingSecret()).toBe("a secret of the tests that opens nothing");
});

test("the office can serve while the database answers, and says so when it does not", async () => {
  expect(await canServe()).toBe(true);
  await databaseClient().$disconnect();
  await database.drop();
  expect(await canServe()).toBe(false);
});
