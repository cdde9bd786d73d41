import { readdirSync } from "node:fs";
import { join } from "node:path";
import { type Page } from "@playwright/test";
import { expect, expectAccessible, type SignedIn, test } from "./office";

// Every route at three widths: axe finds nothing and nothing is wider than the window. What a theme changes is colors:
// the other rules are asked in one; and 320 pixels show the same things in the same colors as 390. Pictures for people
// to judge are kept in .artifacts/pages: of each page one wide and light and one narrow and dark, and with
// `npm run pictures` all.

const CHECKOUT = join(import.meta.dirname, "..", "..");
const PICTURES = join(CHECKOUT, ".artifacts", "pages");
const WIDTHS = [320, 390, 1440] as const;
const THEMES = ["light", "dark", "sun"] as const;
const KEPT = new Set(["light 1440", "dark 390"]);

function isPictured(theme: string, width: number): boolean {
  return process.env["HALFPASS_PICTURES"] === "all" || KEPT.has(`${theme} ${String(width)}`);
}

async function judge(page: Page, name: string): Promise<void> {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    for (const theme of THEMES) {
      if (width === 320 && theme !== "light" && !isPictured(theme, width)) continue;
      await test.step(`${name} in ${theme} at ${String(width)}`, async () => {
        await page.evaluate((chosen) => document.documentElement.setAttribute("data-theme", chosen), theme);
        if (isPictured(theme, width)) {
          await page.screenshot({ path: join(PICTURES, `${name}-${theme}-${String(width)}.png`), fullPage: true });
        }
        await expectAccessible(page, theme === "light" ? "everything" : "colors only");
      });
    }
  }
}

/** Where each page is, by the name under which its pictures are kept. */
const OFFICE_PAGES: Readonly<Record<string, (owner: SignedIn) => string>> = {
  // The largest first, so that it is judged beside the others.
  "sample-sheet": () => "/sample-sheet",
  today: () => "/today",
  "today-empty": () => "/today?date=2035-02-06",
  "add-route-day": () => "/today/add-route-day?date=2035-02-06",
  "enter-forecast": () => "/today/enter-forecast",
  "set-shop-position": () => "/today/set-shop-position",
  "day-that-is-over": ({ dayPath }) => dayPath,
  "change-route-day": ({ changeDayPath }) => changeDayPath,
  visit: ({ visitPath }) => visitPath,
  "complete-visit": ({ visitPath }) => `${visitPath}/complete`,
  "call-off-visit": ({ visitPath }) => `${visitPath}/call-off`,
  "change-visit-task": ({ visitPath }) => `${visitPath}/change-task/1`,
  "answer-hold": ({ lawHoldPath }) => lawHoldPath,
  fills: () => "/fills",
  "record-fill": () => "/fills/record-fill",
  register: () => "/register",
  record: ({ recordPath }) => recordPath,
  rules: () => "/register/rules",
  "papers-of-day": ({ dayPapersPath }) => dayPapersPath,
  "paper-mix-ticket": ({ mixTicketPath }) => mixTicketPath,
  "paper-customer-notice": ({ noticePath }) => noticePath,
  "paper-posting-sign": ({ signPath }) => signPath,
  "paper-application-record": ({ recordPath }) => recordPath.replace("/register", "/documents/application-record"),
  shed: () => "/shed",
  "add-product": () => "/shed/add-product",
  "receive-delivery": () => "/shed/receive-delivery",
  "move-stock": () => "/shed/move-stock",
  product: ({ productPath }) => productPath,
  "confirm-label": ({ productPath }) => `${productPath}/confirm-label`,
  "enter-label": ({ productPath }) => `${productPath}/enter-label`,
  properties: () => "/properties",
  "import-customers": () => "/properties/import-customers",
  "add-client": () => "/properties/add-client",
  property: ({ propertyPath }) => propertyPath,
  "one-lawn": ({ propertyPath, lawnId }) => `${propertyPath}?lawn=${lawnId}`,
  "change-property": ({ propertyPath }) => `${propertyPath}/change-property`,
  "change-client": ({ propertyPath }) => `${propertyPath}/change-client`,
  "add-property": ({ propertyPath }) => `${propertyPath}/add-property`,
  "add-station": ({ propertyPath }) => `${propertyPath}/add-station`,
  "change-station": ({ stationPath }) => stationPath,
  "measure-lawn": ({ propertyPath }) => `${propertyPath}/measure-lawn?shape=offsets`,
  "measure-piece": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/measure-piece?use=lawn&shape=rectangle`,
  "change-lawn": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/change-lawn`,
  "enter-area": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/enter-area`,
  "add-water-edge": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/add-water-edge`,
  "add-soil-test": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/add-soil-test`,
  "add-visit": ({ propertyPath }) => `${propertyPath}/add-visit`,
  programs: () => "/programs",
  "add-program": () => "/programs/add-program",
  program: ({ programPath }) => `${programPath}?beside=Kentucky+bluegrass%2C+Illinois`,
  "add-round": ({ programPath }) => `${programPath}/add-round`,
  "change-round": ({ roundPath }) => roundPath,
  "put-on-program": ({ programPath }) => `${programPath}/put-on-program`,
  crew: () => "/crew",
  "add-person": () => "/crew/add-person",
  person: ({ personPath }) => personPath,
  "change-person": ({ personPath }) => `${personPath}/change-person`,
  "add-license": ({ personPath }) => `${personPath}/add-license`,
  "invite-person": ({ personPath }) => `${personPath}/invite-person`,
  gear: () => "/crew/gear",
  "add-vehicle": () => "/crew/gear/add-vehicle",
  "change-vehicle": ({ truckPath }) => truckPath,
  "add-sprayer": () => "/crew/gear/add-equipment?what=sprayer",
  "add-spreader": () => "/crew/gear/add-equipment?what=spreader",
  "add-measuring-tool": () => "/crew/gear/add-measuring-tool",
  equipment: ({ equipmentPath }) => equipmentPath,
  "change-equipment": ({ equipmentPath }) => `${equipmentPath}/change-equipment`,
  calibrate: ({ equipmentPath }) => `${equipmentPath}/calibrate`,
  calibration: ({ calibrationPath }) => calibrationPath,
  settings: () => "/settings",
  "change-company": () => "/settings/change-company",
  "change-password": () => "/settings/change-password",
  contents: () => "/contents",
  "nothing-here": () => "/no-such-page",
};

/** Where the pages before the door are: an address of each, given the link of a first run. */
const PAGES_BEFORE_THE_DOOR: Readonly<Record<string, (firstRunLink: string) => string>> = {
  "sign-in": () => "/sign-in",
  "first-run": (link) => new URL(link).pathname,
  "link-ended": () => `/reset-password/${"A".repeat(43)}`,
  "invitation-ended": () => `/invitation/${"A".repeat(43)}`,
};

/** Pages that send people elsewhere and show nothing. */
const SHOW_NOTHING = ["/"];

test("every route of the product is judged here", ({ owner }) => {
  const paths = [
    ...Object.values(OFFICE_PAGES).map((pathOf) => pathOf(owner)),
    ...Object.values(PAGES_BEFORE_THE_DOOR).map((pathOf) => pathOf(`http://localhost/first-run/${"A".repeat(43)}`)),
    ...SHOW_NOTHING,
  ].map((path) => path.replace(/\?.*/, ""));
  const files = readdirSync(join(CHECKOUT, "app"), { recursive: true, encoding: "utf8" }).map((file) => `/${file}`);
  const routes = files.filter((file) => file.endsWith("/page.tsx")).map((file) => file.replace(/\/page\.tsx$|\/\([^/]+\)/g, "") || "/");
  // A folder's own name comes before what stands for any: /crew/gear is not the page of a person called gear.
  const fixed = new Set(routes);
  const isOf = (route: string) => {
    const form = new RegExp(`^${route.replace(/\[[^\]]+\]/g, "[^/]+")}/?$`);
    return (path: string) => (path === route || !fixed.has(path)) && form.test(path);
  };
  expect(routes.filter((route) => !paths.some(isOf(route)))).toEqual([]);
});

test.describe("in the office", () => {
  test.use({ storageState: async ({ owner }, use) => { await use(owner.storageState); } });
  for (const [name, pathOf] of Object.entries(OFFICE_PAGES)) {
    test(`the page ${name} passes in every theme at every width`, async ({ page, demonstration, owner }) => {
      test.setTimeout(600_000);
      await page.goto(demonstration.address + pathOf(owner));
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
      await judge(page, name);
    });
  }
});

test("the pages before the door pass in every theme at every width", async ({ page, emptyOffice }) => {
  test.setTimeout(600_000);
  const link = /http:\/\/\S+/.exec(await emptyOffice.companyCommand())?.[0] ?? "";
  for (const [name, pathOf] of Object.entries(PAGES_BEFORE_THE_DOOR)) {
    await page.goto(emptyOffice.address + pathOf(link));
    await judge(page, name);
  }
});
