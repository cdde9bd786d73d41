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
  "look-at-lawns": ({ visitPath }) => `${visitPath}/look-at-lawns`,
  "call-off-visit": ({ visitPath }) => `${visitPath}/call-off`,
  "change-visit-task": ({ visitPath }) => `${visitPath}/change-task/1`,
  "answer-hold": ({ lawHoldPath }) => lawHoldPath,
  fills: () => "/fills",
  "record-clean-out": () => "/fills/record-clean-out",
  "record-fill": () => "/fills/record-fill",
  "record-tank-reading": () => "/fills/record-tank-reading",
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
  "state-delivery-price": ({ productPath }) => `${productPath}/state-delivery-price`,
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
  "add-seeding": ({ propertyPath, lawnId }) => `${propertyPath}/lawns/${lawnId}/add-seeding`,
  "change-seeding": ({ seedingPath }) => seedingPath,
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
  temperatures: () => "/settings/temperatures",
  "keep-temperatures": () => "/settings/keep-temperatures",
  "change-company": () => "/settings/change-company",
  "change-house-settings": () => "/settings/change-house-settings",
  "change-password": () => "/settings/change-password",
  worksheets: () => "/worksheets",
  "worksheet-nutrients": () => "/worksheets/nutrients?kind=for-target&grade=28-3-6&nutrient=N&target=1+lb+per+1%2C000+sq+ft&area=6%2C000+sq+ft&bag=50+lb&density=&slow=7",
  "worksheet-refused": () => "/worksheets/nutrients?kind=for-target&grade=28-3&nutrient=N&target=1+oz&area=&bag=&density=&slow=",
  "worksheet-sprayer": () => "/worksheets/sprayer?kind=gun&area=1%2C000+sq+ft&areaSeconds=50&caught=1.4+gal&caughtSeconds=50&wanted=2+gal%2F1%2C000&density=",
  "worksheet-spreader": () => "/worksheets/spreader?kind=pan-line&spacing=2+ft&catches=0%2C+1%2C+2%2C+3%2C+4%2C+4%2C+4%2C+3%2C+2%2C+1%2C+0&swath=&pattern=round-and-round",
  "worksheet-tank-mix": () => "/worksheets/tank-mix?kind=tank-mix&tank=20+gal&carrier=20+gal+per+acre&area=1+1%2F2+acres&name1=Herbicide&rate1=32+fl+oz+per+acre&kind1=soluble+liquid",
  "worksheet-area": () => "/worksheets/area?kind=offsets&step=10+ft&widths=32%2C+50%2C+45%2C+17&ends=points&line=edge",
  "worksheet-irrigation": () => "/worksheets/irrigation?kind=known-rate&depth=1%2F2+in&rate=&longestRun=&soak=",
  "worksheet-spray-hours": () => "/worksheets/spray-hours?hours=7+am%2C+62%2C+88%2C+2%2C+0%0A8+am%2C+86%2C+40%2C+12%2C+0&coolest=&hottest=85&wind=10&rainfast=0&sunrise=6%3A20+am&sunset=8%3A10+pm",
  "worksheet-degree-days": () => "/worksheets/degree-days?days=65%2C+40%0A60%2C+35&start=2026-03-01&method=simple&base=50&threshold=200",
  "worksheet-seed": () => "/worksheets/seed?rate=1&use=overseeding&area=20%2C000&purity=48&germination=80&price=",
  "worksheet-lime": () => "/worksheets/lime?kind=by-table&acidity=7.8&targetPh=7.0&equivalent=90&area=5%2C000&cap=100",
  "worksheet-potash": () => "/worksheets/potash?recommended=3+lb+per+1%2C000+sq+ft&table=The+lab%27s+report%2C+Mehlich+3&grade=0-0-50&area=5%2C000&cap=1&capBy=the+label",
  "worksheet-topdressing": () => "/worksheets/topdressing?kind=for-depth&area=2%2C000+sq+ft&depth=1%2F4+in&density=2%2C700+lb+per+cu+yd",
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
