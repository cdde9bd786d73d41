/** How a customer stands: served, resting for a while, or gone with the records kept. */
export const CLIENT_STANDINGS = ["current", "paused", "left"] as const;
export type ClientStanding = (typeof CLIENT_STANDINGS)[number];

export const CLIENT_STANDING_WORDS: Readonly<Record<ClientStanding, string>> = { current: "Current", paused: "Paused", left: "Left" };

export const CLIENT_STANDING_SENTENCES: Readonly<Record<ClientStanding, string>> = {
  current: "Visits are planned.",
  paused: "No visit is planned until they are current again.",
  left: "No longer a customer; what was put down stays on record.",
};

/** Who mows a property. */
export const MOWERS = ["customer", "us", "another-crew"] as const;
export type Mower = (typeof MOWERS)[number];

export const MOWER_WORDS: Readonly<Record<Mower, string>> = { customer: "The customer", us: "We do", "another-crew": "Another crew" };
