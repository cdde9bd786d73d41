import { expect, type Page } from "@playwright/test";
import { readPaper, wordsIn } from "../../support/read-paper";
import { type Office } from "../office";

/** Presses what prints, and answers with the words of the paper that came. */
export async function printed(page: Page, office: Office, press: string): Promise<string> {
  const coming = page.waitForResponse((response) => response.headers()["content-type"] === "application/pdf");
  await page.getByRole("button", { name: press, exact: true }).click();
  const address = (await coming).url();
  const answer = await page.request.get(address);
  expect(answer.headers()["content-type"]).toBe("application/pdf");
  const paper = await readPaper(await answer.body());
  await page.goto(office.address);
  return paper.pages.map(({ texts }) => wordsIn(texts)).join(" ");
}
