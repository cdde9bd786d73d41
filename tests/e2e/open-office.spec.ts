import { expect, test } from "./page-test";

test("whoever is not signed in is asked to sign in, and comes back to where they were going", async ({ page }) => {
  await page.goto("/crew");
  await expect(page.getByRole("button", { name: "Sign in" })).toBeVisible();
  expect(new URL(page.url()).searchParams.get("next")).toBe("/crew");
});

test("the health page says that the database answers", async ({ request }) => {
  const answer = await request.get("/health");
  expect(await answer.text()).toBe("ok\n");
});
