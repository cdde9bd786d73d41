// The written notice left with a customer. What it must say is a fact of law that the caller hands in with its
// citation; a law whose text is not on file gives a paper for the office that says so, and never invented words.
import { type AftercareOnNotice } from "./notice-aftercare";
import { type PaperField, type PaperFrame, type PaperValue } from "./paper";

/** The parts of a notice, by the name that a law asks for them. */
export const NOTICE_PARTS = [
  "business-name", "business-phone", "applicator-signature", "applicator-license", "date", "time",
  "services-with-brand-names", "label-precautions", "marker-removal", "phone-for-more-information",
] as const;
export type NoticePart = (typeof NOTICE_PARTS)[number];

/** What a law says of the written notice. */
export type NoticeLaw =
  | {
      readonly kind: "on-file";
      readonly jurisdiction: string;
      readonly citation: string;
      readonly required: readonly NoticePart[];
      /** The instruction about the marker, as the law or its agency words it. */
      readonly markerRemoval: string;
    }
  | { readonly kind: "not-on-file"; readonly jurisdiction: string; readonly citation: string; readonly missing: string };

/** One kind of service ("Broadleaf weed control") with the brands that were put down, or room to write them. */
export interface NoticeService {
  readonly service: string;
  readonly brandNames: PaperValue;
}

/** What a label asks of people after the application, in the label's own words, or that it was read and states nothing. */
export interface NoticePrecaution {
  readonly product: string;
  readonly labelWords: readonly string[] | "states-none";
}

/** A notice to a customer as it is printed. */
export interface CustomerNotice {
  readonly frame: PaperFrame;
  readonly law: NoticeLaw;
  readonly customer: string;
  readonly address: string;
  readonly applicator: PaperValue;
  readonly applicatorLicense: PaperValue;
  readonly date: PaperValue;
  readonly time: PaperValue;
  readonly services: readonly NoticeService[];
  readonly precautions: readonly NoticePrecaution[];
  /** What to do and leave, in order and with times; notices that were issued before it was printed have none. */
  readonly aftercare?: AftercareOnNotice;
  readonly moreInformationPhone: PaperValue;
  readonly signature: PaperValue;
}

const PART_WORDS: Readonly<Record<NoticePart, string>> = {
  "business-name": "name of the business",
  "business-phone": "phone of the business",
  "applicator-signature": "signature of the applicator",
  "applicator-license": "license or registration number of the applicator",
  date: "date",
  time: "time",
  "services-with-brand-names": "types of service with brand names",
  "label-precautions": "precautions of the label after the application",
  "marker-removal": "when the marker may be removed",
  "phone-for-more-information": "phone for more information",
};

/**
 * The parts that the law asks for and the notice neither says nor leaves room to write, in words. A notice with any
 * of them must not be handed out.
 */
export function missingParts(notice: CustomerNotice): readonly string[] {
  if (notice.law.kind === "not-on-file") return [notice.law.missing];
  return notice.law.required.filter((part) => !isCovered(notice, part)).map((part) => PART_WORDS[part]);
}

function isCovered(notice: CustomerNotice, part: NoticePart): boolean {
  switch (part) {
    case "business-name":
      return notice.frame.company.name.trim() !== "";
    case "business-phone":
      return notice.frame.company.phone.trim() !== "";
    case "applicator-signature":
      return isKnownOrToWrite(notice.signature);
    case "applicator-license":
      return isKnownOrToWrite(notice.applicatorLicense);
    case "date":
      return isKnownOrToWrite(notice.date);
    case "time":
      return isKnownOrToWrite(notice.time);
    case "services-with-brand-names":
      return notice.services.length > 0 && notice.services.every(({ brandNames }) => isKnownOrToWrite(brandNames));
    case "label-precautions":
      return notice.precautions.length > 0 && notice.precautions.every(({ labelWords }) => labelWords === "states-none" || labelWords.length > 0);
    case "marker-removal":
      return notice.law.kind === "on-file" && notice.law.markerRemoval.trim() !== "";
    case "phone-for-more-information":
      return isKnownOrToWrite(notice.moreInformationPhone);
  }
}

function isKnownOrToWrite(value: PaperValue): boolean {
  return value.kind === "to-write" || (value.kind === "said" && value.text.trim() !== "");
}

/**
 * The words of labels that no step quotes and that are not the crew's to mind: with the steps they are all that the labels
 * ask of a customer, each once.
 */
export function unquotedPrecautions({ precautions, aftercare }: Pick<CustomerNotice, "precautions" | "aftercare">): readonly NoticePrecaution[] {
  if (aftercare === undefined) return precautions;
  const { groups, mindedByCrew } = aftercare;
  const said = [...mindedByCrew, ...groups.flatMap(({ steps }) => steps.flatMap(({ why }) => why))];
  const isSaid = (product: string, each: string) => said.some(({ asks, words }) => asks === product && words.includes(each));
  return precautions.flatMap(({ product, labelWords }): readonly NoticePrecaution[] => {
    if (labelWords === "states-none") return [{ product, labelWords }];
    const left = labelWords.filter((each) => !isSaid(product, each));
    return left.length === 0 && labelWords.length > 0 ? [] : [{ product, labelWords: left }];
  });
}

/** The named facts at the top of a notice. */
export function noticeFields(notice: CustomerNotice): readonly PaperField[] {
  return [
    { label: "Date", value: notice.date },
    { label: "Time", value: notice.time },
    { label: "Applicator", value: notice.applicator },
    { label: "License or registration", value: notice.applicatorLicense },
  ];
}
