import { test as base } from "@playwright/test";

/**
 * Playwright's `test`, which also fails when the page throws or writes an error to the console: the content security
 * policy reports what it blocks there, and React what differs between server and browser.
 */
export const test = base.extend<{ quietPage: undefined }>({
  quietPage: [
    async ({ page }, use) => {
      const complaints: string[] = [];
      page.on("pageerror", (error) => complaints.push(error.message));
      page.on("console", (message) => {
        if (message.type() === "error") complaints.push(message.text());
      });
      await use(undefined);
      if (complaints.length > 0) throw new Error(`The page complained:\n${complaints.join("\n")}`);
    },
    { auto: true },
  ],
});

export { expect } from "@playwright/test";
