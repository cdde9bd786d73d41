import { afterAll, beforeAll, expect, test } from "vitest";
import { openClient } from "#adapters/postgres/client";
import { webRoleFaults } from "#adapters/postgres/web-role-check";
import { SERVER_VARIABLE } from "../support/database-server";
import { openHouse, type TestHouse } from "../support/house";
import pg from "pg";

let house: TestHouse;
let administrator: pg.Client;
beforeAll(async () => {
  house = await openHouse();
  administrator = new pg.Client({ connectionString: process.env[SERVER_VARIABLE] });
  await administrator.connect();
});
afterAll(async () => {
  await administrator.end();
  await house.close();
});

async function faultsAs(url: string): Promise<readonly string[]> {
  const client = openClient(url, 1);
  try {
    return await webRoleFaults(client);
  } finally {
    await client.$disconnect();
  }
}

/** The faults of a role that is made for one test, signed in to the house's database. */
async function faultsOfRole(attributes: string, groups: readonly string[]): Promise<readonly string[]> {
  const { password } = new URL(house.database.appUrl);
  const role = `planted_${String(process.pid)}_${house.newId().slice(-4)}`;
  await administrator.query(`create role ${role} login ${attributes} password ${pg.escapeLiteral(password)}`);
  try {
    for (const group of groups) await administrator.query(`grant ${group} to ${role}`);
    const url = new URL(house.database.appUrl);
    url.username = role;
    return (await faultsAs(url.href)).map((fault) => fault.replaceAll(role, "planted"));
  } finally {
    await administrator.query(`drop role ${role}`);
  }
}

test("the web role of an installation has no fault", async () => {
  expect(await faultsAs(house.database.appUrl)).toEqual([]);
  expect(await faultsOfRole("nosuperuser nobypassrls", ["halfpass_app"])).toEqual([]);
});

test("the owner of the tables, and whoever may become the owner, is refused", async () => {
  const owner = await faultsAs(house.database.ownerUrl);
  expect(owner).toContain("The web role halfpass_owner owns tables, or may become the role that does.");
  const heir = await faultsOfRole("nosuperuser", ["halfpass_app", "halfpass_owner"]);
  expect(heir).toEqual(["The web role planted owns tables, or may become the role that does."]);
});

test("a superuser, a role that bypasses policies, and a stranger are refused", async () => {
  expect(await faultsOfRole("superuser", [])).toEqual(["The web role planted is a superuser."]);
  expect(await faultsOfRole("bypassrls", ["halfpass_app"])).toEqual(["The web role planted has BYPASSRLS."]);
  expect(await faultsOfRole("nosuperuser", [])).toEqual(["The web role planted is not a member of halfpass_app."]);
});
