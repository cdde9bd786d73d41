import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { cloneDatabase, type DatabaseClone } from "../support/database";
import { forgetEnvironment } from "../support/forget-environment";

const load = async () => ({ ...(await import("#application/office")), ...(await import("#adapters/postgres/client")) });
let office: Awaited<ReturnType<typeof load>>;
let database: DatabaseClone;

beforeAll(async () => {
  database = await cloneDatabase();
  vi.stubEnv("DATABASE_APP_URL", database.appUrl);
  vi.stubEnv("NEXTAUTH_URL", "https://office.example");
  vi.stubEnv("NEXTAUTH_SECRET", "a secret of the tests that opens nothing");
  forgetEnvironment();
  office = await load();
});

afterAll(async () => {
  vi.unstubAllEnvs();
  await office.databaseClient().$disconnect();
  forgetEnvironment();
  await database.drop();
});

test("a link that is handed over begins with where browsers reach the office", () => {
  expect(office.officeLink("/invitation/abc")).toBe("https://office.example/invitation/abc");
});

test("an office behind TLS marks its cookies secure, and seals them with its own secret", () => {
  expect(office.marksCookiesSecure()).toBe(true);
  expect(office.sealingSecret()).toBe("a secret of the tests that opens nothing");
});

test("the office can serve while the database answers, and says so when it does not", async () => {
  expect(await office.canServe()).toBe(true);
  await office.databaseClient().$disconnect();
  await database.drop();
  expect(await office.canServe()).toBe(false);
});
