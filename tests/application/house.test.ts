import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { idField, secretField } from "#application/field.schema";
import { forgetEnvironment } from "../support/forget-environment";
import { openHouse, type TestHouse } from "../support/house";

const load = () => import("#application/house");
let house: Awaited<ReturnType<typeof load>>["house"];
let testHouse: TestHouse;
beforeAll(async () => {
  testHouse = await openHouse();
  vi.stubEnv("DATABASE_APP_URL", testHouse.database.appUrl);
  vi.stubEnv("NEXTAUTH_SECRET", "x".repeat(32));
  vi.stubEnv("NEXTAUTH_URL", "http://localhost:3210");
  forgetEnvironment();
  ({ house } = await load());
});
afterAll(async () => {
  await house().client.$disconnect();
  vi.unstubAllEnvs();
  forgetEnvironment();
  await testHouse.close();
});

test("has one client on the environment's database, the real clock, and ids and secrets that do not repeat", async () => {
  const { client, now, newId, newSecret } = house();
  expect(house().client).toBe(client);
  expect(await client.$queryRaw`select current_user::text as role`).toEqual([{ role: "halfpass_web" }]);
  const before = Date.now();
  expect(now().getTime()).toBeGreaterThanOrEqual(before);
  const ids = Array.from({ length: 100 }, newId);
  const secrets = Array.from({ length: 100 }, newSecret);
  expect(new Set([...ids, ...secrets]).size).toBe(200);
  for (const id of ids) expect(idField.safeParse(id).success).toBe(true);
  for (const secret of secrets) expect(secretField.safeParse(secret).success).toBe(true);
});
