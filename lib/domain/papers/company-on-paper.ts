import { type PaperCompany } from "#domain/papers/paper";

/** A business as it is on file: what nobody entered is null. */
export interface BusinessOnFile {
  readonly name: string;
  readonly address: string | null;
  readonly phone: string | null;
  readonly businessLicenseNumber: string | null;
}

/** The business at the head of a paper. What is not on file says so there. */
export function companyOnPaper({ name, address, phone, businessLicenseNumber }: BusinessOnFile): PaperCompany {
  return {
    name,
    address: address ?? "Address not on file",
    phone: phone ?? "Phone not on file",
    ...(businessLicenseNumber === null ? {} : { licenseNumber: businessLicenseNumber }),
  };
}

/** The rules by which a paper was checked, as its foot prints them. */
export function rulesOnPaper(rulesVersion: string): string {
  return `Rules ${rulesVersion}`;
}

/** The number of a mix ticket or record as papers print it. */
export function numberOnPaper(number: number): string {
  return `No. ${String(number)}`;
}
