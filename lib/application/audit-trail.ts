import { type Prisma } from "#adapters/postgres/generated/client";
import { type CompanyTransaction } from "#adapters/postgres/company-work";
import { type AnsweredHold } from "#domain/foundation/answered-hold";
import { type LawnSeeding } from "#domain/properties/lawn-seeding";
import { type Work } from "#application/use-case";

/** What was seen or told of one lawn; the depth of water is null where nobody knows it. */
interface LawnInDeed {
  readonly lawn: string;
  readonly blooms: string;
  readonly said: string | null;
  readonly watered?: { readonly at: string; readonly by: string; readonly toldBy: string; readonly depth: string | null };
}

/** Everything that the audit trail tells, each with the details that make it understandable years later. */
export type Deed =
  | { readonly deed: "company-created"; readonly details: { readonly name: string; readonly state: string; readonly timeZone: string } }
  | { readonly deed: "company-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "house-settings-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "person-added"; readonly details: { readonly name: string } }
  | { readonly deed: "person-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "person-invited"; readonly details: { readonly email: string; readonly role: string } }
  | { readonly deed: "invitation-accepted"; readonly details: { readonly email: string; readonly role: string } }
  | { readonly deed: "invitation-withdrawn"; readonly details: { readonly email: string } }
  | { readonly deed: "role-changed"; readonly details: { readonly before: string; readonly after: string } }
  | { readonly deed: "membership-ended"; readonly details: { readonly role: string } }
  | { readonly deed: "license-added"; readonly details: { readonly kind: string; readonly state: string; readonly number: string; readonly expiresOn: string } }
  | { readonly deed: "license-withdrawn"; readonly details: { readonly number: string } }
  | { readonly deed: "vehicle-added"; readonly details: { readonly number: number; readonly name: string; readonly payload: string; readonly staysAboard: string } }
  | { readonly deed: "vehicle-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "vehicle-stood-down"; readonly details: { readonly number: number; readonly name: string } }
  | { readonly deed: "equipment-added"; readonly details: Readonly<Record<string, unknown>> }
  | { readonly deed: "equipment-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "equipment-stood-down"; readonly details: { readonly kind: string; readonly name: string } }
  | { readonly deed: "measuring-tool-added"; readonly details: { readonly name: string; readonly mark: string } }
  | { readonly deed: "measuring-tool-stood-down"; readonly details: { readonly name: string; readonly mark: string } }
  | { readonly deed: "sprayer-calibrated"; readonly details: { readonly equipment: string; readonly operator: string; readonly tip: string; readonly pressurePsi: string; readonly rate: string; readonly madeOn: string } }
  | { readonly deed: "spreader-calibrated"; readonly details: { readonly equipment: string; readonly operator: string; readonly product: string; readonly setting: string; readonly rate: string; readonly madeOn: string } }
  | { readonly deed: "product-added"; readonly details: { readonly name: string; readonly form: string; readonly countedBy: string } }
  | { readonly deed: "product-retired"; readonly details: { readonly name: string } }
  | { readonly deed: "label-entered"; readonly details: { readonly productName: string; readonly number: number; readonly uses: readonly string[] } }
  | { readonly deed: "label-confirmed"; readonly details: { readonly productName: string; readonly number: number } }
  | { readonly deed: "delivery-received"; readonly details: { readonly productName: string; readonly lot: string; readonly received: string; readonly paidForOne: string; readonly on: string } }
  | { readonly deed: "delivery-price-stated"; readonly details: { readonly productName: string; readonly lot: string; readonly receivedAt: string; readonly before: string; readonly paidForOne: string; readonly said: string | null } }
  | { readonly deed: "stock-moved"; readonly details: { readonly productName: string; readonly amount: string } }
  | { readonly deed: "mix-ticket-issued"; readonly details: { readonly number: number; readonly visit: string; readonly street: string } }
  | { readonly deed: "hold-answered"; readonly details: AnsweredHold & { readonly reason: string; readonly license: string } }
  | { readonly deed: "fill-recorded"; readonly details: { readonly number: number; readonly equipment: string; readonly finished: string } }
  | { readonly deed: "clean-out-recorded"; readonly details: { readonly equipment: string; readonly cleanedAt: string; readonly doneBy: string; readonly rinsate: string } }
  | {
      readonly deed: "lawns-looked-at";
      readonly details: { readonly visit: string; readonly seenAt: string; readonly seenBy: string; readonly lawns: readonly LawnInDeed[] };
    }
  | { readonly deed: "clean-out-recorded"; readonly details: { readonly equipment: string; readonly cleanedAt: string; readonly doneBy: string; readonly rinsate: string; readonly inTheBooks: string } }
  | { readonly deed: "tank-measured"; readonly details: { readonly equipment: string; readonly readAt: string; readonly readBy: string; readonly found: string; readonly inTheBooks: string; readonly missingWent: string } }
  | { readonly deed: "record-written"; readonly details: { readonly number: number; readonly visit: string; readonly street: string } }
  | { readonly deed: "paper-printed"; readonly details: { readonly kind: string; readonly about: string } }
  | { readonly deed: "packet-printed"; readonly details: { readonly about: string; readonly papers: number; readonly leftOut: number } }
  | { readonly deed: "password-changed"; readonly details: Readonly<Record<string, never>> }
  | { readonly deed: "customers-imported"; readonly details: { readonly customers: number; readonly properties: number; readonly lawns: number } }
  | { readonly deed: "client-added"; readonly details: { readonly name: string; readonly street: string } }
  | { readonly deed: "client-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "property-added"; readonly details: { readonly street: string; readonly city: string } }
  | { readonly deed: "property-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "zone-added"; readonly details: { readonly letter: string; readonly name: string; readonly area: string; readonly areaOrigin: string } }
  | { readonly deed: "zone-measured"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "zone-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "zone-removed"; readonly details: { readonly letter: string; readonly name: string } }
  | { readonly deed: "water-edge-added"; readonly details: { readonly name: string; readonly length: string; readonly width: string } }
  | { readonly deed: "no-water-said"; readonly details: { readonly lawns: readonly string[] } }
  | { readonly deed: "water-edge-removed"; readonly details: { readonly name: string } }
  | { readonly deed: "station-added"; readonly details: { readonly number: number; readonly name: string; readonly test: string } }
  | { readonly deed: "station-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "soil-test-added"; readonly details: { readonly sampledOn: string; readonly laboratory: string; readonly phosphorus: string } }
  | { readonly deed: "seeding-added"; readonly details: LawnSeeding & { readonly lawn: string } }
  | { readonly deed: "seeding-changed"; readonly details: { readonly lawn: string; readonly before: LawnSeeding; readonly after: LawnSeeding } }
  | { readonly deed: "seeding-removed"; readonly details: LawnSeeding }
  | { readonly deed: "program-added"; readonly details: { readonly name: string; readonly season: number } }
  | { readonly deed: "round-added"; readonly details: { readonly program: string; readonly name: string; readonly opensOn: string; readonly closesOn: string; readonly treatments: readonly string[] } }
  | { readonly deed: "round-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "round-removed"; readonly details: { readonly name: string } }
  | { readonly deed: "properties-put-on-program"; readonly details: { readonly program: string; readonly properties: number; readonly visits: number } }
  | { readonly deed: "visit-planned"; readonly details: { readonly street: string; readonly name: string; readonly opensOn: string; readonly closesOn: string; readonly tasks: readonly string[] } }
  | { readonly deed: "visit-task-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "visit-called-off"; readonly details: { readonly name: string; readonly reason: string; readonly wasOn: string | null } }
  | { readonly deed: "route-day-added"; readonly details: { readonly date: string; readonly truck: string; readonly operator: string; readonly startsAtMinute: number; readonly endsAtMinute: number } }
  | { readonly deed: "route-day-changed"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "forecast-entered"; readonly details: { readonly date: string; readonly highF: number; readonly followingHighsF: readonly (number | null)[]; readonly source: string } }
  | { readonly deed: "visit-placed"; readonly details: { readonly date: string; readonly truck: string; readonly position: number } }
  | { readonly deed: "visit-moved"; readonly details: { readonly before: Readonly<Record<string, unknown>>; readonly after: Readonly<Record<string, unknown>> } }
  | { readonly deed: "visit-taken-off"; readonly details: { readonly date: string; readonly truck: string; readonly position: number } }
  | { readonly deed: "visit-pinned"; readonly details: { readonly isPinned: boolean; readonly position: number } }
  | { readonly deed: "day-ordered"; readonly details: { readonly date: string; readonly truck: string; readonly stops: number; readonly takenOff: number } }
  | { readonly deed: "order-restored"; readonly details: { readonly date: string; readonly truck: string; readonly stops: number } }
  | { readonly deed: "shop-position-set"; readonly details: { readonly latitude: number; readonly longitude: number; readonly zip: string } }
  | { readonly deed: "temperatures-kept"; readonly details: { readonly source: string; readonly figuresFrom: string; readonly from: string; readonly through: string; readonly days: number; readonly replaced: readonly string[] } }
  | { readonly deed: "temperature-source-chosen"; readonly details: { readonly before: string | null; readonly after: string } }
  | { readonly deed: "reset-link-issued"; readonly details: { readonly email: string } };

/** Writes to the audit trail what the member has just done, in the same transaction. */
export async function writeDeed(work: Work, subjectId: string | null, deed: Deed): Promise<void> {
  await writeDeedOf(work.tx, work.company.companyId, work, { accountId: work.member.accountId, personName: work.member.personName }, subjectId, deed);
}

/** The same for a deed that no signed-in member did: a guest's link, or a command at the terminal. */
export async function writeDeedOf(
  tx: CompanyTransaction,
  companyId: string,
  circumstances: { readonly now: Date; readonly newId: () => string },
  doer: { readonly accountId: string | null; readonly personName: string },
  subjectId: string | null,
  deed: Deed,
): Promise<void> {
  await tx.auditEvent.create({
    data: {
      companyId,
      auditEventId: circumstances.newId(),
      at: circumstances.now,
      accountId: doer.accountId,
      personName: doer.personName,
      deed: deed.deed,
      subjectId,
      details: deed.details as Prisma.InputJsonObject,
    },
  });
}
