/** What a member of a company may be. The permissions of each stand in lib/application/permission.ts. */
export const ROLES = ["owner", "office", "applicator", "technician", "inspector"] as const;
export type Role = (typeof ROLES)[number];

/** What each role is for, as a screen says it. */
export const ROLE_SENTENCES: Readonly<Record<Role, string>> = {
  owner: "Everything in the office, people and settings included. Answering a hold of law still needs a license.",
  office: "Customers, programs, routes, stock, papers and money.",
  applicator: "Own route, completing visits under own license, answering a hold of law, supervising.",
  technician: "Own route, completing visits under a named applicator's supervision.",
  inspector: "Reads the records and papers of a period that the owner opened, and nothing else.",
};

/** The word for a role on screens. */
export const ROLE_WORDS: Readonly<Record<Role, string>> = {
  owner: "Owner",
  office: "Office",
  applicator: "Applicator (licensed)",
  technician: "Technician",
  inspector: "Inspector",
};
