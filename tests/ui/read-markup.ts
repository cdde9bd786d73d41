import { type ReactElement } from "react";
import { renderToString } from "react-dom/server";

/** Renders as the server does, without the comments that React puts between texts. */
export function markupOf(element: ReactElement): string {
  return renderToString(element).replaceAll("<!-- -->", "");
}

/** An opening tag: its name and its attributes. */
export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** Every opening tag, in order. Enough of a parser for markup that React wrote: it quotes every attribute. */
export function tagsOf(markup: string): Tag[] {
  return [...markup.matchAll(/<([a-zA-Z][\w-]*)((?:\s+[\w:-]+(?:="[^"]*")?)*)\s*\/?>/g)].map((match) => ({
    name: match[1] ?? "",
    attributes: Object.fromEntries(
      [...(match[2] ?? "").matchAll(/([\w:-]+)(?:="([^"]*)")?/g)].map((pair) => [pair[1] ?? "", pair[2] ?? ""]),
    ),
  }));
}

/** The text of each cell of each row in a table's body. */
export function tableRowsOf(markup: string): string[][] {
  const body = /<tbody[^>]*>([\s\S]*?)<\/tbody>/.exec(markup)?.[1] ?? "";
  return [...body.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map((row) =>
    [...(row[1] ?? "").matchAll(/<(?:th|td)[^>]*>([\s\S]*?)<\/(?:th|td)>/g)].map((cell) =>
      textOf((cell[1] ?? "").replace(/<span[^>]*aria-hidden="true"[^>]*>[\s\S]*?<\/span>/g, "")),
    ),
  );
}

/** The text between the tags. */
export function textOf(markup: string): string {
  return markup
    .replace(/<[^>]*>/g, "")
    .replaceAll("&#x27;", "'")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
}

/** The part of a figure's markup that is one of its forms: from the box that holds it to the next form or the table. */
export function formOf(markup: string, form: "wide" | "narrow"): string {
  const parts = markup.split(/(?=<div class="[^"]*\b_?(?:wide|medium|narrow)[^"]*")|(?=<details)/);
  return parts.find((part) => new RegExp(`^<div class="[^"]*${form}`).test(part)) ?? "";
}
