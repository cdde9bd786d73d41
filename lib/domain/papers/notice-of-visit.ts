import { type CalendarDate, formatLongDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { type ServiceType } from "#domain/label/label-facts";
import { type RecordContent } from "#domain/register/record-content";
import { type BusinessOnFile, companyOnPaper } from "#domain/papers/company-on-paper";
import { type CustomerNotice, type NoticeLaw, type NoticePrecaution } from "#domain/papers/customer-notice";
import { type AftercareOnNotice } from "#domain/papers/notice-aftercare";
import { NOT_RECORDED, type PaperFrame, type PaperValue, said, TO_WRITE } from "#domain/papers/paper";
import { dayOnPaper, momentOnPaper, spanOnPaper } from "#domain/papers/paper-time";

/** A product as a notice names it. */
export interface NoticedProduct {
  readonly productName: string;
  readonly serviceType: string;
  /** In the label's own words; empty with `isRead` false: nobody has read whether it states any. */
  readonly precautions: readonly string[];
  readonly isRead: boolean;
}

/** A frame without the business, which a notice takes with what is not on file of it left empty. */
export type NoticeFrame = Omit<PaperFrame, "company">;

/** What a notice that is printed before the visit is made of. */
export interface PlannedNotice {
  readonly frame: NoticeFrame;
  readonly business: BusinessOnFile;
  readonly law: NoticeLaw;
  readonly customer: string;
  readonly address: string;
  readonly on: CalendarDate;
  readonly applicator: string;
  readonly license: string | null;
  readonly products: readonly NoticedProduct[];
  readonly aftercare: AftercareOnNotice;
}

/**
 * The notice that goes along to the visit: who, where, on which day and what for. The time, the products that were
 * really put down and the signature are left to write.
 */
export function noticeBefore({ frame, business, law, customer, address, on, applicator, license, products, aftercare }: PlannedNotice): CustomerNotice {
  return {
    ...headOf(frame, business, law),
    customer,
    address,
    applicator: said(applicator),
    applicatorLicense: license === null ? TO_WRITE : said(license),
    date: said(formatLongDate(on)),
    time: TO_WRITE,
    services: servicesOf(products, () => TO_WRITE),
    precautions: precautionsOf(products),
    aftercare,
    signature: TO_WRITE,
  };
}

/**
 * The notice after the visit, from the record: what was put down, when and by whom, signed where the record is. Where nobody
 * can work out what is to be done afterwards any more, the labels' words alone stand on it.
 */
export function noticeAfter(frame: NoticeFrame, law: NoticeLaw, content: RecordContent, aftercare: AftercareOnNotice | "not-known"): CustomerNotice {
  const { company, customer, site, applicator, timeZone, treatments, findings, signature } = content;
  const [startedAt, endedAt] = [Date.parse(content.startedAt), Date.parse(content.endedAt)];
  const unread = findings.filter(({ rule }) => rule === "aftercare-fact-missing").flatMap(({ about }) => about);
  const products = treatments.map(({ productName, serviceType, precautions }) => ({ productName, serviceType, precautions, isRead: !unread.includes(productName) }));
  return {
    ...headOf(frame, company, law),
    customer: customer.name,
    address: `${site.street}, ${site.city}`,
    applicator: said(applicator.name),
    applicatorLicense: applicator.license === null ? NOT_RECORDED : said(`${applicator.license.state} ${applicator.license.number}`),
    date: said(dayOnPaper(startedAt, timeZone)),
    time: said(spanOnPaper(startedAt, endedAt, timeZone)),
    services: servicesOf(products, (names) => said(names.join(", "))),
    precautions: precautionsOf(products),
    ...(aftercare === "not-known" ? {} : { aftercare }),
    signature: signature === null ? TO_WRITE : said(`${signature}, on the screen, ${momentOnPaper(Date.parse(content.enteredAt), timeZone)}`),
  };
}

/** Where a law asks for the phone, one that is not on file leaves its place empty, so that the notice is refused for it. */
function headOf(frame: NoticeFrame, business: BusinessOnFile, law: NoticeLaw): Pick<CustomerNotice, "frame" | "law" | "moreInformationPhone"> {
  const onPaper = companyOnPaper(business);
  const company = law.kind === "on-file" ? { ...onPaper, phone: business.phone ?? "" } : onPaper;
  return { frame: { ...frame, company }, law, moreInformationPhone: business.phone === null ? NOT_RECORDED : said(business.phone) };
}

const SERVICE_WORDS: Readonly<Record<ServiceType, string>> = {
  fertilizer: "Fertilizer",
  "grassy weed control": "Grassy weed control",
  "broadleaf weed control": "Broadleaf weed control",
  "insect control": "Insect control",
  "disease control": "Disease control",
  other: "Other",
};

function servicesOf(products: readonly NoticedProduct[], brandNames: (names: readonly string[]) => PaperValue): CustomerNotice["services"] {
  return [...groupedBy(products, ({ serviceType }) => serviceType)].map(([serviceType, own]) => ({
    service: SERVICE_WORDS[serviceType as ServiceType],
    brandNames: brandNames([...new Set(own.map(({ productName }) => productName))]),
  }));
}

function precautionsOf(products: readonly NoticedProduct[]): readonly NoticePrecaution[] {
  return [...groupedBy(products, ({ productName }) => productName)].map(([product, own]) => {
    const labelWords = [...new Set(own.flatMap(({ precautions }) => precautions))];
    return { product, labelWords: labelWords.length === 0 && own.every(({ isRead }) => isRead) ? "states-none" : labelWords };
  });
}
