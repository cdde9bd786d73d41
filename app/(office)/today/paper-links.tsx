import { LinkButton } from "#ui/button";

/** Where a truck's papers for a day are drawn. */
export function PaperLinks({ routeDayId, truck }: { readonly routeDayId: string; readonly truck: string }) {
  return (
    <LinkButton document href={`/documents/route-day/${routeDayId}`}>
      Print {truck}
    </LinkButton>
  );
}
