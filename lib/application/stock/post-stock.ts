import { lockCompany } from "#adapters/postgres/company-work";
import { invariant } from "#domain/foundation/invariant";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type EntryOfStock, isBalanced, type Posting, type PostingKind } from "#domain/stock/posting";
import { type Balance, leftBelowZero } from "#domain/stock/on-hand";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { type Work } from "#application/use-case";

/** What posting needs of the work at hand. */
export type PostingWork = Pick<Work, "tx" | "company" | "member" | "now" | "newId">;

export interface PostingFacts {
  readonly kind: PostingKind;
  /** The form or act that makes it; the same one can't make two. */
  readonly requestId: string;
  readonly happenedAt: Date;
  readonly note?: string | null;
}

/** The posting that now stands. A repeat is one that the same request had made before: nothing was written for it. */
export interface StandingPosting {
  readonly stockPostingId: string;
  readonly isRepeat: boolean;
}

/**
 * Writes one posting with its entries in the given transaction. The company's row is locked first, so everything that
 * `makePosting` reads (balances, lots, locations) stays as it is until the end; a request that has posted before is
 * answered with its first posting and `makePosting` does not run. A refusal of `makePosting` is handed on. A request id
 * that was used for another kind of posting is refused. The database moves the balances and checks, at commit, that
 * every lot adds up to nothing.
 */
export async function postStock(
  work: PostingWork,
  facts: PostingFacts,
  makePosting: () => Promise<Outcome<Posting, UseCaseRefusal>>,
): Promise<Outcome<StandingPosting, UseCaseRefusal>> {
  const { tx } = work;
  const { companyId } = work.company;
  const { kind, requestId } = facts;
  await lockCompany(tx);
  const first = await tx.stockPosting.findUnique({ where: { companyId_requestId: { companyId, requestId } } });
  if (first !== null) {
    if (first.kind !== kind) return conflict("This form was sent before for something else. Load the page again.");
    return accept({ stockPostingId: first.stockPostingId, isRepeat: true });
  }
  const posting = await makePosting();
  if (!posting.ok) return posting;
  const { entries } = posting.value;
  invariant(posting.value.kind === kind && entries.length > 0 && isBalanced(entries), "a posting is of its kind, moves something and balances");
  const stockPostingId = work.newId();
  await tx.stockPosting.create({
    data: { companyId, stockPostingId, kind, requestId, happenedAt: facts.happenedAt, enteredAt: work.now, personId: work.member.personId, note: facts.note ?? null },
  });
  await tx.stockEntry.createMany({
    data: entries.map(({ lotId, stockLocationId, amount, paidPerContainerCents }, index) => {
      const line = { companyId, stockPostingId, line: index + 1, lotId, stockLocationId, amount };
      return { ...line, paidPerContainerCents: paidPerContainerCents ?? null };
    }),
  });
  return accept({ stockPostingId, isRepeat: false });
}

/** The kept balances of some lots, at every location. */
export async function balancesOfLots(work: Pick<Work, "tx" | "company">, lotIds: readonly string[]): Promise<readonly Balance[]> {
  const rows = await work.tx.stockBalance.findMany({ where: { companyId: work.company.companyId, lotId: { in: [...lotIds] } } });
  return rows.map(({ lotId, stockLocationId, amount }) => ({ lotId, stockLocationId, amount }));
}

/** One thing that a standing posting brought somewhere: how much of which lot of which product. */
export interface PostedAmount {
  readonly productId: string;
  readonly lotNumber: string;
  readonly amount: bigint;
  /** Only a delivery has one. */
  readonly paidPerContainerCents: bigint | null;
}

/** What a posting brought to where it went; a use case holds a repeated request against it. */
export async function postedAmounts(work: Pick<Work, "tx" | "company">, stockPostingId: string): Promise<readonly PostedAmount[]> {
  const { companyId } = work.company;
  const entries = await work.tx.stockEntry.findMany({ where: { companyId, stockPostingId, amount: { gt: 0 } } });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  const lotOf = new Map(lots.map((lot) => [lot.lotId, lot]));
  return entries.map(({ lotId, amount, paidPerContainerCents }) => ({
    productId: lotOf.get(lotId)?.productId ?? "",
    lotNumber: lotOf.get(lotId)?.number ?? "",
    amount,
    paidPerContainerCents,
  }));
}

/** The answer to a form that was sent before and comes again with something else in it: nothing is written, and it is said. */
export const SENT_WITH_OTHER_FIGURES = "This form was sent before with other figures, and those stand. Load the page again to write these too.";

/** What a planned posting would leave below zero; ask it inside `makePosting`, where the balances stand still. */
export async function wouldLeaveBelowZero(work: Pick<Work, "tx" | "company">, entries: readonly EntryOfStock[]): Promise<readonly Balance[]> {
  return leftBelowZero(await balancesOfLots(work, [...new Set(entries.map(({ lotId }) => lotId))]), entries);
}
