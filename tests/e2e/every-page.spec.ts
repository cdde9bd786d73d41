import { type Page } from "@playwright/test";
import { join } from "node:path";
import { expect, expectAccessible, signIn, test } from "./office";

// Every route, in every theme, at three widths: axe finds nothing, nothing is wider than the window, and a
// picture is kept in .artifacts/pages for people to judge. What a theme changes is colors: the other rules are
// asked in one.

const PICTURES = join(import.meta.dirname, "..", "..", ".artifacts", "pages");
const WIDTHS = [320, 390, 1440] as const;
const THEMES = ["light", "dark", "sun"] as const;

async function judge(page: Page, name: string): Promise<void> {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    for (const theme of THEMES) {
      await test.step(`${name} in ${theme} at ${String(width)}`, async () => {
        await page.evaluate((chosen) => document.documentElement.setAttribute("data-theme", chosen), theme);
        await page.screenshot({ path: join(PICTURES, `${name}-${theme}-${String(width)}.png`), fullPage: true });
        await expectAccessible(page, theme === "light" ? "everything" : "colors only");
      });
    }
  }
}

const OFFICE_PAGES = {
  crew: "/crew",
  "add-person": "/crew/add-person",
  person: "/crew/PERSON",
  "change-person": "/crew/PERSON/change-person",
  "add-license": "/crew/PERSON/add-license",
  "invite-person": "/crew/PERSON/invite-person",
  settings: "/settings",
  "change-company": "/settings/change-company",
  "change-password": "/settings/change-password",
  contents: "/contents",
  "sample-sheet": "/sample-sheet",
  "nothing-here": "/no-such-page",
} as const;

for (const [name, path] of Object.entries(OFFICE_PAGES)) {
  test(`the page ${name} passes in every theme at every width`, async ({ page, demonstration }) => {
    test.setTimeout(900_000);
    await signIn(page, demonstration);
    const link = page.getByRole("link", { name: "Ray Odum" });
    const person = ((await link.getAttribute("href")) ?? "").replace("/crew/", "");
    await page.goto(demonstration.address + path.replace("PERSON", person));
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await judge(page, name);
  });
}

test("the pages before the door pass in every theme at every width", async ({ page, emptyOffice }) => {
  test.setTimeout(900_000);
  const link = /http:\/\/\S+/.exec(await emptyOffice.companyCommand())?.[0] ?? "";
  const addresses = {
    "sign-in": `${emptyOffice.address}/sign-in`,
    "first-run": link,
    "link-ended": `${emptyOffice.address}/reset-password/${"A".repeat(43)}`,
  };
  for (const [name, address] of Object.entries(addresses)) {
    await page.goto(address);
    await judge(page, name);
  }
});
