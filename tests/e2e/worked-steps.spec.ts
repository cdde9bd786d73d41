import { type Locator } from "@playwright/test";
import { expect, expectAccessible, test } from "./office";

// Whoever doubts an amount opens the way to it and follows it by hand.

test.use({ storageState: async ({ owner }, use) => { await use(owner.storageState); } });

const QUARTERS: Readonly<Record<string, number>> = { "¼": 0.25, "½": 0.5, "¾": 0.75 };

/** The figures of a line in their order: "4,100 sq ft ÷ 1,000 sq ft × 2½ lb = 10¼ lb" has four. */
function figuresOf(line: string): readonly number[] {
  return [...line.matchAll(/(\d[\d,]*(?:\.\d+)?)?([¼½¾])?/gu)].flatMap(([whole, digits = "0", quarter = ""]) =>
    whole === "" ? [] : [Number(digits.replaceAll(",", "")) + (QUARTERS[quarter] ?? 0)],
  );
}

/** The line that multiplies an area with a rate, and what it comes to when it is done again. */
async function followed(working: Locator): Promise<{ readonly said: number; readonly worked: number }> {
  const line = await working.getByRole("listitem").filter({ hasText: "÷ 1,000 sq ft ×" }).innerText();
  const [area = 0, thousand = 0, rate = 0, said = 0] = figuresOf(line);
  return { said, worked: (area / thousand) * rate };
}

test.describe("where no script runs", () => {
  test.use({ javaScriptEnabled: false });

  test("an amount of a visit opens by keyboard, its lines come to what they say, and the issued mix ticket has its own", async ({ page, demonstration, owner }) => {
    await page.goto(demonstration.address + owner.recordPath);
    await page.getByRole("link", { name: "First feed" }).click();
    const putDown = page.getByRole("region", { name: "What to put down" });
    const opener = putDown.locator("summary").filter({ hasText: /^How .+ for A .+ is worked out$/u }).first();
    const shown = /^How (.+) for A /u.exec(await opener.innerText())?.[1] ?? "";
    await expect(putDown.getByText("÷ 1,000 sq ft ×").filter({ visible: true })).toHaveCount(0);

    await opener.focus();
    await page.keyboard.press("Enter");
    const working = putDown.getByRole("group", { name: /^(?!Treated area|What the rate).+ for A (?!.*each pass)/u }).filter({ hasText: "÷ 1,000 sq ft ×" }).filter({ visible: true });
    await expect(working).toHaveCount(1);
    await expect(working.getByText(/^Source: the label of /u)).toBeVisible();
    await expect(working.locator("strong")).toHaveText(shown);
    const { said, worked } = await followed(working);
    expect(worked).toBeGreaterThan(0);
    expect(Math.abs(said - worked)).toBeLessThan(0.001 * worked);

    const papers = page.getByRole("region", { name: "Mix ticket and papers" });
    await papers.getByText(/^How every amount of mix ticket \d+ is worked out$/u).click();
    const ofPaper = papers.getByRole("group", { name: (await working.getAttribute("aria-label")) ?? "none", exact: true });
    await expect(ofPaper.locator("strong")).toHaveText(shown);
  });
});

test("every way opened, the page stays readable for everybody and as wide as a phone", async ({ page, demonstration, owner }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto(demonstration.address + owner.visitPath);
  const openers = page.locator("summary").filter({ hasText: /^How .+ is worked out$/u });
  const count = await openers.count();
  expect(count).toBeGreaterThan(3);
  for (let index = 0; index < count; index += 1) await openers.nth(index).click();
  await expect(page.getByRole("group").filter({ hasText: "Source: " }).first()).toBeVisible();
  await expectAccessible(page);
});
