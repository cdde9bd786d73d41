/**
 * Makes the demonstration: an invented company in an invented town, written through the use cases so that it
 * obeys every rule that real data obeys. Its days count from the moment it is made. The last line printed is
 * the owner's sign-in as JSON.
 */
import { randomBytes, randomUUID } from "node:crypto";
import { noteDemonstration } from "#adapters/postgres/accounts";
import { openClient } from "#adapters/postgres/client";
import { type SessionKey } from "#adapters/postgres/company-work";
import { createCompany } from "#application/companies/create-company";
import { changeCompany } from "#application/companies/change-company";
import { listProducts } from "#application/products/list-products";
import { acceptInvitation } from "#application/people/accept-invitation";
import { addLicense } from "#application/people/add-license";
import { addPerson } from "#application/people/add-person";
import { invitePerson } from "#application/people/invite-person";
import { type House } from "#application/use-case";
import { type Role } from "#domain/crew/role";
import { addDays, calendarDateIn } from "#domain/foundation/calendar-date";
import { makeSeason } from "./season";
import { makePast } from "./past";
import { makeDays } from "./days";
import { makeGear } from "./gear";
import { makeShed } from "./shed";
import { makeTemperatures } from "./temperatures";
import { makeGround } from "./ground";
import { must } from "./must";

const OWNER = { email: "dana@tansyhollow.example", password: "two passes at half rate" };
const TIME_ZONE = "America/Chicago";
const DAY_MILLISECONDS = 86_400_000;

const databaseAddress = process.env["DATABASE_APP_URL"];
if (databaseAddress === undefined) throw new Error("DATABASE_APP_URL is not set.");
const client = openClient(databaseAddress, 2);
const start = Date.now();

/** The house at a moment. */
function houseAt(moment: number): House {
  return { client, now: () => new Date(moment), newId: randomUUID, newSecret: () => randomBytes(32).toString("base64url") };
}

/** The house as it was so many days before the demonstration was made. */
function houseDaysAgo(days: number): House {
  return houseAt(start - days * DAY_MILLISECONDS);
}

/** A day so many days from the day of making, which is that of the company's time zone. */
function dayIn(days: number): string {
  return addDays(calendarDateIn(TIME_ZONE, start), days);
}

interface Hand {
  readonly name: string;
  readonly phone: string;
  readonly joinedDaysAgo: number;
  readonly access: { readonly role: Role; readonly email: string } | null;
  readonly licenses: readonly {
    readonly kind: "certified-applicator" | "registered-technician";
    readonly state: "IN" | "IL";
    readonly number: string;
    readonly category: string;
    readonly issuedInDays: number;
    readonly expiresInDays: number;
  }[];
}

// Phone numbers of the range 555-0100 to 555-0199, which is kept for fiction.
const HANDS: readonly Hand[] = [
  { name: "Ida Bray", phone: "219-555-0112", joinedDaysAgo: 410, access: { role: "office", email: "ida@tansyhollow.example" }, licenses: [] },
  {
    name: "Ray Odum",
    phone: "219-555-0113",
    joinedDaysAgo: 400,
    access: { role: "applicator", email: "ray@tansyhollow.example" },
    licenses: [
      { kind: "certified-applicator", state: "IN", number: "DEMO-IN-2207", category: "Turf management", issuedInDays: -325, expiresInDays: 40 },
      { kind: "certified-applicator", state: "IL", number: "DEMO-IL-5518", category: "Turf", issuedInDays: -325, expiresInDays: 405 },
    ],
  },
  {
    name: "Mina Feld",
    phone: "219-555-0114",
    joinedDaysAgo: 390,
    access: { role: "applicator", email: "mina@tansyhollow.example" },
    licenses: [
      { kind: "certified-applicator", state: "IN", number: "DEMO-IN-2291", category: "Turf management", issuedInDays: -377, expiresInDays: -12 },
    ],
  },
  {
    name: "Lou Parrish",
    phone: "219-555-0115",
    joinedDaysAgo: 200,
    access: { role: "technician", email: "lou@tansyhollow.example" },
    licenses: [
      { kind: "registered-technician", state: "IN", number: "DEMO-IN-T-0388", category: "Turf management", issuedInDays: -190, expiresInDays: 175 },
    ],
  },
  { name: "Wes Tolliver", phone: "219-555-0116", joinedDaysAgo: 30, access: null, licenses: [] },
];

async function makeCompany(): Promise<SessionKey> {
  const created = must(
    await createCompany(
      houseDaysAgo(420),
      {
        companyName: "Tansy Hollow Lawn Care",
        state: "IN",
        timeZone: TIME_ZONE,
        bindAddress: "127.0.0.1",
        ownerName: "Dana Quill",
        ...OWNER,
        license: {
          kind: "certified-applicator",
          state: "IN",
          number: "DEMO-IN-2044",
          category: "Turf management",
          expiresOn: dayIn(310),
        },
      },
      { isDemonstration: true },
      () => Promise.resolve(),
    ),
  );
  const key: SessionKey = { accountId: created.accountId, companyId: created.companyId, sessionVersion: 1 };
  must(
    await changeCompany(houseDaysAgo(419), key, {
      version: 1,
      name: "Tansy Hollow Lawn Care",
      state: "IN",
      timeZone: TIME_ZONE,
      phone: "219-555-0110",
      address: "18 Quarry Road, Tansy Hollow, IN",
      businessLicenseNumber: "DEMO-B-1180",
      businessLicenseExpiresOn: dayIn(130),
      insuranceExpiresOn: dayIn(95),
    }),
  );
  must(
    await addLicense(houseDaysAgo(400), key, {
      personId: created.ownerPersonId,
      kind: "certified-applicator",
      state: "IL",
      number: "DEMO-IL-5127",
      category: "Turf",
      issuedOn: dayIn(-400),
      expiresOn: dayIn(330),
    }),
  );
  return key;
}

async function makeHand(key: SessionKey, hand: Hand): Promise<void> {
  const then = houseDaysAgo(hand.joinedDaysAgo);
  const { personId } = must(await addPerson(then, key, { name: hand.name, phone: hand.phone }));
  for (const { issuedInDays, expiresInDays, ...license } of hand.licenses) {
    must(await addLicense(then, key, { personId, ...license, issuedOn: dayIn(issuedInDays), expiresOn: dayIn(expiresInDays) }));
  }
  if (hand.access === null) return;
  const { link } = must(await invitePerson(then, key, { personId, ...hand.access }));
  must(await acceptInvitation(then, { link, password: OWNER.password }));
}

/** The granular products that spreaders are calibrated for, the feed first. */
async function granularProducts(key: SessionKey): Promise<readonly string[]> {
  const { products } = must(await listProducts(houseDaysAgo(0), key, {}));
  const idOf = (name: string) => products.filter((product) => product.name.startsWith(name)).map(({ productId }) => productId);
  return [...idOf("Greenmere"), ...idOf("Wardlow")];
}

try {
  const key = await makeCompany();
  for (const hand of HANDS) await makeHand(key, hand);
  await makeShed(key, { timeZone: TIME_ZONE, houseDaysAgo });
  await makeGear({ key, houseDaysAgo, dayIn, granularProductIds: await granularProducts(key) });
  await makeGround({ key, houseDaysAgo, dayIn });
  await makeSeason({ key, houseDaysAgo, dayIn });
  await makePast({ key, dayIn, timeZone: TIME_ZONE, houseAt });
  await makeTemperatures({ key, houseDaysAgo, dayIn });
  await makeDays({ key, house: houseDaysAgo(0), today: calendarDateIn(TIME_ZONE, start) });
  await noteDemonstration(client, new Date(start));
  process.stdout.write(`${JSON.stringify(OWNER)}\n`);
} finally {
  await client.$disconnect();
}
