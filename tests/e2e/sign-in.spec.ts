import { expect, signIn, test } from "./office";

test("a wrong password is refused, what was typed stays, and the right one leads on to where one wanted to go", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/settings/change-company`);
  await expect(page).toHaveURL(/\/sign-in\?next=%2Fsettings%2Fchange-company$/);
  await page.getByLabel("Email address").fill("dana@tansyhollow.example");
  await page.getByLabel("Password", { exact: true }).fill("not this one");
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("link", { name: "The email address or the password is not right." })).toBeVisible();
  await expect(page.getByLabel("Email address")).toHaveValue("dana@tansyhollow.example");
  await page.getByLabel("Password", { exact: true }).fill("two passes at half rate");
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("heading", { name: "Change the company" })).toBeVisible();
});

test("a link in the address never leads to another site after signing in", async ({ page, demonstration }) => {
  await page.goto(`${demonstration.address}/sign-in?next=${encodeURIComponent("//elsewhere.example/")}`);
  await page.getByLabel("Email address").fill("dana@tansyhollow.example");
  await page.getByLabel("Password", { exact: true }).fill("two passes at half rate");
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("link", { name: "Settings" }).first()).toBeVisible();
  expect(new URL(page.url()).host).toBe(new URL(demonstration.address).host);
});

test("signing out ends the session in this browser", async ({ page, demonstration }) => {
  await signIn(page, demonstration);
  await page.goto(`${demonstration.address}/settings`);
  await page.getByRole("button", { name: "Sign out" }).click();
  await expect(page.getByRole("heading", { name: "Sign in" })).toBeVisible();
  await page.goto(`${demonstration.address}/crew`);
  await expect(page).toHaveURL(/\/sign-in/);
});

test("every answer carries the security headers, with another nonce each time", async ({ request, demonstration }) => {
  const policies = [];
  for (const path of ["/sign-in", "/sign-in", "/no-such-page"]) {
    const answer = await request.get(demonstration.address + path);
    const headers = answer.headers();
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["x-frame-options"]).toBe("DENY");
    expect(headers["referrer-policy"]).toBe("same-origin");
    expect(headers["x-powered-by"]).toBeUndefined();
    const nonce = /script-src 'self' 'nonce-([^']+)' 'strict-dynamic'/.exec(headers["content-security-policy"] ?? "")?.[1] ?? "";
    expect(nonce.length).toBeGreaterThanOrEqual(22);
    expect((await answer.text()).includes(`nonce="${nonce}"`), `scripts of ${path} carry the nonce`).toBe(true);
    policies.push(nonce);
  }
  expect(new Set(policies).size).toBe(3);
});

test("a change asked for by another site is refused before anything happens", async ({ request, demonstration }) => {
  for (const headers of [{ origin: "https://elsewhere.example" }, { "sec-fetch-site": "cross-site" }, {}]) {
    const answer = await request.post(`${demonstration.address}/api/auth/signout`, { headers });
    expect(answer.status(), JSON.stringify(headers)).toBe(403);
  }
});
