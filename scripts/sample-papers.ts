// One of each paper of an invented company, in .artifacts/papers, to be looked at. Part of npm run pictures.
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { renderApplicationRecord } from "#adapters/pdf/render-application-record";
import { renderCustomerNotice } from "#adapters/pdf/render-customer-notice";
import { renderLoadingList } from "#adapters/pdf/render-loading-list";
import { renderMixTicket } from "#adapters/pdf/render-mix-ticket";
import { renderPostingSign } from "#adapters/pdf/render-posting-sign";
import { renderRouteSheet } from "#adapters/pdf/render-route-sheet";
import * as sample from "../tests/support/sample-papers";
import { MIX_TICKET, RECORD } from "../tests/support/sample-visit-papers";

const folder = join(import.meta.dirname, "..", ".artifacts", "papers");
await mkdir(folder, { recursive: true });

const papers = {
  "route-sheet": renderRouteSheet(sample.ROUTE_SHEET),
  "loading-list": renderLoadingList(sample.LOADING_LIST),
  "mix-ticket": renderMixTicket(MIX_TICKET),
  "application-record": renderApplicationRecord(RECORD),
  "notice-before": renderCustomerNotice(sample.NOTICE_BEFORE),
  "notice-after": renderCustomerNotice(sample.NOTICE_AFTER),
  "notice-for-the-office": renderCustomerNotice({ ...sample.NOTICE_AFTER, law: sample.ILLINOIS_NOTICE }),
  "sign-indiana": renderPostingSign(sample.signOf(sample.INDIANA_SIGN)),
  "sign-illinois": renderPostingSign(sample.signOf(sample.ILLINOIS_SIGN)),
};

for (const [name, rendering] of Object.entries(papers)) {
  const rendered = await rendering;
  if (!rendered.ok) throw new Error(rendered.refusal.sentence);
  await writeFile(join(folder, `${name}.pdf`), rendered.value);
}
