import { type Role } from "#domain/crew/role";

const EVERYONE: readonly Role[] = ["owner", "office", "applicator", "technician", "inspector"];
const OFFICE: readonly Role[] = ["owner", "office"];
const OWNER: readonly Role[] = ["owner"];

/**
 * Who may do what: the one place that says so. A use case names itself by its file and is refused to every
 * role that does not stand here. Answering a hold of law depends on a license and is asked there.
 */
export const PERMISSIONS = {
  "accounts/change-password": EVERYONE,
  "accounts/issue-reset-link": OWNER,
  "companies/change-company": OWNER,
  "companies/read-company": EVERYONE,
  "days/add-route-day": OFFICE,
  "days/change-route-day": OFFICE,
  "days/enter-forecast": OFFICE,
  "days/move-visit": OFFICE,
  "days/order-day": OFFICE,
  "days/pin-visit": OFFICE,
  "days/place-visit": OFFICE,
  "days/read-day": OFFICE.concat("applicator", "technician"),
  "days/restore-order": OFFICE,
  "days/set-shop-position": OFFICE,
  "days/take-off-day": OFFICE,
  "equipment/add-equipment": OFFICE,
  "equipment/add-measuring-tool": OFFICE,
  "equipment/add-vehicle": OFFICE,
  "equipment/calibrate-sprayer": OFFICE.concat("applicator", "technician"),
  "equipment/calibrate-spreader": OFFICE.concat("applicator", "technician"),
  "equipment/change-equipment": OFFICE,
  "equipment/change-vehicle": OFFICE,
  "equipment/list-equipment": OFFICE.concat("applicator", "technician"),
  "equipment/read-calibration": OFFICE.concat("applicator", "technician"),
  "equipment/read-equipment": OFFICE.concat("applicator", "technician"),
  "equipment/stand-down-equipment": OFFICE,
  "equipment/stand-down-measuring-tool": OFFICE,
  "equipment/stand-down-vehicle": OFFICE,
  "people/add-license": OWNER,
  "people/add-person": OWNER,
  "people/change-person": OWNER,
  "people/change-role": OWNER,
  "people/end-membership": OWNER,
  "people/invite-person": OWNER,
  "people/list-people": OFFICE.concat("applicator", "technician"),
  "people/read-person": OFFICE.concat("applicator", "technician"),
  "people/withdraw-invitation": OWNER,
  "people/withdraw-license": OWNER,
  "properties/add-client": OFFICE,
  "properties/add-property": OFFICE,
  "properties/add-soil-test": OFFICE,
  "properties/add-station": OFFICE,
  "properties/add-water-edge": OFFICE,
  "properties/add-zone": OFFICE,
  "properties/change-client": OFFICE,
  "properties/change-property": OFFICE,
  "properties/change-station": OFFICE,
  "properties/change-zone": OFFICE,
  "properties/check-customer-list": OFFICE,
  "properties/import-customers": OFFICE,
  "properties/list-properties": OFFICE.concat("applicator", "technician"),
  "properties/measure-zone": OFFICE,
  "properties/read-customer-list": OFFICE,
  "properties/read-property": OFFICE.concat("applicator", "technician"),
  "properties/remove-water-edge": OFFICE,
  "properties/remove-zone": OFFICE,
  "products/add-product": OFFICE,
  "products/confirm-label": OFFICE.concat("applicator"),
  "products/enter-label": OFFICE,
  "products/list-products": OFFICE.concat("applicator", "technician"),
  "products/read-product": OFFICE.concat("applicator", "technician"),
  "products/retire-product": OFFICE,
  "stock/list-movements": OFFICE.concat("applicator", "technician"),
  "stock/list-stock": OFFICE.concat("applicator", "technician"),
  "stock/move-stock": OFFICE,
  "stock/receive-delivery": OFFICE.concat("applicator"),
  "fills/record-fill": OFFICE.concat("applicator", "technician"),
  "register/complete-visit": OFFICE.concat("applicator", "technician"),
  "register/list-register": OFFICE.concat("applicator", "inspector"),
  "register/read-record": OFFICE.concat("applicator", "inspector"),
  "visits/answer-hold": OFFICE.concat("applicator"),
  "visits/issue-mix-ticket": OFFICE,
  "visits/read-visit": OFFICE.concat("applicator", "technician"),
} as const satisfies Record<string, readonly Role[]>;

export type UseCaseName = keyof typeof PERMISSIONS;

/** True when a member of this role may do this. Pages ask it to decide what to offer; use cases decide. */
export function may(role: Role, useCase: UseCaseName): boolean {
  return (PERMISSIONS[useCase] as readonly Role[]).includes(role);
}
