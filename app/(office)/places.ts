import { may } from "#application/permission";
import { type Role } from "#domain/crew/role";

interface OfficePlace {
  readonly name: string;
  readonly href: string;
  readonly question: string;
  readonly isFor: (role: Role) => boolean;
}

/** The places of the office in their order. A place stands here when something is behind it. */
const PLACES: readonly OfficePlace[] = [
  {
    name: "Today",
    href: "/today",
    question: "What happens today or tomorrow, may it, is everything printed?",
    isFor: (role) => may(role, "days/read-day"),
  },
  {
    name: "Properties",
    href: "/properties",
    question: "Whose ground is it, what is it, what was put there, what comes next?",
    isFor: (role) => may(role, "properties/list-properties"),
  },
  {
    name: "Programs",
    href: "/programs",
    question: "What goes down this year, where, inside species need, label and law?",
    isFor: (role) => may(role, "programs/list-programs"),
  },
  {
    name: "Shed",
    href: "/shed",
    question: "What is on hand, what does its label say, what expires when?",
    isFor: (role) => may(role, "products/list-products"),
  },
  {
    name: "Crew",
    href: "/crew",
    question: "Who may do what, with which truck and gear, measured when?",
    isFor: (role) => may(role, "people/list-people"),
  },
  {
    name: "Register",
    href: "/register",
    question: "What was put down, and can we prove it?",
    isFor: (role) => may(role, "register/list-register"),
  },
];

/** The places that a role may enter. */
export function placesFor(role: Role): readonly { readonly name: string; readonly href: string; readonly question: string }[] {
  return PLACES.filter((place) => place.isFor(role)).map(({ name, href, question }) => ({ name, href, question }));
}
