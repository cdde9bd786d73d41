import { type ApplicationRecordPaper } from "#domain/papers/application-record-paper";
import { type CustomerNotice } from "#domain/papers/customer-notice";
import { type LoadingList } from "#domain/papers/loading-list";
import { type MixTicketPaper } from "#domain/papers/mix-ticket-paper";
import { type PostingSign } from "#domain/papers/posting-sign";
import { type RouteSheet } from "#domain/papers/route-sheet";

/** The kinds of papers that are issued and kept, in the order in which a packet is printed. */
export const PAPER_KINDS = ["route-sheet", "loading-list", "mix-ticket", "customer-notice", "posting-sign", "application-record"] as const;
export type PaperKind = (typeof PAPER_KINDS)[number];

/** Everything that an issued paper says, so that it can be printed again exactly. */
export type IssuedPaperData =
  | { readonly kind: "route-sheet"; readonly paper: RouteSheet }
  | { readonly kind: "loading-list"; readonly paper: LoadingList }
  | { readonly kind: "mix-ticket"; readonly paper: MixTicketPaper }
  | { readonly kind: "customer-notice"; readonly paper: CustomerNotice }
  | { readonly kind: "posting-sign"; readonly paper: PostingSign }
  | { readonly kind: "application-record"; readonly paper: ApplicationRecordPaper };

/** What each kind is called on screens. */
export const PAPER_WORDS: Readonly<Record<PaperKind, string>> = {
  "route-sheet": "Route sheet",
  "loading-list": "Loading list",
  "mix-ticket": "Mix ticket",
  "customer-notice": "Customer notice",
  "posting-sign": "Posting sign",
  "application-record": "Application record",
};

/** A file name that any system takes: the kind, the number where there is one, and the day in plain letters. */
export function fileNameOf({ kind, paper }: IssuedPaperData): string {
  const { number = "", date } = paper.frame;
  const words = [kind, number, date].join(" ").toLowerCase().replaceAll(/[^a-z0-9]+/gu, "-");
  return `${words.replaceAll(/^-+|-+$/gu, "")}.pdf`;
}
