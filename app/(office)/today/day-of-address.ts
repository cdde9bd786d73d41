import { notFound } from "next/navigation";
import { type DayShown, readDay } from "#application/days/read-day";
import { asMember } from "../../session";

/** What a page of one day is opened with. */
export interface DayPageProps {
  readonly searchParams: Promise<Readonly<Record<string, string | readonly string[] | undefined>>>;
}

/** The day that the address names, or the one on which the place opens; an address with another date finds no page. */
export async function dayOfAddress({ searchParams }: DayPageProps): Promise<DayShown> {
  const { date } = await searchParams;
  const answer = await asMember(readDay, { date: typeof date === "string" ? date : "" });
  if (!answer.ok) notFound();
  return answer.value;
}
