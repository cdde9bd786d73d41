// Looks at the books of stock and the register from outside: nothing of the application is used.
import { createHash } from "node:crypto";
import { type TestHouse } from "./house";

/** Balances that are not the sum of their entries, and lots whose entries don't add up to nothing. */
export async function unbalanced(house: TestHouse): Promise<readonly unknown[]> {
  return house.ask(
    `select coalesce(b.lot_id, e.lot_id)::text as lot, coalesce(b.amount, 0)::text as kept, coalesce(e.amount, 0)::text as summed
     from stock_balance b full join (select company_id, lot_id, stock_location_id, sum(amount) as amount from stock_entry group by 1, 2, 3) e
       on (b.company_id, b.lot_id, b.stock_location_id) = (e.company_id, e.lot_id, e.stock_location_id)
     where coalesce(b.amount, 0) <> coalesce(e.amount, 0)
     union all select lot_id::text, 'lot', sum(amount)::text from stock_entry group by company_id, lot_id having sum(amount) <> 0`,
  );
}

/** The number of the first entry of a company whose hash is not that of the hash before and its own bytes, or null. */
export async function firstBroken(house: TestHouse, companyId: string): Promise<number | null> {
  const rows = await house.ask<{ number: number; content: string; hash: Buffer }>("select number, content, hash from register_entry where company_id = $1 order by number", [companyId]);
  let before: Buffer = Buffer.alloc(32);
  for (const [index, { number, content, hash }] of rows.entries()) {
    const computed = createHash("sha256").update(Buffer.concat([before, Buffer.from(content, "utf8")])).digest();
    if (number !== index + 1 || !computed.equals(hash)) return number;
    before = hash;
  }
  return null;
}
