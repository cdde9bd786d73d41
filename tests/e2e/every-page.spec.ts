import { type Page } from "@playwright/test";
import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { expect, expectAccessible, type Office, signIn, test } from "./office";

// Every route, in every theme, at three widths: axe finds nothing, nothing is wider than the window, and a
// picture is kept in .artifacts/pages for people to judge.

const PICTURES = join(import.meta.dirname, "..", "..", ".artifacts", "pages");
const WIDTHS = [320, 390, 1440] as const;
const THEMES = ["light", "dark"] as const;

async function inOffice(page: Page, office: Office): Promise<readonly (readonly [name: string, path: string])[]> {
  await signIn(page, office);
  await page.getByRole("link", { name: "Ray Odum" }).click();
  await expect(page.getByRole("heading", { name: "Ray Odum" })).toBeVisible();
  const person = new URL(page.url()).pathname;
  return [
    ["crew", "/crew"],
    ["add-person", "/crew/add-person"],
    ["person", person],
    ["change-person", `${person}/change-person`],
    ["add-license", `${person}/add-license`],
    ["invite-person", `${person}/invite-person`],
    ["settings", "/settings"],
    ["change-company", "/settings/change-company"],
    ["change-password", "/settings/change-password"],
    ["contents", "/contents"],
    ["sample-sheet", "/sample-sheet"],
    ["nothing-here", "/no-such-page"],
  ];
}

for (const theme of THEMES) {
  test(`every page of the office passes in the ${theme} theme at every width`, async ({ page, demonstration }) => {
    test.setTimeout(240_000);
    await mkdir(PICTURES, { recursive: true });
    const pages = await inOffice(page, demonstration);
    await page.context().addCookies([{ name: "halfpass-theme", value: theme, url: demonstration.address }]);
    for (const [name, path] of pages) {
      await page.goto(demonstration.address + path);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        await test.step(`${name} at ${String(width)}`, async () => {
          await page.screenshot({ path: join(PICTURES, `${name}-${theme}-${String(width)}.png`), fullPage: true });
          await expectAccessible(page);
        });
      }
    }
  });

  test(`every page before the door passes in the ${theme} theme at every width`, async ({ page, emptyOffice }) => {
    await mkdir(PICTURES, { recursive: true });
    const link = /http:\/\/\S+/.exec(await emptyOffice.companyCommand())?.[0] ?? "";
    await page.context().addCookies([{ name: "halfpass-theme", value: theme, url: emptyOffice.address }]);
    for (const [name, address] of [
      ["sign-in", `${emptyOffice.address}/sign-in`],
      ["first-run", link],
      ["link-ended", `${emptyOffice.address}/reset-password/${"A".repeat(43)}`],
    ] as const) {
      await page.goto(address);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        await page.screenshot({ path: join(PICTURES, `${name}-${theme}-${String(width)}.png`), fullPage: true });
        await expectAccessible(page);
      }
    }
  });
}
